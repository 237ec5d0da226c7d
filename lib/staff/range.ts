import {formatPitch, midiOf} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'

/** From the lowest to the highest pitch, both included. */
export interface Range {
  readonly low: Pitch
  readonly high: Pitch
}

/** Semitones by which a pitch lies outside: negative below, positive above, 0 inside. */
export function outside(range: Range, pitch: Pitch): number {
  const midi = midiOf(pitch)
  const low = midiOf(range.low)
  const high = midiOf(range.high)
  return midi < low ? midi - low : midi > high ? midi - high : 0
}

/** The smallest range that holds both; either may be absent. */
export function widen(range: Range | undefined, pitch: Pitch): Range {
  if (!range) return {low: pitch, high: pitch}
  const by = outside(range, pitch)
  if (by === 0) return range
  return by < 0 ? {low: pitch, high: range.high} : {low: range.low, high: pitch}
}

/** `Bb1–D4`. */
export function formatRange(range: Range): string {
  return `${formatPitch(range.low)}–${formatPitch(range.high)}`
}
