import type {Diagnostic} from '../diagnostic.ts'

/** What a change is about, in the order in which filters show them. */
export const CHANGE_KINDS = [
  'difference',
  'octave',
  'dropped',
  'added',
  'clef',
  'key',
  'transposition',
  'spelling',
  'accidental',
  'technique',
  'name',
  'doubt',
  'other',
] as const

export type ChangeKind = (typeof CHANGE_KINDS)[number]

/** One thing that the new part has otherwise than the old one, or that was said about it. */
export interface Change {
  readonly kind: ChangeKind
  /** Index of the measure, from 0. */
  readonly measure: number
  /** The number as printed. */
  readonly number: string
  /** What changed, as a clause: `bass clef → treble clef`. */
  readonly what: string
  /** Why, in the words of the report. */
  readonly reason?: string
  /** The printed number of the measure in which a change that goes on ends. */
  readonly until?: string
  /** Of notes that sound in another octave: how many, and how far away. */
  readonly moved?: {readonly notes: number; readonly semitones: number}
}

const KIND_BY_ROOM: Readonly<Record<string, ChangeKind>> = {
  fold: 'octave',
  clef: 'clef',
  key: 'key',
  transposition: 'transposition',
  pitch: 'spelling',
  accidental: 'accidental',
  ornament: 'accidental',
  technique: 'technique',
  harmony: 'technique',
  'octave-line': 'technique',
  identity: 'name',
  doubt: 'doubt',
  survey: 'transposition',
}

/** The kind of change that a diagnostic tells of, by the rule that its code begins with. */
export function kindOf({code}: Diagnostic): ChangeKind {
  const [room = '', what] = code.split('/')
  return what === 'doubt' ? 'doubt' : (KIND_BY_ROOM[room] ?? 'other')
}

/** All changes in the order of the score; what was seen in the parts gets its reason from what was reported there. */
export function withReasons(
  seen: readonly Change[],
  told: readonly Diagnostic[],
  indexOf: (number: string) => number,
): readonly Change[] {
  const reasons = new Map<string, Diagnostic[]>()
  for (const diagnostic of told) {
    const number = diagnostic.at?.measure
    const place = `${kindOf(diagnostic)} ${number === undefined ? 0 : indexOf(number)}`
    reasons.set(place, [...(reasons.get(place) ?? []), diagnostic])
  }
  const explained = seen.map((change) => {
    const place = `${change.kind} ${change.measure}`
    // What a measure's change of octave is for, its passage has said already.
    const found = reasons.get(place)
    if (!found) return change
    reasons.delete(place)
    return {...change, reason: change.reason ?? unique(found.map(sentenceOf)).join('; ')}
  })
  const alone = [...reasons].flatMap(([place, diagnostics]) =>
    unique(diagnostics.map(sentenceOf)).map((what) => ({
      kind: place.split(' ')[0] as ChangeKind,
      measure: Number(place.split(' ')[1]),
      number: diagnostics[0]?.at?.measure ?? '',
      what,
    })),
  )
  return [...explained, ...alone].toSorted(
    (a, b) => a.measure - b.measure || CHANGE_KINDS.indexOf(a.kind) - CHANGE_KINDS.indexOf(b.kind),
  )
}

/** Changes of octave that go on from measure to measure by one and the same intent, as one. */
export function joinMoves(changes: readonly Change[]): Change[] {
  const joined: Change[] = []
  for (const change of changes) {
    const {moved, reason} = change
    const at = moved
      ? joined.findLastIndex(
          (each) => each.reason === reason && each.moved?.semitones === moved.semitones,
        )
      : -1
    const last = joined[at]
    if (!last?.moved || !moved) {
      joined.push(moved ? {...change, what: moveWords(moved)} : change)
      continue
    }
    const both = {...moved, notes: last.moved.notes + moved.notes}
    joined[at] = {...last, until: change.number, moved: both, what: moveWords(both)}
  }
  return joined
}

/** `12 notes sound an octave higher`. */
function moveWords({notes, semitones}: NonNullable<Change['moved']>): string {
  return `${notes} ${notes === 1 ? 'note sounds' : 'notes sound'} ${distance(semitones)}`
}

/** `an octave higher`, `2 octaves lower`, `3 semitones lower`. */
function distance(semitones: number): string {
  const way = semitones > 0 ? 'higher' : 'lower'
  const size = Math.abs(semitones)
  if (size % 12 === 0) return size === 12 ? `an octave ${way}` : `${size / 12} octaves ${way}`
  return `${size} semitone${size === 1 ? '' : 's'} ${way}`
}

function sentenceOf({message, actual, expected}: Diagnostic): string {
  return actual !== undefined && expected !== undefined
    ? `${message} (${actual} → ${expected})`
    : message
}

function unique(list: readonly string[]): string[] {
  return [...new Set(list)]
}
