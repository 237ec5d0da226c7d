import type {Report} from './diagnostic.ts'
import type {Change} from './ensemble/change.ts'
import type {Instrument} from './instruments/instrument.ts'
import type {Joiner} from './join/joiner.ts'
import type {JoinRequest, JoinedPlan} from './joining.ts'
import type {Context} from './musicxml/context.ts'
import {firstContext} from './musicxml/context.ts'
import type {Header} from './musicxml/header.ts'
import {readHeader, unwantedEntries} from './musicxml/header.ts'
import {advance} from './musicxml/measure.ts'
import type {Reading} from './musicxml/measure.ts'
import {createWriter} from './musicxml/source.ts'
import {isKeyless, planPart} from './plan/decide.ts'
import {identityOf} from './plan/identity.ts'
import {isIdle} from './plan/job.ts'
import type {PartJob} from './plan/job.ts'
import type {PartPlan} from './plan/plan.ts'
import {editConcertFlag} from './rules/concert.ts'
import {editCredits} from './rules/credit.ts'
import {editHeading} from './rules/heading.ts'
import {editing, rules} from './rules/index.ts'
import {editLayout} from './rules/layout.ts'
import {createExcerpt} from './excerpt.ts'
import type {Excerpt} from './excerpt.ts'
import {cutFrames, measureOf, readFacts, readingOf} from './score.ts'
import {gatherKeys} from './score-keys.ts'
import {watchMarks} from './score-marks.ts'
import type {Score} from './score.ts'
import {ensembleOf} from './survey/ensemble.ts'
import type {PartFacts} from './survey/facts.ts'
import {readFormer} from './survey/former.ts'
import {applyEdits, removeElement} from './xml/edit.ts'
import type {Edit} from './xml/edit.ts'
import {descendant, textOf} from './xml/element.ts'
import type {Treatment} from './xml/frame.ts'

export {findPart, openScore, readFacts, readMeasures, readingOf} from './score.ts'
export type {Score} from './score.ts'

/** What is to become of a score: of the parts named by id, and of the others. */
export interface Job {
  readonly parts: ReadonlyMap<string, PartJob>
  readonly others: 'keep' | 'drop'
  /** Music of other parts that goes into some of the parts: cues, a voice that their players cover. */
  readonly joins?: ReadonlyMap<string, JoinRequest> | undefined
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
  const parts = [...job.parts].filter(([id, part]) => !isIdle(part) || job.joins?.has(id))
  const readings = readingsOf(parts, job.joins)
  const names = new Map(score.header.parts.map(({id, name}) => [id, name]))
  // A phrase is folded with an ear on the bass: that takes all parts.
  const folds = parts.some(([, {fold}]) => fold !== undefined)
  const asksAll = folds || (job.joins?.size ?? 0) > 0
  const everybody = asksAll ? [...names.keys()].map((id) => [id, undefined] as const) : []
  const rekeyed = parts.flatMap(([id, {for: instrument, to}]) => (instrument || to ? id : []))
  const gathering = names.size > 1 ? gatherKeys(rekeyed) : undefined
  // What is handed on unread has been seen by nobody, and the measures of a timewise score hold all parts.
  const isPartOfIt = job.others === 'drop' && parts.length === job.parts.size
  const excerpt =
    isPartOfIt && score.header.form === 'partwise'
      ? createExcerpt((part) => job.parts.has(part))
      : undefined
  const [top] = score.header.parts
  const marks =
    job.others === 'drop' && top ? watchMarks(top, new Set(job.parts.keys())) : undefined
  const facts = await readFacts(score, new Map([...everybody, ...readings]), report, {
    believing: true,
    keys: gathering,
    excerpt,
    marks,
  })
  marks?.tell(report)
  const ensemble = ensembleOf([...names.values()])
  const keyless = rekeyed.some((id) => isKeyless(facts.get(id)?.states ?? []))
  const keys = keyless ? gathering?.keys() : undefined
  const tell = (told: Change[]) => (change: Change) => {
    told.push(change)
    changed(change)
  }
  const plans = new Map<string, PartPlan>()
  const joined = new Map<string, JoinedPlan>()
  for (const [id, part] of parts) {
    const own = facts.get(id)
    if (!own) continue
    if (part.for) tellPitchless(own, part.for, report)
    // Who it was for matters where marks may mean nothing to the new player.
    const marked = part.for !== undefined && (own.words.length > 0 || own.elements.size > 0)
    const around = {
      identity: identityOf(await readFormer(score.header, id, {family: marked}), part, [
        ...names.values(),
      ]),
      ensemble,
      agreedKeys: keys?.agreed,
      openKey: keys?.open,
    }
    const request = job.joins?.get(id)
    if (request) {
      const {planJoint} = await import('./joining.ts')
      const plan = (asked: PartJob): PartPlan => planPart(own, asked, around, report)
      const told: Change[] = []
      const input = {score, part: id, job: part, facts, readings, plan, report, changed: tell(told)}
      const found = await planJoint(input, request)
      if (found) joined.set(id, found)
      if (found) plans.set(id, await withHeading(found.plan, part, score, told))
      continue
    }
    if (!part.fold || !part.for) {
      plans.set(id, planPart(own, part, around, report))
      continue
    }
    const {foldPart} = await import('./ensemble/folding.ts')
    const folding = {part: id, instrument: part.for, tier: part.fold, drop: part.drop, names}
    const {registers, dropped, changes} = foldPart(facts, folding, report)
    const plan = planPart(own, {...part, registers, dropped}, around, report)
    plans.set(id, await withHeading(plan, part, score, changes))
    for (const change of changes) changed(change)
  }
  yield* write(score, job, {plans, joined, readings, excerpt}, report)
}

/** Pitches for who plays none, or none for who plays them: somebody meant another part, or another instrument. */
function tellPitchless({part, notes}: PartFacts, instrument: Instrument, report: Report): void {
  const playsNone = instrument.family === 'unpitched'
  if (playsNone !== notes.count > 0) return
  const name = instrument.labels.en.name
  const message = playsNone
    ? `${name} has no pitches: the notes stay as they are written`
    : `the part has no pitches: ${name} gets its name on it and nothing else`
  report({code: 'part/no-pitches', severity: 'warning', message, at: {part}})
}

/** The plan with what a cover part says of itself. */
async function withHeading(
  plan: PartPlan,
  {for: cover, covers}: PartJob,
  {header}: Score,
  changes: readonly Change[],
): Promise<PartPlan> {
  if (!covers || !cover) return plan
  const {coverHeading} = await import('./ensemble/cover-heading.ts')
  const source = descendant(header.root, 'identification', 'source')
  const heading = coverHeading({
    cover,
    missing: covers.instrument,
    original: covers.name,
    title: header.title,
    edition: source && textOf(header.text, source),
    plan,
    changes,
    language: plan.identity?.language ?? 'en',
  })
  return {...plan, heading}
}

/** How the parts are read that are not to be believed, and the voices that go into them. */
function readingsOf(
  parts: readonly (readonly [string, PartJob])[],
  joins: Job['joins'],
): Map<string, Reading | undefined> {
  const covers = [...(joins?.values() ?? [])].flatMap(({cover}) => cover ?? [])
  const asked = covers.map(({part, from}) => [part, from] as const)
  for (const [id, {from}] of parts) asked.push([id, from])
  return new Map(asked.map(([id, from]) => [id, from && readingOf(from)]))
}

interface Decided {
  readonly plans: ReadonlyMap<string, PartPlan>
  readonly joined: ReadonlyMap<string, JoinedPlan>
  readonly readings: ReadonlyMap<string, Reading | undefined>
  readonly excerpt: Excerpt | undefined
}

async function* write(
  score: Score,
  job: Job,
  decided: Decided,
  report: Report,
): AsyncGenerator<Uint8Array> {
  const joiners = await openJoiners(score, decided.joined, report)
  try {
    yield* writeFrames(score, job, decided, joiners, report)
  } finally {
    for (const joiner of joiners.values()) await joiner.close()
  }
}

async function* writeFrames(
  score: Score,
  job: Job,
  {plans, readings, excerpt}: Decided,
  joiners: ReadonlyMap<string, Joiner>,
  report: Report,
): AsyncGenerator<Uint8Array> {
  const contexts = new Map<string, Context>()
  const editors = new Map([...plans].map(([part, plan]) => [part, editing(plan, report)]))
  const encode = createWriter(score.open)
  const encoder = new TextEncoder()
  const keeps = (part: string): boolean => job.others === 'keep' || job.parts.has(part)
  const treat = (part: string): Treatment =>
    plans.has(part) ? 'read' : keeps(part) ? 'copy' : 'drop'
  let batch: Uint8Array[] = []
  let size = 0
  for await (const frames of excerpt?.cut(score) ?? cutFrames(score, treat)) {
    for (const frame of frames) {
      const plan = frame.part === undefined ? undefined : plans.get(frame.part)
      let bytes = frame.bytes
      if (frame.kind === 'header') {
        const text = rewriteHeader(score.header, keeps, plans, report)
        if (text !== score.header.text) bytes = encoder.encode(text)
      } else if (frame.kind === 'measure' && plan) {
        const context = contexts.get(plan.part) ?? firstContext(plan.part)
        const measure = measureOf(frame, context, readings.get(plan.part), () => {})
        contexts.set(plan.part, advance(context, measure))
        const edits = editors.get(plan.part)?.(measure) ?? []
        const joiner = joiners.get(plan.part)
        const text = applyEdits(measure.text, edits)
        if (joiner) bytes = encoder.encode(await joiner.join({...measure, text}))
        else if (edits.length > 0) bytes = encoder.encode(text)
      }
      batch.push(bytes)
      size += bytes.length
      if (size >= BATCH) {
        yield encode(whole(batch, size))
        batch = []
        size = 0
      }
    }
  }
  if (size > 0) yield encode(whole(batch, size))
}

interface OpenJoiner extends Joiner {
  close(): Promise<void>
}

async function openJoiners(
  score: Score,
  joined: ReadonlyMap<string, JoinedPlan>,
  report: Report,
): Promise<ReadonlyMap<string, OpenJoiner>> {
  const joiners = new Map<string, OpenJoiner>()
  if (joined.size === 0) return joiners
  const {openGuests} = await import('./guests.ts')
  const {createJoiner} = await import('./join/joiner.ts')
  for (const [part, {joint, guests}] of joined) {
    const {measures, close} = openGuests(score, guests)
    joiners.set(part, {...createJoiner(part, joint, measures, report), close})
  }
  return joiners
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
    ...editHeading(header, all),
  ])
  const layouts = [...editLayout(readHeader(text), all)]
  return applyEdits(text, layouts)
}

function isInside(edit: Edit, outer: Edit): boolean {
  return edit.start > outer.start && edit.end < outer.end
}

function whole(batch: readonly Uint8Array[], size: number): Uint8Array {
  const [only] = batch
  if (only && batch.length === 1) return only
  const all = new Uint8Array(size)
  let at = 0
  for (const bytes of batch) {
    all.set(bytes, at)
    at += bytes.length
  }
  return all
}
