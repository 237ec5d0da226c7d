import {placeOf} from '../musicxml/measure.ts'
import type {Measure, Positioned} from '../musicxml/measure.ts'
import type {PartPlan} from '../plan/plan.ts'
import type {Element} from '../xml/element.ts'
import {attribute, attributeValue, child, childrenNamed} from '../xml/element.ts'
import {removeAttribute} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import type {Report} from '../diagnostic.ts'
import {removedOctaveShifts} from './octave-line.ts'
import {remarksIn, removeMusic} from './rule.ts'
import type {Rule} from './rule.ts'
import {directionTechniques, PLAYBACK} from './technique-direction.ts'

/**
 * Takes out of directions what the target's player cannot follow or does not read. They share the `direction` element,
 * so that one rule empties and removes it; what else it says stays, and so does its `sound`.
 */
export const direction: Rule = {
  name: 'direction',
  owns: [
    'direction',
    'direction-type',
    'octave-shift',
    'words',
    'pedal',
    'harp-pedals',
    'damp',
    'damp-all',
    'string-mute',
    'scordatura',
    'accordion-registration',
    'percussion',
    ...PLAYBACK.map(({name}) => `sound@${name}`),
  ],
  *rewrite(measure, plan, report) {
    const shifts = removedOctaveShifts(measure, plan, report)
    for (const each of measure.others) {
      if (each.element.name === 'direction')
        yield* editDirection(measure, plan, each, shifts, report)
      else if (each.element.name === 'sound') yield* editSound(measure, plan, each.element, report)
    }
  },
}

function* editDirection(
  measure: Measure,
  plan: PartPlan,
  at: Positioned,
  shifts: ReadonlySet<Element>,
  report: Report,
): Iterable<Edit> {
  const {element} = at
  const types = childrenNamed(element, 'direction-type')
  const changes = directionTechniques(measure, plan, at, report)
  const gone = new Set([
    ...changes.removed,
    ...types.flatMap(({children}) => children.filter((each) => shifts.has(each))),
  ])
  const sound = child(element, 'sound')
  const silenced = sound && isSilenced(sound, plan)
  const goneTypes = types.filter(
    ({children}) => children.length > 0 && children.every((each) => gone.has(each)),
  )
  if (types.length > 0 && goneTypes.length === types.length) {
    const kept = element.children.filter(
      ({name}) => name === 'listening' || (name === 'sound' && !silenced),
    )
    yield* unwrap(measure.text, element, kept)
    if (sound && !silenced) yield* playbackEdits(sound, plan)
    return
  }
  yield* changes.edits
  for (const type of types) {
    if (goneTypes.includes(type)) yield removeMusic(measure.text, type)
    else for (const each of type.children) if (gone.has(each)) yield removeMusic(measure.text, each)
  }
  if (!sound) return
  if (silenced) yield removeMusic(measure.text, sound)
  else yield* playbackEdits(sound, plan)
}

/** A `sound` outside directions: told, since no mark beside it is. */
function* editSound(
  measure: Measure,
  plan: PartPlan,
  sound: Element,
  report: Report,
): Iterable<Edit> {
  const gone = playbackOf(sound, plan)
  if (gone.length === 0) return
  report({
    code: 'technique/removed',
    severity: 'info',
    message: `the playback instruction ${gone.map(({name}) => name).join(', ')} is left out`,
    at: placeOf(measure, sound),
  })
  if (isSilenced(sound, plan)) yield removeMusic(measure.text, sound)
  else yield* playbackEdits(sound, plan)
}

/** Removes a direction but for some children, which may stand in a measure by themselves. */
function* unwrap(text: string, element: Element, kept: readonly Element[]): Iterable<Edit> {
  if (kept.length === 0) {
    yield removeMusic(text, element)
    return
  }
  let from = element.start
  for (const each of kept) {
    yield {start: from, end: each.start, text: remarksIn(text.slice(from, each.start))}
    from = each.end
  }
  yield {start: from, end: element.end, text: remarksIn(text.slice(from, element.end))}
}

function playbackOf(sound: Element, plan: PartPlan) {
  const {techniques} = plan
  if (!techniques || techniques.policy === 'keep') return []
  return PLAYBACK.filter(({name, isFollowed}) => attribute(sound, name) && !isFollowed(plan))
}

function* playbackEdits(sound: Element, plan: PartPlan): Iterable<Edit> {
  for (const {name} of playbackOf(sound, plan)) {
    const found = attribute(sound, name)
    if (found) yield removeAttribute(found)
  }
}

/** Whether nothing is left of a `sound`. */
function isSilenced(sound: Element, plan: PartPlan): boolean {
  const gone = playbackOf(sound, plan)
  return (
    gone.length > 0 &&
    sound.children.length === 0 &&
    sound.attributes.every(({name}) => name === 'id' || gone.some((each) => each.name === name)) &&
    attributeValue(sound, 'id') === undefined
  )
}
