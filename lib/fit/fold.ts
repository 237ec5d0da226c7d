import type {PartFacts, Position} from '../survey/facts.ts'
import {DEFAULT_COSTS, createPricing} from './fold-price.ts'
import type {FoldCosts, Pricing} from './fold-price.ts'
import {reasonFor} from './fold-reason.ts'
import type {Attack, Line, Tone} from './line.ts'
import {partInNeed, phrasesOf, seamsOf} from './phrases.ts'
import type {Phrase} from './phrases.ts'
import type {Reach} from './reach.ts'
import type {Surroundings} from './surroundings.ts'

/** A stretch of a line, both ends included, that is played so many octaves higher (positive) or lower than written for. */
export interface Fold {
  /** The first attack and the last. */
  readonly from: Position
  readonly to: Position
  readonly octaves: number
  /** Why, as a clause: `6 of its 14 notes lie below Bb1, its lowest note`. */
  readonly reason: string
}

/** A phrase and where it is played. */
export interface FoldedPhrase extends Phrase {
  readonly octaves: number
}

/** The octaves of a whole line for one player. */
export interface FoldPlan {
  readonly folds: readonly Fold[]
  readonly phrases: readonly FoldedPhrase[]
  /** The octaves from each place on where they change, for the plan of the part. */
  readonly registers: readonly (Position & {readonly octaves: number})[]
  /** Tones that lie out of reach all the same. */
  readonly unplayable: readonly Tone[]
  /** The price of the whole, in notes that lie uncomfortably; lower is better. */
  readonly cost: number
}

export interface FoldOptions {
  /** What the other parts sound, so that a bass stays a bass. */
  readonly surroundings?: Surroundings | undefined
  readonly costs?: Partial<FoldCosts> | undefined
  /** Octaves that may be chosen; by default as far as any note needs, at most five each way. */
  readonly octaves?: readonly number[] | undefined
}

/** For each phrase of a line the octave that costs least over the whole part (renotation-rules O5). Exact. */
export function foldLine(line: Line, reach: Reach, options: FoldOptions = {}): FoldPlan {
  const octaves = options.octaves ?? octavesFor(line, reach)
  const costs = {...DEFAULT_COSTS, ...options.costs}
  const seams = seamsOf(line)
  const misses = countMisses(line, reach, octaves)
  const phrases = phrasesOf(line, seams).flatMap((phrase) => partInNeed(phrase, seams, misses))
  const pricing = createPricing(line, reach, phrases, costs, options.surroundings)
  const {path, cost} = cheapestPath(phrases, octaves, pricing)
  const folded = phrases.map((phrase, index) => ({...phrase, octaves: path[index] ?? 0}))
  return {
    folds: foldsOf(line, reach, folded),
    phrases: folded,
    registers: registersOf(line, folded),
    unplayable: folded.flatMap((phrase) => outOfReach(line, reach, phrase)),
    cost,
  }
}

/** The price of a choice of octaves, phrase by phrase: what `foldLine` makes least. */
export function priceOf(
  phrases: readonly Phrase[],
  octaves: readonly number[],
  pricing: Pricing,
): number {
  return phrases.reduce((sum, phrase, index) => {
    const own = octaves[index] ?? 0
    const before = phrases[index - 1]
    const change = before ? pricing.change(before, phrase, octaves[index - 1] ?? 0, own) : 0
    return sum + pricing.phrase(phrase, own) + change
  }, 0)
}

/** The place in words: `measures 5 to 12`. */
export function measuresOf(facts: PartFacts, {from, to}: Pick<Fold, 'from' | 'to'>): string {
  const first = facts.numbers[from.measure] ?? ''
  const last = facts.numbers[to.measure] ?? ''
  return from.measure === to.measure ? `measure ${first}` : `measures ${first} to ${last}`
}

function cheapestPath(
  phrases: readonly Phrase[],
  octaves: readonly number[],
  pricing: Pricing,
): {readonly path: number[]; readonly cost: number} {
  const table: {readonly cost: number; readonly from: number}[][] = []
  phrases.forEach((phrase, index) => {
    const before = phrases[index - 1]
    const row = table.at(-1)
    table.push(
      octaves.map((octave) => {
        const own = pricing.phrase(phrase, octave)
        if (!before || !row) return {cost: own, from: 0}
        let from = 0
        let cost = Infinity
        row.forEach((entry, each) => {
          const total = entry.cost + pricing.change(before, phrase, octaves[each] ?? 0, octave)
          if (total < cost) [cost, from] = [total, each]
        })
        return {cost: cost + own, from}
      }),
    )
  })
  const last = table.at(-1)
  if (!last) return {path: [], cost: 0}
  let at = 0
  last.forEach((entry, index) => {
    if (entry.cost < (last[at]?.cost ?? Infinity)) at = index
  })
  const cost = last[at]?.cost ?? 0
  const path = phrases.map(() => 0)
  for (let index = table.length - 1; index >= 0; index--) {
    path[index] = octaves[at] ?? 0
    at = table[index]?.[at]?.from ?? 0
  }
  return {path, cost}
}

/** At pitch first, then nearer octaves before farther ones: of equal prices the first wins. */
function octavesFor(line: Line, reach: Reach): number[] {
  let low = Infinity
  let high = -Infinity
  for (const tone of line.tones) {
    low = Math.min(low, tone.midi)
    high = Math.max(high, tone.midi)
  }
  const up = Math.min(5, Math.max(1, Math.ceil((reach.easyLow - low) / 12)))
  const down = Math.min(5, Math.max(1, Math.ceil((high - reach.easyHigh) / 12)))
  const octaves = Array.from({length: up + down + 1}, (_, index) => index - down)
  return octaves.toSorted((a, b) => Math.abs(a) - Math.abs(b) || b - a)
}

/** How many tones of attacks `from` to `to` lie out of reach at the best octave for them. */
function countMisses(line: Line, reach: Reach, octaves: readonly number[]) {
  const sums = octaves.map((octave) => {
    let sum = 0
    return [0, ...line.attacks.map((attack) => (sum += countOut(attack, reach, octave)))]
  })
  return (from: number, to: number): number =>
    sums.reduce((best, sum) => Math.min(best, (sum[to + 1] ?? 0) - (sum[from] ?? 0)), Infinity)
}

function countOut({tones, low, high}: Attack, reach: Reach, octaves: number): number {
  const by = 12 * octaves
  if (low + by >= reach.low && high + by <= reach.high) return 0
  return tones.filter(({midi}) => midi + by < reach.low || midi + by > reach.high).length
}

function outOfReach(line: Line, reach: Reach, phrase: FoldedPhrase): Tone[] {
  const by = 12 * phrase.octaves
  return line.attacks
    .slice(phrase.from, phrase.to + 1)
    .flatMap(({tones}) => tones.filter(({midi}) => midi + by < reach.low || midi + by > reach.high))
}

/** A register holds until the next: a note tied on after the last attack of its phrase moves with it. */
function registersOf(line: Line, phrases: readonly FoldedPhrase[]): FoldPlan['registers'] {
  let octaves = 0
  return phrases.flatMap((phrase) => {
    const attack = line.attacks[phrase.from]
    if (!attack || phrase.octaves === octaves) return []
    octaves = phrase.octaves
    return [{measure: attack.measure, onset: attack.onset, octaves}]
  })
}

/** Neighbouring phrases that move alike are one fold. */
function foldsOf(line: Line, reach: Reach, phrases: readonly FoldedPhrase[]): Fold[] {
  const runs: {from: number; to: number; octaves: number}[] = []
  for (const {from, to, octaves} of phrases) {
    const last = runs.at(-1)
    if (last?.octaves === octaves && !line.attacks[from]?.apart) last.to = to
    else runs.push({from, to, octaves})
  }
  return runs.flatMap(({from, to, octaves}) => {
    const first = line.attacks[from]
    const last = line.attacks[to]
    if (octaves === 0 || !first || !last) return []
    return [
      {
        from: {measure: first.measure, onset: first.onset},
        to: {measure: last.measure, onset: last.onset},
        octaves,
        reason: reasonFor(line.attacks.slice(from, to + 1), reach, octaves),
      },
    ]
  })
}
