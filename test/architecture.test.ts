import {readFileSync, readdirSync} from 'node:fs'
import {dirname, join, relative} from 'node:path'
import {fileURLToPath} from 'node:url'
import {describe, expect, it} from 'vitest'
import {rules} from '../lib/rules/index.ts'
import {toolVersion} from '../lib/version.ts'

const root = fileURLToPath(new URL('..', import.meta.url))

interface Import {
  readonly from: string
  readonly to: string
  readonly typeOnly: boolean
}

/** The table of DEVELOPERS.md: which room may import which, besides itself. Single files stand as `room/file`. */
const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  pitch: [],
  staff: ['pitch'],
  xml: [],
  musicxml: ['xml', 'staff', 'pitch', 'diagnostic'],
  instruments: ['staff', 'pitch'],
  survey: ['musicxml', 'xml', 'instruments', 'staff', 'pitch', 'diagnostic'],
  plan: ['survey/facts', 'instruments', 'staff', 'pitch', 'diagnostic'],
  rules: ['plan', 'musicxml', 'xml', 'instruments', 'staff', 'pitch', 'diagnostic'],
  fit: ['survey/facts', 'survey/measure-starts', 'instruments', 'staff', 'pitch', 'diagnostic'],
  ensemble: ['fit', 'plan', 'survey/facts', 'instruments', 'staff', 'pitch', 'diagnostic'],
  join: ['musicxml', 'xml', 'survey/facts', 'staff', 'pitch', 'diagnostic'],
  proof: ['diagnostic'],
  report: [
    'diagnostic',
    'survey',
    'plan',
    'fit',
    'ensemble',
    'proof',
    'sheet',
    'instruments',
    'staff',
    'pitch',
  ],
  sheet: [
    'musicxml',
    'xml',
    'survey',
    'plan',
    'instruments',
    'staff',
    'pitch',
    'proof',
    'diagnostic',
  ],
}

const DOORS: Readonly<Record<string, readonly string[]>> = {
  'fast-xml-parser': ['lib/musicxml/container.ts'],
  xmlbuilder2: ['lib/musicxml/container.ts'],
  fflate: ['lib/musicxml/inflate.ts', 'lib/musicxml/archive-writer.ts', 'lib/proof/container.ts'],
  saxes: ['lib/proof/document.ts'],
  yaml: ['lib/ensemble/yaml-node.ts'],
  verovio: ['lib/report/engraver.ts'],
  commander: ['cli/main.ts'],
}

function files(room: string): string[] {
  return readdirSync(join(root, room), {recursive: true, encoding: 'utf8'})
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
    .map((name) => join(room, name))
}

function importsOf(file: string): Import[] {
  const text = readFileSync(join(root, file), 'utf8')
  const pattern =
    /^(import|export)( type)? [^'";]*?from '([^']+)'|\bimport\('([^']+)'\)|^import '([^']+)'/gm
  return [...text.matchAll(pattern)].map(([, , typeOnly, one, two, three]) => {
    const path = one ?? two ?? three ?? ''
    const to = path.startsWith('.') ? relative(root, join(root, dirname(file), path)) : path
    return {from: file, to, typeOnly: typeOnly !== undefined}
  })
}

function roomOf(file: string): string {
  const [, room = '', rest] = file.split('/')
  return rest === undefined ? room.replace('.ts', '') : room
}

const all = [...files('lib'), ...files('cli')].flatMap(importsOf)

describe('architecture', () => {
  it('reads the imports', () => {
    expect(all.length).toBeGreaterThan(500)
  })

  it('has rooms that import only what the table allows', () => {
    const wrong = all.filter(({from, to}) => {
      if (!from.startsWith('lib/') || !to.startsWith('lib/')) return false
      const [own, other] = [roomOf(from), roomOf(to)]
      const allowed = ALLOWED[own]
      if (own === other || allowed === undefined) return false
      return !allowed.some((room) => room === other || to === `lib/${room}.ts`)
    })
    expect(wrong.map(({from, to}) => `${from} → ${to}`)).toEqual([])
  })

  it('has rules that do not import one another', () => {
    const names = new Set(rules.map(({name}) => `lib/rules/${name}.ts`))
    const wrong = all.filter(({from, to}) => names.has(from) && names.has(to))
    expect(wrong.map(({from, to}) => `${from} → ${to}`)).toEqual([])
  })

  it('opens each package by its own door', () => {
    const wrong = all.filter(({from, to}) => {
      if (to.startsWith('.') || /^(lib|cli)\//.test(to) || to.startsWith('node:')) return false
      const name = to.split('/')[0] ?? ''
      return !DOORS[name]?.includes(from)
    })
    expect(wrong.map(({from, to}) => `${from} → ${to}`)).toEqual([])
  })

  it('keeps Node and the process out of the library', () => {
    const wrong = files('lib').filter((file) => {
      const text = readFileSync(join(root, file), 'utf8').replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*/g, '')
      return /from 'node:|import\('node:|\bprocess\.|\bBuffer\b|\bconsole\./.test(text)
    })
    expect(wrong).toEqual([])
  })

  it('lets the command line see only the public surface', () => {
    const wrong = all.filter(
      ({from, to}) =>
        from.startsWith('cli/') &&
        to.startsWith('lib/') &&
        to !== 'lib/index.ts' &&
        to !== 'lib/version.ts',
    )
    expect(wrong.map(({from, to}) => `${from} → ${to}`)).toEqual([])
  })

  it('gives every element to one rule', () => {
    const owned = rules.flatMap(({owns}) => [...new Set(owns)])
    expect(owned.filter((name, index) => owned.indexOf(name) !== index)).toEqual([])
  })

  it('says its version once', () => {
    const {version} = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
    expect(toolVersion).toBe(version)
  })

  it('has no file that grew past one concept', () => {
    const long = [...files('lib'), ...files('cli')].filter(
      (file) =>
        !file.includes('/data/') && readFileSync(join(root, file), 'utf8').split('\n').length > 320,
    )
    expect(long).toEqual([])
  })
})
