import {noiseWords} from './data/label-words.ts'
import type {Instrument, Language} from './instrument.ts'
import {isPluralWord, readForms, readPlurals} from './label-form.ts'
import type {Form} from './label-form.ts'
import type {KeyReader} from './label-key.ts'
import {readMeanings} from './label-meaning.ts'
import type {Meaning} from './label-meaning.ts'
import type {Token} from './label-token.ts'
import {addAll, bagsOf, conceptsIn, languagesOfParts, readWords} from './label-word.ts'

/** That a name stands for an instrument. `keyed`: the name names the key too, and is not said without it. */
export interface Sense {
  readonly instrument: Instrument
  readonly languages: ReadonlySet<Language>
  readonly keyed: boolean
  /** Compares the senses of one name: 1 for the usual one. */
  readonly weight: number
}

/** Everything that the words of labels are looked up in. */
export interface Lexicon {
  /** The concepts that a word may stand for; each is a list, since a compound has several: `Bassposaune`. */
  readonly conceptsOf: (word: string) => readonly (readonly string[])[]
  /** The languages that a word is known in; none when it is unknown. */
  readonly languagesOf: (word: string) => ReadonlySet<Language>
  /** Whether several may be meant; an abbreviation serves for one and for several. */
  readonly isPlural: (word: Token) => boolean
  readonly isNoise: (token: Token, index: number) => boolean
  /** By the name's text, folded, without key and noise. */
  readonly texts: ReadonlyMap<string, readonly Sense[]>
  /** By the name's concepts, sorted. */
  readonly bags: ReadonlyMap<string, readonly Sense[]>
  readonly meanings: ReadonlyMap<string, readonly Meaning[]>
}

/** Reads all tables; takes some hundredths of a second. */
export function readLexicon(keys: KeyReader): Lexicon {
  const words = readWords()
  const noise = new Set(noiseWords.split(' '))
  const isNoise = (token: Token, at: number) =>
    noise.has(token.fold) && (token.fold.length > 1 || isLowerLetter(token, at))
  const names = readForms(keys, isNoise)
  const known = new Map<string, ReturnType<Lexicon['conceptsOf']>>()
  for (const {tokens} of names)
    for (const {fold} of tokens) if (!known.has(fold)) known.set(fold, conceptsIn(words, fold))
  const conceptsOf = (word: string) => known.get(word) ?? conceptsIn(words, word)
  const plurals = readPlurals()
  const languages = new Map([...words.languages].map(([word, own]) => [word, new Set(own)]))
  for (const {tokens, languages: own} of names)
    for (const {fold} of tokens) addAll(languages, fold, own)
  return {
    conceptsOf,
    languagesOf: (word) => languages.get(word) ?? languagesOfParts(words, word),
    isPlural: ({fold, dot}) =>
      words.concepts.has(fold) && (dot || fold.length < 4) ? true : isPluralWord(plurals, fold),
    isNoise,
    texts: index(names, ({tokens}) => [tokens.map(({fold}) => fold).join(' ')]),
    // `C. cl.` is a text, not a clarinet in C: letters stand for too much.
    bags: index(names, ({tokens}) =>
      tokens.every(({fold}) => fold.length === 1)
        ? []
        : bagsOf(tokens.map(({fold}) => conceptsOf(fold))),
    ),
    meanings: readMeanings(),
  }
}

function isLowerLetter(token: Token, at: number): boolean {
  return at > 0 && !token.dot && token.text.charAt(0) === token.text.charAt(0).toLowerCase()
}

function index(
  forms: readonly Form[],
  textsOf: (form: Form) => readonly string[],
): ReadonlyMap<string, readonly Sense[]> {
  const found = new Map<string, Map<string, Form>>()
  for (const form of forms)
    for (const text of textsOf(form)) {
      const senses = found.get(text) ?? new Map<string, Form>()
      const known = senses.get(form.instrument.id)
      senses.set(form.instrument.id, known ? joinForms(known, form) : form)
      found.set(text, senses)
    }
  return new Map([...found].map(([text, senses]) => [text, [...senses.values()]]))
}

function joinForms(a: Form, b: Form): Form {
  return {
    ...a,
    languages: new Set([...a.languages, ...b.languages]),
    keyed: a.keyed && b.keyed,
    weight: Math.max(a.weight, b.weight),
  }
}
