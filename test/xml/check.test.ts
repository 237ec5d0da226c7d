import {XmlDocument} from 'libxml2-wasm'
import {SaxesParser} from 'saxes'
import {describe, expect, test} from 'vitest'
import {createChecker} from '../../lib/xml/check.ts'
import {isXmlSyntaxError} from '../../lib/xml/syntax-error.ts'
import {corpus, decodeCorpus, hasCorpus, pieces, random, scores, utf8} from './scores.ts'

/** The verdict: undefined when well-formed, else line and message. */
function check(bytes: Uint8Array, size: number | (() => number) = 1e9): string | undefined {
  const checker = createChecker()
  try {
    for (const piece of pieces(bytes, size)) checker.push(piece)
    checker.end()
  } catch (error) {
    if (!isXmlSyntaxError(error)) throw error
    const {message, fault, place} = error
    return `${'offset' in place && lineAt(bytes, place.offset)}: ${message} [${fault}]`
  }
  return undefined
}

/** XML 1.0, section 2.11. */
function lineAt(bytes: Uint8Array, offset: number): number {
  const before = Buffer.from(bytes.subarray(0, offset)).toString('latin1')
  return before.split(/\r\n|[\r\n]/).length
}

/** The verdict of a general strict parser. */
function saxesAccepts(bytes: Uint8Array): boolean {
  const parser = new SaxesParser()
  let accepted = true
  parser.on('error', () => (accepted = false))
  try {
    const options = {fatal: true, ignoreBOM: true}
    parser.write(new TextDecoder('utf-8', options).decode(bytes)).close()
  } catch {
    return false
  }
  return accepted
}

/** The verdict of the tie-breaker, a validating parser in C. */
function libxmlAccepts(bytes: Uint8Array): boolean {
  try {
    XmlDocument.fromBuffer(bytes).dispose()
    return true
  } catch {
    return false
  }
}

/** saxes lets some faults of document types, instructions and declarations pass: then the third must refuse them too. */
function expectAgreement(bytes: Uint8Array): boolean {
  const verdict = check(bytes)
  const shown = `${verdict ?? 'accepted'}: ${new TextDecoder().decode(bytes)}`
  if (verdict === undefined) expect(saxesAccepts(bytes), shown).toBe(true)
  else if (saxesAccepts(bytes)) expect(libxmlAccepts(bytes), shown).toBe(false)
  return verdict === undefined
}

const wellFormed = [
  '<a/>',
  '\ufeff<a/>',
  '\ufeff<?xml version="1.0"?><a/>',
  '<a\n/>',
  '<a></a\r\n>',
  '<a  b = "x"\tc=\'"\' />',
  '<a b="]]>" c="x\ny" d="&lt;&#10;&#x10FFFF;>"/>',
  '<a>></a>',
  '<a>]] ]>]]]</a>',
  '<a>&lt;&gt;&amp;&quot;&apos;&#65;&#x00041;&#0000000000000065;</a>',
  '<a><!----><!-- - -><& --><!-->--></a>',
  '<a><![CDATA[<&]]]]><![CDATA[>]]></a>',
  "<?xml version = '1.0' encoding=\"utf-8\"\nstandalone='no' ?>\n<a/>",
  '<?xml-stylesheet x?><?pi?><?p ??><a/><?x ? >?>',
  '<!DOCTYPE a><a/>',
  '<!DOCTYPE a SYSTEM "x>"><a/>',
  '<!DOCTYPE score-partwise PUBLIC "-//Nobody//DTD Band 1.0//EN" \'b.dtd\' [\n%x; <!ENTITY x "]>\'"> <!-- \'" ]> --> <?p ]> ?><!ELEMENT a (b)*>] ><a/>',
  '<a:b xmlns:c="d" c:e=""/>',
  '<:/>',
  '<_é-.·\u0300\u{10000} ñ="1"/>',
  '<a constructor="1" __proto__="2" toString="3"/>',
  '<a>\u0085\u{1f3ba}\ufffd\ue000\ud7ff\u007f</a>',
  '<a/> <!-- x -->\n<?y?>\n',
  `<a ${Array.from({length: 100}, (_, i) => `b${i}="${i}"`).join(' ')}/>`,
]

const malformed: readonly (readonly [line: number, text: string])[] = [
  [1, ''],
  [2, ' \n'],
  [1, 'x<a/>'],
  [1, '<a/>x'],
  [2, '<a/>\n<b/>'],
  [1, '<a/>&#32;'],
  [1, '\ufeff\ufeff<a/>'],
  [1, '<a/>\ufeff'],
  [1, '<![CDATA[x]]><a/>'],
  [3, '<a>\n<b>\n</a>'],
  [2, '<a>\r\n</b></a>'],
  [1, '<a></ab>'],
  [1, '<ab></a>'],
  [1, '</a>'],
  [1, '<a/></a>'],
  [1, '<a>'],
  [1, '<a></a'],
  [1, '<a'],
  [1, '<'],
  [1, '< a/>'],
  [1, '<a></ a>'],
  [1, '<a / >'],
  [1, '<1/>'],
  [1, '<·/>'],
  [1, '<a×/>'],
  [1, '<a b/>'],
  [1, '<a b=1/>'],
  [1, '<a b="1"c="2"/>'],
  [1, '<a b="<"/>'],
  [1, '<a b="1" c="3" b="2"/>'],
  [1, `<a ${Array.from({length: 100}, (_, i) => `b${i % 99}=""`).join(' ')}/>`],
  [1, '<a>]]></a>'],
  [1, '<a>& b</a>'],
  [1, '<a>&x;</a>'],
  [1, '<a>&LT;</a>'],
  [1, '<a>&amp</a>'],
  [1, '<a>&;</a>'],
  [1, '<a b="&y;"/>'],
  [1, '<a>&#;</a>'],
  [1, '<a>&#x;</a>'],
  [1, '<a>&#X41;</a>'],
  [1, '<a>&#0;</a>'],
  [1, '<a>&#xD800;</a>'],
  [1, '<a>&#xFFFE;</a>'],
  [1, '<a>&#x110000;</a>'],
  [1, '<a>&#99999999999999999999;</a>'],
  [1, '<!DOCTYPE a [<!ENTITY x "y">]><a>&x;</a>'],
  [1, '<!-- -- --><a/>'],
  [1, '<!-- a---><a/>'],
  [1, '<a><!-x--></a>'],
  [1, '<a><!x></a>'],
  [1, '<a><![CDATX[x]]></a>'],
  [1, '<a>\u0001</a>'],
  [1, '<a b="\u0001"/>'],
  [1, '<!-- \u0001 --><a/>'],
  [1, '<?p \u0001?><a/>'],
  [1, '<a><![CDATA[\u0001]]></a>'],
  [1, '<a>\ufffe</a>'],
  [1, ' <?xml version="1.0"?><a/>'],
  [1, '<a><?xml version="1.0"?></a>'],
  [1, '<?XML version="1.0"?><a/>'],
  [1, '<?xml?><a/>'],
  [1, '<?xml version="2.0"?><a/>'],
  [1, '<?xml encoding="x"?><a/>'],
  [1, '<?xml version="1.0"encoding="x"?><a/>'],
  [1, '<?xml version="1.0" encoding="1x"?><a/>'],
  [1, '<?xml version="1.0" standalone="maybe"?><a/>'],
  [1, '<?xml version="1.0" x="y"?><a/>'],
  [1, '<??><a/>'],
  [1, '<? x?><a/>'],
  [1, '<?1?><a/>'],
  [1, '<?pi?x?><a/>'],
  [1, '<!DOCTYPE a><!DOCTYPE a><a/>'],
  [1, '<a/><!DOCTYPE a>'],
  [1, '<a><!DOCTYPE a></a>'],
  [1, '<!doctype a><a/>'],
  [1, '<!DOCTYPE><a/>'],
  [1, '<!DOCTYPE a SYSTEM><a/>'],
  [1, '<!DOCTYPE a PUBLIC "x"><a/>'],
  [1, '<!DOCTYPE a [junk]><a/>'],
  [1, '<!DOCTYPE a [<!FOO x>]><a/>'],
  [1, '<!DOCTYPE a [<!-- -- -->]><a/>'],
  [1, '<!DOCTYPE a [<?xml x?>]><a/>'],
  [1, '<!DOCTYPE a [ ] x><a/>'],
  [1, '<!DOCTYPE a [ \u0001 ]><a/>'],
  [1, '<!DOCTYPE a ["]>'],
]

test.each(wellFormed)('accepts %j', (text) => {
  const bytes = utf8(text)
  expect(check(bytes)).toBeUndefined()
  expect(saxesAccepts(bytes)).toBe(true)
  for (let size = 1; size < 12; size++) expect(check(bytes, size)).toBeUndefined()
})

test.each(malformed)('refuses in line %i %j', (line, text) => {
  const bytes = utf8(text)
  const verdict = check(bytes)
  expect(verdict).toMatch(new RegExp(`^${line}: .*\\[xml/malformed\\]$`))
  expectAgreement(bytes)
  for (let size = 1; size < 12; size++) expect(check(bytes, size)).toBe(verdict)
})

test.each([
  ['a continuation alone', [0x80]],
  ['a lead alone', [0xc3]],
  ['a slash in two bytes', [0xc0, 0xaf]],
  ['a slash in three bytes', [0xe0, 0x80, 0xaf]],
  ['a small character in four bytes', [0xf0, 0x80, 0x80, 0xaf]],
  ['a surrogate', [0xed, 0xa0, 0x80]],
  ['beyond Unicode', [0xf4, 0x90, 0x80, 0x80]],
  ['five bytes', [0xf8, 0x88, 0x80, 0x80, 0x80]],
  ['Latin-1', [0xe9, 0x20]],
])('refuses ill-formed UTF-8: %s', (_name, bad) => {
  const parts = ['<a>', '<a b="', '<a><!--', '<a><?p ', '<a><![CDATA[', '<a><b']
  for (const part of parts) {
    const bytes = new Uint8Array([...utf8(part), ...bad, ...utf8('"></a>--></a>?></a>]]></a>')])
    expect(check(bytes)).toMatch(/^1: /)
    expect(saxesAccepts(bytes)).toBe(false)
  }
})

test('counts lines by line feeds, carriage returns and both together', () => {
  expect(check(utf8('<a>\r<b>\r</a>'))).toMatch(/^3: /)
  for (const size of [1, 2, 3, 100]) {
    expect(check(utf8('<a>\r\n<b>\r\n</a>'), size)).toMatch(/^3: /)
    expect(check(utf8('<a>\n\r<b>\r\n\n</a>\r'), size)).toMatch(/^5: /)
  }
})

function nested(depth: number): Uint8Array {
  return utf8('<a>'.repeat(depth) + '</a>'.repeat(depth))
}

test('refuses elements that are nested too deep, and says so', () => {
  expect(check(nested(1000))).toBeUndefined()
  expect(check(nested(1001))).toMatch(/more than 1000 deep \[xml\/too-deep\]$/)
})

test('keeps no more than the limit of markup without an end', () => {
  const checker = createChecker()
  checker.push(utf8('<a>\n<!--'))
  const chunk = utf8(' '.repeat(1024 * 1024))
  let pushed = 0
  const push = (): void => {
    for (; pushed < 100; pushed++) checker.push(chunk)
  }
  expect(push).toThrow(expect.objectContaining({fault: 'xml/too-large', place: {offset: 4}}))
  expect(pushed).toBeLessThan(66)
})

test.each(Object.entries(scores))('accepts an invented score in any chunks: %s', (_name, text) => {
  const bytes = utf8(text)
  expect(saxesAccepts(bytes)).toBe(true)
  for (let size = 1; size < 30; size++) expect(check(bytes, size)).toBeUndefined()
})

const BASE = utf8(
  `<?xml version="1.0" encoding="UTF-8"?>\n<!DOCTYPE a PUBLIC "-//x//y" "z" [<!ENTITY q "r"><!-- c --><?p q?>]>
<a b="1" c='2'><d e="&lt;&#65;&#x41;"/>t &amp; x<!-- c --><![CDATA[ ]] > ]]><?pi data?>é\u{10000}<f g="h"></f ></a>
<!-- end --><?z?>`,
)
const BITS =
  '< > / & ; " \' = \n ! ? - -- --> <!-- <![CDATA[ ]]> ] [ <? ?> <a> </a> <b/> &amp; &#0; &#x1F; &x; \u0001 \ufffe \ufeff xml <?xml : · × \u0300 a 1 . é \r'
    .split(' ')
    .concat(' ', '<?xml version="1.0"?>', '<!DOCTYPE a>')
    .map(utf8)

/** Nothing but what `plain.ts` takes, beside one thing that it does not. */
const PLAIN = utf8(
  `<a b="1"><c d="1" e="2" dd="3"/> <f>1</f>\n<g><h><i>x y</i></h><h ><i>[z]</i></h><c e="&amp;" />></g><f></f></a>`,
)

/** A document with some bytes lost, put in, changed or doubled. */
function mutant(base: Uint8Array, next: () => number): Uint8Array {
  const pick = (count: number): number => Math.floor(next() * count)
  let bytes = [...base]
  for (let changes = 1 + pick(3); changes > 0; changes--) {
    const at = pick(bytes.length + 1)
    const bit = BITS[pick(BITS.length)] as Uint8Array
    switch (pick(6)) {
      case 0:
        bytes.splice(at, 1 + pick(3))
        break
      case 1:
        bytes.splice(at, 1, ...bit)
        break
      case 2:
        bytes.splice(at, 1, pick(4) > 0 ? pick(256) : 32 + pick(90))
        break
      case 3:
        bytes = [...bytes.slice(0, at + pick(20)), ...bytes.slice(at)]
        break
      default:
        bytes.splice(at, 0, ...bit)
    }
  }
  return new Uint8Array(bytes)
}

test.each([
  ['of every kind', BASE],
  ['that are plain', PLAIN],
])(
  'agrees about 20 000 damaged documents %s, in chunks of any size',
  (_name, base) => {
    const next = random(20)
    let accepted = 0
    for (let i = 0; i < 20_000; i++) {
      const bytes = mutant(base, next)
      if (expectAgreement(bytes)) accepted++
      if (i % 4 === 0) expect(check(bytes, 1 + (i % 7))).toBe(check(bytes))
    }
    expect(accepted).toBeGreaterThan(1000)
    expect(accepted).toBeLessThan(10_000)
  },
  60_000,
)

describe.skipIf(!hasCorpus)('every score of the corpus (skipped without ../shared/corpus)', () => {
  test('is judged as by others', () => {
    let [count, refused] = [0, 0]
    for (const [, raw] of corpus()) {
      const text = decodeCorpus(raw)
      if (text === undefined) continue
      const bytes = utf8(text)
      const verdict = check(bytes, 8191)
      expect(verdict === undefined).toBe(saxesAccepts(bytes))
      expect(check(bytes, random(count))).toBe(verdict)
      if (verdict !== undefined) refused++
      count++
    }
    expect(count).toBeGreaterThan(400)
    expect(refused).toBe(1)
  }, 120_000)
})
