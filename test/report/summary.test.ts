import {describe, expect, it} from 'vitest'
import {comparePart, formatSummary} from '../../lib/index.ts'
import type {ReportedChange} from '../../lib/index.ts'
import {notes, partText, sourceOf, start} from '../sheet/parts.ts'
import type {PartText} from '../sheet/parts.ts'

const NINTH =
  '<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic><octave-change>-1</octave-change></transpose>'

async function summary(
  before: PartText,
  after: PartText,
  options: {readonly prove?: boolean; readonly report?: Partial<ReportedChange>} = {},
): Promise<string[]> {
  const {digest, proof} = await comparePart(sourceOf(partText(before)), sourceOf(partText(after)), {
    part: 'P1',
    prove: options.prove,
    reports: [{pairs: [], changes: [], diagnostics: [], ...options.report}],
  })
  return formatSummary(digest, {proof, hint: 'not made'})
}

function doubt(message: string) {
  return {code: 'doubt/octave', severity: 'warning', message, at: {measure: '1'}} as const
}

describe('the summary of a part', () => {
  const before = {
    name: 'Contrabass saxhorn',
    measures: [start({fifths: 2, transpose: NINTH}) + notes('D3 E3 F#3 G3')],
  }
  const after = {name: 'Tuba', sound: 'brass.tuba', measures: [start() + notes('C2 D2 E2 F2')]}

  it('says from, to, key, clef, range, octaves, doubts and proof', async () => {
    expect(await summary(before, after)).toEqual([
      'from    Contrabass saxhorn, sounds a major ninth lower than written',
      'to      Tuba, sounds as written',
      'key     2 sharps → no sharps or flats',
      'clef    bass clef, as before',
      'range   C2–F2, all within reach',
      'octaves none moved',
      'doubts  none told; renotate survey weighs what the file declares',
      'proof   not made',
    ])
  })

  it('tells the proof when it was made', async () => {
    expect((await summary(before, after, {prove: true})).at(-1)).toBe(
      'proof   they sound the same, all 4 notes',
    )
    const wrong = {...after, measures: [start() + notes('C2 D2 Eb2 F2')]}
    expect((await summary(before, wrong, {prove: true})).at(-1)).toBe(
      'proof   1 note of 4 sounds otherwise: see renotate prove',
    )
  })

  it('tells moved passages, and the proof that they that differ as reported', async () => {
    const high = {...after, measures: [start() + notes('C3 D3 E3 F3')]}
    const moved = {
      kind: 'moved',
      semitones: 12,
      reason: 'measure 1 sounds an octave higher',
    } as const
    const lines = await summary(before, high, {prove: true, report: {changes: [moved]}})
    expect(lines).toContain('octaves measure 1 sounds an octave higher')
    expect(lines.at(-1)).toBe('proof   they sound the same, except 4 notes that differ as reported')
  })

  it('counts notes out of reach', async () => {
    const low = {...after, measures: [start() + notes('C0 D2')]}
    expect((await summary(before, low))[4]).toBe('range   C0–D2, 1 note out of reach')
  })

  it('lists doubts, two at most', async () => {
    const diagnostics = ['one', 'two', 'three'].map(doubt)
    expect((await summary(before, after, {report: {diagnostics}}))[6]).toBe(
      'doubts  one; two, and 1 more',
    )
  })
})
