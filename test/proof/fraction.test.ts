import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  difference,
  equals,
  formatDecimal,
  formatFraction,
  fraction,
  order,
  parseDecimal,
  parseFraction,
  quotient,
  sum,
  toNumber,
  ZERO,
} from '../../lib/proof/fraction.ts'

const any = fc
  .tuple(fc.integer({min: -1e6, max: 1e6}), fc.integer({min: 1, max: 1e5}))
  .map(([numerator, denominator]) => fraction(numerator, denominator))

describe('fractions', () => {
  test.each([
    ['6/4', '3/2'],
    ['-6/4', '-3/2'],
    ['8/4', '2'],
    ['0/7', '0'],
    ['0.33', '33/100'],
    ['-1.50', '-3/2'],
    ['.5', '1/2'],
    ['+2.', '2'],
    [' 7/2 ', '7/2'],
  ])('%s is %s', (text, lowest) => {
    expect(formatFraction(parseFraction(text) ?? fraction(-99))).toBe(lowest)
  })

  test.each(['', '.', '-', '1,5', '1e3', '1/0', '1/-2', 'x', 'Infinity', '0x10'])(
    '%j is no number',
    (text) => {
      expect(parseFraction(text)).toBeUndefined()
    },
  )

  test('a decimal is what it is written, not the nearest binary fraction', () => {
    const third = parseDecimal('0.33') ?? ZERO
    expect(formatDecimal(sum(sum(third, third), third))).toBe('0.99')
    expect(
      equals(sum(parseDecimal('0.1') ?? ZERO, parseDecimal('0.2') ?? ZERO), fraction(3, 10)),
    ).toBe(true)
  })

  test('sums come apart again, in lowest terms, in order', () => {
    fc.assert(
      fc.property(any, any, (a, b) => {
        expect(difference(sum(a, b), b)).toEqual(a)
        expect(Math.sign(order(a, b))).toBe(Math.sign(toNumber(a) - toNumber(b)) + 0)
        if (b.numerator !== 0)
          expect(quotient(a, b)).toEqual(
            fraction(a.numerator * b.denominator, a.denominator * b.numerator),
          )
      }),
    )
  })

  test('products too large to be exact do not pass for it when their difference is small', () => {
    const [a, b] = [fraction(208609, 69218), fraction(999949, 99997)]
    expect(difference(sum(a, b), b)).toEqual(a)
  })

  test('large terms stay exact as long as the result fits', () => {
    const tiny = fraction(1, 2 ** 40)
    expect(sum(fraction(1, 3 * 2 ** 40), fraction(2, 3 * 2 ** 40))).toEqual(tiny)
    expect(quotient(fraction(2 ** 40, 3), fraction(2 ** 41, 3))).toEqual(fraction(1, 2))
  })

  test('nothing that cannot be reckoned exactly passes for a number', () => {
    expect(() => fraction(2 ** 53)).toThrow(RangeError)
    expect(() => fraction(1, 0)).toThrow(RangeError)
    expect(() => quotient(fraction(1), ZERO)).toThrow(RangeError)
    expect(() => sum(fraction(1, 2 ** 52 - 1), fraction(1, 2 ** 52 - 3))).toThrow(RangeError)
    expect(() => parseDecimal('12345678901234567890')).toThrow(RangeError)
  })
})
