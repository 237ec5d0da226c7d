import type {Tier} from '../fit/reach.ts'
import {TIERS} from '../fit/reach.ts'
import {findNotation, instrumentFinder} from '../instruments/find.ts'
import type {Search} from '../instruments/find.ts'
import {LANGUAGES} from '../instruments/instrument.ts'
import type {Instrument, Language} from '../instruments/instrument.ts'
import type {Notation} from '../instruments/notation.ts'
import {parseKeys} from './roster-keys.ts'
import type {YamlNode} from './yaml-node.ts'

/**
 * The players at hand. A roster is a YAML file:
 *
 * ```yaml
 * band: Harmonie de Valmontel        # optional
 * language: fr                       # optional: en, fr, de, it, es, nl; for names of parts
 * tier: tutti                        # optional: who does not say plays in it
 * players:
 *   - name: Odile Marchais
 *     instrument: tuba               # an id, or a name in six languages
 *     doublings: [euphonium]         # optional: what else they play
 *     tier: pro                      # optional: pro, tutti or student
 *     part: P9                       # optional: what they play in the score, an id or a name
 *     notations: [tuba.modern]       # optional: what they read, the preferred first
 *     clefs: [F4]                    # optional: the only clefs they read
 *     avoids: [more than 4 sharps, Gb major]   # optional: written keys
 *     desks: 2                       # optional: how many sit there, 1 unless said
 * ```
 */
export interface Roster {
  readonly band?: string
  readonly language?: Language
  readonly players: readonly Player[]
}

/** One player, or several at one desk who play the same. */
export interface Player {
  readonly name: string
  readonly instrument: Instrument
  readonly doublings: readonly Instrument[]
  readonly tier: Tier
  readonly part?: string
  readonly notations: readonly Notation[]
  /** Empty: every clef of their instrument. Short forms: `F4`. */
  readonly clefs: readonly string[]
  /** Written signatures they would rather not read, in fifths. */
  readonly avoids: readonly number[]
  readonly desks: number
}

const CLEFS: Readonly<Record<string, string>> = {treble: 'G2', bass: 'F4', tenor: 'C4', alto: 'C3'}

/**
 * Reads a roster. Throws `ScoreError`, naming line and key: `roster/malformed` for text that is no YAML,
 * `roster/unknown-key`, `roster/missing`, `roster/value`, and `roster/instrument` or `roster/notation` for names that
 * the catalogue does not know, with those that come near.
 */
export async function parseRoster(text: string): Promise<Roster> {
  const {readYaml} = await import('./yaml-node.ts')
  const root = readYaml(text)
  root.only(['band', 'language', 'tier', 'players'])
  const band = root.optional('band')?.text()
  const language = root.optional('language')?.oneOf(LANGUAGES)
  const usual = root.optional('tier')?.oneOf(TIERS) ?? 'tutti'
  const find = instrumentFinder()
  const players = root.required('players').list()
  if (players.length === 0) root.required('players').fail('roster/value', 'there are no players')
  return {
    ...(band !== undefined && {band}),
    ...(language !== undefined && {language}),
    players: players.map((player) => readPlayer(player, usual, find)),
  }
}

function readPlayer(
  node: YamlNode,
  usual: Tier,
  find: (words: string) => Search<Instrument>,
): Player {
  node.only('name instrument doublings tier part notations clefs avoids desks'.split(' '))
  const instrumentOf = (each: YamlNode): Instrument =>
    resolve(each, 'roster/instrument', find(each.text()), ({id}) => id)
  const part = node.optional('part')?.text()
  const desks = node.optional('desks')
  return {
    name: node.required('name').text(),
    instrument: instrumentOf(node.required('instrument')),
    doublings: (node.optional('doublings')?.list() ?? []).map(instrumentOf),
    tier: node.optional('tier')?.oneOf(TIERS) ?? usual,
    ...(part !== undefined && {part}),
    notations: (node.optional('notations')?.list() ?? []).map((each) =>
      resolve(each, 'roster/notation', findNotation(each.text()), ({id}) => id),
    ),
    clefs: (node.optional('clefs')?.list() ?? []).map(readClefName),
    avoids: (node.optional('avoids')?.list() ?? []).flatMap((each) => {
      const keys = parseKeys(each.text())
      return (
        keys ??
        each.fail(
          'roster/value',
          `“${each.text()}” is no key such as “B major” or “more than 4 flats”`,
        )
      )
    }),
    desks: desks?.count() ?? 1,
  }
}

function readClefName(node: YamlNode): string {
  const name = node.text()
  const clef = CLEFS[name] ?? name
  if (/^[GFC][1-5]$/.test(clef)) return clef
  return node.fail(
    'roster/value',
    `“${name}” is no clef: ${Object.keys(CLEFS).join(', ')}, or sign and line as F4`,
  )
}

function resolve<Value>(
  node: YamlNode,
  code: `roster/${string}`,
  search: Search<Value>,
  idOf: (value: Value) => string,
): Value {
  if (search.kind === 'one') return search.found
  const list = (values: readonly Value[]): string => values.slice(0, 5).map(idOf).join(', ')
  if (search.kind === 'several')
    return node.fail(code, `“${node.text()}” may be one of several: ${list(search.candidates)}`)
  const near = search.nearest.length > 0 ? `; near it are ${list(search.nearest)}` : ''
  return node.fail(code, `the catalogue has no “${node.text()}”${near}`)
}
