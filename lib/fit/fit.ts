import type {Instrument} from '../instruments/instrument.ts'
import {measureEffort, measureLasting, octavesByAttack} from './effort.ts'
import type {Effort, Lasting} from './effort.ts'
import type {FoldPlan} from './fold.ts'
import type {Line, Tone} from './line.ts'
import {TIERS, keysOf} from './reach.ts'
import type {Tier} from './reach.ts'
import {lacksOf} from './technique.ts'

/** How a line lies on an instrument. */
export interface Fit {
  readonly notes: number
  /** The ambitus as it is played, octaves moved; 60 is middle C. Undefined for an empty line. */
  readonly ambitus?: {readonly low: number; readonly high: number}
  /** For each tier that the catalogue has a range for, widest first. */
  readonly tiers: readonly TierFit[]
  readonly effort: Effort
  /** What the line asks for that the instrument does not have, as clauses. */
  readonly lacks: readonly string[]
}

/** How much of a line lies inside the range of a tier: shares from 0 to 1. */
export interface TierFit {
  readonly tier: Tier
  readonly notes: number
  readonly time: number
  readonly outside: readonly Outside[]
}

/** A tone that lies outside a range. */
export interface Outside {
  readonly tone: Tone
  /** As it is played. */
  readonly key: number
  /** Semitones below (negative) or above the range. */
  readonly by: number
}

/** Measures a line on an instrument, as the fold plan has it played or, without one, at pitch. */
export function measureFit(
  line: Line,
  instrument: Instrument,
  plan?: FoldPlan,
  lasting: Lasting = measureLasting(line),
): Fit {
  const octaves = octavesByAttack(line.attacks.length, plan?.phrases ?? [])
  const played = line.attacks.flatMap(({tones}, index) =>
    tones.map((tone) => ({tone, key: tone.midi + 12 * (octaves[index] ?? 0)})),
  )
  const time = played.reduce((sum, {tone}) => sum + tone.end - tone.start, 0)
  const tiers = TIERS.flatMap((tier): TierFit[] => {
    const range = instrument.ranges[tier]
    if (!range) return []
    const [low, high] = keysOf(range)
    const outside = played
      .filter(({key}) => key < low || key > high)
      .map((each) => ({...each, by: each.key - (each.key < low ? low : high)}))
    const lost = outside.reduce((sum, {tone}) => sum + tone.end - tone.start, 0)
    const notes = played.length === 0 ? 1 : 1 - outside.length / played.length
    return [{tier, notes, time: time === 0 ? 1 : 1 - lost / time, outside}]
  })
  const ambitus = played.reduce(
    ({low, high}, {key}) => ({low: Math.min(low, key), high: Math.max(high, key)}),
    {low: Infinity, high: -Infinity},
  )
  return {
    notes: played.length,
    ...(played.length > 0 && {ambitus}),
    tiers,
    effort: measureEffort(line, instrument, octaves, lasting),
    lacks: lacksOf(line, instrument),
  }
}
