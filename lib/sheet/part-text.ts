import type {Measure, Note} from '../musicxml/measure.ts'
import {attribute, attributeValue, child, encode, everyElement} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {addAttribute, applyEdits, removeAttribute, removeElement} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'

/** What an engraver must be told again when it begins in the middle: the elements in force, as text, by what they are. */
export type Carried = ReadonlyMap<string, string>

/** In the order of the schema. */
const CARRIED = ['divisions', 'key', 'time', 'staves', 'part-symbol', 'clef', 'staff-details']

/** What is drawn nowhere, or draws pages that are not ours, or (as a rest of many measures) hides what it stands for. */
const LEFT_OUT = new Set(['print', 'sound', 'bookmark', 'link', 'listening'])

export interface MeasureTextOptions {
  /** Present in the first measure of a text of its own. */
  readonly carried?: Carried | undefined
  /** Whether a new page, which is a system here, begins with the measure. */
  readonly newPage: boolean
  readonly idOf: (note: Note) => string
}

/** Takes the attributes of a measure up: all of them, or only those before its first note. */
export function carry(carried: Carried, measure: Measure, which: 'all' | 'leading'): Carried {
  const elements =
    which === 'leading'
      ? leadingAttributes(measure)
      : measure.attributes.map(({element}) => element)
  if (elements.length === 0) return carried
  const next = new Map(carried)
  for (const each of elements.flatMap(({children}) => children)) {
    if (!CARRIED.includes(each.name) || attributeValue(each, 'additional') === 'yes') continue
    const number = attributeValue(each, 'number')
    const usual = each.name === 'clef' ? '1' : ''
    // Said of all staves, it replaces what was said of one.
    if (!number && each.name !== 'clef')
      for (const key of next.keys()) if (key.startsWith(`${each.name}|`)) next.delete(key)
    next.set(`${each.name}|${number ?? usual}`, measure.text.slice(each.start, each.end))
  }
  return next
}

/** Whether a signature begins in the measure. */
export function hasKey(measure: Measure | undefined): boolean {
  return measure?.attributes.some(({element}) => child(element, 'key')) ?? false
}

/** Whether a signature begins within the measure, after its first note. */
export function hasLateKey(measure: Measure): boolean {
  const leading = leadingAttributes(measure)
  return measure.attributes.some(
    ({element}) => child(element, 'key') !== undefined && !leading.includes(element),
  )
}

/** The measure as an engraver gets it, whatever the form of the score it came from. */
export function measureXml(measure: Measure, options: MeasureTextOptions): string {
  const {text, root, number} = measure
  const edits: Edit[] = []
  const leading = options.carried ? leadingAttributes(measure) : []
  const gone = new Set<Element>(leading)
  for (const each of root.children) {
    if (LEFT_OUT.has(each.name)) gone.add(each)
    if (each.name !== 'attributes' || gone.has(each)) continue
    for (const inner of each.children) {
      const hides = inner.name === 'measure-style' && child(inner, 'multiple-rest')
      if (hides || inner.name === 'transpose' || inner.name === 'for-part') gone.add(inner)
    }
  }
  for (const each of gone) edits.push(removeElement(text, each))
  const notes = new Map(measure.notes.map((note) => [note.element, note]))
  for (const top of root.children) {
    if (gone.has(top)) continue
    for (const each of everyElement(top)) {
      const id = attribute(each, 'id')
      if (id && !isInside(each, gone)) edits.push(removeAttribute(id))
      const note = notes.get(each)
      if (note) edits.push(addAttribute(text, each, 'id', options.idOf(note)))
    }
  }
  const inner = edits.map((edit) => ({
    ...edit,
    start: edit.start - root.contentStart,
    end: edit.end - root.contentStart,
  }))
  const said = text.slice(root.contentStart, root.contentEnd)
  const implicit = attributeValue(root, 'implicit') === 'yes' ? ' implicit="yes"' : ''
  const print = options.newPage ? '<print new-page="yes"/>' : ''
  const state = options.carried
    ? attributesXml(carry(options.carried, measure, 'leading'), leading)
    : ''
  return `<measure number="${encode(number)}"${implicit}>${print}${state}${applyEdits(said, inner)}</measure>`
}

/** Two or one parts as a score that says nothing but its music. */
export function scoreXml(
  parts: readonly {readonly name: string; readonly measures: string}[],
): string {
  const list = parts.map(
    ({name}, index) =>
      `<score-part id="Q${index}"><part-name>${encode(name)}</part-name><part-abbreviation>${encode(name)}</part-abbreviation></score-part>`,
  )
  const music = parts.map(({measures}, index) => `<part id="Q${index}">${measures}</part>`)
  return `<?xml version="1.0" encoding="UTF-8"?><score-partwise version="4.0"><part-list>${list.join('')}</part-list>${music.join('')}</score-partwise>`
}

function attributesXml(carried: Carried, leading: readonly Element[]): string {
  const showsTime = leading.some((element) => child(element, 'time'))
  const elements = CARRIED.flatMap((name) =>
    [...carried]
      .filter(([key]) => key.startsWith(`${name}|`))
      .toSorted(([a], [b]) => a.localeCompare(b))
      .map(([, text]) =>
        name === 'time' && !showsTime
          ? text.replace(/^<time(?![^>]*print-object)/, '<time print-object="no"')
          : text,
      ),
  )
  return `<attributes>${elements.join('')}</attributes>`
}

/** The attributes that stand before any note, at the very start of the measure. */
function leadingAttributes({root}: Measure): Element[] {
  const end = root.children.findIndex(({name}) => ['note', 'backup', 'forward'].includes(name))
  const before = end < 0 ? root.children : root.children.slice(0, end)
  return before.filter(({name}) => name === 'attributes')
}

function isInside(element: Element, outer: ReadonlySet<Element>): boolean {
  return [...outer].some(({start, end}) => element.start >= start && element.end <= end)
}
