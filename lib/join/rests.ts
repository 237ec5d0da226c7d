import type {Meter} from '../staff/state.ts'

/** A rest that stands in a gap; `duration` in quarters. */
export interface RestValue {
  readonly duration: number
  /** A note type of MusicXML: `quarter`, `eighth`. */
  readonly type: string
  readonly dotted: boolean
}

const VALUES: readonly RestValue[] = [
  {duration: 4, type: 'whole', dotted: false},
  {duration: 3, type: 'half', dotted: true},
  {duration: 2, type: 'half', dotted: false},
  {duration: 1.5, type: 'quarter', dotted: true},
  {duration: 1, type: 'quarter', dotted: false},
  {duration: 0.5, type: 'eighth', dotted: false},
  {duration: 0.25, type: '16th', dotted: false},
  {duration: 0.125, type: '32nd', dotted: false},
  {duration: 0.0625, type: '64th', dotted: false},
]

/**
 * The rests that fill a measure from one place to another, as its meter groups them: each begins where a note of its
 * value would, dotted ones stand for beats of a compound meter, and no half rest hides the beats of a triple one. In quarters
 * from the start of the measure. Undefined where no plain rests fill the gap (inside a tuplet).
 */
export function restsBetween(from: number, to: number, meter: Meter): RestValue[] | undefined {
  const rests: RestValue[] = []
  let at = from
  while (at < to) {
    const next = VALUES.find((value) => at + value.duration <= to && fits(value, at, meter))
    if (!next) return undefined
    rests.push(next)
    at += next.duration
  }
  return rests
}

function fits({duration, dotted}: RestValue, at: number, {beats, beatType}: Meter): boolean {
  const isCompound = beats % 3 === 0 && (beatType >= 8 || beats > 3)
  if (isCompound) {
    const beat = 12 / beatType
    const isOdd = (beats / 3) % 2 === 1
    if (isOdd && duration > beat) return false
    // A quarter rest may begin a beat of three eighths, not end one.
    if (duration === (2 * beat) / 3) return at % beat === 0
    return at % duration === 0 && (dotted ? duration % beat === 0 : duration <= beat / 3)
  }
  const beat = 4 / beatType
  if (beats % 2 === 1 && duration > beat) return false
  return !dotted && at % duration === 0
}
