import {LineCounter, isMap, isScalar, isSeq, parseDocument} from 'yaml'
import {scoreError} from '../diagnostic.ts'
import type {Diagnostic} from '../diagnostic.ts'
import {nearest} from '../instruments/nearest.ts'

/** A value of a YAML file that knows its line and its path, so that whatever is wrong with it can be found. */
export interface YamlNode {
  /** Fails unless the value is a mapping with no other keys than these. */
  only(keys: readonly string[]): void
  optional(key: string): YamlNode | undefined
  required(key: string): YamlNode
  /** The values of a list; a single value counts as a list of one. */
  list(): readonly YamlNode[]
  text(): string
  /** A whole number from 1. */
  count(): number
  oneOf<Word extends string>(words: readonly Word[]): Word
  /** Throws a `ScoreError` with the line and the path of the value. */
  fail(code: Diagnostic['code'], message: string): never
}

/** Reads a YAML text of mappings, lists and plain values. Throws `roster/malformed` where it is no YAML. */
export function readYaml(source: string): YamlNode {
  const counter = new LineCounter()
  const document = parseDocument(source, {lineCounter: counter, prettyErrors: false})
  const [error] = document.errors
  if (error) {
    const {line} = counter.linePos(error.pos[0])
    throw scoreError('roster/malformed', `the file is no YAML: ${firstLine(error.message)}`, {line})
  }

  function nodeOf(value: unknown, path: string, above: number): YamlNode {
    const line = lineOf(value) ?? above
    const fail = (code: Diagnostic['code'], message: string): never => {
      throw scoreError(code, path === '' ? message : `${path}: ${message}`, {line})
    }
    const find = (key: string): YamlNode | undefined => {
      if (!isMap(value)) return undefined
      const pair = value.items.find((item) => isScalar(item.key) && item.key.value === key)
      if (!pair || (isScalar(pair.value) && pair.value.value === null) || pair.value === null)
        return undefined
      return nodeOf(pair.value, path === '' ? key : `${path}.${key}`, lineOf(pair.key) ?? line)
    }
    const plain = (): string => {
      if (isScalar(value) && value.value !== null && typeof value.value !== 'object')
        return String(value.value).trim()
      return fail('roster/value', 'a plain value is wanted here')
    }
    return {
      fail,
      text: plain,
      only(keys) {
        if (!isMap(value))
          return fail('roster/value', `keys and values are wanted here: ${keys.join(', ')}`)
        for (const {key} of value.items) {
          const name = isScalar(key) ? String(key.value) : '?'
          if (keys.includes(name)) continue
          const [near] = nearest(
            name,
            keys.map((each) => [each, each] as const),
          )
          const hint =
            near === undefined ? `; known are ${keys.join(', ')}` : `; “${near}” is known`
          nodeOf(key, path, line).fail('roster/unknown-key', `there is no key “${name}”${hint}`)
        }
      },
      optional: find,
      required: (key) => find(key) ?? fail('roster/missing', `“${key}” is missing`),
      list() {
        const items = isSeq(value) ? value.items : [value]
        return items.map((item, index) => nodeOf(item, `${path}[${index}]`, line))
      },
      count() {
        const number = Number(plain())
        return Number.isInteger(number) && number > 0
          ? number
          : fail('roster/value', `“${plain()}” is no whole number from 1`)
      },
      oneOf(words) {
        const word = words.find((each) => each === plain())
        return word ?? fail('roster/value', `“${plain()}” is none of ${words.join(', ')}`)
      },
    }
  }

  function lineOf(value: unknown): number | undefined {
    const range =
      typeof value === 'object' && value !== null && 'range' in value ? value.range : undefined
    const [start] = Array.isArray(range) ? (range as unknown[]) : []
    return typeof start === 'number' ? counter.linePos(start).line : undefined
  }

  return nodeOf(document.contents, '', 1)
}

function firstLine(text: string): string {
  return text.split('\n')[0] ?? text
}
