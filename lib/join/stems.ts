import {stateAt} from '../musicxml/in-force.ts'
import type {Measure} from '../musicxml/measure.ts'
import {stepsAbove} from '../pitch/pitch.ts'
import {bottomLine, isPitched, pitchAt} from '../staff/clef.ts'
import {replaceElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {child} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {isNone} from './guest-note.ts'
import type {Strand} from './items.ts'

/**
 * Which way the stems of a guest go that stands beside the host, whose stems go the other way: up, unless it lies lower; beside
 * rests away from the middle of the staff, the same for the whole passage (renotation-rules Q4).
 */
export function stemOf(host: Measure, beside: readonly Strand[]): 'up' | 'down' | undefined {
  const [first] = beside
  if (!first) return undefined
  const {passage, state} = first.piece
  const own = host.notes.flatMap(({written}) => (written ? [stepsAbove(written)] : []))
  const height = meanOf(heightsOf(first))
  if (own.length === 0) {
    state.stem ??= height >= bottomLine(stateAt(host, 1, 0).clef) + MIDDLE ? 'up' : 'down'
    return state.stem
  }
  const away = height - meanOf(own)
  if (away !== 0) return away > 0 ? 'up' : 'down'
  return passage.manner === 'played' ? 'down' : 'up'
}

/** Staff positions of the middle line, and of where a measure's rest hangs below it and above it. */
const MIDDLE = 4
const LOW_REST = 2
const HIGH_REST = 8

/** A measure's rest makes room for the cue beside it: it hangs on the side where there are no stems (Q3, Q4). */
export function restsAside(
  host: Measure,
  beside: readonly Strand[],
  stem: 'up' | 'down',
  isFilled: (element: Element) => boolean,
): Edit[] {
  const [only, another] = host.notes
  const heights = beside.flatMap(heightsOf)
  if (!only || another || only.kind !== 'rest' || heights.length === 0) return []
  if (isFilled(only.element)) return []
  const rest = child(only.element, 'rest')
  const {clef} = stateAt(host, only.staff, 0)
  if (!rest || !isPitched(clef)) return []
  const positions = heights.map((height) => height - bottomLine(clef))
  const free =
    stem === 'up'
      ? Math.min(LOW_REST, Math.min(...positions) - 3)
      : Math.max(HIGH_REST, Math.max(...positions) + 3)
  const {step, octave} = pitchAt(2 * Math.round(free / 2), clef)
  const text = `<display-step>${step}</display-step><display-octave>${octave}</display-octave>`
  const open = host.text.slice(rest.start, rest.start + '<rest'.length)
  const attributes = rest.attributes.map(({name, raw}) => ` ${name}="${raw}"`).join('')
  return [replaceElement(rest, `${open}${attributes}>${text}</rest>`)]
}

function heightsOf({items}: Strand): number[] {
  return items.flatMap(({height}) => height ?? [])
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length)
}

/** The host's stems, the other way than the guest's. */
export function stemsAgainst(
  host: Measure,
  guest: 'up' | 'down',
  isFilled: (element: Element) => boolean,
): Edit[] {
  return host.notes.flatMap(({kind, element}) => {
    const stem = kind === 'pitched' && !isFilled(element) ? child(element, 'stem') : undefined
    return stem && !isNone(host.text, stem) ? [setText(stem, guest === 'up' ? 'down' : 'up')] : []
  })
}
