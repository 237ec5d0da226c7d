import type {Report} from './diagnostic.ts'
import type {Frame} from './xml/frame.ts'
import {searchText} from './xml/scan.ts'

/** Notices in the first reading what the top part has for all players, and parts that are taken out of the score lack. */
export interface ScoreMarks {
  /** Whether the measures of a part are wanted. */
  watches(part: string): boolean
  /** Takes a measure, in the order of its part. */
  pass(frame: Frame): void
  /** Reports what each of the parts lacks (`part/marks-elsewhere`). */
  tell(report: Report): void
}

/** As they stand in the bytes of a measure: a conductor's score often prints them once, above its top part. */
const KINDS = [
  {sign: '<rehearsal', one: 'rehearsal mark', several: 'rehearsal marks'},
  {sign: '<metronome', one: 'metronome mark', several: 'metronome marks'},
  {sign: '<ending', one: 'ending', several: 'endings'},
  {sign: '<segno', one: 'segno', several: 'segnos'},
  {sign: '<coda', one: 'coda', several: 'codas'},
  // MusicXML 4.0 says of any direction whether it is for all; here it counts where it is none of those above.
  {sign: '"only-top"', one: 'other direction', several: 'other directions'},
] as const

/** What all of them stand in. */
const HOLDERS = ['<direction', '<barline'].map(searchText)

/** The number of a measure as printed, by its index, for those that have a kind of mark. */
type Found = ReadonlyMap<number, string>

/** Marks of the top part (its id and name) that some parts, by id, may lack. */
export function watchMarks(
  top: {readonly id: string; readonly name: string},
  parts: ReadonlySet<string>,
): ScoreMarks {
  const kinds = KINDS.map((kind) => ({
    ...kind,
    find: searchText(kind.sign),
    found: new Map<string, Map<number, string>>(),
  }))
  const lengths = new Map<string, number>()
  return {
    watches: (part) => part === top.id || parts.has(part),
    pass({part = '', measure = '', bytes}) {
      const index = lengths.get(part) ?? 0
      lengths.set(part, index + 1)
      if (HOLDERS.every((find) => find(bytes, 0) < 0)) return
      let isKnown = false
      for (const {sign, find, found} of kinds) {
        if ((isKnown && sign === '"only-top"') || find(bytes, 0) < 0) continue
        isKnown = true
        const own = found.get(part) ?? new Map<number, string>()
        found.set(part, own.set(index, measure))
      }
    },
    tell(report) {
      for (const part of parts) {
        if (part === top.id) continue
        const lacks = kinds.flatMap(({one, several, found}) => {
          const [count, first] = missing(found.get(top.id), found.get(part))
          return first === undefined
            ? []
            : [{words: count === 1 ? `1 ${one}` : `${count} ${several}`, first}]
        })
        const [first] = lacks.toSorted((a, b) => a.first.index - b.first.index)
        if (!first) continue
        const names = lacks.map(({words}) => words).join(', ')
        report({
          code: 'part/marks-elsewhere',
          severity: 'warning',
          message: `only ${top.name || top.id} has ${names}, the first in measure ${first.first.number}: this part goes without`,
          at: {part},
        })
      }
    },
  }
}

/** In how many measures the one has what the other lacks, and in which first. */
function missing(top: Found | undefined, own: Found | undefined) {
  const left = [...(top ?? [])].filter(([index]) => !own?.has(index))
  const [first] = left
  return [left.length, first && {index: first[0], number: first[1]}] as const
}
