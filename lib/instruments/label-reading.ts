import type {Clef} from '../staff/clef.ts'
import type {Language} from './instrument.ts'
import type {KeyOctave} from './label-key.ts'
import type {Candidate} from './label-match.ts'

export type TokenRole =
  | 'instrument'
  | 'key'
  | 'key-octave'
  | 'number'
  | 'players'
  | 'clef'
  | 'optional'
  | 'rank'
  | 'cover'
  | 'connector'
  | 'ignored'
  | 'unknown'

/** A word of a label and what it was taken for. `start` is an offset into the label. */
export interface LabelToken {
  readonly text: string
  readonly start: number
  readonly role: TokenRole
  /** The key, number, clef or instrument's id that it decided. */
  readonly meaning?: string
}

/** What the same players also take up. `numbers` are the desks that do; none when the label does not say. */
export interface Doubling {
  readonly numbers: readonly number[]
  readonly reading: LabelReading
}

/** What a score label says. */
export interface LabelReading {
  readonly label: string
  /** The instruments that it may mean, likeliest first; none when no word names one. */
  readonly instruments: readonly Candidate[]
  /** The key in the label, as in `Instrument.builtIn`: `Bb`, `F`, `F#`. */
  readonly key?: string
  /** Further keys: named besides (`in B und A`), or what the word may mean as well (`B`). */
  readonly otherKeys: readonly string[]
  readonly keyOctave?: KeyOctave
  /** Desks or parts: `I. II.` is 1 and 2, `1-3` is 1, 2 and 3. */
  readonly numbers: readonly number[]
  /** How many play, if said: `4 Hörner`, `à 2`. */
  readonly players?: number
  readonly rank?: 'solo' | 'ripieno'
  readonly clef?: Clef
  /** `ad lib.`, `à défaut`, `opt.` */
  readonly optional: boolean
  /** A part for somebody else than the composer asked for: `Ersatz`, `cover part`. */
  readonly cover: boolean
  /** Others who may play instead: after `ou`, `oder`, `or`, `/`. */
  readonly alternatives: readonly LabelReading[]
  /** Others on the same staff: after `et`, `und`, `&`. */
  readonly together: readonly LabelReading[]
  /** Those in whose place the part stands: after `à défaut de`, `statt`. */
  readonly insteadOf: readonly LabelReading[]
  readonly doublings: readonly Doubling[]
  /** The languages that it may be in, likeliest first; confidences add up to 1. */
  readonly languages: readonly {readonly language: Language; readonly confidence: number}[]
  readonly tokens: readonly LabelToken[]
}
