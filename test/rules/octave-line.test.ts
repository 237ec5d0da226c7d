import {expect, it} from 'vitest'
import {direction, renotated, wholeNote} from '../support/one-part.ts'

const start = direction('<octave-shift type="down" size="8"/>')
const stop = direction('<octave-shift type="stop" size="8"/>')
const goesOn = direction('<octave-shift type="continue" size="8"/>')

/** A word a measure: whether octave shifts are left, in the order of the document. */
function shiftsIn(text: string): string {
  return [...text.matchAll(/octave-shift type="(\w+)"/g)].map(([, type]) => type).join(' ')
}

const octaves = (told: readonly string[]): string[] =>
  told.filter((each) => each.startsWith('octave-line'))

it.each([
  // Winds read ledger lines; keyboards, mallets, harp and strings read octave lines (renotation-rules O1).
  ['oboe', undefined, ''],
  ['tuba', undefined, ''],
  ['piano', undefined, 'down stop'],
  ['xylophone', undefined, 'down stop'],
  ['harp', undefined, 'down stop'],
  ['viola', undefined, 'down stop'],
  ['oboe', 'keep', 'down stop'],
  ['piano', 'remove', ''],
  [undefined, 'remove', ''],
] as const)('for %s, %s: “%s” is left', async (instrument, octaveLines, left) => {
  const {text, told} = await renotated(
    {measures: [start + wholeNote('C6') + stop + wholeNote('C5')]},
    instrument,
    {octaveLines},
  )
  expect(shiftsIn(text)).toBe(left)
  expect(octaves(told)).toEqual(left === '' ? ['octave-line/removed'] : [])
})

it.each([
  ['over barlines', [start + wholeNote('C6'), goesOn + wholeNote('C6'), wholeNote('C6') + stop]],
  ['without an end', [start + wholeNote('C6'), wholeNote('C6')]],
])('removes a line %s', async (_, measures) => {
  const {text, told} = await renotated({measures}, 'oboe')
  expect(shiftsIn(text)).toBe('')
  expect(text).not.toContain('direction')
  expect(octaves(told)).toEqual(['octave-line/removed'])
})

it('removes the end of a line that never began, and tells it', async () => {
  const {text, told} = await renotated({measures: [wholeNote('C5') + stop]}, 'oboe')
  expect(shiftsIn(text)).toBe('')
  expect(octaves(told)).toEqual(['octave-line/stray'])
})

it('keeps what else the direction says', async () => {
  const both =
    '<direction><direction-type><octave-shift type="down" size="8"/></direction-type>' +
    '<direction-type><words>dolce</words></direction-type><sound tempo="60"/></direction>'
  const {text} = await renotated({measures: [both + wholeNote('C6')]}, 'oboe')
  expect(text).toContain(
    '<direction><direction-type><words>dolce</words></direction-type><sound tempo="60"/></direction>',
  )
})

it.each([
  // Above written C7 for more than two measures.
  ['flute', ['D7', 'E7', 'D7'], 'down stop'],
  ['flute', ['D7', 'E7'], ''],
  ['flute', ['C6', 'D6', 'C6'], ''],
  ['oboe', ['D7', 'E7', 'D7'], ''],
])('%s on %j: “%s” is left', async (instrument, pitches, left) => {
  const measures = pitches.map((pitch) => wholeNote(pitch))
  const {text} = await renotated(
    {measures: [start + measures[0], ...measures.slice(1, -1), `${measures.at(-1)}${stop}`]},
    instrument,
  )
  expect(shiftsIn(text)).toBe(left)
})

it('turns stems by where the notes stand, the line counted in as long as it stays', async () => {
  // A5 under 8va is drawn as A4, stem up; without the line it stands above the staff.
  const note = wholeNote('A5', '<stem>up</stem>').replace('<note>', '<note default-y="-25">')
  const measures = [start + note + stop]
  const removed = await renotated({measures}, 'oboe')
  expect(removed.text).toContain('<stem>down</stem>')
  expect(removed.text).not.toContain('default-y')
  const kept = await renotated({measures}, 'violin')
  expect(kept.text).toContain('<stem>up</stem>')
  expect(kept.text).toContain('default-y="-25"')
})

it('never moves a pitch', async () => {
  const {text} = await renotated({measures: [start + wholeNote('C6') + stop]}, 'oboe')
  expect(text).toContain('<pitch><step>C</step><octave>6</octave></pitch>')
})

it('chooses the clef by what is drawn', async () => {
  // Cello music under 8va is drawn in the bass staff; without the line it wants another clef.
  const measures = ['C5', 'D5', 'E5', 'D5', 'E5', 'D5'].map((pitch) => wholeNote(pitch))
  const whole = {
    name: 'Cello',
    attributes: '<clef><sign>F</sign><line>4</line></clef>',
    measures: [start + measures[0], ...measures.slice(1)],
  }
  const kept = await renotated(whole, 'bassoon', {octaveLines: 'keep'})
  const removed = await renotated(whole, 'bassoon')
  expect(kept.text).toContain('<sign>F</sign>')
  expect(removed.text).not.toContain('<sign>F</sign>')
})
