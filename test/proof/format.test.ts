import {describe, expect, test} from 'vitest'
import {certificate, formatCertificate} from '../../lib/proof/certificate.ts'
import {prove} from '../../lib/proof/compare.ts'
import type {ProveOptions} from '../../lib/proof/compare.ts'
import {formatProof} from '../../lib/proof/format.ts'
import {fraction} from '../../lib/proof/fraction.ts'
import {astrayWords, beatAt, intervalWords, lengthWords} from '../../lib/proof/words.ts'
import {attributes, note, score, sourceOf, transpose} from './score.ts'

const quarters = (names: string) =>
  attributes('<divisions>1</divisions>') +
  names
    .split(' ')
    .map((name) => note(name, 1))
    .join('')
const tune = ['G4 A4 B4 G4', 'D5 B4 C5 A4', 'B4 G4 E4 F#4', 'G4 D4 E4 C4', 'D4 F#4 G4 r']
const named = (name: string, ...measures: readonly string[]) =>
  score({[`P1 ${name}`]: measures.map(quarters)})

async function lines(before: string, after: string, options?: ProveOptions & {limit?: number}) {
  const {limit, ...others} = options ?? {}
  const proof = await prove(sourceOf(before), sourceOf(after), others)
  return formatProof(proof, limit === undefined ? {} : {limit})
}

describe('a proof in words', () => {
  test('all is well', async () => {
    const down = named('Clarinet', ...tune)
    expect(await lines(down, down)).toEqual([
      'Clarinet (P1): 19 notes, all sound the same',
      'They sound the same',
    ])
  })

  test('one note is wrong, another spelled otherwise', async () => {
    const after = named('Euphonium', 'G4 A4 B3 G4', 'D5 Cb5 C5 A4', ...tune.slice(2))
    expect(await lines(named('Ophicleide', ...tune), after)).toEqual([
      'Ophicleide (P1) as Euphonium (P1): 19 notes, 18 sound the same, 1 difference, 1 spelled otherwise',
      '  measure 1, beat 3: B3 sounds instead of B4 (an octave low)',
      'They do not sound the same',
    ])
  })

  test('notes in a row that are off alike share a line', async () => {
    const after = named('Horn', tune[0] ?? '', 'D4 B3 C4 A3', 'B3 G4 E4 F#4', ...tune.slice(3))
    expect(await lines(named('Horn', ...tune), after)).toEqual([
      'Horn (P1): 19 notes, 14 sound the same, 5 differences',
      '  measures 2 to 3: 5 notes sound an octave low',
      'They do not sound the same',
    ])
  })

  test('the first differences, and how many more', async () => {
    const after = named('Horn', 'G4 r B4 r', 'D5 r C5 r', ...tune.slice(2))
    expect(await lines(named('Horn', ...tune), after, {limit: 1})).toEqual([
      'Horn (P1): 19 notes, 15 sound the same, 4 differences',
      '  measure 1, beat 2: A4 is missing',
      '  … and 3 more differences',
      'They do not sound the same',
    ])
  })

  test('a whole part astray', async () => {
    const after = named('Horn', ...tune).replace(
      '<divisions>',
      `${transpose(0, 0, {octaves: 1})}<divisions>`,
    )
    expect(await lines(named('Horn', ...tune), after)).toEqual([
      'Horn (P1): 19 notes, 0 sound the same, 19 differences',
      '  everything sounds an octave high',
      'They do not sound the same',
    ])
  })

  test('what was reported', async () => {
    const after = named('Tuba', 'G4 A4 B4 G4', 'D4 B3 C4 A3', ...tune.slice(2))
    const intended = [
      {
        kind: 'moved',
        from: {measure: '2'},
        to: {measure: '2'},
        semitones: -12,
        reason: 'measure 2 an octave down',
      },
    ] as const
    expect(await lines(named('Tuba', ...tune), after, {intended})).toEqual([
      'Tuba (P1): 19 notes, 15 sound the same, 4 differ as reported',
      '  as reported: measure 2 an octave down (4 notes)',
      'They sound the same, except where the report says otherwise',
    ])
  })

  test('parts left over, measures lost, no name', async () => {
    const before = score({
      P1: tune.map(quarters),
      'P2 Drum': [note('x', 4)],
      'P3 Bell': [note('C6', 4)],
    })
    const after = score({P1: tune.slice(0, 4).map(quarters), 'P3 Bell': [note('C6', 4)]})
    expect(await lines(before, after)).toEqual([
      'part P1: 19 notes, 16 sound the same, 3 differences, 5 measures have become 4',
      '  measure 5, beat 1: D4 is missing',
      '  measure 5, beat 2: F#4 is missing',
      '  measure 5, beat 3: G4 is missing',
      'Bell (P3): 1 note, all sound the same',
      'Drum (P2): nothing in AFTER belongs to it',
      'They do not sound the same',
    ])
  })

  test('another piece', async () => {
    const after = named('Horn', ...tune.map(() => 'Db3 Eb5 Ab2 Bb5'))
    expect(await lines(named('Horn', ...tune), after)).toEqual([
      'Horn (P1): this is other music (19 notes, 0 sound the same, 20 differences)',
      'This is another piece',
    ])
  })

  test('nothing in common', async () => {
    const after = score({'P2 Harp': [note('C6', 4)], 'P3 Bell': [note('C7', 4)]})
    expect(await lines(named('Horn', ...tune), after)).toEqual([
      'Horn (P1): nothing in AFTER belongs to it',
      'Harp (P2): nothing in BEFORE belongs to it',
      'Bell (P3): nothing in BEFORE belongs to it',
      'The scores have no part in common',
    ])
  })
})

describe('words', () => {
  test.each([
    [1, 'a semitone high'],
    [-14, 'a major ninth low'],
    [24, 'two octaves high'],
    [-15, 'an octave and a minor third low'],
    [67, '5 octaves and a fifth high'],
  ])('%i semitones: %s', (semitones, words) => {
    expect(astrayWords(fraction(semitones))).toBe(words)
  })

  test('parts of a semitone', () => {
    expect(intervalWords(fraction(1, 2))).toBe('a quarter tone')
    expect(intervalWords(fraction(-133, 100))).toBe('1.33 semitones')
  })

  test.each([
    [0, 1, 1, '1'],
    [1, 2, 1, '1½'],
    [4, 3, 1, '2⅓'],
    [1, 1, 2, '1½'],
    [1, 1, 0.5, '3'],
    [7, 5, 1, '2+2/5'],
  ])('the beat at %i/%i in a unit of %d is %s', (numerator, denominator, unit, beat) => {
    expect(beatAt(fraction(numerator, denominator), fraction(unit * 2, 2))).toBe(beat)
  })

  test.each([
    [1, 1, 'a quarter'],
    [-3, 2, 'a dotted quarter'],
    [5, 1, '5 quarters'],
    [2, 7, '2/7 of a quarter'],
  ])('a length of %i/%i is %s', (numerator, denominator, words) => {
    expect(lengthWords(fraction(numerator, denominator))).toBe(words)
  })
})

describe('the certificate', () => {
  const inputs = {
    before: {name: 'old.musicxml', sha256: 'ab'.repeat(32)},
    after: {name: 'new.musicxml', sha256: 'CD'.repeat(32)},
  }

  test('is the same, to the letter, for the same proof', async () => {
    const after = named('Horn', 'G4 r B4 G4', ...tune.slice(1))
    const make = async () =>
      certificate(await prove(sourceOf(named('Horn', ...tune)), sourceOf(after)), inputs, '1.2.3')
    expect(JSON.stringify(await make())).toBe(JSON.stringify(await make()))
    expect(formatCertificate(await make())).toBe(
      [
        'renotate certificate 1, made by renotate 1.2.3',
        'before: old.musicxml',
        `        SHA-256 ${'ab'.repeat(32)}`,
        'after:  new.musicxml',
        `        SHA-256 ${'cd'.repeat(32)}`,
        'Horn (P1): 19 notes, 18 sound the same, 1 difference',
        '  measure 1, beat 2: A4 is missing',
        'They do not sound the same',
        '',
      ].join('\n'),
    )
  })

  test('wants real checksums', async () => {
    const proof = await prove(sourceOf(named('Horn', ...tune)), sourceOf(named('Horn', ...tune)))
    const wrong = {...inputs, after: {name: 'x', sha256: 'abc'}}
    expect(() => certificate(proof, wrong, '1')).toThrow(TypeError)
  })
})
