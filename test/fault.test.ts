import {expect, test} from 'vitest'
import {renotatePart} from '../lib/index.ts'
import type {Source} from '../lib/index.ts'
import {collect} from './support/bytes.ts'
import {demoScore} from './support/fixtures.ts'

const lines = new TextDecoder().decode(demoScore()).split('\n')
const faulty = [...lines.slice(0, 400), '</fault>', ...lines.slice(400)]
const LINE = 401

function inPieces(bytes: Uint8Array, size: number): Source {
  return async function* () {
    for (let at = 0; at < bytes.length; at += size) {
      yield bytes.slice(at, at + size)
      yield new Uint8Array(0)
    }
  }
}

test.each([
  ['UTF-8', '\n', 'utf8'],
  ['UTF-8', '\r\n', 'utf8'],
  ['UTF-8', '\r', 'utf8'],
  ['UTF-16', '\n', 'utf16le'],
  ['UTF-16', '\r\n', 'utf16le'],
  ['ISO-8859-1', '\r\n', 'latin1'],
] as const)(
  'a fault in %s with line ends %j is told with its line',
  async (name, end, encoding) => {
    const text = faulty
      .join(end)
      .replace('UTF-8', name)
      .replaceAll(/[^\0-\xff]/g, '?')
    const bytes = new Uint8Array(Buffer.from(name === 'UTF-16' ? `\ufeff${text}` : text, encoding))
    for (const size of [bytes.length, 4096, 333, 1]) {
      const content = renotatePart(inPieces(bytes, size), {part: 'P9', for: 'tuba'})
      await expect(collect(content)).rejects.toMatchObject({
        diagnostic: {code: 'xml/malformed', at: {line: LINE}},
      })
    }
  },
)
