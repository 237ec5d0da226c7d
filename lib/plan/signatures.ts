import type {Report} from '../diagnostic.ts'
import {DIMINISHED_SECOND, formatInterval, negate, sameInterval} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {describeKey, isTraditional, majorTonic, transposeKey} from '../pitch/key.ts'
import type {Key} from '../pitch/key.ts'
import {placeIn} from '../survey/facts.ts'
import type {PartFacts, StateFact} from '../survey/facts.ts'
import type {Transposition} from '../staff/state.ts'
import type {KeyPolicy} from './job.ts'
import {chooseTurns, targetFifths} from './keys.ts'
import type {KeyRegion} from './keys.ts'
import {lastBefore} from './plan.ts'
import type {Position, Section} from './plan.ts'

/** The key that the sounding music has from a position on, in fifths, as the other parts of the score show it. */
export interface ConcertKey extends Position {
  readonly fifths: number
}

export interface SignatureOptions {
  readonly print: boolean
  readonly policy: KeyPolicy
  /** Present when the part itself prints no signatures and the score's are to be taken. */
  readonly agreed?: readonly ConcertKey[] | undefined
  readonly explain?: boolean
}

/** Gives every section the key that the wanted notation declares there. */
export function withDeclaredKeys(
  drafts: readonly Section[],
  declared: readonly StateFact[],
): Section[] {
  return drafts.map((draft) => {
    if (draft.untouched) return draft
    const key = lastBefore(declared, draft)?.state.key
    return {...draft, ...(key && {key})}
  })
}

/** Gives every section its key; turns intervals enharmonically where a signature would have too many signs. */
export function withKeys(
  drafts: readonly Section[],
  facts: PartFacts,
  options: SignatureOptions,
  report: Report,
): Section[] {
  const regions = regionsOf(drafts, options.agreed)
  const changes = drafts.some(
    ({untouched, source, transposition}) =>
      !untouched && !sameInterval(source.transposition.interval, transposition.interval),
  )
  const turns =
    changes && options.print ? chooseTurns(regions, options.policy) : regions.map(() => 0)
  let region = -1
  return drafts.map((draft, index) => {
    const starts = regions[region + 1]?.from === index
    if (starts) region++
    if (draft.untouched) return draft
    const {concert, taken} = regions[region] ?? {}
    const turn = turns[region] ?? 0
    const transposition = turn === 0 ? draft.transposition : turned(draft.transposition, turn)
    if (!concert) return {...draft, transposition}
    const key = options.print ? transposeKey(concert, negate(transposition.interval)) : {fifths: 0}
    if (starts && turn !== 0) reportTurn(draft, regions[region], key, facts, transposition, report)
    if (starts && taken && options.print) reportAgreed(draft, key, facts, report)
    if (starts && options.explain) reportChoice(draft, key, facts, report)
    return {...draft, transposition, key}
  })
}

interface Region extends KeyRegion {
  readonly from: number
  /** The key is the score's, not the part's own. */
  readonly taken: ConcertKey | undefined
}

function regionsOf(
  drafts: readonly Section[],
  agreed: readonly ConcertKey[] | undefined,
): Region[] {
  const regions: Region[] = []
  drafts.forEach((draft, index) => {
    const own =
      draft.source.key && transposeKey(draft.source.key, draft.source.transposition.interval)
    const taken = agreed && otherThan(own, lastBefore(agreed, draft))
    const concert = taken ? {fifths: taken.fifths} : own
    const before = drafts[index - 1]
    const same =
      before &&
      before.source.key === draft.source.key &&
      regions.at(-1)?.taken === taken &&
      sameInterval(before.source.transposition.interval, draft.source.transposition.interval) &&
      sameFifths(before.transposition.interval, draft.transposition.interval)
    if (!same || regions.length === 0) {
      const interval = draft.transposition.interval
      regions.push({concert, interval, from: index, taken})
    }
  })
  return regions
}

/** The score's key where it is not what the part says anyway. */
function otherThan(own: Key | undefined, agreed: ConcertKey | undefined): ConcertKey | undefined {
  const same = own && agreed && isTraditional(own) && (own.fifths - agreed.fifths) % 12 === 0
  return same ? undefined : agreed
}

/** The same transposition, written enharmonically: so many diminished seconds higher. */
export function turned(transposition: Transposition, turn: number): Transposition {
  const {diatonic, chromatic} = transposition.interval
  return {
    ...transposition,
    interval: {diatonic: diatonic + turn * DIMINISHED_SECOND.diatonic, chromatic},
  }
}

function reportTurn(
  at: Section,
  region: Region | undefined,
  key: Key,
  facts: PartFacts,
  to: Transposition,
  report: Report,
): void {
  const plain = region && targetFifths(region, 0)
  const instead = plain === undefined ? '' : `, not ${describeKey({fifths: plain})}`
  report({
    code: 'key/turned',
    severity: 'info',
    message: `the signature is written enharmonically, with ${describeKey(key)}${instead}, and the transposition as ${formatInterval(to.interval)}`,
    at: placeIn(facts, at.measure),
    ...(isTraditional(key) && {actual: String(key.fifths)}),
  })
}

function reportAgreed(at: Section, key: Key, facts: PartFacts, report: Report): void {
  report({
    code: 'key/taken-from-score',
    severity: 'info',
    message: `the part prints no key signature and gets that of the other parts: ${describeKey(key)}`,
    at: placeIn(facts, at.measure),
  })
}

/** The signature beside the one that sounds alike. */
function reportChoice(at: Section, key: Key, facts: PartFacts, report: Report): void {
  if (!isTraditional(key)) return
  const other = {fifths: key.fifths > 0 ? key.fifths - 12 : key.fifths + 12}
  report({
    code: 'key/choice',
    severity: 'info',
    message: `${majorTonic(key.fifths)} major or its relative, ${describeKey(key)}; written as ${majorTonic(other.fifths)} major it would have ${describeKey(other)}`,
    at: placeIn(facts, at.measure),
  })
}

function sameFifths(a: Interval, b: Interval): boolean {
  return 7 * (a.chromatic - b.chromatic) - 12 * (a.diatonic - b.diatonic) === 0
}
