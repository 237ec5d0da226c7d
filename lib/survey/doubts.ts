import type {Place, Severity} from '../diagnostic.ts'
import {describeInterval} from '../pitch/interval.ts'
import {sameClef} from '../staff/clef.ts'
import type {Belief} from './believe.ts'
import {isDeclared} from './explain.ts'
import type {Believed, Candidate} from './explain.ts'
import {measureOf, placeIn} from './facts.ts'
import type {PartFacts} from './facts.ts'

/** Where the evidence contradicts the file, or does not settle what it leaves open. */
export interface Doubt {
  readonly code: `doubt/${string}`
  readonly severity: Severity
  readonly message: string
  readonly at: Place
  /** What speaks for the belief, and what against it. */
  readonly for: readonly string[]
  readonly against: readonly string[]
  readonly candidates: readonly Candidate[]
  /** The option that settles it the way it is believed. */
  readonly settle: string
}

/** From this confidence on a belief that contradicts the file is worth a doubt. */
const CONTRADICTS = 0.8
/** Up to this one a belief is not settled. */
const UNSETTLED = 0.8

/** The doubts about a line: none where the belief is what the file declares and nothing else comes near. */
export function readDoubts(
  belief: Belief,
  believed: Believed | undefined,
  facts: PartFacts,
  concertScore: boolean,
): readonly Doubt[] {
  const {line, judged} = belief
  const [best] = judged
  if (!best || !believed) return []
  const common = {
    at: placeIn(facts, firstDoubted(belief, facts)),
    for: believed.evidence.filter(({weight}) => weight > 0).map(({words}) => words),
    against: believed.evidence.filter(({weight}) => weight < 0).map(({words}) => words),
    candidates: believed.candidates,
    settle: settleWith(believed),
  }
  if (isDeclared(line, best.hypothesis)) {
    const label = best.hypothesis.instrument
    const transposes = (label?.transposition.chromatic ?? 0) % 12 !== 0
    if (
      best.hypothesis.kind === 'concert' &&
      transposes &&
      !concertScore &&
      believed.confidence > UNSETTLED
    )
      return [
        {
          code: 'doubt/at-pitch',
          severity: 'info',
          message: `it stands at concert pitch although ${label?.labels.en.name ?? 'its instrument'} transposes`,
          ...common,
        },
      ]
    return believed.confidence > UNSETTLED || belief.asked.candidates.length === 0
      ? []
      : [unsettled(believed, common)]
  }
  if (believed.confidence < CONTRADICTS) return [unsettled(believed, common)]
  const declares =
    line.declared.chromatic === 0
      ? 'the file declares no transposition'
      : `the file declares ${describeInterval(line.declared)}`
  const away = best.hypothesis.intervals.map(({chromatic}) => chromatic - line.declared.chromatic)
  const code = codeOf(away, line.declared.chromatic === 0)
  return [
    {
      code,
      severity: 'warning',
      message: `it sounds ${believed.words}, but ${declares}`,
      ...common,
    },
  ]
}

type Common = Omit<Doubt, 'code' | 'severity' | 'message'>

function unsettled(believed: Believed, common: Common): Doubt {
  const [first, second] = believed.candidates
  return {
    code: 'doubt/unsettled',
    severity: 'warning',
    message: `it may sound ${first?.words ?? 'as declared'} or ${second?.words ?? 'otherwise'}; the evidence does not settle it`,
    ...common,
  }
}

/** Some clefs only, whole octaves, nothing declared, or a wrong interval. */
function codeOf(away: readonly number[], isSilent: boolean): Doubt['code'] {
  if (away.includes(0)) return 'doubt/clef'
  if (away.every((semitones) => semitones % 12 === 0)) return 'doubt/octave'
  return isSilent ? 'doubt/undeclared' : 'doubt/transposition'
}

function settleWith({notation}: Believed): string {
  return `--from ${['declared', 'displaced', 'against'].includes(notation) ? 'believed' : notation}`
}

/** The first measure with a note in a clef in which the belief is not what is declared; else the first with a note. */
function firstDoubted({line, judged}: Belief, facts: PartFacts): number {
  const intervals = judged[0]?.hypothesis.intervals ?? []
  const clefs = line.clefs.filter((_, at) => intervals[at]?.chromatic !== line.declared.chromatic)
  const {notes, states} = facts
  for (let note = 0; clefs.length > 0 && note < notes.count; note++) {
    const state = states[notes.state[note] ?? 0]?.state
    if (state && clefs.some((clef) => sameClef(clef, state.clef))) return measureOf(facts, note)
  }
  return line.played.indexOf(1)
}
