import type {Note} from '../musicxml/measure.ts'
import {compareStep} from './compare.ts'
import type {Intent, Memory} from './compare.ts'
import type {Digest} from './digest.ts'
import {toDrawing} from './drawing.ts'
import type {NoteInfo} from './drawing.ts'
import {flagsOf} from './flags.ts'
import type {Flag} from './flags.ts'
import {layOut} from './layout.ts'
import type {Chunk, Stretch} from './layout.ts'
import type {NotePair, Step} from './match.ts'
import {LABELS, SIDES, drawnNotes, idOf, infosOf} from './note-info.ts'
import type {SideName} from './note-info.ts'
import {carry, measureXml, scoreXml} from './part-text.ts'
import type {Carried} from './part-text.ts'

/** What is drawn under each id, as the engraver tells: to be held against what should be. */
export interface Engraved {
  readonly pages: readonly string[]
  readonly notes: ReadonlyMap<string, {readonly step: string; readonly octaves: readonly number[]}>
}

export interface DrawOptions {
  readonly engrave: (musicXml: string) => Engraved | undefined
  readonly intent: Intent
}

/** A system of the page: drawings one above the other, and what must be said of them. */
export interface DrawnSystem extends Stretch {
  /** Printed numbers of its first and last measure. */
  readonly first: string
  readonly last: string
  /** Usually one with both parts; one a part where they do not go together. */
  readonly drawings: readonly string[]
  /** Shapes that no system before it has used. */
  readonly glyphs: readonly string[]
  readonly anchors: readonly string[]
  /** Sentences about what is not drawn. */
  readonly notices: readonly string[]
}

interface Read extends Step {
  readonly pairs: readonly NotePair[]
  readonly infos: ReadonlyMap<string, NoteInfo>
}

/**
 * Draws two parts, system by system. Each chunk of systems is engraved by itself and compared with what it should show; what
 * is not as written is drawn one part at a time, and if that fails too, said.
 */
export async function* drawSystems(
  steps: AsyncIterable<Step>,
  digest: Digest,
  {engrave, intent}: DrawOptions,
): AsyncGenerator<DrawnSystem> {
  const chunks = layOut(digest.shapes)
  const flags = flagsOf(digest.changes)
  const known = new Set<string>()
  let carried: BothCarried = {before: new Map(), after: new Map()}
  let memory: Memory = new Map()
  let held: Read[] = []
  let at = 0
  for await (const step of steps) {
    const {pairs, marks, memory: next} = compareStep(step, memory, intent)
    memory = next
    held.push({...step, pairs, infos: infosOf(step, pairs, marks)})
    const chunk = chunks[at]
    if (!chunk || step.index + 1 < chunk.to) continue
    yield* drawChunk(chunk, held, {carried, engrave, flags, known})
    carried = carryOn(carried, held)
    held = []
    at++
  }
}

type BothCarried = Readonly<Record<SideName, Carried>>

interface ChunkOptions {
  readonly carried: BothCarried
  readonly engrave: DrawOptions['engrave']
  readonly flags: ReadonlyMap<number, readonly Flag[]>
  readonly known: Set<string>
}

/** Engraves a chunk; where that fails, system by system, and where that fails, one part at a time. */
function* drawChunk(
  chunk: Chunk,
  steps: readonly Read[],
  options: ChunkOptions,
): Generator<DrawnSystem> {
  const draw = (sides: readonly SideName[]): Group => ({
    sides,
    pages: engraveChunk(chunk, steps, sides, options),
  })
  const apart = SIDES.map((side) => [side])
  const groups = (chunk.together ? [SIDES] : apart).map(draw)
  if (groups.every(({pages}) => pages)) yield* systemsOf(chunk, steps, groups, options)
  else if (chunk.systems.length > 1) {
    let {carried} = options
    for (const system of chunk.systems) {
      const own = steps.slice(system.from - chunk.from, system.to - chunk.from)
      const single = {...chunk, ...system, systems: [system]}
      yield* drawChunk(single, own, {...options, carried})
      carried = carryOn(carried, own)
    }
  } else yield* systemsOf(chunk, steps, chunk.together ? apart.map(draw) : groups, options)
}

/** Parts that were drawn in one go, a page a system. */
interface Group {
  readonly sides: readonly SideName[]
  readonly pages: readonly string[] | undefined
}

function* systemsOf(
  chunk: Chunk,
  steps: readonly Read[],
  groups: readonly Group[],
  options: ChunkOptions,
): Generator<DrawnSystem> {
  for (const [index, system] of chunk.systems.entries()) {
    const own = steps.slice(system.from - chunk.from, system.to - chunk.from)
    const first = numberOf(own[0])
    const last = numberOf(own.at(-1))
    const anchors = own.map((step) => `m${step.index}`)
    const glyphs: string[] = []
    const notices: string[] = []
    const drawings: string[] = []
    const undrawn: SideName[] = []
    for (const {sides, pages} of groups) {
      const whose = sides.length === 2 ? 'both parts' : `the part ${sides[0] ?? ''}`
      const page = pages?.[index]
      const isFirst = drawings.length === 0
      const drawing =
        page === undefined
          ? undefined
          : toDrawing(page, {
              label: `${first === last ? `Measure ${first}` : `Measures ${first} to ${last}`}, ${whose}`,
              anchors: isFirst ? anchors : [],
              flags: isFirst ? own.map((step) => options.flags.get(step.index) ?? []) : [],
              notes: new Map(own.flatMap(({infos}) => [...infos])),
            })
      if (!drawing) {
        undrawn.push(...sides.filter((side) => own.some((step) => step[side])))
        continue
      }
      drawings.push(drawing.svg)
      for (const [name, shape] of drawing.glyphs) {
        if (options.known.has(name)) continue
        options.known.add(name)
        glyphs.push(shape)
      }
    }
    if (undrawn.length > 0) {
      const whose = undrawn.length === 1 ? `the part ${undrawn[0]}` : 'these measures'
      notices.push(`The engraver cannot draw ${whose} faithfully, so nothing is shown.`)
    }
    for (const side of SIDES)
      if (own.every((step) => !step[side])) notices.push(`The part ${side} has no such measures.`)
    if (system.cuts && drawings.length > 0 && index === chunk.systems.length - 1)
      notices.push('A slur, tie or line goes on in the next system and is not drawn across.')
    yield {...system, first, last, drawings, glyphs, anchors, notices}
  }
}

/** The pages of a chunk, a system each. Undefined where they do not show exactly the notes that were given. */
function engraveChunk(
  {systems}: Chunk,
  steps: readonly Read[],
  sides: readonly SideName[],
  {carried, engrave}: ChunkOptions,
): readonly string[] | undefined {
  const starts = new Set(systems.map(({from}) => from))
  const wanted: {readonly id: string; readonly note: Note}[] = []
  const parts = sides.map((side) => ({
    name: LABELS[side],
    measures: steps
      .flatMap((step, index) => {
        const measure = step[side]
        if (!measure) return []
        wanted.push(...drawnNotes(measure).map((note) => ({id: idOf(side, step, note), note})))
        return measureXml(measure, {
          carried: index === 0 ? carried[side] : undefined,
          newPage: index > 0 && starts.has(step.index),
          idOf: (note) => idOf(side, step, note),
        })
      })
      .join(''),
  }))
  const engraved = engrave(scoreXml(parts))
  if (!engraved || engraved.pages.length !== systems.length) return undefined
  const all = engraved.pages.join('')
  const faithful = wanted.every(({id, note}) => {
    const drawn = engraved.notes.get(id)
    return (
      drawn?.step === note.written?.step.toLowerCase() &&
      drawn?.octaves.includes(note.written?.octave ?? NaN) &&
      all.includes(`id="${id}"`)
    )
  })
  return faithful ? engraved.pages : undefined
}

function carryOn(carried: BothCarried, steps: readonly Step[]): BothCarried {
  const take = (side: SideName): Carried =>
    steps.reduce((all, step) => {
      const measure = step[side]
      return measure ? carry(all, measure, 'all') : all
    }, carried[side])
  return {before: take('before'), after: take('after')}
}

function numberOf(step: Step | undefined): string {
  return step?.before?.number ?? step?.after?.number ?? ''
}
