import type {Instrument} from '../instruments/instrument.ts'
import {midiOf} from '../pitch/pitch.ts'
import type {Range} from '../staff/range.ts'

/** How far a player goes: `pro` the professional extreme, `tutti` comfortable in a section, `student` two or three years. */
export type Tier = 'pro' | 'tutti' | 'student'

export const TIERS: readonly Tier[] = ['pro', 'tutti', 'student']

/** What a player can play at all, and what lies well for them: sounding, inclusive, as keys with 60 for middle C. */
export interface Reach {
  readonly low: number
  readonly high: number
  readonly easyLow: number
  readonly easyHigh: number
}

/**
 * The reach of a player of some tier. A student cannot be asked for more than the comfortable range; where the trade's
 * table has no range for the tier, the next wider one counts. Undefined for instruments without a range.
 */
export function reachOf(instrument: Instrument, tier: Tier): Reach | undefined {
  const {pro, tutti, student} = instrument.ranges
  const widest = tier === 'student' ? (tutti ?? pro) : (pro ?? tutti)
  const easy = tier === 'pro' ? widest : tier === 'tutti' ? (tutti ?? widest) : (student ?? widest)
  if (!widest || !easy) return undefined
  const [low, high] = keysOf(widest)
  const [easyLow, easyHigh] = keysOf(easy)
  return {low, high, easyLow: Math.max(low, easyLow), easyHigh: Math.min(high, easyHigh)}
}

/** Lowest and highest key of a range. */
export function keysOf(range: Range): readonly [low: number, high: number] {
  return [midiOf(range.low), midiOf(range.high)]
}
