import {parseInterval} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {parsePitch} from '../pitch/pitch.ts'
import {parseClef} from '../staff/clef.ts'
import type {Clef} from '../staff/clef.ts'
import type {Range} from '../staff/range.ts'
import {instrumentTable} from './data/instruments.ts'
import {labelTable} from './data/labels.ts'
import {remarkTable} from './data/remarks.ts'
import {lazily, must, readLines, readTable, withoutEmpty, wordsOf} from './table.ts'

export type Language = 'en' | 'fr' | 'de' | 'it' | 'es' | 'nl'

/** The languages of the catalogue, in its order. */
export const LANGUAGES: readonly Language[] = ['en', 'fr', 'de', 'it', 'es', 'nl']

export type Family =
  | 'flutes'
  | 'recorders'
  | 'oboes'
  | 'bassoons'
  | 'clarinets'
  | 'saxophones'
  | 'sarrusophones'
  | 'horns'
  | 'trumpets'
  | 'cornets'
  | 'bugle-horns'
  | 'tubas'
  | 'trombones'
  | 'strings'
  | 'plucked'
  | 'keyboards'
  | 'percussion'
  | 'unpitched'
  | 'voices'

/** Whether its parts print a key signature: `rare` means hardly ever in the orchestra, usually in a band. */
export type KeySignatureHabit = 'yes' | 'rare' | 'varies' | 'no'

/** How an instrument is named in one language. `sources` are codes (see `sourcesIn`); MEM is from memory. */
export interface Label {
  readonly name: string
  readonly plural: string
  readonly abbreviation: string
  readonly sources: {readonly name: string; readonly plural: string; readonly abbreviation: string}
}

/** What an instrument is, plays and is called. Ranges are sounding. */
export interface Instrument {
  readonly id: string
  readonly family: Family
  /**
   * The key in its name: `Bb`, absent for unpitched percussion. Recorders, trombones and tubas have theirs from the
   * tube and read at pitch all the same.
   */
  readonly builtIn?: string
  readonly labels: Readonly<Record<Language, Label>>
  /** Added to written to get sounding, octaves included, as its players read today. */
  readonly transposition: Interval
  /** The clef that a part opens with; `clefs` holds it and those that the same part may change to. */
  readonly clef: Clef
  readonly clefs: readonly Clef[]
  /** `pro`: professional extreme · `tutti`: comfortable in a section · `student`: second or third year. */
  readonly ranges: {readonly pro?: Range; readonly tutti?: Range; readonly student?: Range}
  readonly keySignature: KeySignatureHabit
  /** The standard sound id of MusicXML 4.0, as in `<instrument-sound>`. */
  readonly sound: string
  /** The General MIDI program, counted from 1; absent for unpitched percussion. */
  readonly midiProgram?: number
  /** Id of the notation its players read today; absent for unpitched percussion. */
  readonly modernNotation?: string
  /** Ids of those who usually take the part when the instrument is missing, best first. */
  readonly cover: readonly string[]
  readonly remarks: {
    readonly clefChanges?: string
    readonly weakRegisters?: string
    readonly era?: string
    readonly cover?: string
    readonly general?: string
  }
  /** Where the facts come from, in words with codes (see `sourcesIn`). */
  readonly sources: {
    readonly transposition?: string
    readonly range?: string
    readonly student?: string
    readonly cover?: string
  }
}

/** The catalogue: 179 instruments, families together, from high to low. */
export const instruments: readonly Instrument[] = /* @__PURE__ */ readInstruments()

/** The instrument with exactly that id. `findInstrument` looks for names. */
export function instrumentById(id: string): Instrument | undefined {
  return instruments.find((instrument) => instrument.id === id)
}

function readInstruments(): readonly Instrument[] {
  const columns =
    'id|builtIn|family|transposition|clefs|pro|tutti|student|keySignature|sound|midi|modern|cover'
  return readTable(instrumentTable, columns).map(readInstrument)
}

/** What takes time to read is read when it is first asked for: most runs are about one instrument. */
function readInstrument([
  id = '',
  builtIn,
  family,
  transposition = '',
  clefList = '',
  ...rest
]: readonly string[]): Instrument {
  const [pro, tutti, student, keySignature, sound = '', midi, modern, cover = ''] = rest
  const labels = lazily(() => readLabels(id))
  const interval = lazily(() => must(parseInterval(transposition), transposition))
  const clefs = lazily(() => wordsOf(clefList).map((text) => must(parseClef(text), text)))
  const ranges = lazily(() => ({
    ...(pro && {pro: readRange(pro)}),
    ...(tutti && {tutti: readRange(tutti)}),
    ...(student && {student: readRange(student)}),
  }))
  const remarks = lazily(() => readRemarks(id))
  return {
    id,
    family: family as Family,
    ...(builtIn && {builtIn}),
    get labels() {
      return labels()
    },
    get transposition() {
      return interval()
    },
    get clef() {
      return must(clefs()[0], clefList)
    },
    get clefs() {
      return clefs()
    },
    get ranges() {
      return ranges()
    },
    keySignature: keySignature as KeySignatureHabit,
    sound,
    ...(midi && {midiProgram: Number(midi)}),
    ...(modern && {modernNotation: modern}),
    cover: wordsOf(cover),
    get remarks() {
      return remarks().remarks
    },
    get sources() {
      return remarks().sources
    },
  }
}

function readRange(text: string): Range {
  const [low = '', high = ''] = text.split(' ')
  return {low: must(parsePitch(low), text), high: must(parsePitch(high), text)}
}

function readRemarks(id: string): Pick<Instrument, 'remarks' | 'sources'> {
  const columns =
    'id|clefChanges|weakRegisters|era|coverNote|remark|transpositionSource|rangeSource|studentSource|coverSource'
  const [cells] = readLines(remarkTable, columns, id)
  const [, clefChanges, weakRegisters, era, cover, general, ...sources] = must(cells, id)
  const [transposition, range, student, coverSource] = sources
  return {
    remarks: withoutEmpty({clefChanges, weakRegisters, era, cover, general}),
    sources: withoutEmpty({transposition, range, student, cover: coverSource}),
  }
}

function readLabels(id: string): Instrument['labels'] {
  const columns = 'id|language|name|plural|abbreviation|nameSource|pluralSource|abbreviationSource'
  const labels: Partial<Record<Language, Label>> = {}
  for (const [, language, name = '', plural = '', abbreviation = '', ...sources] of readLines(
    labelTable,
    columns,
    id,
  )) {
    const [nameSource = '', pluralSource = '', abbreviationSource = ''] = sources
    labels[language as Language] = {
      name,
      plural,
      abbreviation,
      sources: {name: nameSource, plural: pluralSource, abbreviation: abbreviationSource},
    }
  }
  return labels as Instrument['labels']
}
