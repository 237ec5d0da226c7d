import type {Instrument} from '../instruments/instrument.ts'
import {describeInterval, sameInterval, UNISON} from '../pitch/interval.ts'
import {describeKey, isTraditional, sameKey} from '../pitch/key.ts'
import {formatPitch, midiOf, transpose} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import {formatClef, sameClef} from '../staff/clef.ts'
import type {StaffState} from '../staff/state.ts'
import type {Belief} from './believe.ts'
import {measureOf, NOTE} from './facts.ts'
import type {PartFacts, StateFact} from './facts.ts'
import {CLOCK, spelledAt} from './line.ts'

/** From the lowest to the highest pitch, as text and as key numbers (middle C = 60). */
export interface PitchRange {
  readonly low: string
  readonly high: string
  readonly lowMidi: number
  readonly highMidi: number
}

/** A transposition that holds from a measure on. Steps and semitones include the octaves. */
export interface DeclaredPassage {
  readonly measure: string
  readonly staff: number
  readonly transposition: {readonly diatonic: number; readonly chromatic: number}
  /** `a major second lower`. */
  readonly words: string
}

/** What a part uses. */
export interface Profile {
  readonly clefs: readonly {
    readonly measure: string
    readonly staff: number
    readonly clef: string
  }[]
  readonly keys: readonly {
    readonly measure: string
    readonly fifths?: number
    readonly words: string
  }[]
  readonly written?: PitchRange
  readonly sounding?: PitchRange
  /** Where four fifths of the sounding time lie. */
  readonly tessitura?: PitchRange
  /** Pitched notes, grace notes and cues left out. */
  readonly notes: number
  readonly unpitched: number
  /** The longest stretch of measures that all have notes. */
  readonly longest?: {readonly from: string; readonly to: string; readonly measures: number}
  /** Quarters sounded at each key number from `lowMidi` of the sounding range on. */
  readonly density: readonly number[]
  /** The ranges of the instrument, and what share of the sounding time lies within each. */
  readonly registers: readonly (PitchRange & {
    readonly tier: 'student' | 'tutti' | 'pro'
    readonly share: number
  })[]
  /** Measures in which the part plays several notes at once, or is told to divide. */
  readonly divided: number
}

export function readDeclared(facts: PartFacts): readonly DeclaredPassage[] {
  return changes(facts, (a, b) =>
    sameInterval(a.transposition.interval, b.transposition.interval),
  ).map(({measure, staff, state}) => ({
    measure: numberOf(facts, measure),
    staff,
    transposition: {...state.transposition.interval},
    words: describeInterval(state.transposition.interval),
  }))
}

/** What a part uses, as it is believed to sound. */
export function readProfile(facts: PartFacts, beliefs: readonly Belief[]): Profile {
  const pitches = soundingTime(beliefs)
  const sounding = wholeRange(pitches)
  const written = writtenRange(beliefs)
  const tessitura = middleRange(pitches)
  const longest = longestStretch(facts, beliefs)
  return {
    clefs: changes(facts, (a, b) => sameClef(a.clef, b.clef)).map(({measure, staff, state}) => ({
      measure: numberOf(facts, measure),
      staff,
      clef: formatClef(state.clef),
    })),
    keys: readKeys(facts),
    ...(written && {written}),
    ...(sounding && {sounding}),
    ...(tessitura && {tessitura}),
    notes: beliefs.reduce((sum, {line}) => sum + line.count, 0),
    unpitched: facts.unpitched,
    ...(longest && {longest}),
    density: densityOf(pitches),
    registers: registersOf(pitches, beliefs[0]?.judged[0]?.hypothesis.instrument),
    divided: dividedMeasures(facts),
  }
}

interface Sounded {
  readonly pitch: Pitch
  readonly midi: number
  readonly quarters: number
}

/** The believed sounding pitches, from low to high, with the time that each is heard. */
function soundingTime(beliefs: readonly Belief[]): readonly Sounded[] {
  const found = new Map<number, {pitch: Pitch; quarters: number}>()
  for (const {line, judged} of beliefs) {
    const intervals = judged[0]?.hypothesis.intervals ?? []
    for (let note = 0; note < line.count; note++) {
      const interval = intervals[line.clef[note] ?? 0] ?? UNISON
      const midi = (line.midi[note] ?? 0) + interval.chromatic
      const quarters = (line.duration[note] ?? 0) / CLOCK
      const known = found.get(midi)
      if (known) known.quarters += quarters
      else found.set(midi, {pitch: transpose(spelledAt(line, note), interval), quarters})
    }
  }
  return [...found]
    .map(([midi, {pitch, quarters}]) => ({midi, pitch, quarters}))
    .toSorted((a, b) => a.midi - b.midi)
}

function writtenRange(beliefs: readonly Belief[]): PitchRange | undefined {
  let low: Pitch | undefined
  let high: Pitch | undefined
  for (const {line} of beliefs) {
    for (let note = 0; note < line.count; note++) {
      const midi = line.midi[note] ?? 0
      if (!low || midi < midiOf(low)) low = spelledAt(line, note)
      if (!high || midi > midiOf(high)) high = spelledAt(line, note)
    }
  }
  return low && high && toRange(low, high)
}

function wholeRange(pitches: readonly Sounded[]): PitchRange | undefined {
  const [low] = pitches
  const high = pitches.at(-1)
  return low && high && toRange(low.pitch, high.pitch)
}

/** The range without the tenth of the time that is lowest and the tenth that is highest. */
function middleRange(pitches: readonly Sounded[]): PitchRange | undefined {
  const total = pitches.reduce((sum, {quarters}) => sum + quarters, 0)
  const within = (list: readonly Sounded[]): Sounded | undefined => {
    let before = 0
    return list.find(({quarters}) => (before += quarters) >= total / 10)
  }
  const low = within(pitches)
  const high = within(pitches.toReversed())
  return low && high && toRange(low.pitch, high.pitch)
}

function densityOf(pitches: readonly Sounded[]): readonly number[] {
  const [low] = pitches
  const high = pitches.at(-1)
  if (!low || !high) return []
  const density = Array.from({length: high.midi - low.midi + 1}, () => 0)
  for (const {midi, quarters} of pitches)
    density[midi - low.midi] = Math.round(quarters * 100) / 100
  return density
}

function registersOf(
  pitches: readonly Sounded[],
  instrument: Instrument | undefined,
): Profile['registers'] {
  const total = pitches.reduce((sum, {quarters}) => sum + quarters, 0)
  return (['student', 'tutti', 'pro'] as const).flatMap((tier) => {
    const range = instrument?.ranges[tier]
    if (!range) return []
    const {low, high} = {low: midiOf(range.low), high: midiOf(range.high)}
    const inside = pitches.reduce(
      (sum, {midi, quarters}) => sum + (midi >= low && midi <= high ? quarters : 0),
      0,
    )
    const share = total > 0 ? Math.round((inside / total) * 1000) / 1000 : 1
    return [{tier, ...toRange(range.low, range.high), share}]
  })
}

function longestStretch(facts: PartFacts, beliefs: readonly Belief[]): Profile['longest'] {
  const count = facts.numbers.length
  let best = {from: 0, measures: 0}
  let from = 0
  for (let measure = 0; measure <= count; measure++) {
    if (measure < count && beliefs.some(({line}) => line.played[measure])) continue
    if (measure - from > best.measures) best = {from, measures: measure - from}
    from = measure + 1
  }
  if (best.measures === 0) return undefined
  const to = numberOf(facts, best.from + best.measures - 1)
  return {from: numberOf(facts, best.from), to, measures: best.measures}
}

function dividedMeasures(facts: PartFacts): number {
  const measures = new Set(
    facts.words.filter(({text}) => DIVIDED.test(text)).map(({measure}) => measure),
  )
  for (let note = 0; note < facts.notes.count; note++)
    if ((facts.notes.flags[note] ?? 0) & NOTE.chord) measures.add(measureOf(facts, note))
  return measures.size
}

const DIVIDED = /\b(div(is[ie]|\.)?|divisés?|geteilt|getheilt|gesplitst|verdeeld)\b/i

function readKeys(facts: PartFacts): Profile['keys'] {
  const own = facts.states.filter(({staff, state}) => staff === 1 && state.key !== undefined)
  return own
    .filter(({state}, index) => {
      const before = own[index - 1]?.state.key
      return !before || (state.key !== undefined && !sameKey(before, state.key))
    })
    .flatMap(({measure, state: {key}}) => {
      if (!key) return []
      const place = {measure: numberOf(facts, measure), words: describeKey(key)}
      return [isTraditional(key) ? {...place, fifths: key.fifths} : place]
    })
}

/** The states of each staff that differ from the one before. */
function changes(
  facts: PartFacts,
  same: (a: StaffState, b: StaffState) => boolean,
): readonly StateFact[] {
  const last = new Map<number, StaffState>()
  return facts.states.filter(({staff, state}) => {
    const before = last.get(staff)
    last.set(staff, state)
    return !before || !same(before, state)
  })
}

function numberOf(facts: PartFacts, measure: number): string {
  return facts.numbers[measure] ?? String(measure + 1)
}

function toRange(low: Pitch, high: Pitch): PitchRange {
  return {
    low: formatPitch(low),
    high: formatPitch(high),
    lowMidi: midiOf(low),
    highMidi: midiOf(high),
  }
}
