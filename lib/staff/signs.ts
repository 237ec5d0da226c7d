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
 * tie (renotation-rules A1). Notes that begin together are judged by what was before them, and where two of them share a place
 * of the staff but no sign, each shows its own; so does what follows there. The notes are in the order in which they are read:
 * by onset, grace notes first.
 */
export function whereNeeded(notes: readonly ReadNote[]): boolean[] {
  const needed: boolean[] = []
  /** What the sign last shown at each place means; where several were shown at once, NaN, which is no note's. */
  let inForce = new Map<number, number>()
  let key: Key | undefined
  for (let from = 0, to = 0; from < notes.length; from = to) {
    to = endOfMoment(notes, from)
    const moment = notes.slice(from, to)
    const together = moment.length > 1 ? meaningsOf(moment) : undefined
    for (const [index, note] of moment.entries()) {
      if (from + index > 0 && !isKeyKept(key, note.key)) inForce = new Map()
      key = note.key
      const {step, octave, alter} = note.pitch
      const place = stepsAbove(note.pitch)
      const before = inForce.get(place) ?? alterInKey(key, step, octave)
      needed.push(
        !note.held &&
          (before !== alter || (together !== undefined && together.get(place) !== alter)),
      )
    }
    for (const [place, alter] of meaningsOf(moment.filter(({held}) => !held)))
      inForce.set(place, alter)
  }
  return needed
}

/** The notes that begin together end before this one; grace notes begin alone. */
function endOfMoment(notes: readonly ReadNote[], from: number): number {
  const first = notes[from] as ReadNote
  let to = from + 1
  if (first.grace) return to
  while (notes[to]?.onset === first.onset && !notes[to]?.grace) to++
  return to
}

/** What each place of the staff means where these notes begin; NaN where two of them contradict each other. */
function meaningsOf(notes: readonly ReadNote[]): ReadonlyMap<number, number> {
  const meanings = new Map<number, number>()
  for (const {pitch} of notes) {
    const place = stepsAbove(pitch)
    const before = meanings.get(place) ?? pitch.alter
    meanings.set(place, before === pitch.alter ? before : NaN)
  }
  return meanings
}

function isKeyKept(before: Key | undefined, now: Key | undefined): boolean {
  return before === now || (before !== undefined && now !== undefined && sameKey(before, now))
}
