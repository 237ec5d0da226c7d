import {readFileSync} from 'node:fs'
import {describe, expect, test} from 'vitest'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {intervalFor, notationById} from '../../lib/instruments/notation.ts'
import {notationRows} from '../../lib/instruments/notation-row.ts'
import {fifthsOf, negate} from '../../lib/pitch/interval.ts'
import type {Interval} from '../../lib/pitch/interval.ts'
import {majorTonic, transposeKey} from '../../lib/pitch/key.ts'
import {formatPitch, parsePitch, transpose} from '../../lib/pitch/pitch.ts'
import {formatClef, parseClef} from '../../lib/staff/clef.ts'
import {readCsv} from './csv.ts'

/** Published transpositions, worked out in notes and keys; the last column of each names its document. */
const examples = readCsv(readFileSync(new URL('worked-examples.csv', import.meta.url), 'utf8'))

function notes(text: string, interval: Interval): string {
  return text
    .split(' ')
    .map((note) => {
      const pitch = parsePitch(note)
      if (!pitch) throw new Error(`no pitch: ${note}`)
      return formatPitch(transpose(pitch, interval))
    })
    .join(' ')
}

function intervalOf(id: string): Interval {
  const found = notationRows().find((row) => row.id === id)
  if (!found) throw new Error(`no row ${id}`)
  return found.interval
}

/** Fifths of `Bb major` or `D minor`: a minor key has the signature of the major key a minor third higher. */
function fifthsOfKey(key: string): number {
  const [tonic = '', mode] = key.replace('~', '').split(' ')
  const fifths = Array.from({length: 23}, (_, index) => index - 11).find(
    (each) => majorTonic(each) === tonic,
  )
  if (fifths === undefined) throw new Error(`no key: ${key}`)
  return fifths - (mode === 'minor' ? 3 : 0)
}

/** `~` marks an enharmonic respelling: twelve fifths sound alike. */
function expectKeys(written: string, sounding: string, interval: Interval): void {
  if (written === '' || sounding === '') return
  const moved = transposeKey({fifths: fifthsOfKey(written)}, interval)
  const difference = fifthsOfKey(sounding) - ('fifths' in moved ? moved.fifths : NaN)
  if (sounding.endsWith('~')) expect(Math.abs(difference % 12)).toBe(0)
  else expect(difference).toBe(0)
}

test('there are a hundred', () => {
  expect(examples).toHaveLength(100)
  expect(new Set(examples.map(({id}) => id)).size).toBe(100)
})

describe.each(examples.map((row) => [row.id, row.source, row] as const))('%s: %s', (_, __, row) => {
  const {instrument = '', convention = '', clef = '', written = '', sounding = ''} = row
  const interval = intervalOf(convention)

  test('written to sounding and back', () => {
    expect(notes(written, interval)).toBe(sounding)
    expect(notes(sounding, negate(interval))).toBe(written)
    expectKeys(row.written_key ?? '', row.sounding_key ?? '', interval)
  })

  test('the notation of that id says so in that clef', () => {
    const notation = notationById(convention)
    const read = parseClef(clef)
    if (!notation || !read) throw new Error(`no notation ${convention} in ${clef}`)
    expect(intervalFor(notation, read)).toEqual(interval)
    expect(notation.instruments).toContain(instrument)
    expect(instrumentById(instrument)).toBeDefined()
  })
})

const renotated = examples.filter((row) => row.target_convention)

test.each(renotated.map((row) => [row.id, row.source, row] as const))(
  '%s, sounding to target and back: %s',
  (_, __, row) => {
    const {sounding = '', target_written: targetWritten = ''} = row
    const target = intervalOf(row.target_convention ?? '')
    expect(notes(sounding, negate(target))).toBe(targetWritten)
    expect(notes(targetWritten, target)).toBe(sounding)
    expectKeys(row.target_key ?? '', row.sounding_key ?? '', target)
  },
)

test('the rule of the fifths: written to sounding moves a key by 7 × semitones - 12 × steps', () => {
  const checked = examples.filter((row) => row.written_key && row.sounding_key)
  expect(checked.length).toBeGreaterThan(10)
  for (const {convention = '', written_key: written = '', sounding_key: sounding = ''} of checked) {
    if (sounding.endsWith('~')) continue
    expect(fifthsOfKey(sounding) - fifthsOfKey(written)).toBe(fifthsOf(intervalOf(convention)))
  }
})

test('clefs of the examples are those of their rows', () => {
  for (const {id, convention, clef} of examples) {
    const row = notationRows().find((each) => each.id === convention)
    expect(row && formatClef(row.clef), id).toBe(clef)
  }
})
