import type {Line} from './line.ts'

/** What sounds around a line, attack by attack: the lowest tone of all other parts, `undefined` where they are silent. */
export interface Surroundings {
  readonly lowest: readonly (number | undefined)[]
}

/** The lowest tone that the other parts sound when an attack of the line begins. */
export function surroundingsOf(line: Line, others: readonly Line[]): Surroundings {
  const tones = others
    .flatMap(({tones: own}) => own.filter(({grace}) => !grace))
    .toSorted((a, b) => a.start - b.start)
  let next = 0
  let sounding: {readonly end: number; readonly midi: number}[] = []
  const lowest = line.attacks.map(({start}) => {
    let added = false
    for (let tone = tones[next]; tone && tone.start <= start; tone = tones[++next]) {
      if (tone.end > start) sounding.push(tone)
      added = true
    }
    if (added || sounding.length > 0) sounding = sounding.filter(({end}) => end > start)
    if (sounding.length === 0) return undefined
    return sounding.reduce((low, {midi}) => Math.min(low, midi), Infinity)
  })
  return {lowest}
}
