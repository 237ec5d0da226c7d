import {scoreError} from './diagnostic.ts'
import type {ScoreError} from './diagnostic.ts'
import {readBytes, toScoreError} from './musicxml/source.ts'
import type {Score} from './score.ts'
import {Framer} from './xml/frame.ts'
import type {Frame} from './xml/frame.ts'

/** Where some parts of a score stand, and what stands outside all parts: found in one reading, for the next to pass over the rest. */
export interface Excerpt {
  /** Takes the frames of the whole score, in order; those of other parts may be missing. */
  add(frame: Frame): void
  /** The frames of these parts and what is outside all parts, chunk by chunk. Throws `ScoreError`. */
  cut(score: Score): AsyncGenerator<readonly Frame[]>
}

interface Range {
  readonly start: number
  /** The line of its first byte. */
  readonly line: number
  /** How it begins, to be known again. */
  readonly head: Uint8Array
  end: number
}

/** A footer up to so many bytes is kept, so that the next reading ends with the last of the parts. */
const SMALL = 64 * 1024

/** Enough of a part's beginning to hold its id. */
const HEAD = 32

/** An excerpt for some parts of a partwise score. */
export function createExcerpt(isWanted: (part: string) => boolean): Excerpt {
  const ranges: Range[] = []
  let footer: Uint8Array | undefined

  return {
    add({part, kind, bytes, start, line}) {
      if (part !== undefined && !isWanted(part)) return
      if (kind === 'footer' && bytes.length <= SMALL) {
        footer = bytes.slice()
        return
      }
      const last = ranges.at(-1)
      if (last?.end === start) last.end += bytes.length
      else ranges.push({start, line, head: bytes.slice(0, HEAD), end: start + bytes.length})
    },
    async *cut(score) {
      const framer = new Framer({treat: (part) => (isWanted(part) ? 'read' : 'drop')})
      try {
        for await (const piece of cutRanges(readBytes(score.open), ranges)) {
          if (piece.begins) {
            if (!beginsLike(piece.bytes, piece.begins.head)) throw changedMeanwhile()
            framer.leap(piece.begins.start, piece.begins.line)
          }
          yield framer.push(piece.bytes)
        }
        if (footer) yield framer.push(footer)
        yield framer.end()
      } catch (error) {
        throw toScoreError(error)
      }
    },
  }
}

/** Whether bytes begin as others did, as far as both go. */
function beginsLike(bytes: Uint8Array, head: Uint8Array): boolean {
  const length = Math.min(bytes.length, head.length)
  for (let i = 0; i < length; i++) if (bytes[i] !== head[i]) return false
  return true
}

function changedMeanwhile(): ScoreError {
  return scoreError('source/changed', 'the score is another at the second reading: it was changed')
}

/** The bytes in the ranges, and which of them begins with a piece. Reads no further than they go. */
async function* cutRanges(
  chunks: AsyncIterable<Uint8Array>,
  ranges: readonly Range[],
): AsyncGenerator<{readonly bytes: Uint8Array; readonly begins?: Range | undefined}> {
  const left = ranges.values()
  let range = left.next().value
  let at = 0
  for await (const chunk of chunks) {
    const end = at + chunk.length
    while (range && range.start < end) {
      const from = Math.max(range.start - at, 0)
      const bytes = chunk.subarray(from, range.end - at)
      yield {bytes, ...(range.start >= at && {begins: range})}
      if (range.end > end) break
      range = left.next().value
    }
    at = end
    if (!range) return
  }
}
