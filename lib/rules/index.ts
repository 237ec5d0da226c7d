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
