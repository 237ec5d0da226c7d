import {scoreError} from '../diagnostic.ts'
import type {Diagnostic} from '../diagnostic.ts'
import type {Intended} from '../proof/intended.ts'

/**
 * A report as a file: what was meant to sound otherwise, and what was said on the way. `prove --intended` reads it.
 *
 * ```json
 * {
 *   "format": "renotate-report",
 *   "version": 1,
 *   "tool": "0.1.0",
 *   "pairs": [["P9", "P9"]],
 *   "changes": [{
 *     "kind": "moved", "part": "P9", "semitones": 12, "reason": "measures 5 to 8 sound an octave higher: …",
 *     "from": {"measure": 4, "number": "5", "onset": "0/1"}, "to": {"measure": 7, "number": "8", "onset": "3/2"}
 *   }],
 *   "diagnostics": []
 * }
 * ```
 *
 * `pairs` are the ids of parts that belong together, before and after: a cover may resemble another part more. `measure` counts from 0; `number` is as printed, for people; `onset` is in quarters from the start of the measure, a
 * fraction. Both ends are included. Within a version fields may be added, never taken away or given another meaning.
 */
export interface ChangeReport {
  readonly format: 'renotate-report'
  readonly version: 1
  readonly tool: string
  readonly pairs: readonly (readonly [before: string, after: string])[]
  readonly changes: readonly Intended[]
  readonly diagnostics: readonly Diagnostic[]
}

/** The report as JSON, with a newline at its end. */
export function formatReport(
  report: Pick<ChangeReport, 'tool' | 'pairs' | 'changes' | 'diagnostics'>,
): string {
  const whole: ChangeReport = {format: 'renotate-report', version: 1, ...report}
  return `${JSON.stringify(whole, undefined, 2)}\n`
}

/** Reads a report. Throws `report/malformed`, naming what is wrong, for anything else. */
export function parseReport(text: string): Pick<ChangeReport, 'pairs' | 'changes' | 'diagnostics'> {
  const found = readJson(text)
  if (!isRecord(found) || found.format !== 'renotate-report')
    throw malformed('it is no report: "format" is not "renotate-report"')
  if (found.version !== 1) throw malformed(`its version is ${String(found.version)}, not 1`)
  if (!Array.isArray(found.changes)) throw malformed('"changes" is not a list')
  return {
    pairs: readPairs(found.pairs),
    changes: found.changes.map((change: unknown, index) => readChange(change, `changes[${index}]`)),
    diagnostics: readDiagnostics(found.diagnostics),
  }
}

function readDiagnostics(list: unknown): ChangeReport['diagnostics'] {
  if (list === undefined) return []
  if (!Array.isArray(list)) throw malformed('"diagnostics" is not a list')
  return list.map((one: unknown, index): Diagnostic => {
    const {code, message, severity, at, actual, expected} = isRecord(one) ? one : {}
    if (typeof code !== 'string' || !isCode(code) || typeof message !== 'string')
      throw malformed(`diagnostics[${index}] has no code or no message`)
    const {part, measure} = isRecord(at) ? at : {}
    return {
      code,
      severity: severity === 'error' || severity === 'warning' ? severity : 'info',
      message,
      at: {
        ...(typeof part === 'string' && {part}),
        ...(typeof measure === 'string' && {measure}),
      },
      ...(typeof actual === 'string' && {actual}),
      ...(typeof expected === 'string' && {expected}),
    }
  })
}

function isCode(text: string): text is Diagnostic['code'] {
  return text.includes('/')
}

function readPairs(pairs: unknown): ChangeReport['pairs'] {
  if (pairs === undefined) return []
  if (!Array.isArray(pairs)) throw malformed('"pairs" is not a list')
  return pairs.map((pair: unknown, index) => {
    const [before, after] = Array.isArray(pair) ? (pair as unknown[]) : []
    if (typeof before !== 'string' || typeof after !== 'string')
      throw malformed(`pairs[${index}] is no pair of part ids`)
    return [before, after]
  })
}

const KINDS: readonly string[] = [
  'moved',
  'dropped',
  'silenced',
  'added',
  'cues',
] satisfies Intended['kind'][]

function readChange(change: unknown, where: string): Intended {
  if (!isRecord(change)) throw malformed(`${where} is no object`)
  const {kind, part, semitones, midi, reason, from, to} = change
  if (typeof kind !== 'string' || !KINDS.includes(kind))
    throw malformed(`${where}.kind is none of ${KINDS.join(', ')}`)
  if (part !== undefined && typeof part !== 'string') throw malformed(`${where}.part is no text`)
  if (kind === 'moved' && typeof semitones !== 'number')
    throw malformed(`${where}.semitones is no number`)
  if (midi !== undefined && typeof midi !== 'number') throw malformed(`${where}.midi is no number`)
  return {
    kind: kind as Intended['kind'],
    ...(part !== undefined && {part}),
    ...(from !== undefined && {from: readSpot(from, `${where}.from`)}),
    ...(to !== undefined && {to: readSpot(to, `${where}.to`)}),
    ...(typeof semitones === 'number' && {semitones}),
    ...(typeof midi === 'number' && {midi}),
    reason: typeof reason === 'string' ? reason : '',
  }
}

function readSpot(spot: unknown, where: string) {
  if (!isRecord(spot)) throw malformed(`${where} is no object`)
  const {measure, onset} = spot
  if (typeof measure !== 'number' && typeof measure !== 'string')
    throw malformed(`${where}.measure is neither a number from 0 nor a printed number`)
  if (onset !== undefined && (typeof onset !== 'string' || !/^\d+(\/[1-9]\d*)?$/.test(onset)))
    throw malformed(`${where}.onset is no fraction such as "7/2"`)
  return {measure, ...(typeof onset === 'string' && {onset})}
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    throw malformed(`it is no JSON: ${error instanceof Error ? error.message : String(error)}`)
  }
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function malformed(what: string) {
  return scoreError('report/malformed', `the report cannot be used: ${what}`)
}
