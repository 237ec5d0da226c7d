import {scoreError, type ScoreError} from '../diagnostic.ts'
import {join} from './bytes.ts'
import {inflate} from './inflate.ts'
import type {Inflate} from './inflate.ts'

/** An entry of a zip archive, as its directory tells. Sizes in bytes. */
export interface Entry {
  readonly name: string
  readonly packedSize: number
  readonly size: number
  readonly crc: number
  /** 0: stored · 8: deflated · others cannot be read. */
  readonly method: number
  readonly encrypted: boolean
  /** Where its header begins in the archive. */
  readonly offset: number
}

/** Bytes that can be had again and again. */
export type Bytes = () => AsyncIterable<Uint8Array>

/** Inflated bytes that an entry may have: more is an attack or a mistake. */
const LARGEST_ENTRY = 2 ** 32 - 2

/** The directory must lie in so many bytes at the end: enough for some ten thousand entries. */
const TAIL = 1024 * 1024

/**
 * The directory of a zip archive. Reads the archive through but holds no more than its last MiB. Throws `ScoreError`
 * `container/damaged` when the directory is missing, as at the end of a download that broke off.
 */
export async function readDirectory(archive: Bytes): Promise<Entry[]> {
  let [chunks, held, length]: [Uint8Array[], number, number] = [[], 0, 0]
  for await (const chunk of archive()) {
    length += chunk.length
    held += chunk.length
    chunks.push(chunk.slice())
    if (held < 2 * TAIL) continue
    chunks = [join(chunks).slice(-TAIL)]
    held = TAIL
  }
  const tail = join(chunks)
  const view = viewOf(tail)
  let at = tail.length - 22
  while (at >= 0 && view.getUint32(at, true) !== 0x06054b50) at--
  if (at < 0) throw damaged('it has no directory: is it complete?')
  const count = view.getUint16(at + 10, true)
  const start = view.getUint32(at + 16, true) - (length - tail.length)
  if (count === 0xffff || start < 0 || start > at) throw damaged('its directory cannot be read')
  return readEntries(tail.subarray(0, at), start, count)
}

function readEntries(tail: Uint8Array, start: number, count: number): Entry[] {
  const view = viewOf(tail)
  const entries: Entry[] = []
  for (let at = start; entries.length < count;) {
    if (at + 46 > tail.length || view.getUint32(at, true) !== 0x02014b50) {
      throw damaged('its directory cannot be read')
    }
    const nameEnd = at + 46 + view.getUint16(at + 28, true)
    entries.push({
      name: decodeName(tail.subarray(at + 46, nameEnd)),
      packedSize: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      crc: view.getUint32(at + 16, true),
      method: view.getUint16(at + 10, true),
      encrypted: (view.getUint16(at + 8, true) & 1) === 1,
      offset: view.getUint32(at + 42, true),
    })
    at = nameEnd + view.getUint16(at + 30, true) + view.getUint16(at + 32, true)
  }
  return entries
}

/** Names are UTF-8, said or unsaid; what is not keeps its bytes as characters, so that it at least has a name. */
function decodeName(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', {fatal: true}).decode(bytes)
  } catch {
    return String.fromCharCode(...bytes)
  }
}

/**
 * The inflated bytes of an entry, checked against size and checksum at the end. Throws `ScoreError` `container/encrypted`,
 * `container/too-large` or `container/damaged`.
 */
export async function* readEntry(
  archive: Bytes,
  entry: Entry,
  means?: Inflate,
): AsyncGenerator<Uint8Array> {
  const {name, size, method} = entry
  if (entry.encrypted) throw scoreError('container/encrypted', `${name} is encrypted`)
  if (size > LARGEST_ENTRY) throw tooLarge(name)
  if (method !== 0 && method !== 8) throw damaged(`${name} is packed in a way unknown here`)
  const packed = readPacked(archive, entry)
  let [sum, length] = [0, 0]
  const refuse = (reason: string): ScoreError => damaged(`${name}: ${reason}`)
  for await (const chunk of method === 0 ? packed : inflate(packed, refuse, means)) {
    sum = crc32(chunk, sum)
    length += chunk.length
    if (length > size) throw damaged(`${name} is larger than it says`)
    yield chunk
  }
  if (length !== size || sum !== entry.crc) throw damaged(`${name} is not what was packed`)
}

/** The packed bytes of an entry; its own header tells how long that header is. */
async function* readPacked(archive: Bytes, entry: Entry): AsyncGenerator<Uint8Array> {
  const pieces: Uint8Array[] = []
  for await (const piece of readRange(archive, entry.offset, entry.offset + 30))
    pieces.push(piece.slice())
  const header = join(pieces)
  if (header.length < 30 || viewOf(header).getUint32(0, true) !== 0x04034b50) {
    throw damaged(`${entry.name} is not where the directory says`)
  }
  const view = viewOf(header)
  const start = entry.offset + 30 + view.getUint16(26, true) + view.getUint16(28, true)
  yield* readRange(archive, start, start + entry.packedSize)
}

async function* readRange(archive: Bytes, start: number, end: number): AsyncGenerator<Uint8Array> {
  let at = 0
  for await (const chunk of archive()) {
    const piece = chunk.subarray(Math.max(0, start - at), Math.max(0, end - at))
    if (piece.length > 0) yield piece
    at += chunk.length
    if (at >= end) return
  }
}

/** The checksum of zip archives (CRC-32 of ISO 3309), going on from an earlier one. */
export function crc32(bytes: Uint8Array, before = 0): number {
  let sum = ~before
  const whole = bytes.length & ~7
  for (let i = 0; i < whole; i += 8) sum = addEight(sum, bytes, i)
  for (let i = whole; i < bytes.length; i++)
    sum = (sum >>> 8) ^ (CRC_TABLE[(sum ^ (bytes[i] as number)) & 0xff] as number)
  return ~sum >>> 0
}

/** Eight bytes at a step, each with what it adds after those behind it. */
function addEight(sum: number, bytes: Uint8Array, at: number): number {
  const first =
    sum ^
    ((bytes[at] as number) |
      ((bytes[at + 1] as number) << 8) |
      ((bytes[at + 2] as number) << 16) |
      ((bytes[at + 3] as number) << 24))
  return (
    (CRC_TABLE[0x700 + (first & 0xff)] as number) ^
    (CRC_TABLE[0x600 + ((first >>> 8) & 0xff)] as number) ^
    (CRC_TABLE[0x500 + ((first >>> 16) & 0xff)] as number) ^
    (CRC_TABLE[0x400 + (first >>> 24)] as number) ^
    (CRC_TABLE[0x300 + (bytes[at + 4] as number)] as number) ^
    (CRC_TABLE[0x200 + (bytes[at + 5] as number)] as number) ^
    (CRC_TABLE[0x100 + (bytes[at + 6] as number)] as number) ^
    (CRC_TABLE[bytes[at + 7] as number] as number)
  )
}

/** What a byte adds to the checksum; from 0x100 on, what it adds with one zero byte after it, then with two, up to seven. */
const CRC_TABLE: Readonly<Int32Array> = crcTable()

function crcTable(): Int32Array {
  const table = new Int32Array(0x800)
  for (let byte = 0; byte < 0x100; byte++) {
    let sum = byte
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1
    table[byte] = sum
  }
  for (let i = 0x100; i < table.length; i++) {
    const sum = table[i - 0x100] as number
    table[i] = (sum >>> 8) ^ (table[sum & 0xff] as number)
  }
  return table
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.length)
}

/** A fault of an archive. */
export function damaged(message: string): ScoreError {
  return scoreError('container/damaged', `the archive cannot be read: ${message}`)
}

function tooLarge(name: string): ScoreError {
  return scoreError('container/too-large', `${name} has more than ${LARGEST_ENTRY} bytes`)
}
