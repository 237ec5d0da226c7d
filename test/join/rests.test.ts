import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {restsBetween} from '../../lib/join/rests.ts'
import type {Meter} from '../../lib/staff/state.ts'

const METERS: readonly Meter[] = [
  [4, 4],
  [3, 4],
  [2, 4],
  [5, 4],
  [2, 2],
  [6, 4],
  [3, 8],
  [6, 8],
  [9, 8],
  [12, 8],
  [7, 8],
].map(([beats = 4, beatType = 4]) => ({beats, beatType}))

const meter = fc.constantFrom(...METERS)
/** A gap on the grid of sixteenths. */
const gap = fc.tuple(meter, fc.nat(), fc.nat()).map(([each, a, b]) => {
  const steps = (each.beats * 16) / each.beatType
  const [x, y] = [a % (steps + 1), b % (steps + 1)]
  return {meter: each, from: Math.min(x, y) / 4, to: Math.max(x, y) / 4}
})

function said(from: number, to: number, beats: number, beatType: number): string | undefined {
  return restsBetween(from, to, {beats, beatType})
    ?.map(({type, dotted}) => type + (dotted ? '.' : ''))
    .join(' ')
}

const isCompound = ({beats, beatType}: Meter): boolean =>
  beats % 3 === 0 && (beatType >= 8 || beats > 3)

describe('rests in a gap', () => {
  it('fill it, one after the other', () => {
    fc.assert(
      fc.property(gap, ({meter: each, from, to}) => {
        const rests = restsBetween(from, to, each)
        expect(rests).toBeDefined()
        expect(rests?.reduce((sum, {duration}) => sum + duration, from)).toBe(to)
      }),
    )
  })

  // renotation-rules section 7: rests as the meter groups them.
  it('begin where a note of their value would, or on a beat of a compound meter', () => {
    fc.assert(
      fc.property(gap, ({meter: each, from, to}) => {
        let at = from
        for (const {duration, dotted} of restsBetween(from, to, each) ?? []) {
          const beat = isCompound(each) ? 12 / each.beatType : 0
          if (dotted) expect(isCompound(each) && at % beat === 0).toBe(true)
          else if (duration > beat / 3 && beat > 0) expect(at % beat).toBe(0)
          else expect(at % duration).toBe(0)
          at += duration
        }
      }),
    )
  })

  it('hide no beat of a meter of three, five or seven', () => {
    fc.assert(
      fc.property(gap, ({meter: each, from, to}) => {
        const beats = isCompound(each) ? each.beats / 3 : each.beats
        fc.pre(beats % 2 === 1)
        const beat = (isCompound(each) ? 12 : 4) / each.beatType
        for (const {duration} of restsBetween(from, to, each) ?? [])
          expect(duration).toBeLessThanOrEqual(beat)
      }),
    )
  })

  it('are none that plain values can fill inside a tuplet', () => {
    fc.assert(
      fc.property(
        meter,
        fc.integer({min: 0, max: 2}),
        fc.constantFrom(3, 5, 7),
        (each, beat, n) => {
          expect(restsBetween(beat, beat + 1 / n, each)).toBeUndefined()
          expect(restsBetween(beat + 1 / n, beat + 1, each)).toBeUndefined()
        },
      ),
    )
  })

  it.each([
    [0, 4, 4, 4, 'whole'],
    [1, 4, 4, 4, 'quarter half'],
    [0.5, 4, 4, 4, 'eighth quarter half'],
    [0, 3, 4, 4, 'half quarter'],
    [1, 3, 4, 4, 'quarter quarter'],
    [2.25, 3, 4, 4, '16th eighth'],
    [0, 2, 3, 4, 'quarter quarter'],
    [1, 3, 3, 4, 'quarter quarter'],
    [0, 3, 6, 8, 'half.'],
    [1.5, 6, 12, 8, 'quarter. half.'],
    [0, 5, 6, 4, 'half. half'],
    [2, 6, 6, 4, 'quarter half.'],
    [0.5, 3, 6, 8, 'eighth eighth quarter.'],
    [0, 1, 6, 8, 'quarter'],
    [1.5, 2.5, 6, 8, 'quarter'],
    [2, 3, 6, 8, 'eighth eighth'],
    [0, 4.5, 9, 8, 'quarter. quarter. quarter.'],
    [0, 4, 2, 2, 'whole'],
    [1, 1, 4, 4, ''],
    [0, 1 / 3, 4, 4, undefined],
  ])('from %d to %d of %d/%d: %s', (from, to, beats, beatType, rests) => {
    expect(said(from, to, beats, beatType)).toBe(rests)
  })
})
