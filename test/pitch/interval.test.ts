import fc from 'fast-check'
import {expect, test} from 'vitest'
import {
  add,
  describeInterval,
  DIMINISHED_SECOND,
  fifthsOf,
  formatInterval,
  negate,
  parseInterval,
  sameInterval,
  UNISON,
  usualSteps,
} from '../../lib/pitch/interval.ts'
import type {Interval} from '../../lib/pitch/interval.ts'

const anyInterval = fc.record({
  diatonic: fc.integer({min: -40, max: 40}),
  chromatic: fc.integer({min: -70, max: 70}),
})

function interval(text: string): Interval {
  const read = parseInterval(text)
  if (!read) throw new Error(`no interval: ${text}`)
  return read
}

test.each([
  // name, steps, semitones, key moves by fifths, in words
  ['P1', 0, 0, 0, 'at the same pitch'],
  ['+A1', 0, 1, 7, 'an augmented unison higher'],
  ['-A1', 0, -1, -7, 'an augmented unison lower'],
  ['+d2', 1, 0, -12, 'a diminished second higher'],
  ['+m2', 1, 1, -5, 'a minor second higher'],
  ['+M2', 1, 2, 2, 'a major second higher'],
  ['-M2', -1, -2, -2, 'a major second lower'],
  ['+A2', 1, 3, 9, 'an augmented second higher'],
  ['+m3', 2, 3, -3, 'a minor third higher'],
  ['-m3', -2, -3, 3, 'a minor third lower'],
  ['+M3', 2, 4, 4, 'a major third higher'],
  ['+P4', 3, 5, -1, 'a perfect fourth higher'],
  ['+A4', 3, 6, 6, 'an augmented fourth higher'],
  ['+d5', 4, 6, -6, 'a diminished fifth higher'],
  ['-P5', -4, -7, -1, 'a perfect fifth lower'],
  ['+m6', 5, 8, -4, 'a minor sixth higher'],
  ['-M6', -5, -9, -3, 'a major sixth lower'],
  ['+d7', 6, 9, -9, 'a diminished seventh higher'],
  ['-m7', -6, -10, 2, 'a minor seventh lower'],
  ['+P8', 7, 12, 0, 'an octave higher'],
  ['-P8', -7, -12, 0, 'an octave lower'],
  ['-M9', -8, -14, -2, 'a major ninth lower'],
  ['-P12', -11, -19, -1, 'a perfect twelfth lower'],
  ['-M13', -12, -21, -3, 'a major thirteenth lower'],
  ['+P15', 14, 24, 0, 'two octaves higher'],
  ['-M16', -15, -26, -2, 'a major sixteenth lower'],
  ['-P19', -18, -31, -1, 'a perfect nineteenth lower'],
  ['-M20', -19, -33, -3, 'a major twentieth lower'],
  ['-M21', -20, -35, -5, 'a major twenty-first lower'],
  ['-P22', -21, -36, 0, 'three octaves lower'],
  ['-M23', -22, -38, -2, 'a major twenty-third lower'],
] as const)(
  '%s is %d steps, %d semitones, %d fifths: %s',
  (name, steps, semitones, fifths, words) => {
    const read = interval(name)
    expect(read).toEqual({diatonic: steps, chromatic: semitones})
    expect(formatInterval(read)).toBe(name)
    expect(fifthsOf(read)).toBe(fifths)
    expect(describeInterval(read)).toBe(words)
  },
)

test.each([
  '',
  '2',
  'M',
  'P2',
  'P3',
  'M1',
  'm4',
  'M5',
  'M8',
  'P0',
  'AAAA4',
  'Q5',
  '--M2',
  'M2 up',
  'M123',
])('%j is no interval', (text) => expect(parseInterval(text)).toBeUndefined())

test('an interval without a name is given in steps and semitones', () => {
  expect(formatInterval({diatonic: 2, chromatic: 9})).toBe('+2 steps +9 semitones')
  expect(formatInterval({diatonic: -1, chromatic: -1.5})).toBe('-1 steps -1.5 semitones')
  expect(describeInterval({diatonic: 1, chromatic: 1.5})).toBe('+1 steps +1.5 semitones higher')
})

test('the usual steps of semitones are those of named transpositions', () => {
  const names = 'P1 m2 M2 m3 M3 P4 A4 P5 m6 M6 m7 M7 P8 m9 M9 m10 M10 P11 A11 P12 m13 M13'
  for (const name of names.split(' ')) {
    const {diatonic, chromatic} = interval(name)
    expect(usualSteps(chromatic), name).toBe(diatonic)
    expect(usualSteps(0 - chromatic), `-${name}`).toBe(0 - diatonic)
  }
  expect(usualSteps(-26)).toBe(-15)
})

test('the diminished second changes the spelling and not the sound', () => {
  expect(sameInterval(DIMINISHED_SECOND, interval('d2'))).toBe(true)
  expect(fifthsOf(DIMINISHED_SECOND)).toBe(-12)
})

test('composing with the inversion is the unison', () => {
  fc.assert(
    fc.property(anyInterval, (a) => {
      expect(add(a, negate(a))).toEqual(UNISON)
      expect(negate(negate(a))).toEqual(a)
      expect(Object.is(negate(UNISON).diatonic, -0)).toBe(false)
    }),
  )
})

test('keys move by the sum of the fifths', () => {
  fc.assert(
    fc.property(anyInterval, anyInterval, (a, b) => {
      expect(fifthsOf(add(a, b))).toBe(fifthsOf(a) + fifthsOf(b))
    }),
  )
})

test('a name is read back as the interval it names', () => {
  let named = 0
  fc.assert(
    fc.property(
      fc.integer({min: -28, max: 28}),
      fc.integer({min: -3, max: 3}),
      (diatonic, deviation) => {
        const chromatic = Math.round((diatonic * 12) / 7) + deviation
        const name = formatInterval({diatonic, chromatic})
        if (name.includes('steps')) return
        named++
        expect(parseInterval(name), name).toEqual({diatonic, chromatic})
      },
    ),
  )
  expect(named).toBeGreaterThan(0)
})
