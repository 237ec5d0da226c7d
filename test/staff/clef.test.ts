import fc from 'fast-check'
import {expect, test} from 'vitest'
import {formatPitch, parsePitch, STEPS} from '../../lib/pitch/pitch.ts'
import {
  ALTO,
  BASS,
  describeClef,
  formatClef,
  isPitched,
  ledgerLines,
  parseClef,
  pitchAt,
  sameClef,
  staffPosition,
  TENOR,
  TREBLE,
  usualLine,
} from '../../lib/staff/clef.ts'
import type {Clef} from '../../lib/staff/clef.ts'

const pitchedClef = fc.record({
  sign: fc.constantFrom('G' as const, 'F' as const, 'C' as const),
  line: fc.integer({min: 1, max: 5}),
  octaveChange: fc.integer({min: -2, max: 2}),
})

function clef(text: string): Clef {
  const read = parseClef(text)
  if (!read) throw new Error(`no clef: ${text}`)
  return read
}

function position(note: string, clefText: string): number {
  const pitch = parsePitch(note)
  if (!pitch) throw new Error(`no pitch: ${note}`)
  return staffPosition(pitch, clef(clefText))
}

test.each([
  // clef, bottom line, top line, in words
  ['G2', 'E4', 'F5', 'treble clef'],
  ['G1', 'G4', 'A5', 'French violin clef'],
  ['F4', 'G2', 'A3', 'bass clef'],
  ['F3', 'B2', 'C4', 'baritone clef'],
  ['F5', 'E2', 'F3', 'subbass clef'],
  ['C1', 'C4', 'D5', 'soprano clef'],
  ['C2', 'A3', 'B4', 'mezzo-soprano clef'],
  ['C3', 'F3', 'G4', 'alto clef'],
  ['C4', 'D3', 'E4', 'tenor clef'],
  ['C5', 'B2', 'C4', 'baritone C clef'],
  ['G2(-1)', 'E3', 'F4', 'treble clef an octave lower'],
  ['G2(+1)', 'E5', 'F6', 'treble clef an octave higher'],
  ['G2(+2)', 'E6', 'F7', 'treble clef 2 octaves higher'],
  ['F4(-1)', 'G1', 'A2', 'bass clef an octave lower'],
  ['percussion', 'E4', 'F5', 'percussion clef'],
  ['TAB', 'E4', 'F5', 'tablature'],
])('%s has %s on the bottom and %s on the top line: %s', (text, bottom, top, words) => {
  const read = clef(text)
  expect(formatPitch(pitchAt(0, read))).toBe(bottom)
  expect(formatPitch(pitchAt(8, read))).toBe(top)
  expect(position(bottom, text)).toBe(0)
  expect(position(top, text)).toBe(8)
  expect(describeClef(read)).toBe(words)
  expect(formatClef(read)).toBe(text)
})

test('middle C lies where every player knows it', () => {
  expect(position('C4', 'G2')).toBe(-2)
  expect(position('C4', 'F4')).toBe(10)
  expect(position('C4', 'C3')).toBe(4)
  expect(position('C4', 'C4')).toBe(6)
  expect(position('Cb4', 'C4')).toBe(6)
})

test.each([
  ['F5', 0],
  ['G5', 0],
  ['A5', 1],
  ['B5', 1],
  ['C6', 2],
  ['E6', 3],
  ['G6', 4],
  ['E4', 0],
  ['D4', 0],
  ['C4', 1],
  ['B3', 1],
  ['A3', 2],
  ['F3', 3],
  ['E3', 3],
])('%s in treble clef needs %d ledger lines', (note, lines) => {
  expect(ledgerLines(position(note, 'G2'))).toBe(lines)
})

test('a line further away needs one ledger line more, on both sides', () => {
  fc.assert(
    fc.property(fc.integer({min: 10, max: 60}), (above) => {
      expect(ledgerLines(above + 2)).toBe(ledgerLines(above) + 1)
      expect(ledgerLines(8 - above)).toBe(ledgerLines(above))
    }),
  )
})

test('position and pitch are two names of one place', () => {
  fc.assert(
    fc.property(pitchedClef, fc.integer({min: -20, max: 30}), (any, place) => {
      expect(staffPosition(pitchAt(place, any), any)).toBe(place)
    }),
  )
})

test('an octave sign moves every note by seven positions', () => {
  fc.assert(
    fc.property(
      pitchedClef,
      fc.constantFrom(...STEPS),
      fc.integer({min: 0, max: 8}),
      (any, step, octave) => {
        const plain = staffPosition({step, octave}, {...any, octaveChange: 0})
        expect(staffPosition({step, octave}, any)).toBe(plain - 7 * any.octaveChange)
      },
    ),
  )
})

test('what is formatted is read back', () => {
  fc.assert(
    fc.property(pitchedClef, (any) => {
      expect(parseClef(formatClef(any))).toEqual(any)
    }),
  )
})

test('without a line a sign stands on its usual one', () => {
  expect([clef('G'), clef('F'), clef('C')]).toEqual([TREBLE, BASS, ALTO])
  expect(sameClef(clef('C4'), TENOR)).toBe(true)
  expect(sameClef(clef('C4(-1)'), TENOR)).toBe(false)
  expect(usualLine('TAB')).toBe(5)
})

test.each(['', 'H2', 'G0', 'G7', 'G2-1', 'G2()', 'treble', 'g2'])('%j is no clef', (text) => {
  expect(parseClef(text)).toBeUndefined()
})

test('three signs give their lines pitches', () => {
  const pitched = ['G', 'F', 'C', 'percussion', 'TAB', 'jianpu', 'none'].filter((sign) =>
    isPitched(clef(sign)),
  )
  expect(pitched).toEqual(['G', 'F', 'C'])
})
