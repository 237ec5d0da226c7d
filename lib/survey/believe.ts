import {partnersOf, readDoublings} from './doubling.ts'
import type {Partner} from './doubling.ts'
import type {Consonance} from './harmony.ts'
import {withDesks} from './desks.ts'
import {readHypotheses} from './hypothesis.ts'
import type {Hypothesis} from './hypothesis.ts'
import {UNKNOWN} from './identify.ts'
import type {Asked} from './identify.ts'
import {judge} from './judged.ts'
import type {Judged} from './judged.ts'
import type {KeyFit} from './keys.ts'
import type {Line} from './line.ts'
import {readHistograms, readLeaps} from './register.ts'
import type {Histogram, Leap} from './register.ts'
import {aboveOthers, compare, soundAll, soundOf} from './scene.ts'
import type {Scene, State} from './scene.ts'
import {
  weighDeclared,
  weighDoubling,
  weighHarmony,
  weighKeys,
  weighLeaps,
  weighRange,
  weighRegister,
  weighRole,
} from './weigh.ts'

/** What is believed of a line: all that it may be, likeliest first, and what the evidence was made of. */
export interface Belief {
  readonly line: Line
  readonly asked: Asked
  readonly judged: readonly Judged[]
  readonly findings: Findings
}

/** What was measured of a line, before it was weighed. */
export interface Findings {
  readonly histograms: readonly Histogram[]
  readonly leaps: readonly Leap[]
  /** For each clef. */
  readonly partners: readonly (readonly Partner[])[]
  readonly consonance?: Consonance
  readonly keys?: KeyFit
}

/** Rounds in which the lines are judged by what was believed of the others in the round before. */
const ROUNDS = 3

/** Judges all lines together: each by its own evidence and by the others as they are believed to sound. */
export function believe(
  lines: readonly Line[],
  asked: readonly Asked[],
  options: {readonly starts: Float64Array; readonly concertScore: boolean},
): readonly Belief[] {
  const stems = asked.map(({stem}, index) => (stem === '' ? `#${index}` : stem))
  const desks = stems.map((stem) => stems.indexOf(stem))
  const scene: Scene = {lines, doublings: readDoublings(lines), desks, ...options}
  const fixed = lines.map((line, index) => {
    const own = asked[index] ?? UNKNOWN
    return {
      hypotheses: readHypotheses(line, own),
      histograms: readHistograms(line),
      leaps: readLeaps(line),
      partners: line.clefs.map((_, clef) => partnersOf(scene.doublings, lines, index, clef)),
    }
  })
  const named = settle(scene, fixed)
  const settled = isSilent(scene, asked) ? orAtPitch(named, scene, fixed) : named
  return lines.map((line, index) => ({
    line,
    asked: asked[index] ?? UNKNOWN,
    judged: settled.state[index] ?? [],
    findings: settled.findings[index] ?? emptyFindings(fixed[index]),
  }))
}

type Fixed = Findings & {readonly hypotheses: readonly Hypothesis[]}

interface Settled {
  readonly state: State
  readonly findings: readonly Findings[]
}

/** Starts from the names and the declarations, and judges until it hardly changes. */
function settle(scene: Scene, fixed: readonly Fixed[]): Settled {
  let findings: readonly Findings[] = fixed
  let state: State = scene.lines.map((line, index) =>
    judge(fixed[index]?.hypotheses ?? [], (hypothesis) => ({
      name: hypothesis.prior,
      declared: weighDeclared(line, hypothesis, scene.concertScore),
    })),
  )
  for (let round = 0; round < ROUNDS; round++) {
    const whole = soundAll(scene, state)
    const before = state
    findings = fixed.map((own, index) => ({...own, ...compare(scene, before, index, whole)}))
    const judged = fixed.map(({hypotheses}, index) =>
      weighAll(scene, before, index, hypotheses, findings[index] ?? emptyFindings(fixed[index])),
    )
    state = judged.map((each, index) => withDesks(scene, judged, index, each))
  }
  return {state, findings}
}

const isOctave = (semitones: number): boolean => semitones % 12 === 0

/** Whether the file declares nothing but octaves although some names transpose: it may stand at concert pitch. */
function isSilent(scene: Scene, asked: readonly Asked[]): boolean {
  return (
    !scene.concertScore &&
    scene.lines.every(({declared}) => isOctave(declared.chromatic)) &&
    asked.some(
      ({candidates: [first]}) => first && !isOctave(first.instrument.transposition.chromatic),
    )
  )
}

/**
 * Whether a file forgets to declare transpositions or has none is one question, not one a part: both are tried, and the
 * music of all parts together decides.
 */
function orAtPitch(named: Settled, scene: Scene, fixed: readonly Fixed[]): Settled {
  const atPitch = settle({...scene, concertScore: true}, fixed)
  return total(atPitch, true) > total(named, false) ? atPitch : named
}

/** How well everything fits. That names transpose counts for nothing in a score at pitch. */
function total({state}: Settled, atPitch: boolean): number {
  return state.reduce((sum, [best]) => {
    if (!best) return sum
    const {hypothesis, score, terms} = best
    const waived = atPitch && hypothesis.kind === 'concert' ? terms.name : 0
    return sum + score - terms.declared - waived
  }, 0)
}

function emptyFindings(known: Findings | undefined): Findings {
  return known ?? {histograms: [], leaps: [], partners: []}
}

function weighAll(
  scene: Scene,
  state: State,
  index: number,
  hypotheses: readonly Hypothesis[],
  findings: Findings,
): readonly Judged[] {
  const line = scene.lines[index]
  if (!line) return []
  return judge(hypotheses, (hypothesis) => ({
    name: hypothesis.prior,
    declared: weighDeclared(line, hypothesis, scene.concertScore),
    key: weighKeys(hypothesis, findings.keys),
    doubling: weighDoubling(hypothesis, findings.partners, (partner) =>
      soundOf(scene, state, index, partner),
    ),
    harmony: weighHarmony(hypothesis, findings.consonance),
    range: weighRange(hypothesis, findings.histograms),
    register: weighRegister(hypothesis, findings.histograms),
    clefs: weighLeaps(hypothesis, findings.leaps),
    role: weighRole(hypothesis, (semitones) => aboveOthers(scene, state, index, semitones)),
  }))
}
