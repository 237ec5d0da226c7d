import {changeWordTable, techniqueTable, techniqueWordTable} from './data/techniques.ts'
import {foldName} from './fold.ts'
import {instruments} from './instrument.ts'
import type {Family, Instrument} from './instrument.ts'
import {playerOf} from './player.ts'
import {readTable, wordsOf} from './table.ts'

/** A mark or a word that only some players can follow, and what is done about it for the others. */
export interface Technique {
  readonly id: string
  readonly players: readonly string[]
  /**
   * `sound`: a harmonic keeps its sounding pitch and loses its mark · `mute`: brass get it in words, others do not.
   */
  readonly otherwise: 'remove' | 'write' | 'keep' | 'sound' | 'mute'
  /** Told once, with its number. */
  readonly counted: boolean
  readonly write?: string
  readonly remark?: string
}

/** A technique found in words: its place in the text. */
export interface TechniqueWord {
  readonly id: string
  readonly start: number
  readonly end: number
}

/** All techniques of the table, elements first. */
export const techniques: ReadonlyMap<string, Technique> = /* @__PURE__ */ readTechniques()

/**
 * Whether an instrument's player can follow a technique. `unknown`: that depends on the family that the part was
 * written for, which nobody knows. Everybody can follow what the table does not list.
 */
export function canFollow(
  id: string,
  instrument: Pick<Instrument, 'id' | 'family'>,
  source: Family | undefined,
): 'yes' | 'no' | 'unknown' {
  const technique = techniques.get(id)
  if (!technique) return 'yes'
  const {players} = technique
  const {id: instrumentId, family} = instrument
  if (players.includes(`!${instrumentId}`)) return 'no'
  const player = playerOf(instrument)
  const known = player === 'plucked' ? [player] : [player, family]
  if (players.some((each) => [...known, `@${instrumentId}`].includes(each))) return 'yes'
  if (!players.includes('same')) return 'no'
  return source === undefined ? 'unknown' : source === family ? 'yes' : 'no'
}

/**
 * The players a part was written for, as far as its techniques tell; undefined when they tell nothing or different
 * things.
 */
export function familyOfTechniques(ids: Iterable<string>): Family | undefined {
  const found = new Set<Family>()
  for (const id of ids) {
    const {players = []} = techniques.get(id) ?? {}
    const [only] = players
    if (players.length === 1 && (only === 'strings' || only === 'keyboards' || only === 'horns'))
      found.add(only)
  }
  const [only] = found
  return found.size === 1 ? only : undefined
}

/** Reads the techniques that words name, in six languages, from left to right; the longest form counts. */
export function techniqueReader(): (text: string) => readonly TechniqueWord[] {
  const forms = readForms()
  return (text) => {
    const folded = foldText(text)
    // Most words are about other things, and an expression of all forms takes longer to make than many a part to read.
    const possible = forms.filter((form) => mayBeIn(folded, form))
    const only = possible.find(
      (form) => form.whole && new RegExp(`^${patternOf(form)}$`, 'u').test(folded.trim()),
    )
    if (only) return [{id: only.id, start: 0, end: text.length}]
    const inside = possible.filter(({whole}) => !whole)
    if (inside.length === 0) return []
    const pattern = inside.map((form) => `(${patternOf(form)})`).join('|')
    const anywhere = new RegExp(`(?<![\\p{L}\\p{N}])(?:${pattern})(?![\\p{L}\\p{N}])`, 'gu')
    return [...folded.matchAll(anywhere)].map((match) => ({
      id: inside[match.slice(1).findIndex((group) => group !== undefined)]?.id ?? '',
      start: match.index,
      end: match.index + match[0].length,
    }))
  }
}

/** A change of instrument or crook that words call for: `muta in Es`, `in F`, `to Picc.`; keys as `foldName` has them. */
export interface InstrumentChange {
  readonly keys: readonly string[]
}

/** Reads words that name the key of the instrument or tell the player to change it; undefined for all others. */
export function instrumentChangeReader(): (text: string) => InstrumentChange | undefined {
  const verbs = readTable(changeWordTable, 'language|forms')
    .flatMap(([, forms = '']) => forms.split('; '))
    .toSorted((a, b) => b.length - a.length)
  // Folding every name takes longer than many a part; most parts never ask.
  let names: ReadonlySet<string> | undefined
  return (text) => {
    const folded = foldText(text)
      .replaceAll(/[[\]().]/g, ' ')
      .trim()
    const verb = verbs.find((each) => folded.startsWith(`${each} `))
    const rest = verb === undefined ? folded : folded.slice(verb.length).trim()
    const named = /^(?:in|en|to)\s+(\S+(?:\s+\S+)?)$/.exec(rest)?.[1]
    const key = named ?? (verb === undefined ? undefined : rest)
    if (key === undefined) return undefined
    const {keys, words} = foldName(`x in ${key}`)
    if (keys.length > 0 && words.length === 1) return {keys}
    if (verb === undefined) return undefined
    const known = (names ??= readNameWords())
    return foldName(rest).words.some((word) => known.has(word)) ? {keys: []} : undefined
  }
}

function readNameWords(): ReadonlySet<string> {
  const labels = instruments.flatMap((instrument) => Object.values(instrument.labels))
  const forms = labels.flatMap(({name, plural, abbreviation}) => [name, plural, abbreviation])
  return new Set(forms.flatMap((form) => foldName(form).words))
}

const PLACEHOLDERS: Readonly<Record<string, string>> = {
  string: '(?:[gdaec]|sol|re|la|mi|do|i{1,3}|iv)',
  nth: '(?:[1-4](?:a|e|o|st|nd|rd|th|me|eme)?[.°]?|i{1,3}|iv|prima|seconda|terza|quarta|primera|segunda|tercera|cuarta)',
  feet: "(?:2|4|8|16|32)\\s?['′’]",
}

interface Form {
  readonly id: string
  /** As in the table, without the `=`. */
  readonly form: string
  readonly whole: boolean
  /** The longest of the words that it cannot do without; empty when it has none. */
  readonly stem: string
}

function readForms(): readonly Form[] {
  return readTable(techniqueWordTable, 'id|forms')
    .flatMap(([id = '', forms = '']) => forms.split('; ').map((form) => ({id, form})))
    .toSorted((a, b) => b.form.length - a.form.length)
    .map(({id, form}) => ({
      id,
      form: form.replace(/^=/, ''),
      whole: form.startsWith('='),
      stem: form
        .split(/\{\w+\}|[^a-z{]+/)
        .reduce((longest, word) => (word.length > longest.length ? word : longest)),
    }))
}

/** Lengths of organ pipes have no word, but a sign for feet. */
function mayBeIn(folded: string, {stem}: Form): boolean {
  return stem === '' ? /['′’]/.test(folded) : folded.includes(stem)
}

function patternOf({form}: Form): string {
  return form
    .replaceAll(/[.*+?^$()|[\]\\]/g, '\\$&')
    .replaceAll('\\.', '\\.?')
    .replaceAll(' ', '\\s*')
    .replaceAll("'", "['’]\\s?")
    .replaceAll(/\{(\w+)\}/g, (_, name: string) => PLACEHOLDERS[name] ?? '')
}

/** Lower case without accents, letter for letter: offsets stay. */
function foldText(text: string): string {
  return text.replaceAll(/[^]/gu, (letter) => {
    const plain = (letter.normalize('NFKD')[0] ?? letter).toLowerCase()
    return plain.length === letter.length ? plain : letter
  })
}

function readTechniques(): ReadonlyMap<string, Technique> {
  return new Map(
    readTable(techniqueTable, 'id|players|otherwise|write|remark').map(
      ([id = '', players = '', otherwise = '', write, remark]) => {
        const [action, counted] = wordsOf(otherwise)
        return [
          id,
          {
            id,
            players: wordsOf(players),
            otherwise: action as Technique['otherwise'],
            counted: counted === 'count',
            ...(write && {write}),
            ...(remark && {remark}),
          },
        ]
      },
    ),
  )
}
