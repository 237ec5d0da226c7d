import type {Measure} from '../musicxml/measure.ts'
import {isSame, sectionAt} from '../plan/plan.ts'
import type {PartPlan, Section} from '../plan/plan.ts'
import {UNISON, sameInterval} from '../pitch/interval.ts'
import {sameClef} from '../staff/clef.ts'
import {element as create} from '../xml/build.ts'
import type {NewElement} from '../xml/build.ts'
import {childrenNamed} from '../xml/element.ts'
import type {Changes} from './attributes.ts'
import {sectionsIn} from './rule.ts'
import {figuresOf} from './transposition.ts'

/**
 * What a concert score says of the parts to be made from it (MusicXML 4.0, element `for-part`): a part that was put at
 * concert pitch declares how its player reads it, so that any reader can show it transposed. Such declarations have
 * no place in a part that was made, and go.
 */
export function forPartChanges(measure: Measure, plan: PartPlan): Changes {
  const found = measure.attributes.flatMap(({element}) => childrenNamed(element, 'for-part'))
  if (!plan.concert) {
    const removed = plan.staves.flat().every(isSame) ? [] : found
    return {edits: [], removed, added: []}
  }
  if (found.length > 0) return {edits: [], removed: [], added: []}
  const added = sectionsIn(plan, measure)
    .filter((section) => isDue(plan, section))
    .map((section) => ({
      onset: Math.round(section.onset * measure.ticks),
      element: createForPart(section, plan.staves.length > 1),
    }))
  return {edits: [], removed: [], added}
}

function isDue(plan: PartPlan, section: Section): boolean {
  // The schema wants one or the other: a part that keeps its octave in the score cannot say more.
  if (section.untouched || !sameInterval(section.transposition.interval, UNISON)) return false
  if (section.measure === 0 && section.onset === 0) return !isSame(section)
  const before = sectionAt(plan, section.staff, section, {before: true})
  if (!before || (isSame(section) && isSame(before))) return false
  const {clef, transposition} = section.source
  return (
    !sameClef(before.source.clef, clef) ||
    !sameInterval(before.source.transposition.interval, transposition.interval)
  )
}

function createForPart({source, staff}: Section, numbered: boolean): NewElement {
  const {diatonic, chromatic, octaves} = figuresOf(source.transposition.interval)
  const {sign, line, octaveChange} = source.clef
  return create(
    'for-part',
    [
      create('part-clef', [
        create('sign', sign),
        create('line', line),
        octaveChange === 0 ? undefined : create('clef-octave-change', octaveChange),
      ]),
      create('part-transpose', [
        create('diatonic', diatonic),
        create('chromatic', chromatic),
        octaves === 0 ? undefined : create('octave-change', octaves),
      ]),
    ],
    {number: numbered ? String(staff) : undefined},
  )
}
