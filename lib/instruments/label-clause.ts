import {parseClef} from '../staff/clef.ts'
import {LANGUAGES} from './instrument.ts'
import type {Language} from './instrument.ts'
import {normalize} from './label-context.ts'
import type {LanguageShares} from './label-match.ts'
import {readNumbers} from './label-number.ts'
import type {PhraseSpan} from './label-phrase.ts'
import type {LabelReading, LabelToken, TokenRole} from './label-reading.ts'
import {readSegment} from './label-segment.ts'
import type {Knowledge} from './label-segment.ts'
import type {Token} from './label-token.ts'

/** Reads the tokens of one clause; offsets stay those of the whole label. */
export function readClause(
  label: string,
  tokens: readonly Token[],
  knowledge: Knowledge,
): LabelReading {
  const phrases = knowledge
    .findPhrases(tokens)
    .filter((span) => !isConnector(span) || isIdle(span, tokens))
    .filter((span) => span.role !== 'clef' || span.end - span.start < wordCount(tokens))
  const inPhrase = (index: number) => phrases.find(({start, end}) => index >= start && index < end)
  const rest = tokens.filter((_, index) => !inPhrase(index))
  const numbers = readNumbers(rest, knowledge.lexicon.isPlural)
  const isNumber = (index: number) => numbers.desks.includes(index) || numbers.count.includes(index)
  const content = rest.filter((_, index) => !isNumber(index))
  const prior = observePrior(knowledge.prior, phrases, rest)
  const clef = phrases.find(({role}) => role === 'clef')?.meaning
  const context =
    clef === undefined ? knowledge.context : new Set([...(knowledge.context ?? []), 'clef'])
  const segment = readSegment(content, {...knowledge, prior, ...(context && {context})})
  const [key, ...otherKeys] = segment.keys
  const rank = phrases.find(({role}) => role === 'solo' || role === 'ripieno')?.role
  const has = (role: string) => phrases.some((phrase) => phrase.role === role)
  const parsedClef = clef === undefined ? undefined : parseClef(clef)
  return {
    label,
    instruments: segment.candidates,
    ...(key !== undefined && {key}),
    otherKeys,
    ...(segment.octave && {keyOctave: segment.octave}),
    numbers: numbers.numbers,
    ...(numbers.players !== undefined && {players: numbers.players}),
    ...(rank && {rank: rank as 'solo' | 'ripieno'}),
    ...(parsedClef && {clef: parsedClef}),
    optional: has('optional'),
    cover: has('cover'),
    alternatives: [],
    together: [],
    insteadOf: [],
    doublings: [],
    languages: LANGUAGES.map((language) => ({
      language,
      confidence: round(segment.languages[language]),
    }))
      .filter(({confidence}) => confidence > 0)
      .toSorted((a, b) => b.confidence - a.confidence),
    tokens: tokens.flatMap((token, index) => {
      const phrase = inPhrase(index)
      const at = rest.indexOf(token)
      const role = phrase
        ? phraseRole(phrase)
        : isNumber(at)
          ? {role: (numbers.desks.includes(at) ? 'number' : 'players') as TokenRole}
          : (segment.roles.get(token) ?? {role: 'ignored' as const})
      return token.kind === 'sign' && role.role === 'ignored' ? [] : [labelToken(token, role)]
    }),
  }
}

function isConnector({role}: PhraseSpan): boolean {
  return role === 'or' || role === 'and' || role === 'doubling' || role === 'instead'
}

/** Between numbers a conjunction says nothing more: `1. u. 2.` */
function isIdle({role, start}: PhraseSpan, tokens: readonly Token[]): boolean {
  if (role !== 'or' && role !== 'and') return false
  return readNumbers(tokens.slice(0, start).slice(-1), () => false).desks.length > 0
}

function wordCount(tokens: readonly Token[]): number {
  return tokens.filter(({kind}) => kind === 'word').length
}

function round(share: number): number {
  return Math.round(share * 1000) / 1000
}

function labelToken(
  token: Token,
  {role, meaning}: {readonly role: TokenRole; readonly meaning?: string},
): LabelToken {
  return {text: token.text, start: token.start, role, ...(meaning && {meaning})}
}

function phraseRole({role, meaning}: PhraseSpan): {role: TokenRole; meaning?: string} {
  if (role === 'clef') return {role, meaning}
  if (role === 'solo' || role === 'ripieno') return {role: 'rank', meaning: role}
  if (role === 'optional' || role === 'cover') return {role}
  return {role: 'ignored'}
}

const ORDINAL_LANGUAGES: readonly (readonly [RegExp, readonly Language[]])[] = [
  [/^\d+(er|ers|re|res|ere|eres|eme|emes|me|mes)$/, ['fr']],
  [/^\d+(st|nd|rd|th)$/, ['en']],
  [/^\d+(do|da|ro|ra|to|ta|mo|zo|o|a|os|as)$/, ['it', 'es']],
]

/** Clef words and endings of ordinals tell the language too. */
function observePrior(
  prior: LanguageShares,
  phrases: readonly PhraseSpan[],
  tokens: readonly Token[],
): LanguageShares {
  const evidence = [
    ...phrases.map(({languages}) => languages),
    ...tokens.flatMap(({fold}) =>
      ORDINAL_LANGUAGES.filter(([pattern]) => pattern.test(fold)).map(([, languages]) => languages),
    ),
  ].filter((languages) => languages.length > 0)
  return normalize((language) =>
    evidence.reduce(
      (share, languages) => (languages.includes(language) ? share : share * 0.25),
      prior[language],
    ),
  )
}
