import {fifthsOf} from './interval.ts'
import type {Interval} from './interval.ts'
import {STEPS, stepsAbove, transpose} from './pitch.ts'
import type {Step} from './pitch.ts'

/** A key signature by its place on the circle of fifths: 3 is three sharps, -2 two flats. */
export interface TraditionalKey {
  readonly fifths: number
}

/** A signature given sign by sign. `octave` binds a sign to one octave. */
export interface NonTraditionalKey {
  readonly alters: readonly {
    readonly step: Step
    readonly alter: number
    readonly octave?: number
  }[]
}

/** What a staff shows at its beginning. Absent (`undefined` where a key is optional) is not C major. */
export type Key = TraditionalKey | NonTraditionalKey

export function isTraditional(key: Key): key is TraditionalKey {
  return 'fifths' in key
}

export function sameKey(a: Key, b: Key): boolean {
  if (isTraditional(a) && isTraditional(b)) return a.fifths === b.fifths
  if (isTraditional(a) || isTraditional(b)) return false
  return (
    a.alters.length === b.alters.length &&
    a.alters.every((sign, index) => {
      const other = b.alters[index]
      return (
        other &&
        sign.step === other.step &&
        sign.alter === other.alter &&
        sign.octave === other.octave
      )
    })
  )
}

/** Moves a signature with its music. A traditional one may leave the range -7 to 7: whoever plans decides. */
export function transposeKey(key: Key, interval: Interval): Key {
  if (isTraditional(key)) return {fifths: key.fifths + fifthsOf(interval)}
  return {
    alters: key.alters.map(({step, alter, octave}) => {
      const moved = transpose({step, alter, octave: octave ?? 4}, interval)
      return {
        step: moved.step,
        alter: moved.alter,
        ...(octave !== undefined && {octave: moved.octave}),
      }
    }),
  }
}

/** What the signature does to a step (in an octave, where the signature tells octaves apart), in semitones. */
export function alterInKey(key: Key | undefined, step: Step, octave: number): number {
  if (!key) return 0
  if (!isTraditional(key)) {
    const bound = key.alters.find((sign) => sign.step === step && sign.octave === octave)
    return (
      (bound ?? key.alters.find((sign) => sign.step === step && sign.octave === undefined))
        ?.alter ?? 0
    )
  }
  const place = 'FCGDAEB'.indexOf(step)
  return Math.floor((key.fifths - place - 1) / 7) + 1
}

/** The tonic of the major key with that signature, as `Bb` or `F#`. */
export function majorTonic(fifths: number): string {
  const step = STEPS[(((fifths * 4) % 7) + 7) % 7] ?? 'C'
  const alter = Math.floor((fifths + 1) / 7)
  return `${step}${alter < 0 ? 'b'.repeat(0 - alter) : '#'.repeat(alter)}`
}

/** A signature in words: `2 flats`, `no sharps or flats`, `2 signs (F C)`. */
export function describeKey(key: Key): string {
  if (!isTraditional(key))
    return `${counted(key.alters.length, 'sign')} (${key.alters.map((sign) => sign.step).join(' ')})`
  const {fifths} = key
  if (fifths === 0) return 'no sharps or flats'
  return counted(Math.abs(fifths), fifths < 0 ? 'flat' : 'sharp')
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`
}

/** Orders signs of a non-traditional signature from low to high, for comparing two of them. */
export function signsInOrder(key: NonTraditionalKey): NonTraditionalKey['alters'] {
  return key.alters.toSorted(
    (a, b) =>
      stepsAbove({step: a.step, octave: a.octave ?? 0}) -
      stepsAbove({step: b.step, octave: b.octave ?? 0}),
  )
}
