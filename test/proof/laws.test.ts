import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {ScoreError} from '../../lib/diagnostic.ts'
import {prove} from '../../lib/proof/compare.ts'
import {readMeasures} from '../../lib/proof/reader.ts'
import type {Source} from '../../lib/proof/text.ts'
import {attributes, backup, clef, heard, note, part, score, sourceOf, transpose} from './score.ts'

const measure =
  attributes(`<divisions>4</divisions>${clef('G', 2)}${transpose(-1, -2)}`) +
  note('G4', 4) +
  note('B4', 4, {chord: true}) +
  note('D5', 0, {grace: true}) +
  note('C5', 4, {tie: 'start'}) +
  backup(8) +
  note('E4', 8, {voice: 2})
const text = score({
  'P1 Cornet': [measure, note('C5', 4, {tie: 'stop'})],
  'P2 Harp': [note('x', 1)],
})

describe('laws of the reader', () => {
  test('any chunking gives the same', async () => {
    const expected = await heard(text)
    const bytes = new TextEncoder().encode(text)
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({min: 0, max: bytes.length}), {maxLength: 20}),
        async (cuts) => {
          const places = [0, ...cuts.toSorted((a, b) => a - b), bytes.length]
          const chunks = places.slice(1).map((end, index) => bytes.slice(places[index], end))
          expect(await heard(sourceOf(...chunks))).toEqual(expected)
        },
      ),
    )
  })

  test('damage is refused with a ScoreError or does no harm', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({min: 0, max: text.length}),
        fc.nat({max: 12}),
        fc.constantFrom(
          '',
          '<',
          '>',
          '&',
          '"',
          '-',
          '9e9',
          '1000000000000000000',
          'x',
          '\u0000',
          '<note/>',
          '</note>',
          ']]>',
        ),
        async (start, length, put) => {
          const damaged = text.slice(0, start) + put + text.slice(start + length)
          try {
            const {verdict} = await prove(sourceOf(text), sourceOf(damaged))
            if (damaged === text) expect(verdict).toBe('equal')
          } catch (error) {
            expect(error).toBeInstanceOf(ScoreError)
          }
        },
      ),
      {numRuns: 500},
    )
  })
})

/** A part that is written while it is read: far longer than what may be held of it. */
function longPart(measures: number): Source {
  return async function* () {
    const [head = '', tail = ''] = part('HERE').split(/<measure number="1">HERE<\/measure>\n/)
    yield head
    for (let index = 0; index < measures; index++)
      yield `<measure number="${index + 1}">${index === 0 ? measure : note('C5', 16)}</measure>\n`
    yield tail
  }
}

describe('memory', () => {
  test('reading holds one measure at a time, and no more of the source than it needs', async () => {
    let given = 0
    const counted: Source = async function* () {
      for await (const chunk of longPart(2000)()) {
        given++
        yield chunk
      }
    }
    let most = 0
    let seen = 0
    for await (const {index} of readMeasures(counted)) {
      seen = index + 1
      most = Math.max(most, given - seen)
    }
    expect(seen).toBe(2000)
    expect(most).toBeLessThan(5)
  })

  test('stopping early closes the source', async () => {
    let closed = false
    const source: Source = async function* () {
      try {
        yield* longPart(2000)()
      } finally {
        closed = true
      }
    }
    for await (const {index} of readMeasures(source)) if (index === 3) break
    expect(closed).toBe(true)
  })

  test('a proof keeps both sides in step', async () => {
    let most = 0
    const given = {before: 0, after: 0}
    const counted = (side: keyof typeof given): Source =>
      async function* () {
        for await (const chunk of longPart(2000)()) {
          given[side]++
          if (given.before > 2010 && given.after > 2010)
            most = Math.max(most, Math.abs(given.before - given.after))
          yield chunk
        }
      }
    const proof = await prove(counted('before'), counted('after'))
    expect(proof).toMatchObject({verdict: 'equal', pairs: [{notes: {before: 2004}, equal: 2004}]})
    expect(given.before).toBeGreaterThan(4000)
    expect(most).toBeLessThan(5)
  })
})
