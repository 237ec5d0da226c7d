import {alterInKey, sameKey} from '../pitch/key.ts'
import type {Key} from '../pitch/key.ts'
import {stepsAbove} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'

/** A note of a measure as a reader meets it. */
export interface ReadNote {
  /** In any unit, from the start of the measure. */
  readonly onset: number
  readonly grace: boolean
  /** As written. */
  readonly pitch: Pitch
  readonly key: Key | undefined
  /** Tied from a note that shows, or needs, the same sign. */
  readonly held: boolean
}

/**
 * For each note of a staff whether it needs an accidental: signs hold for the measure, the staff and the octave, and through a
 * tie (renotation-rules A1). The notes are in the order in which they are read: by onset, grace notes first.
 */
export function whereNeeded(notes: readonly ReadNote[]): boolean[] {
  let inForce = new Map<number, number>()
  let key: Key | undefined
  let pending: (() => void)[] = []
  let onset = -1
  return notes.map((note, index) => {
    const {pitch} = note
    if (note.onset !== onset || note.grace || notes[index - 1]?.grace) {
      // Notes that begin together are judged by what was before them: each of two voices shows its sign.
      for (const apply of pending) apply()
      pending = []
      onset = note.onset
    }
    if (index > 0 && !isKeyKept(key, note.key)) inForce = new Map()
    key = note.key
    const position = stepsAbove(pitch)
    const inKey = inForce.get(position) ?? alterInKey(note.key, pitch.step, pitch.octave)
    if (note.held) return false
    const table = inForce
    pending.push(() => table.set(position, pitch.alter))
    return inKey !== pitch.alter
  })
}

function isKeyKept(before: Key | undefined, now: Key | undefined): boolean {
  return before === now || (before !== undefined && now !== undefined && sameKey(before, now))
}
