import type {PartFacts} from './facts.ts'

/**
 * When each measure of a score begins, in quarters from its start, and when what would follow the last begins. A measure is as
 * long as its longest part has it.
 */
export function measureStarts(parts: Iterable<PartFacts>): number[] {
  const lengths: number[] = []
  for (const facts of parts) {
    facts.lengths.forEach((length, index) => {
      lengths[index] = Math.max(lengths[index] ?? 0, length / (facts.ticks[index] ?? 1))
    })
  }
  const starts = [0]
  for (const length of lengths) starts.push((starts.at(-1) ?? 0) + length)
  return starts
}
