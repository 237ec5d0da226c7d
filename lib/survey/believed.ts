import {intervalFor} from '../instruments/notation.ts'
import type {ClefReading, Notation} from '../instruments/notation.ts'
import {sameInterval} from '../pitch/interval.ts'
import type {Belief} from './believe.ts'
import {describeHypothesis} from './evidence.ts'
import {isDeclared} from './explain.ts'
import {withOldOctave} from './hypothesis.ts'
import {NO_KEY} from './line.ts'

/**
 * What a part is believed to be written in, as something that overrides what its file declares; `as-declared` where
 * they agree. `several`: it changes its transposition on the way, and no one notation says what is believed.
 */
export type BelievedNotation =
  | {readonly kind: 'as-declared'}
  | {readonly kind: 'notation'; readonly notation: Notation}
  | {readonly kind: 'several'}

/** The notation that a part's beliefs come to. */
export function notationBelieved(beliefs: readonly Belief[]): BelievedNotation {
  const chosen = beliefs.flatMap(({line, judged: [best]}) =>
    best ? [{line, hypothesis: best.hypothesis}] : [],
  )
  if (chosen.every(({line, hypothesis}) => isDeclared(line, hypothesis)))
    return {kind: 'as-declared'}
  const [first] = chosen
  if (!first) return {kind: 'as-declared'}
  const named = first.hypothesis.notation
  const notation = named ? withOldOctave(named) : made(beliefs)
  const holds = chosen.every(({line, hypothesis}) =>
    line.clefs.every((clef, at) => {
      const interval = intervalFor(notation, clef) ?? line.declared
      const wanted = hypothesis.intervals[at]
      return wanted !== undefined && sameInterval(interval, wanted)
    }),
  )
  return holds ? {kind: 'notation', notation} : {kind: 'several'}
}

/** A notation of no catalogue: what was found, clef by clef. */
function made(beliefs: readonly Belief[]): Notation {
  const readings: ClefReading[] = []
  const names: string[] = []
  for (const {line, judged} of beliefs) {
    const [best] = judged
    if (!best) continue
    names.push(`sounding ${describeHypothesis(line, best.hypothesis)}`)
    line.clefs.forEach((clef, at) => {
      const interval = best.hypothesis.intervals[at]
      const known = readings.some(
        (reading) => reading.clef.sign === clef.sign && reading.clef.line === clef.line,
      )
      if (interval && !known)
        readings.push({clef: {...clef, octaveChange: 0}, interval, row: 'believed'})
    })
  }
  const signed = beliefs.some(({line}) => line.keys.some((key) => key !== 0 && key !== NO_KEY))
  return {
    id: 'believed',
    name: names.join('; '),
    instruments: [],
    readings,
    otherClefs: 'declared',
    keySignature: signed ? 'yes' : 'rare',
    confidence: 'medium',
    sources: [],
  }
}
