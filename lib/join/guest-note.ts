import type {Measure, Note} from '../musicxml/measure.ts'
import {ORDER} from '../musicxml/order.ts'
import {applyEdits, insertChild, removeAttribute, removeElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {attribute, attributeValue, child, childrenNamed} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import type {Manner} from './passage.ts'

/** How a note of the guest is to stand in the host. */
export interface NoteSetting {
  readonly manner: Manner
  readonly voice: string
  /** The host's staff, where it has several. */
  readonly staff: number | undefined
  /** In the host's divisions; grace notes have none. */
  readonly duration: number
  /** Sounds with the note before it. */
  readonly chord: boolean
  readonly stem: 'up' | 'down' | undefined
  /** The first attack of the passage: what leads to it from before is cut. The last: what leads on is. */
  readonly first: boolean
  readonly last: boolean
  /** Slurs of the passage that are open here, by number; kept up to date. */
  readonly slurs: Set<string>
}

/** True of the guest's player, its page or its file, and of nothing in the host. */
const FOREIGN = new Set(['instrument', 'lyric', 'play', 'listen', 'staff', 'footnote', 'level'])
/** What a cue keeps of a note's notations: it is there to be recognised, not to be played. */
const SEEN = new Set(['tied', 'slur', 'tuplet', 'articulations', 'ornaments', 'accidental-mark'])
const PLACED = /^(?:default|relative)-[xy]$|^bezier-|^id$/

/** A note or rest of the guest, printed for the host. */
export function printGuestNote({text}: Measure, note: Note, setting: NoteSetting): string {
  const {element} = note
  const {manner, voice, staff, duration} = setting
  const edits: Edit[] = [...unplaced(element)]
  const add = (name: string, value: string): void => {
    edits.push(insertChild(text, element, name, ORDER.note, () => value))
  }
  const silent = manner === 'cue'
  if (silent && !note.cue) add('cue', '<cue/>')
  for (const each of element.children) {
    const isTieless = each.name === 'tie' && (silent || isCut(each, setting))
    const isAlone = each.name === 'chord' && !setting.chord
    if (FOREIGN.has(each.name) || isTieless || isAlone) {
      edits.push(removeElement(text, each))
      continue
    }
    if (each.name === 'rest' && silent) edits.push(...emptied(text, each))
    else if (each.name === 'notations') edits.push(...editNotations(text, each, setting))
    else edits.push(...everywhere(each))
    if (each.name === 'duration') edits.push(setText(each, String(duration)))
    else if (each.name === 'voice') edits.push(setText(each, voice))
    else if (each.name === 'type' && manner !== 'played') edits.push(...sized(each))
    else if (each.name === 'stem' && setting.stem && !isNone(text, each))
      edits.push(setText(each, setting.stem))
  }
  if (!child(element, 'voice')) add('voice', `<voice>${voice}</voice>`)
  if (staff !== undefined) add('staff', `<staff>${staff}</staff>`)
  if (setting.last && setting.slurs.size > 0) edits.push(...closeSlurs(text, element, setting))
  return applyWithin(text, element, edits)
}

/** The text of an element with edits made in it. */
export function applyWithin(text: string, {start, end}: Element, edits: readonly Edit[]): string {
  const moved = edits.map((edit) => ({...edit, start: edit.start - start, end: edit.end - start}))
  return applyEdits(text.slice(start, end), moved)
}

/** Distances on the guest's page, and names that must be unique, from a start tag. */
export function* unplaced(element: Element): Iterable<Edit> {
  for (const each of element.attributes) if (PLACED.test(each.name)) yield removeAttribute(each)
}

/** The same for an element and all that it holds. */
export function* everywhere(element: Element): Iterable<Edit> {
  yield* unplaced(element)
  for (const each of element.children) yield* everywhere(each)
}

function* emptied(text: string, rest: Element): Iterable<Edit> {
  for (const each of rest.children) yield removeElement(text, each)
}

function* sized(type: Element): Iterable<Edit> {
  const found = attribute(type, 'size')
  if (found) yield removeAttribute(found)
  const at = type.start + type.name.length + 1
  yield {start: at, end: at, text: ' size="cue"'}
}

/** A note that has no stem gets none. */
export function isNone(text: string, stem: Element): boolean {
  return text.slice(stem.contentStart, stem.contentEnd).trim() === 'none'
}

/** Whether a tie leads out of the passage, to a note that the host does not have. */
function isCut(tie: Element, {first, last}: NoteSetting): boolean {
  const type = attributeValue(tie, 'type')
  return (first && type === 'stop') || (last && type === 'start')
}

function* editNotations(text: string, notations: Element, setting: NoteSetting): Iterable<Edit> {
  const {manner, last, slurs} = setting
  const gone = notations.children.filter((each) => {
    if (manner === 'cue' && !SEEN.has(each.name)) return true
    if (each.name === 'tied') return isCut(each, setting)
    if (each.name !== 'slur') return false
    const type = attributeValue(each, 'type')
    const number = attributeValue(each, 'number') ?? '1'
    if (type === 'start') {
      if (!last) slurs.add(number)
      return last
    }
    return type === 'stop' ? !slurs.delete(number) : !slurs.has(number)
  })
  if (gone.length === notations.children.length && !(last && slurs.size > 0)) {
    yield removeElement(text, notations)
    return
  }
  yield* unplaced(notations)
  for (const each of notations.children)
    if (gone.includes(each)) yield removeElement(text, each)
    else yield* everywhere(each)
}

/** A slur that would lead on beyond the passage ends with it. */
function* closeSlurs(text: string, element: Element, {slurs}: NoteSetting): Iterable<Edit> {
  const stops = [...slurs].map((number) => `<slur number="${number}" type="stop"/>`).join('')
  slurs.clear()
  const [notations] = childrenNamed(element, 'notations')
  if (notations && notations.contentStart !== notations.end)
    yield {start: notations.contentEnd, end: notations.contentEnd, text: stops}
  else if (!notations)
    yield insertChild(
      text,
      element,
      'notations',
      ORDER.note,
      () => `<notations>${stops}</notations>`,
    )
}
