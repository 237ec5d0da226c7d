import {readFileSync} from 'node:fs'
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {instrumentById, instruments, LANGUAGES} from '../../lib/instruments/instrument.ts'
import {labelReader, readLabel} from '../../lib/instruments/label.ts'
import type {LabelReading} from '../../lib/instruments/label.ts'
import {corpusScores, describeCorpus, readCorpusText} from '../support/corpus.ts'
import {labelTable} from './label-table.ts'

const reader = labelReader()

const rows = labelTable
  .trim()
  .split('\n')
  .map((line) => line.split(' | ') as [string, string])

describe('labels in six languages', () => {
  it('are many', () => expect(rows.length).toBeGreaterThan(250))

  it.each(rows)('%s: %s', (label, expected) => {
    const reading = reader.readLabel(label)
    expect(describeReading(reading)).toBe(expected.replace('?', ''))
    const first = reading.instruments[0]?.confidence ?? 0
    if (expected.startsWith('?')) {
      expect(first).toBeLessThan(0.9)
      expect(reading.instruments.length).toBeGreaterThan(1)
    } else expect(first).toBeGreaterThan(0.7)
  })
})

describe('names that mean several instruments', () => {
  it.each([
    ['Alto', 'viola alto-horn-e-flat alto-voice'],
    ['Baryton', 'baritone-voice saxhorn-baritone-b-flat'],
    ['Bariton', 'baritone-voice bariton-german'],
    ['Bass', 'bass-voice double-bass'],
    ['Basse', 'bass-voice saxhorn-bass-b-flat'],
    ['Contrebasse', 'double-bass saxhorn-contrabass-b-flat saxhorn-contrabass-e-flat'],
    ['Tenor Horn', 'alto-horn-e-flat tenorhorn-b-flat'],
    ['Bugle', 'flugelhorn-b-flat bugle-b-flat'],
    ['Tuba', 'tuba french-tuba-c bass-tuba-f'],
    ['Eb Piccolo', 'piccolo-e-flat piccolo-d-flat'],
    ['Corno basso', 'serpent horn-f bass-horn'],
    ['Horn in D', 'natural-horn horn-f'],
    ['Flicorno basso', 'euphonium saxhorn-bass-b-flat'],
  ])('%s: %s', (label, ids) => {
    const candidates = reader.readLabel(label).instruments
    for (const id of ids.split(' ')) {
      const found = candidates.find((candidate) => candidate.id === id)
      expect(found?.confidence, id).toBeGreaterThan(0.04)
      expect(found?.reason, id).not.toBe('')
    }
    expect(candidates[0]?.confidence).toBeLessThan(0.9)
  })

  it.each([
    ['Alto', 'Violons I | Violons II | Violoncelles', 'viola'],
    ['Alto', 'Bugles si♭ | Pistons si♭ | Saxhorn basse si♭', 'alto-horn-e-flat'],
    ['Alto', 'Soprano | Tenor | Bass', 'alto-voice'],
    ['Contrebasse', 'Violons I | Violons II | Violoncelles', 'double-bass'],
    ['Contrebasse', 'Petit bugle mi♭ | Bugles si♭ | Altos mi♭', 'saxhorn-contrabass-b-flat'],
    ['Basse', 'Petit bugle mi♭ | Bugles si♭ | Altos mi♭', 'saxhorn-bass-b-flat'],
    ['Baryton', 'Petit bugle mi♭ | Bugles si♭ | Altos mi♭', 'saxhorn-baritone-b-flat'],
    ['Bariton', 'Flügelhorn 1 | Flügelhorn 2 | Trompete in B | Tenorhorn in B', 'bariton-german'],
    ['Baritone', 'Soprano | Alto | Tenor', 'baritone-voice'],
    [
      'Soprano',
      'Solo Cornet | 1st Tenor Horn in E flat | Flugelhorn | Euphonium',
      'soprano-cornet-e-flat',
    ],
    ['Bugle', 'Clarinettes si♭ | Saxophones altos mi♭ | Barytons si♭', 'flugelhorn-b-flat'],
    ['Tenor', 'Alto Saxophone | Baritone Saxophone | Soprano', 'tenor-saxophone-b-flat'],
  ])('%s beside %s is %s', (label, company, id) => {
    const read = reader.readLabels([label, ...company.split(' | ')])
    expect(read[0]?.instruments[0]?.id).toBe(id)
    expect(read[0]?.instruments[0]?.confidence).toBeGreaterThan(0.5)
  })
})

describe('keys', () => {
  it('takes a B that nobody explains for both', () => {
    const {key, otherKeys} = readLabel('Horn in B')
    expect([key, ...otherKeys]).toEqual(['Bb', 'B'])
  })

  it('knows that German B is B flat and H is B natural', () => {
    expect(reader.readLabel('Hörner in B')).toMatchObject({key: 'Bb', otherKeys: []})
    expect(reader.readLabel('Hörner in H')).toMatchObject({key: 'B', otherKeys: []})
  })

  it.each([
    ['E♭ Clarinet', 'Eb'],
    ['E-flat Clarinet', 'Eb'],
    ['Clarinet in E flat', 'Eb'],
    ['Clarinette en mi♭', 'Eb'],
    ['Clarinette Mib', 'Eb'],
    ['Clarinette mi b', 'Eb'],
    ['Clarinette en mi bémol', 'Eb'],
    ['Clarinetto in mi bemolle', 'Eb'],
    ['Clarinete en mi bemol', 'Eb'],
    ['Klarinette in Es', 'Eb'],
    ['Klarinette (Es)', 'Eb'],
    ['klarinet in es', 'Eb'],
    ['Horn in Fis', 'F#'],
    ['Cor en fa dièse', 'F#'],
    ['Cor en ut', 'C'],
    ['Corno in La', 'A'],
    ['Horn [F]', 'F'],
    ['Trompete in As', 'Ab'],
  ])('%s: %s', (label, key) => expect(reader.readLabel(label).key).toBe(key))

  it.each([
    'C. A.',
    'Cb.',
    'Bassons',
    'E. Hn.',
    'A. Sax.',
    'B. Cl.',
    'C. B.',
    'Contre-basse',
    'Grande Flûte',
  ])('%s names none', (label) => expect(reader.readLabel(label).key).toBeUndefined())
})

describe('what is told besides', () => {
  it('tells which words decided', () => {
    const {tokens, instruments: candidates} = reader.readLabel('1res Clarinettes en si♭ (ad lib.)')
    expect(tokens.map(({text, role}) => `${text} ${role}`)).toEqual([
      '1res number',
      'Clarinettes instrument',
      'en ignored',
      'si key',
      '♭ key',
      'ad optional',
      'lib optional',
    ])
    expect(candidates[0]?.words).toEqual(['Clarinettes'])
  })

  it.each([
    ['Clarinettes en si♭', 'fr'],
    ['2 Hörner in Es', 'de'],
    ['Clarinetti in Si bemolle', 'it'],
    ['Trompas en fa', 'es'],
    ['Klarinetten in bes', 'nl'],
    ['1st Clarinet in B flat', 'en'],
  ])('guesses the language of %s', (label, language) => {
    expect(reader.readLabel(label).languages[0]).toMatchObject({language})
  })

  it('puts names of the user first', () => {
    const own = labelReader({userNames: {'Gr. Schlüssel': 'contrabassoon'}})
    expect(own.readLabel('Gr. Schlüssel').instruments[0]?.id).toBe('contrabassoon')
    expect(() => labelReader({userNames: {x: 'kazoo'}})).toThrow(RangeError)
  })

  it('believes the language that it is told', () => {
    expect(readLabel('Bugle', {language: 'en'}).instruments[0]?.id).toBe('bugle-b-flat')
    expect(readLabel('Bugle', {language: 'fr'}).instruments[0]?.id).toBe('flugelhorn-b-flat')
  })

  it.each(['', '  ', 'Music', '音轨 10', '(', ')', 'in', '♭', '1', ' – '])(
    'finds nothing in "%s"',
    (label) => {
      expect(reader.readLabel(label).instruments).toEqual([])
    },
  )
})

/** Every name of the catalogue: found among the first, unless the name is that of another more usual instrument. */
describe('the catalogue’s own names', () => {
  const names = instruments.flatMap(({id, labels}) =>
    LANGUAGES.flatMap((language) => {
      const {name, plural, abbreviation} = labels[language]
      return [
        {id, language, form: name, kind: 'name'},
        {id, language, form: plural, kind: 'plural'},
        {id, language, form: abbreviation, kind: 'abbreviation'},
      ]
    }),
  )
  it.each(LANGUAGES)('in %s are read', (language) => {
    const inLanguage = labelReader({language})
    const missed = names
      .filter((one) => one.language === language && one.kind !== 'abbreviation')
      .filter(({id, form}) => !inLanguage.readLabel(form).instruments.some((one) => one.id === id))
    expect(missed).toEqual([])
  })

  it('are the likeliest reading of themselves nearly always', () => {
    const ownReaders = new Map(LANGUAGES.map((language) => [language, labelReader({language})]))
    const full = names.filter(({kind}) => kind === 'name')
    const wrong = full.filter(({id, language, form}) => {
      const first = ownReaders.get(language)?.readLabel(form).instruments[0]
      return first?.id !== id
    })
    const share = 1 - wrong.length / full.length
    console.warn(`names read as themselves: ${(100 * share).toFixed(1)} %`)
    expect(share).toBeGreaterThan(0.95)
  })
})

describe('confidence', () => {
  it('of 0.9 and more is hardly ever wrong about a name of the catalogue, in whatever language', () => {
    const bins = new Map<number, {all: number; right: number}>()
    for (const {id, labels} of instruments)
      for (const language of LANGUAGES)
        for (const form of [labels[language].name, labels[language].plural]) {
          const first = reader.readLabel(form).instruments[0]
          const confidence = first?.confidence ?? 0
          const bin = confidence >= 0.9 ? 0.9 : Math.floor(confidence * 5) / 5
          const counted = bins.get(bin) ?? {all: 0, right: 0}
          bins.set(bin, {all: counted.all + 1, right: counted.right + (first?.id === id ? 1 : 0)})
        }
    for (const [bin, {all, right}] of [...bins].toSorted(([a], [b]) => a - b))
      console.warn(`confidence from ${bin}: ${right} of ${all} right`)
    const sure = bins.get(0.9) ?? {all: 0, right: 0}
    expect(sure.all).toBeGreaterThan(1000)
    expect(sure.right / sure.all).toBeGreaterThan(0.98)
  })
})

describe('any text', () => {
  const words = [
    '1',
    '2.',
    'I',
    'Cl.',
    'B',
    'es',
    '(',
    ')',
    'oder',
    'ou',
    'in',
    'alto',
    'Corno',
    '♭',
    '-',
    'à',
    '/',
    'auch',
    'clé de fa',
  ]
  it('is read without failing, and its tokens are in it', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(fc.constantFrom(...words), {maxLength: 9}).map((some) => some.join(' ')),
        ),
        (label) => {
          for (const {text, start} of reader.readLabel(label).tokens)
            expect(label.slice(start, start + text.length)).toBe(text)
        },
      ),
      {numRuns: 300},
    )
  })
})

describe('the demo score', () => {
  it('is understood', () => {
    const labels = partNames(readFileSync('fixtures/demo/score.musicxml', 'utf8'))
    const read = reader.readLabels(labels)
    expect(read.map(describeReading)).toEqual([
      'piccolo-d-flat Db',
      'clarinet-e-flat Eb',
      'clarinet-b-flat Bb',
      'bassoon',
      'cornet-b-flat Bb',
      'horn-e-flat Eb',
      'alto-horn-e-flat Eb',
      'saxhorn-baritone-b-flat Bb F4',
      'saxhorn-contrabass-b-flat Bb F4',
      'snare-drum and bass-drum',
    ])
  })
})

describeCorpus('labels of the corpus', () => {
  const labels = [
    ...new Set(
      corpusScores()
        .filter(({wellFormed}) => wellFormed)
        .flatMap((file) => partNames(readCorpusText(file))),
    ),
  ]
  // Names that encoders put where no instrument was named.
  const nameless =
    /music|part|stimme|^p?\d+$|^[\p{Lo}\s\d]+$|no name|dynamics|player|instrument|_\d|8va|voice \d|kontakt|synth|midi|jianpu|varbar|staff|xeb|b.r$/iu
  const named = labels.filter((label) => /\p{L}/u.test(label) && !nameless.test(label))

  it('are understood', () => {
    const missed = named.filter((label) => reader.readLabel(label).instruments.length === 0)
    console.warn(
      `${named.length - missed.length} of ${named.length} labels understood; not: ${missed.join(' · ')}`,
    )
    expect(named.length).toBeGreaterThan(100)
    expect(missed.length / named.length).toBeLessThan(0.03)
  })
})

function partNames(xml: string): readonly string[] {
  return [...xml.matchAll(/<part-name[^>]*>([^<]+)<\/part-name>/g)]
    .map(([, name = '']) => name.replaceAll('&amp;', '&').trim())
    .filter((name) => name !== '')
}

function topId({instruments: candidates}: LabelReading): string {
  return candidates[0]?.id ?? 'nothing'
}

function describeReading(reading: LabelReading): string {
  const {key, otherKeys, keyOctave, numbers, players, rank, clef, optional} = reading
  // Which other key a bare `B` may be is tested by itself.
  const keys = key === 'Bb' && otherKeys[0] === 'B' ? [key] : [key, ...otherKeys]
  return [
    topId(reading),
    key && keys.join(),
    keyOctave,
    numbers.join(),
    players && `x${players}`,
    rank,
    clef && `${clef.sign}${clef.line}`,
    optional && 'opt',
    ...reading.alternatives.map((other) => `or ${topId(other)}`),
    ...reading.together.map((other) => `and ${topId(other)}`),
    ...reading.insteadOf.map((other) => `for ${topId(other)}`),
    ...reading.doublings.map(
      ({numbers: desks, reading: other}) =>
        `doubles ${desks.length > 0 ? `${desks.join()}:` : ''}${topId(other)}`,
    ),
  ]
    .filter(Boolean)
    .join(' ')
}

describe('candidates', () => {
  it('are instruments of the catalogue, and their confidences add up to 1 at most', () => {
    for (const [label] of rows) {
      const candidates = reader.readLabel(label).instruments
      const sum = candidates.reduce((total, {confidence}) => total + confidence, 0)
      expect(sum).toBeLessThanOrEqual(1.001)
      for (const {id} of candidates) expect(instrumentById(id), id).toBeDefined()
    }
  })
})
