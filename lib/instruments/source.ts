import {sourceTable} from './data/sources.ts'
import {readTable} from './table.ts'

/** A document behind the catalogue. `status` tells how it was consulted: `read`, `second hand`, `memory` … */
export interface Source {
  readonly code: string
  readonly status: string
  readonly text: string
}

/** All sources, in the order of the table. */
export function listSources(): readonly Source[] {
  return readTable(sourceTable, 'code|status|text').map(([code = '', status = '', text = '']) => ({
    code,
    status,
    text,
  }))
}

/**
 * The sources that a remark such as `WIEL; rest CP` or `name=MIMO+IAML` names, each once, in its order.
 *
 * @example sourcesIn('MELC; rest MEM').map((source) => source.code) // ['MELC', 'MEM']
 */
export function sourcesIn(remark: string): readonly Source[] {
  const all = listSources()
  const found = remark
    .split(/[^A-Za-z0-9-]+/)
    .map((word) => all.find((source) => source.code === word))
    .filter((source) => source !== undefined)
  return [...new Set(found)]
}
