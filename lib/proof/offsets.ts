import {difference, formatFraction, toNumber, ZERO} from './fraction.ts'
import type {Fraction} from './fraction.ts'
import type {Event} from './ties.ts'

/** How many notes are off by how much, by the offset in semitones. */
export type Offsets = Map<string, {readonly semitones: Fraction; notes: number}>

/** Kinds of offset that are counted; a constant one is among the first. */
const KINDS = 64

/**
 * Adds the attacks of a measure. Where both sides strike as many notes at once, the lowest is taken to be the lowest, and
 * so on up. `promised` is how far the report moves a note: that is not an offset.
 */
export function countOffsets(
  offsets: Offsets,
  before: readonly Event[],
  after: readonly Event[],
  promised: (event: Event) => Fraction | undefined,
): void {
  const others = chordsOf(after)
  for (const [onset, chord] of chordsOf(before)) {
    const other = others.get(onset)
    if (other?.length !== chord.length) continue
    for (const [index, event] of chord.entries()) {
      const counterpart = other[index]
      if (!event.note.sounding || !counterpart?.note.sounding) continue
      const away = difference(counterpart.note.sounding.midi, event.note.sounding.midi)
      const semitones = difference(away, promised(event) ?? ZERO)
      const key = formatFraction(semitones)
      const seen = offsets.get(key) ?? {semitones, notes: 0}
      seen.notes++
      if (offsets.has(key) || offsets.size < KINDS) offsets.set(key, seen)
    }
  }
}

/** The interval that nine notes in ten of a part's `notes` are off by, in semitones, if there is one. */
export function constantInterval(offsets: Offsets, notes: number): Fraction | undefined {
  const kinds = [...offsets.values()]
  const total = kinds.reduce((sum, kind) => sum + kind.notes, 0)
  const most = kinds.find((kind) => kind.notes >= 0.9 * total)
  if (!most || most.semitones.numerator === 0) return undefined
  return most.notes >= 4 && most.notes >= 0.7 * notes ? most.semitones : undefined
}

/** The played, timed notes of each onset, from low to high. */
function chordsOf(attacks: readonly Event[]): ReadonlyMap<string, readonly Event[]> {
  const chords = new Map<string, Event[]>()
  for (const event of attacks) {
    const {cue, grace, sounding, onset} = event.note
    if (cue || grace !== undefined || !sounding) continue
    const key = formatFraction(onset)
    const chord = chords.get(key)
    if (chord) chord.push(event)
    else chords.set(key, [event])
  }
  for (const chord of chords.values()) chord.sort((a, b) => height(a) - height(b))
  return chords
}

function height({note}: Event): number {
  return toNumber((note.sounding ?? note.written).midi)
}
