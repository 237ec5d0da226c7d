import {isSpace, LESS, NAME} from './characters.ts'

/** How many elements a plain one may hold, one inside the other. */
export const PLAIN_DEPTH = 4

/** Passes plain elements in the bytes it was made for. */
export interface PlainElements {
  /** The end of the whole plain elements that stand at `at`, one after the other with nothing but white space before each; `at` if there is none. */
  pass(at: number): number
}

/**
 * Most of a score are whole elements without anything special: ASCII, no references, comments or instructions, few attributes,
 * nothing nested deep. A regular expression, which is machine code from its second use on, takes many of them at a time, while
 * the loops of a careful reading need some hundred kilobytes to get fast. It takes only what is well-formed beyond doubt and
 * leaves the rest to that reading.
 */
export function plainElements(bytes: Uint8Array): PlainElements {
  let [text, start] = ['', 0]
  function pass(at: number): number {
    if (!mayBegin(bytes, at)) return at
    if (at >= start + text.length) {
      start = at
      text = ASCII.decode(bytes.subarray(at, at + WINDOW))
    }
    PATTERN.lastIndex = at - start
    return PATTERN.test(text) ? start + PATTERN.lastIndex : at
  }
  return {pass}
}

function mayBegin(bytes: Uint8Array, at: number): boolean {
  const byte = bytes[at] as number
  return byte === LESS ? (NAME[bytes[at + 1] as number] as number) > 1 : isSpace(byte)
}

/** A character a byte. What is not ASCII may become anything that is not ASCII: the pattern takes none of it. */
const ASCII = new TextDecoder('latin1')

/** Bytes the pattern sees at once: it keeps a way back for each. */
const WINDOW = 65536

/** Attributes a plain element may have. */
const MOST = 8

const WORD = '[A-Za-z_:][-.0-9A-Za-z_:]*'
/** Not `]`, which might begin a `]]>`. */
const TEXT = "[ -%'-;=>-\\\\^-~\\t\\r\\n]"
const VALUE = '"[ !#-%\'-;=-~\\t\\r\\n]*"'

const PATTERN = new RegExp(`(?:[ \\t\\r\\n]*${elementPattern(PLAIN_DEPTH, 1)})+`, 'y')

/**
 * The pattern of an element that holds elements to this depth; its name is the group `group`, the names of its attributes the
 * next ones. Nowhere can it go on in two ways: what it refuses, it has looked at once, and once on the way back.
 */
function elementPattern(depth: number, group: number): string {
  const child = depth > 0 ? `(?:${elementPattern(depth - 1, group + 1 + MOST)}${TEXT}*)*` : ''
  return `<(${WORD})${attributesPattern(group + 1, [])}(?:>${TEXT}*${child}</\\${group}>| ?/>)`
}

/** No attribute, or one that is none of those before it, and more such. */
function attributesPattern(group: number, before: readonly number[]): string {
  if (before.length === MOST) return ''
  const isNew = before.map((name) => `(?!\\${name}=)`).join('')
  const more = attributesPattern(group + 1, [...before, group])
  return `(?: ${isNew}(${WORD})=${VALUE}${more})?`
}
