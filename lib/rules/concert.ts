import type {Header} from '../musicxml/header.ts'
import {ORDER} from '../musicxml/order.ts'
import type {PartPlan} from '../plan/plan.ts'
import {element as create, printElement} from '../xml/build.ts'
import {child, descendant} from '../xml/element.ts'
import {insertChild, removeElement} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {figuresOf} from './transposition.ts'

/**
 * Keeps the flag `concert-score` true: it forbids transpositions other than whole octaves (MusicXML 4.0, element
 * `concert-score`). It goes when a part transposes, and comes when every part was put at concert pitch.
 */
export function* editConcertFlag(
  header: Header,
  plans: readonly PartPlan[],
  parts: number,
): Iterable<Edit> {
  const {text, root} = header
  const flag = descendant(root, 'defaults', 'concert-score')
  const transposes = plans.some(isTransposing)
  if (flag && transposes) yield removeElement(text, flag)
  if (
    flag ||
    transposes ||
    plans.length === 0 ||
    plans.length < parts ||
    !plans.every(({concert}) => concert)
  )
    return
  const created = create('concert-score')
  const defaults = child(root, 'defaults')
  if (defaults) {
    yield insertChild(text, defaults, 'concert-score', ORDER.defaults, (margin, indent) =>
      printElement(created, margin, indent),
    )
  } else {
    yield insertChild(text, root, 'defaults', ORDER['score-partwise'], (margin, indent) =>
      printElement(create('defaults', [created]), margin, indent),
    )
  }
}

function isTransposing(plan: PartPlan): boolean {
  return plan.staves.flat().some(({transposition}) => {
    const {diatonic, chromatic} = figuresOf(transposition.interval)
    return diatonic !== 0 || chromatic !== 0
  })
}
