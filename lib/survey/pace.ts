import {attributeValue, child, childText} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'

/** Quarters in a beat unit of a metronome mark (MusicXML 4.0, `note-type-value`). */
const QUARTERS: Readonly<Record<string, number>> = {
  breve: 8,
  whole: 4,
  half: 2,
  quarter: 1,
  eighth: 0.5,
  '16th': 0.25,
}

/** The tempo that a `direction` or `sound` sets, in quarters a minute; the mark counts where no sound says it. */
export function readTempo(text: string, element: Element): number | undefined {
  const sound = element.name === 'sound' ? element : child(element, 'sound')
  const said = Number(sound && attributeValue(sound, 'tempo'))
  if (said > 0) return said
  for (const type of element.children) {
    const metronome = type.name === 'direction-type' ? child(type, 'metronome') : undefined
    if (!metronome) continue
    const unit = QUARTERS[childText(text, metronome, 'beat-unit') ?? '']
    const beats = Number.parseFloat(childText(text, metronome, 'per-minute') ?? '')
    if (unit === undefined || !(beats > 0)) continue
    return beats * unit * (child(metronome, 'beat-unit-dot') ? 1.5 : 1)
  }
  return undefined
}

/** Where a `barline` ends a section of the music (a double bar, a repeat, the end): before or after its measure. */
export function readJoint(text: string, element: Element): 'before' | 'after' | undefined {
  const style = childText(text, element, 'bar-style') ?? ''
  const ends = child(element, 'repeat') || /^(light|heavy)-(light|heavy)$/.test(style)
  if (!ends) return undefined
  return attributeValue(element, 'location') === 'left' ? 'before' : 'after'
}
