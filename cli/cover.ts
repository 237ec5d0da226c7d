import {
  coverPart,
  formatCoverPage,
  formatCovers,
  formatReport,
  toolVersion,
  writeCoverPart,
} from '../lib/index.ts'
import type {Change, Tier} from '../lib/index.ts'
import {collectFindings} from './diagnostics.ts'
import {bytesOf, openInput, readInput, writeOutput} from './files.ts'
import {printSummary} from './summary.ts'
import {usageError} from './usage.ts'

export interface CoverCommand {
  readonly part: string
  readonly as?: string
  readonly from?: string
  readonly roster?: string
  readonly tier?: Tier
  readonly json?: boolean
  readonly html?: string
  readonly count?: string
  /** Which of the covers to write, from 1. */
  readonly write?: string
  /** With `write`: notes out of reach become cues. */
  readonly drop?: boolean
  readonly output?: string
  readonly report?: string
  readonly force?: boolean
  readonly quiet?: boolean
}

/** `renotate cover`: who could cover a part, and the part for one of them. 1 when nobody can. */
export async function runCover(path: string, command: CoverCommand): Promise<number> {
  const {part, as, from, tier} = command
  const place = command.write === undefined ? undefined : toWhole(command.write, '--write')
  const count = command.count === undefined ? 10 : toWhole(command.count, '--count')
  if ((place === undefined) !== (command.output === undefined))
    throw usageError('--write N and -o FILE go together: which cover, and where to')
  if (command.drop && place === undefined)
    throw usageError('--drop goes with --write: what is to be left out of which part?')
  const source = await openInput(path)
  const roster = command.roster === undefined ? undefined : readInput(command.roster)
  const findings = collectFindings(command)
  const options = {part, as, from, tier, roster}
  if (place !== undefined && command.output !== undefined) {
    const changes: Change[] = []
    const {report} = findings
    const changed = (change: Change): void => void changes.push(change)
    const content = writeCoverPart(source, {...options, place, drop: command.drop, report, changed})
    await writeOutput(command.output, content, {force: command.force, like: source})
    findings.end()
    if (command.report !== undefined)
      await writeReport(command.report, command, changes, findings.all)
    const {output, quiet} = command
    const reported = {pairs: [], changes, diagnostics: findings.all}
    return printSummary(source, {part, from, output, reported, quiet})
  }
  const list = await coverPart(source, {...options, report: findings.report})
  findings.end()
  if (command.html !== undefined)
    await writeOutput(command.html, bytesOf(formatCoverPage(list)), {force: command.force})
  if (command.json) process.stdout.write(`${JSON.stringify(list, undefined, 2)}\n`)
  else if (command.html !== '-') process.stdout.write(`${formatCovers(list, count).join('\n')}\n`)
  return list.covers.length > 0 ? 0 : 1
}

async function writeReport(
  file: string,
  {force}: CoverCommand,
  changes: readonly Change[],
  diagnostics: Parameters<typeof formatReport>[0]['diagnostics'],
): Promise<void> {
  const pairs = [...new Set(changes.map(({part}) => part))].map((id) => [id, id] as const)
  const text = formatReport({tool: toolVersion, pairs, changes, diagnostics})
  await writeOutput(file, bytesOf(text), {force})
}

function toWhole(text: string, option: string): number {
  const number = Number(text)
  if (!Number.isInteger(number) || number < 1)
    throw usageError(`${option} wants a number from 1, not ${text}`)
  return number
}
