import {parseInterval} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {parsePitch} from '../pitch/pitch.ts'
import {parseClef} from '../staff/clef.ts'
import type {Clef} from '../staff/clef.ts'
import type {Range} from '../staff/range.ts'
import {instrumentTable} from './data/instruments.ts'
import {labelTable} from './data/labels.ts'
import {remarkTable} from './data/remarks.ts'
import {must, readTable, withoutEmpty, wordsOf} from './table.ts'

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
  const labels = readLabels()
  const remarks = readRemarks()
  const columns =
    'id|builtIn|family|transposition|clefs|pro|tutti|student|keySignature|sound|midi|modern|cover'
  return readTable(instrumentTable, columns).map(
    ([id = '', builtIn, family, transposition = '', clefList = '', ...rest]) => {
      const [pro, tutti, student, keySignature, sound = '', midi, modern, cover = ''] = rest
      const clefs = wordsOf(clefList).map((text) => must(parseClef(text), text))
      return {
        id,
        family: family as Family,
        ...(builtIn && {builtIn}),
        labels: must(labels.get(id), id) as Readonly<Record<Language, Label>>,
        transposition: must(parseInterval(transposition), transposition),
        clef: must(clefs[0], clefList),
        clefs,
        ranges: {
          ...(pro && {pro: readRange(pro)}),
          ...(tutti && {tutti: readRange(tutti)}),
          ...(student && {student: readRange(student)}),
        },
        keySignature: keySignature as KeySignatureHabit,
        sound,
        ...(midi && {midiProgram: Number(midi)}),
        ...(modern && {modernNotation: modern}),
        cover: wordsOf(cover),
        ...must(remarks.get(id), id),
      }
    },
  )
}

function readRange(text: string): Range {
  const [low = '', high = ''] = text.split(' ')
  return {low: must(parsePitch(low), text), high: must(parsePitch(high), text)}
}

function readRemarks(): ReadonlyMap<string, Pick<Instrument, 'remarks' | 'sources'>> {
  const columns =
    'id|clefChanges|weakRegisters|era|coverNote|remark|transpositionSource|rangeSource|studentSource|coverSource'
  return new Map(
    readTable(remarkTable, columns).map(
      ([id = '', clefChanges, weakRegisters, era, cover, general, ...sources]) => {
        const [transposition, range, student, coverSource] = sources
        return [
          id,
          {
            remarks: withoutEmpty({clefChanges, weakRegisters, era, cover, general}),
            sources: withoutEmpty({transposition, range, student, cover: coverSource}),
          },
        ]
      },
    ),
  )
}

function readLabels(): ReadonlyMap<string, Partial<Record<Language, Label>>> {
  const columns = 'id|language|name|plural|abbreviation|nameSource|pluralSource|abbreviationSource'
  const labels = new Map<string, Partial<Record<Language, Label>>>()
  for (const [
    id = '',
    language,
    name = '',
    plural = '',
    abbreviation = '',
    ...sources
  ] of readTable(labelTable, columns)) {
    const [nameSource = '', pluralSource = '', abbreviationSource = ''] = sources
    const label = labels.get(id) ?? {}
    label[language as Language] = {
      name,
      plural,
      abbreviation,
      sources: {name: nameSource, plural: pluralSource, abbreviation: abbreviationSource},
    }
    labels.set(id, label)
  }
  return labels
}
