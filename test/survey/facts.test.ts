import {describe, expect, it} from 'vitest'
import {formatPitch} from '../../lib/pitch/pitch.ts'
import {formatClef} from '../../lib/staff/clef.ts'
import {formatInterval} from '../../lib/pitch/interval.ts'
import {NOTE, createFacts, measureOf, soundingAt, writtenAt} from '../../lib/survey/facts.ts'
import type {PartFacts} from '../../lib/survey/facts.ts'
import {attributes, backup, factsAbout, note, readPart} from '../support/part.ts'

const CHORD = '<chord/>'
const GRACE = '<grace/>'
const slur = (type: string): string => `<notations><slur type="${type}"/></notations>`
const indices = (facts: PartFacts): number[] =>
  Array.from({length: facts.notes.count}, (_, at) => at)

function sounds(facts: PartFacts): string {
  return indices(facts)
    .map((at) => formatPitch(soundingAt(facts, at)))
    .join(' ')
}

function states(facts: PartFacts): string[] {
  return facts.states.map(
    ({measure, onset, staff, state}) =>
      `${measure}.${onset} staff ${staff} ${formatClef(state.clef)} ${formatInterval(state.transposition.interval)}`,
  )
}

function flags(facts: PartFacts): string[] {
  return indices(facts).map((at) =>
    Object.entries(NOTE)
      .filter(([, bit]) => ((facts.notes.flags[at] ?? 0) & bit) !== 0)
      .map(([name]) => name)
      .join(' '),
  )
}

describe('the facts of a part', () => {
  it('hold every pitched note, written and sounding', () => {
    const facts = factsAbout([
      attributes('divisions 2', 'transpose -1 -2') + note('C4', 2) + note('E4', 2, '', CHORD),
      note('rest', 4) + note('F#5', 1, '', GRACE) + note('Gbb2', 4),
      note('C(0.5)4', 4),
    ])
    expect(indices(facts).map((at) => formatPitch(writtenAt(facts.notes, at)))).toEqual([
      'C4',
      'E4',
      'F#5',
      'Gbb2',
      'C(+0.5)4',
    ])
    expect(sounds(facts)).toBe('Bb3 D4 E5 Fbb2 B(-0.5)3')
    expect(Array.from(facts.notes.onset).slice(0, 5)).toEqual([0, 0, 4, 4, 0])
    expect(Array.from(facts.notes.duration).slice(0, 5)).toEqual([2, 2, 0, 4, 4])
    expect(facts.ticks).toEqual([2, 2, 2])
    expect(facts.lengths).toEqual([2, 8, 4])
    expect(facts.numbers).toEqual(['1', '2', '3'])
  })

  it('know the measure of a note, past measures without notes', () => {
    const facts = factsAbout(['', note('C4') + note('D4'), '', '', note('E4'), ''])
    expect(indices(facts).map((at) => measureOf(facts, at))).toEqual([1, 1, 4])
    expect(facts.firstNote).toEqual([0, 0, 2, 2, 2, 3])
  })

  it('hold more notes than a first guess', () => {
    const facts = factsAbout(Array.from({length: 40}, () => note('C4') + note('D4') + note('E4')))
    expect(facts.notes.count).toBe(120)
    expect(formatPitch(writtenAt(facts.notes, 119))).toBe('E4')
  })

  it('name each change of state once, where it begins', () => {
    const facts = factsAbout([
      attributes('divisions 1', 'clef F4') + note('C3', 4),
      attributes('clef F4') + note('C3', 4),
      note('C3', 2) + attributes('clef C4', 'transpose -1 -2') + note('C4', 2),
      attributes('clef F4') + note('C3', 4),
    ])
    expect(states(facts)).toEqual(['0.0 staff 1 F4 P1', '2.2 staff 1 C4 -M2', '3.0 staff 1 F4 -M2'])
  })

  it('keep states in order however many a measure has, and voices find theirs', () => {
    const clefs = Array.from({length: 12}, (_, at) => (at % 2 === 0 ? 'clef F4' : 'clef C4'))
    const first = clefs.map((clef) => attributes(clef) + note('C3')).join('')
    const second = clefs.map(() => note('E3', 1, '<voice>2</voice>')).join('')
    const facts = factsAbout([attributes('divisions 1') + first + backup(12) + second, note('C3')])
    const onsets = facts.states.map(({measure, onset}) => measure * 100 + onset)
    expect(onsets).toEqual(onsets.toSorted((a, b) => a - b))
    expect(facts.states).toHaveLength(12)
    const stateOf = (at: number) => facts.notes.state[at]
    for (let at = 0; at < 12; at++) expect(stateOf(at + 12)).toBe(stateOf(at))
  })

  it('tell staves apart', () => {
    const facts = factsAbout([
      attributes('divisions 1', '<staves>2</staves>', 'clef G2 1', 'clef F4 2') +
        note('C5') +
        backup(1) +
        note('C3', 1, '<staff>2</staff>'),
    ])
    expect(facts.staves).toBe(2)
    expect(states(facts)).toEqual(['0.0 staff 1 G2 P1', '0.0 staff 2 F4 P1'])
    expect([facts.notes.state[0], facts.notes.state[1]]).toEqual([0, 1])
  })

  it('flag what a note is besides its pitch', () => {
    const facts = factsAbout([
      note('C4', 1, '', GRACE) +
        note('C4', 1, '<tie type="start"/><stem>up</stem>') +
        note('C4', 1, `<tie type="stop"/>${slur('start')}`) +
        note('D4', 1, '<beam number="1">begin</beam>') +
        note('E4', 1, `<beam number="1">end</beam>${slur('stop')}`) +
        note('F4', 1, '', '<cue/>') +
        note('G4', 1, '', CHORD) +
        note('A4', 1, '<notations><fermata/></notations>') +
        note('B4', 1, '<notations><articulations><breath-mark/></articulations></notations>'),
    ])
    expect(flags(facts)).toEqual([
      'grace',
      'tiedTo stemmed',
      'tiedFrom slurred',
      'slurred beamed',
      '',
      'cue',
      'chord',
      'breath',
      'breath',
    ])
  })

  it('know what is printed at all', () => {
    expect(factsAbout([note('C4')]).prints).toEqual({accidentals: false, stems: false})
    expect(
      factsAbout([note('C4', 1, '<accidental>natural</accidental><stem>up</stem>')]).prints,
    ).toEqual({accidentals: true, stems: true})
  })

  it('count unpitched notes and what decisions ask about, and keep words', () => {
    const words =
      '<direction><direction-type><words>Solo </words><words>espr.</words></direction-type></direction>'
    const facts = factsAbout([
      attributes('divisions 2') +
        note('C4', 2) +
        words +
        '<harmony><root><root-step>C</root-step></root><kind>major</kind></harmony>' +
        '<note><unpitched/><duration>2</duration></note>',
    ])
    expect(facts.unpitched).toBe(1)
    expect(facts.elements.get('harmony')).toBe(1)
    expect(facts.words).toEqual([{measure: 0, onset: 1, staff: 1, text: 'Solo espr.'}])
  })

  it('hear a part as a reading says', () => {
    const builder = createFacts('P1', () => ({interval: {diatonic: 3, chromatic: 5}}))
    for (const measure of readPart([attributes('transpose -4 -7') + note('C4')], {
      reading: () => ({interval: {diatonic: 3, chromatic: 5}}),
    }))
      builder.add(measure)
    const facts = builder.done()
    expect(sounds(facts)).toBe('F4')
    expect(states(facts)).toEqual(['0.0 staff 1 G2 +P4'])
  })
})
