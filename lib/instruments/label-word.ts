import {wordTable} from './data/label-words.ts'
import {LANGUAGES} from './instrument.ts'
import type {Language} from './instrument.ts'
import {readTable, wordsOf} from './table.ts'

/** The words of which names are made, and what they stand for. */
export interface Words {
  readonly concepts: ReadonlyMap<string, readonly string[]>
  readonly languages: ReadonlyMap<string, ReadonlySet<Language>>
}

/** Reads the table of words. */
export function readWords(): Words {
  const concepts = new Map<string, string[]>()
  const languages = new Map<string, Set<Language>>()
  for (const [concept = '', ...cells] of readTable(wordTable, `concept|${LANGUAGES.join('|')}`))
    for (const [column, cell] of cells.entries())
      for (const form of wordsOf(cell.trim())) {
        const known = concepts.get(form) ?? []
        if (!known.includes(concept)) concepts.set(form, [...known, concept])
        addAll(languages, form, [LANGUAGES[column] ?? 'en'])
      }
  return {concepts, languages}
}

/** The concepts that a word may stand for; itself when it is unknown. */
export function conceptsIn(words: Words, word: string): readonly (readonly string[])[] {
  const own = words.concepts.get(word)
  if (own) return own.map((concept) => [concept])
  if (word.includes('\ufffd')) return damagedConcepts(words, word)
  const parts = splitCompound(words, word)
  if (!parts) return [[word]]
  return bagsOf(parts.map((part) => (words.concepts.get(part) ?? []).map((one) => [one]))).map(
    (bag) => bag.split(' '),
  )
}

/** A file in a wrong encoding lost letters: `Fl\ufffdte`. */
function damagedConcepts(words: Words, word: string): readonly (readonly string[])[] {
  const pattern = new RegExp(
    `^${word.replaceAll(/[^\p{L}\ufffd]/gu, '').replaceAll('\ufffd', '..?')}$`,
  )
  const found = [...words.concepts].filter(([form]) => pattern.test(form)).flatMap(([, own]) => own)
  return found.length > 0 ? [...new Set(found)].map((concept) => [concept]) : [[word]]
}

/** The parts of a German or Dutch compound, of which each is known and the first are no abbreviations. */
function splitCompound(words: Words, word: string): readonly string[] | undefined {
  for (let at = word.length - 2; at >= 3; at--) {
    const head = word.slice(0, at)
    const rest = word.slice(at).replace(/^s(?=s)/, '')
    if (!words.concepts.has(head)) continue
    if (words.concepts.has(rest)) return [head, rest]
    const more = splitCompound(words, rest)
    if (more) return [head, ...more]
  }
  return undefined
}

/** The languages that make such a compound; none when it is none. */
export function languagesOfParts(words: Words, word: string): ReadonlySet<Language> {
  const parts = splitCompound(words, word)
  if (!parts) return new Set()
  const common = LANGUAGES.filter((language) =>
    parts.every((part) => words.languages.get(part)?.has(language)),
  )
  const compounding = common.filter((language) => language === 'de' || language === 'nl')
  return new Set(compounding.length > 0 ? compounding : common)
}

/** The sorted concepts of a name, for each way to understand its words; at most 24 ways. */
export function bagsOf(options: readonly (readonly (readonly string[])[])[]): readonly string[] {
  let bags: readonly (readonly string[])[] = [[]]
  for (const option of options)
    bags = bags.flatMap((bag) => option.map((concepts) => [...bag, ...concepts])).slice(0, 24)
  return [...new Set(bags.map((bag) => joinContrabass(bag).toSorted().join(' ')))]
}

/** `Contra Bass`, `C. B.` and `Contre-basse` are a word cut in two. */
function joinContrabass(bag: readonly string[]): readonly string[] {
  if (!bag.includes('contra') || !bag.includes('bass')) return bag
  return [...bag.filter((concept) => concept !== 'contra' && concept !== 'bass'), 'contrabass']
}

/** Adds languages to those of a word. */
export function addAll(
  map: Map<string, Set<Language>>,
  word: string,
  languages: Iterable<Language>,
): void {
  const known = map.get(word) ?? new Set<Language>()
  for (const language of languages) known.add(language)
  map.set(word, known)
}
