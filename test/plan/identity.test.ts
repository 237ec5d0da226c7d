import {describe, expect, it} from 'vitest'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {identityOf} from '../../lib/plan/identity.ts'
import type {PartJob} from '../../lib/plan/job.ts'

function nameOf(former: string, all: readonly string[], job: PartJob = {}): string | undefined {
  const instrument = instrumentById('violin')
  if (!instrument) throw new Error('no violin')
  return identityOf({name: former, abbreviation: ''}, {for: instrument, ...job}, all)?.name
}

const FRENCH = ['Petite flûte', 'Hautbois', 'Clarinettes en si♭', 'Bassons']

/** Renotation-rules N1 and N2. */
describe('a part is named in the language', () => {
  it.each([
    ['of its old name', 'Trompete in Es 2', FRENCH, '2. Violine'],
    [
      'of the others, where its own name is in none',
      'Contrebasse si♭ (clé de fa)',
      FRENCH,
      'Violon',
    ],
    ['of the others, where it has no name', '', FRENCH, 'Violon'],
    ['English, where nothing tells', 'Qq', ['Zz', ''], 'Violin'],
  ])('%s', (_what, former, all, expected) => {
    expect(nameOf(former, all)).toBe(expected)
  })

  it('that is asked for', () => {
    expect(nameOf('Trompete in Es 2', FRENCH, {language: 'it'})).toBe('Violino 2o')
    expect(nameOf('Trompete', FRENCH, {name: 'Fiddle'})).toBe('Fiddle')
  })
})
