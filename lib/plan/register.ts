import type {Position} from '../survey/facts.ts'
import {isBefore} from './plan.ts'

/** From a position on a part sounds so many octaves higher (negative: lower) than its source; until the next one. */
export interface Register extends Position {
  readonly octaves: number
}

/** The octaves by which the part is moved at a position; none before the first register. */
export function octavesAt(registers: readonly Register[] | undefined, at: Position): number {
  return registers?.findLast((register) => !isBefore(at, register))?.octaves ?? 0
}
