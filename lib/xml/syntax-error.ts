/** What kind of fault a `SyntaxError` of this room tells of; also the diagnostic's code further out. */
export type SyntaxFault = 'xml/malformed' | 'xml/too-large' | 'xml/too-deep' | 'source/not-a-score'

/** A `SyntaxError` that knows its line, counted from 1. */
export interface XmlSyntaxError extends SyntaxError {
  readonly fault: SyntaxFault
  readonly line: number
}

/** A `SyntaxError` with its line and the kind of fault. */
export function syntaxError(
  message: string,
  line: number,
  fault: SyntaxFault = 'xml/malformed',
): XmlSyntaxError {
  return Object.assign(new SyntaxError(message), {fault, line})
}

/** Whether this was thrown by `syntaxError`; other errors are somebody's mistake and stay as they are. */
export function isXmlSyntaxError(error: unknown): error is XmlSyntaxError {
  return error instanceof SyntaxError && 'fault' in error && 'line' in error
}
