import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import type {Diagnostic} from '../../lib/index.ts'
import {prove, renotatePart, survey} from '../../lib/index.ts'
import {collect, sourceOf} from '../support/bytes.ts'
import {surveyXml, withMovedTransposition, withoutTranspositions} from '../support/survey.ts'

const demo = readFileSync(new URL('../../fixtures/demo/score.musicxml', import.meta.url))
const xml = demo.toString('utf8')
const source = sourceOf(new Uint8Array(demo))

/** What the demonstration score's comment says of its parts, in semitones; horns differ by clef. */
const SOUNDS = [13, 3, -2, 0, -2, -9, -9, -2, -14]

describe('the demonstration score', () => {
  it('is surveyed part by part', async () => {
    const found = await survey(source)
    expect(found).toMatchObject({format: 'renotate-survey', version: 1, measures: 24})
    expect(found.parts.map(({believed}) => believed?.transposition.chromatic)).toEqual([
      ...SOUNDS,
      undefined,
    ])
    expect(found.parts.map(({instrument}) => instrument?.id).slice(0, 5)).toEqual([
      'piccolo-d-flat',
      'clarinet-e-flat',
      'clarinet-b-flat',
      'bassoon',
      'cornet-b-flat',
    ])
    expect(found.keys.map(({measure, fifths}) => [measure, fifths])).toEqual([
      ['1', -3],
      ['17', -4],
    ])
  })

  it('shows its two faults and no other', async () => {
    const {parts} = await survey(source)
    const doubts = parts.flatMap(({id, doubts: own}) =>
      own.map(({code, at, settle}) => [id, code, at.measure, settle]),
    )
    expect(doubts).toEqual([
      ['P6', 'doubt/clef', '13', '--from horn.crook-e-flat.old'],
      ['P7', 'doubt/undeclared', '1', '--from alto-horn-e-flat.modern'],
    ])
    expect(parts[5]?.believed?.byClef).toEqual([
      {clef: 'G2', transposition: {diatonic: -5, chromatic: -9}},
      {clef: 'F4', transposition: {diatonic: 2, chromatic: 3}},
    ])
  })

  it('tells the evidence in words, for and against', async () => {
    const {parts} = await survey(source)
    const [doubt] = parts[6]?.doubts ?? []
    expect(doubt?.for.join('; ')).toContain('belong to the harmony of the others')
    expect(doubt?.for.join('; ')).toContain('in the key of the others')
    expect(doubt?.against).toEqual(['the file declares no transposition'])
    expect(doubt?.candidates[0]).toMatchObject({words: 'a major sixth lower'})
  })

  it('says what a part uses', async () => {
    const contrabass = (await survey(source)).parts[8]
    expect(contrabass).toMatchObject({
      notes: 60,
      written: {low: 'Bb2', high: 'F4', lowMidi: 46, highMidi: 65},
      sounding: {low: 'Ab1', high: 'Eb3', lowMidi: 32, highMidi: 51},
      clefNamed: 'F4',
      language: 'fr',
      divided: 0,
    })
    expect(contrabass?.density).toHaveLength(51 - 32 + 1)
    expect(contrabass?.registers.map(({tier}) => tier)).toEqual(['tutti', 'pro'])
  })

  it('is recovered when every transposition is taken away', async () => {
    const {survey: found} = await surveyXml(withoutTranspositions(xml))
    expect(found.parts.map(({believed}) => believed?.transposition.chromatic).slice(0, 9)).toEqual(
      SOUNDS,
    )
    // At pitch are the bassoons and nobody else: every transposing part raises a doubt.
    expect(found.parts.map(({doubts}) => doubts.length)).toEqual([1, 1, 1, 0, 1, 1, 1, 1, 1, 0])
  })

  it.each([
    ['P3', {diatonic: 7, chromatic: 12}, 'doubt/octave'],
    ['P3', {diatonic: -1, chromatic: -2}, 'doubt/transposition'],
    ['P9', {diatonic: -1, chromatic: -2}, 'doubt/transposition'],
  ])('contradicts %s when its transposition is off by %o', async (part, by, code) => {
    const {survey: found} = await surveyXml(withMovedTransposition(xml, part, by))
    const own = found.parts.find(({id}) => id === part)
    expect(own?.doubts.map((doubt) => doubt.code)).toEqual([code])
  })
})

describe('from believed', () => {
  it('reads a part as the survey does, and says so', async () => {
    const told: Diagnostic[] = []
    const horn = await collect(
      renotatePart(source, {
        part: 'P6',
        for: 'horn-f',
        from: 'believed',
        report: (each) => told.push(each),
      }),
    )
    expect(told).toContainEqual(
      expect.objectContaining({
        code: 'survey/believed',
        severity: 'info',
        message: expect.stringContaining('old notation'),
      }),
    )
    const pairs = [['P6', 'P6']] as const
    const believing = await prove(source, sourceOf(horn), {from: 'believed', pairs})
    expect(believing.verdict).toBe('equal')
    const literally = await prove(source, sourceOf(horn), {pairs})
    expect(literally.verdict).toBe('different')
  })

  it('changes nothing where the file is right and nothing else is asked', async () => {
    const told: string[] = []
    const report = ({code}: Diagnostic): void => void told.push(code)
    const asked = await collect(renotatePart(source, {part: 'P9', from: 'believed', report}))
    expect(asked).toEqual(await collect(renotatePart(source, {part: 'P9'})))
    expect(told).toContain('survey/believed')
  })
})

const score = (name: string, music: string): string =>
  `<score-partwise version="4.0"><part-list><score-part id="P1"><part-name>${name}</part-name></score-part></part-list><part id="P1">${music}</part></score-partwise>`

const transpose = (steps: number, semitones: number): string =>
  `<attributes><transpose><diatonic>${steps}</diatonic><chromatic>${semitones}</chromatic></transpose></attributes>`
describe('odd scores', () => {
  it('may have no measures', async () => {
    const {survey: found} = await surveyXml(score('Flute', ''))
    expect(found).toMatchObject({measures: 0, keys: []})
    expect(found.parts[0]).toMatchObject({notes: 0, doubts: []})
    expect(found.parts[0]?.believed).toBeUndefined()
  })

  it('may have a part that says nothing of itself: it is believed as declared', async () => {
    const {survey: found} = await surveyXml(
      score(
        '',
        '<measure number="1"><attributes><transpose><chromatic>-5</chromatic></transpose></attributes><note><pitch><step>C</step><octave>4</octave></pitch><duration>4</duration></note></measure>',
      ),
    )
    expect(found.parts[0]?.believed?.transposition).toEqual({diatonic: -3, chromatic: -5})
    expect(found.parts[0]?.doubts).toEqual([])
  })

  it('may tell the players things in words', async () => {
    const {survey: found} = await surveyXml(
      score(
        'Corno in Fa',
        `<measure number="7">${directionOf('con sordino')}${directionOf('Allegro')}</measure><measure number="8">${directionOf('muta in Mi♭')}${directionOf('con sord.')}</measure>`,
      ),
    )
    expect(found.parts[0]?.techniques).toEqual([
      {technique: 'mute', words: 'con sordino', measure: '7'},
    ])
    expect(found.parts[0]?.changes).toEqual([{words: 'muta in Mi♭', measure: '8', key: 'Eb'}])
  })

  it('may have names that only the user knows', async () => {
    const bytes = new TextEncoder().encode(score('Gr. Zwirbel', ''))
    const names = {'Gr. Zwirbel': 'bassoon'}
    const found = await survey(sourceOf(bytes), {names})
    expect(found.parts[0]?.instrument?.id).toBe('bassoon')
    const wrong = survey(sourceOf(bytes), {names: {Zwirbel: 'zwirbel'}})
    await expect(wrong).rejects.toThrow('there is no instrument zwirbel')
  })

  it('may change the transposition on the way: each is believed by itself', async () => {
    const note =
      '<note><pitch><step>C</step><octave>5</octave></pitch><duration>4</duration></note>'
    const {survey: found} = await surveyXml(
      score(
        'Clarinet in B flat and A',
        `<measure number="1">${transpose(-1, -2)}${note}${note}</measure><measure number="2">${transpose(-2, -3)}${note}</measure>`,
      ),
    )
    const [part] = found.parts
    expect(part?.declared.map(({words}) => words)).toEqual([
      'a major second lower',
      'a minor third lower',
    ])
    expect(part?.believed?.words).toBe('a major second lower')
    expect(part?.others.map(({words}) => words)).toEqual(['a minor third lower'])
    expect(part?.doubts).toEqual([])
  })
})

function directionOf(text: string): string {
  return `<direction><direction-type><words>${text}</words></direction-type></direction>`
}
