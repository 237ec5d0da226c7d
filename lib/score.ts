import {scoreError} from './diagnostic.ts'
import type {Report} from './diagnostic.ts'
import {intervalFor} from './instruments/notation.ts'
import type {Notation} from './instruments/notation.ts'
import type {Context} from './musicxml/context.ts'
import {firstContext} from './musicxml/context.ts'
import type {Header, ScorePart} from './musicxml/header.ts'
import {readHeader} from './musicxml/header.ts'
import {advance, placeOf, readMeasure} from './musicxml/measure.ts'
import type {Measure, Reading} from './musicxml/measure.ts'
import {openSource, readBytes, toScoreError} from './musicxml/source.ts'
import type {OpenSource, Source} from './musicxml/source.ts'
import {describeInterval} from './pitch/interval.ts'
import type {Interval} from './pitch/interval.ts'
import type {Excerpt} from './excerpt.ts'
import type {KeyGathering} from './score-keys.ts'
import type {ScoreMarks} from './score-marks.ts'
import {createFacts} from './survey/facts.ts'
import type {PartFacts} from './survey/facts.ts'
import {createChecker} from './xml/check.ts'
import {Framer} from './xml/frame.ts'
import type {Frame, Treatment} from './xml/frame.ts'
import {countLines, lineEndsBefore} from './xml/scan.ts'
import {isXmlSyntaxError, syntaxError} from './xml/syntax-error.ts'

/** A score that has been opened: what it says before its music, and where the rest is. */
export interface Score {
  readonly open: OpenSource
  readonly header: Header
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
 * fault in the XML. Reports what is odd about declared transpositions, and about the container. `believing` refuses a part
 * whose declarations contradict each other and that no reading settles. `keys`, `excerpt` and `marks` are filled on the way.
 */
export async function readFacts(
  score: Score,
  wanted: ReadonlyMap<string, Reading | undefined>,
  report: Report,
  options: {
    readonly believing?: boolean
    readonly keys?: KeyGathering | undefined
    readonly excerpt?: Excerpt | undefined
    readonly marks?: ScoreMarks | undefined
  } = {},
): Promise<ReadonlyMap<string, PartFacts>> {
  const {container} = score.open
  if (container?.doubt) report(container.doubt)
  const builders = new Map([...wanted].map(([part, reading]) => [part, createFacts(part, reading)]))
  const tell = once(report)
  const checker = createChecker()
  const {keys, excerpt, marks} = options
  const framer = new Framer({
    treat: (part) =>
      builders.has(part) || marks?.watches(part) || keys?.isOpen() ? 'read' : 'drop',
  })
  const take = (frames: readonly Frame[]): void => {
    for (const frame of frames) {
      excerpt?.add(frame)
      if (frame.kind !== 'measure') continue
      if (marks?.watches(frame.part ?? '')) marks.pass(frame)
      const builder = builders.get(frame.part ?? '')
      if (!builder) {
        if (keys?.isOpen())
          keys.pass(frame, (each, context) => measureOf(each, context, undefined, () => {}))
        continue
      }
      const reading = wanted.get(frame.part ?? '')
      const measure = measureOf(frame, builder.context(), reading, tell)
      if (options.believing && !reading) refuseContradiction(score, measure)
      builder.add(measure)
      keys?.add(measure)
    }
  }
  await guard(async () => {
    try {
      for await (const bytes of readBytes(score.open)) {
        checker.push(bytes)
        take(framer.push(bytes))
        framer.takeBack()
      }
      checker.end()
    } catch (error) {
      throw await withLine(score, error)
    }
    take(framer.end())
  })
  return new Map([...builders].map(([part, builder]) => [part, builder.done()]))
}

/** A fault that knows only its offset gets its line: faults are rare, so lines are counted when one is found, in another reading. */
async function withLine(score: Score, error: unknown): Promise<unknown> {
  if (!isXmlSyntaxError(error) || !('offset' in error.place)) return error
  let [line, left]: [number, number] = [1, error.place.offset]
  let last: number | undefined
  for await (const bytes of readBytes(score.open)) {
    const before = bytes.subarray(0, left)
    line += countLines(before, last)
    last = before.at(-1) ?? last
    left -= before.length
    if (left === 0) break
  }
  return syntaxError(error.message, {line}, error.fault)
}

/** Judges the whole file and nothing else. Throws `ScoreError` at the first fault in the XML. */
export async function checkScore(score: Score): Promise<void> {
  await readFacts(score, new Map(), () => {})
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
  for await (const frames of cutFrames(score, (part) => (isWanted(part) ? 'read' : 'drop'))) {
    for (const frame of frames) {
      if (frame.kind !== 'measure' || frame.part === undefined) continue
      const context = contexts.get(frame.part) ?? firstContext(frame.part)
      const measure = measureOf(frame, context, reading, tell)
      if (!reading) refuseContradiction(score, measure)
      contexts.set(frame.part, advance(context, measure))
      yield measure
    }
  }
}

/** How a notation overrides what a file declares, clef by clef. */
export function readingOf(from: Notation): Reading {
  return (clef, declared) => {
    const interval = intervalFor(from, clef)
    return interval ? {...declared, interval} : declared
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

/** The frames of a score, in order, chunk by chunk. Throws `ScoreError`. */
export async function* cutFrames(
  score: Score,
  treat: (part: string) => Treatment,
): AsyncGenerator<readonly Frame[]> {
  const framer = new Framer({treat})
  try {
    for await (const bytes of readBytes(score.open)) yield framer.push(bytes)
    yield framer.end()
  } catch (error) {
    throw toScoreError(error)
  }
}

/** Reads the measure in a frame. Throws `ScoreError` with its place. */
export function measureOf(
  frame: Frame,
  context: Context,
  reading: Reading | undefined,
  report: Report,
): Measure {
  const {line, part = '', measure: number = ''} = frame
  const place = {part, measure: number, line}
  try {
    return readMeasure({part, number, line, text: textOf(frame)}, context, {
      reading,
      complain: (code, message) => report({code, severity: 'warning', message, at: place}),
    })
  } catch (error) {
    throw toScoreError(error, place)
  }
}

/**
 * A score that says it is at concert pitch may sound octaves away, no more (MusicXML 4.0, element `concert-score`). One
 * that transposes all the same contradicts itself: somebody must say which is true. Throws `concert/contradiction`.
 */
export function refuseContradiction({header}: Score, measure: Measure): void {
  if (!header.concertScore) return
  for (const {element, changes} of measure.attributes) {
    for (const {change} of changes) {
      const interval = change.transposition?.interval
      if (!interval || isWholeOctaves(interval)) continue
      throw scoreError(
        'concert/contradiction',
        `line ${header.concertLine} says that the score is at concert pitch, but here the part sounds ${describeInterval(interval)}`,
        placeOf(measure, element),
      )
    }
  }
}

function isWholeOctaves({diatonic, chromatic}: Interval): boolean {
  return chromatic % 12 === 0 && 7 * (chromatic / 12) === diatonic
}

function headerOf(frame: Frame): Header {
  return readHeader(textOf(frame))
}

/** The text of a frame. Whatever was read before the check got as far may be no text at all: `source/encoding`. */
function textOf(frame: Frame): string {
  try {
    return UTF_8.decode(frame.bytes)
  } catch {
    const sound = new TextDecoder().decode(frame.bytes).split('\ufffd')[0] ?? ''
    const line = frame.line + lineEndsBefore(sound, sound.length)
    throw scoreError('source/encoding', 'the bytes are not text in UTF-8', {line})
  }
}

/** Decodes whole pieces only: it keeps nothing from one to the next. */
const UTF_8 = new TextDecoder('utf-8', {fatal: true, ignoreBOM: true})

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
