import type {Measure} from '../musicxml/measure.ts'
import {hasKey, hasLateKey} from './part-text.ts'
import type {Step} from './match.ts'

/** What the layout needs to know of a pair of measures. */
export interface Shape {
  /** How many things stand side by side in the fuller one. */
  readonly columns: number
  readonly newKey: boolean
  /** Whether both are there and equally long, so that they can stand in one system. */
  readonly fits: boolean
  /** Slurs, ties and lines still open at its end, on both sides together. */
  readonly open: number
}

/** Measures from one index to another, the latter excluded. */
export interface Stretch {
  readonly from: number
  readonly to: number
}

/** Measures that stand in one line. */
export interface System extends Stretch {
  /** Whether slurs, ties or lines go on in the next. */
  readonly cuts: boolean
}

/** Systems that are engraved in one go. `together`: both parts in one system; else one part at a time. */
export interface Chunk extends Stretch {
  readonly systems: readonly System[]
  readonly together: boolean
}

/** A line holds so much, and a chunk so many lines at least and at most. */
const COLUMNS = 26
const MEASURES = 6
const LINES = {least: 8, most: 24}

export function shapeOf({before, after}: Step, open: number): Shape {
  const fits = Boolean(
    before &&
    after &&
    before.length * after.ticks === after.length * before.ticks &&
    before.context.staves.length + after.context.staves.length <= 6 &&
    !hasLateKey(before) &&
    !hasLateKey(after),
  )
  return {
    columns: Math.max(columnsOf(before), columnsOf(after)),
    newKey: hasKey(before) || hasKey(after),
    fits,
    open: Math.max(0, open + spans(before) + spans(after)),
  }
}

/**
 * Divides a part into systems of a few measures, and these into chunks. A chunk ends where a signature begins: an engraver
 * that takes signatures in the middle of a score from its first part only would draw a wrong one in the other.
 */
export function layOut(shapes: readonly Shape[]): readonly Chunk[] {
  const chunks: Chunk[] = []
  let systems: System[] = []
  let from = 0
  let columns = 0
  const closeSystem = (to: number): void => {
    const cuts = (shapes[to - 1]?.open ?? 0) > 0 && to < shapes.length
    if (to > from) systems.push({from, to, cuts})
    from = to
    columns = 0
  }
  const closeChunk = (): void => {
    const [first, last] = [systems[0], systems.at(-1)]
    if (first && last) {
      chunks.push({
        from: first.from,
        to: last.to,
        systems,
        together: shapes[first.from]?.fits ?? false,
      })
    }
    systems = []
  }
  for (const [index, shape] of shapes.entries()) {
    const turns = index > 0 && (shape.newKey || shape.fits !== shapes[index - 1]?.fits)
    const full = columns + shape.columns > COLUMNS || index - from >= MEASURES
    if (turns || full) closeSystem(index)
    const quiet = (shapes[index - 1]?.open ?? 0) <= 0
    const enough = systems.length >= (quiet ? LINES.least : LINES.most)
    if (turns || (from === index && enough)) closeChunk()
    columns += shape.columns
  }
  closeSystem(shapes.length)
  closeChunk()
  return chunks
}

function columnsOf(measure: Measure | undefined): number {
  if (!measure) return 2
  const onsets = new Set(
    measure.notes
      .filter(({chord}) => !chord)
      .map(({onset, grace, index}) => (grace ? `grace ${index}` : String(onset))),
  )
  const signs = measure.notes.filter(({element}) =>
    element.children.some(({name}) => name === 'accidental' || name === 'lyric'),
  ).length
  return 2 + onsets.size + signs / 2
}

const SPAN =
  /<(?:slur|tied|wedge|octave-shift|dashes|bracket|glissando|slide)\b[^>]*\btype=["'](start|crescendo|diminuendo|up|down|stop)["']/g

function spans(measure: Measure | undefined): number {
  let open = 0
  for (const [, type] of measure?.text.matchAll(SPAN) ?? []) open += type === 'stop' ? -1 : 1
  return open
}
