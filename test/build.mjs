// Builds dist: the library as modules with their types, the command line bundled to few files so that it starts fast.
import {execFileSync} from 'node:child_process'
import {chmodSync, readFileSync, readdirSync, rmSync, writeFileSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {build, transform} from 'esbuild'

const root = fileURLToPath(new URL('..', import.meta.url))
process.chdir(root)
rmSync('dist', {recursive: true, force: true})
const tsc = fileURLToPath(new URL('../node_modules/typescript/bin/tsc', import.meta.url))
execFileSync(process.execPath, [tsc, '-p', '.'], {stdio: 'inherit'})
rmSync('dist/cli', {recursive: true, force: true})

/** The bundler splits by files: whoever imports one thing of `index.ts` would load all. So each is taken from its own file. */
const direct = {
  name: 'direct',
  setup({onLoad}) {
    const exported = /^export \{([^}]*)\} from '(.*)'/gm
    const homes = new Map()
    for (const [, names, file] of readFileSync('lib/index.ts', 'utf8').matchAll(exported))
      for (const name of wordsOf(names)) homes.set(name, file.replace('./', '../lib/'))
    onLoad({filter: /[\\/]cli[\\/][^\\/]+\.ts$/}, ({path}) => {
      const imported = /^import \{([^}]*)\} from '..\/lib\/index.ts'/gm
      const contents = readFileSync(path, 'utf8').replace(imported, (_, names) =>
        wordsOf(names)
          .map((name) => `import {${name}} from '${homes.get(name)}'`)
          .join(';'),
      )
      return {contents, loader: 'ts'}
    })
  },
}

/** The reader of command lines loads what it would need for commands that are programs; there are none. */
const absent = {
  name: 'absent',
  setup({onResolve, onLoad}) {
    onResolve({filter: /^node:child_process$/}, () => ({
      path: 'child_process',
      namespace: 'absent',
    }))
    onLoad({filter: /./, namespace: 'absent'}, () => ({contents: 'module.exports = {}'}))
  },
}

function wordsOf(list) {
  return list.split(',').flatMap((word) => word.trim() || [])
}

const minify = !process.env.RENOTATE_PLAIN
await build({
  entryPoints: {program: 'cli/main.ts'},
  bundle: true,
  splitting: true,
  minify,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  outdir: 'dist/cli',
  external: ['verovio'],
  plugins: [direct, absent],
  logLevel: 'warning',
})
// Node needs a millisecond for each ES module, and four to begin with them; the bundler cannot split CommonJS itself.
for (const file of readdirSync('dist/cli')) {
  // Packages that are not bundled may be ES modules.
  const module = readFileSync(`dist/cli/${file}`, 'utf8').replace(
    /\bimport\((?="\w)/g,
    'importPackage(',
  )
  const {code} = await transform(module, {
    format: 'cjs',
    target: 'node20',
    minify,
    supported: {'dynamic-import': false},
  })
  // Values instead of getters: all of them are known by now, and whoever calls them calls them often.
  const values =
    'module.exports=Object.defineProperty({...module.exports},"__esModule",{value:true});'
  writeFileSync(`dist/cli/${file}`, `${code}${values}\n`)
}
const executable = await transform(readFileSync('cli/start.ts', 'utf8'), {
  loader: 'ts',
  format: 'cjs',
  target: 'node20',
  minify,
})
writeFileSync('dist/cli/main.js', `#!/usr/bin/env node\n${executable.code}`)
writeFileSync('dist/cli/package.json', '{"type": "commonjs"}\n')
chmodSync('dist/cli/main.js', 0o755)
const precompile = fileURLToPath(new URL('precompile.mjs', import.meta.url))
execFileSync(process.execPath, [precompile], {stdio: 'pipe'})
