import {renotatePart} from '../lib/index.ts'
import {collectFindings} from './diagnostics.ts'
import {openInput, writeOutput} from './files.ts'

export interface PartCommand {
  readonly part: string
  readonly for?: string
  readonly to?: string
  readonly from?: string
  readonly name?: string
  readonly output: string
  readonly force?: boolean
  readonly quiet?: boolean
}

/** `renotate part`: writes one part, re-notated. */
export async function runPart(path: string, options: PartCommand): Promise<number> {
  const source = await openInput(path)
  const findings = collectFindings(options)
  const {part, for: instrument, to, from, name} = options
  const content = renotatePart(source, {
    part,
    for: instrument,
    to,
    from,
    name,
    report: findings.report,
  })
  await writeOutput(options.output, content, {force: options.force, like: source})
  findings.end()
  return 0
}
