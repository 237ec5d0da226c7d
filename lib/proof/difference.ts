import {difference as minus, formatFraction, order, ZERO} from './fraction.ts'
import type {Fraction} from './fraction.ts'
import type {Likeness} from './match.ts'
import {formatExactPitch} from './pitch.ts'
import type {SoundingNote} from './reader.ts'
import type {Event} from './ties.ts'
import {astrayWords, beatAt, intervalWords, lengthWords} from './words.ts'

export type DifferenceKind =
  | Exclude<Likeness, 'as-expected'>
  | 'missing'
  | 'extra'
  | 'duration'
  | 'struck-again'
  | 'tied-over'
  | 'transposed'

/** One place where AFTER does not sound like BEFORE. */
export interface Difference {
  readonly kind: DifferenceKind
  /** The measure's number as printed, and its index from 0. */
  readonly measure: string
  readonly measureIndex: number
  /** Counted in the unit of the time signature: the third eighth of 6/8 is beat 3. */
  readonly beat: string
  /** In quarters from the start of the measure, exact: `7/2`. */
  readonly onset: string
  /** What is wrong there, in one clause: `Bb3 sounds instead of Bb2 (an octave high)`. */
  readonly what: string
  /** How far AFTER is astray, in semitones, where a pitch is. */
  readonly semitones?: string
  /** Where the notes stand in the two files. */
  readonly lines: {readonly before?: number; readonly after?: number}
}

/** The difference between two events that belong together. `moved` is what the report promised, in semitones. */
export function differenceOf(
  kind: Exclude<Likeness, 'as-expected'> | 'duration',
  before: Event,
  after: Event,
  moved: Fraction,
  beat: Fraction,
): Difference {
  const semitones = kind === 'pitch' ? astrayBy(before, after, moved) : undefined
  return {
    ...placeOf(kind, before.note, beat),
    what: whatOf(kind, before, after, moved, semitones),
    ...(semitones && {semitones: formatFraction(semitones)}),
    lines: {before: before.note.line, after: after.note.line},
  }
}

/** The difference of a note that has no counterpart. */
export function lonelyDifference(
  kind: 'missing' | 'extra' | 'struck-again' | 'tied-over',
  {note}: Event,
  beat: Fraction,
): Difference {
  const name = soundName(note)
  const what = {
    missing: note.cue ? `the cue ${name} is missing` : `${name} is missing`,
    extra: note.cue ? `${name} is a cue that no report tells of` : `${name} is one note too many`,
    'struck-again': `${name} is struck again instead of held by a tie`,
    'tied-over': `${name} is held by a tie instead of struck again`,
  }[kind]
  const side = kind === 'missing' || kind === 'tied-over' ? 'before' : 'after'
  return {...placeOf(kind, note, beat), what, lines: {[side]: note.line}}
}

/** One word for a whole part that sounds a constant interval from where it should. */
export function transposedDifference(measure: string, semitones: Fraction): Difference {
  return {
    kind: 'transposed',
    measure,
    measureIndex: 0,
    beat: '1',
    onset: '0',
    what: `everything sounds ${astrayWords(semitones)}`,
    semitones: formatFraction(semitones),
    lines: {},
  }
}

/** `measure 12, beat 3: Bb3 sounds instead of Bb2 (an octave high)`. */
export function formatDifference({kind, measure, beat, what}: Difference): string {
  return kind === 'transposed' ? what : `measure ${measure}, beat ${beat}: ${what}`
}

function astrayBy(before: Event, after: Event, moved: Fraction): Fraction | undefined {
  if (!before.note.sounding || !after.note.sounding) return undefined
  return minus(minus(after.note.sounding.midi, before.note.sounding.midi), moved)
}

function placeOf(kind: DifferenceKind, note: SoundingNote, beat: Fraction) {
  return {
    kind,
    measure: note.measure,
    measureIndex: note.measureIndex,
    beat: beatAt(note.onset, beat),
    onset: formatFraction(note.onset),
  }
}

function whatOf(
  kind: Parameters<typeof differenceOf>[0],
  before: Event,
  after: Event,
  moved: Fraction,
  semitones: Fraction | undefined,
): string {
  const name = soundName(after.note)
  switch (kind) {
    case 'pitch':
      return `${name} sounds instead of ${promised(before.note, moved)} (${astrayWords(semitones ?? ZERO)})`
    case 'duration': {
      const more = minus(after.duration, before.duration)
      if (more.numerator === 0) return `${name} is tied on at another place`
      return `${name} is ${lengthWords(more)} ${order(more, ZERO) < 0 ? 'shorter' : 'longer'}`
    }
    case 'onset': {
      const later = minus(after.note.onset, before.note.onset)
      return `${name} comes ${lengthWords(later)} ${order(later, ZERO) < 0 ? 'early' : 'late'}`
    }
    case 'cue':
      return after.note.cue
        ? `${name} has become a cue and is not played`
        : `${name} was a cue and is now played`
    case 'grace':
      return after.note.grace === undefined
        ? `${name} is no longer a grace note`
        : `${name} has become a grace note`
    case 'grace-order':
      return `the grace note ${name} comes in another place of its group`
    case 'not-moved':
      return `${name} stays where it was, though it was to move ${intervalWords(moved)} ${order(moved, ZERO) < 0 ? 'down' : 'up'}`
  }
}

function promised(note: SoundingNote, moved: Fraction): string {
  const name = soundName(note)
  if (moved.numerator === 0) return name
  return `${name} ${intervalWords(moved)} ${order(moved, ZERO) < 0 ? 'lower' : 'higher'}`
}

/** `Bb3`; of an unpitched note the place where it is drawn in treble clef. */
function soundName(note: SoundingNote): string {
  return note.sounding
    ? formatExactPitch(note.sounding)
    : `the unpitched note at ${formatExactPitch(note.written)}`
}
