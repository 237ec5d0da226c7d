import type {Report} from './diagnostic.ts'
import type {Change} from './ensemble/folding.ts'
import type {Context} from './musicxml/context.ts'
import {firstContext} from './musicxml/context.ts'
import type {Header} from './musicxml/header.ts'
import {readHeader, unwantedEntries} from './musicxml/header.ts'
import {advance} from './musicxml/measure.ts'
import type {Measure, Reading} from './musicxml/measure.ts'
import {createWriter} from './musicxml/source.ts'
import {isKeyless, planPart} from './plan/decide.ts'
import {identityOf} from './plan/identity.ts'
import {isIdle} from './plan/job.ts'
import type {PartJob} from './plan/job.ts'
import type {PartPlan} from './plan/plan.ts'
import {editConcertFlag} from './rules/concert.ts'
import {editCredits} from './rules/credit.ts'
import {rules} from './rules/index.ts'
import {withTargets} from './rules/rule.ts'
import {editLayout} from './rules/layout.ts'
import {cutFrames, measureOf, readAgreedKeys, readFacts, readingOf} from './score.ts'
import type {Score} from './score.ts'
import {ensembleOf} from './survey/ensemble.ts'
import {readFormer} from './survey/former.ts'
import {applyEdits, removeElement} from './xml/edit.ts'
import type {Edit} from './xml/edit.ts'
import type {Treatment} from './xml/frame.ts'

export {findPart, openScore, readFacts, readMeasures, readingOf} from './score.ts'
export type {Score} from './score.ts'

/** What is to become of a score: of the parts named by id, and of the others. */
export interface Job {
  readonly parts: ReadonlyMap<string, PartJob>
  readonly others: 'keep' | 'drop'
}

/**
 * Rewrites a score: reads it once to decide, once to write. What no rule changes comes out byte for byte, in the
 * encoding of the source. Throws `ScoreError` before the first byte when the score is faulty. `changed` is told of every
 * passage that is meant to sound otherwise, in the words of the proof.
 */
export async function* rewrite(
  score: Score,
  job: Job,
  report: Report,
  changed: (change: Change) => void = () => {},
): AsyncGenerator<Uint8Array> {
  const parts = [...job.parts].filter(([, part]) => !isIdle(part))
  const readings = new Map(parts.map(([id, {from}]) => [id, from && readingOf(from)]))
  const names = new Map(score.header.parts.map(({id, name}) => [id, name]))
  // A phrase is folded with an ear on the bass: that takes all parts.
  const folds = parts.some(([, {fold}]) => fold !== undefined)
  const everybody = folds ? [...names.keys()].map((id) => [id, undefined] as const) : []
  const facts = await readFacts(score, new Map([...everybody, ...readings]), report, {
    believing: true,
  })
  const ensemble = ensembleOf([...names.values()])
  const keyless = parts.some(
    ([id, {for: instrument, to}]) => (instrument || to) && isKeyless(facts.get(id)?.states ?? []),
  )
  const keys = keyless && names.size > 1 ? await readAgreedKeys(score) : undefined
  const plans = new Map<string, PartPlan>()
  for (const [id, part] of parts) {
    const own = facts.get(id)
    if (!own) continue
    // Who it was for matters where marks may mean nothing to the new player.
    const marked = part.for !== undefined && (own.words.length > 0 || own.elements.size > 0)
    const around = {
      identity: identityOf(await readFormer(score.header, id, {family: marked}), part),
      ensemble,
      agreedKeys: keys?.agreed,
      openKey: keys?.open,
    }
    if (!part.fold || !part.for) {
      plans.set(id, planPart(own, part, around, report))
      continue
    }
    const {foldPart} = await import('./ensemble/folding.ts')
    const request = {part: id, instrument: part.for, tier: part.fold, drop: part.drop, names}
    const {registers, dropped, changes} = foldPart(facts, request, report)
    plans.set(id, planPart(own, {...part, registers, dropped}, around, report))
    for (const change of changes) changed(change)
  }
  yield* write(score, job, plans, readings, report)
}

async function* write(
  score: Score,
  job: Job,
  plans: ReadonlyMap<string, PartPlan>,
  readings: ReadonlyMap<string, Reading | undefined>,
  report: Report,
): AsyncGenerator<Uint8Array> {
  const contexts = new Map<string, Context>()
  const encode = createWriter(score.open)
  const encoder = new TextEncoder()
  const keeps = (part: string): boolean => job.others === 'keep' || job.parts.has(part)
  const treat = (part: string): Treatment =>
    plans.has(part) ? 'read' : keeps(part) ? 'copy' : 'drop'
  let batch: Uint8Array[] = []
  let size = 0
  for await (const frame of cutFrames(score, treat)) {
    const plan = frame.part === undefined ? undefined : plans.get(frame.part)
    let bytes = frame.bytes
    if (frame.kind === 'header') {
      const text = rewriteHeader(score.header, keeps, plans, report)
      if (text !== score.header.text) bytes = encoder.encode(text)
    } else if (frame.kind === 'measure' && plan) {
      const context = contexts.get(plan.part) ?? firstContext(plan.part)
      const measure = measureOf(frame, context, readings.get(plan.part), () => {})
      contexts.set(plan.part, advance(context, measure))
      const edits = editsOf(measure, withTargets(plan, measure), report)
      if (edits.length > 0) bytes = encoder.encode(applyEdits(measure.text, edits))
    }
    batch.push(bytes)
    size += bytes.length
    if (size >= BATCH) {
      yield encode(joined(batch, size))
      batch = []
      size = 0
    }
  }
  if (size > 0) yield encode(joined(batch, size))
}

/** What every rule wants changed in a measure. */
function editsOf(measure: Measure, plan: PartPlan, report: Report): Edit[] {
  const edits: Edit[] = []
  for (const rule of rules) for (const edit of rule.rewrite(measure, plan, report)) edits.push(edit)
  return edits
}

/** Bytes handed out at a time. */
const BATCH = 128 * 1024

function rewriteHeader(
  header: Header,
  keeps: (part: string) => boolean,
  plans: ReadonlyMap<string, PartPlan>,
  report: Report,
): string {
  const unwanted = unwantedEntries(header, keeps)
  const dropsAny = header.parts.some(({id}) => !keeps(id))
  const removals = dropsAny ? unwanted.map((element) => removeElement(header.text, element)) : []
  const all = [...plans.values()]
  const edits = all.flatMap((plan) =>
    rules.flatMap((rule) => [...(rule.rewriteHeader?.(header, plan, report) ?? [])]),
  )
  const kept = header.parts.filter(({id}) => keeps(id)).length
  const text = applyEdits(header.text, [
    ...removals,
    // A group that goes with its other parts needs no new name.
    ...edits.filter((edit) => !removals.some((gone) => isInside(edit, gone))),
    ...editConcertFlag(header, all, kept),
    ...editCredits(header, all, report),
  ])
  const layouts = [...editLayout(readHeader(text), all)]
  return applyEdits(text, layouts)
}

function isInside(edit: Edit, outer: Edit): boolean {
  return edit.start > outer.start && edit.end < outer.end
}

function joined(batch: readonly Uint8Array[], size: number): Uint8Array {
  const [only] = batch
  if (only && batch.length === 1) return only
  const whole = new Uint8Array(size)
  let at = 0
  for (const bytes of batch) {
    whole.set(bytes, at)
    at += bytes.length
  }
  return whole
}
