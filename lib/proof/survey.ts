import {readDocument} from './document.ts'
import {formatFraction, order} from './fraction.ts'
import {readMeasures} from './reader.ts'
import type {ReaderOptions, SoundingNote} from './reader.ts'
import type {Source} from './text.ts'

/** A part as the pairing sees it: a few numbers for every measure. */
export interface PartSummary {
  readonly id: string
  readonly name: string
  readonly measures: number
  /** Played notes, ties not yet joined. */
  readonly notes: number
  /** A number a measure that tells what sounds in it; 0 for silence. */
  readonly sounds: readonly number[]
  /** The same, blind to the pitch of the first note: parts a constant interval apart have the same shapes. */
  readonly shapes: readonly number[]
}

export interface ScoreSummary {
  readonly timewise: boolean
  readonly parts: readonly PartSummary[]
  /** Parts without a single `<tie>`: their ties can only be the drawn ones. */
  readonly inkTies: ReadonlySet<string>
}

/**
 * Reads a whole score once and keeps what pairing needs.
 * @throws ScoreError `proof/malformed` when the source is no score that can be read.
 */
export async function surveyScore(
  source: Source,
  options: Pick<ReaderOptions, 'reading'> = {},
): Promise<ScoreSummary> {
  const {timewise, names} = await readHeader(source)
  const parts = new Map<
    string,
    {notes: number; tied: boolean; sounds: number[]; shapes: number[]}
  >()
  for await (const measure of readMeasures(source, options)) {
    const part = parts.get(measure.part) ?? {notes: 0, tied: false, sounds: [], shapes: []}
    parts.set(measure.part, part)
    const played = measure.notes.filter(({cue}) => !cue)
    part.notes += played.length
    part.tied ||= measure.notes.some(({tieStart, tieStop}) => tieStart || tieStop)
    const {sounds, shapes} = fingerprint(played)
    part.sounds.push(sounds)
    part.shapes.push(shapes)
  }
  const entries = [...parts]
  return {
    timewise,
    inkTies: new Set(entries.filter(([, {tied}]) => !tied).map(([id]) => id)),
    parts: entries.map(([id, {notes, sounds, shapes}]) => ({
      id,
      name: names.get(id) ?? '',
      measures: sounds.length,
      notes,
      sounds,
      shapes,
    })),
  }
}

/** How alike two parts are, 0 to 1, by the measures in which either plays; transposed alike counts nearly as much. */
export function likeness(a: PartSummary, b: PartSummary): number {
  let played = 0
  let alike = 0
  for (let index = 0; index < Math.max(a.measures, b.measures); index++) {
    if (!a.sounds[index] && !b.sounds[index]) continue
    played++
    if (a.sounds[index] === b.sounds[index]) alike++
    else if (a.shapes[index] === b.shapes[index]) alike += 0.9
  }
  return played === 0 ? 0 : alike / played
}

async function readHeader(source: Source) {
  for await (const piece of readDocument(source)) if (piece.kind === 'header') return piece.header
  return {timewise: false, names: new Map<string, string>()}
}

function fingerprint(played: readonly SoundingNote[]) {
  const notes = played.toSorted(
    (a, b) => order(a.onset, b.onset) || height(a) - height(b) || (a.grace ?? -1) - (b.grace ?? -1),
  )
  const [first] = notes
  if (!first) return {sounds: 0, shapes: 0}
  return {
    sounds: hash(notes.map((note) => `${formatFraction(note.onset)}:${height(note)}`)),
    shapes: hash(
      notes.map(
        (note) => `${formatFraction(note.onset)}:${(height(note) - height(first)).toFixed(4)}`,
      ),
    ),
  }
}

function height({sounding, written}: SoundingNote): number {
  const {numerator, denominator} = (sounding ?? written).midi
  return numerator / denominator
}

/** FNV-1a, 32 bits, never 0. */
function hash(words: readonly string[]): number {
  let value = 0x811c9dc5
  for (const word of words) {
    for (let index = 0; index < word.length; index++)
      value = Math.imul(value ^ word.charCodeAt(index), 0x01000193)
    value = Math.imul(value ^ 0x7c, 0x01000193)
  }
  return value >>> 0 || 1
}
