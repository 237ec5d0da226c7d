import {scoreError} from './diagnostic.ts'
import type {Report} from './diagnostic.ts'
import type {Change} from './ensemble/change.ts'
import type {Tier} from './fit/reach.ts'
import type {Search} from './instruments/find.ts'
import {instrumentById} from './instruments/instrument.ts'
import type {Instrument, Language} from './instruments/instrument.ts'
import {intervalFor, notationById} from './instruments/notation.ts'
import type {Notation} from './instruments/notation.ts'
import {soundingNotes as notesOf} from './musicxml/sounding.ts'
import type {SoundingNote} from './musicxml/sounding.ts'
import type {Source} from './musicxml/source.ts'
import type {ClefPolicy, CourtesyPolicy, ForPartNotation, KeyPolicy, PartJob} from './plan/job.ts'
import type {SpellingPolicy} from './plan/spelling.ts'
import type {Proof, ProveOptions as CompareOptions} from './proof/compare.ts'
import {TREBLE, parseClef} from './staff/clef.ts'
import {checkScore, findPart, openScore, readMeasures, readingOf} from './score.ts'
import {rewrite} from './renotate.ts'
import type {Job, Score} from './renotate.ts'

/** How to re-notate one part. Words are looked up: an id or a name in six languages. */
export interface PartOptions {
  /** Id, name, or number in the score from 1. */
  readonly part: string
  /** The instrument whose player gets the part; its modern notation, unless `to` says otherwise. */
  readonly for?: string | Instrument | undefined
  /** The notation wanted; `for-part`: the one that a concert score declares for the part. */
  readonly to?: string | Notation | undefined
  /**
   * What the part is written in, where the file does not say or says wrong. `believed`: what `survey` finds; the
   * decision is reported.
   */
  readonly from?: string | Notation | undefined
  /** The name printed on the part, instead of the instrument's. */
  readonly name?: string | undefined
  readonly keys?: Partial<KeyPolicy> | undefined
  /** Report every choice of a signature beside its alternative. */
  readonly explain?: boolean | undefined
  readonly spelling?: SpellingPolicy | undefined
  readonly courtesy?: CourtesyPolicy | undefined
  readonly clefs?: Partial<ClefPolicy> | undefined
  /** Marks that mean nothing to the instrument: `translate` (also: leaves out) by table, or `keep`, and told. */
  readonly techniques?: PartJob['techniques']
  /** Lines such as 8va: `custom` is as players of `for` read them. */
  readonly octaveLines?: PartJob['octaveLines']
  /** `drop`: breaks, widths and distances of the score do not go into the part. */
  readonly layout?: PartJob['layout']
  /** The language of the part's name; as the source's, where that can be told, else English. */
  readonly language?: Language | undefined
  /** Moves phrases by octaves where they lie badly for a player of that tier of `for`; `true` is `tutti`. */
  readonly fold?: boolean | Tier | undefined
  /** With `fold`: notes that no octave saves become cues and are not played; else they stay, and are told. */
  readonly drop?: boolean | undefined
  /**
   * Cues before entries after long rests, from whoever is best heard there: small, silent, in the reader's key and clef. `true`:
   * after 8 measures' rest.
   */
  readonly cues?: boolean | CueOptions | undefined
  /** A part (id, name or number) whose music is added small to the rests, to be played where its own player is missing. */
  readonly crossCues?: string | undefined
  readonly report?: Report | undefined
  /** Is told of every passage that sounds otherwise on purpose, as `ProveOptions.intended` wants it. */
  readonly changed?: ((change: Change) => void) | undefined
}

/** When cues are wanted, and from whom. */
export interface CueOptions {
  /** Measures of rest from which an entry gets a cue, 8 unless said; half of it where tempo or metre change. */
  readonly rest?: number | undefined
  /** The length that a cue should have, in measures: 2 unless said, 4 at most. */
  readonly length?: number | undefined
  /** Parts (ids, names or numbers) that cues may be taken from; all when absent. */
  readonly from?: readonly string[] | undefined
}

export interface ConcertOptions {
  /** `customary`: who sounds whole octaves away stays so, as in a C score; `sounding`: nobody does. */
  readonly octaves?: 'customary' | 'sounding' | undefined
  readonly report?: Report | undefined
}

export interface SoundingOptions {
  /** Only this part: id, name, or number in the score from 1. */
  readonly part?: string | undefined
  readonly from?: string | Notation | undefined
  readonly report?: Report | undefined
}

export interface ProveOptions extends Omit<CompareOptions, 'reading'> {
  /** What BEFORE is written in, where the file is not to be believed. `believed`: what `survey` finds, part by part. */
  readonly from?: string | Notation | undefined
}

const QUIET: Report = () => {}

/**
 * One part as a score of its own, re-notated as asked; asked for nothing it keeps every line of its source. Gives
 * UTF-8, or whatever encoding the source has, in chunks. Throws `ScoreError` before the first chunk: for a faulty score,
 * an unknown part (`part/unknown`), instrument or notation (`instrument/unknown`, `notation/unknown`).
 *
 * ```ts
 * for await (const bytes of renotatePart(source, {part: 'P9', for: 'tuba'})) await file.write(bytes)
 * ```
 */
export async function* renotatePart(
  source: Source,
  options: PartOptions,
): AsyncGenerator<Uint8Array> {
  const {from, ...others} = options
  const asked = await jobOf(from === 'believed' ? others : options)
  const score = await openScore(source)
  const part = findPart(score.header, options.part)
  const job = from === 'believed' ? await asBelieved(asked, source, part.id, options.report) : asked
  const joins = joinsOf(score, part.id, job, options)
  const whole: Job = {parts: new Map([[part.id, job]]), others: 'drop', joins}
  yield* rewrite(score, whole, options.report ?? QUIET, options.changed)
}

/** The whole score at concert pitch. Throws as `renotatePart` does. */
export async function* concertScore(
  source: Source,
  options: ConcertOptions = {},
): AsyncGenerator<Uint8Array> {
  const score = await openScore(source)
  const job: PartJob = {to: {kind: 'concert', octaves: options.octaves ?? 'customary'}}
  const parts = new Map(score.header.parts.map(({id}) => [id, job]))
  yield* rewrite(score, {parts, others: 'keep'}, options.report ?? QUIET)
}

/** Every pitched note as it sounds, part by part (timewise scores: measure by measure). */
export async function* soundingNotes(
  source: Source,
  options: SoundingOptions = {},
): AsyncGenerator<SoundingNote> {
  const score = await openScore(source)
  const wanted = options.part === undefined ? undefined : findPart(score.header, options.part).id
  const from = options.from === undefined ? undefined : await resolveNotation(options.from)
  await checkScore(score)
  const isWanted = (part: string): boolean => wanted === undefined || part === wanted
  const reading = from && readingOf(from)
  for await (const measure of readMeasures(score, isWanted, reading, options.report ?? QUIET)) {
    yield* notesOf(measure)
  }
}

/**
 * Proves that AFTER sounds what BEFORE sounds, or tells where it does not, by a reader that shares nothing with the
 * rewriter. Throws `proof/malformed` when a source is no score that can be read, `notation/unknown` for `from`.
 */
export async function prove(
  before: Source,
  after: Source,
  options: ProveOptions = {},
): Promise<Proof> {
  const {from, ...others} = options
  const {prove: compare} = await import('./proof/compare.ts')
  if (from === undefined) return compare(before, after, others)
  const believed = from === 'believed' ? await believedOf(before, undefined, QUIET) : undefined
  const known = believed ? undefined : await resolveNotation(from)
  return compare(before, after, {
    ...others,
    reading: (part, clef) => {
      const notation = believed ? believed.get(part) : known
      const stated = clef ? parseClef(`${clef.sign}${clef.line}(${clef.octaveChange})`) : TREBLE
      return notation && stated && intervalFor(notation, stated)
    },
  })
}

/**
 * The instrument meant by an id or by words. Throws `instrument/unknown` or `instrument/ambiguous`, naming those that
 * come near. The names of the catalogue are loaded only when an id is not enough.
 */
export async function resolveInstrument(words: string | Instrument): Promise<Instrument> {
  if (typeof words !== 'string') return words
  const byId = instrumentById(words)
  if (byId) return byId
  const {findInstrument} = await import('./instruments/find.ts')
  return resolve(
    'instrument',
    words,
    findInstrument(words),
    ({id, labels}) => `${id} (${labels.en.name})`,
  )
}

/**
 * The notation meant by an id or by words. Throws `notation/unknown` or `notation/ambiguous`, naming those that come
 * near.
 */
export async function resolveNotation(words: string | Notation): Promise<Notation> {
  if (typeof words !== 'string') return words
  const byId = notationById(words)
  if (byId) return byId
  const {findNotation} = await import('./instruments/find.ts')
  return resolve('notation', words, findNotation(words), ({id}) => id)
}

/** What is to go into a part. Throws `part/unknown`, `cues/no-player`, `cues/value`. */
function joinsOf(
  {header}: Score,
  part: string,
  job: PartJob,
  {cues, crossCues, drop}: PartOptions,
): Job['joins'] {
  if (!cues && crossCues === undefined) return undefined
  const asked = typeof cues === 'object' ? cues : {}
  for (const value of [asked.rest, asked.length])
    if (value !== undefined && !(Number.isInteger(value) && value > 0))
      throw scoreError('cues/value', `a number of measures is whole and from 1, not ${value}`)
  const {rest, length, from} = asked
  const cover = crossCues === undefined ? undefined : findPart(header, crossCues).id
  if (cover === part) throw scoreError('cues/value', 'a part has no cross-cues of itself', {part})
  if (cover !== undefined && !job.for) {
    throw scoreError('cues/no-player', 'cross-cues need for: who is to play them?', {part})
  }
  return new Map([
    [
      part,
      {
        ...(cues && {
          cues: {
            ...(rest !== undefined && {rest}),
            ...(length !== undefined && {length}),
            sources: from?.map((each) => findPart(header, each).id),
          },
        }),
        ...(cover !== undefined &&
          job.for && {
            cover: {
              part: cover,
              instrument: job.for,
              tier: job.fold ?? 'tutti',
              drop,
              when: 'absent' as const,
            },
          }),
      },
    ],
  ])
}

/** `for-part` is no notation of the catalogue: it is what a concert score declares for the part. */
async function resolveTarget(to: string | Notation): Promise<Notation | ForPartNotation> {
  return to === 'for-part' ? {kind: 'for-part'} : resolveNotation(to)
}

async function jobOf(options: PartOptions): Promise<PartJob> {
  return {
    ...(options.for !== undefined && {for: await resolveInstrument(options.for)}),
    ...(options.to !== undefined && {to: await resolveTarget(options.to)}),
    ...(options.from !== undefined && {from: await resolveNotation(options.from)}),
    name: options.name,
    keys: options.keys,
    explain: options.explain,
    clefs: options.clefs,
    spelling: options.spelling,
    courtesy: options.courtesy,
    techniques: options.techniques,
    octaveLines: options.octaveLines,
    layout: options.layout,
    language: options.language,
    fold: options.fold === true ? 'tutti' : options.fold || undefined,
    drop: options.drop,
  }
}

/** The job, reading the part as the survey believes. */
async function asBelieved(
  job: PartJob,
  source: Source,
  part: string,
  report: Report | undefined,
): Promise<PartJob> {
  const from = (await believedOf(source, part, report ?? QUIET)).get(part)
  return from ? {...job, from} : job
}

async function believedOf(
  source: Source,
  part: string | undefined,
  report: Report,
): Promise<ReadonlyMap<string, Notation>> {
  const {readBelieved} = await import('./surveying.ts')
  return readBelieved(source, part, report)
}

function resolve<Value>(
  kind: 'instrument' | 'notation',
  words: string,
  search: Search<Value>,
  describe: (value: Value) => string,
): Value {
  if (search.kind === 'one') return search.found
  const list = (values: readonly Value[]): string => values.slice(0, 5).map(describe).join(', ')
  if (search.kind === 'several') {
    throw scoreError(
      `${kind}/ambiguous`,
      `“${words}” may be one of several: ${list(search.candidates)}`,
    )
  }
  const near = search.nearest.length > 0 ? `; near it are ${list(search.nearest)}` : ''
  throw scoreError(`${kind}/unknown`, `there is no ${kind} “${words}”${near}`)
}
