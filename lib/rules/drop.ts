import type {Note} from '../musicxml/measure.ts'
import {ORDER} from '../musicxml/order.ts'
import type {ChosenNotes} from '../plan/chosen-notes.ts'
import {childrenNamed} from '../xml/element.ts'
import {insertChild} from '../xml/edit.ts'
import {removeMusic} from './rule.ts'
import type {Rule} from './rule.ts'

/**
 * Turns notes that the player cannot reach into cues: they are seen, small, and not played. A cue has no tie that sounds
 * (MusicXML 4.0, complex type `note`); the curve stays, for it is ink.
 */
export const drop: Rule = {
  name: 'drop',
  owns: ['cue', 'tie'],
  *rewrite(measure, plan) {
    const {dropped} = plan
    if (!dropped) return
    const pitched = measure.notes.filter((note) => note.written)
    for (const [nth, note] of pitched.entries()) {
      if (note.cue || !isChosen(dropped, measure.index, nth)) continue
      yield insertChild(measure.text, note.element, 'cue', ORDER.note, () => '<cue/>')
      yield* removeTies(measure.text, note)
    }
  },
}

function* removeTies(text: string, {element}: Note) {
  for (const tie of childrenNamed(element, 'tie')) yield removeMusic(text, tie)
}

/** Whether the nth pitched note of a measure is one of them. */
function isChosen({firstNote, notes}: ChosenNotes, measure: number, nth: number): boolean {
  return notes.has((firstNote[measure] ?? 0) + nth)
}
