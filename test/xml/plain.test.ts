import {readFileSync} from 'node:fs'
import {expect, test} from 'vitest'
import {plainElements} from '../../lib/xml/plain.ts'
import {utf8} from './scores.ts'

function taken(text: string): string {
  const bytes = utf8(text)
  return new TextDecoder().decode(bytes.subarray(0, plainElements(bytes).pass(0)))
}

test.each([
  '<a/>',
  '<a />',
  '<a></a>',
  '<a b="1" c="\'"/>',
  '<a>x > "y"</a>\n <b/>',
  '<a b="1">x<c>y</c>z<c/></a>',
  '<a><b><c><d><e>5</e></d></c></b></a>',
  '<a b1="" b2="" b3="" b4="" b5="" b6="" b7="" b8="">x</a>',
  '<x:a xml:lang="fr"/>',
  '<a>fête &amp; bal</a>',
  '<a>あ<b/>ἀλλά “€”<b>ÿ\u0080ߪ</b></a>',
])('takes all of %j', (text) => {
  expect(taken(text)).toBe(text)
  expect(taken(`${text}\r\n\t${text}</z>`)).toBe(`${text}\r\n\t${text}`)
})

test.each([
  ['text', 'x<a/>'],
  ['an end tag', '</a>'],
  ['an end tag of another', '<a></b>'],
  ['an end tag that begins alike', '<a></aa>'],
  ['a start tag that begins alike', '<aa></a>'],
  ['elements that cross each other', '<a><b></a></b>'],
  ['an attribute twice', '<a b="1" b="2"/>'],
  ['an attribute twice, far apart', '<a b="1" c="2" d="3" b="4"></a>'],
  ['no space between attributes', '<a b="1"c="2"/>'],
  ['a < in a value', '<a b="<"/>'],
  ['a numbered reference', '<a>&#32;</a>'],
  ['a reference to what is not defined', '<a>&nbsp;</a>'],
  ['an & alone', '<a>& b</a>'],
  ['a reference in a value', '<a b="&amp;"/>'],
  ['a bracket, which may begin ]]>', '<a>]</a>'],
  ['a control character', '<a>\u0001</a>'],
  ['four bytes', '<a>\u{1d11e}</a>'],
  ['the end of the three bytes', '<a>\uffff</a>'],
  ['what is not ASCII in a value', '<a b="\u00e9"/>'],
  ['a name that is none', '<1/>'],
  ['a comment', '<!-- -->'],
  ['a section', '<a><![CDATA[x]]></a>'],
  ['an instruction', '<?a?>'],
  ['more than it can compare', '<a b1="" b2="" b3="" b4="" b5="" b6="" b7="" b8="" b9=""/>'],
  ['more than it can count', '<a><b><c><d><e><f/></e></d></c></b></a>'],
  ['what is not there whole', '<a><b/></a'],
])('leaves %s to a careful reading', (_what, text) => {
  expect(taken(text)).toBe('')
  expect(taken(`<z/>${text}`)).toBe('<z/>')
})

test.each([
  ['a continuation alone', [0x80]],
  ['a lead alone', [0xc3]],
  ['two bytes for one of ASCII', [0xc1, 0xa1]],
  ['three bytes for one of two', [0xe0, 0x9f, 0xbf]],
  ['a surrogate', [0xed, 0xa0, 0x80]],
  ['two of three bytes', [0xe3, 0x81]],
])('leaves bytes that are no UTF-8: %s', (_what, bad) => {
  const bytes = new Uint8Array([...utf8('<a>'), ...bad, ...utf8('</a>')])
  expect(plainElements(bytes).pass(0)).toBe(0)
})

test('goes on beyond what it sees at once', () => {
  const note = '<note><pitch><step>C</step></pitch></note>\n'
  const text = note.repeat(5000)
  const elements = plainElements(utf8(text))
  let [at, left] = [0, 0]
  while (at < text.length - 1) {
    const end = elements.pass(at)
    // The end of what it sees may cut a note apart.
    if (end === at) left++
    at = end === at ? text.indexOf('<note>', at + 2) : end
  }
  expect(left).toBeLessThan(5)
})

test('takes most of a score', () => {
  const bytes = new Uint8Array(
    readFileSync(new URL('../../fixtures/demo/score.musicxml', import.meta.url)),
  )
  const elements = plainElements(bytes)
  let all = 0
  for (let at = 0; at < bytes.length;) {
    const end = elements.pass(at)
    all += end - at
    at = bytes.indexOf(0x3e, end) + 1 || bytes.length
  }
  expect(all / bytes.length).toBeGreaterThan(0.9)
})
