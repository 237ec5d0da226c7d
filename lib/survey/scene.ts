import {UNISON} from '../pitch/interval.ts'
import {countAbove} from './doubling.ts'
import type {Doublings, Partner} from './doubling.ts'
import {addToGrid, emptyGrid, modulo12, readConsonance} from './harmony.ts'
import type {Consonance, Grid} from './harmony.ts'
import type {Judged} from './judged.ts'
import {addKeys, emptyKeys, readKeyFit} from './keys.ts'
import type {KeyFit, KeyTable} from './keys.ts'
import type {Line} from './line.ts'

/** Everything that the lines of a score are compared by. */
export interface Scene {
  readonly lines: readonly Line[]
  readonly starts: Float64Array
  readonly doublings: Doublings
  readonly concertScore: boolean
  /** Lines with the same number share a name but for the player. */
  readonly desks: readonly number[]
}

/** What is currently believed of every line. */
export type State = readonly (readonly Judged[])[]

/** How a partner is believed to sound: its semitones, and how sure that is; nothing of those who share the name. */
export function soundOf(
  scene: Scene,
  state: State,
  index: number,
  {line, clef}: Partner,
): {readonly semitones: number; readonly weight: number} {
  const [best] = state[line] ?? []
  const semitones = best?.hypothesis.intervals[clef]?.chromatic ?? 0
  if (scene.desks[line] === scene.desks[index]) return {semitones, weight: 0}
  return {semitones, weight: pitchClassWeight(state[line] ?? [], clef)}
}

/** The share of its meetings with other bass lines at which a line would sound above them. */
export function aboveOthers(
  scene: Scene,
  state: State,
  index: number,
  semitones: readonly number[],
): number {
  let above = 0
  let met = 0
  scene.lines.forEach((other, at) => {
    if (at === index || scene.desks[at] === scene.desks[index]) return
    const [best] = state[at] ?? []
    other.clefs.forEach((_, otherClef) => {
      const sounding = best?.hypothesis.intervals[otherClef]?.chromatic ?? 0
      semitones.forEach((own, clef) => {
        const count = countAbove(
          scene.doublings,
          {voice: (scene.doublings.firstVoice[index] ?? 0) + clef, semitones: own},
          {voice: (scene.doublings.firstVoice[at] ?? 0) + otherClef, semitones: sounding},
        )
        above += count.above
        met += count.met
      })
    })
  })
  return met > 0 ? above / met : 0
}

/** The harmony and the keys of all lines as they are believed to sound. */
export function soundAll(
  scene: Scene,
  state: State,
): {readonly grid: Grid; readonly keys: KeyTable} {
  const grid = emptyGrid(scene.starts)
  const keys = emptyKeys(scene.starts.length - 1)
  scene.lines.forEach((_, index) => addLine(scene, state, index, {grid, keys}, 1))
  return {grid, keys}
}

function addLine(
  scene: Scene,
  state: State,
  index: number,
  {grid, keys}: {readonly grid: Grid; readonly keys: KeyTable},
  sign: 1 | -1,
): void {
  const line = scene.lines[index]
  const judged = state[index] ?? []
  const [best] = judged
  if (!line || !best) return
  const weights = line.clefs.map((_, clef) => pitchClassWeight(judged, clef))
  const semitones = best.hypothesis.intervals.map(({chromatic}) => chromatic)
  addToGrid(
    grid,
    line,
    semitones,
    weights.map((weight) => sign * weight),
  )
  // Who rarely prints signatures says little about the key with an empty one.
  const habit = best.hypothesis.instrument?.keySignature ?? 'yes'
  const says = line.keys.some((key) => key !== 0) || habit === 'yes' ? 1 : 0
  addKeys(keys, line, best.hypothesis.intervals[0] ?? UNISON, sign * says * (weights[0] ?? 0))
}

/** How sure it is which pitch classes a line sounds in a clef: what all agree on who agree with the likeliest. */
function pitchClassWeight(judged: readonly Judged[], clef: number): number {
  const best = modulo12(judged[0]?.hypothesis.intervals[clef]?.chromatic ?? 0)
  let weight = 0
  for (const {hypothesis, probability} of judged)
    if (modulo12(hypothesis.intervals[clef]?.chromatic ?? 0) === best) weight += probability
  return weight
}

export function compare(
  scene: Scene,
  state: State,
  index: number,
  whole: {readonly grid: Grid; readonly keys: KeyTable},
): {readonly consonance: Consonance; readonly keys: KeyFit} | undefined {
  const line = scene.lines[index]
  if (!line) return undefined
  const mates = scene.desks.flatMap((desk, at) => (desk === scene.desks[index] ? [at] : []))
  for (const mate of mates) addLine(scene, state, mate, whole, -1)
  const found = {consonance: readConsonance(whole.grid, line), keys: readKeyFit(whole.keys, line)}
  for (const mate of mates) addLine(scene, state, mate, whole, 1)
  return found
}
