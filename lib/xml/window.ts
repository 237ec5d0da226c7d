import {BANG, LESS, QUESTION} from './characters.ts'
import {endsName, markupEnd, searchText} from './scan.ts'

/** The part of a byte stream that is still needed, and how far it is understood. Positions are indices into `bytes`. */
export interface Window {
  bytes: Uint8Array
  /** Memory of its own with room to grow; `bytes` is its filled part. */
  room: Uint8Array
  /** Somebody holds views of this memory: it must not be written over. */
  lent: boolean
  /** Begin of what is not handed out yet; what lies before it may be forgotten. */
  from: number
  /** What lies before it is understood. */
  at: number
  /** Look again only when there are so many bytes: markup that lacks its end is scanned from its start again. */
  wake: number
  readonly declaration: Search
  readonly instruction: Search
  readonly endTags: Readonly<Record<'part' | 'measure', Search>>
}

/** An empty window. */
export function openWindow(): Window {
  const nothing = new Uint8Array(0)
  return {
    bytes: nothing,
    room: nothing,
    lent: false,
    from: 0,
    at: 0,
    wake: 0,
    declaration: searchAfterLess(BANG),
    instruction: searchAfterLess(QUESTION),
    endTags: {part: searchEndTag('part'), measure: searchEndTag('measure')},
  }
}

/** Adds bytes, which are copied, and forgets what lies before `from`. Bytes that are lent are never written over. */
export function extend(window: Window, bytes: Uint8Array): void {
  const kept = window.bytes.length - window.from
  if (window.bytes.length + bytes.length > window.room.length) {
    const hasRoom = kept + bytes.length <= window.room.length
    if (hasRoom && !window.lent) window.room.copyWithin(0, window.from, window.bytes.length)
    else {
      // At least twice what is kept: so a frame of many chunks is not moved once for each of them.
      const room = new Uint8Array(Math.max(kept + bytes.length, kept * 2, 1024))
      room.set(window.bytes.subarray(window.from))
      window.room = room
      window.lent = false
    }
    moveBack(window)
    window.bytes = window.room.subarray(0, kept)
  }
  window.room.set(bytes, window.bytes.length)
  window.bytes = window.room.subarray(0, window.bytes.length + bytes.length)
}

/** Passes the next piece of markup and gives where it began; -1 when it is not there whole. */
export function nextMarkup(window: Window): number {
  const less = window.bytes.indexOf(LESS, window.at)
  window.at = less < 0 ? window.bytes.length : less
  return less >= 0 && passMarkup(window, less) ? less : -1
}

/** Passes the next such end tag, but none in a comment or the like; gives where it began, -1 when it is not there yet. */
export function nextEndTag(window: Window, name: 'part' | 'measure'): number {
  const search = window.endTags[name]
  for (;;) {
    const tag = seek(search, window.bytes, window.at)
    const declaration = seek(window.declaration, window.bytes, window.at)
    const mark = Math.min(declaration, seek(window.instruction, window.bytes, window.at))
    if (mark < tag) {
      if (!passMarkup(window, mark)) return -1
    } else if (tag !== Infinity) {
      return passMarkup(window, tag) ? tag : -1
    } else {
      window.at = Math.max(window.at, window.bytes.length - search.overlap)
      return -1
    }
  }
}

function passMarkup(window: Window, less: number): boolean {
  const end = markupEnd(window.bytes, less)
  if (end < 0) {
    const scanned = window.bytes.length - less
    // Long markup is scanned again when it has doubled: in all no more than twice.
    window.wake = window.bytes.length + (scanned > 256 ? scanned : 0)
  }
  window.at = end < 0 ? less : end
  return end >= 0
}

function moveBack(window: Window): void {
  const by = window.from
  const {declaration, instruction, endTags} = window
  for (const search of [declaration, instruction, endTags.part, endTags.measure]) {
    search.hit &&= search.at >= by
    search.at = Math.max(0, search.at - by)
  }
  window.at -= by
  window.wake -= by
  window.from = 0
}

/** A search that goes on where it stopped: `at` is the last hit, or the place to go on from. */
interface Search {
  readonly find: (bytes: Uint8Array, from: number) => number
  /** How many bytes at the end may be the beginning of a hit. */
  readonly overlap: number
  at: number
  hit: boolean
}

/** The first hit at or after `from`, or Infinity. No byte is looked at twice, however often this is asked. */
function seek(search: Search, bytes: Uint8Array, from: number): number {
  if (search.hit && search.at >= from) return search.at
  const start = Math.max(search.at, from)
  const found = search.find(bytes, start)
  search.hit = found >= 0
  search.at = search.hit ? found : Math.max(start, bytes.length - search.overlap)
  return search.hit ? found : Infinity
}

/** Looks for the end tag of one element name: `</measure>` or `</measure >`, not `</measure-style>`. */
function searchEndTag(name: string): Search {
  const {length} = `</${name}`
  const search = searchText(`</${name}`)
  const find = (bytes: Uint8Array, from: number): number => {
    let at = search(bytes, from)
    while (at >= 0 && !endsName(bytes[at + length] as number)) at = search(bytes, at + 1)
    return at
  }
  return {find, overlap: length, at: 0, hit: false}
}

/** Looks for `<!` (comment, CDATA section, document type) or `<?` (processing instruction). */
function searchAfterLess(byte: number): Search {
  const find = (bytes: Uint8Array, from: number): number => {
    for (let i = bytes.indexOf(byte, from + 1); i >= 0; i = bytes.indexOf(byte, i + 1)) {
      if (bytes[i - 1] === LESS) return i - 1
    }
    return -1
  }
  return {find, overlap: 1, at: 0, hit: false}
}
