import {keyOctaveTable, keySignTable, keyWordTable} from './data/label-keys.ts'
import type {Language} from './instrument.ts'
import type {Token} from './label-token.ts'
import {readTable, wordsOf} from './table.ts'

export type KeyOctave = 'alto' | 'basso'

/** A key that tokens may name. `start` and `end` are indices of tokens. */
export interface KeySpan {
  readonly start: number
  readonly end: number
  /** As in `Instrument.builtIn`, likeliest first: `B` alone may be B flat or B natural. */
  readonly keys: readonly string[]
  /** `weak`: a word that may as well be something else, as a bare letter that abbreviates. */
  readonly strength: 'strong' | 'weak'
  /** Said beside the key: which octave of the crook; `at` is the index of the token. */
  readonly octave?: {readonly is: KeyOctave; readonly at: number}
  /** The languages that say it so; absent when all may. */
  readonly languages?: readonly Language[]
}

/** Finds keys in tokens. */
export interface KeyReader {
  /** Every key that the tokens may name, without overlaps, from left to right. */
  readonly findKeys: (tokens: readonly Token[]) => readonly KeySpan[]
  readonly keyOctaveOf: (word: string) => KeyOctave | undefined
}

interface KeyWords {
  readonly named: ReadonlyMap<string, Said>
  readonly signs: ReadonlyMap<string, Said>
  readonly octaves: ReadonlyMap<string, KeyOctave>
}

interface Said {
  readonly is: string
  readonly languages: readonly Language[]
}

interface BareKey {
  readonly keys: readonly string[]
  readonly end: number
  readonly strength: 'strong' | 'weak'
  /** Where it must stand to be a key. `edge`: first, last, after `in`, in brackets or before a hyphen. */
  readonly place: 'anywhere' | 'edge' | 'edge-not-first'
  readonly languages: readonly Language[]
}

const PREPOSITIONS = new Set(['in', 'en', 'ton', 'tono'])

/** Whether a key may follow the word: `in Es`, `en ut`. */
export function isKeyPreposition(word: string): boolean {
  return PREPOSITIONS.has(word)
}

/** Reads the words for keys once. */
export function keyReader(): KeyReader {
  const words: KeyWords = {
    named: readSaid(keyWordTable, 'word|key|languages'),
    signs: readSaid(keySignTable, 'word|sign|languages'),
    octaves: new Map(
      readTable(keyOctaveTable, 'octave|words').flatMap(([is = '', cell = '']) =>
        wordsOf(cell).map((word) => [word, is as KeyOctave] as const),
      ),
    ),
  }
  return {
    findKeys: (tokens) => findKeys(tokens, words),
    keyOctaveOf: (word) => words.octaves.get(word),
  }
}

function readSaid(table: string, columns: string): ReadonlyMap<string, Said> {
  return new Map(
    readTable(table, columns).map(([word = '', is = '', languages = '']) => [
      word,
      {is, languages: wordsOf(languages) as readonly Language[]},
    ]),
  )
}

function findKeys(tokens: readonly Token[], words: KeyWords): readonly KeySpan[] {
  const spans: KeySpan[] = []
  for (let index = 0; index < tokens.length; index++) {
    const previous = spans.at(-1)
    const continues = previous !== undefined && isList(tokens.slice(previous.end, index))
    const span = keySpanAt(tokens, index, words, continues)
    if (!span) continue
    if (continues) {
      // Several in a row are keys, even bare letters: `C, G`.
      spans[spans.length - 1] = {...previous, strength: 'strong'}
      spans.push({...span, strength: 'strong'})
    } else spans.push(span)
    index = span.end - 1
  }
  return spans
}

/** Commas or conjunctions, at least one. */
function isList(tokens: readonly Token[]): boolean {
  return (
    tokens.length > 0 &&
    tokens.every(({fold}) => /^(,|&|\/|\+|e|et|und|u|and|y|oder|ou|or)$/.test(fold))
  )
}

function keySpanAt(
  tokens: readonly Token[],
  index: number,
  words: KeyWords,
  continues: boolean,
): KeySpan | undefined {
  const key = keyAt(tokens, index, words)
  if (!key || (continues && tokens[index]?.dot)) return undefined
  const octaveBefore = words.octaves.get(tokens[index - 1]?.fold ?? '')
  const before = tokens[octaveBefore ? index - 2 : index - 1]
  const introduced = before !== undefined && isKeyPreposition(before.fold)
  const bracketed = before?.text === '(' || before?.text === '['
  const isLast = tokens.slice(key.end).every(({kind}) => kind === 'sign')
  const atEdge = introduced || bracketed || isLast || isJoined(tokens, key.end - 1)
  if (key.place === 'edge' && !atEdge && !continues && index > 0) return undefined
  if (key.place === 'edge-not-first' && !atEdge) return undefined
  const {keys, end, languages} = key
  const octave = octaveBeside(tokens, index, end, words)
  return {
    start: index,
    end,
    keys,
    strength: introduced ? 'strong' : key.strength,
    ...(octave && {octave}),
    ...(languages.length > 0 && {languages}),
  }
}

function keyAt(tokens: readonly Token[], index: number, words: KeyWords): BareKey | undefined {
  const token = tokens[index]
  if (token?.kind !== 'word') return undefined
  const named = words.named.get(token.fold)
  const letter = /^[a-g]$/.test(token.fold) ? token.fold.toUpperCase() : undefined
  const natural = named && /^[A-G]$/.test(named.is) && token.fold !== 'h' ? named.is : letter
  const sign = natural ? signAt(tokens, index, words) : undefined
  if (natural && sign) {
    const languages = sign.languages.length > 0 ? sign.languages : (named?.languages ?? [])
    const keys = [natural + sign.is]
    return {keys, end: sign.end, strength: 'strong', place: 'anywhere', languages}
  }
  const end = index + 1
  if (named) {
    // `la`, `do`, `des` and `as` are words of their own; `H` and an abbreviated `Es.` may be others.
    const mayBeArticle = /^(la|do|des|as|ces)$/.test(token.fold) && token.text === token.fold
    const strength = token.fold === 'h' || token.dot || mayBeArticle ? 'weak' : 'strong'
    const place = mayBeArticle ? 'edge-not-first' : 'edge'
    return {keys: [named.is], end, strength, place, languages: named.languages}
  }
  const before = tokens[index - 1]
  if (letter && (token.text !== token.fold || (before && isKeyPreposition(before.fold)))) {
    const keys = letter === 'B' ? ['Bb', 'B'] : [letter]
    return {keys, end, strength: 'weak', place: 'edge', languages: []}
  }
  return joinedKey(token.fold, end, words)
}

/** `Sib`, `Eb`, `eflat` in one word, and the low tubas' doubled letters: `BBb`, `EEb`, `CC`. */
function joinedKey(word: string, end: number, words: KeyWords): BareKey | undefined {
  const [, name = '', sign = ''] = /^(.+?)(b|flat|bemol|bemolle|sharp|diese)$/.exec(word) ?? []
  const languages = words.signs.get(sign)?.languages ?? []
  const alter = words.signs.get(sign)?.is ?? ''
  const low = /^(bb|ee|aa)$/.test(name) || /^(cc|ff)$/.test(word)
  const letter = low ? (name || word).charAt(0) : /^[a-g]$/.test(name) ? name : undefined
  const place = 'anywhere'
  if (letter)
    return {
      keys: [letter.toUpperCase() + alter],
      end,
      // `Cb.` and `CC` are contrabasses more often than keys.
      strength: letter === 'c' ? 'weak' : 'strong',
      place,
      languages: low || languages.length > 0 ? ['en'] : [],
    }
  const named = words.named.get(name)
  if (!named || !/^[A-G]$/.test(named.is) || name === 'h') return undefined
  return {keys: [named.is + alter], end, strength: 'strong', place, languages: named.languages}
}

/** The sign after a letter, over a hyphen too: `E-flat`, `mi bémol`, `si b`. A capital B begins another word. */
function signAt(tokens: readonly Token[], index: number, words: KeyWords) {
  const at = tokens[index + 1]?.text === '-' ? index + 2 : index + 1
  const token = tokens[at]
  const said = token && words.signs.get(token.fold)
  if (!token || !said || token.text === 'B') return undefined
  const isLetter = (tokens[index]?.fold.length ?? 0) === 1
  if (token.text === 'b' && isLetter) return undefined
  // An English natural horn is no horn in a natural key: `Natural` after a letter has to end the name.
  if (said.is === 'n' && token.kind === 'word' && at < tokens.length - 1) return undefined
  return {is: said.is === 'n' ? '' : said.is, end: at + 1, languages: said.languages}
}

function octaveBeside(tokens: readonly Token[], start: number, end: number, words: KeyWords) {
  for (const at of [end, end + 1, start - 1]) {
    const is = words.octaves.get(tokens[at]?.fold ?? '')
    if (is && (at !== end + 1 || tokens[end]?.kind === 'sign')) return {is, at}
  }
  return undefined
}

/** Whether a hyphen follows: `Es-Klarinette`, `F-Horn`. */
function isJoined(tokens: readonly Token[], index: number): boolean {
  return tokens[index + 1]?.text === '-' && tokens[index + 2]?.kind === 'word'
}
