import {writtenPitch} from '../plan/plan.ts'
import {staffPosition} from '../staff/clef.ts'
import {attribute} from '../xml/element.ts'
import {removeAttribute} from '../xml/edit.ts'
import type {Rule} from './rule.ts'
import {sectionOf} from './rule.ts'

/**
 * Removes the vertical offset of notes that moved on the staff: it is measured from the top line, and would hold them
 * where they were.
 */
export const position: Rule = {
  name: 'position',
  owns: ['note@default-y'],
  *rewrite(measure, plan) {
    for (const note of measure.notes) {
      const offset = attribute(note.element, 'default-y')
      if (!offset || !note.written || !note.sounding) continue
      const section = sectionOf(plan, measure, note)
      if (!section || section.untouched) continue
      const from = staffPosition(note.written, note.state.clef)
      const to = staffPosition(writtenPitch(section, note.sounding), section.clef)
      if (from !== to) yield removeAttribute(offset)
    }
  },
}
