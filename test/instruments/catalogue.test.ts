import {describe, expect, test} from 'vitest'
import {instrumentById, instruments, LANGUAGES} from '../../lib/instruments/instrument.ts'
import {attestedNames} from '../../lib/instruments/attested.ts'
import {examplesOf, notationRows} from '../../lib/instruments/notation-row.ts'
import type {NotationRow} from '../../lib/instruments/notation-row.ts'
import {listSources, sourcesIn} from '../../lib/instruments/source.ts'
import {sameInterval, usualSteps} from '../../lib/pitch/interval.ts'
import type {Interval} from '../../lib/pitch/interval.ts'
import {formatAlter, formatPitch, midiOf, parsePitch, transpose} from '../../lib/pitch/pitch.ts'
import {sameClef} from '../../lib/staff/clef.ts'
import {outside} from '../../lib/staff/range.ts'
import type {Range} from '../../lib/staff/range.ts'

/** What holds between the facts of the catalogue: a slip of the pen in one of its tables breaks one of these. */

const rows = new Map(notationRows().map((row) => [row.id, row]))

function rowOf(id: string): NotationRow {
  const found = rows.get(id)
  if (!found) throw new Error(`no row ${id}`)
  return found
}

/** Semitones that name each number of steps within the octave: a fourth is perfect or augmented. */
const SEMITONES: readonly (readonly number[])[] = [
  [0],
  [1, 2],
  [3, 4],
  [5, 6],
  [6, 7],
  [8, 9],
  [10, 11],
]

function hasAName({diatonic, chromatic}: Interval): boolean {
  const steps = Math.abs(diatonic)
  const octaves = Math.floor(steps / 7)
  const sameDirection = diatonic === 0 ? chromatic === 0 : diatonic * chromatic > 0
  const semitones = SEMITONES[steps - 7 * octaves] ?? []
  return sameDirection && semitones.includes(Math.abs(chromatic) - 12 * octaves)
}

function holds(outer: Range | undefined, inner: Range | undefined): boolean {
  if (!outer || !inner) return true
  return outside(outer, inner.low) === 0 && outside(outer, inner.high) === 0
}

describe('instruments', () => {
  test('there are 179, each with its own id in kebab-case', () => {
    const ids = instruments.map(({id}) => id)
    expect(ids).toHaveLength(179)
    expect(new Set(ids).size).toBe(ids.length)
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/)
  })

  test.each(instruments.map((instrument) => [instrument.id, instrument] as const))(
    '%s agrees with itself',
    (id, {labels, ranges, cover, clef, clefs, transposition, midiProgram, ...instrument}) => {
      expect(hasAName(transposition)).toBe(true)
      expect(clefs[0]).toEqual(clef)
      for (const language of LANGUAGES) {
        const {name, plural, abbreviation, sources} = labels[language]
        const all = [name, plural, abbreviation, ...Object.values(sources)]
        expect(all.filter((text) => text.trim() === '')).toEqual([])
      }
      for (const other of cover) {
        expect(instrumentById(other), other).toBeDefined()
        expect(other).not.toBe(id)
      }
      for (const range of Object.values(ranges))
        expect(midiOf(range.low)).toBeLessThan(midiOf(range.high))
      expect(holds(ranges.pro, ranges.tutti)).toBe(true)
      expect(holds(ranges.tutti, ranges.student)).toBe(true)
      expect(holds(ranges.pro, ranges.student)).toBe(true)
      if (midiProgram !== undefined)
        expect([midiProgram >= 1, midiProgram <= 128]).toEqual([true, true])
      expect(instrument.sound).toMatch(/^[a-z.-]+$/)
      if (instrument.family === 'unpitched') expect(instrument.modernNotation).toBeUndefined()
      else expect(instrument.modernNotation).toBe(`${id}.modern`)
    },
  )

  test.each(
    instruments
      .filter(({modernNotation}) => modernNotation)
      .map((instrument) => [instrument.id, instrument] as const),
  )('%s reads as its modern row says', (id, instrument) => {
    const modern = rowOf(instrument.modernNotation ?? '')
    expect(sameInterval(modern.interval, instrument.transposition)).toBe(true)
    expect(sameClef(modern.clef, instrument.clef)).toBe(true)
    expect(modern.instruments).toEqual([id])
    expect(modern.keySignature).toBe(instrument.keySignature)
  })

  test('a written C sounds the note the instrument is built in, but for those named by their tube', () => {
    const different = instruments.filter(({builtIn, transposition}) => {
      const {step, alter} = transpose({step: 'C', alter: 0, octave: 4}, transposition)
      return builtIn !== undefined && builtIn !== `${step}${formatAlter(alter)}`
    })
    expect(different.map(({id, builtIn}) => `${id} ${builtIn}`)).toEqual([
      'sopranino-recorder F',
      'treble-recorder F',
      'bass-recorder F',
      'contrabass-recorder F',
      'oboe-da-caccia F',
      'euphonium Bb',
      'bass-tuba-f F',
      'bass-tuba-e-flat Eb',
      'contrabass-tuba-b-flat Bb',
      'sousaphone Bb',
      'helicon Bb',
      'bombardon Eb',
      'ophicleide-b-flat Bb',
      'alto-trombone Eb',
      'trombone-tenor Bb',
      'bass-trombone Bb',
      'bass-trombone-g G',
      'contrabass-trombone Bb',
      'valve-trombone-b-flat Bb',
      'valve-bass-trombone-f F',
      'valve-bass-trombone-e-flat Eb',
      'sackbut-tenor Bb',
    ])
  })
})

describe('rows of notation', () => {
  test('there are 465, each with its own id', () => {
    expect(notationRows()).toHaveLength(465)
    expect(rows.size).toBe(465)
  })

  test.each(notationRows().map((each) => [each.id, each] as const))(
    '%s agrees with itself',
    (_, each) => {
      expect(hasAName(each.interval)).toBe(true)
      expect(each.source.trim()).not.toBe('')
      expect(['high', 'medium', 'low']).toContain(each.confidence)
      const players = each.instruments.map((id) => instrumentById(id))
      expect(players).not.toContain(undefined)
      expect(players.length).toBeGreaterThan(0)
      const examples = examplesOf(each)
      expect(examples.length).toBeGreaterThanOrEqual(3)
      for (const {written, sounding} of examples)
        expect(formatPitch(transpose(written, each.interval))).toBe(formatPitch(sounding))
    },
  )

  test.each(
    notationRows()
      .filter(({group}) => group !== 'modern')
      .map((each) => [each.id, each] as const),
  )('a note of %s can be played by one of its instruments', (_, each) => {
    const playable = each.instruments.some((id) => {
      const range = instrumentById(id)?.ranges.pro
      return !range || examplesOf(each).some(({sounding}) => outside(range, sounding) === 0)
    })
    expect(playable).toBe(true)
  })

  const systems = notationRows().flatMap((each) => {
    const [, crook = '', age] = /^(.*)\.bass-(old|new)$/.exec(each.id) ?? []
    return age && rows.has(crook) ? [[each.id, crook, age] as const] : []
  })

  test('bass clefs in old and new notation are there for 19 horn crooks and 10 trumpet crooks', () => {
    expect(systems.filter(([id]) => id.startsWith('horn.'))).toHaveLength(38)
    expect(systems.filter(([id]) => id.startsWith('trumpet.'))).toHaveLength(10)
  })

  test.each(systems)('%s stands by the octave rule to %s', (id, crook, age) => {
    // Horn Matters, "Transposition Tricks: Old vs. New Notation" (2008): old bass clef is written an octave too low.
    const bass = rowOf(id).interval
    const treble = rowOf(crook).interval
    expect(bass.diatonic - treble.diatonic).toBe(age === 'old' ? 7 : 0)
    expect(bass.chromatic - treble.chromatic).toBe(age === 'old' ? 12 : 0)
  })

  test.each([
    ['saxhorn.baritone-b-flat.treble', 'saxhorn.baritone-b-flat.bass'],
    ['saxhorn.bass-b-flat.treble', 'saxhorn.bass-b-flat.bass'],
    ['saxhorn.contrabass-e-flat.treble', 'saxhorn.contrabass-e-flat.bass'],
    ['saxhorn.contrabass-b-flat.treble', 'saxhorn.contrabass-b-flat.bass'],
    ['tuba.e-flat.treble', 'tuba.e-flat.bass'],
    ['tuba.b-flat.treble', 'tuba.b-flat.bass'],
    ['bass-clarinet.french', 'bass-clarinet.german-bass'],
  ])('the bass clef of a tube is read an octave above its treble clef: %s, %s', (treble, bass) => {
    expect(rowOf(bass).interval.chromatic - rowOf(treble).interval.chromatic).toBe(12)
    expect(rowOf(bass).interval.diatonic - rowOf(treble).interval.diatonic).toBe(7)
  })

  test('octave signs are those of rows that sound in another octave, in the direction of the sign', () => {
    for (const {id, interval, octaveMark} of notationRows()) {
      if (!octaveMark) continue
      const octaves = {'8va': 1, '8vb': -1, '15ma': 2, '15mb': -2}[octaveMark]
      expect(interval, id).toEqual({diatonic: 7 * octaves, chromatic: 12 * octaves})
    }
  })

  test('steps are the usual ones for the semitones, but for horns in G flat and F sharp', () => {
    const unusual = notationRows().filter(
      ({interval}) => usualSteps(interval.chromatic) !== interval.diatonic,
    )
    expect(unusual.map(({id}) => id).toSorted()).toEqual([
      'cornet.crook-f-sharp',
      'horn.crook-f-sharp',
      'horn.crook-f-sharp.bass-new',
      'horn.crook-g-flat.bass-old',
    ])
  })
})

/** Words in capitals are codes, unless they are a range of notes as `C2-G4`. */
function codesIn(remark: string): readonly string[] {
  return remark
    .split(/[;,:( =+)]/)
    .filter((word) => /^[A-Z][A-Z0-9-]{2,}$/.test(word) && !/^[A-G]\d?-[A-G]\d?$/.test(word))
}

describe('sources', () => {
  const codes = new Set(listSources().map(({code}) => code))

  test('each code is explained once', () => {
    expect(codes.size).toBe(listSources().length)
    for (const {status, text} of listSources()) expect([status, text]).not.toContain('')
  })

  test('every code that the catalogue uses is explained', () => {
    const remarks = [
      ...notationRows().map(({source}) => source),
      ...instruments.flatMap(({sources, labels}) => [
        ...Object.values(sources),
        ...LANGUAGES.flatMap((language) => Object.values(labels[language].sources)),
      ]),
      ...instruments.flatMap(({id}) => attestedNames(id).map(({source}) => source)),
    ]
    const used = new Set(remarks.flatMap(codesIn))
    expect(used.size).toBeGreaterThan(50)
    expect([...used].filter((code) => !codes.has(code))).toEqual([])
  })

  test('transposition, range and names have a source', () => {
    for (const {id, sources} of instruments) {
      expect(sources.transposition, id).toBeTruthy()
      expect(sources.range, id).toBeTruthy()
    }
  })

  test('a source of a name prints that name', () => {
    for (const {id, labels} of instruments) {
      const attested = attestedNames(id)
      for (const language of LANGUAGES) {
        for (const [kind, text] of Object.entries(labels[language].sources)) {
          if (text === 'MEM' || text.endsWith('(head)')) continue
          for (const code of text.split('+').filter((each) => each !== 'HUNS')) {
            const printed = attested.some(
              (name) => name.language === language && name.kind === kind && name.source === code,
            )
            expect(printed, `${id} ${language} ${kind} ${code}`).toBe(true)
          }
        }
      }
    }
  })

  test('codes are found in remarks', () => {
    expect(sourcesIn('OLIB (pro: written D4-C7); tutti MEM').map(({code}) => code)).toEqual([
      'OLIB',
      'MEM',
    ])
    expect(sourcesIn('MIMO+IAML(head)').map(({code}) => code)).toEqual(['MIMO', 'IAML'])
    expect(sourcesIn('nothing known')).toEqual([])
  })
})

test('pitches of the catalogue are read as they are printed', () => {
  for (const {ranges} of instruments) {
    for (const {low, high} of Object.values(ranges)) {
      expect([parsePitch(formatPitch(low)), parsePitch(formatPitch(high))]).toEqual([low, high])
    }
  }
})
