import type {Language} from '../instruments/instrument.ts'
import type {LabelOptions} from '../instruments/label.ts'
import type {Header} from '../musicxml/header.ts'
import type {Belief} from './believe.ts'
import {believe} from './believe.ts'
import {readConcertKeys} from './concert-keys.ts'
import type {KeyRegion} from './concert-keys.ts'
import {toBelieved} from './explain.ts'
import type {Believed} from './explain.ts'
import type {Doubt} from './doubts.ts'
import {readDoubts} from './doubts.ts'
import type {PartFacts} from './facts.ts'
import {identify, UNKNOWN} from './identify.ts'
import type {Asked} from './identify.ts'
import {readClock, readLines} from './line.ts'
import type {Line} from './line.ts'
import {playingReader} from './playing.ts'
import type {Playing} from './playing.ts'
import {formatClef} from '../staff/clef.ts'
import {readDeclared, readProfile} from './profile.ts'
import type {DeclaredPassage, Profile} from './profile.ts'

/** What a score asks for, part by part. Every value is plain: numbers, and texts as people write them. */
export interface Survey {
  readonly format: 'renotate-survey'
  /** Within a version fields may be added, never taken away or given another meaning. */
  readonly version: 1
  readonly title: string
  readonly measures: number
  /** Whether the file says of itself that it is at concert pitch. */
  readonly concertScore: boolean
  /** The keys at concert pitch that most parts agree on, from the measure on in which each begins. */
  readonly keys: readonly KeyRegion[]
  /** In the order of the score. */
  readonly parts: readonly PartSurvey[]
}

/** One part: who is asked for, how it is notated, what it sounds, what it uses. */
export interface PartSurvey extends Profile, Players, Playing {
  readonly id: string
  readonly name: string
  /** Absent where neither the name nor the music tells. */
  readonly instrument?: InstrumentGuess & {readonly candidates: readonly InstrumentGuess[]}
  /** The transpositions that the file declares, one for every change; the first holds from the beginning. */
  readonly declared: readonly DeclaredPassage[]
  /** What the part is believed to sound; absent for parts without pitches. */
  readonly believed?: Believed
  /** Where the part declares several transpositions: what is believed of the notes under each of the others. */
  readonly others: readonly Believed[]
  readonly doubts: readonly Doubt[]
}

/** What the name of a part says of its players; absent is what it does not say. */
export interface Players {
  readonly players?: number
  /** `1. 2.` is [1, 2]. */
  readonly desks?: readonly number[]
  readonly optional?: boolean
  /** The clef that the name announces: `clé de fa` is F4. */
  readonly clefNamed?: string
  readonly language?: Language
  /** What the same players also take up. */
  readonly doubles?: readonly string[]
  /** Who may play instead. */
  readonly alternatives?: readonly string[]
}

export interface InstrumentGuess {
  readonly id: string
  /** In English. */
  readonly name: string
  /** From 0 to 1. */
  readonly confidence: number
  /** What the name has to do with it. */
  readonly reason: string
}

/** What a survey is made of: the beliefs besides what is told of them. */
export interface Surveyed {
  readonly survey: Survey
  readonly beliefs: readonly Belief[]
}

/** Surveys a score of which the facts of all parts are known, in the order of the score. */
export function surveyScore(
  header: Header,
  facts: readonly PartFacts[],
  options: LabelOptions = {},
): Surveyed {
  const starts = readClock(facts)
  const names = facts.map(({part}) => {
    const entry = header.parts.find(({id}) => id === part)
    return entry?.name || entry?.instruments[0]?.name || entry?.abbreviation || ''
  })
  const asked = identify(names, options)
  const lines = facts.flatMap((part, index) => readLines(part, index, starts))
  const beliefs = believe(
    lines,
    lines.map(({index}) => asked[index] ?? UNKNOWN),
    {starts, concertScore: header.concertScore},
  )
  const readPlaying = playingReader(options)
  const parts = facts.map((part, index) => {
    const own = beliefs.filter(({line}) => line.index === index)
    const playing = readPlaying(part)
    return surveyPart(header, part, asked[index] ?? UNKNOWN, {own, all: beliefs, playing})
  })
  const survey: Survey = {
    format: 'renotate-survey',
    version: 1,
    title: header.title,
    measures: starts.length - 1,
    concertScore: header.concertScore,
    keys: readConcertKeys(beliefs, facts[0]?.numbers ?? []),
    parts,
  }
  return {survey, beliefs}
}

function surveyPart(
  header: Header,
  facts: PartFacts,
  asked: Asked,
  {
    own,
    all,
    playing,
  }: {
    readonly own: readonly Belief[]
    readonly all: readonly Belief[]
    readonly playing: Playing
  },
): PartSurvey {
  const guesses = guessInstruments(asked, own[0])
  const [instrument] = guesses
  const nameOf = ({part}: Line): string =>
    header.parts.find(({id}) => id === part)?.name || `part ${part}`
  const told = own.flatMap((belief) => toBelieved(belief, all, nameOf) ?? [])
  const [believed, ...others] = told
  return {
    id: facts.part,
    name: header.parts.find(({id}) => id === facts.part)?.name ?? '',
    ...(instrument && {instrument: {...instrument, candidates: guesses}}),
    ...playersOf(asked),
    declared: readDeclared(facts),
    ...(believed && {believed}),
    others,
    ...readProfile(facts, own),
    ...playing,
    doubts: own.flatMap((belief, index) =>
      readDoubts(belief, told[index], facts, header.concertScore),
    ),
  }
}

/** What the name says of the players. */
function playersOf({reading}: Asked): Players {
  if (!reading) return {}
  const {players, numbers, optional, clef, languages, doublings, alternatives} = reading
  const language = languages[0]
  return {
    ...(players !== undefined && {players}),
    ...(numbers.length > 0 && {desks: numbers}),
    ...(optional && {optional}),
    ...(clef && {clefNamed: formatClef(clef)}),
    ...(language && language.confidence > 0.5 && {language: language.language}),
    ...(doublings.length > 0 && {doubles: doublings.map((each) => each.reading.label)}),
    ...(alternatives.length > 0 && {alternatives: alternatives.map(({label}) => label)}),
  }
}

/** The instruments that the name allows, by how well the music agrees. */
function guessInstruments(asked: Asked, belief: Belief | undefined): readonly InstrumentGuess[] {
  const weights = new Map<string, InstrumentGuess>()
  for (const {instrument, confidence, reason} of asked.candidates) {
    const {id, labels} = instrument
    weights.set(id, {id, name: labels.en.name, confidence: belief ? 0 : confidence, reason})
  }
  for (const {hypothesis, probability} of belief?.judged ?? []) {
    const sum = hypothesis.instruments.reduce((total, {prior}) => total + Math.exp(prior), 0)
    for (const {instrument, prior} of hypothesis.instruments) {
      const known = weights.get(instrument.id)
      const confidence = (known?.confidence ?? 0) + (probability * Math.exp(prior)) / sum
      const {id, labels} = instrument
      weights.set(id, {
        id,
        name: labels.en.name,
        reason: known?.reason ?? 'an older instrument of the family',
        confidence,
      })
    }
  }
  return [...weights.values()]
    .filter(({confidence}) => confidence >= 0.005)
    .toSorted((a, b) => b.confidence - a.confidence)
    .map((guess) => ({...guess, confidence: rounded(guess.confidence)}))
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000
}
