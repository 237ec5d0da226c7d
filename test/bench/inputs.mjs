// The scores that are measured with: generated, but for one real symphony movement where the corpus is at hand.
import {existsSync, readFileSync, renameSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {unzipSync} from 'fflate'
import {packScore, writeScore} from './generate.mjs'

const generated = {
  one: {bytes: 1e6},
  ten: {bytes: 1e7},
  hundred: {bytes: 1e8},
  giga: {bytes: 1e9},
  timewise: {bytes: 1e7, form: 'timewise'},
  short: {bytes: 1e7, measures: 'short'},
}

/** The part that is taken out of each score, and for whom: a clarinet part for another clarinet. */
export function onePart(name) {
  return name === 'symphony'
    ? {part: 'P6', instrument: 'clarinet-b-flat'} // it asks for clarinets in C
    : {part: 'P5', instrument: 'clarinet-a'} // in B flat
}

/** The path of an input by name, made on first use; undefined where it cannot be had. */
export function findInput(folder, name) {
  const path = join(folder, `${name}.${name === 'mxl' ? 'mxl' : 'musicxml'}`)
  if (existsSync(path)) return path
  const partial = `${path}.partial`
  if (name === 'symphony') {
    const score = readSymphony()
    if (score === undefined) return undefined
    writeFileSync(partial, score)
  } else if (name === 'mxl') {
    writeFileSync(partial, packScore(readFileSync(findInput(folder, 'ten'))))
  } else writeScore(partial, generated[name])
  renameSync(partial, path)
  return path
}

function readSymphony() {
  const corpus =
    process.env.RENOTATE_CORPUS ?? fileURLToPath(new URL('../../../shared/corpus', import.meta.url))
  const archive = join(corpus, 'orchestra-cc0/Beethoven_Op.67_4.mxl')
  if (!existsSync(archive)) {
    console.warn(`SKIPPED: rows with a real symphony movement: no ${archive}`)
    return undefined
  }
  return unzipSync(readFileSync(archive))['score.xml']
}
