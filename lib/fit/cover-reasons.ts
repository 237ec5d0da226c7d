import type {Instrument} from '../instruments/instrument.ts'
import {describeSignature} from './cover.ts'
import type {Cover} from './cover.ts'
import {isBreathless} from './effort.ts'
import {measuresOf} from './fold.ts'
import type {Line} from './line.ts'
import {awayBy} from './remedy.ts'

/** Why a cover stands where it stands, as clauses: how the line lies, how it sounds, what it costs. */
export function reasonsFor(line: Line, cover: Cover): string[] {
  return [
    ...placeReasons(line, cover),
    ...cover.kinship.reasons,
    ...lossReasons(cover),
    ...fitReasons(cover),
  ]
}

/** `contrabass tuba in B flat`, with the player's name before it where there is one. */
export function titleOf({
  player,
  instrument,
}: {
  readonly player?: string
  readonly instrument: Instrument
}): string {
  const {name} = instrument.labels.en
  return player === undefined ? name : `${player}, ${name}`
}

function placeReasons(line: Line, {fold, fit, unplayable}: Cover): string[] {
  const [whole] = fold.folds.length === 1 ? fold.folds : []
  const all = whole && fold.phrases.every(({octaves}) => octaves === whole.octaves)
  if (all && unplayable.length === 0) return [`throughout ${awayBy(whole.octaves)}`]
  const moves = fold.folds.map((each) => `${measuresOf(line.facts, each)} ${awayBy(each.octaves)}`)
  const shown = moves.length > 3 ? [...moves.slice(0, 3), `${moves.length - 3} more folds`] : moves
  const lost =
    unplayable.length === 0
      ? []
      : [`${unplayable.length} of ${fit.notes} notes cannot be played at all`]
  return [...(moves.length === 0 ? ['at pitch throughout'] : shown), ...lost]
}

function lossReasons({loss, part, desks = 1}: Cover): string[] {
  if (!loss) return part === undefined ? [] : ['has nothing of their own to play']
  if (loss.together === 0) return ['rests whenever the missing voice plays']
  if (desks > 1) return [`one of ${desks} leaves the desk`]
  const others =
    loss.essential === 0
      ? 'all of which others play too'
      : `${percent(loss.essential / loss.together)} of them being nobody else's`
  return [`${percent(loss.together)} of their own notes fall together with it, ${others}`]
}

function fitReasons({fit, avoided, tier}: Cover): string[] {
  const easy = fit.tiers.find((each) => each.tier === tier) ?? fit.tiers[0]
  const {effort} = fit
  return [
    ...(easy && easy.notes < 1
      ? [`${percent(1 - easy.notes)} of the notes outside the ${easy.tier} range`]
      : []),
    ...(effort.high >= 0.25 ? [`${percent(effort.high)} of the time in the high register`] : []),
    ...(isBreathless(effort)
      ? [
          `a breath of ${Math.round(Math.max(effort.tone.seconds, effort.breath.seconds))} seconds where ${effort.limit} is the limit`,
        ]
      : []),
    ...fit.lacks,
    ...(avoided === undefined ? [] : [`reads ${describeSignature(avoided)}, which they avoid`]),
  ]
}

function percent(share: number): string {
  const value = Math.round(100 * share)
  return `${value === 0 && share > 0 ? 'under 1' : value} %`
}
