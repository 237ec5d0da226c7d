import {
  closeSync,
  existsSync,
  mkdtempSync,
  openSync,
  readFileSync,
  readSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import {dirname, join, basename} from 'node:path'
import {packContainer, repackContainer} from '../lib/index.ts'
import type {Source} from '../lib/index.ts'
import {openScore} from '../lib/index.ts'
import {usageError} from './usage.ts'

const CHUNK = 256 * 1024

/** The files that were opened to be read: none of them is written over. */
const inputs = new Set<string>()

/** The score at a path, or on standard input (`-`), as something to be read as often as needed. */
export async function openInput(path: string): Promise<Source> {
  const file = path === '-' ? await spool() : path
  refuseFolder(file, path)
  inputs.add(realpathSync(file))
  return Object.assign(() => readChunks(file), {inflate})
}

/** Node's own inflater gives pieces as large as one likes; those of its web streams are small, and cost more than they hold. */
async function* inflate(packed: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  const {createInflateRaw} = await import('node:zlib')
  const inflater = createInflateRaw({chunkSize: CHUNK})
  // Copied, since the memory of a chunk is used again before the inflater has taken it.
  const copies = async function* (): AsyncGenerator<Uint8Array> {
    for await (const chunk of packed) yield chunk.slice()
  }
  const {Readable, pipeline} = await import('node:stream')
  // An error of either is thrown by the inflater, to whoever reads it.
  pipeline(Readable.from(copies()), inflater, () => {})
  yield* inflater as AsyncIterable<Uint8Array>
}

/** The bytes of a file. They are waited for: nothing else is to be done meanwhile, and a stream would take longer. */
async function* readChunks(file: string): AsyncGenerator<Uint8Array> {
  const descriptor = openSync(file, 'r')
  const chunk = new Uint8Array(CHUNK)
  try {
    for (;;) {
      const length = readSync(descriptor, chunk)
      if (length === 0) return
      yield chunk.subarray(0, length)
    }
  } finally {
    closeSync(descriptor)
  }
}

/** The whole text of a small file beside the score: a report, a roster. */
export function readInput(path: string): string {
  refuseFolder(path, path)
  inputs.add(realpathSync(path))
  return readFileSync(path, 'utf8')
}

function refuseFolder(file: string, path: string): void {
  if (!existsSync(file)) throw usageError(`there is no file ${path}`)
  if (statSync(file).isDirectory()) throw usageError(`${path} is a folder, not a file`)
}

/** Standard input comes once; it is kept in a temporary file until the program ends. */
async function spool(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'renotate-'))
  process.once('exit', () => rmSync(folder, {recursive: true, force: true}))
  const file = join(folder, 'score')
  const descriptor = openSync(file, 'wx')
  for await (const bytes of process.stdin) writeAll(descriptor, bytes as Uint8Array)
  closeSync(descriptor)
  return file
}

/**
 * Writes an output whole or not at all: into a temporary file beside it that takes the final name at the end. `-` is
 * standard output. A name that ends in `.mxl` gets a container, the source's own with its other files if it had one.
 */
export async function writeOutput(
  path: string,
  content: AsyncIterable<Uint8Array>,
  options: {readonly force?: boolean | undefined; readonly like?: Source},
): Promise<void> {
  if (path === '-') {
    for await (const bytes of content) await print(bytes)
    return
  }
  if (existsSync(path)) {
    refuseFolder(path, path)
    if (inputs.has(realpathSync(path)))
      throw usageError(`${path} is read for this: it cannot be written over`)
    if (!options.force) throw usageError(`${path} exists; --force overwrites it`)
  }
  if (!existsSync(dirname(path))) throw usageError(`there is no folder ${dirname(path)}`)
  const packed = /\.mxl$/i.test(path) ? await pack(path, content, options.like) : content
  const temporary = join(dirname(path), `.${basename(path)}.${process.pid}.part`)
  try {
    const descriptor = openSync(temporary, 'wx')
    try {
      for await (const bytes of packed) writeAll(descriptor, bytes)
    } finally {
      closeSync(descriptor)
    }
    renameSync(temporary, path)
  } catch (error) {
    rmSync(temporary, {force: true})
    throw error
  }
}

function writeAll(descriptor: number, bytes: Uint8Array): void {
  for (let at = 0; at < bytes.length;) at += writeSync(descriptor, bytes, at)
}

async function pack(path: string, content: AsyncIterable<Uint8Array>, like: Source | undefined) {
  const container = like && (await openScore(like)).open.container
  if (container) return repackContainer(container, content)
  return packContainer(content, `${basename(path).replace(/\.mxl$/i, '')}.musicxml`)
}

/** A text as the content of a file. */
export async function* bytesOf(text: string): AsyncGenerator<Uint8Array> {
  yield new TextEncoder().encode(text)
}

async function print(bytes: Uint8Array | string): Promise<void> {
  if (!process.stdout.write(bytes))
    await new Promise((resolve) => process.stdout.once('drain', resolve))
}

/** Prints lines to standard output, waiting for a slow reader. */
export async function printLines(lines: AsyncIterable<string>): Promise<void> {
  let pending = ''
  for await (const line of lines) {
    pending += `${line}\n`
    if (pending.length > CHUNK) {
      await print(pending)
      pending = ''
    }
  }
  if (pending !== '') await print(pending)
}
