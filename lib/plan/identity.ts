import type {Family} from '../instruments/instrument.ts'
import {
  formatPartName,
  languageOfName,
  languageOfNames,
  readDesks,
} from '../instruments/part-name.ts'
import type {PartJob} from './job.ts'
import type {Identity} from './plan.ts'

/** What a score says of a part's name, and the family that sound or name tell. */
export interface FormerIdentity {
  readonly name: string
  readonly abbreviation: string
  readonly family?: Family | undefined
}

/**
 * What the part is called afterwards; undefined when it keeps its names. It is named in the language of its old name, or else
 * of most parts of the score (`all`), unless the job says which (renotation-rules N1, N2); the number of its desk stays.
 */
export function identityOf(
  former: FormerIdentity,
  job: PartJob,
  all: readonly string[],
): Identity | undefined {
  const {for: instrument, name} = job
  if (!instrument && name === undefined) return undefined
  const language = job.language ?? languageOfName(former.name) ?? languageOfNames(all) ?? 'en'
  const {family, ...names} = former
  const known = {language, former: names, ...(family && {formerFamily: family})}
  if (!instrument) return {name: name ?? '', abbreviation: name ?? '', ...known}
  const label = formatPartName(instrument, language, readDesks(former.name))
  return {name: name ?? label.name, abbreviation: label.abbreviation, instrument, ...known}
}
