import {isTraditional} from '../pitch/key.ts'
import type {Key} from '../pitch/key.ts'
import {DIMINISHED_SECOND, negate} from '../pitch/interval.ts'
import {transpose} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'

/**
 * How notes are spelled besides their interval. `keep`: as the interval makes them. `plain`: no double sharps or flats, and no
 * E sharp, B sharp, C flat or F flat, where they have no function in the key. `school`: besides, no sign further than two
 * fifths beyond the signature.
 */
export type SpellingPolicy = 'keep' | 'plain' | 'school'

/** A respelled note, and by which rule (renotation-rules E2, E8). */
export interface Respelling {
  readonly pitch: Pitch
  readonly rule: 'E2' | 'E8'
}

/**
 * Where a note lies on the line of fifths, counted from the tonic of the signature's major key: -1 to 5 is the scale; 8 is
 * the leading note of the relative minor, 6 to 7 its neighbours; -5 the flat second.
 */
const FUNCTIONAL = {low: -5, high: 8}
const SCHOOL = {low: -3, high: 7}

/** The simpler spelling of a written pitch, where the policy wants one. Depends on nothing but pitch and key, so that unisons, ties and chords agree. */
export function respell(
  pitch: Pitch,
  key: Key | undefined,
  policy: SpellingPolicy | 'exact',
): Respelling | undefined {
  if (policy === 'keep' || policy === 'exact' || !Number.isInteger(pitch.alter)) return undefined
  const fifths = key && isTraditional(key) ? key.fifths : 0
  const place = placeInKey(pitch, fifths)
  if (isAwkward(pitch) && (place < FUNCTIONAL.low || place > FUNCTIONAL.high)) {
    const simpler = turned(pitch, place)
    if (!isAwkward(simpler) || Math.abs(simpler.alter) < Math.abs(pitch.alter))
      return {pitch: simpler, rule: 'E2'}
  }
  if (policy === 'school' && pitch.alter !== 0 && (place < SCHOOL.low || place > SCHOOL.high)) {
    const simpler = turned(pitch, place)
    const there = placeInKey(simpler, fifths)
    if (there >= SCHOOL.low && there <= SCHOOL.high) return {pitch: simpler, rule: 'E8'}
  }
  return undefined
}

function turned(pitch: Pitch, place: number): Pitch {
  return transpose(pitch, place > 0 ? DIMINISHED_SECOND : negate(DIMINISHED_SECOND))
}

function placeInKey({step, alter}: Pitch, fifths: number): number {
  return 'FCGDAEB'.indexOf(step) - 1 + 7 * alter - fifths
}

function isAwkward({step, alter}: Pitch): boolean {
  if (Math.abs(alter) >= 2) return true
  return (
    (alter === 1 && (step === 'E' || step === 'B')) ||
    (alter === -1 && (step === 'C' || step === 'F'))
  )
}
