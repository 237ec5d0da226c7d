import {phraseTable} from './data/label-phrases.ts'
import type {Language} from './instrument.ts'
import type {Token} from './label-token.ts'
import {readTable, wordsOf} from './table.ts'

export type PhraseRole =
  | 'clef'
  | 'optional'
  | 'or'
  | 'and'
  | 'doubling'
  | 'instead'
  | 'solo'
  | 'ripieno'
  | 'cover'
  | 'nothing'

/** A phrase found among tokens. `start` and `end` are indices of tokens. */
export interface PhraseSpan {
  readonly start: number
  readonly end: number
  readonly role: PhraseRole
  readonly meaning: string
  readonly languages: readonly Language[]
}

export type PhraseFinder = (tokens: readonly Token[]) => readonly PhraseSpan[]

type Phrase = Omit<PhraseSpan, 'start' | 'end'>

/** Finds the phrases of the table, the longest at each place. */
export function phraseFinder(): PhraseFinder {
  const phrases = new Map<string, Phrase>()
  for (const [phrase = '', role, meaning = '', own = ''] of readTable(
    phraseTable,
    'phrase|role|meaning|languages',
  )) {
    const languages = wordsOf(own) as readonly Language[]
    if (!phrases.has(phrase)) phrases.set(phrase, {role: role as PhraseRole, meaning, languages})
  }
  const longest = Math.max(...[...phrases.keys()].map((phrase) => phrase.split(' ').length))
  return (tokens) => {
    const found: PhraseSpan[] = []
    for (let start = 0; start < tokens.length; start++) {
      const span = phraseAt(tokens, start, phrases, longest)
      if (!span) continue
      found.push(span)
      start = span.end - 1
    }
    return found
  }
}

function phraseAt(
  tokens: readonly Token[],
  start: number,
  phrases: ReadonlyMap<string, Phrase>,
  longest: number,
): PhraseSpan | undefined {
  const sign = signRole(tokens, start)
  if (sign) return {start, end: start + 1, role: sign, meaning: '', languages: []}
  for (let length = longest; length > 0; length--) {
    const part = tokens.slice(start, start + length)
    if (part.length < length) continue
    const phrase = phrases.get(part.map(({fold}) => fold).join(' '))
    if (phrase && !(length === 1 && isLetterOfName(part[0], phrase)))
      return {start, end: start + length, ...phrase}
  }
  return undefined
}

/** Between the names of instruments; elsewhere a sign means nothing. */
function signRole(tokens: readonly Token[], index: number): PhraseRole | undefined {
  const text = tokens[index]?.text
  if (text === '/') return 'or'
  return text === '&' || text === '+' || text === ',' || text === ';' ? 'and' : undefined
}

/** `E. Hn.`, `O`: a capital or abbreviated letter is no conjunction, except the German `u.` */
function isLetterOfName(token: Token | undefined, phrase: Phrase): boolean {
  if (!token || token.fold.length > 1 || phrase.role === 'clef') return false
  return token.text !== token.fold || (token.dot && token.fold !== 'u')
}
