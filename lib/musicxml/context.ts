import type {Meter, StaffState} from '../staff/state.ts'
import {FIRST_STATE} from '../staff/state.ts'
import {NO_OCTAVE_LINES} from './octave-line.ts'
import type {OctaveLines} from './octave-line.ts'

/**
 * What runs from measure to measure within a part: a value, folded over its measures. `divisions` per quarter;
 * `staves[0]` is staff 1. `everyStaff` is what was said without a staff number, for staves that appear later.
 */
export interface Context {
  readonly part: string
  readonly measureIndex: number
  readonly divisions: number
  readonly staves: readonly StaffState[]
  readonly everyStaff: StaffState
  readonly meter: Meter
  readonly octaveLines: OctaveLines
}

export function firstContext(part: string): Context {
  return {
    part,
    measureIndex: 0,
    divisions: 1,
    staves: [FIRST_STATE],
    everyStaff: FIRST_STATE,
    meter: {beats: 4, beatType: 4},
    octaveLines: NO_OCTAVE_LINES,
  }
}

/** What is in force on a staff (counted from 1) at the start of the measure. */
export function stateOf(context: Context, staff: number): StaffState {
  return context.staves[staff - 1] ?? context.everyStaff
}
