import {attributeValue, childrenNamed, numberOf, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {FIRST_STATE} from '../staff/state.ts'
import type {Note} from './measure.ts'
import {isStaff, readPitch} from './read.ts'
import {ticksOf} from './ticks.ts'

/** A note whose onset and state are still to be found. */
export type Draft = {-readonly [Key in keyof Note]: Note[Key]}

/** Reads what a `note` says by itself. `scale` is ticks to a division. */
export function readNote(
  text: string,
  element: Element,
  index: number,
  scale: number,
  run: number,
): Draft {
  const note: Draft = {
    element,
    onset: 0,
    index,
    kind: 'unpitched',
    duration: 0,
    staff: 1,
    voice: '1',
    chord: false,
    grace: false,
    cue: false,
    tiedFrom: false,
    tiedTo: false,
    run,
    state: FIRST_STATE,
  }
  let tie = false
  let notations: Element | undefined
  for (const each of element.children) {
    switch (each.name) {
      case 'pitch': {
        note.kind = 'pitched'
        const pitch = readPitch(text, each)
        if (pitch) note.written = pitch
        break
      }
      case 'rest':
        note.kind = 'rest'
        break
      case 'duration':
        note.duration = ticksOf(numberOf(text, each) ?? 0, scale)
        break
      case 'chord':
        note.chord = true
        break
      case 'grace':
        note.grace = true
        break
      case 'cue':
        note.cue = true
        break
      case 'voice':
        note.voice = textOf(text, each)
        break
      case 'staff': {
        const staff = numberOf(text, each) ?? 1
        note.staff = isStaff(staff) ? staff : 1
        break
      }
      case 'tie':
        tie = true
        markTie(note, each)
        break
      case 'notations':
        notations ??= each
        break
      default:
    }
  }
  if (note.grace) note.duration = 0
  // Some encoders write only the ink of a tie: without `tie`, a `tied` counts.
  if (!tie && notations) for (const tied of childrenNamed(notations, 'tied')) markTie(note, tied)
  return note
}

function markTie(note: Draft, tie: Element): void {
  const type = attributeValue(tie, 'type')
  if (type === 'stop' || type === 'continue') note.tiedFrom = true
  if (type === 'start' || type === 'continue') note.tiedTo = true
}
