import type {Header} from '../musicxml/header.ts'
import type {PartPlan} from '../plan/plan.ts'
import type {Element} from '../xml/element.ts'
import {attribute, attributeValue, child, childrenNamed, descendant} from '../xml/element.ts'
import {removeAttribute, removeElement, setAttribute} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {removeMusic} from './rule.ts'
import type {Rule} from './rule.ts'

/** Where systems and pages of the score begin, and how far its staves stand apart. */
const BREAKS = ['staff-spacing', 'new-system', 'new-page', 'blank-page', 'page-number']
const DISTANCES = ['page-layout', 'system-layout', 'staff-layout', 'measure-layout']

/**
 * Takes the layout of the score out of a part, when asked: line and page breaks, widths and distances.
 */
export const layout: Rule = {
  name: 'layout',
  owns: [...BREAKS.map((name) => `print@${name}`), ...DISTANCES, 'print', 'measure@width'],
  *rewrite(measure, plan) {
    if (plan.layout === 'keep') return
    const width = measure.root.name === 'measure' && attribute(measure.root, 'width')
    if (width) yield removeAttribute(width)
    for (const {element} of measure.others)
      if (element.name === 'print') yield* editPrint(measure.text, element)
  },
}

function* editPrint(text: string, print: Element): Iterable<Edit> {
  const kept = print.children.filter(({name}) => !DISTANCES.includes(name))
  const attributes = print.attributes.filter(({name}) => !BREAKS.includes(name))
  if (kept.length === 0 && attributes.length === 0) {
    yield removeMusic(text, print)
    return
  }
  for (const each of print.attributes) if (BREAKS.includes(each.name)) yield removeAttribute(each)
  for (const each of print.children)
    if (DISTANCES.includes(each.name)) yield removeMusic(text, each)
}

/**
 * The same in the header, once for all parts: default layouts go, and the file no longer claims that it says where systems
 * and pages begin (MusicXML 4.0, element `supports`).
 */
export function* editLayout(header: Header, plans: readonly PartPlan[]): Iterable<Edit> {
  if (plans.length === 0 || plans.some((plan) => plan.layout === 'keep')) return
  const {text, root} = header
  for (const each of child(root, 'defaults')?.children ?? [])
    if (DISTANCES.includes(each.name)) yield removeElement(text, each)
  const encoding = descendant(root, 'identification', 'encoding')
  for (const each of encoding ? childrenNamed(encoding, 'supports') : []) {
    const type = attribute(each, 'type')
    const breaks = ['new-system', 'new-page'].includes(attributeValue(each, 'attribute') ?? '')
    if (breaks && type && type.raw !== 'no') yield setAttribute(type, 'no')
  }
}
