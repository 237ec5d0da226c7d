import {SLASH} from './characters.ts'
import {countLines, hasName, isMark, readAttribute} from './scan.ts'
import {syntaxError} from './syntax-error.ts'
import {extend, nextEndTag, nextMarkup, openWindow, type Window} from './window.ts'

/**
 * `header`: up to the end of the last tag before the music · `gap`: what lies before a tag · `open`, `close`: the tags of a
 * part (timewise: of a measure) · `measure`: one measure of one part · `copy`: some of a part that nobody
 * reads · `footer`: what follows the last part.
 */
export type FrameKind = 'header' | 'gap' | 'open' | 'measure' | 'close' | 'copy' | 'footer'

/** A piece of a score. The bytes of all frames joined are the score; they share memory with each other. */
export interface Frame {
  readonly kind: FrameKind
  readonly bytes: Uint8Array
  /** The part's id, decoded; empty when it has none. Absent where no part is meant. */
  readonly part?: string | undefined
  /** The measure's number, decoded; empty when it has none. Partwise, gaps have none. */
  readonly measure?: string | undefined
  /** Offset of the first byte in the score, in bytes. */
  readonly start: number
  /** Line of the first byte, from 1. */
  readonly line: number
}

/** Partwise: parts that hold measures. Timewise: measures that hold parts. */
export type Form = 'partwise' | 'timewise'

/** What becomes of a part: cut into measures, handed on unread in pieces of any size, or left out. */
export type Treatment = 'read' | 'copy' | 'drop'

export interface FramerOptions {
  /** Asked once a part, timewise once a part and measure. Default: every part is read. */
  readonly treat?: (part: string) => Treatment
  /** Bytes that a frame may have, `copy` excepted. Default 64 MiB. */
  readonly limit?: number
}

type State = 'root' | 'header' | 'between' | 'inside' | 'measure' | 'skip' | 'footer'

/**
 * Cuts a score into frames, synchronously, whatever the size of the chunks. It trusts that the XML is well-formed (`check.ts`
 * judges that) but throws `SyntaxError` where the score ends early, a frame exceeds the limit or there is no score.
 * Frames are views of memory that also holds their neighbours, not of the chunks.
 *
 * ```ts
 * const framer = new Framer({treat: (part) => (part === 'P1' ? 'read' : 'drop')})
 * for await (const chunk of chunks) for (const frame of framer.push(chunk)) write(frame.bytes)
 * for (const frame of framer.end()) write(frame.bytes)
 * ```
 */
export class Framer {
  readonly #treat: (part: string) => Treatment
  readonly #limit: number
  readonly #window: Window = openWindow()
  #form: Form | undefined
  #state: State = 'root'
  #treatment: Treatment = 'read'
  #part: string | undefined
  #measure: string | undefined
  /** In the window: the end of the last tag of the header. */
  #headerEnd = 0
  /** Offset and line of the window's `from` in the score. */
  #start = 0
  #line = 1
  /** The byte before the window's `from`. */
  #last: number | undefined
  /** Where the first bytes after the header stand, when some were left out. */
  #leap: readonly [start: number, line: number] | undefined

  constructor(options: FramerOptions = {}) {
    this.#treat = options.treat ?? (() => 'read')
    this.#limit = options.limit ?? 64 * 1024 * 1024
  }

  /** Known once the root's tag was read. */
  get form(): Form | undefined {
    return this.#form
  }

  /** Takes the next bytes; gives the frames that they complete. */
  push(bytes: Uint8Array): Frame[] {
    const window = this.#window
    extend(window, bytes)
    const frames: Frame[] = []
    const full = window.bytes.length > window.from + this.#limit
    if (window.bytes.length < window.wake && !full) return frames
    while (this.#step(frames));
    if (window.bytes.length > window.from + this.#limit) throw this.#tooLarge()
    return frames
  }

  /** Nobody looks any more at the frames handed out so far: their memory may be used again. */
  takeBack(): void {
    this.#window.lent = false
  }

  /**
   * The next bytes stand at another place: between parts some were left out. Throws `SyntaxError` in the midst of something.
   */
  leap(start: number, line: number): void {
    const isBetween = this.#state === 'between' && this.#window.from === this.#window.bytes.length
    if (isBetween) [this.#start, this.#line] = [start, line]
    else if (this.#state === 'header') this.#leap = [start, line]
    else if (start > 0) throw syntaxError('parts are not where they were', {line: this.#line})
  }

  /** The last frames. Throws `SyntaxError` when the score is not complete. */
  end(): Frame[] {
    const frames: Frame[] = []
    while (this.#step(frames));
    const length = this.#window.bytes.length
    if (this.#state === 'root') throw this.#notAScore('there is no root element', 0)
    if (this.#state !== 'footer') {
      throw syntaxError('the score ends too early', {line: this.#lineAt(length)})
    }
    this.#emit(frames, 'footer', length)
    return frames
  }

  /** Goes on by one tag or the like; false when more bytes are needed. */
  #step(frames: Frame[]): boolean {
    if (this.#state === 'footer') return false
    if (this.#state === 'measure') return this.#passMeasure(frames)
    if (this.#state === 'skip') return this.#passPart(frames)
    const start = nextMarkup(this.#window)
    if (start < 0) return false
    if (!isMark(this.#window.bytes, start)) this.#takeTag(frames, start, this.#window.at)
    return true
  }

  #takeTag(frames: Frame[], start: number, end: number): void {
    const outer = this.#form === 'timewise' ? 'measure' : 'part'
    const inner = this.#form === 'timewise' ? 'part' : 'measure'
    const closed = this.#window.bytes[end - 2] === SLASH
    const is = (name: string): boolean => hasName(this.#window.bytes, start, name)
    if (this.#state === 'root') {
      this.#takeRoot(start, end)
      if (closed) this.#closeScore(frames)
    } else if (is(`/score-${this.#form}`)) {
      this.#closeScore(frames)
    } else if (this.#state === 'inside') {
      if (is(inner)) this.#openMeasure(frames, start, end, closed)
      else if (is(`/${outer}`)) this.#closeOuter(frames, start, end)
      else if (is(`/${inner}`))
        throw syntaxError(`unexpected </${inner}>`, {line: this.#lineAt(start)})
    } else if (is(outer)) {
      this.#openOuter(frames, start, end, closed)
    } else if (this.#state === 'header') {
      this.#headerEnd = end
    }
  }

  #takeRoot(start: number, end: number): void {
    if (hasName(this.#window.bytes, start, 'score-partwise')) this.#form = 'partwise'
    else if (hasName(this.#window.bytes, start, 'score-timewise')) this.#form = 'timewise'
    else {
      const tag = new TextDecoder().decode(this.#window.bytes.subarray(start + 1, end))
      throw this.#notAScore(`the root element is <${/^[^\s/>]*/.exec(tag)?.[0]}>`, start)
    }
    this.#state = 'header'
    this.#headerEnd = end
  }

  #openOuter(frames: Frame[], start: number, end: number, closed: boolean): void {
    if (this.#state === 'header') this.#emitHeader(frames)
    if (this.#form === 'timewise') {
      this.#measure = readAttribute(this.#window.bytes, start, end, 'number')
      this.#treatment = 'read'
    } else {
      this.#part = readAttribute(this.#window.bytes, start, end, 'id')
      this.#treatment = this.#treat(this.#part)
    }
    this.#emit(frames, 'gap', start)
    this.#emit(frames, 'open', end)
    this.#state = this.#treatment === 'read' ? 'inside' : 'skip'
    if (closed) this.#closeOuter(frames, end, end)
  }

  #closeOuter(frames: Frame[], start: number, end: number): void {
    this.#emit(frames, 'gap', start)
    this.#emit(frames, 'close', end)
    this.#part = this.#measure = undefined
    this.#treatment = 'read'
    this.#state = 'between'
  }

  #openMeasure(frames: Frame[], start: number, end: number, closed: boolean): void {
    if (this.#form === 'timewise') {
      this.#part = readAttribute(this.#window.bytes, start, end, 'id')
      this.#treatment = this.#treat(this.#part)
      this.#emit(frames, 'gap', start)
    } else {
      this.#emit(frames, 'gap', start)
      this.#measure = readAttribute(this.#window.bytes, start, end, 'number')
    }
    this.#state = 'measure'
    if (closed) this.#closeMeasure(frames, end)
  }

  #closeMeasure(frames: Frame[], end: number): void {
    this.#emit(frames, 'measure', end)
    this.#treatment = 'read'
    if (this.#form === 'timewise') this.#part = undefined
    else this.#measure = undefined
    this.#state = 'inside'
  }

  /** To the end of a measure (timewise: of a part in a measure), without a look at what it holds. */
  #passMeasure(frames: Frame[]): boolean {
    const start = nextEndTag(this.#window, this.#form === 'timewise' ? 'part' : 'measure')
    if (start >= 0) this.#closeMeasure(frames, this.#window.at)
    return start >= 0
  }

  /** To the end of a part that is not read, handing on or dropping what has come of it. */
  #passPart(frames: Frame[]): boolean {
    const start = nextEndTag(this.#window, 'part')
    if (start < 0) this.#emit(frames, 'copy', this.#window.at)
    else this.#closeOuter(frames, start, this.#window.at)
    return start >= 0
  }

  #closeScore(frames: Frame[]): void {
    if (this.#state === 'header') this.#emitHeader(frames)
    this.#state = 'footer'
  }

  #emitHeader(frames: Frame[]): void {
    this.#emit(frames, 'header', this.#headerEnd)
    if (this.#leap) [this.#start, this.#line] = this.#leap
  }

  /** Hands out the bytes up to `end`, unless their part is dropped. */
  #emit(frames: Frame[], kind: FrameKind, end: number): void {
    const length = end - this.#window.from
    const as = this.#treatment === 'copy' ? 'copy' : kind
    if (length > this.#limit && as !== 'copy') throw this.#tooLarge()
    // Empty only where a part closes itself: then its end is told all the same.
    if (length === 0 && as !== 'close') return
    const bytes = this.#window.bytes.subarray(this.#window.from, end)
    const [part, measure, start, line] = [this.#part, this.#measure, this.#start, this.#line]
    if (this.#treatment !== 'drop') {
      frames.push({kind: as, bytes, part, measure, start, line})
      this.#window.lent = true
    }
    this.#line += countLines(bytes, this.#last)
    this.#last = bytes.at(-1) ?? this.#last
    this.#start += length
    this.#window.from = end
  }

  #lineAt(at: number): number {
    return this.#line + countLines(this.#window.bytes.subarray(this.#window.from, at), this.#last)
  }

  #tooLarge(): SyntaxError {
    const message = `more than ${this.#limit} bytes without an end of what begins here`
    return syntaxError(message, {line: this.#line}, 'xml/too-large')
  }

  #notAScore(found: string, at: number): SyntaxError {
    const message = `${found}, not <score-partwise> or <score-timewise>`
    return syntaxError(message, {line: this.#lineAt(at)}, 'source/not-a-score')
  }
}
