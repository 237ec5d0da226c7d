import type {Pitch, Range} from '../../lib/index.ts'
import {midiOf} from '../../lib/index.ts'
import {alterInKey} from '../../lib/pitch/key.ts'
import {naturalAt} from '../../lib/pitch/pitch.ts'
import type {Role} from './band-parts.ts'

/** A sounding note or a rest; onset and length in eighths from the start of its measure. */
export interface Sounded {
  readonly onset: number
  readonly length: number
  readonly pitch?: Pitch
}

export type Random = () => number

/** What all parts of a piece share: for each measure its key, its chord, the tune and the bass, in steps. */
export interface Piece {
  readonly measures: readonly Measure[]
}

interface Measure {
  readonly fifths: number
  /** Step of the chord's root above the tonic, 0 to 6. */
  readonly root: number
  /** The tune: steps above the tonic, with lengths in eighths; eight eighths a measure. */
  readonly tune: readonly {
    readonly step: number
    readonly length: number
    readonly sharp: boolean
  }[]
}

/** Chords that follow each other in a march: from each root those that may come next. */
const NEXT: readonly (readonly number[])[] = [
  [3, 4, 5, 1, 0],
  [4, 4, 3],
  [5, 3],
  [4, 0, 1, 4],
  [0, 0, 5, 4],
  [1, 3, 4],
  [0],
]
const RHYTHMS = [
  [2, 2, 2, 2],
  [3, 1, 2, 2],
  [4, 2, 1, 1],
  [1, 1, 1, 1, 2, 2],
  [4, 4],
  [6, 2],
  [2, 1, 1, 4],
]

/** A piece in one key with a trio in the next flatter one, as marches go; `chromatic` is the share of sharpened notes. */
export function composePiece(
  random: Random,
  options: {readonly measures: number; readonly fifths: number; readonly chromatic: number},
): Piece {
  const measures: Measure[] = []
  let root = 0
  let step = 4
  for (let index = 0; index < options.measures; index++) {
    const fifths = options.fifths - (index >= options.measures / 2 ? 1 : 0)
    root = index % 8 === 0 ? 0 : index % 8 === 7 ? 0 : pick(random, NEXT[root] ?? [0])
    const tune = pick(random, RHYTHMS).map((length, note) => {
      step += Math.floor(random() * 5) - 2
      step = Math.max(-3, Math.min(9, step))
      if (note === 0 || length > 2) step = nearestInChord(step, root)
      return {step, length, sharp: random() < options.chromatic && length === 1}
    })
    measures.push({fifths, root, tune})
  }
  return {measures}
}

/** What a part plays of it: its role's line, set where its instrument plays every day. */
export function arrange(
  piece: Piece,
  role: Role,
  range: Range,
  random: Random,
  options: {readonly rests: number},
): readonly (readonly Sounded[])[] {
  const centre = (midiOf(range.low) + midiOf(range.high)) / 2
  const voice = Math.floor(random() * 3)
  let silent = false
  return piece.measures.map((measure, index) => {
    if (index % 4 === 0) silent = random() < options.rests
    if (silent) return [{onset: 0, length: 8}]
    if (role === 'tune') return tuneIn(measure, centre)
    if (role === 'bass') return bassIn(measure, centre, random)
    if (role === 'counter' && index % 8 >= 4) return tuneIn(measure, centre)
    return chordsIn(measure, centre, {voice, held: role === 'counter' || index % 8 >= 6})
  })
}

function tuneIn({fifths, tune}: Measure, centre: number): readonly Sounded[] {
  let onset = 0
  return tune.map(({step, length, sharp}) => {
    const pitch = setNear(fifths, step, centre)
    const note = {onset, length, pitch: sharp ? {...pitch, alter: pitch.alter + 1} : pitch}
    onset += length
    return note
  })
}

function bassIn({fifths, root}: Measure, centre: number, random: Random): readonly Sounded[] {
  const low = setNear(fifths, root, centre - 3)
  const fifth = setNear(fifths, root + 4, centre - 3)
  if (random() < 0.3) return [{onset: 0, length: 8, pitch: low}]
  return [low, fifth, low, fifth].flatMap((pitch, beat) => [
    {onset: 2 * beat, length: 1, pitch},
    {onset: 2 * beat + 1, length: 1},
  ])
}

/** After-beats, or held notes. */
function chordsIn(
  {fifths, root}: Measure,
  centre: number,
  {voice, held}: {readonly voice: number; readonly held: boolean},
): readonly Sounded[] {
  const pitch = setNear(fifths, root + 2 * voice, centre)
  const other = setNear(fifths, root + 2 * ((voice + 1) % 3), centre)
  if (held)
    return [
      {onset: 0, length: 4, pitch},
      {onset: 4, length: 4, pitch: other},
    ]
  return [pitch, pitch, other, pitch].flatMap((each, beat) => [
    {onset: 2 * beat, length: 1},
    {onset: 2 * beat + 1, length: 1, pitch: each},
  ])
}

/** The scale's note a number of steps above the tonic, in the octave nearest to a key number. */
function setNear(fifths: number, step: number, midi: number): Pitch {
  const tonic = (((fifths * 4) % 7) + 7) % 7
  const octaves = [1, 2, 3, 4, 5, 6, 7].map((octave) => {
    const natural = naturalAt(tonic + step + 7 * octave)
    return {...natural, alter: alterInKey({fifths}, natural.step, natural.octave)}
  })
  const distance = (pitch: Pitch): number => Math.abs(midiOf(pitch) - midi - (step > 4 ? 5 : 0))
  return octaves.reduce((best, pitch) => (distance(pitch) < distance(best) ? pitch : best))
}

function nearestInChord(step: number, root: number): number {
  const inChord = (each: number): boolean => [0, 2, 4].includes((((each - root) % 7) + 7) % 7)
  return [0, 1, -1, 2, -2].map((by) => step + by).find(inChord) ?? step
}

function pick<Value>(random: Random, list: readonly Value[]): Value {
  return list[Math.floor(random() * list.length)] as Value
}
