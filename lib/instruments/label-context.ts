import type {Language} from './instrument.ts'
import {instrumentById, LANGUAGES} from './instrument.ts'
import type {Candidate, LanguageShares} from './label-match.ts'

/**
 * What the other parts of a score say of an ambiguous label: `strings`, `band` (bugles, saxhorns, sarrusophones or
 * saxophones and no strings), `brass` (a band without woodwind), `voices`, `saxophones`, `wagner`; and `clef`,
 * where the label itself names one, as those of voices do not.
 */
export type Context = ReadonlySet<string>

const WOODWIND = new Set([
  'flutes',
  'oboes',
  'bassoons',
  'clarinets',
  'saxophones',
  'sarrusophones',
])
const BAND_BRASS = new Set(['bugle-horns', 'cornets'])

/** Judges the company by the labels that are sure enough. */
export function readContext(parts: readonly (readonly Candidate[])[]): Context {
  const sure = parts.flatMap((candidates) => {
    const [first] = candidates
    const instrument = first && first.confidence >= 0.6 ? instrumentById(first.id) : undefined
    return instrument ? [instrument] : []
  })
  const families = sure.map(({family}) => family as string)
  const has = (family: string) => families.includes(family)
  const strings = sure.some(({id}) => id === 'violin' || id === 'cello' || id === 'viola')
  const saxophones = families.filter((family) => family === 'saxophones').length
  const voices = families.filter((family) => family === 'voices').length
  const brassFamilies = families.filter((family) => BAND_BRASS.has(family)).length
  const band = !strings && (brassFamilies > 0 || has('sarrusophones') || saxophones > 1)
  const woodwind = families.some((family) => WOODWIND.has(family))
  return new Set([
    ...(strings ? ['strings'] : []),
    ...(band ? ['band'] : []),
    ...(band && !woodwind && brassFamilies > 1 ? ['brass'] : []),
    ...(voices > saxophones || (saxophones === 0 && isVocalSet(parts)) ? ['voices'] : []),
    ...(saxophones > 0 ? ['saxophones'] : []),
    ...(sure.some(({id}) => id.startsWith('wagner')) ? ['wagner'] : []),
  ])
}

/** S, A, T and B are each unsure; together they are a choir. */
function isVocalSet(parts: readonly (readonly Candidate[])[]): boolean {
  const voices = ['soprano-voice', 'alto-voice', 'tenor-voice', 'bass-voice']
  const possible = voices.filter((voice) =>
    parts.some((candidates) =>
      candidates.some(({id, confidence}) => id === voice && confidence >= 0.1),
    ),
  )
  return possible.length >= 3
}

/** The language of a score from those of its labels: the mean, sharpened, since a score has one as a rule. */
export function shareLanguages(labels: readonly LanguageShares[]): LanguageShares {
  const informative = labels.filter((shares) => Math.max(...Object.values(shares)) > 0.25)
  return normalize((language) => {
    const sum = informative.reduce((total, shares) => total + shares[language], 0.3)
    return sum ** 2
  })
}

/** Shares that add up to 1. */
export function normalize(weightOf: (language: Language) => number): LanguageShares {
  const weights = LANGUAGES.map((language) => [language, weightOf(language)] as const)
  const total = weights.reduce((sum, [, weight]) => sum + weight, 0) || 1
  return Object.fromEntries(
    weights.map(([language, weight]) => [language, weight / total]),
  ) as LanguageShares
}
