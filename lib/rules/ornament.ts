import {placeOf} from '../musicxml/measure.ts'
import type {Measure, Note} from '../musicxml/measure.ts'
import {keepsKey, keepsPitch, moveOf} from '../plan/plan.ts'
import type {PartPlan, Section} from '../plan/plan.ts'
import {alterInKey} from '../pitch/key.ts'
import {naturalAt, stepsAbove, transpose} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import type {Report} from '../diagnostic.ts'
import {attributeValue, childrenNamed, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {insertAfter, removeElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {accidentalFor, alterOf} from '../staff/accidental-sign.ts'
import type {Rule} from './rule.ts'
import {targetOf} from './rule.ts'

/** Which neighbours an ornament plays: the step above (1), the step below (-1). */
const NEIGHBOURS: Readonly<Record<string, readonly (1 | -1)[]>> = {
  'trill-mark': [1],
  'inverted-mordent': [1],
  mordent: [-1],
  turn: [1, -1],
  'inverted-turn': [1, -1],
  'delayed-turn': [1, -1],
  'delayed-inverted-turn': [1, -1],
  'vertical-turn': [1, -1],
  'inverted-vertical-turn': [1, -1],
  haydn: [1, -1],
}

/**
 * Re-derives the accidentals of trills, turns and mordents from the auxiliary note: it moves with the note, and its sign is
 * printed where the new signature does not give it already (renotation-rules TR1, TR2). Marks elsewhere, as an
 * editor sets them over a note, speak of the note itself.
 */
export const ornament: Rule = {
  name: 'ornament',
  owns: ['accidental-mark'],
  *rewrite(measure, plan, report) {
    for (const note of measure.notes) {
      for (const notations of childrenNamed(note.element, 'notations')) {
        yield* editNotations(measure, plan, note, notations, report)
      }
    }
  },
}

function* editNotations(
  measure: Measure,
  plan: PartPlan,
  note: Note,
  notations: Element,
  report: Report,
): Iterable<Edit> {
  const marks = notations.children.filter(
    ({name}) => name === 'ornaments' || name === 'accidental-mark',
  )
  if (marks.length === 0) return
  const target = targetOf(plan, measure, note)
  if (!target || !note.written || target.section.untouched) return
  const {section} = target
  if (keepsPitch(section) && keepsKey(section)) return
  for (const each of marks) {
    if (each.name === 'ornaments')
      yield* editOrnaments(measure, section, note, note.written, each, report)
    else yield* editMark(measure, each, note.written, section)
  }
}

function* editOrnaments(
  measure: Measure,
  section: Section,
  note: Note,
  written: Pitch,
  ornaments: Element,
  report: Report,
): Iterable<Edit> {
  let sign: Element | undefined
  let marked: (1 | -1)[] = []
  const close = function* (): Iterable<Edit> {
    if (sign) yield* addMarks(measure, section, note, written, ornaments, sign, marked, report)
  }
  for (const each of ornaments.children) {
    if (each.name === 'accidental-mark') {
      const neighbours = NEIGHBOURS[sign?.name ?? ''] ?? []
      const below = attributeValue(each, 'placement') === 'below'
      const neighbour = neighbours.length === 2 ? (below ? -1 : 1) : (neighbours[0] ?? 1)
      marked = [...marked, neighbour]
      yield* editAuxiliary(measure, section, written, each, neighbour)
    } else {
      yield* close()
      sign = each.name in NEIGHBOURS ? each : undefined
      marked = []
    }
  }
  yield* close()
}

function* editAuxiliary(
  measure: Measure,
  section: Section,
  written: Pitch,
  mark: Element,
  neighbour: 1 | -1,
): Iterable<Edit> {
  const before = textOf(measure.text, mark)
  const alter = alterOf(before)
  if (alter === undefined) return
  const base = naturalAt(stepsAbove(written) + neighbour)
  const now = transpose({...base, alter}, moveOf(section))
  const given = alterInKey(section.key, now.step, now.octave) === now.alter
  // A sign that only repeated the signature was a courtesy: it stays one.
  const wasGiven = alterInKey(section.source.key, base.step, base.octave) === alter
  if (given && !wasGiven) yield removeElement(measure.text, mark)
  else {
    const sign = accidentalFor(now.alter, before)
    if (sign !== undefined && sign !== before) yield setText(mark, sign)
  }
}

/** The signs that the new signature makes necessary on an ornament that had none. */
function* addMarks(
  measure: Measure,
  section: Section,
  note: Note,
  written: Pitch,
  ornaments: Element,
  sign: Element,
  marked: readonly (1 | -1)[],
  report: Report,
): Iterable<Edit> {
  for (const neighbour of NEIGHBOURS[sign.name] ?? []) {
    if (marked.includes(neighbour)) continue
    const base = naturalAt(stepsAbove(written) + neighbour)
    const played = {...base, alter: alterInKey(section.source.key, base.step, base.octave)}
    const now = transpose(played, moveOf(section))
    if (alterInKey(section.key, now.step, now.octave) === now.alter) continue
    const accidental = accidentalFor(now.alter)
    if (accidental === undefined) continue
    const placement = neighbour === 1 ? 'above' : 'below'
    yield insertAfter(
      measure.text,
      sign,
      ornaments,
      () => `<accidental-mark placement="${placement}">${accidental}</accidental-mark>`,
    )
    report({
      code: 'ornament/accidental-added',
      severity: 'info',
      message: `the ${sign.name.replace('-mark', '')} gets a ${accidental}, which the new signature does not give`,
      at: placeOf(measure, note),
    })
  }
}

function* editMark(
  measure: Measure,
  mark: Element,
  written: Pitch,
  section: Section,
): Iterable<Edit> {
  const before = textOf(measure.text, mark)
  const alter = alterOf(before)
  if (alter === undefined) return
  const sign = accidentalFor(transpose({...written, alter}, moveOf(section)).alter, before)
  if (sign !== undefined && sign !== before) yield setText(mark, sign)
}
