import {SaxesParser} from 'saxes'
import {syntaxError} from './syntax-error.ts'

/** Judges an XML document while it comes. */
export interface Checker {
  /** Takes the next bytes. Throws a `SyntaxError` (`XmlSyntaxError`, with its line) at the first fault. */
  push(bytes: Uint8Array): void
  /** The document is complete. Throws likewise. */
  end(): void
}

/**
 * A checker of UTF-8 bytes, in chunks of any size: whether they are a well-formed XML 1.0 document. Entities other than
 * the five predefined ones count as undeclared, wherever they are declared.
 */
export function createChecker(): Checker {
  const parser = new SaxesParser()
  const decoder = new TextDecoder('utf-8', {fatal: true})
  parser.on('error', (error) => {
    throw syntaxError(error.message.replace(/^\d+:\d+: /, ''), parser.line)
  })
  const write = (bytes: Uint8Array, stream: boolean): void => {
    let text
    try {
      text = decoder.decode(bytes, {stream})
    } catch {
      throw syntaxError('the text is not well-formed UTF-8', parser.line)
    }
    parser.write(text)
  }
  return {
    push: (bytes) => write(bytes, true),
    end: () => {
      write(new Uint8Array(0), false)
      parser.close()
    },
  }
}
