import type {Measure} from '../musicxml/measure.ts'
import {greatestCommonDivisor} from '../musicxml/ticks.ts'
import {ORDER} from '../musicxml/order.ts'
import {element as create, printElement} from '../xml/build.ts'
import {insertBefore, insertChild, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {child, childNumber} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {divisionsAtStart} from './items.ts'
import type {Item} from './items.ts'

/** Whether a measure keeps whole divisions from its beginning to its end: only then can notes be put into it. */
export function hasOneDivision({text, attributes, context}: Measure): boolean {
  const stated = attributes.filter(({element}) => child(element, 'divisions'))
  if (stated.some(({onset, run}) => onset > 0 || run > 0) || stated.length > 1) return false
  const [only] = stated
  const divisions = only ? childNumber(text, only.element, 'divisions') : context.divisions
  return divisions !== undefined && Number.isInteger(divisions) && divisions > 0
}

/** Whether a measure states divisions at its beginning. */
export function statesDivisions({attributes}: Measure): boolean {
  return attributes.some(({element, onset}) => onset === 0 && child(element, 'divisions'))
}

/**
 * Divisions in which both the host's durations and the guest's items are whole: those last `stated` where they do, so that
 * they change as seldom as may be.
 */
export function commonDivisions(
  host: Measure,
  items: readonly Item[],
  guests: readonly Measure[],
  stated: number,
): number {
  const own = divisionsAtStart(host)
  const ticks = guests.reduce((all, guest) => leastCommonMultiple(all, guest.ticks), 1)
  const step = items
    .flatMap(({at, until}) => [Math.round(at * ticks), Math.round(until * ticks)])
    .reduce(greatestCommonDivisor, ticks)
  const needed = leastCommonMultiple(own, ticks / step)
  return stated % needed === 0 ? stated : needed
}

/** The durations and offsets below an element, so many times as large. */
export function* scaled(text: string, element: Element, factor: number): Iterable<Edit> {
  if (factor === 1) return
  if (element.name === 'duration' || element.name === 'offset') {
    const value = Number(text.slice(element.contentStart, element.contentEnd))
    if (Number.isFinite(value)) yield setText(element, String(value * factor))
  }
  for (const each of element.children) yield* scaled(text, each, factor)
}

/** States the divisions of a measure at its beginning. */
export function stateDivisions({text, root, attributes}: Measure, divisions: number): Edit {
  const holder = attributes.find(({onset}) => onset === 0)
  const stated = holder && child(holder.element, 'divisions')
  if (stated) return setText(stated, String(divisions))
  const created = create('divisions', divisions)
  if (holder && holder.run === 0) {
    return insertChild(text, holder.element, 'divisions', ORDER.attributes, (margin, indent) =>
      printElement(created, margin, indent),
    )
  }
  const print = (margin: string, indent: string): string =>
    printElement(create('attributes', [created]), margin, indent)
  return insertAttributes(text, root, print)
}

/** New attributes at the beginning of a measure, after its `print`. */
export function insertAttributes(
  text: string,
  root: Element,
  print: (margin: string, indent: string) => string,
): Edit {
  const first = root.children.find(({name}) => name !== 'print')
  return first ? insertBefore(text, first, root, print) : insertChild(text, root, '', [], print)
}

function leastCommonMultiple(a: number, b: number): number {
  return (a / greatestCommonDivisor(a, b)) * b
}
