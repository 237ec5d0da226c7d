import type {KeySpan} from './label-key.ts'
import {readNumbers} from './label-number.ts'
import type {PhraseRole, PhraseSpan} from './label-phrase.ts'
import type {Knowledge} from './label-segment.ts'
import type {Token} from './label-token.ts'

/** Tokens that name one instrument, and how it goes with the one named first. */
export interface Clause {
  readonly role: 'or' | 'and' | 'instead' | 'doubling' | 'alias'
  readonly tokens: readonly Token[]
  /** The desks of a doubling: `2. auch Piccolo`. */
  readonly numbers?: readonly number[]
}

type ConnectorRole = Exclude<Clause['role'], 'alias'>

/** Cuts a label at brackets and at conjunctions between instruments. The first clause is the label's main one. */
export function cutClauses(
  tokens: readonly Token[],
  knowledge: Knowledge,
): readonly [Clause, ...Clause[]] {
  const {outside, groups} = cutBrackets(tokens, knowledge)
  const [main, ...others] = cutAtConnectors(outside, knowledge)
  const inBrackets = groups.flatMap((group) => {
    const [first, ...more] = cutAtConnectors(group, knowledge)
    if (first.tokens.length === 0) return more
    return first.numbers ? [first, ...more] : [{...first, role: 'alias' as const}, ...more]
  })
  return [main, ...others, ...inBrackets]
}

/** Brackets that name another instrument become groups; those with a key, clef or option stay where they are. */
function cutBrackets(tokens: readonly Token[], knowledge: Knowledge) {
  const outside: Token[] = []
  const groups: (readonly Token[])[] = []
  for (let index = 0; index < tokens.length; index++) {
    const token = tokens[index]
    if (!token) break
    const closing = token.text === '(' ? ')' : token.text === '[' ? ']' : undefined
    if (!closing) {
      outside.push(token)
      continue
    }
    const found = tokens.findIndex((other, at) => at > index && other.text === closing)
    const end = found < 0 ? tokens.length : found
    const inside = tokens.slice(index + 1, end)
    const isOctave =
      inside.length === 1 &&
      knowledge.keys.keyOctaveOf(inside[0]?.fold ?? '') !== undefined &&
      outside.length > 0
    if (inside[0]?.fold === 'sic') {
      // An editor's remark.
    } else if (!isOctave && namesInstrument(inside, knowledge)) groups.push(inside)
    else if (isOctave || inside.some((one) => isUnderstood(one, inside, knowledge)))
      outside.push(...tokens.slice(index, end + 1))
    index = end
  }
  return {outside, groups}
}

function isUnderstood(token: Token, tokens: readonly Token[], knowledge: Knowledge): boolean {
  const index = tokens.indexOf(token)
  const within = (span: KeySpan | PhraseSpan) => isWithin(index, span)
  // In brackets even a letter at the edge is a key, so the brackets belong to what is looked at.
  return (
    token.kind === 'number' ||
    knowledge.keys.findKeys(tokens).some(within) ||
    knowledge.findPhrases(tokens).some(within) ||
    readNumbers(tokens, () => false).desks.includes(index)
  )
}

function cutAtConnectors(
  tokens: readonly Token[],
  knowledge: Knowledge,
): readonly [Clause, ...Clause[]] {
  const connectors = knowledge.findPhrases(tokens).flatMap((span) => {
    const role = connectorRole(span)
    return role ? [{...span, role}] : []
  })
  const cuts: {readonly start: number; readonly end: number; readonly role: ConnectorRole}[] = []
  for (const [at, span] of connectors.entries()) {
    const from = cuts.at(-1)?.end ?? 0
    const left = tokens.slice(from, span.start)
    const right = tokens.slice(span.end, connectors[at + 1]?.start)
    const leftNames = namesInstrument(left, knowledge)
    const allowsNoLeft =
      span.role === 'doubling' ||
      span.role === 'instead' ||
      (span.start === 0 && span.role === 'or')
    if (namesInstrument(right, knowledge) && (leftNames || allowsNoLeft)) cuts.push(span)
  }
  const main: Clause = {role: 'alias', tokens: tokens.slice(0, cuts[0]?.start)}
  const clauses = cuts.map(({end, role}, at) => ({
    role,
    tokens: tokens.slice(end, cuts[at + 1]?.start),
  }))
  return giveNumbers([main, ...clauses], knowledge)
}

function connectorRole({role, meaning}: PhraseSpan): ConnectorRole | undefined {
  if (role === 'optional') return meaning === 'or' ? 'or' : undefined
  const roles: readonly PhraseRole[] = ['or', 'and', 'doubling', 'instead']
  return roles.includes(role) ? (role as ConnectorRole) : undefined
}

/** `Flöten, 2. auch Piccolo`: the numbers between the comma and `auch` are those of the doubling. */
function giveNumbers(
  clauses: readonly [Clause, ...Clause[]],
  {lexicon}: Knowledge,
): readonly [Clause, ...Clause[]] {
  const [main, ...others] = clauses
  const next = others[0]
  if (next?.role !== 'doubling') return clauses
  const comma = main.tokens.findLastIndex(({text}) => text === ',' || text === ';')
  const tail = main.tokens.slice(comma + 1)
  const {numbers, desks} = readNumbers(tail, lexicon.isPlural)
  const onlyNumbers = tail.every(({kind}, at) => kind === 'sign' || desks.includes(at))
  if (numbers.length === 0 || !onlyNumbers) return clauses
  const kept = main.tokens.slice(0, Math.max(comma, 0))
  return [{...main, tokens: kept}, {...next, numbers}, ...others.slice(1)]
}

/** Whether a word names an instrument or a part of its name; keys, numbers and phrases do not. */
export function namesInstrument(
  tokens: readonly Token[],
  {lexicon, keys, findPhrases}: Knowledge,
): boolean {
  // A bare letter is taken for a key here; `Cb.` is rather a contrabass.
  const spans = keys.findKeys(tokens).filter(({start, strength}) => {
    const token = tokens[start]
    return strength === 'strong' || (token?.fold.length === 1 && !token.dot)
  })
  const phrases = findPhrases(tokens)
  const numbers = readNumbers(tokens, () => false).desks
  return tokens.some(
    (token, index) =>
      token.kind === 'word' &&
      !lexicon.isNoise(token, index) &&
      !numbers.includes(index) &&
      !spans.some((span) => isWithin(index, span) || span.octave?.at === index) &&
      !phrases.some((span) => isWithin(index, span)) &&
      lexicon.languagesOf(token.fold).size > 0,
  )
}

function isWithin(index: number, span: {readonly start: number; readonly end: number}): boolean {
  return index >= span.start && index < span.end
}
