import type {Report} from '../diagnostic.ts'
import {clockOf} from '../fit/clock.ts'
import {foldLine, measuresOf} from '../fit/fold.ts'
import type {Fold} from '../fit/fold.ts'
import {lineOf} from '../fit/line.ts'
import type {Tone} from '../fit/line.ts'
import {keyName} from '../fit/key-name.ts'
import {reachOf} from '../fit/reach.ts'
import type {Tier} from '../fit/reach.ts'
import {awayBy, remediesFor} from '../fit/remedy.ts'
import {surroundingsOf} from '../fit/surroundings.ts'
import type {Instrument} from '../instruments/instrument.ts'
import type {Register} from '../plan/register.ts'
import {placeIn} from '../survey/facts.ts'
import type {PartFacts} from '../survey/facts.ts'
import {spotOf} from './change.ts'
import type {Change, DroppedNote, MovedPassage} from './change.ts'

export interface FoldRequest {
  readonly part: string
  readonly instrument: Instrument
  readonly tier: Tier
  /** Notes that no octave saves are left out. */
  readonly drop?: boolean | undefined
  /** What the parts are called, by id. */
  readonly names: ReadonlyMap<string, string>
}

/** What the plan of a folded part is told, and the proof. */
export interface FoldedPart {
  readonly registers: readonly Register[]
  /** Places of notes among the pitched notes of the part, from 0. */
  readonly dropped: ReadonlySet<number>
  readonly changes: readonly Change[]
}

/**
 * Folds a part of a score for a player: the registers for its plan, and what changes. Reports every fold
 * (`fold/phrase`), and every note that no octave saves: with the cheapest remedy (`fold/unplayable`), or that it is
 * dropped (`fold/dropped`).
 */
export function foldPart(
  facts: ReadonlyMap<string, PartFacts>,
  {part, instrument, tier, names, drop = false}: FoldRequest,
  report: Report,
): FoldedPart {
  const own = facts.get(part)
  const reach = reachOf(instrument, tier)
  if (!own || !reach) return {registers: [], dropped: new Set(), changes: []}
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
      at: placeIn(own, fold.from.measure),
    })
  }
  const changes: Change[] = plan.folds.map((fold) => toChange(own, fold))
  if (drop) {
    for (const tone of plan.unplayable) {
      changes.push(toDroppedNote(own, tone))
      report({
        code: 'fold/dropped',
        severity: 'warning',
        message: describeDrop(tone),
        at: placeIn(own, tone.measure),
      })
    }
    const dropped = new Set(plan.unplayable.flatMap(({note, tied = []}) => [note, ...tied]))
    return {registers: plan.registers, dropped, changes}
  }
  for (const {tone, advice} of remediesFor(plan, reach, others)) {
    report({
      code: 'fold/unplayable',
      severity: 'warning',
      message: `${keyName(tone.midi)} is out of reach whatever the octave of its phrase; ${advice}`,
      at: placeIn(own, tone.measure),
    })
  }
  return {registers: plan.registers, dropped: new Set(), changes}
}

/** `measures 5 to 12 sound an octave higher: 6 of its 14 notes lie below Bb1, the lowest that can be played`. */
export function describeFold(facts: PartFacts, fold: Fold): string {
  const verb = fold.from.measure === fold.to.measure ? 'sounds' : 'sound'
  return `${measuresOf(facts, fold)} ${verb} ${awayBy(fold.octaves)}: ${fold.reason}`
}

function describeDrop({midi}: Tone): string {
  return `${keyName(midi)} is out of reach whatever the octave of its phrase; it is printed as a cue and not played`
}

function toDroppedNote(facts: PartFacts, tone: Tone): DroppedNote {
  const spot = spotOf(facts, tone)
  return {
    kind: 'dropped',
    part: facts.part,
    from: spot,
    to: spot,
    midi: tone.midi,
    reason: describeDrop(tone),
  }
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
