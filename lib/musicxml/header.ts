import {
  attributeValue,
  child,
  childrenNamed,
  childText,
  descendant,
  parseElements,
  textOf,
} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {lineEndsBefore} from '../xml/scan.ts'

/** What the part list says of one part. `element` is its `score-part`. */
export interface ScorePart {
  readonly id: string
  readonly name: string
  readonly abbreviation: string
  readonly element: Element
  readonly instruments: readonly {
    readonly id: string
    readonly name: string
    readonly sound?: string
  }[]
}

/** Everything of a score before its music. */
export interface Header {
  readonly text: string
  readonly root: Element
  readonly form: 'partwise' | 'timewise'
  /** As the root's attribute has it; `1.0` when it has none (MusicXML 4.0, attribute `version`). */
  readonly version: string
  /** Work title, movement title, or the first credit; empty when there is none. */
  readonly title: string
  /** Whether the file says of itself that it is at concert pitch, and on which line. */
  readonly concertScore: boolean
  readonly concertLine?: number
  readonly parts: readonly ScorePart[]
  readonly line: number
}

/** Reads the header of a score: its text up to the first part or measure. Throws `SyntaxError`. */
export function readHeader(text: string): Header {
  const root = parseElements(text, {unclosed: 'allow'}).at(-1)
  if (!root || (root.name !== 'score-partwise' && root.name !== 'score-timewise')) {
    throw new SyntaxError(`the root element is ${root ? `<${root.name}>` : 'missing'}, not a score`)
  }
  const list = child(root, 'part-list')
  const flag = descendant(root, 'defaults', 'concert-score')
  return {
    text,
    root,
    form: root.name === 'score-partwise' ? 'partwise' : 'timewise',
    version: attributeValue(root, 'version') ?? '1.0',
    title: titleOf(text, root),
    concertScore: flag !== undefined,
    ...(flag && {concertLine: 1 + lineEndsBefore(text, flag.start)}),
    parts: list ? childrenNamed(list, 'score-part').map((part) => readScorePart(text, part)) : [],
    line: 1,
  }
}

/** Elements of the part list that go when only some parts stay: other parts, and groups that bracket fewer than two. */
export function unwantedEntries(header: Header, isWanted: (part: string) => boolean): Element[] {
  const list = child(header.root, 'part-list')
  if (!list) return []
  const gone: Element[] = []
  const open = new Map<string, {readonly start: Element; count: number}>()
  for (const entry of list.children) {
    if (entry.name === 'score-part') {
      if (!isWanted(attributeValue(entry, 'id') ?? '')) gone.push(entry)
      else for (const group of open.values()) group.count++
    } else if (entry.name === 'part-group') {
      const number = attributeValue(entry, 'number') ?? '1'
      if (attributeValue(entry, 'type') === 'start') open.set(number, {start: entry, count: 0})
      else {
        const group = open.get(number)
        if (!group || group.count < 2) gone.push(...(group ? [group.start] : []), entry)
        open.delete(number)
      }
    }
  }
  for (const {start, count} of open.values()) if (count < 2) gone.push(start)
  return gone
}

function readScorePart(text: string, element: Element): ScorePart {
  return {
    id: attributeValue(element, 'id') ?? '',
    name: nameOf(text, element, 'part-name'),
    abbreviation: nameOf(text, element, 'part-abbreviation'),
    element,
    instruments: childrenNamed(element, 'score-instrument').map((instrument) => {
      const sound = childText(text, instrument, 'instrument-sound')
      return {
        id: attributeValue(instrument, 'id') ?? '',
        name: childText(text, instrument, 'instrument-name') ?? '',
        ...(sound && {sound}),
      }
    }),
  }
}

/** The name as printed: its display form where there is one, flats and sharps as signs. */
function nameOf(text: string, element: Element, name: string): string {
  const display = child(element, `${name}-display`)
  const shown = display?.children
    .map((each) =>
      each.name === 'accidental-text' ? signOf(textOf(text, each)) : rawText(text, each),
    )
    .join('')
  return (shown || childText(text, element, name) || '').replaceAll(/\s+/g, ' ').trim()
}

function rawText(text: string, element: Element): string {
  const said = textOf(text, element)
  // A display text is often cut as `Clarinet in B` + flat: the inner spaces of its ends count.
  const raw = text.slice(element.contentStart, element.contentEnd)
  return `${/^\s/.test(raw) ? ' ' : ''}${said}${/\s$/.test(raw) ? ' ' : ''}`
}

function signOf(accidental: string): string {
  return {flat: '♭', sharp: '♯', natural: '♮'}[accidental] ?? ''
}

function titleOf(text: string, root: Element): string {
  const work = descendant(root, 'work', 'work-title')
  const movement = child(root, 'movement-title')
  const credit = descendant(root, 'credit', 'credit-words')
  const titles = [work, movement]
    .flatMap((each) => (each ? [textOf(text, each)] : []))
    .filter((each) => each !== '')
  return titles.length > 0
    ? titles.join(', ')
    : credit
      ? textOf(text, credit).replaceAll(/\s+/g, ' ')
      : ''
}
