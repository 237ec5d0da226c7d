import fc from 'fast-check'
import {expect, test} from 'vitest'
import {midiOf, parsePitch, STEPS} from '../../lib/pitch/pitch.ts'
import type {Pitch} from '../../lib/pitch/pitch.ts'
import {formatRange, outside, widen} from '../../lib/staff/range.ts'

function pitch(text: string): Pitch {
  const read = parsePitch(text)
  if (!read) throw new Error(`no pitch: ${text}`)
  return read
}

const anyPitch = fc.record({
  step: fc.constantFrom(...STEPS),
  alter: fc.integer({min: -2, max: 2}),
  octave: fc.integer({min: 0, max: 8}),
})
const horn = {low: pitch('B1'), high: pitch('F5')}

test.each([
  ['B1', 0],
  ['Cb2', 0],
  ['C4', 0],
  ['F5', 0],
  ['E#5', 0],
  ['F#5', 1],
  ['C6', 7],
  ['Bb1', -1],
  ['B0', -12],
  ['F(+0.5)5', 0.5],
])('%s lies %d semitones outside of B1–F5', (note, semitones) => {
  expect(outside(horn, pitch(note))).toBe(semitones)
})

test('a range is written from low to high', () => {
  expect(formatRange(horn)).toBe('B1–F5')
})

test('a range widened by notes holds them all, and its ends are among them', () => {
  fc.assert(
    fc.property(fc.array(anyPitch, {minLength: 1}), (notes) => {
      let range: ReturnType<typeof widen> | undefined
      for (const note of notes) range = widen(range, note)
      if (!range) throw new Error('no range')
      const {low, high} = range
      expect(notes.every((note) => outside({low, high}, note) === 0)).toBe(true)
      expect(notes).toContain(low)
      expect(notes).toContain(high)
      expect(midiOf(low)).toBeLessThanOrEqual(midiOf(high))
    }),
  )
})
