import {transposedDifference} from './difference.ts'
import type {Difference} from './difference.ts'
import {formatFraction} from './fraction.ts'
import type {Fraction} from './fraction.ts'
import type {Intended} from './intended.ts'
import {constantInterval} from './offsets.ts'
import {pairParts} from './pairing.ts'
import type {Pair} from './pairing.ts'
import {beginComparison, compareMeasure, endComparison} from './part-comparison.ts'
import type {PartComparison} from './part-comparison.ts'
import type {Reading} from './reader.ts'
import {readInStep, wavesOf} from './step.ts'
import {surveyScore} from './survey.ts'
import type {PartSummary, ScoreSummary} from './survey.ts'
import type {Source} from './text.ts'
import {intervalWords} from './words.ts'

export interface ProveOptions {
  /** How BEFORE is to be read where it is not to be believed: the interval for a part under a clef. */
  readonly reading?: Reading
  /** Changes of sound that were reported. */
  readonly intended?: readonly Intended[]
  /** Pairs of part ids that belong together whatever their names say. */
  readonly pairs?: readonly (readonly [before: string, after: string])[]
  /** True when AFTER need not have all parts of BEFORE. Default: when AFTER is a single part. */
  readonly partial?: boolean
  /** How many differences of a pair are kept; all are counted. Default 1000. */
  readonly keep?: number
}

/** What two scores have in common, and what not. */
export interface Proof {
  /** `intended`: different only where it was reported. */
  readonly verdict: 'equal' | 'intended' | 'different'
  readonly pairs: readonly PairProof[]
  /** Parts that nothing on the other side belongs to. Those of BEFORE weigh only where AFTER should be complete. */
  readonly unpaired: {readonly before: readonly PartName[]; readonly after: readonly PartName[]}
}

export interface PartName {
  readonly id: string
  readonly name: string
}

export interface PairProof {
  readonly before: PartName
  readonly after: PartName
  readonly measures: Sides
  /** Attacks: tied notes count once, grace and cue notes too. */
  readonly notes: Sides
  readonly equal: number
  /** Moved, dropped or added as reported. */
  readonly intended: number
  /** Of the equal and intended ones, spelled otherwise. */
  readonly respelled: number
  readonly different: number
  /** The interval that the whole part is off by. */
  readonly constantInterval?: {readonly semitones: string; readonly name: string}
  /** True when so little agrees that this is other music. */
  readonly otherPiece: boolean
  /** In the order of the score, at most `keep`. */
  readonly differences: readonly Difference[]
  readonly intendedBy: readonly {readonly reason: string; readonly notes: number}[]
}

export interface Sides {
  readonly before: number
  readonly after: number
}

/**
 * Proves that AFTER sounds what BEFORE sounds, or tells where it does not. Parts are paired by id, name and music, and
 * compared measure by measure: sounding pitch, onset, duration over ties, grace notes and cues. Voices, staves and the order of notes
 * at one onset may differ. Each source is read twice, and again for parts in another order or off by an interval.
 * @throws ScoreError `proof/malformed` when a source is no score that can be read.
 * @example
 * const proof = await prove(before, after)
 * for (const line of formatProof(proof)) print(line)
 */
export async function prove(
  before: Source,
  after: Source,
  options: ProveOptions = {},
): Promise<Proof> {
  const left = await surveyScore(before, options)
  const right = await surveyScore(after)
  const {pairs, unpaired} = pairParts(left.parts, right.parts, options.pairs)
  const compare = (chosen: readonly Pair[], bases?: ReadonlyMap<Pair, Fraction>) =>
    comparePairs({before, after, left, right}, chosen, options, bases)

  const compared = await compare(pairs)
  const bases = new Map<Pair, Fraction>()
  for (const [pair, comparison] of compared) {
    const interval = constantInterval(comparison.offsets, comparison.notes.before)
    if (interval) bases.set(pair, interval)
  }
  const again = bases.size === 0 ? undefined : await compare([...bases.keys()], bases)
  const proofs = pairs.flatMap((pair) => {
    const comparison = again?.get(pair) ?? compared.get(pair)
    return comparison ? [proofOf(pair, comparison)] : []
  })
  const partial = options.partial ?? right.parts.length === 1
  const lost = [...unpaired.after, ...(partial ? [] : unpaired.before)].some(hasNotes)
  return {
    verdict: verdictOf(proofs, lost || (pairs.length === 0 && unpaired.before.some(hasNotes))),
    pairs: proofs,
    unpaired: {before: unpaired.before.map(nameOf), after: unpaired.after.map(nameOf)},
  }
}

interface Inputs {
  readonly before: Source
  readonly after: Source
  readonly left: ScoreSummary
  readonly right: ScoreSummary
}

async function comparePairs(
  {before, after, left, right}: Inputs,
  pairs: readonly Pair[],
  {intended = [], keep = 1000, reading}: ProveOptions,
  bases?: ReadonlyMap<Pair, Fraction>,
): Promise<ReadonlyMap<Pair, PartComparison>> {
  const comparisons = new Map(
    pairs.map((pair) => [pair, beginComparison(pair.before.id, intended, keep, bases?.get(pair))]),
  )
  for (const wave of wavesOf(pairs, left, right)) {
    const one = {source: before, inkTies: left.inkTies, ...(reading && {reading})}
    const other = {source: after, inkTies: right.inkTies}
    for await (const step of readInStep(wave, left.timewise && right.timewise, one, other)) {
      const comparison = comparisons.get(step.pair)
      if (comparison) compareMeasure(comparison, step.before, step.after)
    }
  }
  for (const comparison of comparisons.values()) endComparison(comparison)
  return comparisons
}

function proofOf(pair: Pair, comparison: PartComparison): PairProof {
  const {notes, measures, equal, intended, respelled, different, base} = comparison
  const off = base.numerator !== 0
  const agreeing = equal + intended + comparison.transposed
  const most = Math.max(notes.before, notes.after)
  return {
    before: nameOf(pair.before),
    after: nameOf(pair.after),
    measures,
    notes,
    equal,
    intended,
    respelled,
    different,
    ...(off && {
      constantInterval: {semitones: formatFraction(base), name: intervalWords(base)},
    }),
    otherPiece: most >= 16 && agreeing < most / 5,
    differences: off
      ? [transposedDifference(comparison.firstMeasure ?? '1', base), ...comparison.differences]
      : comparison.differences,
    intendedBy: comparison.passages.map((passage) => ({
      reason: passage.intended.reason,
      notes: passage.notes,
    })),
  }
}

function verdictOf(pairs: readonly PairProof[], lost: boolean): Proof['verdict'] {
  if (lost || pairs.some(({different}) => different > 0)) return 'different'
  return pairs.some(({intended}) => intended > 0) ? 'intended' : 'equal'
}

function hasNotes({notes}: PartSummary): boolean {
  return notes > 0
}

function nameOf({id, name}: PartName): PartName {
  return {id, name}
}
