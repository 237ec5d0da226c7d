import type {Header} from '../musicxml/header.ts'
import {ORDER} from '../musicxml/order.ts'
import type {PartPlan} from '../plan/plan.ts'
import {element as create, printElement} from '../xml/build.ts'
import {attributeValue, childNumber, childrenNamed, descendant} from '../xml/element.ts'
import {insertChild} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'

/**
 * What a part says of itself at the head of its first page: at the left margin, or at the foot where something stands at
 * that margin already; wherever the program likes where the file knows no page.
 */
export function* editHeading(header: Header, plans: readonly PartPlan[]): Iterable<Edit> {
  const lines = plans.flatMap(({heading}) => heading ?? [])
  if (lines.length === 0) return
  const words = create('credit-words', lines.join('\n'), placed(header))
  const credit = create('credit', [words], {page: '1'})
  yield insertChild(
    header.text,
    header.root,
    'credit',
    ORDER[`score-${header.form}`],
    (margin, indent) => printElement(credit, margin, indent),
  )
}

function placed({text, root}: Header): Readonly<Record<string, string>> {
  const page = descendant(root, 'defaults', 'page-layout')
  const margins = page && descendant(page, 'page-margins')
  const height = page && childNumber(text, page, 'page-height')
  const left = margins && childNumber(text, margins, 'left-margin')
  const top = margins && childNumber(text, margins, 'top-margin')
  const bottom = margins && childNumber(text, margins, 'bottom-margin')
  const plain = {'font-size': '8', justify: 'left'}
  if (height === undefined || left === undefined) return plain
  const taken = childrenNamed(root, 'credit').some((credit) =>
    childrenNamed(credit, 'credit-words').some(
      (each) =>
        attributeValue(each, 'justify') === 'left' || attributeValue(each, 'halign') === 'left',
    ),
  )
  const at = taken ? (bottom ?? 0) : height - (top ?? 0)
  return {
    'default-x': String(left),
    'default-y': String(Math.round(at * 100) / 100),
    ...plain,
    valign: taken ? 'bottom' : 'top',
  }
}
