import {describe, expect, it} from 'vitest'
import {
  isStaff,
  readClef,
  readForPart,
  readKey,
  readPitch,
  readTransposition,
} from '../../lib/musicxml/read.ts'
import {formatInterval} from '../../lib/pitch/interval.ts'
import {formatPitch} from '../../lib/pitch/pitch.ts'
import {formatClef} from '../../lib/staff/clef.ts'
import {parseElements} from '../../lib/xml/element.ts'
import type {Element} from '../../lib/xml/element.ts'

function only(text: string): Element {
  const [root] = parseElements(text)
  if (!root) throw new Error('no element')
  return root
}

describe('pitch', () => {
  it.each([
    ['<step>B</step><alter>-1</alter><octave>3</octave>', 'Bb3'],
    ['<step>C</step><octave>4</octave>', 'C4'],
    ['<step> C </step><alter> +1 </alter><octave> 4 </octave>', 'C#4'],
    ['<step>C</step><alter>0.5</alter><octave>4</octave>', 'C(+0.5)4'],
    ['<step>C</step><alter>x</alter><octave>4</octave>', 'C4'],
    ['<octave>4</octave><step>C</step>', 'C4'],
    ['<step>C</step><octave>-1</octave>', 'C-1'],
    ['<step><![CDATA[C]]></step><octave>&#52;</octave>', 'C4'],
    ['<step>c</step><octave>4</octave>', undefined],
    ['<step>H</step><octave>4</octave>', undefined],
    ['<step>C</step><octave>4.5</octave>', undefined],
    ['<step>C</step>', undefined],
    ['<octave>4</octave>', undefined],
  ])('%s is %s', (content, expected) => {
    const text = `<pitch>${content}</pitch>`
    const pitch = readPitch(text, only(text))
    expect(pitch && formatPitch(pitch)).toBe(expected)
  })
})

describe('clef', () => {
  it.each([
    ['<sign>G</sign><line>2</line>', 'G2'],
    ['<sign>G</sign>', 'G2'],
    ['<sign>F</sign>', 'F4'],
    ['<sign>C</sign>', 'C3'],
    ['<sign>C</sign><line>4</line>', 'C4'],
    ['<sign>G</sign><line>2</line><clef-octave-change>-1</clef-octave-change>', 'G2(-1)'],
    ['<sign>percussion</sign>', 'percussion'],
    ['<sign>TAB</sign><line>5</line>', 'TAB'],
    ['<sign>none</sign>', 'none'],
    ['<sign>g</sign>', undefined],
    ['<line>2</line>', undefined],
  ])('%s is %s', (content, expected) => {
    const text = `<clef>${content}</clef>`
    const clef = readClef(text, only(text))
    expect(clef && formatClef(clef)).toBe(expected)
  })
})

describe('key', () => {
  it.each([
    ['<fifths>-3</fifths><mode>minor</mode>', {fifths: -3}],
    ['<cancel>2</cancel><fifths>0</fifths>', {fifths: 0}],
    [
      '<key-step>F</key-step><key-alter>1</key-alter><key-step>B</key-step><key-alter>-1</key-alter>',
      {
        alters: [
          {step: 'F', alter: 1},
          {step: 'B', alter: -1},
        ],
      },
    ],
    [
      '<key-step>F</key-step><key-alter>0.5</key-alter><key-accidental>quarter-sharp</key-accidental><key-octave number="1">5</key-octave>',
      {alters: [{step: 'F', alter: 0.5, octave: 5}]},
    ],
    ['<key-octave number="1">5</key-octave>', {alters: []}],
    ['', undefined],
    ['<fifths>many</fifths>', undefined],
  ])('%s is %j', (content, expected) => {
    const text = `<key>${content}</key>`
    expect(readKey(text, only(text))).toEqual(expected)
  })
})

const d = (value: number): string => `<diatonic>${value}</diatonic>`
const c = (value: number): string => `<chromatic>${value}</chromatic>`
const o = (value: number): string => `<octave-change>${value}</octave-change>`

describe('transpose', () => {
  it.each([
    ['B flat clarinet', d(-1) + c(-2), '-M2', []],
    ['bass clarinet, octave apart', d(-1) + c(-2) + o(-1), '-M9', []],
    ['bass clarinet, octave in both', d(-8) + c(-14), '-M9', ['octave-folded']],
    ['bass clarinet, octave in the semitones alone', d(-1) + c(-14), '-M9', ['octave-folded']],
    ['an octave in the semitones alone', d(0) + c(12), '+P8', ['octave-folded']],
    ['an octave twice', d(-8) + c(-14) + o(-1), '-M16', ['octave-twice']],
    ['no steps', c(-3), '-m3', ['diatonic-inferred']],
    ['no steps, no semitones', c(0) + o(-1), '-P8', []],
    ['no steps, an octave', c(-12), '-P8', ['octave-folded']],
    ['no steps, semitones beyond an octave', c(-14), '-M9', ['diatonic-inferred', 'octave-folded']],
    ['no semitones', d(-1), '-d2', ['no-chromatic']],
    ['nothing', '', 'P1', ['no-chromatic']],
    ['the enharmonic turn', d(-1) + c(0), '-d2', []],
    ['an augmented second', d(-1) + c(-3), '-A2', []],
  ])('%s', (_, content, expected, told) => {
    const text = `<transpose>${content}</transpose>`
    const codes: string[] = []
    const {interval} = readTransposition(text, only(text), (code) => codes.push(code))
    expect(formatInterval(interval)).toBe(expected)
    expect(codes).toEqual(told.map((code) => `transposition/${code}`))
  })

  it.each([
    ['<double/>', 'below'],
    ['<double above="yes"/>', 'above'],
    ['<double above="no"/>', 'below'],
    ['', undefined],
  ])('doubled by %s: %s', (double, expected) => {
    const text = `<transpose>${d(0)}${c(0)}${double}</transpose>`
    expect(readTransposition(text, only(text), () => {}).double).toBe(expected)
  })

  it('of the part that is to be made from a concert score', () => {
    const text = `<for-part><part-clef><sign>F</sign><line>4</line></part-clef><part-transpose>${d(-1)}${c(-2)}</part-transpose></for-part>`
    expect(readForPart(text, only(text), () => {})).toEqual({
      clef: {sign: 'F', line: 4, octaveChange: 0},
      transposition: {interval: {diatonic: -1, chromatic: -2}},
    })
    const none = '<for-part><part-clef><sign>F</sign></part-clef></for-part>'
    expect(readForPart(none, only(none), () => {}).transposition.interval).toEqual({
      diatonic: 0,
      chromatic: 0,
    })
  })
})

it.each([
  [1, true],
  [64, true],
  [65, false],
  [0, false],
  [-1, false],
  [1.5, false],
  [NaN, false],
])('%s can be the number of a staff: %s', (number, expected) => {
  expect(isStaff(number)).toBe(expected)
})
