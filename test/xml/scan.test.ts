import fc from 'fast-check'
import {expect, test} from 'vitest'
import {countByte, markupEnd, readAttribute} from '../../lib/xml/scan.ts'
import {utf8} from './scores.ts'

test('counts a byte wherever the bytes begin and however many they are', () => {
  const some = fc.array(fc.constantFrom(0x0a, 0x0b, 0x8a, 0x00, 0xff, 0x09, 0x0d), {
    maxLength: 5000,
  })
  fc.assert(
    fc.property(some, fc.nat(7), fc.constantFrom(0x0a, 0x0d, 0xff), (list, offset, byte) => {
      const bytes = new Uint8Array([...Array.from({length: offset}, () => byte), ...list])
      const expected = list.filter((each) => each === byte).length
      expect(countByte(bytes.subarray(offset), byte)).toBe(expected)
    }),
    {seed: 1},
  )
  expect(countByte(new Uint8Array(10_000).fill(0x0a), 0x0a)).toBe(10_000)
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
