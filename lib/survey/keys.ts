import {fifthsOf} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {modulo12} from './harmony.ts'
import {NO_KEY} from './line.ts'
import type {Line} from './line.ts'

/** The signatures of a score at concert pitch: for every measure how many lines, by their weight, have which. */
export interface KeyTable {
  /** `12 * measure + fifths`, fifths up to enharmonic change. */
  readonly weights: Float32Array
  readonly measures: number
}

/** How a line's signatures stand to the key of the others; shares of the measures in which both are known. */
export interface KeyFit {
  /** By fifths that the line is moved by, 0 to 11. */
  readonly agree: Float64Array
  /** The line has no sharps or flats where, so moved, it would need some. */
  readonly open: Float64Array
  /** Measures compared; each counts as often as the others agree among themselves. */
  readonly measures: number
}

export function emptyKeys(measures: number): KeyTable {
  return {weights: new Float32Array(12 * measures), measures}
}

/** Adds a line's signatures, moved to concert pitch; a negative weight takes them away. */
export function addKeys(table: KeyTable, line: Line, interval: Interval, weight: number): void {
  const fifths = fifthsOf(interval)
  for (let measure = 0; measure < table.measures; measure++) {
    const key = line.keys[measure] ?? NO_KEY
    if (key === NO_KEY) continue
    const at = 12 * measure + modulo12(key + fifths)
    table.weights[at] = (table.weights[at] ?? 0) + weight
  }
}

/** Compares a line with the others; the line itself must not be in the table. */
export function readKeyFit(table: KeyTable, line: Line): KeyFit {
  const agree = new Float64Array(12)
  const open = new Float64Array(12)
  let measures = 0
  for (let measure = 0; measure < table.measures; measure++) {
    const key = line.keys[measure] ?? NO_KEY
    if (key === NO_KEY || !line.played[measure]) continue
    const {fifths, weight} = agreed(table, measure)
    if (weight === 0) continue
    measures += weight
    const moved = modulo12(fifths - key)
    agree[moved] = (agree[moved] ?? 0) + weight
    if (key !== 0) continue
    for (let each = 0; each < 12; each++)
      if (each !== moved) open[each] = (open[each] ?? 0) + weight
  }
  if (measures > 0) {
    for (let each = 0; each < 12; each++) {
      agree[each] = (agree[each] ?? 0) / measures
      open[each] = (open[each] ?? 0) / measures
    }
  }
  return {agree, open, measures}
}

/** The key that most of the others have; weight 0 where they do not agree. */
export function agreed(
  table: KeyTable,
  measure: number,
): {readonly fifths: number; readonly weight: number} {
  let total = 0
  let best = 0
  for (let fifths = 0; fifths < 12; fifths++) {
    const weight = Math.max(0, table.weights[12 * measure + fifths] ?? 0)
    total += weight
    if (weight > (table.weights[12 * measure + best] ?? 0)) best = fifths
  }
  const most = table.weights[12 * measure + best] ?? 0
  const share = total > 0 ? most / total : 0
  return {fifths: best, weight: most >= 0.5 && share > 0.6 ? share : 0}
}
