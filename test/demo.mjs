// The main job on the demonstration score: what it asks for, who covers the contrabass saxhorn, its part for a tuba, and
// the same voice woven into a euphonium player's own part.
import {spawnSync} from 'node:child_process'
import {mkdirSync} from 'node:fs'
import {fileURLToPath} from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))
process.chdir(root)
mkdirSync('.demo', {recursive: true})
const score = 'fixtures/demo/score.musicxml'
const part = '.demo/contrabass-for-tuba.musicxml'
const report = '.demo/contrabass-for-tuba.json'

run('survey', score)
run('cover', score, '--part', 'P9', '--count', '3')
run('part', score, '--part', 'P9', '--for', 'tuba', '--report', report, '--output', part, '--force')
run('prove', score, part)
const players = ['--part', 'P9', '--roster', 'fixtures/demo/roster.yaml', '--force']
const woven = '.demo/euphonium-with-contrabass.musicxml'
const told = '.demo/euphonium-with-contrabass.json'
run('cover', score, ...players, '--write', '4', '--woven', '--report', told, '--output', woven)
run('prove', score, woven, '--intended', told)
run('sheet', score, part, '--report', report, '--html', '.demo/sheet.html', '--force')
console.log(`\nThe part is in ${part}; open .demo/sheet.html to see it beside the old one`)

function run(...words) {
  console.log(`\n$ renotate ${words.join(' ')}`)
  const {status} = spawnSync(process.execPath, ['dist/cli/main.js', ...words], {stdio: 'inherit'})
  if (status !== 0) process.exit(status ?? 1)
}
