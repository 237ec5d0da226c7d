import {foldName} from './fold.ts'
import type {FoldedName} from './fold.ts'
import {instruments, LANGUAGES} from './instrument.ts'
import {readNames} from './attested.ts'
import type {Instrument} from './instrument.ts'
import {nearest} from './nearest.ts'
import {notations, notationsOf} from './notation.ts'
import type {Notation} from './notation.ts'

/**
 * What words may mean. `one`: no doubt; `others` match less well. `several`: equally good answers come first, and
 * only a person can choose. `none`: nothing matches; what is spelled most alike is offered, possibly nothing.
 */
export type Search<Value> =
  | {readonly kind: 'one'; readonly found: Value; readonly others: readonly Value[]}
  | {readonly kind: 'several'; readonly candidates: readonly Value[]}
  | {readonly kind: 'none'; readonly nearest: readonly Value[]}

/**
 * Finds an instrument by its id, or by a name, plural or abbreviation in English, French, German, Italian, Spanish
 * or Dutch; accents, case, punctuation, word order and player numbers do not matter, and the key may be said in any
 * of the languages. Printed names count before other attested forms, whole names before single words.
 *
 * @example
 * findInstrument('Klarinette in B') // one: clarinet-b-flat
 * findInstrument('clarinet') // several: clarinet-b-flat first, since the widest known
 * findInstrument('bassooon') // none; nearest: bassoon
 */
export function findInstrument(words: string): Search<Instrument> {
  return instrumentFinder()(words)
}

/** `findInstrument` for many words: reads the names once. */
export function instrumentFinder(): (words: string) => Search<Instrument> {
  const names = readIndex()
  return (words) => {
    const ranked = rankInstruments(words, names)
    const [first] = ranked
    if (first)
      return decide(
        ranked.map(({instrument}) => instrument),
        ranked.filter(({rank}) => rank === first.rank).length,
      )
    const spelled = names.map(({folded, instrument}) => [folded.text, instrument] as const)
    return {kind: 'none', nearest: nearest(foldName(words).text, spelled)}
  }
}

/** All instruments, or all that the words may mean, best first. */
export function listInstruments(words = ''): readonly Instrument[] {
  return words.trim() === '' ? instruments : valuesOf(findInstrument(words))
}

/**
 * Finds a notation by its id, by the id of a row of the catalogue, or by words of its name, id or context.
 *
 * @example
 * findNotation('horn.crook-f.old') // one
 * findNotation('cello false treble') // one: cello.false-treble
 */
export function findNotation(words: string): Search<Notation> {
  const id = words.trim().toLowerCase()
  const exact = notations().find((notation) => notation.id === id)
  if (exact) return {kind: 'one', found: exact, others: []}
  const ranked = notations()
    .map((notation) => ({notation, text: notationText(notation)}))
    .filter(({text}) => mentions(text, words))
    .toSorted((a, b) => score(a.notation) - score(b.notation) || a.text.length - b.text.length)
    .map(({notation}) => notation)
  const [first] = ranked
  if (first) return decide(ranked, ranked.filter((other) => score(other) === score(first)).length)
  const ids = notations().map((notation) => [notation.id, notation] as const)
  return {kind: 'none', nearest: nearest(id, ids)}
}

/** All notations, or those that the words may mean and those of the instruments that they may mean. */
export function listNotations(words = ''): readonly Notation[] {
  if (words.trim() === '') return notations()
  const search = findInstrument(words)
  const meant = search.kind === 'one' ? [search.found] : valuesOf(search)
  return [...new Set([...valuesOf(findNotation(words)), ...meant.flatMap(notationsOf)])]
}

/** What a search is sure of or offers as candidates; a guess at a misspelling is neither. */
function valuesOf<Value>(search: Search<Value>): readonly Value[] {
  if (search.kind === 'one') return [search.found, ...search.others]
  return search.kind === 'several' ? search.candidates : []
}

function decide<Value>(ranked: readonly Value[], best: number): Search<Value> {
  const [found, ...others] = ranked
  return found !== undefined && best === 1
    ? {kind: 'one', found, others}
    : {kind: 'several', candidates: ranked}
}

interface IndexedName {
  readonly instrument: Instrument
  readonly folded: FoldedName
  /** `id`, or `label`: we print it, or `attested`: a source does. */
  readonly kind: 'id' | 'label' | 'attested'
}

function readIndex(): readonly IndexedName[] {
  const attested = new Map<string, string[]>(instruments.map(({id}) => [id, []]))
  for (const {id, form} of readNames()) attested.get(id)?.push(form)
  return instruments.flatMap((instrument) => {
    const labels = LANGUAGES.flatMap((language) => {
      const {name, plural, abbreviation} = instrument.labels[language]
      return [name, plural, abbreviation].flatMap(withoutBrackets)
    })
    const others = attested.get(instrument.id) ?? []
    const index = (forms: readonly string[], kind: IndexedName['kind']) =>
      [...new Set(forms)].map((form) => ({instrument, folded: foldName(form), kind}))
    return [
      ...index([instrument.id], 'id'),
      ...index(labels, 'label'),
      ...index(
        others.filter((form) => !labels.includes(form)),
        'attested',
      ),
    ]
  })
}

/** `tenor horn (alto horn) in E flat` is also `tenor horn in E flat` and `alto horn in E flat`. */
function withoutBrackets(form: string): readonly string[] {
  const match = /^(.*?)\s*\((.+?)\)(.*)$/.exec(form)
  if (!match) return [form]
  const [, before = '', inside = '', after = ''] = match
  return [form, `${before}${after}`, `${inside}${after}`]
}

function rankInstruments(words: string, names: readonly IndexedName[]) {
  const query = foldName(words)
  const ranks = new Map<Instrument, number>()
  const offer = (instrument: Instrument, rank: number | undefined) => {
    if (rank !== undefined && rank < (ranks.get(instrument) ?? Infinity))
      ranks.set(instrument, rank)
  }
  for (const name of names) offer(name.instrument, rankName(name, query))
  if (ranks.size === 0 && query.words.length > 0)
    for (const name of names) offer(name.instrument, rankWords(name, query))
  return [...ranks]
    .map(([instrument, rank]) => ({instrument, rank}))
    .toSorted((a, b) => a.rank - b.rank || rangesKnown(b.instrument) - rangesKnown(a.instrument))
}

/** How well a name fits, 0 best: an id, a printed name, an attested one, one that has a key besides. */
function rankName({instrument, folded, kind}: IndexedName, query: FoldedName): number | undefined {
  if (query.text === '') return undefined
  if (folded.text === query.text) return {id: 0, label: 1, attested: 3}[kind]
  if (kind === 'id' || query.words.length === 0 || !sameWords(folded, query)) return undefined
  const whole = kind === 'label' ? 2 : 4
  if (query.keys.length > 0) return sharesKey(instrument, folded, query) ? whole : undefined
  return folded.keys.length === 0 ? whole : 5
}

function sameWords(a: FoldedName, b: FoldedName): boolean {
  return (
    a.words.length === b.words.length && a.words.every((word, index) => word === b.words[index])
  )
}

/** Ranks a name that has all words of the query and more; begun words and parts of compounds come last. */
function rankWords({instrument, folded}: IndexedName, query: FoldedName): number | undefined {
  if (query.keys.length > 0 && !sharesKey(instrument, folded, query)) return undefined
  if (query.words.every((word) => folded.words.includes(word))) return 6
  const partly = query.words.every((word) =>
    folded.words.some((own) => (word.length > 3 ? own.includes(word) : own.startsWith(word))),
  )
  return partly ? 7 : undefined
}

/** A name without key takes the key of its instrument: a source may print just `clarinet`. */
function sharesKey(instrument: Instrument, folded: FoldedName, query: FoldedName): boolean {
  const own = folded.keys.length > 0 ? folded.keys : [instrument.builtIn?.toLowerCase()]
  return query.keys.some((key) => own.includes(key))
}

/** Instruments that schools teach have all three ranges: a measure of how likely somebody means them. */
function rangesKnown(instrument: Instrument): number {
  return Object.keys(instrument.ranges).length
}

function notationText(notation: Notation): string {
  return ` ${foldName(`${notation.id.replaceAll('.', ' ')} ${notation.name} ${notation.context ?? ''}`).text} `
}

/** Whether all words begin a word of the text, and one of the keys is named in it. */
function mentions(text: string, words: string): boolean {
  const {words: wanted, keys} = foldName(words)
  if (wanted.length === 0) return false
  return (
    wanted.every((word) => text.includes(` ${word.length < 4 ? `${word} ` : word}`)) &&
    (keys.length === 0 || keys.some((key) => keyPattern(key).test(text)))
  )
}

function keyPattern(key: string): RegExp {
  const letter = key[0] ?? ''
  if (key.endsWith('#')) return new RegExp(` ${letter} sharp `)
  if (key.length > 1) return new RegExp(` ${letter} flat `)
  return new RegExp(letter === 'b' ? ' b natural ' : ` ${letter} (?!flat|sharp)`)
}

/** Modern notations first, then those that say something about every clef, then single rows. */
function score(notation: Notation): number {
  if (notation.id === 'concert' || notation.id.endsWith('.modern')) return 0
  return notation.otherClefs === 'opening' ? 1 : 2
}
