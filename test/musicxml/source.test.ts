import {describe, expect, test} from 'vitest'
import {ScoreError} from '../../lib/diagnostic.ts'
import {
  createWriter,
  openSource,
  readBytes,
  toScoreError,
  type Source,
} from '../../lib/musicxml/source.ts'
import {syntaxError} from '../../lib/xml/syntax-error.ts'
import {
  corpusFiles,
  decodeCorpus,
  corpus,
  hasCorpus,
  join8,
  pieces,
  random,
  utf8,
} from '../xml/scores.ts'

const from = (bytes: Uint8Array, size: number | (() => number) = 7): Source =>
  async function* () {
    yield* pieces(bytes, size)
  }

const fromText = (...texts: string[]): Source =>
  async function* () {
    yield* texts
  }

async function collect(chunks: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const all = []
  for await (const chunk of chunks) all.push(chunk.slice())
  return join8(all)
}

/** What is read as text, and what is written when nothing is changed, in chunks of some size. */
async function through(
  source: Source,
  size: number | (() => number) = 5,
): Promise<{name: string; text: string; written: Uint8Array}> {
  const score = await openSource(source)
  const read = await collect(readBytes(score))
  const write = createWriter(score)
  const written = join8(Array.from(pieces(read, size), (piece) => write(piece).slice()))
  const text = new TextDecoder('utf-8', {ignoreBOM: true}).decode(read)
  return {name: score.encoding.name, text, written}
}

async function fault(source: Source): Promise<string> {
  try {
    await through(source)
  } catch (error) {
    if (error instanceof ScoreError) return error.diagnostic.code
    throw error
  }
  return 'accepted'
}

const utf16 = (text: string, big = false): Uint8Array => {
  const bytes = new Uint8Array(Buffer.from(text, 'utf16le'))
  return big ? new Uint8Array(Buffer.from(bytes).swap16()) : bytes
}
const latin = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, 'latin1'))
const score = (encoding: string, text: string): string =>
  `<?xml version="1.0" encoding="${encoding}"?>\r\n<score-partwise>${text}</score-partwise>\n`

describe('is told by the bytes and what they declare, and comes back as the same bytes', () => {
  const words = 'Grödner Hornquartett \u{1d11e} ♭ é'
  const everyByte = String.fromCharCode(...Array.from({length: 0x80}, (_, i) => i + 0x80))
  test.each<[string, Uint8Array, string]>([
    ['UTF-8', utf8(`<score-partwise>${words}</score-partwise>`), words],
    ['UTF-8', utf8(`\ufeff${score('utf-8', words)}`), words],
    ['UTF-16LE', utf16(`\ufeff${score('UTF-16', words)}`), words],
    ['UTF-16BE', utf16(`\ufeff${score('utf-16', words)}`, true), words],
    ['UTF-16LE', utf16(`\ufeff<score-partwise>${words}</score-partwise>`), words],
    ['UTF-16LE', utf16(score('UTF-16', words)), words],
    ['UTF-16BE', utf16(score('UTF-16BE', words), true), words],
    ['ISO-8859-1', latin(score('ISO-8859-1', everyByte)), everyByte],
    ['ISO-8859-1', latin(score('Latin1', everyByte)), everyByte],
    ['US-ASCII', latin(score('US-ASCII', 'Horn')), 'Horn'],
    ['windows-1252', latin(score('windows-1252', '\x80 \x93Horn\x94 \xe9')), '€ “Horn” é'],
    ['windows-1251', latin(score('Windows-1251', '\xd2\xf0\xf3\xe1\xe0')), 'Труба'],
    ['koi8-r', latin(score('KOI8-R', '\xf4\xd2\xd5\xc2\xc1')), 'Труба'],
    ['ISO-8859-2', latin(score('ISO-8859-2', '\x85Dvo\xf8\xe1k')), '\x85Dvořák'],
    ['ISO-8859-9', latin(score('ISO-8859-9', '\x80\xf0\xfe')), '\x80ğş'],
    ['ISO-8859-15', latin(score('ISO-8859-15', '\xa4 \xbd')), '€ œ'],
    ['shift_jis', latin(score('Shift_JIS', '\x83\x7a\x83\x8b\x83\x93')), 'ホルン'],
    ['euc-jp', latin(score('EUC-JP', '\xa5\xdb\xa5\xeb\xa5\xf3')), 'ホルン'],
    ['gbk', latin(score('GB2312', '\xd4\xb2\xba\xc5')), '圆号'],
    ['big5', latin(score('Big5', '\xaa\xf8\xb8\xb9')), '長號'],
    ['euc-kr', latin(score('EUC-KR', '\xc8\xa3\xb8\xa5')), '호른'],
  ])('%s', async (name, bytes, text) => {
    for (const size of [1, 2, 3, 7, 10_000, random(1), random(2)]) {
      const found = await through(from(bytes, size), size)
      expect(found.name).toBe(name)
      expect(found.text).toContain(text)
      expect(found.written).toEqual(bytes)
    }
  })
})

test('hands UTF-8 on without copying it', async () => {
  const bytes = utf8('<score-partwise/>')
  const opened = await openSource(async function* () {
    yield bytes
  })
  for await (const chunk of readBytes(opened)) expect(chunk).toBe(bytes)
})

test('reads text that is decoded already, also when it is cut within a character', async () => {
  const found = await through(fromText('<score-partwise>\ud834', '\udd1e', '</score-partwise>'))
  expect(found.text).toBe('<score-partwise>\u{1d11e}</score-partwise>')
  expect(found.name).toBe('UTF-8')
})

test('writes text that came decoded in the encoding that it declares', async () => {
  const text = score('ISO-8859-1', 'é')
  expect((await through(fromText(text))).written).toEqual(latin(text))
  const wide = score('UTF-16', 'é')
  expect((await through(fromText(wide))).written).toEqual(utf16(`\ufeff${wide}`))
})

test('writes a character that the encoding lacks as a character reference', async () => {
  const opened = await openSource(from(latin(score('ISO-8859-1', ''))))
  expect(createWriter(opened)(utf8('Klarinette in B♭ \u{1d11e} é'))).toEqual(
    latin('Klarinette in B&#9837; &#119070; \xe9'),
  )
})

describe('refuses', () => {
  test.each<[string, string, Uint8Array]>([
    ['source/empty', 'nothing', utf8('')],
    ['source/empty', 'white space', utf8(' \n')],
    ['source/not-a-score', 'a word', utf8('Horn')],
    ['source/not-a-score', 'MIDI', utf8('MThd\0\0\0\u0006')],
    ['source/not-a-score', 'PDF', utf8('%PDF-1.4')],
    ['source/not-a-score', 'gzip', latin('\x1f\x8b\x08')],
    ['source/encoding', 'UTF-8 that says it is UTF-16', utf8(score('UTF-16', ''))],
    [
      'source/encoding',
      'UTF-8 with a mark that says it is Latin-1',
      utf8(`\ufeff${score('ISO-8859-1', '')}`),
    ],
    ['source/encoding', 'UTF-16 that says it is UTF-8', utf16(`\ufeff${score('UTF-8', '')}`)],
    ['source/encoding', 'UTF-16 that says it is Latin-1', utf16(score('ISO-8859-1', ''))],
    ['source/encoding', 'UTF-16 of odd length', utf16(`\ufeff${score('UTF-16', '')}`).slice(0, -1)],
    ['source/encoding', 'UTF-16 with half a character', utf16(score('UTF-16', '\ud800'))],
    ['source/encoding', 'UTF-32', latin('<\0\0\0?\0\0\0')],
    ['source/encoding', 'UTF-32 with a mark', latin('\xff\xfe\0\0<\0\0\0')],
    ['source/encoding', 'EBCDIC', latin('\x4c\x6f\xa7\x94\x93')],
    ['source/encoding', 'UTF-7', latin('+/v8-<')],
    ['source/encoding', 'UTF-7 declared', utf8(score('UTF-7', ''))],
    ['source/encoding', 'an unknown name', utf8(score('Sarrusophone', ''))],
    ['source/encoding', 'a shifting encoding', utf8(score('ISO-2022-JP', ''))],
    ['source/encoding', 'a byte above ASCII', latin(score('US-ASCII', '\xe9'))],
    ['source/encoding', 'a byte that is no character', latin(score('windows-1253', '\xd2'))],
    ['source/encoding', 'half a character', latin(score('Shift_JIS', '\x83'))],
    [
      'source/encoding',
      'a second place for a character',
      latin(score('Shift_JIS', '\xfa\x4a\xed\x40\x87\x90')),
    ],
  ])('%s: %s', async (code, _name, bytes) => {
    expect(await fault(from(bytes))).toBe(code)
  })
})

test('takes bytes and text in one source for a mistake', async () => {
  await expect(through(mixed)).rejects.toThrow(TypeError)
})

async function* mixed(): AsyncGenerator<string | Uint8Array> {
  yield utf8('<score-partwise>'.padEnd(2000))
  yield '</score-partwise>'
}

test('tells faults of the XML with their line, and leaves other errors alone', () => {
  expect(toScoreError(syntaxError('no end', {line: 12}), {part: 'P1'})).toMatchObject({
    diagnostic: {code: 'xml/malformed', message: 'no end', at: {part: 'P1', line: 12}},
  })
  expect(toScoreError(syntaxError('large', {line: 3}, 'xml/too-large'))).toMatchObject({
    diagnostic: {code: 'xml/too-large', at: {line: 3}},
  })
  const mistake = new TypeError('x')
  expect(toScoreError(mistake)).toBe(mistake)
})

describe.skipIf(!hasCorpus)('every score of the corpus (skipped without ../shared/corpus)', () => {
  test('comes back as the same bytes, whatever its encoding', async () => {
    const names = new Map<string, number>()
    for (const [, bytes] of corpus()) {
      const text = decodeCorpus(bytes)
      if (text === undefined) expect(await fault(from(bytes, 65_536))).toBe('source/encoding')
      else {
        const found = await through(from(bytes, 65_536), 4099)
        expect(found.text === text).toBe(true)
        expect(Buffer.compare(found.written, bytes)).toBe(0)
        names.set(found.name, (names.get(found.name) ?? 0) + 1)
      }
    }
    expect(Object.fromEntries(names)).toMatchObject({
      'UTF-8': expect.any(Number),
      'UTF-16LE': expect.any(Number),
      'ISO-8859-1': expect.any(Number),
    })
  }, 60_000)

  test('is found in its container', async () => {
    let count = 0
    for (const [name, bytes] of corpusFiles()) {
      if (!name.endsWith('.mxl')) continue
      const opened = await openSource(from(bytes, 4096))
      expect(opened.container).toBeDefined()
      const text = new TextDecoder().decode(await collect(readBytes(opened)))
      expect(text).toMatch(/<\/score-partwise>\s*$/)
      count++
    }
    expect(count).toBeGreaterThan(20)
  }, 60_000)
})
