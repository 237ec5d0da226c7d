import type {Instrument} from '../instruments/instrument.ts'
import {fifthsOf} from '../pitch/interval.ts'
import {isTraditional, majorTonic, transposeKey} from '../pitch/key.ts'
import {doublingOf, lossOf} from './company.ts'
import type {Doubling, Loss} from './company.ts'
import {isBreathless, measureLasting} from './effort.ts'
import type {Lasting} from './effort.ts'
import {measureFit} from './fit.ts'
import type {Fit} from './fit.ts'
import {foldLine} from './fold.ts'
import type {FoldPlan} from './fold.ts'
import {kinshipOf} from './kinship.ts'
import type {Kinship} from './kinship.ts'
import type {Line} from './line.ts'
import {reachOf} from './reach.ts'
import type {Reach, Tier} from './reach.ts'
import {remediesFor} from './remedy.ts'
import type {Neighbour, Unplayable} from './remedy.ts'
import {surroundingsOf} from './surroundings.ts'

/** Another part of the score. */
export interface Seat extends Neighbour {
  /** The part's id. */
  readonly part: string
}

/** Somebody who could cover a part. */
export interface Candidate {
  readonly instrument: Instrument
  readonly tier: Tier
  /** The player's name, where it is a player and not just an instrument. */
  readonly player?: string
  /** Id of the part that they play otherwise. */
  readonly part?: string
  /** How many play that part: one of several can leave it and take nothing away. 1 when absent. */
  readonly desks?: number
  /** Written key signatures that they would rather not read, in fifths. */
  readonly avoids?: readonly number[]
  /** Hardly anybody has one: no cover list of the trade names it. */
  readonly rare?: boolean
}

export interface CoverRequest {
  readonly line: Line
  /** The instrument that the part was written for. */
  readonly missing: Instrument
  readonly others: readonly Seat[]
  readonly candidates: readonly Candidate[]
  readonly byId: (id: string) => Instrument | undefined
}

/** How well one candidate covers the part. */
export interface Cover extends Candidate {
  /** 100 is nothing lost; lower is worse, and below 0 possible. */
  readonly score: number
  readonly reach: Reach
  readonly fold: FoldPlan
  readonly fit: Fit
  readonly kinship: Kinship
  readonly unplayable: readonly Unplayable[]
  readonly loss?: Loss
  /** The written signature that they would rather not read, in fifths. */
  readonly avoided?: number
}

/** Another part that sounds most of the missing voice in some octave. */
export interface Doubled extends Doubling {
  readonly part: string
  readonly name: string
}

/** What each kind of loss takes off 100, at its full share. The proportions are ours. */
const WEIGHTS = {
  unplayable: 60,
  /** Any unplayable note at all: nobody comes first who cannot play the part. */
  anyUnplayable: 20,
  uneasy: 15,
  moved: 12,
  kinship: 40,
  essential: 25,
  together: 5,
  lack: 2,
  breath: 2,
  avoided: 4,
  /** Nobody is covered by it in the trade's lists: there is hardly ever one at hand. */
  rare: 8,
}

/** A part counts as a doubling from this share of the line on. */
const DOUBLES = 0.5

/** Ranks the candidates, best first; those without a known range are left out. */
export function rankCovers(request: CoverRequest): Cover[] {
  const {line, others, candidates} = request
  const surroundings = surroundingsOf(
    line,
    others.map((other) => other.line),
  )
  const lasting = measureLasting(line)
  const covers = candidates.flatMap((candidate): Cover[] => {
    const reach = reachOf(candidate.instrument, candidate.tier)
    if (!reach) return []
    const fold = foldLine(line, reach, {surroundings})
    return [judge(request, candidate, {reach, fold, lasting})]
  })
  return covers.toSorted((a, b) => b.score - a.score || a.fold.cost - b.fold.cost)
}

/** The parts that sound at least half of the line anyway, most of it first. */
export function doubledBy(line: Line, others: readonly Seat[]): Doubled[] {
  return others
    .map(({part, name, line: other}) => ({part, name, ...doublingOf(line, other)}))
    .filter(({share}) => share >= DOUBLES)
    .toSorted((a, b) => b.share - a.share)
}

/** How often the trade's lists name an instrument as a cover: what is at hand is named. */
export function countCovers(instruments: readonly Instrument[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const id of instruments.flatMap(({cover}) => cover))
    counts.set(id, (counts.get(id) ?? 0) + 1)
  return counts
}

/** The signature of a part for the instrument, as 2 for two sharps; where the line begins. */
export function writtenFifths(line: Line, {transposition}: Instrument): number | undefined {
  const {key, transposition: own} = line.facts.states[0]?.state ?? {}
  if (!key || !own) return undefined
  const sounding = transposeKey(key, own.interval)
  if (!isTraditional(sounding)) return undefined
  const fifths = sounding.fifths - fifthsOf(transposition)
  return fifths > 7 ? fifths - 12 : fifths < -7 ? fifths + 12 : fifths
}

/** `2 sharps (D major)`. */
export function describeSignature(fifths: number): string {
  const count = Math.abs(fifths)
  const signs =
    fifths === 0
      ? 'no sharps or flats'
      : `${count} ${fifths > 0 ? 'sharp' : 'flat'}${count === 1 ? '' : 's'}`
  return `${signs} (${majorTonic(fifths)} major)`
}

function judge(
  {line, missing, others, byId}: CoverRequest,
  candidate: Candidate,
  {
    reach,
    fold,
    lasting,
  }: {readonly reach: Reach; readonly fold: FoldPlan; readonly lasting: Lasting},
): Cover {
  const {instrument} = candidate
  const fit = measureFit(line, instrument, fold, lasting)
  const kinship = kinshipOf(missing, instrument, byId)
  const own = others.find(({part}) => part === candidate.part)
  const rest = others.filter((other) => other !== own).map((other) => other.line)
  const alone = (candidate.desks ?? 1) === 1
  const lost = own && lossOf(own.line, line, rest)
  const loss = lost && (alone ? lost : {...lost, essential: 0})
  const fifths = writtenFifths(line, instrument)
  const avoided = fifths !== undefined && candidate.avoids?.includes(fifths) ? fifths : undefined
  const notes = Math.max(1, line.tones.length)
  const uneasy = countUneasy(line, fold, reach) / notes
  const moved = countMoved(line, fold) / notes
  const score =
    100 -
    WEIGHTS.unplayable * (fold.unplayable.length / notes) -
    (fold.unplayable.length > 0 ? WEIGHTS.anyUnplayable : 0) -
    WEIGHTS.uneasy * uneasy -
    WEIGHTS.moved * Math.min(2, moved) -
    WEIGHTS.kinship * (1 - kinship.likeness) -
    WEIGHTS.essential * (loss?.essential ?? 0) -
    WEIGHTS.together * (loss?.together ?? 0) -
    WEIGHTS.lack * fit.lacks.length -
    (isBreathless(fit.effort) ? WEIGHTS.breath : 0) -
    (avoided === undefined ? 0 : WEIGHTS.avoided) -
    (candidate.rare ? WEIGHTS.rare : 0)
  return {
    ...candidate,
    score,
    reach,
    fold,
    fit,
    kinship,
    unplayable: remediesFor(fold, reach, others),
    ...(loss && {loss}),
    ...(avoided !== undefined && {avoided}),
  }
}

function countUneasy(line: Line, {phrases}: FoldPlan, reach: Reach): number {
  let count = 0
  for (const {from, to, octaves} of phrases) {
    for (let index = from; index <= to; index++) {
      for (const {midi} of line.attacks[index]?.tones ?? []) {
        const key = midi + 12 * octaves
        if (key < reach.easyLow || key > reach.easyHigh) count++
      }
    }
  }
  return count
}

/** Notes moved, each as often as it moves octaves. */
function countMoved(line: Line, {phrases}: FoldPlan): number {
  return phrases.reduce(
    (sum, {from, to, octaves}) =>
      sum +
      Math.abs(octaves) *
        line.attacks.slice(from, to + 1).reduce((notes, {tones}) => notes + tones.length, 0),
    0,
  )
}
