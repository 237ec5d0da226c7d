import type {Attack, Line} from './line.ts'

/** Another part that sounds the same notes in some octave. */
export interface Doubling {
  /** Share of the line's attacks, 0 to 1. */
  readonly share: number
  /** The octaves at which it mostly sounds: 1 above, 0 in unison. */
  readonly octaves: number
}

/** What a player's own part loses while they cover. Shares are of the player's own attacks, 0 to 1. */
export interface Loss {
  /** Falls together with the missing voice. */
  readonly together: number
  /** Falls together with it, and nobody else plays it. */
  readonly essential: number
  /** Share of the missing voice's attacks at which the player has nothing of their own. */
  readonly free: number
}

/** How far another part doubles a line. */
export function doublingOf(line: Line, other: Line): Doubling {
  const octaves = new Map<number, number>()
  let matches = 0
  for (const {start, low} of line.attacks) {
    const tone = other.byStart.get(start)?.tones.find(({midi}) => (midi - low) % 12 === 0)
    if (!tone) continue
    matches++
    const away = (tone.midi - low) / 12
    octaves.set(away, (octaves.get(away) ?? 0) + 1)
  }
  const [most] = [...octaves].toSorted(([, a], [, b]) => b - a)
  return {
    share: line.attacks.length === 0 ? 0 : matches / line.attacks.length,
    octaves: most?.[0] ?? 0,
  }
}

/** What `own` loses when its player covers `missing`, with `others` still playing. */
export function lossOf(own: Line, missing: Line, others: readonly Line[]): Loss {
  const busy = overlapping(own.attacks, missing.attacks)
  const essential = busy.filter((attack) => isAlone(attack, others))
  const occupied = overlapping(missing.attacks, own.attacks)
  return {
    together: share(busy.length, own),
    essential: share(essential.length, own),
    free: 1 - share(occupied.length, missing),
  }
}

/** Whether nobody else strikes what an attack has on top, in any octave. */
export function isAlone({start, high}: Attack, others: readonly Line[]): boolean {
  return !others.some(({byStart}) =>
    byStart.get(start)?.tones.some(({midi}) => (midi - high) % 12 === 0),
  )
}

/** Those attacks during which one of the others sounds. Both in order of time. */
function overlapping(attacks: readonly Attack[], others: readonly Attack[]): Attack[] {
  let next = 0
  let until = -Infinity
  return attacks.filter(({start, end}) => {
    for (let other = others[next]; other && other.start <= start; other = others[++next])
      until = Math.max(until, other.end)
    const coming = others[next]
    return until > start || (coming !== undefined && coming.start < end)
  })
}

function share(count: number, {attacks}: Line): number {
  return attacks.length === 0 ? 0 : count / attacks.length
}
