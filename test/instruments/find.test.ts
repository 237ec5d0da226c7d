import {describe, expect, test} from 'vitest'
import {
  findInstrument,
  findNotation,
  instrumentFinder,
  listInstruments,
  listNotations,
} from '../../lib/instruments/find.ts'
import type {Search} from '../../lib/instruments/find.ts'
import {foldName} from '../../lib/instruments/fold.ts'
import {instruments, LANGUAGES} from '../../lib/instruments/instrument.ts'
import {attestedNames} from '../../lib/instruments/attested.ts'
import {editDistance, nearest} from '../../lib/instruments/nearest.ts'
import {notations} from '../../lib/instruments/notation.ts'

const find = instrumentFinder()

/** `one id`, `several first id, second id`, `none nearest id`; the count limits the ids shown. */
function told(search: Search<{readonly id: string}>, count = 1): string {
  if (search.kind === 'one') return `one ${search.found.id}`
  const all = search.kind === 'several' ? search.candidates : search.nearest
  return [search.kind, ...all.slice(0, count).map(({id}) => id)].join(' ')
}

describe('findInstrument', () => {
  test.each([
    // English
    ['clarinet-b-flat', 'one clarinet-b-flat'],
    ['Clarinet-B-Flat', 'one clarinet-b-flat'],
    ['clarinet in B flat', 'one clarinet-b-flat'],
    ['Bb Clarinet', 'one clarinet-b-flat'],
    ['B♭ clarinet', 'one clarinet-b-flat'],
    ['B-flat Clarinet II', 'one clarinet-b-flat'],
    ['1st Clarinet in Bb', 'one clarinet-b-flat'],
    ['Horn in F', 'one horn-f'],
    ['F horn', 'one horn-f'],
    ['English horn', 'one english-horn'],
    ['Alto Sax', 'one alto-saxophone-e-flat'],
    ['Db piccolo', 'one piccolo-d-flat'],
    ['alto horn in E flat', 'one alto-horn-e-flat'],
    ['bassoons', 'one bassoon'],
    // French
    ['clarinette en si bémol', 'one clarinet-b-flat'],
    ['Clarinette si♭', 'one clarinet-b-flat'],
    ['clarinette en la', 'one clarinet-a'],
    ['petite flûte', 'one piccolo'],
    ['PETITE FLUTE', 'one piccolo'],
    ['contrebasson', 'one contrabassoon'],
    // German
    ['Klarinette in B', 'one clarinet-b-flat'],
    ['B-Klarinette', 'one clarinet-b-flat'],
    ['Es-Klarinette', 'one clarinet-e-flat'],
    ['Kontrafagott', 'one contrabassoon'],
    ['Pauken', 'one timpani'],
    ['Tuba in Es', 'one bass-tuba-e-flat'],
    // Italian
    ['clarinetto in si bemolle', 'one clarinet-b-flat'],
    ['clarinetto in la', 'one clarinet-a'],
    ['corno in fa 1', 'one horn-f'],
    ['Fagotti', 'one bassoon'],
    // Spanish
    ['clarinete en si bemol', 'one clarinet-b-flat'],
    ['trompa en fa', 'one horn-f'],
    ['flautin', 'one piccolo'],
    // Dutch
    ['klarinet in bes', 'one clarinet-b-flat'],
    ['Bes-klarinet', 'one clarinet-b-flat'],
    ['hoorn in f', 'one horn-f'],
    ['althoorn in es', 'one alto-horn-e-flat'],
  ])('%s: %s', (words, expected) => {
    expect(told(find(words))).toBe(expected)
  })

  test.each([
    ['clarinet', 'several clarinet-b-flat'],
    ['trombone', 'several trombone-tenor'],
    ['tenor horn', 'several alto-horn-e-flat alto-horn-f'],
    ['alto', 'several viola alto-voice'],
    ['bombardino', 'several euphonium saxhorn-bass-b-flat'],
    ['saxofoon', 'several soprano-saxophone-b-flat'],
    ['petite clarinette', 'several clarinet-e-flat'],
  ])('%s may mean several: %s', (words, expected) => {
    expect(told(find(words), expected.split(' ').length - 1)).toBe(expected)
  })

  test('what matches less well is told besides', () => {
    // French bugle is the flugelhorn, English bugle the signal instrument.
    const search = find('bugle')
    expect(told(search)).toBe('one bugle-b-flat')
    expect(search.kind === 'one' && search.others.map(({id}) => id)).toContain('flugelhorn-b-flat')
  })

  test.each([
    ['bassooon', 'bassoon'],
    ['clarnet', 'clarinet-b-flat'],
    ['trumepts', 'trumpet-b-flat'],
    ['fluet', 'flute'],
    ['Kontrafagut', 'contrabassoon'],
  ])('%s is perhaps %s', (words, expected) => {
    const search = find(words)
    expect(search.kind).toBe('none')
    expect(search.kind === 'none' && search.nearest.map(({id}) => id)).toContain(expected)
  })

  test.each(['', '   ', '?!', 'zzzzzzzzzzzzzzzzzzzz'])('%j is nothing', (words) => {
    const search = find(words)
    expect(search.kind).toBe('none')
    expect(search.kind === 'none' && search.nearest.length).toBe(0)
  })

  test('the one-off function finds the same', () => {
    expect(findInstrument('Klarinette in B')).toEqual(find('Klarinette in B'))
  })

  test('every id finds its instrument', () => {
    for (const {id} of instruments) expect(told(find(id))).toBe(`one ${id}`)
  })

  test.each(LANGUAGES)(
    'every printed name, plural and abbreviation in %s finds its instrument',
    (language) => {
      for (const instrument of instruments) {
        const {name, plural, abbreviation} = instrument.labels[language]
        for (const form of [name, plural, abbreviation, name.toUpperCase()]) {
          const search = find(form)
          const offered =
            search.kind === 'one'
              ? [search.found, ...search.others]
              : search.kind === 'several'
                ? search.candidates
                : []
          expect(
            offered.map(({id}) => id),
            `${instrument.id}: ${form}`,
          ).toContain(instrument.id)
        }
      }
    },
  )

  test('every attested form finds its instrument among others', () => {
    for (const instrument of instruments) {
      for (const {form} of attestedNames(instrument.id)) {
        const search = find(form)
        const offered = search.kind === 'one' ? [search.found, ...search.others] : []
        const candidates = search.kind === 'several' ? search.candidates : offered
        expect(
          candidates.map(({id}) => id),
          `${instrument.id}: ${form}`,
        ).toContain(instrument.id)
      }
    }
  }, 30_000)
})

describe('keys in names', () => {
  test.each([
    ['clarinet in E flat', 'eb'],
    ['Eb clarinet', 'eb'],
    ['E♭ clarinet', 'eb'],
    ['E-flat clarinet', 'eb'],
    ['clarinette en mi bémol', 'eb'],
    ['clarinette mib', 'eb'],
    ['clarinette mi ♭', 'eb'],
    ['clarinetto in mi bemolle', 'eb'],
    ['clarinete en mi bemol', 'eb'],
    ['klarinet in es', 'eb'],
    ['klarinet mi mol', 'eb'],
    ['Klarinette in As', 'ab'],
    ['Klarinette in H', 'b'],
    ['Klarinette in B', 'bb b'],
    ['bugel in bes', 'bb'],
    ['Horn in Fis', 'f#'],
    ['cor en fa dièse', 'f#'],
    ['corno in fa diesis', 'f#'],
    ['horn in F♯', 'f#'],
    ['cor en ut', 'c'],
    ['corno in do', 'c'],
    ['horn in B natural basso', 'b'],
    ['B. Cl.', ''],
    ["oboe d'amore", ''],
    ['trombone a macchina', ''],
    ['A', ''],
  ])('%s: %s', (name, keys) => {
    expect(foldName(name).keys.join(' ')).toBe(keys)
  })

  test('words are compared without accents, case, points, numbers and order', () => {
    expect(foldName('Flûtes 1. & 2.').words).toEqual(['flutes'])
    expect(foldName('Große Trommel').text).toBe('grosse trommel')
    expect(foldName('2e Cor en fa').words).toEqual(foldName('COR').words)
    expect(foldName('celesta’s').text).toBe('celestas')
  })
})

describe('findNotation', () => {
  test.each([
    ['concert', 'one concert'],
    ['horn.crook-f.old', 'one horn.crook-f.old'],
    ['HORN.CROOK-F.OLD', 'one horn.crook-f.old'],
    ['horn.crook-f.bass-old', 'one horn.crook-f.bass-old'],
    ['horn in F old', 'one horn.crook-f.old'],
    ['horn in Fis old', 'one horn.crook-f-sharp.old'],
    ['horn in E flat, new notation', 'one horn.crook-e-flat.new'],
    ['cello false treble', 'one cello.false-treble'],
    ['double bass', 'one double-bass.modern'],
    ['concert pitch', 'one concert'],
  ])('%s: %s', (words, expected) => {
    expect(told(findNotation(words))).toBe(expected)
  })

  test('German B may be B flat or B natural', () => {
    const search = findNotation('horn in B basso old')
    expect(search.kind === 'several' && search.candidates.map(({id}) => id).toSorted()).toEqual(
      expect.arrayContaining(['horn.crook-b-flat-basso.old', 'horn.crook-b-natural-basso.old']),
    )
  })

  test('a misspelled id is offered the nearest', () => {
    expect(told(findNotation('horn.crok-f.old'))).toBe('none horn.crook-f.old')
    expect(findNotation('')).toEqual({kind: 'none', nearest: []})
  })

  test('every id finds its notation', () => {
    for (const {id} of notations()) expect(told(findNotation(id))).toBe(`one ${id}`)
  })
})

describe('lists', () => {
  test('without words there is everything', () => {
    expect(listInstruments()).toHaveLength(179)
    expect(listNotations(' ')).toBe(notations())
  })

  test('with words there is what they may mean, best first', () => {
    expect(listInstruments('piccolo').map(({id}) => id)).toEqual([
      'piccolo',
      'piccolo-d-flat',
      'piccolo-e-flat',
    ])
    expect(listInstruments('pikolo')).toEqual([])
  })

  test('the notations of an instrument are found by its name in any language', () => {
    const ids = listNotations('violoncelle').map(({id}) => id)
    expect(ids).toEqual(['cello.modern', 'cello.false-treble'])
  })
})

describe('nearest', () => {
  test.each([
    ['bassoon', 'bassoon', 0],
    ['basoon', 'bassoon', 1],
    ['abssoon', 'bassoon', 1],
    ['', 'horn', 4],
    ['horn', '', 4],
    ['kitten', 'sitting', 3],
  ])('from %j to %j: %d', (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance)
    expect(editDistance(b, a)).toBe(distance)
  })

  test('offers each value once, the nearest first, and nothing far off', () => {
    const values = [
      ['oboes', 1],
      ['oboe', 1],
      ['hobo', 2],
      ['contrabassoon', 3],
    ] as const
    expect(nearest('obeo', values)).toEqual([1, 2])
    expect(nearest('obeo', values, 1)).toEqual([1])
  })
})
