import {describeInterval} from '../pitch/interval.ts'
import {formatPitch, naturalAt} from '../pitch/pitch.ts'
import {describeClef} from '../staff/clef.ts'
import type {Belief} from './believe.ts'
import {modulo12} from './harmony.ts'
import type {Hypothesis} from './hypothesis.ts'
import {EVIDENCE} from './judged.ts'
import type {EvidenceKind, Judged} from './judged.ts'
import type {Line} from './line.ts'
import {measureRegister} from './register.ts'
import {compassFor, strengthOf} from './weigh.ts'

/** One kind of evidence, for the belief and against its strongest rival. */
export interface Evidence {
  readonly kind: EvidenceKind
  /** The logarithm of the odds that it gives; negative is against. */
  readonly weight: number
  /** In a musician's words. */
  readonly words: string
}

/** `sounds a fifth lower`, clef by clef where the clefs differ. */
export function describeHypothesis(line: Line, {intervals}: Hypothesis): string {
  const [first] = intervals
  if (!first) return 'nothing'
  if (intervals.every(({chromatic}) => chromatic === first.chromatic))
    return describeInterval(first)
  return intervals
    .map((interval, at) => {
      const clef = line.clefs[at]
      return `${describeInterval(interval)} in ${clef ? describeClef(clef) : 'its clef'}`
    })
    .join(', ')
}

/** What tells the two apart, strongest first; what weighs next to nothing is left out. */
export function explain(
  belief: Belief,
  best: Judged,
  rival: Judged,
  all: readonly Belief[],
  nameOf: (line: Line) => string,
): readonly Evidence[] {
  return EVIDENCE.map((kind) => {
    const weight = best.terms[kind] - rival.terms[kind]
    return {
      kind,
      weight: Math.round(weight * 10) / 10,
      words: wordsFor(kind, weight, belief, best, rival, all, nameOf),
    }
  })
    .filter(({weight}) => Math.abs(weight) >= 0.3)
    .toSorted((a, b) => Math.abs(b.weight) - Math.abs(a.weight))
}

function wordsFor(
  kind: EvidenceKind,
  weight: number,
  belief: Belief,
  best: Judged,
  rival: Judged,
  all: readonly Belief[],
  nameOf: (line: Line) => string,
): string {
  const {line, findings} = belief
  const favoured = weight > 0 ? best : rival
  const other = weight > 0 ? rival : best
  const sound = describeHypothesis(line, favoured.hypothesis)
  switch (kind) {
    case 'name':
      return `the name “${nameOf(line)}” means ${nameOfNotation(favoured)} sooner than ${nameOfNotation(other)}`
    case 'declared':
      return line.declared.chromatic === 0
        ? 'the file declares no transposition'
        : `the file declares ${describeInterval(line.declared)}`
    case 'key':
      return `with its signatures the part is in the key of the others when it sounds ${sound}`
    case 'doubling':
      return (
        doublingWords(belief, favoured, all, nameOf) ??
        `it moves with other parts when it sounds ${sound}`
      )
    case 'harmony':
      return `its notes belong to the harmony of the others when it sounds ${sound}, and less when it sounds ${describeHypothesis(line, other.hypothesis)}`
    case 'range':
      return rangeWords(belief, other)
    case 'register':
      return `sounding ${sound} it lies nearer the middle of what its instrument usually plays`
    case 'clefs':
      return `the line goes on more smoothly where the clef changes: ${leapWords(findings.leaps, favoured)} against ${leapWords(findings.leaps, other)}`
    case 'role':
      return `sounding ${sound} it stays below the other basses`
    case 'desks':
      return `the other parts for the same instrument say so too`
  }
}

function nameOfNotation({hypothesis}: Judged): string {
  const {notation, kind, instrument} = hypothesis
  if (kind === 'displaced')
    return `${instrument?.labels.en.name ?? 'the instrument'} in another octave`
  return notation?.name ?? 'a transposition that none of its notations has'
}

/** The partner that the line doubles most. */
function doublingWords(
  {line, findings}: Belief,
  {hypothesis}: Judged,
  all: readonly Belief[],
  nameOf: (line: Line) => string,
): string | undefined {
  let best: {words: string; strength: number} | undefined
  line.clefs.forEach((_, clef) => {
    for (const partner of findings.partners[clef] ?? []) {
      const other = all[partner.line]
      const sounding = other?.judged[0]?.hypothesis.intervals[partner.clef]?.chromatic ?? 0
      const apart = partner.distance + sounding - (hypothesis.intervals[clef]?.chromatic ?? 0)
      const strength = strengthOf(partner)
      if (!other || modulo12(apart) !== 0 || strength <= (best?.strength ?? 0)) continue
      const how = apart === 0 ? 'at the unison' : 'at the octave'
      best = {
        strength,
        words: `it doubles ${nameOf(other.line)} ${how} in ${partner.matching} of ${partner.shared} notes that they begin together`,
      }
    }
  })
  return best?.words
}

function rangeWords({findings}: Belief, {hypothesis}: Judged): string {
  const compass = compassFor(hypothesis)
  const name = hypothesis.instrument?.labels.en.name ?? 'its instrument'
  if (!compass) return `the other reading leaves the range of ${name}`
  const semitones = hypothesis.intervals.map(({chromatic}) => chromatic)
  const {far} = measureRegister(findings.histograms, semitones, compass)
  return `otherwise ${Math.max(1, Math.round(far * 100))} % of its notes lie outside what ${name} can play, ${plainPitch(compass.low)} to ${plainPitch(compass.high)}`
}

function leapWords(leaps: Belief['findings']['leaps'], {hypothesis}: Judged): string {
  const sum = leaps.reduce(
    (total, {from, to, distance}) =>
      total +
      Math.abs(
        distance +
          (hypothesis.intervals[to]?.chromatic ?? 0) -
          (hypothesis.intervals[from]?.chromatic ?? 0),
      ),
    0,
  )
  return `leaps of ${Math.round(sum / Math.max(1, leaps.length))} semitones`
}

/** A key number as a pitch, flats rather than sharps. */
function plainPitch(midi: number): string {
  const octave = Math.floor(midi / 12) - 1
  const [step = 0, alter = 0] = FLATS[modulo12(midi)] ?? []
  return formatPitch({...naturalAt(step + 7 * octave), alter})
}

const FLATS = [
  [0, 0],
  [1, -1],
  [1, 0],
  [2, -1],
  [2, 0],
  [3, 0],
  [4, -1],
  [4, 0],
  [5, -1],
  [5, 0],
  [6, -1],
  [6, 0],
] as const
