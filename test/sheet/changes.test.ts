import {describe, expect, it} from 'vitest'
import {comparePart} from '../../lib/index.ts'
import type {ReportedChange} from '../../lib/index.ts'
import {notes, partText, sourceOf, start} from './parts.ts'
import type {PartText} from './parts.ts'

const FIFTH = '<transpose><diatonic>-4</diatonic><chromatic>-7</chromatic></transpose>'

async function changes(before: PartText, after: PartText, report?: Partial<ReportedChange>) {
  const {digest} = await comparePart(sourceOf(partText(before)), sourceOf(partText(after)), {
    part: 'P1',
    reports: [{pairs: [], changes: [], diagnostics: [], ...report}],
  })
  return digest.changes.map(
    ({kind, number, until, what, reason}) =>
      `${number}${until ? `-${until}` : ''} ${kind}: ${what}${reason ? ` (${reason})` : ''}`,
  )
}

describe('what a part has otherwise', () => {
  it('is nothing when nothing changed', async () => {
    const part = {measures: [start() + notes('C3 D3 E3 F3'), notes('G3 A3 B3 C4')]}
    expect(await changes(part, part)).toEqual([])
  })

  it('is told of clef, key, transposition and name at the beginning', async () => {
    const before = {
      name: 'Horn in F',
      measures: [start({clef: 'G', transpose: FIFTH}) + notes('G4')],
    }
    const after = {name: 'Bassoon', measures: [start({fifths: -1}) + notes('C4')]}
    expect(await changes(before, after)).toEqual([
      '1 clef: treble clef → bass clef',
      '1 key: no sharps or flats → 1 flat',
      '1 transposition: sounds a perfect fifth lower than written → sounds as written',
      '1 name: Horn in F → Bassoon',
    ])
  })

  it('is told where a clef comes and goes', async () => {
    const treble = '<attributes><clef><sign>G</sign><line>2</line></clef></attributes>'
    const bass = '<attributes><clef><sign>F</sign><line>4</line></clef></attributes>'
    const before = {measures: [start() + notes('C3'), notes('C4'), notes('C3')]}
    const after = {measures: [start() + notes('C3'), treble + notes('C4'), bass + notes('C3')]}
    expect(await changes(before, after)).toEqual([
      '2 clef: bass clef → treble clef',
      '3 clef: bass clef, as before',
    ])
  })

  it('goes by what the part is said to be written in, clef by clef', async () => {
    const bass = '<attributes><clef><sign>F</sign><line>4</line></clef></attributes>'
    const before = partText({
      name: 'Horn',
      measures: [start({clef: 'G', transpose: FIFTH}) + notes('G4'), bass + notes('C3')],
    })
    const after = partText({
      name: 'Horn',
      measures: [start({clef: 'G'}) + notes('C4'), notes('F3')],
    })
    const {digest} = await comparePart(sourceOf(before), sourceOf(after), {
      part: 'P1',
      from: 'horn.crook-f.old',
    })
    expect(digest.changes.map(({kind, number, what}) => `${number} ${kind}: ${what}`)).toEqual([
      '1 transposition: sounds a perfect fifth lower than written → sounds as written',
      '2 clef: bass clef → treble clef',
      '2 transposition: sounds a perfect fourth higher than written → sounds as written',
    ])
  })

  it('is told of respelled notes and added courtesy accidentals', async () => {
    const before = {measures: [start() + notes('F#3 F#3 C3 C3')]}
    const courtesy = notes('C3', '<accidental cautionary="yes">natural</accidental>')
    const after = {measures: [start() + notes('Gb3 Gb3') + courtesy + notes('C3')]}
    expect(await changes(before, after)).toEqual([
      '1 spelling: sounding F♯3 as G♭3',
      '1 accidental: 1 courtesy accidental added',
    ])
  })

  it('joins a passage in another octave, and takes its reason from the report', async () => {
    const before = {measures: [start() + notes('C2 D2'), notes('E2 F2'), notes('C3 C3')]}
    const after = {measures: [start() + notes('C2 D3'), notes('E3 F3'), notes('C3 C3')]}
    const moved = {
      kind: 'moved',
      part: 'P1',
      from: {measure: 0, onset: '1/1'},
      to: {measure: 1, onset: '1/1'},
      semitones: 12,
      reason: 'too low',
    } as const
    expect(await changes(before, after, {changes: [moved]})).toEqual([
      '1-2 octave: 3 notes sound an octave higher (too low)',
    ])
    expect(await changes(before, after)).toEqual([
      '1-2 difference: 3 notes sound an octave higher (not in any report)',
    ])
  })

  it('does not excuse what lies outside the reported passage', async () => {
    const before = {measures: [start() + notes('C2 D2')]}
    const after = {measures: [start() + notes('C3 D3')]}
    const late = {
      kind: 'moved',
      from: {measure: 0, onset: '1/1'},
      to: {measure: 0, onset: '3/1'},
      semitones: 12,
      reason: 'too low',
    } as const
    expect(await changes(before, after, {changes: [late]})).toEqual([
      '1 difference: 1 note sounds an octave higher (not in any report)',
      '1 octave: 1 note sounds an octave higher (too low)',
    ])
  })

  it('tells what was dropped', async () => {
    const before = {measures: [start() + notes('C2 D2 E2')]}
    const after = {
      measures: [
        start() + notes('C2') + '<note><rest/><duration>1</duration></note>' + notes('E2'),
      ],
    }
    const dropped = {kind: 'dropped', from: {measure: 0}, reason: 'out of reach'} as const
    expect(await changes(before, after, {changes: [dropped]})).toEqual([
      '1 dropped: D2 dropped (out of reach)',
    ])
  })

  it('joins what was reported to what is seen, and lists the rest', async () => {
    const before = {measures: [start() + notes('C3'), notes('C3')]}
    const after = {measures: [start({fifths: 2}) + notes('C3'), notes('C3')]}
    const found = await changes(before, after, {
      diagnostics: [
        {code: 'key/choice', severity: 'info', message: 'two keys sound alike', at: {measure: '1'}},
        {code: 'technique/removed', severity: 'info', message: 'a mute goes', at: {measure: '2'}},
        {code: 'key/choice', severity: 'info', message: 'of others', at: {part: 'P2'}},
      ],
    })
    expect(found).toEqual([
      '1 key: no sharps or flats → 2 sharps (two keys sound alike)',
      '2 technique: a mute goes',
    ])
  })
})
