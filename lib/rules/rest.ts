import type {Measure, Note} from '../musicxml/measure.ts'
import type {PartPlan} from '../plan/plan.ts'
import {pitchAt, sameClef, staffPosition} from '../staff/clef.ts'
import {readSpelling} from '../musicxml/read.ts'
import {child} from '../xml/element.ts'
import {setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import type {Rule} from './rule.ts'
import {sectionOf} from './rule.ts'

/**
 * Keeps rests where they stand on the staff when the clef changes: their height is encoded as a pitch. Rests do not
 * transpose.
 */
export const rest: Rule = {
  name: 'rest',
  owns: ['rest'],
  *rewrite(measure, plan) {
    for (const note of measure.notes) if (note.kind === 'rest') yield* editRest(measure, plan, note)
  },
}

function* editRest(measure: Measure, plan: PartPlan, note: Note): Iterable<Edit> {
  const section = sectionOf(plan, measure, note)
  const element = child(note.element, 'rest')
  if (!section || section.untouched || !element || sameClef(section.clef, note.state.clef)) return
  const shown = readSpelling(measure.text, element, 'display-step', '', 'display-octave')
  const step = child(element, 'display-step')
  const octave = child(element, 'display-octave')
  if (!shown || !step || !octave) return
  const moved = pitchAt(staffPosition(shown, note.state.clef), section.clef)
  if (moved.step !== shown.step) yield setText(step, moved.step)
  if (moved.octave !== shown.octave) yield setText(octave, String(moved.octave))
}
