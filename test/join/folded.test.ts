import {expect, it} from 'vitest'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {cued, joined, music, notesOf, rests, scoreOf, start} from './parts.ts'

// What a part takes in changes nothing of how its own music is made to fit its player.
const low = ['C2 D2 E2 F2', 'G2 F2 E2 D2'].map((each) => music(each))
const source = scoreOf({
  'P1 Violoncello/Vc.': [start({clef: 'F4'}) + low[0], low[1] ?? '', ...rests(8), music('C3:4')],
  'P2 Flute/Fl.': [...rests(8, start()), music('G4 A4 B4 C5'), music('D5:2 B4 G4'), music('C5:4')],
})

it('a part that gets cues is folded as it is without', async () => {
  const alone = await cued(source, {for: 'flute', fold: true, cues: false})
  const both = await cued(source, {for: 'flute', fold: true})
  expect(alone.codes).toContain('fold/phrase')
  expect(both.codes).toEqual(expect.arrayContaining(['fold/phrase', 'cues/added']))
  expect(new Set(both.changes.map(({kind}) => kind))).toEqual(new Set(['moved', 'cues']))
  for (const index of [0, 1, 10]) expect(both.measures[index]).toBe(alone.measures[index])
})

it('and so is one that takes in a voice', async () => {
  const flute = instrumentById('flute')
  if (!flute) throw new Error('no flute')
  const {measures, changes} = await joined(
    source,
    {cover: {part: 'P2', instrument: flute, tier: 'tutti', when: 'always'}},
    {for: flute, fold: 'tutti'},
  )
  expect(changes.some(({kind, part}) => kind === 'moved' && part === 'P1')).toBe(true)
  const octaves = notesOf(measures[0]).map(({pitch}) => Number(pitch.at(-1)))
  expect(Math.min(...octaves)).toBeGreaterThan(3)
})
