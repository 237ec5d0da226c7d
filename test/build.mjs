// Builds dist: the library as modules with their types, the command line bundled to few files so that it starts fast.
import {execFileSync} from 'node:child_process'
import {chmodSync, rmSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {build} from 'esbuild'

const root = fileURLToPath(new URL('..', import.meta.url))
process.chdir(root)
rmSync('dist', {recursive: true, force: true})
const tsc = fileURLToPath(new URL('../node_modules/typescript/bin/tsc', import.meta.url))
execFileSync(process.execPath, [tsc, '-p', '.'], {stdio: 'inherit'})
rmSync('dist/cli', {recursive: true, force: true})
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
  logLevel: 'warning',
  // Bundled CommonJS packages ask for Node's modules by `require`.
  banner: {
    js: "#!/usr/bin/env node\nimport {createRequire as makeRequire} from 'node:module'; const require = makeRequire(import.meta.url);",
  },
})
chmodSync('dist/cli/main.js', 0o755)
