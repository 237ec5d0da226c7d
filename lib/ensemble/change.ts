import type {PartFacts, Position} from '../survey/facts.ts'

/** A change of sound, as the proof wants it told. Measures count from 0, onsets are quarters as fractions (`7/2`). */
export interface MovedPassage {
  readonly kind: 'moved'
  readonly part: string
  readonly from: ExactSpot
  readonly to: ExactSpot
  readonly semitones: number
  readonly reason: string
}

/** A note that is printed and no longer played, as the proof wants it told. `from` and `to` are where it begins. */
export interface DroppedNote {
  readonly kind: 'dropped'
  readonly part: string
  readonly from: ExactSpot
  readonly to: ExactSpot
  /** What it sounded, 60 for middle C: the others of its chord stay. */
  readonly midi: number
  readonly reason: string
}

/**
 * A passage of which every note is printed and no longer played (`silenced`), in which music of another part is played
 * besides (`added`), or in which such music stands to be read (`cues`). Seen from the part of that id in the source.
 */
export interface JoinedPassage {
  readonly kind: 'silenced' | 'added' | 'cues'
  readonly part: string
  readonly from: ExactSpot
  readonly to: ExactSpot
  readonly reason: string
}

/** What sounds otherwise on purpose. */
export type Change = MovedPassage | DroppedNote | JoinedPassage

export interface ExactSpot {
  readonly measure: number
  /** The number as printed, for people. */
  readonly number: string
  readonly onset: string
}

/** A place as the proof wants it. */
export function spotOf(facts: PartFacts, {measure, onset}: Position): ExactSpot {
  const ticks = facts.ticks[measure] ?? 1
  const number = facts.numbers[measure] ?? ''
  return {measure, number, onset: `${Math.round(onset * ticks)}/${ticks}`}
}
