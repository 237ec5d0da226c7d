import {ATTACK, CLOCK} from './line.ts'
import type {Line} from './line.ts'

/** Cells of the grid in a quarter note. */
const CELLS = 2
const CELL = CLOCK / CELLS
/** A note is judged by the cells in which it begins: what comes later may be a suspension. */
const JUDGED = 2
/** Cells in a block: what sounds in a block and its neighbours is the key of the moment. */
const BLOCK = 16

/**
 * What a note may be: one that is sounding in another part; one in consonance with such notes, as the third of a chord
 * of which the others have root and fifth; one of the scale that sounds around; or anything. Shares of 1.
 */
const SHARES = {sounding: 0.42, consonant: 0.23, around: 0.23, any: 0.12}

/** How the consonances of a sounding note share: a third or fifth above it is commoner than a fourth or sixth. */
const CONSONANT = [0, 0, 0, 0.2, 0.22, 0.12, 0, 0.22, 0.12, 0.12, 0, 0]

/** What a note counts that only repeats the one before. */
const REPEATED = 0.15
/** About so many notes of a clef are judged, spread over the score: what they say on average does not change after that. */
const JUDGED_NOTES = 600

/** What sounds when: for each half of a quarter note the weight of the twelve pitch classes. */
export interface Grid {
  readonly cells: number
  /** `12 * cell + pitchClass`. */
  readonly weights: Float32Array
  /** `12 * block + pitchClass`. */
  readonly blocks: Float32Array
}

/** How well each clef of a line fits into the harmony, moved by 0 to 11 semitones. */
export interface Consonance {
  /** `12 * clef + semitones`: the mean logarithm of how much likelier the notes are than notes drawn at random. */
  readonly mean: Float64Array
  /** A clef: the number of notes heard together with others, repeated ones counted little. */
  readonly notes: Float64Array
}

export function emptyGrid(starts: Float64Array): Grid {
  const cells = Math.ceil((starts.at(-1) ?? 0) / CELL) + 1
  const blocks = Math.ceil(cells / BLOCK)
  return {cells, weights: new Float32Array(12 * cells), blocks: new Float32Array(12 * blocks)}
}

/** Adds a line as it is believed to sound (semitones for each clef, one weight for each), or takes it away again. */
export function addToGrid(
  grid: Grid,
  line: Line,
  semitones: readonly number[],
  weights: readonly number[],
): void {
  for (let note = 0; note < line.count; note++) {
    const clef = line.clef[note] ?? 0
    const weight = weights[clef] ?? 0
    if (weight === 0) continue
    const pitchClass = modulo12((line.midi[note] ?? 0) + (semitones[clef] ?? 0))
    const onset = line.onset[note] ?? 0
    const first = Math.floor(onset / CELL)
    const last = Math.max(first, Math.ceil((onset + (line.duration[note] ?? 0)) / CELL) - 1)
    for (let cell = first; cell <= last && cell < grid.cells; cell++) {
      const at = 12 * cell + pitchClass
      grid.weights[at] = (grid.weights[at] ?? 0) + weight
      const block = 12 * Math.floor(cell / BLOCK) + pitchClass
      grid.blocks[block] = (grid.blocks[block] ?? 0) + weight
    }
  }
}

/** Compares a line with the harmony of the others; the line itself must not be in the grid. */
export function readConsonance(grid: Grid, line: Line): Consonance {
  const mean = new Float64Array(12 * line.clefs.length)
  const notes = new Float64Array(line.clefs.length)
  const heard = new Float64Array(12)
  const expected = new Float64Array(12)
  const last = new Int16Array(line.clefs.length).fill(-1)
  const strides = stridesOf(line)
  const seen = new Uint32Array(line.clefs.length)
  for (let note = 0; note < line.count; note++) {
    const clef = line.clef[note] ?? 0
    const turn = seen[clef] ?? 0
    seen[clef] = turn + 1
    if (!((line.kind[note] ?? 0) & ATTACK) || turn % (strides[clef] ?? 1) !== 0) continue
    const cell = Math.floor((line.onset[note] ?? 0) / CELL)
    const total = hear(grid, cell, line.duration[note] ?? 0, heard)
    if (total < 0.5) continue
    const midi = line.midi[note] ?? 0
    const weight = (last[clef] === midi ? REPEATED : 1) * Math.min(1, total / 3)
    last[clef] = midi
    notes[clef] = (notes[clef] ?? 0) + weight
    expect(heard, total, grid, Math.floor(cell / BLOCK), expected)
    for (let shift = 0; shift < 12; shift++) {
      const share = expected[modulo12(midi + shift)] ?? 0
      mean[12 * clef + shift] = (mean[12 * clef + shift] ?? 0) + weight * Math.log(12 * share)
    }
  }
  for (let at = 0; at < mean.length; at++) {
    const count = notes[Math.floor(at / 12)] ?? 0
    mean[at] = count > 0 ? (mean[at] ?? 0) / count : 0
  }
  return {mean, notes}
}

/** Of how many notes of each clef one is judged. */
function stridesOf(line: Line): readonly number[] {
  const counts = new Uint32Array(line.clefs.length)
  for (let note = 0; note < line.count; note++) {
    const clef = line.clef[note] ?? 0
    counts[clef] = (counts[clef] ?? 0) + 1
  }
  return [...counts].map((count) => Math.max(1, Math.floor(count / JUDGED_NOTES)))
}

/** Sums the cells in which a note is judged; gives the total weight. */
function hear(grid: Grid, cell: number, duration: number, heard: Float64Array): number {
  heard.fill(0)
  let total = 0
  const count = Math.max(1, Math.min(JUDGED, Math.round(duration / CELL)))
  for (let each = cell; each < cell + count && each < grid.cells; each++) {
    for (let pitchClass = 0; pitchClass < 12; pitchClass++) {
      const weight = Math.max(0, grid.weights[12 * each + pitchClass] ?? 0)
      heard[pitchClass] = (heard[pitchClass] ?? 0) + weight / count
      total += weight / count
    }
  }
  return total
}

/** The share of each pitch class among the notes to be expected where `heard` sounds. */
function expect(
  heard: Float64Array,
  total: number,
  grid: Grid,
  block: number,
  expected: Float64Array,
): void {
  let around = 0
  for (let pitchClass = 0; pitchClass < 12; pitchClass++) {
    let sum = 0
    for (let each = block - 1; each <= block + 1; each++)
      sum += Math.max(0, grid.blocks[12 * each + pitchClass] ?? 0)
    expected[pitchClass] = sum
    around += sum
  }
  for (let pitchClass = 0; pitchClass < 12; pitchClass++) {
    let consonant = 0
    for (let above = 3; above < 10; above++)
      consonant += (CONSONANT[above] ?? 0) * (heard[modulo12(pitchClass - above)] ?? 0)
    const scale = around > 0 ? (expected[pitchClass] ?? 0) / around : 1 / 12
    expected[pitchClass] =
      (SHARES.sounding * (heard[pitchClass] ?? 0) + SHARES.consonant * consonant) / total +
      SHARES.around * scale +
      SHARES.any / 12
  }
}

export function modulo12(value: number): number {
  return ((value % 12) + 12) % 12
}
