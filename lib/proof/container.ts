import {scoreError} from '../diagnostic.ts'

/** A file in a zip archive: `method` 0 is stored, 8 deflated. */
interface Entry {
  readonly name: string
  readonly method: number
  readonly size: number
  readonly offset: number
}

/** Compressed bytes inflated at a time. */
const PIECE = 1 << 14

/**
 * The bytes of the score inside a compressed MusicXML file: the first root file that `META-INF/container.xml`
 * names or, where it names none that is there, the first file that looks like a score. They are inflated a piece at a
 * time, so that a small archive cannot become a large block of memory.
 * @throws ScoreError `proof/malformed` when the archive is damaged or holds no score.
 */
export async function* unpack(archive: Uint8Array): AsyncGenerator<Uint8Array> {
  const entries = readDirectory(archive)
  const list = entries.find((entry) => entry.name === 'META-INF/container.xml')
  const named = list && rootFile(await wholeText(archive, list))
  const score =
    entries.find((entry) => entry.name === named) ??
    entries.find((entry) => /^(?!META-INF\/).*\.(musicxml|xml)$/i.test(entry.name))
  if (!score) throw scoreError('proof/malformed', 'the compressed file holds no score')
  yield* inflate(archive, score)
}

function rootFile(xml: string): string | undefined {
  const path = /<rootfile\s[^>]*?full-path\s*=\s*(?:"([^"]*)"|'([^']*)')/.exec(xml)
  return (path?.[1] ?? path?.[2])
    ?.replaceAll('&apos;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
}

async function wholeText(archive: Uint8Array, entry: Entry): Promise<string> {
  const decoder = new TextDecoder()
  let text = ''
  for await (const piece of inflate(archive, entry)) {
    text += decoder.decode(piece, {stream: true})
    if (text.length > 1 << 20) throw damaged()
  }
  return text + decoder.decode()
}

/** Reads the central directory (APPNOTE.TXT 4.3.12), the only place whose sizes are always true. */
function readDirectory(archive: Uint8Array): readonly Entry[] {
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength)
  let end = archive.length - 22
  while (end >= 0 && view.getUint32(end, true) !== 0x06054b50) end--
  if (end < 0) throw damaged()
  const entries = []
  let at = view.getUint32(end + 16, true)
  for (let left = view.getUint16(end + 10, true); left > 0; left--) {
    if (at + 46 > archive.length || view.getUint32(at, true) !== 0x02014b50) throw damaged()
    const nameEnd = at + 46 + view.getUint16(at + 28, true)
    entries.push({
      name: new TextDecoder().decode(archive.subarray(at + 46, nameEnd)),
      method: view.getUint16(at + 10, true),
      size: view.getUint32(at + 20, true),
      offset: view.getUint32(at + 42, true),
    })
    at = nameEnd + view.getUint16(at + 30, true) + view.getUint16(at + 32, true)
  }
  return entries
}

async function* inflate(archive: Uint8Array, entry: Entry): AsyncGenerator<Uint8Array> {
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength)
  if (entry.offset + 30 > archive.length) throw damaged()
  const start =
    entry.offset +
    30 +
    view.getUint16(entry.offset + 26, true) +
    view.getUint16(entry.offset + 28, true)
  const data = archive.subarray(start, start + entry.size)
  if (data.length < entry.size || (entry.method !== 0 && entry.method !== 8)) throw damaged()
  if (entry.method === 0) {
    yield data
    return
  }
  const {Inflate} = await import('fflate')
  let inflated: Uint8Array[] = []
  const stream = new Inflate((chunk) => inflated.push(chunk))
  for (let from = 0; from < data.length; from += PIECE) {
    try {
      stream.push(data.subarray(from, from + PIECE), from + PIECE >= data.length)
    } catch {
      throw damaged()
    }
    yield* inflated
    inflated = []
  }
}

function damaged() {
  return scoreError('proof/malformed', 'the compressed file is damaged')
}
