import type {Family, Instrument, Language} from '../instruments/instrument.ts'
import type {StaffState, Transposition} from '../staff/state.ts'
import {add, negate, sameInterval} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {sameKey} from '../pitch/key.ts'
import type {Key} from '../pitch/key.ts'
import {transpose} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import {sameClef} from '../staff/clef.ts'
import type {Clef} from '../staff/clef.ts'
import type {Position} from '../survey/facts.ts'
import type {Courtesies} from './courtesy.ts'
import type {CourtesyPolicy} from './job.ts'
import type {SpellingPolicy} from './spelling.ts'
import type {Techniques} from './techniques.ts'
import type {ChosenNotes} from './chosen-notes.ts'

export type {Position}

/** A stretch of a staff in which one decision holds: from its position to the next section's. */
export interface Section extends Position {
  readonly staff: number
  /** What the source has in force, as it was read (with `from` applied). */
  readonly source: StaffState
  /** What the target has in force: its clef, its key if any is stated, what it adds to written to get sounding. */
  readonly clef: Clef
  readonly key?: Key
  readonly transposition: Transposition
  /** Octaves by which the music is moved: what it sounds changes, what is declared does not. None when absent. */
  readonly octaves?: number
  /** Staves without pitch (percussion, tablature) are left alone. */
  readonly untouched: boolean
}

/** What the part calls itself from now on, and what it did until now. */
export interface Identity {
  readonly name: string
  readonly abbreviation: string
  readonly language: Language
  readonly instrument?: Instrument
  readonly former: {readonly name: string; readonly abbreviation: string}
  /** The family that the part was written for, where sound or name tell. */
  readonly formerFamily?: Family
}

/** All decisions for one part. */
export interface PartPlan {
  readonly part: string
  /** `staves[0]` holds the sections of staff 1, in order; the first begins with the part. */
  readonly staves: readonly (readonly Section[])[]
  readonly identity?: Identity
  /** The part is put at concert pitch in a score that says so. */
  readonly concert: boolean
  /** `exact`: as the intervals make them and nothing else, ties over a turn included: so that a part comes back. */
  readonly spelling: SpellingPolicy | 'exact'
  readonly courtesy: CourtesyPolicy
  /** Present when courtesy accidentals are to be added. */
  readonly courtesies?: Courtesies
  /** Notes that become cues: nobody plays them. */
  readonly dropped?: ChosenNotes
  /** Octave lines that go, by index; `strays`: and what stands without a beginning. */
  readonly octaveLines: {readonly removed: ReadonlySet<number>; readonly strays: boolean}
  /** Present when the part is for an instrument that is named. */
  readonly techniques?: Techniques
  readonly layout: 'keep' | 'drop'
  /** Lines at the head of the first page, for a part that stands in for another. */
  readonly heading?: readonly string[]
  readonly prints: {readonly accidentals: boolean; readonly stems: boolean}
}

/** Whether a position comes before another. */
export function isBefore(a: Position, b: Position): boolean {
  return a.measure < b.measure || (a.measure === b.measure && a.onset < b.onset)
}

/** The last of a list that begins at or before a position; the list is in order. */
export function lastBefore<T extends Position>(list: readonly T[], at: Position): T | undefined {
  return list.findLast((each) => !isBefore(at, each))
}

/**
 * The section that holds at a position of a staff. `before` asks for the one that ends there instead, when one does.
 */
export function sectionAt(
  plan: PartPlan,
  staff: number,
  at: Position,
  options: {readonly before?: boolean} = {},
): Section | undefined {
  const sections = plan.staves[staff - 1] ?? plan.staves[0] ?? []
  let low = 0
  let high = sections.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    const section = sections[middle]
    if (!section) break
    const reached = options.before ? isBefore(section, at) : !isBefore(at, section)
    if (reached) low = middle
    else high = middle - 1
  }
  return sections[low]
}

/** The pitch that the target's player reads for a pitch that the source sounds. */
export function writtenPitch(section: Section, sounding: Pitch): Pitch {
  return transpose(sounding, add(negate(section.transposition.interval), octavesOf(section)))
}

/** What is added to the pitch written in the source to get the pitch written in the target. */
export function moveOf(section: Section): Interval {
  const from = section.source.transposition.interval
  const to = section.transposition.interval
  return add(add(from, negate(to)), octavesOf(section))
}

function octavesOf({octaves = 0}: Section): Interval {
  return {diatonic: 7 * octaves, chromatic: 12 * octaves}
}

/** Whether the section says what the source says: nothing in it needs rewriting. */
export function isSame(section: Section): boolean {
  return (
    section.untouched ||
    (keepsPitch(section) && sameClef(section.clef, section.source.clef) && keepsKey(section))
  )
}

export function keepsPitch(section: Section): boolean {
  return (
    !section.octaves &&
    sameInterval(section.transposition.interval, section.source.transposition.interval)
  )
}

export function keepsKey({key, source}: Section): boolean {
  return (
    key === source.key ||
    (key !== undefined && source.key !== undefined && sameKey(key, source.key))
  )
}
