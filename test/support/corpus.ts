import {existsSync, readdirSync, readFileSync} from 'node:fs'
import {extname, join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {strFromU8, unzipSync} from 'fflate'
import {describe} from 'vitest'

/** A file of the corpus. `name` is its path inside the corpus, with slashes. */
export interface CorpusFile {
  readonly name: string
  readonly path: string
  /** False for the files that are broken on purpose: a reader has to refuse them. */
  readonly wellFormed: boolean
}

/** Two files are broken on purpose, as the corpus's README says: a tag mismatch and a false encoding. */
const broken = new Set([
  'test-suite/32ad-Notations5.musicxml',
  'encoding/declared_utf16_is_utf8.musicxml',
])

const fragments = 'w3c-examples/fragments/'

const directory =
  process.env.RENOTATE_CORPUS ?? fileURLToPath(new URL('../../../shared/corpus', import.meta.url))

const absent = `SKIPPED: no corpus at ${directory}; set RENOTATE_CORPUS to the folder that holds it`

/** Whether there is a corpus on this machine. It is not part of the project: its files have their own owners. */
export const hasCorpus = existsSync(join(directory, 'README.md'))

/** The whole scores of the corpus, in the order of their names; none when the corpus is absent. */
export function corpusScores(): readonly CorpusFile[] {
  return listFiles().filter((file) => !file.name.startsWith(fragments))
}

/** The elements out of context (roots like `key` or `measure`) that show one thing each; well-formed. */
export function corpusFragments(): readonly CorpusFile[] {
  return listFiles().filter((file) => file.name.startsWith(fragments))
}

/** The file of that name, for a test that needs one score in particular. Throws when there is none. */
export function corpusFile(name: string): CorpusFile {
  const file = listFiles().find((candidate) => candidate.name === name)
  if (!file) throw new Error(`the corpus has no ${name}`)
  return file
}

/** The bytes of the score's XML, unpacked from an .mxl; in whatever encoding the file has. */
export function readCorpusXml(file: CorpusFile): Uint8Array {
  const bytes = readFileSync(file.path)
  return extname(file.path) === '.mxl' ? unpackMxl(bytes) : new Uint8Array(bytes)
}

/** The score's XML as text, byte order mark removed, decoded as the mark or the declaration says. */
export function readCorpusText(file: CorpusFile): string {
  const bytes = readCorpusXml(file)
  return new TextDecoder(encodingOf(bytes)).decode(bytes)
}

/** What the corpus's README says of it, as Markdown. */
export function corpusReadme(): string {
  return readFileSync(join(directory, 'README.md'), 'utf8')
}

/** A `describe` over the corpus: skipped, with one clear line, where there is none. */
export function describeCorpus(name: string, body: () => void): void {
  if (!hasCorpus) console.warn(`${absent} (${name})`)
  describe.skipIf(!hasCorpus)(name, body)
}

function listFiles(): readonly CorpusFile[] {
  if (!hasCorpus) return []
  return readdirSync(directory, {recursive: true, encoding: 'utf8'})
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => ['.xml', '.musicxml', '.mxl'].includes(extname(name)))
    .toSorted((a, b) => (a < b ? -1 : 1))
    .map((name) => ({name, path: join(directory, name), wellFormed: !broken.has(name)}))
}

/** Not by way of container.xml: one of the corpus's is malformed, and each archive holds one score only. */
function unpackMxl(bytes: Uint8Array): Uint8Array {
  const scores = Object.values(unzipSync(bytes, {filter: isScore}))
  const [score] = scores
  if (!score || scores.length > 1) throw new Error(`the archive holds ${scores.length} scores`)
  return score
}

function isScore({name}: {readonly name: string}): boolean {
  return /\.(xml|musicxml)$/.test(name) && !name.startsWith('META-INF/')
}

function encodingOf(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le'
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be'
  const declaration = strFromU8(bytes.subarray(0, 200), true)
  const declared = /^<\?xml[^>]*encoding=["']([\w.-]+)/i.exec(declaration)?.[1] ?? 'utf-8'
  // An eight-bit declaration cannot truthfully say UTF-16: without a mark the bytes are UTF-8.
  return /^utf-?16/i.test(declared) ? 'utf-8' : declared
}
