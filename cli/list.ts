import {
  describeClef,
  describeInterval,
  formatRange,
  listInstruments,
  listNotations,
  notationsOnSameLines,
  resolveNotation,
  sourcesIn,
} from '../lib/index.ts'
import type {Instrument, Notation} from '../lib/index.ts'

export interface ListCommand {
  readonly json?: boolean
  readonly sameLines?: string
}

/** `renotate list instruments|notations [WORDS]`: the catalogue, with its sources. */
export async function runList(
  kind: string,
  words: readonly string[],
  options: ListCommand,
): Promise<number> {
  if (options.sameLines !== undefined) return listSameLines(options.sameLines, words, options)
  const found =
    kind === 'instruments' ? listInstruments(words.join(' ')) : listNotations(words.join(' '))
  if (options.json) {
    process.stdout.write(`${JSON.stringify(found, undefined, 2)}\n`)
    return 0
  }
  if (found.length === 0) {
    process.stdout.write(`nothing in the catalogue is called “${words.join(' ')}”\n`)
    return 1
  }
  const detailed = words.length > 0
  for (const each of found) {
    const lines =
      'readings' in each ? notationLines(each, detailed) : instrumentLines(each, detailed)
    process.stdout.write(`${lines.join('\n')}\n`)
  }
  if (detailed) printSources(found)
  return 0
}

/** Notations in which the notes of another stay on their lines: what players read by changing the clef in their mind. */
async function listSameLines(
  from: string,
  words: readonly string[],
  options: ListCommand,
): Promise<number> {
  const [reading] = (await resolveNotation(from)).readings
  const found = reading ? notationsOnSameLines(reading, words.join(' ')) : []
  if (options.json) process.stdout.write(`${JSON.stringify(found, undefined, 2)}\n`)
  for (const {notation, reading: own, fifths} of options.json ? [] : found) {
    const count = Math.abs(fifths)
    const signs = `${count} sharp${count === 1 ? '' : 's'} ${fifths < 0 ? 'fewer' : 'more'}`
    const change =
      fifths === 0 ? 'same signature' : `${signs} (or flats ${fifths < 0 ? 'more' : 'fewer'})`
    process.stdout.write(`${notation.id.padEnd(34)} ${describeClef(own.clef)}, ${change}\n`)
  }
  return found.length > 0 ? 0 : 1
}

function instrumentLines(instrument: Instrument, detailed: boolean): string[] {
  const {id, labels, transposition, clef, ranges} = instrument
  const range = ranges.tutti ?? ranges.pro
  const head = `${id.padEnd(34)} ${labels.en.name}: ${describeClef(clef)}, sounds ${describeInterval(transposition)}`
  if (!detailed) return [head + (range ? `, ${formatRange(range)}` : '')]
  const names = (['fr', 'de', 'it', 'es', 'nl'] as const).map(
    (language) => `${language} ${labels[language].name}`,
  )
  const tiers = (['pro', 'tutti', 'student'] as const).flatMap((tier) => {
    const own = ranges[tier]
    return own ? [`${tier} ${formatRange(own)}`] : []
  })
  return [
    head,
    `    names: ${names.join(' · ')}`,
    ...(tiers.length > 0 ? [`    sounding range: ${tiers.join(' · ')}`] : []),
    `    key signature: ${instrument.keySignature} · notation: ${instrument.modernNotation ?? 'none'}`,
    ...(instrument.cover.length > 0 ? [`    covered by: ${instrument.cover.join(', ')}`] : []),
    `    sources: ${Object.values(instrument.sources).join(' | ')}`,
  ]
}

function notationLines(notation: Notation, detailed: boolean): string[] {
  const {id, name, readings, confidence, keySignature} = notation
  const head = `${id.padEnd(34)} ${name}`
  if (!detailed) return [head]
  return [
    head,
    ...readings.map(
      ({clef, interval}) => `    in ${describeClef(clef)} sounds ${describeInterval(interval)}`,
    ),
    `    key signature: ${keySignature} · confidence: ${confidence}`,
    `    sources: ${notation.sources.join(' | ')}`,
  ]
}

function printSources(found: readonly (Instrument | Notation)[]): void {
  const texts = found.flatMap((each) =>
    'readings' in each ? [...each.sources] : Object.values(each.sources),
  )
  const codes = new Map(
    texts.flatMap((text) => sourcesIn(text ?? '')).map((source) => [source.code, source]),
  )
  if (codes.size === 0) return
  process.stdout.write('\nSources\n')
  for (const {code, text, status} of codes.values())
    process.stdout.write(`  ${code.padEnd(8)} ${text} (${status})\n`)
}
