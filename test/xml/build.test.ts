import {describe, expect, it} from 'vitest'
import {element, printElement} from '../../lib/xml/build.ts'

describe('a new element', () => {
  it.each([
    [element('a'), '<a/>'],
    [element('a', ''), '<a/>'],
    [element('a', []), '<a/>'],
    [element('a', 0), '<a>0</a>'],
    [element('a', 'x < y & z'), '<a>x &lt; y &amp; z</a>'],
    [element('a', undefined, {x: '"', y: undefined}), '<a x="&quot;"/>'],
    [element('a', [element('b', 1), undefined, element('c')]), '<a><b>1</b><c/></a>'],
  ])('%j is printed on one line', (created, expected) => {
    expect(printElement(created, '', '')).toBe(expected)
  })

  it('is printed in the margin of its neighbours', () => {
    const created = element('a', [element('b', [element('c', 1)]), element('d')], {n: '2'})
    expect(printElement(created, '\n  ', '  ')).toBe(
      '<a n="2">\n    <b>\n      <c>1</c>\n    </b>\n    <d/>\n  </a>',
    )
    expect(printElement(created, '\r\n\t', '\t')).toBe(
      '<a n="2">\r\n\t\t<b>\r\n\t\t\t<c>1</c>\r\n\t\t</b>\r\n\t\t<d/>\r\n\t</a>',
    )
  })
})
