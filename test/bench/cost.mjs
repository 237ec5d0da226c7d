// What running a command costs. Everything is measured from outside, on the whole process.
import {spawn, spawnSync} from 'node:child_process'
import {closeSync, openSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {compile} from './yardsticks.mjs'

/**
 * A function from a command's words to its cost: `wall` and `cpu` in seconds, `peak` in MiB. It throws an
 * Error with what the command had to say when that fails.
 */
export function createMeter(folder) {
  const errors = join(folder, 'errors')
  const runner = compile(folder, 'run.c')
  if (runner !== undefined) return async (words) => runExactly(runner, errors, words)
  console.warn(
    'No C compiler: processor time and peak memory are polled, and too low for short runs',
  )
  return (words) => runPolling(errors, words)
}

function runExactly(runner, errors, words) {
  const {stdout} = spawnSync(runner, [errors, ...words], {encoding: 'utf8'})
  const [wall, cpu, peak, code] = stdout.trim().split(' ').map(Number)
  refuseFailure(code, errors)
  return {wall, cpu, peak: peak / 1024}
}

/** The kernel forgets a process when it ends, so the last look before that must do. */
async function runPolling(errors, [command, ...words]) {
  const file = openSync(errors, 'w')
  const start = performance.now()
  const child = spawn(command, words, {stdio: ['ignore', 'ignore', file]})
  let seen = {cpu: 0, peak: 0}
  const timer = setInterval(() => {
    seen = look(child.pid) ?? seen
  }, 2)
  const code = await new Promise((resolve, reject) =>
    child.on('close', resolve).on('error', reject),
  )
  const wall = (performance.now() - start) / 1000
  clearInterval(timer)
  closeSync(file)
  refuseFailure(code, errors)
  return {wall, ...seen}
}

function look(pid) {
  try {
    const peak = Number(/^VmHWM:\s*(\d+)/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))[1])
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8')
      .replace(/^.*\) /s, '')
      .split(' ')
    return {cpu: (Number(fields[11]) + Number(fields[12])) / 100, peak: peak / 1024}
  } catch {
    return undefined // it has ended, or there is no /proc
  }
}

function refuseFailure(code, errors) {
  if (code === 0) return
  const lines = readFileSync(errors, 'utf8').trim().split('\n')
  const said = lines.find((line) => /error/i.test(line)) ?? lines.at(-1)
  throw new Error(`exit code ${code}${said ? `: ${said.trim().slice(0, 160)}` : ''}`)
}
