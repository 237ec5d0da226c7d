import {existsSync, readdirSync, readFileSync} from 'node:fs'
import {join, relative} from 'node:path'
import {fileURLToPath} from 'node:url'
import {unzipSync} from 'fflate'

/** A pseudo-random generator (mulberry32): numbers in [0, 1). The same seed gives the same numbers. */
export function random(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

export function utf8(text: string): Uint8Array {
  return new TextEncoder().encode(text)
}

export function join8(chunks: Iterable<Uint8Array>): Uint8Array {
  return new Uint8Array(Buffer.concat([...chunks]))
}

/** The bytes in pieces: all of one size, or of sizes from a generator, also empty ones. Each is spoilt when the next is asked for. */
export function* pieces(bytes: Uint8Array, size: number | (() => number)): Generator<Uint8Array> {
  for (let at = 0; at < bytes.length;) {
    const length = typeof size === 'number' ? size : Math.floor(size() ** 4 * 5000)
    const piece = bytes.slice(at, at + length)
    yield piece
    piece.fill(0x3c)
    at += length
  }
}

/** Invented scores that show everything cutting has to see; none comes from a real piece. */
export const scores: Readonly<Record<string, string>> = {
  plain: score('\n', (p, m) => `<note><pitch><step>C</step></pitch></note><x n="${p}${m}"/>`),
  crlf: score('\r\n', () => '<note/>'),
  'carriage returns': score('\r', () => '<note/>'),
  'byte order mark': `\ufeff${score('\n', () => '<note/>')}`,
  'look-alikes': score(
    '\n',
    () =>
      '<measure-style/><measure-numbering>x</measure-numbering><measure-repeat/><part-x></part-x><measure.x></measure.x>' +
      '<!-- </measure> </part> <part id="no"> --><![CDATA[</measure></part><measure>]]]]><?x </measure> > </part>?>' +
      `<w a="</" b='>"/>' c=">">what! is? this</w>`.replace('</"', '&lt;/"'),
  ),
  hostile: `<?xml version="1.0"?>
<!-- <score-timewise> -->
<!DOCTYPE score-partwise PUBLIC "-//Nobody//DTD 'x'//EN" 'a">.dtd' [
  <!-- ]> ' " <part> -->
  <!ENTITY x "<part id='P0'/>]>">
  <?pi ]> " ?>
]>
<score-partwise
  version='4.0' note=">"><part-list><score-part id="P1"><part-name>A&amp;B</part-name></score-part
></part-list><!-- gap <part> --> <?x <part id="P1">?>
<part id = 'P&amp;1&#x41;' title="id='no'"
 ><!-- <measure> --><measure-x></measure-x><measure
number="1 a>&quot;" x='"number="7"' ><a>x</a ></measure
 > <![CDATA[<measure>]]><measure number='é♭&#9837;'/></part >
<part id="P2"/><part id=''></part><part><measure></measure><measure/></part><!-- </part> -->
</score-partwise><!-- after <part> --><?end?>
`,
  'no parts': '<score-partwise><part-list/> <!-- x --></score-partwise>',
  'nothing in it': '<score-timewise/>\n',
  'many exclamation marks': score('\n', () => '! ? !? <t>!!??</t>'.repeat(20)),
  timewise: `<!DOCTYPE score-timewise><score-timewise>
<part-list><score-part id="P1"/></part-list>
<measure number="1"><!-- </part> -->
<part id="P1"><part-x/><note/><!-- </part> --></part>
<part id="P2"/>
</measure >
<!-- <part> --><measure number="2"/>
<measure number="3"><part id="P1"></part><part id="P2"><a b="&gt;"/></part></measure>
</score-timewise>`,
}

function score(eol: string, music: (part: number, measure: number) => string): string {
  let text = `<?xml version="1.0"?>${eol}<score-partwise version="4.0">${eol} <part-list>${eol}`
  for (let p = 1; p <= 3; p++) text += `  <score-part id="P${p}"><part-name/></score-part>${eol}`
  text += ` </part-list>${eol}`
  for (let p = 1; p <= 3; p++) {
    text += ` <part id="P${p}">${eol}`
    for (let m = 1; m <= 4; m++) {
      text += `  <measure number="${m}">${eol}${music(p, m)}${eol}  </measure>${eol}`
    }
    text += ` </part>${eol}`
  }
  return `${text}</score-partwise>${eol}`
}

const corpusRoot = fileURLToPath(new URL('../../../shared/corpus', import.meta.url))

/** Whether the shared corpus of real scores stands beside the project; without it the tests over it are skipped. */
export const hasCorpus = existsSync(corpusRoot)

/** Every score of the corpus by its path, as bytes in its own encoding, out of its container. */
export function* corpus(): Generator<readonly [name: string, bytes: Uint8Array]> {
  for (const [name, bytes] of corpusFiles()) {
    if (!name.endsWith('.mxl')) yield [name, bytes]
    else {
      for (const [entry, content] of Object.entries(unzipSync(bytes))) {
        if (!/^(META-INF|__MACOSX)/.test(entry) && entry.endsWith('xml')) yield [name, content]
      }
    }
  }
}

/** Every file of the corpus that is a score or a container. */
export function* corpusFiles(): Generator<readonly [name: string, bytes: Uint8Array]> {
  if (!hasCorpus) return
  for (const entry of readdirSync(corpusRoot, {recursive: true, withFileTypes: true})) {
    const path = join(entry.parentPath, entry.name)
    if (/\.(xml|musicxml|mxl)$/.test(entry.name)) {
      yield [relative(corpusRoot, path), new Uint8Array(readFileSync(path))]
    }
  }
}

/** The text of a file of the corpus whatever of the corpus' encodings it has; undefined when it lies about it. */
export function decodeCorpus(bytes: Uint8Array): string | undefined {
  const head = Buffer.from(bytes.subarray(0, 200)).toString('latin1')
  const options = {fatal: true, ignoreBOM: true}
  if (head.startsWith('\xff\xfe')) return new TextDecoder('utf-16le', options).decode(bytes)
  if (head.startsWith('\xfe\xff')) return new TextDecoder('utf-16be', options).decode(bytes)
  const declared = /encoding=["']([^"']*)/.exec(head)?.[1]?.toLowerCase() ?? 'utf-8'
  if (declared === 'iso-8859-1') return Buffer.from(bytes).toString('latin1')
  return declared === 'utf-8' ? new TextDecoder('utf-8', options).decode(bytes) : undefined
}
