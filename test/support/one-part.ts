import type {Diagnostic} from '../../lib/index.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import type {PartJob} from '../../lib/plan/job.ts'
import {runPart} from './jobs.ts'
import {validateScore} from './validate.ts'

/** What a score of one part is made of; everything else is the smallest there is. */
export interface OnePart {
  /** Content of `part-name` and what follows it in the `score-part`. */
  readonly name?: string
  readonly entry?: string
  /** What stands before the part list, and in it before and after the part. */
  readonly before?: string
  readonly groups?: readonly [string, string]
  /** Measures, without their tags; `attributes` stand before the first. */
  readonly measures: readonly string[]
  readonly attributes?: string
}

/** A note a whole measure long: `C4`, `Bb5`. `inside` follows its type. */
export function wholeNote(pitch: string, inside = ''): string {
  const [, step = 'C', sign = '', octave = '4'] = /^([A-G])([b#]?)(\d)$/.exec(pitch) ?? []
  const alter = sign === '' ? '' : `<alter>${sign === 'b' ? -1 : 1}</alter>`
  return `<note><pitch><step>${step}</step>${alter}<octave>${octave}</octave></pitch><duration>4</duration><type>whole</type>${inside}</note>`
}

export function direction(content: string, rest = ''): string {
  return `<direction><direction-type>${content}</direction-type>${rest}</direction>`
}

export function words(...texts: readonly string[]): string {
  return direction(texts.map((text) => `<words>${text}</words>`).join(''))
}

export function scoreOf({
  name = 'Violin',
  entry = '',
  before = '',
  groups,
  ...music
}: OnePart): string {
  const first = `<attributes><divisions>1</divisions>${music.attributes ?? '<clef><sign>G</sign><line>2</line></clef>'}</attributes>`
  const measures = music.measures.map(
    (content, index) => `
    <measure number="${index + 1}">${index === 0 ? first : ''}${content}</measure>`,
  )
  return `<score-partwise version="4.0">${before}
  <part-list>${groups?.[0] ?? ''}
    <score-part id="P1"><part-name>${name}</part-name>${entry}</score-part>${groups?.[1] ?? ''}
  </part-list>
  <part id="P1">${measures.join('')}
  </part>
</score-partwise>`
}

/** The score re-notated for an instrument, and what was told: code, then what was found and what is there now. */
export async function renotated(
  part: OnePart | string,
  instrument: string | undefined,
  job: Partial<PartJob> = {},
  others: 'keep' | 'drop' = 'drop',
): Promise<{
  readonly text: string
  readonly told: readonly string[]
  readonly all: readonly Diagnostic[]
}> {
  const source = typeof part === 'string' ? part : scoreOf(part)
  const named = instrument === undefined ? undefined : instrumentById(instrument)
  if (instrument !== undefined && !named) throw new Error(`no ${instrument}`)
  const whole = {...(named && {for: named}), ...job}
  const {bytes, told} = await runPart(new TextEncoder().encode(source), 'P1', whole, others)
  const problems = validateScore(source).length === 0 ? validateScore(bytes) : []
  if (problems.length > 0) throw new Error(`not valid: ${JSON.stringify(problems)}`)
  return {
    text: new TextDecoder().decode(bytes),
    told: told.map(({code, actual, expected}) =>
      [
        code,
        ...(actual === undefined ? [] : [actual]),
        ...(expected === undefined ? [] : ['->', expected]),
      ].join(' '),
    ),
    all: told,
  }
}
