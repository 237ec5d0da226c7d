/** Names of bowed strings in the catalogue's six languages, as far as only an orchestra has sections of them. */
const STRINGS =
  /\b(violin|viool|violon|geige|viola|viole|bratsche|altviool|alto|violoncell|cello|violonchelo)/i

/** Fewer parts than these are a chamber piece or an extract: nobody can tell. */
const FEWEST = 4

/**
 * Whether a score is for an orchestra or a band, by its part names: two parts of bowed strings make an orchestra. Undefined for
 * a few parts.
 */
export function ensembleOf(names: readonly string[]): 'orchestra' | 'band' | undefined {
  if (names.length < FEWEST) return undefined
  const strings = names.filter(
    (name) => STRINGS.test(name) && !/sax|horn|clar|tromb|fl[uû]|voi[xc]/i.test(name),
  )
  return strings.length >= 2 ? 'orchestra' : 'band'
}
