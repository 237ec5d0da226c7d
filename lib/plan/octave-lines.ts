import {isWind} from '../instruments/player.ts'
import type {Instrument} from '../instruments/instrument.ts'
import {stepsAbove} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'
import {measureOf, soundingAt} from '../survey/facts.ts'
import type {PartFacts} from '../survey/facts.ts'
import type {PartJob} from './job.ts'

/** Above this written note flutes may keep an 8va that lasts (renotation-rules O1). */
const HIGH: Pitch = {step: 'C', alter: 0, octave: 7}
const LASTING = 3

/**
 * The octave lines that the target's player does not read, by index. Winds read ledger lines; only flutes keep an 8va
 * that takes them above written C7 for more than two measures; keyboards, mallets, harp, strings and whoever is not
 * named keep all (renotation-rules O1, O2).
 */
export function chooseRemovedLines(facts: PartFacts, job: PartJob): ReadonlySet<number> {
  const policy = job.octaveLines ?? 'custom'
  const all = new Set(facts.octaveLines.map(({index}) => index))
  if (policy === 'remove') return all
  if (policy === 'keep' || !job.for || !isWind(job.for)) return new Set()
  if (job.for.family !== 'flutes') return all
  const lasting = lastingLines(facts, job.for)
  return new Set([...all].filter((index) => !lasting.has(index)))
}

function lastingLines(facts: PartFacts, instrument: Instrument): ReadonlySet<number> {
  const {notes} = facts
  const lines = new Map<number, {highest: number; from: number; to: number}>()
  for (let note = 0; note < notes.count; note++) {
    const line = (notes.octaveLine[note] ?? 0) - 1
    if (line < 0) continue
    const measure = measureOf(facts, note)
    const steps = stepsAbove(soundingAt(facts, note)) - instrument.transposition.diatonic
    const known = lines.get(line) ?? {highest: steps, from: measure, to: measure}
    lines.set(line, {...known, highest: Math.max(known.highest, steps), to: measure})
  }
  return new Set(
    facts.octaveLines
      .filter(({index, steps}) => {
        const {highest = 0, from = 0, to = 0} = lines.get(index) ?? {}
        return steps < 0 && highest > stepsAbove(HIGH) && to - from + 1 >= LASTING
      })
      .map(({index}) => index),
  )
}

/** Whether the ends of octave lines that never began go too: they do where no line is kept on principle. */
export function removesStrays(job: PartJob): boolean {
  const policy = job.octaveLines ?? 'custom'
  return policy === 'remove' || (policy === 'custom' && !!job.for && isWind(job.for))
}
