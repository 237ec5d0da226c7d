import {join} from './bytes.ts'
import {scoreError, type ScoreError} from '../diagnostic.ts'

/**
 * How characters are bytes. `name` is what an XML declaration says (`UTF-8`, `UTF-16LE`, `ISO-8859-1`, `windows-1252`,
 * `Shift_JIS` …; the two of UTF-16 are declared as `UTF-16`). The tables of the others go both ways.
 */
export interface Encoding {
  readonly name: string
  readonly form: 'utf-8' | 'utf-16' | 'single' | 'multiple'
  /** Of one-byte encodings: the character of each byte; undefined where there is none. */
  readonly characters: readonly (string | undefined)[]
  /** Of all but Unicode: the bytes of each character. */
  readonly bytes: ReadonlyMap<string, readonly number[]>
}

const LATIN_1 = /^(iso[-_]?8859-?1|iso_8859-1:1987|iso-ir-100|latin-?1|l1|ibm819|cp819)$/
const ASCII = /^(us-ascii|ascii|iso646-us|iso-ir-6|ansi_x3\.4-19(68|86)|us|cp367|ibm367)$/
const UTF_16 = /^(utf-?16(le|be)?|ucs-?2|iso-10646-ucs-2)$/
const DOUBLE_BYTE = ['gbk', 'gb18030', 'big5', 'euc-jp', 'euc-kr', 'shift_jis']

/** The encoding that a name of an XML declaration means, in any case. Throws `source/encoding` for unknown and unusable ones. */
export function readEncoding(declared: string): Encoding {
  const label = declared.trim().toLowerCase()
  if (UTF_16.test(label)) return unicode(label.endsWith('be') ? 'UTF-16BE' : 'UTF-16LE')
  if (LATIN_1.test(label)) return singleByte('ISO-8859-1', (byte) => String.fromCharCode(byte))
  if (ASCII.test(label)) {
    return singleByte('US-ASCII', (byte) => (byte < 0x80 ? String.fromCharCode(byte) : undefined))
  }
  const name = findName(label)
  if (name === 'windows-1252') return singleByte(name, windows1252)
  if (name === 'utf-8') return unicode('UTF-8')
  // The web reads three of the ISO encodings as their Windows likenesses, which differ in 0x80 to 0x9F only.
  const iso = /^(?:iso[-_]?8859-?|latin)(\d+)$/.exec(label)
  if (DOUBLE_BYTE.includes(name)) return multipleBytes(name)
  const decoder = new TextDecoder(name, {fatal: true})
  return singleByte(iso ? `ISO-8859-${isoNumber(name, iso[1])}` : name, (byte) =>
    iso && byte >= 0x80 && byte < 0xa0 ? String.fromCharCode(byte) : decodeOr(decoder, [byte]),
  )
}

/** Bytes 0x80 to 0x9F (WHATWG Encoding Standard, index windows-1252): Node 20 decodes them as if they were ISO-8859-1. */
const WINDOWS_1252 = '€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ'

function windows1252(byte: number): string {
  return WINDOWS_1252[byte < 0xa0 ? byte - 0x80 : -1] ?? String.fromCharCode(byte)
}

/** The two forms of Unicode that a score may have whatever it declares. */
export function unicode(name: 'UTF-8' | 'UTF-16LE' | 'UTF-16BE'): Encoding {
  return {name, form: name === 'UTF-8' ? 'utf-8' : 'utf-16', characters: [], bytes: new Map()}
}

function isoNumber(name: string, written: string | undefined): string | undefined {
  const likeness: Record<string, string> = {'windows-1254': '9', 'windows-874': '11'}
  return likeness[name] ?? /^iso-8859-(\d+)/.exec(name)?.[1] ?? written
}

function findName(label: string): string {
  try {
    const name = new TextDecoder(label).encoding
    if (!/^(iso-2022-jp|x-user-defined|replacement)$/.test(name)) return name
  } catch {
    // An unknown label: refused below.
  }
  throw scoreError('source/encoding', `the encoding ${label} cannot be read`)
}

function singleByte(name: string, character: (byte: number) => string | undefined): Encoding {
  const characters = Array.from({length: 256}, (_, byte) => character(byte))
  const bytes = new Map<string, readonly number[]>()
  characters.forEach((each, byte) => each !== undefined && bytes.set(each, [byte]))
  return {name, form: 'single', characters, bytes}
}

/** The reverse of what the platform decodes, found by decoding every pair of bytes. */
function multipleBytes(name: string): Encoding {
  const decoder = new TextDecoder(name, {fatal: true})
  const bytes = new Map<string, readonly number[]>()
  const add = (sequence: readonly number[]): void => {
    const text = decodeOr(decoder, sequence)
    if (text !== undefined && [...text].length === 1 && !bytes.has(text)) bytes.set(text, sequence)
  }
  for (let first = 0; first < 0x100; first++) {
    add([first])
    if (first < 0x80) continue
    for (let second = 0x30; second < 0xff; second++) {
      add([first, second])
      if (name === 'euc-jp' && first > 0xa0 && second > 0xa0) add([0x8f, first, second])
    }
  }
  return {name, form: 'multiple', characters: [], bytes}
}

function decodeOr(decoder: TextDecoder, bytes: readonly number[]): string | undefined {
  try {
    return decoder.decode(new Uint8Array(bytes))
  } catch {
    return undefined
  }
}

/**
 * Decodes bytes in chunks of any size; call it once more with `last`. Throws `source/encoding` for bytes that are no text, and
 * for text that could not be written back as the same bytes.
 */
export function createDecoder(encoding: Encoding): (bytes: Uint8Array, last?: boolean) => string {
  if (encoding.form === 'single') return (bytes) => decodeSingle(encoding, bytes)
  const decoder = new TextDecoder(encoding.name.toLowerCase(), {fatal: true, ignoreBOM: true})
  const decode = (bytes: Uint8Array, last = false): string => {
    try {
      return decoder.decode(bytes, {stream: !last})
    } catch {
      throw notText(encoding)
    }
  }
  return encoding.form === 'multiple' ? checkedAgainst(encoding, decode) : decode
}

function decodeSingle(encoding: Encoding, bytes: Uint8Array): string {
  let text = ''
  for (const byte of bytes) {
    const character = encoding.characters[byte]
    if (character === undefined) throw notText(encoding)
    text += character
  }
  return text
}

/** Such encodings have characters at two places: only text that comes back as it was may pass. */
function checkedAgainst(
  encoding: Encoding,
  decode: (bytes: Uint8Array, last?: boolean) => string,
): (bytes: Uint8Array, last?: boolean) => string {
  const encode = createEncoder(encoding)
  let pending: Uint8Array = new Uint8Array(0)
  return (bytes, last = false) => {
    const text = decode(bytes, last)
    const written = encode(text)
    const read = join([pending, bytes])
    pending = read.slice(written.length)
    if (pending.length > 3 || written.some((byte, i) => byte !== read[i])) {
      const message = `the text uses forms of ${encoding.name} that cannot be written back as they are: save it as UTF-8`
      throw scoreError('source/encoding', message)
    }
    return text
  }
}

/** Encodes text; a character that the encoding lacks becomes a character reference (`&#9837;`). Keep pairs of surrogates together. */
export function createEncoder(encoding: Encoding): (text: string) => Uint8Array {
  if (encoding.form === 'utf-8') {
    const encoder = new TextEncoder()
    return (text) => encoder.encode(text)
  }
  if (encoding.form === 'utf-16') return (text) => encode16(text, encoding.name === 'UTF-16LE')
  return (text) => {
    const known = text.replaceAll(/[^\0-\x7f]/gu, (each) =>
      encoding.bytes.has(each) ? each : `&#${each.codePointAt(0)};`,
    )
    const bytes: number[] = []
    for (const each of known) bytes.push(...(encoding.bytes.get(each) ?? [each.charCodeAt(0)]))
    return new Uint8Array(bytes)
  }
}

function encode16(text: string, littleEndian: boolean): Uint8Array {
  const view = new DataView(new ArrayBuffer(text.length * 2))
  for (let i = 0; i < text.length; i++) view.setUint16(i * 2, text.charCodeAt(i), littleEndian)
  return new Uint8Array(view.buffer)
}

function notText(encoding: Encoding): ScoreError {
  return scoreError('source/encoding', `the bytes are not text in ${encoding.name}`)
}
