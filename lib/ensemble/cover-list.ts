import {doubledBy} from '../fit/cover.ts'
import type {Cover, Doubled, Seat} from '../fit/cover.ts'
import {reasonsFor, titleOf} from '../fit/cover-reasons.ts'
import type {Effort, Span} from '../fit/effort.ts'
import type {Loss} from '../fit/company.ts'
import {keyName} from '../fit/key-name.ts'
import type {Line} from '../fit/line.ts'
import type {Tier} from '../fit/reach.ts'
import type {Instrument} from '../instruments/instrument.ts'
import type {PartFacts, Position} from '../survey/facts.ts'

/** Who could cover a part, best first. Every value is plain; pitches are sounding, as `Bb1`. */
export interface CoverList {
  readonly format: 'renotate-cover'
  /** Within a version fields may be added, never taken away or given another meaning. */
  readonly version: 1
  readonly part: string
  readonly name: string
  /** What the part was written for. */
  readonly instrument: {readonly id: string; readonly name: string}
  readonly notes: number
  readonly ambitus?: PlainRange
  /** Other parts that sound at least half of it in some octave. */
  readonly doubledBy: readonly (Doubled & {readonly words: string})[]
  readonly covers: readonly CoverEntry[]
}

export interface PlainRange {
  readonly low: string
  readonly high: string
}

/** One who could cover the part. */
export interface CoverEntry {
  /** Instrument, and the player's name where there is one. */
  readonly title: string
  readonly instrument: string
  readonly player?: string
  readonly tier: Tier
  /** The part they play otherwise. */
  readonly part?: string
  /** 100 is nothing lost. */
  readonly score: number
  readonly reasons: readonly string[]
  readonly range?: PlainRange
  readonly comfortable?: PlainRange
  readonly ambitus?: PlainRange
  readonly folds: readonly {
    readonly from: string
    readonly to: string
    readonly octaves: number
    readonly reason: string
  }[]
  readonly unplayable: readonly {
    readonly measure: string
    readonly beat: number
    readonly pitch: string
    readonly advice: string
  }[]
  /** Shares from 0 to 1 inside each range. */
  readonly tiers: readonly {
    readonly tier: Tier
    readonly notes: number
    readonly time: number
    readonly outside: readonly {
      readonly measure: string
      readonly beat: number
      readonly pitch: string
    }[]
  }[]
  readonly effort: Readonly<Record<'stretch' | 'tone' | 'breath', PlainSpan>> & {
    readonly high: number
    readonly limit?: number
    readonly tempoAssumed: boolean
  }
  readonly lacks: readonly string[]
  readonly loss?: Loss
  readonly advice?: {readonly place: number; readonly source: string; readonly remark?: string}
}

export interface PlainSpan {
  readonly seconds: number
  readonly measure?: string
}

export interface CoverSubject {
  readonly name: string
  readonly missing: Instrument
  readonly line: Line
  readonly others: readonly Seat[]
}

/** The ranking as plain values. */
export function toCoverList(
  {name, missing, line, others}: CoverSubject,
  covers: readonly Cover[],
): CoverList {
  const {facts} = line
  const ambitus = rangeOf(
    Math.min(...line.attacks.map(({low}) => low)),
    Math.max(...line.attacks.map(({high}) => high)),
  )
  return {
    format: 'renotate-cover',
    version: 1,
    part: facts.part,
    name,
    instrument: {id: missing.id, name: missing.labels.en.name},
    notes: line.tones.length,
    ...(line.tones.length > 0 && {ambitus}),
    doubledBy: doubledBy(line, others).map((each) => ({
      ...each,
      share: rounded(each.share),
      words: describeDoubling(each),
    })),
    covers: covers.map((cover) => toEntry(line, cover)),
  }
}

function toEntry(line: Line, cover: Cover): CoverEntry {
  const {facts} = line
  const {instrument, player, tier, part, reach, fold, fit, loss, kinship} = cover
  return {
    title: titleOf(cover),
    instrument: instrument.id,
    ...(player !== undefined && {player}),
    tier,
    ...(part !== undefined && {part}),
    score: Math.round(cover.score * 10) / 10,
    reasons: reasonsFor(line, cover),
    range: rangeOf(reach.low, reach.high),
    comfortable: rangeOf(reach.easyLow, reach.easyHigh),
    ...(fit.ambitus && {ambitus: rangeOf(fit.ambitus.low, fit.ambitus.high)}),
    folds: fold.folds.map(({from, to, octaves, reason}) => ({
      from: facts.numbers[from.measure] ?? '',
      to: facts.numbers[to.measure] ?? '',
      octaves,
      reason,
    })),
    unplayable: cover.unplayable.map(({tone, advice}) => ({
      ...spotOf(facts, tone),
      pitch: keyName(tone.midi),
      advice,
    })),
    tiers: fit.tiers.map((each) => ({
      tier: each.tier,
      notes: rounded(each.notes),
      time: rounded(each.time),
      outside: each.outside.map(({tone, key}) => ({...spotOf(facts, tone), pitch: keyName(key)})),
    })),
    effort: toEffort(facts, fit.effort),
    lacks: fit.lacks,
    ...(loss && {
      loss: {
        together: rounded(loss.together),
        essential: rounded(loss.essential),
        free: rounded(loss.free),
      },
    }),
    ...(kinship.advice && {advice: kinship.advice}),
  }
}

/** The lines that people read: what is missing, who doubles it, and the first covers with their reasons. */
export function formatCovers(list: CoverList, count = 10): string[] {
  const {name, part, instrument, notes, ambitus, covers} = list
  const sounds = ambitus ? `, sounding ${ambitus.low} to ${ambitus.high}` : ''
  const lines = [`${name || part} (${part}), for ${instrument.name}: ${notes} notes${sounds}`]
  for (const each of list.doubledBy) lines.push(`  ${each.name} (${each.part}) ${each.words}`)
  covers.slice(0, count).forEach(({title, part: own, score, reasons}, index) => {
    const plays = own === undefined ? '' : ` (plays ${own})`
    lines.push(`${String(index + 1).padStart(2)}. ${title}${plays}: ${Math.round(score)}`)
    lines.push(`    ${reasons.join('; ')}`)
  })
  if (covers.length > count) lines.push(`    and ${covers.length - count} more`)
  if (covers.length === 0) lines.push('nobody at hand can cover it')
  return lines
}

function describeDoubling({share, octaves}: Doubled): string {
  const where =
    octaves === 0
      ? 'in unison'
      : `${Math.abs(octaves) === 1 ? 'an octave' : `${Math.abs(octaves)} octaves`} ${octaves > 0 ? 'higher' : 'lower'}`
  return share === 1
    ? `doubles it throughout, ${where}`
    : `doubles ${Math.round(100 * share)} % of it, mostly ${where}`
}

function toEffort(facts: PartFacts, {stretch, tone, breath, high, limit, assumed}: Effort) {
  const plain = ({seconds, from}: Span): PlainSpan => ({
    seconds: Math.round(seconds * 10) / 10,
    ...(from && {measure: facts.numbers[from.measure] ?? ''}),
  })
  return {
    stretch: plain(stretch),
    tone: plain(tone),
    breath: plain(breath),
    high: rounded(high),
    ...(limit !== undefined && {limit}),
    tempoAssumed: assumed,
  }
}

function spotOf(facts: PartFacts, {measure, onset}: Position) {
  return {measure: facts.numbers[measure] ?? '', beat: rounded(onset + 1)}
}

function rangeOf(low: number, high: number): PlainRange {
  return {low: keyName(low), high: keyName(high)}
}

function rounded(share: number): number {
  return Math.round(share * 1000) / 1000
}
