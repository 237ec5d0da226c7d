import {describe, expect, it} from 'vitest'
import {instrumentById} from '../../lib/index.ts'
import {countAbove, partnersOf, readDoublings} from '../../lib/survey/doubling.ts'
import {addToGrid, emptyGrid, readConsonance} from '../../lib/survey/harmony.ts'
import {addKeys, emptyKeys, readKeyFit} from '../../lib/survey/keys.ts'
import {ATTACK, CLOCK, NO_KEY} from '../../lib/survey/line.ts'
import type {Line} from '../../lib/survey/line.ts'
import {compassOf, measureRegister, readHistograms, readLeaps} from '../../lib/survey/register.ts'
import {BASS, TREBLE} from '../../lib/staff/clef.ts'
import {UNISON} from '../../lib/pitch/interval.ts'

/** Quarters, one after the other; a note below middle C in the second list of clefs stands in bass clef. */
function line(part: string, midi: readonly number[], clefs = midi.map(() => 0)): Line {
  const count = midi.length
  return {
    part,
    index: 0,
    declared: UNISON,
    clefs: [TREBLE, BASS].slice(0, 1 + Math.max(...clefs)),
    count,
    onset: Float64Array.from(midi, (_, note) => note * CLOCK),
    duration: new Uint32Array(count).fill(CLOCK),
    midi: Int16Array.from(midi),
    steps: new Int16Array(count),
    clef: Uint8Array.from(clefs),
    kind: new Uint8Array(count).fill(ATTACK),
    keys: new Int8Array(count).fill(NO_KEY),
    played: new Uint8Array(count).fill(1),
  }
}

const keyed = (fifths: number): Line => ({
  ...line('A', tune),
  keys: new Int8Array(12).fill(fifths),
})

const starts = Float64Array.from({length: 17}, (_, quarter) => quarter * CLOCK)
const tune = [60, 62, 64, 65, 67, 69, 71, 72, 71, 69, 67, 65]

describe('doublings', () => {
  it('find a line that moves along, and how far away it is written', () => {
    const lines = [
      line('A', tune),
      line(
        'B',
        tune.map((midi) => midi + 2),
      ),
    ]
    const [partner, ...others] = partnersOf(readDoublings(lines), lines, 0, 0)
    expect(partner).toMatchObject({line: 1, distance: 2, shared: 12, matching: 12, exact: 12})
    expect(others).toEqual([])
  })

  it('count octaves as doubling, and not thirds that are now major, now minor', () => {
    const octaves = tune.map((midi, note) => midi + (note % 2 === 0 ? 12 : 0))
    const thirds = [64, 65, 67, 69, 71, 72, 74, 76, 74, 72, 71, 69]
    const lines = [line('A', tune), line('B', octaves), line('C', thirds)]
    const partners = partnersOf(readDoublings(lines), lines, 0, 0)
    expect(partners.map(({line: index}) => index)).toEqual([1])
    expect(partners[0]).toMatchObject({matching: 12, exact: 6})
  })

  it('take no notice of repeated notes', () => {
    const lines = [line('A', [60, 60, 60, 60, 60, 60]), line('B', [60, 60, 60, 60, 60, 60])]
    expect(partnersOf(readDoublings(lines), lines, 0, 0)).toEqual([])
  })

  it('tell which of two voices lies above', () => {
    const table = readDoublings([
      line('A', tune),
      line(
        'B',
        tune.map((midi) => midi - 3),
      ),
    ])
    const own = {voice: 0, semitones: 0}
    expect(countAbove(table, own, {voice: 1, semitones: 0})).toEqual({above: 12, met: 12})
    expect(countAbove(table, own, {voice: 1, semitones: 5})).toEqual({above: 0, met: 12})
  })
})

describe('harmony', () => {
  const chord = [48, 52, 55].map((midi) =>
    line(
      'chord',
      tune.map(() => midi),
    ),
  )
  const grid = emptyGrid(starts)
  for (const each of chord) addToGrid(grid, each, [0], [1])

  it('is fitted best at the distance at which the notes sound in it', () => {
    const {mean} = readConsonance(grid, line('A', [62, 66, 69, 62, 66, 69]))
    expect(mean.indexOf(Math.max(...mean))).toBe(10) // C major, written a tone too high
    expect(mean[1]).toBeLessThan(mean[10] ?? 0)
  })

  it('takes a line out again that was put in', () => {
    const with13 = emptyGrid(starts)
    addToGrid(with13, line('A', tune), [1], [1])
    addToGrid(with13, line('A', tune), [1], [-1])
    expect([...with13.weights, ...with13.blocks].every((weight) => weight === 0)).toBe(true)
  })

  it('says nothing of a line that plays alone', () => {
    expect([...readConsonance(emptyGrid(starts), line('A', tune)).notes]).toEqual([0])
  })
})

describe('keys', () => {
  const table = emptyKeys(12)
  for (const fifths of [-1, -1, -1]) addKeys(table, keyed(fifths), UNISON, 1)

  it('agree where the part is moved to the key of the others', () => {
    const fit = readKeyFit(table, keyed(1)) // a B flat instrument: two sharps more
    expect(fit.agree[10]).toBe(1)
    expect(fit.agree[0]).toBe(0)
  })

  it('know a signature that is missing from one that is wrong', () => {
    const fit = readKeyFit(table, keyed(0))
    expect(fit.agree[11]).toBe(1)
    expect(fit.open[10]).toBe(1)
    expect(readKeyFit(table, keyed(3)).open[10]).toBe(0)
  })

  it('say nothing where the others do not agree', () => {
    const split = emptyKeys(12)
    for (const fifths of [0, 3]) addKeys(split, keyed(fifths), UNISON, 1)
    expect(readKeyFit(split, keyed(0)).measures).toBe(0)
  })
})

describe('registers', () => {
  it('measure how far a line leaves what the instrument can play', () => {
    const compass = compassOf(instrumentById('bassoon'), 0)
    if (!compass) throw new Error('the bassoon has a range')
    const low = readHistograms(line('A', [34, 33, 32, 40]))
    expect(measureRegister(low, [0], compass)).toMatchObject({outside: 0.75, far: 0.5})
    expect(measureRegister(low, [12], compass)).toMatchObject({outside: 0, far: 0})
  })

  it('give crooked horns a compass that moves with the crook', () => {
    const horn = instrumentById('natural-horn')
    expect(compassOf(horn, -2)?.usualLow).toBe((compassOf(horn, -14)?.usualLow ?? 0) + 12)
  })

  it('find the leaps at changes of clef', () => {
    const leaps = readLeaps(line('A', [60, 62, 48, 50, 64], [0, 0, 1, 1, 0]))
    expect(leaps).toEqual([
      {from: 0, to: 1, distance: -14},
      {from: 1, to: 0, distance: 14},
    ])
  })
})
