import fc from 'fast-check'
import {expect, test} from 'vitest'
import {fifthsOf, negate} from '../../lib/pitch/interval.ts'
import {
  alterInKey,
  describeKey,
  isTraditional,
  majorTonic,
  sameKey,
  signsInOrder,
  transposeKey,
} from '../../lib/pitch/key.ts'
import type {Key} from '../../lib/pitch/key.ts'
import {parsePitch, STEPS, transpose} from '../../lib/pitch/pitch.ts'

const anyInterval = fc.record({
  diatonic: fc.integer({min: -15, max: 15}),
  chromatic: fc.integer({min: -26, max: 26}),
})

/**
 * Written out by hand from the circle of fifths: sharps enter in the order F C G D A E B and flats in the order
 * B E A D G C F (K. W. Gehrkens, Music Notation and Terminology, 1914, on the keys and their signatures).
 */
const SIGNATURES: readonly (readonly [fifths: number, tonic: string, signs: string])[] = [
  [-7, 'Cb', 'Bb Eb Ab Db Gb Cb Fb'],
  [-6, 'Gb', 'Bb Eb Ab Db Gb Cb'],
  [-5, 'Db', 'Bb Eb Ab Db Gb'],
  [-4, 'Ab', 'Bb Eb Ab Db'],
  [-3, 'Eb', 'Bb Eb Ab'],
  [-2, 'Bb', 'Bb Eb'],
  [-1, 'F', 'Bb'],
  [0, 'C', ''],
  [1, 'G', 'F#'],
  [2, 'D', 'F# C#'],
  [3, 'A', 'F# C# G#'],
  [4, 'E', 'F# C# G# D#'],
  [5, 'B', 'F# C# G# D# A#'],
  [6, 'F#', 'F# C# G# D# A# E#'],
  [7, 'C#', 'F# C# G# D# A# E# B#'],
]

test.each(SIGNATURES)('%d fifths: %s major has the signs %s', (fifths, tonic, signs) => {
  expect(majorTonic(fifths)).toBe(tonic)
  for (const step of STEPS) {
    const expected = signs.includes(`${step}#`) ? 1 : signs.includes(`${step}b`) ? -1 : 0
    for (const octave of [0, 4, 9]) expect(alterInKey({fifths}, step, octave), step).toBe(expected)
  }
})

test('signatures beyond seven signs alter twice', () => {
  expect(alterInKey({fifths: 8}, 'F', 4)).toBe(2)
  expect(alterInKey({fifths: 8}, 'C', 4)).toBe(1)
  expect(alterInKey({fifths: -9}, 'E', 4)).toBe(-2)
  expect(majorTonic(8)).toBe('G#')
  expect(majorTonic(-8)).toBe('Fb')
})

test('without a signature nothing is altered', () => {
  expect(STEPS.map((step) => alterInKey(undefined, step, 4))).toEqual([0, 0, 0, 0, 0, 0, 0])
})

test('a sign bound to an octave counts there, before one for all octaves', () => {
  const key: Key = {
    alters: [
      {step: 'F', alter: 1},
      {step: 'F', alter: 0.5, octave: 5},
      {step: 'E', alter: -1, octave: 4},
    ],
  }
  expect(alterInKey(key, 'F', 4)).toBe(1)
  expect(alterInKey(key, 'F', 5)).toBe(0.5)
  expect(alterInKey(key, 'E', 4)).toBe(-1)
  expect(alterInKey(key, 'E', 5)).toBe(0)
})

test.each([
  // a concert key and what players write for it: teoria.com, "Transposing instruments"; renumbered as fifths
  ['B flat clarinet: concert B flat (-2) is written C', -2, {diatonic: 1, chromatic: 2}, 0],
  ['E flat saxophone: concert E flat (-3) is written C', -3, {diatonic: 5, chromatic: 9}, 0],
  ['horn in F: concert D (2) is written A', 2, {diatonic: 4, chromatic: 7}, 3],
  ['clarinet in A: concert A (3) is written C', 3, {diatonic: 2, chromatic: 3}, 0],
  ['piccolo in D flat: concert B flat (-2) is written A', -2, {diatonic: -8, chromatic: -13}, 3],
  ['octaves leave the key alone', 4, {diatonic: 14, chromatic: 24}, 4],
] as const)('%s', (_, concert, interval, written) => {
  expect(transposeKey({fifths: concert}, interval)).toEqual({fifths: written})
})

test('sign by sign, a signature moves with its notes', () => {
  const key: Key = {
    alters: [
      {step: 'B', alter: -1},
      {step: 'F', alter: 1, octave: 5},
    ],
  }
  expect(transposeKey(key, {diatonic: 1, chromatic: 2})).toEqual({
    alters: [
      {step: 'C', alter: 0},
      {step: 'G', alter: 1, octave: 5},
    ],
  })
})

test('there and back is the same signature', () => {
  fc.assert(
    fc.property(fc.integer({min: -7, max: 7}), anyInterval, (fifths, interval) => {
      const there = transposeKey({fifths}, interval)
      expect(there).toEqual({fifths: fifths + fifthsOf(interval)})
      expect(transposeKey(there, negate(interval))).toEqual({fifths})
    }),
  )
})

test('a note of the key stays a note of the key when both move', () => {
  fc.assert(
    fc.property(
      fc.integer({min: -7, max: 7}),
      fc.constantFrom(...STEPS),
      anyInterval,
      (fifths, step, interval) => {
        const note = {step, alter: alterInKey({fifths}, step, 4), octave: 4}
        const moved = transpose(note, interval)
        const key = transposeKey({fifths}, interval)
        expect(alterInKey(key, moved.step, moved.octave)).toBe(moved.alter)
      },
    ),
  )
})

test('the tonic moves with its key', () => {
  fc.assert(
    fc.property(fc.integer({min: -7, max: 7}), anyInterval, (fifths, interval) => {
      const tonic = parsePitch(`${majorTonic(fifths)}4`)
      const key = transposeKey({fifths}, interval)
      if (!tonic || !isTraditional(key) || Math.abs(key.fifths) > 21) return
      const moved = transpose(tonic, interval)
      expect(parsePitch(`${majorTonic(key.fifths)}${moved.octave}`)).toEqual(moved)
    }),
  )
})

test('signatures are the same by what they show', () => {
  const signs: Key = {alters: [{step: 'F', alter: 1}]}
  expect(sameKey({fifths: 1}, {fifths: 1})).toBe(true)
  expect(sameKey({fifths: 1}, {fifths: -1})).toBe(false)
  expect(sameKey({fifths: 1}, signs)).toBe(false)
  expect(sameKey(signs, {alters: [{step: 'F', alter: 1}]})).toBe(true)
  expect(sameKey(signs, {alters: [{step: 'F', alter: 1, octave: 5}]})).toBe(false)
  expect(sameKey(signs, {alters: []})).toBe(false)
})

test.each([
  [{fifths: 0}, 'no sharps or flats'],
  [{fifths: -1}, '1 flat'],
  [{fifths: -2}, '2 flats'],
  [{fifths: 3}, '3 sharps'],
  [{alters: [{step: 'F', alter: 1}]}, '1 sign (F)'],
  [
    {
      alters: [
        {step: 'B', alter: -1},
        {step: 'C', alter: 1},
      ],
    },
    '2 signs (B C)',
  ],
] as const)('%j reads %s', (key, words) => {
  expect(describeKey(key)).toBe(words)
})

test('signs are ordered from low to high', () => {
  const key = {
    alters: [
      {step: 'B', alter: -1, octave: 4},
      {step: 'C', alter: 1, octave: 5},
      {step: 'E', alter: -1, octave: 4},
    ],
  } as const
  expect(signsInOrder(key).map(({step}) => step)).toEqual(['E', 'B', 'C'])
})
