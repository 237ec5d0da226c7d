// Large scores for the measurements, made on the fly: valid, deterministic, about 430 bytes a note, and with
// the things that cost a rewriter something (transposing parts, changes of key and clef, accidentals, harmony,
// lyrics, chords, beams, layout). The first measure is its own; after it the music repeats every 64 measures,
// so that a gigabyte is written as fast as the disk takes it.
import {closeSync, openSync, writeSync} from 'node:fs'
import {strToU8, zipSync} from 'fflate'
import {band} from './band.mjs'
import {measureXml} from './music.mjs'
import {element, print} from './xml.mjs'

const period = 64

/**
 * A score as pieces of text. `bytes` is about its size; `form` is partwise or timewise (the same music);
 * `measures` are long (about 6 KB) or short (about 1 KB).
 */
export function* generateScore({
  bytes,
  form = 'partwise',
  measures = 'long',
  parts: count = 24,
  seed = 1,
}) {
  const parts = band(count)
  const music = parts.map((part) => ({
    part,
    first: measureXml(part, 0, {measures, seed, isFirst: true}),
    pool: Array.from({length: period}, (_, index) => measureXml(part, index, {measures, seed})),
  }))
  const pooled = music.flatMap(({pool}) => pool)
  const frame = '    <measure number="0000" width="000.00">\n    </measure>\n'.length
  const average = pooled.reduce((sum, text) => sum + Buffer.byteLength(text), 0) / period
  const length = Math.max(2, Math.round(bytes / (average + count * frame)))

  yield header(parts, form)
  if (form === 'partwise') {
    for (const {part, first, pool} of music) {
      yield `  <part id="${part.id}">\n`
      for (let index = 0; index < length; index++) {
        const content = index === 0 ? first : pool[index % period]
        yield `    <measure number="${index + 1}" width="${width(index)}">\n${content}    </measure>\n`
      }
      yield '  </part>\n'
    }
  } else {
    for (let index = 0; index < length; index++) {
      yield `  <measure number="${index + 1}" width="${width(index)}">\n`
      for (const {part, first, pool} of music) {
        const content = index === 0 ? first : pool[index % period]
        yield `    <part id="${part.id}">\n${content}    </part>\n`
      }
      yield '  </measure>\n'
    }
  }
  yield `</score-${form}>\n`
}

/** Writes a generated score to a file; see `generateScore`. */
export function writeScore(path, options) {
  const file = openSync(path, 'w')
  let pending = []
  let size = 0
  for (const piece of generateScore(options)) {
    pending.push(piece)
    size += piece.length
    if (size < 1 << 20) continue
    writeSync(file, pending.join(''))
    pending = []
    size = 0
  }
  writeSync(file, pending.join(''))
  closeSync(file)
}

/** The bytes of an .mxl archive with one score in it. */
export function packScore(bytes) {
  const container = element(
    'container',
    {},
    element(
      'rootfiles',
      {},
      element('rootfile', {
        'full-path': 'score.musicxml',
        'media-type': 'application/vnd.recordare.musicxml+xml',
      }),
    ),
  )
  return zipSync({
    'META-INF/container.xml': strToU8(print(container)),
    'score.musicxml': bytes,
  })
}

function header(parts, form) {
  const variant = form === 'partwise' ? 'Partwise' : 'Timewise'
  const tree = [
    element('work', {}, element('work-title', {}, 'A long march, generated')),
    element(
      'identification',
      {},
      element('rights', {}, 'Free to use'),
      element(
        'encoding',
        {},
        element('supports', {element: 'accidental', type: 'yes'}),
        element('supports', {element: 'beam', type: 'yes'}),
        element('supports', {element: 'stem', type: 'yes'}),
      ),
    ),
    element(
      'defaults',
      {},
      element('scaling', {}, element('millimeters', {}, '6.35'), element('tenths', {}, '40')),
    ),
    element('part-list', {}, ...parts.map(scorePart)),
  ]
  return (
    '<?xml version="1.0" encoding="UTF-8"?>\n' +
    `<!DOCTYPE score-${form} PUBLIC "-//Recordare//DTD MusicXML 4.0 ${variant}//EN" ` +
    `"http://www.musicxml.org/dtds/${form}.dtd">\n` +
    `<score-${form} version="4.0">\n${tree.map((node) => print(node, 1)).join('')}`
  )
}

function scorePart(part) {
  const id = `${part.id}-I1`
  return element(
    'score-part',
    {id: part.id},
    element('part-name', {}, part.name),
    element('part-abbreviation', {}, part.abbreviation),
    element('score-instrument', {id}, element('instrument-name', {}, part.name)),
    element(
      'midi-instrument',
      {id},
      element('midi-channel', {}, part.has('drums') ? 10 : 1 + (part.index % 9)),
      element('midi-program', {}, 1 + part.index),
    ),
  )
}

function width(index) {
  return (180 + ((index * 37) % 90)).toFixed(2)
}
