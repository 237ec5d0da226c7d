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
  /** With `write`: into the player's own part. */
  readonly woven?: boolean
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
  if (command.woven && place === undefined)
    throw usageError('--woven goes with --write: into whose part?')
  const source = await openInput(path)
  const roster = command.roster === undefined ? undefined : readInput(command.roster)
  const findings = collectFindings(command)
  const options = {part, as, from, tier, roster}
  if (place !== undefined && command.output !== undefined) {
    const changes: Change[] = []
    const pairs: (readonly [string, string])[] = []
    const content = writeCoverPart(source, {
      ...options,
      place,
      drop: command.drop,
      woven: command.woven,
      report: findings.report,
      changed: (change) => changes.push(change),
      paired: (before, after) => pairs.push([before, after]),
    })
    await writeOutput(command.output, content, {force: command.force, like: source})
    findings.end()
    const reported = {pairs, changes, diagnostics: findings.all}
    if (command.report !== undefined) {
      const text = formatReport({tool: toolVersion, ...reported})
      await writeOutput(command.report, bytesOf(text), {force: command.force})
    }
    const {output, quiet} = command
    const own = pairs[0]?.[0] ?? part
    const read = command.woven ? undefined : from
    return printSummary(source, {part: own, from: read, output, reported, quiet})
  }
  const list = await coverPart(source, {...options, report: findings.report})
  findings.end()
  if (command.html !== undefined)
    await writeOutput(command.html, bytesOf(formatCoverPage(list)), {force: command.force})
  if (command.json) process.stdout.write(`${JSON.stringify(list, undefined, 2)}\n`)
  else if (command.html !== '-') process.stdout.write(`${formatCovers(list, count).join('\n')}\n`)
  return list.covers.length > 0 ? 0 : 1
}

function toWhole(text: string, option: string): number {
  const number = Number(text)
  if (!Number.isInteger(number) || number < 1)
    throw usageError(`${option} wants a number from 1, not ${text}`)
  return number
}
