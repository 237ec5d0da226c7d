import {changeWordTable, fillerWords, techniqueTable} from './data/muta-words.ts'
import {keyReader} from './label-key.ts'
import type {KeyOctave, KeyReader, KeySpan} from './label-key.ts'
import {readNumbers} from './label-number.ts'
import type {LabelReading} from './label-reading.ts'
import {tokensOf} from './label-token.ts'
import type {Token} from './label-token.ts'
import {labelReader} from './label.ts'
import type {LabelOptions} from './label.ts'
import {readTable, wordsOf} from './table.ts'

export type Technique =
  | 'pizzicato'
  | 'arco'
  | 'mute'
  | 'mute-off'
  | 'stopped'
  | 'open'
  | 'brassy'
  | 'bells-up'
  | 'divisi'
  | 'unison'
  | 'solo'
  | 'soli'
  | 'tutti'
  | 'sul-ponticello'
  | 'sul-tasto'
  | 'col-legno'
  | 'flutter-tongue'
  | 'tremolo'
  | 'ordinary'
  | 'optional'
  | 'cue'

/** What words in the course of a part tell the players. `numbers` are the desks addressed; none means all. */
export type Muta =
  | {
      readonly kind: 'instrument-change'
      readonly to: LabelReading
      /** 0 to 1: a bare name may be that of a cue. */
      readonly confidence: number
      readonly numbers: readonly number[]
    }
  | {
      readonly kind: 'crook'
      /** As in `Instrument.builtIn`; what drums are tuned to, for timpani. */
      readonly key: string
      readonly otherKeys: readonly string[]
      readonly keyOctave?: KeyOctave
      /** The key before, where the words name both: `muta Sol in La`. */
      readonly from?: string
      readonly confidence: number
      readonly numbers: readonly number[]
    }
  | {
      readonly kind: 'technique'
      readonly techniques: readonly Technique[]
      readonly players?: number
      readonly numbers: readonly number[]
    }
  | {
      readonly kind: 'players'
      readonly players?: number
      readonly numbers: readonly number[]
    }

interface MutaWords {
  readonly changes: ReadonlySet<string>
  readonly techniques: ReadonlyMap<string, Technique>
  readonly fillers: ReadonlySet<string>
  readonly keys: KeyReader
  readonly readLabel: (label: string) => LabelReading
}

/**
 * Reads words in the course of a part, in six languages: another instrument, another crook, a technique, the number of
 * players. Undefined when they say none of these, as tempi and expressions do.
 *
 * @example
 * readMuta('muta in Mi♭') // {kind: 'crook', key: 'Eb', …}
 * readMuta('prendre la petite flûte') // {kind: 'instrument-change', to: …}
 * readMuta('à 2') // {kind: 'players', players: 2, numbers: []}
 */
export function readMuta(words: string, options: LabelOptions = {}): Muta | undefined {
  return mutaReader(options)(words)
}

/** `readMuta` for many words: reads the tables once. */
export function mutaReader(options: LabelOptions = {}): (words: string) => Muta | undefined {
  const known: MutaWords = {
    changes: new Set(readTable(changeWordTable, 'phrase|languages').map(([phrase = '']) => phrase)),
    techniques: new Map(
      readTable(techniqueTable, 'phrase|technique').map(([phrase = '', technique]) => [
        phrase,
        technique as Technique,
      ]),
    ),
    fillers: new Set(wordsOf(fillerWords)),
    keys: keyReader(),
    readLabel: labelReader(options).readLabel,
  }
  return (words) => readWords(words, known)
}

function readWords(words: string, known: MutaWords): Muta | undefined {
  if (words.trim() === '+') return {kind: 'technique', techniques: ['stopped'], numbers: []}
  const tokens = tokensOf(words).filter(({text}) => !/^[()[\]:]$/.test(text))
  // Longer texts are prose: remarks to the reader, not orders to the player.
  if (tokens.length === 0 || tokens.length > 14) return undefined
  return readPlaying(tokens, known) ?? readChange(words, tokens, known)
}

/** Techniques and numbers of players, when the words say nothing else. */
function readPlaying(tokens: readonly Token[], known: MutaWords): Muta | undefined {
  const {numbers, players, desks, count} = readNumbers(tokens, () => false)
  const techniques: Technique[] = []
  for (let index = 0; index < tokens.length; index++) {
    const found = techniqueAt(tokens, index, known)
    if (found) {
      techniques.push(found.technique)
      index += found.length - 1
      continue
    }
    const token = tokens[index]
    const isNumber = desks.includes(index) || count.includes(index)
    if (!isNumber && token?.kind !== 'sign' && !known.fillers.has(token?.fold ?? ''))
      return undefined
  }
  const said = {numbers, ...(players !== undefined && {players})}
  if (techniques.length > 0)
    return {kind: 'technique', techniques: [...new Set(techniques)], ...said}
  // A bare number is a fingering, a measure or a rehearsal mark; with a point it is a desk.
  const addressed = tokens.some(({dot, text}) => dot || /^[IVX]+$/.test(text))
  return players !== undefined || (numbers.length > 0 && addressed)
    ? {kind: 'players', ...said}
    : undefined
}

function techniqueAt(tokens: readonly Token[], start: number, {techniques}: MutaWords) {
  for (let length = 4; length > 0; length--) {
    const part = tokens.slice(start, start + length)
    const technique = techniques.get(part.map(({fold}) => fold).join(' '))
    if (technique && part.length === length) return {technique, length}
  }
  return undefined
}

/** Desks, a word for changing, keys or an instrument. */
function readChange(words: string, tokens: readonly Token[], known: MutaWords): Muta | undefined {
  const between = readCrook(tokens, known.keys.findKeys(tokens), false, [])
  if (between?.kind === 'crook' && between.from !== undefined) return between
  const {rest, isOrder, end} = afterOrder(tokens, known)
  if (rest.length === 0) return undefined
  const {numbers} = readNumbers(tokens.slice(0, tokens.length - rest.length), () => false)
  const spans = known.keys.findKeys(rest)
  const crook = readCrook(rest, spans, isOrder, numbers)
  if (crook) return crook
  const text = words.slice(isOrder ? end : tokens[0]?.start)
  const to = known.readLabel(text)
  const [first] = to.instruments
  const isWhole = to.tokens.every(({role}) => role !== 'unknown')
  if (!first || !isWhole || first.confidence < 0.2) return undefined
  // A bare letter is a rehearsal mark.
  if (!isOrder && !tokens.some(({kind, fold}) => kind === 'word' && fold.length > 2))
    return undefined
  return {
    kind: 'instrument-change',
    to,
    confidence: isOrder ? 0.95 : 0.35,
    numbers: isOrder ? numbers : [],
  }
}

/** What follows the longest word for changing that stands first or after numbers and names. */
function afterOrder(tokens: readonly Token[], {changes}: MutaWords) {
  for (let start = 0; start < Math.min(tokens.length, 6); start++)
    for (let length = 3; length > 0; length--) {
      const part = tokens.slice(start, start + length)
      if (part.length < length || !changes.has(part.map(({fold}) => fold).join(' '))) continue
      return {rest: tokens.slice(start + length), isOrder: true, end: part.at(-1)?.end ?? 0}
    }
  return {rest: tokens, isOrder: false, end: 0}
}

const BETWEEN = /^(in|en|a|nach|zu|to|naar|-|–|→|,|&|e|et|und|and|y|\/)$/
const EDGE = /^(in|en|ton|tono|de|nach|zu|to|naar|le|il|der|den)$/

/** Only keys and prepositions: `in F`, `Sol in La`, `en ré`. A bare letter needs a preposition or an order. */
function readCrook(
  rest: readonly Token[],
  spans: readonly KeySpan[],
  isOrder: boolean,
  numbers: readonly number[],
): Muta | undefined {
  const keys = spans.length > 0 ? spans : isOrder ? bareKey(rest) : []
  const last = keys.at(-1)
  const first = keys[0]
  if (!first || !last) return undefined
  const isInside = (index: number) =>
    keys.some(({start, end, octave}) => (index >= start && index < end) || octave?.at === index)
  const only = rest.every(
    ({fold, kind}, index) =>
      isInside(index) || kind === 'sign' || (index < first.start ? EDGE : BETWEEN).test(fold),
  )
  const introduced = isOrder || rest.some(({fold}, index) => index < first.start && EDGE.test(fold))
  const isChange =
    keys.length === 2 && /^(in|en|nach|to|naar|zu|a)$/.test(rest[last.start - 1]?.fold ?? '')
  if (!only || (!introduced && !isChange)) return undefined
  const named = isChange ? last : first
  const [key = '', ...others] = named.keys
  return {
    kind: 'crook',
    key,
    otherKeys: [
      ...others,
      ...(isChange ? [] : keys.slice(1).flatMap((span) => span.keys.slice(0, 1))),
    ],
    ...(named.octave && {keyOctave: named.octave.is}),
    ...(isChange && {from: first.keys[0] ?? ''}),
    confidence: isOrder ? 0.95 : 0.8,
    numbers,
  }
}

/** After an order a letter alone is a key: `muta in E`. */
function bareKey(rest: readonly Token[]): readonly KeySpan[] {
  const [only, ...more] = rest
  if (!only || more.length > 0 || !/^[a-g]$/.test(only.fold)) return []
  const letter = only.fold.toUpperCase()
  return [{start: 0, end: 1, keys: letter === 'B' ? ['Bb', 'B'] : [letter], strength: 'strong'}]
}
