import {describe, expect, it} from 'vitest'
import {clockOf, secondsBetween} from '../../lib/fit/clock.ts'
import {breathLimit, isBreathless} from '../../lib/fit/effort.ts'
import {measureFit} from '../../lib/fit/fit.ts'
import {reachOf} from '../../lib/fit/reach.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import type {Instrument} from '../../lib/instruments/instrument.ts'
import {factsFrom, linesFrom} from './notes.ts'

function known(id: string): Instrument {
  const found = instrumentById(id)
  if (!found) throw new Error(id)
  return found
}

async function fitOf(text: string, id: string) {
  const [line] = await linesFrom(text)
  if (!line) throw new Error('no line')
  return measureFit(line, known(id))
}

describe('the fit of a line', () => {
  it('counts notes and time inside each tier', async () => {
    // Bassoon: pro Bb1–F5, tutti Bb1–A4, student F2–D4.
    const {tiers, notes} = await fitOf('A1 Bb1 F2:2 | D4 E4 A4 B4', 'bassoon')
    expect(notes).toBe(7)
    expect(
      tiers.map(
        ({tier, outside}) => `${tier} ${outside.map(({key, by}) => `${key}/${by}`).join(' ')}`,
      ),
    ).toEqual(['pro 33/-1', 'tutti 33/-1 71/2', 'student 33/-8 34/-7 64/2 69/7 71/9'])
    const [pro, tutti, student] = tiers
    expect(pro?.notes).toBeCloseTo(6 / 7)
    expect(tutti?.time).toBeCloseTo(6 / 8)
    expect(student?.time).toBeCloseTo(3 / 8)
  })

  it('says where each note stands that lies outside', async () => {
    const {tiers} = await fitOf('C3 | D3 A1 | E3', 'bassoon')
    expect(tiers[0]?.outside.map(({tone}) => `${tone.measure}/${tone.onset}`)).toEqual(['1/1'])
  })

  it('leaves out what is not known of an instrument', async () => {
    expect((await fitOf('C3', 'contrabassoon')).tiers.map(({tier}) => tier)).toEqual([
      'pro',
      'tutti',
    ])
    expect(reachOf(known('natural-horn'), 'tutti')).toBeUndefined()
  })

  it('does not ask a student for the professional range', () => {
    expect(reachOf(known('bassoon'), 'student')).toEqual({
      low: 34,
      high: 69,
      easyLow: 41,
      easyHigh: 62,
    })
    expect(reachOf(known('bassoon'), 'pro')).toEqual({low: 34, high: 77, easyLow: 34, easyHigh: 77})
  })
})

describe('breath and endurance', () => {
  it('measures in seconds at the tempo of the score', async () => {
    const {effort} = await fitOf('t60 C2:4_ | C2:4~ | r:4 | C2 D2 t120 E2:2', 'tuba')
    expect(effort.tone).toEqual({seconds: 8, from: {measure: 0, onset: 0}})
    expect(effort.stretch).toMatchObject({seconds: 8})
    expect(effort.assumed).toBe(false)
  })

  it('takes the limits that the trade proposes (renotation-rules section 8)', async () => {
    expect(breathLimit(known('clarinet-b-flat'))).toBe(12)
    expect(breathLimit(known('oboe'))).toBe(12)
    expect(breathLimit(known('euphonium'))).toBe(8)
    expect(breathLimit(known('tuba'))).toBe(6)
    expect(breathLimit(known('contrabass-clarinet-b-flat'))).toBe(6)
    expect(breathLimit(known('cello'))).toBeUndefined()
    const long = 't60 C2:4_ | C2:4~'
    expect(isBreathless((await fitOf(long, 'tuba')).effort)).toBe(true)
    expect(isBreathless((await fitOf(long, 'bassoon')).effort)).toBe(false)
    expect(isBreathless((await fitOf(long, 'cello')).effort)).toBe(false)
  })

  it('finds the longest slur', async () => {
    const {effort} = await fitOf('t60 C3( D3 E3) r | C3( D3 E3 F3) | G3', 'tuba')
    expect(effort.breath).toEqual({seconds: 4, from: {measure: 1, onset: 0}})
  })

  it('tells how much lies high', async () => {
    // Tuba, tutti up to F4 at most: its upper fifth.
    const range = known('tuba').ranges.tutti
    expect((await fitOf('E1 F1 G1 A1', 'tuba')).effort.high).toBe(0)
    expect(range).toBeDefined()
    expect((await fitOf('E1 F1 G4 A4', 'tuba')).effort.high).toBe(0.5)
  })

  it('knows the clock of parts that state different things', async () => {
    const facts = await factsFrom(['t90 C3 D3 | C3:4', 'C3:4 | C3:4'])
    const clock = clockOf(facts.values())
    expect(clock.starts).toEqual([0, 4, 8])
    expect(secondsBetween(clock, 0, 3)).toBeCloseTo(2)
    expect(clockOf([]).assumed).toBe(true)
  })
})

describe('technique', () => {
  it('lists what the instrument does not have', async () => {
    expect((await fitOf('C3+E3 G3+C4 D3', 'tuba')).lacks).toEqual([
      '2 chords, of which one player takes one note each',
    ])
    expect((await fitOf('C3+E3 D3', 'piano')).lacks).toEqual([])
  })
})
