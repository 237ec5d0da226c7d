import fc from 'fast-check'
import {expect, test} from 'vitest'
import {add, negate, parseInterval, UNISON} from '../../lib/pitch/interval.ts'
import {
  formatPitch,
  intervalBetween,
  isStep,
  midiOf,
  naturalAt,
  parsePitch,
  samePitch,
  stepsAbove,
  STEPS,
  transpose,
} from '../../lib/pitch/pitch.ts'
import type {Pitch} from '../../lib/pitch/pitch.ts'

const anyInterval = fc.record({
  diatonic: fc.integer({min: -30, max: 30}),
  chromatic: fc.integer({min: -50, max: 50}),
})
const plainPitch = fc.record({
  step: fc.constantFrom(...STEPS),
  alter: fc.integer({min: -4, max: 4}),
  octave: fc.integer({min: -1, max: 9}),
})
/** Alterations to the thousandth of a semitone: finer than any notation of microtones. */
const microtone = fc.record({
  step: fc.constantFrom(...STEPS),
  alter: fc.integer({min: -3000, max: 3000}).map((thousandths) => thousandths / 1000),
  octave: fc.integer({min: 0, max: 9}),
})

function pitch(text: string): Pitch {
  const read = parsePitch(text)
  if (!read) throw new Error(`no pitch: ${text}`)
  return read
}

function moved(text: string, interval: string): string {
  return formatPitch(transpose(pitch(text), parseInterval(interval) ?? UNISON))
}

test.each([
  'Bb4 up M2 = C5',
  'C4 up M2 = D4',
  'E4 up M2 = F#4',
  'B3 up m2 = C4',
  'B3 up A1 = B#3',
  'C4 down m2 = B3',
  'C4 down A1 = Cb4',
  'C4 down M9 = Bb2',
  'F#5 down M9 = E4',
  'C4 down P5 = F3',
  'C3 up P4 = F3',
  'Fb4 up M3 = Ab4',
  'E#4 up M3 = G##4',
  'Cb4 down m3 = Ab3',
  'G##4 up A4 = C###5',
  'Gb4 up d2 = Abbb4',
  'C#4 up d2 = Db4',
  'Db4 down d2 = C#4',
  'Ebb4 down M16 = Dbb2',
  'C4 up P15 = C6',
  'C(+0.5)4 up M3 = E(+0.5)4',
  'E(-0.5)4 up m2 = F(-0.5)4',
  'B(+0.33)3 up m3 = D(+0.33)4',
  'A0 down P8 = A-1',
])('%s', (line) => {
  const [from = '', direction, interval = '', , to] = line.split(' ')
  expect(moved(from, direction === 'down' ? `-${interval}` : interval)).toBe(to)
})

test.each([
  ['C4', 60],
  ['A4', 69],
  ['B3', 59],
  ['Cb4', 59],
  ['B#3', 60],
  ['F##4', 67],
  ['C-1', 0],
  ['G9', 127],
  ['C(+0.5)4', 60.5],
  ['D(-1.5)4', 60.5],
])('%s has the key number %d', (text, midi) => {
  expect(midiOf(pitch(text))).toBe(midi)
})

test.each([
  ['C4', 'C5', '+7 steps, 12 semitones'],
  ['C5', 'Bb3', '-8 steps, -14 semitones'],
  ['F4', 'B4', '3 steps, 6 semitones'],
  ['F4', 'Cb5', '4 steps, 6 semitones'],
  ['B#3', 'C4', '1 steps, 0 semitones'],
  ['C(+0.1)4', 'E(+0.3)4', '2 steps, 4.2 semitones'],
])('from %s to %s', (from, to, expected) => {
  const {diatonic, chromatic} = intervalBetween(pitch(from), pitch(to))
  expect(`${diatonic} steps, ${chromatic} semitones`).toBe(expected.replace('+', ''))
})

test.each([
  ['c4', 'C4'],
  [' Bb3 ', 'Bb3'],
  ['bb3', 'Bb3'],
  ['B♭3', 'Bb3'],
  ['F♯4', 'F#4'],
  ['Fx4', 'F##4'],
  ['E♭♭4', 'Ebb4'],
  ['G♮5', 'G5'],
  ['C(0.5)4', 'C(+0.5)4'],
  ['C(-0.25)4', 'C(-0.25)4'],
  ['C(-1)4', 'Cb4'],
  ['C(+5)4', 'C(+5)4'],
  ['A-1', 'A-1'],
])('%s is read as %s', (text, expected) => {
  expect(formatPitch(pitch(text))).toBe(expected)
})

test.each(['', 'H4', 'C', '4', 'Cb', 'C#b4', 'Cbbbbb4', 'C(.)4', 'C 4', 'C4 D4', 'C123', 'Cxx4'])(
  '%j is no pitch',
  (text) => expect(parsePitch(text)).toBeUndefined(),
)

test('an alteration of minus zero is an alteration of zero', () => {
  expect(pitch('C(-0)4')).toEqual({step: 'C', alter: 0, octave: 4})
  expect(transpose({step: 'C', alter: -0.3, octave: 4}, {diatonic: 0, chromatic: 0.3}).alter).toBe(
    0,
  )
})

test('steps are the seven letters', () => {
  expect([...'ABCDEFG'].every(isStep)).toBe(true)
  expect(['H', 'c', '', 'toString'].some(isStep)).toBe(false)
})

test('there and back is the same pitch, microtones included', () => {
  fc.assert(
    fc.property(fc.oneof(plainPitch, microtone), anyInterval, (from, interval) => {
      expect(transpose(transpose(from, interval), negate(interval))).toEqual(from)
    }),
  )
})

test('moving twice is moving by the sum', () => {
  fc.assert(
    fc.property(microtone, anyInterval, anyInterval, (from, a, b) => {
      expect(transpose(transpose(from, a), b)).toEqual(transpose(from, add(a, b)))
    }),
  )
})

test('a moved pitch is higher by the steps and semitones of the interval', () => {
  fc.assert(
    fc.property(plainPitch, anyInterval, (from, interval) => {
      const to = transpose(from, interval)
      expect(stepsAbove(to) - stepsAbove(from)).toBe(interval.diatonic)
      expect(midiOf(to) - midiOf(from)).toBe(interval.chromatic)
    }),
  )
})

test('the interval between two pitches leads from one to the other', () => {
  fc.assert(
    fc.property(microtone, microtone, (from, to) => {
      expect(samePitch(transpose(from, intervalBetween(from, to)), to)).toBe(true)
    }),
  )
})

test('what is formatted is read back', () => {
  const far = fc.record({
    step: fc.constantFrom(...STEPS),
    alter: fc.integer({min: -9, max: 9}),
    octave: fc.integer({min: -9, max: 20}),
  })
  fc.assert(
    fc.property(fc.oneof(plainPitch, microtone, far), (value) => {
      expect(parsePitch(formatPitch(value))).toEqual(value)
    }),
  )
})

test('steps above C0 name one natural each', () => {
  fc.assert(
    fc.property(fc.integer({min: -14, max: 80}), (steps) => {
      expect(stepsAbove(naturalAt(steps))).toBe(steps)
      expect(naturalAt(steps).alter).toBe(0)
    }),
  )
})
