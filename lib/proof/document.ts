import {scoreError} from '../diagnostic.ts'
import {readText} from './text.ts'
import type {Source} from './text.ts'

/** An element with what it holds. `text` is its own character data, `line` where its start tag ends. */
export interface Node {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: Node[]
  readonly line: number
  text: string
}

/** What stands before the music. `names` are the part names by part id. */
export interface Header {
  readonly timewise: boolean
  readonly concert: boolean
  readonly names: ReadonlyMap<string, string>
}

/** One part's measure. `content` holds what time and sound depend on, in document order. */
export interface RawMeasure {
  readonly part: string
  readonly number: string | undefined
  readonly line: number
  readonly content: readonly Node[]
}

export type Piece =
  | {readonly kind: 'header'; readonly header: Header}
  | {readonly kind: 'measure'; readonly measure: RawMeasure}

/** Children of a measure that time and sound depend on. Everything else is passed over. */
const SOUNDING = new Set(['note', 'backup', 'forward', 'attributes'])

/**
 * Cuts a score into its header and, one at a time in document order, the measures of its parts. Never
 * holds more than a piece of text and the measures that end in it.
 * @throws ScoreError `proof/malformed` when the text is no well-formed score, with the line.
 */
export async function* readDocument(source: Source): AsyncGenerator<Piece> {
  const {SaxesParser} = (await import('saxes')).default
  const parser = new SaxesParser()
  const names = new Map<string, string>()
  const open: string[] = []
  const building: Node[] = []
  let pieces: Piece[] = []
  let concert = false
  let headed = false
  let externalEntities = false
  let outer:
    {readonly name: string; readonly attributes: Readonly<Record<string, string>>} | undefined
  let measure: (RawMeasure & {readonly content: Node[]}) | undefined

  const sendHeader = () => {
    if (!headed)
      pieces.push({
        kind: 'header',
        header: {timewise: open[0] === 'score-timewise', concert, names},
      })
    headed = true
  }

  parser.on('error', (error) => {
    // The document types of MusicXML declare &eacute; and its like outside the file, where we do not look.
    if (externalEntities && error.message.includes('undefined entity')) return
    throw scoreError(
      'proof/malformed',
      `the XML is not well-formed: ${error.message.replace(/^[\d:]+\s*/, '').replace(/\.$/, '')}`,
      {line: parser.line},
    )
  })
  parser.on('doctype', (text) => {
    externalEntities = /^\s*[^\s[]+\s+(PUBLIC|SYSTEM)\s/.test(text)
    for (const [, name = '', , value = ''] of text.matchAll(
      /<!ENTITY\s+([\w.:-]+)\s+(["'])(.*?)\2\s*>/gs,
    ))
      parser.ENTITIES[name] ??= value
  })
  parser.on('opentag', ({name, attributes}) => {
    const depth = open.length
    if (depth === 0 && name !== 'score-partwise' && name !== 'score-timewise')
      throw scoreError('proof/malformed', `the file is no score: its root element is <${name}>`, {
        line: parser.line,
      })
    const node = {name, attributes, children: [], line: parser.line, text: ''}
    const parent = building.at(-1)
    if (parent) {
      parent.children.push(node)
      building.push(node)
    } else if (depth === 1 && (name === 'part' || name === 'measure')) {
      sendHeader()
      outer = node
    } else if (depth === 2 && outer && (name === 'part' || name === 'measure')) {
      measure = rawMeasure(outer, node)
    } else if (depth === 3 && measure && SOUNDING.has(name)) {
      measure.content.push(node)
      building.push(node)
    } else if (depth === 2 && name === 'score-part') building.push(node)
    else if (depth === 2 && name === 'concert-score' && open[1] === 'defaults') concert = true
    open.push(name)
  })
  parser.on('closetag', ({name}) => {
    open.pop()
    const node = building.pop()
    if (node?.name === 'score-part')
      names.set(node.attributes['id'] ?? '', childText(node, 'part-name') ?? '')
    if (node) return
    if (open.length === 2 && measure && (name === 'part' || name === 'measure')) {
      pieces.push({kind: 'measure', measure})
      measure = undefined
    } else if (open.length === 1 && outer?.name === name) outer = undefined
  })
  const addText = (text: string) => {
    const node = building.at(-1)
    if (node) node.text += text
  }
  parser.on('text', addText)
  parser.on('cdata', addText)

  for await (const text of readText(source)) {
    parser.write(text)
    yield* pieces
    pieces = []
  }
  parser.close()
  sendHeader()
  yield* pieces
}

/** The text of the first child of that name, trimmed. */
export function childText(node: Node, name: string): string | undefined {
  return child(node, name)?.text.trim()
}

export function child(node: Node, name: string): Node | undefined {
  return node.children.find((one) => one.name === name)
}

function rawMeasure(outer: Pick<Node, 'name' | 'attributes'>, inner: Node) {
  const [part, measure] = outer.name === 'part' ? [outer, inner] : [inner, outer]
  return {
    part: part.attributes['id'] ?? '',
    number: measure.attributes['number'],
    line: inner.line,
    content: [] as Node[],
  }
}
