import {order} from './fraction.ts'
import type {Fraction} from './fraction.ts'

/** A place in a measure: the onset counts, the rest tells what was read before what. */
export interface Position {
  readonly onset: Fraction
  /** Counts everything in the measure in document order. */
  readonly nth: number
  /** Counts the stretches between one `<backup>` or `<forward>` and the next. */
  readonly run: number
}

/** A value that holds from a place in the score on, for one staff or, without `staff`, for all. */
export interface Change<T> {
  readonly at: Position
  readonly staff: string | undefined
  readonly value: T
}

/** What held at the end of the measure before: changes earlier than anything in this one. */
export const BEFORE_THE_MEASURE: Position = {
  onset: {numerator: -1e9, denominator: 1},
  nth: -1,
  run: -1,
}

/**
 * The changes in the order of the score: by onset and, at one onset, as written. A change that stands behind
 * a `<backup>` at the end of the document still governs every note after its own onset.
 */
export function inScoreOrder<T>(changes: readonly Change<T>[]): readonly Change<T>[] {
  return changes.toSorted((a, b) => order(a.at.onset, b.at.onset) || a.at.nth - b.at.nth)
}

/**
 * The value in force for a note, given the changes in score order. A grace note takes no time: one that is written before a
 * change, with nothing but notes between them, is played before it.
 */
export function inForce<T>(
  changes: readonly Change<T>[],
  staff: string,
  at: Position,
  grace: boolean,
): T | undefined {
  return changes.findLast(
    (change) =>
      (change.staff === undefined || change.staff === staff) && hasCome(change.at, at, grace),
  )?.value
}

/** What the next measure begins with: for every staff, and for all, only the last word. */
export function carryOver<T>(changes: readonly Change<T>[]): readonly Change<T>[] {
  const kept: Change<T>[] = []
  for (const change of changes.toReversed()) {
    if (kept.some((later) => later.staff === change.staff)) continue
    kept.unshift({...change, at: BEFORE_THE_MEASURE})
    if (change.staff === undefined) break
  }
  return kept
}

function hasCome(change: Position, note: Position, grace: boolean): boolean {
  const distance = order(change.onset, note.onset)
  if (distance !== 0) return distance < 0
  return !(grace && change.run === note.run && change.nth > note.nth)
}
