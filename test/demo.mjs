// The main job on the demonstration score: the contrabass saxhorn, written a ninth high in bass clef, for a tuba.
import {spawnSync} from 'node:child_process'
import {mkdirSync} from 'node:fs'
import {fileURLToPath} from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))
process.chdir(root)
mkdirSync('.demo', {recursive: true})
const score = 'fixtures/demo/score.musicxml'
const part = '.demo/contrabass-for-tuba.musicxml'
run('part', score, '--part', 'P9', '--for', 'tuba', '--output', part, '--force')
run('prove', score, part)
console.log(`\nThe part is in ${part}`)

function run(...words) {
  console.log(`\n$ renotate ${words.join(' ')}`)
  const {status} = spawnSync(process.execPath, ['dist/cli/main.js', ...words], {stdio: 'inherit'})
  if (status !== 0) process.exit(status ?? 1)
}
