import {keyName} from './key-name.ts'
import type {Attack} from './line.ts'
import type {Reach} from './reach.ts'

/** Why a stretch is moved: what would be wrong with it at pitch, as a clause about the stretch. */
export function reasonFor(attacks: readonly Attack[], reach: Reach, octaves: number): string {
  const count = (isMeant: (key: number) => boolean): number =>
    attacks.reduce(
      (sum, {tones}) => sum + tones.reduce((own, {midi}) => own + Number(isMeant(midi)), 0),
      0,
    )
  const total = count(() => true)
  const share = (some: number): string =>
    some === total
      ? some === 1
        ? 'its one note lies'
        : `all ${some} notes lie`
      : `${some} of its ${total} notes ${some === 1 ? 'lies' : 'lie'}`
  const up = octaves > 0
  const beyond = count((key) => (up ? key < reach.low : key > reach.high))
  if (beyond > 0)
    return up
      ? `${share(beyond)} below ${keyName(reach.low)}, the lowest that can be played`
      : `${share(beyond)} above ${keyName(reach.high)}, the highest that can be played`
  const uneasy = count((key) => (up ? key < reach.easyLow : key > reach.easyHigh))
  if (uneasy > 0)
    return up
      ? `${share(uneasy)} below ${keyName(reach.easyLow)}, the lowest that is comfortable`
      : `${share(uneasy)} above ${keyName(reach.easyHigh)}, the highest that is comfortable`
  return 'it stays with the phrases around it'
}
