import {keyName} from './key-name.ts'
import type {FoldPlan} from './fold.ts'
import type {Line, Tone} from './line.ts'
import type {Reach} from './reach.ts'

/** A tone that no octave of its phrase saves, and the cheapest thing to do about it. */
export interface Unplayable {
  readonly tone: Tone
  /** `leave-out`: another part sounds the note anyway · `alone`: it is in reach an octave away from its line · `give-away`. */
  readonly remedy: 'leave-out' | 'alone' | 'give-away'
  /** In words, as a clause. */
  readonly advice: string
}

/** Another part, and what it is called. */
export interface Neighbour {
  readonly name: string
  readonly line: Line
}

/** What to do about each tone that stays out of reach. */
export function remediesFor(
  plan: FoldPlan,
  reach: Reach,
  others: readonly Neighbour[],
): Unplayable[] {
  return plan.unplayable.map((tone) => {
    const doubling = others.find(({line}) => soundsWith(line, tone))
    if (doubling) {
      const advice = `leave it out: ${doubling.name} sounds it too`
      return {tone, remedy: 'leave-out', advice}
    }
    const octaves = [0, 1, -1, 2, -2, 3, -3].find((octave) =>
      inReach(tone.midi + 12 * octave, reach),
    )
    if (octaves !== undefined) {
      const advice = `play it alone ${awayBy(octaves)}, as ${keyName(tone.midi + 12 * octaves)}`
      return {tone, remedy: 'alone', advice}
    }
    return {tone, remedy: 'give-away', advice: 'give it to another player'}
  })
}

/** `at pitch`, `an octave higher`, `2 octaves lower`. */
export function awayBy(octaves: number): string {
  if (octaves === 0) return 'at pitch'
  const size = Math.abs(octaves) === 1 ? 'an octave' : `${Math.abs(octaves)} octaves`
  return `${size} ${octaves > 0 ? 'higher' : 'lower'}`
}

function inReach(key: number, {low, high}: Reach): boolean {
  return key >= low && key <= high
}

/** Whether a line strikes the same note in any octave when the tone begins. */
function soundsWith({byStart}: Line, tone: Tone): boolean {
  return byStart.get(tone.start)?.tones.some(({midi}) => (midi - tone.midi) % 12 === 0) ?? false
}
