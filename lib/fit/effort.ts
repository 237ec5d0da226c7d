import type {Family, Instrument} from '../instruments/instrument.ts'
import type {Position} from '../survey/facts.ts'
import {secondsBetween} from './clock.ts'
import type {FoldedPhrase} from './fold.ts'
import type {Attack, Line} from './line.ts'
import {keysOf} from './reach.ts'

/** What a line asks of lips and breath. Times are in seconds, at the score's tempi. */
export interface Effort {
  /** The longest playing without a rest of a quarter. */
  readonly stretch: Span
  /** Share of the playing time, 0 to 1, in the highest fifth of the comfortable range and above. */
  readonly high: number
  readonly tone: Span
  /** The longest passage under one slur, or one long note, for which there is no place to breathe. */
  readonly breath: Span
  /** The longest tone that one breath gives, by instrument; undefined where no breath is needed. */
  readonly limit?: number
  /** The score states no tempo. */
  readonly assumed: boolean
}

export interface Span {
  readonly seconds: number
  readonly from?: Position
}

/** Semitones of the top of the range that count as high: a fifth. */
const HIGH = 7
/** A breath that bends over a phrase lasts longer than a held note at full strength. */
const PHRASE = 1.5
/** Quarters of silence in which a player breathes. */
const BREATH = 0.25

/**
 * Seconds of one tone: renotation-rules section 8 (proposed there) has clarinet and oboe 12, low brass 8, tuba and
 * contrabass clarinet 6; those between are ours.
 */
const LIMITS: Partial<Readonly<Record<Family, number>>> = {
  flutes: 10,
  recorders: 12,
  oboes: 12,
  bassoons: 10,
  clarinets: 12,
  saxophones: 10,
  sarrusophones: 10,
  horns: 10,
  trumpets: 10,
  cornets: 10,
  'bugle-horns': 8,
  trombones: 8,
  tubas: 6,
  voices: 10,
}
/** Instruments that sound below this key, E1, take the breath of a tuba. */
const CONTRABASS = 28

export function breathLimit({family, ranges}: Instrument): number | undefined {
  const limit = LIMITS[family]
  const lowest = ranges.tutti && keysOf(ranges.tutti)[0]
  return limit !== undefined && lowest !== undefined && lowest <= CONTRABASS
    ? Math.min(6, limit)
    : limit
}

/** Whether the longest tone or phrase asks for more breath than one player has. */
export function isBreathless({tone, breath, limit}: Effort): boolean {
  return limit !== undefined && (tone.seconds > limit || breath.seconds > PHRASE * limit)
}

/** What of the effort is the same whoever plays. */
export interface Lasting extends Pick<Effort, 'stretch' | 'tone' | 'breath' | 'assumed'> {
  /** Of each attack, in seconds. */
  readonly seconds: readonly number[]
}

export function measureLasting(line: Line): Lasting {
  let tone: Span = {seconds: 0}
  const seconds = line.attacks.map((attack) => {
    const own = secondsBetween(line.clock, attack.start, attack.end)
    tone = longer(tone, own, attack)
    return own
  })
  return {
    seconds,
    tone,
    stretch: longestRun(line, (before, next) => next.start - before.end < 1),
    breath: longestRun(line, (before, next) => before.slurred && next.start - before.end < BREATH),
    assumed: line.clock.assumed,
  }
}

/** The effort for one instrument; `octaves` by which each attack is moved. */
export function measureEffort(
  line: Line,
  instrument: Instrument,
  octaves: readonly number[],
  {seconds, ...lasting}: Lasting,
): Effort {
  const range = instrument.ranges.tutti ?? instrument.ranges.pro
  const high = range ? keysOf(range)[1] - HIGH : Infinity
  const limit = breathLimit(instrument)
  let played = 0
  let above = 0
  line.attacks.forEach((attack, index) => {
    const own = seconds[index] ?? 0
    played += own
    if (attack.high + 12 * (octaves[index] ?? 0) > high) above += own
  })
  return {
    ...lasting,
    high: played === 0 ? 0 : above / played,
    ...(limit !== undefined && {limit}),
  }
}

/** For each attack the octaves by which its phrase is moved. */
export function octavesByAttack(count: number, phrases: readonly FoldedPhrase[]): number[] {
  const all = Array<number>(count).fill(0)
  for (const {from, to, octaves} of phrases) all.fill(octaves, from, to + 1)
  return all
}

function longestRun(line: Line, goesOn: (before: Attack, next: Attack) => boolean): Span {
  let best: Span = {seconds: 0}
  let first: Attack | undefined
  let end = 0
  line.attacks.forEach((attack, index) => {
    const before = line.attacks[index - 1]
    if (!before || !first || !goesOn(before, attack)) first = attack
    end = first === attack ? attack.end : Math.max(end, attack.end)
    best = longer(best, secondsBetween(line.clock, first.start, end), first)
  })
  return best
}

function longer(best: Span, seconds: number, {measure, onset}: Position): Span {
  return seconds > best.seconds ? {seconds, from: {measure, onset}} : best
}
