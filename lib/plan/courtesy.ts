import {alterInKey} from '../pitch/key.ts'
import {stepsAbove} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import {NOTE, soundingAt} from '../survey/facts.ts'
import type {PartFacts} from '../survey/facts.ts'
import {sectionAt, writtenPitch} from './plan.ts'
import type {PartPlan} from './plan.ts'

/** Which notes get a courtesy accidental: their index among the pitched notes of the part, and where each measure begins. */
export interface Courtesies {
  readonly firstNote: readonly number[]
  readonly notes: ReadonlySet<number>
}

interface Read {
  readonly index: number
  readonly onset: number
  readonly pitch: Pitch
  /** What the signature makes of the step. */
  readonly inKey: number
}

/**
 * Courtesy accidentals by one rule for the whole part (renotation-rules A2): on the first note of a line or space that was
 * altered otherwise in the measure before, and on a note whose letter was altered in another octave of the same measure.
 */
export function chooseCourtesies(facts: PartFacts, plan: PartPlan): Courtesies {
  const notes = new Set<number>()
  for (let staff = 1; staff <= facts.staves; staff++) {
    let before = new Map<number, number>()
    for (let measure = 0; measure < facts.firstNote.length; measure++) {
      before = inMeasure(readMeasureNotes(facts, plan, staff, measure), before, notes)
    }
  }
  return {firstNote: facts.firstNote, notes}
}

/** Marks the courtesies of one measure; returns what is altered against the signature at its end, by line or space. */
function inMeasure(
  read: readonly Read[],
  before: ReadonlyMap<number, number>,
  notes: Set<number>,
): Map<number, number> {
  const here = new Map<number, number>()
  const reminded = new Set<number>()
  for (const {index, pitch, inKey} of read) {
    const place = stepsAbove(pitch)
    const held = here.get(place)
    if (held === undefined && pitch.alter === inKey) {
      const earlier = before.get(place)
      const otherOctave = [...here].some(
        ([other, alter]) => (other - place) % 7 === 0 && alter !== pitch.alter,
      )
      if ((earlier !== undefined && earlier !== pitch.alter && !reminded.has(place)) || otherOctave)
        notes.add(index)
    }
    reminded.add(place)
    if (pitch.alter !== inKey || held !== undefined) here.set(place, pitch.alter)
  }
  return here
}

function readMeasureNotes(
  facts: PartFacts,
  plan: PartPlan,
  staff: number,
  measure: number,
): Read[] {
  const end = facts.firstNote[measure + 1] ?? facts.notes.count
  const read: Read[] = []
  for (let index = facts.firstNote[measure] ?? 0; index < end; index++) {
    if (facts.states[facts.notes.state[index] ?? 0]?.staff !== staff) continue
    if ((facts.notes.flags[index] ?? 0) & NOTE.tiedFrom) continue
    const onset = (facts.notes.onset[index] ?? 0) / (facts.ticks[measure] ?? 1)
    const section = sectionAt(plan, staff, {measure, onset})
    if (!section || section.untouched) continue
    const pitch = writtenPitch(section, soundingAt(facts, index))
    read.push({index, onset, pitch, inKey: alterInKey(section.key, pitch.step, pitch.octave)})
  }
  return read.toSorted((a, b) => a.onset - b.onset || a.index - b.index)
}
