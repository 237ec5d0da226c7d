import {fifthsOf} from '../pitch/interval.ts'
import {bottomLine} from '../staff/clef.ts'
import type {ClefReading, Notation} from './notation.ts'
import {listNotations} from './find.ts'

/** A notation in which notes keep their lines and spaces: only the clef, the signature and some accidentals change. */
export interface SameLines {
  readonly notation: Notation
  readonly reading: ClefReading
  /** What is added to the signature, in fifths: 3 is three sharps more or three flats fewer. */
  readonly fifths: number
}

/**
 * Players read a part in a foreign clef as if it were their own: a bassoon part in bass clef is an E flat part in treble clef with
 * three sharps more. Gives the notations among those that the words may mean (all of them without words) in which
 * every note of a reading stays on its line or space.
 */
export function notationsOnSameLines(from: ClefReading, words = ''): readonly SameLines[] {
  const height = heightOf(from)
  return listNotations(words).flatMap((notation) =>
    notation.readings
      .filter((reading) => heightOf(reading) === height && reading.row !== from.row)
      .map((reading) => ({
        notation,
        reading,
        fifths: fifthsOf(from.interval) - fifthsOf(reading.interval),
      }))
      .filter(({fifths}) => Math.abs(fifths) <= 7),
  )
}

/** Steps above C0 that sound when the bottom line is read. */
function heightOf({clef, interval}: ClefReading): number {
  return bottomLine({...clef, octaveChange: 0}) + interval.diatonic
}
