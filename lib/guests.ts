import type {GuestMeasures} from './join/joiner.ts'
import {opened} from './join/measure.ts'
import {firstContext} from './musicxml/context.ts'
import {advance, readMeasure} from './musicxml/measure.ts'
import type {Measure, Reading} from './musicxml/measure.ts'
import type {PartPlan} from './plan/plan.ts'
import {editing} from './rules/index.ts'
import {cutFrames, measureOf} from './score.ts'
import type {Score} from './score.ts'
import {applyEdits} from './xml/edit.ts'

/** A part whose music goes into another: its plan, in the notation of the other. */
export interface Guest {
  readonly plan: PartPlan
  readonly reading: Reading | undefined
}

/** The measures of the guests, read along with the host's: each guest is a reading of its own. */
export function openGuests(
  score: Score,
  guests: ReadonlyMap<string, Guest>,
): {readonly measures: GuestMeasures; close(): Promise<void>} {
  const streams = new Map(
    [...guests].map(([id, guest]) => [
      id,
      {stream: rewrittenMeasures(score, id, guest), last: undefined as Measure | undefined},
    ]),
  )
  return {
    async measures(id, index) {
      const open = streams.get(id)
      if (!open) return undefined
      while ((open.last?.index ?? -1) < index) {
        const next = await open.stream.next()
        if (next.done) return undefined
        open.last = next.value
      }
      return open.last
    },
    async close() {
      for (const {stream} of streams.values()) await stream.return(undefined)
    },
  }
}

/** The measures of a part as its plan has them written. */
async function* rewrittenMeasures(
  score: Score,
  id: string,
  {plan, reading}: Guest,
): AsyncGenerator<Measure, undefined> {
  const edit = editing(plan, () => {})
  let source = firstContext(id)
  let context = firstContext(id)
  for await (const frames of cutFrames(score, (part) => (part === id ? 'read' : 'drop'))) {
    for (const frame of frames) {
      if (frame.kind !== 'measure') continue
      // The host's keys and clefs may change in a measure in which the guest has nothing at all.
      const measure = opened(measureOf(frame, source, reading, () => {}))
      source = advance(source, measure)
      const edits = edit(measure)
      const rewritten = readMeasure({...measure, text: applyEdits(measure.text, edits)}, context)
      context = advance(context, rewritten)
      yield rewritten
    }
  }
  return undefined
}
