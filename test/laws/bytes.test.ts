import fc from 'fast-check'
import {strToU8, zipSync} from 'fflate'
import {describe, expect, it} from 'vitest'
import {concertScore, renotatePart} from '../../lib/index.ts'
import {Framer} from '../../lib/xml/frame.ts'
import {collect, randomFrom, sourceOf} from '../support/bytes.ts'
import {corpusScores, describeCorpus, readCorpusXml} from '../support/corpus.ts'
import {demoScore, fixtures} from '../support/fixtures.ts'
import {JOBS, factsOf, idsOf, run, runPart} from '../support/jobs.ts'
import {anyScore} from '../support/score-arbitrary.ts'

/** Law 1, 2 and 6: about bytes, whatever the music. */

const anySizes = fc.array(fc.integer({min: 1, max: 700}), {minLength: 1, maxLength: 6})
const encode = (text: string): Uint8Array => new TextEncoder().encode(text)

/** Compares bytes; where they differ, shows what stands there. */
function expectSame(actual: Uint8Array, expected: Uint8Array): void {
  if (Buffer.compare(actual, expected) === 0) return
  const at = expected.findIndex((byte, index) => byte !== actual[index])
  const show = (bytes: Uint8Array): string =>
    new TextDecoder('latin1').decode(bytes.slice(Math.max(0, at - 300), at + 100))
  expect(show(actual)).toBe(show(expected))
  expect(actual.length).toBe(expected.length)
}
const given = [
  ...fixtures().map(({name, input}) => [name, input] as const),
  ['demo', demoScore()] as const,
]

function framesOf(bytes: Uint8Array, sizes: readonly number[]): Uint8Array {
  const framer = new Framer()
  const frames: Uint8Array[] = []
  let at = 0
  for (let turn = 0; at < bytes.length; turn++) {
    const size = sizes[turn % sizes.length] ?? 1
    for (const frame of framer.push(bytes.slice(at, at + size))) frames.push(frame.bytes)
    at += size
  }
  for (const frame of framer.end()) frames.push(frame.bytes)
  return new Uint8Array(Buffer.concat(frames))
}

/** Every part read and none asked for anything. */
async function idle(bytes: Uint8Array, sizes?: readonly number[]): Promise<Uint8Array> {
  const source = sourceOf(bytes, sizes)
  const parts = new Map((await idsOf(source)).map((id) => [id, {}]))
  return (await run(source, parts)).bytes
}

/** Every part asked for the notation that it has: all rules run, none may find anything to do. */
async function sameNotation(bytes: Uint8Array, sizes?: readonly number[]): Promise<Uint8Array> {
  const source = sourceOf(bytes, sizes)
  const jobs = (await idsOf(source)).map(async (id) => {
    const {states} = await factsOf(source, id)
    return [id, {to: {kind: 'declared' as const, states}}] as const
  })
  return (await run(source, new Map(await Promise.all(jobs)))).bytes
}

function reencoded(score: string, encoding: string): Uint8Array {
  const declared = encoding.replace(/ .*/, '')
  const text = score.replace('encoding="UTF-8"', `encoding="${declared}"`).replace('Part ', 'Pärt ')
  if (encoding === 'UTF-8 with mark') return encode(`\ufeff${text}`)
  if (encoding === 'ISO-8859-1') return new Uint8Array(Buffer.from(text, 'latin1'))
  const little = Buffer.from(`\ufeff${text}`, 'utf16le')
  if (encoding === 'UTF-16 little') return new Uint8Array(little)
  return encoding === 'UTF-16 big' ? new Uint8Array(little.swap16()) : encode(text)
}

describe('frames joined are the input', () => {
  it('of generated scores', () => {
    fc.assert(
      fc.property(anyScore, anySizes, (score, sizes) => {
        const bytes = encode(score)
        expectSame(framesOf(bytes, sizes), bytes)
      }),
    )
  })

  it.each(given)('of %s', (_, bytes) => {
    if (new TextDecoder('latin1').decode(bytes.subarray(0, 60)).includes('ISO')) return
    expectSame(framesOf(bytes, [7, 1, 100]), bytes)
  })
})

describe('a job that changes nothing returns the input', {timeout: 60_000}, () => {
  it('whatever the score', async () => {
    await fc.assert(
      fc.asyncProperty(anyScore, anySizes, async (score, sizes) => {
        const bytes = encode(score)
        expectSame(await idle(bytes, sizes), bytes)
      }),
    )
  })

  it('even when every part is asked for the notation that it has', async () => {
    await fc.assert(
      fc.asyncProperty(anyScore, async (score) => {
        expect(new TextDecoder().decode(await sameNotation(encode(score)))).toBe(score)
      }),
    )
  })

  it.each(['UTF-8', 'UTF-8 with mark', 'UTF-16 little', 'UTF-16 big', 'ISO-8859-1'])(
    'in %s',
    async (encoding) => {
      await fc.assert(
        fc.asyncProperty(anyScore, anySizes, async (score, sizes) => {
          const bytes = reencoded(score, encoding)
          expectSame(await idle(bytes, sizes), bytes)
          expectSame(await sameNotation(bytes, sizes), bytes)
        }),
        {numRuns: 20},
      )
    },
  )

  it('inside a container', async () => {
    const score = demoScore()
    const container =
      '<container><rootfiles><rootfile full-path="a/score.xml"/></rootfiles></container>'
    const packed = zipSync({'META-INF/container.xml': strToU8(container), 'a/score.xml': score})
    expectSame(await idle(packed, [1000, 3]), score)
  })

  it.each(given)('with %s', async (_, bytes) => {
    expectSame(await idle(bytes), bytes)
    expectSame(await sameNotation(bytes), bytes)
  })

  describeCorpus('with real scores', () => {
    const random = randomFrom(11)
    for (const file of corpusScores()) {
      if (!file.wellFormed) continue
      it(file.name, async () => {
        const bytes = readCorpusXml(file)
        const sizes = Array.from({length: 5}, () => 1 + Math.floor(random() ** 3 * 100_000))
        expectSame(await idle(bytes, sizes), bytes)
        if (bytes.length < 300_000) expectSame(await sameNotation(bytes), bytes)
      })
    }
  })
})

describe('any chunking gives the same output', {timeout: 60_000}, () => {
  it('of a part of any score for anybody', async () => {
    await fc.assert(
      fc.asyncProperty(
        anyScore,
        fc.constantFrom(...Object.values(JOBS)),
        anySizes,
        async (score, job, sizes) => {
          const bytes = encode(score)
          const [id = ''] = await idsOf(bytes)
          const whole = await runPart(bytes, id, job, 'keep')
          const cut = await runPart(sourceOf(bytes, sizes), id, job, 'keep')
          expect(cut).toEqual(whole)
        },
      ),
    )
  })

  it('of text instead of bytes, as the score says', async () => {
    await fc.assert(
      fc.asyncProperty(anyScore, anySizes, async (score, sizes) => {
        async function* pieces() {
          for (let at = 0, turn = 0; at < score.length; turn++) {
            const size = sizes[turn % sizes.length] ?? 1
            yield score.slice(at, at + size)
            at += size
          }
        }
        const options = {part: '1', for: 'tuba'}
        expect(await collect(renotatePart(pieces, options))).toEqual(
          await collect(renotatePart(sourceOf(encode(score)), options)),
        )
        expect(await collect(concertScore(pieces))).toEqual(
          await collect(concertScore(sourceOf(encode(score)))),
        )
      }),
      {numRuns: 40},
    )
  })
})
