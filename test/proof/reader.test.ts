import {describe, expect, test} from 'vitest'
import {ScoreError} from '../../lib/diagnostic.ts'
import {readMeasures} from '../../lib/proof/reader.ts'
import {
  attributes,
  backup,
  clef,
  forward,
  heard,
  note,
  part,
  pitches,
  score,
  sourceOf,
  transpose,
} from './score.ts'

const c = note('C4', 1)

const twoStaves = (first: string, second: string) =>
  first + note('C4', 1, {staff: 1}) + backup(1) + second + note('C4', 1, {staff: 2})
const oldHorn = (_: string, inForce: {sign: string} | undefined) =>
  inForce?.sign === 'F' ? {diatonic: 3, chromatic: 5} : undefined
const divisions = (count: number | string) => attributes(`<divisions>${count}</divisions>`)
const graceNote = (pitch: string, chord = false) => note(pitch, 0, {grace: true, chord})
const measureOfTwo = (number: number, first: string, second: string) =>
  `<measure number="${number}"><part id="P1">${first}</part><part id="P2">${second}</part></measure>`

describe('what a transposition sounds', () => {
  test.each([
    ['none', '', 'C4'],
    ['B flat clarinet', transpose(-1, -2), 'Bb3'],
    ['A clarinet', transpose(-2, -3), 'A3'],
    ['E flat clarinet', transpose(2, 3), 'Eb4'],
    ['F horn', transpose(-4, -7), 'F3'],
    ['piccolo', transpose(0, 0, {octaves: 1}), 'C5'],
    ['double bass', transpose(0, 0, {octaves: -1}), 'C3'],
    ['bass clarinet, octave apart', transpose(-1, -2, {octaves: -1}), 'Bb2'],
    ['bass clarinet, octave folded into both', transpose(-8, -14), 'Bb2'],
    ['bass clarinet, octave folded into the semitones only', transpose(-1, -14), 'Bb2'],
    ['B flat contrabass, three octaves', transpose(-1, -2, {octaves: -3}), 'Bb0'],
    ['diminished second: another spelling', transpose(1, 0), 'Dbb4'],
    ['quarter tone', transpose(0, 0.5), 'C(+0.5)4'],
    ['doubled an octave below', transpose(0, 0, {double: '<double/>'}), 'C4 C3'],
    ['doubled an octave above', transpose(0, 0, {double: '<double above="yes"/>'}), 'C4 C5'],
    [
      'white space and signs in the numbers',
      '<transpose><chromatic> +3 </chromatic></transpose>',
      'Eb4',
    ],
  ])('%s', async (_, element, expected) => {
    expect(await pitches(part(attributes(element) + c))).toBe(expected)
  })

  test.each([
    [0, 'C4'],
    [1, 'Db4'],
    [2, 'D4'],
    [3, 'Eb4'],
    [4, 'E4'],
    [5, 'F4'],
    [6, 'F#4'],
    [7, 'G4'],
    [8, 'Ab4'],
    [9, 'A4'],
    [10, 'Bb4'],
    [11, 'B4'],
    [12, 'C5'],
    [14, 'D5'],
    [-1, 'B3'],
    [-2, 'Bb3'],
    [-3, 'A3'],
    [-4, 'Ab3'],
    [-5, 'G3'],
    [-6, 'Gb3'],
    [-7, 'F3'],
    [-8, 'E3'],
    [-9, 'Eb3'],
    [-10, 'D3'],
    [-11, 'Db3'],
    [-12, 'C3'],
    [-14, 'Bb2'],
  ])('%i semitones without steps take the usual ones', async (chromatic, expected) => {
    expect(await pitches(part(attributes(transpose(undefined, chromatic)) + c))).toBe(expected)
  })

  test('in a score at concert pitch only the octave is added', async () => {
    const head = '<defaults><concert-score/></defaults>'
    const horn = attributes(transpose(-4, -7, {octaves: -1})) + c
    expect(await pitches(score({P1: [horn]}, head))).toBe('C3')
  })

  test('for-part describes the part and moves nothing', async () => {
    const forPart = `<for-part><part-transpose><chromatic>-2</chromatic></part-transpose></for-part>`
    expect(await pitches(part(attributes(forPart) + c))).toBe('C4')
  })

  test('neither clef octaves nor octave lines move pitch', async () => {
    const octaveClef = attributes(clef('G', 2, '<clef-octave-change>-1</clef-octave-change>'))
    const line =
      '<direction><direction-type><octave-shift type="down" size="8"/></direction-type></direction>'
    expect(await pitches(part(octaveClef + line + c))).toBe('C4')
  })

  test('an alter keeps its decimals', async () => {
    expect(await pitches(part(note('C(+0.33)4', 1) + note('B(-1.5)4', 1)))).toBe(
      'C(+0.33)4 B(-1.5)4',
    )
  })
})

describe('a change of transposition holds by its place in the score', () => {
  const down = attributes(transpose(-1, -2))
  const zero = attributes(transpose(0, 0))

  test('in the next measures, until a zero transposition ends it', async () => {
    expect(await pitches(part(down + c, c, zero + c, c))).toBe('Bb3 Bb3 C4 C4')
  })

  test('in the middle of a measure, for both voices wherever it is written', async () => {
    const first = note('C4', 1) + note('D4', 1)
    const second = note('E4', 1, {voice: 2}) + down + note('F4', 1, {voice: 2})
    expect(await pitches(part(first + backup(2) + second))).toBe('C4 C4 E4 Eb4')
  })

  test('written after a backup to the start it governs what was written before', async () => {
    expect(await pitches(part(note('C4', 2) + backup(2) + down + forward(2)))).toBe('Bb3')
  })

  test('at the very end of a measure it governs the next', async () => {
    expect(await pitches(part(c + down, c))).toBe('C4 Bb3')
  })

  test('of two changes the later in the score carries over, not the later in the file', async () => {
    const measure =
      note('C4', 1) + down + note('C4', 1) + backup(2) + attributes(transpose(1, 2)) + forward(2)
    expect(await pitches(part(measure, c))).toBe('D4 Bb3 Bb3')
  })

  test('a grace note before it, in the same run, is still the old one', async () => {
    const grace = note('G4', 0, {grace: true})
    expect(await pitches(part(c + grace + down + grace + c))).toBe('C4 G4 F4 Bb3')
  })

  test('a grace note of another run at that place is the new one', async () => {
    const measure = c + note('G4', 0, {grace: true, voice: 1}) + c + backup(1) + down + forward(1)
    expect(await pitches(part(measure))).toBe('C4 F4 Bb3')
  })

  test('number binds it to a staff; without number it is for all and ends the others', async () => {
    expect(
      await pitches(
        part(
          twoStaves(attributes(transpose(-1, -2, {number: 2})), ''),
          twoStaves(attributes(transpose(2, 3)), ''),
          twoStaves('', attributes(transpose(-2, -3, {number: 1}))),
        ),
      ),
    ).toBe('C4 Bb3 Eb4 Eb4 A3 Eb4')
  })
})

describe('a reading of the caller', () => {
  test('depends on the clef in force, by its place in the score', async () => {
    const horn = attributes(transpose(-4, -7) + clef('G', 2)) + note('C5', 1)
    const low = attributes(clef('F', 4)) + note('C3', 1)
    expect(await pitches(part(horn + low, note('C3', 1)), {reading: oldHorn})).toBe('F4 F3 F3')
  })

  test('is told the staff its clef belongs to', async () => {
    const clefs = attributes(clef('G', 2) + clef('F', 4).replace('<clef>', '<clef number="2">'))
    const measure = clefs + note('C4', 1, {staff: 1}) + backup(1) + note('C4', 1, {staff: 2})
    expect(await pitches(part(measure), {reading: oldHorn})).toBe('C4 F4')
  })

  test('takes no notice of an additional clef', async () => {
    const added = attributes(clef('F', 4).replace('<clef>', '<clef additional="yes">'))
    expect(await pitches(part(attributes(clef('G', 2)) + added + c), {reading: oldHorn})).toBe('C4')
  })
})

describe('time', () => {
  test('durations are exact fractions of a quarter', async () => {
    expect(await heard(part(divisions(3) + note('C4', 1) + note('D4', 2)))).toEqual([
      'P1 1 0+1/3 C4',
      'P1 1 1/3+2/3 D4',
    ])
  })

  test('divisions change in mid-measure and need not be whole', async () => {
    const measure =
      divisions(2) + note('C4', 1) + divisions('2.5') + note('D4', 5) + backup(5) + note('E4', 1)
    expect(await heard(part(measure))).toEqual([
      'P1 1 0+1/2 C4',
      'P1 1 1/2+2 D4',
      'P1 1 1/2+2/5 E4',
    ])
  })

  test('forward, rests and cue notes take time; chords and grace notes take none', async () => {
    const measure = [
      note('C4', 1),
      note('E4', 1, {chord: true}),
      forward(1),
      note('r', 1),
      note('D4', 0, {grace: true}),
      note('F4', 0, {grace: true, chord: true}),
      note('G4', 1, {cue: true}),
      note('x', 1),
    ]
    expect(await heard(part(measure.join('')))).toEqual([
      'P1 1 0+1 C4',
      'P1 1 0+1 E4',
      'P1 1 3+0 D4',
      'P1 1 3+0 F4',
      'P1 1 3+1 G4',
      'P1 1 4+1 x@E4',
    ])
  })

  test('a backup that goes too far stops at the start of the measure', async () => {
    expect(await heard(part(note('C4', 1) + backup(4) + note('E4', 2)))).toEqual([
      'P1 1 0+1 C4',
      'P1 1 0+2 E4',
    ])
  })

  test('grace notes know their place in the group', async () => {
    const measures = readMeasures(
      sourceOf(
        part(graceNote('C4') + graceNote('D4') + graceNote('F4', true) + c + graceNote('E4') + c),
      ),
    )
    const {value} = await measures.next()
    expect(value?.notes.map(({grace: slot}: {grace: number | undefined}) => slot)).toEqual([
      0,
      1,
      1,
      undefined,
      0,
      undefined,
    ])
  })

  test('measures keep their printed number, or count', async () => {
    const text = part(c, c).replace('number="1"', 'number="X1"').replace('number="2"', '')
    expect(await heard(text)).toEqual(['P1 X1 0+1 C4', 'P1 2 0+1 C4'])
  })
})

describe('documents', () => {
  test('timewise scores give the same as partwise ones', async () => {
    const list = '<part-list><score-part id="P1"/><score-part id="P2"/></part-list>'
    const down = attributes(transpose(-1, -2))
    const text = `<score-timewise>${list}${measureOfTwo(1, down + c, c)}${measureOfTwo(2, c, c)}</score-timewise>`
    expect(await heard(text)).toEqual([
      'P1 1 0+1 Bb3',
      'P2 1 0+1 C4',
      'P1 2 0+1 Bb3',
      'P2 2 0+1 C4',
    ])
  })

  test('foreign elements, comments, CDATA and unknown external entities do no harm', async () => {
    const text = part(
      `<!-- ${c} --><x:note xmlns:x="urn:x"><pitch/></x:note><note><pitch><step><![CDATA[C]]></step><octave>4</octave></pitch><duration>&one;</duration><lyric><text>caf&eacute;</text></lyric></note>`,
    )
    const doctype = `<!DOCTYPE score-partwise PUBLIC "-//Example//DTD//EN" "example.dtd" [<!ENTITY one "1">]>`
    expect(await heard(doctype + text)).toEqual(['P1 1 0+1 C4'])
  })

  test.each([
    ['no XML', 'hello', /not well-formed/],
    ['nothing', '', /not well-formed/],
    ['a tag mismatch', '<score-partwise><part></score-partwise>', /not well-formed/],
    ['another root', '<opus/>', /no score/],
    ['a cut file', part(c).slice(0, -20), /not well-formed/],
    [
      'a pitch without an octave',
      part('<note><pitch><step>C</step></pitch><duration>1</duration></note>'),
      /lacks/,
    ],
    ['a duration in words', part('<note><rest/><duration>long</duration></note>'), /no number/],
    [
      'a negative duration',
      part('<note><rest/><duration>-1</duration></note>'),
      /less than nothing/,
    ],
    ['no divisions', part(attributes('<divisions>0</divisions>') + c), /no divisions/],
    ['a backup by nothing', part('<backup/>'), /no duration/],
    ['a broken number of steps', part(attributes(transpose(0.5, 1))), /no whole number/],
    [
      'more digits than a number holds',
      part(note('r', 1).replace('>1<', '>1234567890123456789<')),
      /digits/,
    ],
    ['an entity nobody declared', part('&none;'), /undefined entity/],
  ])('%s is refused', async (_, text, message) => {
    const refusal = heard(text)
    await expect(refusal).rejects.toThrow(ScoreError)
    await expect(refusal).rejects.toThrow(message)
    await expect(refusal).rejects.toMatchObject({diagnostic: {code: 'proof/malformed'}})
  })

  test('a refusal names the line', async () => {
    const text = part(c, '<note><pitch/></note>')
    await expect(heard(text)).rejects.toMatchObject({diagnostic: {at: {line: 6}}})
  })
})
