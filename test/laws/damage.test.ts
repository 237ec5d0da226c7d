import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {ScoreError} from '../../lib/diagnostic.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import type {PartJob} from '../../lib/plan/job.ts'
import {openScore, rewrite} from '../../lib/renotate.ts'
import {randomFrom, sourceOf} from '../support/bytes.ts'
import {corpusScores, describeCorpus, readCorpusXml} from '../support/corpus.ts'
import {demoScore, fixtures} from '../support/fixtures.ts'
import {anyScore} from '../support/score-arbitrary.ts'
import {checkWellFormed} from '../support/validate.ts'

/** Law 7: whatever is wrong with the input, only `ScoreError` escapes, and before the first byte is given. */

const job: PartJob = {for: instrumentById('horn-f')}
const decoder = new TextDecoder('latin1')

type Verdict = 'written' | 'refused'

/** Rewrites whatever parts there are. Throws whatever is no `ScoreError`, and when bytes came before one. */
async function attempt(bytes: Uint8Array): Promise<Verdict> {
  let given = 0
  try {
    const score = await openScore(sourceOf(bytes))
    const parts = new Map(score.header.parts.map(({id}) => [id, job]))
    for await (const chunk of rewrite(score, {parts, others: 'keep'}, () => {}))
      given += chunk.length
    return 'written'
  } catch (error) {
    if (!(error instanceof ScoreError)) throw error
    expect(given, error.message).toBe(0)
    expect(error.diagnostic.code).toMatch(/^[a-z]+\/[a-z-]+$/)
    expect(error.diagnostic.severity).toBe('error')
    return 'refused'
  }
}

/** Cuts, repeats, drops and garbles a stretch of bytes. */
const DAMAGES: Readonly<
  Record<string, (bytes: Uint8Array, from: number, to: number) => Uint8Array>
> = {
  cut: (bytes, from) => bytes.slice(0, from),
  'beginning lost': (bytes, from) => bytes.slice(from),
  'stretch lost': (bytes, from, to) => join(bytes.slice(0, from), bytes.slice(to)),
  'stretch twice': (bytes, from, to) => join(bytes.slice(0, to), bytes.slice(from)),
  'stretch garbled': (bytes, from, to) =>
    bytes.map((byte, at) => (at >= from && at < to ? (byte * 7 + at) % 256 : byte)),
  'one byte wrong': (bytes, from) => bytes.map((byte, at) => (at === from ? byte ^ 0x1f : byte)),
}

/** Well-formed as before, and nonsense: what an element says, or the element itself, is another. */
const NONSENSE: Readonly<Record<string, (score: string, random: () => number) => string>> = {
  'an element lost': (score, random) =>
    replaceOne(score, /<(\w[\w-]*)[^<>]*>[^<]*<\/\1>/g, random, () => ''),
  'an element twice': (score, random) =>
    replaceOne(score, /<(\w[\w-]*)[^<>]*>[^<]*<\/\1>/g, random, (found) => found + found),
  'a text replaced': (score, random) =>
    replaceOne(score, />[^<>\s]+</g, random, () => `>${pick(ODD, random)}<`),
  'an attribute replaced': (score, random) =>
    replaceOne(score, /="[^"]*"(?=[^<]*>)/g, random, () => `="${pick(ODD, random)}"`),
  'a name replaced': (score, random) =>
    replaceOne(score, /<(\w[\w-]*)([^<>]*)>([^<]*)<\/\1>/g, random, () => {
      const name = pick(NAMES, random)
      return `<${name}>1</${name}>`
    }),
}

const ODD = [
  '',
  '-1',
  '0',
  '99999999999',
  '1e99',
  'NaN',
  'x',
  '-0',
  '0.0001',
  '&#x1F3BA;',
  '1 2',
  'yes',
]
const NAMES = [
  'pitch',
  'key',
  'clef',
  'transpose',
  'backup',
  'forward',
  'divisions',
  'chord',
  'grace',
  'attributes',
  'note',
  'step',
]

function pick(from: readonly string[], random: () => number): string {
  return from[Math.floor(random() * from.length)] ?? ''
}

function replaceOne(
  score: string,
  pattern: RegExp,
  random: () => number,
  by: (found: string) => string,
): string {
  const found = [...score.matchAll(pattern)]
  const chosen = found[Math.floor(random() * found.length)]
  if (!chosen) return score
  return score.slice(0, chosen.index) + by(chosen[0]) + score.slice(chosen.index + chosen[0].length)
}

function join(...pieces: readonly Uint8Array[]): Uint8Array {
  return new Uint8Array(Buffer.concat(pieces))
}

const anyDamage = fc.constantFrom(...Object.keys(DAMAGES))

describe('only ScoreError escapes', {timeout: 120_000}, () => {
  it('from generated scores that were damaged, and nothing malformed is accepted', async () => {
    await fc.assert(
      fc.asyncProperty(
        anyScore,
        anyDamage,
        fc.double({min: 0, max: 1, noNaN: true}),
        fc.integer({min: 1, max: 200}),
        async (score, name, place, length) => {
          const bytes = new TextEncoder().encode(score)
          const from = Math.floor(place * bytes.length)
          const damaged = DAMAGES[name]?.(bytes, from, from + length) ?? bytes
          const verdict = await attempt(damaged)
          if (verdict === 'written') expect(checkWellFormed(damaged)).toEqual([])
        },
      ),
      {numRuns: 150},
    )
  })

  it.each(Object.entries(NONSENSE))('from generated scores with %s', async (_, change) => {
    await fc.assert(
      fc.asyncProperty(anyScore, fc.nat(), async (score, seed) => {
        const random = randomFrom(seed)
        let wrong = score
        for (let times = 0; times < 3; times++) wrong = change(wrong, random)
        await attempt(new TextEncoder().encode(wrong))
      }),
      {numRuns: 60},
    )
  })

  it.each([
    ['nothing', ''],
    ['white space', ' \n '],
    ['words', 'a score'],
    ['another document', '<html><body/></html>'],
    ['an opus', '<opus><title/></opus>'],
    ['a score without anything', '<score-partwise/>'],
    [
      'a part that no list names',
      '<score-partwise><part-list/><part id="P1"><measure number="1"/></part></score-partwise>',
    ],
    ['an undeclared entity', '<score-partwise><part-list>&copyright;</part-list></score-partwise>'],
    ['an end too many', '<score-partwise></score-partwise></score-partwise>'],
    ['two roots', '<score-partwise/><score-partwise/>'],
    ['a zip of nothing', 'PK\u0003\u0004'],
  ])('from %s', async (_, text) => {
    await attempt(new TextEncoder().encode(text))
  })

  const given = [
    ...fixtures().map(({name, input}) => [name, input] as const),
    ['demo', demoScore()] as const,
  ]
  it.each(given)('from %s, damaged', async (_, bytes) => {
    const random = randomFrom(bytes.length)
    for (const damage of Object.values(DAMAGES)) {
      const from = Math.floor(random() * bytes.length)
      await attempt(damage(bytes, from, from + 50))
    }
  })

  describeCorpus('from real scores, damaged', () => {
    const damages = Object.values(DAMAGES)
    const nonsense = Object.values(NONSENSE)
    corpusScores().forEach((file, index) => {
      it(file.name, async () => {
        const bytes = readCorpusXml(file)
        if (bytes.length > 400_000) return
        const random = randomFrom(index + 1)
        const from = Math.floor(random() * bytes.length)
        const damage = damages[index % damages.length] ?? ((each) => each)
        await attempt(damage(bytes, from, from + 1 + Math.floor(random() * 500)))
        const change = nonsense[index % nonsense.length] ?? ((each) => each)
        await attempt(new Uint8Array(Buffer.from(change(decoder.decode(bytes), random), 'latin1')))
        if (!file.wellFormed) expect(await attempt(bytes)).toBe('refused')
      })
    })
  })
})

it('a score that is refused says where', async () => {
  const text = new TextDecoder().decode(demoScore()).replace('</measure>', '</measures>')
  const line = text.slice(0, text.indexOf('</measures>')).split('\n').length
  const score = await openScore(sourceOf(new TextEncoder().encode(text)))
  const parts = new Map(score.header.parts.map(({id}) => [id, job]))
  const output = rewrite(score, {parts, others: 'keep'}, () => {})
  await expect(output.next()).rejects.toMatchObject({
    diagnostic: {severity: 'error', at: {line}},
  })
})
