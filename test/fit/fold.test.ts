import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {DEFAULT_COSTS, createPricing} from '../../lib/fit/fold-price.ts'
import {foldLine, priceOf} from '../../lib/fit/fold.ts'
import type {FoldPlan} from '../../lib/fit/fold.ts'
import {surroundingsOf} from '../../lib/fit/surroundings.ts'
import type {Line} from '../../lib/fit/line.ts'
import type {Reach} from '../../lib/fit/reach.ts'
import {formatPitch, midiOf, naturalAt, parsePitch} from '../../lib/pitch/pitch.ts'
import {linesFrom} from './notes.ts'

const key = (name: string): number => {
  const pitch = parsePitch(name)
  if (!pitch) throw new Error(name)
  return midiOf(pitch)
}

const reach = (low: string, high: string, easyLow = low, easyHigh = high): Reach => ({
  low: key(low),
  high: key(high),
  easyLow: key(easyLow),
  easyHigh: key(easyHigh),
})

/** `5.1–8.4 +1`: the measures as printed, the onset from 1 and the octaves. */
function shown(line: Line, plan: FoldPlan): string[] {
  return plan.folds.map(
    ({from, to, octaves}) =>
      `${line.facts.numbers[from.measure]}.${from.onset + 1}–${line.facts.numbers[to.measure]}.${to.onset + 1} ${octaves > 0 ? '+' : ''}${octaves}`,
  )
}

async function fold(text: string, to: Reach, ...others: string[]) {
  const [line, ...rest] = await linesFrom(text, ...others)
  if (!line) throw new Error('no line')
  const surroundings = rest.length > 0 ? surroundingsOf(line, rest) : undefined
  const plan = foldLine(line, to, {surroundings})
  return {line, plan, shown: shown(line, plan)}
}

function choices(count: number, octaves: readonly number[]): number[][] {
  if (count === 0) return [[]]
  return choices(count - 1, octaves).flatMap((rest) => octaves.map((octave) => [...rest, octave]))
}

describe('folding a line', () => {
  it('leaves alone what lies well', async () => {
    const {plan} = await fold('C3 D3 E3 F3 | G3 A3 B3 C4', reach('C2', 'C5'))
    expect(plan.folds).toEqual([])
    expect(plan.cost).toBe(0)
  })

  it('moves a whole phrase for one note that cannot be played', async () => {
    const {plan, shown: folds} = await fold(
      'C3 D3 E3 F3 | r:4 | E2 D2 C2 B1 | C2 D2 E2 C2 | r:4 | C3 D3 E3 F3',
      reach('C2', 'C5'),
    )
    expect(folds).toEqual(['3.1–4.4 +1'])
    expect(plan.folds[0]?.reason).toBe(
      '1 of its 8 notes lies below C2, the lowest that can be played',
    )
  })

  it('moves a phrase of which more than a fifth is uncomfortable, but not for a fifth (O5 b)', async () => {
    const easy = reach('C1', 'C5', 'C2', 'C4')
    expect((await fold('C2 D2 E2 B1 | E2 F2 G2 A2 | B2 C3', easy)).shown).toEqual([])
    expect((await fold('C2 D2 B1 A1 | E2 F2 G2 B1 | B2 C3', easy)).shown).toEqual(['1.1–3.2 +1'])
  })

  it('moves down as well as up', async () => {
    expect((await fold('C5 D5 E5 F5 | G5 A5 B5 C6', reach('C3', 'C5'))).shown).toEqual([
      '1.1–2.4 -1',
    ])
  })

  it('does not take a short rest for the end of a phrase', async () => {
    const oompah = 'C3 r B1 r | C3 r G2 r | C3 r D2 r | C3 r C3 r'
    expect((await fold(oompah, reach('C2', 'C5'))).shown).toEqual(['1.1–4.3 +1'])
  })

  it('parts a phrase at the clearest place when no octave holds all of it', async () => {
    // Three octaves in one breath for an instrument of two: it has to turn somewhere, and the rest is the place.
    const {shown: folds, plan} = await fold(
      'C2 D2 E2 F2 | G2 A2 B2 C3 | D3 r D4 E4 | F4 G4 A4 C5',
      reach('C3', 'C5'),
    )
    expect(plan.unplayable).toEqual([])
    expect(folds).toEqual(['1.1–3.1 +1'])
  })

  it.each([
    ['a slur', 'C2 D2 E2 F2( | C5 D5) E5 F5'],
    ['a tie', 'C2 D2 E2 C5_ | C5~ D2 E5 F5'],
    ['a beam', 'C2 D2 E2 F2[ | C5] D5 E5 F5'],
  ])('never splits %s, and lists what then stays out of reach', async (_, text) => {
    const {line, plan} = await fold(text, reach('C4', 'C6'))
    const starts = plan.registers.map(({measure, onset}) => `${measure}/${onset}`)
    expect(starts).not.toContain('1/0')
    for (const attack of line.attacks)
      if (attack.bound) expect(starts).not.toContain(`${attack.measure}/${attack.onset}`)
  })

  it('does not start a fold where a chord ties one note over and strikes another', async () => {
    const {line} = await fold('C3 D3 E3 C3_ | C3~+E3 D3 E3 F3', reach('C2', 'C5'))
    expect(line.attacks.find(({measure, onset}) => measure === 1 && onset === 0)?.bound).toBe(true)
  })

  it('keeps a bass below the next bass where both octaves are as good', async () => {
    const bass = 'C2 D2 E2 F2 | G2 F2 E2 C2'
    const next = 'C3 D3 E3 F3 | G3 F3 E3 C3'
    const to = reach('C1', 'C5', 'E2', 'C5')
    const alone = await fold(bass, to)
    expect(alone.shown).toEqual(['1.1–2.4 +1'])
    const lower = 'A1 B1 C2 D2 | E2 D2 C2 A1'
    expect((await fold(bass, to, next)).plan.cost).toBeGreaterThan(alone.plan.cost)
    expect((await fold(bass, to, lower)).plan.cost).toBe(alone.plan.cost)
  })

  it('holds a register over what is tied on after the last attack', async () => {
    const {plan} = await fold(
      'C3 D3 E3 F3 | r:4 | B1 C2 D2 C2_ | C2:4~ | r:4 | B3 C4 B3 A3',
      reach('C2', 'C4'),
    )
    expect(plan.registers).toEqual([
      {measure: 2, onset: 0, octaves: 1},
      {measure: 5, onset: 0, octaves: 0},
    ])
  })
})

describe('the optimum', () => {
  const note = fc.integer({min: 7, max: 35}).map((steps) => formatPitch(naturalAt(steps)))
  const measure = fc.tuple(
    fc.array(note, {minLength: 4, maxLength: 4}),
    fc.constantFrom('', '', ' || ', "'", 'r'),
  )
  const melody = fc
    .array(measure, {minLength: 1, maxLength: 6})
    .map((measures) =>
      measures
        .map(([notes, end]) =>
          end === "'"
            ? `${notes.join(' ')}'`
            : end === 'r'
              ? `${notes.join(' ')} | r:4`
              : notes.join(' ') + end,
        )
        .join(' | '),
    )
  const range = fc
    .tuple(
      fc.integer({min: 24, max: 50}),
      fc.integer({min: 8, max: 36}),
      fc.integer({min: 0, max: 6}),
    )
    .map(([low, width, ease]) => ({
      low,
      high: low + width,
      easyLow: low + Math.min(ease, width / 2),
      easyHigh: low + width - Math.min(ease, width / 2),
    }))

  it('is as good as trying everything', async () => {
    const octaves = [0, 1, -1, 2]
    let folded = 0
    let compared = 0
    await fc.assert(
      fc.asyncProperty(melody, melody, range, async (text, other, to) => {
        const [line, bass] = await linesFrom(text, other)
        if (!line || !bass) return
        const surroundings = surroundingsOf(line, [bass])
        const plan = foldLine(line, to, {octaves, surroundings})
        fc.pre(plan.phrases.length <= 6)
        compared++
        const pricing = createPricing(line, to, plan.phrases, DEFAULT_COSTS, surroundings)
        const best = Math.min(
          ...choices(plan.phrases.length, octaves).map((each) =>
            priceOf(plan.phrases, each, pricing),
          ),
        )
        const own = plan.phrases.map((phrase) => phrase.octaves)
        if (own.some((octave) => octave !== own[0])) folded++
        expect(plan.cost).toBeCloseTo(best, 9)
        expect(priceOf(plan.phrases, own, pricing)).toBeCloseTo(best, 9)
      }),
      {numRuns: 250, seed: 5},
    )
    expect(compared).toBeGreaterThan(200)
    expect(folded).toBeGreaterThan(30)
  })

  it('covers every attack with exactly one phrase', async () => {
    await fc.assert(
      fc.asyncProperty(melody, range, async (text, to) => {
        const [line] = await linesFrom(text)
        if (!line) return
        const {phrases} = foldLine(line, to)
        let next = 0
        for (const {from, to: end} of phrases) {
          expect(from).toBe(next)
          expect(end).toBeGreaterThanOrEqual(from)
          next = end + 1
        }
        expect(next).toBe(line.attacks.length)
      }),
      {numRuns: 100, seed: 6},
    )
  })
})
