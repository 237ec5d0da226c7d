import type {Transposition} from '../staff/state.ts'
import type {Measure} from '../musicxml/measure.ts'
import {ORDER} from '../musicxml/order.ts'
import {readTransposition} from '../musicxml/read.ts'
import {sectionAt} from '../plan/plan.ts'
import type {PartPlan} from '../plan/plan.ts'
import {UNISON, sameInterval} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {element as create} from '../xml/build.ts'
import type {NewElement} from '../xml/build.ts'
import {attributeValue, child, childNumber} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {insertChild, removeElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import type {Changes} from './attributes.ts'
import {sectionsIn} from './rule.ts'

/** An interval as `transpose` wants it: steps and semitones without octaves, and the octaves. */
export interface TransposeFigures {
  readonly diatonic: number
  readonly chromatic: number
  readonly octaves: number
}

/** Takes the whole octaves out of an interval: a major ninth down is -1, -2 and one octave down. */
export function figuresOf({diatonic, chromatic}: Interval): TransposeFigures {
  let octaves = Math.trunc(chromatic / 12)
  if (Math.abs(diatonic - 7 * octaves) >= 7) octaves += Math.sign(diatonic - 7 * octaves)
  return {diatonic: diatonic - 7 * octaves, chromatic: chromatic - 12 * octaves, octaves}
}

/** The transpositions of a measure as the plan wants them declared. */
export function transpositionChanges(measure: Measure, plan: PartPlan): Changes {
  const edits: Edit[] = []
  const removed: Element[] = []
  const added: {onset: number; element: NewElement}[] = []
  const found: {readonly onset: number; readonly staff: number}[] = []
  const allStaves = plan.staves.map((_, index) => index + 1)
  for (const {element: holder, onset} of measure.attributes) {
    for (const element of holder.children) {
      if (element.name !== 'transpose') continue
      const number = Number(attributeValue(element, 'number') ?? 0)
      const staves = number > 0 ? [number] : allStaves
      const wanted = staves.map((staff) => wantedAt(measure, plan, staff, onset))
      const [first] = wanted
      if (!first) continue
      found.push(...staves.map((staff) => ({onset, staff})))
      const was = readTransposition(measure.text, element, () => {})
      const isEmpty = element.children.length === 0
      if (isEmpty || wanted.some((each) => !sameInterval(each.now.interval, first.now.interval))) {
        removed.push(element)
        wanted.forEach((each, index) => {
          added.push({onset, element: createTranspose(each.now, staves[index])})
        })
      } else if (sameInterval(was.interval, first.now.interval)) {
        if (plan.concert && isFolded(measure.text, element))
          edits.push(...editTranspose(measure.text, element, first.now.interval))
      } else if (wanted.every(isSaid)) removed.push(element)
      else edits.push(...editTranspose(measure.text, element, first.now.interval))
    }
  }
  const due = sectionsIn(plan, measure)
    .map((section) => ({staff: section.staff, onset: Math.round(section.onset * measure.ticks)}))
    .filter(({staff, onset}) => !found.some((each) => each.onset === onset && each.staff === staff))
    .map(({staff, onset}) => ({staff, onset, wanted: wantedAt(measure, plan, staff, onset)}))
    .filter(({wanted}) => !isSaid(wanted))
  for (const onset of new Set(due.map((each) => each.onset))) {
    const here = due.filter((each) => each.onset === onset)
    const [first] = here
    const together =
      first &&
      here.length === allStaves.length &&
      here.every(({wanted}) => sameInterval(wanted.now.interval, first.wanted.now.interval))
    if (together) added.push({onset, element: createTranspose(first.wanted.now, undefined)})
    else
      for (const {staff, wanted} of here)
        added.push({onset, element: createTranspose(wanted.now, staff)})
  }
  return {edits, removed, added}
}

/**
 * Whether whole octaves are stated as steps or semitones: a score at concert pitch may state them as octaves only
 * (MusicXML 4.0, element `concert-score`).
 */
export function isFolded(text: string, element: Element): boolean {
  return ['diatonic', 'chromatic'].some((name) => (childNumber(text, element, name) ?? 0) !== 0)
}

interface Wanted {
  readonly now: Transposition
  /** What the target has said before; nothing said is a unison. */
  readonly before: Interval
}

function wantedAt(measure: Measure, plan: PartPlan, staff: number, onset: number): Wanted {
  const at = {measure: measure.index, onset: onset / measure.ticks}
  const now = sectionAt(plan, staff, at)
  const before = sectionAt(plan, staff, at, {before: true})
  const first = now === before && at.measure === 0 && at.onset === 0
  return {
    now: now?.transposition ?? {interval: UNISON},
    before: first || !before ? UNISON : before.transposition.interval,
  }
}

function isSaid({now, before}: Wanted): boolean {
  return sameInterval(now.interval, before)
}

function* editTranspose(text: string, element: Element, interval: Interval): Iterable<Edit> {
  const {diatonic, chromatic, octaves} = figuresOf(interval)
  yield* setNumber(text, element, 'diatonic', diatonic, true)
  yield* setNumber(text, element, 'chromatic', chromatic, true)
  yield* setNumber(text, element, 'octave-change', octaves, octaves !== 0)
}

function* setNumber(
  text: string,
  parent: Element,
  name: string,
  value: number,
  wanted: boolean,
): Iterable<Edit> {
  const found = child(parent, name)
  if (found && !wanted) yield removeElement(text, found)
  else if (found && childNumber(text, parent, name) !== value) yield setText(found, String(value))
  else if (!found && wanted) {
    yield insertChild(text, parent, name, ORDER.transpose, () => `<${name}>${value}</${name}>`)
  }
}

function createTranspose({interval, double}: Transposition, staff: number | undefined): NewElement {
  const {diatonic, chromatic, octaves} = figuresOf(interval)
  return create(
    'transpose',
    [
      create('diatonic', diatonic),
      create('chromatic', chromatic),
      octaves === 0 ? undefined : create('octave-change', octaves),
      double && create('double', undefined, {above: double === 'above' ? 'yes' : undefined}),
    ],
    {number: staff === undefined ? undefined : String(staff)},
  )
}
