import {formatDiagnostic} from '../lib/index.ts'
import type {Diagnostic, Report} from '../lib/index.ts'

/** How many findings of one kind are told; the rest are counted. */
const SHOWN = 5

/** Where a command's findings go: to standard error, a line each, unless `--quiet`. */
export interface Findings {
  readonly report: Report
  readonly all: readonly Diagnostic[]
  /** Says how many findings were not shown. */
  end(): void
}

export function collectFindings(options: {readonly quiet?: boolean | undefined}): Findings {
  const all: Diagnostic[] = []
  const counts = new Map<string, number>()
  return {
    all,
    report(diagnostic) {
      all.push(diagnostic)
      const count = (counts.get(diagnostic.code) ?? 0) + 1
      counts.set(diagnostic.code, count)
      if (!options.quiet && count <= SHOWN)
        process.stderr.write(`${diagnostic.severity}: ${formatDiagnostic(diagnostic)}\n`)
    },
    end() {
      if (options.quiet) return
      for (const [code, count] of counts) {
        if (count > SHOWN) process.stderr.write(`and ${count - SHOWN} more [${code}]\n`)
      }
    },
  }
}
