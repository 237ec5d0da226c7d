import {describe, expect, it} from 'vitest'
import {corpusScores, describeCorpus, readCorpusXml} from '../support/corpus.ts'
import {demoScore, fixtures} from '../support/fixtures.ts'
import {JOBS, idsOf, runPart} from '../support/jobs.ts'
import {misread} from '../support/signs.ts'

/**
 * Who reads signatures and printed signs alone plays the notes: where that is so in the source it is so in every
 * notation of it.
 */

const names = [
  'alto saxophone',
  'A clarinet in few signs',
  'horn without signatures',
  'concert pitch',
]

async function expectReadable(bytes: Uint8Array, id: string, name: string): Promise<boolean> {
  if ((await misread(bytes, id)).length > 0) return false
  const {bytes: out} = await runPart(bytes, id, JOBS[name] ?? {})
  expect(await misread(out, id), `${id} for ${name}`).toEqual([])
  return true
}

const given = [
  ...fixtures().map(({name, input}) => [name, input] as const),
  ['demo', demoScore()] as const,
]

describe('signs say what sounds', {timeout: 60_000}, () => {
  it.each(given)('in %s', async (_, bytes) => {
    for (const id of await idsOf(bytes)) {
      for (const name of names) await expectReadable(bytes, id, name)
    }
  })

  it('the reader of signs can be deceived', async () => {
    const score = new TextDecoder().decode(demoScore())
    const bytes = new TextEncoder().encode(
      score.replaceAll(/<accidental[^>]*>[^<]*<\/accidental>/g, ''),
    )
    const wrong = await Promise.all((await idsOf(bytes)).map((id) => misread(bytes, id)))
    expect(wrong.flat().length).toBeGreaterThan(0)
  })

  describeCorpus('in real scores', () => {
    let readable = 0
    corpusScores().forEach((file, index) => {
      if (!file.wellFormed) return
      const name = names[index % names.length] ?? ''
      it(`${file.name}, for ${name}`, async () => {
        const bytes = readCorpusXml(file)
        const ids = await idsOf(bytes)
        const some =
          ids.length <= 3
            ? ids
            : ids.filter((_, at) => at % Math.ceil(ids.length / 3) === index % 2)
        for (const id of some) if (await expectReadable(bytes, id, name)) readable++
      })
    })

    it('most of them could be judged', () => {
      expect(readable).toBeGreaterThan(250)
    })
  })
})
