import {expect, it} from 'vitest'
import type {Interval} from '../../lib/index.ts'
import type {Belief} from '../../lib/survey/believe.ts'
import {corpusScores, describeCorpus, readCorpusText} from '../support/corpus.ts'
import {surveyXml, withMovedTransposition, withoutTranspositions} from '../support/survey.ts'

const WHOLE = process.env.RENOTATE_ALL_PARTS !== undefined

/** Scores with several parts. Those held back were not looked at while the weights were set. */
const HELD_BACK = [
  'orchestra-cc0/Bach_BWV.232_04.mxl',
  'orchestra-cc0/Beethoven_Op.36_4.mxl',
  'orchestra-cc0/Beethoven_Op.92_1.mxl',
  'orchestra-cc0/Brahms_Op.90_2.mxl',
  'orchestra-cc0/Bruckner_WAB.105_3b_Trio.mxl',
  'orchestra-cc0/Haydn_104_1.mxl',
  'orchestra-cc0/Schubert_D.485_1.mxl',
  'wind/gambaro_wind_quartet.mxl',
  'wind/water_waltz_fullscore.musicxml',
]
const SAMPLE = [
  'orchestra-cc0/Beethoven_Op.125_3.mxl',
  'orchestra-cc0/Beethoven_Op.68_1.mxl',
  'orchestra-cc0/Bruckner_WAB.105_3b_Trio.mxl',
  'orchestra-cc0/Haydn_104_1.mxl',
  'orchestra-cc0/Schubert_D.485_1.mxl',
  'wind/gambaro_wind_quartet.mxl',
]

/**
 * Parts whose declaration cannot be taken for the truth: in bass clef, trumpets that would sound C2, two octaves below
 * the instrument, and a horn whose clefs are mixed up; timpani that would sound an octave below theirs.
 */
const UNTRUE: Readonly<Record<string, readonly string[]>> = {
  'wind/s3_mozart41_menuetto.xml': ['horn2', 'piccolotrumpet1', 'piccolotrumpet2'],
  'sequencer-export/NR_01.xml': ['Pauke'],
}

const scores = corpusScores().filter(({name}) =>
  WHOLE ? /^(orchestra-cc0|wind|sequencer-export)\//.test(name) : SAMPLE.includes(name),
)

/**
 * What each clef of a line truly adds. Transposing horns that go to a plain bass clef are in the old notation there, an
 * octave above what is declared.
 */
function truthOf({line, asked}: Belief, declared: Interval): readonly number[] {
  const isHorn = /horn/i.test(asked.name) && declared.chromatic !== 0
  return line.clefs.map(({sign, octaveChange}) => {
    const isOld = isHorn && sign === 'F' && octaveChange === 0
    return declared.chromatic + (isOld ? 12 : 0)
  })
}

interface Outcome {
  readonly file: string
  readonly name: string
  readonly parts: number
  readonly transposes: boolean
  readonly right: boolean
  readonly confidence: number
}

/** Beliefs about a score without transpositions, against what it declared. */
async function strippedOutcomes(file: string, xml: string): Promise<Outcome[]> {
  const before = await surveyXml(xml)
  const after = await surveyXml(withoutTranspositions(xml))
  return after.beliefs.flatMap(({line, asked, judged}) => {
    const original = before.beliefs.find((each) => each.line.part === line.part)
    const [best] = judged
    if (!original || !best || UNTRUE[file]?.includes(asked.name)) return []
    const truth = truthOf(original, original.line.declared)
    return [
      {
        file,
        name: asked.name,
        parts: before.survey.parts.length,
        transposes: truth.some((semitones) => semitones !== 0),
        right: truth.every(
          (semitones, clef) => best.hypothesis.intervals[clef]?.chromatic === semitones,
        ),
        confidence: best.probability,
      },
    ]
  })
}

/** Shares right by confidence, for people. */
function calibration(outcomes: readonly Outcome[]): string {
  const bins = [0, 0.5, 0.7, 0.9, 0.95, 0.99]
  return bins
    .map((low, index) => {
      const high = bins[index + 1] ?? 1.01
      const within = outcomes.filter(({confidence}) => confidence >= low && confidence < high)
      return `${low}: ${within.filter(({right}) => right).length}/${within.length}`
    })
    .join('  ')
}

describeCorpus('real scores without their transpositions', () => {
  const outcomes: Outcome[] = []
  for (const file of scores) {
    it(`${file.name} is read`, {timeout: 120_000}, async () => {
      const found = await strippedOutcomes(file.name, readCorpusText(file))
      expect(found.length).toBeGreaterThan(0)
      outcomes.push(...found)
    })
  }

  it.each([
    ['all scores', (): boolean => true],
    ['the scores held back', ({file}: Outcome): boolean => HELD_BACK.includes(file)],
  ])('are understood: %s', (what, isMeant) => {
    const meant = outcomes.filter(isMeant)
    const transposing = meant.filter(({transposes, parts}) => transposes && parts >= 8)
    const sure = meant.filter(({confidence}) => confidence >= 0.9)
    const wrong = meant.filter(({right}) => !right)
    if (WHOLE) console.log(what, calibration(meant), wrong)
    expect(transposing.length).toBeGreaterThan(10)
    expect(
      transposing.filter(({right}) => right).length / transposing.length,
    ).toBeGreaterThanOrEqual(0.97)
    expect(sure.filter(({right}) => !right).length / sure.length).toBeLessThanOrEqual(0.005)
  })
})

const measured = (name: string) => {
  const file = corpusScores().find((each) => each.name.includes(name))
  if (!file) throw new Error(`the corpus has no ${name}`)
  return surveyXml(readCorpusText(file))
}

describeCorpus('real scores as they are', () => {
  it('raise no doubts about parts that are consistent', {timeout: 240_000}, async () => {
    const doubted: string[] = []
    let parts = 0
    for (const file of scores) {
      const {survey} = await surveyXml(readCorpusText(file))
      for (const {name, doubts, clefs} of survey.parts) {
        const isOldHorn = /horn/i.test(name) && clefs.some(({clef}) => clef === 'F4')
        if (isOldHorn || UNTRUE[file.name]?.includes(name)) continue
        parts++
        if (doubts.some(({severity}) => severity !== 'info')) doubted.push(`${file.name} ${name}`)
      }
    }
    expect(doubted.length / parts, doubted.join(', ')).toBeLessThanOrEqual(0.02)
  })

  // The corpus's README, "Reading conventions measured in these files".
  it.each(WHOLE ? ['Beethoven_Op.68_1', 'Beethoven_Op.92_1'] : ['Beethoven_Op.68_1'])(
    '%s has horns in the old bass clef, an octave above what it declares',
    {timeout: 120_000},
    async (name) => {
      const {survey} = await measured(name)
      const horns = survey.parts.filter((part) => part.name.includes('Horn'))
      expect(horns).toHaveLength(2)
      for (const {doubts, believed} of horns) {
        expect(doubts.map(({code}) => code)).toEqual(['doubt/clef'])
        expect(believed?.notation).toMatch(/\.old$/)
      }
    },
  )

  it.each(['Beethoven_Op.125_3', 'Haydn_104_1'])(
    '%s has horns that only look old: their clef has an octave sign, and what it declares is right',
    {timeout: 120_000},
    async (name) => {
      const {survey} = await measured(name)
      const horns = survey.parts.filter(
        (part) => part.name.includes('Horn') && part.clefs.some(({clef}) => clef === 'F4(+1)'),
      )
      expect(horns.length).toBeGreaterThan(0)
      for (const {doubts, believed} of horns) {
        expect(doubts).toEqual([])
        expect(believed?.byClef).toBeUndefined()
      }
    },
  )

  it(
    'contradict a transposition that is off by an octave or a step',
    {timeout: 600_000},
    async () => {
      const moves = [
        {diatonic: 7, chromatic: 12},
        {diatonic: -7, chromatic: -12},
        {diatonic: 1, chromatic: 2},
      ]
      let faults = 0
      const missed: string[] = []
      for (const file of scores.filter(({name}) => WHOLE || /Bruckner|Haydn|gambaro/.test(name))) {
        const xml = readCorpusText(file)
        const before = await surveyXml(xml)
        for (const {line, asked} of before.beliefs) {
          const isSound = before.survey.parts[line.index]?.doubts.length === 0
          if (!isSound || line.declared.chromatic === 0 || line.count < 20) continue
          for (const by of WHOLE || faults < 12 ? moves : moves.slice(2)) {
            const {survey} = await surveyXml(withMovedTransposition(xml, line.part, by))
            const own = survey.parts[line.index]
            faults++
            if (own?.doubts.every(({severity}) => severity === 'info'))
              missed.push(`${file.name} ${asked.name} ${by.chromatic}`)
          }
        }
      }
      if (WHOLE) console.log(`${faults} faults`, missed)
      expect(faults).toBeGreaterThan(12)
      expect(missed.length / faults, missed.join(', ')).toBeLessThanOrEqual(0.05)
    },
  )
})
