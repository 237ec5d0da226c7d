import {openScore, prove, renotatePart, rewrite} from '../../lib/index.ts'
import type {Change, Diagnostic, JoinRequest, PartJob, PartOptions, Proof} from '../../lib/index.ts'
import {collect, sourceOf} from '../support/bytes.ts'
import {validateScore} from '../support/validate.ts'

/** A part of a small score: `P1 Oboe/Ob.` is its id, name and abbreviation; its measures are contents or whole elements. */
export type Parts = Readonly<Record<string, readonly string[]>>

/** A partwise score. Measures are numbered from 1. */
export function scoreOf(parts: Parts): string {
  const entries = Object.entries(parts).map(([key, measures]) => {
    const [, id = '', name = '', short = ''] = /^(\S+) ?([^/]*)\/?(.*)$/.exec(key) ?? []
    return {id, name, short, measures}
  })
  const list = entries.map(
    ({id, name, short}) =>
      `<score-part id="${id}"><part-name>${name}</part-name>${short && `<part-abbreviation>${short}</part-abbreviation>`}</score-part>`,
  )
  const printed = entries.map(({id, measures}) => {
    const contents = measures.map((content, index) =>
      content.startsWith('<measure')
        ? content
        : `<measure number="${index + 1}">${content}</measure>`,
    )
    return `<part id="${id}">\n${contents.join('\n')}\n</part>`
  })
  return `<score-partwise version="4.0"><part-list>${list.join('')}</part-list>\n${printed.join('\n')}\n</score-partwise>`
}

const TYPES = new Map([
  [4, ['whole']],
  [3, ['half', 'dot']],
  [2, ['half']],
  [1.5, ['quarter', 'dot']],
  [1, ['quarter']],
  [0.5, ['eighth']],
  [0.25, ['16th']],
])

/** Notes as words, with their types: `C5` a quarter, `Bb4:2` a half, `r:4` a rest; `{...}` is what follows the type. Two a beat. */
export function music(words: string, divisions = 2): string {
  return (words.match(/[^\s{]+(?:\{[^}]*\})?/g) ?? [])
    .map((word) => {
      const [, step = 'r', sign = '', octave = '', length = '1', rest = ''] =
        /^([A-Gr])(#+|b+)?(\d)?(?::([\d.]+))?(?:\{(.*)\})?$/.exec(word) ?? []
      const quarters = Number(length)
      const [type, dot] = TYPES.get(quarters) ?? []
      const alter = sign.startsWith('b') ? -sign.length : sign.length
      const pitch =
        step === 'r'
          ? '<rest/>'
          : `<pitch><step>${step}</step>${alter ? `<alter>${alter}</alter>` : ''}<octave>${octave}</octave></pitch>`
      const [before = '', after = ''] = rest.includes('|') ? rest.split('|') : ['', rest]
      const typed = type ? `<type>${type}</type>${dot ? '<dot/>' : ''}` : ''
      return `<note>${pitch}<duration>${quarters * divisions}</duration>${before}${typed}${after}</note>`
    })
    .join('')
}

/** `<attributes>` of a first measure in common time: divisions 2, a key, a clef (`G2`, `F4`), a transposition. */
export function start({
  divisions = 2,
  fifths = 0,
  clef = 'G2',
  time = '4/4',
  transpose = '',
}: {
  readonly divisions?: number
  readonly fifths?: number
  readonly clef?: string
  readonly time?: string
  /** `-1 -2`: diatonic and chromatic. */
  readonly transpose?: string
} = {}): string {
  const [beats = '', type = ''] = time.split('/')
  const [diatonic = '', chromatic = ''] = transpose.split(' ')
  const moved =
    transpose &&
    `<transpose><diatonic>${diatonic}</diatonic><chromatic>${chromatic}</chromatic></transpose>`
  return `<attributes><divisions>${divisions}</divisions><key><fifths>${fifths}</fifths></key><time><beats>${beats}</beats><beat-type>${type}</beat-type></time><clef><sign>${clef[0]}</sign><line>${clef[1]}</line></clef>${moved}</attributes>`
}

/** A measure's rest. */
export const REST = '<note><rest measure="yes"/><duration>8</duration></note>'

/** So many measures of rest; `first` stands before the first. */
export function rests(count: number, first = ''): string[] {
  return Array.from({length: count}, (_, index) => (index === 0 ? first : '') + REST)
}

/** A part with other music in it, and all that was told. */
export interface Joined {
  readonly text: string
  readonly bytes: Uint8Array
  readonly told: readonly Diagnostic[]
  readonly codes: readonly string[]
  readonly changes: readonly Change[]
  readonly proof: Proof
  /** The contents of the part's measures. */
  readonly measures: readonly string[]
}

/** What `part` with options makes of a score, checked: valid if the source is, and sounding what was told. */
export async function cued(
  source: string | Uint8Array,
  options: Partial<PartOptions> = {},
): Promise<Joined> {
  const told: Diagnostic[] = []
  const changes: Change[] = []
  const input = bytesOf(source)
  const bytes = await collect(
    renotatePart(sourceOf(input), {
      part: '1',
      cues: true,
      report: (each) => told.push(each),
      changed: (each) => changes.push(each),
      ...options,
    }),
  )
  return checked(input, {bytes, told, changes}, [['P1', 'P1']])
}

/** The part `P1` with music of others put into it as asked, checked in the same way. */
export async function joined(
  source: string | Uint8Array,
  request: JoinRequest,
  job: PartJob = {},
): Promise<Joined> {
  const told: Diagnostic[] = []
  const changes: Change[] = []
  const input = bytesOf(source)
  const score = await openScore(sourceOf(input))
  const content = rewrite(
    score,
    {parts: new Map([['P1', job]]), others: 'drop', joins: new Map([['P1', request]])},
    (each) => told.push(each),
    (each) => changes.push(each),
  )
  const bytes = await collect(content)
  const covered = request.cover?.part
  const pairs = covered === undefined ? [] : ([[covered, 'P1']] as const)
  return checked(input, {bytes, told, changes}, [['P1', 'P1'], ...pairs])
}

async function checked(
  input: Uint8Array,
  {bytes, told, changes}: Pick<Joined, 'bytes' | 'told' | 'changes'>,
  pairs: readonly (readonly [string, string])[],
): Promise<Joined> {
  const text = decoded(bytes)
  const problems = validateScore(input).length === 0 ? validateScore(bytes) : []
  if (problems.length > 0) throw new Error(`not valid: ${JSON.stringify(problems)}\n${text}`)
  const proof = await prove(sourceOf(input), sourceOf(bytes), {pairs, intended: changes})
  // What could not be put in has been told of, and is missed.
  const isWhole = !told.some(({code}) => code === 'join/divisions')
  if (isWhole && proof.verdict === 'different')
    throw new Error(
      `not proven: ${JSON.stringify(proof.pairs.map(({differences}) => differences.slice(0, 2)))}\n${text}`,
    )
  const measures = [...text.matchAll(/<measure [^>]*[^/]>([\s\S]*?)<\/measure>/g)]
  return {
    text,
    bytes,
    told,
    codes: told.map(({code}) => code),
    changes,
    proof,
    measures: measures.map(([, content = '']) => content),
  }
}

function decoded(bytes: Uint8Array): string {
  const [first, second] = bytes
  const encoding =
    first === 0xfe && second === 0xff
      ? 'utf-16be'
      : first === 0xff && second === 0xfe
        ? 'utf-16le'
        : 'utf-8'
  return new TextDecoder(encoding).decode(bytes)
}

function bytesOf(source: string | Uint8Array): Uint8Array {
  return typeof source === 'string' ? new TextEncoder().encode(source) : source
}

/** A note of a measure that is printed small: its pitch, and what its element holds. */
export interface CueNote {
  readonly pitch: string
  readonly xml: string
}

/** The cues of a measure's content, in the order of the document. */
export function cuesOf(content: string | undefined): CueNote[] {
  return notesOf(content).filter(({xml}) => xml.includes('<cue/>'))
}

/** The notes of a measure's content: `Bb4`, `rest`. */
export function notesOf(content = ''): CueNote[] {
  return [...content.matchAll(/<note\b[\s\S]*?<\/note>/g)].map(([xml]) => {
    const [, step, alter = '0', octave] =
      /<step>(.)<\/step>(?:\s*<alter>(.*?)<\/alter>)?\s*<octave>(.)<\/octave>/.exec(xml) ?? []
    const sign = Number(alter) < 0 ? 'b'.repeat(-Number(alter)) : '#'.repeat(Number(alter))
    return {pitch: step === undefined ? 'rest' : `${step}${sign}${octave}`, xml}
  })
}

/** The pitches of the cues of a measure, a word each. */
export function cuePitches(content: string | undefined): string {
  return cuesOf(content)
    .map(({pitch}) => pitch)
    .join(' ')
}

/** The words over a measure. */
export function wordsOf(content = ''): string[] {
  return [...content.matchAll(/<words[^>]*>([^<]*)<\/words>/g)].map(([, words = '']) => words)
}
