import type {Language} from '../instruments/instrument.ts'
import {add, negate} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {transpose} from '../pitch/pitch.ts'
import {sectionAt} from '../plan/plan.ts'
import type {PartPlan, Section} from '../plan/plan.ts'
import {staffPosition} from '../staff/clef.ts'
import type {PartFacts} from '../survey/facts.ts'
import {hasCues, linesIn, playsIn, quartersOf} from './cue-line.ts'
import type {CueLine} from './cue-line.ts'

/** When a part gets cues, and how long they are. In measures. */
export interface CuePolicy {
  /** A cue stands before every entry after at least so much rest. */
  readonly rest: number
  /** How long a cue is, if the music allows. */
  readonly length: number
}

/**
 * renotation-rules Q1: eight to ten measures of rest, fewer where tempo or metre change in them. A cue of two measures shows where one
 * is; four are the most a player follows.
 */
export const DEFAULT_CUES: CuePolicy = {rest: 8, length: 2}
const LONGEST = 4

/** A part that cues may be taken from. */
export interface CueSource {
  readonly facts: PartFacts
  /** As a cue names it: short. */
  readonly name: string
  /** Places in the score that lie between the two parts: 1 is the neighbour. */
  readonly distance: number
  /** Cues are not taken from singers while anybody else plays (renotation-rules Q7). */
  readonly sings: boolean
}

/** What stands before an entry, to be read and not played. */
export interface Cue {
  readonly source: CueSource
  readonly line: {readonly staff: number; readonly voice: string}
  /** Measures from 0; `to`, where the reader enters, is not included (renotation-rules Q6). */
  readonly from: number
  readonly to: number
  /** How much higher than it sounds the cue is written, so that it lies in the reader's staff (Q5). */
  readonly octaves: number
  /** Measures that the reader has rested before the entry. */
  readonly rest: number
}

export interface CueChoice {
  readonly cues: readonly Cue[]
  /** Entries, by measure, before which nobody plays anything that could be cued. */
  readonly uncued: readonly {readonly entry: number; readonly rest: number}[]
}

/**
 * The cues of a part: one before each entry after a long rest, from whoever is best heard and followed there. `isBusy`
 * tells measures in which the player has something else to play.
 */
export function chooseCues(
  host: PartFacts,
  plan: PartPlan,
  sources: readonly CueSource[],
  policy: CuePolicy = DEFAULT_CUES,
  isBusy: (measure: number) => boolean = () => false,
): CueChoice {
  const cues: Cue[] = []
  const uncued: {entry: number; rest: number}[] = []
  for (const {entry, rest} of entriesOf(host, sources, policy, isBusy)) {
    const section = sectionAt(plan, 1, {measure: entry - 1, onset: 0})
    if (!section || section.untouched) continue
    const last = cues.at(-1)?.source
    let best: {readonly cue: Cue; readonly worth: number} | undefined
    for (const source of sources) {
      for (let length = 1; length <= Math.min(LONGEST, rest); length++) {
        for (const line of linesIn(source.facts, entry - length, entry)) {
          const worth = worthOf(line, {source, length, section, policy, usual: source === last})
          if (worth === undefined || (best && best.worth >= worth)) continue
          const {staff, voice} = line
          const octaves = octavesFor(line, section)
          const span = {from: entry - length, to: entry}
          best = {worth, cue: {source, line: {staff, voice}, ...span, octaves, rest}}
        }
      }
    }
    if (best) cues.push(best.cue)
    else uncued.push({entry, rest})
  }
  return {cues, uncued}
}

const MOVED: Readonly<Record<Language, readonly [lower: string, higher: string]>> = {
  en: ['lower', 'higher'],
  fr: ['plus bas', 'plus haut'],
  de: ['tiefer', 'höher'],
  it: ['sotto', 'sopra'],
  es: ['más grave', 'más agudo'],
  nl: ['lager', 'hoger'],
}

/** `Fl. 1`, and where the cue is moved `Fl. 1 (8va lower)` (renotation-rules Q3, Q5). */
export function cueLabel({source, octaves}: Cue, language: Language): string {
  if (octaves === 0) return source.name
  const size = ['8va', '15ma', '22ma'][Math.abs(octaves) - 1] ?? `${7 * Math.abs(octaves) + 1}ma`
  return `${source.name} (${size} ${MOVED[language][octaves < 0 ? 0 : 1]})`
}

interface Entry {
  /** The first measure in which the part plays again. */
  readonly entry: number
  readonly rest: number
}

/** Entries after long rests, or after shorter ones in which tempo or metre change; not where cues stand already. */
function entriesOf(
  host: PartFacts,
  sources: readonly CueSource[],
  policy: CuePolicy,
  isBusy: (measure: number) => boolean,
): Entry[] {
  const all = [host, ...sources.map(({facts}) => facts)]
  const turns = new Set(all.flatMap(({tempos}) => tempos.map(({measure}) => measure)))
  // Some files leave measures of rest empty: they say nothing of the metre.
  let before = 0
  host.lengths.forEach((_, measure) => {
    const quarters = quartersOf(host, measure)
    if (before > 0 && quarters > 0 && quarters !== before) turns.add(measure)
    before = quarters || before
  })
  const entries: Entry[] = []
  let rest = 0
  for (let measure = 0; measure < host.numbers.length; measure++) {
    if (isBusy(measure)) {
      rest = 0
      continue
    }
    if (!playsIn(host, measure)) {
      rest++
      continue
    }
    const turned = Array.from({length: rest}, (_, index) => measure - rest + index).some(
      (each) => each > measure - rest && turns.has(each),
    )
    const cued = rest > 0 && hasCues(host, measure - 1)
    if (!cued && (rest >= policy.rest || (turned && rest >= policy.rest / 2)))
      entries.push({entry: measure, rest})
    rest = 0
  }
  return entries
}

/** What speaks for a cue and against it. The proportions are ours; the grounds are those of renotation-rules Q5 to Q8. */
const WORTH = {
  measure: 0.4,
  distance: 0.1,
  usual: 0.3,
  sings: 5,
  solo: 2,
  dense: 0.5,
  chord: 1,
  monotone: 1.5,
  octave: 0.8,
  outside: 0.3,
  gap: 0.4,
  cut: 0.4,
  entrance: 0.5,
}
/** Notes a quarter up to which a line is clear at sight. */
const CLEAR = 2

interface CueCase {
  readonly source: CueSource
  readonly length: number
  readonly section: Section
  readonly policy: CuePolicy
  /** The cue before was taken from the same part. */
  readonly usual: boolean
}

/** How good a cue a line makes; undefined where it makes none: it has to play in the first measure and in the last. */
function worthOf(line: CueLine, {source, length, section, policy, usual}: CueCase) {
  const {notes} = line
  const [first, last] = [notes[0], notes.at(-1)]
  const {facts} = source
  if (!first || !last || notes.length < 2) return undefined
  const entry = last.measure + 1
  const begin = entry - length
  if (first.measure !== begin || last.measure - first.measure !== length - 1) return undefined
  const quarters = Array.from({length}, (_, index) => quartersOf(facts, begin + index))
  const total = quarters.reduce((sum, each) => sum + each, 0)
  const pitches = new Set(notes.map(({sounding}) => `${sounding.step}${sounding.alter}`))
  const chords = notes.filter(({chord}) => chord).length / notes.length
  const octaves = octavesFor(line, section)
  const rested = begin > 0 && !playsIn(facts, begin - 1)
  return (
    0 -
    WORTH.measure * Math.abs(length - policy.length) -
    WORTH.distance * Math.min(10, source.distance) +
    (usual ? WORTH.usual : 0) -
    (source.sings ? WORTH.sings : 0) -
    (isSolo(facts, begin, entry) ? WORTH.solo : 0) -
    WORTH.dense * Math.max(0, notes.length / Math.max(1, total) - CLEAR) -
    WORTH.chord * chords -
    (pitches.size < 2 ? WORTH.monotone : 0) -
    WORTH.octave * Math.abs(octaves) -
    WORTH.outside * outsideBy(line, section, octaves) -
    WORTH.gap * Math.max(0, total - last.end) -
    (last.bound || first.tiedFrom ? WORTH.cut : 0) +
    (rested ? WORTH.entrance : 0)
  )
}

function isSolo({words}: PartFacts, from: number, to: number): boolean {
  return words.some(({measure, text}) => measure >= from && measure < to && /\bsolo\b/i.test(text))
}

/** The octaves that put a line into the reader's staff: none if it lies well enough. */
function octavesFor(line: CueLine, section: Section): number {
  const price = (octaves: number): number =>
    outsideBy(line, section, octaves) + 2 * Math.abs(octaves)
  return [0, 1, -1, 2, -2, 3, -3, 4, -4].reduce((best, octaves) =>
    price(octaves) < price(best) ? octaves : best,
  )
}

/** How far, on average, the notes lie outside of the staff, in steps; one ledger line does not count. */
function outsideBy({notes}: CueLine, {clef, transposition}: Section, octaves: number): number {
  const away: Interval = {diatonic: 7 * octaves, chromatic: 12 * octaves}
  const interval = add(negate(transposition.interval), away)
  const steps = notes.map(({sounding}) => {
    const position = staffPosition(transpose(sounding, interval), clef)
    return Math.max(0, -2 - position, position - 10)
  })
  return steps.reduce((sum, each) => sum + each, 0) / Math.max(1, notes.length)
}
