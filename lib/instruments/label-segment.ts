import type {Language} from './instrument.ts'
import {LANGUAGES} from './instrument.ts'
import type {Context} from './label-context.ts'
import {normalize} from './label-context.ts'
import type {KeyOctave, KeyReader, KeySpan} from './label-key.ts'
import {isKeyPreposition} from './label-key.ts'
import type {Lexicon} from './label-lexicon.ts'
import {matchWords} from './label-match.ts'
import type {Candidate, LanguageShares, Match} from './label-match.ts'
import type {PhraseFinder} from './label-phrase.ts'
import type {TokenRole} from './label-reading.ts'
import type {Token} from './label-token.ts'

/** What is known when a label is read: tables, the user's names and what the rest of the score says. */
export interface Knowledge {
  readonly keys: KeyReader
  readonly lexicon: Lexicon
  readonly findPhrases: PhraseFinder
  /** Folded names of the user's own, and the instruments' ids. */
  readonly userNames: ReadonlyMap<string, string>
  /** The language of the score, as far as it is known. */
  readonly prior: LanguageShares
  readonly context?: Context
}

/** What the words of a segment mean that are no phrase and no number. */
export interface Segment {
  readonly candidates: readonly Candidate[]
  readonly keys: readonly string[]
  readonly octave?: KeyOctave
  readonly languages: LanguageShares
  readonly roles: ReadonlyMap<Token, {readonly role: TokenRole; readonly meaning?: string}>
}

/** One way to tell key and name apart. */
interface Parse {
  readonly spans: readonly KeySpan[]
  readonly octave?: KeySpan['octave']
  readonly words: readonly Token[]
  readonly plausibility: number
}

/** Reads tokens that name one instrument: every way to tell its key from its name is tried and weighed. */
export function readSegment(tokens: readonly Token[], knowledge: Knowledge): Segment {
  const parses = parsesOf(tokens, knowledge)
  const languages = guessLanguages(tokens, parses, knowledge)
  const results = parses.map((parse) => ({parse, matches: matchParse(parse, languages, knowledge)}))
  const weighed = results.flatMap(({parse, matches}) => {
    const heaviest = Math.max(...matches.map(({weight}) => weight))
    return matches.map((match) => ({
      parse,
      match,
      weight: (match.weight / heaviest) * match.quality ** 3 * parse.plausibility,
    }))
  })
  const winner = weighed.toSorted((a, b) => b.weight - a.weight)[0]
  const parse = winner?.parse ?? results[0]?.parse
  const keys = [
    ...new Set(parse?.spans.flatMap((span) => orderKeys(span, languages, winner?.match))),
  ]
  return {
    candidates: candidatesOf(weighed),
    keys,
    ...(parse?.octave && {octave: parse.octave.is}),
    languages,
    roles: rolesOf(tokens, parse, winner?.match, keys, knowledge),
  }
}

function parsesOf(tokens: readonly Token[], knowledge: Knowledge): readonly Parse[] {
  const spans = knowledge.keys.findKeys(tokens)
  const strong = spans.filter(({strength}) => strength === 'strong')
  const weak = spans.filter(({strength}) => strength === 'weak')
  if (strong.length > 0) return withOctaves(tokens, strong, 1, knowledge)
  return [
    ...weak.flatMap((span) => withOctaves(tokens, [span], weakness(span, tokens), knowledge)),
    {
      spans: [],
      words: wordsOutside(tokens, [], undefined, knowledge),
      plausibility: weak.reduce((rest, span) => Math.min(rest, 1 - weakness(span, tokens)), 1),
    },
  ]
}

/** A word for the octave beside the key may as well be the size of the instrument: `Si♭ basso`, `Sax. mib alto`. */
function withOctaves(
  tokens: readonly Token[],
  spans: readonly KeySpan[],
  plausibility: number,
  knowledge: Knowledge,
): readonly Parse[] {
  const plain = {spans, words: wordsOutside(tokens, spans, undefined, knowledge), plausibility}
  const octave = spans.find((span) => span.octave)?.octave
  if (!octave) return [plain]
  const words = wordsOutside(tokens, spans, octave.at, knowledge)
  const concepts = words.flatMap(({fold}) => knowledge.lexicon.conceptsOf(fold)).flat()
  const crooked = concepts.some((concept) => /^(horn|trumpet|cornet|clarino)$/.test(concept))
  return [
    {spans, octave, words, plausibility: plausibility * (crooked ? 1 : 0.02)},
    {...plain, plausibility: plausibility * (crooked ? 0.02 : 1)},
  ]
}

/** How likely a bare letter is a key: beside words in full rather, before abbreviations less, with a point hardly. */
function weakness(span: KeySpan, tokens: readonly Token[]): number {
  const token = tokens[span.start]
  const words = tokens.filter(
    (other) => other !== token && other.kind === 'word' && other.fold !== 'in',
  )
  if (words.length === 0) return 0
  const isBracketed = tokens[span.start - 1]?.text === '('
  if (isBracketed) return 0.95
  if (token?.dot) return span.start === 0 ? 0.05 : 0.15
  const inFull = words.every(({fold, dot}) => fold.length >= 4 && !dot)
  if (inFull) return 0.93
  return span.start === 0 ? beforeAbbreviation(token?.fold) : 0.85
}

/** `B Cl` is rather a bass clarinet, since one in B flat would be `Bb Cl`; `D` and `F` abbreviate no size. */
function beforeAbbreviation(letter = ''): number {
  if (letter === 'b') return 0.3
  return letter === 'a' || letter === 'c' || letter === 'e' ? 0.5 : 0.95
}

function wordsOutside(
  tokens: readonly Token[],
  spans: readonly KeySpan[],
  octave: number | undefined,
  {lexicon}: Knowledge,
): readonly Token[] {
  return tokens.filter((token, index) => {
    if (token.kind !== 'word' || index === octave) return false
    if (spans.some(({start, end}) => index >= start && index < end)) return false
    const beforeKey = spans.some(
      ({start}) => start === index + 1 || (octave === index + 1 && start === index + 2),
    )
    return !(beforeKey && isKeyPreposition(token.fold)) && !lexicon.isNoise(token, index)
  })
}

function matchParse(
  parse: Parse,
  languages: LanguageShares,
  {lexicon, context}: Knowledge,
): readonly Match[] {
  const keys = parse.spans.flatMap((span) => span.keys)
  return matchWords(parse.words, keys, lexicon, languages, context)
}

function guessLanguages(
  tokens: readonly Token[],
  parses: readonly Parse[],
  {lexicon, prior}: Knowledge,
): LanguageShares {
  const shares = new Map(LANGUAGES.map((language) => [language, prior[language]]))
  const observe = (languages: Iterable<Language>, otherwise: number) => {
    const own = new Set(languages)
    if (own.size === 0) return
    for (const language of LANGUAGES)
      if (!own.has(language)) shares.set(language, (shares.get(language) ?? 0) * otherwise)
  }
  const [first] = parses
  for (const [index, token] of tokens.entries()) {
    if (token.kind !== 'word' || lexicon.isNoise(token, index)) continue
    if (first?.spans.some(({start, end}) => index >= start && index < end)) continue
    observe(lexicon.languagesOf(token.fold), 0.12)
  }
  for (const span of first?.spans ?? [])
    if (span.strength === 'strong')
      observe(span.languages ?? [], span.languages?.length === 1 ? 0.12 : 0.25)
  const text = first?.words.map(({fold}) => fold).join(' ') ?? ''
  observe(lexicon.texts.get(text)?.flatMap((sense) => [...sense.languages]) ?? [], 0.4)
  return normalize((language) => shares.get(language) ?? 0)
}

/** `B` is B flat in German, and for every instrument that is not made in B natural. */
function orderKeys(
  span: KeySpan,
  languages: LanguageShares,
  match: Match | undefined,
): readonly string[] {
  const family = match?.instrument.family
  const isCrook = family === 'horns' || family === 'trumpets' || family === undefined
  return isCrook && languages.de < 0.6 ? span.keys : span.keys.slice(0, 1)
}

function candidatesOf(
  weighed: readonly {readonly match: Match; readonly weight: number}[],
): readonly Candidate[] {
  const best = new Map<string, {match: Match; weight: number}>()
  for (const {match, weight} of weighed) {
    const known = best.get(match.instrument.id)
    if (!known || known.weight < weight) best.set(match.instrument.id, {match, weight})
  }
  const total = [...best.values()].reduce((sum, {weight}) => sum + weight, 0)
  return [...best.values()]
    .map(({match, weight}) => ({
      id: match.instrument.id,
      confidence: Math.round((weight / total) * match.quality * 1000) / 1000,
      reason: match.reason,
      words: match.words.map(({text}) => text),
    }))
    .filter(({confidence}) => confidence >= 0.002)
    .toSorted((a, b) => b.confidence - a.confidence)
}

function rolesOf(
  tokens: readonly Token[],
  parse: Parse | undefined,
  match: Match | undefined,
  keys: readonly string[],
  {lexicon}: Knowledge,
): Segment['roles'] {
  const roles = new Map<Token, {role: TokenRole; meaning?: string}>()
  for (const [index, token] of tokens.entries()) {
    const span = parse?.spans.find(({start, end}) => index >= start && index < end)
    if (span)
      roles.set(token, {role: 'key', meaning: span.keys.find((key) => keys.includes(key)) ?? ''})
    else if (parse?.octave?.at === index)
      roles.set(token, {role: 'key-octave', meaning: parse.octave.is})
    else if (match?.words.includes(token))
      roles.set(token, {role: 'instrument', meaning: match.instrument.id})
    else if (token.kind !== 'word' || lexicon.isNoise(token, index) || isKeyPreposition(token.fold))
      roles.set(token, {role: 'ignored'})
    else roles.set(token, {role: 'unknown'})
  }
  return roles
}
