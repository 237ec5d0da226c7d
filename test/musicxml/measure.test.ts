import {describe, expect, it} from 'vitest'
import {stateAt} from '../../lib/musicxml/in-force.ts'
import {placeOf} from '../../lib/musicxml/measure.ts'
import type {Measure, MeasureOptions} from '../../lib/musicxml/measure.ts'
import {soundingNotes} from '../../lib/musicxml/sounding.ts'
import {formatPitch} from '../../lib/pitch/pitch.ts'
import {describeKey} from '../../lib/pitch/key.ts'
import {formatClef} from '../../lib/staff/clef.ts'
import {attributes, backup, forward, note, readPart} from '../support/part.ts'

/** `onset+duration pitch`, a note a word, in quarters. */
function times(contents: readonly string[], options?: MeasureOptions): string {
  return readPart(contents, options)
    .map((measure) =>
      measure.notes
        .map(({onset, duration, written}) => {
          const name = written ? formatPitch(written) : '-'
          return `${onset / measure.ticks}+${duration / measure.ticks} ${name}`
        })
        .join(', '),
    )
    .join(' | ')
}

/** What sounds, a pitch a word, measure by measure. */
function sounds(...contents: string[]): string {
  return readPart(contents)
    .map((measure) =>
      measure.notes.map(({sounding}) => (sounding ? formatPitch(sounding) : '-')).join(' '),
    )
    .join(' | ')
}

const CHORD = '<chord/>'
const GRACE = '<grace/>'
const twoStaves = attributes('divisions 1', '<staves>2</staves>')
const second = '<staff>2</staff>'

describe('when notes sound', () => {
  it.each([
    ['one after the other', [note('C4') + note('D4', 2) + note('E4')], '0+1 C4, 1+2 D4, 3+1 E4'],
    ['rests take time', [note('rest', 2) + note('C4')], '0+2 -, 2+1 C4'],
    [
      'a chord begins together',
      [note('C4', 2) + note('E4', 2, '', CHORD) + note('G4')],
      '0+2 C4, 0+2 E4, 2+1 G4',
    ],
    [
      'a chord with a shorter note',
      [note('C4', 2) + note('E4', 1, '', CHORD) + note('G4')],
      '0+2 C4, 0+1 E4, 2+1 G4',
    ],
    [
      'grace notes take none',
      [note('C4') + note('D4', 0, '', GRACE) + note('E4')],
      '0+1 C4, 1+0 D4, 1+1 E4',
    ],
    [
      'a grace chord',
      [note('C4') + note('D4', 0, '', GRACE) + note('F4', 0, '', GRACE + CHORD) + note('E4')],
      '0+1 C4, 1+0 D4, 1+0 F4, 1+1 E4',
    ],
    [
      'a grace note with a duration that it may not have',
      [
        '<note><grace/><pitch><step>C</step><octave>4</octave></pitch><duration>1</duration></note>' +
          note('D4'),
      ],
      '0+0 C4, 0+1 D4',
    ],
    ['cue notes take time', [note('C4', 1, '', '<cue/>') + note('D4')], '0+1 C4, 1+1 D4'],
    ['back for a second voice', [note('C4', 2) + backup(2) + note('E3', 2)], '0+2 C4, 0+2 E3'],
    ['back in part', [note('C4', 2) + backup(1) + note('E3')], '0+2 C4, 1+1 E3'],
    ['back beyond the beginning', [note('C4') + backup(9) + note('E3')], '0+1 C4, 0+1 E3'],
    ['forward', [forward(2) + note('C4')], '2+1 C4'],
    [
      'divisions',
      [attributes('divisions 4') + note('C4', 2) + note('D4', 6)],
      '0+0.5 C4, 0.5+1.5 D4',
    ],
    [
      'divisions that hold on',
      [attributes('divisions 2') + note('C4'), note('D4')],
      '0+0.5 C4 | 0+0.5 D4',
    ],
    [
      'divisions that change',
      [
        attributes('divisions 2') +
          note('C4') +
          attributes('divisions 3') +
          note('D4') +
          note('E4', 3),
        note('F4', 3),
      ],
      '0+0.5 C4, 0.5+0.3333333333333333 D4, 0.8333333333333334+1 E4 | 0+1 F4',
    ],
    [
      'divisions changed in the second voice hold from there in the document',
      [
        attributes('divisions 1') +
          note('C4', 4) +
          backup(4) +
          attributes('divisions 2') +
          note('E3', 8),
        note('F4', 2),
      ],
      '0+4 C4, 0+4 E3 | 0+1 F4',
    ],
    [
      'divisions that are none',
      [attributes('divisions 0') + note('C4') + attributes('divisions x') + note('D4')],
      '0+1 C4, 1+1 D4',
    ],
    [
      'decimal durations',
      [attributes('divisions 1') + note('C4', '0.25') + note('D4', '1.75')],
      '0+0.25 C4, 0.25+1.75 D4',
    ],
    [
      'decimal divisions',
      [attributes('divisions 0.5') + note('C4', 1), note('D4', '0.5')],
      '0+2 C4 | 0+1 D4',
    ],
    [
      'a third of a quarter as an encoder rounds it',
      [attributes('divisions 1') + note('C4', '0.333333') + note('D4', '0.666667')],
      '0+0.333333 C4, 0.333333+0.666667 D4',
    ],
    [
      'no duration',
      ['<note><pitch><step>C</step><octave>4</octave></pitch></note>' + note('D4')],
      '0+0 C4, 0+1 D4',
    ],
  ])('%s', (_, contents, expected) => {
    expect(times(contents)).toBe(expected)
  })

  it('a measure is as long as its longest voice, and every time in it is whole', () => {
    const [measure] = readPart([
      attributes('divisions 2') +
        note('C4', 3) +
        backup(3) +
        attributes('divisions 3') +
        note('E3', 5) +
        backup(5) +
        forward(1),
    ])
    expect(measure?.ticks).toBe(6)
    expect(measure?.length).toBe(10)
    expect(measure?.notes.map(({duration}) => duration)).toEqual([9, 10])
  })
})

describe('what is in force', () => {
  it.each([
    ['nothing', [note('C4')], 'C4'],
    ['a transposition', [attributes('transpose -1 -2') + note('C4'), note('D4')], 'Bb3 | C4'],
    ['a transposition with an octave', [attributes('transpose -1 -2 -1') + note('C4')], 'Bb2'],
    [
      'a change in mid-measure',
      [note('C4') + attributes('transpose -4 -7') + note('C4'), note('C4')],
      'C4 F3 | F3',
    ],
    [
      'a change that is taken back',
      [attributes('transpose -1 -2') + note('C4') + attributes('transpose 0 0') + note('C4')],
      'Bb3 C4',
    ],
    [
      'a second voice hears it at its place in the score',
      [
        note('C4', 2) +
          attributes('transpose -4 -7') +
          note('C4', 2) +
          backup(4) +
          note('G4', 2) +
          note('G4', 2),
      ],
      'C4 F3 G4 C4',
    ],
    [
      'a change that stands in the second voice',
      [
        note('C4', 2) +
          note('C4', 2) +
          backup(4) +
          note('G4', 2) +
          attributes('transpose -4 -7') +
          note('G4', 2),
      ],
      'C4 F3 G4 C4',
    ],
    [
      'grace notes before a change at their onset',
      [note('C4') + note('C4', 0, '', GRACE) + attributes('transpose -4 -7') + note('C4')],
      'C4 C4 F3',
    ],
    [
      'grace notes after it',
      [note('C4') + attributes('transpose -4 -7') + note('C4', 0, '', GRACE) + note('C4')],
      'C4 F3 F3',
    ],
    [
      'chord notes',
      [attributes('transpose -1 -2') + note('C4') + note('E4', 1, '', CHORD)],
      'Bb3 D4',
    ],
    ['rests', [attributes('transpose -1 -2') + note('rest') + note('C4')], '- Bb3'],
    ['a clef’s small octave changes no pitch', [attributes('clef G2(-1)') + note('C4')], 'C4'],
    [
      'one staff of two',
      [
        twoStaves +
          attributes(
            '<transpose number="2"><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose>',
          ) +
          note('C4', 1) +
          backup(1) +
          note('C4', 1, second),
      ],
      'C4 Bb3',
    ],
    [
      'both staves',
      [twoStaves + attributes('transpose -1 -2') + note('C4') + backup(1) + note('C4', 1, second)],
      'Bb3 Bb3',
    ],
    [
      'a staff that comes later has what was said of all',
      [attributes('transpose -1 -2') + note('C4'), note('C4', 1, second)],
      'Bb3 | Bb3',
    ],
    [
      'what was said of one staff alone is not said of a later one',
      [
        attributes(
          '<transpose number="1"><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose>',
        ) + note('C4'),
        note('C4', 1, second),
      ],
      'Bb3 | C4',
    ],
    [
      'a staff number out of all reason',
      [note('C4', 1, '<staff>99999999999</staff>') + note('D4', 1, '<staff>-1</staff>')],
      'C4 D4',
    ],
    [
      'a pitch that cannot be read',
      [
        '<note><pitch><step>H</step><octave>4</octave></pitch><duration>1</duration></note>' +
          note('D4'),
      ],
      '- D4',
    ],
    ['microtones', [attributes('transpose -1 -2') + note('C(0.5)4')], 'B(-0.5)3'],
  ])('%s', (_, contents, expected) => {
    expect(sounds(...contents)).toBe(expected)
  })

  it('states: at an onset, and before the changes at that onset', () => {
    const [measure] = readPart([
      attributes('clef F4', 'fifths -1') +
        note('C3') +
        attributes('clef C4') +
        note('C4') +
        attributes('fifths 2') +
        note('C4'),
    ]) as [Measure]
    const show = (onset: number, before = false): string => {
      const {clef, key} = stateAt(measure, 1, onset * measure.ticks, {before})
      return `${formatClef(clef)} ${key ? describeKey(key) : 'no key'}`
    }
    expect(show(0, true)).toBe('G2 no key')
    expect(show(0)).toBe('F4 1 flat')
    expect(show(1, true)).toBe('F4 1 flat')
    expect(show(1)).toBe('C4 1 flat')
    expect(show(5)).toBe('C4 2 sharps')
  })

  it('an additional clef and an unknown one change nothing; the second is told', () => {
    const told: string[] = []
    const [measure] = readPart(
      [
        attributes(
          'clef F4',
          '<clef additional="yes"><sign>G</sign></clef>',
          '<clef><sign>Q</sign></clef>',
        ) + note('C3'),
      ],
      {complain: (code) => told.push(code)},
    )
    expect(measure?.notes[0]?.state.clef).toEqual({sign: 'F', line: 4, octaveChange: 0})
    expect(told).toEqual(['clef/unreadable'])
  })

  it('a reading overrides what is declared, clef by clef', () => {
    const fourthUp = {interval: {diatonic: 3, chromatic: 5}}
    const [measure] = readPart(
      [attributes('transpose -4 -7') + note('C4') + attributes('clef F4') + note('C3')],
      {reading: (clef, declared) => (clef.sign === 'F' ? fourthUp : declared)},
    )
    expect(measure?.notes.map(({sounding}) => sounding && formatPitch(sounding))).toEqual([
      'F3',
      'F3',
    ])
  })

  it('time signatures add their terms up, and hold on', () => {
    const meters = readPart([
      '<attributes><time><beats>3+2</beats><beat-type>8</beat-type></time></attributes>',
      note('C4'),
      '<attributes><time><senza-misura/></time></attributes>',
      '<attributes><time><beats>2</beats><beat-type>2</beat-type></time></attributes>',
    ]).map(({meter}) => `${meter.beats}/${meter.beatType}`)
    expect(meters).toEqual(['5/8', '5/8', '5/8', '2/2'])
  })
})

describe('a note', () => {
  it.each([
    ['', '-', '-'],
    ['<tie type="start"/>', '-', 'to'],
    ['<tie type="stop"/><tie type="start"/>', 'from', 'to'],
    ['<notations><tied type="stop"/></notations>', 'from', '-'],
    ['<tie type="start"/><notations><tied type="stop"/></notations>', '-', 'to'],
    ['<notations><tied type="continue"/></notations>', 'from', 'to'],
    ['<notations><tied type="let-ring"/></notations>', '-', '-'],
  ])('with %s is tied %s %s', (rest, from, to) => {
    const [measure] = readPart([note('C4', 1, rest)])
    const {tiedFrom, tiedTo} = measure?.notes[0] ?? {}
    expect([tiedFrom ? 'from' : '-', tiedTo ? 'to' : '-']).toEqual([from, to])
  })

  it('is pitched, a rest or unpitched', () => {
    const [measure] = readPart([
      note('C4') + note('rest') + '<note><unpitched/><duration>1</duration></note>',
    ])
    expect(measure?.notes.map(({kind}) => kind)).toEqual(['pitched', 'rest', 'unpitched'])
  })

  it('stands on a line of the score', () => {
    const text = `\n${attributes('divisions 1')}\n${note('C4')}\n${note('D4')}\n`
    const [, measure] = readPart([text, text])
    expect(measure && placeOf(measure, measure.notes[1])).toEqual({
      part: 'P1',
      measure: '2',
      line: 9,
    })
    expect(measure && placeOf(measure)).toEqual({part: 'P1', measure: '2', line: 6})
  })
})

describe('what sounds, for people', () => {
  it('gives fractions, spelled pitches and marks', () => {
    const [measure] = readPart([
      attributes('divisions 6', 'transpose -8 -14') +
        note('C5', 4, '<tie type="stop"/><voice>2</voice>') +
        note('F#5', 0, '', GRACE) +
        note('C(0.5)5', 1, '', '<cue/>'),
    ])
    expect(measure && soundingNotes(measure)).toEqual([
      {
        part: 'P1',
        staff: 1,
        voice: '2',
        measure: '1',
        onset: '0',
        duration: '2/3',
        pitch: 'Bb3',
        midi: 58,
        written: 'C5',
        tied: true,
      },
      {
        part: 'P1',
        staff: 1,
        voice: '1',
        measure: '1',
        onset: '2/3',
        duration: '0',
        pitch: 'E4',
        midi: 64,
        written: 'F#5',
        grace: true,
      },
      {
        part: 'P1',
        staff: 1,
        voice: '1',
        measure: '1',
        onset: '2/3',
        duration: '1/6',
        pitch: 'B(-0.5)3',
        midi: 58.5,
        written: 'C(+0.5)5',
        cue: true,
      },
    ])
  })

  it.each([
    ['<double/>', 'C4 C3'],
    ['<double above="yes"/>', 'C4 C5'],
    ['<double above="no"/>', 'C4 C3'],
  ])('gives both notes under %s: %s', (double, expected) => {
    const transpose = `<transpose><diatonic>0</diatonic><chromatic>0</chromatic>${double}</transpose>`
    const [measure] = readPart([attributes(transpose) + note('C4')])
    expect(
      measure &&
        soundingNotes(measure)
          .map(({pitch}) => pitch)
          .join(' '),
    ).toBe(expected)
  })
})
