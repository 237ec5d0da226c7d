import {encode} from './element.ts'

/** A new element: its children, or its text, or neither. */
export interface NewElement {
  readonly name: string
  readonly attributes?: Readonly<Record<string, string>>
  readonly content?: string | readonly NewElement[]
}

/** A new element from its parts; children that are undefined are left out. */
export function element(
  name: string,
  content?: string | number | readonly (NewElement | undefined)[],
  attributes?: Readonly<Record<string, string | undefined>>,
): NewElement {
  const given = Object.entries(attributes ?? {}).filter(
    (entry): entry is [string, string] => entry[1] !== undefined,
  )
  return {
    name,
    ...(given.length > 0 && {attributes: Object.fromEntries(given)}),
    ...(content !== undefined && {
      content: Array.isArray(content)
        ? content.filter((each) => each !== undefined)
        : String(content),
    }),
  }
}

/**
 * Prints a new element as the file prints its neighbours: `margin` is the white space before such an element (with its
 * line break, or empty when the file has no line breaks there), `indent` one step further in.
 */
export function printElement(created: NewElement, margin: string, indent: string): string {
  const {name, attributes = {}, content} = created
  const tag = [
    name,
    ...Object.entries(attributes).map(([key, value]) => `${key}="${encode(value)}"`),
  ].join(' ')
  if (content === undefined || content.length === 0) return `<${tag}/>`
  if (typeof content === 'string') return `<${tag}>${encode(content)}</${name}>`
  const inner = margin === '' ? '' : margin + indent
  return `<${tag}>${content.map((each) => inner + printElement(each, inner, indent)).join('')}${margin}</${name}>`
}
