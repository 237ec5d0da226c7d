import {
  formatDiagnostic,
  formatSurvey,
  formatSurveyJson,
  formatSurveyPage,
  survey,
} from '../lib/index.ts'
import type {Doubt} from '../lib/index.ts'
import {collectFindings} from './diagnostics.ts'
import {usageError} from './usage.ts'
import {openInput, readInput, writeOutput} from './files.ts'

export interface SurveyCommand {
  readonly json?: boolean
  readonly html?: string
  readonly names?: string
  readonly strict?: boolean
  readonly force?: boolean
  readonly quiet?: boolean
}

/** `renotate survey`: what each part is, and what it sounds. 1 under `--strict` when there are doubts. */
export async function runSurvey(path: string, options: SurveyCommand): Promise<number> {
  const source = await openInput(path)
  const findings = collectFindings(options)
  const names = options.names === undefined ? undefined : readNames(options.names)
  const found = await survey(source, {report: findings.report, names})
  const doubts = found.parts
    .flatMap((part) => part.doubts)
    .filter(({severity}) => severity !== 'info')
  if (options.html !== undefined)
    await writeOutput(options.html, bytesOf(formatSurveyPage(found)), options)
  // A page on standard output stands alone.
  if (options.html !== '-') {
    const width = process.stdout.columns ?? 100
    process.stdout.write(
      options.json ? formatSurveyJson(found) : `${formatSurvey(found, {width}).join('\n')}\n`,
    )
    // The table tells the doubts itself.
    if (options.json && !options.quiet) doubts.forEach(tell)
  }
  findings.end()
  return options.strict && doubts.length > 0 ? 1 : 0
}

/** A file of the user's own names: a JSON object of names and ids of instruments. */
function readNames(path: string): Readonly<Record<string, string>> {
  const text = readInput(path)
  let names: unknown
  try {
    names = JSON.parse(text)
  } catch (error) {
    throw usageError(
      `${path} cannot be read as JSON: ${error instanceof Error ? error.message : error}`,
    )
  }
  const isMap =
    typeof names === 'object' &&
    names !== null &&
    Object.values(names).every((id) => typeof id === 'string')
  if (!isMap) throw usageError(`${path} is no JSON object of names and ids of instruments`)
  return names as Record<string, string>
}

function tell({code, severity, message, at}: Doubt): void {
  process.stderr.write(`${severity}: ${formatDiagnostic({code, severity, message, at})}\n`)
}

async function* bytesOf(text: string): AsyncGenerator<Uint8Array> {
  yield new TextEncoder().encode(text)
}
