import {sameInterval} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {isTraditional} from '../pitch/key.ts'
import {midiOf, naturalAt} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import type {Clef} from '../staff/clef.ts'
import {isPitched, sameClef} from '../staff/clef.ts'
import {FIRST_STATE} from '../staff/state.ts'
import {NOTE} from './facts.ts'
import type {PartFacts} from './facts.ts'
import {measureStarts} from './measure-starts.ts'

/** Ticks of the score's clock in a quarter note: one clock for all parts, whatever their divisions. */
export const CLOCK = 480

/** The written key that is no signature at all. */
export const NO_KEY = 127

/**
 * The notes of a part as far as one transposition is declared for them, as they are written, on the score's clock and
 * in its order. Grace notes, cues and staves without pitch are left out. What is asked of the evidence is what each
 * `clef` of the line adds to its notes.
 */
export interface Line {
  readonly part: string
  /** Index of the part in the score. */
  readonly index: number
  readonly declared: Interval
  /** In the order in which they first have a note. */
  readonly clefs: readonly Clef[]
  readonly count: number
  readonly onset: Float64Array
  readonly duration: Uint32Array
  /** Written key number, middle C = 60. */
  readonly midi: Int16Array
  /** Written steps above C0: with `midi` the spelling. */
  readonly steps: Int16Array
  /** Index into `clefs`. */
  readonly clef: Uint8Array
  /** 1: attacked (not tied from before) · 2: a further note of a chord. */
  readonly kind: Uint8Array
  /** The written signature of each measure, `NO_KEY` where there is none. */
  readonly keys: Int8Array
  /** The measures in which the line has a note. */
  readonly played: Uint8Array
}

export const ATTACK = 1
export const CHORD = 2

const SEMITONES = [0, 2, 4, 5, 7, 9, 11]

/** When each measure of the score begins, in ticks of the clock; one more than there are measures. */
export function readClock(parts: readonly PartFacts[]): Float64Array {
  return Float64Array.from(measureStarts(parts), (start) => Math.round(start * CLOCK))
}

/** The lines of a part: one for each transposition that it declares, the one with most notes first. */
export function readLines(facts: PartFacts, index: number, starts: Float64Array): Line[] {
  const {notes, states} = facts
  const groups: {readonly declared: Interval; readonly notes: number[]; readonly clefs: Clef[]}[] =
    []
  const groupOf = new Int16Array(states.length).fill(-1)
  const clefOf = new Uint8Array(states.length)
  states.forEach(({state}, at) => {
    if (!isPitched(state.clef)) return
    const {interval} = state.transposition
    let group = groups.findIndex(({declared}) => sameInterval(declared, interval))
    if (group < 0) group = groups.push({declared: interval, notes: [], clefs: []}) - 1
    groupOf[at] = group
    const clefs = groups[group]?.clefs ?? []
    const known = clefs.findIndex((clef) => sameClef(clef, state.clef))
    clefOf[at] = known >= 0 ? known : clefs.push(state.clef) - 1
  })
  for (let note = 0; note < notes.count; note++) {
    const flags = notes.flags[note] ?? 0
    if (flags & (NOTE.grace | NOTE.cue)) continue
    groups[groupOf[notes.state[note] ?? 0] ?? -1]?.notes.push(note)
  }
  const measureOf = measuresOf(facts)
  return groups
    .filter((group) => group.notes.length > 0)
    .toSorted((a, b) => b.notes.length - a.notes.length)
    .map((group) => {
      const used = usedClefs(
        group.clefs,
        group.notes,
        (note) => clefOf[notes.state[note] ?? 0] ?? 0,
      )
      return fill(facts, index, group.declared, group.notes, used, {starts, measureOf})
    })
}

interface UsedClefs {
  readonly clefs: readonly Clef[]
  readonly of: (note: number) => number
}

/** Only the clefs that have notes, in the order in which they come. */
function usedClefs(
  all: readonly Clef[],
  notes: readonly number[],
  clefOf: (note: number) => number,
): UsedClefs {
  const order: number[] = []
  for (const note of notes) if (!order.includes(clefOf(note))) order.push(clefOf(note))
  return {
    clefs: order.flatMap((clef) => all[clef] ?? []),
    of: (note) => order.indexOf(clefOf(note)),
  }
}

function fill(
  facts: PartFacts,
  index: number,
  declared: Interval,
  group: readonly number[],
  used: UsedClefs,
  {starts, measureOf}: {readonly starts: Float64Array; readonly measureOf: Uint32Array},
): Line {
  const {notes} = facts
  const timeOf = (note: number): number => {
    const measure = measureOf[note] ?? 0
    const ticks = facts.ticks[measure] ?? 1
    return (starts[measure] ?? 0) + Math.round(((notes.onset[note] ?? 0) / ticks) * CLOCK)
  }
  const ordered = group
    .map((note) => ({note, time: timeOf(note)}))
    .toSorted((a, b) => a.time - b.time || a.note - b.note)
  const count = ordered.length
  const played = new Uint8Array(starts.length - 1)
  const line = {
    onset: new Float64Array(count),
    duration: new Uint32Array(count),
    midi: new Int16Array(count),
    steps: new Int16Array(count),
    clef: new Uint8Array(count),
    kind: new Uint8Array(count),
  }
  ordered.forEach(({note, time}, at) => {
    const measure = measureOf[note] ?? 0
    const flags = notes.flags[note] ?? 0
    const steps = notes.steps[note] ?? 0
    const octave = Math.floor(steps / 7)
    line.onset[at] = time
    line.duration[at] = Math.round(
      ((notes.duration[note] ?? 0) / (facts.ticks[measure] ?? 1)) * CLOCK,
    )
    line.midi[at] = Math.round(
      12 * (octave + 1) + (SEMITONES[steps - 7 * octave] ?? 0) + (notes.alter[note] ?? 0) / 100,
    )
    line.steps[at] = steps
    line.clef[at] = used.of(note)
    line.kind[at] = (flags & NOTE.tiedFrom ? 0 : ATTACK) | (flags & NOTE.chord ? CHORD : 0)
    played[measure] = 1
  })
  const keys = readKeys(facts, starts.length - 1)
  return {part: facts.part, index, declared, clefs: used.clefs, count, ...line, keys, played}
}

/** The written pitch of a note of the line; microtones are rounded. */
export function spelledAt(line: Line, note: number): Pitch {
  const natural = naturalAt(line.steps[note] ?? 0)
  return {...natural, alter: (line.midi[note] ?? 0) - midiOf(natural)}
}

/** The measure of each note of the columns. */
function measuresOf(facts: PartFacts): Uint32Array {
  const measures = new Uint32Array(facts.notes.count)
  facts.firstNote.forEach((first, measure) =>
    measures.fill(measure, first, facts.firstNote[measure + 1] ?? facts.notes.count),
  )
  return measures
}

/** The signature on the first staff, measure by measure. */
function readKeys(facts: PartFacts, measures: number): Int8Array {
  const keys = new Int8Array(measures).fill(NO_KEY)
  for (const {staff, measure, state} of facts.states) {
    if (staff !== 1) continue
    const {key} = state ?? FIRST_STATE
    if (key && isTraditional(key)) keys.fill(key.fifths, measure)
  }
  return keys
}
