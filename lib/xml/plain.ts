import {isSpace, LESS, NAME} from './characters.ts'

/** How many elements a plain one may hold, one inside the other. */
export const PLAIN_DEPTH = 4

/** Passes plain elements in the bytes it was made for. */
export interface PlainElements {
  /** The end of the whole plain elements that stand at `at`, one after the other with nothing but white space before each; `at` if there is none. */
  pass(at: number): number
}

/**
 * Most of a score are whole elements without anything special: no comments, instructions or numbered references, few attributes,
 * nothing nested deep. A regular expression, which is machine code from its second use on, takes many of them at a time, while
 * the loops of a careful reading need some hundred kilobytes to get fast. It takes only what is well-formed beyond doubt and
 * leaves the rest to that reading.
 */
export function plainElements(bytes: Uint8Array): PlainElements {
  let [text, start] = ['', 0]
  let [misses, resting] = [0, 0]
  function pass(at: number): number {
    if (resting > 0) resting--
    if (resting > 0 || !mayBegin(bytes, at)) return at
    const end = find(at)
    // Where hardly anything is plain, looking for it costs more than it saves: then it is looked for seldom.
    if (end - at >= WORTH) misses = 0
    else if (++misses > PATIENCE) resting = REST
    return end
  }
  function find(at: number): number {
    if (at >= start + text.length) {
      start = at
      text = BYTES.decode(bytes.subarray(at, at + WINDOW))
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

/** A character a byte; what is not ASCII has other characters on other platforms, but each its own. */
const BYTES = new TextDecoder('latin1')

/** Bytes the pattern sees at once: it keeps a way back for each. */
const WINDOW = 65536

/** Bytes from which a find was worth its search. */
const WORTH = 512
/** Searches in a row that were not worth it, before most are left out. */
const PATIENCE = 32
/** Places passed by without a search. */
const REST = 64

/** Attributes a plain element may have. */
const MOST = 8

const WORD = '[A-Za-z_:][-.0-9A-Za-z_:]*'
const VALUE = `"[ !#-%'-;=-~\\t\\r\\n]*"`
/** ASCII in text; not `]`, which might begin a `]]>`. */
const PLAIN = "[ -%'-;=>-\\\\^-~\\t\\r\\n]*"
const TEXT = `${PLAIN}(?:(?:${characterPattern()}|&(?:amp|lt|gt|quot|apos);)${PLAIN})*`

const PATTERN = new RegExp(`(?:[ \\t\\r\\n]*${elementPattern(PLAIN_DEPTH, 1)})+`, 'y')

/** Characters of two bytes, and those of three whose second byte may be any; there is nothing that XML forbids among them. */
function characterPattern(): string {
  const next = `[${bytesFrom(0x80, 0xbf)}]`
  const [two, three] = [bytesFrom(0xc2, 0xdf), bytesFrom(0xe1, 0xec) + bytesFrom(0xee, 0xee)]
  return `[${two}]${next}|[${three}]${next}${next}`
}

function bytesFrom(first: number, last: number): string {
  return BYTES.decode(Uint8Array.from({length: last - first + 1}, (_, i) => first + i))
}

/**
 * The pattern of an element that holds elements to this depth; its name is the group `group`, the names of its attributes the
 * next ones. Nowhere can it go on in two ways: what it refuses, it has looked at once, and once on the way back.
 */
function elementPattern(depth: number, group: number): string {
  const child = depth > 0 ? `(?:${elementPattern(depth - 1, group + 1 + MOST)}${TEXT})*` : ''
  return `<(${WORD})${attributesPattern(group + 1, [])}(?:>${TEXT}${child}</\\${group}>| ?/>)`
}

/** No attribute, or one that is none of those before it, and more such. */
function attributesPattern(group: number, before: readonly number[]): string {
  if (before.length === MOST) return ''
  const isNew = before.map((name) => `(?!\\${name}=)`).join('')
  const more = attributesPattern(group + 1, [...before, group])
  return `(?: ${isNew}(${WORD})=${VALUE}${more})?`
}
