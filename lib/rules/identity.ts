import type {Report} from '../diagnostic.ts'
import {foldName} from '../instruments/fold.ts'
import {cutName} from '../instruments/part-name.ts'
import type {Header, ScorePart} from '../musicxml/header.ts'
import {placeOf} from '../musicxml/measure.ts'
import type {Identity} from '../plan/plan.ts'
import {attributeValue, child, childrenNamed, encode, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {marginBefore, removeElement, replaceElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {editInstruments, editMidi, editSound} from './identity-instrument.ts'
import type {Rule} from './rule.ts'

/**
 * Names the part after its new instrument, as one unit: name, abbreviation, display forms, players, instrument names,
 * standard sounds, MIDI programs, also where the music changes them. A virtual instrument would go on sounding as the old one, and
 * a linked part is the old one: both go.
 */
export const identity: Rule = {
  name: 'identity',
  owns: [
    'credit-words',
    'part-link',
    'part-name',
    'part-name-display',
    'part-abbreviation',
    'part-abbreviation-display',
    'group-name',
    'group-name-display',
    'group-abbreviation',
    'group-abbreviation-display',
    'player-name',
    'instrument-name',
    'instrument-abbreviation',
    'instrument-sound',
    'virtual-instrument',
    'midi-name',
    'midi-program',
  ],
  *rewrite(measure, plan, report) {
    const wanted = plan.identity
    if (!wanted) return
    for (const {element} of measure.others) {
      if (element.name === 'print') yield* editNames(measure.text, element, 'part', wanted)
      const sound = element.name === 'sound' ? element : child(element, 'sound')
      if (!sound || !wanted.instrument) continue
      for (const change of childrenNamed(sound, 'instrument-change')) {
        report({
          code: 'identity/instrument-change',
          severity: 'warning',
          message: 'the music changes instruments here; it is played on the new one throughout',
          at: placeOf(measure, change),
        })
        yield* editSound(measure.text, change, wanted.instrument, {adds: false})
      }
      for (const midi of childrenNamed(sound, 'midi-instrument'))
        yield* editMidi(measure.text, midi, wanted, {adds: false})
    }
  },
  *rewriteHeader(header, plan, report) {
    const part = header.parts.find(({id}) => id === plan.part)
    const {identity: wanted} = plan
    if (!part || !wanted) return
    const {text} = header
    yield* editNames(text, part.element, 'part', wanted)
    yield* editGroups(header, part, wanted)
    yield* removeLinks(text, part, report)
    for (const player of childrenNamed(part.element, 'player')) {
      const name = child(player, 'player-name')
      if (name && namesOld(textOf(text, name), part, wanted)) yield setText(name, wanted.name)
    }
    yield* editInstruments(text, part, wanted, report)
  },
}

/** Name, abbreviation and both display forms of a part or a group, where it has them. */
function* editNames(
  text: string,
  holder: Element,
  kind: 'part' | 'group',
  wanted: Identity,
): Iterable<Edit> {
  for (const [name, value] of [
    [`${kind}-name`, wanted.name],
    [`${kind}-abbreviation`, wanted.abbreviation],
  ] as const) {
    const found = child(holder, name)
    if (found && textOf(text, found) !== value) yield setText(found, value)
    const display = child(holder, `${name}-display`)
    if (display) yield* editDisplay(text, display, value)
  }
}

/** Writes a display form anew in the font of the old one: flats and sharps are signs of their own there. */
function* editDisplay(text: string, display: Element, value: string): Iterable<Edit> {
  const pieces = cutName(value)
  const [first] = display.children
  const open = (name: string): string => {
    const like = display.children.find((each) => each.name === name)
    const given = like ? text.slice(like.start + name.length + 1, tagEnd(like)) : ''
    return `<${name}${given}>`
  }
  const margin = first ? marginBefore(text, first.start) : ''
  const printed = pieces
    .map(({kind, text: said}) => {
      const name = kind === 'text' ? 'display-text' : 'accidental-text'
      return `${margin}${open(name)}${encode(said)}</${name}>`
    })
    .join('')
  const last = display.children.at(-1)
  const now = first && last ? text.slice(first.start - margin.length, last.end) : ''
  if (now === printed) return
  if (first && last) yield {start: first.start - margin.length, end: last.end, text: printed}
  else yield replaceElement(display, `<${display.name}>${printed}</${display.name}>`)
}

/** Where the attributes of a start tag end. */
function tagEnd(element: Element): number {
  const last = element.attributes.at(-1)
  return last ? last.end + 1 : element.start + element.name.length + 1
}

/** Groups of the part list that hold only this part bear its name. */
function* editGroups(header: Header, part: ScorePart, wanted: Identity): Iterable<Edit> {
  const list = child(header.root, 'part-list')
  const open = new Map<string, {readonly start: Element; readonly parts: Element[]}>()
  for (const entry of list?.children ?? []) {
    const number = attributeValue(entry, 'number') ?? '1'
    if (entry.name === 'score-part') for (const group of open.values()) group.parts.push(entry)
    else if (entry.name === 'part-group' && attributeValue(entry, 'type') === 'start')
      open.set(number, {start: entry, parts: []})
    else if (entry.name === 'part-group') {
      const group = open.get(number)
      open.delete(number)
      const alone = group?.parts.length === 1 && group.parts[0] === part.element
      const name = group && child(group.start, 'group-name')
      if (alone && name && namesOld(textOf(header.text, name), part, wanted))
        yield* editNames(header.text, group.start, 'group', wanted)
    }
  }
}

/** Whether a name is the old one of the part or of one of its instruments, numbers and keys aside. */
function namesOld(name: string, part: ScorePart, {former}: Identity): boolean {
  const words = foldName(name).words.join(' ')
  const old = [former.name, ...part.instruments.map((each) => each.name)]
  return words !== '' && old.some((each) => foldName(each).words.join(' ') === words)
}

function* removeLinks(text: string, part: ScorePart, report: Report): Iterable<Edit> {
  const links = childrenNamed(part.element, 'part-link')
  for (const link of links) yield removeElement(text, link)
  if (links.length > 0) {
    report({
      code: 'identity/link',
      severity: 'info',
      message: 'the link to a file with the old part is left out',
      at: {part: part.id},
      actual: links.map((link) => attributeValue(link, 'xlink:href') ?? '').join(', '),
    })
  }
}
