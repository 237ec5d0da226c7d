/** A piece of a label: a word, a number with its ending, or a sign. `start` and `end` are offsets into the label. */
export interface Token {
  readonly text: string
  /** Lower case, without accents and apostrophes: `D’Amore` is `damore`. */
  readonly fold: string
  readonly kind: 'word' | 'number' | 'sign'
  /** Whether a point follows: `B.` abbreviates a word where `B` names a key. */
  readonly dot: boolean
  readonly start: number
  readonly end: number
}

const PIECE = /\p{L}[\p{L}\p{M}\ufffd'’‘ʼ`´]*|\d+(?:\.?[ºª°]|\p{L}+)?|[♭♯♮#&/+(),;:[\]–—-]/gu
const ORDINAL_ENDING =
  /^(st|nd|rd|th|e|er|ers|re|res|ere|eres|eme|emes|me|mes|de|nd|o|a|os|as|do|da|ro|ra|to|ta|mo|zo|va|vb|ma|mb)$/

/** Cuts a label into its pieces. A number keeps an ordinal ending (`1res`), no other letters (`2Fl` is two pieces). */
export function tokensOf(label: string): readonly Token[] {
  return [...label.matchAll(PIECE)].flatMap(({0: text, index}) => {
    const [, digits = '', ending = ''] = /^(\d+)\.?(.*)$/u.exec(text) ?? []
    if (digits === '' || ending === '' || ORDINAL_ENDING.test(foldWord(ending)))
      return [tokenAt(label, text, index)]
    return [tokenAt(label, digits, index), tokenAt(label, ending, index + digits.length)]
  })
}

/** Lower case, without accents and apostrophes; `ß` is `ss`, `œ` is `oe`. */
export function foldWord(word: string): string {
  const lower = word.toLowerCase()
  if (/^[a-z0-9]*$/.test(lower)) return lower
  return lower
    .normalize('NFKD')
    .replace(/['’‘ʼ`´]|\p{M}/gu, '')
    .replace(/ß/g, 'ss')
    .replace(/œ/g, 'oe')
}

function tokenAt(label: string, text: string, start: number): Token {
  const end = start + text.length
  const kind = /^\d/.test(text) ? 'number' : /^\p{L}/u.test(text) ? 'word' : 'sign'
  return {text, fold: foldWord(text), kind, dot: label[end] === '.', start, end}
}
