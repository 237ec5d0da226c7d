import {difference, equals, sum, toNumber} from './fraction.ts'
import type {Fraction} from './fraction.ts'
import type {SoundingNote} from './reader.ts'
import {sameSound} from './ties.ts'
import type {Event} from './ties.ts'

/** How two events belong together: `as-expected`, or the one thing that is not. */
export type Likeness =
  'as-expected' | 'grace-order' | 'grace' | 'cue' | 'not-moved' | 'pitch' | 'onset'

export interface Match {
  readonly before: Event
  readonly after: Event
  readonly likeness: Likeness
}

export interface Matching {
  readonly matches: readonly Match[]
  readonly missing: readonly Event[]
  readonly extra: readonly Event[]
}

type Test = (before: Event, after: Event) => boolean

/**
 * Finds for every attack of a measure its counterpart on the other side: first those that agree in everything, then
 * those that differ in ever more. `expect` is how far an event of BEFORE is meant to have moved, in semitones;
 * `isSilenced` tells those that are meant to be cues: another part may play the same note beside them.
 */
export function matchAttacks(
  before: readonly Event[],
  after: readonly Event[],
  expect: (event: Event) => Fraction,
  isSilenced: (event: Event) => boolean = () => false,
): Matching {
  const pitch: Test = (a, b) => soundsAt(a.note, b.note, expect(a))
  const silenced: Test = (a, b) => b.note.cue && !a.note.cue && isSilenced(a)
  const stages: readonly (readonly [Likeness, ...Test[]])[] = [
    ['cue', onset, pitch, silenced],
    ['as-expected', onset, pitch, cue, slot, length],
    ['as-expected', onset, pitch, cue, slot],
    ['grace-order', onset, pitch, cue, graces],
    ['grace', onset, pitch, cue],
    ['cue', onset, pitch],
    ['not-moved', onset, unmoved, cue, graces],
    ['pitch', onset, pitched, cue, graces],
    ['onset', pitch, cue, graces, length],
  ]
  const matches: Match[] = []
  let missing = [...before]
  const extra = [...after]
  for (const [likeness, ...tests] of stages) {
    if (missing.length === 0 || extra.length === 0) break
    missing = missing.filter((event) => {
      // What is meant to be silent has no counterpart but its cue, if any.
      if (!tests.includes(silenced) && isSilenced(event)) return true
      const index = nearest(event, extra, (other) => tests.every((test) => test(event, other)))
      const [counterpart] = index < 0 ? [] : extra.splice(index, 1)
      if (counterpart) matches.push({before: event, after: counterpart, likeness})
      return !counterpart
    })
  }
  return {matches, missing, extra}
}

/** True when `after` is what `before` sounds like once it has moved. */
export function soundsAt(before: SoundingNote, after: SoundingNote, moved: Fraction): boolean {
  if (!before.sounding || !after.sounding || moved.numerator === 0) return sameSound(before, after)
  return equals(sum(before.sounding.midi, moved), after.sounding.midi)
}

const unmoved: Test = (a, b) => sameSound(a.note, b.note)
const length: Test = (a, b) => equals(a.duration, b.duration) && a.held === b.held
const onset: Test = (a, b) => equals(a.note.onset, b.note.onset)
const cue: Test = (a, b) => a.note.cue === b.note.cue
const slot: Test = (a, b) => a.note.grace === b.note.grace
const graces: Test = (a, b) => (a.note.grace === undefined) === (b.note.grace === undefined)
const pitched: Test = (a, b) => a.note.sounding !== undefined && b.note.sounding !== undefined

/** The index of the candidate nearest in pitch, the first of equals; -1 when there is none. */
function nearest(event: Event, others: readonly Event[], fits: (other: Event) => boolean): number {
  let best = -1
  let distance = Infinity
  for (const [index, other] of others.entries()) {
    if (!fits(other)) continue
    const from = Math.abs(
      toNumber(
        difference(
          (other.note.sounding ?? other.note.written).midi,
          (event.note.sounding ?? event.note.written).midi,
        ),
      ),
    )
    if (from < distance) [best, distance] = [index, from]
    if (distance === 0) break
  }
  return best
}
