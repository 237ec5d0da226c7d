import {parseInterval} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {parsePitch} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import {parseClef} from '../staff/clef.ts'
import type {Clef} from '../staff/clef.ts'
import {rowTable} from './data/notation-rows.ts'
import type {KeySignatureHabit} from './instrument.ts'
import {lazily, must, readLines, readTable, withoutEmpty, wordsOf} from './table.ts'

/** The octave sign that is often printed with a clef; `8vb` is an octave lower, `15ma` two octaves higher. */
export type OctaveMark = '8va' | '8vb' | '15ma' | '15mb'

/** `high`: a document read for the catalogue states it · `medium`: partly derived · `low`: from memory. */
export type Confidence = 'high' | 'medium' | 'low'

/** A documented habit of writing, for one clef: the smallest fact that the catalogue has about notation. */
export interface NotationRow {
  readonly id: string
  /** The chapter of the catalogue: `horn`, `band-brass`; `modern` for the one row of each instrument today. */
  readonly group: string
  /** Ids of the instruments whose parts are found like this. */
  readonly instruments: readonly string[]
  /** Without octave sign. */
  readonly clef: Clef
  readonly octaveMark?: OctaveMark
  /** Added to a note read literally in the plain clef to get the sound, octaves included. */
  readonly interval: Interval
  readonly keySignature: KeySignatureHabit
  readonly confidence: Confidence
  /** Where and when it is met, in words. */
  readonly context?: string
  /** Written and sounding, as `C4>Bb3`; `examplesOf` reads them. */
  readonly examples: readonly string[]
  /** In words with codes (see `sourcesIn`). */
  readonly source: string
  readonly remark?: string
}

/** All rows: the modern one of each pitched instrument first, then chapter by chapter. */
export const notationRows: () => readonly NotationRow[] = /* @__PURE__ */ lazily(() =>
  readTable(rowTable, COLUMNS).map(readRow),
)

/** The row with exactly that id. */
export function notationRowById(id: string): NotationRow | undefined {
  const [cells] = readLines(rowTable, COLUMNS, id)
  return cells && readRow(cells)
}

const COLUMNS =
  'id|group|instruments|clef|mark|interval|keySignature|confidence|examples|context|source|remark'

/** The octaves of a mark, up is positive. */
export function octavesOf(mark: OctaveMark): number {
  return {'8va': 1, '8vb': -1, '15ma': 2, '15mb': -2}[mark]
}

/** At least three notes as they are written and what they sound: to show people what the row means. */
export function examplesOf(
  row: NotationRow,
): readonly {readonly written: Pitch; readonly sounding: Pitch}[] {
  return row.examples.map((text) => {
    const [written = '', sounding = ''] = text.split('>')
    return {written: must(parsePitch(written), text), sounding: must(parsePitch(sounding), text)}
  })
}

function readRow([
  id = '',
  group = '',
  players = '',
  clef = '',
  mark,
  interval = '',
  ...rest
]: readonly string[]): NotationRow {
  const [keySignature, confidence, examples = '', context, source = '', remark] = rest
  return {
    id,
    group,
    instruments: wordsOf(players),
    clef: must(parseClef(clef), clef),
    ...(mark && {octaveMark: mark as OctaveMark}),
    interval: must(parseInterval(interval), interval),
    keySignature: keySignature as KeySignatureHabit,
    confidence: confidence as Confidence,
    examples: wordsOf(examples),
    source,
    ...withoutEmpty({context, remark}),
  }
}
