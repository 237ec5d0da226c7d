import {midiOf} from '../pitch/pitch.ts'
import {isPitched} from '../staff/clef.ts'
import {NOTE, measureOf, soundingAt} from '../survey/facts.ts'
import type {PartFacts, Position} from '../survey/facts.ts'
import {timeOf} from './clock.ts'
import type {Clock} from './clock.ts'

/** A sounding note from attack to end, ties joined. Times are in quarters from the start of the score. */
export interface Tone extends Position {
  /** Index of its first note in the columns of the facts. */
  readonly note: number
  /** The further notes that it is tied over, if any. */
  readonly tied?: readonly number[]
  /** Sounding, 60 for middle C. */
  readonly midi: number
  readonly start: number
  readonly end: number
  readonly grace: boolean
}

/** The tones that begin at one place of the part. */
export interface Attack extends Position {
  readonly start: number
  /** When the last of its tones ends. */
  readonly end: number
  readonly tones: readonly Tone[]
  readonly low: number
  readonly high: number
  /** A tie, slur or beam leads here from before: nothing may part the two. */
  readonly bound: boolean
  /** Notes that no fold may move, on a staff without pitch, stand between here and the attack before. */
  readonly apart: boolean
  /** A slur leads on from here. */
  readonly slurred: boolean
  /** A breath mark or a fermata ends the phrase here. */
  readonly breath: boolean
}

/** What one part sounds, as a player hears it: its attacks in the order of time. Cue notes are left out, and staves
 * without pitch (percussion, tablature). */
export interface Line {
  readonly facts: PartFacts
  readonly clock: Clock
  readonly tones: readonly Tone[]
  readonly attacks: readonly Attack[]
  /** The attacks by their start. */
  readonly byStart: ReadonlyMap<number, Attack>
}

/** Quarters after which a tie or a beam that leads nowhere is forgotten: a file's slip. */
const STALE = 4

export function lineOf(facts: PartFacts, clock: Clock): Line {
  const notes = orderOf(facts, clock)
  const tones: Mutable<Tone>[] = []
  const attacks: Mutable<Attack>[] = []
  const open = new Map<string, Mutable<Tone>>()
  const voices = new Map<string, Voice>()
  let place: Position = {measure: -1, onset: 0}
  let bound = false
  let passed = 0
  for (const {note, measure, onset, start, foreign} of notes) {
    const flags = facts.notes.flags[note] ?? 0
    const end = start + (facts.notes.duration[note] ?? 0) / (facts.ticks[measure] ?? 1)
    const midi = midiOf(soundingAt(facts, note))
    const staff = facts.states[facts.notes.state[note] ?? 0]?.staff ?? 1
    const key = `${staff}/${midi}`
    const held = flags & NOTE.tiedFrom ? open.get(key) : undefined
    open.delete(key)
    // Asked before any note of the place is taken in: a chord may tie one of its notes over and strike the others.
    if (measure !== place.measure || onset !== place.onset) bound = isBound(voices, start)
    place = {measure, onset}
    const last = attacks.at(-1)
    const joins = last && last.measure === measure && last.onset === onset
    const attack: Mutable<Attack> = joins
      ? last
      : {
          measure,
          onset,
          start,
          end: start,
          tones: [],
          low: Infinity,
          high: -Infinity,
          bound,
          apart: foreign > passed,
          slurred: false,
          breath: false,
        }
    const voice = `${staff}/${facts.notes.voice[note]}`
    voices.set(voice, voiceAfter(voices.get(voice), {flags, start, end}))
    if (held && !(flags & NOTE.grace)) {
      held.end = Math.max(held.end, end)
      held.tied = [...(held.tied ?? []), note]
      if (last) last.end = Math.max(last.end, end)
      if (flags & NOTE.tiedTo) open.set(key, held)
      // The end of a tie is no attack, but a slur or a breath may hang on it.
      if (last) mark(last, flags)
      continue
    }
    if (!joins) attacks.push(attack)
    passed = foreign
    const tone = {note, midi, measure, onset, start, end, grace: (flags & NOTE.grace) !== 0}
    tones.push(tone)
    attack.tones = [...attack.tones, tone]
    attack.end = Math.max(attack.end, end)
    attack.low = Math.min(attack.low, midi)
    attack.high = Math.max(attack.high, midi)
    mark(attack, flags)
    if (flags & NOTE.tiedTo) open.set(key, tone)
  }
  const byStart = new Map(attacks.map((attack) => [attack.start, attack]))
  return {facts, clock, tones, attacks, byStart}
}

type Mutable<T> = {-readonly [Key in keyof T]: T[Key]}

/** What the last note of a voice leads on to. */
interface Voice {
  readonly start: number
  readonly end: number
  readonly slurred: boolean
  readonly grouped: boolean
}

interface Placed extends Position {
  readonly note: number
  readonly start: number
  /** How many notes without pitch come before it in the document. */
  readonly foreign: number
}

/** The notes that are played, by time and then as the document has them. */
function orderOf(facts: PartFacts, clock: Clock): Placed[] {
  const order: Placed[] = []
  const {notes} = facts
  let measure = 0
  let foreign = 0
  for (let note = 0; note < notes.count; note++) {
    const clef = facts.states[notes.state[note] ?? 0]?.state.clef
    if (clef && !isPitched(clef)) foreign++
    if ((notes.flags[note] ?? 0) & NOTE.cue || (clef && !isPitched(clef))) continue
    if ((facts.firstNote[measure + 1] ?? Infinity) <= note) measure = measureOf(facts, note)
    const onset = (notes.onset[note] ?? 0) / (facts.ticks[measure] ?? 1)
    order.push({note, measure, onset, start: timeOf(clock, {measure, onset}), foreign})
  }
  return order.toSorted((a, b) => a.measure - b.measure || a.onset - b.onset || a.note - b.note)
}

/** A chord carries its beam on its first note and its ties on any. */
function voiceAfter(
  before: Voice | undefined,
  {flags, start, end}: {readonly flags: number; readonly start: number; readonly end: number},
): Voice {
  const chord = before !== undefined && before.start === start && (flags & NOTE.chord) !== 0
  return {
    start,
    end,
    slurred: (flags & NOTE.slurred) !== 0,
    grouped: (flags & (NOTE.beamed | NOTE.tiedTo)) !== 0 || (chord && before.grouped),
  }
}

function isBound(voices: ReadonlyMap<string, Voice>, start: number): boolean {
  for (const voice of voices.values())
    if (voice.slurred || (voice.grouped && start - voice.end < STALE)) return true
  return false
}

function mark(attack: Mutable<Attack>, flags: number): void {
  attack.slurred = (flags & NOTE.slurred) !== 0
  if (flags & NOTE.breath) attack.breath = true
}
