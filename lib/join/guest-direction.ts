import type {Measure, Positioned} from '../musicxml/measure.ts'
import {removeElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {attributeValue, child, childNumber, childrenNamed} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {applyWithin, everywhere, unplaced} from './guest-note.ts'
import type {Manner} from './passage.ts'

export interface DirectionSetting {
  readonly manner: Manner
  readonly voice: string
  /** The host's staff, where it has several. */
  readonly staff: number | undefined
  /** From the guest's divisions to the host's. */
  readonly scale: number
  /** How much later the direction takes effect than where it is put, in the host's divisions; negative is earlier. */
  readonly shift: number
  /** Hairpins of the passage that are open here, by number; kept up to date. */
  readonly wedges: Set<string>
}

/** Loudness belongs to the notes (renotation-rules Q8); whoever plays them wants to know how, too. */
const LOUDNESS: ReadonlySet<string> = new Set(['dynamics', 'wedge'])
const MANNERS: ReadonlySet<string> = new Set(['dynamics', 'wedge', 'words'])
const PLACE = ['offset', 'footnote', 'level', 'voice', 'staff', 'sound', 'listening']

/** A direction of the guest, printed for the host; undefined where it is none of the host's business. */
export function printGuestDirection(
  {text}: Measure,
  {element}: Positioned,
  setting: DirectionSetting,
): string | undefined {
  const wanted = setting.manner === 'cue' ? LOUDNESS : MANNERS
  const types = childrenNamed(element, 'direction-type').flatMap(({children}) => children)
  if (element.name !== 'direction' || types.some(({name}) => !wanted.has(name))) return undefined
  if (isTempo(element)) return undefined
  for (const wedge of types.filter(({name}) => name === 'wedge'))
    if (!followWedge(wedge, setting.wedges)) return undefined
  const edits: Edit[] = [...unplaced(element)]
  for (const each of element.children) {
    if (PLACE.includes(each.name) && each.name !== 'offset') edits.push(removeElement(text, each))
    else edits.push(...everywhere(each))
  }
  const offset = child(element, 'offset')
  const away = (childNumber(text, element, 'offset') ?? 0) * setting.scale + setting.shift
  if (offset) edits.push(away === 0 ? removeElement(text, offset) : setText(offset, String(away)))
  const last = element.children.findLast(({name}) => name === 'direction-type' || name === 'offset')
  const added = [
    !offset && away !== 0 ? `<offset>${away}</offset>` : '',
    `<voice>${setting.voice}</voice>`,
    setting.staff === undefined ? '' : `<staff>${setting.staff}</staff>`,
  ]
  if (last) edits.push({start: last.end, end: last.end, text: added.join('')})
  return applyWithin(text, element, edits)
}

/** Whether a sign belongs: a hairpin that began before the passage does not end in it. */
function followWedge(wedge: Element, open: Set<string>): boolean {
  const number = attributeValue(wedge, 'number') ?? '1'
  const type = attributeValue(wedge, 'type')
  if (type === 'crescendo' || type === 'diminuendo') open.add(number)
  else if (type === 'stop') return open.delete(number)
  return type !== 'continue' || open.has(number)
}

function isTempo(element: Element): boolean {
  const sound = child(element, 'sound')
  return sound !== undefined && attributeValue(sound, 'tempo') !== undefined
}
