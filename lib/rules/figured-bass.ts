import type {Measure, Positioned} from '../musicxml/measure.ts'
import {keepsPitch, moveOf} from '../plan/plan.ts'
import type {PartPlan} from '../plan/plan.ts'
import {naturalAt, stepsAbove, transpose} from '../pitch/pitch.ts'
import type {Interval} from '../pitch/interval.ts'
import {childNumber, childrenNamed, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import type {Rule} from './rule.ts'
import {sectionOfElement} from './rule.ts'

/** The signs whose meaning is a note's alteration; a cross, slash or stroke raises or lowers by itself and stays. */
const ALTERS: Readonly<Record<string, number>> = {
  'flat-flat': -2,
  flat: -1,
  natural: 0,
  sharp: 1,
  'double-sharp': 2,
  'sharp-sharp': 2,
}
const SIGNS: ReadonlyMap<number, string> = new Map([
  [-2, 'flat-flat'],
  [-1, 'flat'],
  [0, 'natural'],
  [1, 'sharp'],
  [2, 'double-sharp'],
])

/**
 * Re-derives the signs of figured bass: figures count from the bass and stay, but the sign on one names an alteration
 * (renotation-rules FB1). A sign without figure is on the third.
 */
export const figuredBass: Rule = {
  name: 'figured-bass',
  owns: ['prefix', 'suffix'],
  *rewrite(measure, plan) {
    for (const each of measure.others) {
      if (each.element.name === 'figured-bass') yield* editFigures(measure, plan, each)
    }
  },
}

function* editFigures(measure: Measure, plan: PartPlan, at: Positioned): Iterable<Edit> {
  const section = sectionOfElement(measure, plan, at)
  if (!section || section.untouched || keepsPitch(section)) return
  const bass = measure.notes
    .filter((note) => note.written && !note.chord && note.onset <= at.onset)
    .toSorted((a, b) => a.onset - b.onset || a.index - b.index)
    .at(-1)
  if (!bass?.written) return
  for (const figure of childrenNamed(at.element, 'figure')) {
    const number = childNumber(measure.text, figure, 'figure-number') ?? 3
    const steps = stepsAbove(bass.written) + number - 1
    for (const sign of figure.children) {
      if (sign.name === 'prefix' || sign.name === 'suffix') {
        yield* editSign(measure.text, sign, steps, moveOf(section))
      }
    }
  }
}

function* editSign(text: string, element: Element, steps: number, move: Interval): Iterable<Edit> {
  const before = textOf(text, element)
  const alter = ALTERS[before]
  if (alter === undefined) return
  const sign = SIGNS.get(transpose({...naturalAt(steps), alter}, move).alter)
  if (sign !== undefined && ALTERS[sign] !== alter) yield setText(element, sign)
}
