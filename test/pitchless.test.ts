import {expect, it} from 'vitest'
import {renotatePart} from '../lib/index.ts'
import type {PartOptions} from '../lib/index.ts'
import {collect, sourceOf} from './support/bytes.ts'
import {demoScore} from './support/fixtures.ts'

async function codesOf(options: PartOptions): Promise<string[]> {
  const codes: string[] = []
  const report: PartOptions['report'] = ({code}) => codes.push(code)
  await collect(renotatePart(sourceOf(demoScore()), {...options, report}))
  return codes
}

it.each([
  ['drums for a tuba', 'P10', 'tuba', true],
  ['a bass voice for a triangle', 'P9', 'triangle', true],
  ['a bass voice for a tuba', 'P9', 'tuba', false],
  ['drums for a snare drum', 'P10', 'snare-drum', false],
] as const)(
  'pitches that somebody lacks are told: %s',
  async (_what, part, instrument, expected) => {
    const codes = await codesOf({part, for: instrument})
    expect(codes.includes('part/no-pitches')).toBe(expected)
  },
)

it('a part is not cued into itself', async () => {
  const job = codesOf({part: 'P9', for: 'tuba', crossCues: '9'})
  await expect(job).rejects.toThrow('a part has no cross-cues of itself')
})
