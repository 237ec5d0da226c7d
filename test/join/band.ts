import {renotatePart} from '../../lib/index.ts'
import type {Change, Diagnostic, PartOptions} from '../../lib/index.ts'
import {collect, sourceOf} from '../support/bytes.ts'

/** A part of a small score: measures are contents without their tags. */
export interface BandPart {
  readonly name: string
  readonly abbreviation?: string
  /** What stands in the `attributes` of its first measure, after the divisions and before the clef. */
  readonly key?: string
  readonly clef?: string
  readonly transpose?: string
  readonly divisions?: number
  readonly measures: readonly string[]
}

/** A score of parts P1, P2 …, partwise. */
export function band(...parts: readonly BandPart[]): string {
  const list = parts.map(
    ({name, abbreviation = ''}, index) =>
      `<score-part id="P${index + 1}"><part-name>${name}</part-name><part-abbreviation>${abbreviation}</part-abbreviation></score-part>`,
  )
  const music = parts.map((each, index) => {
    const measures = each.measures.map(
      (content, at) =>
        `<measure number="${at + 1}">${at === 0 ? attributesOf(each) : ''}${content}</measure>`,
    )
    return `<part id="P${index + 1}">${measures.join('\n')}</part>`
  })
  return `<score-partwise version="4.0"><part-list>${list.join('')}</part-list>${music.join('\n')}</score-partwise>`
}

function attributesOf({divisions = 2, key = '', clef = 'G2', transpose = ''}: BandPart): string {
  const [sign, line] = clef
  return `<attributes><divisions>${divisions}</divisions>${key}<clef><sign>${sign}</sign><line>${line}</line></clef>${transpose}</attributes>`
}

/** A measure's rest in 4/4. */
export function rest(divisions = 2): string {
  return `<note><rest measure="yes"/><duration>${4 * divisions}</duration><voice>1</voice></note>`
}

export function rests(count: number, divisions = 2): string[] {
  return Array.from({length: count}, () => rest(divisions))
}

const TYPES: Readonly<Record<string, string>> = {4: 'whole', 2: 'half', 1: 'quarter', 0.5: 'eighth'}

/** A note such as `C#4`, so many quarters long; `inside` follows its stem. */
export function note(pitch: string, length: number, inside = '', divisions = 2): string {
  const [, step = 'C', sign = '', octave = '4'] = /^([A-G])([b#]?)(\d)$/.exec(pitch) ?? []
  const alter = sign === '' ? '' : `<alter>${sign === 'b' ? -1 : 1}</alter>`
  return `<note default-x="10"><pitch><step>${step}</step>${alter}<octave>${octave}</octave></pitch><duration>${length * divisions}</duration><voice>1</voice><type>${TYPES[length]}</type><stem>down</stem>${inside}</note>`
}

/** A measure of four quarters. */
export function quarters(...pitches: readonly string[]): string {
  return pitches.map((pitch) => note(pitch, 1)).join('')
}

export interface Outcome {
  readonly text: string
  /** The measures of the part, by number. */
  readonly measures: ReadonlyMap<string, string>
  readonly told: readonly Diagnostic[]
  readonly changes: readonly Change[]
}

export async function part(score: string, options: PartOptions): Promise<Outcome> {
  const told: Diagnostic[] = []
  const changes: Change[] = []
  const content = renotatePart(sourceOf(new TextEncoder().encode(score)), {
    ...options,
    report: (each) => told.push(each),
    changed: (each) => changes.push(each),
  })
  const text = new TextDecoder().decode(await collect(content))
  const found = [...text.matchAll(/<measure number="(\d+)"[^>]*>([\s\S]*?)<\/measure>/g)]
  return {text, told, changes, measures: new Map(found.map(([, n = '', all = '']) => [n, all]))}
}

/** The written pitches of the cues of a measure: `F#4`. */
export function cuesOf(measure: string | undefined): string[] {
  return [...(measure ?? '').matchAll(/<cue\/>(?:<chord\/>)?<pitch>(.*?)<\/pitch>/g)].map(
    ([, pitch = '']) => {
      const [, step = '', alter = '', octave = ''] =
        /<step>(.)<\/step>(?:<alter>(.*?)<\/alter>)?<octave>(.)<\/octave>/.exec(pitch) ?? []
      return `${step}${{'-1': 'b', '1': '#', '': ''}[alter] ?? alter}${octave}`
    },
  )
}
