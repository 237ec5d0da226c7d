import {soundingNotes} from '../lib/index.ts'
import {collectFindings} from './diagnostics.ts'
import {openInput, printLines} from './files.ts'

export interface SoundingCommand {
  readonly part?: string
  readonly from?: string
  readonly quiet?: boolean
}

/** `renotate sounding`: prints every note as it sounds, a JSON object a line. */
export async function runSounding(path: string, options: SoundingCommand): Promise<number> {
  const source = await openInput(path)
  const findings = collectFindings(options)
  await printLines(
    toLines(
      soundingNotes(source, {part: options.part, from: options.from, report: findings.report}),
    ),
  )
  findings.end()
  return 0
}

async function* toLines(notes: AsyncIterable<unknown>): AsyncGenerator<string> {
  for await (const note of notes) yield JSON.stringify(note)
}
