import type {Report} from '../diagnostic.ts'
import {ledgerLinesOf} from '../instruments/ledger-lines.ts'
import {FIRST_STATE} from '../staff/state.ts'
import type {StaffState} from '../staff/state.ts'
import type {Key} from '../pitch/key.ts'
import {isPitched} from '../staff/clef.ts'
import type {PartFacts, StateFact} from '../survey/facts.ts'
import {chooseClefs} from './clefs.ts'
import type {ClefChoice} from './clefs.ts'
import {chooseCourtesies} from './courtesy.ts'
import {BAND_LIMIT, DEFAULT_CLEFS, DEFAULT_KEYS} from './job.ts'
import type {KeyPolicy, PartJob} from './job.ts'
import {chooseRemovedLines, removesStrays} from './octave-lines.ts'
import {isBefore, lastBefore} from './plan.ts'
import type {Identity, PartPlan, Position, Section} from './plan.ts'
import {octavesAt} from './register.ts'
import {withDeclaredKeys, withKeys} from './signatures.ts'
import type {ConcertKey} from './signatures.ts'
import {
  candidatesOf,
  isConcert,
  isDeclared,
  printsKeys,
  targetOf,
  transpositionFor,
} from './target.ts'
import {techniquesOf} from './techniques.ts'
import type {Ensemble, Target} from './target.ts'

/** What a part's plan takes from the rest of the score. */
export interface Surroundings {
  readonly identity?: Identity | undefined
  readonly ensemble?: Ensemble | undefined
  /** The keys on which the other parts agree; only looked at when the part prints none itself. */
  readonly agreedKeys?: readonly ConcertKey[] | undefined
  /** The score has no signatures anywhere: none is made up for the part. */
  readonly openKey?: boolean | undefined
}

/** Decides everything about one part. Reports keys that were turned or taken from the score, as decisions. */
export function planPart(
  facts: PartFacts,
  job: PartJob,
  around: Surroundings,
  report: Report,
): PartPlan {
  const target = targetOf(facts, job)
  const staves: Section[][] = []
  for (let staff = 1; staff <= facts.staves; staff++) {
    staves.push(planStaff(facts, staff, target, job, around, report))
  }
  const plan: PartPlan = {
    part: facts.part,
    staves,
    concert: isConcert(target),
    spelling: isDeclared(target) ? 'exact' : (job.spelling ?? 'keep'),
    courtesy: job.courtesy ?? 'keep',
    octaveLines: {removed: chooseRemovedLines(facts, job), strays: removesStrays(job)},
    ...techniquesOf(facts, job, around.identity),
    layout: job.layout ?? 'keep',
    prints: facts.prints,
    ...(around.identity && {identity: around.identity}),
    ...(job.dropped?.size && {dropped: {firstNote: facts.firstNote, notes: job.dropped}}),
  }
  return plan.courtesy === 'add' ? {...plan, courtesies: chooseCourtesies(facts, plan)} : plan
}

function planStaff(
  facts: PartFacts,
  staff: number,
  target: Target | undefined,
  job: PartJob,
  around: Surroundings,
  report: Report,
): Section[] {
  const source = statesOf(facts, staff)
  const clefs = targetClefs(facts, staff, source, target, job)
  const declared = isDeclared(target)
    ? target.states.filter((state) => state.staff === staff)
    : undefined
  const agreed = isKeyless(source) ? around.agreedKeys : undefined
  const positions = unionOf([
    ...source,
    ...(clefs ?? []),
    ...(declared ?? []),
    ...(agreed ?? []),
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
  if (declared) return withDeclaredKeys(drafts, declared)
  const limit = around.ensemble === 'band' ? BAND_LIMIT : DEFAULT_KEYS.limit
  const policy: KeyPolicy = {...DEFAULT_KEYS, limit, ...job.keys}
  const open = around.openKey === true && isKeyless(source) && policy.signature !== 'print'
  const print = !open && printsKeys(target, policy, around.ensemble ?? 'band')
  return withKeys(drafts, facts, {print, policy, agreed, explain: job.explain === true}, report)
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
  const keeps = facts.staves > 1 || source.some(({state}) => !isPitched(state.clef))
  if (!target || isDeclared(target) || keeps || (!job.for && !job.to)) return undefined
  const policy = {...DEFAULT_CLEFS, ...ledgerLinesOf(job.for?.id), ...job.clefs}
  const candidates = candidatesOf(source, target, job)
  const removedLines = chooseRemovedLines(facts, job)
  return chooseClefs(facts, staff, candidates, policy, job.registers, removedLines)
}

/** Whether a staff never prints a signature: a horn's, a natural trumpet's; or it is in C throughout. */
export function isKeyless(states: readonly StateFact[]): boolean {
  return states.every(
    ({state: {key}}) => key === undefined || ('fifths' in key && key.fifths === 0),
  )
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
