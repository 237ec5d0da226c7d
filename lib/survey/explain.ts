import {formatClef} from '../staff/clef.ts'
import type {Belief} from './believe.ts'
import {describeHypothesis, explain} from './evidence.ts'
import type {Evidence} from './evidence.ts'
import type {Hypothesis} from './hypothesis.ts'
import type {Judged} from './judged.ts'
import type {Line} from './line.ts'

/** Steps and semitones added to written to get sounding, octaves included. */
export interface Steps {
  readonly diatonic: number
  readonly chromatic: number
}

/** What a part is believed to sound, and why. */
export interface Believed {
  /** The id of a notation of the catalogue; `declared`, `displaced` or `against` where the catalogue has none. */
  readonly notation: string
  /** In words, `a perfect fifth lower`; clef by clef where they differ. */
  readonly words: string
  /** In the clef that the part has first. */
  readonly transposition: Steps
  /** Where the clefs differ. */
  readonly byClef?: readonly {readonly clef: string; readonly transposition: Steps}[]
  /** From 0 to 1: of so many beliefs with that confidence that share is right. */
  readonly confidence: number
  readonly evidence: readonly Evidence[]
  /** All that it may be, with at least 1 % each. */
  readonly candidates: readonly Candidate[]
}

export interface Candidate {
  readonly notation: string
  readonly words: string
  readonly transposition: Steps
  readonly confidence: number
}

/** Tells what is believed of a line, against the declared transposition or else the likeliest other. */
export function toBelieved(
  belief: Belief,
  all: readonly Belief[],
  nameOf: (line: Line) => string,
): Believed | undefined {
  const [best, second] = belief.judged
  if (!best) return undefined
  const {line} = belief
  const declared = belief.judged.find((each) => isDeclared(line, each.hypothesis))
  const rival = declared && declared !== best ? declared : second
  const intervals = best.hypothesis.intervals
  const differ = intervals.some(({chromatic}) => chromatic !== intervals[0]?.chromatic)
  return {
    ...toCandidate(line, best),
    ...(differ && {
      byClef: line.clefs.map((clef, at) => ({
        clef: formatClef(clef),
        transposition: stepsOf(best.hypothesis, at),
      })),
    }),
    confidence: rounded(best.probability),
    evidence: rival ? explain(belief, best, rival, all, nameOf) : [],
    candidates: belief.judged
      .filter(({probability}) => probability >= 0.01)
      .map((each) => toCandidate(line, each)),
  }
}

/** Whether the hypothesis is what the file declares. */
export function isDeclared(line: Line, {intervals}: Hypothesis): boolean {
  return intervals.every(
    ({diatonic, chromatic}) =>
      chromatic === line.declared.chromatic && diatonic === line.declared.diatonic,
  )
}

function toCandidate(line: Line, {hypothesis, probability}: Judged): Candidate {
  return {
    notation: hypothesis.notation?.id ?? hypothesis.kind,
    words: describeHypothesis(line, hypothesis),
    transposition: stepsOf(hypothesis, 0),
    confidence: rounded(probability),
  }
}

function stepsOf({intervals}: Hypothesis, clef: number): Steps {
  const {diatonic, chromatic} = intervals[clef] ?? {diatonic: 0, chromatic: 0}
  return {diatonic, chromatic}
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000
}
