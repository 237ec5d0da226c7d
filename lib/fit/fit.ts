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
  let notes = 0
  let time = 0
  let low = Infinity
  let high = -Infinity
  line.attacks.forEach((attack, index) => {
    const by = 12 * (octaves[index] ?? 0)
    low = Math.min(low, attack.low + by)
    high = Math.max(high, attack.high + by)
    notes += attack.tones.length
    for (const {start, end} of attack.tones) time += end - start
  })
  const whole = {notes, time}
  return {
    notes,
    ...(notes > 0 && {ambitus: {low, high}}),
    tiers: TIERS.flatMap((tier) => {
      const range = instrument.ranges[tier]
      return range ? [{tier, ...measureTier(line, octaves, keysOf(range), whole)}] : []
    }),
    effort: measureEffort(line, instrument, octaves, lasting),
    lacks: lacksOf(line, instrument),
  }
}

function measureTier(
  line: Line,
  octaves: readonly number[],
  [low, high]: readonly [number, number],
  {notes, time}: {readonly notes: number; readonly time: number},
): Omit<TierFit, 'tier'> {
  const outside: Outside[] = []
  let lost = 0
  line.attacks.forEach((attack, index) => {
    const octave = 12 * (octaves[index] ?? 0)
    if (attack.low + octave >= low && attack.high + octave <= high) return
    for (const tone of attack.tones) {
      const key = tone.midi + octave
      if (key >= low && key <= high) continue
      outside.push({tone, key, by: key - (key < low ? low : high)})
      lost += tone.end - tone.start
    }
  })
  return {
    notes: notes === 0 ? 1 : 1 - outside.length / notes,
    time: time === 0 ? 1 : 1 - lost / time,
    outside,
  }
}
