import {describeInterval, sameInterval, UNISON} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {describeClef, sameClef, TREBLE} from '../staff/clef.ts'
import type {Clef} from '../staff/clef.ts'
import {groupTable, moreClefsTable} from './data/notation-groups.ts'
import {instrumentById, instruments} from './instrument.ts'
import type {Instrument, KeySignatureHabit} from './instrument.ts'
import {notationRowById, notationRows, octavesOf} from './notation-row.ts'
import type {Confidence, NotationRow, OctaveMark} from './notation-row.ts'
import {lazily, must, readLines, readTable, wordsOf} from './table.ts'

/** What a notation means in one clef. `interval` is added to a note read literally in the plain clef. */
export interface ClefReading {
  readonly clef: Clef
  readonly interval: Interval
  /** Id of the row of the catalogue that says so. */
  readonly row: string
  readonly octaveMark?: OctaveMark
}

/** How a part maps written to sounding: an interval for each clef, and whether key signatures are written. */
export interface Notation {
  readonly id: string
  /** In words, English: `cello, every clef at pitch`. */
  readonly name: string
  /** Ids of the instruments whose parts are found like this; none for `concert`. */
  readonly instruments: readonly string[]
  /** At least one; the first has the clef that a part opens with. */
  readonly readings: readonly ClefReading[]
  /**
   * What holds in a clef that has no reading. `opening`: the interval of the opening clef, since a change of clef
   * alone does not change how an instrument transposes. `declared`: the notation does not say, the part's own
   * declaration stays; so it is for a single row of the catalogue, which is a statement about its clef only.
   */
  readonly otherClefs: 'opening' | 'declared'
  readonly keySignature: KeySignatureHabit
  /** The lowest of its rows. `low` is not to be believed without asking. */
  readonly confidence: Confidence
  /** Where and when it is met, in words. */
  readonly context?: string
  /** Of all rows, in words with codes (see `sourcesIn`). */
  readonly sources: readonly string[]
}

/** At sounding pitch in any clef: the written note is the sounding note. */
export const concert: Notation = {
  id: 'concert',
  name: 'concert pitch, any clef',
  instruments: [],
  readings: [{clef: TREBLE, interval: UNISON, row: 'concert'}],
  otherClefs: 'opening',
  keySignature: 'yes',
  confidence: 'high',
  sources: ['CP'],
}

/**
 * Every notation: `concert`, the modern one of each pitched instrument (its id ends in `.modern`), those made of
 * several rows because one part changes between their clefs (`horn.crook-f.old`), and each other row by itself.
 */
export const notations: () => readonly Notation[] = /* @__PURE__ */ lazily(readNotations)

/** The notation with exactly that id, which may be the id of a row. `findNotation` looks for words. */
export function notationById(id: string): Notation | undefined {
  const player = instruments.find((each) => each.modernNotation === id)
  const row = player && notationRowById(id)
  // The notation most often asked for is read without the others.
  if (row) return modernNotation(player, row, moreRowsOf(id, notationRowById))
  return notations().find((notation) => notation.id === id)
}

/**
 * What to add to a note *as a file encodes it* under a clef to get the sound; undefined where the notation leaves
 * the clef to the part's own declaration.
 *
 * A clef's small 8 normally changes nothing. But where the catalogue says that the octave sign stands for the
 * octave of the transposition (tenor voice, double bass, piccolo), a note under such a clef is encoded in the
 * octave that the sign implies (MusicXML 4.0, `clef-octave-change`), and only what is left is added.
 *
 * @example
 * intervalFor(doubleBass, parseClef('F4')) // an octave lower
 * intervalFor(doubleBass, parseClef('F4(-1)')) // unison: the file's pitch is already an octave lower
 */
export function intervalFor(notation: Notation, clef: Clef): Interval | undefined {
  const reading =
    notation.readings.find(({clef: own}) => own.sign === clef.sign && own.line === clef.line) ??
    (notation.otherClefs === 'opening' ? notation.readings[0] : undefined)
  if (!reading) return undefined
  const {interval, octaveMark} = reading
  const marked = octaveMark ? octavesOf(octaveMark) : 0
  const shown = clef.octaveChange
  if (marked * shown <= 0 || Math.abs(shown) > Math.abs(marked)) return interval
  return {diatonic: interval.diatonic - 7 * shown, chromatic: interval.chromatic - 12 * shown}
}

/**
 * The notations that an instrument's players read, the modern one first. One that says nothing beyond an earlier
 * one is left out. Empty for unpitched percussion.
 */
export function notationsOf(instrument: Instrument): readonly Notation[] {
  const own = notations().filter((notation) => notation.instruments.includes(instrument.id))
  const modern = own.filter(({id}) => id === instrument.modernNotation)
  const groups = own.filter(
    ({id, otherClefs}) => otherClefs === 'opening' && !id.endsWith('.modern'),
  )
  const rows = own.filter(({otherClefs}) => otherClefs === 'declared')
  const kept: Notation[] = []
  for (const notation of [...modern, ...groups, ...rows]) {
    if (!kept.some((earlier) => includes(earlier, notation))) kept.push(notation)
  }
  return kept
}

/**
 * Whether parts of an instrument or in a notation print a key signature. Horns, trumpets and timpani have none in
 * the orchestra and one in bands; parts for crooks have none anywhere (Vienna encyclopaedia of orchestral
 * instruments, "Notation"; Berlioz, Grand traité, on the horn).
 */
export function isKeySigned(
  of: {readonly keySignature: KeySignatureHabit},
  ensemble: 'orchestra' | 'band' = 'orchestra',
): boolean {
  if (of.keySignature === 'yes') return true
  return of.keySignature !== 'no' && ensemble === 'band'
}

function includes(notation: Notation, other: Notation): boolean {
  return (
    notation.keySignature === other.keySignature &&
    other.readings.every((reading) =>
      notation.readings.some(
        (own) => sameClef(own.clef, reading.clef) && sameInterval(own.interval, reading.interval),
      ),
    )
  )
}

function readNotations(): readonly Notation[] {
  const rows = new Map(notationRows().map((row) => [row.id, row]))
  return [
    concert,
    ...instruments.flatMap((instrument) => {
      const row = rows.get(instrument.modernNotation ?? '')
      return row
        ? [
            modernNotation(
              instrument,
              row,
              moreRowsOf(row.id, (id) => rows.get(id)),
            ),
          ]
        : []
    }),
    ...readTable(groupTable, 'id|name|rows').map(([id = '', name = '', cell = '']) =>
      notationOf(
        id,
        name,
        wordsOf(cell).map((each) => must(rows.get(each), each)),
        'opening',
      ),
    ),
    ...notationRows()
      .filter((row) => row.group !== 'modern')
      .map((row) => notationOf(row.id, nameOf(row), [row], 'declared')),
  ]
}

/** What a modern notation says about other clefs than those of the instrument. */
function moreRowsOf(
  id: string,
  rowById: (id: string) => NotationRow | undefined,
): readonly NotationRow[] {
  const [cells] = readLines(moreClefsTable, 'id|rows', id)
  return wordsOf(cells?.[1] ?? '').map((each) => must(rowById(each), each))
}

function modernNotation(
  instrument: Instrument,
  row: NotationRow,
  more: readonly NotationRow[],
): Notation {
  const inOwnClefs = instrument.clefs.map((clef) => ({...row, clef}))
  return {
    ...notationOf(row.id, nameOf(row), [...inOwnClefs, ...more], 'opening'),
    instruments: row.instruments,
    keySignature: row.keySignature,
  }
}

function notationOf(
  id: string,
  name: string,
  rows: readonly NotationRow[],
  otherClefs: Notation['otherClefs'],
): Notation {
  const [first] = rows
  if (!first) throw new TypeError(`${id} has no rows`)
  const confidence = (['low', 'medium', 'high'] as const).find((level) =>
    rows.some((row) => row.confidence === level),
  )
  return {
    id,
    name,
    instruments: [...new Set(rows.flatMap((row) => row.instruments))],
    readings: rows.map(({id: row, clef, interval, octaveMark}) => ({
      clef,
      interval,
      row,
      ...(octaveMark && {octaveMark}),
    })),
    otherClefs,
    keySignature: first.keySignature,
    confidence: confidence ?? 'low',
    ...(first.context !== undefined && {context: first.context}),
    sources: [...new Set(rows.map((row) => row.source))],
  }
}

function nameOf(row: NotationRow): string {
  const name = instrumentById(row.instruments[0] ?? '')?.labels.en.name ?? row.id
  return `${name}: ${describeClef(row.clef)}, sounding ${describeInterval(row.interval)}`
}
