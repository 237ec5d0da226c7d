import type {Source} from '../../lib/index.ts'

/**
 * A source over bytes that gives chunks of sizes drawn from `sizes` in turn. As a source may, it uses the memory of each for
 * the next; before that it spoils it, for whoever still looks at it.
 */
export function sourceOf(bytes: Uint8Array, sizes: readonly number[] = [65_536]): Source {
  return async function* () {
    const memory = new Uint8Array(Math.min(bytes.length, Math.max(1, ...sizes)))
    let at = 0
    for (let turn = 0; at < bytes.length; turn++) {
      const size = Math.max(1, sizes[turn % sizes.length] ?? 1)
      const chunk = bytes.subarray(at, at + size)
      memory.set(chunk)
      yield memory.subarray(0, chunk.length)
      memory.fill(0x3c)
      at += size
    }
  }
}

/** All bytes of a stream in one piece. */
export async function collect(stream: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  for await (const chunk of stream) chunks.push(chunk)
  return new Uint8Array(Buffer.concat(chunks))
}

/** Pseudo-random numbers from 0 to 1, the same for the same seed (mulberry32). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}
