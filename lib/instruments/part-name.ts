import {labelTable} from './data/labels.ts'
import {foldName, foldLatin} from './fold.ts'
import {LANGUAGES} from './instrument.ts'
import {lazily} from './table.ts'
import type {Instrument, Language} from './instrument.ts'

/** A name as it is printed: texts, and signs that a text font may not have. */
export interface NamePiece {
  readonly kind: 'text' | 'accidental'
  /** What it says; for an accidental `flat`, `sharp` or `natural`, as in MusicXML. */
  readonly text: string
}

const FEMININE = {
  fr: 'flûte petite clarinette trompette contrebasse basse harpe guitare cymbale caisse grande viole mandole voix timbales cloches',
  it: 'tromba viola tuba arpa cornetta chitarra lira voce celesta marimba cassa mandola',
  es: 'flauta trompeta trompa tuba viola corneta arpa guitarra mandola lira voz celesta marimba caja',
} as const

/**
 * What a part for an instrument is called: ordinal, instrument and key in the order of the language (renotation-rules N1):
 * `2nd Clarinet in B flat`, `2e Clarinette en si bémol`, `Clarinetto 2o in si bemolle`. Several desks take the plural:
 * `Clarinets in B flat 1-2`.
 */
export function formatPartName(
  instrument: Instrument,
  language: Language,
  desks: readonly number[] = [],
): {readonly name: string; readonly abbreviation: string} {
  const label = instrument.labels[language]
  const [desk] = desks
  const abbreviation = capitalised(label.abbreviation)
  if (desk === undefined) return {name: capitalised(label.name), abbreviation}
  const figures = desks.length > 1 ? `${desk}-${desks.at(-1)}` : String(desk)
  const name =
    desks.length > 1
      ? `${capitalised(label.plural)} ${figures}`
      : ordinal(label.name, language, desk)
  return {name, abbreviation: `${abbreviation} ${figures}`}
}

function ordinal(name: string, language: Language, desk: number): string {
  const [noun = '', ...rest] = capitalised(name).split(' ')
  const gender = language === 'fr' || language === 'it' || language === 'es' ? language : undefined
  const feminine = gender && FEMININE[gender].split(' ').includes(noun.toLowerCase())
  if (language === 'en') return `${desk}${englishEnding(desk)} ${capitalised(name)}`
  if (language === 'de') return `${desk}. ${capitalised(name)}`
  if (language === 'nl') return `${desk}e ${name}`
  if (language === 'fr')
    return `${desk}${desk > 1 ? 'e' : feminine ? 're' : 'er'} ${capitalised(name)}`
  return [noun, `${desk}${feminine ? 'a' : 'o'}`, ...rest].join(' ')
}

function englishEnding(desk: number): string {
  if (desk % 100 > 10 && desk % 100 < 14) return 'th'
  return ['th', 'st', 'nd', 'rd'][desk % 10] ?? 'th'
}

/**
 * The numbers of desks that a part name ends or begins with: `Clarinet 2`, `Cor I`, `1. Horn`, `Horns 1-2`, `Corno 3o`.
 * Empty when it has none.
 */
export function readDesks(name: string): readonly number[] {
  const number = String.raw`(\d{1,2}|[IVX]{1,4})`
  const ending = String.raw`(?:st|nd|rd|th|re|ère|er|e|o|a|º|ª|\.)?`
  const range = String.raw`${number}${ending}(?:\s*[-–&+/.,]\s*${number}${ending})?`
  const found =
    new RegExp(String.raw`(?:^|\s)${range}$`).exec(name.trim()) ??
    new RegExp(String.raw`^${number}(?:st|nd|rd|th|re|ère|er|e|o|a|º|ª|\.)\s`).exec(name.trim()) ??
    new RegExp(String.raw`\s${number}(?:o|a|º|ª|°)\s`).exec(name)
  const [, first, last] = found ?? []
  if (first === undefined) return []
  return [first, ...(last === undefined ? [] : [last])].map(valueOf)
}

function valueOf(number: string): number {
  if (/^\d/.test(number)) return Number(number)
  const values = [...number].map((letter) => ({I: 1, V: 5, X: 10})[letter] ?? 0)
  return values.reduce(
    (sum, value, index) => sum + (value < (values[index + 1] ?? 0) ? -value : value),
    0,
  )
}

/**
 * The language of a part name, when the catalogue prints the name in one language or in English too; English wins
 * over the others, since most names that look alike are English. Undefined when nothing is known.
 */
export function languageOfName(name: string): Language | undefined {
  const {words} = foldName(name)
  if (words.length === 0) return undefined
  const wanted = words.join(' ')
  // Folding a name is dear: only those that hold all of the words are folded to the end.
  const holdsAll = (text: string): boolean => words.every((word) => text.includes(word))
  const labels = printedLabels().flatMap((line) => (holdsAll(line) ? [line.split('|')] : []))
  return LANGUAGES.find((language) =>
    labels.some(
      ([, own, ...forms]) =>
        own === language &&
        forms
          .slice(0, 3)
          .some((form) => holdsAll(form) && foldName(form).words.join(' ') === wanted),
    ),
  )
}

/** The lines of the table in Latin letters without accents. */
const printedLabels = lazily(() => foldLatin(labelTable).split('\n'))

const SIGNS: Readonly<Record<string, string>> = {
  '♭': 'flat',
  '♯': 'sharp',
  '♮': 'natural',
  flat: 'flat',
  sharp: 'sharp',
  b: 'flat',
  bémol: 'flat',
  bemol: 'flat',
  bemolle: 'flat',
  dièse: 'sharp',
  diesis: 'sharp',
  sostenido: 'sharp',
}

/** Cuts a name where an accidental stands: `Clarinet in B flat 2` is `Clarinet in B`, flat, ` 2`. */
export function cutName(name: string): readonly NamePiece[] {
  const key =
    /(?<![\p{L}\p{N}])([A-G]|do|ré|re|mi|fa|sol|la|si)(\s?[♭♯♮]|b(?![\p{L}.])|[ -](?:flat|sharp|bémol|bemolle|bemol|dièse|diesis|sostenido))(?![\p{L}])/iu.exec(
      name,
    )
  const sign = SIGNS[key?.[2]?.replace(/^[ -]/, '').toLowerCase() ?? '']
  if (!key || sign === undefined) return [{kind: 'text', text: name}]
  const pieces: NamePiece[] = [
    {kind: 'text', text: name.slice(0, key.index + (key[1]?.length ?? 0))},
    {kind: 'accidental', text: sign},
  ]
  const after = name.slice(key.index + key[0].length)
  return after === '' ? pieces : [...pieces, {kind: 'text', text: after}]
}

function capitalised(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1)
}

/** The language that most part names of a score are in; what stands in brackets and numbers of desks do not count. */
export function languageOfNames(names: readonly string[]): Language | undefined {
  const counts = new Map<Language, number>()
  for (const name of names) {
    const language = languageOfName(name.replaceAll(/\([^)]*\)|\d+/g, ' '))
    if (language) counts.set(language, (counts.get(language) ?? 0) + 1)
  }
  const [most] = [...counts].toSorted(([, a], [, b]) => b - a)
  return most?.[0]
}
