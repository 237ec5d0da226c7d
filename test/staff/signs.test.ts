import {describe, expect, it} from 'vitest'
import {whereNeeded} from '../../lib/staff/signs.ts'
import type {ReadNote} from '../../lib/staff/signs.ts'

const ALTERS: Readonly<Record<string, number>> = {'': 0, '#': 1, b: -1, '##': 2}

/** Notes as `onset:pitch`, `~` before a pitch that is tied from before, `,` before a grace note; in a key of so many sharps. */
function signed(text: string, fifths = 0): string {
  const tokens = text.split(' ')
  const notes = tokens.map((token): ReadNote => {
    const [, onset, mark, step, sign = '', octave] =
      /^(\d+):([~,]?)([A-G])(#*|b?)(\d)$/.exec(token) ?? []
    return {
      onset: Number(onset),
      grace: mark === ',',
      held: mark === '~',
      key: {fifths},
      pitch: {step: step as 'C', alter: ALTERS[sign] ?? 0, octave: Number(octave)},
    }
  })
  const needed = whereNeeded(notes)
  return tokens.filter((_, index) => needed[index]).join(' ')
}

/** Renotation-rules A1; what two voices do at once is common practice. */
describe('an accidental is needed', () => {
  it.each([
    ['by what the key does not have', '0:F#4 1:G4', 0, '0:F#4'],
    ['by what the key would have otherwise', '0:F4 1:G4', 1, '0:F4'],
    ['once in a measure', '0:F#4 1:F#4 2:F4 3:F4', 0, '0:F#4 2:F4'],
    ['in every octave', '0:F#4 1:F#5', 0, '0:F#4 1:F#5'],
    ['by no note that is tied', '0:~F#4 1:F4', 0, ''],
    ['anew after a tie', '0:~F#4 1:F#4', 0, '1:F#4'],
    ['once by a grace note and its note', '0:,F#4 0:F#4', 0, '0:,F#4'],
    ['by each of two voices in unison', '0:F#4 0:F#4 1:F#4', 0, '0:F#4 0:F#4'],
    ['by both of two notes on one line', '0:G#4 0:G4', 0, '0:G#4 0:G4'],
    ['by both, whatever the key has', '0:G#4 0:G4', 3, '0:G#4 0:G4'],
    ['by whatever follows both', '0:G#4 0:G4 1:G4 2:G4', 0, '0:G#4 0:G4 1:G4'],
    ['by a note struck where another is held', '0:~G#4 0:G4 1:G4', 0, '0:G4'],
    ['by no note of another line', '0:G#4 0:G5', 0, '0:G#4'],
  ])('%s: %s', (_what, notes, fifths, expected) => {
    expect(signed(notes, fifths)).toBe(expected)
  })
})
