import {ScoreError, scoreError, type Place} from '../diagnostic.ts'
import {isXmlSyntaxError} from '../xml/syntax-error.ts'
import {join} from './bytes.ts'
import type {Inflate} from './inflate.ts'
import {openContainer, type Container} from './container.ts'
import {createDecoder, createEncoder, readEncoding, unicode, type Encoding} from './encoding.ts'

/**
 * Where a score comes from: gives its bytes (MusicXML in any usual encoding, or an `.mxl` container) or its text, in chunks of
 * any size. A function because it is called several times: it must give the same each time. The memory of a chunk may be
 * used again for the next.
 */
export interface Source {
  (): AsyncIterable<string | Uint8Array>
  /** How deflated bytes of an `.mxl` are inflated (RFC 1951, no header), where the source has better means than the library. */
  readonly inflate?: Inflate | undefined
}

/** A source whose encoding is known. */
export interface OpenSource {
  /** The encoding that the score has and that what is made of it gets: `UTF-8`, `UTF-16BE`, `ISO-8859-1` … */
  readonly encoding: Encoding
  /** Present when the score came in a container (`.mxl`). */
  readonly container?: Container
  /** The score is text already: what it declares was not its encoding but is what comes out. */
  readonly decoded: boolean
  readonly source: Source
}

/**
 * Looks at the first bytes of a source, at no file name, and tells how to read it. Throws `ScoreError`: `source/empty`,
 * `source/not-a-score`, `source/encoding` (unknown, or contradicted by the bytes), `container/…`.
 *
 * ```ts
 * const score = await openSource(source)
 * for await (const chunk of readBytes(score)) framer.push(chunk)
 * ```
 */
export async function openSource(source: Source): Promise<OpenSource> {
  const head = await readHead(source)
  if (typeof head === 'string') {
    refuseOthers(head)
    const declared = declaredEncoding(head)
    return {encoding: declared ? readEncoding(declared) : unicode('UTF-8'), decoded: true, source}
  }
  if (startsWith(head, [0x50, 0x4b])) {
    const container = await openContainer(() => onlyBytes(source), source.inflate)
    const inner = await readHead(container.score)
    if (typeof inner === 'string' || startsWith(inner, [0x50, 0x4b])) {
      throw scoreError('source/not-a-score', 'the container holds another container')
    }
    return {encoding: sniff(inner), container, decoded: false, source: container.score}
  }
  return {encoding: sniff(head), decoded: false, source}
}

/** The score as UTF-8, chunk by chunk; UTF-8 is handed on as it is, byte order mark included. Throws `source/encoding`. */
export async function* readBytes(score: OpenSource): AsyncGenerator<Uint8Array> {
  if (score.decoded) yield* encodeText(score.source)
  else if (score.encoding.form === 'utf-8') yield* onlyBytes(score.source)
  else {
    const decode = createDecoder(score.encoding)
    const encoder = new TextEncoder()
    for await (const chunk of onlyBytes(score.source)) yield encoder.encode(decode(chunk))
    yield encoder.encode(decode(new Uint8Array(0), true))
  }
}

/**
 * A function that puts UTF-8, in chunks of any size, back into the encoding of the score. A character that the encoding lacks
 * becomes a character reference. One for each output.
 */
export function createWriter(score: OpenSource): (utf8: Uint8Array) => Uint8Array {
  const {form} = score.encoding
  if (form === 'utf-8') return (utf8) => utf8
  const decoder = new TextDecoder('utf-8', {fatal: true, ignoreBOM: true})
  const encode = createEncoder(score.encoding)
  // UTF-16 must have a byte order mark; text that came decoded may have lost it.
  let wantsMark = score.decoded && form === 'utf-16'
  return (utf8) => {
    const text = decoder.decode(utf8, {stream: true})
    const lacksMark = wantsMark && text !== '' && !text.startsWith('\ufeff')
    if (text !== '') wantsMark = false
    return encode(lacksMark ? `\ufeff${text}` : text)
  }
}

/** What was thrown, but a `SyntaxError` of the XML as a `ScoreError` with its line and, where known, its part and measure. */
export function toScoreError(error: unknown, at?: Place): unknown {
  if (error instanceof ScoreError || !(error instanceof SyntaxError)) return error
  if (!isXmlSyntaxError(error)) return scoreError('xml/malformed', error.message, at)
  return scoreError(error.fault, error.message, {...('line' in error.place && error.place), ...at})
}

/** Enough of the beginning to see the encoding and the XML declaration. */
const HEAD = 1024

async function readHead(source: Source): Promise<string | Uint8Array> {
  let text = ''
  let bytes: Uint8Array = new Uint8Array(0)
  for await (const chunk of source()) {
    if (typeof chunk === 'string') text += chunk.slice(0, HEAD)
    else bytes = join([bytes, chunk.subarray(0, HEAD)])
    if (text.length + bytes.length >= HEAD) break
  }
  if (text === '' && bytes.length === 0)
    throw scoreError('source/empty', 'there is nothing to read')
  return text === '' ? bytes : text
}

function sniff(head: Uint8Array): Encoding {
  const latin = createDecoder(readEncoding('iso-8859-1'))(head)
  const form = /^(\xef\xbb\xbf)|^(\xff\xfe|<\0)|^(\xfe\xff|\0<)/.exec(latin)
  if (/^(\xff\xfe\0\0|\0\0\xfe\xff|<\0\0\0|\0\0\0<)/.test(latin)) throw unusable('UTF-32')
  if (latin.startsWith('Lo\xa7\x94')) throw unusable('EBCDIC')
  if (latin.startsWith('+/v')) throw unusable('UTF-7')
  const wide = form?.[2] !== undefined || form?.[3] !== undefined
  const text = wide ? latin.replaceAll(/\0|^(\xff\xfe|\xfe\xff)/g, '') : latin
  refuseOthers(text)
  const declared = declaredEncoding(text)
  const meant = declared === undefined ? undefined : readEncoding(declared)
  const found = wide ? 'UTF-16' : form || meant?.form === 'utf-16' ? 'UTF-8' : undefined
  if (found && meant && !meant.name.startsWith(found)) {
    throw scoreError(
      'source/encoding',
      `the score says that it is ${declared} but its bytes are ${found}`,
    )
  }
  if (wide) return unicode(form?.[2] === undefined ? 'UTF-16BE' : 'UTF-16LE')
  return meant ?? unicode('UTF-8')
}

function declaredEncoding(head: string): string | undefined {
  return /^(?:\ufeff|\xef\xbb\xbf)?<\?xml\s[^>]*?\sencoding\s*=\s*["']([^"'>]*)["']/.exec(head)?.[1]
}

/** Files that people take for scores: a clear word is better than a complaint about XML. */
const OTHERS: readonly (readonly [start: string, name: string])[] = [
  ['MThd', 'a MIDI file'],
  ['%PDF', 'a PDF'],
  ['\x1f\x8b', 'compressed by gzip'],
  ['{', 'JSON'],
]

function refuseOthers(head: string): void {
  const text = head.replace(/^(?:\ufeff|\xef\xbb\xbf)/, '')
  if (text.trim() === '') throw scoreError('source/empty', 'there is nothing but white space')
  const known = OTHERS.find(([start]) => text.startsWith(start))
  if (known) throw scoreError('source/not-a-score', `this is ${known[1]}, not MusicXML`)
  if (!/^\s*</.test(text)) throw scoreError('source/not-a-score', 'this is not XML')
}

function unusable(name: string): ScoreError {
  return scoreError('source/encoding', `the encoding ${name} cannot be read`)
}

async function* onlyBytes(source: Source): AsyncGenerator<Uint8Array> {
  for await (const chunk of source()) {
    if (typeof chunk === 'string') throw new TypeError('A source gives bytes or text, not both')
    yield chunk
  }
}

async function* encodeText(source: Source): AsyncGenerator<Uint8Array> {
  const encoder = new TextEncoder()
  let half = ''
  for await (const chunk of source()) {
    if (typeof chunk !== 'string') throw new TypeError('A source gives bytes or text, not both')
    const text = half + chunk
    // The first half of a character beyond the basic plane waits for its second half.
    half = /[\ud800-\udbff]$/.exec(text)?.[0] ?? ''
    yield encoder.encode(text.slice(0, text.length - half.length))
  }
  if (half !== '') throw scoreError('source/encoding', 'the text ends within a character')
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, i) => bytes[i] === byte)
}
