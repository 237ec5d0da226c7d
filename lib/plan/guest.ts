import {fifthsOf} from '../pitch/interval.ts'
import {isTraditional} from '../pitch/key.ts'
import type {StaffState} from '../staff/state.ts'
import type {PartFacts, StateFact} from '../survey/facts.ts'
import type {DeclaredNotation} from './job.ts'
import {lastBefore} from './plan.ts'
import type {PartPlan, Section} from './plan.ts'
import {turned} from './signatures.ts'

/**
 * The notation of a part, for music of another part that is to stand in it: clef, key and transposition place by place as
 * the plan of the part (`host`) has them on one staff. Where the two are in enharmonic keys, the guest's music turns
 * with its reader's signature (renotation-rules K4).
 */
export function notationOf(host: PartPlan, guest: PartFacts, staff = 1): DeclaredNotation {
  const sections = host.staves[staff - 1] ?? host.staves[0] ?? []
  const states: StateFact[] = []
  for (let own = 1; own <= guest.staves; own++) {
    const source = guest.states.filter((state) => state.staff === own)
    const places = [...sections, ...source].map(({measure, onset}) => ({measure, onset}))
    for (const at of places.toSorted((a, b) => a.measure - b.measure || a.onset - b.onset)) {
      const section = lastBefore(sections, at) ?? sections[0]
      if (!section) continue
      const state = stateIn(section, lastBefore(source, at)?.state)
      states.push({...at, staff: own, state})
    }
  }
  return {kind: 'declared', states}
}

function stateIn(section: Section, source: StaffState | undefined): StaffState {
  const {clef, key, transposition} = section
  const turn = source ? turnBetween(section, source) : 0
  return {
    clef,
    ...(key && {key}),
    transposition: turn === 0 ? transposition : turned(transposition, turn),
  }
}

/** How many diminished seconds lie between the keys in which the two parts sound: 0, or one of a pair such as 6 sharps and 6 flats. */
function turnBetween({key, transposition}: Section, source: StaffState): number {
  if (!key || !source.key || !isTraditional(key) || !isTraditional(source.key)) return 0
  const host = key.fifths + fifthsOf(transposition.interval)
  const away = host - source.key.fifths - fifthsOf(source.transposition.interval)
  return away % 12 === 0 ? away / 12 : 0
}
