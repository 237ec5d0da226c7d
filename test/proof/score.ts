import type {Source} from '../../lib/proof/text.ts'
import {formatFraction} from '../../lib/proof/fraction.ts'
import {formatExactPitch} from '../../lib/proof/pitch.ts'
import {readMeasures} from '../../lib/proof/reader.ts'
import type {ReaderOptions, SoundingNote} from '../../lib/proof/reader.ts'

/** A source over text or bytes, given whole. */
export function sourceOf(...chunks: readonly (string | Uint8Array)[]): Source {
  return async function* () {
    yield* chunks
  }
}

/** A partwise score of one part, P1, from the contents of its measures. */
export function part(...measures: readonly string[]): string {
  return score({P1: measures})
}

/** A partwise score: the contents of the measures of each part, by id. A name may follow the id: `P1 Oboe`. */
export function score(parts: Readonly<Record<string, readonly string[]>>, head = ''): string {
  const entries = Object.entries(parts).map(([key, measures]) => {
    const [id = '', ...words] = key.split(' ')
    return {id, name: words.join(' '), measures}
  })
  return [
    `<score-partwise version="4.0">${head}<part-list>`,
    ...entries.map(
      ({id, name}) => `<score-part id="${id}"><part-name>${name}</part-name></score-part>`,
    ),
    '</part-list>',
    ...entries.map(
      ({id, measures}) =>
        `<part id="${id}">\n${measures
          .map((content, index) => `<measure number="${index + 1}">${content}</measure>\n`)
          .join('')}</part>`,
    ),
    '</score-partwise>',
  ].join('\n')
}

/** `<attributes>` with that content. */
export function attributes(content: string): string {
  return `<attributes>${content}</attributes>`
}

/** `<transpose>`, without `<diatonic>` where it is undefined. */
export function transpose(
  diatonic: number | undefined,
  chromatic: number,
  {octaves, number, double}: {octaves?: number; number?: number; double?: string} = {},
): string {
  return `<transpose${number === undefined ? '' : ` number="${number}"`}>${
    diatonic === undefined ? '' : `<diatonic>${diatonic}</diatonic>`
  }<chromatic>${chromatic}</chromatic>${
    octaves === undefined ? '' : `<octave-change>${octaves}</octave-change>`
  }${double ?? ''}</transpose>`
}

export function clef(sign: string, line: number, rest = ''): string {
  return `<clef><sign>${sign}</sign><line>${line}</line>${rest}</clef>`
}

export function backup(duration: number): string {
  return `<backup><duration>${duration}</duration></backup>`
}

export function forward(duration: number): string {
  return `<forward><duration>${duration}</duration></forward>`
}

interface NoteOptions {
  readonly chord?: boolean
  readonly grace?: boolean
  readonly cue?: boolean
  readonly tie?: 'start' | 'stop' | 'both'
  readonly tied?: 'start' | 'stop' | 'both'
  readonly voice?: number
  readonly staff?: number
}

/** A note from its pitch (`Bb3`, `r` for a rest, `x` for an unpitched note) and its duration in divisions. */
export function note(pitch: string, duration: number, options: NoteOptions = {}): string {
  const {chord, grace, cue, tie, tied, voice, staff} = options
  return [
    '<note>',
    grace ? '<grace/>' : '',
    cue ? '<cue/>' : '',
    chord ? '<chord/>' : '',
    pitchElement(pitch),
    grace ? '' : `<duration>${duration}</duration>`,
    tieElements('tie', tie),
    voice === undefined ? '' : `<voice>${voice}</voice>`,
    staff === undefined ? '' : `<staff>${staff}</staff>`,
    tied ? `<notations>${tieElements('tied', tied)}</notations>` : '',
    '</note>',
  ].join('')
}

/** What a score sounds, a note a word: `P1 1 0+1 Bb3`: part, measure, onset and duration in quarters, pitch. */
export async function heard(text: string | Source, options?: ReaderOptions): Promise<string[]> {
  const lines = []
  const source = typeof text === 'string' ? sourceOf(text) : text
  for await (const measure of readMeasures(source, options)) {
    for (const one of measure.notes)
      lines.push(
        `${one.part} ${one.measure} ${formatFraction(one.onset)}+${formatFraction(one.duration)} ${soundOf(one)}`,
      )
  }
  return lines
}

/** The sounding pitches alone. */
export async function pitches(text: string | Source, options?: ReaderOptions): Promise<string> {
  return (await heard(text, options)).map((line) => line.split(' ').slice(3).join(' ')).join(' ')
}

function soundOf({sounding, written}: SoundingNote): string {
  return sounding ? formatExactPitch(sounding) : `x@${formatExactPitch(written)}`
}

function tieElements(name: 'tie' | 'tied', type: NoteOptions['tie']): string {
  if (type === undefined) return ''
  return type === 'both'
    ? `<${name} type="stop"/><${name} type="start"/>`
    : `<${name} type="${type}"/>`
}

export function pitchElement(text: string): string {
  if (text === 'r') return '<rest/>'
  if (text === 'x')
    return '<unpitched><display-step>E</display-step><display-octave>4</display-octave></unpitched>'
  const match = /^([A-G])(#*|b*|\([-+.\d]+\))(-?\d)$/.exec(text)
  if (!match) throw new Error(`no pitch: ${text}`)
  const [, step, sign = '', octave] = match
  const alter = sign.startsWith('(')
    ? sign.slice(1, -1).replace('+', '')
    : String(sign.startsWith('b') ? 0 - sign.length : sign.length)
  return `<pitch><step>${step}</step>${sign ? `<alter>${alter}</alter>` : ''}<octave>${octave}</octave></pitch>`
}
