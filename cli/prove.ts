import {createHash} from 'node:crypto'
import {basename} from 'node:path'
import {
  certificate,
  formatCertificate,
  formatProof,
  parseReport,
  prove,
  toolVersion,
} from '../lib/index.ts'
import type {Source} from '../lib/index.ts'
import {bytesOf, openInput, readInput, writeOutput} from './files.ts'

export interface ProveCommand {
  readonly from?: string
  /** Reports of what is meant to sound otherwise. */
  readonly intended?: readonly string[]
  readonly json?: boolean
  readonly certificate?: string
  readonly force?: boolean
}

/** `renotate prove`: do two scores sound the same? 0 yes, 1 no. */
export async function runProve(
  before: string,
  after: string,
  options: ProveCommand,
): Promise<number> {
  const sources = {before: await openInput(before), after: await openInput(after)}
  const reports = (options.intended ?? []).map((file) => parseReport(readInput(file)))
  const proof = await prove(sources.before, sources.after, {
    from: options.from,
    intended: reports.flatMap(({changes}) => changes),
    pairs: reports.flatMap(({pairs}) => pairs),
  })
  if (options.json) process.stdout.write(`${JSON.stringify(proof, undefined, 2)}\n`)
  else process.stdout.write(`${formatProof(proof).join('\n')}\n`)
  if (options.certificate !== undefined) {
    const record = certificate(
      proof,
      {
        before: {name: basename(before), sha256: await checksum(sources.before)},
        after: {name: basename(after), sha256: await checksum(sources.after)},
      },
      toolVersion,
    )
    await writeOutput(options.certificate, bytesOf(formatCertificate(record)), options)
  }
  return proof.verdict === 'different' ? 1 : 0
}

async function checksum(source: Source): Promise<string> {
  const hash = createHash('sha256')
  for await (const chunk of source()) hash.update(chunk)
  return hash.digest('hex')
}
