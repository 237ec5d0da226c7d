import {scoreError} from './diagnostic.ts'
import type {Report} from './diagnostic.ts'
import {instrumentById} from './instruments/instrument.ts'
import type {Notation} from './instruments/notation.ts'
import type {Source} from './musicxml/source.ts'
import {openScore, readFacts} from './score.ts'
import {notationBelieved} from './survey/believed.ts'
import {surveyScore} from './survey/survey.ts'
import type {Survey, Surveyed} from './survey/survey.ts'

export interface SurveyOptions {
  /** Is told what is odd about declared transpositions. Doubts are in the survey. */
  readonly report?: Report | undefined
  /** Names of parts and the ids of their instruments, `{'Gr. Schl.': 'bass-drum'}`: they go before all others. */
  readonly names?: Readonly<Record<string, string>> | undefined
}

/**
 * What a score asks for and what each of its parts really sounds: one reading, nothing changed. Throws `ScoreError` when
 * the score is faulty, `instrument/unknown` for a wrong id among `names`.
 *
 * ```ts
 * const {parts} = await survey(source)
 * for (const {name, believed} of parts) console.log(name, believed?.words, believed?.confidence)
 * ```
 */
export async function survey(source: Source, options: SurveyOptions = {}): Promise<Survey> {
  return (await read(source, options)).survey
}

/**
 * The notations that parts, or the part `wanted`, are believed to be written in (by id), where that is not what the file
 * declares: `from` for them. Tells each decision as `survey/believed`. A part that changes its transposition on the way
 * otherwise than it declares has no one notation: it is passed over, or, where it is wanted, `survey/several` is thrown.
 */
export async function readBelieved(
  source: Source,
  wanted: string | undefined,
  report: Report,
): Promise<ReadonlyMap<string, Notation>> {
  const {survey: found, beliefs} = await read(source, {})
  const notations = new Map<string, Notation>()
  for (const {id, name, believed} of found.parts) {
    if (!believed || (wanted !== undefined && id !== wanted)) continue
    const result = notationBelieved(beliefs.filter(({line}) => line.part === id))
    if (result.kind === 'several') {
      if (wanted === undefined) continue
      throw scoreError(
        'survey/several',
        `${name || id} changes its transposition on the way otherwise than it declares; say with from what it is written in`,
        {part: id},
      )
    }
    const sure = `${Math.floor(believed.confidence * 100)} % sure`
    report({
      code: 'survey/believed',
      severity: 'info',
      message:
        result.kind === 'as-declared'
          ? `the part is read as it declares, sounding ${believed.words}; ${sure}`
          : `the part is read as ${result.notation.name}, sounding ${believed.words}; ${sure}`,
      at: {part: id},
    })
    if (result.kind === 'notation') notations.set(id, result.notation)
  }
  return notations
}

async function read(source: Source, {report, names = {}}: SurveyOptions): Promise<Surveyed> {
  for (const [name, id] of Object.entries(names)) {
    if (!instrumentById(id))
      throw scoreError(
        'instrument/unknown',
        `there is no instrument ${id}, as “${name}” is to be called`,
      )
  }
  const score = await openScore(source)
  const ids = score.header.parts.map(({id}) => id)
  const facts = await readFacts(score, new Map(ids.map((id) => [id, undefined])), report ?? QUIET)
  return surveyScore(
    score.header,
    ids.flatMap((id) => facts.get(id) ?? []),
    {userNames: names},
  )
}

const QUIET: Report = () => {}
