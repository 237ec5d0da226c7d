import {SaxesParser} from 'saxes'
import {describe, expect, test} from 'vitest'
import {Framer, type Frame, type FramerOptions, type Treatment} from '../../lib/xml/frame.ts'
import {isXmlSyntaxError} from '../../lib/xml/syntax-error.ts'
import {corpus, decodeCorpus, hasCorpus, join8, pieces, random, scores, utf8} from './scores.ts'

function frames(chunks: Iterable<Uint8Array>, options: FramerOptions = {}): Frame[] {
  const framer = new Framer(options)
  const found = []
  for (const chunk of chunks) found.push(...framer.push(chunk))
  return [...found, ...framer.end()]
}

const whole = (text: string, options: FramerOptions = {}): Frame[] => frames([utf8(text)], options)

/** A frame as a line people can read: `measure P1 1 "<measure …"`. */
function show({kind, part, measure, bytes}: Frame): string {
  return [kind, part, measure, JSON.stringify(new TextDecoder().decode(bytes))]
    .filter((word) => word !== undefined)
    .join(' ')
}

/** Frames with neighbouring pieces of one copied part joined: how they are cut is nobody's business. */
function joined(list: readonly Frame[]): Frame[] {
  const result: Frame[] = []
  for (const frame of list) {
    const last = result.at(-1)
    if (last?.kind === 'copy' && frame.kind === 'copy' && last.part === frame.part) {
      result[result.length - 1] = {...last, bytes: join8([last.bytes, frame.bytes])}
    } else result.push(frame)
  }
  return result
}

type Treat = (part: string) => Treatment
const readAll: Treat = () => 'read'
const copyFirst: Treat = (part) => (part === 'P1' ? 'copy' : 'read')
const dropFirst: Treat = (part) => (part === 'P1' ? 'drop' : 'read')
const copyOthers: Treat = (part) => (part.endsWith('2') ? 'read' : 'copy')
const dropOthers: Treat = (part) => (part.endsWith('2') ? 'read' : 'drop')
const treatments: Record<string, Treat> = {
  read: readAll,
  copy: () => 'copy',
  drop: () => 'drop',
  'one read, others copied': copyOthers,
  'one read, others dropped': dropOthers,
}
const second = ({part}: Frame): boolean => part?.endsWith('2') === true

function fault(run: () => unknown): string {
  try {
    run()
  } catch (error) {
    if (isXmlSyntaxError(error))
      return `${error.fault} ${'line' in error.place && error.place.line}`
    throw error
  }
  return 'accepted'
}

/** How long cutting takes, in milliseconds. */
function cost(size: number): number {
  const comment = `<!--${'!'.repeat(size)}-->`
  const text = `<score-partwise><part><measure ${' '.repeat(size)}>${'<!-- -->'.repeat(size / 8)}${comment}</measure></part></score-partwise>`
  const bytes = utf8(text)
  const start = performance.now()
  frames(pieces(bytes, 7))
  return performance.now() - start
}

describe('partwise', () => {
  const text =
    '<score-partwise>\n<part-list/>\n<!-- a -->\n<part id="P1"> <measure number="1">x</measure>\n<measure number="2"/> </part>\n<part id="P2"/>\n</score-partwise>\n'

  test('gives header, gaps, tags, measures and footer', () => {
    expect(whole(text).map(show)).toEqual([
      'header "<score-partwise>\\n<part-list/>"',
      'gap P1 "\\n<!-- a -->\\n"',
      'open P1 "<part id=\\"P1\\">"',
      'gap P1 " "',
      'measure P1 1 "<measure number=\\"1\\">x</measure>"',
      'gap P1 "\\n"',
      'measure P1 2 "<measure number=\\"2\\"/>"',
      'gap P1 " "',
      'close P1 "</part>"',
      'gap P2 "\\n"',
      'open P2 "<part id=\\"P2\\"/>"',
      'close P2 ""',
      'footer "\\n</score-partwise>\\n"',
    ])
  })

  test('copies a part whole, with the gap before it', () => {
    expect(
      joined(whole(text, {treat: copyFirst}))
        .slice(0, 3)
        .map(show),
    ).toEqual([
      'header "<score-partwise>\\n<part-list/>"',
      `copy P1 ${JSON.stringify(text.slice(text.indexOf('\n<!--'), text.indexOf('\n<part id="P2"')))}`,
      'gap P2 "\\n"',
    ])
  })

  test('drops a part with the gap before it, and nothing else', () => {
    expect(whole(text, {treat: dropFirst}).map(show)).toEqual([
      'header "<score-partwise>\\n<part-list/>"',
      'gap P2 "\\n"',
      'open P2 "<part id=\\"P2\\"/>"',
      'close P2 ""',
      'footer "\\n</score-partwise>\\n"',
    ])
  })

  test('tells offset and line of every frame, also after dropped parts', () => {
    for (const treat of [readAll, dropFirst]) {
      for (const frame of whole(text, {treat})) {
        const before = text.slice(0, frame.start)
        expect(text.startsWith(new TextDecoder().decode(frame.bytes), frame.start)).toBe(true)
        expect(frame.line).toBe(before.split('\n').length)
      }
    }
  })
})

test('decodes ids and numbers and finds the right attribute', () => {
  const found = whole(scores['hostile'] as string).filter(({kind}) => /open|measure/.test(kind))
  expect(found.map(({kind, part, measure}) => [kind, part, measure])).toEqual([
    ['open', 'P&1A', undefined],
    ['measure', 'P&1A', '1 a>"'],
    ['measure', 'P&1A', 'é♭♭'],
    ['open', 'P2', undefined],
    ['open', '', undefined],
    ['open', '', undefined],
    ['measure', '', ''],
    ['measure', '', ''],
  ])
})

test('timewise, gives a frame for each part of a measure', () => {
  const found = whole(scores['timewise'] as string)
  expect(found.map(({kind, part, measure}) => [kind, part, measure].join(' ').trimEnd())).toEqual([
    'header',
    'gap  1',
    'open  1',
    'gap P1 1',
    'measure P1 1',
    'gap P2 1',
    'measure P2 1',
    'gap  1',
    'close  1',
    'gap  2',
    'open  2',
    'close  2',
    'gap  3',
    'open  3',
    'measure P1 3',
    'measure P2 3',
    'close  3',
    'footer',
  ])
})

test('timewise, drops a part from every measure', () => {
  const kept = new TextDecoder().decode(
    join8(whole(scores['timewise'] as string, {treat: dropFirst}).map(({bytes}) => bytes)),
  )
  expect(kept).not.toContain('id="P1">')
  expect(kept.match(/<part /g)).toHaveLength(2)
  expect(kept.match(/<measure /g)).toHaveLength(3)
})

test('tells the form once the root is read', () => {
  const framer = new Framer()
  expect(framer.form).toBeUndefined()
  framer.push(utf8('<?xml version="1.0"?><score-timewise'))
  expect(framer.form).toBeUndefined()
  framer.push(utf8('>'))
  expect(framer.form).toBe('timewise')
})

describe('refuses', () => {
  test.each([
    ['source/not-a-score 1', ''],
    ['source/not-a-score 1', 'no markup at all'],
    ['source/not-a-score 1', '<?xml version="1.0"?>\n<!-- <score-partwise> -->'],
    ['source/not-a-score 2', '<?xml version="1.0"?>\n<opus/>'],
    ['source/not-a-score 1', '<x:score-partwise xmlns:x="y"/>'],
    ['source/not-a-score 1', '<score-partwise-x/>'],
    ['xml/malformed 2', '<score-partwise>\n<part id="P1">'],
    ['xml/malformed 1', '<score-partwise><part id="P1"><measure>'],
    ['xml/malformed 1', '<score-partwise><part id="P1"><measure></measure'],
    [
      'xml/malformed 1',
      '<score-partwise><part id="P1"><measure><!-- </measure></part></score-partwise>',
    ],
    [
      'xml/malformed 2',
      '<score-partwise><part>\n<measure><measure/></measure></measure></part></score-partwise>',
    ],
  ])('%s: %s', (expected, text) => {
    expect(fault(() => whole(text))).toBe(expected)
  })

  test.each([
    ['a measure', '<score-partwise>\n<part>\n<measure>', 'x'],
    ['a comment', '<score-partwise>\n<part><measure>\n<!--', 'x'],
    ['a tag', '<score-partwise><part>\n<measure\n', ' '],
    ['a document type', '\n\n<!DOCTYPE x [', ' '],
  ])('%s that never ends, at the limit and not later', (_name, start, more) => {
    const limit = 100_000
    const framer = new Framer({limit})
    framer.push(utf8(start))
    let pushed = 0
    const push = (): void => {
      for (; pushed < 2 * limit; pushed += 500) framer.push(utf8(more.repeat(500)))
    }
    expect(fault(push)).toMatch(/^xml\/too-large [1-3]$/)
    expect(pushed).toBeLessThan(limit + 1000)
  })

  test('a large measure that comes in one chunk', () => {
    const text = `<score-partwise><part><measure>${'x'.repeat(2000)}</measure></part></score-partwise>`
    expect(fault(() => whole(text, {limit: 1000}))).toBe('xml/too-large 1')
    expect(fault(() => whole(text, {limit: 5000}))).toBe('accepted')
    expect(fault(() => whole(text, {limit: 1000, treat: () => 'copy'}))).toBe('accepted')
  })
})

describe.each(Object.entries(scores))('%s', (_name, text) => {
  const bytes = utf8(text)

  test.each(Object.entries(treatments))(
    'gives the same frames in any chunks: %s',
    (_mode, treat) => {
      const expected = joined(frames([bytes], {treat}))
      const sizes = [...Array.from({length: 40}, (_, i) => i + 1), 100, 1000]
      for (const size of sizes) {
        expect(joined(frames(pieces(bytes, size), {treat}))).toEqual(expected)
      }
      for (let seed = 0; seed < 20; seed++) {
        expect(joined(frames(pieces(bytes, random(seed)), {treat}))).toEqual(expected)
      }
    },
  )

  test('gives frames that joined are the score', () => {
    for (const treat of [readAll, () => 'copy' as const, copyOthers]) {
      expect(join8(frames([bytes], {treat}).map((frame) => frame.bytes))).toEqual(bytes)
    }
  })

  test('reads the same of a part, whatever becomes of the others', () => {
    const expected = frames([bytes]).filter(second)
    for (const treat of [copyOthers, dropOthers]) {
      expect(frames([bytes], {treat}).filter(second)).toEqual(expected)
    }
  })
})

test('takes time in proportion to the size, also in tiny chunks', () => {
  cost(20_000)
  // Were anything quadratic, eight times the size would take 64 times the time.
  expect(cost(400_000) / cost(50_000)).toBeLessThan(30)
})

/** What a general XML parser sees: part and number of every measure, in order. */
function measuresBySaxes(text: string): string[] {
  const found: string[] = []
  const parser = new SaxesParser()
  let part = ''
  let measure = ''
  let timewise = false
  parser.on('opentag', ({name, attributes}) => {
    if (name === 'score-timewise') timewise = true
    if (name === 'part') part = attributes['id'] ?? ''
    if (name === 'measure') measure = attributes['number'] ?? ''
    if (name === (timewise ? 'part' : 'measure')) found.push(`${part} ${measure}`)
  })
  parser.write(text).close()
  return found
}

describe.skipIf(!hasCorpus)('every score of the corpus (skipped without ../shared/corpus)', () => {
  test('is cut as a general parser sees it, in any treatment', () => {
    let count = 0
    for (const [name, raw] of corpus()) {
      const text = decodeCorpus(raw)
      if (text === undefined || name.includes('32ad-Notations5')) continue
      const bytes = utf8(text)
      if (!/<score-(part|time)wise/.test(text)) continue
      const all = frames(pieces(bytes, 8191))
      expect(
        all.filter(({kind}) => kind === 'measure').map(({part, measure}) => `${part} ${measure}`),
      ).toEqual(measuresBySaxes(text))
      expect(Buffer.compare(join8(all.map((frame) => frame.bytes)), bytes)).toBe(0)
      const first = all.find(({part}) => part !== undefined)?.part
      const read = all.filter(({part}) => part === first)
      for (const others of ['copy', 'drop'] as const) {
        const treat: Treat = (part) => (part === first ? 'read' : others)
        const found = frames(pieces(bytes, 65_536), {treat})
        const again = found.filter(({part}) => part === first)
        expect(again.length).toBe(read.length)
        expect(again.map(({kind, start, line}) => [kind, start, line])).toEqual(
          read.map(({kind, start, line}) => [kind, start, line]),
        )
        if (others === 'copy') {
          expect(Buffer.compare(join8(found.map((frame) => frame.bytes)), bytes)).toBe(0)
        }
      }
      count++
    }
    expect(count).toBeGreaterThan(200)
  }, 120_000)
})
