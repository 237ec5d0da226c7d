// Builds dist: the library as modules with their types, the command line bundled to few files so that it starts fast.
import {execFileSync} from 'node:child_process'
import {chmodSync, readFileSync, rmSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {build} from 'esbuild'

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

function wordsOf(list) {
  return list.split(',').flatMap((word) => word.trim() || [])
}

await build({
  entryPoints: ['cli/main.ts'],
  bundle: true,
  splitting: true,
  minify: !process.env.RENOTATE_PLAIN,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  outdir: 'dist/cli',
  external: ['verovio'],
  plugins: [direct],
  logLevel: 'warning',
  // Bundled CommonJS packages ask for Node's modules by `require`.
  banner: {
    js: "#!/usr/bin/env node\nimport {createRequire as makeRequire} from 'node:module'; const require = makeRequire(import.meta.url);",
  },
})
chmodSync('dist/cli/main.js', 0o755)
