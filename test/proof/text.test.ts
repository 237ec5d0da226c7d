import {strToU8, zipSync} from 'fflate'
import {describe, expect, test} from 'vitest'
import {readText} from '../../lib/proof/text.ts'
import type {Source} from '../../lib/proof/text.ts'
import {attributes, heard, note, part, sourceOf, transpose} from './score.ts'

const music = '<score>Überstürzt – très vite</score>'

async function textOf(source: Source): Promise<string> {
  let text = ''
  for await (const piece of readText(source)) text += piece
  return text
}

function utf16(text: string, bigEndian: boolean): Uint8Array {
  const bytes = new Uint8Array(text.length * 2)
  const view = new DataView(bytes.buffer)
  for (let index = 0; index < text.length; index++)
    view.setUint16(index * 2, text.charCodeAt(index), !bigEndian)
  return bytes
}

function latin1(text: string): Uint8Array {
  return Uint8Array.from(text, (letter) => letter.charCodeAt(0))
}

const utf8 = (text: string) => new TextEncoder().encode(text)
const declared = (encoding: string, body = music) =>
  `<?xml version="1.0" encoding="${encoding}"?>${body}`
const western = declared('ISO-8859-1', '<score>Überstürzt, très vite</score>')

const container = (path: string) =>
  strToU8(
    `<?xml version="1.0"?><container><rootfiles><rootfile full-path="${path}"/><rootfile full-path="other.xml"/></rootfiles></container>`,
  )

describe('encodings', () => {
  test.each<[string, Uint8Array | string, string]>([
    ['text', music, music],
    ['text with a mark', `\uFEFF${music}`, music],
    ['UTF-8, undeclared', utf8(music), music],
    ['UTF-8 with a mark', utf8(`\uFEFF${music}`), music],
    ['UTF-8, declared', utf8(declared('UTF-8')), declared('UTF-8')],
    ['UTF-16, little endian', utf16(`\uFEFF${declared('UTF-16')}`, false), declared('UTF-16')],
    ['UTF-16, big endian', utf16(`\uFEFF${declared('UTF-16')}`, true), declared('UTF-16')],
    ['UTF-16 without a mark', utf16(declared('UTF-16'), true), declared('UTF-16')],
    ['Latin-1', latin1(western), western],
    ['nothing', new Uint8Array(0), ''],
  ])('%s', async (_, input, expected) => {
    expect(await textOf(sourceOf(input))).toBe(expected)
    if (typeof input === 'string') return
    const bytes = [...input].map((byte) => Uint8Array.of(byte))
    expect(await textOf(sourceOf(...bytes))).toBe(expected)
  })

  test.each<[string, Uint8Array, RegExp]>([
    ['UTF-16 in name only', utf8(declared('UTF-16')), /is not/],
    ['an encoding nobody knows', utf8(declared('EBCDIC-Mars')), /not known/],
    ['bytes that are not UTF-8', latin1(declared('UTF-8')), /not utf-8/],
    ['a letter cut in two', utf8('<a>é').slice(0, -1), /not utf-8/],
  ])('%s is refused', async (_, bytes, message) => {
    await expect(textOf(sourceOf(bytes))).rejects.toThrow(message)
    await expect(textOf(sourceOf(bytes))).rejects.toMatchObject({
      diagnostic: {code: 'proof/malformed'},
    })
  })

  test('long text comes in short pieces', async () => {
    const lengths = []
    for await (const piece of readText(sourceOf('x'.repeat(200_000)))) lengths.push(piece.length)
    expect(Math.max(...lengths)).toBeLessThanOrEqual(65_536)
    expect(lengths.reduce((sum, length) => sum + length, 0)).toBe(200_000)
  })
})

describe('compressed scores', () => {
  const tune = part(attributes(transpose(-1, -2)) + note('C5', 1))

  test.each<[string, Record<string, Uint8Array>]>([
    [
      'the root file of the list',
      {
        'META-INF/container.xml': container('a&amp;b/tune.xml'),
        'other.xml': strToU8('<x/>'),
        'a&b/tune.xml': strToU8(tune),
      },
    ],
    [
      'the first score where there is no list',
      {'cover.png': new Uint8Array(9), 'tune.musicxml': strToU8(tune)},
    ],
    [
      'the first score where the list is wrong',
      {'META-INF/container.xml': container('gone.xml'), 'tune.xml': strToU8(tune)},
    ],
    ['a score in UTF-16', {'tune.xml': utf16(`\uFEFF${tune}`, false)}],
  ])('%s', async (_, files) => {
    for (const level of [0, 9] as const)
      expect(await heard(sourceOf(zipSync(files, {level})))).toEqual(['P1 1 0+1 Bb4'])
  })

  test('in chunks of any size', async () => {
    const archive = zipSync({'tune.xml': strToU8(tune)})
    const chunks = [...archive].map((byte) => Uint8Array.of(byte))
    expect(await heard(sourceOf(...chunks))).toEqual(['P1 1 0+1 Bb4'])
  })

  test('a damaged archive is refused, wherever it is cut', async () => {
    const archive = zipSync({'tune.xml': strToU8(tune)})
    for (let length = 2; length < archive.length; length += 7)
      await expect(heard(sourceOf(archive.slice(0, length)))).rejects.toMatchObject({
        diagnostic: {code: 'proof/malformed'},
      })
    await expect(heard(sourceOf(zipSync({'a.txt': strToU8('no score')})))).rejects.toThrow(
      /holds no score/,
    )
  })
})
