// Leaves beside each script of the bundled command what V8 makes of it, functions that usual jobs call included. It runs these
// jobs on the demonstration score, one after the other in this process.
import {mkdtempSync, rmSync, writeFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'

const {compiled, scripts, start} = createRequire(import.meta.url)('../dist/cli/main.js')
const folder = mkdtempSync(join(tmpdir(), 'renotate-build-'))
const score = fileURLToPath(new URL('../fixtures/demo/score.musicxml', import.meta.url))
const [part, report] = [join(folder, 'part.musicxml'), join(folder, 'report.json')]
const packed = join(folder, 'concert.mxl')
const into = (file) => ['-o', file, '--report', report, '--force']
const jobs = [
  ['part', score, '-p', 'P9', '-f', 'tuba', '--cues', '4', '--prove', ...into(part)],
  ['part', score, '-p', 'P2', '-f', 'alto saxophone', '--fold', ...into(join(folder, 'sax.xml'))],
  ['survey', score],
  ['cover', score, '-p', 'P9'],
  ['prove', score, part],
  ['concert', score, '-o', packed],
  ['sounding', packed, '-p', 'P1'],
  ['list', 'instruments', 'saxhorn'],
]

const {exit} = process
process.exit = () => {}
process.on('exit', () => rmSync(folder, {recursive: true}))
process.on('beforeExit', () => {
  if (process.exitCode) throw new Error('a job failed')
  const words = jobs.shift()
  if (words) {
    process.argv.splice(2, Infinity, ...words)
    start()
    setImmediate(() => {}) // so that this is asked again, also by a job that has never waited
  } else leave()
})

function leave() {
  for (const [file, script] of scripts) writeFileSync(file + compiled, script.createCachedData())
  exit(0)
}
