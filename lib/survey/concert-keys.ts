import {majorTonic} from '../pitch/key.ts'
import {UNISON} from '../pitch/interval.ts'
import type {Belief} from './believe.ts'
import {addKeys, agreed, emptyKeys} from './keys.ts'

/** A stretch of measures in one key at concert pitch. */
export interface KeyRegion {
  /** The number of its first measure as printed. */
  readonly measure: string
  /** Index of its first measure, from 0. */
  readonly index: number
  /** Sharps, or flats as a negative number. */
  readonly fifths: number
  /** The major key with that signature: `Bb`. */
  readonly major: string
}

/** The keys that most parts agree on as they are believed to sound. */
export function readConcertKeys(
  beliefs: readonly Belief[],
  numbers: readonly string[],
): readonly KeyRegion[] {
  const measures = beliefs[0]?.line.keys.length ?? 0
  const table = emptyKeys(measures)
  for (const {line, judged} of beliefs) {
    const [best] = judged
    if (
      !best ||
      (best.hypothesis.instrument?.keySignature === 'no' && line.keys.every((key) => key === 0))
    )
      continue
    addKeys(table, line, best.hypothesis.intervals[0] ?? UNISON, 1)
  }
  const regions: KeyRegion[] = []
  for (let measure = 0; measure < measures; measure++) {
    const {fifths, weight} = agreed(table, measure)
    // Up to enharmonic change: five flats rather than seven sharps, six sharps as they come.
    const near = fifths > 6 ? fifths - 12 : fifths
    if (weight === 0 || regions.at(-1)?.fifths === near) continue
    regions.push({
      measure: numbers[measure] ?? String(measure + 1),
      index: measure,
      fifths: near,
      major: majorTonic(near),
    })
  }
  return regions
}
