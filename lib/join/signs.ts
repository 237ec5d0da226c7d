import type {Measure, Note} from '../musicxml/measure.ts'
import {ORDER} from '../musicxml/order.ts'
import {accidentalFor} from '../staff/accidental-sign.ts'
import {whereNeeded} from '../staff/signs.ts'
import {stepsAbove} from '../pitch/pitch.ts'
import {insertChild} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {child} from '../xml/element.ts'

/**
 * The accidentals that a measure needs because music of two parts now stands in it; notes that went without before
 * (`host`) go on doing so.
 */
export function missingSigns(joined: Measure, host: Measure): Edit[] {
  const withheld = new Set(lacking(host).map((note) => keyOf(note, host)))
  return lacking(joined)
    .filter((note) => !withheld.has(keyOf(note, joined)))
    .flatMap((note): Edit[] => {
      const sign = note.written && accidentalFor(note.written.alter)
      if (sign === undefined) return []
      const print = (): string => `<accidental>${sign}</accidental>`
      return [insertChild(joined.text, note.element, 'accidental', ORDER.note, print)]
    })
}

/** The notes of a measure that need an accidental and have none. */
function lacking(measure: Measure): Note[] {
  const staves = new Set(measure.notes.map(({staff}) => staff))
  return [...staves].flatMap((staff) => {
    const notes = measure.notes
      .filter((note) => note.staff === staff && note.written)
      .toSorted(
        (a, b) => a.onset - b.onset || Number(b.grace) - Number(a.grace) || a.index - b.index,
      )
    const needed = whereNeeded(
      notes.flatMap(({onset, grace, written, state, tiedFrom}) =>
        written ? [{onset, grace, pitch: written, key: state.key, held: tiedFrom}] : [],
      ),
    )
    return notes.filter((note, index) => needed[index] && !child(note.element, 'accidental'))
  })
}

function keyOf({onset, grace, voice, written}: Note, {ticks}: Measure): string {
  return `${onset / ticks}/${grace}/${voice}/${written ? stepsAbove(written) : ''}`
}
