import {
  AMPERSAND,
  BANG,
  BRACKET,
  DASH,
  GREATER,
  isSpace,
  LESS,
  PLAIN,
  QUESTION,
  SLASH,
} from './characters.ts'
import {markupEnd, startsWith} from './scan.ts'
import {PLAIN_DEPTH, plainElements} from './plain.ts'
import {isDocumentType} from './document-type.ts'
import {syntaxError, type SyntaxFault} from './syntax-error.ts'
import {
  DEEPEST,
  openTags,
  passCharacter,
  passEndTag,
  passName,
  passReference,
  passStartTag,
  type Fail,
} from './tag.ts'
import {extend, openWindow} from './window.ts'

/** Judges an XML document while it comes. */
export interface Checker {
  /** Takes the next bytes. Throws a `SyntaxError` (`XmlSyntaxError`, with its offset) at the first fault. */
  push(bytes: Uint8Array): void
  /** The document is complete. Throws likewise. */
  end(): void
}

/** Bytes that markup may have, as a frame may. */
const LIMIT = 64 * 1024 * 1024

/**
 * A checker of UTF-8 bytes, in chunks of any size: whether they are a well-formed XML 1.0 document (fifth edition, without
 * validity and namespaces). Entities other than the five predefined ones count as undeclared, wherever they are declared; what
 * else the internal subset declares is not judged.
 *
 * ```ts
 * const checker = createChecker()
 * for await (const chunk of chunks) checker.push(chunk)
 * checker.end()
 * ```
 */
export function createChecker(): Checker {
  const window = openWindow()
  const tags = openTags(fail)
  let length = 0
  /** Nothing was read but a byte order mark: an XML declaration may stand here. */
  let isStart = true
  let hasMark = false
  let hasType = false

  function fail(message: string, at: number, fault?: SyntaxFault): never {
    throw syntaxError(message, {offset: length - window.bytes.length + at}, fault)
  }

  function push(chunk: Uint8Array): void {
    length += chunk.length
    extend(window, chunk)
    const {bytes, from, wake} = window
    if (bytes.length >= wake || bytes.length > from + LIMIT) run()
  }

  function run(): void {
    const {bytes} = window
    let at = window.from
    const plain = plainElements(bytes)
    while (at < bytes.length) {
      if (tags.depth > 0 && tags.depth < DEEPEST - PLAIN_DEPTH) at = plain.pass(at)
      if (at === bytes.length) break
      const next = passNext(bytes, at)
      if (next < 0) break
      isStart &&= next === at + 3 && bytes[at] === 0xef
      at = next
    }
    const rest = bytes.length - at
    if (rest > LIMIT) fail('markup without an end', at, 'xml/too-large')
    // Long markup is looked at again when it has doubled: in all no more than twice.
    window.wake = bytes.length + (rest > 256 ? rest : 0)
    window.from = window.at = at
  }

  function passNext(bytes: Uint8Array, at: number): number {
    if (bytes[at] !== LESS) return tags.depth > 0 ? passText(fail, bytes, at) : passSpace(bytes, at)
    const next = bytes[at + 1]
    if (next === undefined) return -1
    if (next === SLASH) return passEndTag(tags, bytes, at)
    if (next === QUESTION) return passInstruction(fail, bytes, at, isStart)
    return next === BANG ? passDeclaration(bytes, at) : passStartTag(tags, bytes, at)
  }

  /** Outside the root only white space may stand, and a byte order mark before everything. */
  function passSpace(bytes: Uint8Array, start: number): number {
    let at = start
    while (isSpace(bytes[at] as number)) at++
    if (at > start) return at
    const isMark =
      isStart && !hasMark && [0xef, 0xbb, 0xbf].every((byte, i) => (bytes[at + i] ?? byte) === byte)
    if (!isMark) fail('text outside the root element', at)
    if (at + 3 > bytes.length) return -1
    hasMark = true
    return at + 3
  }

  /** Passes a comment, a CDATA section or a document type. */
  function passDeclaration(bytes: Uint8Array, at: number): number {
    const end = markupEnd(bytes, at)
    if (end < 0) return -1
    if (startsWith(bytes, at, '<!--')) checkComment(fail, bytes, at, end)
    else if (startsWith(bytes, at, '<![CDATA[')) {
      if (tags.depth === 0) fail('text outside the root element', at)
      checkCharacters(fail, bytes, at, end)
    } else {
      if (hasType || tags.hasRoot) fail('a document type at the wrong place', at)
      hasType = true
      if (!isDocumentType(decode(bytes, at, end))) fail('a faulty document type or declaration', at)
      checkCharacters(fail, bytes, at, end)
    }
    return end
  }

  function finish(): void {
    window.wake = 0
    run()
    if (window.from < window.bytes.length) fail('the document ends too early', window.from)
    if (tags.depth > 0) fail('the document ends before its elements', window.from)
    if (!tags.hasRoot) fail('there is no root element', window.from)
  }

  return {push, end: finish}
}

/** Passes text up to the next `<`, or as far as it is complete. */
function passText(fail: Fail, bytes: Uint8Array, start: number): number {
  const {length} = bytes
  let at = start
  for (;;) {
    while (at < length && PLAIN[bytes[at] as number] === 1) at++
    if (at === length) return at
    const byte = bytes[at] as number
    if (byte === LESS) return at
    let next = at + 1
    if (byte === AMPERSAND) next = passReference(fail, bytes, at)
    else if (byte === BRACKET) next = passBracket(fail, bytes, at)
    else if (byte < 0x20 || byte >= 0x80) next = passCharacter(fail, bytes, at)
    if (next < 0) return at > start ? at : -1
    at = next
  }
}

function passBracket(fail: Fail, bytes: Uint8Array, at: number): number {
  if (at + 2 >= bytes.length) return -1
  if (bytes[at + 1] === BRACKET && bytes[at + 2] === GREATER) fail('a ]]> in text', at)
  return at + 1
}

function passInstruction(fail: Fail, bytes: Uint8Array, at: number, isStart: boolean): number {
  const end = markupEnd(bytes, at)
  if (end < 0) return -1
  const nameEnd = passName(fail, bytes, at + 2)
  if (!isSpace(bytes[nameEnd] as number) && nameEnd !== end - 2)
    fail('no name of an instruction', at)
  const text = decode(bytes, at, end)
  if (!/^<\?xml[ \t\r\n?]/i.test(text)) checkCharacters(fail, bytes, at, end)
  else if (!isStart) fail('an XML declaration that is not at the beginning', at)
  else if (!XML_DECLARATION.test(text)) fail('a faulty XML declaration', at)
  return end
}

/** Productions 23 to 32 and 80. */
const XML_DECLARATION = new RegExp(
  [
    '^<\\?xml_+version_*=_*(["\'])1\\.\\d+\\1',
    '(?:_+encoding_*=_*(["\'])[A-Za-z][\\w.-]*\\2)?',
    '(?:_+standalone_*=_*(["\'])(?:yes|no)\\3)?_*\\?>$',
  ]
    .join('')
    .replaceAll('_', '[ \\t\\r\\n]'),
)

function decode(bytes: Uint8Array, start: number, end: number): string {
  return new TextDecoder().decode(bytes.subarray(start, end))
}

function checkComment(fail: Fail, bytes: Uint8Array, start: number, end: number): void {
  for (let i = bytes.indexOf(DASH, start + 4); i < end - 3; i = bytes.indexOf(DASH, i + 1)) {
    if (bytes[i + 1] === DASH) fail('a -- in a comment', i)
  }
  checkCharacters(fail, bytes, start, end)
}

function checkCharacters(fail: Fail, bytes: Uint8Array, start: number, end: number): void {
  for (let at = start; at < end;)
    at = PLAIN[bytes[at] as number] === 1 ? at + 1 : passCharacter(fail, bytes, at)
}
