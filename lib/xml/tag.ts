import {
  AMPERSAND,
  byteLength,
  codePointAt,
  DOUBLE,
  EQUALS,
  GREATER,
  ILLEGAL,
  INCOMPLETE,
  isCharacter,
  isNameCharacter,
  isSpace,
  LESS,
  NAME,
  PLAIN,
  SEMICOLON,
  SINGLE,
  SLASH,
} from './characters.ts'
import type {SyntaxFault} from './syntax-error.ts'

/** Refuses the document because of what stands at `at`. */
export type Fail = (message: string, at: number, fault?: SyntaxFault) => never

/** The elements that are open: their names one after the other, and where each ends. */
export interface Tags {
  readonly fail: Fail
  names: Uint8Array
  readonly ends: number[]
  depth: number
  hasRoot: boolean
}

/** Elements may be nested so deep; MusicXML needs a dozen. */
export const DEEPEST = 1000

/** No element open yet. */
export function openTags(fail: Fail): Tags {
  return {fail, names: new Uint8Array(1024), ends: [0], depth: 0, hasRoot: false}
}

/** Passes the start tag at `start` and opens its element; gives its end, INCOMPLETE when it is not there yet. */
export function passStartTag(tags: Tags, bytes: Uint8Array, start: number): number {
  const {fail} = tags
  const nameEnd = passName(fail, bytes, start + 1)
  if (nameEnd < 0) return INCOMPLETE
  if (bytes[nameEnd] === GREATER) {
    open(tags, bytes, start, nameEnd)
    return nameEnd + 1
  }
  const attributes: number[] = []
  let names: Set<string> | undefined
  for (let at = nameEnd; ;) {
    const space = at
    while (isSpace(bytes[at] as number)) at++
    const byte = bytes[at]
    if (byte === undefined) return INCOMPLETE
    if (byte === GREATER) {
      open(tags, bytes, start, nameEnd)
      return at + 1
    }
    if (byte === SLASH) {
      if (at + 1 === bytes.length) return INCOMPLETE
      if (bytes[at + 1] !== GREATER) fail('a slash in a tag that is not its end', at)
      if (tags.depth === 0) openRoot(tags, start)
      return at + 2
    }
    if (at === space) fail('white space is missing in a tag', at)
    const end = passName(fail, bytes, at)
    if (end < 0) return INCOMPLETE
    if (attributes.length < MANY) refuseDouble(fail, bytes, attributes, at, end)
    else names = refuseAmongMany(fail, bytes, attributes, names, at, end)
    attributes.push(at, end)
    at = passValue(fail, bytes, end)
    if (at < 0) return INCOMPLETE
  }
}

function open(tags: Tags, bytes: Uint8Array, start: number, nameEnd: number): void {
  if (tags.depth === 0) openRoot(tags, start)
  if (tags.depth === DEEPEST) {
    tags.fail(`elements are nested more than ${DEEPEST} deep`, start, 'xml/too-deep')
  }
  const from = tags.ends[tags.depth] as number
  const to = from + nameEnd - start - 1
  if (to > tags.names.length) {
    const more = new Uint8Array(to * 2)
    more.set(tags.names)
    tags.names = more
  }
  for (let i = from, k = start + 1; i < to; i++, k++) tags.names[i] = bytes[k] as number
  tags.ends[++tags.depth] = to
}

function openRoot(tags: Tags, start: number): void {
  if (tags.hasRoot) tags.fail('there is a second root element', start)
  tags.hasRoot = true
}

/** Passes the end tag at `start`, which must be that of the open element; gives its end or INCOMPLETE. */
export function passEndTag(tags: Tags, bytes: Uint8Array, start: number): number {
  const {names, ends, depth, fail} = tags
  if (depth === 0) fail('an end tag without its start tag', start)
  const from = ends[depth - 1] as number
  const length = (ends[depth] as number) - from
  let at = start + 2
  for (let i = 0; i < length; i++, at++) {
    if (bytes[at] !== names[from + i]) {
      if (at >= bytes.length) return INCOMPLETE
      const name = new TextDecoder().decode(names.subarray(from, from + length))
      fail(`an end tag that is not </${name}>`, start)
    }
  }
  while (isSpace(bytes[at] as number)) at++
  if (at >= bytes.length) return INCOMPLETE
  if (bytes[at] !== GREATER) fail('an end tag that is not that of the open element', start)
  tags.depth--
  return at + 1
}

/** The end of the name at `start`; INCOMPLETE when it may go on. */
export function passName(fail: Fail, bytes: Uint8Array, start: number): number {
  if (NAME[bytes[start] as number] === 1) fail('a name is missing', start)
  for (let at = start; ;) {
    while (at < bytes.length && (NAME[bytes[at] as number] as number) > 0) at++
    if (at >= bytes.length) return INCOMPLETE
    if ((bytes[at] as number) < 0x80 && at > start) return at
    const point = codePointAt(bytes, at)
    if (point === INCOMPLETE) return INCOMPLETE
    if (point === ILLEGAL || !isNameCharacter(point, at === start)) fail('no name', at)
    at += byteLength(point)
  }
}

/** Passes `="value"` after an attribute's name. */
function passValue(fail: Fail, bytes: Uint8Array, start: number): number {
  let at = start
  while (isSpace(bytes[at] as number)) at++
  if (at >= bytes.length) return INCOMPLETE
  if (bytes[at] !== EQUALS) fail('an attribute without a value', at)
  at++
  while (isSpace(bytes[at] as number)) at++
  const quote = bytes[at++]
  if (quote === undefined) return INCOMPLETE
  if (quote !== DOUBLE && quote !== SINGLE) fail('a value without quotes', at - 1)
  while (at < bytes.length) {
    const byte = bytes[at] as number
    if (byte === quote) return at + 1
    if (PLAIN[byte] === 1) at++
    else {
      if (byte === LESS) fail('a < in a value', at)
      at = byte === AMPERSAND ? passReference(fail, bytes, at) : passCharacter(fail, bytes, at)
      if (at < 0) return INCOMPLETE
    }
  }
  return INCOMPLETE
}

/** From this length on (two numbers an attribute) a set of names is quicker than comparing each with each. */
const MANY = 64

function refuseAmongMany(
  fail: Fail,
  bytes: Uint8Array,
  attributes: readonly number[],
  known: Set<string> | undefined,
  start: number,
  end: number,
): Set<string> {
  const names = known ?? new Set<string>()
  const name = (from: number, to: number): string =>
    new TextDecoder().decode(bytes.subarray(from, to))
  for (let i = names.size * 2; i < attributes.length; i += 2) {
    names.add(name(attributes[i] as number, attributes[i + 1] as number))
  }
  if (names.has(name(start, end))) fail('the same attribute twice', start)
  return names
}

function refuseDouble(
  fail: Fail,
  bytes: Uint8Array,
  names: readonly number[],
  start: number,
  end: number,
): void {
  for (let i = 0; i < names.length; i += 2) {
    let k = names[i] as number
    if ((names[i + 1] as number) - k !== end - start) continue
    let at = start
    for (; at < end && bytes[at] === bytes[k]; k++) at++
    if (at === end) fail('the same attribute twice', start)
  }
}

/** Passes one character, whatever it is. */
export function passCharacter(fail: Fail, bytes: Uint8Array, at: number): number {
  const point = codePointAt(bytes, at)
  if (point === ILLEGAL) fail('a character that XML does not allow, or no UTF-8', at)
  return point === INCOMPLETE ? INCOMPLETE : at + byteLength(point)
}

/** The bytes of `amp;` and so on. */
const ENTITIES = ['lt;', 'gt;', 'amp;', 'quot;', 'apos;'].map((name) =>
  new TextEncoder().encode(name),
)

/** Passes a reference to a character or to one of the five predefined entities. */
export function passReference(fail: Fail, bytes: Uint8Array, start: number): number {
  if (bytes[start + 1] === 0x23) return passCharacterReference(fail, bytes, start)
  for (const entity of ENTITIES) {
    let i = 0
    while (i < entity.length && bytes[start + 1 + i] === entity[i]) i++
    if (i === entity.length) return start + 1 + i
    if (start + 1 + i >= bytes.length) return INCOMPLETE
  }
  return fail('an & that begins no known reference', start)
}

function passCharacterReference(fail: Fail, bytes: Uint8Array, start: number): number {
  const isHex = bytes[start + 2] === 0x78
  let point = 0
  const first = start + (isHex ? 3 : 2)
  for (let at = first; at < bytes.length; at++) {
    const byte = bytes[at] as number
    if (byte === SEMICOLON && at > first && isCharacter(point)) return at + 1
    const digit = Number.parseInt(String.fromCharCode(byte), isHex ? 16 : 10)
    if (Number.isNaN(digit)) fail('a reference to no character', start)
    point = Math.min(point * (isHex ? 16 : 10) + digit, 0x110000)
  }
  return INCOMPLETE
}
