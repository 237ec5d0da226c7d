import {attributeValue, child, childNumber, childrenNamed} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'

/**
 * A line such as 8va that displaces what is drawn, never what sounds: the pitch of a note under it is the true one
 * (MusicXML 4.0, element `octave-shift`). `steps` is what it adds to the staff position: -7 under 8va, 7 over 8vb.
 */
export interface OctaveLine {
  /** Counts the lines of a part from 0, in the order in which they begin. */
  readonly index: number
  readonly staff: number
  /** The level that tells lines apart that are open at once. */
  readonly number: string
  readonly steps: number
}

/** An `octave-shift` element and what it does; no `line` when it ends or goes on with one that never began. */
export interface OctaveShift {
  readonly element: Element
  readonly onset: number
  readonly staff: number
  readonly type: 'start' | 'continue' | 'stop'
  readonly line?: OctaveLine
}

/** Octave lines still open at a barline, and how many have begun so far. */
export interface OctaveLines {
  readonly open: readonly OctaveLine[]
  readonly count: number
}

export const NO_OCTAVE_LINES: OctaveLines = {open: [], count: 0}

/** A direction that holds octave shifts, at its onset in ticks, its own offset included. */
export interface ShiftingDirection {
  readonly element: Element
  readonly onset: number
}

/** The octave shifts of a measure in the order of their onsets, and the lines that are open after it. */
export function readOctaveShifts(
  text: string,
  directions: readonly ShiftingDirection[],
  before: OctaveLines,
): {readonly shifts: readonly OctaveShift[]; readonly after: OctaveLines} {
  let open = before.open
  let count = before.count
  const shifts: OctaveShift[] = []
  for (const {element: direction, onset} of directions.toSorted((a, b) => a.onset - b.onset)) {
    const staff = childNumber(text, direction, 'staff') ?? 1
    for (const element of shiftsOf(direction)) {
      const number = attributeValue(element, 'number') ?? '1'
      const type = attributeValue(element, 'type')
      const line = open.findLast((each) => each.staff === staff && each.number === number)
      if (type === 'up' || type === 'down') {
        const begun = {index: count, staff, number, steps: stepsOf(element, type)}
        count++
        // A line that begins anew on its own level ends the one before: some files forget the stop.
        open = [...open.filter((each) => each !== line), begun]
        shifts.push({element, onset, staff, type: 'start', line: begun})
      } else {
        if (type === 'stop') open = open.filter((each) => each !== line)
        shifts.push({
          element,
          onset,
          staff,
          type: type === 'stop' ? 'stop' : 'continue',
          ...(line && {line}),
        })
      }
    }
  }
  return {shifts, after: {open, count}}
}

/** The line that a note of a staff stands under at an onset: from the line's start on, up to its stop. */
export function octaveLineAt(
  before: OctaveLines,
  shifts: readonly OctaveShift[],
  staff: number,
  onset: number,
): OctaveLine | undefined {
  let lines = before.open.filter((each) => each.staff === staff)
  for (const {line, type, onset: at} of shifts) {
    if (at > onset) break
    if (!line || line.staff !== staff) continue
    if (type === 'start') {
      lines = [...lines.filter(({number}) => number !== line.number), line]
    } else if (type === 'stop') lines = lines.filter((each) => each !== line)
  }
  return lines.at(-1)
}

/** The `octave-shift` elements of a direction. */
export function shiftsOf(direction: Element): Element[] {
  return childrenNamed(direction, 'direction-type').flatMap(
    (type) => child(type, 'octave-shift') ?? [],
  )
}

/** `size` is 8, 15 or 22; a file that says something else means one octave. */
function stepsOf(element: Element, type: 'up' | 'down'): number {
  const size = Number(attributeValue(element, 'size') ?? 8)
  const steps = size === 15 || size === 22 ? size - 1 : 7
  return type === 'down' ? -steps : steps
}
