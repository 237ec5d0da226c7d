import {describe, expect, test} from 'vitest'
import {prove} from '../../lib/proof/compare.ts'
import type {Proof} from '../../lib/proof/compare.ts'
import {corpusScores, hasCorpus, readCorpusText} from '../support/corpus.ts'
import {ALTERING_KINDS, alteringMutants} from './mutants/altering.ts'
import {choose} from './mutants/mutant.ts'
import type {Mutant} from './mutants/mutant.ts'
import {SILENT_KINDS, silentMutants} from './mutants/silent.ts'
import {
  attributes,
  backup,
  clef,
  forward,
  note,
  pitchElement,
  score,
  sourceOf,
  transpose,
} from './score.ts'

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

/** A note with all that is drawn on paper and not heard. */
const DRESSED =
  '<direction placement="above"><direction-type><words>dolce</words></direction-type></direction><note default-x="80"><pitch><step>G</step><octave>4</octave></pitch><duration>4</duration><type>quarter</type><accidental>natural</accidental><stem default-y="10">up</stem><beam number="1">begin</beam><lyric number="1"><text>la</text></lyric></note>'

/** Three bars for clarinet and a keyboard, by nobody, with one of everything. */
const ours = score({
  'P1 Clarinet in B flat': [
    attributes(
      `<divisions>4</divisions><key><fifths>1</fifths></key><time><beats>3</beats><beat-type>4</beat-type></time>${clef('G', 2)}${transpose(-1, -2)}`,
    ) +
      DRESSED +
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
    note('C4', 18) + backup(10) + note('G3', 10, {voice: 2}),
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
    const kinds = [...alteringMutants(ours), ...silentMutants(ours)].map(({kind}) => kind)
    expect([...ALTERING_KINDS, ...SILENT_KINDS].filter((kind) => !kinds.includes(kind))).toEqual([])
  })

  test('one wrong pitch is told as one difference, where it is', async () => {
    const alone = 'D5'
    const mutants = alteringMutants(ours).filter(
      ({kind, text}) => kind.startsWith('an octave') && !text.includes(pitchElement(alone)),
    )
    expect(mutants).toHaveLength(2)
    for (const {text} of mutants) {
      const {pairs} = await prove(sourceOf(ours), sourceOf(text))
      expect(pairs.map(({different}) => different)).toEqual([1, 0])
      expect(pairs[0]?.differences[0]).toMatchObject({measure: '1', beat: '3', kind: 'pitch'})
    }
  })
})

/** What small scores have too little of. */
const RARE = [
  'a grace note dropped',
  'a tie broken',
  'a tie added',
  'another transposition',
  'a backup too far',
  'a backup too short',
  'other divisions',
]

function rareMutants(text: string): readonly Mutant[] {
  return alteringMutants(text).filter(({kind}) => RARE.includes(kind))
}

describe.skipIf(!hasCorpus)('mutants of the corpus', () => {
  const scores = corpusScores()
    .filter(({wellFormed}) => wellFormed)
    .map((file) => ({name: file.name, text: readCorpusText(file)}))
    .filter(({text}) => /<score-partwise/.test(text) && !/<!--[^>]*<note/.test(text))
  /** Small enough to be read ten thousand times. */
  const small = scores.filter(({text}) => text.length < 60_000)
  const large = scores.filter(({text}) => text.length >= 60_000 && text.length < 500_000)

  async function judge(
    list: typeof scores,
    mutantsOf: (text: string) => readonly Mutant[],
    each: number,
    wanted: Proof['verdict'],
  ) {
    const wrong = []
    let count = 0
    for (const {name, text} of list) {
      const mutants = choose(mutantsOf(text), each, SEED)
      count += mutants.length
      for (const line of await wrongVerdicts(text, mutants, wanted)) wrong.push(`${name}: ${line}`)
    }
    return {wrong, count}
  }

  test('every change that alters sound is found', {timeout: 300_000}, async () => {
    const {wrong, count} = await judge(small, alteringMutants, 36, 'different')
    expect(wrong).toEqual([])
    expect(count).toBeGreaterThanOrEqual(5000)
  })

  test('ties, backups and transpositions of larger scores', {timeout: 300_000}, async () => {
    const {wrong, count} = await judge(large, rareMutants, 8, 'different')
    expect(wrong).toEqual([])
    expect(count).toBeGreaterThanOrEqual(100)
  })

  test('no change that is silent is reported', {timeout: 300_000}, async () => {
    const {wrong, count} = await judge(small, silentMutants, 25, 'equal')
    expect(wrong).toEqual([])
    expect(count).toBeGreaterThanOrEqual(2000)
  })
})
