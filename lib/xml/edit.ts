import type {Attribute, Element} from './element.ts'
import {encode} from './element.ts'

/** Replaces [start, end) of a text as it was read. Equal offsets insert. */
export interface Edit {
  readonly start: number
  readonly end: number
  readonly text: string
  /** Comments and instructions of what is replaced stay, before the new text. */
  readonly keepsRemarks?: true
}

/**
 * The text with all edits made. Insertions at one place keep their order. Throws `RangeError` when two edits
 * overlap: two rules own the same thing, which is our bug.
 */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  if (edits.length === 0) return text
  const ordered = edits.toSorted((a, b) => a.start - b.start || a.end - b.end)
  let out = ''
  let done = 0
  for (const edit of ordered) {
    if (edit.start < done)
      throw new RangeError(`Edits overlap at ${edit.start}: ${text.slice(edit.start, edit.end)}`)
    out += text.slice(done, edit.start)
    if (edit.keepsRemarks) out += remarksOf(text.slice(edit.start, edit.end))
    out += edit.text
    done = edit.end
  }
  return out + text.slice(done)
}

/** Replaces what an element says; markup in `value` is escaped. */
export function setText(element: Element, value: string): Edit {
  if (element.contentStart === element.end) {
    return {start: element.end - 2, end: element.end, text: `>${encode(value)}</${element.name}>`}
  }
  const {contentStart: start, contentEnd: end} = element
  return {start, end, text: encode(value), keepsRemarks: true}
}

function remarksOf(text: string): string {
  if (!text.includes('<')) return ''
  return (text.match(/<!--[\s\S]*?-->|<\?[\s\S]*?\?>/g) ?? []).join('')
}

export function setAttribute(found: Attribute, value: string): Edit {
  return {start: found.start, end: found.end, text: encode(value)}
}

/** Adds an attribute at the end of the start tag. */
export function addAttribute(text: string, element: Element, name: string, value: string): Edit {
  const tagEnd = element.contentStart === element.end ? element.end - 2 : element.contentStart - 1
  let at = tagEnd
  while (/\s/.test(text[at - 1] ?? '')) at--
  return {start: at, end: at, text: ` ${name}="${encode(value)}"`}
}

export function removeAttribute(found: Attribute): Edit {
  return {start: found.from, end: found.end + 1, text: ''}
}

/** Removes an element together with the white space before it. */
export function removeElement(text: string, element: Element): Edit {
  return {
    start: element.start - marginBefore(text, element.start).length,
    end: element.end,
    text: '',
  }
}

export function replaceElement(element: Element, text: string): Edit {
  return {start: element.start, end: element.end, text}
}

/** The white space directly before an offset, if nothing but white space parts it from the markup before. */
export function marginBefore(text: string, offset: number): string {
  let at = offset
  while (at > 0 && /\s/.test(text[at - 1] ?? '')) at--
  return at === 0 || text[at - 1] === '>' ? text.slice(at, offset) : ''
}

/**
 * Inserts new elements among an element's children where the schema wants them: before the first child that `order`
 * places later. They take the white space of their neighbour. `print` gets the margin of a child and the step by which
 * the file indents.
 */
export function insertChild(
  text: string,
  parent: Element,
  name: string,
  order: readonly string[],
  print: (margin: string, indent: string) => string,
): Edit {
  const place = order.indexOf(name)
  const later = parent.children.find((each) => order.indexOf(each.name) > place)
  const neighbour = later ?? parent.children.at(-1)
  if (!neighbour) return insertOnlyChild(text, parent, print)
  const margin = marginBefore(text, neighbour.start)
  const printed = print(margin, indentOf(text, parent, neighbour))
  // Before the margin of what follows, which may be removed together with its margin.
  const at = later ? later.start - margin.length : neighbour.end
  return {start: at, end: at, text: margin + printed}
}

/** Inserts elements directly before another, with its margin. */
export function insertBefore(
  text: string,
  next: Element,
  parent: Element,
  print: (margin: string, indent: string) => string,
): Edit {
  const margin = marginBefore(text, next.start)
  const at = next.start - margin.length
  return {start: at, end: at, text: margin + print(margin, indentOf(text, parent, next))}
}

/** Inserts elements directly after another, with its margin. */
export function insertAfter(
  text: string,
  previous: Element,
  parent: Element,
  print: (margin: string, indent: string) => string,
): Edit {
  const margin = marginBefore(text, previous.start)
  return {
    start: previous.end,
    end: previous.end,
    text: margin + print(margin, indentOf(text, parent, previous)),
  }
}

function insertOnlyChild(
  text: string,
  parent: Element,
  print: (margin: string, indent: string) => string,
): Edit {
  const outer = marginBefore(text, parent.start)
  const margin = outer.includes('\n') ? `${outer}  ` : ''
  const printed = margin + print(margin, margin ? '  ' : '') + (margin ? outer : '')
  if (parent.contentStart === parent.end) {
    return {start: parent.end - 2, end: parent.end, text: `>${printed}</${parent.name}>`}
  }
  // What is not white space there is a comment: it stays.
  const said = text.slice(parent.contentStart, parent.contentEnd).trimEnd()
  return {start: parent.contentStart + said.length, end: parent.contentEnd, text: printed}
}

/** By how much the file indents a child: what the child's margin has beyond its parent's; nothing on one line. */
function indentOf(text: string, parent: Element, inner: Element): string {
  const own = marginBefore(text, inner.start)
  if (!own.includes('\n')) return ''
  const outer = marginBefore(text, parent.start)
  const extra = own
    .slice(own.lastIndexOf('\n') + 1)
    .slice(outer.slice(outer.lastIndexOf('\n') + 1).length)
  return extra === '' ? '  ' : extra
}
