import type {Report} from '../diagnostic.ts'
import type {Measure} from '../musicxml/measure.ts'
import type {PartPlan} from '../plan/plan.ts'
import type {Edit} from '../xml/edit.ts'
import {accidental} from './accidental.ts'
import {attributes} from './attributes.ts'
import {curve} from './curve.ts'
import {direction} from './direction.ts'
import {drop} from './drop.ts'
import {figuredBass} from './figured-bass.ts'
import {harmony} from './harmony.ts'
import {identity} from './identity.ts'
import {layout} from './layout.ts'
import {ornament} from './ornament.ts'
import {pitch} from './pitch.ts'
import {position} from './position.ts'
import {rest} from './rest.ts'
import type {Rule} from './rule.ts'
import {targeting} from './rule.ts'
import {stem} from './stem.ts'
import {technique} from './technique.ts'

/** Every rule. The order is for the reader: the result does not depend on it. */
export const rules: readonly Rule[] = [
  identity,
  attributes,
  pitch,
  drop,
  accidental,
  rest,
  stem,
  position,
  curve,
  ornament,
  harmony,
  figuredBass,
  technique,
  direction,
  layout,
]

/** A function that gives what every rule wants changed in a measure of a part. */
export function editing(plan: PartPlan, report: Report): (measure: Measure) => Edit[] {
  const prepare = targeting(plan)
  return (measure) => {
    const prepared = prepare(measure)
    const edits: Edit[] = []
    for (const rule of rules)
      for (const edit of rule.rewrite(measure, prepared, report)) edits.push(edit)
    return edits
  }
}
