/**
 * An exact number: quarter notes, semitones. Always in lowest terms with a positive denominator, so that
 * equal numbers are equal field by field.
 */
export interface Fraction {
  readonly numerator: number
  readonly denominator: number
}

export const ZERO: Fraction = {numerator: 0, denominator: 1}

/**
 * The fraction in lowest terms. Both numbers are integers.
 * @throws RangeError when the result has more digits than a number holds exactly.
 */
export function fraction(numerator: number, denominator = 1): Fraction {
  if (denominator === 0) throw new RangeError('a fraction of nothing')
  if (!Number.isSafeInteger(numerator) || !Number.isSafeInteger(denominator))
    throw new RangeError('too many digits to reckon exactly')
  const divisor = greatestCommonDivisor(Math.abs(numerator), Math.abs(denominator))
  const sign = denominator < 0 ? -1 : 1
  // `+ 0` turns -0 into 0, which equality by fields would tell apart under Object.is.
  return {
    numerator: (sign * numerator) / divisor + 0,
    denominator: (sign * denominator) / divisor,
  }
}

export function sum(a: Fraction, b: Fraction): Fraction {
  if (a.denominator === 1 && b.denominator === 1) return fraction(a.numerator + b.numerator)
  const left = a.numerator * b.denominator
  const right = b.numerator * a.denominator
  // Two products that were rounded may have a sum that looks exact.
  const isExact = Number.isSafeInteger(left) && Number.isSafeInteger(right)
  return lowestTerms(isExact ? left + right : NaN, a.denominator * b.denominator, () => [
    BigInt(a.numerator) * BigInt(b.denominator) + BigInt(b.numerator) * BigInt(a.denominator),
    BigInt(a.denominator) * BigInt(b.denominator),
  ])
}

export function difference(a: Fraction, b: Fraction): Fraction {
  return sum(a, {numerator: 0 - b.numerator, denominator: b.denominator})
}

/** @throws RangeError when `b` is zero. */
export function quotient(a: Fraction, b: Fraction): Fraction {
  if (b.numerator === 0) throw new RangeError('a division by nothing')
  return lowestTerms(a.numerator * b.denominator, a.denominator * b.numerator, () => [
    BigInt(a.numerator) * BigInt(b.denominator),
    BigInt(a.denominator) * BigInt(b.numerator),
  ])
}

export function equals(a: Fraction, b: Fraction): boolean {
  return a.numerator === b.numerator && a.denominator === b.denominator
}

/** Negative when `a` is the smaller, positive when it is the greater, else 0. */
export function order(a: Fraction, b: Fraction): number {
  if (a.denominator === b.denominator) return a.numerator - b.numerator
  return difference(a, b).numerator
}

export function toNumber(a: Fraction): number {
  return a.numerator / a.denominator
}

/** `7/2`; a whole number without a stroke. */
export function formatFraction(a: Fraction): string {
  return a.denominator === 1 ? String(a.numerator) : `${a.numerator}/${a.denominator}`
}

/**
 * Reads a decimal as it is written, so that 0.33 is 33/100 and not the nearest binary fraction.
 * Undefined when the text is no decimal number.
 */
export function parseDecimal(text: string): Fraction | undefined {
  const match = /^\s*([+-]?)(\d*)(?:\.(\d*))?\s*$/.exec(text)
  if (!match) return undefined
  const [, sign, whole = '', decimals = ''] = match
  if (whole === '' && decimals === '') return undefined
  const digits = decimals.replace(/0+$/, '')
  const numerator = Number(whole + digits)
  return fraction(sign === '-' ? 0 - numerator : numerator, 10 ** digits.length)
}

/** Reads `7/2`, `3` or a decimal. Undefined when the text is none of them. */
export function parseFraction(text: string): Fraction | undefined {
  const match = /^\s*(-?\d+)\/(\d*[1-9]\d*)\s*$/.exec(text)
  return match ? fraction(Number(match[1]), Number(match[2])) : parseDecimal(text)
}

/** The shortest decimal that names the number: `0.33`. */
export function formatDecimal(a: Fraction): string {
  return String(toNumber(a))
}

/** In lowest terms; where a product would lose digits it is reckoned again with big integers. */
function lowestTerms(
  numerator: number,
  denominator: number,
  exact: () => readonly [bigint, bigint],
): Fraction {
  if (Number.isSafeInteger(numerator) && Number.isSafeInteger(denominator))
    return fraction(numerator, denominator)
  const [top, bottom] = exact()
  let [a, b] = [top, bottom]
  while (b !== 0n) [a, b] = [b, a % b]
  return fraction(Number(top / a), Number(bottom / a))
}

function greatestCommonDivisor(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b]
  return a
}
