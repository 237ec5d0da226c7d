import {readFileSync} from 'node:fs'
import {XMLParser} from 'fast-xml-parser'
import {describe, expect, it} from 'vitest'
import {validateScore} from './support/validate.ts'

const path = new URL('../fixtures/demo/score.musicxml', import.meta.url)
const bytes = new Uint8Array(readFileSync(path))

interface Note {
  readonly duration?: number
  readonly chord?: string
}

describe('the demonstration score', () => {
  it('is valid', () => {
    expect(validateScore(bytes)).toEqual([])
  })

  it('fills every measure of every part with four quarters', () => {
    const lists = new Set(['part', 'measure', 'note'])
    const parser = new XMLParser({ignoreAttributes: false, isArray: (name) => lists.has(name)})
    const parts = parser.parse(new TextDecoder().decode(bytes))['score-partwise'].part
    expect(parts).toHaveLength(10)
    for (const part of parts) {
      expect(part.measure).toHaveLength(24)
      for (const measure of part.measure) {
        const notes: readonly Note[] = measure.note
        const sounding = notes.filter((note) => note.chord === undefined)
        const length = sounding.reduce((sum, note) => sum + (note.duration ?? 0), 0)
        expect(length, `${part['@_id']}, measure ${measure['@_number']}`).toBe(16)
      }
    }
  })
})
