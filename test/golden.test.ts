import {existsSync, readFileSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {concertScore, prove, renotatePart} from '../lib/index.ts'
import type {Diagnostic, PartOptions} from '../lib/index.ts'
import {collect, sourceOf} from './support/bytes.ts'
import {fixtures} from './support/fixtures.ts'
import {validateScore} from './support/validate.ts'

/** `npm run test:update` writes what comes out as what is expected: read the diff. */
const updates = process.env.UPDATE === '1'

/** What a `job.json` asks for: a part, or the whole score at concert pitch. */
type Job = PartOptions & {readonly concert?: 'customary' | 'sounding'}

function hold(path: string, actual: Uint8Array): void {
  if (updates || !existsSync(path)) {
    if (!updates) throw new Error(`${path} is missing; npm run test:update writes it`)
    writeFileSync(path, actual)
  }
  const expected = readFileSync(path)
  // As text, so that a difference can be read; as bytes, so that an encoding is held too.
  expect(new TextDecoder().decode(actual)).toBe(new TextDecoder().decode(expected))
  expect(Buffer.compare(actual, expected)).toBe(0)
}

describe('fixtures', () => {
  it('are there', () => {
    expect(fixtures().length).toBeGreaterThanOrEqual(27)
  })

  it.each(fixtures().map((fixture) => [fixture.name, fixture] as const))(
    '%s comes out as expected, valid, and sounding the same',
    async (_, {folder, input}) => {
      const {concert: octaves, ...options}: Job = JSON.parse(
        readFileSync(join(folder, 'job.json'), 'utf8'),
      )
      const told: Diagnostic[] = []
      const report = (each: Diagnostic) => told.push(each)
      const content = octaves
        ? concertScore(sourceOf(input), {octaves, report})
        : renotatePart(sourceOf(input), {...options, report})
      const bytes = await collect(content)
      hold(join(folder, 'expected.musicxml'), bytes)
      hold(
        join(folder, 'diagnostics.json'),
        new TextEncoder().encode(`${JSON.stringify(told, undefined, 2)}\n`),
      )
      if (validateScore(input).length === 0) expect(validateScore(bytes)).toEqual([])
      const from = typeof options.from === 'string' ? options.from : undefined
      const proof = await prove(sourceOf(input), sourceOf(bytes), {
        ...(from !== undefined && {from}),
        partial: true,
      })
      expect(proof.verdict).toBe('equal')
    },
  )
})
