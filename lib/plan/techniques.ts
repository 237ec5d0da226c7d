import type {Family} from '../instruments/instrument.ts'
import {
  familyOfTechniques,
  instrumentChangeReader,
  techniqueReader,
} from '../instruments/technique.ts'
import type {InstrumentChange, TechniqueWord} from '../instruments/technique.ts'
import {NOTE} from '../survey/facts.ts'
import type {PartFacts, Position} from '../survey/facts.ts'
import type {PartJob} from './job.ts'
import type {Identity} from './plan.ts'

/** What is decided about the marks that only some players can follow. */
export interface Techniques {
  readonly policy: 'translate' | 'keep'
  /** The family that the part was written for, as its name, its sound or its marks tell. */
  readonly source?: Family
  /** How many of each mark the part has, by element name; `chord` counts notes in chords besides the first. */
  readonly counts: ReadonlyMap<string, number>
  /** Whether an `arco` at that position of a staff ends a pizzicato. */
  endsPizzicato(staff: number, at: Position): boolean
  readWords(text: string): readonly TechniqueWord[]
  readChange(text: string): InstrumentChange | undefined
}

/** Elements that tell who the part was written for. */
const TELLING = ['up-bow', 'down-bow', 'pedal']

/** Decides about techniques where the job names an instrument. */
export function techniquesOf(
  facts: PartFacts,
  job: PartJob,
  identity: Identity | undefined,
): {readonly techniques?: Techniques} {
  if (!identity?.instrument) return {}
  const readWords = techniqueReader()
  const named = facts.words.map((words) => ({
    ...words,
    ids: readWords(words.text).map(({id}) => id),
  }))
  const source =
    identity.formerFamily ??
    familyOfTechniques([
      ...named.flatMap(({ids}) => ids),
      ...TELLING.filter((element) => facts.elements.has(element)),
    ])
  const bowed = new Set<string>()
  const plucked = new Set<number>()
  for (const {ids, staff, ...at} of named) {
    for (const id of ids) {
      if (id === 'pizzicato') plucked.add(staff)
      else if (id === 'arco' && plucked.delete(staff)) bowed.add(keyOf(staff, at))
    }
  }
  return {
    techniques: {
      policy: job.techniques ?? 'translate',
      ...(source && {source}),
      counts: new Map([...facts.elements, ['chord', countChords(facts)]]),
      endsPizzicato: (staff, at) => bowed.has(keyOf(staff, at)),
      readWords,
      readChange: instrumentChangeReader(),
    },
  }
}

function keyOf(staff: number, {measure, onset}: Position): string {
  return `${staff}/${measure}/${onset}`
}

function countChords({notes}: PartFacts): number {
  let count = 0
  for (let note = 0; note < notes.count; note++)
    if (((notes.flags[note] ?? 0) & NOTE.chord) !== 0) count++
  return count
}
