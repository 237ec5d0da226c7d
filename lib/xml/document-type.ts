const S = '[ \\t\\r\\n]'
const NAME = '[:A-Za-z_\\u0080-\\u{10ffff}][-:\\w.\\u0080-\\u{10ffff}]*'
const LITERAL = `(?:"[^"]*"|'[^']*')`
const PUBLIC_ID = `(?:"[-'()+,./:=?;!*#@$%\\w \\r\\n]*"|'[-()+,./:=?;!*#@$%\\w \\r\\n]*')`
const EXTERNAL = `(?:SYSTEM${S}+${LITERAL}|PUBLIC${S}+${PUBLIC_ID}${S}+${LITERAL})`

/** Production 28 up to the internal subset. */
const BEGIN = `<!DOCTYPE${S}+${NAME}(?:${S}+${EXTERNAL})?${S}*`
/** What the internal subset is made of (productions 28a to 31), the inside of declarations being left open. */
const PIECES = [
  `${S}+`,
  `%${NAME};`,
  '<!--([^]*?)-->',
  `<\\?(?![xX][mM][lL](?:${S}|\\?))${NAME}(?:${S}[^]*?)?\\?>`,
  `<!(?:ELEMENT|ATTLIST|ENTITY|NOTATION)${S}(?:[^<>"']|${LITERAL})*>`,
].join('|')

/** Whether a document type declaration is built as XML wants it, from `<!DOCTYPE` to its `>`; what it declares is not judged. */
export function isDocumentType(text: string): boolean {
  const begin = new RegExp(BEGIN, 'uy')
  if (!begin.test(text)) return false
  const at = text[begin.lastIndex] === '[' ? subsetEnd(text, begin.lastIndex + 1) : begin.lastIndex
  return at > 0 && new RegExp(`^${S}*>$`, 'u').test(text.slice(at))
}

/** Where the internal subset ends, after its `]`; -1 when there is a fault in it. */
function subsetEnd(text: string, start: number): number {
  const pieces = new RegExp(PIECES, 'uy')
  pieces.lastIndex = start
  for (let at = start; ; at = pieces.lastIndex) {
    const piece = pieces.exec(text)
    if (piece === null) return text[at] === ']' ? at + 1 : -1
    // A comment: no -- in it, nor a - before its end.
    if (piece[1] !== undefined && /--|-$/.test(piece[1])) return -1
  }
}
