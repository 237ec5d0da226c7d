import {existsSync, readFileSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {prove, renotatePart} from '../lib/index.ts'
import type {Diagnostic, PartOptions} from '../lib/index.ts'
import {collect, sourceOf} from './support/bytes.ts'
import {fixtures} from './support/fixtures.ts'
import {validateScore} from './support/validate.ts'

/** `npm run test:update` writes what comes out as what is expected: read the diff. */
const updates = process.env.UPDATE === '1'

function hold(path: string, actual: string): void {
  if (updates || !existsSync(path)) {
    if (!updates) throw new Error(`${path} is missing; npm run test:update writes it`)
    writeFileSync(path, actual)
  }
  expect(actual).toBe(readFileSync(path, 'utf8'))
}

describe('fixtures', () => {
  it('are there', () => {
    expect(fixtures().length).toBeGreaterThanOrEqual(14)
  })

  it.each(fixtures().map((fixture) => [fixture.name, fixture] as const))(
    '%s comes out as expected, valid, and sounding the same',
    async (_, {folder, input}) => {
      const options: PartOptions = JSON.parse(readFileSync(join(folder, 'job.json'), 'utf8'))
      const told: Diagnostic[] = []
      const report = (each: Diagnostic) => told.push(each)
      const bytes = await collect(renotatePart(sourceOf(input), {...options, report}))
      hold(
        join(folder, 'expected.musicxml'),
        new TextDecoder('utf-8', {ignoreBOM: true}).decode(bytes),
      )
      hold(join(folder, 'diagnostics.json'), `${JSON.stringify(told, undefined, 2)}\n`)
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
