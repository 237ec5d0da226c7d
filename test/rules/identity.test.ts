import {expect, it} from 'vitest'
import {renotated, wholeNote} from '../support/one-part.ts'
import type {OnePart} from '../support/one-part.ts'

const measures = [wholeNote('A4')]

async function entryOf(part: Partial<OnePart>, instrument: string, job = {}): Promise<string> {
  const {text} = await renotated({...part, measures}, instrument, job)
  return (
    /<score-part .*?<\/score-part>/s
      .exec(text)?.[0]
      .replace(/<score-part id="P1">|<\/score-part>/g, '') ?? ''
  )
}

it.each([
  // The language of the old name, unless the job says another (renotation-rules N1, N2); the desk stays.
  ['Bassoon 2', {}, '2nd Clarinet in B flat'],
  ['Basson 2', {}, '2e Clarinette en si bémol'],
  ['2. Fagott', {}, '2. Klarinette in B'],
  ['Fagotto I', {}, 'Clarinetto 1o in si bemolle'],
  ['Bassons 1-2', {}, 'Clarinettes en si bémol 1-2'],
  ['Zzz', {}, 'Clarinet in B flat'],
  ['Basson 2', {language: 'nl'}, '2e klarinet in bes'],
  ['Basson 2', {name: 'Réplique'}, 'Réplique'],
])('%s with %j is called %s', async (name, job, expected) => {
  expect(await entryOf({name}, 'clarinet-b-flat', job)).toBe(`<part-name>${expected}</part-name>`)
})

it('writes display forms anew, accidentals as signs, in the font they had', async () => {
  const entry =
    '<part-name-display><display-text font-size="12">Oboe </display-text><display-text>1</display-text></part-name-display>' +
    '<part-abbreviation>Ob. 1</part-abbreviation>' +
    '<part-abbreviation-display><display-text>Ob. 1</display-text></part-abbreviation-display>'
  expect(await entryOf({name: 'Oboe 1', entry}, 'clarinet-b-flat')).toBe(
    '<part-name>1st Clarinet in B flat</part-name>' +
      '<part-name-display><display-text font-size="12">1st Clarinet in B</display-text>' +
      '<accidental-text>flat</accidental-text></part-name-display>' +
      '<part-abbreviation>Cl. Bb 1</part-abbreviation>' +
      '<part-abbreviation-display><display-text>Cl. B</display-text>' +
      '<accidental-text>flat</accidental-text><display-text> 1</display-text></part-abbreviation-display>',
  )
})

it('renames every pitched instrument and the player, but no unpitched one', async () => {
  const entry =
    '<score-instrument id="I1"><instrument-name>Flute</instrument-name><instrument-sound>wind.flutes.flute</instrument-sound></score-instrument>' +
    '<score-instrument id="I2"><instrument-name>Piccolo</instrument-name></score-instrument>' +
    '<score-instrument id="I3"><instrument-name>Whistle</instrument-name></score-instrument>' +
    '<player id="L1"><player-name>Flute 1</player-name></player>' +
    '<player id="L2"><player-name>Ada Quill</player-name></player>' +
    '<midi-instrument id="I1"><midi-program>74</midi-program></midi-instrument>' +
    '<midi-instrument id="I2"><midi-channel>2</midi-channel></midi-instrument>' +
    '<midi-instrument id="I3"><midi-unpitched>60</midi-unpitched></midi-instrument>'
  const {text, told} = await renotated({name: 'Flute', entry, measures}, 'oboe')
  const listed = [
    ...text.matchAll(/<(instrument-name|instrument-sound|player-name|midi-program)>(.*?)</g),
  ]
  expect(listed.map(([, name, said]) => `${name} ${said}`)).toEqual([
    'instrument-name Oboe',
    'instrument-sound wind.reed.oboe',
    'instrument-name Oboe',
    'instrument-sound wind.reed.oboe',
    'instrument-name Whistle',
    'player-name Oboe',
    'player-name Ada Quill',
    'midi-program 69',
    'midi-program 69',
  ])
  expect(told).toContain('identity/other-instruments Flute, Piccolo, Whistle')
})

it('plays the new instrument where the music changes instruments', async () => {
  const change =
    '<sound><instrument-change id="I1"><instrument-sound>wind.flutes.flute.piccolo</instrument-sound></instrument-change>' +
    '<midi-instrument id="I1"><midi-program>73</midi-program></midi-instrument></sound>'
  const entry =
    '<score-instrument id="I1"><instrument-name>Flute</instrument-name></score-instrument>'
  const {text, told} = await renotated(
    {name: 'Flute', entry, measures: [change + wholeNote('A4')]},
    'oboe',
  )
  expect(text).toContain('<instrument-change id="I1"><instrument-sound>wind.reed.oboe<')
  expect(text).toContain('<midi-program>69</midi-program></midi-instrument></sound>')
  expect(told).toContain('identity/instrument-change')
})

it('removes a link to the old part, and tells it', async () => {
  const before = ''
  const entryBefore =
    '<part-link xmlns:xlink="http://www.w3.org/1999/xlink" xlink:href="flute.musicxml"/>'
  const source = `<score-partwise version="4.0">${before}<part-list><score-part id="P1">${entryBefore}<part-name>Flute</part-name></score-part></part-list><part id="P1"><measure number="1"><attributes><divisions>1</divisions></attributes>${measures[0]}</measure></part></score-partwise>`
  const {text, told} = await renotated(source, 'oboe')
  expect(text).not.toContain('part-link')
  expect(told).toContain('identity/link flute.musicxml')
})

it.each([
  ['Flute', 'Oboe', 'identity/credit Flute -> Oboe'],
  ['FLUTE', 'Oboe', 'identity/credit FLUTE -> Oboe'],
  [
    'Sonata for flute and harp',
    'Sonata for flute and harp',
    'identity/credit-mentions Sonata for flute and harp',
  ],
  ['Flutes of Arcady', 'Flutes of Arcady', undefined],
])('a credit “%s” says “%s”', async (said, left, expected) => {
  const before = `<credit page="1"><credit-words>${said}</credit-words></credit>`
  const {text, told} = await renotated({name: 'Flute', before, measures}, 'oboe')
  expect(text).toContain(`<credit-words>${left}</credit-words>`)
  expect(told.filter((each) => each.startsWith('identity/credit'))).toEqual(
    expected === undefined ? [] : [expected],
  )
})

it.each([
  ['Flutes', 'Oboe'],
  ['Woodwinds', 'Woodwinds'],
])('a group “%s” of this part alone is called “%s”', async (name, expected) => {
  const groups = [
    `<part-group type="start" number="1"><group-name>${name}</group-name></part-group>`,
    '<part-group type="stop" number="1"/>',
  ] as const
  const {text} = await renotated({name: 'Flutes', groups, measures}, 'oboe', {}, 'keep')
  expect(text).toContain(`<group-name>${expected === 'Oboe' ? 'Oboe' : expected}</group-name>`)
})

it('renames a group that leaves the score with its other parts without a clash', async () => {
  const other = '<score-part id="P2"><part-name>Harp</part-name></score-part>'
  const measure = `<measure number="1"><attributes><divisions>1</divisions></attributes>${measures[0]}</measure>`
  const source = `<score-partwise version="4.0"><part-list><part-group type="start" number="1"><group-name>Flute</group-name></part-group><score-part id="P1"><part-name>Flute</part-name></score-part><part-group type="stop" number="1"/>${other}</part-list><part id="P1">${measure}</part><part id="P2">${measure}</part></score-partwise>`
  expect((await renotated(source, 'oboe')).text).not.toContain('part-group')
  expect((await renotated(source, 'oboe', {}, 'keep')).text).toContain('<group-name>Oboe<')
})
