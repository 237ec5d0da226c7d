import fc from 'fast-check'
import {XMLParser} from 'fast-xml-parser'
import {describe, expect, it, test} from 'vitest'
import {
  attribute,
  attributeValue,
  childNumber,
  childText,
  childrenNamed,
  decode,
  descendant,
  encode,
  everyElement,
  numberOf,
  parseElements,
  textOf,
} from '../../lib/xml/element.ts'
import type {Element} from '../../lib/xml/element.ts'
import {corpusFragments, corpusScores, describeCorpus, readCorpusText} from '../support/corpus.ts'
import {anyScore} from '../support/score-arbitrary.ts'

function only(text: string): Element {
  const [root] = parseElements(text)
  if (!root) throw new Error('no element')
  return root
}

/** An element as a line: its name, where it stands, and its attributes as they are written. */
function lines(elements: readonly Element[]): string[] {
  return elements.flatMap((root) =>
    [...everyElement(root)].map(({name, start, end, attributes}) =>
      JSON.stringify([name, start, end, attributes.map((each) => [each.name, each.raw])]),
    ),
  )
}

const METADATA = XMLParser.getMetaDataSymbol() as unknown as symbol

interface Entry {
  readonly [key: string | symbol]: unknown
  readonly ':@'?: Readonly<Record<string, string>>
}

/** The same from fast-xml-parser: the second opinion. Comments, instructions and text are no elements. */
function secondOpinion(text: string): string[] {
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: '',
    captureMetaData: true,
    trimValues: false,
    parseTagValue: false,
    parseAttributeValue: false,
    processEntities: false,
    commentPropName: '#comment',
    cdataPropName: '#cdata',
    maxNestedTags: 1000,
  })
  return entriesOf(parser.parse(text))
}

function entriesOf(entries: readonly Entry[]): string[] {
  return entries.flatMap((entry) => {
    const name = Object.keys(entry).find((key) => key !== ':@') ?? ''
    if (name.startsWith('#') || name.startsWith('?')) return []
    const place = entry[METADATA] as {startIndex: number; endIndex: number}
    const own = JSON.stringify([
      name,
      place.startIndex,
      place.endIndex,
      Object.entries(entry[':@'] ?? {}),
    ])
    return [own, ...entriesOf(entry[name] as readonly Entry[])]
  })
}

describe('the tree of spans', () => {
  it.each([
    ['nothing', '', ''],
    ['text alone', 'a &lt; b', ''],
    ['an element', '<a/>', 'a 0-4 ""'],
    ['siblings', '<a/> <b></b>', 'a 0-4 "" | b 5-12 ""'],
    ['children', '<a><b>x</b></a>', 'a 0-15 "<b>x</b>" | b 3-11 "x"'],
    ['white space in tags', '<a\n x = "1"\t>y</a >', 'a 0-19 "y"'],
    ['a comment with tags', '<a><!-- <b> --></a>', 'a 0-19 "<!-- <b> -->"'],
    ['an instruction with tags', '<a><?x <b>?></a>', 'a 0-16 "<?x <b>?>"'],
    ['CDATA with tags', '<a><![CDATA[<b>]]></a>', 'a 0-22 "<![CDATA[<b>]]>"'],
    ['an end of CDATA that is none', '<a><![CDATA[]] >]]></a>', 'a 0-23 "<![CDATA[]] >]]>"'],
    ['a greater sign in an attribute', '<a x=">"><b/></a>', 'a 0-17 "<b/>" | b 9-13 ""'],
    ['quotes in quotes', `<a x='"' y="'"/>`, 'a 0-16 ""'],
    ['a name that begins like another', '<a><ab/></a>', 'a 0-12 "<ab/>" | ab 3-8 ""'],
    ['names with dots, colons and more', '<x:y.z-1_é/>', 'x:y.z-1_é 0-12 ""'],
    [
      'a DOCTYPE with an internal subset',
      '<!DOCTYPE a [<!ENTITY b "<c>"> <!-- ]> --> <?p ]> ?>]><a/>',
      'a 54-58 ""',
    ],
    ['an instruction and a byte order mark', '\ufeff<?xml version="1.0"?><a/>', 'a 22-26 ""'],
  ])('of %s', (_, text, expected) => {
    const shown = parseElements(text).flatMap((root) =>
      [...everyElement(root)].map(
        ({name, start, end, contentStart, contentEnd}) =>
          `${name} ${start}-${end} "${text.slice(contentStart, contentEnd)}"`,
      ),
    )
    expect(shown.join(' | ')).toBe(expected)
  })

  it.each([
    ['an end without a beginning', '</a>'],
    ['another end', '<a></b>'],
    ['an end that is longer', '<a></ab>'],
    ['an end that is shorter', '<ab></a>'],
    ['ends that cross', '<a><b></a></b>'],
    ['no end', '<a><b></b>'],
    ['half a tag', '<a'],
    ['half a tag with an attribute', '<a x="1"'],
    ['an attribute without a value', '<a x>'],
    ['an attribute without quotes', '<a x=1>'],
    ['an attribute without an end', '<a x="1>'],
    ['half a comment', '<a><!-- </a>'],
    ['half an instruction', '<a><? </a>'],
    ['half a CDATA section', '<a><![CDATA[</a>'],
    ['half a DOCTYPE', '<!DOCTYPE a ['],
    ['a sign alone', 'a < b'],
  ])('refuses %s', (_, text) => {
    expect(() => parseElements(text)).toThrow(SyntaxError)
  })

  it('ends what is open at the end of a header', () => {
    const text = '<a x="1"><b>c</b> '
    const [root] = parseElements(text, {unclosed: 'allow'})
    expect(root).toMatchObject({name: 'a', start: 0, end: text.length, contentEnd: text.length})
    expect(root?.children.map(({name}) => name)).toEqual(['b'])
  })

  it('is the same in the second opinion, for generated scores', () => {
    fc.assert(
      fc.property(anyScore, (score) => {
        expect(lines(parseElements(score))).toEqual(secondOpinion(score))
      }),
    )
  })

  it('is the same in the second opinion, for what is hostile and well-formed', () => {
    const anyPiece = fc.constantFrom(
      '<a>',
      '</a>',
      '<a x="1">',
      "<b y='>'/>",
      '<!-- <a> -->',
      '<?p <a> ?>',
      '<![CDATA[</a>]]>',
      'text',
      ' ',
      '&lt;',
      '<c\n/>',
    )
    fc.assert(
      fc.property(fc.array(anyPiece, {maxLength: 20}), (pieces) => {
        const text = `<r>${pieces.join('')}</r>`
        const depths = pieces.map((piece) =>
          piece === '</a>' ? -1 : /^<a[^/]*>$/.test(piece) ? 1 : 0,
        )
        let depth = 0
        const nests = depths.every((step) => (depth += step) >= 0) && depth === 0
        if (nests) expect(lines(parseElements(text))).toEqual(secondOpinion(text))
        else expect(() => parseElements(text)).toThrow(SyntaxError)
      }),
      {numRuns: 1000},
    )
  })
})

describeCorpus('the tree of spans of real files', () => {
  test('is that of fast-xml-parser', {timeout: 120_000}, () => {
    let count = 0
    const files = [...corpusScores(), ...corpusFragments()].filter(({wellFormed}) => wellFormed)
    for (const file of files) {
      const text = readCorpusText(file)
      const own = lines(parseElements(text))
      count += own.length
      const other = secondOpinion(text)
      const index = own.findIndex((line, at) => line !== other[at])
      expect([file.name, own[index]]).toEqual([file.name, other[index]])
      expect([file.name, own.length]).toEqual([file.name, other.length])
    }
    expect(count).toBeGreaterThan(500_000)
  })
})

describe('what an element says', () => {
  it.each([
    ['<a>x</a>', 'x'],
    ['<a/>', ''],
    ['<a> x\n</a>', 'x'],
    ['<a>x &amp; y</a>', 'x & y'],
    ['<a>&#66;&#x266D;</a>', 'B♭'],
    ['<a>1<!-- 2 -->3</a>', '13'],
    ['<a>1<?p 2?>3</a>', '13'],
    ['<a><![CDATA[<&amp;>]]></a>', '<&amp;>'],
    ['<a><!-- > -->x<!-- < --></a>', 'x'],
    ['<a>x<b>y</b>z</a>', 'xyz'],
    ['<a>&unknown;</a>', '&unknown;'],
  ])('%s: %s', (text, expected) => {
    expect(textOf(text, only(text))).toBe(expected)
  })

  it.each([
    ['7', 7],
    ['007', 7],
    ['-3', -3],
    ['+3', 3],
    [' 12 ', 12],
    ['1234567', 1_234_567],
    ['0.5', 0.5],
    ['.5', 0.5],
    ['1<!-- -->2', 12],
    ['', undefined],
    ['x', undefined],
    ['1x', undefined],
    ['1 2', undefined],
    ['NaN', undefined],
    ['Infinity', undefined],
  ])('the number in “%s” is %s', (content, expected) => {
    const text = `<a>${content}</a>`
    expect(numberOf(text, only(text))).toBe(expected)
    expect(childNumber(`<p>${text}</p>`, only(`<p>${text}</p>`), 'a')).toBe(expected)
  })

  it('finds children and attributes', () => {
    const text = '<a x="1&lt;2" y=\'"\'><b>1</b><c><d>2</d></c><b>3</b></a>'
    const root = only(text)
    expect(childText(text, root, 'b')).toBe('1')
    expect(childText(text, root, 'z')).toBeUndefined()
    expect(childrenNamed(root, 'b').map((each) => textOf(text, each))).toEqual(['1', '3'])
    expect(descendant(root, 'c', 'd')?.name).toBe('d')
    expect(descendant(root, 'c', 'z', 'd')).toBeUndefined()
    expect(attributeValue(root, 'x')).toBe('1<2')
    expect(attributeValue(root, 'y')).toBe('"')
    expect(attributeValue(root, 'z')).toBeUndefined()
    const x = attribute(root, 'x')
    expect(text.slice(x?.start, x?.end)).toBe('1&lt;2')
    expect(text.slice(x?.from, (x?.end ?? 0) + 1)).toBe(' x="1&lt;2"')
  })
})

describe('entities', () => {
  it.each([
    ['&lt;&gt;&amp;&apos;&quot;', `<>&'"`],
    ['&amp;lt;', '&lt;'],
    ['&#x1F3BA;', '🎺'],
    ['&#9837;', '♭'],
    ['&#x110000;', '&#x110000;'],
    ['&nbsp; & &;', '&nbsp; & &;'],
  ])('%s is %s', (raw, expected) => {
    expect(decode(raw)).toBe(expected)
  })

  it('what is encoded is read as it was', () => {
    fc.assert(
      fc.property(fc.string({unit: 'grapheme'}), (value) => {
        expect(decode(encode(value))).toBe(value)
        const text = `<a x="${encode(value)}">${encode(value)}</a>`
        expect(attributeValue(only(text), 'x')).toBe(value)
        expect(textOf(text, only(text))).toBe(value.trim())
      }),
    )
  })
})
