import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {element as create, printElement} from '../../lib/xml/build.ts'
import {
  addAttribute,
  applyEdits,
  insertAfter,
  insertBefore,
  insertChild,
  marginBefore,
  removeAttribute,
  removeElement,
  replaceElement,
  setAttribute,
  setText,
} from '../../lib/xml/edit.ts'
import type {Edit} from '../../lib/xml/edit.ts'
import {attribute, child, parseElements} from '../../lib/xml/element.ts'
import type {Attribute, Element} from '../../lib/xml/element.ts'

const ORDER = ['a', 'b', 'c', 'd']

/** Parses a text of one root, and makes the edits that `change` wants of it. */
function edited(text: string, change: (root: Element) => readonly Edit[]): string {
  const [root] = parseElements(text)
  if (!root) throw new Error('no element')
  return applyEdits(text, change(root))
}

function must(parent: Element, name: string): Element {
  const found = child(parent, name)
  if (!found) throw new Error(`no ${name}`)
  return found
}

function attributeX(root: Element): Attribute {
  const own = attribute(root, 'x')
  if (!own) throw new Error('no x')
  return own
}

const print = (name: string) => (margin: string, indent: string) =>
  printElement(create(name, 'x'), margin, indent)
const printNested = (margin: string, indent: string): string =>
  printElement(create('b', [create('x', 1), create('y', 2)]), margin, indent)

describe('edits', () => {
  it('are made at the offsets of the text as it was read, in any order', () => {
    const edits = [
      {start: 4, end: 5, text: 'E'},
      {start: 0, end: 0, text: '>'},
      {start: 1, end: 3, text: ''},
      {start: 5, end: 5, text: '<'},
    ]
    expect(applyEdits('abcde', edits)).toBe('>adE<')
    expect(applyEdits('abcde', [])).toBe('abcde')
  })

  it('keep the order of what is inserted at one place', () => {
    const edits = ['1', '2', '3'].map((text) => ({start: 1, end: 1, text}))
    expect(applyEdits('ab', [...edits, {start: 1, end: 2, text: 'B'}])).toBe('a123B')
  })

  it.each([
    [
      [0, 3],
      [2, 4],
    ],
    [
      [0, 4],
      [1, 2],
    ],
    [
      [1, 2],
      [1, 2],
    ],
    [
      [0, 3],
      [1, 1],
    ],
  ] as const)('%j and %j overlap: our bug', (one, other) => {
    const edits = [one, other].map(([start, end]) => ({start, end, text: ''}))
    expect(() => applyEdits('abcdef', edits)).toThrow(RangeError)
  })

  it('that do not overlap give what cutting and pasting gives', () => {
    const anyCuts = fc.uniqueArray(fc.nat(30), {minLength: 2, maxLength: 8})
    fc.assert(
      fc.property(fc.string({minLength: 31, maxLength: 40}), anyCuts, (text, cuts) => {
        const places = cuts.toSorted((a, b) => a - b)
        const edits = places
          .slice(1)
          .map((end, at) => ({start: places[at] ?? 0, end, text: `[${at}]`}))
        const chosen = edits.filter((_, at) => at % 2 === 0)
        let pasted = text
        for (const {start, end, text: by} of chosen.toReversed())
          pasted = pasted.slice(0, start) + by + pasted.slice(end)
        expect(applyEdits(text, chosen.toReversed())).toBe(pasted)
      }),
    )
  })
})

describe('an element', () => {
  it.each([
    ['<r>old</r>', '<r>n &amp; w</r>'],
    ['<r></r>', '<r>n &amp; w</r>'],
    ['<r/>', '<r>n &amp; w</r>'],
    ['<r x="1"/>', '<r x="1">n &amp; w</r>'],
  ])('%s says something else: %s', (text, expected) => {
    expect(edited(text, (root) => [setText(root, 'n & w')])).toBe(expected)
  })

  it.each([
    ['on its own line', '<r>\n  <a/>\n  <b/>\n</r>', '<r>\n  <a/>\n</r>'],
    ['on the line of others', '<r><a/><b>1</b><c/></r>', '<r><a/><c/></r>'],
    ['behind white space', '<r><a/> <b/> <c/></r>', '<r><a/> <c/></r>'],
    ['behind text', '<r>text <b/></r>', '<r>text </r>'],
    ['behind a comment', '<r>\n  <!-- c -->\n  <b/>\n</r>', '<r>\n  <!-- c -->\n</r>'],
  ])('%s is removed with the white space before it', (_, text, expected) => {
    expect(edited(text, (root) => [removeElement(text, must(root, 'b'))])).toBe(expected)
  })

  it('is replaced', () => {
    const text = '<r><a>1</a><b/></r>'
    expect(edited(text, (root) => [replaceElement(must(root, 'a'), '<z/>')])).toBe(
      '<r><z/><b/></r>',
    )
  })

  it.each([
    ['\n  <a/>', 3, '\n  '],
    ['<a/> <b/>', 5, ' '],
    ['x <b/>', 2, ''],
    ['  <b/>', 2, '  '],
    ['<b/>', 0, ''],
  ])('the margin in %j at %i is %j', (text, at, expected) => {
    expect(marginBefore(text, at)).toBe(expected)
  })
})

describe('an attribute', () => {
  it.each([
    ['<r/>', '<r x="1&quot;"/>'],
    ['<r />', '<r x="1&quot;" />'],
    ['<r></r>', '<r x="1&quot;"></r>'],
    ['<r a="1"\n>b</r>', '<r a="1" x="1&quot;"\n>b</r>'],
  ])('is added to %s: %s', (text, expected) => {
    expect(edited(text, (root) => [addAttribute(text, root, 'x', '1"')])).toBe(expected)
  })

  it.each([
    ['<r x="1"/>', '<r/>', '<r x="&lt;"/>'],
    ["<r a='0'\n x = '1' b='2'>c</r>", "<r a='0' b='2'>c</r>", "<r a='0'\n x = '&lt;' b='2'>c</r>"],
  ])('of %s is removed and changed', (text, removed, changed) => {
    expect(edited(text, (root) => [removeAttribute(attributeX(root))])).toBe(removed)
    expect(edited(text, (root) => [setAttribute(attributeX(root), '<')])).toBe(changed)
  })
})

describe('a child', () => {
  it.each([
    ['before a later one', '<r>\n  <c/>\n</r>', '<r>\n  <b>x</b>\n  <c/>\n</r>'],
    ['after an earlier one', '<r>\n  <a/>\n</r>', '<r>\n  <a/>\n  <b>x</b>\n</r>'],
    ['between', '<r>\n\t<a/>\n\t<d/>\n</r>', '<r>\n\t<a/>\n\t<b>x</b>\n\t<d/>\n</r>'],
    ['on one line', '<r><a/><c/></r>', '<r><a/><b>x</b><c/></r>'],
    ['with other line ends', '<r>\r\n <a/>\r\n</r>', '<r>\r\n <a/>\r\n <b>x</b>\r\n</r>'],
    ['after elements that nobody ordered', '<r><z/></r>', '<r><z/><b>x</b></r>'],
    ['into an empty element', '<r></r>', '<r><b>x</b></r>'],
    ['into an element that closes itself', '<r/>', '<r><b>x</b></r>'],
    ['into white space', '<r>\n</r>', '<r><b>x</b></r>'],
    ['beside a comment alone', '<r><!-- c --></r>', '<r><!-- c --><b>x</b></r>'],
  ])('is inserted %s', (_, text, expected) => {
    expect(edited(text, (root) => [insertChild(text, root, 'b', ORDER, print('b'))])).toBe(expected)
  })

  it('takes the indent of the file for children of its own', () => {
    const text = '<r>\n   <s>\n      <a/>\n   </s>\n</r>'
    expect(
      edited(text, (root) => [insertChild(text, must(root, 's'), 'b', ORDER, printNested)]),
    ).toBe(
      '<r>\n   <s>\n      <a/>\n      <b>\n         <x>1</x>\n         <y>2</y>\n      </b>\n   </s>\n</r>',
    )
  })

  it('into an element on its own line gets a line of its own', () => {
    const text = '<r>\n  <s/>\n</r>'
    expect(
      edited(text, (root) => [insertChild(text, must(root, 's'), 'b', ORDER, print('b'))]),
    ).toBe('<r>\n  <s>\n    <b>x</b>\n  </s>\n</r>')
  })

  it('goes in where its later neighbour goes out', () => {
    const text = '<r>\n  <a/>\n  <c/>\n</r>'
    expect(
      edited(text, (root) => [
        removeElement(text, must(root, 'c')),
        insertChild(text, root, 'b', ORDER, print('b')),
      ]),
    ).toBe('<r>\n  <a/>\n  <b>x</b>\n</r>')
  })

  it('several at one place keep their order', () => {
    const text = '<r><a/><d/></r>'
    expect(
      edited(text, (root) => [
        insertChild(text, root, 'b', ORDER, print('b')),
        insertChild(text, root, 'c', ORDER, print('c')),
      ]),
    ).toBe('<r><a/><b>x</b><c>x</c><d/></r>')
  })

  it('stands before or after another', () => {
    const text = '<r>\n  <a/>\n</r>'
    expect(edited(text, (root) => [insertBefore(text, must(root, 'a'), root, print('b'))])).toBe(
      '<r>\n  <b>x</b>\n  <a/>\n</r>',
    )
    expect(edited(text, (root) => [insertAfter(text, must(root, 'a'), root, print('b'))])).toBe(
      '<r>\n  <a/>\n  <b>x</b>\n</r>',
    )
  })
})
