import type {Report} from '../diagnostic.ts'
import {placeOf} from '../musicxml/measure.ts'
import type {Measure} from '../musicxml/measure.ts'
import type {OctaveShift} from '../musicxml/octave-line.ts'
import type {PartPlan} from '../plan/plan.ts'
import type {Element} from '../xml/element.ts'

/**
 * The octave lines of a measure that the target's player does not read: their beginnings, continuations and ends, also
 * of lines that lack one of them. The notes keep their pitch, which is the true one (renotation-rules O1 to O4).
 */
export function removedOctaveShifts(
  measure: Measure,
  plan: PartPlan,
  report: Report,
): ReadonlySet<Element> {
  const removed = new Set<Element>()
  for (const shift of measure.octaveShifts) {
    if (!isRemoved(shift, plan)) continue
    removed.add(shift.element)
    const {line, type} = shift
    if (!line) {
      report({
        code: 'octave-line/stray',
        severity: 'warning',
        message: `the ${type === 'stop' ? 'end' : 'continuation'} of an octave line that never began is left out`,
        at: placeOf(measure, shift.element),
      })
    } else if (type === 'start') {
      report({
        code: 'octave-line/removed',
        severity: 'info',
        message: `the octave line ${nameOf(line.steps)} is left out; the notes stand where they sound`,
        at: placeOf(measure, shift.element),
      })
    }
  }
  return removed
}

function isRemoved({line}: OctaveShift, plan: PartPlan): boolean {
  return line ? plan.octaveLines.removed.has(line.index) : plan.octaveLines.strays
}

function nameOf(steps: number): string {
  const size = Math.abs(steps) + 1
  return `${size}${steps < 0 ? (size === 8 ? 'va' : 'ma') : size === 8 ? 'vb' : 'mb'}`
}
