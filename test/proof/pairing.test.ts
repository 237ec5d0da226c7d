import {describe, expect, test} from 'vitest'
import {pairParts} from '../../lib/proof/pairing.ts'
import type {PartSummary} from '../../lib/proof/survey.ts'
import {surveyScore} from '../../lib/proof/survey.ts'
import {attributes, note, part, score, sourceOf, transpose} from './score.ts'

/** A part whose measures sound like the letters of `music`; capitals have the shape of small ones, higher up. */
function summary(id: string, name: string, music: string): PartSummary {
  const codes = [...music].map((letter) => (letter === '-' ? 0 : letter.charCodeAt(0)))
  return {
    id,
    name,
    measures: codes.length,
    notes: codes.filter(Boolean).length,
    sounds: codes,
    shapes: [...music.toLowerCase()].map((letter) => (letter === '-' ? 0 : letter.charCodeAt(0))),
  }
}

function pair(before: PartSummary[], after: PartSummary[], chosen: [string, string][] = []) {
  const {pairs, unpaired} = pairParts(before, after, chosen)
  return [
    ...pairs.map((one) => `${one.before.id}=${one.after.id}`),
    ...unpaired.before.map(({id}) => `${id}=`),
    ...unpaired.after.map(({id}) => `=${id}`),
  ].join(' ')
}

describe('which parts belong together', () => {
  const flute = summary('P1', 'Flute', 'abcdefgh')
  const bassoon = summary('P2', 'Bassoon', 'xyzuvwxy')

  test.each<[string, PartSummary[], PartSummary[], string]>([
    ['ids and names', [flute, bassoon], [bassoon, flute], 'P1=P1 P2=P2'],
    [
      'ids, renamed',
      [flute, bassoon],
      [summary('P1', 'Flöte', 'abcdefgh'), summary('P2', '', 'xyzuvwxy')],
      'P1=P1 P2=P2',
    ],
    ['ids, another octave', [flute, bassoon], [summary('P2', 'Tuba', 'XYZUVWXY')], 'P2=P2 P1='],
    [
      'names, other ids',
      [flute, bassoon],
      [summary('A', ' FLUTE.', 'abc'), summary('B', 'bassoon', 'xyz')],
      'P1=A P2=B',
    ],
    [
      'music, whatever they are called',
      [flute, bassoon],
      [summary('P1', 'Cover', 'xyzuvwxq')],
      'P2=P1 P1=',
    ],
    [
      'the more alike of two in octaves',
      [summary('P1', 'Flute', 'ABCD'), summary('P2', 'Oboe', 'abcd')],
      [summary('P1', 'Cover', 'abcd')],
      'P2=P1 P1=',
    ],
    [
      'ids, though another plays the same in that octave',
      [summary('P4', 'Bassoon', 'ABCD'), summary('P9', 'Contrabass', 'abcd')],
      [summary('P9', 'Euphonium', 'ABCD')],
      'P9=P9 P4=',
    ],
    [
      'names that are not unique do not count',
      [summary('1', 'Violin', 'abcd'), summary('2', 'Violin', 'efgh')],
      [summary('3', 'Violin', 'efgh'), summary('4', 'Violin', 'abcd')],
      '1=4 2=3',
    ],
    [
      'ids alone, when all else fails',
      [flute, bassoon],
      [summary('P1', 'Harp', 'qrst')],
      'P1=P1 P2=',
    ],
    [
      'a part in a file of its own, against another',
      [flute],
      [summary('X', 'Harp', 'qrst')],
      'P1=X',
    ],
    [
      'a silent part by its name',
      [flute, summary('P2', 'Drum', '----')],
      [summary('Q', 'Drum', '----'), summary('R', 'Flute', 'abcd')],
      'P1=R P2=Q',
    ],
    ['strangers stay alone', [flute, bassoon], [summary('X', 'Harp', 'qrst')], 'P1= P2= =X'],
  ])('%s', (_, before, after, expected) => {
    expect(pair(before, after)).toBe(expected)
  })

  test('the caller’s word goes first', () => {
    expect(pair([flute, bassoon], [flute], [['P2', 'P1']])).toBe('P2=P1 P1=')
    expect(pair([flute, bassoon], [flute], [['P7', 'P1']])).toBe('P1=P1 P2=')
  })
})

describe('the survey', () => {
  test('tells parts a constant interval apart by their sound, not by their shape', async () => {
    const tune = note('C4', 1) + note('E4', 1) + note('r', 1) + note('D4', 1)
    const {parts} = await surveyScore(
      sourceOf(
        score({
          P1: [tune, note('r', 4)],
          'P2 Horn': [attributes(transpose(-4, -7)) + tune, note('r', 4)],
        }),
      ),
    )
    const [one, other] = parts
    expect(one?.shapes).toEqual(other?.shapes)
    expect(one?.sounds[0]).not.toBe(other?.sounds[0])
    expect(other).toMatchObject({id: 'P2', name: 'Horn', measures: 2, notes: 3})
    expect(other?.sounds[1]).toBe(0)
  })

  test('finds the parts that only draw their ties', async () => {
    const drawn = note('C4', 1, {tied: 'start'}) + note('C4', 1, {tied: 'stop'})
    const both = note('C4', 1, {tie: 'start', tied: 'start'})
    const {inkTies} = await surveyScore(sourceOf(score({P1: [drawn], P2: [both]})))
    expect([...inkTies]).toEqual(['P1'])
    expect((await surveyScore(sourceOf(part(both)))).inkTies.size).toBe(0)
  })
})
