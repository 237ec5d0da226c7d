import {join} from './bytes.ts'

/** Compressed bytes inflated at a time: deflate makes at most 1032 times as many of them, whatever the sender wants. */
const SLICE = 4096

/** Inflated bytes handed on at a time, at least. */
const PIECE = 128 * 1024

/**
 * Bytes out of deflated ones, as they come. The platform does it where it can: a script would take the first megabytes to get
 * fast. Or by the `means` of the caller. What cannot be inflated is thrown as `refuse` has it; an error of `packed` itself passes.
 */
export async function* inflate(
  packed: AsyncIterable<Uint8Array>,
  refuse: (reason: string) => Error,
  means: Inflate = inflateHere,
): AsyncGenerator<Uint8Array> {
  let fault: {readonly error: unknown} | undefined
  async function* watched(): AsyncGenerator<Uint8Array> {
    try {
      yield* packed
    } catch (error) {
      fault = {error}
      throw error
    }
  }
  try {
    yield* means(watched())
  } catch (error) {
    throw fault ? fault.error : refuse(error instanceof Error ? error.message : String(error))
  }
}

/** Bytes out of deflated ones; throws whatever says that they are none. */
export type Inflate = (packed: AsyncIterable<Uint8Array>) => AsyncIterable<Uint8Array>

function inflateHere(packed: AsyncIterable<Uint8Array>): AsyncIterable<Uint8Array> {
  const platform = openPlatform()
  return platform ? inflateThrough(platform, packed) : inflateByScript(packed)
}

type Platform = ReadableWritablePair<Uint8Array, BufferSource>

/** Undefined where there is none, or none for deflated bytes without a header (Node before 20.12). */
function openPlatform(): Platform | undefined {
  try {
    return new DecompressionStream('deflate-raw')
  } catch {
    return undefined
  }
}

async function* inflateThrough(
  {readable, writable}: Platform,
  packed: AsyncIterable<Uint8Array>,
): AsyncGenerator<Uint8Array> {
  const reader = readable.getReader()
  const state = {isLeft: false}
  void feed(writable.getWriter(), packed, state)
  let [pieces, size]: [Uint8Array[], number] = [[], 0]
  try {
    for (;;) {
      const {done, value} = await reader.read()
      if (value) {
        pieces.push(value)
        size += value.length
      }
      // The platform gives small pieces, and whoever reads them pays for each.
      if (size < PIECE && !done) continue
      if (size > 0) yield join(pieces)
      if (done) return
      ;[pieces, size] = [[], 0]
    }
  } finally {
    state.isLeft = true
    void drain(reader)
  }
}

/**
 * Gives what is packed to the platform, no faster than the results are taken, until nobody wants more; its errors come to the
 * reader.
 */
async function feed(
  writer: WritableStreamDefaultWriter<BufferSource>,
  packed: AsyncIterable<Uint8Array>,
  state: {readonly isLeft: boolean},
): Promise<void> {
  try {
    for await (const chunk of packed) {
      // Copied, since the platform may settle a write before it has used the bytes.
      for (let at = 0; at < chunk.length && !state.isLeft; at += SLICE)
        await writer.write(chunk.slice(at, at + SLICE))
      if (state.isLeft) break
    }
    await (state.isLeft ? writer.abort() : writer.close())
  } catch (error) {
    await writer.abort(error).catch(() => {})
  }
}

/** Takes what is still to come of the last write: a reader that cancels fails in Node where the stream ends just then. */
async function drain(reader: ReadableStreamDefaultReader<Uint8Array>): Promise<void> {
  try {
    while (!(await reader.read()).done);
  } catch {
    // It was told already, or nobody wants to know.
  }
}

async function* inflateByScript(packed: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  const {Inflate} = await import('fflate')
  let ready: Uint8Array[] = []
  const inflater = new Inflate((bytes) => ready.push(bytes))
  const push = (bytes: Uint8Array, last: boolean): Uint8Array[] => {
    ready = []
    inflater.push(bytes, last)
    return ready.filter((each) => each.length > 0)
  }
  for await (const chunk of packed) {
    for (let at = 0; at < chunk.length; at += SLICE) {
      yield* push(chunk.subarray(at, at + SLICE), false)
    }
  }
  yield* push(new Uint8Array(0), true)
}
