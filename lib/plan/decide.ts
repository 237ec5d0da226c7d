import type {Report} from '../diagnostic.ts'
import {isKeySigned, intervalFor, notationById} from '../instruments/notation.ts'
import type {Notation} from '../instruments/notation.ts'
import {FIRST_STATE} from '../staff/state.ts'
import type {StaffState, Transposition} from '../staff/state.ts'
import {DIMINISHED_SECOND, UNISON, formatInterval, negate, sameInterval} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {describeKey, isTraditional, transposeKey} from '../pitch/key.ts'
import type {Key} from '../pitch/key.ts'
import {BASS, TREBLE, isPitched, sameClef} from '../staff/clef.ts'
import type {Clef} from '../staff/clef.ts'
import type {PartFacts, Position, StateFact} from '../survey/facts.ts'
import {chooseClefs} from './clefs.ts'
import type {ClefCandidate, ClefChoice} from './clefs.ts'
import {chooseCourtesies} from './courtesy.ts'
import {DEFAULT_CLEFS, DEFAULT_KEYS} from './job.ts'
import type {Concert, DeclaredNotation, KeyPolicy, PartJob} from './job.ts'
import {chooseTurns} from './keys.ts'
import type {KeyRegion} from './keys.ts'
import {isBefore} from './plan.ts'
import type {Identity, PartPlan, Section} from './plan.ts'
import {octavesAt} from './register.ts'

type Target = Notation | Concert | DeclaredNotation

/** Decides everything about one part. Reports keys that were turned, as decisions. */
export function planPart(
  facts: PartFacts,
  job: PartJob,
  identity: Identity | undefined,
  report: Report,
): PartPlan {
  const target = targetOf(job)
  const staves: Section[][] = []
  for (let staff = 1; staff <= facts.staves; staff++) {
    staves.push(planStaff(facts, staff, target, job, report))
  }
  const concert = target !== undefined && 'kind' in target && target.kind === 'concert'
  const plan: PartPlan = {
    part: facts.part,
    staves,
    concert,
    spelling: isDeclared(target) ? 'exact' : (job.spelling ?? 'keep'),
    courtesy: job.courtesy ?? 'keep',
    prints: facts.prints,
    ...(identity && {identity}),
  }
  return plan.courtesy === 'add' ? {...plan, courtesies: chooseCourtesies(facts, plan)} : plan
}

/** The notation that a job asks for: as said, else the instrument's modern one, else that of `from` declared truly. */
function targetOf(job: PartJob): Target | undefined {
  if (job.to) return job.to
  const modern = job.for?.modernNotation
  return (modern === undefined ? undefined : notationById(modern)) ?? job.from
}

function planStaff(
  facts: PartFacts,
  staff: number,
  target: Target | undefined,
  job: PartJob,
  report: Report,
): Section[] {
  const source = statesOf(facts, staff)
  const keys: KeyPolicy = {...DEFAULT_KEYS, ...job.keys}
  const clefs = targetClefs(facts, staff, source, target, job)
  const declared = isDeclared(target)
    ? target.states.filter((state) => state.staff === staff)
    : undefined
  const positions = unionOf([
    ...source,
    ...(clefs ?? []),
    ...(declared ?? []),
    ...(job.registers ?? []),
  ])
  const drafts = positions.map((position): Section => {
    const state = lastBefore(source, position)?.state ?? FIRST_STATE
    const wanted = declared && (lastBefore(declared, position)?.state ?? FIRST_STATE)
    const untouched = !isPitched(state.clef)
    const clef = wanted?.clef ?? (clefs && lastBefore(clefs, position)?.clef) ?? state.clef
    const octaves = octavesAt(job.registers, position)
    const base = {...position, staff, source: state, untouched, ...(octaves !== 0 && {octaves})}
    if (untouched || !target) return {...base, ...keptOf(state)}
    const transposition = wanted?.transposition ?? transpositionFor(target, clef, state)
    return {...base, clef, transposition}
  })
  return declared
    ? withDeclaredKeys(drafts, declared)
    : withKeys(drafts, facts, signed(target, keys), keys, report)
}

/** Whether the target prints signatures. */
function signed(target: Target | undefined, keys: KeyPolicy): boolean {
  if (keys.signature !== 'custom') return keys.signature === 'print'
  return !target || 'kind' in target || isKeySigned(target, 'band')
}

function keptOf(state: StaffState): Pick<Section, 'clef' | 'transposition'> & {key?: Key} {
  return {clef: state.clef, transposition: state.transposition, ...(state.key && {key: state.key})}
}

/** The clefs that the target's reader gets; undefined where the source's stay. */
function targetClefs(
  facts: PartFacts,
  staff: number,
  source: readonly StateFact[],
  target: Target | undefined,
  job: PartJob,
): ClefChoice[] | undefined {
  if (
    !target ||
    isDeclared(target) ||
    facts.staves > 1 ||
    source.some(({state}) => !isPitched(state.clef))
  ) {
    return undefined
  }
  if (!job.for && !job.to) return undefined
  const policy = {...DEFAULT_CLEFS, ...job.clefs}
  return chooseClefs(facts, staff, candidatesOf(source, target, job), policy, job.registers)
}

function candidatesOf(
  source: readonly StateFact[],
  target: Notation | Concert,
  job: PartJob,
): ClefCandidate[] {
  const first = source[0]?.state ?? FIRST_STATE
  if (!('kind' in target) && target.id !== 'concert') {
    const known = target.readings.map(({clef}) => clef)
    return known.map((clef) => ({clef, interval: intervalFor(target, clef) ?? UNISON}))
  }
  const own = job.for?.clefs ?? source.map(({state}) => ({...state.clef, octaveChange: 0}))
  const wide = job.for ? own : [...own, TREBLE, BASS]
  const distinct = wide.filter(
    (clef, index) => wide.findIndex((other) => sameClef(other, clef)) === index,
  )
  return distinct.map((clef) => ({clef, interval: transpositionFor(target, clef, first).interval}))
}

function transpositionFor(target: Target, clef: Clef, state: StaffState): Transposition {
  const {double} = state.transposition
  const interval =
    'kind' in target
      ? target.kind === 'concert'
        ? concertInterval(state.transposition.interval, target)
        : state.transposition.interval
      : (intervalFor(target, clef) ?? state.transposition.interval)
  return {interval, ...(double && {double})}
}

/**
 * In a C score instruments that sound whole octaves away stay so, and small flutes in D flat or E flat keep their
 * octave; everybody else stands at sounding pitch.
 */
function concertInterval(from: Interval, {octaves}: Concert): Interval {
  if (octaves === 'sounding') return UNISON
  const whole = Math.trunc(from.chromatic / 12)
  if (from.chromatic === 12 * whole && from.diatonic === 7 * whole) return from
  return whole > 0 ? {diatonic: 7 * whole, chromatic: 12 * whole} : UNISON
}

function withDeclaredKeys(drafts: readonly Section[], declared: readonly StateFact[]): Section[] {
  return drafts.map((draft) => {
    if (draft.untouched) return draft
    const key = lastBefore(declared, draft)?.state.key
    return {...draft, ...(key && {key})}
  })
}

/** Gives every section its key; turns intervals enharmonically where a signature would have too many signs. */
function withKeys(
  drafts: readonly Section[],
  facts: PartFacts,
  print: boolean,
  policy: KeyPolicy,
  report: Report,
): Section[] {
  const regions: (KeyRegion & {readonly from: number})[] = []
  drafts.forEach((draft, index) => {
    const concert =
      draft.source.key && transposeKey(draft.source.key, draft.source.transposition.interval)
    const last = regions.at(-1)
    const before = drafts[index - 1]
    const same =
      last &&
      before &&
      before.source.key === draft.source.key &&
      sameInterval(before.source.transposition.interval, draft.source.transposition.interval) &&
      sameFifths(before.transposition.interval, draft.transposition.interval)
    if (!same) regions.push({concert, interval: draft.transposition.interval, from: index})
  })
  const changes = drafts.some(
    (draft) =>
      !draft.untouched &&
      !sameInterval(draft.source.transposition.interval, draft.transposition.interval),
  )
  const turns = changes && print ? chooseTurns(regions, policy) : regions.map(() => 0)
  let region = -1
  return drafts.map((draft, index) => {
    const starts = regions[region + 1]?.from === index
    if (starts) region++
    if (draft.untouched) return draft
    const concert = regions[region]?.concert
    const turn = turns[region] ?? 0
    const transposition = turn === 0 ? draft.transposition : turned(draft.transposition, turn)
    if (!concert) return {...draft, transposition}
    const key = print ? transposeKey(concert, negate(transposition.interval)) : {fifths: 0}
    if (starts && turn !== 0) reportTurn(draft, key, facts, transposition, report)
    return {...draft, transposition, key}
  })
}

function turned(transposition: Transposition, turn: number): Transposition {
  const {diatonic, chromatic} = transposition.interval
  return {
    ...transposition,
    interval: {diatonic: diatonic + turn * DIMINISHED_SECOND.diatonic, chromatic},
  }
}

function reportTurn(
  at: Position,
  key: Key,
  facts: PartFacts,
  to: Transposition,
  report: Report,
): void {
  const measure = facts.numbers[at.measure]
  const line = facts.lines[at.measure]
  report({
    code: 'key/turned',
    severity: 'info',
    message: `the signature is written enharmonically, with ${describeKey(key)}, and the transposition as ${formatInterval(to.interval)}`,
    at: {
      part: facts.part,
      ...(measure !== undefined && {measure}),
      ...(line !== undefined && {line}),
    },
    ...(isTraditional(key) && {actual: String(key.fifths)}),
  })
}

function sameFifths(a: Interval, b: Interval): boolean {
  return 7 * (a.chromatic - b.chromatic) - 12 * (a.diatonic - b.diatonic) === 0
}

function statesOf(facts: PartFacts, staff: number): StateFact[] {
  const own = facts.states.filter((state) => state.staff === staff)
  const [first] = own
  if (first && first.measure === 0 && first.onset === 0) return own
  return [{measure: 0, onset: 0, staff, state: FIRST_STATE}, ...own]
}

function unionOf(positions: readonly Position[]): Position[] {
  const ordered = positions
    .map(({measure, onset}) => ({measure, onset}))
    .toSorted((a, b) => a.measure - b.measure || a.onset - b.onset)
  return ordered.filter((position, index) => {
    const before = ordered[index - 1]
    return !before || isBefore(before, position)
  })
}

function lastBefore<T extends Position>(list: readonly T[], at: Position): T | undefined {
  return list.findLast((each) => !isBefore(at, each))
}

function isDeclared(target: Target | undefined): target is DeclaredNotation {
  return target !== undefined && 'kind' in target && target.kind === 'declared'
}
