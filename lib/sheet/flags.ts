import {encode} from '../xml/element.ts'
import type {Change, ChangeKind} from './change.ts'

/** A flag above a measure that leads to its change in the list. */
export interface Flag {
  readonly kind: ChangeKind
  /** The anchor in the list. */
  readonly target: string
  readonly word: string
  readonly label: string
}

/** The height that flags take above a system, and the width of a letter on them, in the engraver's units. */
export const LANE = 620
const CHARACTER = 178

/** The flags of each measure by its index: one a kind, which leads to the first change of that kind. */
export function flagsOf(changes: readonly Change[]): ReadonlyMap<number, readonly Flag[]> {
  const flags = new Map<number, Flag[]>()
  for (const [index, change] of changes.entries()) {
    const list = flags.get(change.measure) ?? []
    flags.set(change.measure, list)
    if (list.some(({kind}) => kind === change.kind)) continue
    list.push({
      kind: change.kind,
      target: `c${index}`,
      word: change.kind,
      label: `${change.kind}, ${change.what}`,
    })
  }
  return flags
}

/** Flags side by side above the measure, as many as there is room for; the last says how many more there are. */
export function drawFlags(flags: readonly Flag[], left: number, right: number): string {
  let x = left + 60
  const drawn: string[] = []
  for (const [index, flag] of flags.entries()) {
    const rest = flags.length - index
    const width = flag.word.length * CHARACTER + 300
    const room = right - x - (rest > 1 ? 700 : 0)
    if (index > 0 && width > room) {
      drawn.push(pill(flag, x, `+${rest}`, `${rest} more changes in this measure`))
      break
    }
    drawn.push(pill(flag, x, flag.word, flag.label))
    x += width + 90
  }
  return drawn.join('')
}

function pill({kind, target}: Flag, x: number, word: string, label: string): string {
  const width = word.length * CHARACTER + 300
  const y = -LANE - 170
  return `<a class="flag k-${kind}" href="#${target}" aria-label="${encode(label)}"><rect x="${x}" y="${y}" width="${width}" height="460" rx="230"/><text x="${x + width / 2}" y="${y + 325}" text-anchor="middle" font-size="300">${encode(word)}</text></a>`
}
