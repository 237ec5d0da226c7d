import type {Place} from '../diagnostic.ts'
import type {Pitch} from '../pitch/pitch.ts'
import type {Clef} from '../staff/clef.ts'
import {childNumber, parseElements} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {lineEndsBefore} from '../xml/scan.ts'
import {FIRST_STATE, applyChange} from '../staff/state.ts'
import type {Meter, StateChange, StaffState, Transposition} from '../staff/state.ts'
import type {Context} from './context.ts'
import {readOctaveShifts, shiftsOf} from './octave-line.ts'
import type {OctaveLine, OctaveLines, OctaveShift, ShiftingDirection} from './octave-line.ts'
import {readChanges, readMeter} from './attributes.ts'
import {inOrder, resolve} from './in-force.ts'
import {readNote} from './note.ts'
import type {Draft} from './note.ts'
import type {Complain} from './read.ts'
import {ticksOf, ticksPerQuarter} from './ticks.ts'

/** A measure of one part as it was cut from the score: its text and where it stood. */
export interface MeasureText {
  readonly part: string
  /** The number as printed. */
  readonly number: string
  readonly text: string
  /** The line of the score on which the text begins, from 1. */
  readonly line: number
}

/** Something in a measure with its onset in ticks from the start of the measure. */
export interface Positioned {
  readonly element: Element
  readonly onset: number
}

/** An `attributes` element: what it changes on which staff, and the uninterrupted run of music it stands in. */
export interface Attributes extends Positioned {
  readonly changes: readonly StateChange[]
  readonly run: number
}

/** A note, rest or unpitched note. Times are in ticks from the start of the measure. */
export interface Note extends Positioned {
  readonly index: number
  readonly kind: 'pitched' | 'rest' | 'unpitched'
  /** Absent for rests and unpitched notes, and where the pitch cannot be read. */
  readonly written?: Pitch
  /** The written pitch with the transposition in force. */
  readonly sounding?: Pitch
  readonly duration: number
  readonly staff: number
  readonly voice: string
  readonly chord: boolean
  readonly grace: boolean
  readonly cue: boolean
  readonly tiedFrom: boolean
  readonly tiedTo: boolean
  readonly run: number
  /** What is in force on the note's staff at its onset, by position in the score, not in the document. */
  readonly state: StaffState
  /** The octave line that the note is drawn under; its pitch is the true one all the same. */
  readonly octaveLine?: OctaveLine
}

/** One measure of one part as a musician sees it. `ticks` per quarter note is whole, and so is every time. */
export interface Measure extends MeasureText {
  /** Counts from 0. */
  readonly index: number
  readonly root: Element
  readonly ticks: number
  /** Ticks from the start to the furthest point that any voice reaches. */
  readonly length: number
  readonly meter: Meter
  readonly notes: readonly Note[]
  readonly attributes: readonly Attributes[]
  /** Directions, harmonies, figured bass, barlines and whatever else stands between the notes. */
  readonly others: readonly Positioned[]
  /** Octave lines that begin, go on and end here, in the order of their onsets. */
  readonly octaveShifts: readonly OctaveShift[]
  /** The octave lines that are open at the end of the measure. */
  readonly octaveLines: OctaveLines
  /** What is in force at the start of the measure, before anything in it. */
  readonly context: Context
}

/** Overrides what the file declares: the transposition of a note that stands in a clef. */
export type Reading = (clef: Clef, declared: Transposition) => Transposition

/** What a reader of measures may be given besides the text. */
export interface MeasureOptions {
  readonly reading?: Reading | undefined
  readonly complain?: Complain | undefined
  /** Durations are known to be decimal: ticks are made fine enough. */
  readonly decimals?: boolean
}

const SILENT: Complain = () => {}

/** Reads one measure. Throws `SyntaxError` when its tags do not nest. */
export function readMeasure(
  source: MeasureText,
  context: Context,
  options: MeasureOptions = {},
): Measure {
  const {text} = source
  const root = parseElements(text)[0]
  if (!root) throw new SyntaxError('a measure without content')
  const ticks = ticksPerQuarter(text, root, context.divisions, options)
  const complain = options.complain ?? SILENT
  const notes: Draft[] = []
  const attributes: Attributes[] = []
  const others: Positioned[] = []
  const shifting: ShiftingDirection[] = []
  const mayShift = text.includes('<octave-shift')
  let scale = ticks / context.divisions
  let meter = context.meter
  let onset = 0
  let chordOnset = 0
  let run = 0
  let length = 0
  let whole = true
  for (const element of root.children) {
    switch (element.name) {
      case 'note': {
        const note = readNote(text, element, notes.length, scale, run)
        whole &&= Number.isInteger(note.duration)
        note.onset = note.chord ? chordOnset : onset
        if (!note.chord) {
          chordOnset = onset
          if (!note.grace) onset += note.duration
        }
        length = Math.max(length, note.onset + note.duration)
        notes.push(note)
        break
      }
      case 'backup':
        onset = Math.max(0, onset - durationOf(text, element, scale))
        run++
        break
      case 'forward':
        onset += durationOf(text, element, scale)
        length = Math.max(length, onset)
        run++
        break
      case 'attributes': {
        const divisions = childNumber(text, element, 'divisions')
        if (divisions !== undefined && divisions > 0) scale = ticks / divisions
        meter = readMeter(text, element) ?? meter
        attributes.push({element, onset, run, changes: readChanges(text, element, complain)})
        break
      }
      default:
        others.push({element, onset})
        if (mayShift && element.name === 'direction' && shiftsOf(element).length > 0) {
          const offset = childNumber(text, element, 'offset') ?? 0
          shifting.push({element, onset: onset + Math.round(offset * scale)})
        }
    }
  }
  whole &&= Number.isInteger(onset) && Number.isInteger(length)
  if (!whole && !options.decimals) return readMeasure(source, context, {...options, decimals: true})
  if (!whole) for (const note of notes) roundTimes(note)
  const {shifts, after} = mayShift
    ? readOctaveShifts(text, shifting, context.octaveLines)
    : {shifts: [], after: context.octaveLines}
  length = Math.round(Math.max(length, onset))
  // Written out: to spread the source and to add to that takes as long as all the rest.
  const read: Measure = {
    part: source.part,
    number: source.number,
    text,
    line: source.line,
    index: context.measureIndex,
    root,
    ticks,
    length,
    meter,
    notes,
    attributes,
    others,
    octaveShifts: shifts,
    octaveLines: after,
    context,
  }
  for (const note of notes) resolve(note, read, options.reading)
  return read
}

/** Decimals beyond the sixth place are an encoder's noise. */
function roundTimes(note: Draft): void {
  note.onset = Math.round(note.onset)
  note.duration = Math.round(note.duration)
}

/** The context after a measure. Changes apply in the order of their onsets. */
export function advance(context: Context, measure: Measure): Context {
  if (measure.attributes.length === 0)
    return {
      part: context.part,
      measureIndex: context.measureIndex + 1,
      divisions: context.divisions,
      staves: context.staves,
      everyStaff: context.everyStaff,
      meter: measure.meter,
      octaveLines: measure.octaveLines,
    }
  let {everyStaff, divisions} = context
  const staves = [...context.staves]
  // Divisions count for what follows in the document, wherever in the measure that stands.
  for (const {element} of measure.attributes)
    divisions = childNumber(measure.text, element, 'divisions') || divisions
  for (const attributes of inOrder(measure.attributes)) {
    const count = childNumber(measure.text, attributes.element, 'staves') ?? 1
    while (staves.length < Math.min(count, 64)) staves.push(everyStaff)
    for (const {staff, change} of attributes.changes) {
      if (staff === 0) everyStaff = applyChange(everyStaff, change)
      while (staves.length < staff) staves.push(everyStaff)
      for (let each = 1; each <= staves.length; each++) {
        if (staff === 0 || staff === each)
          staves[each - 1] = applyChange(staves[each - 1] ?? FIRST_STATE, change)
      }
    }
  }
  return {
    part: context.part,
    measureIndex: context.measureIndex + 1,
    divisions,
    staves,
    everyStaff,
    meter: measure.meter,
    octaveLines: measure.octaveLines,
  }
}

/** Where something in a measure is, for a diagnostic. */
export function placeOf(measure: MeasureText, at?: {readonly element: Element} | Element): Place {
  const element = at && ('element' in at ? at.element : at)
  const line = measure.line + lineEndsBefore(measure.text, element?.start ?? 0)
  return {part: measure.part, measure: measure.number, line}
}

function durationOf(text: string, element: Element, scale: number): number {
  return ticksOf(childNumber(text, element, 'duration') ?? 0, scale)
}
