import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {UNISON, parseInterval} from '../../lib/pitch/interval.ts'
import {naturalAt, formatPitch, parsePitch, stepsAbove} from '../../lib/pitch/pitch.ts'
import {chooseClefs} from '../../lib/plan/clefs.ts'
import type {ClefCandidate} from '../../lib/plan/clefs.ts'
import {DEFAULT_CLEFS} from '../../lib/plan/job.ts'
import type {ClefPolicy} from '../../lib/plan/job.ts'
import {bottomLine, formatClef, parseClef} from '../../lib/staff/clef.ts'
import {attributes, backup, factsAbout, note} from '../support/part.ts'

function candidates(...words: readonly string[]): ClefCandidate[] {
  return words.map((word) => {
    const [name = '', by] = word.split(' ')
    const clef = parseClef(name)
    if (!clef) throw new Error(`no clef ${name}`)
    return {clef, interval: (by === undefined ? undefined : parseInterval(by)) ?? UNISON}
  })
}

const notes = (pitches: string): string =>
  pitches
    .split(' ')
    .map((pitch) => note(pitch))
    .join('')

/** `measure.beat clef`, a choice a word; measures from 1, beats from 1. */
function choices(
  measures: readonly string[],
  clefs: readonly ClefCandidate[],
  policy: Partial<ClefPolicy> = {},
): string {
  const facts = factsAbout([
    attributes('divisions 1', 'clef F4') + measures[0],
    ...measures.slice(1),
  ])
  return chooseClefs(facts, 1, clefs, {...DEFAULT_CLEFS, ...policy})
    .map(({measure, onset, clef}) => `${measure + 1}.${onset + 1} ${formatClef(clef)}`)
    .join(', ')
}

const beam = (type: string): string => `<beam number="1">${type}</beam>`
const slur = (type: string): string => `<notations><slur type="${type}"/></notations>`

const BASSOON = candidates('F4', 'C4')
const low = notes('A1 B1 A1 B1')
const high = notes('E5 D5 E5 F5')

describe('clefs over a whole part (renotation-rules C1 to C3)', () => {
  it.each([
    ['the usual clef', [low, low], '1.1 F4'],
    ['another for a high passage, and back', [low, high, high, low], '1.1 F4, 2.1 C4, 4.1 F4'],
    ['none for a single high note', [low, notes('A1 G3 C5 G3'), low], '1.1 F4'],
    ['the other from the beginning', [high, high, low], '1.1 C4, 3.1 F4'],
    ['nothing to read', [note('rest', 4), note('rest', 4)], '1.1 F4'],
  ])('%s', (_, measures, expected) => {
    expect(choices(measures, BASSOON)).toBe(expected)
  })

  it('stand at the barline or after a rest rather than inside a phrase', () => {
    const within = notes('A1 E5 E5 E5')
    const afterRest = note('A1') + note('rest') + notes('E5 E5')
    expect(choices([low, within, high, low], BASSOON)).toBe('1.1 F4, 2.2 C4, 4.1 F4')
    expect(choices([low, afterRest, high, low], BASSOON)).toBe('1.1 F4, 2.3 C4, 4.1 F4')
  })

  it('never stand inside a beam, a slur or a tie', () => {
    const beamed =
      note('A1', 1, beam('begin')) +
      note('E5', 1, beam('continue')) +
      note('E5', 1, beam('end')) +
      note('C5')
    const slurred = note('A1', 1, slur('start')) + notes('E5 E5') + note('E5', 1, slur('stop'))
    for (const joined of [beamed, slurred]) {
      const found = choices([low, joined, high, low], BASSOON)
      expect(found).not.toMatch(/ 2\.[23] /)
      expect(found).toMatch(/C4/)
    }
  })

  it('never stand in the middle of another voice’s note', () => {
    const held = notes('A1 E5 E5 E5') + backup(4) + note('C3', 4, '<voice>2</voice>')
    expect(choices([low, held, high, low], BASSOON)).not.toMatch(/2\.[234]/)
  })

  it('count the interval of each clef: a bass clarinet’s low notes in bass clef sound a second lower', () => {
    const clefs = candidates('G2 -M9', 'F4 -M2')
    expect(choices([notes('C5 D5 E5 F5'), notes('A1 B1 A1 B1'), notes('A1 B1 A1 B1')], clefs)).toBe(
      '1.1 G2, 2.1 F4',
    )
  })

  it('one clef is no choice', () => {
    expect(choices([high, low], candidates('F4'))).toBe('1.1 F4')
    expect(chooseClefs(factsAbout([low]), 1, [], DEFAULT_CLEFS)).toEqual([])
  })

  it('leave an unusual clef where the usual one would do', () => {
    const horn = candidates('G2', 'F4')
    const policy = {...DEFAULT_CLEFS, above: 4, below: 2}
    const [deep, middle] = [notes('C3 D3 E3 F3'), notes('C4 E4 G4 C5')]
    const facts = factsAbout([attributes('divisions 1') + deep, deep, middle, middle])
    const chosen = chooseClefs(facts, 1, horn, policy)
    expect(chosen.map(({measure: at, clef}) => `${at} ${clef.sign}`)).toEqual(['0 F', '2 G'])
  })

  it('are the cheapest of all ways, tried one by one', () => {
    const anyPitch = fc.integer({min: 16, max: 40}).map((steps) => formatPitch(naturalAt(steps)))
    const anyMeasure = fc.array(anyPitch, {minLength: 4, maxLength: 4})
    fc.assert(
      fc.property(
        fc.array(anyMeasure, {minLength: 1, maxLength: 2}),
        fc.integer({min: 1, max: 8}),
        (measures, change) => {
          const clefs = candidates('F4', 'C4', 'G2')
          const policy = {...DEFAULT_CLEFS, change}
          const facts = factsAbout(
            measures.map(
              (pitches, at) =>
                (at === 0 ? attributes('divisions 1') : '') + notes(pitches.join(' ')),
            ),
          )
          const chosen = chooseClefs(facts, 1, clefs, policy)
          const path = measures.flat().map((_, at) => {
            const place = {measure: Math.floor(at / 4), onset: at % 4}
            const last = chosen.findLast(
              (each) =>
                each.measure < place.measure ||
                (each.measure === place.measure && each.onset <= place.onset),
            )
            return clefs.findIndex(({clef}) => clef === last?.clef)
          })
          const cost = (way: readonly number[]): number =>
            costOf(way, measures.flat(), clefs, policy)
          const cheapest = Math.min(...everyWay(measures.flat().length, clefs.length).map(cost))
          expect(cost(path)).toBeCloseTo(cheapest, 6)
        },
      ),
      {numRuns: 30},
    )
  })
})

/** What a way through the clefs costs by C2 and C3, written apart from the code under test; quarters, four to the measure. */
function costOf(
  way: readonly number[],
  pitches: readonly string[],
  clefs: readonly ClefCandidate[],
  policy: ClefPolicy,
): number {
  let sum = way[0] === 0 ? 0 : policy.change / 2
  way.forEach((at, index) => {
    const clef = clefs[at]?.clef
    const pitch = parsePitch(pitches[index] ?? '')
    if (!clef || !pitch) throw new Error('no way')
    const position = stepsAbove(pitch) - bottomLine(clef)
    const above = position > 8 ? Math.floor((position - 8) / 2) : 0
    const below = position < 0 ? Math.floor(-position / 2) : 0
    sum += (above + below) * 0.05
    // All candidates but the first lie higher: below them the first would do, so that one ledger line must be enough.
    const accepted = at === 0 ? policy : {above: 3, below: 1}
    sum += Math.max(0, above - accepted.above) ** 2 + Math.max(0, below - accepted.below) ** 2
    if (at !== 0) sum += 0.15
    if (index > 0 && way[index - 1] !== at) sum += policy.change + (index % 4 === 0 ? 0 : 3)
  })
  return sum
}

function everyWay(length: number, choices_: number): number[][] {
  if (length === 0) return [[]]
  return everyWay(length - 1, choices_).flatMap((way) =>
    Array.from({length: choices_}, (_, at) => [...way, at]),
  )
}
