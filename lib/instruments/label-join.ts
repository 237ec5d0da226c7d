import {instrumentById} from './instrument.ts'
import {readClause} from './label-clause.ts'
import {normalize} from './label-context.ts'
import {cutClauses} from './label-cut.ts'
import type {Clause} from './label-cut.ts'
import {foldText} from './label-form.ts'
import type {Candidate} from './label-match.ts'
import type {Doubling, LabelReading} from './label-reading.ts'
import type {Knowledge} from './label-segment.ts'
import {tokensOf} from './label-token.ts'
import type {Token} from './label-token.ts'

/** Reads a label clause by clause: what it names first, then who else, instead of whom, with what in brackets. */
export function readClauses(label: string, knowledge: Knowledge): LabelReading {
  const own = knowledge.userNames.get(foldText(label))
  const clauses = cutClauses(splitKeys(tokensOf(label), knowledge), knowledge)
  const [first, ...others] = clauses
  const main = readClause(label, first?.tokens ?? [], knowledge)
  if (own !== undefined) return withUserName(main, own)
  const prior = normalize(
    (language) => 0.05 + (main.languages.find((one) => one.language === language)?.confidence ?? 0),
  )
  return others.reduce((reading, clause) => {
    const text = textOf(label, clause.tokens)
    const read = readClause(text, clause.tokens, {...knowledge, prior, ...companyOf(main, clause)})
    return joinClause(reading, clause, read)
  }, main)
}

/** Dutch and German write a key and its instrument in one word: `esklarinet`. */
function splitKeys(tokens: readonly Token[], {lexicon}: Knowledge): readonly Token[] {
  return tokens.flatMap((token) => {
    const [, key = '', name = ''] = /^(bes|es|as|des)(.{3,})$/.exec(token.fold) ?? []
    const isName = key !== '' && lexicon.languagesOf(name).size > 0
    if (!isName || lexicon.languagesOf(token.fold).size > 0) return [token]
    const {text, start, end, kind, dot} = token
    const at = start + key.length
    return [
      {text: text.slice(0, key.length), fold: key, kind, dot: false, start, end: at},
      {text: '-', fold: '-', kind: 'sign' as const, dot: false, start: at, end: at},
      {text: text.slice(key.length), fold: name, kind, dot, start: at, end},
    ]
  })
}

/** On one staff with a cello, `Bass` is a double bass. */
function companyOf(main: LabelReading, {role}: Clause): Pick<Knowledge, 'context'> {
  const family = instrumentById(main.instruments[0]?.id ?? '')?.family
  return role === 'and' && family === 'strings' ? {context: new Set(['strings'])} : {}
}

function textOf(label: string, tokens: readonly Token[]): string {
  return label.slice(tokens[0]?.start, tokens.at(-1)?.end)
}

function withUserName(main: LabelReading, id: string): LabelReading {
  const candidate = {id, confidence: 0.99, reason: 'your own table says so', words: [main.label]}
  return {...main, instruments: [candidate]}
}

function joinClause(reading: LabelReading, clause: Clause, read: LabelReading): LabelReading {
  const tokens = [...reading.tokens, ...read.tokens].toSorted((a, b) => a.start - b.start)
  const joined = {...reading, tokens}
  switch (clause.role) {
    case 'or':
      return {
        ...joined,
        optional: reading.optional || read.optional,
        alternatives: [...reading.alternatives, read],
      }
    case 'and':
      return sameInstrument(reading, read)
        ? joined
        : {...joined, together: [...reading.together, read]}
    case 'instead':
      return {...joined, insteadOf: [...reading.insteadOf, read]}
    case 'doubling':
      return {...joined, doublings: [...reading.doublings, doublingOf(clause, read)]}
    case 'alias':
      return joinAlias(joined, clause, read)
  }
}

function doublingOf(clause: Clause, reading: LabelReading): Doubling {
  return {numbers: clause.numbers ?? [], reading}
}

function sameInstrument(a: LabelReading, b: LabelReading): boolean {
  return a.instruments[0] !== undefined && a.instruments[0].id === b.instruments[0]?.id
}

/**
 * Brackets hold another name of the same (`Englischhorn (cor anglais)`), another size that the same player has
 * (`Flöte (Piccolo)`), or another instrument that may play instead (`Contrebasson (sarrusophone)`).
 */
function joinAlias(reading: LabelReading, clause: Clause, alias: LabelReading): LabelReading {
  const [first] = reading.instruments
  const [other] = alias.instruments
  if (!first)
    return {...reading, instruments: alias.instruments, ...(alias.key && {key: alias.key})}
  if (!other) return reading
  const both = reading.instruments.flatMap((candidate) => {
    const again = alias.instruments.find(({id}) => id === candidate.id)
    return again ? [{candidate, weight: candidate.confidence * again.confidence}] : []
  })
  const isSame = both.some(({weight}) => weight >= 0.02)
  if (isSame) return {...reading, instruments: confirm(reading.instruments, alias.instruments)}
  return instrumentById(first.id)?.family === instrumentById(other.id)?.family
    ? {...reading, doublings: [...reading.doublings, doublingOf(clause, alias)]}
    : {...reading, alternatives: [...reading.alternatives, alias]}
}

function confirm(
  candidates: readonly Candidate[],
  alias: readonly Candidate[],
): readonly Candidate[] {
  const weighed = candidates.map((candidate) => {
    const again = alias.find(({id}) => id === candidate.id)
    const weight = candidate.confidence * (0.02 + (again?.confidence ?? 0))
    return {candidate, weight, words: [...candidate.words, ...(again?.words ?? [])]}
  })
  const total = weighed.reduce((sum, {weight}) => sum + weight, 0)
  return weighed
    .map(({candidate, weight, words}) => ({
      ...candidate,
      words,
      confidence: Math.round((weight / total) * 980) / 1000,
    }))
    .filter(({confidence}) => confidence >= 0.002)
    .toSorted((a, b) => b.confidence - a.confidence)
}
