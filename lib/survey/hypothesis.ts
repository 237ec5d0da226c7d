import {concert, intervalFor, notationById, notationsOf} from '../instruments/notation.ts'
import type {Notation} from '../instruments/notation.ts'
import {instrumentById} from '../instruments/instrument.ts'
import type {Instrument} from '../instruments/instrument.ts'
import {add, negate, parseInterval, sameInterval, UNISON} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'
import type {Clef} from '../staff/clef.ts'
import type {Asked, AskedInstrument} from './identify.ts'
import type {Line} from './line.ts'
import {WEIGHTS} from './weights.ts'

/** A way in which a line may be meant: what each of its clefs adds to written to get sounding. */
export interface Hypothesis {
  /** The notation, where the catalogue has one that says so. */
  readonly notation?: Notation
  readonly kind: 'notation' | 'concert' | 'displaced' | 'declared' | 'against'
  /** One for each of the line's clefs. */
  readonly intervals: readonly Interval[]
  readonly instrument?: Instrument
  /** All instruments for which it is a notation, with the logarithm of how likely the name makes it for each. */
  readonly instruments: readonly {readonly instrument: Instrument; readonly prior: number}[]
  /** Logarithm of how likely the name alone makes it. */
  readonly prior: number
}

const OCTAVE = {diatonic: 7, chromatic: 12}

/** Transpositions of wind instruments, for parts whose names say nothing or the wrong thing. */
const USUAL = '-M2 -m3 -P5 -M6 -M9 -M13 -P4 +m3 +P4 +M2 -P8 +P8'.split(' ')

/** Every way in which the line may be meant; of those that sound the same the likeliest. */
export function readHypotheses(line: Line, asked: Asked): readonly Hypothesis[] {
  const found: Hypothesis[] = []
  for (const candidate of withOldInstruments(asked)) {
    for (const notation of notationsOf(candidate.instrument).filter((each) => covers(each, line)))
      offer(found, fromNotation(line, notation, candidate, asked))
    const modern = notationById(candidate.instrument.modernNotation ?? '')
    if (!modern) continue
    const prior = Math.log(candidate.confidence) + WEIGHTS.displaced
    const intervals = intervalsOf(line, modern)
    for (const octave of [OCTAVE, negate(OCTAVE)]) {
      offer(found, {
        kind: 'displaced',
        intervals: intervals.map((interval) => add(interval, octave)),
        instrument: candidate.instrument,
        instruments: [{instrument: candidate.instrument, prior}],
        prior,
      })
    }
  }
  const [first] = asked.candidates
  // What the name leaves open may be anything, and most anything is at pitch.
  const open = 1 - asked.candidates.reduce((sum, {confidence}) => sum + confidence, 0)
  const nameless = Math.log(Math.max(1e-4, open)) + (first ? WEIGHTS.elsewhere : 0)
  const common = {...(first && {instrument: first.instrument}), instruments: []}
  offer(found, {
    kind: 'concert',
    notation: concert,
    intervals: line.clefs.map(() => UNISON),
    ...common,
    prior: Math.max(nameless, WEIGHTS.concert),
  })
  offer(found, {
    kind: 'declared',
    intervals: line.clefs.map(() => line.declared),
    ...common,
    prior: Math.max(nameless, WEIGHTS.unknown),
  })
  for (const text of USUAL) {
    const interval = parseInterval(text) ?? UNISON
    offer(found, {
      kind: 'against',
      intervals: line.clefs.map(() => interval),
      ...common,
      prior: Math.max(nameless + WEIGHTS.nameless, WEIGHTS.against),
    })
  }
  return found
}

/** Whether two of them sound the same on every note of the line. */
export function sameSound(a: Hypothesis, b: Hypothesis): boolean {
  return a.intervals.every((interval, clef) => {
    const other = b.intervals[clef]
    return other !== undefined && sameInterval(interval, other)
  })
}

function offer(found: Hypothesis[], hypothesis: Hypothesis): void {
  const at = found.findIndex((other) => sameSound(other, hypothesis))
  const known = found[at]
  if (!known) {
    found.push(hypothesis)
    return
  }
  const likelier = known.prior < hypothesis.prior ? hypothesis : known
  found[at] = {...likelier, instruments: [...known.instruments, ...hypothesis.instruments]}
}

function fromNotation(
  line: Line,
  notation: Notation,
  {instrument, confidence}: AskedInstrument,
  asked: Asked,
): Hypothesis {
  const isModern = notation.id === instrument.modernNotation
  const intervals = intervalsOf(line, notation)
  const opening = notation.readings[0]?.interval ?? UNISON
  let prior = Math.log(confidence)
  if (isAtPitch(instrument, notation)) prior += isModern ? 0 : WEIGHTS.concert
  else if (notation.id.includes('crook') && asked.keys.length === 0) prior += WEIGHTS.keyless
  else if (!isModern) prior += crooked(instrument, asked) ? 0 : WEIGHTS.other[notation.confidence]
  if (asked.keys.length > 0 && !fitsKey(opening, instrument, asked, isModern))
    prior += WEIGHTS.otherKey
  if (asked.octave && octaveOf(notation) !== undefined && octaveOf(notation) !== asked.octave)
    prior += WEIGHTS.otherOctave
  if (!asked.octave && isRareOctave(notation)) prior += WEIGHTS.rareOctave
  const isForeign = line.clefs.some(
    (clef) => !notation.readings.some((each) => sameSign(each.clef, clef)),
  )
  if (isForeign && intervals.some(({chromatic}) => chromatic !== 0)) prior += WEIGHTS.foreignClef
  return {
    kind: 'notation',
    notation,
    intervals,
    instrument,
    instruments: [{instrument, prior}],
    prior,
  }
}

/** Whether the notation says something of at least one clef of the line; a single row is about its clef only. */
function covers(notation: Notation, line: Line): boolean {
  return line.clefs.some((clef) => intervalIn(notation, clef) !== undefined)
}

function sameSign(a: Clef, b: Clef): boolean {
  return a.sign === b.sign && a.line === b.line
}

/** Among crooks the modern notation is no likelier than the others: the name's key decides. */
function crooked(instrument: Instrument, asked: Asked): boolean {
  return instrument.id.startsWith('natural-') && asked.keys.length > 0
}

function isAtPitch(instrument: Instrument, notation: Notation): boolean {
  return (
    instrument.transposition.chromatic !== 0 &&
    notation.readings.every(({interval}) => interval.chromatic === 0) &&
    !notation.id.includes('crook')
  )
}

/** Crooks that are named alto or basso where they are meant, all but the B flat basso (conventions, "Horns"). */
function isRareOctave({id}: Notation): boolean {
  return /crook-.*-alto|crook-(?!b-flat|b-natural).*-basso/.test(id)
}

function octaveOf(notation: Notation): 'alto' | 'basso' | undefined {
  if (/crook-(a|a-flat|g|b-flat|b-natural)-basso|crook-c\b(?!-alto)/.test(notation.id))
    return 'basso'
  return /crook-(c|b-flat|b-natural)-alto|crook-(a|a-flat|g)\b/.test(notation.id)
    ? 'alto'
    : undefined
}

/** Whether written C sounds the key in the name; trombones and tubas have a key that is not their transposition. */
function fitsKey(
  opening: Interval,
  instrument: Instrument,
  asked: Asked,
  isModern: boolean,
): boolean {
  const sounds = ((opening.chromatic % 12) + 12) % 12
  if (asked.keys.includes(sounds)) return true
  const inherent = ((instrument.transposition.chromatic % 12) + 12) % 12 === 0 && isModern
  return inherent && (instrument.builtIn ?? 'C') !== 'C'
}

/** Horns and trumpets in a key that no modern one has are the old ones with crooks. */
function withOldInstruments(asked: Asked): readonly AskedInstrument[] {
  const old = {horns: 'natural-horn', trumpets: 'natural-trumpet'} as const
  const more: AskedInstrument[] = []
  for (const candidate of asked.candidates) {
    const {family, id} = candidate.instrument
    if (family !== 'horns' && family !== 'trumpets') continue
    const natural = instrumentById(old[family])
    if (!natural || id === natural.id || more.some(({instrument}) => instrument === natural))
      continue
    if (asked.candidates.some(({instrument}) => instrument === natural)) continue
    if (/tuba|mellophone|bass-trumpet/.test(id)) continue
    more.push({...candidate, instrument: natural, confidence: candidate.confidence * 0.5})
  }
  return [...asked.candidates, ...more]
}

/**
 * What a notation adds in each clef of the line. The old bass clef of horns is often shown with a small 8 by encoders
 * who put the pitches where they are read: then the octave is in the pitches (MusicXML 4.0, `clef-octave-change`).
 */
function intervalsOf(line: Line, notation: Notation): Interval[] {
  return line.clefs.map((clef) => intervalIn(notation, clef) ?? line.declared)
}

function intervalIn(notation: Notation, clef: Clef): Interval | undefined {
  return intervalFor(withOldOctave(notation), clef)
}

/** A notation whose old bass clef is known to be shown with a small 8 at times. */
export function withOldOctave(notation: Notation): Notation {
  if (!isOld(notation)) return notation
  return {
    ...notation,
    readings: notation.readings.map((reading) =>
      reading.clef.sign === 'F' && !reading.octaveMark ? {...reading, octaveMark: '8va'} : reading,
    ),
  }
}

export function isOld({id}: Notation): boolean {
  return id.endsWith('.old')
}
