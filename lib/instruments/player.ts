import type {Family, Instrument} from './instrument.ts'

/** Who reads a part, as far as marks on the page are concerned. */
export type Player =
  'woodwind' | 'brass' | 'strings' | 'plucked' | 'keyboards' | 'percussion' | 'voices'

const BRASS: ReadonlySet<Family> = new Set([
  'horns',
  'trumpets',
  'cornets',
  'bugle-horns',
  'tubas',
  'trombones',
])

const NAMED_AS_FAMILY: ReadonlySet<Family> = new Set(['strings', 'plucked', 'keyboards', 'voices'])

/** Who plays an instrument. The catalogue counts the harp among the strings; its marks are those of the plucked. */
export function playerOf({id, family}: Pick<Instrument, 'id' | 'family'>): Player {
  if (id === 'harp') return 'plucked'
  if (BRASS.has(family)) return 'brass'
  if (NAMED_AS_FAMILY.has(family)) return family as Player
  return family === 'percussion' || family === 'unpitched' ? 'percussion' : 'woodwind'
}

export function isWind(instrument: Pick<Instrument, 'id' | 'family'>): boolean {
  const player = playerOf(instrument)
  return player === 'woodwind' || player === 'brass'
}
