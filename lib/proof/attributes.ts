import {scoreError} from '../diagnostic.ts'
import {child, childText} from './document.ts'
import type {Node} from './document.ts'
import {difference, fraction, order, parseDecimal, sum, toNumber, ZERO} from './fraction.ts'
import type {Fraction} from './fraction.ts'
import {usualSteps} from './pitch.ts'
import type {Shift} from './pitch.ts'

/** A clef as the file writes it; `line` counts from the bottom, `octaveChange` never changes what sounds. */
export interface ClefInForce {
  readonly sign: string
  readonly line: number
  readonly octaveChange: number
}

/** What a staff adds to the written pitch; `doubled` is a second sounding line an octave from the first. */
export interface Sounding {
  readonly shift: Shift
  readonly doubled?: 'above' | 'below'
}

export const AS_WRITTEN: Sounding = {shift: {diatonic: 0, chromatic: ZERO}}

/**
 * Reads a `<transpose>`. Without `<diatonic>` the usual number of steps is taken. In a score at concert pitch only
 * octaves are added, whatever else is declared (MusicXML 4.0, `concert-score`).
 */
export function readSounding(node: Node, concert: boolean): Sounding {
  const chromatic = readDecimal(node, 'chromatic') ?? ZERO
  const octaves = readInteger(node, 'octave-change') ?? 0
  const diatonic = readInteger(node, 'diatonic') ?? usualSteps(chromatic)
  const double = child(node, 'double')
  return {
    shift: {
      diatonic: (concert ? 0 : diatonic) + 7 * octaves,
      chromatic: sum(concert ? ZERO : chromatic, fraction(12 * octaves)),
    },
    ...(double && {doubled: double.attributes['above'] === 'yes' ? 'above' : 'below'}),
  }
}

/** Reads a `<clef>`; a line left out is the usual one. */
export function readClef(node: Node): ClefInForce {
  const sign = childText(node, 'sign') ?? 'G'
  return {
    sign,
    line: readInteger(node, 'line') ?? {G: 2, F: 4, C: 3, TAB: 5}[sign] ?? 3,
    octaveChange: readInteger(node, 'clef-octave-change') ?? 0,
  }
}

/**
 * The time signature's unit, in quarters: a half of one in 6/8, two in 2/2. A signature made of several parts
 * is counted in the unit of the first. Undefined without a signature in figures.
 */
export function readBeatUnit(attributes: Node): Fraction | undefined {
  const time = child(attributes, 'time')
  const beatType = time && childText(time, 'beat-type')
  const value = beatType === undefined ? undefined : parseDecimal(beatType)
  return value && value.numerator > 0 ? fraction(4 * value.denominator, value.numerator) : undefined
}

/** The number of divisions in a quarter. Undefined when the element does not say. */
export function readDivisions(attributes: Node): Fraction | undefined {
  const divisions = readDecimal(attributes, 'divisions')
  if (divisions && order(divisions, ZERO) <= 0)
    throw malformed(attributes, 'there are no divisions to a quarter')
  return divisions
}

/** A child's decimal number, exact. Undefined when there is no such child. */
export function readDecimal(node: Node, name: string): Fraction | undefined {
  const text = childText(node, name)
  if (text === undefined) return undefined
  const value = parseDecimal(text)
  if (!value) throw malformed(node, `<${name}> is no number: ${text}`)
  return value
}

/** A child's whole number. Undefined when there is no such child. */
export function readInteger(node: Node, name: string): number | undefined {
  const value = readDecimal(node, name)
  if (value && !Number.isInteger(toNumber(value)))
    throw malformed(node, `<${name}> is no whole number: ${childText(node, name)}`)
  return value?.numerator
}

export function malformed(node: Node, message: string) {
  return scoreError('proof/malformed', message, {line: node.line})
}

/** A shift with the caller's plain numbers in place of the declared ones. */
export function replaceShift(
  sounding: Sounding,
  interval: {readonly diatonic: number; readonly chromatic: number},
): Sounding {
  const chromatic = parseDecimal(String(interval.chromatic))
  if (!chromatic || !Number.isInteger(interval.diatonic))
    throw new TypeError('a reading is a whole number of steps and a decimal number of semitones')
  return {...sounding, shift: {diatonic: interval.diatonic, chromatic}}
}

/** The second line of a doubled staff. */
export function doubledShift({shift, doubled}: Sounding): Shift {
  const octave = fraction(12)
  return doubled === 'above'
    ? {diatonic: shift.diatonic + 7, chromatic: sum(shift.chromatic, octave)}
    : {diatonic: shift.diatonic - 7, chromatic: difference(shift.chromatic, octave)}
}
