import {expect, it} from 'vitest'
import {instrumentById, instruments, LANGUAGES} from '../../lib/instruments/instrument.ts'
import type {Language} from '../../lib/instruments/instrument.ts'
import {
  cutName,
  formatPartName,
  languageOfName,
  readDesks,
} from '../../lib/instruments/part-name.ts'

it.each([
  // The order of renotation-rules N1: ordinal, instrument, key.
  ['clarinet-b-flat', 'en', [], 'Clarinet in B flat', 'Cl. Bb'],
  ['clarinet-b-flat', 'en', [1], '1st Clarinet in B flat', 'Cl. Bb 1'],
  ['clarinet-b-flat', 'en', [2], '2nd Clarinet in B flat', 'Cl. Bb 2'],
  ['clarinet-b-flat', 'en', [11], '11th Clarinet in B flat', 'Cl. Bb 11'],
  ['clarinet-b-flat', 'fr', [1], '1re Clarinette en si bémol', 'Cl. sib 1'],
  ['clarinet-b-flat', 'fr', [2], '2e Clarinette en si bémol', 'Cl. sib 2'],
  ['alto-saxophone-e-flat', 'fr', [1], '1er Saxophone alto en mi bémol', 'Sax. alto mib 1'],
  ['clarinet-b-flat', 'de', [1], '1. Klarinette in B', 'Klar. B 1'],
  ['clarinet-b-flat', 'it', [1], 'Clarinetto 1o in si bemolle', 'Cl. sib 1'],
  ['flute', 'es', [2], 'Flauta 2a', 'Fl. 2'],
  ['clarinet-b-flat', 'nl', [1], '1e klarinet in bes', 'Klar. bes 1'],
  ['clarinet-b-flat', 'en', [1, 2], 'Clarinets in B flat 1-2', 'Cl. Bb 1-2'],
] as const)('%s in %s for desks %j is %s', (id, language, desks, name, abbreviation) => {
  const instrument = instrumentById(id)
  expect(instrument && formatPartName(instrument, language as Language, desks)).toEqual({
    name,
    abbreviation,
  })
})

it.each([
  ['Clarinet 2', [2]],
  ['Cor I', [1]],
  ['Horn IV', [4]],
  ['1. Horn', [1]],
  ['2nd Trumpet', [2]],
  ['Corno 3o', [3]],
  ['Clarinetto 1º in si♭', [1]],
  ['Horns 1-2', [1, 2]],
  ['Bugles 1 & 2', [1, 2]],
  ['Trombones I/II', [1, 2]],
  ['Violin', []],
  ['Trumpet in C', []],
  ['Organ 8’', []],
])('%s has desks %j', (name, desks) => {
  expect(readDesks(name)).toEqual(desks)
})

it.each([
  ['Clarinets', 'en'],
  ['Petite flûte en ré♭', 'fr'],
  ['Klarinette in B', 'de'],
  ['2 Fagotti', 'it'],
  ['Trompeta', 'es'],
  ['altviool', 'nl'],
  ['Oboe', 'en'],
  ['Zink-Xyz', undefined],
  ['', undefined],
])('%s is in %s', (name, language) => {
  expect(languageOfName(name)).toBe(language)
})

it('knows the language of every fifth name that it prints', () => {
  const labels = instruments.flatMap((each) => LANGUAGES.map((language) => each.labels[language]))
  const names = labels.map(({name}) => name).filter((_, index) => index % 5 === 0)
  expect(names.filter((name) => languageOfName(name) === undefined)).toEqual([])
})

it.each([
  ['Clarinet in B flat', 'Clarinet in B|flat'],
  ['2nd Clarinet in B flat', '2nd Clarinet in B|flat'],
  ['Cl. Bb 2', 'Cl. B|flat| 2'],
  ['Clarinette en si bémol', 'Clarinette en si|flat'],
  ['Cl. sib 1', 'Cl. si|flat| 1'],
  ['Horn in F♯ basso', 'Horn in F|sharp| basso'],
  // German and Dutch keys need no sign; an abbreviation is no key.
  ['Klarinette in B', 'Klarinette in B'],
  ['Klarinette in Es', 'Klarinette in Es'],
  ['Cb. Sax. Eb', 'Cb. Sax. E|flat'],
  ['Flute', 'Flute'],
])('%s is cut into %s', (name, pieces) => {
  expect(
    cutName(name)
      .map(({text}) => text)
      .join('|'),
  ).toBe(pieces)
})
