import type {Report} from '../diagnostic.ts'
import {clockOf} from '../fit/clock.ts'
import {foldLine, measuresOf} from '../fit/fold.ts'
import type {Fold} from '../fit/fold.ts'
import {lineOf} from '../fit/line.ts'
import {keyName} from '../fit/key-name.ts'
import {reachOf} from '../fit/reach.ts'
import type {Tier} from '../fit/reach.ts'
import {awayBy, remediesFor} from '../fit/remedy.ts'
import {surroundingsOf} from '../fit/surroundings.ts'
import type {Instrument} from '../instruments/instrument.ts'
import type {Register} from '../plan/register.ts'
import type {PartFacts, Position} from '../survey/facts.ts'

/** A change of sound, as the proof wants it told. Measures count from 0, onsets are quarters as fractions (`7/2`). */
export interface MovedPassage {
  readonly kind: 'moved'
  readonly part: string
  readonly from: ExactSpot
  readonly to: ExactSpot
  readonly semitones: number
  readonly reason: string
}

export interface ExactSpot {
  readonly measure: number
  /** The number as printed, for people. */
  readonly number: string
  readonly onset: string
}

export interface FoldRequest {
  readonly part: string
  readonly instrument: Instrument
  readonly tier: Tier
  /** What the parts are called, by id. */
  readonly names: ReadonlyMap<string, string>
}

/**
 * Folds a part of a score for a player: the registers for its plan, and what changes. Reports every fold
 * (`fold/phrase`), and every note that no octave saves with the cheapest remedy (`fold/unplayable`).
 */
export function foldPart(
  facts: ReadonlyMap<string, PartFacts>,
  {part, instrument, tier, names}: FoldRequest,
  report: Report,
): {readonly registers: readonly Register[]; readonly changes: readonly MovedPassage[]} {
  const own = facts.get(part)
  const reach = reachOf(instrument, tier)
  if (!own || !reach) return {registers: [], changes: []}
  const clock = clockOf(facts.values())
  const line = lineOf(own, clock)
  const others = [...facts]
    .filter(([id]) => id !== part)
    .map(([id, each]) => ({name: names.get(id) || id, line: lineOf(each, clock)}))
  const surroundings = surroundingsOf(
    line,
    others.map((other) => other.line),
  )
  const plan = foldLine(line, reach, {surroundings})
  for (const fold of plan.folds) {
    report({
      code: 'fold/phrase',
      severity: 'info',
      message: describeFold(own, fold),
      at: placeOf(own, fold.from),
    })
  }
  for (const {tone, advice} of remediesFor(plan, reach, others)) {
    report({
      code: 'fold/unplayable',
      severity: 'warning',
      message: `${keyName(tone.midi)} is out of reach whatever the octave of its phrase; ${advice}`,
      at: placeOf(own, tone),
    })
  }
  return {registers: plan.registers, changes: plan.folds.map((fold) => toChange(own, fold))}
}

/** `measures 5 to 12 sound an octave higher: 6 of its 14 notes lie below Bb1, the lowest that can be played`. */
export function describeFold(facts: PartFacts, fold: Fold): string {
  const verb = fold.from.measure === fold.to.measure ? 'sounds' : 'sound'
  return `${measuresOf(facts, fold)} ${verb} ${awayBy(fold.octaves)}: ${fold.reason}`
}

function toChange(facts: PartFacts, fold: Fold): MovedPassage {
  return {
    kind: 'moved',
    part: facts.part,
    from: spotOf(facts, fold.from),
    to: spotOf(facts, fold.to),
    semitones: 12 * fold.octaves,
    reason: describeFold(facts, fold),
  }
}

function spotOf(facts: PartFacts, {measure, onset}: Position): ExactSpot {
  const ticks = facts.ticks[measure] ?? 1
  const number = facts.numbers[measure] ?? ''
  return {measure, number, onset: `${Math.round(onset * ticks)}/${ticks}`}
}

function placeOf(facts: PartFacts, {measure}: Position) {
  const number = facts.numbers[measure]
  const line = facts.lines[measure]
  return {
    part: facts.part,
    ...(number !== undefined && {measure: number}),
    ...(line !== undefined && {line}),
  }
}
