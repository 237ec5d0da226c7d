import {firstContext} from '../../lib/musicxml/context.ts'
import type {Context} from '../../lib/musicxml/context.ts'
import {advance, readMeasure} from '../../lib/musicxml/measure.ts'
import type {Measure, MeasureOptions} from '../../lib/musicxml/measure.ts'
import {createFacts} from '../../lib/survey/facts.ts'
import type {PartFacts} from '../../lib/survey/facts.ts'

/** The measures of a part P1, from their contents, each with what was in force at its start. */
export function readPart(contents: readonly string[], options: MeasureOptions = {}): Measure[] {
  let context: Context = firstContext('P1')
  let line = 1
  return contents.map((content, index) => {
    const text = `<measure number="${index + 1}">${content}</measure>`
    const measure = readMeasure(
      {part: 'P1', number: String(index + 1), text, line},
      context,
      options,
    )
    line += text.split('\n').length
    context = advance(context, measure)
    return measure
  })
}

/** The facts about such a part. */
export function factsAbout(contents: readonly string[]): PartFacts {
  const facts = createFacts('P1')
  for (const measure of readPart(contents)) facts.add(measure)
  return facts.done()
}

/** `<attributes>` with what stands in them: `divisions 4`, `fifths -3`, `clef F4`, `transpose -1 -2 [octaves]`, or markup. */
export function attributes(...words: readonly string[]): string {
  return `<attributes>${words.map(attributeOf).join('')}</attributes>`
}

function attributeOf(word: string): string {
  const [name, ...values] = word.split(' ')
  if (name === 'divisions') return `<divisions>${values[0]}</divisions>`
  if (name === 'fifths') return `<key><fifths>${values[0]}</fifths></key>`
  if (name === 'clef') {
    const [, sign, line, octaves] = /^(\D+)(\d)(?:\(([+-]?\d)\))?$/.exec(values[0] ?? '') ?? []
    const number = values[1] === undefined ? '' : ` number="${values[1]}"`
    const change =
      octaves === undefined ? '' : `<clef-octave-change>${octaves}</clef-octave-change>`
    return `<clef${number}><sign>${sign}</sign><line>${line}</line>${change}</clef>`
  }
  if (name === 'transpose') {
    const [diatonic, chromatic, octaves] = values
    const change = octaves === undefined ? '' : `<octave-change>${octaves}</octave-change>`
    return `<transpose><diatonic>${diatonic}</diatonic><chromatic>${chromatic}</chromatic>${change}</transpose>`
  }
  return word
}

/** A note: `C4`, `F#5`, `Bb3`, or `rest`; its duration; and what stands behind `pitch` and `duration`. */
export function note(pitch: string, duration: number | string = 1, rest = '', before = ''): string {
  const time = before.includes('<grace') ? '' : `<duration>${duration}</duration>`
  return `<note>${before}${pitchOf(pitch)}${time}${rest}</note>`
}

export function pitchOf(pitch: string): string {
  if (pitch === 'rest') return '<rest/>'
  const [, step, sign = '', octave] = /^([A-G])(#{1,2}|b{1,2}|\([^)]*\))?(-?\d)$/.exec(pitch) ?? []
  const alter = sign.startsWith('(')
    ? Number(sign.slice(1, -1))
    : sign.startsWith('b')
      ? -sign.length
      : sign.length
  return `<pitch><step>${step}</step>${alter === 0 ? '' : `<alter>${alter}</alter>`}<octave>${octave}</octave></pitch>`
}

export const backup = (duration: number | string): string =>
  `<backup><duration>${duration}</duration></backup>`
export const forward = (duration: number | string): string =>
  `<forward><duration>${duration}</duration></forward>`
