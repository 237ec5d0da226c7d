import {attribute} from '../xml/element.ts'
import {removeAttribute, setText} from '../xml/edit.ts'
import type {Rule} from './rule.ts'
import {directionOf, stemGroups, stemOf, turnsOver} from './stem-groups.ts'

/**
 * Turns the stems of notes that moved on the staff: by the note farthest from the middle line, a beamed group together,
 * the middle line down (renotation-rules S1, S2, B2). Where two voices share a staff, where grace notes point up and
 * wherever the source disobeys the rule on purpose, stems stay.
 */
export const stem: Rule = {
  name: 'stem',
  owns: ['stem'],
  *rewrite(measure, plan) {
    for (const group of stemGroups(measure, plan)) {
      const moved = group.notes.filter(({from, to}) => from !== to)
      if (moved.length === 0) continue
      for (const {note} of moved) {
        const length = stemOf(note)
        const offset = length && attribute(length, 'default-y')
        if (offset) yield removeAttribute(offset)
      }
      if (!turnsOver(measure, group)) continue
      const right = directionOf(group.notes.map(({to}) => to))
      for (const {note} of group.notes) {
        const own = stemOf(note)
        if (own) yield setText(own, right)
      }
    }
  },
}
