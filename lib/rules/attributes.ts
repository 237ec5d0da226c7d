import {stateAt} from '../musicxml/in-force.ts'
import type {Attributes, Measure} from '../musicxml/measure.ts'
import {ORDER} from '../musicxml/order.ts'
import {isSame, sectionAt} from '../plan/plan.ts'
import type {PartPlan} from '../plan/plan.ts'
import type {NewElement} from '../xml/build.ts'
import {element as create, printElement} from '../xml/build.ts'
import {childrenNamed} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {insertAfter, insertBefore, insertChild, removeElement, replaceElement} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {clefChanges} from './clef.ts'
import {forPartChanges} from './for-part.ts'
import {keyChanges} from './key.ts'
import type {Rule} from './rule.ts'
import {sectionsIn} from './rule.ts'
import {isFolded, transpositionChanges} from './transposition.ts'

/** What is to happen to one kind of sign in the `attributes` of a measure. */
export interface Changes {
  /** Edits inside an element that stays. */
  readonly edits: readonly Edit[]
  readonly removed: readonly Element[]
  /** New elements and the onset, in ticks, at which they are due. */
  readonly added: readonly {readonly onset: number; readonly element: NewElement}[]
}

/**
 * Rewrites what stands at the head of a staff and wherever it changes: key, clef and transposition. They share the
 * `attributes` element, so that one rule adds, empties and removes it.
 */
export const attributes: Rule = {
  name: 'attributes',
  owns: ['attributes', 'key', 'clef', 'transpose', 'for-part'],
  *rewrite(measure, plan) {
    if (measure.attributes.length === 0 && sectionsIn(plan, measure).length === 0) return
    const changes = isSaid(measure, plan)
      ? []
      : [
          keyChanges(measure, plan),
          clefChanges(measure, plan),
          transpositionChanges(measure, plan),
          forPartChanges(measure, plan),
        ]
    for (const {edits} of changes) yield* edits
    const removed = new Set(changes.flatMap((each) => each.removed))
    const added = withoutForbidden(
      measure,
      removed,
      changes.flatMap((each) => each.added),
    )
    const holders = new Map<Attributes, NewElement[]>()
    const homeless = new Map<number, NewElement[]>()
    for (const {onset, element} of added) {
      const holder = measure.attributes.find((each) => each.onset === onset)
      if (holder) holders.set(holder, [...(holders.get(holder) ?? []), element])
      else homeless.set(onset, [...(homeless.get(onset) ?? []), element])
    }
    for (const holder of measure.attributes) {
      yield* editHolder(measure, holder.element, removed, inSchemaOrder(holders.get(holder) ?? []))
    }
    for (const [onset, elements] of homeless) {
      yield addHolder(measure, onset, create('attributes', inSchemaOrder(elements)))
    }
  },
}

/**
 * Whether the source already says here all that the plan wants. Then what it says twice at one place, or takes back at
 * once, stays as it is.
 */
function isSaid(measure: Measure, plan: PartPlan): boolean {
  if (measure.attributes.length === 0) return false
  const transpositions = measure.attributes.flatMap((each) =>
    childrenNamed(each.element, 'transpose'),
  )
  if (plan.concert && transpositions.some((each) => isFolded(measure.text, each))) return false
  const inside = [
    ...measure.attributes.map(({onset}) => onset),
    ...sectionsIn(plan, measure).map(({onset}) => Math.round(onset * measure.ticks)),
  ]
  return plan.staves.every((_, index) => {
    const says = (onset: number, options: {readonly before?: boolean}): boolean => {
      const at = {measure: measure.index, onset: onset / measure.ticks}
      const section = sectionAt(plan, index + 1, at, options)
      const source = stateAt(measure, index + 1, onset, options)
      return section === undefined || isSame({...section, source})
    }
    return (
      (measure.index === 0 || says(0, {before: true})) && inside.every((onset) => says(onset, {}))
    )
  })
}

function* editHolder(
  measure: Measure,
  holder: Element,
  removed: ReadonlySet<Element>,
  added: readonly NewElement[],
): Iterable<Edit> {
  const kept = holder.children.filter((each) => !removed.has(each))
  const last = holder.children.at(-1)
  if (last === undefined && added.length > 0) {
    yield insertChild(measure.text, holder, 'attributes', [], (margin, indent) =>
      added.map((each) => printElement(each, margin, indent)).join(margin),
    )
    return
  }
  const isEmptied = kept.length === 0 && last !== undefined
  if (isEmptied && hasRemarks(measure.text, holder)) {
    // A comment between signs that go outlives them.
    for (const each of holder.children) yield removeElement(measure.text, each)
    for (const each of added) {
      yield insertAfter(measure.text, last, holder, (margin, indent) =>
        printElement(each, margin, indent),
      )
    }
    return
  }
  if (isEmptied) {
    if (added.length === 0) yield removeElement(measure.text, holder)
    else {
      const [first] = holder.children
      const edit = insertBefore(measure.text, first ?? holder, holder, () => '')
      yield replaceElement(holder, reprint(measure.text, holder, edit.text, added))
    }
    return
  }
  for (const each of holder.children) if (removed.has(each)) yield removeElement(measure.text, each)
  for (const each of added) {
    yield insertChild(
      measure.text,
      {...holder, children: kept},
      each.name,
      ORDER.attributes,
      (margin, indent) => printElement(each, margin, indent),
    )
  }
}

/** The schema wants a transposition or what is for the part, not both: the transposition is what sounds. */
function withoutForbidden(
  measure: Measure,
  removed: ReadonlySet<Element>,
  added: Changes['added'],
): Changes['added'] {
  const isStated = (onset: number): boolean =>
    added.some((each) => each.onset === onset && each.element.name === 'transpose') ||
    measure.attributes.some(
      (holder) =>
        holder.onset === onset &&
        childrenNamed(holder.element, 'transpose').some((each) => !removed.has(each)),
    )
  return added.filter(({onset, element}) => element.name !== 'for-part' || !isStated(onset))
}

function hasRemarks(text: string, holder: Element): boolean {
  return /<[!?]/.test(text.slice(holder.contentStart, holder.contentEnd))
}

/** The holder with nothing but new children, in the margins of the old ones. */
function reprint(
  text: string,
  holder: Element,
  margin: string,
  added: readonly NewElement[],
): string {
  const open = text.slice(holder.start, holder.contentStart)
  const last = holder.children.at(-1)
  const close = text.slice(last?.end ?? holder.contentEnd, holder.end)
  return (
    open +
    added.map((each) => margin + printElement(each, margin, margin ? '  ' : '')).join('') +
    close
  )
}

/** A new `attributes` element before the first thing that happens at the onset. */
function addHolder(measure: Measure, onset: number, created: NewElement): Edit {
  const {text, root} = measure
  const starts = measure.notes.filter((note) => note.onset === onset && !note.chord)
  const [first] = onset === 0 ? [] : starts
  const anchor = first?.element ?? (onset === 0 ? root.children.find(isMusic) : undefined)
  if (anchor) {
    return insertBefore(text, anchor, root, (margin, indent) =>
      printElement(created, margin, indent),
    )
  }
  return insertChild(text, root, 'attributes', [], (margin, indent) =>
    printElement(created, margin, indent),
  )
}

function isMusic(element: Element): boolean {
  return element.name !== 'print' && element.name !== 'sound' && element.name !== 'barline'
}

function inSchemaOrder(elements: readonly NewElement[]): NewElement[] {
  const order: readonly string[] = ORDER.attributes
  return elements.toSorted((a, b) => order.indexOf(a.name) - order.indexOf(b.name))
}
