/** Where in a score something is. `measure` is the number as printed (text); `line` counts from 1. */
export interface Place {
  readonly part?: string
  readonly measure?: string
  readonly line?: number
}

/**
 * `error`: do not trust this place · `warning`: a musician should look · `info`: a decision was made.
 */
export type Severity = 'error' | 'warning' | 'info'

/** One thing worth telling. `code` is stable and documented; `message` is one sentence, no full stop. */
export interface Diagnostic {
  readonly code: `${string}/${string}`
  readonly severity: Severity
  readonly message: string
  readonly at?: Place
  readonly actual?: string
  readonly expected?: string
}

/** Takes a diagnostic; the caller decides what becomes of it. */
export type Report = (diagnostic: Diagnostic) => void

/** The input is not a score that can be read, or the job cannot be done. Carries one diagnostic. */
export class ScoreError extends Error {
  override readonly name = 'ScoreError'
  readonly diagnostic: Diagnostic

  constructor(diagnostic: Diagnostic) {
    super(formatDiagnostic(diagnostic))
    this.diagnostic = diagnostic
  }
}

/** A `ScoreError` from the parts of its diagnostic. */
export function scoreError(code: Diagnostic['code'], message: string, at?: Place): ScoreError {
  return new ScoreError({code, severity: 'error', message, ...(at && {at})})
}

/** A diagnostic on one line: `part P1, measure 12, line 340: message [code]`. */
export function formatDiagnostic(diagnostic: Diagnostic): string {
  const place = diagnostic.at ? formatPlace(diagnostic.at) : ''
  const expected =
    diagnostic.expected === undefined
      ? ''
      : ` (${diagnostic.actual === undefined ? '' : `found ${diagnostic.actual}, `}expected ${diagnostic.expected})`
  return `${place ? `${place}: ` : ''}${diagnostic.message}${expected} [${diagnostic.code}]`
}

/** A place in words: `part P1, measure 12, line 340`; empty when nothing is known. */
export function formatPlace(place: Place): string {
  const words = []
  if (place.part !== undefined) words.push(`part ${place.part}`)
  if (place.measure !== undefined) words.push(`measure ${place.measure}`)
  if (place.line !== undefined) words.push(`line ${place.line}`)
  return words.join(', ')
}
