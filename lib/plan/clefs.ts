import type {Interval} from '../pitch/interval.ts'
import {stepsAbove} from '../pitch/pitch.ts'
import type {Clef} from '../staff/clef.ts'
import {bottomLine} from '../staff/clef.ts'
import {NOTE, soundingAt} from '../survey/facts.ts'
import type {PartFacts, Position} from '../survey/facts.ts'
import {DEFAULT_CLEFS} from './job.ts'
import type {ClefPolicy} from './job.ts'
import {octavesAt} from './register.ts'
import type {Register} from './register.ts'

/** A clef and where it begins. */
export interface ClefChoice extends Position {
  readonly clef: Clef
}

/** A clef that the reader knows, and what its notes add to written to get sounding. */
export interface ClefCandidate {
  readonly clef: Clef
  readonly interval: Interval
}

/** Notes that begin together: the lowest and highest sounding steps, and how good a place for a new clef is before them. */
interface Attack extends Position {
  readonly low: number
  readonly high: number
  /** Added to the price of a change: 0 after a rest or a barline, much inside a beam, slur or tie. */
  readonly price: number
}

const INSIDE_GROUP = 100
const INSIDE_PHRASE = 3
/** What a note in another clef than the usual one costs, so that the reader comes back to it. */
const UNUSUAL = 0.15

/** Ledger lines accepted in an unusual clef on the side of the usual one. */
const TOWARDS_USUAL = 1

type LedgerLines = Pick<ClefPolicy, 'above' | 'below'>

/**
 * The clefs of a staff, chosen over the whole part: ledger lines beyond what the reader accepts are weighed against
 * changes, which stand after rests and barlines and never inside a beam, slur or tie (renotation-rules C1 to C3). The
 * first candidate is the usual clef.
 */
export function chooseClefs(
  facts: PartFacts,
  staff: number,
  candidates: readonly ClefCandidate[],
  policy: ClefPolicy,
  registers?: readonly Register[],
  removedLines?: ReadonlySet<number>,
): ClefChoice[] {
  const [usual] = candidates
  if (!usual) return []
  if (candidates.length === 1) return [{measure: 0, onset: 0, clef: usual.clef}]
  const attacks = readAttacks(facts, staff, registers, removedLines)
  if (attacks.length === 0) return [{measure: 0, onset: 0, clef: usual.clef}]
  const path = cheapestPath(attacks, candidates, policy)
  const choices: ClefChoice[] = []
  path.forEach((at, index) => {
    const clef = candidates[at]?.clef
    const attack = attacks[index]
    if (!clef || !attack || (index > 0 && path[index - 1] === at)) return
    choices.push(
      index === 0
        ? {measure: 0, onset: 0, clef}
        : {measure: attack.measure, onset: attack.onset, clef},
    )
  })
  return choices
}

function cheapestPath(
  attacks: readonly Attack[],
  candidates: readonly ClefCandidate[],
  policy: ClefPolicy,
): number[] {
  const {length} = candidates
  /** For each attack and clef, the clef before it on the cheapest way there. */
  const back = new Int8Array(attacks.length * length)
  const bottoms = candidates.map(({clef, interval}) => bottomLine(clef) + interval.diatonic)
  const accepted = acceptedIn(bottoms, policy)
  let costs = candidates.map((_, index) => (index === 0 ? 0 : policy.change / 2))
  for (const [at, attack] of attacks.entries()) {
    const next = candidates.map((_, to) => {
      let best = costs[to] ?? Infinity
      let from = to
      costs.forEach((cost, index) => {
        const changed = cost + policy.change + attack.price
        if (index !== to && changed < best) {
          best = changed
          from = index
        }
      })
      back[at * length + to] = from
      const lines = costOf(attack, bottoms[to] ?? 0, accepted[to] ?? policy)
      return best + lines + (to === 0 ? 0 : UNUSUAL)
    })
    costs = next
  }
  let at = costs.indexOf(Math.min(...costs))
  const path = attacks.map(() => 0)
  for (let index = attacks.length - 1; index >= 0; index--) {
    path[index] = at
    at = back[index * length + at] ?? 0
  }
  return path
}

function costOf(attack: Attack, bottom: number, accepted: LedgerLines): number {
  const above = Math.max(0, Math.floor((attack.high - bottom - 8) / 2))
  const below = Math.max(0, Math.floor((bottom - attack.low) / 2))
  return weigh(above, accepted.above) + weigh(below, accepted.below)
}

/**
 * The ledger lines that a reader accepts in each clef (renotation-rules C2 has those of the usual one). In another clef there
 * are hardly any on the side where the usual one would do: nobody reads a horn's middle register in bass clef.
 */
function acceptedIn(bottoms: readonly number[], policy: ClefPolicy): LedgerLines[] {
  const [usual = 0] = bottoms
  return bottoms.map((bottom, index) => {
    if (index === 0 || bottom === usual) return policy
    const {above, below} = DEFAULT_CLEFS
    return bottom < usual ? {above: TOWARDS_USUAL, below} : {above, below: TOWARDS_USUAL}
  })
}

function weigh(lines: number, accepted: number): number {
  const excess = Math.max(0, lines - accepted)
  return 0.05 * lines + excess * excess
}

function readAttacks(
  facts: PartFacts,
  staff: number,
  registers: readonly Register[] | undefined,
  removedLines: ReadonlySet<number> | undefined,
): Attack[] {
  const {notes} = facts
  const attacks: {measure: number; onset: number; low: number; high: number; price: number}[] = []
  const held = new Map<number, number>()
  let soundsUntil = 0
  let measureBefore = 0
  for (const {note, measure, onset} of notesOf(facts, staff)) {
    const flags = notes.flags[note] ?? 0
    const octaves = octavesAt(registers, {measure, onset})
    const line = facts.octaveLines[(notes.octaveLine[note] ?? 0) - 1]
    const drawn = line && !removedLines?.has(line.index) ? line.steps : 0
    const steps = stepsAbove(soundingAt(facts, note)) + 7 * octaves + drawn
    const last = attacks.at(-1)
    if (last && last.measure === measure && last.onset === onset) {
      last.low = Math.min(last.low, steps)
      last.high = Math.max(last.high, steps)
    } else {
      const grouped = [...held.values()].some(
        (each) => (each & (NOTE.beamed | NOTE.slurred | NOTE.tiedTo)) !== 0,
      )
      const free = onset === 0 || measure !== measureBefore || soundsUntil < onset
      const crossed = measure === measureBefore && soundsUntil > onset
      attacks.push({
        measure,
        onset,
        low: steps,
        high: steps,
        price: grouped || crossed ? INSIDE_GROUP : free ? 0 : INSIDE_PHRASE,
      })
    }
    held.set(notes.voice[note] ?? 0, flags)
    if (measure !== measureBefore) soundsUntil = 0
    soundsUntil = Math.max(
      soundsUntil,
      onset + (notes.duration[note] ?? 0) / (facts.ticks[measure] ?? 1),
    )
    measureBefore = measure
  }
  return attacks
}

/** The notes of a staff by time, then as the document has them: it has them measure by measure. */
function* notesOf({notes, ticks, firstNote, states}: PartFacts, staff: number) {
  for (let measure = 0; measure < ticks.length; measure++) {
    const order: {readonly note: number; readonly measure: number; readonly onset: number}[] = []
    const end = firstNote[measure + 1] ?? notes.count
    for (let note = firstNote[measure] ?? end; note < end; note++) {
      if (states[notes.state[note] ?? 0]?.staff !== staff) continue
      order.push({note, measure, onset: (notes.onset[note] ?? 0) / (ticks[measure] ?? 1)})
    }
    yield* order.toSorted((one, other) => one.onset - other.onset || one.note - other.note)
  }
}
