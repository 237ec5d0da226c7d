import {NOTE, soundingAt} from '../survey/facts.ts'
import type {PartFacts} from '../survey/facts.ts'
import {isPitched} from '../staff/clef.ts'
import type {Pitch} from '../pitch/pitch.ts'

/** A voice of a part in a few measures: what a cue would show. */
export interface CueLine {
  readonly staff: number
  readonly voice: string
  /** In the order of the document; grace notes and cues left out. Times are in quarters from the start of the stretch. */
  readonly notes: readonly CueNote[]
}

export interface CueNote {
  readonly measure: number
  readonly start: number
  readonly end: number
  readonly sounding: Pitch
  readonly chord: boolean
  /** A slur or a tie leads on from here. */
  readonly bound: boolean
  readonly tiedFrom: boolean
}

/** The voices of a part that play in measures `from` to `to` (not included). */
export function linesIn(facts: PartFacts, from: number, to: number): CueLine[] {
  const lines = new Map<string, {staff: number; voice: string; notes: CueNote[]}>()
  let offset = 0
  for (let measure = from; measure < to; measure++) {
    const ticks = facts.ticks[measure] ?? 1
    const last = facts.firstNote[measure + 1] ?? facts.notes.count
    for (let note = facts.firstNote[measure] ?? last; note < last; note++) {
      const flags = facts.notes.flags[note] ?? 0
      if (flags & (NOTE.cue | NOTE.grace)) continue
      const {staff = 1, state} = facts.states[facts.notes.state[note] ?? 0] ?? {}
      if (state && !isPitched(state.clef)) continue
      const voice = facts.voices[facts.notes.voice[note] ?? 0] ?? '1'
      const line = lines.get(`${staff}/${voice}`) ?? {staff, voice, notes: []}
      lines.set(`${staff}/${voice}`, line)
      const start = offset + (facts.notes.onset[note] ?? 0) / ticks
      line.notes.push({
        measure,
        start,
        end: start + (facts.notes.duration[note] ?? 0) / ticks,
        sounding: soundingAt(facts, note),
        chord: (flags & NOTE.chord) !== 0,
        bound: (flags & (NOTE.slurred | NOTE.tiedTo)) !== 0,
        tiedFrom: (flags & NOTE.tiedFrom) !== 0,
      })
    }
    offset += (facts.lengths[measure] ?? 0) / ticks
  }
  return [...lines.values()]
}

/** Whether a part plays a pitched note in a measure; cues do not count. */
export function playsIn(facts: PartFacts, measure: number): boolean {
  return notesIn(facts, measure).some((note) => !((facts.notes.flags[note] ?? 0) & NOTE.cue))
}

/** Whether the measure has cues already. */
export function hasCues(facts: PartFacts, measure: number): boolean {
  return notesIn(facts, measure).some((note) => (facts.notes.flags[note] ?? 0) & NOTE.cue)
}

function notesIn({firstNote, notes}: PartFacts, measure: number): number[] {
  const first = firstNote[measure] ?? notes.count
  const end = firstNote[measure + 1] ?? notes.count
  return Array.from({length: end - first}, (_, index) => first + index)
}

/** How long a part has a measure. */
export function quartersOf({lengths, ticks}: PartFacts, measure: number): number {
  return (lengths[measure] ?? 0) / (ticks[measure] ?? 1)
}
