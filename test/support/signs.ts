import type {Measure, Note} from '../../lib/musicxml/measure.ts'
import {openScore, readMeasures} from '../../lib/renotate.ts'
import {sourceOf} from './bytes.ts'

/** What the printed signs mean (MusicXML 4.0, accidental-value), as far as they mean whole or quarter tones. */
const ALTERS: Readonly<Record<string, number>> = {
  sharp: 1,
  natural: 0,
  flat: -1,
  'double-sharp': 2,
  'sharp-sharp': 2,
  'flat-flat': -2,
  'natural-sharp': 1,
  'natural-flat': -1,
  'quarter-flat': -0.5,
  'quarter-sharp': 0.5,
  'three-quarters-flat': -1.5,
  'three-quarters-sharp': 1.5,
  'triple-sharp': 3,
  'triple-flat': -3,
}

/**
 * The notes that somebody who reads signatures and signs, and nothing else, would play wrong: a sign holds for the
 * measure, the octave and through a tie (Gould from memory; common practice). Written apart from the rule it judges.
 */
export async function misread(bytes: Uint8Array, part: string): Promise<string[]> {
  const score = await openScore(sourceOf(bytes))
  const wrong: string[] = []
  for await (const measure of readMeasures(
    score,
    (id) => id === part,
    undefined,
    () => {},
  )) {
    for (const staff of new Set(measure.notes.map((note) => note.staff)))
      wrong.push(...misreadIn(measure, staff))
  }
  return wrong
}

function misreadIn(measure: Measure, staff: number): string[] {
  const notes = measure.notes
    .filter((note) => note.staff === staff && note.written)
    .toSorted((a, b) => a.onset - b.onset || Number(b.grace) - Number(a.grace) || a.index - b.index)
  const held = new Map<string, number>()
  const wrong: string[] = []
  let key: unknown
  for (const [index, note] of notes.entries()) {
    const {written} = note
    if (!written) continue
    if (index > 0 && note.state.key !== key) held.clear()
    key = note.state.key
    const place = `${written.step}${written.octave}`
    const sign = signOf(measure, note)
    if (sign !== undefined) held.set(place, sign)
    // Tied from the note before, in sight or not: it sounds on.
    if (sign === undefined && note.tiedFrom) continue
    // A second voice in unison may leave its sign to the first.
    const read = sign ?? held.get(place) ?? keyAlter(note, written.step, written.octave)
    // Beyond three there is no sign: the rewriter says so.
    if (read !== written.alter && Math.abs(written.alter) <= 3)
      wrong.push(
        `${measure.number}/${staff} ${note.onset / measure.ticks} ${place} ${written.alter}`,
      )
  }
  return wrong
}

function signOf(measure: Measure, note: Note): number | undefined {
  const sign = note.element.children.find(({name}) => name === 'accidental')
  return sign && ALTERS[measure.text.slice(sign.contentStart, sign.contentEnd).trim()]
}

function keyAlter(note: Note, step: string, octave: number): number {
  const {key} = note.state
  if (!key) return 0
  if ('fifths' in key) {
    const sharps = 'FCGDAEB'.slice(0, Math.max(0, key.fifths))
    const flats = 'BEADGCF'.slice(0, Math.max(0, -key.fifths))
    return sharps.includes(step) ? 1 : flats.includes(step) ? -1 : 0
  }
  const own = key.alters.filter((sign) => sign.step === step)
  return (
    (own.find((sign) => sign.octave === octave) ?? own.find((sign) => sign.octave === undefined))
      ?.alter ?? 0
  )
}
