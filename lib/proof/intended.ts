import {order, parseDecimal, parseFraction, toNumber, ZERO} from './fraction.ts'
import type {Fraction} from './fraction.ts'
import type {SoundingNote} from './reader.ts'

/**
 * A change of sound that was reported, from one place to another, both included: notes `moved` by a number of
 * semitones, notes `dropped`, all notes of a passage `silenced`, notes `added`, or `cues` added for the player to read.
 */
export interface Intended {
  readonly kind: 'moved' | 'dropped' | 'silenced' | 'added' | 'cues'
  /** The part's id in BEFORE; every part when absent. */
  readonly part?: string
  /** The beginning of the part when absent. */
  readonly from?: Spot
  /** The end of the part when absent. */
  readonly to?: Spot
  /** Of `moved`: positive is higher. */
  readonly semitones?: number
  /** Of `dropped`: only the note that sounds this in BEFORE, 60 for middle C; without it every note of the passage. */
  readonly midi?: number
  /** What the report says, for people. */
  readonly reason: string
}

/** A measure by its index from 0 (number) or as printed (text) and, if need be, an onset in it in quarters (`7/2`). */
export interface Spot {
  readonly measure: number | string
  readonly onset?: string
}

/** How far one intended change has been followed through its part. */
export interface Passage {
  readonly intended: Intended
  /** How far notes move in it; 0 unless it is a move. */
  readonly semitones: Fraction
  readonly start: Fraction
  readonly end: Fraction | undefined
  fromIndex: number | undefined
  toIndex: number | undefined
  notes: number
}

/**
 * The intended changes of one part, before its first measure.
 * @throws RangeError when an onset is no fraction or a move has no semitones.
 */
export function passagesOf(part: string, intended: readonly Intended[]): readonly Passage[] {
  return intended
    .filter((one) => one.part === undefined || one.part === part)
    .map((one) => {
      const semitones = one.kind === 'moved' ? parseDecimal(String(one.semitones)) : ZERO
      if (!semitones) throw new RangeError('an intended move needs its semitones')
      return {
        intended: one,
        semitones,
        start: one.from?.onset === undefined ? ZERO : readOnset(one.from.onset),
        end: one.to?.onset === undefined ? undefined : readOnset(one.to.onset),
        fromIndex: one.from ? undefined : 0,
        toIndex: undefined,
        notes: 0,
      }
    })
}

/** Tells the passages that a measure begins. Where printed numbers repeat, the first that fits counts. */
export function enterMeasure(passages: readonly Passage[], index: number, number: string): void {
  for (const passage of passages) {
    const {from, to} = passage.intended
    if (from && isAt(from, index, number)) passage.fromIndex ??= index
    if (to && passage.fromIndex !== undefined && isAt(to, index, number)) passage.toIndex ??= index
  }
}

/** The first passage of one of the kinds that holds the note. */
export function passageAt(
  passages: readonly Passage[],
  kinds: readonly Intended['kind'][],
  {measureIndex, onset, sounding}: Pick<SoundingNote, 'measureIndex' | 'onset' | 'sounding'>,
): Passage | undefined {
  return passages.find(({intended, fromIndex, toIndex, start, end}) => {
    if (!kinds.includes(intended.kind) || fromIndex === undefined) return false
    if (intended.midi !== undefined && !isKey(sounding, intended.midi)) return false
    if (measureIndex < fromIndex || (toIndex !== undefined && measureIndex > toIndex)) return false
    if (measureIndex === fromIndex && order(onset, start) < 0) return false
    return !(measureIndex === toIndex && end && order(onset, end) > 0)
  })
}

/** Reports tell microtones to a hundredth of a semitone. */
function isKey(sounding: SoundingNote['sounding'], midi: number): boolean {
  return sounding !== undefined && Math.abs(toNumber(sounding.midi) - midi) < 0.01
}

function isAt(spot: Spot, index: number, number: string): boolean {
  return typeof spot.measure === 'number' ? spot.measure === index : spot.measure === number
}

function readOnset(text: string): Fraction {
  const onset = parseFraction(text)
  if (!onset) throw new RangeError(`an onset is a number of quarters such as 7/2, not ${text}`)
  return onset
}
