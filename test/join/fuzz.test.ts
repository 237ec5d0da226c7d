import fc from 'fast-check'
import {describe, it} from 'vitest'
import {ScoreError} from '../../lib/index.ts'
import type {JoinRequest, PartJob} from '../../lib/index.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {anyScore, partIds} from '../support/score-arbitrary.ts'
import {anyPair} from './any-pair.ts'
import {joined} from './parts.ts'

/** Notes at random become rests, without which nothing goes into a part. Ties that lead nowhere are another matter. */
function withRests(printed: string, holes: readonly boolean[]): string {
  const score = printed
    .replaceAll(/<!--[\s\S]*?-->|<\?mark.*?\?>/g, '')
    .replaceAll(/\s*(?:<notations>[\s\S]*?<\/notations>|<tie [^>]*>(?:<\/tie>)?)/g, '')
  let index = 0
  return score.replaceAll(/<pitch>[\s\S]*?<\/pitch>/g, (pitch, at: number) => {
    const note = score.slice(score.lastIndexOf('<note', at), score.indexOf('</note>', at))
    const [, next = ''] = score.slice(at).match(/<\/note>\s*<note([\s\S]*?)<\/note>/) ?? []
    const stays = /<chord|<grace/.test(note) || next.includes('<chord')
    return stays || holes[index++ % holes.length] ? pitch : '<rest/>'
  })
}

const JOBS: readonly PartJob[] = [
  {},
  {for: instrumentById('clarinet-b-flat')},
  {for: instrumentById('bassoon')},
  {to: {kind: 'concert', octaves: 'sounding'}},
]

const anyHoled = fc
  .record({score: anyScore, holes: fc.array(fc.boolean(), {minLength: 3, maxLength: 17})})
  .map(({score, holes}) => withRests(score, holes))
  .filter((score) => partIds(score).length === 2)
const scores = fc.oneof({weight: 1, arbitrary: anyHoled}, {weight: 4, arbitrary: anyPair()})

/** Always the same scores, unless more are asked for. */
const asked = process.env.RUNS
const parameters = asked === undefined ? {numRuns: 60, seed: 1} : {numRuns: Number(asked)}

async function check(score: string, request: JoinRequest, job: PartJob): Promise<void> {
  try {
    await joined(score, request, job)
  } catch (error) {
    if (!(error instanceof ScoreError)) throw error
  }
}

describe('a part that takes in music of another stays valid and is proven', () => {
  it('as cues', {timeout: 600_000}, () =>
    fc.assert(
      fc.asyncProperty(
        scores,
        fc.constantFrom(...JOBS),
        fc.integer({min: 1, max: 2}),
        async (score, job, length) => check(score, {cues: {rest: 1, length}}, job),
      ),
      parameters,
    ),
  )

  it('as a cover', {timeout: 600_000}, () =>
    fc.assert(
      fc.asyncProperty(
        scores,
        fc.constantFrom(...JOBS),
        fc.constantFrom('always' as const, 'absent' as const),
        async (score, job, when) => {
          const instrument = job.for ?? instrumentById('bassoon')
          if (!instrument) throw new Error('no bassoon')
          await check(score, {cover: {part: 'P2', instrument, tier: 'tutti', when}}, job)
        },
      ),
      parameters,
    ),
  )
})
