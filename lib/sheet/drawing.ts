import {attributeValue, childrenNamed, encode, parseElements} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import type {ChangeKind} from './change.ts'
import {LANE, drawFlags} from './flags.ts'
import type {Flag} from './flags.ts'

/** What the page knows of a note that is drawn. */
export interface NoteInfo {
  /** For hover, keyboard and screen readers: `measure 3, beat 2: written F3, sounds E♭2`. */
  readonly label: string
  readonly side: string
  /** Shared by the two notes that belong together. */
  readonly pair?: string | undefined
  readonly kind?: ChangeKind | undefined
}

export interface DrawingOptions {
  readonly label: string
  /** Anchors of the measures, in order. */
  readonly anchors: readonly string[]
  /** Of each measure, in order. */
  readonly flags: readonly (readonly Flag[])[]
  readonly notes: ReadonlyMap<string, NoteInfo>
}

export interface Drawing {
  readonly svg: string
  /** The shapes it draws with, by their id on the page: one set for all drawings. */
  readonly glyphs: ReadonlyMap<string, string>
}

/** Words keep the engraver's groups: its style for them goes by the group's name. */
const WORDED = new Set([
  'tempo',
  'reh',
  'dir',
  'dynam',
  'ending',
  'fing',
  'mNum',
  'label',
  'labelAbbr',
  'verse',
  'syl',
  'harm',
])

/**
 * An engraver's SVG made small and given what the page needs: notes that can be pointed at, anchors and flags on the
 * measures. Everything is in the engraver's units, of which a staff is 720 high.
 */
export function toDrawing(source: string, options: DrawingOptions): Drawing | undefined {
  const [root] = parseElements(source)
  const scaled = root && childrenNamed(root, 'svg')[0]
  const page = scaled && childrenNamed(scaled, 'g')[0]
  if (!root || !scaled || !page) return undefined
  const [, , width = 0, height = 0] = (attributeValue(scaled, 'viewBox') ?? '')
    .split(' ')
    .map(Number)
  const lane = options.flags.some((flags) => flags.length > 0) ? LANE : 0
  const state: State = {source, options, glyphs: new Map(), measures: 0, reached: false}
  const body = children(state, page)
  const transform = attributeValue(page, 'transform')?.replaceAll(/\s+/g, ' ')
  return {
    svg: `<svg class="music" viewBox="0 ${-lane} ${width} ${height + lane}" role="group" aria-label="${encode(options.label)}"><g transform="${transform}">${body}</g></svg>`,
    glyphs: state.glyphs,
  }
}

interface State {
  readonly source: string
  readonly options: DrawingOptions
  readonly glyphs: Map<string, string>
  measures: number
  /** One note of a drawing is reached by Tab, the others by arrow keys. */
  reached: boolean
}

function children(state: State, element: Element): string {
  return element.children.map((each) => draw(state, each)).join('')
}

function draw(state: State, element: Element): string {
  const {source} = state
  switch (element.name) {
    case 'g':
      return group(state, element)
    case 'use':
      return use(state, element)
    case 'text':
    case 'tspan':
      return words(state, element)
    case 'title':
    case 'desc':
      return ''
    default: {
      const inner = children(state, element)
      return `<${element.name}${attributesOf(element)}${inner === '' ? '/>' : `>${inner}</${element.name}>`}`
    }
  }

  function words(from: State, each: Element): string {
    const text =
      each.children.length > 0
        ? children(from, each)
        : inLetters(source.slice(each.contentStart, each.contentEnd))
    return text.trim() === '' ? '' : `<${each.name}${attributesOf(each)}>${text}</${each.name}>`
  }
}

function group(state: State, element: Element): string {
  const names = (attributeValue(element, 'class') ?? '').split(' ')
  const name = names[0] ?? ''
  if (name === 'measure') return measure(state, element)
  if (name === 'staff') return staff(state, element)
  const inner = children(state, element)
  if (inner === '') return ''
  if (name === 'note') return note(state, element, inner)
  const attributes = attributesOf(element)
  if (WORDED.has(name)) return `<g class="${name}"${attributes}>${inner}</g>`
  return attributes === '' ? inner : `<g${attributes}>${inner}</g>`
}

function note(state: State, element: Element, inner: string): string {
  const {options} = state
  const id = attributeValue(element, 'id') ?? ''
  const info = options.notes.get(id)
  if (!info) return inner
  const kind = info.kind ? ` k-${info.kind}` : ''
  const pair = info.pair === undefined ? '' : ` data-p="${info.pair}"`
  // Notes are small: this is where they can be pointed at, and what marks a change.
  const at = /<use [^>]*translate\(([-\d.]+) ([-\d.]+)\)/.exec(inner)
  const spot = at ? `<circle class="spot" cx="${Number(at[1]) + 110}" cy="${at[2]}" r="250"/>` : ''
  const stop = state.reached ? -1 : 0
  state.reached = true
  return `<g class="n${kind}"${pair} data-s="${info.side}" role="img" tabindex="${stop}" aria-label="${encode(info.label)}">${spot}${inner}</g>`
}

function measure(state: State, element: Element): string {
  const {options} = state
  const index = state.measures++
  const staves = childrenNamed(element, 'g').filter(
    (each) => attributeValue(each, 'class') === 'staff',
  )
  const lines = staves.flatMap((each) => childrenNamed(each, 'path').map(lineOf))
  const inner = children(state, element)
  const left = Math.min(...lines.map(([x]) => x))
  const right = Math.max(...lines.map(([, x]) => x))
  const top = Math.min(...lines.map(([, , y]) => y))
  const bottom = Math.max(...lines.map(([, , y]) => y))
  const flags = options.flags[index] ?? []
  const hit =
    lines.length > 0
      ? `<rect class="hit" x="${left}" y="${top - 180}" width="${right - left}" height="${bottom - top + 360}"/>`
      : ''
  return `<g class="m" id="${options.anchors[index] ?? ''}">${hit}${inner}${drawFlags(flags, left, right)}</g>`
}

/** The lines of a staff in one path: they are most of what is drawn. */
function staff(state: State, element: Element): string {
  const lines = childrenNamed(element, 'path')
  const rest = element.children.filter(({name}) => name !== 'path')
  const d = lines.map((line) => attributeValue(line, 'd') ?? '').join('')
  const drawn = d === '' ? '' : `<path class="lines" d="${compact(d)}"/>`
  return drawn + rest.map((each) => draw(state, each)).join('')
}

function lineOf(path: Element): readonly [left: number, right: number, y: number] {
  const [x1 = 0, y = 0, x2 = 0] =
    (attributeValue(path, 'd') ?? '').match(/-?\d+/g)?.map(Number) ?? []
  return [x1, x2, y]
}

function use(state: State, element: Element): string {
  const id = (attributeValue(element, 'href') ?? '').slice(1)
  const name = `g${id.split('-')[0]}`
  if (!state.glyphs.has(name)) {
    const found = new RegExp(`<g id="${id}">\\s*(<path[\\s\\S]*?/>)`).exec(state.source)?.[1] ?? ''
    state.glyphs.set(name, `<g id="${name}">${found.replaceAll(/\s+/g, ' ')}</g>`)
  }
  return `<use href="#${name}"${attributesOf(element)}/>`
}

/** Everything but the names of the engraver: its style, ids and classes do not come along. */
function attributesOf({attributes}: Element): string {
  return attributes
    .filter(
      ({name}) =>
        !['id', 'class', 'style', 'href', 'xml:space'].includes(name) && !name.startsWith('data-'),
    )
    .map(({name, raw}) => ` ${name}="${name === 'transform' || name === 'd' ? compact(raw) : raw}"`)
    .join('')
}

/** Signs of the engraver's font in text, which is not in the page, as everybody's fonts have them. */
const SIGNS: Readonly<Record<string, string>> = {
  '\uECA2': '𝅝',
  '\uECA3': '𝅗𝅥',
  '\uECA5': '♩',
  '\uECA7': '♪',
  '\uECA9': '𝅘𝅥𝅯',
  '\uECB7': '.',
  '\uE260': '♭',
  '\uE261': '♮',
  '\uE262': '♯',
  '\uE520': 'p',
  '\uE521': 'm',
  '\uE522': 'f',
  '\uE523': 'r',
  '\uE524': 's',
  '\uE525': 'z',
  '\uE526': 'n',
}

function inLetters(text: string): string {
  return text
    .replaceAll(/&#x(e[0-9a-f]{3});/gi, (_, code: string) =>
      String.fromCodePoint(parseInt(code, 16)),
    )
    .replaceAll(/[\uE000-\uF8FF]/g, (sign) => SIGNS[sign] ?? '')
}

function compact(raw: string): string {
  return raw
    .replaceAll(/,\s*/g, ' ')
    .replaceAll(/scale\(([\d.]+) \1\)/g, 'scale($1)')
    .replaceAll(/\s*([MLCHVZ])\s*/gi, '$1')
}
