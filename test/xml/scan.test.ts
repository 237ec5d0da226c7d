import fc from 'fast-check'
import {expect, test} from 'vitest'
import {countLines, markupEnd, readAttribute} from '../../lib/xml/scan.ts'
import {utf8} from './scores.ts'

/** XML 1.0, section 2.11. */
const LINE_END = /\r\n|[\r\n]/

test('counts lines wherever the bytes begin and however they are cut', () => {
  const characters = fc.constantFrom('\n', '\r', '\r\n', '\v', 'a', '<', '\0', '\t')
  const texts = fc.array(characters, {maxLength: 3000}).map((all) => all.join(''))
  fc.assert(
    fc.property(texts, fc.nat(7), fc.nat(3000), (text, offset, cut) => {
      const bytes = utf8('\n'.repeat(offset) + text).subarray(offset)
      const lines = text.split(LINE_END).length - 1
      expect(countLines(bytes)).toBe(lines)
      const [first, second] = [bytes.subarray(0, cut), bytes.subarray(cut)]
      expect(countLines(first) + countLines(second, first.at(-1))).toBe(lines)
    }),
    {seed: 1},
  )
  expect(countLines(new Uint8Array(10_000).fill(0x0a))).toBe(10_000)
  expect(countLines(utf8('\r\n'.repeat(10_000)))).toBe(10_000)
})

test.each([
  ['<a>', '<a>x'],
  ['<a b=">"/>', '<a b=">"/>>'],
  ["<a b='>\"'>", "<a b='>\"'>"],
  ['</a >', '</a >>'],
  ['<!-- > -- ->-->', '<!-- > -- ->-->-->'],
  ['<!---->', '<!---->'],
  ['<![CDATA[>]] >]]]>', '<![CDATA[>]] >]]]>]]>'],
  ['<?x > ?>', '<?x > ?>?>'],
  [
    '<!DOCTYPE a [<!-- > \' -->"]>"<?x " ?><!ENTITY b ">">]>',
    '<!DOCTYPE a [<!-- > \' -->"]>"<?x " ?><!ENTITY b ">">]><a>',
  ],
])('finds the end of %s', (markup, text) => {
  expect(markupEnd(utf8(text), 0)).toBe(markup.length)
  for (let length = 1; length < markup.length; length++) {
    expect(markupEnd(utf8(markup.slice(0, length)), 0)).toBe(-1)
  }
})

test.each([
  ['<part id="P1">', 'P1'],
  ["<part\n id = 'P\"1' >", 'P"1'],
  ['<part xml:id="no" grid="no" title=\'id="no"\' id="&lt;&#x266d;\té"/>', '<♭ é'],
  ['<part id="\ufeffx">', '\ufeffx'],
  ['<part>', ''],
])('reads the id in %s', (tag, value) => {
  const bytes = utf8(tag)
  expect(readAttribute(bytes, 0, bytes.length, 'id')).toBe(value)
})
