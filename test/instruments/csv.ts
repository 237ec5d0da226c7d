/** Reads a table of comma-separated values with quotes (RFC 4180): a record for each line after the first. */
export function readCsv(text: string): readonly Readonly<Record<string, string>>[] {
  const [head = [], ...rows] = readCells(text)
  return rows.map((row) => {
    if (row.length !== head.length) throw new Error(`wrong number of columns: ${row.join(',')}`)
    return Object.fromEntries(head.map((column, index) => [column, row[index] ?? '']))
  })
}

function readCells(text: string): string[][] {
  const rows: string[][] = []
  let row: string[] = []
  for (const [, quoted, plain = '', end] of text.matchAll(
    /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r?\n|$)/g,
  )) {
    row.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'))
    if (end === ',') continue
    if (row.length > 1 || row[0] !== '') rows.push(row)
    row = []
  }
  return rows
}
