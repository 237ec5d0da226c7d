import {describe, expect, test} from 'vitest'
import {prove} from '../../lib/proof/compare.ts'
import type {Proof} from '../../lib/proof/compare.ts'
import {corpusScores, hasCorpus, readCorpusText} from '../support/corpus.ts'
import {alteringMutants, choose, silentMutants} from './mutants.ts'
import type {Mutant} from './mutants.ts'
import {attributes, backup, clef, forward, note, score, sourceOf, transpose} from './score.ts'

const SEED = 20240611

/** The verdicts that are not the wanted one, as `kind: verdict`. */
async function wrongVerdicts(text: string, mutants: readonly Mutant[], wanted: Proof['verdict']) {
  const wrong = []
  for (const mutant of mutants) {
    const {verdict} = await prove(sourceOf(text), sourceOf(mutant.text))
    if (verdict !== wanted) wrong.push(`${mutant.kind}: ${verdict}`)
  }
  return wrong
}

/** Three bars for clarinet and a keyboard, by nobody, with one of everything. */
const ours = score({
  'P1 Clarinet in B flat': [
    attributes(
      `<divisions>4</divisions><key><fifths>1</fifths></key><time><beats>3</beats><beat-type>4</beat-type></time>${clef('G', 2)}${transpose(-1, -2)}`,
    ) +
      note('G4', 4) +
      note('A#4', 2) +
      note('B4', 2) +
      note('D5', 0, {grace: true}) +
      note('C5', 4),
    note('B4', 4, {tie: 'start'}) + note('B4', 4, {tie: 'stop'}) + note('E5', 2) + note('E5', 2),
    note('F#4', 4) + note('A4', 4, {chord: true}) + note('r', 4) + note('G(+0.5)4', 4),
  ],
  'P2 Celesta': [
    attributes(
      `<divisions>2</divisions><time><beats>3</beats><beat-type>4</beat-type></time>${clef('G', 2)}`,
    ) +
      note('C5', 6, {voice: 1}) +
      backup(6) +
      note('E4', 2, {voice: 2}) +
      note('F4', 4, {voice: 2}),
    attributes('<divisions>6</divisions>') +
      note('Bb4', 2) +
      note('A4', 4) +
      forward(6) +
      note('C4', 6, {cue: true}),
    note('C4', 18) + backup(12) + note('G3', 12, {voice: 2}),
  ],
})

describe('mutants of our own score', () => {
  test('every change that alters sound is found', async () => {
    const mutants = alteringMutants(ours)
    expect(mutants.length).toBeGreaterThan(200)
    expect(await wrongVerdicts(ours, mutants, 'different')).toEqual([])
  })

  test('no change that is silent is reported', async () => {
    const mutants = silentMutants(ours)
    expect(mutants.length).toBeGreaterThan(100)
    expect(await wrongVerdicts(ours, mutants, 'equal')).toEqual([])
  })

  test('every operator has its mutants', () => {
    const kinds = new Set(alteringMutants(ours).map(({kind}) => kind))
    expect([...kinds]).toHaveLength(21)
  })
})

describe.skipIf(!hasCorpus)('mutants of the corpus', () => {
  /** Partwise scores small enough to be read ten thousand times. */
  const scores = corpusScores()
    .filter(({wellFormed}) => wellFormed)
    .map((file) => ({name: file.name, text: readCorpusText(file)}))
    .filter(
      ({text}) =>
        text.length < 40_000 && /<score-partwise/.test(text) && !/<!--[^>]*<note/.test(text),
    )

  async function judge(
    mutantsOf: (text: string) => readonly Mutant[],
    each: number,
    wanted: Proof['verdict'],
  ) {
    const wrong = []
    let count = 0
    for (const {name, text} of scores) {
      const mutants = choose(mutantsOf(text), each, SEED)
      count += mutants.length
      for (const line of await wrongVerdicts(text, mutants, wanted)) wrong.push(`${name}: ${line}`)
    }
    return {wrong, count}
  }

  test('every change that alters sound is found', {timeout: 300_000}, async () => {
    const {wrong, count} = await judge(alteringMutants, 30, 'different')
    expect(wrong).toEqual([])
    expect(count).toBeGreaterThanOrEqual(5000)
  })

  test('no change that is silent is reported', {timeout: 300_000}, async () => {
    const {wrong, count} = await judge(silentMutants, 15, 'equal')
    expect(wrong).toEqual([])
    expect(count).toBeGreaterThanOrEqual(2000)
  })
})
