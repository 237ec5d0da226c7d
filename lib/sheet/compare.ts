import type {Measure, Note, Reading} from '../musicxml/measure.ts'
import {readState, stateAt} from '../musicxml/in-force.ts'
import {describeInterval} from '../pitch/interval.ts'
import {describeKey} from '../pitch/key.ts'
import {formatPitch, midiOf} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import {describeClef, isPitched} from '../staff/clef.ts'
import type {StaffState} from '../staff/state.ts'
import {attributeValue, child} from '../xml/element.ts'
import type {Change, ChangeKind} from './change.ts'
import {pairNotes} from './match.ts'
import type {NotePair, Step} from './match.ts'

/** What both parts have in force, by staff and matter, as last told. */
export type Memory = ReadonlyMap<string, string>

/** What a measure has otherwise: changes to list, and the notes they fall on, by their index in the measure. */
export interface Comparison {
  readonly changes: readonly Change[]
  readonly memory: Memory
  readonly pairs: readonly NotePair[]
  readonly marks: ReadonlyMap<Note, ChangeKind>
}

/** Something that happened to a note at an onset, in quarters. */
export interface Happening {
  readonly kind: 'moved' | 'dropped' | 'added'
  readonly measure: number
  readonly onset: number
  /** Of `moved`. */
  readonly semitones?: number
}

/** Says why it was meant to happen; undefined when nobody says so. */
export type Intent = (happening: Happening) => string | undefined

type Words = (state: StaffState) => string

const MATTERS: readonly (readonly [kind: ChangeKind, words: Words])[] = [
  ['clef', ({clef}) => describeClef(clef)],
  ['key', ({key}) => (key ? describeKey(key) : 'no signature')],
  ['transposition', ({transposition}) => soundsWords(transposition.interval)],
]

/** `sounds a major ninth lower than written`, `sounds as written`. */
export function soundsWords(interval: Parameters<typeof describeInterval>[0]): string {
  return interval.diatonic === 0 && interval.chromatic === 0
    ? 'sounds as written'
    : `sounds ${describeInterval(interval)} than written`
}

/**
 * Compares two measures. `memory` is what the comparison of the measure before gave; `reading` is how BEFORE is read where
 * it is not to be believed.
 */
export function compareStep(
  step: Step,
  memory: Memory,
  intent: Intent,
  reading?: Reading,
): Comparison {
  const {before, after} = step
  const pairs = pairNotes(step)
  const marks = new Map<Note, ChangeKind>()
  const states =
    before && after ? compareStates(before, after, memory, reading) : {changes: [], memory}
  const changes = [...states.changes]
  const number = before?.number ?? after?.number ?? ''
  const mark = (kind: ChangeKind, notes: readonly Note[], words: Partial<Change>) => {
    for (const note of notes) marks.set(note, kind)
    if (notes.length > 0) changes.push({kind, measure: step.index, number, what: '', ...words})
  }
  const tell = (kind: ChangeKind, found: readonly NotePair[], words: Partial<Change>) =>
    mark(
      kind,
      found.flatMap((pair) => [pair.before, pair.after]),
      words,
    )
  const added = pairs.filter((pair) => isCautionary(pair.after) && !isCautionary(pair.before))
  tell('accidental', added, {what: `${count(added.length, 'courtesy accidental')} added`})
  const respelled = pairs.filter((pair) => isRespelled(pair))
  tell('spelling', respelled, {what: respellings(respelled)})
  for (const [semitones, group] of groupBy(pairs, offsetOf)) {
    if (semitones === 0) continue
    const reasons = groupBy(group, (pair) =>
      intent({kind: 'moved', measure: step.index, onset: onsetOf(pair.before, before), semitones}),
    )
    for (const [reason = UNREPORTED, found] of reasons) {
      const kind = reason === UNREPORTED ? 'difference' : 'octave'
      tell(kind, found, {moved: {notes: found.length, semitones}, reason})
    }
  }
  for (const [kind, measure, other] of [
    ['dropped', before, after],
    ['added', after, before],
  ] as const) {
    const paired = new Set(pairs.flatMap((pair) => [pair.before, pair.after]))
    const alone = measure && other ? measure.notes.filter((note) => isLone(note, paired)) : []
    const reasons = groupBy(alone, (note) =>
      intent({kind, measure: step.index, onset: onsetOf(note, measure)}),
    )
    for (const [reason = UNREPORTED, notes] of reasons) {
      const what = `${notes.map(({sounding}) => shown(sounding)).join(', ')} ${kind}`
      mark(reason === UNREPORTED ? 'difference' : kind, notes, {what, reason})
    }
  }
  return {changes, memory: states.memory, pairs, marks}
}

const UNREPORTED = 'not in any report'

function onsetOf({onset}: Note, measure: Measure | undefined): number {
  return onset / (measure?.ticks ?? 1)
}

function isLone(note: Note, paired: ReadonlySet<Note>): boolean {
  return note.sounding !== undefined && !paired.has(note)
}

function compareStates(
  before: Measure,
  after: Measure,
  memory: Memory,
  reading: Reading | undefined,
) {
  const changes: Change[] = []
  const next = new Map(memory)
  const staves = Math.max(before.context.staves.length, after.context.staves.length)
  const places = [
    ...new Set(
      [before, after].flatMap((measure) => [
        0,
        ...measure.attributes.map(({onset}) => onset / measure.ticks),
      ]),
    ),
  ].toSorted((a, b) => a - b)
  for (const quarters of places) {
    for (let staff = 1; staff <= staves; staff++) {
      const old = readState(stateAt(before, staff, quarters * before.ticks), reading)
      const now = stateAt(after, staff, quarters * after.ticks)
      if (!isPitched(old.clef) && !isPitched(now.clef)) continue
      for (const [kind, words] of MATTERS) {
        const [was, is] = [words(old), words(now)]
        const place = `${kind} ${staff}`
        const told = `${was} → ${is}`
        if (next.get(place) === told) continue
        const first = !next.has(place)
        const differed = !first && !isSame(next.get(place) ?? '')
        next.set(place, told)
        if (was === is && !differed) continue
        const what = was === is ? `${is}, as before` : told
        const which = staves > 1 ? `staff ${staff}: ` : ''
        changes.push({kind, measure: before.index, number: before.number, what: which + what})
      }
    }
  }
  return {changes, memory: next}
}

function isSame(told: string): boolean {
  const [was, is] = told.split(' → ')
  return was === is
}

function isCautionary({element}: Note): boolean {
  const sign = child(element, 'accidental')
  return (
    sign !== undefined &&
    ['cautionary', 'editorial', 'parentheses', 'bracket'].some(
      (name) => attributeValue(sign, name) === 'yes',
    )
  )
}

function offsetOf({before, after}: NotePair): number {
  return before.sounding && after.sounding ? midiOf(after.sounding) - midiOf(before.sounding) : 0
}

function isRespelled(pair: NotePair): boolean {
  const {before, after} = pair
  return offsetOf(pair) % 12 === 0 && before.sounding?.step !== after.sounding?.step
}

function respellings(pairs: readonly NotePair[]): string {
  const words = pairs.map(
    ({before, after}) => `sounding ${shown(before.sounding)} as ${shown(after.sounding)}`,
  )
  const all = [...new Set(words)]
  return all.length > 3 ? `${all.slice(0, 3).join(', ')} and more` : all.join(', ')
}

/** A pitch with its signs as printed: `E♭3`. */
export function shown(pitch: Pitch | undefined): string {
  if (!pitch) return ''
  return formatPitch(pitch).replace(
    /^([A-G])(b+|#+)/,
    (_, step: string, signs: string) =>
      step + (signs.startsWith('b') ? '♭' : '♯').repeat(signs.length),
  )
}

function groupBy<Key, Value>(
  list: readonly Value[],
  keyOf: (value: Value) => Key,
): ReadonlyMap<Key, readonly Value[]> {
  const groups = new Map<Key, Value[]>()
  for (const each of list) {
    const key = keyOf(each)
    groups.set(key, [...(groups.get(key) ?? []), each])
  }
  return groups
}

function count(number: number, what: string): string {
  return `${number} ${what}${number === 1 ? '' : 's'}`
}
