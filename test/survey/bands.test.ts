import {describe, expect, it} from 'vitest'
import type {Wrongness} from '../support/band-score.ts'
import {bandScore} from '../support/band-score.ts'
import {BAND_LANGUAGES} from '../support/band-parts.ts'
import {surveyXml} from '../support/survey.ts'
import {hasSchema, validateScore} from '../support/validate.ts'

/** Bands a language; RENOTATE_ALL_PARTS asks for many. */
const BANDS = process.env.RENOTATE_ALL_PARTS ? 25 : 3

interface Tally {
  parts: number
  right: number
  /** Beliefs at 0.9 or more, and how many of them are wrong. */
  sure: number
  surelyWrong: number
  faults: number
  found: number
  /** Doubts about parts that the file has right. */
  needless: number
}

async function tally(wrongness: Wrongness): Promise<Tally> {
  const sum = {parts: 0, right: 0, sure: 0, surelyWrong: 0, faults: 0, found: 0, needless: 0}
  for (const language of BAND_LANGUAGES) {
    for (let seed = 1; seed <= BANDS; seed++) {
      const band = bandScore({seed: seed + 1000, language, wrongness})
      const {survey, beliefs} = await surveyXml(band.xml)
      for (const {line, judged} of beliefs) {
        const [best] = judged
        const isRight =
          best?.hypothesis.intervals[0]?.chromatic === band.truth[line.index]?.chromatic
        const isSure = (best?.probability ?? 0) >= 0.9
        const isFaulty = line.index === band.faulty
        const doubts = survey.parts[line.index]?.doubts.filter(({severity}) => severity !== 'info')
        const isDoubted = doubts !== undefined && doubts.length > 0
        sum.parts++
        if (isRight) sum.right++
        if (isSure) sum.sure++
        if (isSure && !isRight) sum.surelyWrong++
        if (isFaulty) sum.faults++
        if (isFaulty && isDoubted) sum.found++
        if (!isFaulty && isDoubted && wrongness !== 'stripped') sum.needless++
      }
    }
  }
  return sum
}

describe('generated scores of historic bands in four languages', () => {
  it.skipIf(!hasSchema)('are valid', () => {
    for (const language of BAND_LANGUAGES)
      expect(validateScore(bandScore({seed: 1, language, wrongness: 'none'}).xml)).toEqual([])
  })

  it.each(['none', 'stripped', 'concert', 'octave', 'step', 'missing'] as const)(
    'are understood when what is wrong is: %s',
    {timeout: 300_000},
    async (wrongness) => {
      const found = await tally(wrongness)
      if (process.env.RENOTATE_ALL_PARTS) console.log(wrongness, JSON.stringify(found))
      expect(found.parts).toBeGreaterThan(80)
      expect(found.right / found.parts).toBeGreaterThanOrEqual(0.98)
      expect(found.surelyWrong / found.sure).toBeLessThanOrEqual(0.005)
      expect(found.needless / found.parts).toBeLessThanOrEqual(0.02)
      expect(found.found).toBeGreaterThanOrEqual(Math.floor(0.95 * found.faults))
      expect(found.faults > 0).toBe(['octave', 'step', 'missing'].includes(wrongness))
    },
  )
})
