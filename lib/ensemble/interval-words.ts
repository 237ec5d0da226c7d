import type {Language} from '../instruments/instrument.ts'
import {formatInterval} from '../pitch/interval.ts'
import type {Interval} from '../pitch/interval.ts'

/** How a language says that music sounds elsewhere. `%` is the interval. */
interface IntervalWords {
  readonly same: string
  readonly lower: string
  readonly higher: string
  /** From the unison to the fifteenth. */
  readonly numbers: readonly string[]
  readonly qualities: Readonly<Record<'P' | 'M' | 'm' | 'A' | 'd', string>>
  /** `#` is the number, `*` the quality. */
  readonly order: string
  readonly perfectOctaves: readonly [one: string, two: string]
  readonly and: string
}

/** Names of intervals as the schools of each language have them (common practice, from memory). */
const WORDS: Readonly<Record<Language, IntervalWords>> = {
  en: {
    same: 'sounds as written',
    lower: 'sounds % lower',
    higher: 'sounds % higher',
    numbers:
      'unison second third fourth fifth sixth seventh octave ninth tenth eleventh twelfth thirteenth fourteenth fifteenth'.split(
        ' ',
      ),
    qualities: {
      P: 'a perfect',
      M: 'a major',
      m: 'a minor',
      A: 'an augmented',
      d: 'a diminished',
    },
    order: '* #',
    perfectOctaves: ['an octave', 'two octaves'],
    and: 'and',
  },
  fr: {
    same: 'sonne comme écrit',
    lower: 'sonne % plus bas',
    higher: 'sonne % plus haut',
    numbers:
      'unisson seconde tierce quarte quinte sixte septième octave neuvième dixième onzième douzième treizième quatorzième quinzième'.split(
        ' ',
      ),
    qualities: {P: 'juste', M: 'majeure', m: 'mineure', A: 'augmentée', d: 'diminuée'},
    order: 'une # *',
    perfectOctaves: ['une octave', 'deux octaves'],
    and: 'et',
  },
  de: {
    same: 'klingt wie notiert',
    lower: 'klingt % tiefer',
    higher: 'klingt % höher',
    numbers:
      'Prime Sekunde Terz Quarte Quinte Sexte Septime Oktave None Dezime Undezime Duodezime Tredezime Quartdezime Quintdezime'.split(
        ' ',
      ),
    qualities: {P: 'reine', M: 'große', m: 'kleine', A: 'übermäßige', d: 'verminderte'},
    order: 'eine * #',
    perfectOctaves: ['eine Oktave', 'zwei Oktaven'],
    and: 'und',
  },
  it: {
    same: 'suona come scritto',
    lower: 'suona % sotto',
    higher: 'suona % sopra',
    numbers:
      'prima seconda terza quarta quinta sesta settima ottava nona decima undicesima dodicesima tredicesima quattordicesima quindicesima'.split(
        ' ',
      ),
    qualities: {P: 'giusta', M: 'maggiore', m: 'minore', A: 'aumentata', d: 'diminuita'},
    order: 'una # *',
    perfectOctaves: ['un’ottava', 'due ottave'],
    and: 'e',
  },
  es: {
    same: 'suena como está escrito',
    lower: 'suena % más grave',
    higher: 'suena % más agudo',
    numbers:
      'primera segunda tercera cuarta quinta sexta séptima octava novena décima undécima duodécima decimotercera decimocuarta decimoquinta'.split(
        ' ',
      ),
    qualities: {P: 'justa', M: 'mayor', m: 'menor', A: 'aumentada', d: 'disminuida'},
    order: 'una # *',
    perfectOctaves: ['una octava', 'dos octavas'],
    and: 'y',
  },
  nl: {
    same: 'klinkt zoals genoteerd',
    lower: 'klinkt % lager',
    higher: 'klinkt % hoger',
    numbers:
      'prime secunde terts kwart kwint sext septiem octaaf none decime undecime duodecime tredecime kwartdecime kwintdecime'.split(
        ' ',
      ),
    qualities: {P: 'reine', M: 'grote', m: 'kleine', A: 'overmatige', d: 'verminderde'},
    order: 'een * #',
    perfectOctaves: ['een octaaf', 'twee octaven'],
    and: 'en',
  },
}

/** `sounds a major ninth lower`; a formula such as `-AA4` where an interval has no name in words. */
export function soundsIn(interval: Interval, language: Language): string {
  const words = WORDS[language]
  if (interval.diatonic === 0 && interval.chromatic === 0) return words.same
  const direction = interval.diatonic < 0 || interval.chromatic < 0 ? words.lower : words.higher
  return direction.replace('%', () => nameOf(interval, words))
}

function nameOf(interval: Interval, words: IntervalWords): string {
  const formula = formatInterval(interval)
  const [, quality = '', size = ''] = /^[+-]?([PMmAd])(\d+)$/.exec(formula) ?? []
  const [one, two] = words.perfectOctaves
  if (quality === 'P' && size === '8') return one
  if (quality === 'P' && size === '15') return two
  const beyond = Number(size) > words.numbers.length
  const name = words.numbers[Number(size) - (beyond ? 14 : 0) - 1]
  if (name === undefined || !(quality in words.qualities)) return formula
  const said = words.order
    .replace('#', name)
    .replace('*', words.qualities[quality as keyof IntervalWords['qualities']])
  return beyond ? `${two} ${words.and} ${said}` : said
}
