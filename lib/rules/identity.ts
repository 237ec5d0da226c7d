import type {Header, ScorePart} from '../musicxml/header.ts'
import {ORDER} from '../musicxml/order.ts'
import type {Identity} from '../plan/plan.ts'
import {printElement, element as create} from '../xml/build.ts'
import {attributeValue, child, childrenNamed, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {insertChild, removeElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import type {Rule} from './rule.ts'

/**
 * Names the part after its new instrument, as one unit: name, abbreviation, display forms, instrument name and
 * abbreviation, standard sound, MIDI program. A virtual instrument would go on sounding as the old one: it goes.
 */
export const identity: Rule = {
  name: 'identity',
  owns: [
    'part-name',
    'part-name-display',
    'part-abbreviation',
    'part-abbreviation-display',
    'instrument-name',
    'instrument-abbreviation',
    'instrument-sound',
    'virtual-instrument',
    'midi-name',
    'midi-program',
  ],
  *rewrite() {},
  *rewriteHeader(header, plan, report) {
    const part = header.parts.find(({id}) => id === plan.part)
    const {identity: wanted} = plan
    if (!part || !wanted) return
    yield* editNames(header, part, wanted)
    const instruments = childrenNamed(part.element, 'score-instrument')
    const [first] = instruments
    if (!first) return
    yield* editInstrument(header, first, part, wanted)
    if (instruments.length > 1) {
      report({
        code: 'identity/other-instruments',
        severity: 'warning',
        message: `the part lists ${instruments.length} instruments; only the first is renamed, the others keep their sound`,
        at: {part: plan.part},
      })
    }
  },
}

function* editNames({text}: Header, {element}: ScorePart, wanted: Identity): Iterable<Edit> {
  for (const [name, value] of [
    ['part-name', wanted.name],
    ['part-abbreviation', wanted.abbreviation],
  ] as const) {
    const found = child(element, name)
    if (found && textOf(text, found) !== value) yield setText(found, value)
    const display = child(element, `${name}-display`)
    if (display) yield removeElement(text, display)
  }
}

function* editInstrument(
  {text}: Header,
  element: Element,
  part: ScorePart,
  wanted: Identity,
): Iterable<Edit> {
  const name = child(element, 'instrument-name')
  if (name) yield setText(name, wanted.name)
  const abbreviation = child(element, 'instrument-abbreviation')
  if (abbreviation) yield setText(abbreviation, wanted.abbreviation)
  const virtual = child(element, 'virtual-instrument')
  if (virtual) yield removeElement(text, virtual)
  const {instrument} = wanted
  if (!instrument) return
  const sound = child(element, 'instrument-sound')
  if (sound) yield setText(sound, instrument.sound)
  else {
    const created = create('instrument-sound', instrument.sound)
    const kept = {...element, children: element.children.filter((each) => each !== virtual)}
    yield insertChild(text, kept, 'instrument-sound', ORDER['score-instrument'], (margin, indent) =>
      printElement(created, margin, indent),
    )
  }
  const id = attributeValue(element, 'id')
  const midi = childrenNamed(part.element, 'midi-instrument').find(
    (each) => attributeValue(each, 'id') === id,
  )
  if (!midi || instrument.midiProgram === undefined) return
  const program = child(midi, 'midi-program')
  const midiName = child(midi, 'midi-name')
  if (midiName) yield setText(midiName, instrument.labels.en.name)
  if (program) yield setText(program, String(instrument.midiProgram))
  else {
    const created = create('midi-program', instrument.midiProgram)
    yield insertChild(text, midi, 'midi-program', ORDER['midi-instrument'], (margin, indent) =>
      printElement(created, margin, indent),
    )
  }
}
