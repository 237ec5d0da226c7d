import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Diagnostic} from '../../lib/diagnostic.ts'
import type {SoundingNote} from '../../lib/musicxml/sounding.ts'
import {prove} from '../../lib/proof/compare.ts'
import {formatFraction} from '../../lib/proof/fraction.ts'
import {formatExactPitch} from '../../lib/proof/pitch.ts'
import {readMeasures} from '../../lib/proof/reader.ts'
import {sourceOf} from '../support/bytes.ts'
import {corpusScores, describeCorpus, readCorpusXml} from '../support/corpus.ts'
import {demoScore, fixtures} from '../support/fixtures.ts'
import {
  JOBS,
  factsOf,
  idsOf,
  notesOf,
  placeOf,
  run,
  runPart,
  statesOf,
  text,
} from '../support/jobs.ts'
import type {HeardNote} from '../support/jobs.ts'
import {anyScore} from '../support/score-arbitrary.ts'

/** Law 4 and 5: the sound is kept, and what went there comes back. */

const jobs = Object.entries(JOBS)
const encode = (score: string): Uint8Array => new TextEncoder().encode(score)

const given = [
  ...fixtures().map(({name, input}) => [name, input] as const),
  ['demo', demoScore()] as const,
]

/** Every pitched note as our reader reads it, a line a note: place, time, what is written and what sounds. */
async function ownReading(bytes: Uint8Array): Promise<string[]> {
  const lines: string[] = []
  for (const id of await idsOf(bytes)) lines.push(...(await notesOf(bytes, id)).map(lineOf))
  return lines.toSorted()
}

function lineOf(note: SoundingNote): string {
  const {part, measure, staff, voice, onset, duration, written, pitch, grace, cue} = note
  return `${part} ${measure} ${staff}/${voice} ${onset}+${duration} ${written} = ${pitch}${grace ? ' grace' : ''}${cue ? ' cue' : ''}`
}

/** The same by the reader that shares nothing with it. */
async function independentReading(bytes: Uint8Array): Promise<string[]> {
  const lines: string[] = []
  for await (const {notes} of readMeasures(sourceOf(bytes))) {
    for (const note of notes) {
      if (!note.sounding) continue
      const {part, measure, staff, voice, grace, cue} = note
      lines.push(
        `${part} ${measure} ${staff}/${voice} ${formatFraction(note.onset)}+${formatFraction(note.duration)} ${formatExactPitch(note.written)} = ${formatExactPitch(note.sounding)}${grace === undefined ? '' : ' grace'}${cue ? ' cue' : ''}`,
      )
    }
  }
  return lines.toSorted()
}

/**
 * What a note sounds. Over an enharmonic turn of the key a tied note keeps the spelling of its beginning
 * (renotation-rules E6): there the pitch is compared, not its name.
 */
function soundsOf(told: readonly Diagnostic[]): (note: HeardNote) => string {
  const turned = told.some(({code}) => code === 'key/turned')
  return (note) => `${placeOf(note)} ${turned && note.tied ? note.midi : note.pitch}`
}

/** Whether a grace note stood before or after a change that the way there did without, nobody knows any more. */
function writtenOf(told: readonly Diagnostic[]): (note: HeardNote) => string {
  const turned = told.some(({code}) => code === 'key/turned')
  return (note) => {
    const soundsOnly = note.grace || (turned && note.tied)
    return `${placeOf(note)} ${soundsOnly ? note.midi : note.written}`
  }
}

async function expectReturn(bytes: Uint8Array, id: string, name: string): Promise<void> {
  const {states} = await factsOf(bytes, id)
  const there = await runPart(bytes, id, JOBS[name] ?? {}, 'keep')
  const back = await runPart(there.bytes, id, {to: {kind: 'declared', states}}, 'keep')
  const show = writtenOf(there.told)
  expect((await notesOf(back.bytes, id)).map(show)).toEqual((await notesOf(bytes, id)).map(show))
  expect(statesOf(await factsOf(back.bytes, id))).toEqual(statesOf(await factsOf(bytes, id)))
}

describe('two readers that share nothing agree on every note', {timeout: 120_000}, () => {
  it('of generated scores', async () => {
    await fc.assert(
      fc.asyncProperty(anyScore, async (score) => {
        const bytes = encode(score)
        expect(await ownReading(bytes)).toEqual(await independentReading(bytes))
      }),
      {numRuns: 60},
    )
  })

  it.each(given)('of %s', async (_, bytes) => {
    const own = await ownReading(bytes)
    expect(own).toEqual(await independentReading(bytes))
  })
})

describe('the sound is kept', {timeout: 120_000}, () => {
  it.each(jobs)('of generated scores for %s', async (_, job) => {
    await fc.assert(
      fc.asyncProperty(anyScore, async (score) => {
        const bytes = encode(score)
        const ids = await idsOf(bytes)
        const {bytes: out, told} = await run(bytes, new Map(ids.map((id) => [id, job])))
        for (const id of ids) {
          const show = soundsOf(told)
          expect((await notesOf(out, id)).map(show)).toEqual((await notesOf(bytes, id)).map(show))
        }
        const proof = await prove(sourceOf(bytes), sourceOf(out))
        expect(proof.verdict, JSON.stringify(proof.pairs[0]?.differences[0])).toBe('equal')
      }),
      {numRuns: 25},
    )
  })

  it.each(given)('of %s', async (_, bytes) => {
    for (const id of await idsOf(bytes)) {
      for (const [, job] of jobs) {
        const {bytes: out} = await runPart(bytes, id, job)
        const proof = await prove(sourceOf(bytes), sourceOf(out), {pairs: [[id, id]]})
        expect(proof.verdict).toBe('equal')
      }
    }
  })

  describeCorpus('of real scores at concert pitch', () => {
    for (const file of corpusScores()) {
      if (!file.wellFormed || readCorpusXml(file).length > 700_000) continue
      it(file.name, async () => {
        const bytes = readCorpusXml(file)
        const ids = await idsOf(bytes)
        const {to} = JOBS['concert pitch'] ?? {}
        const {bytes: out} = await run(bytes, new Map(ids.map((id) => [id, {to}])))
        const proof = await prove(sourceOf(bytes), sourceOf(out))
        expect(proof.verdict, JSON.stringify(proof.pairs[0]?.differences[0])).toBe('equal')
      })
    }
  })
})

describe('there and back is the original', {timeout: 120_000}, () => {
  it.each(jobs)('for generated scores by way of %s', async (name) => {
    await fc.assert(
      fc.asyncProperty(anyScore, async (score) => {
        const bytes = encode(score)
        for (const id of await idsOf(bytes)) await expectReturn(bytes, id, name)
      }),
      {numRuns: 25},
    )
  })

  it.each(given)('for %s', async (_, bytes) => {
    for (const id of await idsOf(bytes)) {
      for (const [name] of jobs) await expectReturn(bytes, id, name)
    }
  })
})

it('the law can fail: a note out of place is heard by both readers', async () => {
  const score = text(demoScore())
  const wrong = encode(score.replace('<step>C</step>', '<step>D</step>'))
  expect(await ownReading(wrong)).not.toEqual(await ownReading(encode(score)))
  expect(await independentReading(wrong)).toEqual(await ownReading(wrong))
})
