import {writtenPitch} from '../plan/plan.ts'
import {formatPitch, samePitch} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import {placeOf} from '../musicxml/measure.ts'
import type {Measure} from '../musicxml/measure.ts'
import {ORDER} from '../musicxml/order.ts'
import {child} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {insertChild, removeElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import type {Rule} from './rule.ts'
import {targetOf} from './rule.ts'

/** The octaves of the schema (MusicXML 4.0, type `octave`). */
const LOWEST = 0
const HIGHEST = 9

/** Rewrites every pitched note as the target's player reads it. */
export const pitch: Rule = {
  name: 'pitch',
  owns: ['pitch'],
  *rewrite(measure, plan, report) {
    for (const note of measure.notes) {
      const target = targetOf(plan, measure, note)
      if (!note.written || !note.sounding || !target || target.section.untouched) continue
      const {written, respelled} = target
      if (samePitch(written, note.written)) continue
      if (respelled) {
        report({
          code: 'pitch/respelled',
          severity: 'info',
          message: `the note is respelled by rule ${respelled.rule}`,
          at: placeOf(measure, note),
          actual: formatPitch(writtenPitch(target.section, note.sounding)),
          expected: formatPitch(written),
        })
      }
      if (Math.abs(written.alter) > 2) {
        report({
          code: 'pitch/triple-accidental',
          severity: 'warning',
          message: `${formatPitch(written)} cannot be written with a double accidental`,
          at: placeOf(measure, note),
        })
      }
      if (written.octave < LOWEST || written.octave > HIGHEST) {
        report({
          code: 'pitch/octave',
          severity: 'error',
          message: `${formatPitch(written)} lies outside what MusicXML can write, octaves ${LOWEST} to ${HIGHEST}`,
          at: placeOf(measure, note),
        })
      }
      const element = child(note.element, 'pitch')
      if (element) yield* editPitch(measure, element, note.written, written)
    }
  },
}

function* editPitch(measure: Measure, element: Element, from: Pitch, to: Pitch): Iterable<Edit> {
  const step = child(element, 'step')
  const alter = child(element, 'alter')
  const octave = child(element, 'octave')
  if (step && from.step !== to.step) yield setText(step, to.step)
  if (from.alter !== to.alter) {
    if (alter && to.alter === 0) yield removeElement(measure.text, alter)
    else if (alter) yield setText(alter, String(to.alter))
    else {
      yield insertChild(
        measure.text,
        element,
        'alter',
        ORDER.pitch,
        () => `<alter>${to.alter}</alter>`,
      )
    }
  }
  if (octave && from.octave !== to.octave) yield setText(octave, String(to.octave))
}
