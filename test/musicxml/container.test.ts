import {execFileSync} from 'node:child_process'
import {mkdtempSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join as joinPath} from 'node:path'
import {unzipSync, zipSync, type Zippable} from 'fflate'
import {describe, expect, test} from 'vitest'
import {ScoreError} from '../../lib/diagnostic.ts'
import {crc32, readDirectory} from '../../lib/musicxml/archive.ts'
import {openContainer, packContainer, repackContainer} from '../../lib/musicxml/container.ts'
import {corpusFiles, hasCorpus, join8, pieces, random, utf8} from '../xml/scores.ts'

type Chunking = number | (() => number)

const from = (bytes: Uint8Array, size: Chunking = 1000) =>
  async function* () {
    yield* pieces(bytes, size)
  }

async function collect(chunks: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const all = []
  for await (const chunk of chunks) all.push(chunk.slice())
  return join8(all)
}

const index = (...rootfiles: string[]): Uint8Array =>
  utf8(`<?xml version="1.0"?><container><rootfiles>${rootfiles.join('')}</rootfiles></container>`)

const music = utf8(`<score-partwise>${'<note/>'.repeat(20_000)}</score-partwise>`)

const archive = (entries: Zippable): Uint8Array => zipSync(entries)
const usual = archive({
  'META-INF/container.xml': index('<rootfile full-path="music.xml"/>'),
  'music.xml': music,
})

async function scoreOf(bytes: Uint8Array, size?: Chunking): Promise<Uint8Array> {
  return collect((await openContainer(from(bytes, size))).score())
}

async function fault(bytes: Uint8Array): Promise<string> {
  try {
    await scoreOf(bytes)
  } catch (error) {
    if (error instanceof ScoreError) return error.diagnostic.code
    throw error
  }
  return 'accepted'
}

/** The archive with a byte changed where a signature and an offset say. */
function patched(
  bytes: Uint8Array,
  signature: number[],
  offset: number,
  value: number,
): Uint8Array {
  const result = bytes.slice()
  const at = Buffer.from(bytes).lastIndexOf(Buffer.from(signature))
  result[at + offset] = value
  return result
}

const LOCAL = [0x50, 0x4b, 3, 4]
const CENTRAL = [0x50, 0x4b, 1, 2]

test('gives the score in chunks of any size', async () => {
  for (const size of [1, 2, 29, 1000, 1e6, random(3)]) {
    expect(Buffer.compare(await scoreOf(usual, size), music)).toBe(0)
  }
})

test('takes stored entries and a comment at the end of the archive', async () => {
  const stored = zipSync(
    {'META-INF/container.xml': index('<rootfile full-path="music.xml"/>'), 'music.xml': music},
    {level: 0},
  )
  expect(Buffer.compare(await scoreOf(stored), music)).toBe(0)
  const end = Buffer.from(usual).lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]))
  const commented = join8([usual, utf8('comment')])
  commented[end + 20] = 7
  expect(Buffer.compare(await scoreOf(commented), music)).toBe(0)
})

describe('finds the score', () => {
  const a = utf8('<score-partwise/>')
  const b = utf8('<score-timewise/>')
  test.each([
    [
      'the first rootfile without a media type',
      a,
      ['<rootfile full-path="a.xml"/>', '<rootfile full-path="b.xml"/>'],
    ],
    [
      'the first rootfile that is MusicXML',
      b,
      [
        '<rootfile full-path="a.pdf" media-type="application/pdf"/>',
        '<rootfile full-path="b.xml" media-type="application/vnd.recordare.musicxml+xml"/>',
      ],
    ],
    ['a name with entities', a, ['<rootfile full-path="a &amp; b.xml"/>']],
    ['a name beyond ASCII', b, ['<rootfile full-path="Märsche/Grüße.xml"/>']],
  ])('%s', async (_name, expected, rootfiles) => {
    const bytes = archive({
      'META-INF/container.xml': index(...rootfiles),
      'a.xml': a,
      'b.xml': b,
      'a & b.xml': a,
      Märsche: {'Grüße.xml': b},
      'a.pdf': utf8('%PDF'),
    })
    expect(await scoreOf(bytes)).toEqual(expected)
  })

  test('the only score there is, with a warning, when container.xml is of no use', async () => {
    // Found in a real file: the name's apostrophe ends the attribute.
    const quoted = utf8(
      "<container><rootfiles><rootfile full-path='Life's.xml'/></rootfiles></container>",
    )
    const opened = await openContainer(
      from(archive({"Life's.xml": music, 'META-INF/container.xml': quoted, '__MACOSX/._x.xml': a})),
    )
    expect(opened.rootfile).toBe("Life's.xml")
    expect(opened.doubt).toMatchObject({code: 'container/guessed', severity: 'warning'})
    expect((await openContainer(from(usual))).doubt).toBeUndefined()
  })
})

describe('refuses', () => {
  const two = {'a.xml': music, 'b.xml': music}
  test.each([
    ['container/damaged', 'what is no archive', utf8('PK, a song')],
    ['container/damaged', 'an archive without its end', usual.slice(0, -100)],
    ['container/damaged', 'the beginning alone', usual.slice(0, 50)],
    ['container/no-rootfile', 'no container.xml', archive(two)],
    [
      'container/no-rootfile',
      'an empty list',
      archive({...two, 'META-INF/container.xml': index()}),
    ],
    [
      'container/no-rootfile',
      'a file that is not there',
      archive({...two, 'META-INF/container.xml': index('<rootfile full-path="c.xml"/>')}),
    ],
    [
      'container/no-rootfile',
      'no MusicXML',
      archive({
        ...two,
        'META-INF/container.xml': index(
          '<rootfile full-path="a.xml" media-type="application/pdf"/>',
        ),
      }),
    ],
    [
      'container/damaged',
      'malformed container.xml',
      archive({...two, 'META-INF/container.xml': utf8('<container>')}),
    ],
    ['container/encrypted', 'an encrypted score', patched(usual, CENTRAL, 8, 1)],
    ['container/damaged', 'an unknown method', patched(usual, CENTRAL, 10, 14)],
    ['container/damaged', 'a wrong checksum', patched(usual, CENTRAL, 16, 0)],
    ['container/damaged', 'a wrong size', patched(usual, CENTRAL, 24, 0)],
    ['container/damaged', 'a wrong offset', patched(usual, CENTRAL, 42, 1)],
    ['container/damaged', 'spoilt content', patched(usual, LOCAL, 60, 0xff)],
  ])('%s: %s', async (code, _name, bytes) => {
    expect(await fault(bytes)).toBe(code)
  })

  test('a score that inflates to more than it says, before it fills the memory', async () => {
    const bomb = archive({
      'META-INF/container.xml': index('<rootfile full-path="music.xml"/>'),
      'music.xml': [new Uint8Array(100_000_000), {level: 9}],
    })
    const opened = await openContainer(from(patched(bomb, CENTRAL, 27, 0), 100_000))
    let [read, largest] = [0, 0]
    const reading = async (): Promise<void> => {
      for await (const chunk of opened.score()) {
        read += chunk.length
        largest = Math.max(largest, chunk.length)
      }
    }
    await expect(reading()).rejects.toThrow('larger than it says')
    expect(read).toBeLessThan(100_000_000)
    expect(largest).toBeLessThan(20_000_000)
  })

  test('damage of any kind with a ScoreError or not at all', async () => {
    const next = random(5)
    for (let i = 0; i < 500; i++) {
      const bytes = usual.slice(0, next() < 0.2 ? Math.floor(next() * usual.length) : undefined)
      for (let k = 0; k < 3; k++)
        bytes[Math.floor(next() * bytes.length)] = Math.floor(next() * 256)
      expect(await fault(bytes)).toMatch(/^(container\/|accepted)/)
    }
  })
})

test('packs a score: typed, indexed, and the same again', async () => {
  for (const size of [100, 5000, 1e6, random(4)]) {
    const packed = await collect(packContainer(from(music, size)(), 'Grüße & Märsche.musicxml'))
    const entries = unzipSync(packed)
    expect(Object.keys(entries)).toEqual([
      'mimetype',
      'META-INF/container.xml',
      'Grüße & Märsche.musicxml',
    ])
    expect(Buffer.from(packed.subarray(30, 72)).toString()).toBe(
      'mimetypeapplication/vnd.recordare.musicxml',
    )
    expect((await openContainer(from(packed))).rootfile).toBe('Grüße & Märsche.musicxml')
    expect(Buffer.compare(await scoreOf(packed), music)).toBe(0)
  }
})

test('keeps all else when another score is put in', async () => {
  const picture = new Uint8Array(50_000).map((_, i) => (i * i) >> 3)
  const before = archive({
    mimetype: [utf8('application/vnd.recordare.musicxml'), {level: 0}],
    'music.xml': music,
    'META-INF/': utf8(''),
    'META-INF/container.xml': index('<rootfile full-path="music.xml"/>'),
    'picture.png': picture,
  })
  const opened = await openContainer(from(before))
  const after = await collect(repackContainer(opened, from(utf8('<score-partwise/>'))()))
  expect(unzipSync(after)).toEqual({
    ...unzipSync(before),
    'music.xml': utf8('<score-partwise/>'),
  })
  expect(Object.keys(unzipSync(after))).toEqual(Object.keys(unzipSync(before)))
})

test('computes the checksum of zip archives', () => {
  // The check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC algorithms.
  expect(crc32(utf8('123456789'))).toBe(0xcbf43926)
  expect(crc32(utf8('6789'), crc32(utf8('12345')))).toBe(0xcbf43926)
})

test('other programs read what was packed', async (context) => {
  const directory = mkdtempSync(joinPath(tmpdir(), 'container-'))
  try {
    const file = joinPath(directory, 'score.mxl')
    writeFileSync(file, await collect(packContainer(from(music)(), 'score.musicxml')))
    const script =
      'import sys,zipfile; z=zipfile.ZipFile(sys.argv[1]); print(z.testzip(), len(z.namelist()))'
    let said: string
    try {
      said = execFileSync('python3', ['-c', script, file], {encoding: 'utf8'})
    } catch (error) {
      if ((error as {code?: string}).code === 'ENOENT') return context.skip('needs Python')
      throw error
    }
    expect(said.trim()).toBe('None 3')
  } finally {
    rmSync(directory, {recursive: true})
  }
})

describe.skipIf(!hasCorpus)(
  'every container of the corpus (skipped without ../shared/corpus)',
  () => {
    test('gives what another unzipper gives, and keeps its entries', async () => {
      let count = 0
      for (const [name, bytes] of corpusFiles()) {
        if (!name.endsWith('.mxl')) continue
        const expected = unzipSync(bytes)
        const opened = await openContainer(from(bytes, 65_536))
        const score = await collect(opened.score())
        const entry = (await readDirectory(from(bytes))).find(
          (each) => each.name === opened.rootfile,
        )
        expect(entry?.size).toBe(score.length)
        expect(entry?.crc).toBe(crc32(score))
        expect(opened.doubt !== undefined).toBe(name.includes('Lifes_Railway'))
        if (bytes.length > 100_000) continue
        const again = unzipSync(await collect(repackContainer(opened, opened.score())))
        const kept = Object.values(again)
        expect(kept).toHaveLength(Object.keys(expected).length)
        Object.values(expected).forEach((content, i) => {
          expect(Buffer.compare(kept[i] as Uint8Array, content)).toBe(0)
        })
        count++
      }
      expect(count).toBeGreaterThan(10)
    }, 60_000)
  },
)
