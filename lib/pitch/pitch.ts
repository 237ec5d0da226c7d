import type {Interval} from './interval.ts'

export type Step = 'C' | 'D' | 'E' | 'F' | 'G' | 'A' | 'B'

/** A spelled pitch. `alter` is in semitones and may be fractional; octave 4 begins at middle C. */
export interface Pitch {
  readonly step: Step
  readonly alter: number
  readonly octave: number
}

/** The steps in the order of the octave. */
export const STEPS: readonly Step[] = ['C', 'D', 'E', 'F', 'G', 'A', 'B']

const SEMITONES: Readonly<Record<Step, number>> = {C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11}
const INDEX: Readonly<Record<Step, number>> = {C: 0, D: 1, E: 2, F: 3, G: 4, A: 5, B: 6}

export function isStep(text: string): text is Step {
  return Object.hasOwn(INDEX, text)
}

/** Steps above C0, the alteration left aside: E4 and Eb4 are both 30. */
export function stepsAbove(pitch: Pick<Pitch, 'step' | 'octave'>): number {
  return INDEX[pitch.step] + 7 * pitch.octave
}

/** The unaltered pitch a number of steps above C0. */
export function naturalAt(steps: number): Pitch {
  const octave = Math.floor(steps / 7)
  return {step: STEPS[steps - 7 * octave] ?? 'C', alter: 0, octave}
}

/** The MIDI key number, middle C = 60; fractional for microtones. */
export function midiOf(pitch: Pitch): number {
  return addExactly(pitch.alter, SEMITONES[pitch.step] + 12 * (pitch.octave + 1))
}

export function samePitch(a: Pitch, b: Pitch): boolean {
  return a.step === b.step && a.octave === b.octave && a.alter === b.alter
}

/** Moves a pitch. Exact: moving by an interval and by its negation gives the pitch back, microtones included. */
export function transpose(pitch: Pitch, interval: Interval): Pitch {
  if (interval.diatonic === 0 && interval.chromatic === 0) return pitch
  const steps = stepsAbove(pitch) + interval.diatonic
  const octave = Math.floor(steps / 7)
  const step = STEPS[steps - 7 * octave] ?? 'C'
  const natural = SEMITONES[step] + 12 * octave - (SEMITONES[pitch.step] + 12 * pitch.octave)
  return {step, alter: addExactly(pitch.alter, addExactly(interval.chromatic, 0 - natural)), octave}
}

/** The interval that leads from one pitch to the other. */
export function intervalBetween(from: Pitch, to: Pitch): Interval {
  return {
    diatonic: stepsAbove(to) - stepsAbove(from),
    chromatic: addExactly(midiOf(to), 0 - midiOf(from)),
  }
}

/**
 * Reads `Bb3`, `F##4`, `C(+0.5)4`, also with the signs ♭ ♯ ♮ and x for a double sharp.
 * Undefined when the text is no pitch.
 */
export function parsePitch(text: string): Pitch | undefined {
  const match =
    /^([A-Ga-g])(#{1,4}|b{1,4}|x|♯{1,2}|♭{1,2}|♮|\(([+-]?\d+(?:\.\d+)?)\))?(-?\d{1,2})$/.exec(
      text.trim(),
    )
  if (!match) return undefined
  const [, letter = 'C', sign = '', decimal, octave = '4'] = match
  const step = letter.toUpperCase()
  if (!isStep(step)) return undefined
  return {
    step,
    alter: decimal === undefined ? alterOfSign(sign) : Number(decimal) + 0, // never -0
    octave: Number(octave),
  }
}

/** `Bb3`, `F##4`; microtones as `C(+0.5)4`. */
export function formatPitch(pitch: Pitch): string {
  return `${pitch.step}${formatAlter(pitch.alter)}${pitch.octave}`
}

/** The alteration between letter and octave: `b`, `##`, `(+0.5)`, nothing for a natural; beyond four signs `(+5)`. */
export function formatAlter(alter: number): string {
  if (!Number.isInteger(alter) || Math.abs(alter) > 4) return `(${alter > 0 ? '+' : ''}${alter})`
  return alter < 0 ? 'b'.repeat(0 - alter) : '#'.repeat(alter)
}

function alterOfSign(sign: string): number {
  if (sign === '' || sign === '♮') return 0
  if (sign === 'x') return 2
  return sign.startsWith('b') || sign.startsWith('♭') ? 0 - sign.length : sign.length
}

/** Adds without the last-bit noise of binary fractions: as many decimals as the longer summand has. */
function addExactly(a: number, b: number): number {
  const sum = a + b
  if (Number.isInteger(a) && Number.isInteger(b)) return sum
  return Number(sum.toFixed(Math.max(decimalsOf(a), decimalsOf(b)))) + 0 // never -0
}

function decimalsOf(value: number): number {
  if (Number.isInteger(value)) return 0
  const [mantissa = '', exponent] = String(value).split('e')
  const own = mantissa.split('.')[1]?.length ?? 0
  return Math.min(20, Math.max(0, own - Number(exponent ?? 0)))
}
