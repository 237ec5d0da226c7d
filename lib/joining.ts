import {cuePassage, cuesFor, registersOf} from './cueing.ts'
import type {CueInput, CueRequest, PartNames} from './cueing.ts'
import {scoreError} from './diagnostic.ts'
import {playIfAbsent} from './ensemble/cover-label.ts'
import {foldPart} from './ensemble/folding.ts'
import type {FoldedPart} from './ensemble/folding.ts'
import {weaveLines} from './ensemble/weave.ts'
import {describeWeave} from './ensemble/weave-passages.ts'
import type {Woven} from './ensemble/weave-passages.ts'
import {clockOf} from './fit/clock.ts'
import {lineOf} from './fit/line.ts'
import type {Tier} from './fit/reach.ts'
import type {Guest} from './guests.ts'
import type {Instrument, Language} from './instruments/instrument.ts'
import {languageOfName, languageOfNames} from './instruments/part-name.ts'
import type {Notation} from './instruments/notation.ts'
import type {Joint} from './join/joiner.ts'
import type {Passage} from './join/passage.ts'
import type {Reading} from './musicxml/measure.ts'
import {planPart} from './plan/decide.ts'
import {notationOf} from './plan/guest.ts'
import type {PartJob} from './plan/job.ts'
import type {PartPlan} from './plan/plan.ts'
import {isPitched} from './staff/clef.ts'

export type {CueRequest} from './cueing.ts'

/** Music of other parts that is to go into a part. Parts are named by id. */
export interface JoinRequest {
  readonly cues?: CueRequest | undefined
  readonly cover?: CoverRequest | undefined
}

/** A missing voice that the part's player plays as well. */
export interface CoverRequest {
  readonly part: string
  /** Whose range the voice is folded into. */
  readonly instrument: Instrument
  readonly tier: Tier
  readonly drop?: boolean | undefined
  /** How the voice is written, where its part does not say. */
  readonly from?: Notation | undefined
  /** `always`: written full size; `absent`: small, a cross-cue that is played when the voice has no player. */
  readonly when: 'always' | 'absent'
}

/** The part that takes in music, and how it is planned. */
export interface JoinInput extends CueInput {
  readonly job: PartJob
  readonly readings: ReadonlyMap<string, Reading | undefined>
  /** Plans the part itself. */
  readonly plan: (job: PartJob) => PartPlan
}

/** The plan of a part that takes in music of others, what it takes in, and from whom. */
export interface JoinedPlan {
  readonly plan: PartPlan
  readonly joint: Joint
  readonly guests: ReadonlyMap<string, Guest>
}

/** Decides what goes into a part. Reports cues and every passage of a cover; tells the proof of them. */
export async function planJoint(
  input: JoinInput,
  {cues, cover}: JoinRequest,
): Promise<JoinedPlan | undefined> {
  const {score, part, job, facts, readings, changed} = input
  const host = facts.get(part)
  if (!host) return undefined
  const names = new Map(
    score.header.parts.map(({id, name, abbreviation}) => [id, {name, abbreviation}]),
  )
  const language =
    job.language ??
    languageOfName(names.get(part)?.name ?? '') ??
    languageOfNames([...names.values()].map(({name}) => name)) ??
    'en'
  const weave = cover && weaveIn(input, cover, names)
  const fold = foldOwn(input, names)
  for (const change of [...(fold?.changes ?? []), ...(weave?.changes ?? [])]) changed(change)
  const dropped = new Set([...(fold?.dropped ?? []), ...(weave?.silenced ?? [])])
  const plan = input.plan({
    ...job,
    ...(fold && {registers: fold.registers}),
    ...(dropped.size > 0 && {dropped}),
  })
  const guests = new Map<string, Guest>()
  const addGuest = (id: string, guestJob: PartJob): void => {
    const own = facts.get(id)
    if (!own) return
    const to = notationOf(plan, own)
    const guestPlan = planPart(own, {...guestJob, to}, {}, () => {})
    guests.set(id, {plan: guestPlan, reading: readings.get(id)})
  }
  const passages: Passage[] = []
  if (cover && weave) {
    addGuest(cover.part, weave.guest)
    passages.push(...coverPassages(cover, weave, names.get(cover.part), language))
  }
  if (cues) {
    const chosen = await cuesFor(input, plan, cues, {
      names,
      without: cover?.part,
      busy: passages.filter(({manner}) => manner !== 'cue'),
    })
    for (const id of new Set(chosen.map(({source}) => source.facts.part)))
      addGuest(id, {registers: registersOf(chosen.filter(({source}) => source.facts.part === id))})
    passages.push(...chosen.map((cue) => cuePassage(cue, language)))
  }
  const own = names.get(part)
  const marks = (weave?.returns ?? []).map((at) => ({...at, text: plainName(own?.name || part)}))
  const printsAccidentals = [...facts.values()].some(({prints}) => prints.accidentals)
  const shown = cover?.when === 'absent' ? [] : marks
  return {plan, joint: {passages, marks: shown, printsAccidentals}, guests}
}

/** The part's own music, folded for its player where that is asked. */
function foldOwn(
  {part, job, facts, report}: JoinInput,
  names: ReadonlyMap<string, PartNames>,
): FoldedPart | undefined {
  const {for: instrument, fold: tier, drop} = job
  if (!instrument || !tier) return undefined
  return foldPart(facts, {part, instrument, tier, drop, names: fullNames(names)}, report)
}

function fullNames(names: ReadonlyMap<string, PartNames>): ReadonlyMap<string, string> {
  return new Map([...names].map(([id, {name}]) => [id, name || id]))
}

/** What a cover comes to, and the job that makes its music fit the player. */
interface WovenGuest extends Woven {
  readonly guest: PartJob
}

function weaveIn(
  {part, facts, report}: JoinInput,
  {part: id, instrument, tier, drop, when}: CoverRequest,
  names: ReadonlyMap<string, PartNames>,
): WovenGuest | undefined {
  const [host, voice] = [facts.get(part), facts.get(id)]
  if (!host || !voice) return undefined
  for (const each of [host, voice]) {
    if (each.states.every(({state}) => isPitched(state.clef))) continue
    throw scoreError(
      'join/no-pitches',
      `${names.get(each.part)?.name || each.part} has a staff without pitches: its music cannot be written into another part, nor another's into it`,
      {part: each.part},
    )
  }
  const nameOf = (each: string): string => names.get(each)?.name || each
  const request = {part: id, instrument, tier, drop, names: fullNames(names)}
  const folded = foldPart(facts, request, report)
  const clock = clockOf(facts.values())
  const [own, missing] = [lineOf(host, clock), lineOf(voice, clock)]
  const others = [...facts.values()]
    .filter((each) => each !== host && each !== voice)
    .map((each) => lineOf(each, clock))
  const weave = weaveLines(own, missing, others, {keepsOwn: when === 'absent'})
  const told = describeWeave(
    own,
    missing,
    weave,
    {own: nameOf(part), missing: nameOf(id), when},
    report,
  )
  const {registers, dropped} = folded
  return {...told, changes: [...told.changes, ...folded.changes], guest: {registers, dropped}}
}

function coverPassages(
  {part, when}: CoverRequest,
  {passages}: Woven,
  names: PartNames | undefined,
  language: Language,
): Passage[] {
  const full = plainName(names?.name || part)
  const short = names?.abbreviation || full
  let first = true
  return passages.flatMap(({from, to, silent}): Passage[] => {
    if (when === 'absent' && silent) return []
    const name = first ? full : short
    first = false
    return [
      {
        guest: part,
        from,
        to,
        manner: silent ? 'cue' : when === 'absent' ? 'small' : 'played',
        label: when === 'absent' ? playIfAbsent(short, language) : name,
      },
    ]
  })
}

/** A name without what it says of a clef or an edition: `Baryton si♭ (clé de fa)` is `Baryton si♭`. */
function plainName(name: string): string {
  return name.replaceAll(/\s*\([^)]*\)/g, '') || name
}
