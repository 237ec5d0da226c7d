import {scoreError} from './diagnostic.ts'
import type {Diagnostic} from './diagnostic.ts'
import type {Notation} from './instruments/notation.ts'
import type {ScorePart} from './musicxml/header.ts'
import type {Source} from './musicxml/source.ts'
import type {PairProof, Proof} from './proof/compare.ts'
import type {Intended} from './proof/intended.ts'
import {loadEngraver} from './report/engraver.ts'
import {closePage, openPage, sectionOf} from './report/sheet-page.ts'
import {findPart, openScore, readMeasures, readingOf} from './score.ts'
import type {Score} from './score.ts'
import {intentOf, readDigest, withProof} from './sheet/digest.ts'
import type {Digest} from './sheet/digest.ts'
import {inStep} from './sheet/match.ts'
import type {Step} from './sheet/match.ts'
import {drawSystems} from './sheet/systems.ts'
import {prove, resolveNotation} from './verbs.ts'

/** What a report says of a change, as `parseReport` reads it. */
export interface ReportedChange {
  readonly pairs: readonly (readonly [before: string, after: string])[]
  readonly changes: readonly Intended[]
  readonly diagnostics: readonly Diagnostic[]
}

export interface CompareOptions {
  /** The part in BEFORE: id, name, or number in the score. Default: the one that AFTER's only part belongs to. */
  readonly part?: string | undefined
  /** What BEFORE is written in, where the file is not to be believed. `believed`: what `survey` finds. */
  readonly from?: string | Notation | undefined
  readonly reports?: readonly ReportedChange[] | undefined
  /** Is told how far the drawing has come, from 0 to 1. */
  readonly progress?: ((done: number) => void) | undefined
}

/** A part before and after at a glance, and what the proof says of it. */
export interface ComparedPart {
  readonly digest: Digest
  readonly proof?: PairProof
}

/**
 * A page of HTML that shows a part before and after, engraved one above the other, with every change, the range and the
 * proof. It needs nothing else and loads nothing. Gives UTF-8 in chunks; both scores are read several times. Throws
 * `ScoreError` before the first chunk: as `prove` does, `part/unknown`, and `sheet/which-part` where it must be said.
 *
 * ```ts
 * for await (const bytes of sheet(score, part, {reports: [parseReport(report)]})) await file.write(bytes)
 * ```
 */
export async function* sheet(
  before: Source,
  after: Source,
  options: CompareOptions = {},
): AsyncGenerator<Uint8Array> {
  const encoder = new TextEncoder()
  const {pair, digest, proof, intended} = await compare(before, after, options, true)
  const engrave = await loadEngraver()
  yield encoder.encode(await openPage(digest, proof))
  const intent = intentOf(intended, pair.before.part.id)
  for await (const system of drawSystems(stepsOf(pair), digest, {engrave, intent})) {
    options.progress?.(system.to / digest.numbers.length)
    yield encoder.encode(sectionOf(system))
  }
  yield encoder.encode(closePage())
}

/**
 * A part before and after at a glance: what `formatSummary` puts in words. The proof is made only when asked for. Throws
 * as `sheet` does.
 */
export async function comparePart(
  before: Source,
  after: Source,
  options: CompareOptions & {readonly prove?: boolean | undefined} = {},
): Promise<ComparedPart> {
  const {digest, proof} = await compare(before, after, options, options.prove ?? false)
  return {digest, ...(proof && {proof})}
}

interface Pair {
  readonly before: Side
  readonly after: Side
}

interface Side {
  readonly score: Score
  readonly part: ScorePart
  readonly from?: Notation | undefined
}

async function compare(
  before: Source,
  after: Source,
  options: CompareOptions,
  proves: boolean,
): Promise<{pair: Pair; digest: Digest; proof?: PairProof; intended: readonly Intended[]}> {
  const reports = options.reports ?? []
  const pairs = reports.flatMap((report) => report.pairs)
  const intended = reports.flatMap((report) => report.changes)
  const scores = {before: await openScore(before), after: await openScore(after)}
  const whole = proves
    ? await prove(before, after, {from: options.from, intended, pairs, partial: true})
    : undefined
  const parts = choosePair(scores, options.part, [...pairs, ...pairsOf(whole)])
  const from = await fromOf(before, parts.before.id, options.from)
  const pair = {
    before: {score: scores.before, part: parts.before, from},
    after: {score: scores.after, part: parts.after},
  }
  const proof = whole?.pairs.find(
    (each) => each.before.id === parts.before.id && each.after.id === parts.after.id,
  )
  const digest = await readDigest(stepsOf(pair), {
    title: scores.before.header.title || scores.after.header.title,
    ...parts,
    intended,
    diagnostics: reports.flatMap(({diagnostics}) => diagnostics),
    joined: pairs.flatMap(([id, other]) => (other === parts.after.id ? id : [])),
    reading: from && readingOf(from),
  })
  return {
    pair,
    digest: {...digest, changes: withProof(digest.changes, proof)},
    ...(proof && {proof}),
    intended,
  }
}

/** The parts to compare: as said, else as the reports and the proof pair them. */
function choosePair(
  {before, after}: {readonly before: Score; readonly after: Score},
  part: string | undefined,
  pairs: readonly (readonly [before: string, after: string])[],
): {readonly before: ScorePart; readonly after: ScorePart} {
  const [only, second] = after.header.parts
  const wanted = part === undefined ? undefined : findPart(before.header, part).id
  const found =
    wanted === undefined
      ? second
        ? undefined
        : pairs.find(([, id]) => id === only?.id)
      : pairs.find(([id]) => id === wanted)
  const beforeId = wanted ?? found?.[0]
  const afterId = found?.[1] ?? (second ? undefined : only?.id)
  const one = before.header.parts.find(({id}) => id === beforeId)
  const other = after.header.parts.find(({id}) => id === afterId)
  if (one && other) return {before: one, after: other}
  throw scoreError(
    'sheet/which-part',
    wanted === undefined
      ? second
        ? 'AFTER has several parts; say which part of BEFORE is meant'
        : 'no part of BEFORE seems to belong to that of AFTER; say which is meant'
      : 'nothing in AFTER belongs to the part',
  )
}

function pairsOf(proof: Proof | undefined): readonly (readonly [string, string])[] {
  return proof?.pairs.map((each) => [each.before.id, each.after.id] as const) ?? []
}

async function fromOf(
  before: Source,
  part: string,
  from: string | Notation | undefined,
): Promise<Notation | undefined> {
  if (from === undefined) return undefined
  if (from !== 'believed') return resolveNotation(from)
  const {readBelieved} = await import('./surveying.ts')
  return (await readBelieved(before, part, () => {})).get(part)
}

function stepsOf({before, after}: Pair): AsyncGenerator<Step> {
  return inStep(measuresOf(before), measuresOf(after))
}

function measuresOf({score, part, from}: Side) {
  return readMeasures(
    score,
    (id) => id === part.id,
    from && readingOf(from),
    () => {},
  )
}
