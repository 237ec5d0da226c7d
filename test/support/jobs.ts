import type {Diagnostic} from '../../lib/diagnostic.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {soundingNotes} from '../../lib/musicxml/sounding.ts'
import type {SoundingNote} from '../../lib/musicxml/sounding.ts'
import type {Source} from '../../lib/musicxml/source.ts'
import type {PartJob} from '../../lib/plan/job.ts'
import {openScore, readFacts, readMeasures, rewrite} from '../../lib/renotate.ts'
import type {PartFacts} from '../../lib/survey/facts.ts'
import {collect, sourceOf} from './bytes.ts'

/** What came out of a job, and what was told on the way. */
export interface Outcome {
  readonly bytes: Uint8Array
  readonly told: readonly Diagnostic[]
}

/** Jobs that differ in everything a job can do: keys, clefs, octaves, names. */
export const JOBS: Readonly<Record<string, PartJob>> = {
  'alto saxophone': {for: instrumentById('alto-saxophone-e-flat')},
  bassoon: {for: instrumentById('bassoon')},
  'contrabass clarinet': {for: instrumentById('contrabass-clarinet-b-flat')},
  cello: {for: instrumentById('cello')},
  'horn without signatures': {for: instrumentById('horn-f'), keys: {signature: 'omit'}},
  'A clarinet in few signs': {for: instrumentById('clarinet-a'), keys: {limit: 5}},
  'concert pitch': {to: {kind: 'concert', octaves: 'customary'}},
  'sounding pitch': {to: {kind: 'concert', octaves: 'sounding'}},
}

const silent = (): void => {}

/** Rewrites one part; the others are dropped, or kept as they are. */
export async function runPart(
  source: Source | Uint8Array,
  part: string,
  job: PartJob,
  others: 'keep' | 'drop' = 'drop',
): Promise<Outcome> {
  return run(source, new Map([[part, job]]), others)
}

export async function run(
  source: Source | Uint8Array,
  parts: ReadonlyMap<string, PartJob>,
  others: 'keep' | 'drop' = 'keep',
): Promise<Outcome> {
  const told: Diagnostic[] = []
  const score = await openScore(toSource(source))
  const bytes = await collect(rewrite(score, {parts, others}, (each) => told.push(each)))
  return {bytes, told}
}

export async function idsOf(source: Source | Uint8Array): Promise<readonly string[]> {
  return (await openScore(toSource(source))).header.parts.map(({id}) => id)
}

export async function factsOf(source: Source | Uint8Array, part: string): Promise<PartFacts> {
  const facts = await readFacts(
    await openScore(toSource(source)),
    new Map([[part, undefined]]),
    silent,
  )
  const own = facts.get(part)
  if (!own) throw new Error(`no facts about ${part}`)
  return own
}

/** A pitched note as it is written and as it sounds; `index` is its measure's. */
export interface HeardNote extends SoundingNote {
  readonly index: number
}

export async function notesOf(source: Source | Uint8Array, part: string): Promise<HeardNote[]> {
  const score = await openScore(toSource(source))
  const notes: HeardNote[] = []
  for await (const measure of readMeasures(score, (id) => id === part, undefined, silent)) {
    for (const note of soundingNotes(measure)) notes.push({...note, index: measure.index})
  }
  return notes
}

/** Where a note is: measure, onset and duration, staff and voice. */
export function placeOf({index, onset, duration, staff, voice}: HeardNote): string {
  return `${index} ${onset}+${duration} ${staff}/${voice}`
}

/** A line a change of clef, key or transposition, on any staff. */
export function statesOf(facts: PartFacts): string[] {
  return facts.states.map(
    ({measure, onset, staff, state}) =>
      `${measure} ${onset} staff ${staff}: ${JSON.stringify([state.clef, state.key, state.transposition])}`,
  )
}

export function text(bytes: Uint8Array): string {
  return new TextDecoder('utf-8', {fatal: true, ignoreBOM: true}).decode(bytes)
}

function toSource(source: Source | Uint8Array): Source {
  return typeof source === 'function' ? source : sourceOf(source)
}
