import {timeOf} from './clock.ts'
import type {Attack, Line} from './line.ts'

/** Attacks `from` to `to` of a line, both included, that belong together. `seam` is how clearly it is parted from before. */
export interface Phrase {
  readonly from: number
  readonly to: number
  readonly seam: Seam
}

/**
 * How clearly two phrases are parted, or how well a line may be parted there: 6 a double bar or a measure's rest · 5 a
 * breath mark or fermata · 4 a rest · 3 the end of a long slur, or a large leap · 2 a rest no longer than the note before ·
 * 1 a barline and nothing else · 0 not at all: a slur, tie or beam goes on, or the next note simply follows.
 */
export type Seam = 0 | 1 | 2 | 3 | 4 | 5 | 6

/** From this seam on a new phrase begins. */
const PHRASE = 3

/** A phrase has at least as many attacks, unless a seam of 6 parts it: a rest between two notes of a bass is no breath. */
const SHORTEST = 4
/** Attacks under one slur from which its end counts as the end of a phrase. */
const LONG_SLUR = 6
/** Semitones from which a leap parts a line where nothing binds it: more than an octave. */
const LARGE_LEAP = 13
/** Less than any note lasts, more than numbers are inexact, in quarters. */
const INSTANT = 1e-6
/** Attacks at least on each side of a place where a phrase is parted in need. */
const FEWEST = 2

/** How well the line may be parted before an attack. */
export function seamsOf(line: Line): Seam[] {
  const joints = new Set(line.facts.joints.map((joint) => timeOf(line.clock, joint)))
  let until = 0
  let slurred = 0
  return line.attacks.map((attack, index): Seam => {
    const before = line.attacks[index - 1]
    const rest = attack.start - until
    until = Math.max(until, attack.end)
    const under = slurred
    slurred = before?.slurred ? slurred + 1 : 0
    if (!before) return 6
    if (attack.apart) return 6
    if (attack.bound) return 0
    if (rest >= measureLength(line, before) || joints.has(attack.start)) return 6
    if (before.breath) return 5
    if (rest >= 1 && rest > before.end - before.start) return 4
    if (under + 1 >= LONG_SLUR || leapBetween(before, attack) >= LARGE_LEAP) return 3
    if (rest > 0) return 2
    // A note tied over the barline has no seam behind it, but in the midst of the measure.
    const barline = line.clock.starts[attack.measure] ?? 0
    return barline >= before.end - INSTANT ? 1 : 0
  })
}

/** The phrases of a line, as its rests, breath marks, slurs, double bars and large leaps part it. */
export function phrasesOf(line: Line, seams: readonly Seam[]): Phrase[] {
  const starts = new Set(seams.flatMap((seam, index) => (seam >= PHRASE ? [index] : [])))
  for (const level of [3, 4, 5]) {
    const ordered = [...starts].toSorted((a, b) => a - b)
    let from = 0
    ordered.forEach((start, index) => {
      if (index === 0) return
      const to = ordered[index + 1] ?? line.attacks.length
      const short = start - from < SHORTEST || to - start < SHORTEST
      if (seams[start] === level && short) starts.delete(start)
      else from = start
    })
  }
  return toPhrases([...starts], seams, line.attacks.length)
}

/**
 * Parts a phrase further, at the clearest places first, as long as that leaves fewer notes out of reach.
 * `misses` counts those of attacks `from` to `to` at the best octave.
 */
export function partInNeed(
  phrase: Phrase,
  seams: readonly Seam[],
  misses: (from: number, to: number) => number,
): Phrase[] {
  const whole = misses(phrase.from, phrase.to)
  if (whole === 0) return [phrase]
  let best: {at: number; misses: number; seam: Seam} | undefined
  for (let at = phrase.from + FEWEST; at <= phrase.to - FEWEST + 1; at++) {
    const seam = seams[at] ?? 0
    if (seam === 0) continue
    const count = misses(phrase.from, at - 1) + misses(at, phrase.to)
    if (count >= whole) continue
    if (!best || count < best.misses || (count === best.misses && seam > best.seam))
      best = {at, misses: count, seam}
  }
  if (!best) return [phrase]
  const left = {...phrase, to: best.at - 1}
  const right = {from: best.at, to: phrase.to, seam: best.seam}
  return [...partInNeed(left, seams, misses), ...partInNeed(right, seams, misses)]
}

function toPhrases(starts: readonly number[], seams: readonly Seam[], count: number): Phrase[] {
  const ordered = starts.toSorted((a, b) => a - b)
  return ordered.map((from, index) => ({
    from,
    to: (ordered[index + 1] ?? count) - 1,
    seam: seams[from] ?? 0,
  }))
}

function measureLength({clock}: Line, {measure}: Attack): number {
  const length = (clock.starts[measure + 1] ?? 0) - (clock.starts[measure] ?? 0)
  return length > 0 ? length : 4
}

function leapBetween(before: Attack, after: Attack): number {
  return Math.max(Math.abs(after.low - before.low), Math.abs(after.high - before.high))
}
