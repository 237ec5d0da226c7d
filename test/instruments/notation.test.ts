import {describe, expect, test} from 'vitest'
import {instrumentById, instruments} from '../../lib/instruments/instrument.ts'
import {
  concert,
  intervalFor,
  isKeySigned,
  notationById,
  notations,
  notationsOf,
} from '../../lib/instruments/notation.ts'
import type {Notation} from '../../lib/instruments/notation.ts'
import {notationRows, octavesOf} from '../../lib/instruments/notation-row.ts'
import {formatInterval} from '../../lib/pitch/interval.ts'
import {formatClef, parseClef} from '../../lib/staff/clef.ts'

function notation(id: string): Notation {
  const found = notationById(id)
  if (!found) throw new Error(`no notation ${id}`)
  return found
}

function reads(id: string, clefText: string): string {
  const clef = parseClef(clefText)
  if (!clef) throw new Error(`no clef ${clefText}`)
  const interval = intervalFor(notation(id), clef)
  return interval ? formatInterval(interval) : 'as declared'
}

function idsOf(instrument: string): readonly string[] {
  const found = instrumentById(instrument)
  if (!found) throw new Error(`no instrument ${instrument}`)
  return notationsOf(found).map(({id}) => id)
}

describe('intervalFor', () => {
  test.each([
    // Horn Matters, "Transposition Tricks: Old vs. New Notation" (2008)
    ['horn.crook-f.old', 'G2', '-P5'],
    ['horn.crook-f.old', 'F4', '+P4'],
    ['horn.crook-f.new', 'G2', '-P5'],
    ['horn.crook-f.new', 'F4', '-P5'],
    ['horn.crook-e-flat.old', 'F4', '+m3'],
    ['horn.crook-c.old', 'F4', 'P1'],
    ['horn.crook-b-flat-basso.old', 'G2', '-M9'],
    ['horn.crook-b-flat-basso.old', 'F4', '-M2'],
    ['horn-f.modern', 'F4', '-P5'],
    ['trumpet.crook-d.old', 'G2', '+M2'],
    ['trumpet.crook-d.old', 'F4', '+M9'],
    // J. Alder, A Guide to Understanding Bass Clarinet Clef Notation (2020)
    ['bass-clarinet.german', 'F4', '-M2'],
    ['bass-clarinet.german', 'G2', '-M2'],
    ['bass-clarinet.russian', 'F4', '-M2'],
    ['bass-clarinet.russian', 'G2', '-M9'],
    ['bass-clarinet-b-flat.modern', 'G2', '-M9'],
    // German Wikipedia, "Bassetthorn"
    ['basset-horn.old', 'F4', '+P4'],
    ['basset-horn.old', 'G2', '-P5'],
    // Daisyfield, "About false treble clef"
    ['cello.false-treble', 'G2', '-P8'],
    ['cello.false-treble', 'C4', 'P1'],
    ['cello.false-treble', 'F4', 'P1'],
    ['cello.true', 'G2', 'P1'],
    ['double-bass.octave', 'C4', '-P8'],
    ['trombone.concert', 'C3', 'P1'],
    ['tenor-voice.any-clef', 'G2', '-P8'],
    ['tenor-voice.any-clef', 'F4', 'P1'],
    ['wagner-tuba.system-1.bass', 'F4', '-P5'],
    ['concert', 'C1', 'P1'],
    ['concert', 'F4(-1)', 'P1'],
  ])('%s in %s: %s', (id, clef, expected) => {
    expect(reads(id, clef)).toBe(expected)
  })

  test('in a clef without a reading a notation goes on as in its opening clef', () => {
    expect(reads('clarinet-b-flat.modern', 'C4')).toBe('-M2')
    expect(reads('trombone.concert', 'G2')).toBe('P1')
  })

  test('a single row says nothing about other clefs', () => {
    expect(reads('horn.crook-f.bass-old', 'F4')).toBe('+P4')
    expect(reads('horn.crook-f.bass-old', 'G2')).toBe('as declared')
    expect(reads('saxhorn.bass-b-flat.bass', 'F4')).toBe('-M2')
    expect(reads('saxhorn.bass-b-flat.bass', 'G2')).toBe('as declared')
  })

  // MusicXML 4.0, clef-octave-change: pitches under a clef with a small 8 are in the octave that the clef implies.
  test.each([
    ['tenor-voice.modern', 'G2', '-P8'],
    ['tenor-voice.modern', 'G2(-1)', 'P1'],
    ['double-bass.modern', 'F4(-1)', 'P1'],
    ['double-bass.modern', 'F4(+1)', '-P8'],
    ['piccolo.modern', 'G2(+1)', 'P1'],
    ['glockenspiel.modern', 'G2', '+P15'],
    ['glockenspiel.modern', 'G2(+2)', 'P1'],
    ['glockenspiel.modern', 'G2(+1)', '+P8'],
    ['piccolo.modern', 'G2(+2)', '+P8'],
    ['cello.false-treble', 'G2(-1)', 'P1'],
  ])(
    'an octave sign that stands for the transposition is not counted twice: %s in %s: %s',
    (id, clef, expected) => {
      expect(reads(id, clef)).toBe(expected)
    },
  )

  test.each([
    ['tenor-saxophone-b-flat.modern', 'G2(-1)', '-M9'],
    ['bass-clarinet.russian', 'G2(-1)', '-M9'],
    ['clarinet-b-flat.modern', 'G2(+1)', '-M2'],
    ['tuba.b-flat.bass', 'F4(-1)', '-M9'],
  ])('any other octave sign changes nothing: %s in %s: %s', (id, clef, expected) => {
    expect(reads(id, clef)).toBe(expected)
  })
})

describe('the catalogue of notations', () => {
  test('every id is there once', () => {
    const ids = notations().map(({id}) => id)
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([])
  })

  test('every row is a notation, and says what that notation says', () => {
    for (const row of notationRows()) {
      const own = notationById(row.id)
      expect(own && intervalFor(own, row.clef), row.id).toEqual(row.interval)
      expect(own?.keySignature, row.id).toBe(row.keySignature)
      expect(own?.readings[0]?.row, row.id).toBe(row.id)
    }
  })

  test('every reading comes from a row and says what the row says', () => {
    const rows = new Map(notationRows().map((row) => [row.id, row]))
    for (const {id, readings} of notations()) {
      if (id === concert.id) continue
      const clefs = readings.map(({clef}) => formatClef(clef))
      expect(new Set(clefs).size, id).toBe(clefs.length)
      for (const reading of readings) {
        const row = rows.get(reading.row)
        expect(row?.interval, id).toEqual(reading.interval)
        expect(row?.octaveMark, id).toEqual(reading.octaveMark)
        expect(reading.clef.octaveChange, id).toBe(0)
        if (row?.group !== 'modern') expect(row?.clef, id).toEqual(reading.clef)
      }
    }
  })

  test('notations of several rows are not named as a row, and use rows of one habit', () => {
    const rows = new Map(notationRows().map((row) => [row.id, row]))
    const groups = notations().filter(({id}) => !rows.has(id) && id !== concert.id)
    expect(groups).toHaveLength(2 * 19 + 10 + 13)
    for (const {id, readings, keySignature} of groups) {
      expect(readings.length, id).toBeGreaterThan(1)
      for (const {row} of readings) expect(rows.get(row)?.keySignature, id).toBe(keySignature)
    }
  })

  test('a notation is as uncertain as its least certain row', () => {
    expect(notation('basset-horn.old').confidence).toBe('high')
    expect(notation('basset-horn.new').confidence).toBe('low')
    expect(notation('trumpet.crook-f.old').confidence).toBe('medium')
    expect(notation('horn.crook-f.old').confidence).toBe('high')
  })

  test('names are words', () => {
    expect(notation('cello.true').name).toBe('cello, every clef at pitch')
    expect(notation('clarinet-a.modern').name).toBe(
      'clarinet in A: treble clef, sounding a minor third lower',
    )
    expect(notations().filter(({name}) => !/^[\p{L} ]+/u.test(name))).toEqual([])
  })

  test('octave marks count octaves', () => {
    expect((['8va', '8vb', '15ma', '15mb'] as const).map(octavesOf)).toEqual([1, -1, 2, -2])
  })

  test('there is no notation of an unknown id', () => {
    expect(notationById('horn.crook-x')).toBeUndefined()
  })
})

describe('notationsOf', () => {
  test.each([
    ['cello', 'cello.modern cello.false-treble'],
    ['horn-f', 'horn-f.modern horn.crook-f.old horn.crook-f.new'],
    [
      'bass-clarinet-b-flat',
      'bass-clarinet-b-flat.modern bass-clarinet.german bass-clarinet.russian bass-clarinet.italian-bass bass-clarinet.tenor-clef',
    ],
    ['euphonium', 'euphonium.modern saxhorn.bass-b-flat.bass saxhorn.bass-b-flat.treble'],
    ['tenor-voice', 'tenor-voice.modern'],
    ['piano', 'piano.modern'],
    ['triangle', ''],
  ])('%s: %s', (instrument, expected) => {
    expect(idsOf(instrument).join(' ')).toBe(expected)
  })

  test('the modern notation comes first, in all clefs of the instrument', () => {
    for (const instrument of instruments) {
      const [modern] = notationsOf(instrument)
      expect(modern?.id).toBe(instrument.modernNotation)
      const clefs = modern?.readings.map(({clef}) => clef) ?? []
      if (modern) expect(clefs.slice(0, instrument.clefs.length)).toEqual(instrument.clefs)
    }
  })

  test('a natural horn reads nineteen crooks in the old way and the new', () => {
    expect(idsOf('natural-horn')).toHaveLength(1 + 2 * 19)
  })
})

describe('isKeySigned', () => {
  test.each([
    ['clarinet-b-flat', true, true],
    ['horn-f', false, true],
    ['trumpet-c', false, true],
    ['timpani', false, true],
    ['cornet-b-flat', true, true],
    ['natural-horn', false, false],
  ])('%s: %s in the orchestra, %s in the band', (id, orchestra, band) => {
    const instrument = instrumentById(id)
    if (!instrument) throw new Error(`no instrument ${id}`)
    expect(isKeySigned(instrument)).toBe(orchestra)
    expect(isKeySigned(instrument, 'band')).toBe(band)
  })

  test('parts for crooks have no signature anywhere', () => {
    expect(isKeySigned(notation('horn.crook-e-flat.old'), 'band')).toBe(false)
    expect(isKeySigned(concert)).toBe(true)
  })
})
