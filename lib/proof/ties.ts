import {equals, formatFraction, order, sum} from './fraction.ts'
import type {Fraction} from './fraction.ts'
import type {SoundingMeasure, SoundingNote} from './reader.ts'

/** A sound from its attack to its end, over all the notes that are tied into it. */
export interface Event {
  readonly note: SoundingNote
  /** In quarters. Grows while the event is held. */
  duration: Fraction
  /** True while a tie leads on. */
  held: boolean
  /** Where the last note of the chain stands. */
  lastIndex: number
  lastEnd: Fraction
  /** Where the chain goes on after a gap, which no duration shows: `measure index:onset`. */
  leaps: readonly string[]
  /** Set when the comparison has already told that a tie of this event was broken or added. */
  retied: boolean
}

/** One measure with its ties joined. */
export interface JoinedMeasure {
  readonly attacks: readonly Event[]
  /** Notes that go on sounding by a tie, where the other side may strike. */
  readonly continued: readonly {readonly note: SoundingNote; readonly event: Event}[]
  /** Events whose last tie leads on. */
  readonly held: readonly Event[]
}

/**
 * Joins the notes of a measure to what is held from before. A note continues an event of the same sounding pitch
 * (spelling and voice may change) that ends where it begins, or else one of its own voice that was left open before it in
 * this measure or the last, as when an arpeggio is tied into a chord. A tie that leads nowhere ends with the next measure.
 */
export function joinTies(held: readonly Event[], measure: SoundingMeasure): JoinedMeasure {
  const attacks: Event[] = []
  const continued: {note: SoundingNote; event: Event}[] = []
  const open = new Set(held)
  for (const note of measure.notes.toSorted(byTime)) {
    const event = note.tieStop ? findHeld(open, note) : undefined
    if (event) {
      event.duration = sum(event.duration, note.duration)
      if (!endsAt(event, note))
        event.leaps = [...event.leaps, `${note.measureIndex}:${formatFraction(note.onset)}`]
      prolong(event, note)
      if (!event.held) open.delete(event)
      continued.push({note, event})
      continue
    }
    const attack: Event = {
      note,
      duration: note.duration,
      held: false,
      lastIndex: note.measureIndex,
      lastEnd: note.onset,
      leaps: [],
      retied: false,
    }
    prolong(attack, note)
    attacks.push(attack)
    if (attack.held) open.add(attack)
  }
  for (const event of open) {
    if (event.lastIndex === measure.index) continue
    event.held = false
    open.delete(event)
  }
  return {attacks, continued, held: [...open]}
}

/** What compares equal when it is the same sound; unpitched notes by the place they are drawn at. */
export function sameSound(a: SoundingNote, b: SoundingNote): boolean {
  if (!a.sounding || !b.sounding)
    return !a.sounding && !b.sounding && a.written.steps === b.written.steps
  return equals(a.sounding.midi, b.sounding.midi)
}

function prolong(event: Event, note: SoundingNote): void {
  event.held = note.tieStart
  event.lastIndex = note.measureIndex
  event.lastEnd = sum(note.onset, note.duration)
}

function findHeld(open: ReadonlySet<Event>, note: SoundingNote): Event | undefined {
  const same = [...open].filter(
    (event) => event.note.cue === note.cue && sameSound(event.note, note),
  )
  const ownVoice = (event: Event) =>
    event.note.voice === note.voice && event.note.staff === note.staff
  const adjacent = same.filter((event) => endsAt(event, note))
  return (
    adjacent.find(ownVoice) ??
    adjacent[0] ??
    same.find(
      (event) =>
        ownVoice(event) &&
        (event.lastIndex < note.measureIndex || order(event.lastEnd, note.onset) <= 0),
    )
  )
}

function endsAt(event: Event, note: SoundingNote): boolean {
  return event.lastIndex === note.measureIndex
    ? equals(event.lastEnd, note.onset)
    : note.onset.numerator === 0
}

/** Notes at one onset stay in document order, grace notes first: a grace note may be tied to its main note. */
function byTime(a: SoundingNote, b: SoundingNote): number {
  return order(a.onset, b.onset) || Number(a.grace === undefined) - Number(b.grace === undefined)
}
