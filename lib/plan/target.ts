import {isKeySigned, intervalFor, notationById} from '../instruments/notation.ts'
import type {Notation} from '../instruments/notation.ts'
import {UNISON, negate} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import {transposeKey} from '../pitch/key.ts'
import {BASS, TREBLE, sameClef} from '../staff/clef.ts'
import type {Clef} from '../staff/clef.ts'
import type {StaffState, Transposition} from '../staff/state.ts'
import type {PartFacts, StateFact} from '../survey/facts.ts'
import type {ClefCandidate} from './clefs.ts'
import type {Concert, DeclaredNotation, KeyPolicy, PartJob} from './job.ts'

/** What a job comes down to: a notation of the catalogue, concert pitch, or states given one by one. */
export type Target = Notation | Concert | DeclaredNotation

/** Whether a band or an orchestra plays: orchestral horns, trumpets and timpani print no signature (rule K6). */
export type Ensemble = 'orchestra' | 'band'

/** The notation that a job asks for: as said, else the instrument's modern one, else that of `from` declared truly. */
export function targetOf(facts: PartFacts, job: PartJob): Target | undefined {
  if (job.to && 'kind' in job.to && job.to.kind === 'for-part') return forPartOf(facts)
  if (job.to) return job.to
  const modern = job.for?.modernNotation
  return (modern === undefined ? undefined : notationById(modern)) ?? job.from
}

export function isDeclared(target: Target | undefined): target is DeclaredNotation {
  return target !== undefined && 'kind' in target && target.kind === 'declared'
}

export function isConcert(target: Target | undefined): target is Concert {
  return target !== undefined && 'kind' in target && target.kind === 'concert'
}

/** Whether the target prints signatures. */
export function printsKeys(
  target: Target | undefined,
  keys: KeyPolicy,
  ensemble: Ensemble,
): boolean {
  if (keys.signature !== 'custom') return keys.signature === 'print'
  return !target || 'kind' in target || isKeySigned(target, ensemble)
}

/** What the target adds to written to get sounding under a clef, where the source has a state. */
export function transpositionFor(target: Target, clef: Clef, state: StaffState): Transposition {
  const {double} = state.transposition
  const own = state.transposition.interval
  const interval =
    'kind' in target
      ? target.kind === 'concert'
        ? concertInterval(own, target)
        : own
      : (intervalFor(target, clef) ?? own)
  return {interval, ...(double && {double})}
}

/** The clefs that the target's reader may get, the usual one first. */
export function candidatesOf(
  source: readonly StateFact[],
  target: Notation | Concert,
  job: PartJob,
): ClefCandidate[] {
  if (!('kind' in target) && target.id !== 'concert') {
    return target.readings.map(({clef}) => ({clef, interval: intervalFor(target, clef) ?? UNISON}))
  }
  const own = job.for?.clefs ?? source.map(({state}) => ({...state.clef, octaveChange: 0}))
  const wide = job.for ? own : [...own, TREBLE, BASS]
  const distinct = wide.filter(
    (clef, index) => wide.findIndex((other) => sameClef(other, clef)) === index,
  )
  const [first] = source
  return distinct.map((clef) => ({
    clef,
    interval: first ? transpositionFor(target, clef, first.state).interval : UNISON,
  }))
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

/** What a concert score declares for the part to be made from it; its own states where it declares nothing. */
function forPartOf(facts: PartFacts): DeclaredNotation {
  const states = facts.states.map((fact): StateFact => {
    const {forPart, key, transposition} = fact.state
    if (!forPart) return fact
    const concert = key && transposeKey(key, transposition.interval)
    return {
      ...fact,
      state: {
        clef: forPart.clef ?? fact.state.clef,
        transposition: forPart.transposition,
        ...(concert && {key: transposeKey(concert, negate(forPart.transposition.interval))}),
      },
    }
  })
  return {kind: 'declared', states}
}
