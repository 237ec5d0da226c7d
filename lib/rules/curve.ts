import type {Measure} from '../musicxml/measure.ts'
import type {PartPlan} from '../plan/plan.ts'
import {attribute, child, childrenNamed} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {removeAttribute} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import type {Rule} from './rule.ts'
import {positionsOf, targetOf} from './rule.ts'
import {stemGroups, turnsOver} from './stem-groups.ts'

/** Offsets that were measured from where the note stood. */
const OFFSETS = ['default-y', 'relative-y', 'bezier-y', 'bezier-y2'] as const
/** What stands on the notehead's or the stem's side; marcato, fermata, breath and bowing always stand above (rule R2). */
const SIDED = new Set([
  'slur',
  'tied',
  'tuplet',
  'staccato',
  'tenuto',
  'accent',
  'staccatissimo',
  'detached-legato',
  'spiccato',
])

/**
 * Frees curves, tuplet brackets and articulations of what was true only for the old pitch: offsets of notes that moved, and the
 * side they stood on where the stem turned over and no second voice needs it (renotation-rules L1, T1, R2).
 */
export const curve: Rule = {
  name: 'curve',
  owns: [...SIDED].flatMap((name) => [
    ...OFFSETS.map((offset) => `${name}@${offset}`),
    `${name}@placement`,
    `${name}@orientation`,
  ]),
  *rewrite(measure, plan) {
    const notes = measure.notes.filter(({element}) => child(element, 'notations'))
    if (notes.length === 0) return
    const turned = turnedNotes(measure, plan)
    for (const note of notes) {
      const target = targetOf(plan, measure, note)
      if (!target || !note.written || target.section.untouched) continue
      const {from, to} = positionsOf(plan, note, target)
      if (from === to && !turned.has(note.index)) continue
      for (const notations of childrenNamed(note.element, 'notations')) {
        for (const each of notations.children) {
          if (SIDED.has(each.name)) yield* free(each, turned.has(note.index))
          else if (each.name === 'articulations') {
            for (const sign of each.children)
              if (SIDED.has(sign.name)) yield* free(sign, turned.has(note.index))
          }
        }
      }
    }
  },
}

function* free(element: Element, turned: boolean): Iterable<Edit> {
  for (const name of turned ? [...OFFSETS, 'placement', 'orientation'] : OFFSETS) {
    const found = attribute(element, name)
    if (found) yield removeAttribute(found)
  }
}

/** The notes whose stems turn over, of staves with one voice. */
function turnedNotes(measure: Measure, plan: PartPlan): ReadonlySet<number> {
  return new Set(
    stemGroups(measure, plan)
      .filter((group) => turnsOver(measure, group))
      .flatMap((group) => group.notes.map(({note}) => note.index)),
  )
}
