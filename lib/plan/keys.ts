import {fifthsOf} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {isTraditional} from '../pitch/key.ts'
import type {Key} from '../pitch/key.ts'
import type {KeyPolicy} from './job.ts'

/** A stretch under one concert key, and what the target would add to written to get sounding. */
export interface KeyRegion {
  readonly concert: Key | undefined
  readonly interval: Interval
}

/** What printing a region's signature costs beyond its signs: turning it at all, and turning back and forth. */
const TURN = 0.5
const FLIP = 8
const AGAINST_PREFERENCE = 12

/**
 * For each region in order, by how many diminished seconds the target's interval is turned so that its signature stays
 * readable: 0 as it is, 1 turns flats into sharps (twelve fifths up), -1 sharps into flats. Chosen over the whole part,
 * fewest signs first, with a price for changing direction, so that a modulation does not flip back and forth
 * (renotation-rules K2, K3: five sharps rather than seven flats; six signs keep their direction).
 */
export function chooseTurns(regions: readonly KeyRegion[], policy: KeyPolicy): number[] {
  const choices = [-1, 0, 1] as const
  const table: {readonly cost: number; readonly from: number}[][] = []
  for (const region of regions) {
    const previous = table.at(-1)
    table.push(
      choices.map((turn) => {
        const own = costOf(region, turn, policy)
        if (!previous) return {cost: own, from: 0}
        let from = 0
        let cost = Infinity
        previous.forEach((entry, index) => {
          const total = entry.cost + (choices[index] === turn ? 0 : FLIP)
          if (total < cost) {
            cost = total
            from = index
          }
        })
        return {cost: cost + own, from}
      }),
    )
  }
  const last = table.at(-1)
  if (!last) return []
  let at = last.reduce(
    (best, entry, index) => (entry.cost < (last[best]?.cost ?? Infinity) ? index : best),
    1,
  )
  const turns = regions.map(() => 0)
  for (let index = table.length - 1; index >= 0; index--) {
    turns[index] = choices[at] ?? 0
    at = table[index]?.[at]?.from ?? 1
  }
  return turns
}

/** The fifths of the target's signature for a region. */
export function targetFifths(region: KeyRegion, turn: number): number | undefined {
  if (!region.concert || !isTraditional(region.concert)) return undefined
  return region.concert.fifths - fifthsOf(region.interval) + 12 * turn
}

function costOf(region: KeyRegion, turn: number, policy: KeyPolicy): number {
  const fifths = targetFifths(region, turn)
  if (fifths === undefined) return turn === 0 ? 0 : TURN
  const signs = Math.abs(fifths)
  // Beyond the limit the nearest signature wins, however far: better nine flats told than none.
  if (signs > policy.limit) return 1000 * signs
  const against =
    policy.prefer === 'sharps' ? fifths < 0 : policy.prefer === 'flats' ? fifths > 0 : false
  return signs + (turn === 0 ? 0 : TURN) + (against && signs >= 5 ? AGAINST_PREFERENCE : 0)
}
