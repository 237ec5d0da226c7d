import {instrumentById} from '../instruments/instrument.ts'
import type {Instrument} from '../instruments/instrument.ts'
import {labelReader} from '../instruments/label.ts'
import type {LabelOptions, LabelReading} from '../instruments/label.ts'
import {midiOf, parsePitch} from '../pitch/pitch.ts'
import {modulo12} from './harmony.ts'

/** An instrument that a name may mean. The confidences of all of them add up to 1 at most. */
export interface AskedInstrument {
  readonly instrument: Instrument
  readonly confidence: number
  readonly reason: string
}

/** Who a part is for, as its name says. */
export interface Asked {
  readonly name: string
  /** Likeliest first; empty where the name says nothing. */
  readonly candidates: readonly AskedInstrument[]
  /** Pitch classes (C = 0) of the key that the name gives: several where a letter means two keys. */
  readonly keys: readonly number[]
  readonly octave?: 'alto' | 'basso'
  /** What the name says besides. */
  readonly reading?: LabelReading
  /** The same for parts that share an instrument and its key. */
  readonly stem: string
}

/** Nothing is known of who a part is for. */
export const UNKNOWN: Asked = {name: '', candidates: [], keys: [], stem: ''}

/** Reads the names of all parts of a score, each in the light of the others; `options` may add names. */
export function identify(names: readonly string[], options: LabelOptions = {}): readonly Asked[] {
  return labelReader(options)
    .readLabels(names)
    .map((reading, index) => toAsked(names[index] ?? '', index, reading))
}

function toAsked(name: string, index: number, reading: LabelReading): Asked {
  const candidates = reading.instruments.flatMap(({id, confidence, reason}) => {
    const instrument = instrumentById(id)
    return instrument ? [{instrument, confidence, reason}] : []
  })
  const [first] = candidates
  // Drums are named by the notes they are tuned to. Further keys of a name are other crooks, or another meaning of it.
  const isTuned = first?.instrument.family === 'percussion'
  const named = [...(reading.key === undefined ? [] : [reading.key]), ...reading.otherKeys]
  const keys = isTuned ? [] : named
  const stem = first
    ? `${first.instrument.id} ${keys.join(' ')} ${reading.keyOctave ?? ''}`
    : `#${index}`
  return {
    name,
    candidates,
    keys: keys.flatMap((key) => {
      const pitch = parsePitch(`${key}4`)
      return pitch ? [modulo12(midiOf(pitch))] : []
    }),
    ...(reading.keyOctave && {octave: reading.keyOctave}),
    reading,
    stem,
  }
}
