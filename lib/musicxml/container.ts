import {ScoreError, scoreError, type Diagnostic} from '../diagnostic.ts'
import {damaged, readDirectory, readEntry, type Bytes, type Entry} from './archive.ts'
import {join} from './bytes.ts'
import type {Inflate} from './inflate.ts'
import {writeArchive, type NewEntry} from './archive-writer.ts'

/** An `.mxl` container: a zip archive whose `META-INF/container.xml` names the score. */
export interface Container {
  /** The name of the score in the archive. */
  readonly rootfile: string
  /** The bytes of the score, inflated as they are read, in its own encoding. */
  readonly score: Bytes
  readonly entries: readonly Entry[]
  readonly archive: Bytes
  /** Present when `container.xml` was of no use and the only score in the archive was taken: a warning to report. */
  readonly doubt?: Diagnostic
}

/** Not what operating systems hide in archives. */
const SCORE_NAME = /^(?!META-INF\/|__MACOSX\/).*\.(musicxml|xml)$/i
const CONTAINER_XML = 'META-INF/container.xml'
const MEDIA_TYPE = 'application/vnd.recordare.musicxml'
/** How a score may be called in `container.xml`; the first is the standard's (MusicXML 4.0, "Compressed .mxl files"). */
const SCORE_TYPES = [`${MEDIA_TYPE}+xml`, MEDIA_TYPE, 'application/xml', 'text/xml', '']

/**
 * Opens an `.mxl` container. The archive is read as a stream, several times, and never held. Throws `ScoreError`:
 * `container/no-rootfile` (nothing names a score, or it is not there), `container/damaged`, `container/encrypted`,
 * `container/too-large`. Reading the score throws the last three as well.
 */
export async function openContainer(archive: Bytes, inflate?: Inflate): Promise<Container> {
  const entries = await readDirectory(archive)
  const open = (rootfile: string): Container => ({
    rootfile,
    entries,
    archive,
    score: () => readEntry(archive, findEntry(entries, rootfile), inflate),
  })
  try {
    const text = new TextDecoder().decode(
      await readSmall(archive, findEntry(entries, CONTAINER_XML)),
    )
    const rootfile = await readRootfile(text)
    findEntry(entries, rootfile)
    return open(rootfile)
  } catch (error) {
    // Some programs write names with apostrophes into attributes quoted by apostrophes.
    const scores = entries.map(({name}) => name).filter((name) => SCORE_NAME.test(name))
    if (
      !(error instanceof ScoreError) ||
      error.diagnostic.code === 'container/encrypted' ||
      scores.length !== 1
    )
      throw error
    const rootfile = scores[0] as string
    const message = `${error.diagnostic.message}; read ${rootfile}, the only score in it`
    return {...open(rootfile), doubt: {code: 'container/guessed', severity: 'warning', message}}
  }
}

function findEntry(entries: readonly Entry[], name: string): Entry {
  const found = entries.find((entry) => entry.name === name)
  if (found !== undefined) return found
  throw scoreError('container/no-rootfile', `the archive has no ${name}`)
}

async function readSmall(archive: Bytes, entry: Entry): Promise<Uint8Array> {
  if (entry.size > 1024 * 1024) throw damaged(`${entry.name} is far too large`)
  const pieces: Uint8Array[] = []
  for await (const piece of readEntry(archive, entry)) pieces.push(piece.slice())
  return join(pieces)
}

async function readRootfile(text: string): Promise<string> {
  const {XMLParser, XMLValidator} = await import('fast-xml-parser')
  if (XMLValidator.validate(text) !== true) throw damaged(`${CONTAINER_XML} is not well-formed`)
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: '',
    removeNSPrefix: true,
    parseAttributeValue: false,
    isArray: (name) => name === 'rootfile',
  })
  const parsed: {container?: {rootfiles?: {rootfile?: Rootfile[]}}} = parser.parse(text)
  const rootfiles = parsed.container?.rootfiles?.rootfile ?? []
  const score = rootfiles.find((each) => SCORE_TYPES.includes(each['media-type'] ?? ''))
  if (!score?.['full-path']) {
    throw scoreError('container/no-rootfile', `${CONTAINER_XML} names no score`)
  }
  return score['full-path']
}

interface Rootfile {
  readonly 'full-path'?: string
  readonly 'media-type'?: string
}

/**
 * A new `.mxl` container around a score, written as a stream. `name` is what the score is called in it (`score.musicxml`).
 *
 * ```ts
 * for await (const bytes of packContainer(chunks, 'score.musicxml')) await file.write(bytes)
 * ```
 */
export async function* packContainer(
  score: AsyncIterable<Uint8Array>,
  name: string,
): AsyncGenerator<Uint8Array> {
  const encoder = new TextEncoder()
  yield* writeArchive([
    {name: 'mimetype', content: encoder.encode(MEDIA_TYPE)},
    {name: CONTAINER_XML, content: encoder.encode(await printContainer(name))},
    {name, content: score},
  ])
}

/** The same container with another score in it: all other entries (pictures, sounds, other renditions) keep place and content. */
export async function* repackContainer(
  container: Container,
  score: AsyncIterable<Uint8Array>,
): AsyncGenerator<Uint8Array> {
  yield* writeArchive(keepOthers(container, score))
}

async function* keepOthers(
  {entries, archive, rootfile}: Container,
  score: AsyncIterable<Uint8Array>,
): AsyncGenerator<NewEntry> {
  for (const entry of entries) {
    const {name} = entry
    if (name === rootfile) yield {name, content: score}
    else if (name === 'mimetype' || name.endsWith('/')) {
      yield {name, content: await readSmall(archive, entry)}
    } else yield {name, content: readEntry(archive, entry)}
  }
}

async function printContainer(fullPath: string): Promise<string> {
  const {create} = (await import('xmlbuilder2')).default
  const document = create({version: '1.0', encoding: 'UTF-8'}).ele('container')
  const rootfiles = document.ele('rootfiles')
  rootfiles.ele('rootfile', {'full-path': fullPath, 'media-type': SCORE_TYPES[0]})
  return `${document.end({prettyPrint: true})}\n`
}
