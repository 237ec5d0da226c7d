import type {Instrument, Language} from '../instruments/instrument.ts'
import type {Notation} from '../instruments/notation.ts'
import type {StateFact} from '../survey/facts.ts'
import type {Register} from './register.ts'
import type {SpellingPolicy} from './spelling.ts'

/** How key signatures of the target are chosen. */
export interface KeyPolicy {
  /** The most sharps or flats that may stand in a signature, 5 to 7. */
  readonly limit: number
  /** Which of two enharmonic keys to take where both are within the limit. */
  readonly prefer: 'fewest' | 'sharps' | 'flats'
  /** Whether the part prints signatures: `custom` is as the target's parts usually do. */
  readonly signature: 'custom' | 'print' | 'omit'
}

/** Band players get no signature beyond six signs. */
export const BAND_LIMIT = 6

export const DEFAULT_KEYS: KeyPolicy = {limit: 7, prefer: 'fewest', signature: 'custom'}

/** Ledger lines that the reader accepts before a clef changes, and how dear a change is, in ledger lines. */
export interface ClefPolicy {
  readonly above: number
  readonly below: number
  readonly change: number
}

/** renotation-rules C2: three lines above and below for most readers; the price of a change is ours. */
export const DEFAULT_CLEFS: ClefPolicy = {above: 3, below: 3, change: 6}

/**
 * Courtesy accidentals. `keep`: where the source has them. `add`: besides, by one rule for the whole set: after an alteration in
 * the measure before or in another octave. `none`: only an editor's signs and those in brackets stay.
 */
export type CourtesyPolicy = 'keep' | 'add' | 'none'

/**
 * What is to become of one part. Nothing set: it stays as it is. `from` overrides what the file declares; `to` is the
 * notation wanted, `for` the instrument; an instrument alone means its modern notation.
 */
export interface PartJob {
  readonly for?: Instrument | undefined
  readonly to?: Notation | Concert | DeclaredNotation | ForPartNotation | undefined
  readonly from?: Notation | undefined
  readonly keys?: Partial<KeyPolicy> | undefined
  /** Report every choice of a signature beside its alternative. */
  readonly explain?: boolean | undefined
  readonly clefs?: Partial<ClefPolicy> | undefined
  /** Phrases that lie badly for a player of that tier are moved by octaves. Needs `for`. */
  readonly fold?: 'pro' | 'tutti' | 'student' | undefined
  /** With `fold`: notes that no octave saves become cues, and are not played. */
  readonly drop?: boolean | undefined
  /** Octaves by which phrases are moved as `fold` has them decided, for a player whose range ends before the music does. */
  readonly registers?: readonly Register[] | undefined
  /** Pitched notes that nobody plays, by their place in the part from 0: they are printed as cues. */
  readonly dropped?: ReadonlySet<number> | undefined
  readonly spelling?: SpellingPolicy | undefined
  readonly courtesy?: CourtesyPolicy | undefined
  /** Marks that mean nothing to the instrument: translated, left out or kept by table, or all kept. Needs `for`. */
  readonly techniques?: 'translate' | 'keep' | undefined
  /** Octave lines: `custom` is as the instrument's players read them. */
  readonly octaveLines?: 'custom' | 'keep' | 'remove' | undefined
  /** Line and page breaks, widths and distances, true of the score and not of a part printed alone. */
  readonly layout?: 'keep' | 'drop' | undefined
  /** The language of the part's name; as the source's name is, where that can be told, or English. */
  readonly language?: Language | undefined
  /** The part stands in for another: its heading says for which, and what became of it. Needs `for`. */
  readonly covers?: CoveredPart | undefined
  /** What the part is called, when that is not the instrument's name. */
  readonly name?: string | undefined
}

/** What the heading of a cover part tells. */
export interface CoveredPart {
  /** What the part was written for that is covered. */
  readonly instrument: Instrument
  /** What it is called in the score. */
  readonly name: string
}

/**
 * Concert pitch as in a C score: instruments that sound whole octaves away stay so (`customary`), or nothing does.
 */
export interface Concert {
  readonly kind: 'concert'
  readonly octaves: 'customary' | 'sounding'
}

/**
 * Exactly the notation that another form of the part declares: its clefs, keys and transpositions, place by place.
 * With it a re-notated part comes back to where it was.
 */
export interface DeclaredNotation {
  readonly kind: 'declared'
  readonly states: readonly StateFact[]
}

/** The notation that a concert score declares for the part (MusicXML 4.0, element `for-part`). */
export interface ForPartNotation {
  readonly kind: 'for-part'
}

/** Whether a job asks for anything at all. */
export function isIdle(job: PartJob): boolean {
  const moved = job.registers?.some(({octaves}) => octaves !== 0)
  const redrawn = job.octaveLines === 'remove' || job.layout === 'drop'
  const plain = !job.for && !job.to && !job.from && job.name === undefined
  return plain && !moved && !redrawn && !job.dropped?.size
}
