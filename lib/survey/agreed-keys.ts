import type {Measure} from '../musicxml/measure.ts'
import {fifthsOf} from '../pitch/interval.ts'
import {isTraditional} from '../pitch/key.ts'
import type {StaffState} from '../staff/state.ts'

/** A key of the sounding music, in fifths, from the start of a measure on. */
export interface AgreedKey {
  readonly measure: number
  readonly onset: 0
  readonly fifths: number
}

/** Gathers the key signatures of a score's parts, as they sound. */
export interface KeyVotes {
  /** What is in force on a part's first staff at the start of a measure where something changes. */
  add(measure: Measure, state: StaffState): void
  /** What most parts agree on, change by change. Parts that never print a sign do not vote: most of them never would. */
  agreed(): AgreedKey[]
  /**
   * Whether the score has no signatures at all, not even where transposing parts would need some (renotation-rules K8):
   * nobody prints a sign, and the parts' keys contradict each other as they sound.
   */
  isOpen(): boolean
}

export function createKeyVotes(): KeyVotes {
  const parts = new Map<string, {measure: number; fifths: number; signed: boolean}[]>()
  return {
    add(measure, {key, transposition}) {
      if (!key || !isTraditional(key)) return
      const own = parts.get(measure.part) ?? []
      const fifths = key.fifths + fifthsOf(transposition.interval)
      own.push({measure: measure.index, fifths, signed: key.fifths !== 0})
      parts.set(measure.part, own)
    },
    isOpen() {
      const keys = [...parts.values()].flat()
      const sounding = new Set(keys.map(({fifths}) => ((fifths % 12) + 12) % 12))
      return keys.every(({signed}) => !signed) && sounding.size > 1
    },
    agreed() {
      const voters = [...parts.values()].filter((keys) => keys.some(({signed}) => signed))
      const changes = [...new Set(voters.flat().map(({measure}) => measure))].toSorted(
        (a, b) => a - b,
      )
      const result: AgreedKey[] = []
      for (const measure of changes) {
        const fifths = mostCommon(
          voters.flatMap((keys) => keys.findLast((each) => each.measure <= measure)?.fifths ?? []),
        )
        if (fifths !== undefined && fifths !== result.at(-1)?.fifths)
          result.push({measure, onset: 0, fifths})
      }
      return result
    },
  }
}

/** The value most often said; keys twelve fifths apart sound alike and count together, the fewer signs winning. */
function mostCommon(votes: readonly number[]): number | undefined {
  const counts = new Map<number, {count: number; fifths: number}>()
  for (const fifths of votes) {
    const known = counts.get(((fifths % 12) + 12) % 12)
    const best =
      known === undefined || Math.abs(fifths) < Math.abs(known.fifths) ? fifths : known.fifths
    counts.set(((fifths % 12) + 12) % 12, {count: (known?.count ?? 0) + 1, fifths: best})
  }
  return [...counts.values()].toSorted((a, b) => b.count - a.count)[0]?.fifths
}
