import {formatPartName} from '../instruments/part-name.ts'
import type {Instrument, Language} from '../instruments/instrument.ts'
import {sameInterval} from '../pitch/interval.ts'
import {isTraditional} from '../pitch/key.ts'
import type {Key} from '../pitch/key.ts'
import type {PartPlan, Section} from '../plan/plan.ts'
import type {Change} from './change.ts'
import {soundsIn} from './interval-words.ts'

/** What a cover part says of itself, and in which language. */
export interface HeadingFacts {
  readonly cover: Instrument
  readonly missing: Instrument
  /** What the part was called that is covered. */
  readonly original: string
  readonly title: string
  /** Where the file says it was taken from, if it does. */
  readonly edition?: string | undefined
  readonly plan: PartPlan
  /** Of the part that is covered. */
  readonly changes: readonly Change[]
  readonly language: Language
}

interface HeadingWords {
  /** renotation-rules N4, in place of; `%` is the missing instrument. */
  readonly cover: string
  readonly source: string
  readonly noSigns: string
  readonly measures: readonly [one: string, several: string]
  readonly moved: readonly [lower: string, higher: string]
  readonly unmoved: string
}

const WORDS: Readonly<Record<Language, HeadingWords>> = {
  en: {
    cover: '% cover',
    source: 'Source',
    noSigns: 'no sharps or flats',
    measures: ['measure', 'measures'],
    moved: ['8va lower', '8va higher'],
    unmoved: 'no octaves moved',
  },
  fr: {
    cover: 'À défaut de %\u00a0',
    source: 'Source\u00a0',
    noSigns: 'sans altérations à la clé',
    measures: ['mesure', 'mesures'],
    moved: ['8va plus bas', '8va plus haut'],
    unmoved: 'aucune octave déplacée',
  },
  de: {
    cover: 'Ersatz für %',
    source: 'Quelle',
    noSigns: 'ohne Vorzeichen',
    measures: ['Takt', 'Takte'],
    moved: ['8va tiefer', '8va höher'],
    unmoved: 'keine Oktave versetzt',
  },
  it: {
    cover: 'In sostituzione di %',
    source: 'Fonte',
    noSigns: 'senza alterazioni in chiave',
    measures: ['battuta', 'battute'],
    moved: ['8va sotto', '8va sopra'],
    unmoved: 'nessuna ottava spostata',
  },
  es: {
    cover: 'En sustitución de %',
    source: 'Fuente',
    noSigns: 'sin alteraciones en la armadura',
    measures: ['compás', 'compases'],
    moved: ['8va más grave', '8va más agudo'],
    unmoved: 'ninguna octava desplazada',
  },
  nl: {
    cover: 'Ter vervanging van %',
    source: 'Bron',
    noSigns: 'zonder voortekens',
    measures: ['maat', 'maten'],
    moved: ['8va lager', '8va hoger'],
    unmoved: 'geen octaven verplaatst',
  },
}

/** Beyond so many a heading is no place for them: the report has all. */
const MOST = 4

/**
 * The heading of a cover part (renotation-rules N5), a line each: who covers whom, the source, the written key and what
 * sounds, and the octaves moved.
 */
export function coverHeading(facts: HeadingFacts): string[] {
  const {cover, missing, original, title, edition, plan, changes, language} = facts
  const words = WORDS[language]
  const [own, other] = [cover, missing].map((each) => formatPartName(each, language).name)
  const sections = (plan.staves[0] ?? []).filter(({untouched}) => !untouched)
  return [
    `${words.cover.replace('%', () => other ?? '')}: ${own}${original ? ` (${original})` : ''}`,
    `${words.source}: ${[title, original, edition].filter((each) => each).join(', ')}`,
    `${keysOf(sections, words)}; ${soundsOf(sections, language)}`,
    octavesOf(changes, words),
  ]
}

function keysOf(sections: readonly Section[], {noSigns}: HeadingWords): string {
  const keys = distinct(sections.map(({key}) => signsOf(key, noSigns)))
  return listed(keys.length === 0 ? [noSigns] : keys, ', ')
}

function signsOf(key: Key | undefined, none: string): string {
  if (key && !isTraditional(key)) return '♯/♭'
  const fifths = key?.fifths ?? 0
  return fifths === 0 ? none : `${Math.abs(fifths)} ${fifths > 0 ? '♯' : '♭'}`
}

function soundsOf(sections: readonly Section[], language: Language): string {
  const intervals = sections
    .map(({transposition}) => transposition.interval)
    .filter((each, index, all) => all.findIndex((other) => sameInterval(other, each)) === index)
  return listed(
    intervals.map((each) => soundsIn(each, language)),
    '; ',
  )
}

function octavesOf(changes: readonly Change[], words: HeadingWords): string {
  const moved = changes.filter((change) => change.kind === 'moved')
  if (moved.length === 0) return words.unmoved
  const [lower, higher] = words.moved
  const places = moved.map(({from, to, semitones}) => {
    const size = Math.abs(semitones) / 12
    const said = semitones < 0 ? lower : higher
    const [one, several] = words.measures
    const where =
      from.number === to.number ? `${one} ${from.number}` : `${several} ${from.number}–${to.number}`
    return `${where} ${said.replace('8va', size === 1 ? '8va' : `${size}×8va`)}`
  })
  return listed(places, '; ')
}

function listed(list: readonly string[], separator: string): string {
  return list.slice(0, MOST).join(separator) + (list.length > MOST ? ' …' : '')
}

function distinct(list: readonly string[]): string[] {
  return list.filter((each, index) => list.indexOf(each) === index)
}
