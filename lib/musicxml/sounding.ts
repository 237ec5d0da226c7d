import {formatPitch, midiOf, transpose} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import type {Measure, Note} from './measure.ts'
import {greatestCommonDivisor} from './ticks.ts'

/**
 * One note as it sounds. Onset (from the start of the measure) and duration are exact fractions of a quarter note as
 * text, `"7/2"`; pitches are spelled (`"Bb3"`, `"F##4"`, `"C(+0.5)4"`); `midi` is 60 for middle C and may be fractional.
 */
export interface SoundingNote {
  readonly part: string
  readonly staff: number
  readonly voice: string
  /** The number of the measure as printed. */
  readonly measure: string
  readonly onset: string
  readonly duration: string
  readonly pitch: string
  readonly midi: number
  readonly written: string
  /** An ornament without a duration of its own: `duration` is `"0"`. */
  readonly grace?: true
  /** Printed for orientation: not to be played. */
  readonly cue?: true
  /** Tied from the note before: no new attack. */
  readonly tied?: true
}

const OCTAVE_BELOW = {diatonic: -7, chromatic: -12}
const OCTAVE_ABOVE = {diatonic: 7, chromatic: 12}

/** The pitched notes of a measure as they sound, in document order; under an octave doubling each note comes twice. */
export function soundingNotes(measure: Measure): SoundingNote[] {
  return measure.notes.flatMap((note) => {
    if (!note.written || !note.sounding) return []
    const {double} = note.state.transposition
    const own = toSounding(measure, note, note.written, note.sounding)
    if (!double) return [own]
    const other = transpose(note.sounding, double === 'above' ? OCTAVE_ABOVE : OCTAVE_BELOW)
    return [own, toSounding(measure, note, note.written, other)]
  })
}

function toSounding(measure: Measure, note: Note, written: Pitch, sounding: Pitch): SoundingNote {
  return {
    part: measure.part,
    staff: note.staff,
    voice: note.voice,
    measure: measure.number,
    onset: formatQuarters(note.onset, measure.ticks),
    duration: formatQuarters(note.duration, measure.ticks),
    pitch: formatPitch(sounding),
    midi: midiOf(sounding),
    written: formatPitch(written),
    ...(note.grace && {grace: true}),
    ...(note.cue && {cue: true}),
    ...(note.tiedFrom && {tied: true}),
  }
}

/** Ticks as a fraction of a quarter in lowest terms: `"3/2"`, `"4"`. */
export function formatQuarters(ticks: number, perQuarter: number): string {
  const divisor = greatestCommonDivisor(Math.abs(ticks), perQuarter) || 1
  const denominator = perQuarter / divisor
  return denominator === 1 ? String(ticks / divisor) : `${ticks / divisor}/${denominator}`
}
