import {XMLParser} from 'fast-xml-parser'
import {unzipSync} from 'fflate'
import {describe, expect, it} from 'vitest'
import {validateScore} from '../support/validate.ts'
import {generateScore, packScore, type ScoreOptions} from './generate.mjs'

function generate(options: ScoreOptions): string {
  return [...generateScore(options)].join('')
}

function count(text: string, word: string): number {
  return text.split(word).length - 1
}

describe('a generated score', () => {
  it('is valid, whatever its form and its measures', () => {
    for (const form of ['partwise', 'timewise'] as const) {
      for (const measures of ['long', 'short'] as const) {
        expect(validateScore(generate({bytes: 3e6, form, measures, parts: 26}))).toEqual([])
      }
    }
  }, 30_000)

  it('has the size asked for, about 430 bytes a note and 6 KB or 1 KB a measure', () => {
    const long = generate({bytes: 2e6})
    expect(Buffer.byteLength(long) / 2e6).toBeCloseTo(1, 1)
    expect(long.length / count(long, '<note')).toBeCloseTo(430, -2)
    expect(long.length / count(long, '<measure ')).toBeCloseTo(6000, -3)
    const short = generate({bytes: 2e6, measures: 'short'})
    expect(Buffer.byteLength(short) / 2e6).toBeCloseTo(1, 1)
    expect(short.length / count(short, '<measure ')).toBeCloseTo(1000, -3)
  })

  it('is the same again for the same seed, and another for another', () => {
    expect(generate({bytes: 3e5})).toBe(generate({bytes: 3e5}))
    expect(generate({bytes: 3e5})).not.toBe(generate({bytes: 3e5, seed: 2}))
  })

  it('holds the same measures in both forms', () => {
    const lists = new Set(['part', 'measure'])
    const parser = new XMLParser({ignoreAttributes: false, isArray: (name) => lists.has(name)})
    const partwise = parser.parse(generate({bytes: 3e5}))['score-partwise'].part
    const timewise = parser.parse(generate({bytes: 3e5, form: 'timewise'}))['score-timewise']
      .measure
    expect(timewise).toHaveLength(partwise[0].measure.length)
    for (const [p, part] of partwise.entries()) {
      for (const [m, measure] of part.measure.entries()) {
        expect(timewise[m].part[p].note).toEqual(measure.note)
      }
    }
  })

  it('shows what a rewriter has to deal with', () => {
    const text = generate({bytes: 3e6})
    for (const name of [
      'transpose',
      'harmony',
      'lyric',
      'clef',
      'accidental',
      'chord',
      'unpitched',
    ]) {
      expect(count(text, `<${name}`), name).toBeGreaterThan(10)
    }
  })

  it('can be packed', () => {
    const bytes = new TextEncoder().encode(generate({bytes: 3e5}))
    const entries = unzipSync(packScore(bytes))
    expect(new TextDecoder().decode(entries['META-INF/container.xml'])).toContain('score.musicxml')
    expect(entries['score.musicxml']).toEqual(bytes)
  })
})
