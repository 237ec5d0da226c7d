import {describe, expect, it} from 'vitest'
import {formatPitch, midiOf, parsePitch} from '../../lib/pitch/pitch.ts'
import {respell} from '../../lib/plan/spelling.ts'
import type {SpellingPolicy} from '../../lib/plan/spelling.ts'

function respelled(name: string, fifths: number, policy: SpellingPolicy | 'exact'): string {
  const pitch = parsePitch(name)
  if (!pitch) throw new Error(`no pitch ${name}`)
  const found = respell(pitch, {fifths}, policy)
  if (!found) return name
  expect(midiOf(found.pitch)).toBe(midiOf(pitch))
  return `${formatPitch(found.pitch)} ${found.rule}`
}

describe('spelling (renotation-rules E2, E8)', () => {
  it.each([
    ['F##4', 0, 'keep', 'F##4'],
    ['F##4', 0, 'exact', 'F##4'],
    ['Fb4', 0, 'plain', 'E4 E2'],
    ['Cb5', 0, 'plain', 'B4 E2'],
    ['B#4', -4, 'plain', 'C5 E2'],
    ['Bbb4', 0, 'plain', 'A4 E2'],
    // In their function they stay: the leading note of G sharp minor, E sharp in F sharp major, C flat in G flat.
    ['F##4', 5, 'plain', 'F##4'],
    ['E#4', 6, 'plain', 'E#4'],
    ['Cb5', -6, 'plain', 'Cb5'],
    ['F#4', 0, 'plain', 'F#4'],
    ['A#4', -3, 'school', 'Bb4 E8'],
    ['A#4', -3, 'plain', 'A#4'],
    ['C(+0.5)4', 0, 'plain', 'C(+0.5)4'],
  ] as const)('%s under %i fifths, %s: %s', (name, fifths, policy, expected) => {
    expect(respelled(name, fifths, policy)).toBe(expected)
  })
})
