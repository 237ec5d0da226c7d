import {expect, it} from 'vitest'
import {renotatePart} from '../lib/index.ts'
import type {Source} from '../lib/index.ts'
import {collect} from './support/bytes.ts'
import {demoScore} from './support/fixtures.ts'

/** A file that somebody writes between the readings: the first bytes are longer than they were. */
function growing(): Source {
  const utf8 = new TextEncoder()
  const text = new TextDecoder().decode(demoScore())
  let readings = 0
  return async function* () {
    // Opened and looked at before it is read for good.
    const added = ++readings > 3 ? '<!-- a word more -->' : ''
    yield utf8.encode(text.replace('<part id="P1">', `${added}<part id="P1">`))
  }
}

it('a score that is changed between two readings is refused', async () => {
  const content = renotatePart(growing(), {part: 'P9', for: 'tuba'})
  await expect(collect(content)).rejects.toThrow('source/changed')
})

it('a part among others comes out the same whatever the size of the chunks', async () => {
  const score = demoScore()
  const chunked = (size: number): Source =>
    async function* () {
      for (let at = 0; at < score.length; at += size) yield score.subarray(at, at + size)
    }
  const whole = await collect(renotatePart(chunked(score.length), {part: 'P5', for: 'bassoon'}))
  for (const size of [1, 7, 4096, 65_536]) {
    const part = await collect(renotatePart(chunked(size), {part: 'P5', for: 'bassoon'}))
    expect(Buffer.compare(part, whole)).toBe(0)
  }
})
