import {describe, expect, it} from 'vitest'
import type {PartJob} from '../../lib/plan/job.ts'
import {attributes, backup, note, pitchOf} from '../support/part.ts'
import {forInstrument, ruled} from '../support/rule.ts'

/** Rules that change notes: pitch, accidental, rest, stem, position. Measures before and after. */

const CLARINET = forInstrument('clarinet-b-flat')
const SAXOPHONE = forInstrument('alto-saxophone-e-flat')
const BASSOON = forInstrument('bassoon')
const C = attributes('divisions 1', 'fifths 0', 'clef G2')
const GRACE = '<grace/>'
const CHORD = '<chord/>'

/** What a rule makes of measures; the first begins in C major and treble clef. */
function change(rule: string, job: PartJob, ...measures: string[]): readonly string[] {
  const [first = '', ...others] = measures
  const out = ruled(rule, [C + first, ...others], job).measures
  return out.map((each, index) => (index === 0 ? each.slice(C.length) : each))
}

const sign = (pitch: string, accidental = '', mark = ''): string =>
  note(pitch, 1, accidental && `<accidental${mark}>${accidental}</accidental>`)
const signs = (measures: readonly string[]) =>
  measures.map((each) => each.match(/<\/note>|<accidental.*?<\/accidental>/g)?.join(''))
const restAt = (step: string, octave: number): string =>
  `<note><rest><display-step>${step}</display-step><display-octave>${octave}</display-octave></rest><duration>1</duration></note>`
const stemmed = (pitch: string, stem: string, rest = '', before = ''): string =>
  note(pitch, 1, `<stem>${stem}</stem>${rest}`, before)
const beam = (type: string): string => `<beam number="1">${type}</beam>`
const stems = (measures: readonly string[]): string =>
  measures
    .map((each) => [...each.matchAll(/<stem[^>]*>(\w+)</g)].map(([, way]) => way).join(' '))
    .join(' | ')
const at = (pitch: string): string =>
  `<note default-x="13" default-y="-50">${pitchOf(pitch)}<duration>1</duration></note>`

describe('pitch', () => {
  it.each([
    ['C4', 'D4'],
    ['Bb4', 'C5'],
    ['E4', 'F#4'],
    ['F##4', 'G##4'],
    ['B3', 'C#4'],
    ['C(0.5)4', 'D(0.5)4'],
    ['E(-1.5)4', 'F(-0.5)4'],
    ['C-1', 'D-1'],
  ])('%s for a clarinet in B flat is %s', (from, to) => {
    expect(change('pitch', CLARINET, note(from))).toEqual([note(to)])
  })

  it('tells where a note leaves the octaves that MusicXML can write', () => {
    expect(ruled('pitch', [C + note('C-1')], CLARINET).told).toEqual(['pitch/octave'])
    expect(ruled('pitch', [C + note('B9')], CLARINET).told).toEqual(['pitch/octave'])
    expect(ruled('pitch', [C + note('A9')], CLARINET).told).toEqual([])
  })

  it('changes no more than it must', () => {
    const untidy = '<pitch><step>C</step><!-- ! --><octave> 4 </octave></pitch>'
    expect(change('pitch', CLARINET, `<note>${untidy}<duration>1</duration></note>`)).toEqual([
      `<note>${untidy.replace('C', 'D')}<duration>1</duration></note>`,
    ])
    const natural = '<pitch><step>F</step><alter>0</alter><octave>4</octave></pitch>'
    expect(change('pitch', CLARINET, `<note>${natural}</note>`)).toEqual([
      `<note>${natural.replace('F', 'G')}</note>`,
    ])
  })

  it('moves grace notes, cues and chords, and no rests or unpitched notes', () => {
    const unpitched = '<note><unpitched/><duration>1</duration></note>'
    expect(
      change(
        'pitch',
        CLARINET,
        note('C4', 1, '', GRACE) + note('C4') + note('E4', 1, '', CHORD) + note('rest') + unpitched,
      ),
    ).toEqual([
      note('D4', 1, '', GRACE) + note('D4') + note('F#4', 1, '', CHORD) + note('rest') + unpitched,
    ])
  })

  it('tells what cannot be written with a double sharp', () => {
    const {told} = ruled('pitch', [C + note('F##4') + note('B##4')], CLARINET)
    expect(told).toEqual(['pitch/triple-accidental'])
  })
})

describe('accidentals', () => {
  it.each([
    ['what the new signature says needs no sign', [sign('E4')], [sign('F#4')]],
    ['what it does not say needs one', [sign('Bb4', 'flat')], [sign('C5', 'natural')]],
    [
      'a sign that the signature makes needless goes',
      [sign('F#4', 'sharp')],
      [sign('G#4', 'sharp')],
    ],
    [
      'once in a measure',
      [sign('Bb4', 'flat') + sign('Bb4')],
      [sign('C5', 'natural') + sign('C5')],
    ],
    [
      'again in the next',
      [sign('Bb4', 'flat'), sign('Bb4', 'flat')],
      [sign('C5', 'natural'), sign('C5', 'natural')],
    ],
    [
      'taken back',
      [sign('Bb4', 'flat') + sign('B4', 'natural')],
      [sign('C5', 'natural') + sign('C#5', 'sharp')],
    ],
    [
      'in its octave',
      [sign('Bb4', 'flat') + sign('Bb3', 'flat')],
      [sign('C5', 'natural') + sign('C4', 'natural')],
    ],
    [
      'a courtesy stays one',
      [sign('Bb4', 'flat') + sign('Bb4', 'flat')],
      [sign('C5', 'natural') + sign('C5', 'natural')],
    ],
    [
      'cautionary',
      [sign('C4', 'natural', ' cautionary="yes"')],
      [sign('D4', 'natural', ' cautionary="yes"')],
    ],
    [
      'parenthesised',
      [sign('E4', 'natural', ' parentheses="yes"')],
      [sign('F#4', 'sharp', ' parentheses="yes"')],
    ],
    [
      'editorial',
      [sign('B4', 'natural', ' editorial="yes"')],
      [sign('C#5', 'sharp', ' editorial="yes"')],
    ],
    [
      'bracketed',
      [sign('F#4', 'sharp', ' bracket="yes"')],
      [sign('G#4', 'sharp', ' bracket="yes"')],
    ],
    ['double sharps', [sign('F##4', 'double-sharp')], [sign('G##4', 'double-sharp')]],
    ['double flats', [sign('Bbb4', 'flat-flat')], [sign('Cb5', 'flat')]],
    ['quarter tones', [sign('C(0.5)4', 'quarter-sharp')], [sign('D(0.5)4', 'quarter-sharp')]],
    [
      'quarter tones beside a signature',
      [sign('E(-0.5)4', 'quarter-flat')],
      [sign('F(0.5)4', 'quarter-sharp')],
    ],
    [
      'in the family of the old sign',
      [sign('C(0.5)4', 'natural-up')],
      [sign('D(0.5)4', 'natural-up')],
    ],
    [
      'a chord',
      [sign('Bb4', 'flat') + note('Eb5', 1, '<accidental>flat</accidental>', CHORD)],
      [sign('C5', 'natural') + note('F5', 1, '<accidental>natural</accidental>', CHORD)],
    ],
    [
      'a grace note, and the note after it',
      [note('Bb4', 1, '<accidental>flat</accidental>', GRACE) + sign('Bb4')],
      [note('C5', 1, '<accidental>natural</accidental>', GRACE) + sign('C5')],
    ],
    [
      'a hidden note',
      [`<note print-object="no">${pitchOf('Bb4')}<duration>1</duration></note>`],
      [`<note print-object="no">${pitchOf('Bb4')}<duration>1</duration></note>`],
    ],
  ])('%s', (_, before, after) => {
    // The pitch rule is not run: what is compared are the signs.
    expect(signs(change('accidental', CLARINET, ...before))).toEqual(signs(after))
  })

  it('hold through a tie, not beyond', () => {
    const start = '<tie type="start"/>'
    const stop = '<tie type="stop"/>'
    const measures = [
      note('Bb4', 4, `${start}<accidental>flat</accidental>`),
      note('Bb4', 2, stop) + note('Bb4', 2, '<accidental>flat</accidental>'),
    ]
    const out = change('accidental', CLARINET, ...measures)
    expect(out.map((each) => each.match(/<accidental>/g)?.length ?? 0)).toEqual([1, 1])
    expect(out[1]).toMatch(/stop"\/><\/note>.*natural/)
  })

  it('hold in all voices of the staff, by time', () => {
    const out = change(
      'accidental',
      CLARINET,
      note('C5', 2) +
        note('Bb4', 2) +
        backup(4) +
        note('Bb4', 2, '<accidental>flat</accidental>') +
        note('G4', 2),
    )
    expect(out[0]?.match(/<accidental>/g)).toHaveLength(1)
  })

  it('stand where the schema wants them', () => {
    const rest = '<voice>1</voice><type>quarter</type><dot/><time-modification/><stem>up</stem>'
    expect(change('accidental', CLARINET, note('Bb4', 1, rest))[0]).toContain(
      '<dot/><accidental>natural</accidental><time-modification/>',
    )
  })
})

describe('rests', () => {
  it.each([
    ['B', 4, 'D', 3],
    ['G', 4, 'B', 2],
    ['E', 5, 'G', 3],
  ])('at %s%i in treble clef stand at %s%i in bass clef', (step, octave, to, toOctave) => {
    expect(change('rest', BASSOON, restAt(step, octave))).toEqual([restAt(to, toOctave)])
  })

  it('do not transpose, and have no height of their own by default', () => {
    expect(change('rest', CLARINET, restAt('B', 4))).toEqual([restAt('B', 4)])
    const plain = '<note><rest measure="yes"/><duration>4</duration></note>'
    expect(change('rest', BASSOON, plain)).toEqual([plain])
  })
})

describe('stems', () => {
  it.each([
    ['below to above the middle line', [stemmed('G4', 'up')], 'down'],
    ['below and below', [stemmed('C4', 'up')], 'up'],
    ['on the middle line it points down', [stemmed('D4', 'up')], 'down'],
    ['a chord by its farthest note', [stemmed('C4', 'up') + note('D4', 1, '', CHORD)], 'up'],
    [
      'a beam as one',
      [stemmed('F4', 'up', beam('begin')) + stemmed('A4', 'up', beam('end'))],
      'down down',
    ],
    ['against the rule on purpose: it stays', [stemmed('G4', 'down')], 'down'],
    ['no stem', [stemmed('G4', 'none')], 'none'],
    ['a grace note points up', [stemmed('G4', 'up', '', GRACE)], 'up'],
    [
      'two voices keep theirs',
      [
        stemmed('G4', 'up', '<voice>1</voice>') +
          backup(1) +
          stemmed('E4', 'down', '<voice>2</voice>'),
      ],
      'up down',
    ],
  ])('%s', (_, before, after) => {
    expect(stems(change('stem', SAXOPHONE, ...before))).toBe(after)
  })

  it('lose a length that was measured for another place', () => {
    const out = change('stem', SAXOPHONE, note('G4', 1, '<stem default-y="-20">up</stem>'))
    expect(out[0]).toContain('<stem>down</stem>')
  })
})

describe('position', () => {
  it('goes where the note moved', () => {
    expect(change('position', CLARINET, at('C4'))).toEqual([
      at('C4').replace(' default-y="-50"', ''),
    ])
  })

  it('stays where it stayed: on the line of another clef, and at a rest', () => {
    const rest = '<note default-y="-20"><rest/><duration>1</duration></note>'
    expect(change('position', CLARINET, rest)).toEqual([rest])
    // What a baritone saxophone reads in treble clef looks like the concert part in bass clef.
    const bass = attributes('divisions 1', 'fifths 0', 'clef F4')
    const {measures} = ruled(
      'position',
      [bass + at('C3')],
      forInstrument('baritone-saxophone-e-flat'),
    )
    expect(measures).toEqual([bass + at('C3')])
  })
})
