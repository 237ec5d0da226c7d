import type {Meter, StateChange} from '../staff/state.ts'
import {attributeValue, child, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {isStaff, readClef, readForPart, readKey, readTransposition} from './read.ts'
import type {Complain} from './read.ts'

/** What an `attributes` element changes, staff by staff; staff 0 is every staff. */
export function readChanges(text: string, element: Element, complain: Complain): StateChange[] {
  const changes: StateChange[] = []
  for (const each of element.children) {
    const number = Number(attributeValue(each, 'number') ?? 0) || 0
    if (number !== 0 && !isStaff(number)) continue
    if (each.name === 'clef' && attributeValue(each, 'additional') !== 'yes') {
      const clef = readClef(text, each)
      if (clef) changes.push({staff: number || 1, change: {clef}})
      else
        complain(
          'clef/unreadable',
          'the clef has no sign that the standard knows and is passed over',
        )
    } else if (each.name === 'key') {
      const key = readKey(text, each)
      if (key) changes.push({staff: number, change: {key}})
    } else if (each.name === 'transpose') {
      changes.push({
        staff: number,
        change: {transposition: readTransposition(text, each, complain)},
      })
    } else if (each.name === 'for-part') {
      changes.push({staff: number, change: {forPart: readForPart(text, each, complain)}})
    }
  }
  return changes
}

/** The time signature of an `attributes` element; undefined where it has none that can be counted. */
export function readMeter(text: string, element: Element): Meter | undefined {
  const time = child(element, 'time')
  if (!time) return undefined
  let beats = 0
  let beatType = 0
  for (const each of time.children) {
    if (each.name === 'beats') {
      beats += textOf(text, each)
        .split('+')
        .reduce((sum, term) => sum + (Number(term) || 0), 0)
    } else if (each.name === 'beat-type') beatType ||= Number(textOf(text, each)) || 0
  }
  return beats > 0 && beatType > 0 ? {beats, beatType} : undefined
}
