import {scoreError} from '../diagnostic.ts'
import {unpack} from './container.ts'

/** A score's text or bytes, as many times as they are asked for. */
export type Source = () => AsyncIterable<string | Uint8Array>

/** Characters handed on at a time: the reader holds no more than this and one measure. */
const PIECE = 1 << 16

/**
 * The XML text of a source, in pieces of at most 64 Ki characters, without a byte order mark. Bytes are
 * decoded as their byte order mark or their XML declaration says, as UTF-8 otherwise; a compressed score (`.mxl`)
 * is unpacked.
 * @throws ScoreError `proof/malformed`: an unknown encoding, bytes that are not in it, a broken container.
 */
export async function* readText(source: Source): AsyncGenerator<string> {
  for await (const text of decode(source())) {
    for (let start = 0; start < text.length; start += PIECE) yield text.slice(start, start + PIECE)
  }
}

async function* decode(chunks: AsyncIterable<string | Uint8Array>): AsyncGenerator<string> {
  let decoder: TextDecoder | undefined
  let head = new Uint8Array(0)
  let first = true
  const iterator = chunks[Symbol.asyncIterator]()
  try {
    for (;;) {
      const {value, done} = await iterator.next()
      if (typeof value === 'string') {
        yield first ? value.replace(/^\uFEFF/, '') : value
        first &&= value === ''
        continue
      }
      if (!decoder) {
        head = join(head, done ? new Uint8Array(0) : value)
        if (!done && !showsEncoding(head)) continue
        if (head[0] === 0x50 && head[1] === 0x4b) {
          yield* decode(unpack(await gather(head, iterator)))
          return
        }
        if (done && head.length === 0) return
        decoder = decoderFor(head)
        yield decodeWith(decoder, head)
      } else if (!done) yield decodeWith(decoder, value)
      if (done) {
        yield decodeWith(decoder)
        return
      }
    }
  } finally {
    await iterator.return?.()
  }
}

/** True when enough bytes are there to tell: the whole XML declaration, or as much as it can need. */
function showsEncoding(head: Uint8Array): boolean {
  if (head.length < 4) return false
  return head[0] !== 0x3c || head[1] === 0 || head.length >= 1024 || head.includes(0x3e)
}

function decoderFor(head: Uint8Array): TextDecoder {
  const marked = markedEncoding(head)
  const declared = marked ?? declaredEncoding(head) ?? 'utf-8'
  if (!marked && /^(utf-?16|ucs-?2|iso-10646-ucs)/i.test(declared))
    throw scoreError('proof/malformed', `the file says that it is ${declared}, but it is not`, {
      line: 1,
    })
  try {
    return new TextDecoder(declared, {fatal: true})
  } catch {
    throw scoreError('proof/malformed', `the encoding ${declared} is not known`, {line: 1})
  }
}

function markedEncoding([a, b, c]: Uint8Array): string | undefined {
  if (a === 0xef && b === 0xbb && c === 0xbf) return 'utf-8'
  if ((a === 0xff && b === 0xfe) || (a === 0x3c && b === 0)) return 'utf-16le'
  if ((a === 0xfe && b === 0xff) || (a === 0 && b === 0x3c)) return 'utf-16be'
  return undefined
}

function declaredEncoding(head: Uint8Array): string | undefined {
  const start = String.fromCharCode(...head.subarray(0, 1024))
  return /^<\?xml[^>]*?\sencoding\s*=\s*["']([\w.:-]+)["']/.exec(start)?.[1]
}

function decodeWith(decoder: TextDecoder, bytes?: Uint8Array): string {
  try {
    return bytes ? decoder.decode(bytes, {stream: true}) : decoder.decode()
  } catch {
    throw scoreError('proof/malformed', `there are bytes that are not ${decoder.encoding}`)
  }
}

async function gather(
  head: Uint8Array,
  iterator: AsyncIterator<string | Uint8Array>,
): Promise<Uint8Array> {
  const chunks = [head]
  for (;;) {
    const {value, done} = await iterator.next()
    if (done) return join(...chunks)
    if (typeof value !== 'string') chunks.push(value.slice())
  }
}

function join(...chunks: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(chunks.reduce((total, chunk) => total + chunk.length, 0))
  let at = 0
  for (const chunk of chunks) {
    whole.set(chunk, at)
    at += chunk.length
  }
  return whole
}
