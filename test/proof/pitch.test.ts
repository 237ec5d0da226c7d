import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {fraction, parseDecimal, toNumber, ZERO} from '../../lib/proof/fraction.ts'
import {exactPitch, formatExactPitch, shiftPitch} from '../../lib/proof/pitch.ts'
import type {ExactPitch} from '../../lib/proof/pitch.ts'
import {midiOf, transpose} from '../../lib/pitch/pitch.ts'
import type {Step} from '../../lib/pitch/pitch.ts'

function pitch(letter: string, alter: string, octave: number): ExactPitch {
  const found = exactPitch(letter, parseDecimal(alter) ?? ZERO, octave)
  if (!found) throw new Error(`no pitch: ${letter}`)
  return found
}

describe('exact pitches', () => {
  test.each([
    ['C', '0', 4, 'C4', 60],
    ['B', '-1', 3, 'Bb3', 58],
    ['F', '2', 4, 'F##4', 67],
    ['B', '1', 3, 'B#3', 60],
    ['C', '-2', 0, 'Cbb0', 10],
    ['C', '0', -1, 'C-1', 0],
    ['C', '0.5', 4, 'C(+0.5)4', 60.5],
    ['D', '-0.33', 5, 'D(-0.33)5', 73.67],
    ['D', '7', 5, 'D(+7)5', 81],
  ])('%s %s %i is %s, MIDI %d', (letter, alter, octave, text, midi) => {
    const found = pitch(letter, alter, octave)
    expect(formatExactPitch(found)).toBe(text)
    expect(toNumber(found.midi)).toBe(midi)
  })

  test.each(['', 'H', 'c', 'CD'])('%j is no letter', (letter) => {
    expect(exactPitch(letter, ZERO, 4)).toBeUndefined()
  })

  test('steps that are octaves away from their semitones are set right', () => {
    const down = {diatonic: -1, chromatic: fraction(-26)}
    expect(formatExactPitch(shiftPitch(pitch('D', '0', 6), down))).toBe('C4')
  })

  // Written twice on purpose, the two must agree: an error would have to be made twice, in different words.
  test('the rewriter’s arithmetic comes to the same', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Step[]>('C', 'D', 'E', 'F', 'G', 'A', 'B'),
        fc.integer({min: -2, max: 2}),
        fc.integer({min: 0, max: 8}),
        fc.integer({min: -21, max: 21}),
        fc.integer({min: -2, max: 2}),
        (step, alter, octave, diatonic, off) => {
          const chromatic = Math.round((diatonic * 12) / 7) + off
          const theirs = transpose({step, alter, octave}, {diatonic, chromatic})
          fc.pre(Math.abs(theirs.alter) < 6)
          const ours = shiftPitch(pitch(step, String(alter), octave), {
            diatonic,
            chromatic: fraction(chromatic),
          })
          expect(ours).toEqual(pitch(theirs.step, String(theirs.alter), theirs.octave))
          expect(toNumber(ours.midi)).toBe(midiOf(theirs))
        },
      ),
    )
  })
})
