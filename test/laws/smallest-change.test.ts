import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {rules} from '../../lib/rules/index.ts'
import {corpusScores, describeCorpus, readCorpusText, readCorpusXml} from '../support/corpus.ts'
import {demoScore, fixtures} from '../support/fixtures.ts'
import {JOBS, idsOf, run, runPart, text} from '../support/jobs.ts'
import {anyScore} from '../support/score-arbitrary.ts'
import {untouchable} from '../support/tokens.ts'
import {validateScore} from '../support/validate.ts'

/** Law 3: outside the elements that rules own, output and input are equal; and law 5 of the product: valid in, valid out. */

const jobs = Object.entries(JOBS)
const encode = (score: string): Uint8Array => new TextEncoder().encode(score)

function expectUntouched(output: string, input: string): void {
  expect(untouchable(withoutFlag(output))).toEqual(untouchable(withoutFlag(input)))
}

it('the comparison sees what it should and nothing else', () => {
  const note =
    '<note default-x="1" default-y="2"><pitch><step>C</step></pitch><lyric><text>a</text></lyric></note>'
  const moved = note.replace('C<', 'D<').replace(' default-y="2"', '')
  expect(untouchable(moved)).toEqual(untouchable(note))
  for (const wrong of [
    note.replace('default-x="1" ', ''),
    note.replace('>a<', '>b<'),
    note.replace('<lyric>', '<!-- x --><lyric>'),
    note.replace('<lyric><text>a</text></lyric>', ''),
  ]) {
    expect(untouchable(wrong)).not.toEqual(untouchable(note))
  }
  expect(rules.flatMap(({owns}) => owns)).toContain('note@default-y')
})

describe('outside owned elements, input and output are equal', {timeout: 120_000}, () => {
  it.each(jobs)('in a generated score: all parts for %s', async (_, job) => {
    await fc.assert(
      fc.asyncProperty(anyScore, async (score) => {
        const bytes = encode(score)
        const ids = await idsOf(bytes)
        const {bytes: out} = await run(bytes, new Map(ids.map((id) => [id, job])))
        const written = text(out)
        expectUntouched(written, score)
        expect(validateScore(written)).toEqual([])
      }),
      {numRuns: 25},
    )
  })

  const given = [
    ...fixtures().map(({name, input}) => [name, input] as const),
    ['demo', demoScore()] as const,
  ]
  it.each(given)('in %s', async (_, bytes) => {
    const ids = await idsOf(bytes)
    for (const id of ids) {
      for (const [, job] of jobs.slice(0, 5)) {
        const {bytes: out} = await runPart(bytes, id, job, 'keep')
        expectUntouched(decoded(out), decoded(bytes))
        expect(validateScore(out)).toEqual([])
      }
    }
  })

  describeCorpus('in real scores', () => {
    corpusScores().forEach((file, index) => {
      if (!file.wellFormed) return
      const [name, job] = jobs[index % 5] ?? ['', {}]
      it(`${file.name}, a part for ${name}`, async () => {
        const bytes = readCorpusXml(file)
        const ids = await idsOf(bytes)
        const id = ids[index % Math.max(1, ids.length)]
        if (id === undefined) return
        const {bytes: out} = await runPart(bytes, id, job, 'keep')
        expectUntouched(decoded(out), readCorpusText(file))
      })
    })
  })
})

/** A score that is at concert pitch says so in its header; one that is not any more does not. */
function withoutFlag(score: string): string {
  return score
    .replace(/<concert-score\s*(\/>|><\/concert-score>)/, '')
    .replace(/<defaults>\s*<\/defaults>/, '')
}

function decoded(bytes: Uint8Array): string {
  return new TextDecoder(encodingOf(bytes)).decode(bytes)
}

function encodingOf(bytes: Uint8Array): string {
  if (bytes[0] === 0xff) return 'utf-16le'
  if (bytes[0] === 0xfe) return 'utf-16be'
  const head = Buffer.from(bytes.subarray(0, 100)).toString('latin1')
  return /encoding=["']iso-8859-1/i.test(head) ? 'latin1' : 'utf-8'
}
