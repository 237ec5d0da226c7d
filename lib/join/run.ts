import type {Measure, Positioned} from '../musicxml/measure.ts'
import {element as create, printElement} from '../xml/build.ts'
import type {Edit} from '../xml/edit.ts'
import type {Element} from '../xml/element.ts'
import type {Meter} from '../staff/state.ts'
import type {HostStyle, Item} from './items.ts'
import {restsBetween} from './rests.ts'

/** Rests of the host that follow each other with no note between them, in a measure of one voice. In quarters. */
export interface Run {
  readonly from: number
  readonly to: number
  readonly first: Element
  readonly last: Element
  /** What else stands between the first rest and the last. */
  readonly others: readonly Positioned[]
}

/** The runs of rests of a measure; none where several voices or staves share it. */
export function runsOf(host: Measure): Run[] {
  const [any] = host.notes
  if (
    host.notes.some(
      (note) => note.run !== 0 || note.voice !== any?.voice || note.staff !== any.staff,
    )
  )
    return []
  const runs: {from: number; to: number; first: Element; last: Element}[] = []
  let open = false
  for (const {kind, element, onset, duration} of host.notes) {
    const to = (onset + duration) / host.ticks
    const last = runs.at(-1)
    if (kind !== 'rest') open = false
    else if (open && last) Object.assign(last, {to, last: element})
    else {
      runs.push({from: onset / host.ticks, to, first: element, last: element})
      open = true
    }
  }
  const others = [...host.others, ...host.attributes].toSorted(
    (a, b) => a.element.start - b.element.start,
  )
  return runs.map((run) => ({
    ...run,
    others: others.filter(
      ({element}) => element.start > run.first.start && element.start < run.last.start,
    ),
  }))
}

/**
 * The guest's notes in place of a run of rests: what they leave free is filled with the guest's own rests, or with new ones.
 * `other` prints what the host has there. Undefined where that cannot be done, as when something of the host happens
 * while a note sounds.
 */
export function fillRun(
  host: Measure,
  run: Run,
  items: readonly Item[],
  style: HostStyle,
  other: (element: Element) => string,
): Edit | undefined {
  const unit = (quarters: number): number => Math.round(quarters * style.divisions)
  const notes = items.filter(({kind}) => kind === 'note')
  const rests = items.filter(
    (item) =>
      item.kind === 'rest' &&
      unit(item.at) >= unit(run.from) &&
      unit(item.until) <= unit(run.to) &&
      notes.every(
        (note) => unit(note.until) <= unit(item.at) || unit(note.at) >= unit(item.until),
      ) &&
      // Two pieces of one voice have the same rests.
      items.find(({kind, at}) => kind === 'rest' && at === item.at) === item,
  )
  const sequence = [...notes, ...rests].toSorted((a, b) => a.at - b.at)
  const extras = [
    ...run.others.map(({element, onset}) => ({
      at: onset / host.ticks,
      exact: true,
      print: () => other(element),
    })),
    ...items
      .filter(({kind}) => kind === 'direction')
      .map((item) => ({
        at: item.at,
        exact: false,
        print: (place: number) => item.print(style, place),
      })),
  ].toSorted((a, b) => a.at - b.at)
  const printed: string[] = []
  let at = run.from
  let fits = true
  const flush = (): void => {
    for (let next = extras[0]; next && unit(next.at) <= unit(at); next = extras[0]) {
      fits &&= !next.exact || unit(next.at) === unit(at)
      printed.push(next.print(at))
      extras.shift()
    }
  }
  const fill = (to: number): void => {
    if (unit(to) <= unit(at)) return
    const between = restsBetween(at, to, host.meter)
    fits &&= between !== undefined
    for (const rest of between ?? []) {
      flush()
      printed.push(printRest(rest, style))
      at += rest.duration
    }
    at = to
  }
  for (const item of sequence) {
    if (!item.chord) {
      fits &&= unit(item.at) >= unit(at)
      fill(item.at)
      flush()
    }
    printed.push(item.print(style, item.at))
    at = Math.max(at, item.until)
  }
  fill(run.to)
  flush()
  for (const {print} of extras) printed.push(print(at))
  if (!fits || unit(at) !== unit(run.to)) return undefined
  return {start: run.first.start, end: run.last.end, text: printed.join(style.margin)}
}

/**
 * The guest's notes in a voice of their own, beside what the host has: from the `cursor` back, and on to it again. With
 * the cursor after them. With `counted`, the meter and the quarters of the measure, what they leave free is shown as rests: the
 * player reads them and nothing else.
 */
export function printBeside(
  items: readonly Item[],
  style: HostStyle,
  cursor: number,
  counted?: {readonly meter: Meter; readonly length: number},
): {readonly text: string; readonly cursor: number} {
  const onsets = items.flatMap(({kind, at}) => (kind === 'note' ? at : []))
  if (onsets.length === 0) return {text: '', cursor}
  const [first, last] = [Math.min(...onsets), Math.max(...onsets)]
  const {divisions, margin} = style
  const unit = (quarters: number): number => Math.round(quarters * divisions)
  const printed: string[] = []
  const move = (name: 'backup' | 'forward', units: number): void => {
    if (units <= 0) return
    const placed = name === 'forward'
    const moved = create(name, [
      create('duration', units),
      placed ? create('voice', style.voice) : undefined,
      placed && style.staff !== undefined ? create('staff', style.staff) : undefined,
    ])
    printed.push(printElement(moved, margin, style.indent))
  }
  const leave = (from: number, to: number): void => {
    const rests = counted && unit(to) > unit(from) && restsBetween(from, to, counted.meter)
    if (rests) for (const rest of rests) printed.push(printRest(rest, style))
    else move('forward', unit(to) - unit(from))
  }
  move('backup', cursor)
  let at = 0
  const directions = items.filter(({kind}) => kind === 'direction').toSorted((a, b) => a.at - b.at)
  const flush = (): void => {
    for (let next = directions[0]; next && unit(next.at) <= unit(at); next = directions[0]) {
      printed.push(next.print(style, at))
      directions.shift()
    }
  }
  for (const item of items) {
    if (item.kind === 'direction' || item.at < first || item.at > last) continue
    if (!item.chord) {
      leave(at, item.at)
      // Where a file names no voices, several may go by one name.
      move('backup', unit(at) - unit(item.at))
      at = item.at
      flush()
    }
    printed.push(item.print(style, item.at))
    at = Math.max(at, item.until)
  }
  for (const each of directions) printed.push(each.print(style, at))
  if (counted && at < counted.length) {
    leave(at, counted.length)
    at = counted.length
  }
  move('forward', cursor - unit(at))
  const text = printed.map((each) => margin + each).join('')
  return {text, cursor: Math.max(cursor, unit(at))}
}

function printRest(
  {duration, type, dotted}: {duration: number; type: string; dotted: boolean},
  {voice, staff, divisions, margin, indent}: HostStyle,
): string {
  const rest = create('note', [
    create('rest'),
    create('duration', Math.round(duration * divisions)),
    create('voice', voice),
    create('type', type),
    dotted ? create('dot') : undefined,
    staff === undefined ? undefined : create('staff', staff),
  ])
  return printElement(rest, margin, indent)
}
