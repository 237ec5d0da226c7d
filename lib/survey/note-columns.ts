import type {Measure, Note} from '../musicxml/measure.ts'
import {attributeValue, child, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'

/** What a note is besides its pitch, as bits of `NoteColumns.flags`. */
export const NOTE = {
  grace: 1,
  cue: 2,
  chord: 4,
  tiedFrom: 8,
  tiedTo: 16,
  /** A slur goes on to the next note. */
  slurred: 32,
  /** A beam goes on to the next note. */
  beamed: 64,
  /** A breath mark, caesura or fermata ends the phrase here. */
  breath: 128,
  /** The stem of the note, or of its chord, is printed. */
  stemmed: 256,
} as const

/** The pitched notes of a part in document order, a number a column: 20 bytes a note. */
export interface NoteColumns {
  readonly count: number
  /** Ticks from the start of the measure; `ticks` of the measure make a quarter. */
  readonly onset: Uint32Array
  readonly duration: Uint32Array
  /** Written steps above C0, and written alteration in hundredths of a semitone. */
  readonly steps: Int16Array
  readonly alter: Int16Array
  /** Index into `PartFacts.states`: the staff, and what is in force there. */
  readonly state: Uint16Array
  readonly flags: Uint16Array
  /** Index into `PartFacts.voices`. */
  readonly voice: Uint8Array
  /** 0, or the note stands under the octave line before: 1 is the first of `PartFacts.octaveLines`. */
  readonly octaveLine: Uint16Array
}

/** What a note is, as bits. `slurs` holds the slurs that are open, from note to note. */
export function readFlags(note: Note, measure: Measure, slurs: Set<string>): number {
  let flags = 0
  if (note.grace) flags |= NOTE.grace
  if (note.cue) flags |= NOTE.cue
  if (note.chord) flags |= NOTE.chord
  if (note.tiedFrom) flags |= NOTE.tiedFrom
  if (note.tiedTo) flags |= NOTE.tiedTo
  for (const each of note.element.children) {
    if (each.name === 'stem') flags |= NOTE.stemmed
    else if (each.name === 'beam' && flags < 0xffff && attributeValue(each, 'number') !== '2') {
      const type = textOf(measure.text, each)
      if (type === 'begin' || type === 'continue') flags |= NOTE.beamed
    } else if (each.name === 'notations') flags |= readNotations(each, slurs)
  }
  if (slurs.size > 0) flags |= NOTE.slurred
  return flags
}

function readNotations(notations: Element, slurs: Set<string>): number {
  let flags = 0
  for (const each of notations.children) {
    if (each.name === 'slur') {
      const key = attributeValue(each, 'number') ?? '1'
      const type = attributeValue(each, 'type')
      if (type === 'start') slurs.add(key)
      else if (type === 'stop') slurs.delete(key)
    } else if (each.name === 'fermata') flags |= NOTE.breath
    else if (
      each.name === 'articulations' &&
      (child(each, 'breath-mark') || child(each, 'caesura'))
    ) {
      flags |= NOTE.breath
    }
  }
  return flags
}

/** Columns without notes, with room for some. */
export function emptyColumns(size: number): NoteColumns {
  return {
    count: 0,
    onset: new Uint32Array(size),
    duration: new Uint32Array(size),
    steps: new Int16Array(size),
    alter: new Int16Array(size),
    state: new Uint16Array(size),
    flags: new Uint16Array(size),
    voice: new Uint8Array(size),
    octaveLine: new Uint16Array(size),
  }
}

/** The same columns with twice the room. */
export function grown(notes: NoteColumns): NoteColumns {
  const larger = emptyColumns(notes.onset.length * 2)
  larger.onset.set(notes.onset)
  larger.duration.set(notes.duration)
  larger.steps.set(notes.steps)
  larger.alter.set(notes.alter)
  larger.state.set(notes.state)
  larger.flags.set(notes.flags)
  larger.voice.set(notes.voice)
  larger.octaveLine.set(notes.octaveLine)
  return larger
}
