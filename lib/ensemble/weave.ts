import {isAlone} from '../fit/company.ts'
import {phrasesOf, seamsOf} from '../fit/phrases.ts'
import type {Attack, Line} from '../fit/line.ts'

/** A phrase of one of two lines. Times are in quarters from the start of the score. */
export interface Strand {
  readonly whose: 'own' | 'missing'
  /** Attacks of its line, both included. */
  readonly from: number
  readonly to: number
  readonly start: number
  readonly end: number
  /** Of the player's own: the share of its attacks that nobody else plays in any octave, 0 to 1. */
  readonly essential: number
}

/** What a player plays who has a part of their own and covers another. */
export interface Weave {
  /** What is played, in the order of time; no two sound together. */
  readonly played: readonly Strand[]
  /** What falls together with it and is not. */
  readonly silent: readonly Strand[]
}

/** What a note of a phrase counts: a note of the missing voice counts 1. */
const ESSENTIAL = 10
const DOUBLED = 0.2

/**
 * Chooses between a player's own phrases and those of the voice that they cover, so that as little as may be is lost:
 * own music that nobody else has goes first, then the missing voice, then own music that others play too. Exact: the
 * heaviest set of phrases of which no two overlap. `keepsOwn`: own music always goes first.
 */
export function weaveLines(
  own: Line,
  missing: Line,
  others: readonly Line[],
  {keepsOwn = false}: {readonly keepsOwn?: boolean} = {},
): Weave {
  const seams = seamsOf(own)
  const ours = phrasesOf(own, seams).map((phrase) => strandOf(own, 'own', phrase, others))
  const theirs = phrasesWhere(missing, ours).map((phrase) => strandOf(missing, 'missing', phrase))
  const strands = [...ours, ...theirs].toSorted((a, b) => a.end - b.end || a.start - b.start)
  const weight = ({whose, from, to, essential}: Strand): number => {
    const notes = to - from + 1
    if (whose === 'missing') return notes
    return keepsOwn ? 1e6 * notes : notes * (DOUBLED + ESSENTIAL * essential)
  }
  const played = heaviest(strands, weight)
  const chosen = new Set(played)
  return {
    played,
    silent: strands.filter((strand) => !chosen.has(strand)).toSorted((a, b) => a.start - b.start),
  }
}

/** The attacks of a strand. */
export function attacksOf(line: Line, {from, to}: Strand): readonly Attack[] {
  return line.attacks.slice(from, to + 1)
}

/** When the last of some attacks has ended. */
export function lastEnd(attacks: readonly Attack[]): number {
  return attacks.reduce((last, {end}) => Math.max(last, end), 0)
}

/** Sums of thirds do not come out even: what begins where another ends does not overlap it. */
function rounded(time: number): number {
  return Math.round(time * 1e6) / 1e6
}

type Stretch = Pick<Strand, 'from' | 'to'>

function strandOf(
  line: Line,
  whose: Strand['whose'],
  {from, to}: Stretch,
  others: readonly Line[] = [],
): Strand {
  const attacks = line.attacks.slice(from, to + 1)
  // A voice may sound on while another begins the next phrase: a phrase ends there, or it would conflict with its own line.
  const next = line.attacks[to + 1]?.start ?? Infinity
  return {
    whose,
    from,
    to,
    start: rounded(attacks[0]?.start ?? 0),
    end: rounded(Math.min(next, lastEnd(attacks))),
    essential: whose === 'own' ? essentialShare(attacks, others) : 0,
  }
}

/** Attacks at least in a piece of a phrase that is parted. */
const FEWEST = 2

/**
 * The phrases of the missing voice. One that falls together with the player's own music only in part is parted, at a barline or
 * a rest and never inside a slur, tie or beam: what falls into rests can be played.
 */
function phrasesWhere(missing: Line, own: readonly Strand[]): Stretch[] {
  const seams = seamsOf(missing)
  return phrasesOf(missing, seams).flatMap(({from, to}) => {
    const pieces: (Stretch & {readonly busy: string})[] = []
    let start = from
    for (let at = from + 1; at <= to + 1; at++) {
      if (at <= to && (seams[at] ?? 0) === 0) continue
      const piece = {from: start, to: at - 1}
      const {start: begin, end} = strandOf(missing, 'missing', piece)
      const busy = own.flatMap((each, index) =>
        each.start < end && each.end > begin ? [index] : [],
      )
      const last = pieces.at(-1)
      const key = busy.join()
      if (last && (last.busy === key || at - start < FEWEST || last.to - last.from + 1 < FEWEST))
        pieces[pieces.length - 1] = {from: last.from, to: at - 1, busy: mergedKey(last.busy, key)}
      else pieces.push({...piece, busy: key})
      start = at
    }
    return pieces
  })
}

function mergedKey(a: string, b: string): string {
  return [...new Set([...a.split(','), ...b.split(',')])].filter((each) => each !== '').join()
}

function essentialShare(attacks: readonly Attack[], others: readonly Line[]): number {
  const alone = attacks.filter((attack) => isAlone(attack, others))
  return attacks.length === 0 ? 0 : alone.length / attacks.length
}

/** Of intervals in the order of their ends, the heaviest set in which none overlap. */
function heaviest(strands: readonly Strand[], weight: (strand: Strand) => number): Strand[] {
  /** `best[n]`: the weight that the first n can come to. */
  const best = [0]
  const before = strands.map((strand, index) => lastBefore(strands, index, strand.start))
  strands.forEach((strand, index) => {
    const taken = weight(strand) + (best[before[index] ?? 0] ?? 0)
    best.push(Math.max(best[index] ?? 0, taken))
  })
  const chosen: Strand[] = []
  for (let count = strands.length; count > 0;) {
    const strand = strands[count - 1]
    if (strand && (best[count] ?? 0) > (best[count - 1] ?? 0)) {
      chosen.unshift(strand)
      count = before[count - 1] ?? 0
    } else count--
  }
  return chosen
}

/** How many of the first `count` end by then. */
function lastBefore(strands: readonly Strand[], count: number, start: number): number {
  let low = 0
  let high = count
  while (low < high) {
    const middle = (low + high) >> 1
    if ((strands[middle]?.end ?? 0) <= start) low = middle + 1
    else high = middle
  }
  return low
}
