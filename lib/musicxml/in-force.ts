import {transpose} from '../pitch/pitch.ts'
import {applyChange} from '../staff/state.ts'
import type {StaffState} from '../staff/state.ts'
import {stateOf} from './context.ts'
import type {Attributes, Measure, Note, Reading} from './measure.ts'
import type {Draft} from './note.ts'
import {octaveLineAt} from './octave-line.ts'

/**
 * What is in force on a staff at an onset. `before` leaves out the changes that stand at that onset itself.
 */
export function stateAt(
  measure: Pick<Measure, 'context' | 'attributes'>,
  staff: number,
  onset: number,
  options: {readonly before?: boolean} = {},
): StaffState {
  let state = stateOf(measure.context, staff)
  for (const attributes of inOrder(measure.attributes)) {
    if (attributes.onset > onset || (options.before && attributes.onset === onset)) break
    state = changed(state, attributes, staff)
  }
  return state
}

/** A state as a reading takes it. */
export function readState(state: StaffState, reading: Reading | undefined): StaffState {
  return reading ? {...state, transposition: reading(state.clef, state.transposition)} : state
}

/** Gives a note what is in force at its onset, and so its sound. */
export function resolve(
  note: Draft,
  measure: Pick<Measure, 'context' | 'attributes' | 'octaveShifts'>,
  reading: Reading | undefined,
): void {
  let state = stateOf(measure.context, note.staff)
  if (measure.attributes.length > 0) {
    for (const attributes of inOrder(measure.attributes)) {
      if (!governs(attributes, note)) break
      state = changed(state, attributes, note.staff)
    }
  }
  state = readState(state, reading)
  note.state = state
  if (measure.octaveShifts.length > 0 || measure.context.octaveLines.open.length > 0) {
    const line = octaveLineAt(
      measure.context.octaveLines,
      measure.octaveShifts,
      note.staff,
      note.onset,
    )
    if (line) note.octaveLine = line
  }
  if (note.written) note.sounding = transpose(note.written, state.transposition.interval)
}

/**
 * A change governs the notes from its onset on. Grace notes at that very onset stand before it, unless the document
 * has them after it or in another run.
 */
function governs(attributes: Attributes, note: Note): boolean {
  if (attributes.onset !== note.onset) return attributes.onset < note.onset
  return !note.grace || attributes.run !== note.run || attributes.element.start < note.element.start
}

function changed(state: StaffState, attributes: Attributes, staff: number): StaffState {
  let result = state
  for (const each of attributes.changes) {
    if (each.staff === 0 || each.staff === staff) result = applyChange(result, each.change)
  }
  return result
}

/** Changes in the order of their onsets, whatever the order in the document. */
export function inOrder(attributes: readonly Attributes[]): readonly Attributes[] {
  return attributes.length < 2 ? attributes : attributes.toSorted((a, b) => a.onset - b.onset)
}
