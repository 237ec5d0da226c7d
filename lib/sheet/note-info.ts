import type {Measure, Note} from '../musicxml/measure.ts'
import {shown} from './compare.ts'
import type {NoteInfo} from './drawing.ts'
import type {NotePair, Step} from './match.ts'

/** One of the two parts while it is read. */
export type SideName = 'before' | 'after'
export const SIDES: readonly SideName[] = ['before', 'after']
export const LABELS = {before: 'Before', after: 'After'}

/** The pitched notes that show. */
export function drawnNotes({notes}: Measure): readonly Note[] {
  return notes.filter(
    ({written, element}) =>
      written && !element.attributes.some(({name, raw}) => name === 'print-object' && raw === 'no'),
  )
}

/** The id that a note has in the drawing. */
export function idOf(side: SideName, {index}: Step, note: Note): string {
  return `${side}-${index}-${note.index}`
}

/** What the page says of the notes of a pair of measures, by their ids in the drawing. */
export function infosOf(
  step: Step,
  pairs: readonly NotePair[],
  marks: ReadonlyMap<Note, NoteInfo['kind']>,
): ReadonlyMap<string, NoteInfo> {
  const names = new Map<Note, string>()
  for (const [index, pair] of pairs.entries())
    for (const note of [pair.before, pair.after]) names.set(note, `${step.index}.${index}`)
  const infos = new Map<string, NoteInfo>()
  for (const side of SIDES) {
    const measure = step[side]
    for (const note of measure?.notes ?? []) {
      if (!measure || !note.written) continue
      infos.set(idOf(side, step, note), {
        label: `${LABELS[side]}, measure ${measure.number}, beat ${beatOf(measure, note)}: written ${shown(note.written)}, sounds ${shown(note.sounding)}`,
        side,
        pair: names.get(note),
        kind: marks.get(note),
      })
    }
  }
  return infos
}

function beatOf({ticks, meter}: Measure, {onset}: Note): string {
  const beat = 1 + ((onset / ticks) * meter.beatType) / 4
  return String(Math.round(beat * 100) / 100)
}
