import type {Measure, Note} from '../musicxml/measure.ts'
import {midiOf} from '../pitch/pitch.ts'

/** Measures of the same index in the two parts; one may be missing where a part is longer. */
export interface Step {
  readonly index: number
  readonly before?: Measure | undefined
  readonly after?: Measure | undefined
}

/** Two notes that belong together. */
export interface NotePair {
  readonly before: Note
  readonly after: Note
}

/** Reads two parts measure by measure, side by side. */
export async function* inStep(
  before: AsyncIterable<Measure>,
  after: AsyncIterable<Measure>,
): AsyncGenerator<Step> {
  const sides = [before[Symbol.asyncIterator](), after[Symbol.asyncIterator]()] as const
  try {
    for (let index = 0; ; index++) {
      const [one, other] = await Promise.all(sides.map((side) => side.next()))
      if (one?.done && other?.done) return
      yield {
        index,
        before: one?.done ? undefined : one?.value,
        after: other?.done ? undefined : other?.value,
      }
    }
  } finally {
    for (const side of sides) await side.return?.()
  }
}

/**
 * The pitched notes that belong together: those at one onset in the order of the document where there are as many on
 * both sides, else those that sound alike.
 */
export function pairNotes({before, after}: Step): readonly NotePair[] {
  if (!before || !after) return []
  const others = byOnset(after)
  return [...byOnset(before)].flatMap(([place, notes]) => {
    const found = others.get(place) ?? []
    if (found.length === notes.length) return zip(notes, found)
    const left = [...found]
    return notes.flatMap((note) => {
      const at = left.findIndex((each) => soundsLike(note, each))
      const [twin] = at < 0 ? [] : left.splice(at, 1)
      return twin ? [{before: note, after: twin}] : []
    })
  })
}

function byOnset(measure: Measure): ReadonlyMap<string, readonly Note[]> {
  const groups = new Map<string, Note[]>()
  for (const note of measure.notes) {
    if (!note.sounding) continue
    const place = `${note.onset / measure.ticks} ${note.grace ? 'grace' : note.cue ? 'cue' : ''}`
    groups.set(place, [...(groups.get(place) ?? []), note])
  }
  return groups
}

function zip(notes: readonly Note[], others: readonly Note[]): NotePair[] {
  return notes.flatMap((before, index) => {
    const after = others[index]
    return after ? [{before, after}] : []
  })
}

function soundsLike(one: Note, other: Note): boolean {
  return Boolean(one.sounding && other.sounding && midiOf(one.sounding) === midiOf(other.sounding))
}
