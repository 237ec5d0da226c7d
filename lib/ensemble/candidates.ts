import {countCovers} from '../fit/cover.ts'
import type {Candidate} from '../fit/cover.ts'
import {reachOf} from '../fit/reach.ts'
import type {Tier} from '../fit/reach.ts'
import type {Family, Instrument} from '../instruments/instrument.ts'
import type {Roster} from './roster.ts'

/** A part of the score and the instrument that it is for, where that is known. */
export interface KnownPart {
  readonly part: string
  readonly name: string
  readonly instrument?: Instrument
}

/** Who is not asked to cover a line of a wind band or an orchestra. */
const NEVER: readonly Family[] = ['unpitched', 'voices']

/**
 * Every instrument of the catalogue that could be asked, with its part where the score has one. The missing instrument
 * itself is not among them.
 */
export function catalogueCandidates(
  instruments: readonly Instrument[],
  missing: Instrument,
  tier: Tier,
  parts: readonly KnownPart[],
): Candidate[] {
  const named = countCovers(instruments)
  return instruments
    .filter(({id, family}) => id !== missing.id && !NEVER.includes(family))
    .filter((instrument) => reachOf(instrument, tier) !== undefined)
    .map((instrument) => {
      const own = parts.find((each) => each.instrument?.id === instrument.id)
      return {
        instrument,
        tier,
        ...(own && {part: own.part}),
        ...(!own && !named.has(instrument.id) && {rare: true}),
      }
    })
}

/** The players at hand, each with every instrument they play; their part is the one they name, or that of their instrument. */
export function rosterCandidates(
  roster: Roster,
  missingPart: string,
  parts: readonly KnownPart[],
): Candidate[] {
  return roster.players.flatMap((player) => {
    const said = parts.find(({part, name}) => part === player.part || name === player.part)
    const own = said ?? parts.find((each) => each.instrument?.id === player.instrument.id)
    if (own?.part === missingPart) return []
    return [player.instrument, ...player.doublings].map((instrument) => ({
      instrument,
      tier: player.tier,
      player: player.name,
      ...(own && {part: own.part}),
      ...(player.desks > 1 && {desks: player.desks}),
      ...(player.avoids.length > 0 && {avoids: player.avoids}),
    }))
  })
}
