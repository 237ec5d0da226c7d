import {parseReport, sheet} from '../lib/index.ts'
import {openInput, readInput, writeOutput} from './files.ts'

export interface SheetCommand {
  readonly part?: string
  readonly from?: string
  readonly report?: readonly string[]
  readonly html: string
  readonly force?: boolean
  readonly quiet?: boolean
}

/** `renotate sheet`: a page that shows a part before and after. */
export async function runSheet(
  before: string,
  after: string,
  options: SheetCommand,
): Promise<number> {
  const content = sheet(await openInput(before), await openInput(after), {
    part: options.part,
    from: options.from,
    reports: (options.report ?? []).map((file) => parseReport(readInput(file))),
    ...(!options.quiet && process.stderr.isTTY && {progress: showProgress}),
  })
  await writeOutput(options.html, content, options)
  return 0
}

function showProgress(done: number): void {
  const end = done >= 1 ? '\r\u001b[K' : ''
  process.stderr.write(`\rdrawing ${Math.round(100 * done)} %${end}`)
}
