/** What kind of fault a `SyntaxError` of this room tells of; also the diagnostic's code further out. */
export type SyntaxFault = 'xml/malformed' | 'xml/too-large' | 'xml/too-deep' | 'source/not-a-score'

/** Where a fault is: in a line, from 1; or after so many bytes, where nobody has counted lines. */
export type SyntaxPlace = {readonly line: number} | {readonly offset: number}

/** A `SyntaxError` that knows its place. */
export interface XmlSyntaxError extends SyntaxError {
  readonly fault: SyntaxFault
  readonly place: SyntaxPlace
}

/** A `SyntaxError` with its place and the kind of fault. */
export function syntaxError(
  message: string,
  place: SyntaxPlace,
  fault: SyntaxFault = 'xml/malformed',
): XmlSyntaxError {
  return Object.assign(new SyntaxError(message), {fault, place})
}

/** Whether this was thrown by `syntaxError`; other errors are somebody's mistake and stay as they are. */
export function isXmlSyntaxError(error: unknown): error is XmlSyntaxError {
  return error instanceof SyntaxError && 'fault' in error && 'place' in error
}
