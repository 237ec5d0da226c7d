import {nameTable} from './data/names.ts'
import type {Language} from './instrument.ts'
import {readTable} from './table.ts'

/** A form of a name that a source prints: for recognising, not for printing. */
export interface AttestedName {
  readonly language: Language
  readonly form: string
  readonly kind: 'name' | 'plural' | 'abbreviation' | 'variant'
  readonly source: string
}

/** Every form of the instrument's name that a source prints, in six languages. */
export function attestedNames(id: string): readonly AttestedName[] {
  return readNames()
    .filter((line) => line.id === id)
    .map(({language, form, kind, source}) => ({language, form, kind, source}))
}

/** All attested names of all instruments, in the order of the catalogue. Read afresh at every call. */
export function readNames(): readonly (AttestedName & {readonly id: string})[] {
  return readTable(nameTable, 'id|language|form|kind|source').map(
    ([id = '', language = '', form = '', kind = '', source = '']) => ({
      id,
      language: language as Language,
      form,
      kind: kind as AttestedName['kind'],
      source,
    }),
  )
}
