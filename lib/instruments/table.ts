/**
 * Reads a table of `data/`: its first line names the columns, `|` parts them, empty ends of lines may be missing.
 * Returns the cells of each line. Throws a `TypeError` where the table does not have exactly the columns asked for.
 */
export function readTable(text: string, columns: string): readonly (readonly string[])[] {
  const [, head = '', ...lines] = text.split('\n')
  if (head !== columns) throw new TypeError(`the columns are ${head}`)
  const width = columns.split('|').length
  return lines
    .filter((line) => line !== '')
    .map((line) => {
      const cells = line.split('|')
      if (cells.length > width) throw new TypeError(`too many columns: ${line}`)
      return cells
    })
}

/** The cells of the lines of a table that begin with an id and stand together: as `readTable`, but of few lines. */
export function readLines(
  text: string,
  columns: string,
  id: string,
): readonly (readonly string[])[] {
  if (!text.startsWith(`\n${columns}\n`)) throw new TypeError(`the columns are not ${columns}`)
  const start = text.indexOf(`\n${id}|`) + 1
  if (start === 0) return []
  let end = start
  while (text.startsWith(`${id}|`, end)) end = text.indexOf('\n', end) + 1
  return text
    .slice(start, end - 1)
    .split('\n')
    .map((line) => line.split('|'))
}

/** A constant that is read when it is first asked for: most runs need one row of a table, not all of them. */
export function lazily<Value>(read: () => Value): () => Value {
  let known: {readonly value: Value} | undefined
  return () => (known ??= {value: read()}).value
}

/** The words of a cell that holds several. */
export function wordsOf(cell: string): readonly string[] {
  return cell === '' ? [] : cell.split(' ')
}

/** The value that a reader found, or a `TypeError` that shows the text: a table of ours is wrong. */
export function must<Value>(value: Value | undefined, text: string): Value {
  if (value === undefined) throw new TypeError(`not readable: ${text}`)
  return value
}

/** A record without the entries whose text is empty or missing. */
export function withoutEmpty<Key extends string>(
  record: Readonly<Record<Key, string | undefined>>,
): Readonly<Partial<Record<Key, string>>> {
  const kept: Partial<Record<Key, string>> = {}
  for (const key in record) if (record[key]) kept[key] = record[key]
  return kept
}
