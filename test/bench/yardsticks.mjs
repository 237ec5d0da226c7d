// What the product is measured against, made ready or said to be missing.
import {spawnSync} from 'node:child_process'
import {writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'

/** The path of a file beside this one. */
export function beside(name) {
  return fileURLToPath(new URL(name, import.meta.url))
}

/** Compiles a C source beside this file; undefined where there is no compiler or a header is missing. */
export function compile(folder, source, ...libraries) {
  const program = join(folder, source.replace(/\.c$/, ''))
  const {status} = spawnSync('cc', ['-O2', '-o', program, beside(source), ...libraries])
  return status === 0 ? program : undefined
}

/** Each yardstick by name: a function from input and output paths to a command's words, or undefined. */
export function findYardsticks(folder, wanted) {
  const expat = wanted.has('expat') ? compile(folder, 'expat-count.c', '-lexpat') : undefined
  const hasXslt = wanted.has('xslt') && spawnSync('xsltproc', ['--version']).status === 0
  const hasPeer = wanted.has('peer') && installPeer(folder)
  const found = {
    node: () => [process.execPath, '-e', '0'],
    copy: (input, output) => [process.execPath, beside('copy.mjs'), input, output],
    expat: expat && ((input) => [expat, input]),
    xslt: hasXslt
      ? (input, output) => ['xsltproc', '--novalid', '-o', output, beside('sounding.xsl'), input]
      : undefined,
    peer: hasPeer
      ? (input, output) => [process.execPath, heap, beside('peer.mjs'), folder, input, output]
      : undefined,
  }
  for (const name of wanted) {
    if (name in missing && found[name] === undefined) console.warn(`SKIPPED: ${missing[name]}`)
  }
  return found
}

/** 100 MB become more objects than Node allows for by default. */
const heap = '--max-old-space-size=8192'

const missing = {
  expat: 'rows against expat: it takes a C compiler and expat with its header',
  xslt: 'rows against XSLT: it takes xsltproc',
  peer: 'rows against musicxml-io: it could not be installed',
}

function installPeer(folder) {
  writeFileSync(join(folder, 'package.json'), '{"private": true}')
  const words = ['install', '--no-fund', '--no-audit', '--ignore-scripts', 'musicxml-io@0.9.6']
  const options = {cwd: folder, timeout: 120_000, shell: process.platform === 'win32'}
  return spawnSync('npm', words, options).status === 0
}
