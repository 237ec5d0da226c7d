import {stateAt} from '../musicxml/in-force.ts'
import type {Measure} from '../musicxml/measure.ts'
import {readKey} from '../musicxml/read.ts'
import type {PartPlan, Section} from '../plan/plan.ts'
import {sectionAt} from '../plan/plan.ts'
import {isTraditional, sameKey} from '../pitch/key.ts'
import type {Key} from '../pitch/key.ts'
import {element as create, printElement} from '../xml/build.ts'
import type {NewElement} from '../xml/build.ts'
import {attributeValue, child, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {marginBefore, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {accidentalFor} from '../staff/accidental-sign.ts'
import type {Changes} from './attributes.ts'
import {sectionsIn} from './rule.ts'

/** The key signatures of a measure as the plan wants them. */
export function keyChanges(measure: Measure, plan: PartPlan): Changes {
  const edits: Edit[] = []
  const removed: Element[] = []
  const added: {onset: number; element: NewElement}[] = []
  const found: {readonly onset: number; readonly staff: number}[] = []
  for (const {element: holder, onset} of measure.attributes) {
    for (const element of holder.children) {
      if (element.name !== 'key') continue
      const number = Number(attributeValue(element, 'number') ?? 0)
      const staves = number > 0 ? [number] : plan.staves.map((_, index) => index + 1)
      found.push(...staves.map((staff) => ({onset, staff})))
      const was = readKey(measure.text, element)
      if (staves.every((staff) => isKeyless(measure, plan, staff, onset))) {
        removed.push(element)
        continue
      }
      const wanted = staves.map((staff) => wantedKey(measure, plan, staff, onset))
      const [first] = wanted.filter((each) => each !== undefined)
      if (!was || !first) continue
      if (number === 0 && wanted.some((each) => each && !sameKey(each.key, first.key))) {
        removed.push(element)
        wanted.forEach((each, index) => {
          const key = each?.key ?? was
          added.push({onset, element: createKey(key, index + 1, modeOf(measure.text, element))})
        })
      } else if (
        staves.every((staff, index) => isRedundant(measure, staff, onset, wanted[index], was))
      )
        removed.push(element)
      else edits.push(...editKey(measure.text, element, was, first))
    }
  }
  for (const section of sectionsIn(plan, measure)) {
    const onset = Math.round(section.onset * measure.ticks)
    if (found.some((each) => each.onset === onset && each.staff === section.staff)) continue
    const wanted = wantedKey(measure, plan, section.staff, onset)
    if (!wanted) continue
    const isBeginning = section.measure === 0 && section.onset === 0
    // A part without any signature gets its first one, also where it comes back to one; one that states its keys
    // elsewhere waits for them.
    const due = wanted.before
      ? !sameKey(wanted.before, wanted.key)
      : section.source.key === undefined || !isBeginning
    if (!due) continue
    const others = plan.staves.length > 1
    added.push({
      onset,
      element: createKey(wanted.key, others ? section.staff : undefined, undefined),
    })
  }
  return {edits, removed, added}
}

interface WantedKey {
  readonly key: Key
  readonly before: Key | undefined
}

function wantedKey(
  measure: Measure,
  plan: PartPlan,
  staff: number,
  onset: number,
): WantedKey | undefined {
  const at = {measure: measure.index, onset: onset / measure.ticks}
  const section = sectionAt(plan, staff, at)
  if (!section || section.untouched || !section.key) return undefined
  const before = sectionAt(plan, staff, at, {before: true})
  return {key: section.key, before: isStart(before, section) ? undefined : before?.key}
}

/** The part that comes back to where it was never stated a key. */
function isKeyless(measure: Measure, plan: PartPlan, staff: number, onset: number): boolean {
  const section = sectionAt(plan, staff, {measure: measure.index, onset: onset / measure.ticks})
  return section !== undefined && !section.untouched && section.key === undefined
}

function isStart(before: Section | undefined, section: Section): boolean {
  return before === section && section.measure === 0 && section.onset === 0
}

function isRedundant(
  measure: Measure,
  staff: number,
  onset: number,
  wanted: WantedKey | undefined,
  was: Key,
): boolean {
  if (
    (measure.index === 0 && onset === 0) ||
    !wanted?.before ||
    !sameKey(wanted.before, wanted.key)
  )
    return false
  const wasBefore = stateAt(measure, staff, onset, {before: true}).key
  return wasBefore === undefined || !sameKey(wasBefore, was)
}

function* editKey(
  text: string,
  element: Element,
  was: Key,
  {key, before}: WantedKey,
): Iterable<Edit> {
  if (signsOf(key) !== signsOf(was)) {
    yield replaceContent(text, element, key)
    return
  }
  const cancel = child(element, 'cancel')
  if (cancel && before && isTraditional(before) && Number(textOf(text, cancel)) !== before.fifths) {
    yield setText(cancel, String(before.fifths))
  }
  if (sameKey(key, was)) return
  if (isTraditional(key)) {
    const fifths = child(element, 'fifths')
    if (fifths) yield setText(fifths, String(key.fifths))
    return
  }
  yield* editSigns(text, element, key)
}

/** Moves the signs of a non-traditional signature where they stand. */
function* editSigns(
  text: string,
  element: Element,
  key: Exclude<Key, {fifths: number}>,
): Iterable<Edit> {
  let index = -1
  for (const each of element.children) {
    const sign = key.alters[index]
    if (each.name === 'key-step') {
      index++
      const next = key.alters[index]
      if (next && textOf(text, each) !== next.step) yield setText(each, next.step)
    } else if (each.name === 'key-alter' && sign) {
      if (Number(textOf(text, each)) !== sign.alter) yield setText(each, String(sign.alter))
    } else if (each.name === 'key-accidental' && sign) {
      const shown = accidentalFor(sign.alter, textOf(text, each))
      if (shown !== undefined && shown !== textOf(text, each)) yield setText(each, shown)
    } else if (each.name === 'key-octave') {
      const bound = key.alters[Number(attributeValue(each, 'number') ?? 0) - 1]
      if (bound?.octave !== undefined) yield setText(each, String(bound.octave))
    }
  }
}

/** How many signs are given one by one; none in a plain signature. */
function signsOf(key: Key): number | undefined {
  return isTraditional(key) ? undefined : key.alters.length
}

/** A signature given sign by sign that becomes a plain one, in a part that prints none; or that comes back. */
function replaceContent(text: string, element: Element, key: Key): Edit {
  const [first = element] = element.children
  const last = element.children.at(-1) ?? element
  const margin = marginBefore(text, first.start)
  const {content = []} = createKey(key, undefined, undefined)
  const printed = typeof content === 'string' ? [] : content
  return {
    start: first.start,
    end: last.end,
    text: printed.map((each) => printElement(each, margin, '')).join(margin),
  }
}

function modeOf(text: string, element: Element): string | undefined {
  const mode = child(element, 'mode')
  return mode && textOf(text, mode)
}

function createKey(key: Key, staff: number | undefined, mode: string | undefined): NewElement {
  const number = {number: staff === undefined ? undefined : String(staff)}
  if (isTraditional(key)) {
    return create(
      'key',
      [create('fifths', key.fifths), mode === undefined ? undefined : create('mode', mode)],
      number,
    )
  }
  const signs = key.alters.flatMap(({step, alter}) => [
    create('key-step', step),
    create('key-alter', alter),
  ])
  const octaves = key.alters.flatMap(({octave}, index) =>
    octave === undefined ? [] : [create('key-octave', octave, {number: String(index + 1)})],
  )
  return create('key', [...signs, ...octaves], number)
}
