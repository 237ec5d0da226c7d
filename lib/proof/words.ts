import {
  difference,
  formatFraction,
  fraction,
  order,
  quotient,
  sum,
  toNumber,
  ZERO,
} from './fraction.ts'
import type {Fraction} from './fraction.ts'

const INTERVALS = [
  'nothing',
  'a semitone',
  'a whole tone',
  'a minor third',
  'a major third',
  'a fourth',
  'a tritone',
  'a fifth',
  'a minor sixth',
  'a major sixth',
  'a minor seventh',
  'a major seventh',
  'an octave',
  'a minor ninth',
  'a major ninth',
] as const

const PARTS: Readonly<Record<string, string>> = {
  '1/4': '¼',
  '1/3': '⅓',
  '1/2': '½',
  '2/3': '⅔',
  '3/4': '¾',
}

const LENGTHS: Readonly<Record<string, string>> = {
  '8': 'a breve',
  '6': 'a dotted whole note',
  '4': 'a whole note',
  '3': 'a dotted half',
  '2': 'a half',
  '3/2': 'a dotted quarter',
  '1': 'a quarter',
  '3/4': 'a dotted eighth',
  '1/2': 'an eighth',
  '1/3': 'a triplet eighth',
  '1/4': 'a sixteenth',
  '1/6': 'a triplet sixteenth',
  '1/8': 'a thirty-second',
}

/**
 * The beat at an onset, in the unit of the time signature: the third eighth of 6/8 is beat 3. Between beats
 * `2½` or, where there is no such sign, `2+3/5`.
 */
export function beatAt(onset: Fraction, unit: Fraction): string {
  const beat = sum(quotient(onset, unit), fraction(1))
  const whole = Math.floor(toNumber(beat))
  const rest = difference(beat, fraction(whole))
  if (rest.numerator === 0) return String(whole)
  const text = formatFraction(rest)
  return `${whole}${PARTS[text] ?? `+${text}`}`
}

/** The size of an interval in semitones, in words: `a major ninth`, `two octaves and a fifth`, `1/2 semitones`. */
export function intervalWords(semitones: Fraction): string {
  const size = Math.abs(toNumber(semitones))
  if (size === 0.5) return 'a quarter tone'
  if (!Number.isInteger(size)) return `${size} semitones`
  const near = INTERVALS[size]
  if (near) return near
  const octaves = Math.floor(size / 12)
  const rest = size % 12
  const words =
    {1: 'an octave', 2: 'two octaves', 3: 'three octaves', 4: 'four octaves'}[octaves] ??
    `${octaves} octaves`
  return rest === 0 ? words : `${words} and ${INTERVALS[rest]}`
}

/** `an octave high`, `a semitone low`. */
export function astrayWords(semitones: Fraction): string {
  return `${intervalWords(semitones)} ${order(semitones, ZERO) < 0 ? 'low' : 'high'}`
}

/** A length of time in quarters, without its sign: `a dotted quarter`, `5/7 of a quarter`. */
export function lengthWords(quarters: Fraction): string {
  const size = order(quarters, ZERO) < 0 ? difference(ZERO, quarters) : quarters
  const text = formatFraction(size)
  return LENGTHS[text] ?? (size.denominator === 1 ? `${text} quarters` : `${text} of a quarter`)
}

/** `1 note`, `2 notes`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`
}
