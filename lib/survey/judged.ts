import type {Hypothesis} from './hypothesis.ts'

/** Kinds of evidence, in the order in which they are told. */
export const EVIDENCE = [
  'name',
  'declared',
  'key',
  'doubling',
  'harmony',
  'range',
  'register',
  'clefs',
  'role',
  'desks',
] as const
export type EvidenceKind = (typeof EVIDENCE)[number]

/** A hypothesis with what each kind of evidence says of it, as logarithms of odds. */
export interface Judged {
  readonly hypothesis: Hypothesis
  readonly terms: Readonly<Record<EvidenceKind, number>>
  readonly score: number
  readonly probability: number
}

/** Hypotheses with their terms, likeliest first. */
export function judge(
  hypotheses: readonly Hypothesis[],
  weigh: (hypothesis: Hypothesis) => Partial<Record<EvidenceKind, number>>,
): readonly Judged[] {
  const scored = hypotheses.map((hypothesis) => {
    const found = weigh(hypothesis)
    const terms = Object.fromEntries(EVIDENCE.map((kind) => [kind, found[kind] ?? 0])) as Record<
      EvidenceKind,
      number
    >
    return {hypothesis, terms, score: EVIDENCE.reduce((sum, kind) => sum + terms[kind], 0)}
  })
  const best = Math.max(...scored.map(({score}) => score))
  const total = scored.reduce((sum, {score}) => sum + Math.exp(score - best), 0)
  return scored
    .map((each) => ({...each, probability: Math.exp(each.score - best) / total}))
    .toSorted((a, b) => b.score - a.score)
}
