import type {Instrument, Language} from './instrument.ts'
import {LANGUAGES} from './instrument.ts'
import type {Context} from './label-context.ts'
import type {Lexicon, Sense} from './label-lexicon.ts'
import type {Meaning} from './label-meaning.ts'
import type {Token} from './label-token.ts'
import {bagsOf} from './label-word.ts'

/** An instrument that a label may ask for. */
export interface Candidate {
  /** Of the catalogue: see `instrumentById`. */
  readonly id: string
  /** From 0 to 1; the candidates of one label add up to 1 at most. */
  readonly confidence: number
  /** In words, with the words of the label that decided. */
  readonly reason: string
  /** The words of the label that decided. */
  readonly words: readonly string[]
}

/** What one way to understand a label gives: weights to be compared, and how well the words are understood. */
export interface Match {
  readonly instrument: Instrument
  readonly weight: number
  /** From 0, nothing understood, to 1, everything. */
  readonly quality: number
  readonly reason: string
  readonly words: readonly Token[]
}

/** How likely each language is; adds up to 1. */
export type LanguageShares = Readonly<Record<Language, number>>

/** The instruments that words may mean, given the keys beside them (none when no key is named). */
export function matchWords(
  words: readonly Token[],
  keys: readonly string[],
  lexicon: Lexicon,
  languages: LanguageShares,
  context: Context | undefined,
): readonly Match[] {
  for (const {part, quality} of partsOf(words, lexicon)) {
    const found = matchExactly(part, keys, lexicon, languages, context)
    if (found.length > 0)
      return found.map((match) => ({...match, quality: match.quality * quality, words: part}))
  }
  return []
}

/** All words, then without the unknown ones, then ever shorter stretches of what is left. */
function* partsOf(words: readonly Token[], lexicon: Lexicon) {
  yield {part: words, quality: 1}
  const known = words.filter(({fold}) => lexicon.languagesOf(fold).size > 0)
  const share = known.length / words.length
  if (known.length < words.length && known.length > 0)
    yield {part: known, quality: 0.5 + 0.5 * share}
  for (let length = known.length - 1; length > 0; length--)
    for (let start = 0; start + length <= known.length; start++)
      yield {
        part: known.slice(start, start + length),
        quality: (0.35 + 0.5 * share) * (length / known.length),
      }
}

function matchExactly(
  words: readonly Token[],
  keys: readonly string[],
  lexicon: Lexicon,
  languages: LanguageShares,
  context: Context | undefined,
): readonly Match[] {
  if (words.length === 0) return []
  const text = words.map(({fold}) => fold).join(' ')
  const bags = bagsOf(words.map(({fold}) => lexicon.conceptsOf(fold)))
  const meanings = bags.flatMap((bag) => meaningsFor(lexicon.meanings.get(bag) ?? [], keys))
  const printed = lexicon.texts.get(text) ?? []
  const senses = [
    ...printed.map((sense) => ({sense, rank: 1, quality: qualityOf(words)})),
    ...bags.flatMap((bag) =>
      (lexicon.bags.get(bag) ?? []).map((sense) => ({
        sense,
        rank: printed.length > 0 ? 0.3 : 1,
        quality: 0.97 * qualityOf(words),
      })),
    ),
  ]
  const seldom = meanings.some(({key}) => key !== '' || keys.length === 0) ? 0.25 : 1
  return best([
    ...meanings.map((meaning) => fromMeaning(meaning, words, keys, languages, context)),
    ...senses.map(({sense, rank, quality}) => {
      const match = fromSense(sense, words, keys, languages)
      return {...match, weight: match.weight * seldom * rank, quality: match.quality * quality}
    }),
  ])
}

/** Single letters say little: `A.`, `C. b.` */
function qualityOf(words: readonly Token[]): number {
  if (words.some(({fold}) => fold.length > 1)) return 1
  return words.length === 1 ? 0.55 : 0.75
}

/** Lines for the very key come before those for any key, and both before the general ones. */
function meaningsFor(meanings: readonly Meaning[], keys: readonly string[]): readonly Meaning[] {
  const general = meanings.filter(({key}) => key === '')
  if (keys.length === 0) return general
  const exact = meanings.filter(({key}) => keys.includes(key))
  const keyed = exact.length > 0 ? exact : meanings.filter(({key}) => key === 'any')
  const factor = keyed.length > 0 ? 0.3 : 1
  return [...keyed, ...general.map((meaning) => ({...meaning, weight: meaning.weight * factor}))]
}

function fromMeaning(
  meaning: Meaning,
  words: readonly Token[],
  keys: readonly string[],
  languages: LanguageShares,
  context: Context | undefined,
): Match {
  const {instrument, key} = meaning
  const fit = key === '' ? keyFit(instrument, keys) : 1
  let weight = meaning.weight * fit * languageFit(meaning.languages, languages)
  for (const [name, factor] of meaning.contexts) if (context?.has(name)) weight *= factor
  const quality = (fit < 0.2 ? 0.6 : 1) * qualityOf(words) * 0.98
  return {instrument, weight, quality, reason: meaning.reason, words}
}

function fromSense(
  sense: Sense,
  words: readonly Token[],
  keys: readonly string[],
  languages: LanguageShares,
): Match {
  const {instrument} = sense
  const fit = keyFit(instrument, keys)
  const unkeyed = sense.keyed && keys.length === 0 ? 0.15 : 1
  // A key that is the instrument's own makes up for its being rare.
  const usual = keys.length > 0 && fit === 1 ? 1 : sense.weight
  const weight = usual * fit * unkeyed * languageFit(sense.languages, languages)
  const said = LANGUAGES.filter((language) => sense.languages.has(language)).join(', ')
  return {
    instrument,
    weight,
    quality: (fit < 0.2 ? 0.6 : 1) * (unkeyed < 1 ? 0.9 : 1) * 0.98,
    reason: `${instrument.labels.en.name} is called so (${said})`,
    words,
  }
}

function languageFit(own: ReadonlySet<Language>, languages: LanguageShares): number {
  let share = 0
  for (const language of own) share += languages[language]
  return 0.08 + 0.92 * share
}

/** How well a key goes with an instrument, 1 best; the families of crooks take any key. */
function keyFit(instrument: Instrument, keys: readonly string[]): number {
  const {builtIn, family, id, transposition} = instrument
  if (keys.length === 0 || id === 'timpani') return 1
  if (builtIn === undefined) return 0.2
  const place = keys.indexOf(builtIn)
  if (place >= 0) return place === 0 ? 1 : 0.6
  // A euphonium "in C" reads at pitch, whatever its tube.
  if (keys.includes('C') && transposition.chromatic === 0) return 0.7
  if (family === 'horns' || family === 'trumpets' || family === 'cornets') return 0.15
  return 0.03
}

/** The best match for each instrument. */
function best(matches: readonly Match[]): readonly Match[] {
  const found = new Map<Instrument, Match>()
  for (const match of matches) {
    const known = found.get(match.instrument)
    if (!known || known.weight < match.weight) found.set(match.instrument, match)
  }
  return [...found.values()]
}
