import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {attacksOf, weaveLines} from '../../lib/ensemble/weave.ts'
import type {Strand} from '../../lib/ensemble/weave.ts'
import {phrasesOf, seamsOf} from '../../lib/fit/phrases.ts'
import {linesFrom} from '../fit/notes.ts'

/** `own 1-4`: whose phrase it is, and its measures from 1. */
async function weave(parts: readonly [string, string, ...string[]], keepsOwn = false) {
  const [own, missing, ...others] = await linesFrom(...parts)
  if (!own || !missing) throw new Error('two parts at least')
  const {played, silent} = weaveLines(own, missing, others, {keepsOwn})
  const words = ({whose, from, to}: Strand): string => {
    const {attacks} = whose === 'own' ? own : missing
    return `${whose} ${(attacks[from]?.measure ?? 0) + 1}-${(attacks[to]?.measure ?? 0) + 1}`
  }
  return {played: played.map(words), silent: silent.map(words), strands: {played, silent}}
}

const REST = 'r:4 | r:4'
const TUNE = 'C3 D3 E3 F3 | G3 F3 E3 D3'
const BASS = 'C2:2 G2:2 | E2:2 C2:2'

describe('a voice woven into a part', () => {
  it('is played where the player rests', async () => {
    const {played, silent} = await weave([`${TUNE} | ${REST}`, `${REST} | ${BASS}`])
    expect(played).toEqual(['own 1-2', 'missing 3-4'])
    expect(silent).toEqual([])
  })

  it('gives way to music that nobody else has', async () => {
    const {played, silent} = await weave([TUNE, BASS])
    expect([played, silent]).toEqual([['own 1-2'], ['missing 1-2']])
  })

  it('goes before music that others play too', async () => {
    const octave = TUNE.replaceAll('3', '4')
    const {played, silent} = await weave([TUNE, BASS, octave])
    expect([played, silent]).toEqual([['missing 1-2'], ['own 1-2']])
    expect((await weave([TUNE, BASS, octave], true)).played).toEqual(['own 1-2'])
  })

  it('is parted at a barline where only some of it falls into rests', async () => {
    const voice = `${BASS} | ${BASS}`.replaceAll(' | ', ' | ')
    const {played, silent} = await weave([`${TUNE} | ${REST}`, voice])
    expect(played).toEqual(['own 1-2', 'missing 3-4'])
    expect(silent).toEqual(['missing 1-2'])
  })

  it('is not parted inside a slur or a tie', async () => {
    for (const voice of [
      'C2:2 G2:2( | E2:2 C2:2 | D2:2 E2:2) | C2:4',
      'C2:2 G2:2 | E2:4_ | E2:4~ | C2:4',
    ]) {
      const {strands} = await weave([`${TUNE} | ${REST}`, voice])
      for (const each of [...strands.played, ...strands.silent])
        if (each.whose === 'missing') expect([each.from, each.to]).not.toContain(2)
    }
  })

  it('is not parted behind a tied note that ends within the measure', async () => {
    const {played, silent} = await weave(['C3 D3 E3 F3 | r:4', 'G3 A3 B3 C4_ | C4~ D4 B3 A3'])
    expect([played, silent]).toEqual([['own 1-1'], ['missing 1-2']])
  })

  it('leaves no attack out, and is parted at phrases, barlines and rests only', async () => {
    await fc.assert(
      fc.asyncProperty(anyMeasures(), anyMeasures(), async (own, missing) => {
        const lines = await linesFrom(own, missing)
        const [mine, theirs] = lines
        if (!mine || !theirs) return
        const {played, silent} = weaveLines(mine, theirs, [])
        for (const [index, whose] of (['own', 'missing'] as const).entries()) {
          const line = lines[index] ?? mine
          const strands = [...played, ...silent].filter((each) => each.whose === whose)
          const attacks = strands.flatMap((each) => attacksOf(line, each))
          expect(new Set(attacks).size).toBe(line.attacks.length)
          expect(attacks).toHaveLength(line.attacks.length)
          const phrases = phrasesOf(line, seamsOf(line)).map(({from}) => from)
          for (const {from} of strands) {
            const [before, first] = [line.attacks[from - 1], line.attacks[from]]
            if (!before || !first || phrases.includes(from)) continue
            expect(whose).toBe('missing')
            expect(first.bound).toBe(false)
            const barline = line.clock.starts[first.measure] ?? 0
            expect(barline >= before.end || first.start > before.end).toBe(true)
          }
        }
      }),
      {numRuns: 80},
    )
  })

  it('is the heaviest choice of all without an overlap', {timeout: 60_000}, async () => {
    const token = fc.constantFrom('r', 'C3', 'E3', 'G3', 'r:2', 'C3:2', 'r:4')
    const anyPart = fc.array(token, {minLength: 6, maxLength: 14}).map(inMeasures)
    await fc.assert(
      fc.asyncProperty(anyPart, anyPart, anyPart, async (own, missing, other) => {
        const {strands} = await weave([own, missing, other])
        const all = [...strands.played, ...strands.silent]
        fc.pre(all.length <= 12)
        expect(weigh(strands.played)).toBeCloseTo(best(all), 9)
        expect(overlaps(strands.played)).toBe(false)
      }),
      {numRuns: 120},
    )
  })
})

/** Measures as they follow each other, some in pairs that a slur or a tie binds. */
function anyMeasures(): fc.Arbitrary<string> {
  const measures = [
    'r:4',
    'C3 D3 E3 F3',
    'G3:2 r:2',
    'r:2 A3 B3',
    'C3( D3 E3 F3)',
    'r E3 r:2',
    'C3:1/2[ D3:1/2 E3:1/2 F3:1/2] r:2',
    'C3 D3 E3( F3 | G3 A3) r:2',
    'r:3 C3_ | C3:2~ D3 E3',
    'C4 C2 E4 C2',
  ]
  const some = fc.array(fc.constantFrom(...measures), {minLength: 1, maxLength: 5})
  return some.map((each) => each.join(' | '))
}

/** The tokens four quarters to a measure; what would cross a barline becomes a quarter. */
function inMeasures(tokens: readonly string[]): string {
  const measures: string[][] = [[]]
  let left = 4
  for (const token of tokens) {
    const length = Number(token.split(':')[1] ?? 1)
    const fits = length <= left
    measures.at(-1)?.push(fits ? token : (token.split(':')[0] ?? 'r'))
    left -= fits ? length : 1
    if (left > 0) continue
    measures.push([])
    left = 4
  }
  if (left < 4) measures.at(-1)?.push(`r:${left}`)
  else measures.pop()
  return measures.map((each) => each.join(' ')).join(' | ')
}

/** As it is documented: a note of the missing voice counts 1, of one's own 0.2, and 10 more if nobody else has it. */
function weigh(strands: readonly Strand[]): number {
  return strands.reduce(
    (sum, {whose, from, to, essential}) =>
      sum + (to - from + 1) * (whose === 'missing' ? 1 : 0.2 + 10 * essential),
    0,
  )
}

function overlaps(strands: readonly Strand[]): boolean {
  return strands.some((a, index) =>
    strands.some((b, other) => other > index && a.start < b.end && b.start < a.end),
  )
}

/** By trying all there are. */
function best(strands: readonly Strand[]): number {
  let most = 0
  for (let set = 0; set < 2 ** strands.length; set++) {
    const chosen = strands.filter((_, index) => set & (2 ** index))
    if (!overlaps(chosen)) most = Math.max(most, weigh(chosen))
  }
  return most
}
