/**
 * The values whose texts are nearest to what was typed, best first, by the number of letters to insert, delete,
 * exchange or swap with a neighbour. Values further off than half of the word's length are not offered.
 */
export function nearest<Value>(
  typed: string,
  values: Iterable<readonly [text: string, value: Value]>,
  count = 5,
): readonly Value[] {
  const best = new Map<Value, number>()
  for (const [text, value] of values) {
    const distance = editDistance(typed, text)
    if (distance > typed.length / 2) continue
    if (distance < (best.get(value) ?? Infinity)) best.set(value, distance)
  }
  return [...best]
    .toSorted(([, a], [, b]) => a - b)
    .slice(0, count)
    .map(([value]) => value)
}

/** How many letters must be inserted, deleted, exchanged or swapped with their neighbour to get from `a` to `b`. */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = []
  let last = Array.from({length: b.length + 1}, (_, index) => index)
  for (let row = 1; row <= a.length; row++) {
    const current = [row]
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1]
      const swapped = row > 1 && a[row - 2] === b[column - 1] && a[row - 1] === b[column - 2]
      current[column] = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
        swapped && column > 1 ? (beforeLast[column - 2] ?? 0) + 1 : Infinity,
      )
    }
    beforeLast = last
    last = current
  }
  return last[b.length] ?? 0
}
