import {readFileSync} from 'node:fs'
import {describe, expect, test} from 'vitest'
import {ScoreError} from '../../lib/diagnostic.ts'
import {formatFraction} from '../../lib/proof/fraction.ts'
import {formatExactPitch} from '../../lib/proof/pitch.ts'
import {readMeasures} from '../../lib/proof/reader.ts'
import {soundingNotes} from '../../lib/verbs.ts'
import {corpusScores, hasCorpus} from '../support/corpus.ts'
import {sourceOf} from './score.ts'

/*
 * The rewriter's reader and the proof's were written apart, on different parsers and with different arithmetic. Where they
 * hear the same, an error would have to have been made twice.
 */
describe.skipIf(!hasCorpus)('the two readers', () => {
  test('hear the same pitched notes in the whole corpus', {timeout: 180_000}, async () => {
    const otherwise = []
    let notes = 0
    let refused = 0
    for (const file of corpusScores().filter(({wellFormed}) => wellFormed)) {
      const source = sourceOf(new Uint8Array(readFileSync(file.path)))
      const proof = await heardByProof(source)
      const rewriter = await heardByRewriter(source)
      // The rewriter does not touch a score that contradicts itself.
      if (!rewriter) {
        refused++
        continue
      }
      notes += proof.length
      const index = proof.findIndex((line, place) => line !== rewriter[place])
      if (index >= 0 || proof.length !== rewriter.length)
        otherwise.push(`${file.name}: ${proof[index]} or ${rewriter[index]}`)
    }
    expect(otherwise).toEqual([])
    expect(refused).toBeLessThan(5)
    expect(notes).toBeGreaterThan(100_000)
  })
})

async function heardByProof(source: ReturnType<typeof sourceOf>): Promise<string[]> {
  const lines = []
  for await (const {notes} of readMeasures(source)) {
    for (const one of notes) {
      if (!one.sounding || one.doubled) continue
      const {part, staff, voice, measure, onset, duration} = one
      const time = [formatFraction(onset), formatFraction(duration)]
      lines.push([part, staff, voice, measure, ...time, formatExactPitch(one.sounding)].join(' '))
    }
  }
  return lines
}

async function heardByRewriter(source: ReturnType<typeof sourceOf>): Promise<string[] | undefined> {
  const lines = []
  try {
    for await (const one of soundingNotes(source)) {
      const {part, staff, voice, measure, onset, duration, pitch} = one
      if (pitch) lines.push([part, staff, voice, measure, onset, duration, pitch].join(' '))
    }
  } catch (error) {
    if (error instanceof ScoreError && error.diagnostic.code === 'concert/contradiction')
      return undefined
    throw error
  }
  return lines
}
