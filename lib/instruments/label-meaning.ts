import {meaningTable} from './data/label-meanings.ts'
import {instruments} from './instrument.ts'
import type {Instrument, Language} from './instrument.ts'
import {readTable, wordsOf} from './table.ts'

/** A line of the table of words that mean several instruments. */
export interface Meaning {
  readonly instrument: Instrument
  /** `''` whatever the instrument's key allows, `any`, or a key. */
  readonly key: string
  readonly languages: ReadonlySet<Language>
  readonly weight: number
  readonly contexts: ReadonlyMap<string, number>
  readonly reason: string
}

/** Reads the table of ambiguous words; by concepts, sorted. */
export function readMeanings(): ReadonlyMap<string, readonly Meaning[]> {
  const byId = new Map(instruments.map((instrument) => [instrument.id, instrument]))
  const meanings = new Map<string, Meaning[]>()
  const columns = 'words|key|id|languages|weight|contexts|reason'
  for (const [bag = '', key = '', id = '', languages = '', ...rest] of readTable(
    meaningTable,
    columns,
  )) {
    const [weight, contexts = '', reason = ''] = rest
    const instrument = byId.get(id)
    if (!instrument) throw new TypeError(`no instrument ${id}`)
    const factors = wordsOf(contexts).map((text) => {
      const [context = '', factor] = text.split('*')
      return [context, Number(factor)] as const
    })
    const words = wordsOf(bag).toSorted().join(' ')
    const meaning = {
      instrument,
      key,
      languages: new Set(wordsOf(languages) as Language[]),
      weight: Number(weight),
      contexts: new Map(factors),
      reason,
    }
    meanings.set(words, [...(meanings.get(words) ?? []), meaning])
  }
  return meanings
}
