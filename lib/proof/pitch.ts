import {difference, fraction, formatDecimal, order, sum, toNumber} from './fraction.ts'
import type {Fraction} from './fraction.ts'

/*
 * Pitch arithmetic of the proof's own. It repeats what `lib/pitch` can do, on purpose: an error there
 * must not be able to hide itself here.
 */

const LETTERS = 'CDEFGAB'
const NATURALS = [0, 2, 4, 5, 7, 9, 11] as const

/** A spelled pitch, exact. `steps` counts letters from C0 (middle C is 28); `midi` is in semitones, middle C 60. */
export interface ExactPitch {
  readonly steps: number
  readonly midi: Fraction
}

/** Added to written to get sounding: steps and semitones, octaves included. */
export interface Shift {
  readonly diatonic: number
  readonly chromatic: Fraction
}

/** The pitch that letter, alteration in semitones and octave name. Undefined when the letter is none. */
export function exactPitch(
  letter: string,
  alter: Fraction,
  octave: number,
): ExactPitch | undefined {
  const index = letter.length === 1 ? LETTERS.indexOf(letter) : -1
  if (index < 0) return undefined
  const steps = index + 7 * octave
  return {steps, midi: sum(naturalMidi(steps), alter)}
}

/**
 * What sounds when `written` is read. Where a file's steps and semitones disagree by octaves (-1 and -14),
 * the semitones are believed and the letter is taken in the octave next to them.
 */
export function shiftPitch(written: ExactPitch, shift: Shift): ExactPitch {
  const midi = sum(written.midi, shift.chromatic)
  const steps = written.steps + shift.diatonic
  const astray = toNumber(difference(midi, naturalMidi(steps)))
  return {steps: steps + 7 * Math.round(astray / 12), midi}
}

/** The steps that go with so many semitones when a file leaves them out, as names of transpositions use them. */
export function usualSteps(chromatic: Fraction): number {
  const size = Math.round(Math.abs(toNumber(chromatic)))
  const steps = [0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6][size % 12] ?? 0
  const total = steps + 7 * Math.floor(size / 12)
  return order(chromatic, fraction(0)) < 0 ? 0 - total : total
}

/** `Bb3`, `F##4`; microtones as `C(+0.5)4`. */
export function formatExactPitch(pitch: ExactPitch): string {
  const octave = Math.floor(pitch.steps / 7)
  return `${LETTERS[pitch.steps - 7 * octave]}${formatAlter(difference(pitch.midi, naturalMidi(pitch.steps)))}${octave}`
}

function formatAlter(alter: Fraction): string {
  const size = toNumber(alter)
  if (alter.denominator !== 1 || Math.abs(size) > 4)
    return `(${size > 0 ? '+' : ''}${formatDecimal(alter)})`
  return size < 0 ? 'b'.repeat(0 - size) : '#'.repeat(size)
}

function naturalMidi(steps: number): Fraction {
  const octave = Math.floor(steps / 7)
  return fraction((NATURALS[steps - 7 * octave] ?? 0) + 12 * (octave + 1))
}
