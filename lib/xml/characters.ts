/** What XML 1.0 (fifth edition) says about characters, for UTF-8 bytes. */

/** ASCII that markup is made of. */
export const LESS = 0x3c
export const GREATER = 0x3e
export const SLASH = 0x2f
export const BANG = 0x21
export const QUESTION = 0x3f
export const EQUALS = 0x3d
export const DOUBLE = 0x22
export const SINGLE = 0x27
export const AMPERSAND = 0x26
export const SEMICOLON = 0x3b
export const DASH = 0x2d
export const BRACKET = 0x5d
export const LINE_FEED = 0x0a
export const RETURN = 0x0d

/** What stands at some place of the bytes, when it is no code point. */
export const INCOMPLETE = -1
export const ILLEGAL = -2

/** Whether an ASCII byte may stand in text and values without a closer look: no markup, quote or control character. */
export const PLAIN: Readonly<Uint8Array> = Uint8Array.from({length: 256}, (_, byte) =>
  (byte >= 0x20 && byte < 0x80 && !'<&]"\''.includes(String.fromCharCode(byte))) || isSpace(byte)
    ? 1
    : 0,
)

/** Whether an ASCII byte may stand in a name (1), also at its beginning (3). */
export const NAME: Readonly<Uint8Array> = Uint8Array.from({length: 256}, (_, byte) => {
  const character = String.fromCharCode(byte)
  if (/[A-Za-z_:]/.test(character)) return 3
  return /[-.0-9]/.test(character) ? 1 : 0
})

/** White space of XML (production 3). */
export function isSpace(byte: number): boolean {
  return byte === 0x20 || byte === 0x0a || byte === 0x0d || byte === 0x09
}

/**
 * The code point at `at`; `INCOMPLETE` when the bytes end within it, `ILLEGAL` when these bytes are no UTF-8 (too long, a
 * surrogate, beyond Unicode) or no character that XML allows (production 2).
 */
export function codePointAt(bytes: Uint8Array, at: number): number {
  const first = bytes[at] as number
  if (first < 0x80) return first >= 0x20 || isSpace(first) ? first : ILLEGAL
  const length = lengthOf(first)
  if (length === 0) return ILLEGAL
  let point = first & (0x7f >> length)
  for (let i = 1; i < length; i++) {
    if (at + i >= bytes.length) return INCOMPLETE
    const byte = bytes[at + i] as number
    if ((byte & 0xc0) !== 0x80) return ILLEGAL
    point = (point << 6) | (byte & 0x3f)
  }
  const shortest = length === 2 ? 0x80 : length === 3 ? 0x800 : 0x10000
  return point >= shortest && isCharacter(point) ? point : ILLEGAL
}

function lengthOf(first: number): 0 | 2 | 3 | 4 {
  if (first < 0xc0 || first > 0xf7) return 0
  return first < 0xe0 ? 2 : first < 0xf0 ? 3 : 4
}

/** How many bytes a code point has in UTF-8. */
export function byteLength(point: number): number {
  return point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4
}

/** Whether XML allows this character, as itself or by a reference (production 2). */
export function isCharacter(point: number): boolean {
  if (point < 0x20) return isSpace(point)
  if (point < 0xd800) return true
  return (point > 0xdfff && point < 0xfffe) || (point > 0xffff && point < 0x110000)
}

/** Production 4 without ASCII: pairs of first and last. */
const NAME_START: readonly number[] = [
  0xc0, 0xd6, 0xd8, 0xf6, 0xf8, 0x2ff, 0x370, 0x37d, 0x37f, 0x1fff, 0x200c, 0x200d, 0x2070, 0x218f,
  0x2c00, 0x2fef, 0x3001, 0xd7ff, 0xf900, 0xfdcf, 0xfdf0, 0xfffd, 0x10000, 0xeffff,
]

/** What production 4a adds to it. */
const NAME_MORE: readonly number[] = [0xb7, 0xb7, 0x300, 0x36f, 0x203f, 0x2040]

/** Whether a name may have this character, at its beginning or later. */
export function isNameCharacter(point: number, first: boolean): boolean {
  if (point < 0x80) return ((NAME[point] as number) & (first ? 2 : 1)) !== 0
  return isIn(NAME_START, point) || (!first && isIn(NAME_MORE, point))
}

function isIn(ranges: readonly number[], point: number): boolean {
  for (let i = 0; i < ranges.length; i += 2) {
    if (point >= (ranges[i] as number) && point <= (ranges[i + 1] as number)) return true
  }
  return false
}
