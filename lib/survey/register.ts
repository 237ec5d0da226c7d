import {instrumentById} from '../instruments/instrument.ts'
import type {Instrument} from '../instruments/instrument.ts'
import {midiOf} from '../pitch/pitch.ts'
import {ATTACK, CHORD} from './line.ts'
import type {Line} from './line.ts'

/** Key numbers: the lowest and the highest that an instrument plays at all, and those of everyday use. */
export interface Compass {
  readonly low: number
  readonly high: number
  readonly usualLow: number
  readonly usualHigh: number
}

/** How often each written key number is attacked in one clef of a line. */
export type Histogram = Uint32Array

/** The notes of each clef of a line. */
export function readHistograms(line: Line): readonly Histogram[] {
  const all = line.clefs.map(() => new Uint32Array(128))
  for (let note = 0; note < line.count; note++) {
    const midi = line.midi[note] ?? 0
    const own = all[line.clef[note] ?? 0]
    if (own && midi >= 0 && midi < 128 && (line.kind[note] ?? 0) & ATTACK)
      own[midi] = (own[midi] ?? 0) + 1
  }
  return all
}

/** The distances, as written, between notes on either side of a change of clef. */
export interface Leap {
  readonly from: number
  readonly to: number
  /** Written semitones. */
  readonly distance: number
}

export function readLeaps(line: Line): readonly Leap[] {
  const leaps: Leap[] = []
  if (line.clefs.length < 2) return leaps
  let last = -1
  for (let note = 0; note < line.count; note++) {
    if ((line.kind[note] ?? 0) & CHORD) continue
    if (last >= 0 && line.clef[last] !== line.clef[note]) {
      const distance = (line.midi[note] ?? 0) - (line.midi[last] ?? 0)
      leaps.push({from: line.clef[last] ?? 0, to: line.clef[note] ?? 0, distance})
    }
    last = note
  }
  return leaps
}

/**
 * What an instrument can play, sounding. Those with crooks have no range of their own in the catalogue: written G3 to
 * C6 moved by the crook (the third lowest note that hands can make to the 16th harmonic; conventions, "Horns").
 */
export function compassOf(
  instrument: Instrument | undefined,
  opening: number,
): Compass | undefined {
  if (!instrument) return undefined
  const {pro, tutti} = instrument.ranges
  if (pro) {
    const usual = tutti ?? pro
    return {
      low: midiOf(pro.low),
      high: midiOf(pro.high),
      usualLow: midiOf(usual.low),
      usualHigh: midiOf(usual.high),
    }
  }
  if (instrument.id === 'natural-horn') {
    const modern = compassOf(instrumentById('horn-f'), 0)
    if (!modern) return undefined
    return {
      low: Math.max(modern.low - 3, 48 + opening),
      high: Math.min(modern.high + 4, 84 + opening),
      usualLow: 55 + opening,
      usualHigh: Math.min(modern.usualHigh + 3, 79 + opening),
    }
  }
  if (instrument.id === 'natural-trumpet')
    return {low: 48 + opening, high: 86 + opening, usualLow: 55 + opening, usualHigh: 81 + opening}
  return undefined
}

/** The mean of how far outside the compass the notes lie, in semitones; and the mean key number. */
export function measureRegister(
  histograms: readonly Histogram[],
  semitones: readonly number[],
  compass: Compass,
): {readonly outside: number; readonly middle: number; readonly far: number} {
  let notes = 0
  let outside = 0
  let far = 0
  let sum = 0
  histograms.forEach((histogram, clef) => {
    for (let midi = 0; midi < 128; midi++) {
      const count = histogram[midi] ?? 0
      if (count === 0) continue
      const sounding = midi + (semitones[clef] ?? 0)
      const by = Math.max(0, compass.low - sounding, sounding - compass.high)
      notes += count
      outside += count * Math.min(6, by)
      if (by > 0) far += count
      sum += count * sounding
    }
  })
  if (notes === 0) return {outside: 0, middle: (compass.usualLow + compass.usualHigh) / 2, far: 0}
  return {outside: outside / notes, middle: sum / notes, far: far / notes}
}
