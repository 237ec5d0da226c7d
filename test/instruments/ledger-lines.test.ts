import {expect, it} from 'vitest'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {ledgerLinesOf} from '../../lib/instruments/ledger-lines.ts'
import {parsePitch} from '../../lib/pitch/pitch.ts'
import {ledgerLines, staffPosition} from '../../lib/staff/clef.ts'

// The highest (lowest) note before another clef, as the trade's table C2 has it: common practice.
it.each([
  ['bassoon', 'G4', 'above'],
  ['trombone-tenor', 'G4', 'above'],
  ['cello', 'E4', 'above'],
  ['viola', 'C5', 'above'],
  ['horn-f', 'G3', 'below'],
] as const)('the %s reads to %s in its usual clef', (id, note, side) => {
  const clef = instrumentById(id)?.clef
  const pitch = parsePitch(note)
  if (!clef || !pitch) throw new Error(id)
  expect(ledgerLines(staffPosition(pitch, clef))).toBeLessThanOrEqual(ledgerLinesOf(id)[side])
})

it('reads three lines where nothing else is known', () => {
  expect(ledgerLinesOf('flute')).toEqual({above: 3, below: 3})
  expect(ledgerLinesOf(undefined)).toEqual({above: 3, below: 3})
})
