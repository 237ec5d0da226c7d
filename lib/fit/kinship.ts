import type {Family, Instrument} from '../instruments/instrument.ts'
import {keysOf} from './reach.ts'

/** How near the sound of one instrument is to another's: 1 the same, 0 a stranger; and why, as clauses. */
export interface Kinship {
  readonly likeness: number
  readonly reasons: readonly string[]
  /** Where the catalogue names the cover, its place in the list from 1, and who says so. */
  readonly advice?: {readonly place: number; readonly source: string; readonly remark?: string}
}

interface Voice {
  /** What sets the sound off. */
  readonly source:
    | 'air'
    | 'double reed'
    | 'single reed'
    | 'lips'
    | 'bow'
    | 'plucked string'
    | 'struck'
    | 'wind and keys'
    | 'voice'
  readonly bore?: 'conical' | 'cylindrical'
}

/** Organology in two words a family; common knowledge, as in any dictionary of instruments. */
const VOICES: Partial<Readonly<Record<Family, Voice>>> = {
  flutes: {source: 'air', bore: 'cylindrical'},
  recorders: {source: 'air', bore: 'conical'},
  oboes: {source: 'double reed', bore: 'conical'},
  bassoons: {source: 'double reed', bore: 'conical'},
  sarrusophones: {source: 'double reed', bore: 'conical'},
  clarinets: {source: 'single reed', bore: 'cylindrical'},
  saxophones: {source: 'single reed', bore: 'conical'},
  horns: {source: 'lips', bore: 'conical'},
  cornets: {source: 'lips', bore: 'conical'},
  'bugle-horns': {source: 'lips', bore: 'conical'},
  tubas: {source: 'lips', bore: 'conical'},
  trumpets: {source: 'lips', bore: 'cylindrical'},
  trombones: {source: 'lips', bore: 'cylindrical'},
  strings: {source: 'bow'},
  plucked: {source: 'plucked string'},
  keyboards: {source: 'wind and keys'},
  percussion: {source: 'struck'},
  voices: {source: 'voice'},
}

const SOUNDED: Readonly<Record<Voice['source'], string>> = {
  air: 'both are flutes of a kind',
  'double reed': 'both have a double reed',
  'single reed': 'both have a single reed',
  lips: 'both are sounded by the lips',
  bow: 'both are bowed',
  'plucked string': 'both are plucked',
  struck: 'both are struck',
  'wind and keys': 'both have keys',
  voice: 'both are sung',
}

/** Where the trade's list begins, and what each further place in it takes off. */
const FIRST = 0.96
const PLACE = 0.05
/** Being taken for each other the other way round, and by the cover's cover. */
const REVERSE = 0.72
const SECOND_HAND = 0.62

/**
 * The trade's own advice counts first (the catalogue's cover lists, with their sources), then what the two have in
 * common: what sets the sound off, the bore, the family, the register.
 */
export function kinshipOf(
  missing: Instrument,
  candidate: Instrument,
  byId: (id: string) => Instrument | undefined,
): Kinship {
  if (missing.id === candidate.id) return {likeness: 1, reasons: ['the same instrument']}
  const traits = traitsInCommon(missing, candidate)
  const place = missing.cover.indexOf(candidate.id)
  if (place >= 0) {
    const source = missing.sources.cover ?? ''
    const remark = missing.remarks.cover
    const advised = `the trade's ${ordinal(place + 1)} choice (${source || 'no source'})`
    return {
      likeness: Math.max(FIRST - PLACE * place, traits.likeness),
      reasons: [advised, ...traits.reasons],
      advice: {place: place + 1, source, ...(remark !== undefined && {remark})},
    }
  }
  const back = candidate.cover.indexOf(missing.id)
  if (back >= 0) {
    return {
      likeness: Math.max(REVERSE - PLACE * back, traits.likeness),
      reasons: ['the two are covered the other way round', ...traits.reasons],
    }
  }
  const between = missing.cover.map(byId).find((each) => each?.cover.includes(candidate.id))
  if (between) {
    return {
      likeness: Math.max(SECOND_HAND, traits.likeness),
      reasons: [`covers the ${between.labels.en.name}, which covers it`, ...traits.reasons],
    }
  }
  return traits
}

function traitsInCommon(missing: Instrument, candidate: Instrument): Kinship {
  const one = VOICES[missing.family]
  const other = VOICES[candidate.family]
  const reasons: string[] = []
  let likeness = 0
  if (missing.family === candidate.family) {
    likeness += 0.2
    reasons.push(`both are ${missing.family.replace('-', ' ')}`)
  }
  if (one && one.source === other?.source) {
    likeness += 0.3
    if (reasons.length === 0) reasons.push(SOUNDED[one.source])
  } else if (isReed(one) && isReed(other)) likeness += 0.15
  if (one?.bore !== undefined && one.bore === other?.bore) {
    likeness += 0.15
    if (missing.family !== candidate.family) reasons.push(`both of ${one.bore} bore`)
  }
  const apart = registersApart(missing, candidate)
  if (apart !== undefined) {
    likeness += 0.2 * Math.max(0, 1 - apart / 24)
    if (apart >= 7) reasons.push(`its register lies ${apart} semitones away`)
  }
  return {likeness, reasons}
}

function isReed(voice: Voice | undefined): boolean {
  return voice?.source === 'double reed' || voice?.source === 'single reed'
}

/** Semitones between the middles of the two comfortable ranges. */
function registersApart(a: Instrument, b: Instrument): number | undefined {
  const [one, other] = [a, b].map(({ranges}) => ranges.tutti ?? ranges.pro)
  if (!one || !other) return undefined
  const middle = (range: typeof one): number =>
    keysOf(range).reduce((low, high) => (low + high) / 2)
  return Math.round(Math.abs(middle(one) - middle(other)))
}

function ordinal(place: number): string {
  return ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'][place - 1] ?? `${place}th`
}
