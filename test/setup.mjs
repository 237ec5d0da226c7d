// What `npm test` runs first: installs the packages and builds the command line where they are missing or
// older than the sources. It runs in a fresh clone too, so it may use nothing but Node itself.
import {spawnSync} from 'node:child_process'
import {readdirSync, readFileSync, statSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))

if (!isInstalled()) npm('ci', '--no-fund', '--no-audit')
if (!isBuilt()) npm('run', '--silent', 'build')

/** Whether every package of the lock file is there in its version; those of other platforms are not. */
function isInstalled() {
  const installed = lockedPackages('node_modules/.package-lock.json')
  return Object.entries(lockedPackages('package-lock.json')).every(
    ([path, {version, optional}]) =>
      path === '' || optional || installed[path]?.version === version,
  )
}

function lockedPackages(name) {
  try {
    return JSON.parse(readFileSync(join(root, name), 'utf8')).packages
  } catch {
    return {} // not installed yet
  }
}

function isBuilt() {
  // The command is compiled for this Node as the last step.
  const compiled = `dist/cli/program.js.${process.version}-${process.arch}`
  const built = statSync(join(root, compiled), {throwIfNoEntry: false})
  return built !== undefined && built.mtimeMs >= newestSource()
}

function newestSource() {
  const files = ['lib', 'cli'].flatMap((room) =>
    readdirSync(join(root, room), {recursive: true}).map((name) => join(room, name)),
  )
  const scripts = ['test/build.mjs', 'test/precompile.mjs']
  const times = ['package.json', ...scripts, ...files].map(
    (name) => statSync(join(root, name)).mtimeMs,
  )
  return Math.max(...times)
}

function npm(...words) {
  console.error(`npm ${words.join(' ')}`)
  const {status} = spawnSync('npm', words, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  })
  if (status !== 0) process.exit(status ?? 1)
}
