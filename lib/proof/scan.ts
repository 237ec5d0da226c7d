import {malformed, readBeatUnit, readClef, readDivisions, readSounding} from './attributes.ts'
import type {ClefInForce, Sounding} from './attributes.ts'
import type {Node, RawMeasure} from './document.ts'
import {difference, order, sum, ZERO} from './fraction.ts'
import type {Fraction} from './fraction.ts'
import {readDuration, readNote} from './note.ts'
import type {WrittenNote} from './note.ts'
import type {Change, Position} from './timeline.ts'

/** What one part carries from measure to measure. */
export interface Carried {
  readonly divisions: Fraction
  readonly beat: Fraction
  readonly soundings: readonly Change<Sounding>[]
  readonly clefs: readonly Change<ClefInForce>[]
}

export interface PlacedNote {
  readonly note: WrittenNote
  readonly at: Position
  /** Its place in a group of grace notes, from 0; a chord shares one. Undefined for a note that takes time. */
  readonly slot: number | undefined
}

export interface ScannedMeasure extends Carried {
  readonly notes: readonly PlacedNote[]
}

/**
 * Follows the time of a measure through its notes, backups and forwards. Divisions hold in document order, as they
 * measure what is written next; clefs and transpositions are only collected, with their place.
 */
export function scanMeasure(
  raw: RawMeasure,
  carried: Carried,
  concert: boolean,
  inkTies: boolean,
): ScannedMeasure {
  const notes: PlacedNote[] = []
  const soundings = [...carried.soundings]
  const clefs = [...carried.clefs]
  let {divisions} = carried
  let beat: Fraction | undefined
  let now = ZERO
  let run = 0
  /** Grace notes so far, by voice, since the voice's last note that took time. */
  let slots = new Map<string, number>()

  raw.content.forEach((node, nth) => {
    if (node.name === 'note') {
      const note = readNote(node, divisions, inkTies)
      const before = note.chord ? notes.at(-1) : undefined
      const slot = note.grace ? (before?.slot ?? slots.get(note.voice) ?? 0) : undefined
      slots = slots.set(note.voice, slot === undefined ? 0 : slot + 1)
      notes.push({note, slot, at: {onset: before ? before.at.onset : now, nth, run}})
      if (!note.chord) now = sum(now, note.duration)
      return
    }
    if (node.name === 'attributes') {
      const at = {onset: now, nth, run}
      divisions = readDivisions(node) ?? divisions
      beat ??= readBeatUnit(node)
      soundings.push(...changesIn(node, 'transpose', at, (one) => readSounding(one, concert)))
      // A clef that is only added for show, over a cue passage or beside another, is not the staff's.
      clefs.push(
        ...changesIn(node, 'clef', at, readClef, (one) => one.attributes['additional'] !== 'yes'),
      )
      return
    }
    const duration = readDuration(node, divisions)
    if (!duration) throw malformed(node, `<${node.name}> has no duration`)
    now = node.name === 'backup' ? notBefore(difference(now, duration)) : sum(now, duration)
    run++
    slots = new Map()
  })
  return {notes, soundings, clefs, divisions, beat: beat ?? carried.beat}
}

/** Some files go back further than the measure's start: it is as far as music goes. */
function notBefore(time: Fraction): Fraction {
  return order(time, ZERO) < 0 ? ZERO : time
}

/** A transposition without `number` is for every staff; a clef without one is for the first. */
function changesIn<T>(
  attributes: Node,
  name: 'transpose' | 'clef',
  at: Position,
  read: (node: Node) => T,
  counts: (node: Node) => boolean = () => true,
): readonly Change<T>[] {
  return attributes.children
    .filter((node) => node.name === name && counts(node))
    .map((node) => ({
      at,
      staff: node.attributes['number']?.trim() ?? (name === 'clef' ? '1' : undefined),
      value: read(node),
    }))
}
