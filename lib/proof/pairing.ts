import {likeness} from './survey.ts'
import type {PartSummary} from './survey.ts'

export interface Pair {
  readonly before: PartSummary
  readonly after: PartSummary
}

export interface Pairing {
  readonly pairs: readonly Pair[]
  readonly unpaired: {
    readonly before: readonly PartSummary[]
    readonly after: readonly PartSummary[]
  }
}

/** Two parts that agree in at least so much of their measures are taken for the same music. */
const ALIKE = 0.5

/**
 * Finds the parts that belong together. `chosen` pairs of ids go first. Then a common id counts when the names agree, or
 * when much of the music does. Where the ids of fewer parts count from P1 there must be nothing that has more of the same
 * music: a program that writes one part into a file of its own likes to call it so, whatever it was. Then the name, where only one part on each side has it; then the music, the most alike first; and a common id alone last.
 */
export function pairParts(
  before: readonly PartSummary[],
  after: readonly PartSummary[],
  chosen: readonly (readonly [before: string, after: string])[] = [],
): Pairing {
  const pairs: Pair[] = []
  let left = [...before]
  let right = [...after]
  const pairUp = (one: PartSummary, other: PartSummary) => {
    pairs.push({before: one, after: other})
    left = left.filter((part) => part !== one)
    right = right.filter((part) => part !== other)
  }
  const pairWhere = (belong: (one: PartSummary, other: PartSummary) => boolean) => {
    for (const one of left) {
      const other = right.find((part) => belong(one, part))
      if (other) pairUp(one, other)
    }
  }
  // Said by somebody who knows: a part may even hold the music of two.
  for (const [a, b] of chosen) {
    const one = before.find(({id}) => id === a)
    const other = after.find(({id}) => id === b)
    if (one && other) pairUp(one, other)
  }
  pairWhere((one, other) => one.id === other.id && sameName(one, other))
  const isNumberedAnew =
    after.length < before.length && after.every(({id}, index) => id === `P${index + 1}`)
  pairWhere(
    (one, other) =>
      one.id === other.id &&
      (isNumberedAnew ? areMostAlike(one, other, left, right) : likeness(one, other) >= ALIKE),
  )
  pairWhere(
    (one, other) =>
      sameName(one, other) &&
      left.filter((part) => sameName(part, one)).length === 1 &&
      right.filter((part) => sameName(part, one)).length === 1,
  )
  for (const {one, other} of byLikeness(left, right))
    if (left.includes(one) && right.includes(other)) pairUp(one, other)
  pairWhere((one, other) => one.id === other.id)
  pairWhere(() => left.length === 1 && right.length === 1 && before.length === 1)
  return {
    pairs: pairs.toSorted((a, b) => before.indexOf(a.before) - before.indexOf(b.before)),
    unpaired: {before: left, after: right},
  }
}

/** Bands are full of parts that play the same an octave apart: alike is not enough where another part is more so. */
function areMostAlike(
  one: PartSummary,
  other: PartSummary,
  left: readonly PartSummary[],
  right: readonly PartSummary[],
): boolean {
  const alike = likeness(one, other)
  return (
    alike >= ALIKE &&
    left.every((part) => likeness(part, other) <= alike) &&
    right.every((part) => likeness(one, part) <= alike)
  )
}

function byLikeness(left: readonly PartSummary[], right: readonly PartSummary[]) {
  return left
    .flatMap((one) => right.map((other) => ({one, other, alike: likeness(one, other)})))
    .filter(({alike}) => alike >= ALIKE)
    .toSorted((a, b) => b.alike - a.alike)
}

/** Names agree whatever their case and spacing; no name agrees with nothing. */
function sameName(a: PartSummary, b: PartSummary): boolean {
  const name = plain(a.name)
  return name !== '' && name === plain(b.name)
}

function plain(name: string): string {
  return name
    .normalize('NFKC')
    .toLowerCase()
    .replaceAll(/[\s.]+/g, ' ')
    .trim()
}
