import type {Measure} from '../musicxml/measure.ts'
import {readMeasure} from '../musicxml/measure.ts'
import {applyEdits, insertAfter, insertBefore, marginBefore} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'
import {childNumber} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {
  commonDivisions,
  hasOneDivision,
  scaled,
  stateDivisions,
  statesDivisions,
} from './divisions.ts'
import {applyWithin} from './guest-note.ts'
import {divisionsAtStart, itemsOf, labelItem, linesOf} from './items.ts'
import type {HostStyle, Item, Piece, Strand} from './items.ts'
import type {Mark} from './passage.ts'
import {fillRun, printBeside, runsOf} from './run.ts'
import type {Run} from './run.ts'
import {missingSigns} from './signs.ts'
import {restsAside, stemOf, stemsAgainst} from './stems.ts'

export interface JoinOptions {
  /** The divisions that the part has stated last. */
  readonly stated: number
  readonly marks: readonly Mark[]
  /** Whether the part prints accidentals at all. */
  readonly printsAccidentals: boolean
}

/** A measure in which music of several parts stands, and the divisions that hold after it. */
export interface JoinedMeasure {
  readonly text: string
  readonly divisions: number
}

/**
 * Puts the pieces into a measure of the host. Undefined where they cannot be put: the measure changes its divisions on the
 * way.
 */
export function joinMeasure(
  measure: Measure,
  pieces: readonly Piece[],
  {stated, marks, printsAccidentals}: JoinOptions,
): JoinedMeasure | undefined {
  if (!hasOneDivision(measure)) return undefined
  const host = opened(measure)
  const strands = pieces.flatMap(strandsOf)
  const own = divisionsAtStart(host)
  const guests = pieces.map(({guest}) => guest)
  const all = strands.flatMap((strand) => strand.items)
  const divisions = all.length === 0 ? own : commonDivisions(host, all, guests, stated)
  const factor = divisions / own
  const {text, root} = host
  const margin = marginBefore(text, root.children[0]?.start ?? root.contentStart)
  const several = host.context.staves.length > 1
  const style: HostStyle = {
    voice: host.notes[0]?.voice ?? '1',
    staff: several ? 1 : undefined,
    divisions,
    margin,
    indent: margin.includes('\n') ? '  ' : '',
  }
  const other = (element: Element): string =>
    applyWithin(text, element, [...scaled(text, element, factor)])
  const {filled, beside} = place(host, strands, style, other)
  const isFilled = ({start}: Element): boolean =>
    filled.some((edit) => start >= edit.start && start < edit.end)
  const edits: Edit[] = [...filled]
  for (const each of root.children) if (!isFilled(each)) edits.push(...scaled(text, each, factor))
  const stem = stemOf(host, beside)
  if (stem)
    edits.push(...stemsAgainst(host, stem, isFilled), ...restsAside(host, beside, stem, isFilled))
  // What the host states itself holds as well, unless it is said anew.
  const inForce = statesDivisions(host) ? own : stated
  if (divisions !== inForce) edits.push(stateDivisions(host, divisions))
  for (const mark of marks) edits.push(...printMark(host, mark, style))
  const end = root.children.findLast(({name}) => name !== 'barline')?.end ?? root.contentEnd
  let cursor = Math.round(cursorOf(host) * factor)
  const voices = freeVoices(host, style.voice, filled.length > 0 || cursor > 0)
  const isSilent = host.notes.length > 0 && host.notes.every(({cue}) => cue)
  for (const [index, {items, piece}] of beside.entries()) {
    const isCounted = isSilent && index === 0 && piece.passage.manner === 'played'
    const counted = isCounted ? {meter: host.meter, length: host.length / host.ticks} : undefined
    const printed = printBeside(items, {...style, stem, voice: voices()}, cursor, counted)
    edits.push({start: end, end, text: printed.text})
    cursor = printed.cursor
  }
  const joined = applyEdits(text, edits)
  if (!printsAccidentals) return {text: joined, divisions}
  const read = readMeasure({...host, text: joined}, {...host.context, divisions: stated})
  return {text: applyEdits(joined, missingSigns(read, host)), divisions}
}

/** The measure with an end tag, where it has nothing in it and closes itself. */
export function opened(measure: Measure): Measure {
  const {text, root, context} = measure
  if (root.contentStart !== root.end) return measure
  return readMeasure({...measure, text: `${text.slice(0, -2)}></${root.name}>`}, context)
}

/** The voices of a piece; a cue is a single line. */
function strandsOf(piece: Piece): Strand[] {
  const {passage, state} = piece
  const lines = linesOf(piece)
  const wanted = passage.manner === 'cue' ? lines.slice(0, 1) : lines
  return wanted.map((line, index): Strand => {
    const {notes, directions} = itemsOf(piece, line)
    const first = notes.find(({kind}) => kind === 'note')
    const labelled = index > 0 || state.labelled || !first || passage.label === undefined
    if (!labelled) state.labelled = true
    const label =
      labelled || !first || passage.label === undefined
        ? []
        : [labelItem(passage.label, first.at, passage.manner === 'played')]
    return {
      piece,
      items: [...label, ...(index === 0 ? directions : []), ...notes],
      inPlace: passage.manner !== 'cue' && index === 0,
    }
  })
}

/** Fills the host's rests with what may stand there; what has no rest to stand in goes beside. */
function place(
  host: Measure,
  strands: readonly Strand[],
  style: HostStyle,
  other: (element: Element) => string,
): {readonly filled: readonly Edit[]; readonly beside: readonly Strand[]} {
  const runs = runsOf(host)
  const runFor = (item: Item): Run | undefined =>
    runs.find(({from, to}) => item.at >= from && item.until <= to + 1e-9)
  const wanted = strands.filter(
    ({inPlace, items}) => inPlace && items.every((item) => item.kind !== 'note' || runFor(item)),
  )
  const edits = runs.flatMap((run) => {
    const items = wanted.flatMap((strand) =>
      strand.items.filter((item) =>
        item.kind === 'note' ? runFor(item) === run : isIn(run, item),
      ),
    )
    return items.some(({kind}) => kind === 'note') ? [fillRun(host, run, items, style, other)] : []
  })
  const filled = edits.filter((edit) => edit !== undefined)
  // All or none: music that stands partly in place and partly beside cannot be read.
  if (filled.length < edits.length) return {filled: [], beside: strands}
  return {filled, beside: strands.filter((strand) => !wanted.includes(strand))}
}

function isIn({from, to}: Run, {kind, at, until}: Item): boolean {
  return kind === 'rest' ? at >= from && until <= to : at >= from && at <= to
}

function printMark(host: Measure, {onset, text}: Mark, style: HostStyle): Edit[] {
  const next = host.notes.find((note) => !note.chord && note.onset / host.ticks >= onset)
  const anchor = next?.element ?? host.root.children.at(-1)
  if (!anchor) return []
  const item = labelItem(text, onset, true)
  const print = (): string => item.print(style, onset)
  return [
    next
      ? insertBefore(host.text, anchor, host.root, print)
      : insertAfter(host.text, anchor, host.root, print),
  ]
}

/** Where the last of a measure's children leaves off, in the host's own divisions. */
function cursorOf({text, root}: Measure): number {
  let at = 0
  for (const each of root.children) {
    const duration = childNumber(text, each, 'duration') ?? 0
    if (each.name === 'backup') at -= duration
    else if (each.name === 'forward') at += duration
    else if (
      each.name === 'note' &&
      !each.children.some(({name}) => name === 'chord' || name === 'grace')
    )
      at += duration
  }
  return Math.max(0, at)
}

/** Voices that nobody has in the measure: the first is the host's own where there is nothing in it. */
function freeVoices(host: Measure, own: string, taken: boolean): () => string {
  const used = new Set(host.notes.map(({voice}) => voice))
  if (taken) used.add(own)
  let next = 1
  return () => {
    while (used.has(String(next))) next++
    used.add(String(next))
    return String(next)
  }
}
