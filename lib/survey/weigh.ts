import {sameInterval, fifthsOf} from '../pitch/interval.ts'
import type {Partner} from './doubling.ts'
import {modulo12} from './harmony.ts'
import type {Consonance} from './harmony.ts'
import {isOld} from './hypothesis.ts'
import type {Hypothesis} from './hypothesis.ts'
import type {KeyFit} from './keys.ts'
import type {Line} from './line.ts'
import {compassOf, measureRegister} from './register.ts'
import type {Compass, Histogram, Leap} from './register.ts'
import {WEIGHTS} from './weights.ts'

/** What the file says of the line's transposition. */
export function weighDeclared(line: Line, hypothesis: Hypothesis, concertScore: boolean): number {
  const {intervals, notation} = hypothesis
  if (intervals.every((interval) => sameInterval(interval, line.declared))) return 0
  const isSilent = line.declared.chromatic === 0 && line.declared.diatonic === 0
  if (isSilent) {
    const octaves = intervals.every(({chromatic}) => chromatic % 12 === 0)
    return concertScore && !octaves ? WEIGHTS.concertScore : WEIGHTS.silent
  }
  const octavesAway = intervals.every(
    ({chromatic}) => (chromatic - line.declared.chromatic) % 12 === 0,
  )
  const trebleAsDeclared = intervals.every(
    (interval, clef) => line.clefs[clef]?.sign === 'F' || sameInterval(interval, line.declared),
  )
  const hasTreble = line.clefs.some(({sign}) => sign !== 'F')
  if (notation && isOld(notation) && hasTreble && trebleAsDeclared) return WEIGHTS.oldBass
  return octavesAway ? WEIGHTS.octave : WEIGHTS.undeclared
}

/** The written signatures against the key of the others. */
export function weighKeys(hypothesis: Hypothesis, fit: KeyFit | undefined): number {
  if (!fit || fit.measures === 0) return 0
  const opening = hypothesis.intervals[0]
  if (!opening) return 0
  const fifths = modulo12(fifthsOf(opening))
  const agree = fit.agree[fifths] ?? 0
  const open = fit.open[fifths] ?? 0
  const wrong = Math.max(0, 1 - agree - open)
  const habit = hypothesis.notation?.keySignature ?? hypothesis.instrument?.keySignature ?? 'yes'
  const missing = habit === 'yes' ? WEIGHTS.key.missing : habit === 'no' ? 0 : WEIGHTS.key.rarely
  return Math.min(1, fit.measures / 4) * (wrong * WEIGHTS.key.wrong + open * missing)
}

/** Lines that it doubles, moved as those are believed to sound. */
export function weighDoubling(
  hypothesis: Hypothesis,
  partners: readonly (readonly Partner[])[],
  soundOf: (partner: Partner) => {readonly semitones: number; readonly weight: number},
): number {
  let sum = 0
  let octaves = 0
  hypothesis.intervals.forEach(({chromatic}, clef) => {
    for (const partner of partners[clef] ?? []) {
      const {semitones, weight} = soundOf(partner)
      const apart = partner.distance + semitones - chromatic
      if (weight === 0 || modulo12(apart) !== 0) continue
      const strength = weight * strengthOf(partner)
      sum += strength
      if (apart === 0) octaves = Math.max(octaves, strength)
    }
  })
  const {scale, most, octave} = WEIGHTS.doubling
  return most * (1 - Math.exp((-scale * sum) / most)) + octave * octaves
}

/** From 0, a line that moves along half of the time, to 1, one that does nothing else for a dozen notes. */
export function strengthOf({shared, matching}: Partner): number {
  return ((2 * matching) / shared - 1) * Math.min(1, shared / 12)
}

export function weighHarmony(hypothesis: Hypothesis, consonance: Consonance | undefined): number {
  if (!consonance) return 0
  const {scale, half} = WEIGHTS.harmony
  return hypothesis.intervals.reduce((sum, {chromatic}, clef) => {
    const notes = consonance.notes[clef] ?? 0
    const mean = consonance.mean[12 * clef + modulo12(chromatic)] ?? 0
    return sum + (scale * mean * notes) / (1 + notes / half)
  }, 0)
}

export function compassFor(hypothesis: Hypothesis): Compass | undefined {
  const opening = hypothesis.notation?.readings[0]?.interval ?? hypothesis.intervals[0]
  return compassOf(hypothesis.instrument, opening?.chromatic ?? 0)
}

export function weighRange(hypothesis: Hypothesis, histograms: readonly Histogram[]): number {
  const compass = compassFor(hypothesis)
  if (!compass) return 0
  const semitones = hypothesis.intervals.map(({chromatic}) => chromatic)
  // Each clef by itself: a few impossible notes in one clef are not made good by the many in the other.
  return Math.max(
    WEIGHTS.range.most,
    histograms.reduce((sum, histogram, clef) => {
      const {outside} = measureRegister([histogram], [semitones[clef] ?? 0], compass)
      return sum + WEIGHTS.range.semitone * outside
    }, 0),
  )
}

export function weighRegister(hypothesis: Hypothesis, histograms: readonly Histogram[]): number {
  const compass = compassFor(hypothesis)
  if (!compass) return 0
  const semitones = hypothesis.intervals.map(({chromatic}) => chromatic)
  const {middle} = measureRegister(histograms, semitones, compass)
  const half = Math.max(8, (compass.usualHigh - compass.usualLow) / 2)
  const away = (middle - (compass.usualHigh + compass.usualLow) / 2) / half
  return WEIGHTS.register * away * away
}

export function weighLeaps(hypothesis: Hypothesis, leaps: readonly Leap[]): number {
  if (leaps.length === 0) return 0
  const sum = leaps.reduce((total, {from, to, distance}) => {
    const moved =
      distance +
      (hypothesis.intervals[to]?.chromatic ?? 0) -
      (hypothesis.intervals[from]?.chromatic ?? 0)
    return total + Math.min(24, Math.abs(moved))
  }, 0)
  const {semitone, half} = WEIGHTS.leap
  return (semitone * sum) / (1 + leaps.length / half)
}

/** Contrabass instruments belong at the bottom. `above` tells how often they would not be there. */
export function weighRole(
  hypothesis: Hypothesis,
  above: (semitones: readonly number[]) => number,
): number {
  const compass = compassFor(hypothesis)
  if (!compass || compass.usualLow > 31) return 0
  return WEIGHTS.role * above(hypothesis.intervals.map(({chromatic}) => chromatic))
}
