/** A name reduced to what tells instruments apart. */
export interface FoldedName {
  /** Lower case, without accents and punctuation: `Pte Flûte` and `pte. flute` are the same. */
  readonly text: string
  /** Its words without articles, player numbers and the key, sorted. */
  readonly words: readonly string[]
  /** The keys that the name may mean, as `bb`, `f`, `f#`. German `B` is B flat, English `B` is B natural: both. */
  readonly keys: readonly string[]
}

const LEFT_OUT = new Set(
  'the of in en a and et und e y le la les de du des del della di da der die das i ii iii iv'.split(
    ' ',
  ),
)
const PLAYER_NUMBER = /^\d+(st|nd|rd|th|e|er|re|ere|eme|o|a|as|os)?$/
const SOLFEGE: Readonly<Record<string, string>> = {
  do: 'c',
  ut: 'c',
  re: 'd',
  mi: 'e',
  fa: 'f',
  sol: 'g',
  la: 'a',
  si: 'b',
}
/** The German and Dutch names of altered notes. */
const ALTERED: Readonly<Record<string, string>> = {
  h: 'b',
  bes: 'bb',
  es: 'eb',
  as: 'ab',
  des: 'db',
  ges: 'gb',
  ces: 'cb',
  fis: 'f#',
  cis: 'c#',
  gis: 'g#',
  dis: 'd#',
  ais: 'a#',
}
const FLAT = new Set(['flat', 'b', 'bemol', 'bemolle', 'mol'])
const SHARP = new Set(['sharp', 'diese', 'diesis', 'sostenido', 'kruis'])
const NATURAL = new Set(['natural', 'naturel', 'naturale', 'becarre', 'bequadro', 'becuadro'])

/** Understands keys in six languages: `Klarinette in B`, `clarinette si♭` and `B-flat clarinet` all have key `bb`. */
export function foldName(name: string): FoldedName {
  const tokens = tokensOf(name)
  const key = findKey(tokens)
  const plain = tokens.map((token) => (token.endsWith('.') ? token.slice(0, -1) : token))
  const words = plain.filter(
    (word, index) =>
      (!key || index < key.start || index >= key.end) &&
      !LEFT_OUT.has(word) &&
      !PLAYER_NUMBER.test(word),
  )
  return {text: plain.join(' '), words: words.toSorted(), keys: key?.keys ?? []}
}

/** Words with the point that may follow: `B.` abbreviates a word where `B` names a key. */
function tokensOf(name: string): readonly string[] {
  const lower = name.toLowerCase()
  // Classes of Unicode are slow to begin with; most names need none.
  if (/^[^\x80-\uffff]*$/.test(lower)) return spellOut(lower).match(/[a-z0-9]+\.?/g) ?? []
  return withoutSigns(lower).match(/[\p{L}\p{N}]+\.?/gu) ?? []
}

function withoutSigns(lower: string): string {
  return spellOut(lower.normalize('NFKD').replace(/\p{M}/gu, ''))
}

/** Latin letters as `foldName` has them, of a long text whose lines stay lines. */
export function foldLatin(text: string): string {
  const letters = text.toLowerCase().normalize('NFKD')
  return spellOut(letters.replace(/[\u0300-\u036f]/g, ''))
}

function spellOut(letters: string): string {
  return letters
    .replace(/ß/g, 'ss')
    .replace(/œ/g, 'oe')
    .replace(/['’‘ʼ`]/g, '')
    .replace(/[♯#]/g, ' sharp ')
    .replace(/♭/g, 'b')
    .replace(/♮/g, ' natural ')
}

/** The key stands after `in` or `en`, or ends the name, or begins it; a name is never only a key. */
function findKey(tokens: readonly string[]) {
  const places = tokens
    .map((token, index) => (token === 'in' || token === 'en' ? index + 1 : -1))
    .filter((index) => index > 0)
  const last = tokens.length - 1
  for (const start of [...places.toReversed(), last - 1, last, 0]) {
    const key = keyAt(tokens, start)
    const atEdge = start === 0 || places.includes(start) || key?.end === tokens.length
    if (key && atEdge && key.end - start < tokens.length) return {start, ...key}
  }
  return undefined
}

function keyAt(tokens: readonly string[], start: number) {
  const token = tokens[start] ?? ''
  const sign = tokens[start + 1]?.replace('.', '') ?? ''
  const plain = SOLFEGE[token] ?? (/^[a-g]$/.test(token) ? token : undefined)
  if (plain) {
    if (FLAT.has(sign)) return {keys: [`${plain}b`], end: start + 2}
    if (SHARP.has(sign)) return {keys: [`${plain}#`], end: start + 2}
    if (NATURAL.has(sign)) return {keys: [plain], end: start + 2}
    return {keys: token === 'b' ? ['bb', 'b'] : [plain], end: start + 1}
  }
  if (ALTERED[token]) return {keys: [ALTERED[token]], end: start + 1}
  const flat = /^(.+?)(?:b|flat)$/.exec(token)?.[1] ?? ''
  const lowered = SOLFEGE[flat] ?? (/^[a-g]$/.test(flat) ? flat : undefined)
  return lowered ? {keys: [`${lowered}b`], end: start + 1} : undefined
}
