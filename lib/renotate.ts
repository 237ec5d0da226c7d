import {scoreError} from './diagnostic.ts'
import type {Report} from './diagnostic.ts'
import type {MovedPassage} from './ensemble/folding.ts'
import {intervalFor} from './instruments/notation.ts'
import type {Notation} from './instruments/notation.ts'
import type {Context} from './musicxml/context.ts'
import {firstContext} from './musicxml/context.ts'
import type {Header, ScorePart} from './musicxml/header.ts'
import {readHeader, unwantedEntries} from './musicxml/header.ts'
import {advance, readMeasure} from './musicxml/measure.ts'
import type {Measure, Reading} from './musicxml/measure.ts'
import {createWriter, openSource, readBytes, toScoreError} from './musicxml/source.ts'
import type {OpenSource, Source} from './musicxml/source.ts'
import {planPart} from './plan/decide.ts'
import {identityOf} from './plan/identity.ts'
import {isIdle} from './plan/job.ts'
import type {PartJob} from './plan/job.ts'
import type {PartPlan} from './plan/plan.ts'
import {editConcertFlag} from './rules/concert.ts'
import {rules} from './rules/index.ts'
import {createFacts} from './survey/facts.ts'
import type {PartFacts} from './survey/facts.ts'
import {createChecker} from './xml/check.ts'
import {applyEdits, removeElement} from './xml/edit.ts'
import {Framer} from './xml/frame.ts'
import type {Frame, Treatment} from './xml/frame.ts'

/** A score that has been opened: what it says before its music, and where the rest is. */
export interface Score {
  readonly open: OpenSource
  readonly header: Header
}

/** What is to become of a score: of the parts named by id, and of the others. */
export interface Job {
  readonly parts: ReadonlyMap<string, PartJob>
  readonly others: 'keep' | 'drop'
}

/** Opens a score and reads its header. Throws `ScoreError` when it is none. */
export async function openScore(source: Source): Promise<Score> {
  return guard(async () => {
    const open = await openSource(source)
    const framer = new Framer({treat: () => 'drop'})
    for await (const bytes of readBytes(open)) {
      for (const frame of framer.push(bytes))
        if (frame.kind === 'header') return {open, header: headerOf(frame)}
    }
    for (const frame of framer.end())
      if (frame.kind === 'header') return {open, header: headerOf(frame)}
    throw scoreError('source/not-a-score', 'the score has no header')
  })
}

/**
 * The first reading: judges the whole file, and gathers the facts of some parts (by id). Throws `ScoreError` at the first
 * fault in the XML. Reports what is odd about declared transpositions.
 */
export async function readFacts(
  score: Score,
  wanted: ReadonlyMap<string, Reading | undefined>,
  report: Report,
): Promise<ReadonlyMap<string, PartFacts>> {
  const builders = new Map([...wanted].map(([part, reading]) => [part, createFacts(part, reading)]))
  const checker = createChecker()
  const tell = once(report)
  await guard(async () => {
    const framer = new Framer({treat: (part) => (builders.has(part) ? 'read' : 'drop')})
    function take(cut: readonly Frame[]): void {
      for (const frame of cut) {
        const builder =
          frame.kind === 'measure' && frame.part !== undefined && builders.get(frame.part)
        if (builder)
          builder.add(measureOf(frame, builder.context(), wanted.get(frame.part ?? ''), tell))
      }
    }
    for await (const bytes of readBytes(score.open)) {
      checker.push(bytes)
      take(framer.push(bytes))
    }
    checker.end()
    take(framer.end())
  })
  return new Map([...builders].map(([part, builder]) => [part, builder.done()]))
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
  changed: (change: MovedPassage) => void = () => {},
): AsyncGenerator<Uint8Array> {
  const parts = [...job.parts].filter(([, part]) => !isIdle(part))
  const readings = new Map(parts.map(([id, {from}]) => [id, from && readingOf(from)]))
  const names = new Map(score.header.parts.map(({id, name}) => [id, name]))
  // A phrase is folded with an ear on the bass: that takes all parts.
  const folds = parts.some(([, {fold}]) => fold !== undefined)
  const everybody = folds ? [...names.keys()].map((id) => [id, undefined] as const) : []
  const facts = await readFacts(score, new Map([...everybody, ...readings]), report)
  const plans = new Map<string, PartPlan>()
  for (const [id, part] of parts) {
    const own = facts.get(id)
    if (!own) continue
    const identity = identityOf(names.get(id) ?? '', part)
    if (!part.fold || !part.for) {
      plans.set(id, planPart(own, part, identity, report))
      continue
    }
    const {foldPart} = await import('./ensemble/folding.ts')
    const request = {part: id, instrument: part.for, tier: part.fold, names}
    const {registers, changes} = foldPart(facts, request, report)
    plans.set(id, planPart(own, {...part, registers}, identity, report))
    for (const change of changes) changed(change)
  }
  yield* write(score, job, plans, readings, report)
}

/** How a notation overrides what a file declares, clef by clef. */
export function readingOf(from: Notation): Reading {
  return (clef, declared) => {
    const interval = intervalFor(from, clef)
    return interval ? {...declared, interval} : declared
  }
}

/** Every measure of some parts, read with what was in force; parts of a timewise score come interleaved. */
export async function* readMeasures(
  score: Score,
  isWanted: (part: string) => boolean,
  reading: Reading | undefined,
  report: Report,
): AsyncGenerator<Measure> {
  const contexts = new Map<string, Context>()
  const tell = once(report)
  for await (const frame of cutFrames(score, (part) => (isWanted(part) ? 'read' : 'drop'))) {
    if (frame.kind !== 'measure' || frame.part === undefined) continue
    const context = contexts.get(frame.part) ?? firstContext(frame.part)
    const measure = measureOf(frame, context, reading, tell)
    contexts.set(frame.part, advance(context, measure))
    yield measure
  }
}

/** Finds a part by id, by its number in the score from 1, or by name. Throws `part/unknown` with the nearest names. */
export function findPart(header: Header, wanted: string): ScorePart {
  const {parts} = header
  const byNumber = /^\d+$/.test(wanted) ? parts[Number(wanted) - 1] : undefined
  const found =
    parts.find(({id}) => id === wanted) ??
    byNumber ??
    parts.find(({name}) => name === wanted) ??
    onlyOne(parts.filter(({name}) => fold(name) === fold(wanted))) ??
    onlyOne(parts.filter(({name}) => fold(name).includes(fold(wanted))))
  if (found) return found
  const known = parts
    .map(({id, name}, index) => `${index + 1} ${id}${name ? ` ${name}` : ''}`)
    .join(', ')
  throw scoreError('part/unknown', `there is no one part “${wanted}”; the parts are ${known}`)
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
      const edits = rules.flatMap((rule) => [...rule.rewrite(measure, plan, report)])
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

/** Bytes handed out at a time. */
const BATCH = 128 * 1024

function rewriteHeader(
  header: Header,
  keeps: (part: string) => boolean,
  plans: ReadonlyMap<string, PartPlan>,
  report: Report,
): string {
  const gone = unwantedEntries(header, keeps)
  const dropsAny = header.parts.some(({id}) => !keeps(id))
  const removals = dropsAny ? gone.map((element) => removeElement(header.text, element)) : []
  const edits = [...plans.values()].flatMap((plan) =>
    rules.flatMap((rule) => [...(rule.rewriteHeader?.(header, plan, report) ?? [])]),
  )
  const kept = header.parts.filter(({id}) => keeps(id)).length
  const flag = [...editConcertFlag(header, [...plans.values()], kept)]
  return applyEdits(header.text, [...removals, ...edits, ...flag])
}

async function* cutFrames(score: Score, treat: (part: string) => Treatment): AsyncGenerator<Frame> {
  const framer = new Framer({treat})
  try {
    for await (const bytes of readBytes(score.open)) yield* framer.push(bytes)
    yield* framer.end()
  } catch (error) {
    throw toScoreError(error)
  }
}

function measureOf(
  frame: Frame,
  context: Context,
  reading: Reading | undefined,
  report: Report,
): Measure {
  const {line, part = '', measure: number = ''} = frame
  const place = {part, measure: number, line}
  try {
    return readMeasure({part, number, line, text: decoder().decode(frame.bytes)}, context, {
      reading,
      complain: (code, message) => report({code, severity: 'warning', message, at: place}),
    })
  } catch (error) {
    throw toScoreError(error, place)
  }
}

function headerOf(frame: Frame): Header {
  return readHeader(decoder().decode(frame.bytes))
}

function decoder(): TextDecoder {
  return new TextDecoder('utf-8', {fatal: true, ignoreBOM: true})
}

async function guard<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work()
  } catch (error) {
    throw toScoreError(error)
  }
}

/** Hands on each finding once a part: a file that restates its transposition in every measure is told once. */
function once(report: Report): Report {
  const told = new Set<string>()
  return (diagnostic) => {
    const key = `${diagnostic.at?.part}\n${diagnostic.code}\n${diagnostic.message}`
    if (told.has(key)) return
    told.add(key)
    report(diagnostic)
  }
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

function onlyOne<T>(found: readonly T[]): T | undefined {
  return found.length === 1 ? found[0] : undefined
}

/** Case, accents and spaces folded, flats and sharps as letters. */
function fold(name: string): string {
  return name
    .replaceAll('♭', 'b')
    .replaceAll('♯', '#')
    .normalize('NFD')
    .replaceAll(/[\u0300-\u036f.\s]+/g, '')
    .toLowerCase()
}
