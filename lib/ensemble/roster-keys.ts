/** Sharps (positive) or flats of the major key on a tonic. */
const MAJOR: Readonly<Record<string, number>> = {F: -1, C: 0, G: 1, D: 2, A: 3, E: 4, B: 5}

/**
 * The written signatures that words mean, in fifths: `B major`, `Ab minor`, `6 flats`, `more than 4 sharps`. Undefined
 * when they mean none.
 */
export function parseKeys(text: string): readonly number[] | undefined {
  const counted = /^(more than )?([1-7]) (sharp|flat)s?$/.exec(text.trim())
  if (counted) {
    const [, more, number, sign] = counted
    const first = Number(number) + (more === undefined ? 0 : 1)
    const last = more === undefined ? first : 7
    const signs = Array.from({length: last - first + 1}, (_, index) => first + index)
    return signs.map((count) => (sign === 'flat' ? 0 - count : count))
  }
  const named = /^([A-G])(#|♯|b|♭)?(?: (major|minor))?$/.exec(text.trim())
  const plain = named && MAJOR[named[1] ?? '']
  if (!named || plain === undefined || plain === null) return undefined
  const sign = named[2] === undefined ? 0 : /[#♯]/.test(named[2]) ? 7 : -7
  const fifths = plain + sign - (named[3] === 'minor' ? 3 : 0)
  return Math.abs(fifths) > 7 ? undefined : [fifths]
}
