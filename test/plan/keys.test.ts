import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {parseInterval} from '../../lib/pitch/interval.ts'
import type {Interval} from '../../lib/pitch/interval.ts'
import {DEFAULT_KEYS} from '../../lib/plan/job.ts'
import type {KeyPolicy} from '../../lib/plan/job.ts'
import {chooseTurns, targetFifths} from '../../lib/plan/keys.ts'
import type {KeyRegion} from '../../lib/plan/keys.ts'

function interval(name: string): Interval {
  const found = parseInterval(name)
  if (!found) throw new Error(`no interval ${name}`)
  return found
}

/** Concert keys in fifths, `-` where none is stated. */
function regions(keys: string, by: string): KeyRegion[] {
  return keys.split(' ').map((fifths) => ({
    concert: fifths === '-' ? undefined : {fifths: Number(fifths)},
    interval: interval(by),
  }))
}

/** The written signatures in fifths. */
function written(keys: string, by: string, policy: Partial<KeyPolicy> = {}): string {
  const all = regions(keys, by)
  const turns = chooseTurns(all, {...DEFAULT_KEYS, ...policy})
  return all.map((region, index) => targetFifths(region, turns[index] ?? 0) ?? '-').join(' ')
}

describe('signatures (renotation-rules K1 to K3)', () => {
  it.each([
    // K1: B flat instruments two fifths up, E flat three, F one, A three down.
    ['B flat instruments', '0', '-M2', '2'],
    ['E flat instruments', '0', '-M6', '3'],
    ['E flat instruments upward', '0', 'm3', '3'],
    ['F instruments', '0', '-P5', '1'],
    ['G instruments', '0', '-P4', '-1'],
    ['A instruments', '0', '-m3', '-3'],
    ['D flat piccolo', '0', 'm2', '5'],
    ['octaves', '-4', '-P15', '-4'],
    // K2: never beyond seven.
    ['B major on a clarinet in B flat: D flat, not C sharp', '5', '-M2', '-5'],
    ['C sharp major on an alto saxophone: B flat', '7', '-M6', '-2'],
    ['C flat major on a clarinet in A: D', '-7', '-m3', '2'],
    // K3: APRL's case, seven flats or five sharps.
    ['A flat major on a clarinet in A', '-4', '-m3', '5'],
    ['six signs stay as they are', '4', '-M2', '6'],
    ['six flats too', '-3', '-m3', '-6'],
    // Nothing to print.
    ['no key', '-', '-M2', '-'],
  ])('%s', (_, concert, by, expected) => {
    expect(written(concert, by)).toBe(expected)
  })

  it.each([
    ['a step over the edge and back', '-3 -4 -3', '-m3', '6 5 6'],
    ['a step over the edge for long', '-4 -4 -3 -4 -4', '-m3', '5 5 6 5 5'],
    ['a key far away turns', '0 -6 0', '-m3', '-3 3 -3'],
    ['nothing stated at first', '- -4', '-m3', '- 5'],
  ])('a modulation does not flip back and forth: %s', (_, concert, by, expected) => {
    expect(written(concert, by)).toBe(expected)
  })

  it.each([
    ['flats wanted', '4', '-M2', {prefer: 'flats'}, '-6'],
    ['sharps wanted', '-3', '-m3', {prefer: 'sharps'}, '6'],
    ['flats wanted where few sharps do', '0', '-M2', {prefer: 'flats'}, '2'],
    ['no more than five', '4', '-M2', {limit: 5}, '6'],
    ['no more than six', '5', '-M2', {limit: 6}, '-5'],
  ] as const)('%s', (_, concert, by, policy, expected) => {
    expect(written(concert, by, policy)).toBe(expected)
  })

  it('the diatonic steps turn with the key', () => {
    const [turn] = chooseTurns(regions('-4', '-m3'), DEFAULT_KEYS)
    expect(turn).toBe(1)
    // The clarinet in A then reads -1 step, -3 semitones: an augmented second.
    expect(interval('-m3').diatonic + (turn ?? 0)).toBe(-1)
  })

  it('never more than seven signs where one of three spellings has fewer', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({min: -7, max: 7}), {minLength: 1, maxLength: 8}),
        fc.constantFrom('-M2', '-M6', '-P5', '-m3', 'm3', 'P4', 'M2', 'm2', '-P8'),
        (concert, by) => {
          for (const signs of written(concert.join(' '), by).split(' '))
            expect(Math.abs(Number(signs))).toBeLessThanOrEqual(7)
        },
      ),
    )
  })
})
