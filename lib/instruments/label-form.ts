import {moreNamesTable} from './data/label-words.ts'
import {instruments, LANGUAGES} from './instrument.ts'
import {readNames} from './attested.ts'
import type {Instrument, Language} from './instrument.ts'
import {isKeyPreposition} from './label-key.ts'
import type {KeyReader} from './label-key.ts'
import {tokensOf} from './label-token.ts'
import type {Token} from './label-token.ts'
import {readTable, wordsOf} from './table.ts'

/** A printed name of an instrument, without its key and words that say nothing. */
export interface Form {
  readonly instrument: Instrument
  readonly tokens: readonly Token[]
  readonly languages: ReadonlySet<Language>
  readonly keyed: boolean
  readonly weight: number
}

/** The printed names of all instruments. */
export function readForms(
  keys: KeyReader,
  isNoise: (token: Token, index: number) => boolean,
): readonly Form[] {
  const byId = new Map(instruments.map((instrument) => [instrument.id, instrument]))
  return listForms().flatMap(({id, form, languages, weight}) => {
    const instrument = byId.get(id)
    if (!instrument) throw new TypeError(`no instrument ${id}`)
    const {tokens, keyed} = withoutKey(tokensOf(form), instrument, keys)
    const kept = tokens.filter((token, at) => token.kind === 'word' && !isNoise(token, at))
    return kept.length === 0
      ? []
      : [{instrument, tokens: kept, languages, keyed, weight: weight ?? usual(instrument)}]
  })
}

interface PrintedForm {
  readonly id: string
  readonly form: string
  readonly languages: Set<Language>
  readonly weight?: number
}

/** Every printed form of every name once, with all languages that print it so. */
function listForms(): readonly PrintedForm[] {
  const forms = new Map<string, PrintedForm>()
  const add = (id: string, form: string, languages: readonly Language[], weight?: number) => {
    const lower = form.toLowerCase()
    const known = forms.get(`${id}|${lower}`)
    if (known) for (const language of languages) known.languages.add(language)
    else
      forms.set(`${id}|${lower}`, {
        id,
        form,
        languages: new Set(languages),
        ...(weight !== undefined && {weight}),
      })
  }
  for (const [form = '', ids = '', own = ''] of readTable(moreNamesTable, 'form|ids|languages'))
    for (const [at, id] of wordsOf(ids).entries())
      add(id, form, wordsOf(own) as readonly Language[], 1 / (1 + at))
  for (const {id, form, language} of readNames()) add(id, form, [language])
  for (const {id, labels} of instruments)
    for (const language of LANGUAGES) {
      const {name, plural, abbreviation} = labels[language]
      for (const form of [name, plural, abbreviation].flatMap(withoutBrackets))
        add(id, form, [language])
    }
  return [...forms.values()]
}

/** Schools teach what most scores ask for. */
function usual(instrument: Instrument): number {
  return instrument.ranges.student || instrument.family === 'unpitched' ? 1 : 0.15
}

function withoutBrackets(form: string): readonly string[] {
  const [, before = '', inside = '', after = ''] = /^(.*?)\s*\((.+?)\)(.*)$/.exec(form) ?? []
  return inside === '' ? [form] : [form, `${before}${after}`, `${inside}${after}`]
}

/** Leaves out the key, where the name names the instrument's own. */
function withoutKey(tokens: readonly Token[], instrument: Instrument, keys: KeyReader) {
  const own = keys.findKeys(tokens).find((span) => span.keys.includes(instrument.builtIn ?? ''))
  if (!own || own.end - own.start === tokens.length) return {tokens, keyed: false}
  const abbreviates = own.strength === 'weak' && tokens[own.start]?.dot
  if (abbreviates) return {tokens, keyed: false}
  const before = tokens[own.start - 1]
  const start = before && isKeyPreposition(before.fold) ? own.start - 1 : own.start
  return {tokens: [...tokens.slice(0, start), ...tokens.slice(own.end)], keyed: true}
}

/** The words by which a plural differs from its singular, and those that do for both: `hautbois`. */
export function readPlurals(): ReadonlySet<string> {
  return new Set(
    instruments.flatMap(({labels}) =>
      LANGUAGES.flatMap((language) => {
        const {name, plural} = labels[language]
        const singular = foldText(name).split(' ')
        const words = foldText(plural).split(' ')
        return name === plural ? words : words.filter((word) => !singular.includes(word))
      }),
    ),
  )
}

/** Also the end of a compound: `Posaunen` of `Tenorposaunen`. */
export function isPluralWord(plurals: ReadonlySet<string>, word: string): boolean {
  return plurals.has(word) || (word.length > 5 && [...plurals].some((form) => form.endsWith(word)))
}

/** Folds a text as the lexicon's texts are folded. */
export function foldText(text: string): string {
  return tokensOf(text)
    .filter(({kind}) => kind !== 'sign')
    .map(({fold}) => fold)
    .join(' ')
}
