import type {Report} from '../diagnostic.ts'
import type {Instrument} from '../instruments/instrument.ts'
import type {ScorePart} from '../musicxml/header.ts'
import {ORDER} from '../musicxml/order.ts'
import type {Identity} from '../plan/plan.ts'
import {printElement, element as create} from '../xml/build.ts'
import {attributeValue, child, childrenNamed} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {insertChild, removeElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'

/** Every instrument that the part lists becomes the new one, but for those that play unpitched notes. */
export function* editInstruments(
  text: string,
  part: ScorePart,
  wanted: Identity,
  report: Report,
): Iterable<Edit> {
  const listed = childrenNamed(part.element, 'score-instrument')
  const midis = childrenNamed(part.element, 'midi-instrument')
  const midiOf = (instrument: Element): Element | undefined =>
    midis.find((each) => attributeValue(each, 'id') === attributeValue(instrument, 'id'))
  const pitched = listed.filter((each) => {
    const midi = midiOf(each)
    return !midi || !child(midi, 'midi-unpitched')
  })
  const renamed = wanted.instrument ? pitched : pitched.slice(0, 1)
  for (const each of renamed) {
    yield* editInstrument(text, each, wanted)
    const midi = midiOf(each)
    if (midi) yield* editMidi(text, midi, wanted, {adds: true})
  }
  if (listed.length < 2) return
  const kept = listed.length - renamed.length
  report({
    code: 'identity/other-instruments',
    severity: 'warning',
    message:
      `the part lists ${listed.length} instruments; ` +
      (kept === 0 ? 'all become the new one' : `${kept} keep their names and sounds`),
    at: {part: part.id},
    actual: part.instruments.map(({name}) => name).join(', '),
  })
}

function* editInstrument(text: string, element: Element, wanted: Identity): Iterable<Edit> {
  const name = child(element, 'instrument-name')
  if (name) yield setText(name, wanted.name)
  const abbreviation = child(element, 'instrument-abbreviation')
  if (abbreviation) yield setText(abbreviation, wanted.abbreviation)
  if (wanted.instrument) yield* editSound(text, element, wanted.instrument, {adds: true})
  else {
    const virtual = child(element, 'virtual-instrument')
    if (virtual) yield removeElement(text, virtual)
  }
}

/** The standard sound of a `score-instrument` or an `instrument-change`; `adds` one where there is none. */
export function* editSound(
  text: string,
  element: Element,
  instrument: Instrument,
  {adds}: {readonly adds: boolean},
): Iterable<Edit> {
  const virtual = child(element, 'virtual-instrument')
  if (virtual) yield removeElement(text, virtual)
  const sound = child(element, 'instrument-sound')
  if (sound) yield setText(sound, instrument.sound)
  else if (adds) {
    const created = create('instrument-sound', instrument.sound)
    const kept = {...element, children: element.children.filter((each) => each !== virtual)}
    yield insertChild(text, kept, 'instrument-sound', ORDER['score-instrument'], (margin, indent) =>
      printElement(created, margin, indent),
    )
  }
}

/** The General MIDI program and its name; `adds` a program where there is none. */
export function* editMidi(
  text: string,
  midi: Element,
  {instrument, language}: Identity,
  {adds}: {readonly adds: boolean},
): Iterable<Edit> {
  if (instrument?.midiProgram === undefined) return
  const program = child(midi, 'midi-program')
  const name = child(midi, 'midi-name')
  if (name) yield setText(name, instrument.labels[language].name)
  if (program) yield setText(program, String(instrument.midiProgram))
  else if (adds) {
    const created = create('midi-program', instrument.midiProgram)
    yield insertChild(text, midi, 'midi-program', ORDER['midi-instrument'], (margin, indent) =>
      printElement(created, margin, indent),
    )
  }
}
