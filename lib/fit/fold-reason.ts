import {keyName} from './key-name.ts'
import type {Attack} from './line.ts'
import type {Reach} from './reach.ts'

/** Why a stretch is moved: what would be wrong with it at pitch, as a clause about the stretch. */
export function reasonFor(attacks: readonly Attack[], reach: Reach, octaves: number): string {
  const keys = attacks.flatMap(({tones}) => tones.map(({midi}) => midi))
  const share = (count: number): string =>
    count === keys.length
      ? count === 1
        ? 'its one note lies'
        : `all ${count} notes lie`
      : `${count} of its ${keys.length} notes ${count === 1 ? 'lies' : 'lie'}`
  const up = octaves > 0
  const beyond = keys.filter((key) => (up ? key < reach.low : key > reach.high)).length
  if (beyond > 0)
    return up
      ? `${share(beyond)} below ${keyName(reach.low)}, the lowest that can be played`
      : `${share(beyond)} above ${keyName(reach.high)}, the highest that can be played`
  const uneasy = keys.filter((key) => (up ? key < reach.easyLow : key > reach.easyHigh)).length
  if (uneasy > 0)
    return up
      ? `${share(uneasy)} below ${keyName(reach.easyLow)}, the lowest that is comfortable`
      : `${share(uneasy)} above ${keyName(reach.easyHigh)}, the highest that is comfortable`
  return 'it stays with the phrases around it'
}
