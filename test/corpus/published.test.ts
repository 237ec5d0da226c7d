import {expect, it} from 'vitest'
import {readKey, readTransposition} from '../../lib/musicxml/read.ts'
import {formatInterval} from '../../lib/pitch/interval.ts'
import {transposeKey} from '../../lib/pitch/key.ts'
import {formatPitch, midiOf, parsePitch} from '../../lib/pitch/pitch.ts'
import {everyElement, parseElements} from '../../lib/xml/element.ts'
import {corpusFile, describeCorpus, readCorpusText, readCorpusXml} from '../support/corpus.ts'
import {factsOf, idsOf, notesOf, runPart} from '../support/jobs.ts'

const W3C = 'w3c-examples'
const SUITE = 'test-suite'

/** The first element of that name in an example of the W3C's MusicXML 4.0 documentation, and its text. */
function example(file: string, name: string) {
  const text = readCorpusText(corpusFile(`${W3C}/fragments/${file}.xml`))
  const found = parseElements(text)
    .flatMap((root) => [...everyElement(root)])
    .find((each) => each.name === name)
  if (!found) throw new Error(`no ${name} in ${file}`)
  return [text, found] as const
}

function transposition(file: string) {
  const told: string[] = []
  const {interval, double} = readTransposition(...example(file, 'transpose'), (code) =>
    told.push(code),
  )
  return {interval: formatInterval(interval), ...(double && {double}), told}
}

function midi(name: string): number {
  const pitch = parsePitch(name)
  return pitch ? midiOf(pitch) : NaN
}

async function sounds(file: string, part = 'P1'): Promise<string> {
  const notes = await notesOf(readCorpusXml(corpusFile(file)), part)
  return notes.map(({pitch}) => pitch).join(' ')
}

describeCorpus('examples of the W3C’s MusicXML 4.0 documentation', () => {
  it('“transpose”: a horn in F', () => {
    expect(transposition('transpose-element')).toEqual({interval: '-P5', told: []})
    const key = readKey(...example('transpose-element', 'key'))
    // Written G major sounds C major.
    expect(key && transposeKey(key, {diatonic: -4, chromatic: -7})).toEqual({fifths: 0})
  })

  it('“octave-change”: an octave lower', () => {
    expect(transposition('octave-change-element')).toEqual({interval: '-P8', told: []})
  })

  it('“double”: at pitch, and an octave below', () => {
    expect(transposition('double-element')).toEqual({interval: 'P1', double: 'below', told: []})
  })

  it.each([
    ['key-element-traditional', {fifths: -3}],
    ['cancel-element', {fifths: -1}],
    [
      'key-element-non-traditional',
      {
        alters: [
          {step: 'B', alter: -1},
          {step: 'E', alter: -2},
          {step: 'A', alter: -2},
          {step: 'F', alter: 2},
        ],
      },
    ],
    [
      'key-octave-element',
      {
        alters: [
          {step: 'F', alter: 1, octave: 4},
          {step: 'G', alter: 1, octave: 4},
        ],
      },
    ],
  ])('“%s”', (file, expected) => {
    expect(readKey(...example(file, 'key'))).toEqual(expected)
  })

  it('“concert-score and for-part”: a score in C, and the bass clarinet’s part made from it', async () => {
    const score = readCorpusXml(corpusFile(`${W3C}/concert-score-and-for-part-elements.musicxml`))
    const heard = (part: string) => notesOf(score, part)
    expect((await heard('P1')).map(({pitch}) => pitch)).toEqual(['C6'])
    expect((await heard('P2')).map(({pitch}) => pitch)).toEqual(['C5'])
    expect((await heard('P3')).map(({pitch}) => pitch)).toEqual(['C3'])
    const {bytes} = await runPart(score, 'P3', {to: {kind: 'for-part'}})
    expect(await notesOf(bytes, 'P3')).toMatchObject([{written: 'D4', pitch: 'C3'}])
    expect((await factsOf(bytes, 'P3')).states.at(-1)?.state).toEqual({
      clef: {sign: 'G', line: 2, octaveChange: 0},
      key: {fifths: 2},
      transposition: {interval: {diatonic: -8, chromatic: -14}},
    })
    // A part is no concert score any more.
    expect(new TextDecoder().decode(bytes)).not.toMatch(/<concert-score|<for-part/)
  })

  it('“instrument-change”: a clarinet in B flat, then an alto saxophone', async () => {
    const score = readCorpusXml(corpusFile(`${W3C}/instrument-change-element.musicxml`))
    const {states} = await factsOf(score, 'P1')
    expect(states.map(({state}) => formatInterval(state.transposition.interval))).toEqual([
      '-M2',
      '-M6',
    ])
    const {bytes} = await runPart(score, 'P1', {to: {kind: 'concert', octaves: 'sounding'}})
    const [before, after] = [await notesOf(score, 'P1'), await notesOf(bytes, 'P1')]
    expect(after.map(({written}) => written)).toEqual(before.map(({pitch}) => pitch))
  })

  it('“score-timewise”: the same music by measures', async () => {
    const timewise = readCorpusXml(corpusFile(`${W3C}/score-timewise-element.musicxml`))
    const hello = readCorpusXml(corpusFile(`${W3C}/tutorial-hello-world.musicxml`))
    const [id = ''] = await idsOf(timewise)
    expect(await notesOf(timewise, id)).toMatchObject(
      (await notesOf(hello, 'P1')).map(({pitch, onset, duration}) => ({pitch, onset, duration})),
    )
  })
})

describeCorpus('the public MusicXML test suite says in its descriptions', () => {
  it('01a: all pitches from G to c″″ in ascending steps, then with a sharp, then with a flat', async () => {
    const all = (await sounds(`${SUITE}/01a-Pitches-Pitches.xml`)).split(' ')
    const thirds = [all.slice(0, 32), all.slice(32, 64), all.slice(64, 96)]
    expect(thirds[0]?.at(0)).toBe('G2')
    expect(thirds[0]?.at(-1)).toBe('C7')
    thirds[0]?.forEach((natural, at) => {
      expect(midi(thirds[1]?.[at] ?? '')).toBe(midi(natural) + 1)
      expect(midi(thirds[2]?.[at] ?? '')).toBe(midi(natural) - 1)
    })
    expect(all.slice(-6)).toEqual(['C##5', 'Cbb5', 'C#5', 'C#5', 'C#5', 'C#5'])
  })

  it('13a: from seven flats to seven sharps, first in major, then in minor', async () => {
    const {states} = await factsOf(
      readCorpusXml(corpusFile(`${SUITE}/13a-KeySignatures.xml`)),
      'P1',
    )
    const fifths = states.map(({state: {key}}) => (key && 'fifths' in key ? key.fifths : undefined))
    expect([...new Set(fifths)]).toEqual([-7, -6, -5, -4, -3, -2, -1, 0, 1, 2, 3, 4, 5, 6, 7])
  })

  it('13c: (f sharp, a flat, b flat), then (c flatflat, g sharp sharp, d flat, b sharp, f natural) with octaves', async () => {
    const {states} = await factsOf(
      readCorpusXml(corpusFile(`${SUITE}/13c-KeySignatures-NonTraditional.xml`)),
      'P1',
    )
    const shown = states.map(({state: {key}}) =>
      key && 'alters' in key
        ? key.alters
            .map(({step, alter, octave}) => formatPitch({step, alter, octave: octave ?? 0}))
            .join(' ')
        : '-',
    )
    expect(shown[0]).toBe('F#0 Ab0 Bb0')
    expect(shown[1]).toMatch(/^Cbb\d G##\d Db\d B#\d F\d$/)
  })

  it('72a: trumpet in B flat, horn in E flat and piano all show the C major scale', async () => {
    const file = `${SUITE}/72a-TransposingInstruments.xml`
    for (const part of ['P1', 'P2', 'P3'])
      expect(await sounds(file, part)).toBe('C4 D4 E4 F4 G4 A4 B4 C5')
    const keys = await Promise.all(
      ['P1', 'P2', 'P3'].map(async (part) => {
        const {states} = await factsOf(readCorpusXml(corpusFile(file)), part)
        return states[0]?.state.key
      }),
    )
    expect(keys).toEqual([{fifths: 2}, {fifths: 3}, {fifths: 0}])
  })

  it('72a: written at concert pitch, trumpet and horn read what the piano reads', async () => {
    const score = readCorpusXml(corpusFile(`${SUITE}/72a-TransposingInstruments.xml`))
    for (const part of ['P1', 'P2']) {
      const {bytes} = await runPart(score, part, {to: {kind: 'concert', octaves: 'sounding'}})
      expect((await notesOf(bytes, part)).map(({written}) => written).join(' ')).toBe(
        'C4 D4 E4 F4 G4 A4 B4 C5',
      )
      expect((await factsOf(bytes, part)).states[0]?.state.key).toEqual({fifths: 0})
    }
  })

  it('72c: an instrument change from one transposition (clarinet in E flat) to another', async () => {
    const {states} = await factsOf(
      readCorpusXml(corpusFile(`${SUITE}/72c-TransposingInstruments-Change.xml`)),
      'P1',
    )
    expect(
      states.map(({state}) => formatInterval(state.transposition.interval)).slice(0, 2),
    ).toEqual(['+m3', '-M2'])
    expect(await sounds(`${SUITE}/72c-TransposingInstruments-Change.xml`)).toBe('Eb4 Bb3 Bb3')
  })
})
