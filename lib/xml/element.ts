import {BANG, EQUALS, GREATER, QUESTION, SLASH, isSpace} from './characters.ts'

/** An attribute of an element. `raw` is the value as written; offsets are of that value, inside the quotes. */
export interface Attribute {
  readonly name: string
  readonly raw: string
  readonly start: number
  readonly end: number
  /** Where the white space before the attribute begins: removing [from, end + 1) removes it whole. */
  readonly from: number
}

/**
 * An element and where it stands in its text. [start, end) is the whole element; [contentStart, contentEnd)
 * lies between its tags. A tag that closes itself has both equal to `end`.
 */
export interface Element {
  readonly name: string
  readonly attributes: readonly Attribute[]
  readonly children: readonly Element[]
  readonly start: number
  readonly end: number
  readonly contentStart: number
  readonly contentEnd: number
}

interface Growing extends Element {
  children: Element[]
  end: number
  contentEnd: number
}

/** Shared by all elements without attributes, and by those without children until they get one. */
const NONE: never[] = []
const ZERO = 48

/**
 * The elements of a text, as a tree of spans. The text may be a fragment; comments, processing instructions,
 * CDATA sections and a DOCTYPE are stepped over. Nesting is checked: throws `SyntaxError`. With `unclosed: 'allow'`
 * elements still open at the end (the root, in the header of a score) end there.
 */
export function parseElements(
  text: string,
  options: {readonly unclosed?: 'allow'} = {},
): Element[] {
  const roots: Element[] = []
  const open: Growing[] = []
  let parent: Growing | undefined
  let at = text.indexOf('<')
  while (at >= 0) {
    const next = text.charCodeAt(at + 1)
    if (next === SLASH) {
      const end = close(text, at, open.pop())
      parent = open.at(-1)
      at = text.indexOf('<', end)
    } else if (next === BANG || next === QUESTION) {
      at = text.indexOf('<', skipMarkup(text, at))
    } else {
      const element = readStartTag(text, at)
      if (!parent) roots.push(element)
      else if (parent.children === NONE) parent.children = [element]
      else parent.children.push(element)
      at = text.indexOf('<', element.contentStart)
      if (element.end >= 0) continue
      // Most elements hold a word or a number: they close at once.
      if (text.charCodeAt(at + 1) === SLASH) at = text.indexOf('<', close(text, at, element))
      else {
        open.push(element)
        parent = element
      }
    }
  }
  if (open.length > 0 && options.unclosed !== 'allow')
    throw new SyntaxError(`<${open.at(-1)?.name}> is not closed`)
  for (const element of open) element.end = element.contentEnd = text.length
  return roots
}

/** The first child of that name. */
export function child(element: Element, name: string): Element | undefined {
  for (const each of element.children) if (each.name === name) return each
  return undefined
}

/** The element at the end of a path of names below the element. */
export function descendant(element: Element, ...path: readonly string[]): Element | undefined {
  let found: Element | undefined = element
  for (const name of path) found = found && child(found, name)
  return found
}

export function childrenNamed(element: Element, name: string): Element[] {
  return element.children.filter((each) => each.name === name)
}

/** The element and everything below it, in document order. */
export function* everyElement(element: Element): Generator<Element> {
  yield element
  for (const each of element.children) yield* everyElement(each)
}

/** What an element says: its text without comments and instructions, entities decoded, ends trimmed. */
export function textOf(text: string, element: Element): string {
  const raw = text.slice(element.contentStart, element.contentEnd)
  if (!raw.includes('<')) return decode(raw).trim()
  return raw
    .replaceAll(
      /<!\[CDATA\[([\s\S]*?)\]\]>|<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<[^>]*>|[^<]+/g,
      (piece, cdata?: string) =>
        cdata !== undefined ? cdata : piece.startsWith('<') ? '' : decode(piece),
    )
    .trim()
}

/** The text of a child, undefined when there is none. */
export function childText(text: string, element: Element, name: string): string | undefined {
  const found = child(element, name)
  return found && textOf(text, found)
}

/** The number that an element says; undefined when it says none. */
export function numberOf(text: string, element: Element): number | undefined {
  const {contentStart: start, contentEnd: end} = element
  if (end - start <= 6 && end > start) {
    let value = 0
    let at = start
    for (; at < end; at++) {
      const digit = text.charCodeAt(at) - ZERO
      if (digit < 0 || digit > 9) break
      value = value * 10 + digit
    }
    if (at === end) return value
  }
  const said = textOf(text, element)
  const value = said === '' ? NaN : Number(said)
  return Number.isFinite(value) ? value : undefined
}

/** The number in a child, undefined when there is none or it is no number. */
export function childNumber(text: string, element: Element, name: string): number | undefined {
  const found = child(element, name)
  return found && numberOf(text, found)
}

export function attribute(element: Element, name: string): Attribute | undefined {
  for (const each of element.attributes) if (each.name === name) return each
  return undefined
}

/** An attribute's value, entities decoded; undefined when it is absent. */
export function attributeValue(element: Element, name: string): string | undefined {
  const found = attribute(element, name)
  return found && decode(found.raw)
}

const ENTITIES: Readonly<Record<string, string>> = {
  lt: '<',
  gt: '>',
  amp: '&',
  apos: "'",
  quot: '"',
}

/** Replaces the five predefined entities and character references; any other stays as written. */
export function decode(raw: string): string {
  if (!raw.includes('&')) return raw
  return raw.replaceAll(
    /&(?:#x([0-9a-fA-F]+)|#(\d+)|(lt|gt|amp|apos|quot));/g,
    (whole, hex?: string, decimal?: string, name?: string) => {
      if (name !== undefined) return ENTITIES[name] ?? whole
      const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16)
      return code <= 0x10ffff ? String.fromCodePoint(code) : whole
    },
  )
}

/** Makes text fit for content and for attribute values in double quotes. */
export function encode(value: string): string {
  return value
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}

function readStartTag(text: string, start: number): Growing {
  let at = start + 1
  while (at < text.length && !isNameEnd(text.charCodeAt(at))) at++
  const name = text.slice(start + 1, at)
  if (name === '') throw new SyntaxError('< without a name')
  let attributes: Attribute[] | undefined
  for (;;) {
    const from = at
    while (isSpace(text.charCodeAt(at))) at++
    const code = text.charCodeAt(at)
    if (code === GREATER) return growing(name, attributes ?? NONE, start, -1, at + 1)
    if (code === SLASH && text.charCodeAt(at + 1) === GREATER) {
      return growing(name, attributes ?? NONE, start, at + 2, at + 2)
    }
    if (Number.isNaN(code)) throw new SyntaxError(`<${name} is not finished`)
    const nameStart = at
    while (at < text.length && text.charCodeAt(at) !== EQUALS && !isSpace(text.charCodeAt(at))) at++
    const attributeName = text.slice(nameStart, at)
    while (isSpace(text.charCodeAt(at))) at++
    if (text.charCodeAt(at) !== EQUALS)
      throw new SyntaxError(`attribute ${attributeName} of <${name}> has no value`)
    at++
    while (isSpace(text.charCodeAt(at))) at++
    const quote = text[at]
    if (quote !== '"' && quote !== "'")
      throw new SyntaxError(`attribute ${attributeName} of <${name}> has no quotes`)
    const end = find(text, quote, at + 1)
    attributes ??= []
    attributes.push({name: attributeName, raw: text.slice(at + 1, end), start: at + 1, end, from})
    at = end + 1
  }
}

function growing(
  name: string,
  attributes: readonly Attribute[],
  start: number,
  end: number,
  contentStart: number,
): Growing {
  return {name, attributes, children: NONE, start, end, contentStart, contentEnd: end}
}

/** Ends an element with the end tag at `at`; gives the offset behind it. */
function close(text: string, at: number, element: Growing | undefined): number {
  const nameEnd = at + 2 + (element?.name.length ?? 0)
  if (element && text.charCodeAt(nameEnd) === GREATER && text.startsWith(element.name, at + 2)) {
    element.contentEnd = at
    element.end = nameEnd + 1
    return nameEnd + 1
  }
  const end = find(text, '>', at)
  if (!element || !isNamed(text, at + 2, end, element.name)) {
    throw new SyntaxError(
      `</${text.slice(at + 2, end)}> closes ${element ? `<${element.name}>` : 'nothing'}`,
    )
  }
  element.contentEnd = at
  element.end = end + 1
  return end + 1
}

/** Past a comment, a CDATA section, an instruction or a DOCTYPE with its internal subset. */
function skipMarkup(text: string, at: number): number {
  if (text.startsWith('<!--', at)) return find(text, '-->', at + 4) + 3
  if (text.startsWith('<![CDATA[', at)) return find(text, ']]>', at + 9) + 3
  if (text.startsWith('<?', at)) return find(text, '?>', at + 2) + 2
  let depth = 0
  for (let i = at + 2; i < text.length; i++) {
    const c = text[i]
    if (c === '"' || c === "'") i = find(text, c, i + 1)
    else if (text.startsWith('<!--', i)) i = find(text, '-->', i + 4) + 2
    else if (text.startsWith('<?', i)) i = find(text, '?>', i + 2) + 1
    else if (c === '[' || c === '<') depth++
    else if (c === ']') depth--
    else if (c === '>') {
      if (depth === 0) return i + 1
      if (depth > 1) depth--
    }
  }
  throw new SyntaxError('<! is not finished')
}

function find(text: string, what: string, from: number): number {
  const at = text.indexOf(what, from)
  if (at < 0) throw new SyntaxError(`${what} is missing`)
  return at
}

function isNamed(text: string, start: number, end: number, name: string): boolean {
  if (!text.startsWith(name, start)) return false
  for (let at = start + name.length; at < end; at++) if (!isSpace(text.charCodeAt(at))) return false
  return true
}

function isNameEnd(code: number): boolean {
  return code === GREATER || code === SLASH || isSpace(code)
}
