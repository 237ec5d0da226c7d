// The executable. Beside each script of the program lies what V8 made of it when it was built (`test/precompile.mjs`), so that
// nothing has to be compiled again; another Node finds nothing there, and compiles as ever.
import {readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {join} from 'node:path'
import {Script} from 'node:vm'

/** What a script may use, as in any CommonJS module, and how to import packages that are ES modules. */
const HEAD = '(function (exports, require, module, importPackage) {'

type Body = (
  exports: object,
  require: (name: string) => unknown,
  module: {exports: object},
  importPackage: (name: string) => Promise<unknown>,
) => void

/** What follows the name of a script in the name of what V8 made of it: that is of use to the same Node alone. */
export const compiled = `.${process.version}-${process.arch}`

/** The scripts that were loaded, by their files. */
export const scripts = new Map<string, Script>()

/** Runs the program for the words of `process.argv`. */
export function start(): void {
  const modules = new Map<string, {exports: object}>()
  const requirePackage = createRequire(__filename)
  load('./program.js')

  function load(name: string): unknown {
    if (!name.startsWith('./')) return requirePackage(name)
    const known = modules.get(name)
    if (known) return known.exports
    const module = {exports: {}}
    modules.set(name, module)
    const body = scriptOf(name).runInThisContext() as Body
    body.call(module.exports, module.exports, load, module, (each) => import(each))
    return module.exports
  }
}

function scriptOf(name: string): Script {
  const filename = join(__dirname, name)
  const known = scripts.get(filename)
  if (known) return known
  const script = new Script(`${HEAD}${readFileSync(filename, 'utf8')}\n})`, {
    filename,
    cachedData: readIfThere(filename + compiled),
  })
  scripts.set(filename, script)
  return script
}

function readIfThere(file: string): Buffer | undefined {
  try {
    return readFileSync(file)
  } catch {
    return undefined
  }
}

if (require.main === module) start()
