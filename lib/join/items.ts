import type {Measure, Note} from '../musicxml/measure.ts'
import {stepsAbove} from '../pitch/pitch.ts'
import {element as create, printElement} from '../xml/build.ts'
import {attributeValue, childNumber} from '../xml/element.ts'
import {printGuestDirection} from './guest-direction.ts'
import {printGuestNote} from './guest-note.ts'
import type {Passage} from './passage.ts'

/** What of a passage is open from measure to measure. */
export interface PassageState {
  readonly slurs: Set<string>
  readonly wedges: Set<string>
  labelled: boolean
  /** Which way the stems go, all of them, of a passage that stands beside rests. */
  stem?: 'up' | 'down'
}

/** What a passage has in one measure: the guest's measure as the host's player reads it, and the part of it that is meant. */
export interface Piece {
  readonly passage: Passage
  readonly guest: Measure
  /** In quarters from the start of the measure; `to` may be beyond its end. */
  readonly from: number
  readonly to: number
  readonly state: PassageState
}

/** How the host wants things printed. */
export interface HostStyle {
  readonly voice: string
  readonly staff: number | undefined
  readonly divisions: number
  /** Which way the guest's stems go, where they may not go as its own player has them. */
  readonly stem?: 'up' | 'down' | undefined
  /** White space before a child of the measure, and the step by which the file indents. */
  readonly margin: string
  readonly indent: string
}

/** Something of the guest that goes into the host. Times are in quarters. */
export interface Item {
  readonly kind: 'note' | 'rest' | 'direction'
  readonly at: number
  readonly until: number
  /** Notes of a chord after its first take no time of their own. */
  readonly chord: boolean
  /** Of a note: written steps above C0. */
  readonly height?: number
  /** `at`: where it is put, which for a direction may be before or after its own place. */
  print(style: HostStyle, at: number): string
}

/** One voice of a piece. */
export interface Strand {
  readonly piece: Piece
  readonly items: readonly Item[]
  /** In place of the host's rests, if that can be; else in a voice of its own. */
  readonly inPlace: boolean
}

/**
 * The guest's items of one voice in a piece, in the order of the document; its rests also outside of the piece. What the guest
 * itself only reads is not its music.
 */
export function itemsOf(piece: Piece, line: {readonly staff: number; readonly voice: string}) {
  const {guest, passage, from, to} = piece
  const silent = passage.manner === 'cue'
  const own = guest.notes.filter(
    (note) =>
      note.staff === line.staff &&
      note.voice === line.voice &&
      !note.cue &&
      !(silent && isHidden(note)),
  )
  const isInside = (note: Note): boolean => {
    const at = note.onset / guest.ticks
    return note.kind !== 'rest' && at >= from && at < to
  }
  const shown = own.filter(isInside)
  // Where a file names no voices, the last of the document need not be the last in time.
  const attacks = shown.flatMap(({kind, onset}) => (kind === 'pitched' ? onset : []))
  const [first, last] = [Math.min(...attacks), Math.max(...attacks)]
  const isFirst = passage.from.measure === guest.index
  const isLast = isLastMeasure(piece)
  const printed = own
    .filter((note) => note.kind === 'rest' || shown.includes(note))
    .map((note, index, all): Item => {
      const at = note.onset / guest.ticks
      const chord = note.chord && isWith(note, all[index - 1])
      const duration = note.duration / guest.ticks
      return {
        kind: note.kind === 'rest' ? 'rest' : 'note',
        at,
        until: at + (chord ? 0 : duration),
        chord,
        ...(note.written && {height: stepsAbove(note.written)}),
        print: ({voice, staff, divisions, stem}) =>
          printGuestNote(guest, note, {
            manner: passage.manner,
            voice,
            staff,
            duration: duration * divisions,
            chord,
            stem,
            first: isFirst && note.onset === first,
            last: isLast && note.onset === last,
            slurs: piece.state.slurs,
          }),
      }
    })
  return {notes: printed, directions: directionsOf(piece, line.staff)}
}

/** Whether the note before is of the same chord: its first may have been left out. */
function isWith({onset, grace}: Note, before: Note | undefined): boolean {
  return before?.kind === 'pitched' && before.onset === onset && before.grace === grace
}

/** The voices of the guest that have notes in the piece, the one with most first. */
export function linesOf({guest, passage, from, to}: Piece) {
  const counts = new Map<string, {staff: number; voice: string; count: number}>()
  for (const {kind, staff, voice, onset, cue} of guest.notes) {
    const at = onset / guest.ticks
    if (kind === 'rest' || cue || at < from || at >= to) continue
    if (passage.line && (passage.line.staff !== staff || passage.line.voice !== voice)) continue
    const known = counts.get(`${staff}/${voice}`) ?? {staff, voice, count: 0}
    known.count++
    counts.set(`${staff}/${voice}`, known)
  }
  return [...counts.values()].toSorted((a, b) => b.count - a.count)
}

/** The words over the first note of a passage; `framed` where they are an order to the player. */
export function labelItem(text: string, at: number, framed: boolean): Item {
  const words = create('words', text, framed ? {enclosure: 'rectangle'} : undefined)
  return directionItem(at, ({voice, staff, margin, indent}) =>
    printElement(
      create(
        'direction',
        [
          create('direction-type', [words]),
          create('voice', voice),
          staff === undefined ? undefined : create('staff', staff),
        ],
        {placement: 'above'},
      ),
      margin,
      indent,
    ),
  )
}

/** The divisions of a measure, if it states them only at its beginning; those before it if it states none. */
export function divisionsAtStart(measure: Measure): number {
  for (const {element, onset} of measure.attributes) {
    const stated = childNumber(measure.text, element, 'divisions')
    if (stated !== undefined && stated > 0 && onset === 0) return stated
  }
  return measure.context.divisions
}

function isLastMeasure({passage, guest}: Piece): boolean {
  const {to} = passage
  return to.onset > 0 ? to.measure === guest.index : to.measure === guest.index + 1
}

function directionsOf(piece: Piece, staff: number): Item[] {
  const {guest, passage, from, to, state} = piece
  const scaled = divisionsAtStart(guest)
  const items = guest.others.flatMap((each): Item[] => {
    const at = each.onset / guest.ticks
    const own = childNumber(guest.text, each.element, 'staff') ?? 1
    if (at < from || at > to || own !== staff) return []
    const setting = {manner: passage.manner, wedges: state.wedges, scale: 1, shift: 0}
    const trial = printGuestDirection(guest, each, {...setting, voice: '1', staff: undefined})
    // At the very end of a passage stands only what ends there.
    if (trial === undefined || (at === to && !trial.includes('type="stop"'))) return []
    return [
      directionItem(at, ({voice, staff: host, divisions}, place) =>
        printGuestDirection(guest, each, {
          ...setting,
          wedges: new Set(ANY_WEDGE),
          voice,
          staff: host,
          scale: divisions / scaled,
          shift: (at - place) * divisions,
        }),
      ),
    ]
  })
  if (!isLastMeasure(piece)) return items
  const end = Math.min(to, guest.length / guest.ticks)
  const closing = [...state.wedges].map((number) => stopItem(number, end))
  state.wedges.clear()
  return [...items, ...closing]
}

/** A hairpin that would lead on beyond the passage ends with it. */
function stopItem(number: string, at: number): Item {
  const wedge = create('wedge', undefined, {number, type: 'stop'})
  return directionItem(at, ({voice, staff, margin, indent}) =>
    printElement(
      create('direction', [
        create('direction-type', [wedge]),
        create('voice', voice),
        staff === undefined ? undefined : create('staff', staff),
      ]),
      margin,
      indent,
    ),
  )
}

function directionItem(
  at: number,
  print: (style: HostStyle, at: number) => string | undefined,
): Item {
  return {
    kind: 'direction',
    at,
    until: at,
    chord: false,
    print: (style, place) => print(style, place) ?? '',
  }
}

/** Hairpins have been followed when they were chosen. */
const ANY_WEDGE = Array.from({length: 16}, (_, index) => String(index + 1))

function isHidden(note: Note): boolean {
  return attributeValue(note.element, 'print-object') === 'no'
}
