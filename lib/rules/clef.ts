import {stateAt} from '../musicxml/in-force.ts'
import type {Attributes, Measure} from '../musicxml/measure.ts'
import {ORDER} from '../musicxml/order.ts'
import {readClef} from '../musicxml/read.ts'
import type {PartPlan, Section} from '../plan/plan.ts'
import {sectionAt} from '../plan/plan.ts'
import {TREBLE, sameClef} from '../staff/clef.ts'
import type {Clef} from '../staff/clef.ts'
import {element as create} from '../xml/build.ts'
import type {NewElement} from '../xml/build.ts'
import {attributeValue, child, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {insertChild, removeElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import type {Changes} from './attributes.ts'
import {sectionsIn} from './rule.ts'

/** The clefs of a measure as the plan wants them: changed where they stand, removed where they have no reason left. */
export function clefChanges(measure: Measure, plan: PartPlan): Changes {
  const edits: Edit[] = []
  const removed: Element[] = []
  const found: {readonly onset: number; readonly staff: number}[] = []
  for (const attributes of measure.attributes) {
    for (const element of attributes.element.children) {
      if (element.name !== 'clef' || attributeValue(element, 'additional') === 'yes') continue
      const staff = Number(attributeValue(element, 'number') ?? 1) || 1
      found.push({onset: attributes.onset, staff})
      const section = sectionAt(plan, staff, positionOf(measure, attributes.onset))
      const was = readClef(measure.text, element)
      if (!section || section.untouched || !was) continue
      if (isRedundant(measure, plan, attributes, staff, section.clef, was)) removed.push(element)
      else if (!sameClef(section.clef, was))
        edits.push(...editClef(measure.text, element, section.clef))
    }
  }
  const added = sectionsIn(plan, measure)
    .filter((section) => startsClef(plan, section))
    .map((section) => ({section, onset: Math.round(section.onset * measure.ticks)}))
    .filter(
      ({section, onset}) =>
        !found.some((each) => each.onset === onset && each.staff === section.staff),
    )
    .map(({section, onset}) => ({
      onset,
      element: createClef(section.clef, plan.staves.length > 1 ? section.staff : undefined),
    }))
  return {edits, removed, added}
}

/** The target already has this clef, and the source's reason for it, a change, is gone. */
function isRedundant(
  measure: Measure,
  plan: PartPlan,
  attributes: Attributes,
  staff: number,
  clef: Clef,
  was: Clef,
): boolean {
  if (measure.index === 0 && attributes.onset === 0) return false
  const before = sectionAt(plan, staff, positionOf(measure, attributes.onset), {before: true})
  const wasBefore = stateAt(measure, staff, attributes.onset, {before: true}).clef
  return before !== undefined && sameClef(before.clef, clef) && !sameClef(wasBefore, was)
}

function startsClef(plan: PartPlan, section: Section): boolean {
  if (section.untouched) return false
  if (section.measure === 0 && section.onset === 0) return !sameClef(section.clef, TREBLE)
  const before = sectionAt(plan, section.staff, section, {before: true})
  return before !== undefined && !sameClef(before.clef, section.clef)
}

function* editClef(text: string, element: Element, clef: Clef): Iterable<Edit> {
  const sign = child(element, 'sign')
  const line = child(element, 'line')
  const octaves = child(element, 'clef-octave-change')
  if (sign && textOf(text, sign) !== clef.sign) yield setText(sign, clef.sign)
  if (line) yield setText(line, String(clef.line))
  else {
    yield insertChild(text, element, 'line', ORDER.clef, () => `<line>${clef.line}</line>`)
  }
  if (octaves && clef.octaveChange === 0) yield removeElement(text, octaves)
  else if (octaves) yield setText(octaves, String(clef.octaveChange))
  else if (clef.octaveChange !== 0) {
    yield insertChild(
      text,
      element,
      'clef-octave-change',
      ORDER.clef,
      () => `<clef-octave-change>${clef.octaveChange}</clef-octave-change>`,
    )
  }
}

function createClef(clef: Clef, staff: number | undefined): NewElement {
  return create(
    'clef',
    [
      create('sign', clef.sign),
      create('line', clef.line),
      clef.octaveChange === 0 ? undefined : create('clef-octave-change', clef.octaveChange),
    ],
    {number: staff === undefined ? undefined : String(staff)},
  )
}

function positionOf(measure: Measure, onset: number): {measure: number; onset: number} {
  return {measure: measure.index, onset: onset / measure.ticks}
}
