import type {Language} from './instrument.ts'
import {instrumentById} from './instrument.ts'
import {normalize, readContext, shareLanguages} from './label-context.ts'
import {foldText} from './label-form.ts'
import {readClauses} from './label-join.ts'
import {keyReader} from './label-key.ts'
import {readLexicon} from './label-lexicon.ts'
import type {LanguageShares} from './label-match.ts'
import {phraseFinder} from './label-phrase.ts'
import type {LabelReading} from './label-reading.ts'
import type {Knowledge} from './label-segment.ts'
import {lazily} from './table.ts'

export type {Candidate} from './label-match.ts'
export type {Doubling, LabelReading, LabelToken, TokenRole} from './label-reading.ts'

/** How to read labels. */
export interface LabelOptions {
  /** Names of the user's own and the ids of their instruments: `{'Gr. Schl.': 'bass-drum'}`. They go before all others. */
  readonly userNames?: Readonly<Record<string, string>>
  /** The language of the score, where it is known. */
  readonly language?: Language
}

/** Reads labels, one by one or together. */
export interface LabelReader {
  readonly readLabel: (label: string) => LabelReading
  readonly readLabels: (labels: readonly string[]) => readonly LabelReading[]
}

/**
 * Reads a score label in English, French, German, Italian, Spanish or Dutch: the instruments that it may mean with
 * confidences, and its key, numbers, clef, options and doublings. Throws a `RangeError` when a name of the user's
 * own has an unknown id.
 *
 * @example
 * readLabel('2 Hörner in Es').instruments[0]?.id // 'horn-e-flat'; players 2, key 'Eb'
 * readLabel('Alto').instruments // viola, alto-voice, alto-horn-e-flat …: none of them sure
 */
export function readLabel(label: string, options: LabelOptions = {}): LabelReading {
  return labelReader(options).readLabel(label)
}

/**
 * Reads the labels of one score, each in the light of the others: beside saxhorns `Alto` is a saxhorn, beside violins
 * a viola; and a score has one language as a rule.
 *
 * @example
 * readLabels(['Violons', 'Alto', 'Violoncelle'])[1]?.instruments[0]?.id // 'viola'
 */
export function readLabels(
  labels: readonly string[],
  options: LabelOptions = {},
): readonly LabelReading[] {
  return labelReader(options).readLabels(labels)
}

/** What the tables say, whoever asks. */
const tables = lazily(() => {
  const keys = keyReader()
  return {keys, lexicon: readLexicon(keys), findPhrases: phraseFinder()}
})

/** `readLabel` and `readLabels` for many scores. */
export function labelReader(options: LabelOptions = {}): LabelReader {
  const base: Knowledge = {
    ...tables(),
    userNames: readUserNames(options.userNames ?? {}),
    prior: normalize((language) => (language === options.language ? 12 : 1)),
  }
  return {
    readLabel: (label) => readClauses(label, base),
    readLabels: (labels) => {
      const alone = labels.map((label) => readClauses(label, base))
      const prior = options.language ? base.prior : shareLanguages(alone.map(languageShares))
      const first = alone.map(({instruments}) => instruments)
      const again = labels.map((label) =>
        readClauses(label, {...base, prior, context: readContext(first)}),
      )
      // What became sure in the light of the others is evidence in its turn.
      const context = readContext(again.map(({instruments}) => instruments))
      return labels.map((label) => readClauses(label, {...base, prior, context}))
    },
  }
}

function readUserNames(names: Readonly<Record<string, string>>): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(names).map(([form, id]) => {
      if (!instrumentById(id)) throw new RangeError(`there is no instrument ${id}`)
      return [foldText(form), id]
    }),
  )
}

function languageShares(reading: LabelReading): LanguageShares {
  return normalize(
    (language) => reading.languages.find((one) => one.language === language)?.confidence ?? 0,
  )
}
