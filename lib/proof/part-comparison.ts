import {differenceOf, lonelyDifference} from './difference.ts'
import type {Difference} from './difference.ts'
import {equals, parseFraction, sum, toNumber, ZERO} from './fraction.ts'
import type {Fraction} from './fraction.ts'
import {enterMeasure, passageAt, passagesOf} from './intended.ts'
import type {Intended, Passage} from './intended.ts'
import {matchAttacks, soundsAt} from './match.ts'
import type {Match} from './match.ts'
import {countOffsets} from './offsets.ts'
import type {Offsets} from './offsets.ts'
import type {SoundingMeasure, SoundingNote} from './reader.ts'
import {joinTies} from './ties.ts'
import type {Event, JoinedMeasure} from './ties.ts'

/** The comparison of one pair of parts, as far as it has come. Holds no more than the notes that sound on. */
export interface PartComparison {
  readonly passages: readonly Passage[]
  /** The constant interval that the whole part is known to be off by, in semitones. */
  readonly base: Fraction
  readonly keep: number
  readonly differences: Difference[]
  /** How many notes are off by how much, where both sides strike as many at once: evidence for `base`. */
  readonly offsets: Offsets
  held: {before: readonly Event[]; after: readonly Event[]}
  /** Pairs of which one still sounds: how long is not known yet. */
  pending: readonly Pending[]
  measures: {before: number; after: number}
  notes: {before: number; after: number}
  equal: number
  intended: number
  respelled: number
  different: number
  /** Of the different ones, those that are off by `base` and by nothing else. */
  transposed: number
  firstMeasure: string | undefined
}

interface Pending extends Match {
  readonly passage: Passage | undefined
  readonly moved: Fraction
  readonly beat: Fraction
}

export function beginComparison(
  part: string,
  intended: readonly Intended[],
  keep: number,
  base: Fraction = ZERO,
): PartComparison {
  return {
    passages: passagesOf(part, intended),
    base,
    keep,
    differences: [],
    offsets: new Map(),
    held: {before: [], after: []},
    pending: [],
    measures: {before: 0, after: 0},
    notes: {before: 0, after: 0},
    equal: 0,
    intended: 0,
    respelled: 0,
    different: 0,
    transposed: 0,
    firstMeasure: undefined,
  }
}

/** Takes in the next measure of both sides; one may be absent where the other has more. */
export function compareMeasure(
  comparison: PartComparison,
  before: SoundingMeasure | undefined,
  after: SoundingMeasure | undefined,
): void {
  const any = before ?? after
  if (!any) return
  const {beat} = any
  comparison.firstMeasure ??= any.number
  enterMeasure(comparison.passages, any.index, any.number)
  const left = joinTies(comparison.held.before, before ?? {...any, notes: []})
  const right = joinTies(comparison.held.after, after ?? {...any, notes: []})
  comparison.held = {before: left.held, after: right.held}
  comparison.measures.before += before ? 1 : 0
  comparison.measures.after += after ? 1 : 0
  comparison.notes.before += left.attacks.length
  comparison.notes.after += right.attacks.length

  const promised = ({note}: Event) => passageAt(comparison.passages, ['moved'], note)
  const moved = (event: Event) => sum(comparison.base, promised(event)?.semitones ?? ZERO)
  const {matches, missing, extra} = matchAttacks(left.attacks, right.attacks, moved, (event) =>
    isSilenced(comparison, event),
  )
  // What is meant to be silent, or to come besides, tells nothing about how far the part is off.
  const own = left.attacks.filter((event) => !isSilenced(comparison, event))
  const kept = right.attacks.filter((event) => extraAt(comparison, event) === undefined)
  countOffsets(comparison.offsets, own, kept, (e) => promised(e)?.semitones)
  const pending = matches.map((match) => ({
    ...match,
    passage: promised(match.before),
    moved: moved(match.before),
    beat,
  }))
  for (const event of missing) countMissing(comparison, event, right, moved(event), beat)
  for (const event of extra) countExtra(comparison, event, left, moved, beat)
  comparison.pending = [...comparison.pending, ...pending].filter((one) => {
    if (one.before.held || one.after.held) return true
    settle(comparison, one)
    return false
  })
}

/** Ends what still sounds and puts the differences in the order of the score. */
export function endComparison(comparison: PartComparison): void {
  for (const one of comparison.pending) settle(comparison, one)
  comparison.pending = []
  comparison.differences.sort((a, b) => a.measureIndex - b.measureIndex || onsetOf(a) - onsetOf(b))
}

/** All is known about a pair of events: counts it, as one thing. */
function settle(comparison: PartComparison, one: Pending): void {
  const {before, after, likeness, passage, moved, beat} = one
  const dropped = after.note.cue && !before.note.cue ? droppedAt(comparison, before) : undefined
  // A cue is silent: over how many notes it is drawn out makes no sound.
  if (likeness === 'cue' && dropped) return countIntended(comparison, dropped)
  const stayed = likeness === 'not-moved'
  // A cue is there to be read: it may follow a fold or not. And what is right in a part that is off as a whole is right.
  const excused = stayed && (before.note.cue || comparison.base.numerator !== 0)
  if (likeness !== 'as-expected' && !excused)
    return differ(comparison, differenceOf(likeness, before, after, moved, beat))
  if (before.retied || after.retied) return
  if (!equals(before.duration, after.duration) || `${before.leaps}` !== `${after.leaps}`)
    return differ(comparison, differenceOf('duration', before, after, moved, beat))
  if (isRespelled(before.note, after.note, stayed ? ZERO : moved)) comparison.respelled++
  if (!stayed && comparison.base.numerator !== 0) {
    comparison.different++
    comparison.transposed++
  } else if (passage && !stayed) countIntended(comparison, passage)
  else comparison.equal++
}

/** What stops notes from being played. */
const SILENT = ['dropped', 'silenced'] as const

function countMissing(
  comparison: PartComparison,
  event: Event,
  after: JoinedMeasure,
  moved: Fraction,
  beat: Fraction,
): void {
  const passage = passageAt(comparison.passages, SILENT, event.note)
  const tiedOver = after.continued.find(
    ({note}) => equals(note.onset, event.note.onset) && soundsAt(event.note, note, moved),
  )
  if (passage) return countIntended(comparison, passage)
  if (tiedOver) tiedOver.event.retied = true
  differ(comparison, lonelyDifference(tiedOver ? 'tied-over' : 'missing', event, beat))
}

function countExtra(
  comparison: PartComparison,
  event: Event,
  before: JoinedMeasure,
  moved: (event: Event) => Fraction,
  beat: Fraction,
): void {
  const passage = extraAt(comparison, event)
  const held = before.continued.find(
    (one) =>
      equals(one.note.onset, event.note.onset) && soundsAt(one.note, event.note, moved(one.event)),
  )
  // The rest of a dropped note that was tied over: what was silenced as a whole.
  if (held && event.note.cue && droppedAt(comparison, held.event)) return
  if (passage) return countIntended(comparison, passage)
  if (held) held.event.retied = true
  differ(comparison, lonelyDifference(held ? 'struck-again' : 'extra', event, beat))
}

/** Whether a note is meant to be silent itself, and not only one of a passage in which some are. */
function isSilenced(comparison: PartComparison, event: Event): boolean {
  const {intended} = droppedAt(comparison, event) ?? {}
  return intended?.kind === 'silenced' || intended?.midi !== undefined
}

function extraAt(comparison: PartComparison, {note}: Event): Passage | undefined {
  return passageAt(comparison.passages, note.cue ? ['cues'] : ['added'], note)
}

function droppedAt(comparison: PartComparison, {note}: Event): Passage | undefined {
  return passageAt(comparison.passages, SILENT, note)
}

function countIntended(comparison: PartComparison, passage: Passage): void {
  passage.notes++
  comparison.intended++
}

function differ(comparison: PartComparison, found: Difference): void {
  comparison.different++
  if (comparison.differences.length < comparison.keep) comparison.differences.push(found)
}

/** Spelling can only be compared where the letter must stay: at the same pitch, or octaves apart. */
function isRespelled(before: SoundingNote, after: SoundingNote, moved: Fraction): boolean {
  if (!before.sounding || !after.sounding) return false
  const octaves = moved.numerator / moved.denominator / 12
  if (!Number.isInteger(octaves)) return false
  return after.sounding.steps !== before.sounding.steps + 7 * octaves
}

function onsetOf({onset}: Difference): number {
  return toNumber(parseFraction(onset) ?? ZERO)
}
