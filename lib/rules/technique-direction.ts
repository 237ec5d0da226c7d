import type {Diagnostic, Report} from '../diagnostic.ts'
import {canFollow, techniques as table} from '../instruments/technique.ts'
import type {Technique, TechniqueWord} from '../instruments/technique.ts'
import {playerOf} from '../instruments/player.ts'
import {placeOf} from '../musicxml/measure.ts'
import type {Measure, Positioned} from '../musicxml/measure.ts'
import type {PartPlan} from '../plan/plan.ts'
import type {Techniques} from '../plan/techniques.ts'
import {attributeValue, childNumber, encode, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {replaceElement, setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'

/** What is to happen to the content of a direction: children of its `direction-type`s that go, edits to those that stay. */
export interface DirectionChanges {
  readonly edits: readonly Edit[]
  readonly removed: readonly Element[]
}

/** Attributes of `sound` that play a technique, and whether the target's player can follow it. */
export const PLAYBACK: readonly {
  readonly name: string
  isFollowed(plan: PartPlan): boolean
}[] = [
  ['pizzicato', 'pizzicato'],
  ['damper-pedal', 'pedal'],
  ['sostenuto-pedal', 'pedal'],
  ['soft-pedal', 'soft-pedal'],
].map(([name = '', id = '']) => ({name, isFollowed: (plan) => follows(id, plan) !== 'no'}))

const NOTHING: DirectionChanges = {edits: [], removed: []}

/**
 * Marks and words of a direction that the target's player cannot follow: translated, left out or kept by the table of
 * techniques, and always told with what they said (renotation-rules, section 8).
 */
export function directionTechniques(
  measure: Measure,
  plan: PartPlan,
  at: Positioned,
  report: Report,
): DirectionChanges {
  const {techniques} = plan
  if (!techniques) return NOTHING
  const edits: Edit[] = []
  const removed: Element[] = []
  for (const type of at.element.children) {
    if (type.name !== 'direction-type') continue
    for (const each of type.children) {
      const change =
        each.name === 'words'
          ? changeWords(measure, plan, techniques, {...at, words: each}, report)
          : changeMark(measure, plan, techniques, each, report)
      if (change === 'remove') removed.push(each)
      else if (change) edits.push(change)
    }
  }
  return {edits, removed}
}

/** Whether the player for whom the part is made can follow a technique. */
export function follows(id: string, {identity, techniques}: PartPlan): 'yes' | 'no' | 'unknown' {
  return identity?.instrument ? canFollow(id, identity.instrument, techniques?.source) : 'yes'
}

/** Tells what became of a mark: `actual` is what it said, `expected` what it says now, if anything. */
export function told(
  technique: Technique,
  outcome: 'removed' | 'translated' | 'kept',
  from: string,
  to?: string,
): Diagnostic {
  const {remark} = technique
  const done = {
    removed: 'is left out: the player cannot follow it',
    translated: 'is translated: the player cannot follow it',
    kept: 'is kept, though the player may not be able to follow it',
  }[outcome]
  return {
    code: `technique/${outcome}`,
    severity: outcome === 'kept' || remark !== undefined ? 'warning' : 'info',
    message: `“${from}” ${done}${remark === undefined ? '' : `; ${remark}`}`,
    actual: from,
    ...(to !== undefined && {expected: to}),
  }
}

function changeMark(
  measure: Measure,
  plan: PartPlan,
  techniques: Techniques,
  element: Element,
  report: Report,
): Edit | 'remove' | undefined {
  const technique = table.get(element.name)
  const answer = technique && follows(element.name, plan)
  if (!technique || answer === 'yes') return undefined
  const place = placeOf(measure, element)
  const isMute = technique.otherwise === 'mute' && isBrass(plan)
  const type = attributeValue(element, 'type')
  const from = type === undefined ? element.name : `${element.name} ${type}`
  if (techniques.policy === 'keep' || answer === 'unknown' || technique.otherwise === 'keep') {
    if (type !== 'stop' && type !== 'continue' && type !== 'change')
      report({...told(technique, 'kept', from), at: place})
    return undefined
  }
  if (isMute) {
    const words = type === 'off' ? 'senza sord.' : 'con sord.'
    report({...told(technique, 'translated', from, words), at: place})
    return replaceElement(element, `<words>${encode(words)}</words>`)
  }
  // A pedal has a mark where it goes down, where it changes and where it comes up: told once.
  if (type !== 'stop' && type !== 'continue' && type !== 'change')
    report({...told(technique, 'removed', from), at: place})
  return 'remove'
}

function changeWords(
  measure: Measure,
  plan: PartPlan,
  techniques: Techniques,
  at: Positioned & {readonly words: Element},
  report: Report,
): Edit | 'remove' | undefined {
  const {words} = at
  const text = textOf(measure.text, words)
  const found = techniques.readWords(text).filter(({id}) => follows(id, plan) !== 'yes')
  if (found.length === 0) return changeKey(measure, plan, techniques, words, text, report)
  const staff = childNumber(measure.text, at.element, 'staff') ?? 1
  const place = {measure: measure.index, onset: at.onset / measure.ticks}
  const endsPizzicato = techniques.endsPizzicato(staff, place)
  let result = text
  for (const word of found.toReversed()) {
    const technique = table.get(word.id)
    if (!technique) continue
    const stays =
      techniques.policy === 'keep' ||
      technique.otherwise === 'keep' ||
      follows(word.id, plan) === 'unknown'
    if (stays) continue
    result =
      result.slice(0, word.start) + insteadOf(technique, endsPizzicato) + result.slice(word.end)
  }
  const left = result === text ? text : tidied(result)
  tellWords(found, text, left, techniques, (each) => report({...each, at: placeOf(measure, words)}))
  if (left === text) return undefined
  return left === '' ? 'remove' : setText(words, left)
}

/** What a technique's words become; `arco` only says something after a pizzicato. */
function insteadOf({id, write}: Technique, endsPizzicato: boolean): string {
  return write === undefined || (id === 'arco' && !endsPizzicato) ? '' : write
}

function tellWords(
  found: readonly TechniqueWord[],
  text: string,
  left: string,
  techniques: Techniques,
  report: (diagnostic: Diagnostic) => void,
): void {
  const listed = found.flatMap(({id}) => table.get(id) ?? [])
  const remark = listed.flatMap((each) => each.remark ?? []).join('; ')
  const [first] = listed
  if (!first) return
  const outcome = left === text ? 'kept' : left === '' ? 'removed' : 'translated'
  const {remark: _, ...plain} = first
  const says = techniques.policy === 'keep' || remark === '' ? plain : {...plain, remark}
  report(told(says, outcome, text, outcome === 'translated' ? left : undefined))
}

/** What is left of words when some were cut out, without the commas and brackets that held them. */
function tidied(text: string): string {
  return text
    .replaceAll(/\(\s*\)|\[\s*\]/g, '')
    .replaceAll(/\s{2,}/g, ' ')
    .replaceAll(/\s+([,;.])/g, '$1')
    .replaceAll(/([,;])(?:\s*[,;])+/g, '$1')
    .replaceAll(/^[\s,;:./–&-]+|[\s,;:/–&-]+$/g, '')
}

/**
 * Words that name the key of the source's instrument or tell the player to change it: they are no longer true. They become an
 * editor's remark, in square brackets, and are told; they are never rewritten (renotation-rules, section 4).
 */
function changeKey(
  measure: Measure,
  plan: PartPlan,
  techniques: Techniques,
  words: Element,
  text: string,
  report: Report,
): Edit | undefined {
  const change = techniques.readChange(text)
  const key = plan.identity?.instrument?.builtIn?.toLowerCase()
  if (!change || (key !== undefined && change.keys.includes(key))) return undefined
  const bracketed = /^[[(].*[\])]$/.test(text) ? text : `[${text}]`
  const stays = techniques.policy === 'keep' || bracketed === text
  report({
    code: 'technique/untrue',
    severity: 'warning',
    message: `“${text}” speaks of the instrument of the source and is no longer true${stays ? '' : '; it becomes a remark in brackets'}`,
    at: placeOf(measure, words),
    actual: text,
    ...(!stays && {expected: bracketed}),
  })
  return stays ? undefined : setText(words, bracketed)
}

function isBrass({identity}: PartPlan): boolean {
  return identity?.instrument !== undefined && playerOf(identity.instrument) === 'brass'
}
