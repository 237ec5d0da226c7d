// npm run bench [-- --rows NAME,NAME] [--rounds 5] [--quick] [--list] [--cli FILE] [--folder DIR]
//
// Measures the built command line side by side with what anyone has, as ratios: the commands run in turn,
// round after round, and the medians are compared. `--quick` leaves out what takes more than 10 MB and runs two
// rounds; `--folder` keeps the generated scores for the next time. It informs: its exit code is 0 whatever it
// finds.
import {existsSync, mkdirSync, mkdtempSync, rmSync, statSync} from 'node:fs'
import {loadavg, tmpdir} from 'node:os'
import {join} from 'node:path'
import {parseArgs} from 'node:util'
import {createMeter} from './cost.mjs'
import {findInput, onePart} from './inputs.mjs'
import {commandsOf, ratio, roundsFor, rows, verdict} from './rows.mjs'
import {beside, findYardsticks} from './yardsticks.mjs'

const {values: options} = parseArgs({
  options: {
    rows: {type: 'string'},
    rounds: {type: 'string'},
    quick: {type: 'boolean', default: false},
    list: {type: 'boolean', default: false},
    cli: {type: 'string', default: beside('../../dist/cli/main.js')},
    folder: {type: 'string'},
  },
})

if (options.list) {
  for (const row of rows) console.log(`${row.name.padEnd(16)} ${row.says}`)
} else if (!existsSync(options.cli)) {
  console.error(`There is no ${options.cli}: run npm run build first`)
} else {
  const folder = options.folder ?? mkdtempSync(join(tmpdir(), 'renotate-bench-'))
  mkdirSync(folder, {recursive: true})
  try {
    await bench(chooseRows(), folder)
  } finally {
    if (options.folder === undefined) rmSync(folder, {recursive: true, force: true})
  }
}

function chooseRows() {
  const names = options.rows?.split(',')
  const unknown = names?.filter((name) => !rows.some((row) => row.name === name)) ?? []
  if (unknown.length > 0) console.error(`There is no row ${unknown.join(', ')}; --list shows them`)
  return rows.filter((row) => names?.includes(row.name) ?? !(options.quick && isLarge(row)))
}

function isLarge(row) {
  return commandsOf(row).some((command) => /hundred|giga/.test(command))
}

async function bench(chosen, folder) {
  const rounds = Number(options.rounds ?? (options.quick ? 2 : 5))
  const commands = prepare([...new Set(chosen.flatMap(commandsOf))], folder)
  const meter = createMeter(folder)
  // Once without counting, so that files are cached; then round after round, each command in its turn.
  for (let round = 0; round <= rounds; round++) {
    for (const command of commands.values()) {
      const most = roundsFor(command.name, rounds)
      if (command.failure || round > most || (round === 0 && most < rounds)) continue
      progress(`${round}/${rounds} ${command.name}`)
      try {
        const cost = await meter(command.words)
        if (round > 0) command.costs.push(cost)
      } catch (error) {
        command.failure = error.message
      }
    }
  }
  progress('')
  report(chosen, commands)
}

/** The commands that can be run here, by name. */
function prepare(names, folder) {
  const yardsticks = findYardsticks(folder, new Set(names.map((name) => name.split(' ')[0])))
  const commands = new Map()
  for (const name of names) {
    const [tool, inputName] = name.split(' ')
    if (inputName) progress(`making the input: ${inputName}`)
    const input = inputName && findInput(folder, inputName)
    const output = join(folder, 'output')
    const make = yardsticks[tool] ?? own(tool, inputName)
    if (!make || (inputName && !input)) continue
    const megabytes = input ? statSync(input).size / 1e6 : 0
    commands.set(name, {name, megabytes, words: make(input, output), costs: []})
  }
  return commands
}

/** The product's own commands. */
function own(tool, inputName) {
  const run = [process.execPath, options.cli]
  const always = ['--force', '--quiet']
  if (tool === 'start') return () => [...run, '--version']
  if (tool === 'part') {
    const {part, instrument} = onePart(inputName)
    const words = ['--part', part, '--for', instrument]
    return (input, output) => [
      ...run,
      'part',
      input,
      ...words,
      '-o',
      `${output}.musicxml`,
      ...always,
    ]
  }
  if (tool === 'concert') {
    return (input, output) => [...run, 'concert', input, '-o', `${output}.musicxml`, ...always]
  }
  if (tool === 'parts') {
    return (input, output) => [...run, 'parts', input, '-o', `${output}-parts`, ...always]
  }
  return undefined
}

function progress(text) {
  if (process.stderr.isTTY) process.stderr.write(`\r\u001b[K${text}`)
}

function report(chosen, commands) {
  const costs = new Map()
  const megabytes = new Map()
  for (const {name, costs: all, megabytes: size} of commands.values()) {
    if (all.length === 0) continue
    const middle = (cost) => median(all.map((each) => each[cost]))
    costs.set(name, {wall: middle('wall'), cpu: middle('cpu'), peak: middle('peak')})
    megabytes.set(name, size)
  }
  console.log(`node ${process.version}, load ${loadavg()[0].toFixed(1)}\n`)
  console.log(line('row', 'measured', 'goal', 'excellent', '', 'what is compared'))
  for (const row of chosen) {
    const isKnown = commandsOf(row).every((command) => costs.has(command))
    const measured = isKnown ? ratio(row, costs, megabytes) : undefined
    const shown = measured?.toFixed(measured < 0.1 ? 3 : 2) ?? '-'
    const said = measured === undefined ? 'not run' : verdict(row, measured)
    console.log(
      line(row.name, shown, String(row.goal ?? ''), String(row.excellent ?? ''), said, row.says),
    )
  }
  console.log(
    `\n${'command'.padEnd(18)} ${'wall s'.padStart(9)} ${'cpu s'.padStart(9)} ${'MiB'.padStart(7)}`,
  )
  for (const {name, failure} of commands.values()) {
    const cost = costs.get(name)
    if (cost === undefined) console.log(`${name.padEnd(18)} failed: ${failure}`)
    else {
      const [wall, cpu, peak] = [cost.wall.toFixed(3), cost.cpu.toFixed(3), cost.peak.toFixed(0)]
      console.log(`${name.padEnd(18)} ${wall.padStart(9)} ${cpu.padStart(9)} ${peak.padStart(7)}`)
    }
  }
}

function line(name, measured, goal, excellent, said, says) {
  const numbers = [measured, goal, excellent].map((text) => text.padStart(9)).join(' ')
  return `${name.padEnd(16)} ${numbers}  ${said.padEnd(10)} ${says}`
}

function median(numbers) {
  const sorted = numbers.toSorted((a, b) => a - b)
  const half = sorted.length >> 1
  return sorted.length % 2 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2
}
