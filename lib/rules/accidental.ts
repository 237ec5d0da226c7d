import {placeOf} from '../musicxml/measure.ts'
import type {Measure, Note} from '../musicxml/measure.ts'
import {ORDER} from '../musicxml/order.ts'
import {keepsKey, keepsPitch} from '../plan/plan.ts'
import type {PartPlan, Section} from '../plan/plan.ts'
import {formatPitch, stepsAbove} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import {attributeValue, child, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {insertChild, removeElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {accidentalFor} from '../staff/accidental-sign.ts'
import {whereNeeded} from '../staff/signs.ts'
import type {Rule} from './rule.ts'
import {targetOf} from './rule.ts'

/**
 * Prints the accidentals that the target's reader needs: they hold for the measure, the staff and the octave, and
 * through a tie (renotation-rules A1). Signs that the source prints beyond need, or marks as cautionary, editorial,
 * parenthesised or bracketed, stay in kind and say what they must say now.
 */
export const accidental: Rule = {
  name: 'accidental',
  owns: ['accidental'],
  *rewrite(measure, plan, report) {
    const staves = new Set(measure.notes.map((note) => note.staff))
    for (const staff of staves) {
      const notes = readNotes(measure, plan, staff)
      if (
        notes.every(({section}) => section.untouched || (keepsPitch(section) && keepsKey(section)))
      )
        continue
      const needed = neededIn(notes, 'target')
      const neededBefore = neededIn(notes, 'source')
      for (const [index, shown] of notes.entries()) {
        if (shown.section.untouched || (keepsPitch(shown.section) && keepsKey(shown.section)))
          continue
        const need = {
          needed: needed[index] === true,
          neededBefore: neededBefore[index] === true,
          courtesy: isCourtesy(measure, plan, shown.note),
          policy: plan.courtesy,
        }
        yield* editAccidental(measure, shown, need, (sign) => {
          report({
            code: 'accidental/no-sign',
            severity: 'warning',
            message: `there is no accidental that shows ${formatPitch(sign)}; the note is printed without`,
            at: placeOf(measure, shown.note),
          })
        })
      }
    }
  },
}

/** Whether the plan wants a courtesy on a note, which it knows by its place among the pitched notes of the part. */
function isCourtesy(measure: Measure, {courtesies}: PartPlan, note: Note): boolean {
  if (!courtesies) return false
  const nth = measure.notes.filter((each) => each.written && each.index < note.index).length
  return courtesies.notes.has((courtesies.firstNote[measure.index] ?? 0) + nth)
}

interface Shown {
  readonly note: Note
  readonly section: Section
  readonly source: Pitch
  readonly target: Pitch
  readonly element: Element | undefined
}

/** The pitched notes of a staff in the order in which they are read: by onset, grace notes first. */
function readNotes(measure: Measure, plan: PartPlan, staff: number): Shown[] {
  const shown: Shown[] = []
  for (const note of measure.notes) {
    const target = note.staff === staff ? targetOf(plan, measure, note) : undefined
    if (!target || !note.written) continue
    shown.push({
      note,
      section: target.section,
      source: note.written,
      target: target.written,
      element: child(note.element, 'accidental'),
    })
  }
  return shown.toSorted(
    (a, b) =>
      a.note.onset - b.note.onset ||
      Number(b.note.grace) - Number(a.note.grace) ||
      a.note.index - b.note.index,
  )
}

/** For each note whether it needs a sign, in the source's notation or in the target's. */
function neededIn(notes: readonly Shown[], side: 'source' | 'target'): boolean[] {
  return whereNeeded(
    notes.map((shown, index) => ({
      onset: shown.note.onset,
      grace: shown.note.grace,
      pitch: shown[side],
      key: side === 'source' ? shown.section.source.key : shown.section.key,
      held: shown.note.tiedFrom && continues(notes, index),
    })),
  )
}

/** Whether the note that this one is tied from is out of sight (an earlier measure) or carries the same sign. */
function continues(notes: readonly Shown[], index: number): boolean {
  const {note, source} = notes[index] ?? {}
  if (!note || !source) return false
  const earlier = notes
    .slice(0, index)
    .findLast(
      (each) =>
        each.note.tiedTo &&
        each.note.voice === note.voice &&
        stepsAbove(each.source) === stepsAbove(source),
    )
  return earlier === undefined || earlier.source.alter === source.alter
}

interface Need {
  readonly needed: boolean
  /** Whether the source's notation needed it. */
  readonly neededBefore: boolean
  /** Whether the plan wants a courtesy here. */
  readonly courtesy: boolean
  readonly policy: PartPlan['courtesy']
}

function* editAccidental(
  measure: Measure,
  {note, source, target, element}: Shown,
  {needed, neededBefore, courtesy, policy}: Need,
  complain: (pitch: Pitch) => void,
): Iterable<Edit> {
  const before = element && textOf(measure.text, element)
  // Printed beyond need, or marked: a courtesy, an editor's sign. It stays whatever the new key makes of it.
  const kept = element !== undefined && (isMarked(element) || (!neededBefore && policy !== 'none'))
  const deliberate = kept || courtesy
  // A sign the source leaves out where one is due (a second voice in unison) stays out.
  const withheld = element === undefined && neededBefore && isHidden(note)
  if (!(needed && !withheld) && !deliberate) {
    if (element) yield removeElement(measure.text, element)
    return
  }
  const keepsSign = before !== undefined && source.alter === target.alter
  const sign = keepsSign ? before : accidentalFor(target.alter, before)
  if (sign === undefined) {
    complain(target)
    if (element) yield removeElement(measure.text, element)
  } else if (!element) {
    yield insertChild(
      measure.text,
      note.element,
      'accidental',
      ORDER.note,
      () => `<accidental${needed ? '' : ' cautionary="yes"'}>${sign}</accidental>`,
    )
  } else if (sign !== before) yield setText(element, sign)
}

function isMarked(element: Element): boolean {
  return ['cautionary', 'editorial', 'parentheses', 'bracket'].some(
    (name) => attributeValue(element, name) === 'yes',
  )
}

function isHidden(note: Note): boolean {
  return attributeValue(note.element, 'print-object') === 'no'
}
