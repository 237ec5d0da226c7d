import type {Report} from './diagnostic.ts'
import {spotOf} from './ensemble/change.ts'
import type {Change} from './ensemble/change.ts'
import {quartersOf} from './ensemble/cue-line.ts'
import {DEFAULT_CUES, chooseCues, cueLabel} from './ensemble/cues.ts'
import type {Cue, CuePolicy, CueSource} from './ensemble/cues.ts'
import type {Language} from './instruments/instrument.ts'
import type {Passage} from './join/passage.ts'
import type {PartPlan} from './plan/plan.ts'
import type {Register} from './plan/register.ts'
import type {Score} from './score.ts'
import {placeIn} from './survey/facts.ts'
import type {PartFacts} from './survey/facts.ts'
import {readFormer} from './survey/former.ts'

/** Cues before entries: from any part, or only from those named. */
export interface CueRequest extends Partial<CuePolicy> {
  readonly sources?: readonly string[] | undefined
}

/** What a part is called in its score. */
export interface PartNames {
  readonly name: string
  readonly abbreviation: string
}

/** The part that gets cues, and the score that they come from. */
export interface CueInput {
  readonly score: Score
  readonly part: string
  readonly facts: ReadonlyMap<string, PartFacts>
  readonly report: Report
  readonly changed: (change: Change) => void
}

/** The cues of a part, told and reported. `without`: the part that its player covers anyway, in `busy` passages. */
export async function cuesFor(
  {score, part, facts, report, changed}: CueInput,
  plan: PartPlan,
  {sources: wanted, ...policy}: CueRequest,
  {
    names,
    without,
    busy,
  }: {
    readonly names: ReadonlyMap<string, PartNames>
    readonly without: string | undefined
    readonly busy: readonly Passage[]
  },
): Promise<readonly Cue[]> {
  const host = facts.get(part)
  if (!host) return []
  const order = [...names.keys()]
  const sources: CueSource[] = []
  for (const [id, own] of facts) {
    if (id === part || id === without || wanted?.includes(id) === false) continue
    const {family} = await readFormer(score.header, id, {family: true})
    const {name = '', abbreviation = ''} = names.get(id) ?? {}
    sources.push({
      facts: own,
      name: abbreviation || name || id,
      distance: Math.abs(order.indexOf(id) - order.indexOf(part)),
      sings: family === 'voices',
    })
  }
  const isBusy = (measure: number): boolean =>
    busy.some(({from, to}) => measure >= from.measure && measure <= to.measure)
  const {cues, uncued} = chooseCues(host, plan, sources, {...DEFAULT_CUES, ...policy}, isBusy)
  for (const cue of cues) {
    const [first, last] = [numberOf(host, cue.from), numberOf(host, cue.to - 1)]
    const where = first === last ? `measure ${first} shows` : `measures ${first} to ${last} show`
    const reason = `${where} ${cueLabel(cue, 'en')} before the entry in measure ${numberOf(host, cue.to)}, after ${cue.rest} measures' rest`
    report({
      code: 'cues/added',
      severity: 'info',
      message: reason,
      at: placeIn(host, cue.from),
    })
    const end = quartersOf(cue.source.facts, cue.to - 1)
    const from = spotOf(host, {measure: cue.from, onset: 0})
    const to = spotOf(host, {measure: cue.to - 1, onset: end})
    for (const seen of [part, ...(without === undefined ? [] : [without])])
      changed({kind: 'cues', part: seen, from, to, reason})
  }
  for (const {entry, rest} of uncued) {
    report({
      code: 'cues/none',
      severity: 'warning',
      message: `nobody plays what could be cued before the entry in measure ${numberOf(host, entry)}, after ${rest} measures' rest`,
      at: placeIn(host, entry),
    })
  }
  return cues
}

function numberOf({numbers}: PartFacts, measure: number): string {
  return numbers[measure] ?? ''
}

/** The octaves by which a part moves where cues are taken from it. */
export function registersOf(cues: readonly Cue[]): Register[] {
  return cues
    .flatMap(({from, to, octaves}) => [
      {measure: from, onset: 0, octaves},
      {measure: to, onset: 0, octaves: 0},
    ])
    .toSorted((a, b) => a.measure - b.measure)
}

/** A cue as the part takes it in. */
export function cuePassage(cue: Cue, language: Language): Passage {
  return {
    guest: cue.source.facts.part,
    from: {measure: cue.from, onset: 0},
    to: {measure: cue.to, onset: 0},
    manner: 'cue',
    line: cue.line,
    label: cueLabel(cue, language),
  }
}
