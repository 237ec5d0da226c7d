import {scoreError} from './diagnostic.ts'
import type {Report} from './diagnostic.ts'
import {catalogueCandidates, rosterCandidates} from './ensemble/candidates.ts'
import type {KnownPart} from './ensemble/candidates.ts'
import {coverLabel} from './ensemble/cover-label.ts'
import {toCoverList} from './ensemble/cover-list.ts'
import type {CoverList} from './ensemble/cover-list.ts'
import type {Change} from './ensemble/change.ts'
import {parseRoster} from './ensemble/roster.ts'
import type {Player, Roster} from './ensemble/roster.ts'
import {clockOf} from './fit/clock.ts'
import {rankCovers} from './fit/cover.ts'
import type {Cover, Seat} from './fit/cover.ts'
import {lineOf} from './fit/line.ts'
import type {Line} from './fit/line.ts'
import type {Tier} from './fit/reach.ts'
import {instrumentById, instruments} from './instruments/instrument.ts'
import type {Instrument} from './instruments/instrument.ts'
import {languageOfName, languageOfNames} from './instruments/part-name.ts'
import type {Notation} from './instruments/notation.ts'
import type {Source} from './musicxml/source.ts'
import type {PartJob} from './plan/job.ts'
import {findPart, openScore, readFacts, readingOf, rewrite} from './renotate.ts'
import {surveyScore} from './survey/survey.ts'
import type {Survey} from './survey/survey.ts'
import {readBelieved} from './surveying.ts'
import {resolveInstrument, resolveNotation} from './verbs.ts'

/** Whose part is to be covered, and by whom. */
export interface CoverOptions {
  /** Id, name, or number in the score from 1. */
  readonly part: string
  /** What the part was written for, where its name does not tell. */
  readonly as?: string | Instrument | undefined
  /** What the part is written in, where the file is not to be believed. `believed`: what `survey` finds. */
  readonly from?: string | Notation | undefined
  /** The players at hand: a roster, or the text of a roster file. The whole catalogue when absent. */
  readonly roster?: string | Roster | undefined
  /** How far the players of the catalogue go; a roster says it of each. Default `tutti`. */
  readonly tier?: Tier | undefined
  readonly report?: Report | undefined
}

/** A cover part: what is needed to write it. */
export interface CoverPartOptions extends CoverOptions {
  /** Which of the covers, from 1. Default 1. */
  readonly place?: number | undefined
  /** Notes that the player cannot reach in any octave become cues; else they stay, and are told. */
  readonly drop?: boolean | undefined
  /**
   * Woven into the player's own part: they play the voice where they rest and where others double them, and their own
   * music where nobody else has it; what is not played is printed small.
   */
  readonly woven?: boolean | undefined
  /** Is told which parts belong together, before and after: a woven part belongs to two. */
  readonly paired?: ((before: string, after: string) => void) | undefined
  readonly changed?: ((change: Change) => void) | undefined
}

/**
 * Who could cover a part, best first, with reasons. Throws `cover/unknown-instrument` when neither the part's name nor
 * `as` says what it was written for, `cover/no-notes` for a part without pitches, and as `parseRoster` and
 * `renotatePart` do.
 *
 * ```ts
 * const {covers} = await coverPart(source, {part: 'P9'})
 * for (const {title, reasons} of covers.slice(0, 3)) console.log(title, reasons.join('; '))
 * ```
 */
export async function coverPart(source: Source, options: CoverOptions): Promise<CoverList> {
  const ranking = await rank(source, options)
  return toCoverList(ranking, ranking.covers)
}

/**
 * The part as one of the covers plays it: folded for their range, named after both instruments; a part of its own or, with
 * `woven`, with their own music. In chunks. Throws `cover/no-such`, `cover/no-own-part`, and as `coverPart` does.
 */
export async function* writeCoverPart(
  source: Source,
  options: CoverPartOptions,
): AsyncGenerator<Uint8Array> {
  const ranking = await rank(source, options)
  const {covers, missing, roster, line, name, notation} = ranking
  const {place = 1, drop, report, changed} = options
  const cover = covers[place - 1]
  if (!cover)
    throw scoreError('cover/no-such', `there are ${covers.length} covers, none is number ${place}`)
  const player = roster?.players.find((each) => each.name === cover.player)
  const names = ranking.known.map((each) => each.name)
  const language = roster?.language ?? languageOfName(name) ?? languageOfNames(names)
  const job: PartJob = {
    for: cover.instrument,
    to: player?.notations.find(({instruments: own}) => own.includes(cover.instrument.id)),
    name: coverLabel(cover.instrument, missing, language),
    covers: {instrument: missing, name},
    language,
  }
  const score = await openScore(source)
  if (options.woven) {
    const own = ownPartOf(ranking, cover, player)
    options.paired?.(own, own)
    options.paired?.(line.facts.part, own)
    const request = {part: line.facts.part, instrument: cover.instrument, tier: cover.tier, drop}
    const joins = new Map([[own, {cover: {...request, from: notation, when: 'always' as const}}]])
    const parts = new Map([[own, job]])
    yield* rewrite(score, {parts, others: 'drop', joins}, report ?? QUIET, changed)
    return
  }
  options.paired?.(line.facts.part, line.facts.part)
  const parts = new Map([[line.facts.part, {...job, fold: cover.tier, drop, from: notation}]])
  yield* rewrite(score, {parts, others: 'drop'}, report ?? QUIET, changed)
}

const QUIET: Report = () => {}

/** The part that a cover is woven into. Throws `cover/no-own-part`. */
function ownPartOf(
  {known, name}: Ranking,
  {instrument, part}: Cover,
  player: Player | undefined,
): string {
  const own = known.find((each) => each.part === part)
  const who = player?.name ?? instrument.labels.en.name
  if (!own) {
    throw scoreError(
      'cover/no-own-part',
      `${who} has no part in this score that ${name} could be woven into; a part of its own can be written`,
    )
  }
  if (player && player.instrument.id !== instrument.id) {
    throw scoreError(
      'cover/no-own-part',
      `${who} plays ${own.name} on the ${player.instrument.labels.en.name}, not on the ${instrument.labels.en.name}; a part of its own can be written`,
      {part: own.part},
    )
  }
  return own.part
}

interface Ranking {
  readonly name: string
  readonly known: readonly KnownPart[]
  readonly missing: Instrument
  readonly line: Line
  readonly others: readonly Seat[]
  readonly covers: readonly Cover[]
  readonly roster: Roster | undefined
  /** What the part is written in, if not what it declares. */
  readonly notation: Notation | undefined
}

async function rank(source: Source, options: CoverOptions): Promise<Ranking> {
  const report = options.report ?? (() => {})
  const score = await openScore(source)
  const part = findPart(score.header, options.part)
  const roster =
    typeof options.roster === 'string' ? await parseRoster(options.roster) : options.roster
  const ids = score.header.parts.map(({id}) => id)
  const notation = await notationOf(source, part.id, options.from, report)
  const reading = notation && readingOf(notation)
  const readings = ids.map((id) => [id, id === part.id ? reading : undefined] as const)
  const facts = await readFacts(score, new Map(readings), report)
  const {survey} = surveyScore(
    score.header,
    ids.flatMap((id) => facts.get(id) ?? []),
  )
  if (options.from === undefined) tellDoubts(survey, part.id, report)
  const known = survey.parts.map(({id, name, instrument}): KnownPart => {
    const guess =
      instrument && instrument.confidence >= SURE ? instrumentById(instrument.id) : undefined
    return {part: id, name: name || id, ...(guess && {instrument: guess})}
  })
  const missing =
    options.as === undefined
      ? known.find(({part: id}) => id === part.id)?.instrument
      : await resolveInstrument(options.as)
  if (!missing) {
    throw scoreError(
      'cover/unknown-instrument',
      `what ${part.name || part.id} was written for is not known; say it with as`,
      {part: part.id},
    )
  }
  const clock = clockOf(facts.values())
  const seats = known.flatMap(({part: id, name}): Seat[] => {
    const own = facts.get(id)
    return own ? [{part: id, name, line: lineOf(own, clock)}] : []
  })
  const line = seats.find(({part: id}) => id === part.id)?.line
  if (!line || line.tones.length === 0)
    throw scoreError('cover/no-notes', `${part.name || part.id} has no pitched notes to cover`, {
      part: part.id,
    })
  const others = seats.filter(({part: id, line: other}) => id !== part.id && other.tones.length > 0)
  const elsewhere = known.filter(({part: id}) => id !== part.id)
  const candidates = roster
    ? rosterCandidates(roster, part.id, known)
    : catalogueCandidates(instruments, missing, options.tier ?? 'tutti', elsewhere)
  const covers = rankCovers({line, missing, others, candidates, byId: instrumentById})
  return {name: part.name, known, missing, line, others, covers, roster, notation}
}

async function notationOf(
  source: Source,
  part: string,
  from: CoverOptions['from'],
  report: Report,
): Promise<Notation | undefined> {
  if (from === undefined) return undefined
  if (from === 'believed') return (await readBelieved(source, part, report)).get(part)
  return resolveNotation(from)
}

/** A part that is read wrongly is covered wrongly: whoever asks has to know what is doubtful. */
function tellDoubts({parts}: Survey, id: string, report: Report): void {
  for (const {message, at} of parts.find((each) => each.id === id)?.doubts ?? [])
    report({
      code: 'cover/doubt',
      severity: 'warning',
      message: `${message}; say with from what is right`,
      at,
    })
}

/** What the survey must be sure of to say who sits where. */
const SURE = 0.34
