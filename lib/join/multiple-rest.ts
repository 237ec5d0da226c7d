import type {Measure} from '../musicxml/measure.ts'
import {ORDER} from '../musicxml/order.ts'
import {element as create, printElement} from '../xml/build.ts'
import {applyEdits, insertChild, removeElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {descendant, numberOf} from '../xml/element.ts'
import {insertAttributes} from './divisions.ts'

/** Rests over several measures break around the measures that get music (renotation-rules Q10). */
export interface RestBreaker {
  /** The measure's text with its multiple rest, if one begins here, as long as it is now. Measures come in order. */
  edit(measure: Measure): string
}

/** `isTouched` tells the measures, from 0, that get music. */
export function createRestBreaker(isTouched: (measure: number) => boolean): RestBreaker {
  /** Where what is left of a rest begins, and how many measures it has. */
  const resumed = new Map<number, number>()

  function breakUp(from: number, count: number): number {
    let first = from
    let kept = count
    for (let at = from; at <= from + count; at++) {
      if (at < from + count && !isTouched(at)) continue
      if (first === from) kept = at - first
      else if (at - first > 1) resumed.set(first, at - first)
      first = at + 1
    }
    return kept
  }

  return {
    edit(measure) {
      const {text, root, attributes, index} = measure
      const edits: Edit[] = []
      for (const {element} of attributes) {
        const rest = descendant(element, 'measure-style', 'multiple-rest')
        const count = rest && numberOf(text, rest)
        if (!rest || count === undefined || count < 1) continue
        const kept = breakUp(index, count)
        if (kept === count) continue
        const style = element.children.find(({children}) => children.includes(rest))
        if (kept > 1) edits.push(setText(rest, String(kept)))
        else if (element.children.length === 1) edits.push(removeElement(text, element))
        else if (style) edits.push(removeElement(text, style))
      }
      const count = resumed.get(index)
      if (count !== undefined) {
        const created = create('measure-style', [create('multiple-rest', count)])
        const holder = attributes.find(({onset}) => onset === 0)
        const print = (margin: string, indent: string): string =>
          printElement(holder ? created : create('attributes', [created]), margin, indent)
        if (holder)
          edits.push(insertChild(text, holder.element, 'measure-style', ORDER.attributes, print))
        else edits.push(insertAttributes(text, root, print))
      }
      return applyEdits(text, edits)
    },
  }
}
