import type {Source} from '../../lib/index.ts'

export interface PartText {
  readonly name?: string
  readonly sound?: string
  /** The content of each measure. */
  readonly measures: readonly string[]
}

/** A score of one part, `P1`, as text. */
export function partText({name = 'Euphonium', sound, measures}: PartText): string {
  const instrument = sound
    ? `<score-instrument id="I1"><instrument-name>${name}</instrument-name><instrument-sound>${sound}</instrument-sound></score-instrument>`
    : ''
  const music = measures.map((each, index) => `<measure number="${index + 1}">${each}</measure>`)
  return `<score-partwise version="4.0"><work><work-title>A tune</work-title></work><part-list><score-part id="P1"><part-name>${name}</part-name>${instrument}</score-part></part-list><part id="P1">${music.join('')}</part></score-partwise>`
}

export function sourceOf(text: string): Source {
  return async function* () {
    yield text
  }
}

export interface StartText {
  readonly fifths?: number
  readonly clef?: 'G' | 'F'
  readonly transpose?: string
}

/** The attributes that a part begins with: 4/4, in quarters. */
export function start({fifths = 0, clef = 'F', transpose = ''}: StartText = {}): string {
  const line = clef === 'F' ? 4 : 2
  return `<attributes><divisions>1</divisions><key><fifths>${fifths}</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>${clef}</sign><line>${line}</line></clef>${transpose}</attributes>`
}

/** Quarter notes such as `C3 Eb3 F#3`. `extra` is put into each. */
export function notes(words: string, extra = ''): string {
  return words
    .split(' ')
    .map((word) => {
      const [, step = '', sign = '', octave = ''] = /^([A-G])([b#]*)(\d)$/.exec(word) ?? []
      const alter = sign === '' ? '' : `<alter>${sign === 'b' ? -1 : 1}</alter>`
      return `<note><pitch><step>${step}</step>${alter}<octave>${octave}</octave></pitch><duration>1</duration><voice>1</voice><type>quarter</type>${extra}</note>`
    })
    .join('')
}

/** Everything that a page is made of, as one text. */
export async function textOf(chunks: AsyncIterable<Uint8Array>): Promise<string> {
  const decoder = new TextDecoder()
  let text = ''
  for await (const chunk of chunks) text += decoder.decode(chunk, {stream: true})
  return text
}
