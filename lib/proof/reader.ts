import {AS_WRITTEN, doubledShift, replaceShift} from './attributes.ts'
import type {ClefInForce, Sounding} from './attributes.ts'
import {scoreError} from '../diagnostic.ts'
import {readDocument} from './document.ts'
import type {RawMeasure} from './document.ts'
import {fraction, toNumber} from './fraction.ts'
import type {Fraction} from './fraction.ts'
import {shiftPitch} from './pitch.ts'
import type {ExactPitch} from './pitch.ts'
import {scanMeasure} from './scan.ts'
import type {Carried, PlacedNote} from './scan.ts'
import type {Source} from './text.ts'
import {carryOver, inForce, inScoreOrder} from './timeline.ts'

/** One sounding event. Onset and duration are exact fractions of a quarter, the onset from the start of the measure. */
export interface SoundingNote {
  readonly part: string
  readonly staff: string
  readonly voice: string
  /** The measure's number as printed, and its index from 0. */
  readonly measure: string
  readonly measureIndex: number
  readonly onset: Fraction
  readonly duration: Fraction
  /** What is heard. Undefined for unpitched notes. */
  readonly sounding: ExactPitch | undefined
  /** What is read; of an unpitched note the place where it is drawn. */
  readonly written: ExactPitch
  /** True for the second line of a staff that is doubled at the octave. */
  readonly doubled: boolean
  /** The place in its group of grace notes, from 0; undefined for a note that takes time. */
  readonly grace: number | undefined
  /** A cue note is written and not played. */
  readonly cue: boolean
  readonly tieStart: boolean
  readonly tieStop: boolean
  readonly line: number
}

/** What one part plays in one measure, in document order. */
export interface SoundingMeasure {
  readonly part: string
  readonly number: string
  readonly index: number
  /** The unit of the time signature in quarters; a quarter where there is no signature. */
  readonly beat: Fraction
  readonly notes: readonly SoundingNote[]
}

/**
 * A caller's own reading of a staff: the interval to add to the notes under a clef, in steps and semitones, or undefined
 * to believe what the file declares.
 */
export type Reading = (
  part: string,
  clef: ClefInForce | undefined,
  declared: PlainInterval,
) => PlainInterval | undefined

interface PlainInterval {
  readonly diatonic: number
  readonly chromatic: number
}

export interface ReaderOptions {
  readonly reading?: Reading
  /** Only these parts, by id; all when absent. */
  readonly parts?: ReadonlySet<string>
  /** The parts that draw ties and never say `<tie>`: there `<tied>` is believed. `surveyScore` finds them. */
  readonly inkTies?: ReadonlySet<string>
}

interface PartState extends Carried {
  readonly index: number
}

const AT_THE_START: PartState = {
  index: 0,
  divisions: fraction(1),
  beat: fraction(1),
  soundings: [],
  clefs: [],
}

/**
 * Reads what a score or part sounds, one part's measure at a time, in document order: partwise or timewise MusicXML
 * 1.0 to 4.0, plain or compressed. It shares no reading and no arithmetic with the rewriter. Transpositions and clefs hold
 * by their place in the score; clef octaves and octave lines change no pitch. Measure repeats are not written out.
 * @throws ScoreError `proof/malformed` when the source is no score that can be read, with the line.
 */
export async function* readMeasures(
  source: Source,
  options: ReaderOptions = {},
): AsyncGenerator<SoundingMeasure> {
  const states = new Map<string, PartState>()
  let concert = false
  for await (const piece of readDocument(source)) {
    if (piece.kind === 'header') {
      concert = piece.header.concert
      continue
    }
    const {part} = piece.measure
    if (options.parts && !options.parts.has(part)) continue
    const state = states.get(part) ?? AT_THE_START
    const {sounding, next} = withPlace(piece.measure, () =>
      readMeasure(piece.measure, state, concert, options),
    )
    states.set(part, next)
    yield sounding
  }
}

function readMeasure(raw: RawMeasure, state: PartState, concert: boolean, options: ReaderOptions) {
  const {part, number = String(state.index + 1)} = raw
  const scanned = scanMeasure(raw, state, concert, options.inkTies?.has(part) ?? false)
  const soundings = inScoreOrder(scanned.soundings)
  const clefs = inScoreOrder(scanned.clefs)
  const notes = scanned.notes.flatMap((placed) => {
    const {note, at} = placed
    const declared = inForce(soundings, note.staff, at, note.grace) ?? AS_WRITTEN
    const clef = inForce(clefs, note.staff, at, note.grace)
    const believed = reread(declared, part, clef, options.reading)
    return soundingNotes(placed, believed, {part, measure: number, measureIndex: state.index})
  })
  return {
    sounding: {part, number, index: state.index, beat: scanned.beat, notes},
    next: {
      index: state.index + 1,
      divisions: scanned.divisions,
      beat: scanned.beat,
      soundings: carryOver(soundings),
      clefs: carryOver(clefs),
    },
  }
}

function reread(
  declared: Sounding,
  part: string,
  clef: ClefInForce | undefined,
  reading: Reading | undefined,
): Sounding {
  if (!reading) return declared
  const {diatonic, chromatic} = declared.shift
  const chosen = reading(part, clef, {diatonic, chromatic: toNumber(chromatic)})
  return chosen ? replaceShift(declared, chosen) : declared
}

/** None for a rest, two where a staff is doubled at the octave, else one. */
function soundingNotes(
  {note, at, slot}: PlacedNote,
  {shift, doubled}: Sounding,
  place: Pick<SoundingNote, 'part' | 'measure' | 'measureIndex'>,
): readonly SoundingNote[] {
  const {written} = note
  if (!written) return []
  const one: SoundingNote = {
    ...place,
    staff: note.staff,
    voice: note.voice,
    onset: at.onset,
    duration: note.duration,
    sounding: note.pitched ? shiftPitch(written, shift) : undefined,
    written,
    doubled: false,
    grace: slot,
    cue: note.cue,
    tieStart: note.tie.start,
    tieStop: note.tie.stop,
    line: note.line,
  }
  if (!doubled || !note.pitched) return [one]
  const second = shiftPitch(written, doubledShift({shift, doubled}))
  return [one, {...one, sounding: second, doubled: true}]
}

/** Arithmetic that overflows is the file's fault: nobody writes durations in more than fifteen digits. */
function withPlace<T>({part, number, line}: RawMeasure, read: () => T): T {
  try {
    return read()
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
    throw scoreError('proof/malformed', error.message, {
      part,
      line,
      ...(number !== undefined && {measure: number}),
    })
  }
}
