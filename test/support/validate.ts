import {existsSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {
  ParseOption,
  XmlBufferInputProvider,
  XmlDocument,
  XmlLibError,
  xmlRegisterInputProvider,
  XsdValidator,
} from 'libxml2-wasm'

/** One thing that is wrong with a score. `line` counts from 1. */
export interface Problem {
  readonly line: number
  readonly message: string
}

/**
 * The schema is not part of the project either; without it only well-formedness can be judged. No package
 * that we know brings MusicXML 4.0's: what there is ships the DTD of 3.0.
 */
const directory =
  process.env.RENOTATE_SCHEMA ??
  fileURLToPath(new URL('../../../shared/musicxml-4.0', import.meta.url))

/** Whether scores are judged by the MusicXML 4.0 schema; else they are only checked for well-formed XML. */
export const hasSchema = existsSync(join(directory, 'musicxml.xsd'))

if (!hasSchema) {
  console.warn(
    `NOT VALIDATED: no musicxml.xsd in ${directory}, so scores are only checked for well-formed XML; ` +
      'set RENOTATE_SCHEMA to the folder that holds it',
  )
}

const schema = hasSchema ? compileSchema() : undefined

const lenient =
  ParseOption.XML_PARSE_NO_XXE |
  ParseOption.XML_PARSE_NONET |
  ParseOption.XML_PARSE_HUGE |
  ParseOption.XML_PARSE_BIG_LINES

/** What the MusicXML 4.0 schema has against a score, partwise or timewise; nothing when it is valid. */
export function validateScore(xml: string | Uint8Array): readonly Problem[] {
  let document: XmlDocument
  try {
    document = parse(xml)
  } catch (error) {
    return problemsOf(error)
  }
  try {
    schema?.validate(document)
    return []
  } catch (error) {
    return problemsOf(error)
  } finally {
    document.dispose()
  }
}

/** What keeps a text from being XML at all; nothing when it is well-formed. */
export function checkWellFormed(xml: string | Uint8Array): readonly Problem[] {
  try {
    parse(xml).dispose()
    return []
  } catch (error) {
    return problemsOf(error)
  }
}

function parse(xml: string | Uint8Array): XmlDocument {
  if (typeof xml !== 'string') return XmlDocument.fromBuffer(xml, {option: lenient})
  // A decoded text may still declare the encoding it once had.
  return XmlDocument.fromString(xml.replace(/^\uFEFF/, ''), {
    option: lenient | ParseOption.XML_PARSE_IGNORE_ENC,
  })
}

function problemsOf(error: unknown): readonly Problem[] {
  if (!(error instanceof XmlLibError)) throw error
  return error.details.map(({line, message}) => ({line, message: message.trim()}))
}

function compileSchema(): XsdValidator {
  xmlRegisterInputProvider(
    new XmlBufferInputProvider({
      'http://www.musicxml.org/xsd/xml.xsd': readSchema('xml.xsd'),
      'http://www.musicxml.org/xsd/xlink.xsd': readSchema('xlink.xsd'),
    }),
  )
  const document = XmlDocument.fromBuffer(readSchema('musicxml.xsd'))
  try {
    return XsdValidator.fromDoc(document)
  } finally {
    document.dispose()
  }
}

function readSchema(name: string): Uint8Array {
  return readFileSync(join(directory, name))
}
