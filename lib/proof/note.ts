import {malformed, readDecimal, readInteger} from './attributes.ts'
import {child, childText} from './document.ts'
import type {Node} from './document.ts'
import {order, quotient, ZERO} from './fraction.ts'
import type {Fraction} from './fraction.ts'
import {exactPitch} from './pitch.ts'
import type {ExactPitch} from './pitch.ts'

/** A `<note>` before anything is known about its staff. */
export interface WrittenNote {
  readonly staff: string
  readonly voice: string
  /** Where the note stands on paper: its pitch or, unpitched, the place it is drawn at. Undefined for a rest. */
  readonly written: ExactPitch | undefined
  readonly pitched: boolean
  readonly chord: boolean
  readonly grace: boolean
  readonly cue: boolean
  readonly duration: Fraction
  readonly tie: Tie
  readonly line: number
}

export interface Tie {
  readonly start: boolean
  readonly stop: boolean
}

/**
 * Reads a `<note>`. `inkTies` takes ties from `<tied>`, which is drawn, instead of `<tie>`, which sounds: for
 * files that only draw them.
 */
export function readNote(node: Node, divisions: Fraction, inkTies: boolean): WrittenNote {
  const pitch = child(node, 'pitch')
  const unpitched = child(node, 'unpitched')
  const grace = child(node, 'grace') !== undefined
  return {
    staff: childText(node, 'staff') || '1',
    voice: childText(node, 'voice') || '1',
    written: pitch ? readPitch(pitch) : unpitched && readDisplay(unpitched),
    pitched: pitch !== undefined,
    chord: child(node, 'chord') !== undefined,
    grace,
    cue: child(node, 'cue') !== undefined,
    duration: grace ? ZERO : (readDuration(node, divisions) ?? ZERO),
    tie: readTie(inkTies ? (child(node, 'notations')?.children ?? []) : node.children),
    line: node.line,
  }
}

/** The `<duration>` in quarters. Undefined when there is none. */
export function readDuration(node: Node, divisions: Fraction): Fraction | undefined {
  const duration = readDecimal(node, 'duration')
  if (duration && order(duration, ZERO) < 0)
    throw malformed(node, 'a duration is less than nothing')
  return duration && quotient(duration, divisions)
}

function readPitch(node: Node): ExactPitch {
  const octave = readInteger(node, 'octave')
  const pitch =
    octave === undefined
      ? undefined
      : exactPitch(childText(node, 'step') ?? '', readDecimal(node, 'alter') ?? ZERO, octave)
  if (!pitch) throw malformed(node, 'a pitch lacks its step or its octave')
  return pitch
}

/** A percussion staff is read as if in treble clef; without a place the note is on the middle line, B4. */
function readDisplay(node: Node): ExactPitch | undefined {
  return exactPitch(
    childText(node, 'display-step') ?? 'B',
    ZERO,
    readInteger(node, 'display-octave') ?? 4,
  )
}

function readTie(elements: readonly Node[]): Tie {
  const types = elements
    .filter(({name}) => name === 'tie' || name === 'tied')
    .map(({attributes}) => attributes['type'])
  const through = types.includes('continue')
  return {start: through || types.includes('start'), stop: through || types.includes('stop')}
}
