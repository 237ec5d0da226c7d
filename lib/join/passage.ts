import type {Position} from '../survey/facts.ts'

/**
 * How music of another part stands in a part. `cue`: small and silent, beside the rests of who reads it · `small`: a
 * cross-cue, to be played where its own player is missing, in place of the rests · `played`: full size, in place of the rests.
 */
export type Manner = 'cue' | 'small' | 'played'

/** Music of another part, the guest, from one place to another (not included), as the host's player reads it. */
export interface Passage {
  /** Id of the part that the music comes from. */
  readonly guest: string
  readonly from: Position
  readonly to: Position
  readonly manner: Manner
  /** The one voice that is shown; all when absent. */
  readonly line?: {readonly staff: number; readonly voice: string}
  /** Words over its first note: whose music it is. */
  readonly label?: string
}

/** Words over a part where its player goes back to their own music. */
export interface Mark extends Position {
  readonly text: string
}

/** The quarters of a measure that a passage takes in; undefined where it has none of it. */
export function spanIn(
  {from, to}: Passage,
  measure: number,
): {readonly from: number; readonly to: number} | undefined {
  if (measure < from.measure || measure > to.measure) return undefined
  if (measure === to.measure && to.onset <= 0) return undefined
  return {
    from: measure === from.measure ? from.onset : 0,
    to: measure === to.measure ? to.onset : Infinity,
  }
}
