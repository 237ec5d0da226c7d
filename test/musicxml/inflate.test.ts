import {deflateRawSync} from 'node:zlib'
import {afterEach, describe, expect, test, vi} from 'vitest'
import {inflate} from '../../lib/musicxml/inflate.ts'
import {join8, pieces, random, utf8} from '../xml/scores.ts'

const refuse = (reason: string): Error => new Error(`refused: ${reason}`)
const text = utf8(Array.from({length: 8000}, (_, i) => `<note n="${i * i}"/>\n`).join(''))
const packed = new Uint8Array(deflateRawSync(text))

afterEach(() => vi.unstubAllGlobals())

/** The bytes in pieces, asynchronously; says when they are no longer wanted. */
async function* flow(
  bytes: Uint8Array,
  size: number,
  closed = (): void => {},
): AsyncGenerator<Uint8Array> {
  try {
    yield* pieces(bytes, size)
  } finally {
    closed()
  }
}

async function all(chunks: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const got: Uint8Array[] = []
  for await (const chunk of chunks) got.push(chunk)
  return join8(got)
}

describe.each([
  ['by the platform', true],
  ['by a script, where the platform cannot', false],
])('inflates %s', (_how, hasPlatform) => {
  const start: typeof inflate = (...given) => {
    if (!hasPlatform) vi.stubGlobal('DecompressionStream', undefined)
    return inflate(...given)
  }

  test.each([1, 100, 1e9])('what comes in pieces of %i bytes', async (size) => {
    const result = await all(start(flow(packed, size), refuse))
    expect(Buffer.compare(result, text)).toBe(0)
  })

  test('nothing that is not deflated', async () => {
    await expect(all(start(flow(utf8('no such thing'), 5), refuse))).rejects.toThrow('refused: ')
  })

  test('and never takes damage for an error of its own', async () => {
    const next = random(7)
    for (let i = 0; i < 60; i++) {
      const bytes = packed.slice(0, next() < 0.3 ? Math.floor(next() * packed.length) : undefined)
      bytes[Math.floor(next() * bytes.length)] = Math.floor(next() * 256)
      const outcome = await all(start(flow(bytes, 1000), refuse)).then(
        () => 'inflated',
        (error: Error) => error.message,
      )
      expect(outcome).toMatch(/^(inflated|refused: )/)
    }
  })

  test('and passes what the source throws', async () => {
    const own = new Error('the disk is gone')
    await expect(all(start(broken(own), refuse))).rejects.toBe(own)
  })

  test('and may be left at any time', async () => {
    for (let most = 0; most < text.length + 20_000; most += 10_000) {
      let read = 0
      for await (const chunk of start(flow(packed, 1000), refuse)) {
        read += chunk.length
        if (read > most) break
        if (most % 20_000 === 0) await new Promise((resolve) => setTimeout(resolve, 1))
      }
      await new Promise((resolve) => setTimeout(resolve, 1))
    }
  })

  test('as far as somebody reads, and lets the source go then', async () => {
    const closed = vi.fn()
    let read = 0
    for await (const chunk of start(flow(packed, 1000, closed), refuse)) {
      read += chunk.length
      if (read > 50_000) break
    }
    await vi.waitFor(() => expect(closed).toHaveBeenCalledOnce())
    expect(read).toBeLessThan(text.length)
  })
})

describe('inflates by the means of the caller', () => {
  test('and nothing else', async () => {
    const result = await all(inflate(flow(new Uint8Array([1, 2, 3]), 2), refuse, oneMore))
    expect([...result]).toEqual([2, 3, 4])
  })

  test('whose errors are refusals, while those of the source pass', async () => {
    const job = all(inflate(flow(new Uint8Array([255]), 10), refuse, oneMore))
    await expect(job).rejects.toThrow('refused: too much')
    const own = new Error('the disk is gone')
    const zeros = new Uint8Array(500)
    await expect(all(inflate(broken(own, zeros), refuse, oneMore))).rejects.toBe(own)
  })
})

async function* oneMore(given: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  for await (const chunk of given) {
    if (chunk.includes(255)) throw new Error('too much')
    yield chunk.map((byte) => byte + 1)
  }
}

async function* broken(error: Error, first = packed.subarray(0, 500)): AsyncGenerator<Uint8Array> {
  yield first
  throw error
}
