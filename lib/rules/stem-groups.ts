import type {Measure, Note} from '../musicxml/measure.ts'
import type {PartPlan} from '../plan/plan.ts'
import {attributeValue, child, childrenNamed, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {positionsOf, targetOf} from './rule.ts'

/** The middle line of the staff. */
const MIDDLE = 4

export interface StemGroup {
  /** Notes under one stem or one beam, with their staff positions in the source and in the target. */
  readonly notes: {readonly note: Note; readonly from: number; readonly to: number}[]
  /** Voices, grace notes, unpitched staves: the direction has another reason than the position. */
  readonly fixed: boolean
}

/** The notes of a measure by the stem or beam they share. */
export function stemGroups(measure: Measure, plan: PartPlan): StemGroup[] {
  const voices = new Map<number, Set<string>>()
  for (const note of measure.notes) {
    if (note.kind === 'rest' || note.grace) continue
    voices.set(note.staff, (voices.get(note.staff) ?? new Set()).add(note.voice))
  }
  const groups: StemGroup[] = []
  const open = new Map<string, StemGroup>()
  let chord: StemGroup | undefined
  for (const note of measure.notes) {
    const target = targetOf(plan, measure, note)
    if (!note.written || !target || target.section.untouched) continue
    const entry = {note, ...positionsOf(plan, note, target)}
    if (note.chord && chord) {
      chord.notes.push(entry)
      continue
    }
    const key = `${note.voice}/${note.grace ? 'grace' : ''}`
    const beam = beamOf(measure, note)
    const known = beam === 'continue' || beam === 'end' ? open.get(key) : undefined
    const group: StemGroup = known ?? {
      notes: [],
      fixed: note.grace || (voices.get(note.staff)?.size ?? 1) > 1,
    }
    group.notes.push(entry)
    if (!known) groups.push(group)
    if (beam === 'begin' || beam === 'continue') open.set(key, group)
    else open.delete(key)
    chord = group
  }
  return groups
}

/** Whether the stems of a group change sides. Stems that the source sets against the rule have a reason, and stay. */
export function turnsOver(measure: Measure, group: StemGroup): boolean {
  if (group.fixed) return false
  const was = directionOf(group.notes.map(({from}) => from))
  const right = directionOf(group.notes.map(({to}) => to))
  if (right === was) return false
  const stems = group.notes.flatMap(({note}) => stemOf(note) ?? [])
  return stems.every((each) => textOf(measure.text, each) === was)
}

/** Down when the farthest note lies on or above the middle line, or as far above as another lies below. */
export function directionOf(positions: readonly number[]): 'up' | 'down' {
  const above = Math.max(...positions) - MIDDLE
  const below = MIDDLE - Math.min(...positions)
  return below > above ? 'up' : 'down'
}

function beamOf(measure: Measure, note: Note): string | undefined {
  const beam = childrenNamed(note.element, 'beam').find(
    (each) => (attributeValue(each, 'number') ?? '1') === '1',
  )
  return beam && textOf(measure.text, beam)
}

export function stemOf(note: Note): Element | undefined {
  return child(note.element, 'stem')
}
