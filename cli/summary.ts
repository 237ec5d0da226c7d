import {comparePart, formatSummary} from '../lib/index.ts'
import type {ReportedChange, Source} from '../lib/index.ts'
import {openInput} from './files.ts'

export interface SummaryOptions {
  readonly part: string
  readonly from?: string | undefined
  /** Where the part was written; what went to standard output (`-`) cannot be read again. */
  readonly output: string
  readonly reported: ReportedChange
  readonly prove?: boolean | undefined
  readonly quiet?: boolean | undefined
}

/** Says on standard error what became of a part, at a glance. 1 when a proof was asked for and fails. */
export async function printSummary(source: Source, options: SummaryOptions): Promise<number> {
  const {part, from, output, reported, prove, quiet} = options
  if (output === '-' || (quiet && !prove)) return 0
  const written = await openInput(output)
  const {digest, proof} = await comparePart(source, written, {
    part,
    from,
    reports: [reported],
    prove,
  })
  const hint = 'not asked for; --prove makes one, and renotate sheet a page to see it'
  if (!quiet) process.stderr.write(`${formatSummary(digest, {proof, hint}).join('\n')}\n`)
  return proof && proof.different > 0 ? 1 : 0
}
