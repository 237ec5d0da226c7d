import {describe, expect, test} from 'vitest'
import {formatFraction} from '../../lib/proof/fraction.ts'
import {formatExactPitch} from '../../lib/proof/pitch.ts'
import {readMeasures} from '../../lib/proof/reader.ts'
import {joinTies} from '../../lib/proof/ties.ts'
import type {Event} from '../../lib/proof/ties.ts'
import {attributes, backup, note, part, sourceOf, transpose} from './score.ts'

/** The events of a part, a word each: measure, onset, pitch and duration in quarters over all ties. */
async function events(text: string): Promise<string[]> {
  const found: Event[] = []
  let held: readonly Event[] = []
  for await (const measure of readMeasures(sourceOf(text))) {
    const joined = joinTies(held, measure)
    found.push(...joined.attacks)
    held = joined.held
  }
  return found.map(({note: {measure, onset, sounding, written}, duration}) =>
    [
      measure,
      formatFraction(onset),
      formatExactPitch(sounding ?? written),
      formatFraction(duration),
    ].join(' '),
  )
}

describe('ties', () => {
  test.each<[string, string, string[]]>([
    [
      'within a measure and over several bar lines',
      part(
        note('C4', 1) + note('C4', 1, {tie: 'start'}) + note('C4', 2, {tie: 'both'}),
        note('C4', 4, {tie: 'both'}),
        note('C4', 1, {tie: 'stop'}) + note('C4', 1),
      ),
      ['1 0 C4 1', '1 1 C4 8', '3 1 C4 1'],
    ],
    [
      'one note of a chord',
      part(
        note('C4', 1, {tie: 'start'}) +
          note('E4', 1, {chord: true}) +
          note('C4', 1, {tie: 'stop'}) +
          note('E4', 1, {chord: true}),
      ),
      ['1 0 C4 2', '1 0 E4 1', '1 1 E4 1'],
    ],
    [
      'by what sounds, over a change of transposition',
      part(
        attributes(transpose(-1, -2)) +
          note('D4', 1, {tie: 'start'}) +
          attributes(transpose(0, 0)) +
          note('C4', 1, {tie: 'stop'}),
      ),
      ['1 0 C4 2'],
    ],
    [
      'a grace note to its main note',
      part(note('C4', 0, {grace: true, tie: 'start'}) + note('C4', 1, {tie: 'stop'})),
      ['1 0 C4 1'],
    ],
    [
      'into another voice',
      part(note('C4', 1, {tie: 'start', voice: 1}) + note('C4', 1, {tie: 'stop', voice: 2})),
      ['1 0 C4 2'],
    ],
    [
      'two voices in unison keep to themselves',
      part(
        note('C4', 1, {tie: 'start', voice: 1}) +
          note('C4', 1, {tie: 'stop', voice: 1}) +
          backup(2) +
          note('C4', 1, {tie: 'start', voice: 2}) +
          note('C4', 3, {tie: 'stop', voice: 2}),
      ),
      ['1 0 C4 2', '1 0 C4 4'],
    ],
    [
      'an arpeggio into a chord',
      part(
        note('C4', 1, {tie: 'start'}) +
          note('E4', 1, {tie: 'start'}) +
          note('C4', 2, {tie: 'stop'}) +
          note('E4', 2, {tie: 'stop', chord: true}),
      ),
      ['1 0 C4 3', '1 1 E4 3'],
    ],
    [
      'unpitched notes',
      part(note('x', 1, {tie: 'start'}) + note('x', 1, {tie: 'stop'})),
      ['1 0 E4 2'],
    ],
    [
      'a tie that leads nowhere',
      part(note('C4', 1, {tie: 'start'}), note('r', 4), note('C4', 1, {tie: 'stop'})),
      ['1 0 C4 1', '3 0 C4 1'],
    ],
    ['a tie from nowhere', part(note('C4', 1, {tie: 'stop'})), ['1 0 C4 1']],
    [
      'a tie to another pitch',
      part(note('C4', 1, {tie: 'start'}) + note('D4', 1, {tie: 'stop'})),
      ['1 0 C4 1', '1 1 D4 1'],
    ],
    [
      'a cue is nobody’s continuation',
      part(note('C4', 1, {tie: 'start'}) + note('C4', 1, {tie: 'stop', cue: true})),
      ['1 0 C4 1', '1 1 C4 1'],
    ],
  ])('%s', async (_, text, expected) => {
    expect(await events(text)).toEqual(expected)
  })
})
