import {ATTACK} from './line.ts'
import type {Line} from './line.ts'

/** Written distances that are counted reach this many semitones either way. */
const REACH = 60
const WIDTH = 2 * REACH + 1

/**
 * Which notes of two voices begin together: for every pair of voices (a line in one clef) a count of the written
 * distances, the other's note less the own, taken where the own voice has moved. What the lines transpose by is then
 * a matter of adding: the table is made once, whatever is believed.
 */
export interface Doublings {
  /** The first voice of each line; its clefs are the voices from there on. */
  readonly firstVoice: readonly number[]
  readonly voices: number
  /** `(own * voices + other) * WIDTH + distance + REACH`. */
  readonly counts: Uint16Array
}

/** How one voice moves with another: the commonest distance as it sounds, and how common. */
export interface Partner {
  readonly line: number
  readonly clef: number
  /** Written semitones from the own note to the partner's. */
  readonly distance: number
  /** Shared onsets at which the own voice moved, and how many of them have that distance up to octaves. */
  readonly shared: number
  readonly matching: number
  /** How many have exactly that distance. */
  readonly exact: number
}

export function readDoublings(lines: readonly Line[]): Doublings {
  const firstVoice: number[] = []
  let voices = 0
  for (const line of lines) {
    firstVoice.push(voices)
    voices += line.clefs.length
  }
  const counts = new Uint16Array(voices * voices * WIDTH)
  sweep(lines, firstVoice, (own, ownMidi, other, otherMidi) => {
    const distance = otherMidi - ownMidi
    if (distance < -REACH || distance > REACH) return
    const at = (own * voices + other) * WIDTH + distance + REACH
    if ((counts[at] ?? 0) < 65_535) counts[at] = (counts[at] ?? 0) + 1
  })
  return {firstVoice, voices, counts}
}

/** The partners of a voice that double it: they move with it at one distance, up to octaves, more often than not. */
export function partnersOf(
  table: Doublings,
  lines: readonly Line[],
  line: number,
  clef: number,
): readonly Partner[] {
  const own = (table.firstVoice[line] ?? 0) + clef
  const found: Partner[] = []
  lines.forEach((other, index) => {
    if (index === line || other.part === lines[line]?.part) return
    other.clefs.forEach((_, otherClef) => {
      const voice = (table.firstVoice[index] ?? 0) + otherClef
      const partner = bestDistance(table, own, voice)
      if (partner) found.push({line: index, clef: otherClef, ...partner})
    })
  })
  return found
}

/** How often the own voice, moved by `own` semitones, lies above the other, moved by `other`; and how often they meet. */
export function countAbove(
  table: Doublings,
  own: {readonly voice: number; readonly semitones: number},
  other: {readonly voice: number; readonly semitones: number},
): {readonly above: number; readonly met: number} {
  let above = 0
  let met = 0
  const start = (own.voice * table.voices + other.voice) * WIDTH
  for (let at = 0; at < WIDTH; at++) {
    const count = table.counts[start + at] ?? 0
    met += count
    if (at - REACH + other.semitones - own.semitones < 0) above += count
  }
  return {above, met}
}

function bestDistance(
  table: Doublings,
  own: number,
  other: number,
): Omit<Partner, 'line' | 'clef'> | undefined {
  const start = (own * table.voices + other) * WIDTH
  const byClass = new Uint32Array(12)
  let shared = 0
  for (let at = 0; at < WIDTH; at++) {
    const count = table.counts[start + at] ?? 0
    shared += count
    byClass[at % 12] = (byClass[at % 12] ?? 0) + count
  }
  if (shared < 4) return undefined
  let best = 0
  for (let each = 1; each < 12; each++) if ((byClass[each] ?? 0) > (byClass[best] ?? 0)) best = each
  const matching = byClass[best] ?? 0
  if (matching * 2 <= shared) return undefined
  let distance = best
  for (let at = best; at < WIDTH; at += 12)
    if ((table.counts[start + at] ?? 0) > (table.counts[start + distance] ?? 0)) distance = at
  const exact = table.counts[start + distance] ?? 0
  return {distance: distance - REACH, shared, matching, exact}
}

/** Meets every two notes of different lines that begin together, where the first has moved. */
function sweep(
  lines: readonly Line[],
  firstVoice: readonly number[],
  meet: (own: number, ownMidi: number, other: number, otherMidi: number) => void,
): void {
  const next = new Uint32Array(lines.length)
  const before = new Int16Array(lines.length).fill(-1)
  const sounding: {readonly line: number; readonly voice: number; readonly midi: number}[] = []
  for (;;) {
    let time = Infinity
    lines.forEach((line, index) => {
      time = Math.min(time, line.onset[next[index] ?? 0] ?? Infinity)
    })
    if (time === Infinity) return
    sounding.length = 0
    lines.forEach((line, index) => {
      let note = next[index] ?? 0
      for (; note < line.count && line.onset[note] === time; note++) {
        if ((line.kind[note] ?? 0) !== ATTACK) continue
        const voice = (firstVoice[index] ?? 0) + (line.clef[note] ?? 0)
        sounding.push({line: index, voice, midi: line.midi[note] ?? 0})
      }
      next[index] = note
    })
    for (const own of sounding) {
      if (before[own.line] === own.midi) continue
      for (const other of sounding)
        if (other.line !== own.line) meet(own.voice, own.midi, other.voice, other.midi)
    }
    for (const own of sounding) before[own.line] = own.midi
  }
}
