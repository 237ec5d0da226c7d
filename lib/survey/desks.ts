import {sameInterval} from '../pitch/interval.ts'
import {sameClef} from '../staff/clef.ts'
import type {Hypothesis} from './hypothesis.ts'
import {judge} from './judged.ts'
import type {Judged} from './judged.ts'
import type {Line} from './line.ts'
import type {Scene, State} from './scene.ts'
import {WEIGHTS} from './weights.ts'

/** Adds what the desks say that share the name: where one proves an old notation, all have it. */
export function withDesks(
  scene: Scene,
  judged: State,
  index: number,
  own: readonly Judged[],
): readonly Judged[] {
  const line = scene.lines[index]
  const mates = scene.desks.flatMap((desk, at) =>
    at !== index && desk === scene.desks[index] && scene.lines[at]?.part !== line?.part ? [at] : [],
  )
  if (!line || mates.length === 0) return own
  return judge(
    own.map(({hypothesis}) => hypothesis),
    (hypothesis) => {
      const known = own.find((each) => each.hypothesis === hypothesis)?.terms
      const desks = mates.reduce(
        (sum, mate) => sum + musicOf(scene.lines[mate], judged[mate] ?? [], line, hypothesis),
        0,
      )
      return {...known, desks}
    },
  )
}

/** What the music of a mate says of a hypothesis, against the best that it says of any. */
function musicOf(
  mate: Line | undefined,
  judged: readonly Judged[],
  line: Line,
  hypothesis: Hypothesis,
): number {
  if (!mate) return 0
  const best = Math.max(...judged.map(musicTerms))
  const agreeing = judged.filter((other) =>
    mate.clefs.every((clef, at) => {
      const same = line.clefs.findIndex((each) => sameClef(each, clef))
      const ownInterval = hypothesis.intervals[same]
      const otherInterval = other.hypothesis.intervals[at]
      return !ownInterval || !otherInterval || sameInterval(ownInterval, otherInterval)
    }),
  )
  if (agreeing.length === 0) return 0
  return Math.max(
    WEIGHTS.desk.most,
    WEIGHTS.desk.share * (Math.max(...agreeing.map(musicTerms)) - best),
  )
}

/** What all evidence but the name and the file says. */
function musicTerms({terms}: Judged): number {
  const {key, doubling, harmony, range, register, clefs, role} = terms
  return key + doubling + harmony + range + register + clefs + role
}
