import {describe, expect, it} from 'vitest'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {notationById} from '../../lib/instruments/notation.ts'
import {formatInterval} from '../../lib/pitch/interval.ts'
import {describeKey} from '../../lib/pitch/key.ts'
import {planPart} from '../../lib/plan/decide.ts'
import type {Surroundings} from '../../lib/plan/decide.ts'
import type {PartJob} from '../../lib/plan/job.ts'
import {isSame, moveOf, sectionAt} from '../../lib/plan/plan.ts'
import type {PartPlan} from '../../lib/plan/plan.ts'
import {formatClef} from '../../lib/staff/clef.ts'
import {attributes, backup, factsAbout, note} from '../support/part.ts'

const plain = attributes('divisions 1', 'fifths 0', 'clef G2')
const octave = note('C4') + note('E4') + note('G4') + note('C5')

function planned(
  measures: readonly string[],
  job: PartJob,
  around: Surroundings = {},
): {plan: PartPlan; sections: string[]; told: string[]} {
  const told: string[] = []
  const plan = planPart(factsAbout(measures), job, around, ({code}) => told.push(code))
  const sections = plan.staves.flat().map((section) => {
    const {measure, onset, staff, clef, key, transposition} = section
    const signs = key ? describeKey(key) : 'no key'
    return `${measure}.${onset} staff ${staff} ${formatClef(clef)}, ${signs}, ${formatInterval(transposition.interval)}`
  })
  return {plan, sections, told}
}

function forInstrument(id: string, rest: PartJob = {}): PartJob {
  const instrument = instrumentById(id)
  if (!instrument) throw new Error(`no ${id}`)
  return {for: instrument, ...rest}
}

function to(id: string): PartJob {
  const notation = notationById(id)
  if (!notation) throw new Error(`no ${id}`)
  return {to: notation}
}

const CONCERT: PartJob = {to: {kind: 'concert', octaves: 'customary'}}

describe('the plan for one part', () => {
  it.each([
    ['nothing asked', {}, '0.0 staff 1 G2, no sharps or flats, P1'],
    ['a clarinet', forInstrument('clarinet-b-flat'), '0.0 staff 1 G2, 2 sharps, -M2'],
    ['an alto saxophone', forInstrument('alto-saxophone-e-flat'), '0.0 staff 1 G2, 3 sharps, -M6'],
    [
      'a bassoon reads bass clef',
      forInstrument('bassoon'),
      '0.0 staff 1 F4, no sharps or flats, P1',
    ],
    ['a row of the catalogue', to('clarinet.b-flat'), '0.0 staff 1 G2, 2 sharps, -M2'],
    [
      'no signature',
      forInstrument('clarinet-b-flat', {keys: {signature: 'omit'}}),
      '0.0 staff 1 G2, no sharps or flats, -M2',
    ],
  ])('%s', (_, job, expected) => {
    expect(planned([plain + octave], job).sections).toEqual([expected])
  })

  it('turns a key that would have too many signs, says so, and turns the interval with it', () => {
    const {sections, told} = planned(
      [attributes('divisions 1', 'fifths -4', 'clef G2') + octave],
      forInstrument('clarinet-a'),
    )
    expect(sections).toEqual(['0.0 staff 1 G2, 5 sharps, -A2'])
    expect(told).toEqual(['key/turned'])
  })

  it('orchestral horns print no signature, band horns do (renotation-rules K6)', () => {
    const job = forInstrument('horn-f')
    const measures = [attributes('divisions 1', 'fifths -2', 'clef G2') + octave]
    expect(planned(measures, job, {ensemble: 'band'}).sections).toEqual([
      '0.0 staff 1 G2, 1 flat, -P5',
    ])
    expect(planned(measures, job, {ensemble: 'orchestra'}).sections).toEqual([
      '0.0 staff 1 G2, no sharps or flats, -P5',
    ])
  })

  it('keeps a part without key without key', () => {
    const {sections} = planned([attributes('divisions 1') + octave], forInstrument('horn-f'), {
      openKey: true,
    })
    expect(sections).toEqual(['0.0 staff 1 G2, no key, -P5'])
  })

  it('follows every change of the source', () => {
    const {sections} = planned(
      [
        attributes('divisions 1', 'fifths 0', 'clef G2', 'transpose -1 -2') + octave,
        note('C4', 2) + attributes('transpose -2 -3') + note('C4', 2),
        attributes('fifths 1') + octave,
      ],
      CONCERT,
    )
    expect(sections).toEqual([
      '0.0 staff 1 G2, 2 flats, P1',
      '1.2 staff 1 G2, 3 sharps, P1',
      '2.0 staff 1 G2, 4 sharps, P1',
    ])
  })

  it.each([
    ['double bass', 'transpose 0 0 -1', '-P8', 'P1'],
    ['piccolo', 'transpose 0 0 1', '+P8', 'P1'],
    ['D flat piccolo', 'transpose 1 1 1', '+P8', 'P1'],
    ['clarinet', 'transpose -1 -2', 'P1', 'P1'],
    ['bass clarinet', 'transpose -1 -2 -1', 'P1', 'P1'],
  ])('a C score keeps octaves: %s', (_, transpose, customary, sounding) => {
    const measures = [attributes('divisions 1', 'clef G2', transpose) + octave]
    const intervals = (octaves: 'customary' | 'sounding') =>
      planned(measures, {to: {kind: 'concert', octaves}}).sections[0]?.split(', ')[2]
    expect(intervals('customary')).toBe(customary)
    expect(intervals('sounding')).toBe(sounding)
  })

  it('leaves percussion and tablature alone', () => {
    const measures = ['<attributes><clef><sign>percussion</sign></clef></attributes>' + octave]
    const {plan} = planned(measures, forInstrument('horn-f'))
    expect(plan.staves.flat().map(({untouched}) => untouched)).toEqual([true])
    expect(plan.staves.flat().every(isSame)).toBe(true)
  })

  it('plans every staff, and keeps the clefs of several', () => {
    const measures = [
      attributes('divisions 1', '<staves>2</staves>', 'clef G2 1', 'clef F4 2', 'fifths 0') +
        note('C5') +
        backup(1) +
        note('C3', 1, '<staff>2</staff>'),
    ]
    expect(planned(measures, forInstrument('clarinet-b-flat')).sections).toEqual([
      '0.0 staff 1 G2, 2 sharps, -M2',
      '0.0 staff 2 F4, 2 sharps, -M2',
    ])
  })

  it('gives the section at a place, and the one that ends there', () => {
    const {plan} = planned(
      [plain + octave, note('C4', 2) + attributes('transpose -1 -2') + note('C4', 2)],
      CONCERT,
    )
    const at = {measure: 1, onset: 2}
    const interval = (before: boolean) => {
      const section = sectionAt(plan, 1, at, {before})
      return section && formatInterval(moveOf(section))
    }
    expect(interval(false)).toBe('-M2')
    expect(interval(true)).toBe('P1')
    expect(sectionAt(plan, 1, {measure: 9, onset: 0})).toBe(plan.staves[0]?.[1])
    expect(sectionAt(plan, 1, {measure: 0, onset: 0}, {before: true})).toBe(plan.staves[0]?.[0])
  })
})
