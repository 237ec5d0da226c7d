/** Names of bowed strings in the catalogue's six languages, as far as only an orchestra has sections of them. */
const STRINGS =
  /\b(violin|viool|violon|geige|viola|viole|bratsche|altviool|alto|violoncell|cello|violonchelo)/i

/** Whether a score is for an orchestra or a band, by its part names: two parts of bowed strings make an orchestra. */
export function ensembleOf(names: readonly string[]): 'orchestra' | 'band' {
  const strings = names.filter(
    (name) => STRINGS.test(name) && !/sax|horn|clar|tromb|fl[uû]|voi[xc]/i.test(name),
  )
  return strings.length >= 2 ? 'orchestra' : 'band'
}
