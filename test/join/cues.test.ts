import {describe, expect, it} from 'vitest'
import {prove} from '../../lib/index.ts'
import {sourceOf} from '../support/bytes.ts'
import {validateScore} from '../support/validate.ts'
import {band, cuesOf, note, part, quarters, rest, rests} from './band.ts'
import type {BandPart} from './band.ts'

// The rules Q1 to Q10 are those of ../shared/trade/renotation-rules.md, section 10, with their sources there.

const TUNE = [quarters('C5', 'D5', 'E5', 'F5'), quarters('G5', 'F5', 'E5', 'D5')]
const flute: BandPart = {name: 'Flute', abbreviation: 'Fl.', measures: repeated(12)}
const entry = quarters('G4', 'A4', 'B4', 'C5')
const oboe: BandPart = {name: 'Oboe', measures: [entry, ...rests(9), entry, entry]}

function repeated(count: number): string[] {
  return Array.from({length: count}, (_, index) => TUNE[index % 2] ?? '')
}

describe('cues', () => {
  it('stand before an entry after a long rest, and not in it (Q1, Q6)', async () => {
    const score = band(oboe, flute)
    const {text, measures, told, changes} = await part(score, {part: 'P1', cues: true})
    const cued = [...measures].filter(([, content]) => content.includes('<cue/>'))
    expect(cued.map(([number]) => number)).toEqual(['9', '10'])
    expect(cuesOf(measures.get('9'))).toEqual(['C5', 'D5', 'E5', 'F5'])
    expect(told.map(({code, message}) => `${code}: ${message}`)).toEqual([
      "cues/added: measures 9 to 10 show Fl. before the entry in measure 11, after 9 measures' rest",
    ])
    expect(validateScore(text)).toEqual([])
    const after = sourceOf(new TextEncoder().encode(text))
    const before = sourceOf(new TextEncoder().encode(score))
    const pairs = [['P1', 'P1']] as const
    expect((await prove(before, after, {pairs, intended: changes})).verdict).toBe('intended')
    expect((await prove(before, after, {pairs})).verdict).toBe('different')
    // All else is the source.
    const without = await part(score, {part: 'P1'})
    for (const [number, content] of measures)
      if (!['9', '10'].includes(number)) expect(content).toBe(without.measures.get(number))
  })

  it('are small, silent, named, and leave the rest as it is, aside (Q2 to Q4)', async () => {
    const {measures} = await part(band(oboe, flute), {part: 'P1', cues: true})
    const first = measures.get('9') ?? ''
    expect(first).toContain(
      '<note><rest measure="yes"><display-step>G</display-step><display-octave>4</display-octave></rest><duration>8</duration><voice>1</voice></note><backup><duration>8</duration></backup>',
    )
    expect(first).toContain(
      '<direction placement="above"><direction-type><words>Fl.</words></direction-type><voice>2</voice></direction><note><cue/>',
    )
    expect(measures.get('10')).not.toContain('<words>')
    expect(first.match(/<type size="cue">quarter<\/type><stem>up<\/stem>/g)).toHaveLength(4)
    expect(first).not.toContain('default-x')
  })

  it.each([
    ['eight measures', 8, '', true],
    ['seven measures', 7, '', false],
    ['four with a new tempo in them', 4, '<sound tempo="60"/>', true],
    ['three with a new tempo in them', 3, '<sound tempo="60"/>', false],
  ])('are added after %s or not (Q1)', async (_, count, turn, cued) => {
    const silence = rests(count)
    silence[1] = turn + rest()
    const reader = {...oboe, measures: [entry, ...silence, entry]}
    const other = {...flute, measures: repeated(count + 2)}
    const {text} = await part(band(reader, other), {part: 'P1', cues: true})
    expect(text.includes('<cue/>')).toBe(cued)
  })

  it("are in the reader's key and clef (Q5)", async () => {
    const clarinet = {
      ...oboe,
      name: 'Clarinet in B flat',
      key: '<key><fifths>2</fifths></key>',
      transpose: '<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose>',
    }
    const horn = {
      ...flute,
      name: 'Horn in F',
      abbreviation: 'Hn.',
      key: '<key><fifths>1</fifths></key>',
      transpose: '<transpose><diatonic>-4</diatonic><chromatic>-7</chromatic></transpose>',
    }
    // C5 for the horn in F is F4, and so G4 for the clarinet in B flat.
    const {measures, text} = await part(band(clarinet, horn), {part: 'P1', cues: true})
    expect(cuesOf(measures.get('9'))).toEqual(['G4', 'A4', 'B4', 'C5'])
    // F natural is a natural in two sharps, C natural likewise.
    expect(measures.get('9')).toContain('<accidental>natural</accidental>')
    expect(validateScore(text)).toEqual([])
  })

  it.each([
    ['en', 'Fl. (8va lower)'],
    ['fr', 'Fl. (8va plus bas)'],
    ['de', 'Fl. (8va tiefer)'],
    ['it', 'Fl. (8va sotto)'],
    ['es', 'Fl. (8va más grave)'],
    ['nl', 'Fl. (8va lager)'],
  ] as const)(
    'lie in the staff, moved by octaves and saying so in %s (Q5)',
    async (language, label) => {
      const high = {
        ...flute,
        measures: flute.measures.map((each) => each.replaceAll('<octave>5', '<octave>6')),
      }
      const {measures} = await part(band(oboe, high), {part: 'P1', cues: true, language})
      expect(measures.get('9')).toContain(`<words>${label}</words>`)
      expect(cuesOf(measures.get('9'))).toEqual(['C5', 'D5', 'E5', 'F5'])
    },
  )

  it("are spelled in the reader's of two enharmonic keys (K4)", async () => {
    const sharp = {...oboe, key: '<key><fifths>6</fifths></key>'}
    const flat = {
      ...flute,
      key: '<key><fifths>-6</fifths></key>',
      measures: Array.from({length: 12}, () => quarters('Gb4', 'Ab4', 'Bb4', 'Db5')),
    }
    const {measures} = await part(band(sharp, flat), {part: 'P1', cues: true})
    expect(cuesOf(measures.get('9'))).toEqual(['F#4', 'G#4', 'A#4', 'C#5'])
    expect(measures.get('9')).not.toContain('<accidental>')
  })

  it('are not taken from singers while anybody else plays (Q7)', async () => {
    const singer = {...flute, name: 'Soprano', abbreviation: 'S.'}
    const far = {...flute, name: 'Tuba', abbreviation: 'Tba.', clef: 'F4'}
    const both = await part(band(oboe, singer, far), {part: 'P1', cues: true})
    expect(both.text).toContain('<words>Tba.')
    const alone = await part(band(oboe, singer), {part: 'P1', cues: true})
    expect(alone.text).toContain('<words>S.')
    const named = await part(band(oboe, singer, far), {part: 'P1', cues: {from: ['Soprano']}})
    expect(named.text).toContain('<words>S.')
  })

  it('keep slurs, articulations and loudness, and nothing of the page, words or fingers (Q8)', async () => {
    const dressed = [
      `<direction><direction-type><dynamics><pp/></dynamics></direction-type></direction><direction><direction-type><wedge type="crescendo"/></direction-type></direction>${note('C5', 2, '<notations><slur number="1" type="start"/><articulations><staccato/></articulations><technical><fingering>3</fingering></technical></notations><lyric><text>la</text></lyric>')}${note('D5', 2)}`,
      `${note('E5', 2, '<notations><tied type="start"/></notations>').replace('<voice>', '<tie type="start"/><voice>')}${note('E5', 2, '<notations><tied type="stop"/></notations>').replace('<voice>', '<tie type="stop"/><voice>')}`,
    ]
    const measures = Array.from({length: 12}, (_, index) => dressed[index % 2] ?? '')
    const {text, measures: out} = await part(band(oboe, {...flute, measures}), {
      part: 'P1',
      cues: true,
    })
    const cued = `${out.get('9')}${out.get('10')}`
    for (const kept of ['<pp/>', '<staccato/>', 'type="crescendo"', '<tied type="start"/>'])
      expect(cued).toContain(kept)
    for (const gone of ['<fingering>', '<lyric>', '<tie ', 'default-x'])
      expect(cued).not.toContain(gone)
    // What would lead on beyond the cue ends with it.
    expect(cued).toContain('<slur number="1" type="stop"/>')
    expect(cued).toContain('<wedge number="1" type="stop"/>')
    expect(validateScore(text)).toEqual([])
  })

  it('break a rest of several measures, which still adds up (Q10)', async () => {
    const silence = rests(9)
    silence[0] = `<attributes><measure-style><multiple-rest>9</multiple-rest></measure-style></attributes>${rest()}`
    const reader = {...oboe, measures: [entry, ...silence, entry, entry]}
    const {text, measures} = await part(band(reader, flute), {part: 'P1', cues: true})
    expect(measures.get('2')).toContain('<multiple-rest>7</multiple-rest>')
    expect(text.match(/multiple-rest>\d/g)).toHaveLength(1)
    const short = await part(band(reader, flute), {part: 'P1', cues: {length: 4}})
    expect(short.measures.get('2')).toContain('<multiple-rest>5</multiple-rest>')
    expect(validateScore(text)).toEqual([])
  })

  it('bring their divisions, which go back after them', async () => {
    const eighths = Array.from({length: 12}, () =>
      ['C5', 'D5', 'E5', 'F5', 'G5', 'F5', 'E5', 'D5'].map((each) => note(each, 0.5)).join(''),
    )
    const coarse = {
      ...oboe,
      divisions: 1,
      measures: [
        ['G4', 'A4', 'B4', 'C5'].map((each) => note(each, 1, '', 1)).join(''),
        ...rests(9, 1),
        note('G4', 4, '', 1),
        note('G4', 4, '', 1),
      ],
    }
    const {text, measures} = await part(band(coarse, {...flute, measures: eighths}), {
      part: 'P1',
      cues: true,
    })
    expect(measures.get('9')).toContain('<divisions>2</divisions>')
    expect(measures.get('9')).toContain('<rest measure="yes">')
    expect(measures.get('9')).toContain('<duration>8</duration>')
    expect(measures.get('10')).not.toContain('<divisions>')
    expect(measures.get('11')).toContain('<divisions>1</divisions>')
    expect(measures.get('12')).not.toContain('<divisions>')
    expect(validateScore(text)).toEqual([])
  })

  it('are not doubled where the source has some', async () => {
    const own = quarters('C5', 'D5', 'E5', 'F5').replaceAll('<pitch>', '<cue/><pitch>')
    const silence = rests(9)
    silence[8] = own
    const reader = {...oboe, measures: [entry, ...silence, entry, entry]}
    const {told} = await part(band(reader, flute), {part: 'P1', cues: true})
    expect(told).toEqual([])
  })

  it('are missed where nobody plays', async () => {
    const silent = {...flute, measures: [entry, ...rests(10), entry]}
    const {told, text} = await part(band(oboe, silent), {part: 'P1', cues: true})
    expect(told.map(({code, severity}) => `${severity} ${code}`)).toEqual(['warning cues/none'])
    expect(text).not.toContain('<cue/>')
  })

  it('are left out of a measure that changes its divisions on the way', async () => {
    const silence = rests(9)
    silence[8] = `<note><rest/><duration>4</duration><voice>1</voice></note><attributes><divisions>4</divisions></attributes><note><rest/><duration>8</duration><voice>1</voice></note><attributes><divisions>2</divisions></attributes>`
    const reader = {...oboe, measures: [entry, ...silence, entry, entry]}
    const {told, measures} = await part(band(reader, flute), {part: 'P1', cues: true})
    expect(told.map(({code}) => code)).toContain('join/divisions')
    expect(measures.get('10')).not.toContain('<cue/>')
    expect(measures.get('9')).toContain('<cue/>')
  })

  it('are refused for no number of measures', async () => {
    const wrong = part(band(oboe, flute), {part: 'P1', cues: {rest: 0}})
    await expect(wrong).rejects.toThrow('cues/value')
    const nobody = part(band(oboe, flute), {part: 'P1', crossCues: 'P2'})
    await expect(nobody).rejects.toThrow('cues/no-player')
  })

  it('come from a timewise score as well', async () => {
    const partwise = band(oboe, flute)
    const {text} = await part(timewise(partwise), {part: 'P1', cues: true})
    expect(cuesOf(text)).toHaveLength(8)
    expect(validateScore(text)).toEqual([])
  })
})

function timewise(score: string): string {
  const parts = [...score.matchAll(/<part id="(P\d)">([\s\S]*?)<\/part>/g)]
  const head = score.slice(0, score.indexOf('<part id="P1">')).replace('partwise', 'timewise')
  const measures = parts.map(([, , content = '']) => [
    ...content.matchAll(/<measure number="(\d+)">([\s\S]*?)<\/measure>/g),
  ])
  const music = (measures[0] ?? []).map(([, number = ''], index) => {
    const inner = parts.map(
      ([, id = ''], at) => `<part id="${id}">${measures[at]?.[index]?.[2]}</part>`,
    )
    return `<measure number="${number}">${inner.join('')}</measure>`
  })
  return `${head}${music.join('')}</score-timewise>`
}
