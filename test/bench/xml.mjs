/** An element for `print`: its children are elements, or one text or number. */
export function element(name, attributes = {}, ...children) {
  return {name, attributes, children: children.filter((child) => child !== undefined)}
}

/** An element as indented XML, ending its last line. */
export function print({name, attributes, children}, depth = 0) {
  const indent = '  '.repeat(depth)
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${value}"`)
    .join('')
  const open = `${indent}<${name}${written}`
  if (children.length === 0) return `${open}/>\n`
  if (typeof children[0] !== 'object') return `${open}>${children[0]}</${name}>\n`
  const inner = children.map((child) => print(child, depth + 1)).join('')
  return `${open}>\n${inner}${indent}</${name}>\n`
}
