import type {Place} from '../diagnostic.ts'
import {transpose} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import type {Clef} from '../staff/clef.ts'
import {
  attributeValue,
  child,
  childNumber,
  childrenNamed,
  parseElements,
  textOf,
} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {FIRST_STATE, NO_TRANSPOSITION, applyChange} from '../staff/state.ts'
import type {Meter, StateChange, StaffState, Transposition} from '../staff/state.ts'
import {stateOf} from './context.ts'
import type {Context} from './context.ts'
import {octaveLineAt, readOctaveShifts, shiftsOf} from './octave-line.ts'
import type {OctaveLine, OctaveLines, OctaveShift, ShiftingDirection} from './octave-line.ts'
import {readClef, readForPart, readKey, readPitch, readTransposition} from './read.ts'
import type {Complain} from './read.ts'

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
  const ticks = ticksPerQuarter(text, root, context.divisions)
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
  for (const element of root.children) {
    switch (element.name) {
      case 'note': {
        const note = readNote(text, element, notes.length, scale, run)
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
  const {shifts, after} = mayShift
    ? readOctaveShifts(text, shifting, context.octaveLines)
    : {shifts: [], after: context.octaveLines}
  length = Math.max(length, onset)
  const read = {
    ...source,
    index: context.measureIndex,
    root,
    ticks,
    length,
    meter,
    attributes,
    others,
    octaveShifts: shifts,
    octaveLines: after,
    context,
  }
  for (const note of notes) resolve(note, read, options.reading)
  return {...read, notes}
}

/** The context after a measure. Changes apply in the order of their onsets. */
export function advance(context: Context, measure: Measure): Context {
  if (measure.attributes.length === 0)
    return {
      ...context,
      measureIndex: context.measureIndex + 1,
      meter: measure.meter,
      octaveLines: measure.octaveLines,
    }
  let {everyStaff, divisions} = context
  const staves = [...context.staves]
  for (const attributes of inOrder(measure.attributes)) {
    divisions = childNumber(measure.text, attributes.element, 'divisions') || divisions
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

/**
 * What is in force on a staff at an onset. `before` leaves out the changes that stand at that onset itself.
 */
export function stateAt(
  measure: Pick<Measure, 'context' | 'attributes'>,
  staff: number,
  onset: number,
  options: {readonly before?: boolean} = {},
): StaffState {
  let state = stateOf(measure.context, staff)
  for (const attributes of inOrder(measure.attributes)) {
    if (attributes.onset > onset || (options.before && attributes.onset === onset)) break
    state = changed(state, attributes, staff)
  }
  return state
}

/** A state as a reading takes it. */
export function readState(state: StaffState, reading: Reading | undefined): StaffState {
  return reading ? {...state, transposition: reading(state.clef, state.transposition)} : state
}

/** Where something in a measure is, for a diagnostic. */
export function placeOf(measure: MeasureText, at?: {readonly element: Element} | Element): Place {
  const element = at && ('element' in at ? at.element : at)
  const end = element?.start ?? 0
  let line = measure.line
  for (let i = measure.text.indexOf('\n'); i >= 0 && i < end; i = measure.text.indexOf('\n', i + 1))
    line++
  return {part: measure.part, measure: measure.number, line}
}

type Draft = {-readonly [Key in keyof Note]: Note[Key]}

function resolve(
  note: Draft,
  measure: Pick<Measure, 'context' | 'attributes' | 'octaveShifts'>,
  reading: Reading | undefined,
): void {
  let state = stateOf(measure.context, note.staff)
  if (measure.attributes.length > 0) {
    for (const attributes of inOrder(measure.attributes)) {
      if (!governs(attributes, note)) break
      state = changed(state, attributes, note.staff)
    }
  }
  state = readState(state, reading)
  note.state = state
  if (measure.octaveShifts.length > 0 || measure.context.octaveLines.open.length > 0) {
    const line = octaveLineAt(
      measure.context.octaveLines,
      measure.octaveShifts,
      note.staff,
      note.onset,
    )
    if (line) note.octaveLine = line
  }
  if (note.written) note.sounding = transpose(note.written, state.transposition.interval)
}

/**
 * A change governs the notes from its onset on. Grace notes at that very onset stand before it, unless the document
 * has them after it or in another run.
 */
function governs(attributes: Attributes, note: Note): boolean {
  if (attributes.onset !== note.onset) return attributes.onset < note.onset
  return !note.grace || attributes.run !== note.run || attributes.element.start < note.element.start
}

function changed(state: StaffState, attributes: Attributes, staff: number): StaffState {
  let result = state
  for (const each of attributes.changes) {
    if (each.staff === 0 || each.staff === staff) result = applyChange(result, each.change)
  }
  return result
}

function inOrder(attributes: readonly Attributes[]): readonly Attributes[] {
  return attributes.length < 2 ? attributes : attributes.toSorted((a, b) => a.onset - b.onset)
}

function readNote(
  text: string,
  element: Element,
  index: number,
  scale: number,
  run: number,
): Draft {
  const note: Draft = {
    element,
    onset: 0,
    index,
    kind: 'unpitched',
    duration: 0,
    staff: 1,
    voice: '1',
    chord: false,
    grace: false,
    cue: false,
    tiedFrom: false,
    tiedTo: false,
    run,
    state: {clef: FIRST_STATE.clef, transposition: NO_TRANSPOSITION},
  }
  let tie = false
  let notations: Element | undefined
  for (const each of element.children) {
    switch (each.name) {
      case 'pitch': {
        note.kind = 'pitched'
        const pitch = readPitch(text, each)
        if (pitch) note.written = pitch
        break
      }
      case 'rest':
        note.kind = 'rest'
        break
      case 'duration':
        note.duration = Math.round((Number(textOf(text, each)) || 0) * scale)
        break
      case 'chord':
        note.chord = true
        break
      case 'grace':
        note.grace = true
        break
      case 'cue':
        note.cue = true
        break
      case 'voice':
        note.voice = textOf(text, each)
        break
      case 'staff':
        note.staff = Number(textOf(text, each)) || 1
        break
      case 'tie':
        tie = true
        markTie(note, each)
        break
      case 'notations':
        notations ??= each
        break
      default:
    }
  }
  if (note.grace) note.duration = 0
  // Some encoders write only the ink of a tie: without `tie`, a `tied` counts.
  if (!tie && notations) for (const tied of childrenNamed(notations, 'tied')) markTie(note, tied)
  return note
}

function markTie(note: Draft, tie: Element): void {
  const type = attributeValue(tie, 'type')
  if (type === 'stop' || type === 'continue') note.tiedFrom = true
  if (type === 'start' || type === 'continue') note.tiedTo = true
}

function readChanges(text: string, element: Element, complain: Complain): StateChange[] {
  const changes: StateChange[] = []
  for (const each of element.children) {
    const number = Number(attributeValue(each, 'number') ?? 0) || 0
    if (each.name === 'clef' && attributeValue(each, 'additional') !== 'yes') {
      const clef = readClef(text, each)
      if (clef) changes.push({staff: number || 1, change: {clef}})
      else
        complain(
          'clef/unreadable',
          'the clef has no sign that the standard knows and is passed over',
        )
    } else if (each.name === 'key') {
      const key = readKey(text, each)
      if (key) changes.push({staff: number, change: {key}})
    } else if (each.name === 'transpose') {
      changes.push({
        staff: number,
        change: {transposition: readTransposition(text, each, complain)},
      })
    } else if (each.name === 'for-part') {
      changes.push({staff: number, change: {forPart: readForPart(text, each, complain)}})
    }
  }
  return changes
}

function readMeter(text: string, element: Element): Meter | undefined {
  const time = child(element, 'time')
  if (!time) return undefined
  let beats = 0
  let beatType = 0
  for (const each of time.children) {
    if (each.name === 'beats') {
      beats += textOf(text, each)
        .split('+')
        .reduce((sum, term) => sum + (Number(term) || 0), 0)
    } else if (each.name === 'beat-type') beatType ||= Number(textOf(text, each)) || 0
  }
  return beats > 0 && beatType > 0 ? {beats, beatType} : undefined
}

function durationOf(text: string, element: Element, scale: number): number {
  return Math.round((childNumber(text, element, 'duration') ?? 0) * scale)
}

/** The smallest whole number of ticks a quarter in which every duration of the measure is whole. */
function ticksPerQuarter(text: string, root: Element, divisions: number): number {
  const inForce = [divisions]
  let decimals = 0
  for (const each of root.children) {
    if (each.name === 'attributes') {
      const stated = childNumber(text, each, 'divisions')
      if (stated !== undefined && stated > 0) inForce.push(stated)
    }
  }
  // Durations and divisions may be decimal by the schema; nearly none are.
  if (text.includes('.')) {
    for (const each of root.children) {
      const raw = each.name === 'attributes' ? child(each, 'divisions') : child(each, 'duration')
      const point = raw ? /\.(\d*?)0*$/.exec(textOf(text, raw)) : undefined
      decimals = Math.max(decimals, Math.min(6, point?.[1]?.length ?? 0))
    }
  }
  for (const each of inForce) {
    if (!Number.isInteger(each))
      decimals = Math.max(decimals, Math.min(6, String(each).split('.')[1]?.length ?? 0))
  }
  const scale = 10 ** decimals
  return (
    inForce.map((each) => Math.max(1, Math.round(each * scale))).reduce(leastCommonMultiple) *
    (decimals > 0 ? scale : 1)
  )
}

function leastCommonMultiple(a: number, b: number): number {
  return (a / greatestCommonDivisor(a, b)) * b
}

export function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b)
}
