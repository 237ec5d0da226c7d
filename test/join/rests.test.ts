import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {restsBetween} from '../../lib/join/rests.ts'

const named = (from: number, to: number, beats: number, beatType: number) =>
  restsBetween(from, to, {beats, beatType})?.map(
    ({type, dotted}) => `${dotted ? 'dotted ' : ''}${type}`,
  )

describe('rests that fill a gap', () => {
  // Common practice: a rest begins where a note of its value would, and hides no beat.
  it.each([
    ['a half measure of 4/4', 0, 2, 4, 4, ['half']],
    ['what follows an eighth', 0.5, 4, 4, 4, ['eighth', 'quarter', 'half']],
    ['the middle of 4/4', 1, 3, 4, 4, ['quarter', 'quarter']],
    ['two beats of 3/4', 1, 3, 3, 4, ['quarter', 'quarter']],
    ['the first two beats of 3/4', 0, 2, 3, 4, ['quarter', 'quarter']],
    ['a beat of 6/8', 1.5, 3, 6, 8, ['dotted quarter']],
    ['the end of a beat of 6/8', 0.5, 1.5, 6, 8, ['eighth', 'eighth']],
    ['the beginning of a beat of 6/8', 1.5, 2.5, 6, 8, ['quarter']],
    ['half of 12/8', 3, 6, 12, 8, ['dotted half']],
    ['a beat of 3/2', 2, 4, 3, 2, ['half']],
    ['nothing', 1, 1, 4, 4, []],
  ] as const)('fill %s', (_, from, to, beats, beatType, expected) => {
    expect(named(from, to, beats, beatType)).toEqual(expected)
  })

  it('are none inside a tuplet', () => {
    expect(restsBetween(1 / 3, 1, {beats: 4, beatType: 4})).toBeUndefined()
    expect(restsBetween(0, 2 / 3, {beats: 4, beatType: 4})).toBeUndefined()
  })

  it('add up, and begin where their value does', () => {
    const meter = fc.constantFrom(
      {beats: 4, beatType: 4},
      {beats: 3, beatType: 4},
      {beats: 2, beatType: 2},
      {beats: 6, beatType: 8},
      {beats: 9, beatType: 8},
      {beats: 5, beatType: 4},
    )
    const place = fc.integer({min: 0, max: 64})
    fc.assert(
      fc.property(meter, place, place, ({beats, beatType}, a, b) => {
        const [from, to] = [Math.min(a, b) / 16, Math.max(a, b) / 16]
        const rests = restsBetween(from, to, {beats, beatType})
        expect(rests).toBeDefined()
        let at = from
        for (const {duration, dotted} of rests ?? []) {
          // A quarter may begin a beat of three eighths; everything else begins at a multiple of itself.
          const beat = beatType === 8 && !dotted && duration === 1 ? 1.5 : duration
          expect(at % beat).toBe(0)
          at += duration
        }
        expect(at).toBe(to)
      }),
    )
  })
})
