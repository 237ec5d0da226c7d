import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {parseRoster} from '../../lib/ensemble/roster.ts'
import {parseKeys} from '../../lib/ensemble/roster-keys.ts'

const demo = readFileSync(new URL('../../fixtures/demo/roster.yaml', import.meta.url), 'utf8')

describe('a roster', () => {
  it('says who plays what, how far, from what', async () => {
    const roster = await parseRoster(demo)
    expect(roster).toMatchObject({band: 'Harmonie municipale de Valmontel', language: 'fr'})
    expect(roster.players.map(({name, tier, desks}) => `${name} ${tier} ${desks}`)).toEqual([
      'Odile Marchais tutti 1',
      'Firmin Tessereau tutti 4',
      'Colette Aubragne pro 1',
      'Gaspard Noëllet tutti 1',
      'Sidonie Vautreux tutti 1',
      'Léandre Pommeret student 1',
    ])
    const [, clarinet, bassoon, euphonium, , saxophone] = roster.players
    expect(clarinet?.doublings.map(({id}) => id)).toEqual(['contra-alto-clarinet-e-flat'])
    expect(bassoon?.clefs).toEqual(['F4', 'C4'])
    expect(euphonium?.notations.map(({id}) => id)).toEqual(['euphonium.modern'])
    expect(euphonium?.avoids).toEqual([5, 6, 7])
    expect(saxophone?.avoids).toEqual([6, -7])
  })

  it.each([
    ['players: [', 'roster/malformed', 1, 'the file is no YAML'],
    ['bandd: x\nplayers: []', 'roster/unknown-key', 1, 'there is no key “bandd”; “band” is known'],
    ['band: x', 'roster/missing', 1, '“players” is missing'],
    ['players: []', 'roster/value', 1, 'players: there are no players'],
    ['players:\n  - instrument: tuba', 'roster/missing', 2, 'players[0]: “name” is missing'],
    [
      'players:\n  - name: A\n    instrument: tubba',
      'roster/instrument',
      3,
      'players[0].instrument: the catalogue has no “tubba”; near it are',
    ],
    [
      'players:\n  - name: A\n    instrument: tuba\n    tier: expert',
      'roster/value',
      4,
      'players[0].tier: “expert” is none of pro, tutti, student',
    ],
    [
      'players:\n  - name: A\n    instrument: tuba\n    desks: 0',
      'roster/value',
      4,
      'players[0].desks: “0” is no whole number from 1',
    ],
    [
      'players:\n  - name: A\n    instrument: tuba\n    avoids:\n      - 3 flats\n      - H major',
      'roster/value',
      6,
      'players[0].avoids[1]: “H major” is no key',
    ],
    [
      'players:\n  - name: A\n    instrument: tuba\n    clefs: [green]',
      'roster/value',
      4,
      'players[0].clefs[0]: “green” is no clef',
    ],
    [
      'players:\n  - name: A\n    instrument: tuba\n    notations: [nonsense]',
      'roster/notation',
      4,
      'players[0].notations[0]: the catalogue has no',
    ],
    ['players:\n  - just a name', 'roster/value', 2, 'players[0]: keys and values are wanted here'],
    [
      'language: la\nplayers:\n  - name: A\n    instrument: tuba',
      'roster/value',
      1,
      'language: “la” is none of en, fr',
    ],
  ])('%j is refused with line and key', async (text, code, line, message) => {
    const error: unknown = await parseRoster(text).catch((each: unknown) => each)
    expect(error).toMatchObject({diagnostic: {code, at: {line}}})
    expect((error as {diagnostic: {message: string}}).diagnostic.message).toContain(message)
  })
})

it.each([
  ['C', [0]],
  ['Bb major', [-2]],
  ['F# minor', [3]],
  ['C♯', [7]],
  ['Ab minor', [-7]],
  ['3 flats', [-3]],
  ['1 sharp', [1]],
  ['more than 5 flats', [-6, -7]],
  ['G# major', undefined],
  ['8 sharps', undefined],
  ['H', undefined],
  ['bright keys', undefined],
])('the key %s', (text, keys) => {
  expect(parseKeys(text)).toEqual(keys)
})
