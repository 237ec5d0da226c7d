import {attribute} from '../xml/element.ts'
import {removeAttribute} from '../xml/edit.ts'
import type {Rule} from './rule.ts'
import {positionsOf, targetOf} from './rule.ts'

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
      const target = targetOf(plan, measure, note)
      if (!offset || !note.written || !target || target.section.untouched) continue
      const {from, to} = positionsOf(plan, note, target)
      if (from !== to) yield removeAttribute(offset)
    }
  },
}
