import type {Interval, Pitch} from '../../lib/index.ts'
import {instrumentById, intervalFor, notationById, parseClef, transpose} from '../../lib/index.ts'
import {fifthsOf, negate, UNISON} from '../../lib/pitch/interval.ts'
import {arrange, composePiece} from './band-music.ts'
import type {Random, Sounded} from './band-music.ts'
import {bandParts} from './band-parts.ts'
import type {BandLanguage, BandPart} from './band-parts.ts'
import {randomFrom} from './bytes.ts'

/**
 * What is wrong with the file: `stripped` declares no transposition; `concert` stands at concert pitch and says nothing
 * of it; `octave`, `step` and `missing` are faults of one part: its transposition is an octave or a step off, or missing.
 */
export type Wrongness = 'none' | 'stripped' | 'concert' | 'octave' | 'step' | 'missing'

/** A score and what is true of it. */
export interface BandScore {
  readonly xml: string
  /** In the order of the score: what each part adds to written to get sounding, whatever the file declares. */
  readonly truth: readonly Interval[]
  readonly labels: readonly string[]
  /** Index of the part with the fault. */
  readonly faulty?: number
}

export interface BandOptions {
  readonly seed: number
  readonly language: BandLanguage
  readonly wrongness: Wrongness
  /** The least and the most parts. */
  readonly parts?: readonly [number, number]
}

/** A score of a historic band that nobody wrote: its country's parts in its labels, a march of 16 to 40 measures. */
export function bandScore({seed, language, wrongness, parts = [8, 18]}: BandOptions): BandScore {
  const random = randomFrom(seed * 7919 + language.charCodeAt(0))
  const band = chooseParts(bandParts(language), parts, random)
  const piece = composePiece(random, {
    measures: 16 + 8 * Math.floor(random() * 4),
    fifths: Math.floor(random() * 6) - 4,
    chromatic: random() * 0.2,
  })
  const truth = band.map((part) => (wrongness === 'concert' ? UNISON : intervalOf(part)))
  const transposing = truth.flatMap((interval, index) => (interval.chromatic === 0 ? [] : [index]))
  const isFault = wrongness === 'octave' || wrongness === 'step' || wrongness === 'missing'
  const faulty = isFault ? transposing[Math.floor(random() * transposing.length)] : undefined
  const rests = random() * 0.4
  const bodies = band.map((part, index) => {
    const range = instrumentById(part.instrument)?.ranges
    const usual = range?.tutti ?? range?.pro
    if (!usual) throw new Error(`${part.instrument} has no range`)
    const music = arrange(piece, part.role, usual, random, {rests})
    const interval = truth[index] ?? UNISON
    const declared = declaredFor(interval, wrongness, index === faulty)
    // A player without signatures still reads them on a page at concert pitch.
    const open = part.open === true && wrongness !== 'concert'
    return partXml(part, `P${index + 1}`, music, piece.measures, {interval, declared, open})
  })
  const list = band.map(
    ({label}, index) =>
      `<score-part id="P${index + 1}"><part-name>${label}</part-name></score-part>`,
  )
  return {
    xml: `<?xml version="1.0" encoding="UTF-8"?>\n<score-partwise version="4.0">\n<work><work-title>March ${seed}</work-title></work>\n<part-list>${list.join('')}</part-list>\n${bodies.join('\n')}\n</score-partwise>\n`,
    truth,
    labels: band.map(({label}) => label),
    ...(faulty !== undefined && {faulty}),
  }
}

/** What the part's notation adds in its clef. */
function intervalOf({notation, clef}: BandPart): Interval {
  const known = notationById(notation)
  const read = parseClef(clef)
  const interval = known && read && intervalFor(known, read)
  if (!interval) throw new Error(`${notation} does not say what ${clef} means`)
  return interval
}

function declaredFor(
  interval: Interval,
  wrongness: Wrongness,
  isFaulty: boolean,
): Interval | undefined {
  if (wrongness === 'stripped' || wrongness === 'concert') return undefined
  if (!isFaulty) return interval
  if (wrongness === 'missing') return undefined
  if (wrongness === 'octave')
    return {diatonic: interval.diatonic + 7, chromatic: interval.chromatic + 12}
  return {diatonic: interval.diatonic + 1, chromatic: interval.chromatic + 2}
}

/** Some of the parts, in order, at least one of every role. */
function chooseParts(
  all: readonly BandPart[],
  [least, most]: readonly [number, number],
  random: Random,
): readonly BandPart[] {
  const count = Math.min(all.length, least + Math.floor(random() * (most - least + 1)))
  const shuffled = all.map((part) => ({part, at: random()})).toSorted((a, b) => a.at - b.at)
  const first = (['tune', 'counter', 'middle', 'bass'] as const).flatMap(
    (role) => shuffled.find(({part}) => part.role === role)?.part ?? [],
  )
  const others = shuffled.map(({part}) => part).filter((part) => !first.includes(part))
  const chosen = new Set([...first, ...others].slice(0, count))
  return all.filter((part) => chosen.has(part))
}

interface Writing {
  readonly interval: Interval
  readonly declared: Interval | undefined
  readonly open: boolean
}

function partXml(
  part: BandPart,
  id: string,
  music: readonly (readonly Sounded[])[],
  keys: readonly {readonly fifths: number}[],
  {interval, declared, open}: Writing,
): string {
  const turn = turnFor(keys[0]?.fifths ?? 0, interval)
  const measures = music.map((notes, index) => {
    const fifths = open ? 0 : (keys[index]?.fifths ?? 0) - fifthsOf(interval) + turn
    const before = open ? 0 : (keys[index - 1]?.fifths ?? 0) - fifthsOf(interval) + turn
    const key = index === 0 || fifths !== before ? `<key><fifths>${fifths}</fifths></key>` : ''
    const opening =
      index === 0
        ? `<attributes><divisions>2</divisions>${key}<time><beats>4</beats><beat-type>4</beat-type></time>${clefXml(part.clef)}${transposeXml(declared)}</attributes>`
        : key && `<attributes>${key}</attributes>`
    return `<measure number="${index + 1}">${opening}${notes.map((note) => noteXml(note, interval, turn)).join('')}</measure>`
  })
  return `<part id="${id}">\n${measures.join('\n')}\n</part>`
}

/** Signatures of more than six signs are turned enharmonically, as engravers do. */
function turnFor(fifths: number, interval: Interval): number {
  const written = fifths - fifthsOf(interval)
  return written > 6 ? -12 : written < -6 ? 12 : 0
}

function clefXml(clef: string): string {
  return `<clef><sign>${clef[0]}</sign><line>${clef[1]}</line></clef>`
}

function transposeXml(interval: Interval | undefined): string {
  if (!interval || interval.chromatic === 0) return ''
  const octaves = Math.trunc(interval.chromatic / 12)
  const change = octaves === 0 ? '' : `<octave-change>${octaves}</octave-change>`
  return `<transpose><diatonic>${interval.diatonic - 7 * octaves}</diatonic><chromatic>${interval.chromatic - 12 * octaves}</chromatic>${change}</transpose>`
}

function noteXml({length, pitch}: Sounded, interval: Interval, turn: number): string {
  if (!pitch) return `<note><rest/><duration>${length}</duration></note>`
  const written = writtenPitch(pitch, interval, turn)
  const alter = written.alter === 0 ? '' : `<alter>${written.alter}</alter>`
  return `<note><pitch><step>${written.step}</step>${alter}<octave>${written.octave}</octave></pitch><duration>${length}</duration></note>`
}

function writtenPitch(pitch: Pitch, interval: Interval, turn: number): Pitch {
  const written = transpose(pitch, negate(interval))
  return turn === 0 ? written : transpose(written, {diatonic: turn > 0 ? 1 : -1, chromatic: 0})
}
