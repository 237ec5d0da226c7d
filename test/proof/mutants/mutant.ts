/** A changed score, and the kind of change that was made. */
export interface Mutant {
  readonly kind: string
  readonly text: string
}

/** A change at one place: [start, end) of the text becomes `text`. */
export interface Change {
  readonly start: number
  readonly end: number
  readonly text: string
}

export interface Note {
  readonly start: number
  readonly end: number
  readonly xml: string
}

export type Operator = readonly [
  kind: string,
  places: (score: Scanned) => readonly (readonly Change[])[],
]

/** A score cut by regular expressions: independent of any reader of ours. */
export interface Scanned {
  readonly text: string
  readonly notes: readonly Note[]
}

export function mutantsOf(text: string, operators: readonly Operator[]): readonly Mutant[] {
  const score = scan(text)
  return operators.flatMap(([kind, places]) =>
    places(score)
      .filter((changes) => changes.some((one) => text.slice(one.start, one.end) !== one.text))
      // Made when it is asked for: of all the mutants of a score few are chosen.
      .map((changes) => ({
        kind,
        get text() {
          return applied(text, changes)
        },
      })),
  )
}

/** `count` of the mutants, the same for the same seed, evenly over the kinds. */
export function choose(mutants: readonly Mutant[], count: number, seed: number): readonly Mutant[] {
  let state = seed >>> 0 || 1
  const random = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
  const kinds = new Map<string, Mutant[]>()
  for (const mutant of mutants) kinds.set(mutant.kind, [...(kinds.get(mutant.kind) ?? []), mutant])
  const chosen: Mutant[] = []
  while (chosen.length < count && kinds.size > 0) {
    for (const [kind, left] of kinds) {
      const [one] = left.splice(Math.floor(random() * left.length), 1)
      if (one && chosen.length < count) chosen.push(one)
      if (left.length === 0) kinds.delete(kind)
    }
  }
  return chosen
}

function scan(text: string): Scanned {
  const notes = [...text.matchAll(/<note[\s>].*?<\/note>/gs)].map(({0: xml, index}) => ({
    start: index,
    end: index + xml.length,
    xml,
  }))
  return {text, notes}
}

function applied(text: string, changes: readonly Change[]): string {
  return changes
    .toSorted((a, b) => b.start - a.start)
    .reduce(
      (result, {start, end, text: put}) => result.slice(0, start) + put + result.slice(end),
      text,
    )
}

export function change({start, end}: Note, text: string): readonly Change[] {
  return [{start, end, text}]
}

export function onNotes(
  score: Scanned,
  fits: (note: Note) => boolean,
  edit: (xml: string) => string,
) {
  return score.notes.filter(fits).map((note) => change(note, edit(note.xml)))
}

export function onText(score: Scanned, pattern: RegExp, edit: (...groups: string[]) => string) {
  return [...score.text.matchAll(pattern)].map((match) => [
    {start: match.index, end: match.index + match[0].length, text: edit(...match)},
  ])
}

export function whole({text}: Scanned, pattern: RegExp, put: string): readonly Change[] {
  return [{start: 0, end: text.length, text: text.replace(pattern, put)}]
}

export const isGrace = ({xml}: Note) => /<grace[\s/>]/.test(xml)
export const isChord = ({xml}: Note) => /<chord\s*\/?>/.test(xml)
export const isPlayed = ({xml}: Note) => xml.includes('<pitch>') && !/<cue[\s/>]/.test(xml)
export const isTimed = (note: Note) =>
  isPlayed(note) && !isGrace(note) && Number(valueOf(note.xml, 'duration')) > 0

export function valueOf(xml: string, name: string): string | undefined {
  return new RegExp(`<${name}>\\s*([^<]*?)\\s*</${name}>`).exec(xml)?.[1]
}

export function swap(xml: string, name: 'step', edit: (value: string) => string): string
export function swap(
  xml: string,
  name: 'octave' | 'duration',
  edit: (value: number) => number,
): string
export function swap(xml: string, name: string, edit: (value: never) => string | number): string {
  const value = valueOf(xml, name)
  const given = (name === 'step' ? value : Number(value)) as never
  return xml.replace(new RegExp(`<${name}>[^<]*<`), `<${name}>${edit(given)}<`)
}

/** C becomes D and so on, the sign and the octave stay: another pitch in every case, B to C being eleven semitones down. */
export function nextStep(step: string): string {
  return 'CDEFGABC'['CDEFGAB'.indexOf(step) + 1] ?? 'C'
}

export function everyPartTies(text: string): boolean {
  return text
    .split(/<part\s/)
    .slice(1)
    .every((part) => /<tie\s/.test(part))
}

export function newTranspositions(score: Scanned, element: string): readonly (readonly Change[])[] {
  if (score.text.includes('<concert-score')) return []
  return partsOf(score).flatMap(({start, end}) => {
    const part = score.text.slice(start, end)
    const at = part.indexOf('</attributes>')
    if (part.includes('<transpose') || at < 0 || at > part.indexOf('<note')) return []
    return [[{start: start + at, end: start + at, text: element}]]
  })
}

/** The parts with a played note. */
export function partsOf({
  text,
  notes,
}: Scanned): readonly {readonly start: number; readonly end: number}[] {
  return [...text.matchAll(/<part\s.*?<\/part>/gs)]
    .map((match) => ({start: match.index, end: match.index + match[0].length}))
    .filter(({start, end}) =>
      notes.some((note) => isTimed(note) && note.start > start && note.end < end),
    )
}
