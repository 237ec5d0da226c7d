import {concertScore} from '../lib/index.ts'
import {collectFindings} from './diagnostics.ts'
import {openInput, writeOutput} from './files.ts'

export interface ConcertCommand {
  readonly octaves: 'customary' | 'sounding'
  readonly output: string
  readonly force?: boolean
  readonly quiet?: boolean
}

/** `renotate concert`: writes the whole score at concert pitch. */
export async function runConcert(path: string, options: ConcertCommand): Promise<number> {
  const source = await openInput(path)
  const findings = collectFindings(options)
  const content = concertScore(source, {octaves: options.octaves, report: findings.report})
  await writeOutput(options.output, content, {force: options.force, like: source})
  findings.end()
  return 0
}
