import {spawnSync} from 'node:child_process'
import {
  closeSync,
  cpSync,
  existsSync,
  mkdtempSync,
  openSync,
  readFileSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import {dirname, join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {unzipSync} from 'fflate'
import {afterAll, describe, expect, it} from 'vitest'

const main = fileURLToPath(new URL('../dist/cli/main.js', import.meta.url))
const demo = fileURLToPath(new URL('../fixtures/demo/score.musicxml', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'renotate-test-'))
afterAll(() => rmSync(folder, {recursive: true, force: true}))

function run(words: readonly string[], input?: string | Uint8Array) {
  const {status, stdout, stderr} = spawnSync(process.execPath, [main, ...words], {
    encoding: 'utf8',
    ...(input !== undefined && {input}),
  })
  return {status, stdout, stderr}
}

function file(name: string, content?: string): string {
  const path = join(folder, name)
  if (content !== undefined) writeFileSync(path, content)
  return path
}

describe('the command line', {timeout: 60_000}, () => {
  it('writes a part that proves equal, silently when asked', () => {
    const out = file('tuba.musicxml')
    expect(run(['part', demo, '-p', 'P9', '--for', 'tuba', '-o', out, '--quiet'])).toEqual({
      status: 0,
      stdout: '',
      stderr: '',
    })
    const proof = run(['prove', demo, out])
    expect(proof.status).toBe(0)
    expect(proof.stdout).toContain('60 notes, all sound the same')
  })

  it('weaves a cover into a part, and proves it by its report', () => {
    const [out, report] = [file('woven.musicxml'), file('woven.json')]
    const roster = fileURLToPath(new URL('../fixtures/demo/roster.yaml', import.meta.url))
    const words = ['cover', demo, '-p', 'P9', '-r', roster, '--write', '4', '--woven']
    const written = run([...words, '-o', out, '--report', report])
    expect(written.status).toBe(0)
    expect(written.stderr).toMatch(/measures 1 to 14: plays Contrebasse.*\[weave\/played\]/)
    // The summary is the player's, and tells what became of the voice too.
    expect(written.stderr).toMatch(/^octaves measures 1 to 24 sound an octave higher/m)
    const proof = run(['prove', demo, out, '--intended', report])
    expect(proof.stdout).toContain('They sound the same, except where the report says otherwise')
    expect(proof.status).toBe(0)
    expect(run(['prove', demo, out]).status).toBe(1)
  })

  it('adds cues and cross-cues, and proves them at once', () => {
    const out = file('cued.musicxml')
    const words = ['part', demo, '-p', 'P8', '--for', 'euphonium', '-o', out, '--prove', '--fold']
    const {status, stderr} = run([...words, '--cross-cues', 'P9', '--cues', '2'])
    expect(status).toBe(0)
    expect(readFileSync(out, 'utf8')).toContain('<type size="cue">')
    expect(stderr).toContain('[weave/played]')
    expect(stderr).toContain('they sound the same, except 8 notes that differ as reported')
  })

  it('says 1 when two scores do not sound the same', () => {
    const text = readFileSync(file('tuba.musicxml'), 'utf8').replace(
      '<octave>2</octave>',
      '<octave>3</octave>',
    )
    const proof = run(['prove', demo, file('wrong.musicxml', text)])
    expect(proof.status).toBe(1)
    expect(proof.stdout).toMatch(/measure 1, beat 1: Eb3 sounds instead of Eb2/)
  })

  it('does not overwrite unless asked', () => {
    const out = file('kept.musicxml', 'mine')
    const refused = run(['part', demo, '-p', '1', '-o', out])
    expect(refused.status).toBe(2)
    expect(refused.stderr).toContain('--force')
    expect(readFileSync(out, 'utf8')).toBe('mine')
    expect(run(['part', demo, '-p', '1', '-o', out, '--force', '--quiet']).status).toBe(0)
    expect(readFileSync(out, 'utf8')).toContain('<score-partwise')
  })

  it('reads standard input and writes standard output', () => {
    const {status, stdout} = run(
      ['part', '-', '-p', 'P1', '-o', '-', '--quiet'],
      readFileSync(demo),
    )
    expect(status).toBe(0)
    expect(stdout).toContain('<part id="P1">')
    expect(stdout).not.toContain('<part id="P2">')
  })

  it('writes a container where the name wants one, and reads it by its content', () => {
    const out = file('part.mxl')
    expect(run(['part', demo, '-p', 'P9', '-o', out, '--quiet']).status).toBe(0)
    expect(Object.keys(unzipSync(readFileSync(out)))).toEqual([
      'mimetype',
      'META-INF/container.xml',
      'part.musicxml',
    ])
    writeFileSync(file('odd-name.txt'), readFileSync(out))
    const {stdout} = run(['sounding', file('odd-name.txt')])
    expect(JSON.parse(stdout.split('\n')[0] ?? '')).toEqual({
      part: 'P9',
      staff: 1,
      voice: '1',
      measure: '1',
      onset: '0',
      duration: '3/2',
      pitch: 'Eb2',
      midi: 39,
      written: 'F3',
    })
  })

  it.each([
    ['a file that is not there', ['sounding', 'nowhere.musicxml'], /there is no file nowhere/],
    [
      'an unknown part',
      ['part', demo, '-p', 'Bombardon', '-o', '-'],
      /P9 Contrebasse.*\[part\/unknown\]/,
    ],
    [
      'a misspelled instrument',
      ['part', demo, '-p', '1', '--for', 'basoon', '-o', '-'],
      /bassoon.*\[instrument\/unknown\]/,
    ],
    [
      'an ambiguous instrument',
      ['part', demo, '-p', '1', '--for', 'clarinet', '-o', '-'],
      /clarinet-a.*\[instrument\/ambiguous\]/,
    ],
    [
      'an unknown notation',
      ['part', demo, '-p', '1', '--to', 'horn.crook-q', '-o', '-'],
      /horn\.crook.*\[notation\/unknown\]/,
    ],
    ['a missing option', ['part', demo, '-o', '-'], /--part/],
    ['an unknown command', ['transmogrify'], /unknown command/],
    ['an unknown list', ['list', 'orchestras'], /none of orchestras/],
    [
      'a proof of what went away',
      ['part', demo, '-p', '1', '-o', '-', '--prove'],
      /--prove reads what was written/,
    ],
    ['a bad rest', ['part', demo, '-p', '1', '--cues', 'many', '-o', '-'], /--cues wants a number/],
    ['a cue without cues', ['part', demo, '-p', '1', '--cue-length', '2', '-o', '-'], /--cues/],
    [
      'cross-cues for nobody',
      ['part', demo, '-p', 'P8', '--cross-cues', 'P9', '-o', '-'],
      /--cross-cues needs --for/,
    ],
    [
      'a weave without a cover',
      ['cover', demo, '-p', 'P9', '--woven'],
      /--woven goes with --write/,
    ],
    [
      'a weave into no part',
      ['cover', demo, '-p', 'P9', '--woven', '--write', '1', '-o', '-'],
      /\[cover\/no-own-part\]/,
    ],
    ['a bad limit', ['part', demo, '-p', '1', '--key-limit', '9', '-o', '-'], /5, 6 or 7/],
  ] as const)('refuses %s with one sentence and exit code 2', (_, words, message) => {
    const {status, stdout, stderr} = run(words)
    expect(status).toBe(2)
    expect(stdout).toBe('')
    expect(stderr).toMatch(message)
    expect(stderr).not.toMatch(/\n\s+at /)
  })

  it('tells where a file is broken, and writes nothing', () => {
    const text = readFileSync(demo, 'utf8').split('\n')
    const broken = [...text.slice(0, 999), '<note>', ...text.slice(999)].join('\n')
    const out = file('never.musicxml')
    const {status, stderr} = run([
      'part',
      file('broken.musicxml', broken),
      '-p',
      'P9',
      '--for',
      'tuba',
      '-o',
      out,
    ])
    expect(status).toBe(2)
    expect(stderr).toMatch(/line \d+: .*\[xml\/malformed\]/)
    expect(existsSync(out)).toBe(false)
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([])
  })

  it('writes a certificate that repeats itself', () => {
    for (const name of ['one.txt', 'two.txt']) {
      expect(run(['prove', demo, demo, '--certificate', file(name)]).status).toBe(0)
    }
    const certificate = readFileSync(file('one.txt'), 'utf8')
    expect(certificate).toBe(readFileSync(file('two.txt'), 'utf8'))
    expect(certificate).toMatch(/SHA-256 [0-9a-f]{64}/)
  })

  it('lists the catalogue with sources', () => {
    expect(run(['list', 'instruments']).stdout.trim().split('\n')).toHaveLength(179)
    const {stdout} = run(['list', 'notations', 'horn.crook-f.old'])
    expect(stdout).toContain('in bass clef sounds a perfect fourth higher')
    expect(stdout).toContain('Sources')
  })

  it('never writes over what it reads, nor into a folder', () => {
    const score = file('own.musicxml', readFileSync(demo, 'utf8'))
    const words = ['part', score, '-p', 'P9', '--for', 'tuba', '--force', '-o']
    expect(run([...words, score])).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('it cannot be written over'),
    })
    expect(readFileSync(score)).toEqual(readFileSync(demo))
    expect(run([...words, folder]).stderr).toMatch(/^error: .* is a folder, not a file\n$/)
    expect(run(['survey', folder]).stderr).toMatch(/^error: .* is a folder, not a file\n$/)
  })

  it('reads words that are not ASCII', () => {
    expect(run(['list', 'instruments', 'clarinette en si♭']).stdout).toContain('clarinet-b-flat')
  })

  it.skipIf(!existsSync('/dev/full'))('fails where its output has no room', () => {
    for (const words of [
      ['survey', demo],
      ['list', 'instruments'],
      ['prove', demo, demo],
    ]) {
      const full = openSync('/dev/full', 'w')
      const {status, stderr} = spawnSync(process.execPath, [main, ...words], {
        encoding: 'utf8',
        stdio: ['ignore', full, 'pipe'],
      })
      closeSync(full)
      expect([status, stderr]).toEqual([2, expect.stringMatching(/^error: .*ENOSPC.*\n$/)])
    }
  })

  it('refuses a compressed score that is cut or spoilt, wherever that is', () => {
    const whole = file('whole.mxl')
    expect(run(['concert', demo, '-o', whole, '--quiet']).status).toBe(0)
    const bytes = readFileSync(whole)
    const out = file('never.musicxml')
    for (const at of [0.2, 0.5, 0.8]) {
      const spoilt = Buffer.from(bytes)
      spoilt.fill(0xff, Math.floor(bytes.length * at), Math.floor(bytes.length * at) + 40)
      for (const content of [bytes.subarray(0, bytes.length * at), spoilt]) {
        writeFileSync(file('bad.mxl'), content)
        const {status, stderr} = run(['part', file('bad.mxl'), '-p', '9', '-o', out, '--quiet'])
        expect([status, stderr]).toEqual([2, expect.stringMatching(/^error: .*\n$/)])
        expect(existsSync(out)).toBe(false)
      }
    }
  })

  it('does not pass for done where it waits for what never comes', () => {
    const stuck = `const {start} = require(${JSON.stringify(main)})
      const never = {[Symbol.asyncIterator]: () => ({next: () => new Promise(() => {})})}
      Object.defineProperty(process, 'stdin', {value: never})
      start()`
    const words = ['-e', stuck, 'sounding', '-']
    const {status, stderr} = spawnSync(process.execPath, words, {encoding: 'utf8'})
    expect([status, stderr]).toEqual([2, expect.stringContaining('stopped half way')])
  })

  it('has been compiled when it was built, and runs as well where it was not', () => {
    const told = `const {scripts, start} = require(${JSON.stringify(main)})
      process.on('exit', () => console.error([...scripts.values()].map((s) => s.cachedDataRejected).join()))
      start()`
    const started = spawnSync(process.execPath, ['-e', told, 'list', 'instruments'], {
      encoding: 'utf8',
    })
    expect(started.stderr).toMatch(/^false(,false)+\n$/)
    const bare = join(folder, 'bare')
    cpSync(dirname(main), bare, {recursive: true, filter: (path) => !/\.v\d+/.test(path)})
    const plain = spawnSync(process.execPath, [join(bare, 'main.js'), 'list', 'instruments'], {
      encoding: 'utf8',
    })
    expect(plain.stdout).toBe(started.stdout)
    expect(plain.stdout).not.toBe('')
  })
})
