import {readMeasures} from './reader.ts'
import type {ReaderOptions, SoundingMeasure} from './reader.ts'
import type {Pair} from './pairing.ts'
import type {ScoreSummary} from './survey.ts'
import type {Source} from './text.ts'

/** The same measure of the two parts of a pair; one side is absent where the other has more measures. */
export interface Step {
  readonly pair: Pair
  readonly before: SoundingMeasure | undefined
  readonly after: SoundingMeasure | undefined
}

export interface Side extends Pick<ReaderOptions, 'reading' | 'inkTies'> {
  readonly source: Source
}

/**
 * Sorts pairs into waves that both files give in the same order, so that one reading of each serves a whole wave. Where one file
 * is partwise and the other timewise, a pair is a wave of its own.
 */
export function wavesOf(
  pairs: readonly Pair[],
  before: ScoreSummary,
  after: ScoreSummary,
): readonly (readonly Pair[])[] {
  if (before.timewise !== after.timewise) return pairs.map((pair) => [pair])
  const place = new Map(after.parts.map((part, index) => [part, index]))
  const order = new Map(before.parts.map((part, index) => [part, index]))
  const waves: Pair[][] = []
  for (const pair of pairs.toSorted(
    (a, b) => (order.get(a.before) ?? 0) - (order.get(b.before) ?? 0),
  )) {
    const fits = waves.find((wave) => {
      const last = wave.at(-1)
      if (!last || last.before === pair.before) return false
      return (place.get(last.after) ?? 0) < (place.get(pair.after) ?? 0)
    })
    if (fits) fits.push(pair)
    else waves.push([pair])
  }
  return waves
}

/** Reads both sides of a wave measure against measure. `timewise` tells how the two files are laid out. */
export async function* readInStep(
  wave: readonly Pair[],
  timewise: boolean,
  before: Side,
  after: Side,
): AsyncGenerator<Step> {
  const left = readSide(before, new Map(wave.map((pair, index) => [pair.before.id, index])))
  const right = readSide(after, new Map(wave.map((pair, index) => [pair.after.id, index])))
  try {
    let one = await left.next()
    let other = await right.next()
    while (!one.done || !other.done) {
      const ahead = one.done ? 1 : other.done ? -1 : distance(one.value, other.value, timewise)
      const first = !one.done && ahead <= 0 ? one.value : undefined
      const second = !other.done && ahead >= 0 ? other.value : undefined
      const pair = wave[(first ?? second)?.rank ?? 0]
      if (pair) yield {pair, before: first?.measure, after: second?.measure}
      if (first) one = await left.next()
      if (second) other = await right.next()
    }
  } finally {
    await left.return(undefined)
    await right.return(undefined)
  }
}

interface Ranked {
  readonly rank: number
  readonly measure: SoundingMeasure
}

async function* readSide(
  {source, ...options}: Side,
  ranks: ReadonlyMap<string, number>,
): AsyncGenerator<Ranked, undefined> {
  const parts = new Set(ranks.keys())
  for await (const measure of readMeasures(source, {...options, parts}))
    yield {rank: ranks.get(measure.part) ?? 0, measure}
  return undefined
}

/** Which comes first in the order of both files: negative when `one` does. */
function distance(one: Ranked, other: Ranked, timewise: boolean): number {
  const ranks = one.rank - other.rank
  const measures = one.measure.index - other.measure.index
  return timewise ? measures || ranks : ranks || measures
}
