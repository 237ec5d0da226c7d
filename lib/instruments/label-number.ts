import type {Token} from './label-token.ts'

/** What the numbers of a label say. `used` are indices of tokens, `first` those of the number of players. */
export interface Numbers {
  /** Desks or parts: `1. 2.`, `I-III`, `2do`. */
  readonly numbers: readonly number[]
  /** How many play: `4 Hörner`, `à 2`, `zu 3`. */
  readonly players?: number
  readonly desks: readonly number[]
  readonly count: readonly number[]
}

const ORDINALS =
  'first second third fourth|premier deuxieme troisieme quatrieme|premiere seconde|premiers second|' +
  'erste zweite dritte vierte|erster zweiter dritter vierter|erstes zweites drittes viertes|' +
  'primo secondo terzo quarto|prima seconda terza quarta|primi secondi terzi|' +
  'primero segundo tercero cuarto|primera segunda tercera cuarta|eerste tweede derde vierde|1st 2nd 3rd 4th'
const COUNTS =
  ' two three four|un deux trois quatre|ein zwei drei vier|uno due tre quattro|un dos tres cuatro|een twee drie vier'
const ROMAN = ['I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX', 'X']
const RANGE_WORDS = new Set(['-', '–', '—', 'bis', 'to', 'tot'])
const TOGETHER = new Set(['a', 'zu', 'te'])

/**
 * Reads the numbers among tokens. A number before a word is a count when the word allows a plural (`isPlural`) and
 * the number has neither point nor ending: `2 Flöten` are two players, `2. Flöte` is the second.
 */
export function readNumbers(tokens: readonly Token[], isPlural: (word: Token) => boolean): Numbers {
  const countsPlayers = (index: number) => {
    const words = tokens.slice(index + 1)
    const end = words.findIndex(({kind}) => kind !== 'word')
    return words.slice(0, end < 0 ? words.length : end).some(isPlural)
  }
  const desks: number[] = []
  const numbers: number[] = []
  const count: number[] = []
  let players: number | undefined
  for (const [index, token] of tokens.entries()) {
    const counted = countOf(token)
    if (counted !== undefined && TOGETHER.has(tokens[index - 1]?.fold ?? '')) {
      players = counted
      count.push(index - 1, index)
    } else if (counted !== undefined && counted > 1 && isBare(token) && countsPlayers(index)) {
      players = counted
      count.push(index)
    } else {
      const desk = deskOf(token, tokens, index)
      if (desk === undefined) continue
      const from = endsRange(tokens, index, desks) ? numbers.at(-1) : undefined
      if (from !== undefined)
        for (let between = from + 1; between < desk; between++) numbers.push(between)
      if (!numbers.includes(desk)) numbers.push(desk)
      desks.push(index)
    }
  }
  return {numbers, desks, count, ...(players !== undefined && {players})}
}

/** Whether the number ends a range that begins with a desk: `1-3`, `1. bis 4.` */
function endsRange(tokens: readonly Token[], index: number, desks: readonly number[]): boolean {
  return RANGE_WORDS.has(tokens[index - 1]?.fold ?? '') && desks.includes(index - 2)
}

function isBare(token: Token): boolean {
  return !token.dot && (token.kind === 'word' || /^\d+$/.test(token.text))
}

function countOf(token: Token): number | undefined {
  if (token.kind === 'number') {
    const number = Number.parseInt(token.text, 10)
    return /^\d+$/.test(token.text) && number > 0 && number < 33 ? number : undefined
  }
  const place = placeIn(COUNTS, token.fold)
  return place === undefined || place === 1 ? undefined : place
}

function deskOf(token: Token, tokens: readonly Token[], index: number): number | undefined {
  if (token.kind === 'number') {
    const number = Number.parseInt(token.text, 10)
    return number > 0 && number < 33 ? number : undefined
  }
  const roman = ROMAN.indexOf(token.text) + 1
  // `V` and `X` alone are numbers only at the end: `V.` before a name is a violin or a voice.
  if (roman > 0 && ((roman !== 5 && roman !== 10) || (index > 0 && index === tokens.length - 1)))
    return roman
  return token.kind === 'word' ? placeIn(ORDINALS, token.fold) : undefined
}

function placeIn(lists: string, word: string): number | undefined {
  for (const list of lists.split('|')) {
    const place = list.split(' ').indexOf(word)
    if (word !== '' && place >= 0) return place + 1
  }
  return undefined
}
