import {findPart, formatReport, openScore, renotatePart, toolVersion} from '../lib/index.ts'
import type {Change, CueOptions, Language, Tier} from '../lib/index.ts'
import {collectFindings} from './diagnostics.ts'
import {bytesOf, openInput, writeOutput} from './files.ts'
import {printSummary} from './summary.ts'
import {usageError} from './usage.ts'

export interface PartCommand {
  readonly part: string
  readonly for?: string
  readonly to?: string
  readonly from?: string
  readonly name?: string
  readonly keyLimit?: number
  readonly prefer?: 'fewest' | 'sharps' | 'flats'
  readonly signature?: 'custom' | 'print' | 'omit'
  readonly spelling?: 'keep' | 'plain' | 'school'
  readonly courtesy?: 'keep' | 'add' | 'none'
  readonly techniques?: 'translate' | 'keep'
  readonly octaveLines?: 'custom' | 'keep' | 'remove'
  readonly layout?: 'keep' | 'drop'
  readonly language?: Language
  readonly ledgerLines?: number
  readonly explain?: boolean
  readonly fold?: boolean | Tier
  readonly drop?: boolean
  /** After so many measures' rest, or as the library has it. */
  readonly cues?: boolean | string
  readonly cueLength?: string
  readonly cuesFrom?: readonly string[]
  readonly crossCues?: string
  /** Prove that the part written sounds the same. */
  readonly prove?: boolean
  /** File for what changed, to be read by `prove --intended`. */
  readonly report?: string
  readonly output: string
  readonly force?: boolean
  readonly quiet?: boolean
}

/** `renotate part`: writes one part, re-notated. */
export async function runPart(path: string, options: PartCommand): Promise<number> {
  const source = await openInput(path)
  const findings = collectFindings(options)
  const {part, for: instrument, to, from, name, fold, drop} = options
  if (fold && instrument === undefined)
    throw usageError('--fold needs --for: whose range is meant?')
  if (drop && !fold)
    throw usageError('--drop needs --fold: which notes are out of reach whatever their octave?')
  if (!options.cues && (options.cueLength !== undefined || options.cuesFrom))
    throw usageError('--cue-length and --cues-from go with --cues')
  if (options.crossCues !== undefined && instrument === undefined)
    throw usageError('--cross-cues needs --for: who is to play them?')
  if (options.prove && options.output === '-')
    throw usageError('--prove reads what was written again: -o has to name a file')
  const changes: Change[] = []
  const content = renotatePart(source, {
    part,
    for: instrument,
    to,
    from,
    name,
    fold,
    drop,
    keys: given({limit: options.keyLimit, prefer: options.prefer, signature: options.signature}),
    clefs: given({above: options.ledgerLines, below: options.ledgerLines}),
    spelling: options.spelling,
    courtesy: options.courtesy,
    explain: options.explain,
    techniques: options.techniques,
    octaveLines: options.octaveLines,
    layout: options.layout,
    language: options.language,
    cues: options.cues ? cuesOf(options) : undefined,
    crossCues: options.crossCues,
    report: findings.report,
    changed: (change) => changes.push(change),
  })
  await writeOutput(options.output, content, {force: options.force, like: source})
  findings.end()
  const {header} = await openScore(source)
  const {id} = findPart(header, part)
  const guest = options.crossCues === undefined ? [] : [findPart(header, options.crossCues).id]
  const pairs = [id, ...guest].map((before) => [before, id] as const)
  const reported = {pairs, changes, diagnostics: findings.all}
  if (options.report !== undefined) {
    const report = formatReport({tool: toolVersion, ...reported})
    await writeOutput(options.report, bytesOf(report), options)
  }
  const {output, prove, quiet} = options
  return printSummary(source, {part, from, output, reported, prove, quiet})
}

function cuesOf({cues, cueLength, cuesFrom}: PartCommand): CueOptions {
  return {
    rest: typeof cues === 'string' ? toMeasures(cues, '--cues') : undefined,
    length: cueLength === undefined ? undefined : toMeasures(cueLength, '--cue-length'),
    from: cuesFrom,
  }
}

function toMeasures(text: string, option: string): number {
  const count = Number(text)
  if (Number.isInteger(count) && count > 0) return count
  throw usageError(`${option} wants a number of measures from 1, not ${text}`)
}

/** What was said on the command line; the rest is left to the library's defaults. */
function given<Options extends object>(
  options: Options,
): {[Key in keyof Options]?: NonNullable<Options[Key]>} {
  return Object.fromEntries(Object.entries(options).filter(([, value]) => value !== undefined)) as {
    [Key in keyof Options]?: NonNullable<Options[Key]>
  }
}
