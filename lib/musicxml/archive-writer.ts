import {crc32} from './archive.ts'
import {join} from './bytes.ts'

/** What goes into an archive: short content whole, other as a stream. */
export interface NewEntry {
  readonly name: string
  readonly content: Uint8Array | AsyncIterable<Uint8Array>
}

/** What the directory at the end tells of an entry. */
interface Written {
  readonly name: Uint8Array
  readonly flags: number
  readonly method: number
  readonly crc: number
  readonly packedSize: number
  readonly size: number
  readonly offset: number
}

/** Names are UTF-8. */
const UTF8_NAME = 0x800
/** Checksum and sizes follow the content. */
const SIZES_FOLLOW = 0x8
/** The first day that the format knows: the same input gives the same archive. */
const DATE = 0x21

/**
 * Writes a zip archive as a stream, in the order of the entries. Content given whole is stored with its sizes before it, as the
 * first entry of a typed container must be; streams are deflated.
 */
export async function* writeArchive(
  entries: Iterable<NewEntry> | AsyncIterable<NewEntry>,
): AsyncGenerator<Uint8Array> {
  const directory: Written[] = []
  let offset = 0
  for await (const {name, content} of entries) {
    const whole = content instanceof Uint8Array
    const pieces = whole ? writeStored(name, content, offset) : writeDeflated(name, content, offset)
    for (let next = await pieces.next(); ; next = await pieces.next()) {
      if (next.done === true) {
        directory.push(next.value)
        break
      }
      offset += next.value.length
      yield next.value
    }
  }
  yield endOfArchive(directory, offset)
}

async function* writeStored(
  name: string,
  content: Uint8Array,
  offset: number,
): AsyncGenerator<Uint8Array, Written> {
  const entry: Written = {
    name: new TextEncoder().encode(name),
    flags: UTF8_NAME,
    method: 0,
    crc: crc32(content),
    packedSize: content.length,
    size: content.length,
    offset,
  }
  yield localHeader(entry)
  yield content
  return entry
}

async function* writeDeflated(
  name: string,
  content: AsyncIterable<Uint8Array>,
  offset: number,
): AsyncGenerator<Uint8Array, Written> {
  const {Deflate} = await import('fflate')
  const start: Written = {
    name: new TextEncoder().encode(name),
    flags: UTF8_NAME | SIZES_FOLLOW,
    method: 8,
    crc: 0,
    packedSize: 0,
    size: 0,
    offset,
  }
  yield localHeader(start)
  let ready: Uint8Array[] = []
  let [crc, size, packedSize] = [0, 0, 0]
  const deflater = new Deflate({level: 6}, (bytes) => {
    if (bytes.length > 0) ready.push(bytes)
    packedSize += bytes.length
  })
  for await (const chunk of content) {
    crc = crc32(chunk, crc)
    size += chunk.length
    deflater.push(chunk, false)
    yield* ready
    ready = []
  }
  deflater.push(new Uint8Array(0), true)
  yield* ready
  const entry = {...start, crc, size, packedSize}
  yield record(0x08074b50, [
    [4, crc],
    [4, packedSize],
    [4, size],
  ])
  return entry
}

function localHeader(entry: Written): Uint8Array {
  return record(0x04034b50, [[2, 20], ...common(entry), [2, entry.name.length], [2, 0]], entry.name)
}

/** The fields that an entry's own header and its line in the directory share. */
function common({flags, method, crc, packedSize, size}: Written): Field[] {
  return [
    [2, flags],
    [2, method],
    [2, 0],
    [2, DATE],
    [4, crc],
    [4, packedSize],
    [4, size],
  ]
}

function endOfArchive(directory: readonly Written[], offset: number): Uint8Array {
  const lines = directory.map((entry) =>
    record(
      0x02014b50,
      [
        [2, 20],
        [2, 20],
        ...common(entry),
        [2, entry.name.length],
        [2, 0],
        [2, 0],
        [2, 0],
        [2, 0],
        [4, 0],
        [4, entry.offset],
      ],
      entry.name,
    ),
  )
  const size = lines.reduce((sum, line) => sum + line.length, 0)
  const count = lines.length
  const end = record(0x06054b50, [
    [2, 0],
    [2, 0],
    [2, count],
    [2, count],
    [4, size],
    [4, offset],
    [2, 0],
  ])
  return join([...lines, end])
}

/** Size in bytes and value of a number. */
type Field = readonly [size: 2 | 4, value: number]

function record(
  signature: number,
  fields: readonly Field[],
  name: Uint8Array = new Uint8Array(0),
): Uint8Array {
  const all: readonly Field[] = [[4, signature], ...fields]
  const bytes = all.flatMap(([size, value]) =>
    Array.from({length: size}, (_, i) => (value >>> (8 * i)) & 0xff),
  )
  return join([new Uint8Array(bytes), name])
}
