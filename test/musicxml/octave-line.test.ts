import {expect, it} from 'vitest'
import {firstContext} from '../../lib/musicxml/context.ts'
import {advance, readMeasure} from '../../lib/musicxml/measure.ts'

/** Measures in one line each: notes as letters a quarter long, `8va(`, `8vb(`, `15ma(`, `…` goes on and `)` ends. */
const SIGNS: Readonly<Record<string, string>> = {
  '8va(': '<octave-shift type="down" size="8"/>',
  '8vb(': '<octave-shift type="up" size="8"/>',
  '15ma(': '<octave-shift type="down" size="15"/>',
  '?(': '<octave-shift type="down"/>',
  '2:8vb(': '<octave-shift type="up" number="2"/>',
  '…': '<octave-shift type="continue"/>',
  ')': '<octave-shift type="stop"/>',
  '2:)': '<octave-shift type="stop" number="2"/>',
}

function measureOf(line: string): string {
  const content = line.split(' ').map((token) => {
    const shift = SIGNS[token]
    return shift
      ? `<direction><direction-type>${shift}</direction-type></direction>`
      : `<note><pitch><step>${token}</step><octave>6</octave></pitch><duration>1</duration></note>`
  })
  return `<measure>${content.join('')}</measure>`
}

/** The steps by which each note of some measures is displaced. */
function displaced(...lines: readonly string[]): number[] {
  let context = firstContext('P1')
  return lines.flatMap((line, index) => {
    const measure = readMeasure(
      {part: 'P1', number: String(index + 1), line: 1, text: measureOf(line)},
      context,
    )
    context = advance(context, measure)
    return measure.notes.map((note) => note.octaveLine?.steps ?? 0)
  })
}

it.each([
  [['C 8va( D E ) F'], [0, -7, -7, 0]],
  [['8vb( C ) D'], [7, 0]],
  [
    ['15ma( C D )', 'E'],
    [-14, -14, 0],
  ],
  [['?( C )'], [-7]],
  // Over the barline, with and without a continue.
  [
    ['8va( C', 'D', 'E ) F'],
    [-7, -7, -7, 0],
  ],
  [
    ['8va( C', '… D ) E'],
    [-7, -7, 0],
  ],
  // Levels keep lines apart.
  [['8va( C 2:8vb( D 2:) E ) F'], [-7, 7, -7, 0]],
  // Broken ones: a stop without a start, a start without a stop, a second start.
  [['C ) D'], [0, 0]],
  [
    ['8va( C', 'D'],
    [-7, -7],
  ],
  [['8va( C 8vb( D ) E'], [-7, 7, 0]],
])('%j displaces by %j', (lines, steps) => {
  expect(displaced(...lines)).toEqual(steps)
})

function shiftOn(type: string, rest: string): string {
  return `<direction><direction-type><octave-shift type="${type}" size="8"/></direction-type>${rest}</direction>`
}

function noteOn(staff: number): string {
  return `<note><pitch><step>C</step><octave>4</octave></pitch><duration>1</duration><staff>${staff}</staff></note>`
}

it('reads the offset of a direction and its staff', () => {
  const text = `<measure>${shiftOn('down', '<offset>1</offset><staff>2</staff>')}${noteOn(2)}${noteOn(2)}${noteOn(1)}</measure>`
  const measure = readMeasure({part: 'P1', number: '1', line: 1, text}, firstContext('P1'))
  expect(measure.notes.map((each) => each.octaveLine?.steps)).toEqual([undefined, -7, undefined])
  expect(measure.octaveLines.open).toHaveLength(1)
})

it('counts the lines of a part and tells which have no beginning', () => {
  const measure = readMeasure(
    {part: 'P1', number: '1', line: 1, text: measureOf(') 8va( C ) 8vb( D )')},
    firstContext('P1'),
  )
  expect(measure.octaveShifts.map(({type, line}) => [type, line?.index])).toEqual([
    ['stop', undefined],
    ['start', 0],
    ['stop', 0],
    ['start', 1],
    ['stop', 1],
  ])
})
