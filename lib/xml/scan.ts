import {
  BANG,
  BRACKET,
  DASH,
  DOUBLE,
  EQUALS,
  GREATER,
  LESS,
  LINE_FEED,
  QUESTION,
  RETURN,
  SINGLE,
  SLASH,
  isSpace,
} from './characters.ts'
import {decode} from './element.ts'

/** Searching in the bytes of an XML text, as much as cutting it needs. Positions are indices of bytes. */

/** Whether the markup at this `<` is a comment, CDATA section, processing instruction or declaration. */
export function isMark(bytes: Uint8Array, at: number): boolean {
  return bytes[at + 1] === BANG || bytes[at + 1] === QUESTION
}

/** Where the markup that begins with the `<` at `at` ends (after its `>`), or -1 when its end is not there yet. */
export function markupEnd(bytes: Uint8Array, at: number): number {
  if (bytes[at + 1] === QUESTION) return endAfter(bytes, at + 4, QUESTION, -1)
  if (bytes[at + 1] !== BANG) return tagEnd(bytes, at + 1)
  if (startsWith(bytes, at, '<!--')) return endAfter(bytes, at + 6, DASH, DASH)
  if (startsWith(bytes, at, '<![CDATA[')) return endAfter(bytes, at + 11, BRACKET, BRACKET)
  return bytes.length < at + 9 ? -1 : declarationEnd(bytes, at + 2)
}

/** The end of the first `>` at or after `from` that follows the bytes `before` and, unless -1, `second` before that. */
function endAfter(bytes: Uint8Array, from: number, before: number, second: number): number {
  for (let i = bytes.indexOf(GREATER, from); i >= 0; i = bytes.indexOf(GREATER, i + 1)) {
    if (bytes[i - 1] === before && (second < 0 || bytes[i - 2] === second)) return i + 1
  }
  return -1
}

function tagEnd(bytes: Uint8Array, from: number): number {
  for (let i = from; i < bytes.length; i++) {
    const byte = bytes[i]
    if (byte === GREATER) return i + 1
    if (byte === DOUBLE || byte === SINGLE) {
      i = bytes.indexOf(byte, i + 1)
      if (i < 0) return -1
    }
  }
  return -1
}

/** The end of a document type with all that its internal subset holds. */
function declarationEnd(bytes: Uint8Array, from: number): number {
  let depth = 1
  for (let i = from; i < bytes.length; i++) {
    const byte = bytes[i]
    if (byte === DOUBLE || byte === SINGLE) {
      i = bytes.indexOf(byte, i + 1)
      if (i < 0) return -1
    } else if (byte === GREATER) {
      if (--depth === 0) return i + 1
    } else if (byte === LESS) {
      if (i + 4 > bytes.length) return -1
      const comment = startsWith(bytes, i, '<!--')
      if (!comment && bytes[i + 1] !== QUESTION) {
        depth++
        continue
      }
      const end = markupEnd(bytes, i)
      if (end < 0) return -1
      i = end - 1
    }
  }
  return -1
}

/** A search for ASCII text: gives its first place at or after `from`, or -1. */
export function searchText(text: string): (bytes: Uint8Array, from: number) => number {
  const pattern = new TextEncoder().encode(text)
  const last = pattern.length - 1
  // Horspool: how far the pattern may jump when this byte stands under its last one. Looks at few of the bytes only.
  const jump = new Uint8Array(256).fill(pattern.length)
  for (let i = 0; i < last; i++) jump[pattern[i] as number] = last - i
  return (bytes, from) => {
    for (let i = from + last; i < bytes.length; i += jump[bytes[i] as number] as number) {
      let k = last
      while (k >= 0 && bytes[i - last + k] === pattern[k]) k--
      if (k < 0) return i - last
    }
    return -1
  }
}

/** Whether the bytes from `at` on are this ASCII text. */
export function startsWith(bytes: Uint8Array, at: number, text: string): boolean {
  for (let i = 0; i < text.length; i++) if (bytes[at + i] !== text.charCodeAt(i)) return false
  return true
}

/** Whether the tag at this `<` has exactly this name; `at` may also be the slash of an end tag. */
export function hasName(bytes: Uint8Array, at: number, name: string): boolean {
  return startsWith(bytes, at + 1, name) && endsName(bytes[at + 1 + name.length] as number)
}

/** Whether a name ends before this byte. */
export function endsName(byte: number): boolean {
  return byte === GREATER || byte === SLASH || isSpace(byte)
}

/** The value of an attribute of the tag [from, to), decoded; empty when there is no such attribute. */
export function readAttribute(bytes: Uint8Array, from: number, to: number, name: string): string {
  const [start, end] = findAttribute(bytes, from, to, name) ?? [0, 0]
  let value = ''
  for (let i = start; i < end; i++) {
    const byte = bytes[i] as number
    if (byte < 0x20 || byte > 0x7e) return readText(bytes.subarray(start, end))
    value += String.fromCharCode(byte)
  }
  return decode(value)
}

function readText(bytes: Uint8Array): string {
  const raw = new TextDecoder('utf-8', {ignoreBOM: true}).decode(bytes)
  return decode(raw.replaceAll(/\r\n|[\t\r\n]/g, ' '))
}

/** Where the value stands, inside its quotes. */
function findAttribute(
  bytes: Uint8Array,
  from: number,
  to: number,
  name: string,
): readonly [start: number, end: number] | undefined {
  for (let i = from; i < to; i++) {
    const quote = bytes[i]
    if (quote !== DOUBLE && quote !== SINGLE) continue
    const end = bytes.indexOf(quote, i + 1)
    let before = i - 1
    while (isSpace(bytes[before] as number)) before--
    if (bytes[before] === EQUALS) before--
    while (isSpace(bytes[before] as number)) before--
    const start = before + 1 - name.length
    if (startsWith(bytes, start, name) && isSpace(bytes[start - 1] as number)) return [i + 1, end]
    i = end
  }
  return undefined
}

/**
 * How many lines end in these bytes, as XML 1.0 counts them (section 2.11): at a carriage return and a line feed together, at
 * either alone. `before` is the byte before them.
 */
export function countLines(bytes: Uint8Array, before?: number): number {
  let count = countByte(bytes, LINE_FEED)
  if (before === RETURN && bytes[0] === LINE_FEED) count--
  if (countByte(bytes, RETURN) === 0) return count
  for (let i = 0; i < bytes.length; i++) {
    if (bytes[i] === RETURN && bytes[i + 1] !== LINE_FEED) count++
  }
  return count
}

/** How many lines end in a text before an index, counted likewise. */
export function lineEndsBefore(text: string, end: number): number {
  let count = 0
  for (const {index} of text.matchAll(/\r\n|[\r\n]/g)) {
    if (index >= end) break
    count++
  }
  return count
}

/** How often a byte occurs, four bytes at a time: line counting must not cost more than cutting. */
function countByte(bytes: Uint8Array, byte: number): number {
  let count = 0
  let i = 0
  // Words begin at a multiple of four; a few bytes have no whole word.
  const aligned = bytes.length < 32 ? bytes.length : -bytes.byteOffset & 3
  for (; i < aligned; i++) if (bytes[i] === byte) count++
  if (i === bytes.length) return count
  const words = new Int32Array(bytes.buffer, bytes.byteOffset + i, (bytes.length - i) >>> 2)
  for (let w = 0; w < words.length; w += 255) {
    count += countInWords(words, w, Math.min(words.length, w + 255), byte * 0x01010101)
  }
  for (i += words.length * 4; i < bytes.length; i++) if (bytes[i] === byte) count++
  return count
}

/** Among at most 255 words, so that the four counters in `sum`, a byte each, do not run over. Apart, so that it is compiled early. */
function countInWords(words: Int32Array, from: number, to: number, pattern: number): number {
  let sum = 0
  for (let w = from; w < to; w++) {
    const x = (words[w] as number) ^ pattern
    const zero = ~(((x & 0x7f7f7f7f) + 0x7f7f7f7f) | x)
    sum = (sum + ((zero >>> 7) & 0x01010101)) | 0
  }
  return (sum & 255) + ((sum >>> 8) & 255) + ((sum >>> 16) & 255) + (sum >>> 24)
}
