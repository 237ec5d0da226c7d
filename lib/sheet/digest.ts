import type {Diagnostic} from '../diagnostic.ts'
import type {Instrument} from '../instruments/instrument.ts'
import {instrumentById, instruments} from '../instruments/instrument.ts'
import type {ScorePart} from '../musicxml/header.ts'
import type {Measure, Reading} from '../musicxml/measure.ts'
import {describeKey} from '../pitch/key.ts'
import {midiOf} from '../pitch/pitch.ts'
import type {PairProof} from '../proof/compare.ts'
import type {Intended} from '../proof/intended.ts'
import {describeClef, isPitched} from '../staff/clef.ts'
import {widen} from '../staff/range.ts'
import type {Range} from '../staff/range.ts'
import type {PitchRange} from '../survey/profile.ts'
import {joinMoves, withReasons} from './change.ts'
import type {Change} from './change.ts'
import {compareStep, shown, soundsWords} from './compare.ts'
import type {Intent, Memory} from './compare.ts'
import {shapeOf} from './layout.ts'
import type {Shape} from './layout.ts'
import type {Step} from './match.ts'

const TIERS = ['pro', 'tutti', 'student'] as const

export type Tier = (typeof TIERS)[number]

/** One of the two parts at a glance. */
export interface SideDigest {
  readonly id: string
  readonly name: string
  readonly instrument?: Instrument
  /** In words, in the order of the music, each once: `2 flats`; `bass clef`; `sounds a major ninth lower than written`. */
  readonly keys: readonly string[]
  readonly clefs: readonly string[]
  readonly sounds: readonly string[]
  readonly written?: PitchRange
  readonly sounding?: PitchRange
  /** What its instrument can play, widest first: sounding. */
  readonly reach: readonly (PitchRange & {readonly tier: Tier})[]
  /** How many notes sound each key; 60 is middle C. */
  readonly density: ReadonlyMap<number, number>
  readonly measures: number
  readonly notes: number
}

/** Two parts that belong together at a glance, and everything that the second has otherwise. */
export interface Digest {
  readonly title: string
  readonly before: SideDigest
  readonly after: SideDigest
  readonly changes: readonly Change[]
  /** The printed numbers of the measures. */
  readonly numbers: readonly string[]
  readonly shapes: readonly Shape[]
}

export interface DigestOptions {
  readonly title: string
  readonly before: ScorePart
  readonly after: ScorePart
  readonly intended: readonly Intended[]
  readonly diagnostics: readonly Diagnostic[]
  /** Ids of further parts of BEFORE whose music AFTER holds as well: what was told of them concerns it. */
  readonly joined?: readonly string[]
  /** How BEFORE is read where it is not to be believed. */
  readonly reading?: Reading | undefined
}

/** Reads two parts side by side, once. */
export async function readDigest(
  steps: AsyncIterable<Step>,
  {title, before, after, intended, diagnostics, joined = [], reading}: DigestOptions,
): Promise<Digest> {
  const sides = {before: createSide(before), after: createSide(after)}
  const intent = intentOf(intended, before.id)
  const seen: Change[] = []
  const numbers: string[] = []
  const shapes: Shape[] = []
  let memory: Memory = new Map()
  for await (const step of steps) {
    const compared = compareStep(step, memory, intent, reading)
    memory = compared.memory
    seen.push(...compared.changes)
    if (step.before) sides.before.add(step.before)
    if (step.after) sides.after.add(step.after)
    numbers.push(step.before?.number ?? step.after?.number ?? '')
    shapes.push(shapeOf(step, shapes.at(-1)?.open ?? 0))
  }
  const told = diagnostics.filter(
    ({at}) => at?.part === undefined || [before.id, ...joined].includes(at.part),
  )
  const indexOf = (number: string) => Math.max(0, numbers.indexOf(number))
  const named =
    before.name === after.name
      ? []
      : [
          {
            kind: 'name' as const,
            measure: 0,
            number: numbers[0] ?? '',
            what: `${before.name || before.id} → ${after.name || after.id}`,
          },
        ]
  return {
    title,
    before: await sides.before.done(),
    after: await sides.after.done(),
    changes: withReasons([...named, ...joinMoves(seen)], told, indexOf),
    numbers,
    shapes,
  }
}

/** The changes with what the proof found in place of what the comparison saw. */
export function withProof(changes: readonly Change[], proof: PairProof | undefined): Change[] {
  if (!proof) return [...changes]
  const found = proof.differences.map(({measure, measureIndex, beat, what, kind}) => ({
    kind: 'difference' as const,
    measure: measureIndex,
    number: measure,
    what: kind === 'transposed' ? what : `beat ${beat}: ${what}`,
    reason: 'not in any report',
  }))
  return [...changes.filter(({kind}) => kind !== 'difference'), ...found].toSorted(
    (a, b) => a.measure - b.measure,
  )
}

/** Reads from a report what was meant to happen. Onsets are fractions of quarters. */
export function intentOf(intended: readonly Intended[], part: string): Intent {
  const own = intended.filter((one) => one.part === undefined || one.part === part)
  return ({kind, measure, onset, semitones}) =>
    own.find(
      (one) =>
        (one.kind === 'cues' ? 'added' : one.kind) === kind &&
        one.semitones === semitones &&
        compareSpot(one.from, measure, onset) <= 0 &&
        compareSpot(one.to, measure, onset, true) >= 0,
    )?.reason
}

function compareSpot(
  spot: Intended['from'],
  measure: number,
  onset: number,
  isEnd = false,
): number {
  if (!spot) return 0
  const index = typeof spot.measure === 'number' ? spot.measure : Number(spot.measure) - 1
  if (index !== measure) return index - measure
  if (spot.onset === undefined) return isEnd ? Infinity : -Infinity
  const [over, under = '1'] = spot.onset.split('/')
  return Number(over) / Number(under) - onset
}

function createSide(part: ScorePart) {
  const keys = new Set<string>()
  const clefs = new Set<string>()
  const sounds = new Set<string>()
  const density = new Map<number, number>()
  let written: Range | undefined
  let sounding: Range | undefined
  let measures = 0
  let notes = 0
  return {
    add(measure: Measure): void {
      measures++
      for (const note of measure.notes) {
        // Cues are for the eye: the player plays none of them.
        if (!note.written || !note.sounding || note.cue) continue
        const {key, clef, transposition} = note.state
        notes++
        if (key) keys.add(describeKey(key))
        if (isPitched(clef)) clefs.add(describeClef(clef))
        sounds.add(soundsWords(transposition.interval))
        written = widen(written, note.written)
        sounding = widen(sounding, note.sounding)
        const midi = Math.round(midiOf(note.sounding))
        density.set(midi, (density.get(midi) ?? 0) + 1)
      }
    },
    async done(): Promise<SideDigest> {
      const instrument = await instrumentOf(part, sounds)
      return {
        id: part.id,
        name: part.name,
        ...(instrument && {instrument}),
        keys: keys.size > 0 ? [...keys] : ['no signature'],
        clefs: [...clefs],
        sounds: [...sounds],
        ...(written && {written: inKeys(written)}),
        ...(sounding && {sounding: inKeys(sounding)}),
        reach: TIERS.flatMap((tier) => {
          const range = instrument?.ranges[tier]
          return range ? [{tier, ...inKeys(range)}] : []
        }),
        density,
        measures,
        notes,
      }
    },
  }
}

function inKeys({low, high}: Range): PitchRange {
  return {low: shown(low), high: shown(high), lowMidi: midiOf(low), highMidi: midiOf(high)}
}

/** A name is understood as a score label, where the catalogue does not have it as it stands. */
const SURE = 0.6

/**
 * The instrument that a part is for: by its name and its standard sound, and of several by what the part sounds. A cor
 * may be in any key; that in F sounds a fifth lower.
 */
async function instrumentOf(
  {name, instruments: listed}: ScorePart,
  sounds: ReadonlySet<string>,
): Promise<Instrument | undefined> {
  const {findInstrument} = await import('../instruments/find.ts')
  const search = name === '' ? undefined : findInstrument(name)
  if (search?.kind === 'one') return search.found
  const [likeliest] =
    name === '' ? [] : (await import('../instruments/label.ts')).readLabel(name).instruments
  if (likeliest && likeliest.confidence >= SURE) return instrumentById(likeliest.id)
  const ids = listed.flatMap(({sound}) => sound ?? [])
  const called = search?.kind === 'several' ? search.candidates : instruments
  const alike = called.filter(({sound}) => ids.includes(sound))
  const candidates = alike.length > 0 ? alike : search?.kind === 'several' ? called : []
  if (candidates.length < 2) return candidates[0]
  return candidates.find(({transposition}) => sounds.has(soundsWords(transposition)))
}
