import {describe, expect, it} from 'vitest'
import {clockOf} from '../../lib/fit/clock.ts'
import {doublingOf, lossOf} from '../../lib/fit/company.ts'
import {countCovers, doubledBy, rankCovers, writtenFifths} from '../../lib/fit/cover.ts'
import {reasonsFor} from '../../lib/fit/cover-reasons.ts'
import {keysOf} from '../../lib/fit/reach.ts'
import {kinshipOf} from '../../lib/fit/kinship.ts'
import {lineOf} from '../../lib/fit/line.ts'
import type {Line} from '../../lib/fit/line.ts'
import {catalogueCandidates} from '../../lib/ensemble/candidates.ts'
import {instrumentById, instruments} from '../../lib/instruments/instrument.ts'
import type {Instrument} from '../../lib/instruments/instrument.ts'
import {keyName} from '../../lib/fit/key-name.ts'
import {factsFrom, linesFrom} from './notes.ts'

function known(id: string): Instrument {
  const found = instrumentById(id)
  if (!found) throw new Error(id)
  return found
}

/** A plain part for an instrument: scales through the lower two octaves of its comfortable range, in phrases. */
async function plainPart({ranges}: Instrument): Promise<Line> {
  const range = ranges.tutti ?? ranges.pro
  if (!range) throw new Error('no range')
  const [low, high] = keysOf(range)
  const top = Math.min(high, low + 24)
  const keys = Array.from({length: top - low + 1}, (_, index) => low + index)
  const measures = []
  for (let at = 0; at + 4 <= keys.length; at += 2)
    measures.push(
      keys
        .slice(at, at + 4)
        .map(keyName)
        .join(' '),
      'r:4',
    )
  const facts = await factsFrom([measures.join(' | ')])
  const own = facts.get('P1')
  if (!own) throw new Error('no part')
  return lineOf(own, clockOf([own]))
}

function rank(line: Line, missing: Instrument) {
  const candidates = catalogueCandidates(instruments, missing, 'tutti', [])
  return rankCovers({line, missing, others: [], candidates, byId: instrumentById})
}

describe('published advice', () => {
  /** Beyond common practice: the cover lists that name somebody (`source_cover` of the catalogue). */
  const sourced: readonly (readonly [missing: string, cover: string, source: string])[] = [
    ['sarrusophone-contrabass-e-flat', 'contrabassoon', 'GEHR; BND'],
    ['sarrusophone-contrabass-c', 'contrabassoon', 'GEHR; BND'],
    ['bass-saxophone-b-flat', 'tuba', 'WP: tuba usually takes the band part'],
    ['bassoon', 'bass-clarinet-b-flat', 'WIEL after Blatter'],
    ['tenoroon', 'english-horn', 'BERL djvu 141'],
    ['horn-f', 'alto-horn-e-flat', 'BND; KOE p.122'],
    ['wagner-tuba-tenor-b-flat', 'euphonium', 'WP'],
    ['trumpet-b-flat', 'cornet-b-flat', 'GEHR'],
    ['petit-bugle-e-flat', 'soprano-cornet-e-flat', 'ITWP'],
    ['tenorhorn-b-flat', 'baritone-horn', 'MVP; KNAP'],
    ['baritone-horn', 'euphonium', 'GRV2B'],
    ['bariton-german', 'tenorhorn-b-flat', 'MVP; KNAP'],
    ['ophicleide-c', 'bass-tuba-f', 'LAV; BREN'],
    ['violin', 'clarinet-b-flat', 'KOE p.121'],
    ['viola', 'alto-clarinet-e-flat', 'KOE p.122'],
    ['cello', 'bass-clarinet-b-flat', 'KOE p.122'],
    ['double-bass', 'tuba', 'KOE p.124'],
  ]

  it.each(sourced)(
    'a plain part for %s: %s is among the first five (%s)',
    async (missing, cover) => {
      const line = await plainPart(known(missing))
      const first = rank(line, known(missing)).slice(0, 5)
      expect(first.map(({instrument}) => instrument.id)).toContain(cover)
    },
  )

  it(
    'puts the first of each list among the first five whenever no note is lost by it',
    {timeout: 60_000},
    async () => {
      let checked = 0
      for (const missing of instruments) {
        const [advised] = missing.cover
        if (advised === undefined || !(missing.ranges.tutti ?? missing.ranges.pro)) continue
        const line = await plainPart(missing)
        const covers = rank(line, missing)
        const place = covers.findIndex(({instrument}) => instrument.id === advised)
        // Bass drum for timpani: a cover without pitches has no range to judge by.
        if (place < 0 || (covers[place]?.unplayable.length ?? 0) > 0) continue
        checked++
        expect(place, `${missing.id}: ${advised} is number ${place + 1}`).toBeLessThan(5)
      }
      expect(checked).toBeGreaterThan(140)
    },
  )
})

const between = (a: string, b: string) => kinshipOf(known(a), known(b), instrumentById)

describe('kinship', () => {
  it('counts the advice of the trade first, with its source', () => {
    expect(between('contrabassoon', 'sarrusophone-contrabass-e-flat')).toMatchObject({
      advice: {place: 1, source: 'CP'},
      reasons: ["the trade's first choice (CP)", 'both have a double reed', 'both of conical bore'],
    })
  })

  it('then family, reed, bore and register', () => {
    const strangers = between('saxhorn-contrabass-b-flat', 'flute').likeness
    const cousins = between('saxhorn-contrabass-b-flat', 'ophicleide-c').likeness
    const advised = between('saxhorn-contrabass-b-flat', 'contrabass-tuba-b-flat').likeness
    expect(strangers).toBeLessThan(0.2)
    expect(cousins).toBeGreaterThan(strangers)
    expect(advised).toBeGreaterThan(cousins)
    expect(between('tuba', 'tuba').likeness).toBe(1)
  })

  it('knows who is ever named as a cover', () => {
    const counts = countCovers(instruments)
    expect(counts.get('tuba')).toBeGreaterThan(10)
    expect(counts.has('serpent')).toBe(false)
  })
})

describe('the company of a line', () => {
  it('tells who doubles it, and where', async () => {
    const [bass, octave, other] = await linesFrom('C2 D2 E2 F2', 'C3 D3 E3 F3', 'C4 r E4 r')
    if (!bass || !octave || !other) return
    expect(doublingOf(bass, octave)).toEqual({share: 1, octaves: 1})
    expect(doublingOf(bass, other)).toEqual({share: 0.5, octaves: 2})
    const seats = [
      {part: 'P3', name: 'other', line: other},
      {part: 'P2', name: 'octave', line: octave},
    ]
    expect(doubledBy(bass, seats).map(({part}) => part)).toEqual(['P2', 'P3'])
  })

  it('tells what the coverer gives up', async () => {
    const [missing, own, other] = await linesFrom(
      'C2 D2 r r | C2 D2 E2 F2',
      'E3 F3 G3 A3 | r:2 E3 F3',
      'E4 r:3 | r:4',
    )
    if (!missing || !own || !other) return
    // Four of six fall together with the missing voice; E3 of the first measure is played above by somebody else.
    const loss = lossOf(own, missing, [other])
    expect(loss.together).toBeCloseTo(4 / 6)
    expect(loss.essential).toBeCloseTo(3 / 6)
    expect(loss.free).toBeCloseTo(2 / 6)
  })

  it('does not count a note that ends where the other begins', async () => {
    const [missing, own] = await linesFrom('C2 r C2 r', 'r C3 r C3')
    if (missing && own)
      expect(lossOf(own, missing, [])).toEqual({together: 0, essential: 0, free: 1})
  })
})

it('ranks by what would be lost, and says why', async () => {
  const facts = await factsFrom([
    'C2 D2 E2 F2 | r:4 | G1 F1 E1 D1',
    'C3 D3 E3 F3 | r:4 | G2 F2 E2 D2',
    'r:4 | C4 D4 E4 F4 | r:4',
  ])
  const clock = clockOf(facts.values())
  const [line, bassoons, horns] = [...facts.values()].map((each) => lineOf(each, clock))
  if (!line || !bassoons || !horns) return
  const others = [
    {part: 'P2', name: 'Bassoons', line: bassoons},
    {part: 'P3', name: 'Horns', line: horns},
  ]
  const candidates = [
    {instrument: known('bassoon'), tier: 'tutti', part: 'P2'},
    {instrument: known('horn-f'), tier: 'tutti', part: 'P3'},
    {instrument: known('tuba'), tier: 'tutti', player: 'Ada', avoids: [0]},
    {instrument: known('contrabassoon'), tier: 'tutti', player: 'Bo'},
  ] as const
  const missing = known('saxhorn-contrabass-b-flat')
  const covers = rankCovers({line, missing, others, candidates, byId: instrumentById})
  expect(covers.map(({instrument}) => instrument.id)).toEqual([
    'contrabassoon',
    'tuba',
    'horn-f',
    'bassoon',
  ])
  const [first, , third, fourth] = covers.map((cover) => reasonsFor(line, cover))
  expect(first?.slice(0, 2)).toEqual(['at pitch throughout', "the trade's fourth choice (CP)"])
  expect(third).toContain('rests whenever the missing voice plays')
  expect(fourth).toContain(
    "100 % of their own notes fall together with it, 100 % of them being nobody else's",
  )
  expect(covers.at(-1)?.fold.folds.length).toBeGreaterThan(0)
})

it('weighs the signature that a player would read', async () => {
  const facts = await factsFrom(['C2'])
  const own = facts.get('P1')
  const state = own?.states[0]
  if (!own || !state) return
  const inEflat = {...own, states: [{...state, state: {...state.state, key: {fifths: -3}}}]}
  const line = lineOf(inEflat, clockOf([inEflat]))
  expect(writtenFifths(line, known('clarinet-b-flat'))).toBe(-1)
  expect(writtenFifths(line, known('alto-saxophone-e-flat'))).toBe(0)
  expect(writtenFifths(line, known('tuba'))).toBe(-3)
})
