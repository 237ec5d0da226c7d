import {describe, expect, it} from 'vitest'
import {renotatePart} from '../lib/index.ts'
import type {Diagnostic} from '../lib/index.ts'
import {collect, sourceOf} from './support/bytes.ts'
import {demoScore} from './support/fixtures.ts'

async function told(score: string, part: string): Promise<string[]> {
  const all: Diagnostic[] = []
  const bytes = new TextEncoder().encode(score)
  const report = (each: Diagnostic): void => void all.push(each)
  await collect(renotatePart(sourceOf(bytes), {part, report}))
  return all.filter(({code}) => code === 'part/marks-elsewhere').map(({message}) => message)
}

const demo = new TextDecoder().decode(demoScore())

function partOf(id: string, measures: readonly string[]): string {
  const rest = '<note><rest/><duration>1</duration></note>'
  const printed = measures.map((more, at) => `<measure number="${at + 5}">${more}${rest}</measure>`)
  return `<part id="${id}">${printed.join('')}</part>`
}

/** Two parts of two measures; each has a quarter rest, and what is given. */
function twoParts(top: readonly [string, string], own: readonly [string, string]): string {
  const flute = '<score-part id="A"><part-name>Flute</part-name></score-part>'
  const tuba = '<score-part id="B"><part-name>Tuba</part-name></score-part>'
  const music = partOf('A', top) + partOf('B', own)
  return `<score-partwise><part-list>${flute}${tuba}</part-list>${music}</score-partwise>`
}

const direction = (what: string, attributes = ''): string =>
  `<direction${attributes}><direction-type>${what}</direction-type></direction>`
const LETTER = direction('<rehearsal>A</rehearsal>')
const TRIO = direction('<words>Trio</words>', ' system="only-top"')
const VOLTA = '<barline location="right"><ending number="1" type="stop"/></barline>'

describe('marks that only the top part has', () => {
  it('are told of a part that is taken out', async () => {
    expect(await told(demo, 'P9')).toEqual([
      'only Petite flûte en ré♭ has 3 rehearsal marks, 1 metronome mark, the first in measure 1: this part goes without',
    ])
    expect(await told(demo, 'P1')).toEqual([])
  })

  it.each([
    ['each kind', [LETTER, VOLTA], ['', ''], '1 rehearsal mark, 1 ending, the first in measure 5'],
    ['directions for all', ['', TRIO], ['', ''], '1 other direction, the first in measure 6'],
    [
      'what is there and elsewhere',
      [LETTER, LETTER],
      [LETTER, ''],
      '1 rehearsal mark, the first in measure 6',
    ],
  ] as const)('count %s', async (_what, top, own, words) => {
    expect(await told(twoParts(top, own), 'B')).toEqual([
      `only Flute has ${words}: this part goes without`,
    ])
  })

  it('are not told where the part has them, or they are for one player', async () => {
    expect(await told(twoParts([LETTER, VOLTA], [LETTER, VOLTA]), 'B')).toEqual([])
    expect(await told(twoParts([direction('<words>dolce</words>'), ''], ['', '']), 'B')).toEqual([])
  })
})
