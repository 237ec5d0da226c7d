import type {Place} from '../diagnostic.ts'
import {advance} from '../musicxml/measure.ts'
import {readState, stateAt} from '../musicxml/in-force.ts'
import type {Measure, Note, Reading} from '../musicxml/measure.ts'
import {firstContext} from '../musicxml/context.ts'
import type {Context} from '../musicxml/context.ts'
import type {OctaveLine} from '../musicxml/octave-line.ts'
import type {StaffState} from '../staff/state.ts'
import {sameInterval} from '../pitch/interval.ts'
import {sameKey} from '../pitch/key.ts'
import {STEPS, transpose} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import {NOTE, emptyColumns, grown, readFlags} from './note-columns.ts'
import type {NoteColumns} from './note-columns.ts'
import {sameClef} from '../staff/clef.ts'
import {childText, child, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {readJoint, readTempo} from './pace.ts'

export {NOTE} from './note-columns.ts'
export type {NoteColumns} from './note-columns.ts'

/** A place in a part: the measure's index from 0 and quarters from its start. */
export interface Position {
  readonly measure: number
  readonly onset: number
}

/** What is in force on a staff from a position on. */
export interface StateFact extends Position {
  readonly staff: number
  readonly state: StaffState
}

/** Words printed over or under a part. */
export interface WordsFact extends Position {
  readonly staff: number
  readonly text: string
}

/** Quarters a minute from a position on. */
export interface TempoFact extends Position {
  readonly tempo: number
}

/** What the plan and the survey need to know about one part: numbers, no markup. */
export interface PartFacts {
  readonly part: string
  readonly staves: number
  /** A measure: its number as printed, its line, its ticks a quarter, its length in ticks, its first note. */
  readonly numbers: readonly string[]
  readonly lines: readonly number[]
  readonly ticks: readonly number[]
  readonly lengths: readonly number[]
  readonly firstNote: readonly number[]
  readonly notes: NoteColumns
  readonly voices: readonly string[]
  readonly states: readonly StateFact[]
  readonly words: readonly WordsFact[]
  readonly octaveLines: readonly OctaveLine[]
  /** Tempi as this part states them: most scores do so in their top part only. */
  readonly tempos: readonly TempoFact[]
  /** Where something new begins: after double bars and repeats. */
  readonly joints: readonly Position[]
  /** Whether any accidental, any stem is printed in the part: some files leave both to the reader. */
  readonly prints: {readonly accidentals: boolean; readonly stems: boolean}
  /** Measures of rest at most in a row, unpitched notes, and elements that later decisions ask about. */
  readonly unpitched: number
  readonly elements: ReadonlyMap<string, number>
}

/** Gathers the facts of one part, measure by measure. */
export interface FactsBuilder {
  /** What is in force before the next measure. */
  context(): Context
  add(measure: Measure): void
  done(): PartFacts
}

/** Elements whose presence a plan reports on or decides by. */
const COUNTED = new Set([
  'harmony',
  'figured-bass',
  'octave-shift',
  'accidental-mark',
  'harmonic',
  'string',
  'fret',
  'fingering',
  'hole',
  'staff-tuning',
  'capo',
  'accord',
  'harp-pedals',
  'pedal',
  'key-octave',
  'double',
  'instrument-change',
  'frame',
  'up-bow',
  'down-bow',
  'arpeggiate',
  'non-arpeggiate',
  'glissando',
  'slide',
  'tremolo',
  'snap-pizzicato',
  'open-string',
  'stopped',
])

export function createFacts(part: string, reading?: Reading): FactsBuilder {
  let context = firstContext(part)
  const numbers: string[] = []
  const lines: number[] = []
  const ticks: number[] = []
  const lengths: number[] = []
  const firstNote: number[] = []
  const states: StateFact[] = []
  const byStaff = new Map<number, readonly number[]>()
  const voices: string[] = []
  const words: WordsFact[] = []
  const tempos: TempoFact[] = []
  const joints: Position[] = []
  const elements = new Map<string, number>()
  const prints = {accidentals: false, stems: false}
  const slurs = new Set<string>()
  const octaveLines: OctaveLine[] = []
  let notes = emptyColumns(64)
  let noteCount = 0
  let unpitched = 0
  let staves = 1

  function pushState(staff: number, state: StaffState, measure: number, onset: number): void {
    const own = byStaff.get(staff) ?? []
    const last = own.at(-1)
    if (last !== undefined && sameState(states[last]?.state, state)) return
    // Only what this measure begins with or says can be in force in it, however often it changes.
    const earlier = own.findLastIndex((each) => (states[each]?.measure ?? 0) < measure)
    byStaff.set(staff, [
      ...own.slice(Math.max(0, earlier)),
      states.push({measure, onset, staff, state}) - 1,
    ])
  }

  function addStates(measure: Measure): void {
    const onsets = new Set(measure.attributes.map(({onset}) => onset))
    if (measure.index === 0) onsets.add(0)
    const count = Math.max(staves, advance(context, measure).staves.length)
    for (const onset of [...onsets].toSorted((a, b) => a - b)) {
      for (let staff = 1; staff <= count; staff++) {
        pushState(
          staff,
          readState(stateAt(measure, staff, onset), reading),
          measure.index,
          onset / measure.ticks,
        )
      }
    }
  }

  function indexOfState(note: Note, measure: Measure): number {
    const find = (): number =>
      byStaff.get(note.staff)?.findLast((each) => sameState(states[each]?.state, note.state)) ?? -1
    const known = find()
    if (known >= 0) return known
    pushState(note.staff, note.state, measure.index, note.onset / measure.ticks)
    return find()
  }

  function addNote(note: Note, measure: Measure): void {
    const flags = readFlags(note, measure, slurs)
    if (child(note.element, 'accidental')) prints.accidentals = true
    if (flags & NOTE.stemmed) prints.stems = true
    if (note.kind === 'unpitched') unpitched++
    if (!note.written) return
    let voice = voices.indexOf(note.voice)
    if (voice < 0) voice = voices.push(note.voice) - 1
    if (noteCount === notes.onset.length) notes = grown(notes)
    const at = noteCount
    notes.onset[at] = note.onset
    notes.duration[at] = note.duration
    notes.steps[at] = STEPS.indexOf(note.written.step) + 7 * note.written.octave
    notes.alter[at] = Math.round(note.written.alter * 100)
    notes.state[at] = indexOfState(note, measure)
    notes.flags[at] = flags
    notes.voice[at] = Math.min(voice, 255)
    notes.octaveLine[at] = note.octaveLine ? note.octaveLine.index + 1 : 0
    noteCount = at + 1
  }

  return {
    context: () => context,
    add(measure) {
      numbers.push(measure.number)
      lines.push(measure.line)
      ticks.push(measure.ticks)
      lengths.push(measure.length)
      firstNote.push(noteCount)
      if (measure.index === 0 || measure.attributes.length > 0) addStates(measure)
      for (const note of measure.notes) {
        staves = Math.max(staves, note.staff)
        addNote(note, measure)
        countElements(note.element, elements)
      }
      for (const {type, line} of measure.octaveShifts)
        if (type === 'start' && line) octaveLines.push(line)
      for (const {element} of measure.attributes) countElements(element, elements)
      for (const {element, onset} of measure.others) {
        countElements(element, elements)
        if (element.name === 'barline') {
          const joint = readJoint(measure.text, element)
          const after = measure.index + (joint === 'after' ? 1 : 0)
          if (joint) joints.push({measure: after, onset: 0})
        } else if (element.name === 'direction' || element.name === 'sound') {
          const tempo = readTempo(measure.text, element)
          if (tempo !== undefined)
            tempos.push({measure: measure.index, onset: onset / measure.ticks, tempo})
        }
        if (element.name === 'direction') {
          const text = wordsOf(measure.text, element)
          if (text) {
            const staff = Number(childText(measure.text, element, 'staff') ?? 1) || 1
            words.push({measure: measure.index, onset: onset / measure.ticks, staff, text})
          }
        }
      }
      context = advance(context, measure)
      staves = Math.max(staves, context.staves.length)
    },
    done: () => ({
      part,
      staves,
      numbers,
      lines,
      ticks,
      lengths,
      firstNote,
      notes: {...notes, count: noteCount},
      voices,
      states,
      words,
      octaveLines,
      tempos,
      joints,
      prints,
      unpitched,
      elements,
    }),
  }
}

/** The written pitch of a note of the columns. */
export function writtenAt(notes: NoteColumns, index: number): Pitch {
  const steps = notes.steps[index] ?? 0
  const octave = Math.floor(steps / 7)
  return {step: STEPS[steps - 7 * octave] ?? 'C', alter: (notes.alter[index] ?? 0) / 100, octave}
}

/** The sounding pitch of a note of the columns, by what was in force when it was read. */
export function soundingAt(facts: PartFacts, index: number): Pitch {
  const written = writtenAt(facts.notes, index)
  const state = facts.states[facts.notes.state[index] ?? 0]
  return state ? transpose(written, state.state.transposition.interval) : written
}

/** Where a measure of the part is, by its index, for a diagnostic. */
export function placeIn(facts: PartFacts, measure: number): Place {
  const number = facts.numbers[measure]
  const line = facts.lines[measure]
  return {
    part: facts.part,
    ...(number !== undefined && {measure: number}),
    ...(line !== undefined && {line}),
  }
}

/** The measure index of a note of the columns. */
export function measureOf(facts: PartFacts, note: number): number {
  let low = 0
  let high = facts.firstNote.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if ((facts.firstNote[middle] ?? 0) <= note) low = middle
    else high = middle - 1
  }
  return low
}

/** Counts what an element is and what it holds; of a note, what is hung on it. */
function countElements(root: Element, counts: Map<string, number>): void {
  if (COUNTED.has(root.name)) counts.set(root.name, (counts.get(root.name) ?? 0) + 1)
  for (const each of root.children) {
    if (each.name === 'pitch' || each.name === 'lyric') continue
    if (each.children.length > 0 || COUNTED.has(each.name)) countElements(each, counts)
  }
}

function wordsOf(text: string, direction: Element): string {
  return direction.children
    .filter((type) => type.name === 'direction-type')
    .flatMap((type) => type.children.filter(({name}) => name === 'words'))
    .map((words) => textOf(text, words))
    .join(' ')
    .trim()
}

function sameState(a: StaffState | undefined, b: StaffState): boolean {
  if (a === undefined || a === b) return a === b
  return (
    sameClef(a.clef, b.clef) &&
    a.forPart === b.forPart &&
    sameInterval(a.transposition.interval, b.transposition.interval) &&
    a.transposition.double === b.transposition.double &&
    (a.key === b.key || (a.key !== undefined && b.key !== undefined && sameKey(a.key, b.key)))
  )
}
