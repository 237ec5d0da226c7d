import type {Attack, Line} from './line.ts'
import type {Phrase} from './phrases.ts'
import type {Reach} from './reach.ts'
import type {Surroundings} from './surroundings.ts'

/**
 * What folding costs, in notes that lie outside the player's comfortable range. The proportion of `moved` to such a note
 * is renotation-rules O5: a phrase moves when more than a fifth of it, or its last note, lies outside.
 */
export interface FoldCosts {
  /** A note that cannot be played. */
  readonly unplayable: number
  /** A note moved by an octave. */
  readonly moved: number
  /** The last note of a phrase outside, as a share of the notes of the phrase. */
  readonly ending: number
  /** A change of octave by one between two phrases, by how clearly they are parted (0 to 6). */
  readonly change: readonly number[]
  /** A change that turns the direction of the line at the seam, or opens a leap of more than an octave there. */
  readonly contour: number
  /** A note of the bass that rises above the next bass (O5 e), or of another line that sinks below it. */
  readonly crossing: number
  /** A note of the bass that no longer doubles the next bass an octave below, but in unison. */
  readonly octaveLost: number
}

/** The proportions are O5's where it has them; the rest is ours. */
export const DEFAULT_COSTS: FoldCosts = {
  unplayable: 1000,
  moved: 0.2,
  ending: 0.2,
  change: [Infinity, 4, 3, 2, 1.5, 1, 0.5],
  contour: 2,
  crossing: 0.3,
  octaveLost: 0.05,
}

/** Prices for one line and one player. */
export interface Pricing {
  /** What it costs to play a phrase so many octaves away. */
  phrase(phrase: Phrase, octaves: number): number
  /** What the seam costs when the two phrases are moved by those octaves. */
  change(before: Phrase, after: Phrase, octavesBefore: number, octavesAfter: number): number
}

/** Quarters of rest after which nobody follows the contour across a seam. */
const FORGOTTEN = 4

export function createPricing(
  line: Line,
  reach: Reach,
  phrases: readonly Phrase[],
  costs: FoldCosts,
  surroundings?: Surroundings,
): Pricing {
  const known = new Map<Phrase, Map<number, number>>(phrases.map((each) => [each, new Map()]))
  return {
    phrase(phrase, octaves) {
      const prices = known.get(phrase)
      const price =
        prices?.get(octaves) ?? pricePhrase(line, reach, phrase, octaves, costs, surroundings)
      prices?.set(octaves, price)
      return price
    },
    change(before, after, octavesBefore, octavesAfter) {
      const by = Math.abs(octavesAfter - octavesBefore)
      if (by === 0) return 0
      const price = (costs.change[after.seam] ?? 0) * by
      const last = line.attacks[before.to]
      const first = line.attacks[after.from]
      if (!last || !first || first.start - last.end >= FORGOTTEN) return price
      return price + costs.contour * breaksAt(last, first, octavesAfter - octavesBefore)
    },
  }
}

function pricePhrase(
  line: Line,
  reach: Reach,
  {from, to}: Phrase,
  octaves: number,
  costs: FoldCosts,
  surroundings: Surroundings | undefined,
): number {
  const by = 12 * octaves
  let price = 0
  let count = 0
  for (let index = from; index <= to; index++) {
    const attack = line.attacks[index]
    if (!attack) continue
    for (const {midi} of attack.tones) {
      const key = midi + by
      count++
      if (key < reach.low || key > reach.high) price += costs.unplayable
      else if (key < reach.easyLow || key > reach.easyHigh) price++
    }
    price += priceBass(attack.low, by, surroundings?.lowest[index], costs)
  }
  const last = line.attacks[to]
  const ends = last && last.low + by >= reach.easyLow && last.high + by <= reach.easyHigh
  return price + (ends ? 0 : costs.ending * count) + costs.moved * count * Math.abs(octaves)
}

/** Only who was the bass can lose it, and nobody else shall take its place. */
function priceBass(low: number, by: number, next: number | undefined, costs: FoldCosts): number {
  if (by === 0 || next === undefined) return 0
  if (low < next !== low + by < next) return low + by === next ? costs.octaveLost : costs.crossing
  return 0
}

/** How often the contour breaks: 1 when the line turns at the seam, 1 when it leaps where it did not. */
function breaksAt(last: Attack, first: Attack, octaves: number): number {
  const was = first.low - last.low
  const is = was + 12 * octaves
  const turns = Math.sign(was) !== Math.sign(is)
  const leaps = Math.abs(is) > 12 && Math.abs(was) <= 12
  return Number(turns) + Number(leaps)
}
