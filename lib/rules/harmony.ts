import {placeOf} from '../musicxml/measure.ts'
import type {Measure, Positioned} from '../musicxml/measure.ts'
import {ORDER} from '../musicxml/order.ts'
import {keepsPitch, moveOf} from '../plan/plan.ts'
import type {PartPlan} from '../plan/plan.ts'
import {DIMINISHED_SECOND, fifthsOf, negate} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {isStep, transpose} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import {attribute, child, childNumber, childText, descendant} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {insertChild, removeAttribute, removeElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import type {Report} from '../diagnostic.ts'
import type {Rule} from './rule.ts'
import {sectionOfElement} from './rule.ts'

/**
 * Moves chord symbols with their part: root, bass and the key of numerals; kind, degrees, inversion and functions are
 * relative and stay (renotation-rules CH1). A fretboard diagram shows concert tuning: it goes, and is reported (CH2).
 */
export const harmony: Rule = {
  name: 'harmony',
  owns: ['root', 'bass', 'numeral-key', 'frame'],
  *rewrite(measure, plan, report) {
    for (const each of measure.others) {
      if (each.element.name === 'harmony') yield* editHarmony(measure, plan, each, report)
    }
  },
}

function* editHarmony(
  measure: Measure,
  plan: PartPlan,
  at: Positioned,
  report: Report,
): Iterable<Edit> {
  const section = sectionOfElement(measure, plan, at)
  if (!section || section.untouched || keepsPitch(section)) return
  const move = moveOf(section)
  for (const element of at.element.children) {
    if (element.name === 'root') yield* editRoot(measure.text, element, 'root', move)
    else if (element.name === 'bass') yield* editRoot(measure.text, element, 'bass', move)
    else if (element.name === 'numeral') {
      const fifths = descendant(element, 'numeral-key', 'numeral-fifths')
      const value =
        fifths &&
        childNumber(measure.text, child(element, 'numeral-key') ?? element, 'numeral-fifths')
      if (fifths && value !== undefined)
        yield setText(fifths, String(readable(value + fifthsOf(move))))
    } else if (element.name === 'frame') {
      yield removeElement(measure.text, element)
      report({
        code: 'harmony/frame-removed',
        severity: 'info',
        message: 'a fretboard diagram is left out: it shows the chord at concert pitch',
        at: placeOf(measure, element),
      })
    }
  }
}

function* editRoot(
  text: string,
  element: Element,
  name: 'root' | 'bass',
  move: Interval,
): Iterable<Edit> {
  const step = child(element, `${name}-step`)
  const alter = child(element, `${name}-alter`)
  const letter = childText(text, element, `${name}-step`)
  if (!step || letter === undefined || !isStep(letter)) return
  const was = {step: letter, alter: childNumber(text, element, `${name}-alter`) ?? 0, octave: 4}
  const now = plainRoot(transpose(was, move))
  if (now.step !== was.step) yield setText(step, now.step)
  if (now.step !== was.step || now.alter !== was.alter) yield* withoutText(step)
  if (now.alter === was.alter) return
  if (!alter) {
    const order = ORDER[name]
    yield insertChild(
      text,
      element,
      `${name}-alter`,
      order,
      () => `<${name}-alter>${now.alter}</${name}-alter>`,
    )
  } else if (now.alter === 0) yield removeElement(text, alter)
  else {
    yield setText(alter, String(now.alter))
    yield* withoutText(alter)
  }
}

/** `text` says how the letter or sign is to be printed; after a move it would say the old one. Empty, it hides it: kept. */
function* withoutText(element: Element): Iterable<Edit> {
  const shown = attribute(element, 'text')
  if (shown && shown.raw !== '') yield removeAttribute(shown)
}

/** Nobody reads a chord on a doubly altered root. */
function plainRoot(root: Pitch): Pitch {
  if (root.alter >= 2) return transpose(root, DIMINISHED_SECOND)
  if (root.alter <= -2) return transpose(root, negate(DIMINISHED_SECOND))
  return root
}

function readable(fifths: number): number {
  if (fifths > 7) return readable(fifths - 12)
  return fifths < -7 ? readable(fifths + 12) : fifths
}
