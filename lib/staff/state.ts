import type {Interval} from '../pitch/interval.ts'
import {UNISON} from '../pitch/interval.ts'
import type {Key} from '../pitch/key.ts'
import type {Clef} from './clef.ts'
import {TREBLE} from './clef.ts'

/** What is added to written pitch to get sounding pitch, octaves included, and the octave doubling if any. */
export interface Transposition {
  readonly interval: Interval
  readonly double?: 'below' | 'above'
}

/** What a concert score says of the part to be made from it: MusicXML 4.0, element `for-part`. */
export interface ForPart {
  readonly clef?: Clef
  readonly transposition: Transposition
}

/** What is in force on one staff. An absent key is no signature ever stated, not C major. */
export interface StaffState {
  readonly clef: Clef
  readonly key?: Key
  readonly transposition: Transposition
  readonly forPart?: ForPart
}

export const NO_TRANSPOSITION: Transposition = {interval: UNISON}

export const FIRST_STATE: StaffState = {clef: TREBLE, transposition: NO_TRANSPOSITION}

/** The time signature in force: how many of which note value (1/`beatType`) a measure holds. */
export interface Meter {
  readonly beats: number
  readonly beatType: number
}

/** A change on a staff (`staff` 0: on every staff), as a partial state. */
export interface StateChange {
  readonly staff: number
  readonly change: Partial<StaffState>
}

export function applyChange(state: StaffState, change: Partial<StaffState>): StaffState {
  return {...state, ...change}
}
