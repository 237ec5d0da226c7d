/**
 * A directed interval: `diatonic` in steps (a second is 1), `chromatic` in semitones, octaves included.
 * A major ninth down is `{diatonic: -8, chromatic: -14}`. Composing is adding, inverting is negating.
 */
export interface Interval {
  readonly diatonic: number
  readonly chromatic: number
}

export const UNISON: Interval = {diatonic: 0, chromatic: 0}

/** The diminished second: the same sound, spelled one step higher. Adding it is the enharmonic turn. */
export const DIMINISHED_SECOND: Interval = {diatonic: 1, chromatic: 0}

/** Semitones from the tonic to the major or perfect interval of each number of steps, 0 to 6. */
const MAJOR = [0, 2, 4, 5, 7, 9, 11] as const

export function add(a: Interval, b: Interval): Interval {
  return {diatonic: a.diatonic + b.diatonic, chromatic: a.chromatic + b.chromatic}
}

export function negate(a: Interval): Interval {
  return {diatonic: 0 - a.diatonic, chromatic: 0 - a.chromatic}
}

export function sameInterval(a: Interval, b: Interval): boolean {
  return a.diatonic === b.diatonic && a.chromatic === b.chromatic
}

/** How far a key moves along the circle of fifths when its music moves by the interval. */
export function fifthsOf(interval: Interval): number {
  return 7 * interval.chromatic - 12 * interval.diatonic
}

/** The number of steps that fits a number of semitones best, as names of transpositions use it: -14 → -8. */
export function usualSteps(chromatic: number): number {
  const size = Math.abs(chromatic)
  const octaves = Math.floor(size / 12)
  const steps = [0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6][Math.floor(size) % 12] ?? 0
  const sum = octaves * 7 + steps
  return chromatic < 0 ? 0 - sum : sum
}

/**
 * Reads `M2`, `-P5`, `+m10`, `d2`, `AA4`. The sign is the direction; none means up.
 * Undefined when the text is no interval.
 */
export function parseInterval(text: string): Interval | undefined {
  const match = /^([+-]?)(P|M|m|A{1,3}|d{1,3})(\d{1,2})$/.exec(text.trim())
  if (!match) return undefined
  const [, sign, quality = 'P', number = '1'] = match
  const steps = Number(number) - 1
  if (steps < 0) return undefined
  const perfect = isPerfect(steps)
  if (perfect !== (quality === 'P') && (quality === 'P' || quality === 'M' || quality === 'm'))
    return undefined
  const semitones =
    (MAJOR[steps % 7] ?? 0) +
    12 * Math.floor(steps / 7) +
    (quality.startsWith('A')
      ? quality.length
      : quality === 'm'
        ? -1
        : quality.startsWith('d')
          ? 0 - quality.length - (perfect ? 0 : 1)
          : 0)
  return sign === '-'
    ? negate({diatonic: steps, chromatic: semitones})
    : {diatonic: steps, chromatic: semitones}
}

/**
 * The short name, directed: `-M9`, `+P4`, `P1`; `+d2` for the enharmonic turn. An interval that has
 * no name (more than three times augmented, or microtonal) is given as `+1 steps +3.5 semitones`.
 */
export function formatInterval(interval: Interval): string {
  const down = interval.diatonic < 0 || (interval.diatonic === 0 && interval.chromatic < 0)
  const {diatonic: steps, chromatic} = down ? negate(interval) : interval
  const deviation = chromatic - ((MAJOR[steps % 7] ?? 0) + 12 * Math.floor(steps / 7))
  const quality = qualityOf(deviation, isPerfect(steps))
  if (quality === undefined)
    return `${signed(interval.diatonic)} steps ${signed(interval.chromatic)} semitones`
  const sign = steps === 0 && chromatic === 0 ? '' : down ? '-' : '+'
  return `${sign}${quality}${steps + 1}`
}

const ORDINALS: Readonly<Record<number, string>> = {
  1: 'unison',
  2: 'second',
  3: 'third',
  4: 'fourth',
  5: 'fifth',
  6: 'sixth',
  7: 'seventh',
  8: 'octave',
  9: 'ninth',
  10: 'tenth',
  11: 'eleventh',
  12: 'twelfth',
  13: 'thirteenth',
  14: 'fourteenth',
  15: 'fifteenth',
  16: 'sixteenth',
  17: 'seventeenth',
  18: 'eighteenth',
  19: 'nineteenth',
  20: 'twentieth',
  21: 'twenty-first',
  22: 'twenty-second',
  23: 'twenty-third',
}
const QUALITIES: Readonly<Record<string, string>> = {
  P: 'perfect',
  M: 'major',
  m: 'minor',
  A: 'augmented',
  d: 'diminished',
}

/** In words: `a major ninth lower`, `two octaves higher`, `at the same pitch`. */
export function describeInterval(interval: Interval): string {
  if (interval.diatonic === 0 && interval.chromatic === 0) return 'at the same pitch'
  const direction =
    interval.chromatic < 0 || (interval.chromatic === 0 && interval.diatonic < 0)
      ? 'lower'
      : 'higher'
  const octaves = Math.abs(interval.chromatic) / 12
  if (Number.isInteger(octaves) && Math.abs(interval.diatonic) === octaves * 7) {
    return `${['an octave', 'two octaves', 'three octaves', 'four octaves'][octaves - 1] ?? `${octaves} octaves`} ${direction}`
  }
  const name = /^[+-]?([PMmAd])(\d+)$/.exec(formatInterval(interval))
  const ordinal = name && ORDINALS[Number(name[2])]
  if (!name || !ordinal) return `${formatInterval(interval)} ${direction}`
  const quality = QUALITIES[name[1] ?? ''] ?? ''
  return `${quality.startsWith('a') ? 'an' : 'a'} ${quality} ${ordinal} ${direction}`
}

function isPerfect(steps: number): boolean {
  return [0, 3, 4].includes(steps % 7)
}

function qualityOf(deviation: number, perfect: boolean): string | undefined {
  if (!Number.isInteger(deviation)) return undefined
  if (deviation === 0) return perfect ? 'P' : 'M'
  if (deviation > 0) return deviation <= 3 ? 'A'.repeat(deviation) : undefined
  if (!perfect && deviation === -1) return 'm'
  const times = 0 - deviation - (perfect ? 0 : 1)
  return times <= 3 ? 'd'.repeat(times) : undefined
}

function signed(value: number): string {
  return value < 0 ? String(value) : `+${value}`
}
