import {measuresOf} from '../fit/fold.ts'
import type {Attack, Line} from '../fit/line.ts'
import {midiOf} from '../pitch/pitch.ts'
import {NOTE, measureOf, placeIn, soundingAt} from '../survey/facts.ts'
import type {PartFacts, Position} from '../survey/facts.ts'
import {spotOf} from './change.ts'
import type {Change, JoinedPassage} from './change.ts'
import {attacksOf, lastEnd} from './weave.ts'
import type {Strand, Weave} from './weave.ts'
import type {Report} from '../diagnostic.ts'

/** Where a woven part has the other's music; places are in either part. `to` is not included. */
export interface WovenPassage {
  readonly from: Position
  readonly to: Position
  /** Printed small and not played: own music goes first there. */
  readonly silent: boolean
}

/** A weave as the part needs it, and what it changes. */
export interface Woven {
  readonly passages: readonly WovenPassage[]
  /** Where the player goes back to their own music. */
  readonly returns: readonly Position[]
  /** Own notes that are not played, by their place among the pitched notes of the part. */
  readonly silenced: ReadonlySet<number>
  readonly changes: readonly Change[]
}

/** The words in which a weave is told. `absent`: the voice is only there for when its player is missing. */
export interface WeaveNames {
  readonly own: string
  readonly missing: string
  readonly when: 'always' | 'absent'
}

/**
 * What a weave comes to. Reports every passage: played (`weave/played`), printed small because own music nobody else has
 * falls together with it (`weave/kept`), or for which own music is silenced (`weave/silenced`).
 */
export function describeWeave(
  own: Line,
  missing: Line,
  weave: Weave,
  names: WeaveNames,
  report: Report,
): Woven {
  const passages: WovenPassage[] = []
  const changes: Change[] = []
  const lineOf = ({whose}: Strand): Line => (whose === 'own' ? own : missing)
  const played = new Set(weave.played)
  const all = [...weave.played, ...weave.silent].toSorted((a, b) => a.start - b.start)
  for (const run of runsOf(all, played)) {
    const [first, last] = [run[0], run.at(-1)]
    if (!first || !last) continue
    const line = lineOf(first)
    const [begin, end] = [attacksOf(line, first)[0], attacksOf(line, last).at(-1)]
    if (!begin || !end) continue
    const {facts} = line
    const silent = !played.has(first)
    const where = measuresOf(facts, {from: begin, to: end})
    const tell = (code: `weave/${string}`, words: string): string => {
      report({
        code,
        severity: silent ? 'warning' : 'info',
        message: `${where}: ${words}`,
        at: placeIn(facts, begin.measure),
      })
      return `${where}: ${words}`
    }
    const change = (kind: JoinedPassage['kind'], seen: PartFacts, reason: string): void => {
      // A note that is tied on may be printed as several cues: they end with it.
      const until = kind === 'silenced' ? end : lastOnset(line, run)
      const [from, to] = [spotOf(facts, begin), spotOf(facts, until)]
      changes.push({kind, part: seen.part, from, to, reason})
    }
    if (first.whose === 'missing') {
      passages.push({from: placeAt(begin), to: endOf(line, run), silent})
      if (silent) {
        const reason = tell(
          'weave/kept',
          names.when === 'always'
            ? `${names.own} has music that nobody else plays; ${names.missing} is printed small and not played`
            : `${names.own} has music of its own; ${names.missing} is left out`,
        )
        change('silenced', missing.facts, reason)
        if (names.when === 'always') change('cues', own.facts, reason)
      } else change('added', own.facts, tell('weave/played', `plays ${names.missing}`))
    } else if (silent) {
      const reason = tell(
        'weave/silenced',
        `${names.own} gives way to ${names.missing}: others play ${run.some(({essential}) => essential > 0) ? 'most of it' : 'the same'}; it is printed small and not played`,
      )
      change('silenced', own.facts, reason)
      change('cues', missing.facts, reason)
    } else change('added', missing.facts, `${where}: plays the music of ${names.own}`)
  }
  const silenced = weave.silent
    .filter(({whose}) => whose === 'own')
    .flatMap((strand) => attacksOf(own, strand).flatMap(({tones}) => tones))
    .flatMap(({note, tied = []}) => [note, ...tied])
  return {
    passages,
    returns: returnsOf(own, weave),
    silenced: new Set(silenced),
    changes: [...changes, ...changesOfCues(own, missing, names)],
  }
}

/** What either part only reads: the player's own cues stay, those of the voice go. */
function changesOfCues(own: Line, missing: Line, names: WeaveNames): Change[] {
  const kept = cuesIn(own.facts).map(({at}): Change => {
    const spot = spotOf(own.facts, at)
    const reason = `${names.own} has a cue there`
    return {kind: 'cues', part: missing.facts.part, from: spot, to: spot, reason}
  })
  const gone = cuesIn(missing.facts).map(({at, midi}): Change => {
    const spot = spotOf(missing.facts, at)
    const reason = `a cue of ${names.missing} is left out`
    return {kind: 'dropped', part: missing.facts.part, from: spot, to: spot, midi, reason}
  })
  return [...kept, ...gone]
}

function cuesIn(facts: PartFacts): {readonly at: Position; readonly midi: number}[] {
  const {notes} = facts
  return Array.from({length: notes.count}, (_, note) => note)
    .filter((note) => (notes.flags[note] ?? 0) & NOTE.cue)
    .map((note) => ({at: positionOf(facts, note), midi: midiOf(soundingAt(facts, note))}))
}

/** Where a note of the columns begins. */
function positionOf(facts: PartFacts, note: number): Position {
  const measure = measureOf(facts, note)
  return {measure, onset: (facts.notes.onset[note] ?? 0) / (facts.ticks[measure] ?? 1)}
}

/** Phrases that follow each other in one line, all played or all not. */
function runsOf(all: readonly Strand[], played: ReadonlySet<Strand>): Strand[][] {
  const runs: Strand[][] = []
  const open = new Map<Strand['whose'], Strand[]>()
  for (const strand of all) {
    const last = open.get(strand.whose)
    const same = last?.[0] !== undefined && played.has(last[0]) === played.has(strand)
    if (last && same) last.push(strand)
    else {
      const run = [strand]
      runs.push(run)
      open.set(strand.whose, run)
    }
    // What the player plays of one line parts what they play of the other.
    const other = strand.whose === 'own' ? 'missing' : 'own'
    const [first] = open.get(other) ?? []
    if (played.has(strand) && first && played.has(first)) open.delete(other)
  }
  return runs
}

function returnsOf(own: Line, {played}: Weave): Position[] {
  return played.flatMap((strand, index): Position[] => {
    const before = played[index - 1]
    const [first] = attacksOf(own, strand)
    const returns = strand.whose === 'own' && before?.whose === 'missing'
    return returns && first ? [placeAt(first)] : []
  })
}

/** Where a run ends: with its last tone, before what follows, and after a grace note that ends it. */
function endOf(line: Line, run: readonly Strand[]): Position {
  const last = line.attacks[run.at(-1)?.to ?? 0]
  const next = line.attacks[(run.at(-1)?.to ?? 0) + 1]?.start ?? Infinity
  const end = Math.max(lastEnd(attacksIn(line, run)), (last?.start ?? 0) + SHORTEST)
  return positionAt(line, Math.min(end, next))
}

/** Where the last note of a run begins, be it tied. */
function lastOnset(line: Line, run: readonly Strand[]): Position {
  const places = attacksIn(line, run)
    .flatMap(({tones}) => tones)
    .map(({note, tied}) => positionOf(line.facts, tied?.at(-1) ?? note))
  return places.reduce((last, each) =>
    each.measure > last.measure || (each.measure === last.measure && each.onset > last.onset)
      ? each
      : last,
  )
}

function attacksIn(line: Line, run: readonly Strand[]): readonly Attack[] {
  return run.flatMap((strand) => attacksOf(line, strand))
}

/** The place of a time; where that is a whole number of ticks, exactly the onset of a note there. */
function positionAt({clock, facts}: Line, time: number): Position {
  let measure = 0
  while ((clock.starts[measure + 1] ?? Infinity) <= time + SLACK) measure++
  const onset = Math.max(0, time - (clock.starts[measure] ?? 0))
  const ticks = facts.ticks[measure] ?? 1
  const exact = Math.round(onset * ticks) / ticks
  return {measure, onset: Math.abs(exact - onset) < SLACK ? exact : onset}
}

/** In quarters: what sums of thirds may be off by. */
const SLACK = 1e-6

/** In quarters: shorter than any note. */
const SHORTEST = 1 / 256

function placeAt({measure, onset}: Attack): Position {
  return {measure, onset}
}
