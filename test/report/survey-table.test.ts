import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {formatSurvey, formatSurveyJson, survey} from '../../lib/index.ts'
import type {Survey} from '../../lib/index.ts'
import {sourceOf} from '../support/bytes.ts'

const demo = readFileSync(new URL('../../fixtures/demo/score.musicxml', import.meta.url))
const found = (): Promise<Survey> => survey(sourceOf(new Uint8Array(demo)))

describe('the table of a survey', () => {
  it.each([80, 100, 120])('fits %i columns', async (width) => {
    const lines = formatSurvey(await found(), {width})
    expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(width)
    expect(lines.some((line) => line.endsWith(' '))).toBe(false)
  })

  it('has a row a part, marked where there is a doubt', async () => {
    const lines = formatSurvey(await found())
    const start = lines.findIndex((line) => line.includes('sounds') && line.includes('sure'))
    const rows = lines.slice(start + 1, start + 11)
    expect(rows.map((row) => row.slice(0, 5))).toEqual([
      ' 1   ',
      ' 2   ',
      ' 3   ',
      ' 4   ',
      ' 5   ',
      ' 6  ?',
      ' 7  ?',
      ' 8   ',
      ' 9   ',
      '10   ',
    ])
    expect(rows[8]).toContain('a major ninth lower')
    expect(rows[9]).toContain('no pitches')
  })

  it('tells the doubts with what settles them', async () => {
    const text = formatSurvey(await found()).join('\n')
    expect(text).toContain('2 doubts:')
    expect(text).toContain('to settle it: --from alto-horn-e-flat.modern')
    expect(text).toContain('Key at concert pitch: 3 flats, 4 flats from measure 17')
  })

  it('says so when there is nothing to doubt', async () => {
    const whole = await found()
    const parts = whole.parts.map((part) => ({...part, doubts: []}))
    expect(formatSurvey({...whole, parts}).at(-1)).toBe('No doubts.')
  })
})

describe('the JSON of a survey', () => {
  it('has the fields that are documented', async () => {
    const read = JSON.parse(formatSurveyJson(await found())) as Survey
    expect(read).toEqual(await found())
    expect(Object.keys(read)).toEqual([
      'format',
      'version',
      'title',
      'measures',
      'concertScore',
      'keys',
      'parts',
    ])
    expect(Object.keys(read.parts[8] ?? {})).toEqual([
      'id',
      'name',
      'instrument',
      'clefNamed',
      'language',
      'declared',
      'believed',
      'others',
      'clefs',
      'keys',
      'written',
      'sounding',
      'tessitura',
      'notes',
      'unpitched',
      'longest',
      'density',
      'registers',
      'divided',
      'techniques',
      'changes',
      'doubts',
    ])
  })
})
