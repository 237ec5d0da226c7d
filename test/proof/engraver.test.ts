import createVerovioModule from 'verovio/wasm'
import {VerovioToolkit} from 'verovio/esm'
import {describe, expect, test} from 'vitest'
import {order, toNumber} from '../../lib/proof/fraction.ts'
import {readMeasures} from '../../lib/proof/reader.ts'
import {surveyScore} from '../../lib/proof/survey.ts'
import {joinTies} from '../../lib/proof/ties.ts'
import type {Event} from '../../lib/proof/ties.ts'
import {corpusScores, hasCorpus, readCorpusText} from '../support/corpus.ts'
import {readMidi} from './midi.ts'
import type {Chord} from './midi.ts'
import {sourceOf} from './score.ts'

/*
 * The engraver plays scores as MIDI: somebody else's reading of the same files. It is trusted where it plays what is
 * written and no more, and only for whole semitones and a transposition that does not change: it keeps the first.
 */
const PLAYED_OTHERWISE = [
  /<grace|<cue\b|<unpitched|<double\b/,
  /<repeat|<ending|<segno|<coda/,
  /<tremolo|<ornaments|<arpeggiate/,
  /<alter>\s*[+-]?\d*\.0*[1-9]/,
  // Harmony by numerals brings it down.
  /<score-timewise|<numeral>|<sign>TAB|<instrument-change/,
  // It believes a printed accidental where there is no <alter>.
  /<\/step>\s*<octave>\d<\/octave>\s*<\/pitch>(?:(?!<\/note>).)*<accidental>(?!natural)/s,
]

function isTrusted(text: string): boolean {
  if (PLAYED_OTHERWISE.some((pattern) => pattern.test(text.replaceAll(/<!--.*?-->/gs, ''))))
    return false
  return text.split(/<part\s/).every(
    (part) =>
      new Set(part.match(/<transpose.*?<\/transpose>/gs)).size <= 1 &&
      // Staves that nobody announced are one to it.
      (part.includes('<staves>') || !part.includes('<staff>2')),
  )
}

/**
 * The chords of each staff that sounds, as the reader under test gives them. Undefined where a voice goes from staff
 * to staff: the engraver leaves it in the track of the first.
 */
async function chordsOf(text: string): Promise<readonly (readonly Chord[])[] | undefined> {
  const source = sourceOf(text)
  const {inkTies} = await surveyScore(source)
  const held = new Map<string, readonly Event[]>()
  const staves = new Map<string, number[][]>()
  let crosses = false
  for await (const measure of readMeasures(source, {inkTies})) {
    const joined = joinTies(held.get(measure.part) ?? [], measure)
    held.set(measure.part, joined.held)
    const onsets = new Map<string, Event>()
    const homes = new Map(measure.notes.map(({voice, staff}) => [voice, staff]))
    crosses ||= measure.notes.some(({voice, staff}) => homes.get(voice) !== staff)
    for (const event of joined.attacks) {
      const staff = `${measure.part} ${event.note.staff}`
      const chords = staves.get(staff) ?? []
      staves.set(staff, chords)
      const before = onsets.get(staff)
      const key = event.note.sounding ? toNumber(event.note.sounding.midi) : Number.NaN
      if (before && order(before.note.onset, event.note.onset) === 0) chords.at(-1)?.push(key)
      else chords.push([key])
      onsets.set(staff, event)
    }
  }
  if (crosses) return undefined
  const parts = [...held.keys()]
  const place = (staff: string) => parts.indexOf(staff.split(' ')[0] ?? '')
  return [...staves]
    .toSorted(([a], [b]) => place(a) - place(b) || a.localeCompare(b))
    .map(([, chords]) => chords.map((chord) => chord.toSorted((a, b) => a - b)))
}

/** Written here into scores that have none: octave apart, folded in, and without its steps. */
const TRANSPOSITIONS = [
  '<transpose><diatonic>-4</diatonic><chromatic>-7</chromatic></transpose>',
  '<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic><octave-change>-1</octave-change></transpose>',
  '<transpose><chromatic>15</chromatic></transpose>',
]

async function compare(list: readonly {readonly name: string; readonly text: string}[]) {
  const toolkit = new VerovioToolkit(await createVerovioModule())
  const otherwise: string[] = []
  let files = 0
  let notes = 0
  for (const {name, text} of list) {
    const heard = await chordsOf(text)
    if (!heard) continue
    toolkit.loadData(text)
    const played = readMidi(Buffer.from(toolkit.renderToMIDI(), 'base64'))
    if (JSON.stringify(heard) !== JSON.stringify(played)) otherwise.push(name)
    files++
    notes += heard.flat(2).length
  }
  return {files, notes, otherwise}
}

describe.skipIf(!hasCorpus)('the reader and an engraver that plays MIDI', () => {
  const scores = corpusScores()
    .filter(({wellFormed}) => wellFormed)
    .map((file) => ({name: file.name, text: readCorpusText(file)}))
    .filter(({text}) => text.includes('<pitch') && text.length < 1_500_000 && isTrusted(text))

  test('hear the same chords in the same order', {timeout: 120_000}, async () => {
    const {files, notes, otherwise} = await compare(scores)
    expect(otherwise).toEqual([])
    expect(files).toBeGreaterThan(100)
    expect(notes).toBeGreaterThan(5000)
  })

  test('hear the same transpositions', {timeout: 120_000}, async () => {
    const transposed = TRANSPOSITIONS.flatMap((transposition, turn) =>
      scores
        .filter(({text}, index) => text.length < 40_000 && index % TRANSPOSITIONS.length === turn)
        .map(({name, text}) => ({name: `${name} with ${transposition}`, text, transposition}))
        .map(({name, text, transposition: element}) => ({
          name,
          text: withTransposition(text, element),
        }))
        .filter(({text}) => text.includes('<transpose')),
    )
    const {files, otherwise} = await compare(transposed)
    expect(otherwise).toEqual([])
    expect(files).toBeGreaterThan(70)
  })
})

/** The score with the transposition in the first attributes of each of its parts, unless there are others. */
function withTransposition(text: string, element: string): string {
  if (/<transpose|<concert-score/.test(text)) return text
  return text.replaceAll(/<part\s(?:(?!<\/part>).)*?(?=<\/attributes>)/gs, `$&${element}`)
}
