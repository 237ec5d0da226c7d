import type {PartFacts, Position} from '../survey/facts.ts'
import {measureStarts} from '../survey/measure-starts.ts'

/** The time of a score: where its measures begin, and how fast they go. Quarters count from the start. */
export interface Clock {
  /** The beginning of each measure, and of what would follow the last, in quarters. */
  readonly starts: readonly number[]
  /** From `start` on, in quarters a minute; in order; never empty. */
  readonly tempos: readonly {readonly start: number; readonly tempo: number}[]
  /** No part states a tempo. */
  readonly assumed: boolean
}

/** In quarters a minute: what a march or an allegro has, and what programs play where nothing is said. */
const USUAL_TEMPO = 120

/** The clock that the parts of a score share; tempi are taken from every part that states them. */
export function clockOf(parts: Iterable<PartFacts>): Clock {
  const all = [...parts]
  const stated = all.flatMap(({tempos}) => tempos)
  const starts = measureStarts(all)
  const clock = {starts, tempos: [], assumed: stated.length === 0}
  const tempos = stated
    .map((each) => ({start: timeOf(clock, each), tempo: each.tempo}))
    .toSorted((a, b) => a.start - b.start)
  const begins = tempos[0]?.start === 0
  const first = {start: 0, tempo: tempos[0]?.tempo ?? USUAL_TEMPO}
  return {...clock, tempos: begins ? tempos : [first, ...tempos]}
}

/** Quarters from the start of the score. */
export function timeOf(clock: Pick<Clock, 'starts'>, at: Position): number {
  return (clock.starts[at.measure] ?? clock.starts.at(-1) ?? 0) + at.onset
}

/** Seconds from one time to another, both in quarters from the start. */
export function secondsBetween(clock: Clock, from: number, to: number): number {
  const {tempos} = clock
  let seconds = 0
  for (let index = startIndex(clock, from); index < tempos.length; index++) {
    const {start, tempo} = tempos[index] ?? {start: 0, tempo: USUAL_TEMPO}
    if (start >= to) break
    const end = Math.min(to, tempos[index + 1]?.start ?? Infinity)
    seconds += (Math.max(0, end - Math.max(from, start)) * 60) / tempo
  }
  return seconds
}

function startIndex({tempos}: Clock, from: number): number {
  let low = 0
  let high = tempos.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if ((tempos[middle]?.start ?? 0) <= from) low = middle
    else high = middle - 1
  }
  return low
}
