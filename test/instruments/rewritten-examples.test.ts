import {readFileSync} from 'node:fs'
import {describe, expect, test} from 'vitest'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {notationById} from '../../lib/instruments/notation.ts'
import type {Notation} from '../../lib/instruments/notation.ts'
import {majorTonic} from '../../lib/pitch/key.ts'
import {midiOf, parsePitch} from '../../lib/pitch/pitch.ts'
import type {PartJob} from '../../lib/plan/job.ts'
import {formatClef, parseClef} from '../../lib/staff/clef.ts'
import {factsOf, notesOf, runPart} from '../support/jobs.ts'
import {readCsv} from './csv.ts'

/**
 * The published transpositions of worked-examples.csv, through the whole rewriter: a score of one measure that declares
 * nothing is read in the row's convention and written in the target's, or at concert pitch.
 */
const examples = readCsv(readFileSync(new URL('worked-examples.csv', import.meta.url), 'utf8'))

function fifthsOf(key: string): number {
  const [tonic = '', mode] = key.replace('~', '').split(' ')
  const fifths = Array.from({length: 23}, (_, index) => index - 11).find(
    (each) => majorTonic(each) === tonic,
  )
  if (fifths === undefined) throw new Error(`no key: ${key}`)
  return fifths - (mode === 'minor' ? 3 : 0)
}

function scoreOf(notes: string, clef: string, key: string): Uint8Array {
  const {sign, line, octaveChange} = parseClef(clef) ?? {}
  const signature = key === '' ? '' : `<key><fifths>${fifthsOf(key)}</fifths></key>`
  const octave = octaveChange ? `<clef-octave-change>${octaveChange}</clef-octave-change>` : ''
  const music = notes.split(' ').map((name) => {
    const pitch = parsePitch(name)
    if (!pitch) throw new Error(`no pitch: ${name}`)
    const alter = pitch.alter === 0 ? '' : `<alter>${pitch.alter}</alter>`
    return `<note><pitch><step>${pitch.step}</step>${alter}<octave>${pitch.octave}</octave></pitch><duration>1</duration></note>`
  })
  return new TextEncoder().encode(
    `<score-partwise version="4.0"><part-list><score-part id="P1"><part-name/></score-part></part-list><part id="P1"><measure number="1"><attributes><divisions>1</divisions>${signature}<clef><sign>${sign}</sign><line>${line}</line>${octave}</clef></attributes>${music.join('')}</measure></part></score-partwise>`,
  )
}

function notation(id: string): Notation {
  const found = notationById(id)
  if (!found) throw new Error(`no notation ${id}`)
  return found
}

async function read(score: Uint8Array): Promise<{written: string; sounding: string; key?: number}> {
  const notes = await notesOf(score, 'P1')
  const [first] = (await factsOf(score, 'P1')).states
  const key = first?.state.key
  return {
    written: notes.map((note) => note.written).join(' '),
    sounding: notes.map((note) => note.pitch).join(' '),
    ...(key && 'fifths' in key && {key: key.fifths}),
  }
}

function midi(notes: string): number[] {
  return notes.split(' ').map((name) => {
    const pitch = parsePitch(name)
    return pitch ? midiOf(pitch) : NaN
  })
}

/** `~` marks an enharmonic respelling: twelve fifths sound alike. */
function expectKey(actual: number | undefined, published: string): void {
  if (actual === undefined || published === '') return
  const difference = actual - fifthsOf(published)
  expect(published.endsWith('~') ? Math.abs(difference % 12) : difference).toBe(0)
}

const CONCERT: PartJob = {to: {kind: 'concert', octaves: 'sounding'}}

describe.each(examples.map((row) => [row.id, row.source, row] as const))('%s: %s', (_, __, row) => {
  const {convention = '', clef = '', written = '', sounding = ''} = row
  const writtenKey = row.written_key ?? ''
  const score = scoreOf(written, clef, writtenKey)
  const from = notation(convention)

  test('is written at concert pitch as it sounds', async () => {
    const {bytes, told} = await runPart(score, 'P1', {...CONCERT, from})
    const out = await read(bytes)
    expect(out.sounding).toBe(sounding)
    // Eight sharps sound: they are written as four flats, and their notes with them.
    const isTurned = told.some(({code}) => code === 'key/turned')
    expect(isTurned ? midi(out.written) : out.written).toEqual(isTurned ? midi(sounding) : sounding)
    if (writtenKey !== '') expectKey(out.key, row.sounding_key ?? '')
  })

  test('declares what it was read as, its notes untouched', async () => {
    const {bytes} = await runPart(score, 'P1', {from})
    expect(await read(bytes)).toMatchObject({written, sounding})
  })

  // Most published examples tell what a note sounds, not how another part writes it.
  if (!row.target_convention) return
  test('is written for the target as published', async () => {
    const target = notation(row.target_convention ?? '')
    const job: PartJob = {
      from,
      to: target,
      keys: {signature: writtenKey === '' ? 'custom' : 'print'},
    }
    const {bytes, told} = await runPart(score, 'P1', job)
    const out = await read(bytes)
    expect(out.sounding).toBe(sounding)
    expect(told.map(({code}) => code)).not.toContain('key/turned')
    expect(out.written).toBe(row.target_written)
    if (writtenKey !== '') expectKey(out.key, row.target_key ?? '')
    const instrument = instrumentById(target.instruments[0] ?? '')
    expect(instrument).toBeDefined()
    const [first] = (await factsOf(bytes, 'P1')).states
    const clefs = target.readings.map((reading) => formatClef(reading.clef))
    if (target.otherClefs === 'opening')
      expect(clefs).toContain(first && formatClef(first.state.clef))
  })
})
