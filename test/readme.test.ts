import {readFileSync, readdirSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {describe, expect, it} from 'vitest'

const root = fileURLToPath(new URL('..', import.meta.url))
const readme = readFileSync(join(root, 'README.md'), 'utf8')

function sources(room: string): string[] {
  return readdirSync(join(root, room), {recursive: true, encoding: 'utf8'})
    .filter((name) => name.endsWith('.ts'))
    .map((name) => readFileSync(join(root, room, name), 'utf8'))
}

/** Codes as they stand in reports and errors, also those put together: `${kind}/unknown`. */
function codes(): Set<string> {
  const found = new Set<string>()
  for (const text of sources('lib')) {
    for (const [, code = ''] of text.matchAll(
      /(?:code: |scoreError\(\s*|complain\(\s*|syntaxError\([^)]*)'([a-z]+(?:-[a-z]+)*\/[a-z-]+)'/g,
    )) {
      found.add(code)
    }
  }
  return found
}

describe('README', () => {
  it('explains every diagnostic', () => {
    const known = codes()
    expect(known.size).toBeGreaterThan(40)
    expect([...known].filter((code) => !readme.includes(`\`${code}\``))).toEqual([])
  })

  it('names every command and only those', () => {
    const main = readFileSync(join(root, 'cli/main.ts'), 'utf8')
    const commands = [...main.matchAll(/\.command\('([a-z]+)/g)].map(([, name]) => name)
    const listed = [...readme.matchAll(/^\| `([a-z]+) (?:SCORE|BEFORE|instruments)/gm)].map(
      ([, name]) => name,
    )
    expect(commands.toSorted()).toEqual(listed.toSorted())
  })

  it('names every option', () => {
    const main = readFileSync(join(root, 'cli/main.ts'), 'utf8')
    const options = new Set(
      [...main.matchAll(/'(?:-[a-z], )?(--[a-z-]+)/g)].map(([, name = '']) => name),
    )
    expect(options.size).toBeGreaterThan(25)
    expect([...options].filter((name) => !readme.includes(name))).toEqual([])
  })

  it('names the scripts that set up, test and demonstrate', () => {
    const {scripts} = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
    for (const script of ['demo', 'test']) expect(scripts).toHaveProperty(script)
    expect(readme).toContain('npm run demo')
    expect(readme).toContain('npm test')
  })
})
