import {describe, expect, it} from 'vitest'
import {notationById} from '../../lib/instruments/notation.ts'
import type {PartJob} from '../../lib/plan/job.ts'
import {attributes, backup, note} from '../support/part.ts'
import {forInstrument, ruled} from '../support/rule.ts'

/** What stands at the head of a staff and where it changes: key, clef, transposition. */

const CLARINET = forInstrument('clarinet-b-flat')
const BASS_CLARINET = forInstrument('bass-clarinet-b-flat')
const BASSOON = forInstrument('bassoon')
const CONCERT: PartJob = {to: notationById('concert')}
const four = note('C4') + note('D4') + note('E4') + note('F4')

/** Only the \`attributes\` of the measures, notes as dots. */
function heads(contents: readonly string[], job: PartJob): string {
  return ruled('attributes', contents, job)
    .measures.map((each) => each.replaceAll(/<note>.*?<\/note>/g, '.'))
    .join(' | ')
}

const shown = (...contents: string[]): string =>
  contents.map((each) => each.replaceAll(/<note>.*?<\/note>/g, '.')).join(' | ')

const DECLARATION =
  '<for-part><part-clef><sign>G</sign><line>2</line></part-clef><part-transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></part-transpose></for-part>'

describe('signs at the head of a staff', () => {
  it.each([
    [
      'key and transposition, in schema order',
      [attributes('divisions 1', 'fifths 0', 'clef G2') + four],
      CLARINET,
      [attributes('divisions 1', 'fifths 2', 'clef G2', 'transpose -1 -2') + four],
    ],
    [
      'an octave of its own',
      [attributes('divisions 1', 'fifths 0', 'clef G2') + four],
      BASS_CLARINET,
      [attributes('divisions 1', 'fifths 2', 'clef G2', 'transpose -1 -2 -1') + four],
    ],
    [
      'a transposition that changes',
      [attributes('divisions 1', 'fifths 0', 'transpose -2 -3') + four],
      CLARINET,
      [attributes('divisions 1', 'fifths 5', 'transpose -1 -2') + four],
    ],
    [
      'a transposition that goes',
      [attributes('divisions 1', 'fifths 2', 'clef G2', 'transpose -1 -2') + four],
      CONCERT,
      [attributes('divisions 1', 'fifths 0', 'clef G2') + four],
    ],
    [
      'changes that have no reason left go with their holder',
      [
        attributes('divisions 1', 'fifths 2', 'transpose -1 -2') + four,
        attributes('fifths -3', 'transpose -2 -3') + four,
        four,
      ],
      CONCERT,
      [attributes('divisions 1', 'fifths 0') + four, four, four],
    ],
    [
      'a change that the source does not need is added where it is due',
      [
        attributes('divisions 1', 'fifths 0') + four,
        note('C4', 2) + attributes('transpose -1 -2') + note('C4', 2),
      ],
      CONCERT,
      [
        attributes('divisions 1', 'fifths 0') + four,
        note('C4', 2) + attributes('fifths -2') + note('C4', 2),
      ],
    ],
    [
      'what else stands in the holder stays',
      [
        attributes(
          'divisions 1',
          'fifths 0',
          '<time><beats>4</beats><beat-type>4</beat-type></time>',
          'clef G2',
          '<staff-details><staff-lines>5</staff-lines></staff-details>',
        ) + four,
      ],
      CLARINET,
      [
        attributes(
          'divisions 1',
          'fifths 2',
          '<time><beats>4</beats><beat-type>4</beat-type></time>',
          'clef G2',
          '<staff-details><staff-lines>5</staff-lines></staff-details>',
          'transpose -1 -2',
        ) + four,
      ],
    ],
    [
      'a measure without any holder gets one',
      [four],
      forInstrument('clarinet-b-flat', {keys: {signature: 'omit'}}),
      [attributes('transpose -1 -2') + four],
    ],
    [
      'mode, cancel and attributes of a key stay',
      [
        attributes(
          'divisions 1',
          '<key print-object="yes"><cancel>1</cancel><fifths>0</fifths><mode>minor</mode></key>',
        ) + four,
      ],
      CLARINET,
      [
        attributes(
          'divisions 1',
          '<key print-object="yes"><cancel>1</cancel><fifths>2</fifths><mode>minor</mode></key>',
          'transpose -1 -2',
        ) + four,
      ],
    ],
    [
      'signs of a key one by one',
      [
        attributes(
          'divisions 1',
          '<key><key-step>B</key-step><key-alter>-1</key-alter><key-step>F</key-step><key-alter>1</key-alter></key>',
        ) + four,
      ],
      CLARINET,
      [
        attributes(
          'divisions 1',
          '<key><key-step>C</key-step><key-alter>0</key-alter><key-step>G</key-step><key-alter>1</key-alter></key>',
          'transpose -1 -2',
        ) + four,
      ],
    ],
    [
      'a concert score says how the player reads it',
      [attributes('divisions 1', 'fifths 2', 'clef G2', 'transpose -1 -2') + four],
      {to: {kind: 'concert', octaves: 'customary'}},
      [attributes('divisions 1', 'fifths 0', 'clef G2', DECLARATION) + four],
    ],
    [
      'a concert score states octaves as octaves',
      [attributes('divisions 1', '<transpose><chromatic>12</chromatic></transpose>') + four],
      {to: {kind: 'concert', octaves: 'customary'}},
      [attributes('divisions 1', 'transpose 0 0 1') + four],
    ],
    [
      'a clef',
      [attributes('divisions 1', 'fifths 0', 'clef G2') + note('C3', 4)],
      BASSOON,
      [attributes('divisions 1', 'fifths 0', 'clef F4') + note('C3', 4)],
    ],
    [
      'a clef without its line, with an octave that goes',
      [
        attributes(
          'divisions 1',
          '<clef><sign>G</sign><clef-octave-change>-1</clef-octave-change></clef>',
        ) + note('C3', 4),
      ],
      BASSOON,
      [attributes('divisions 1', '<clef><sign>F</sign><line>4</line></clef>') + note('C3', 4)],
    ],
    [
      'clef changes with no reason left go, with their holder',
      [
        attributes('divisions 1', 'clef G2') + note('C3', 4),
        note('C3', 2) + attributes('clef F4') + note('C3', 2),
      ],
      BASSOON,
      [attributes('divisions 1', 'clef F4') + note('C3', 4), note('C3', 2) + note('C3', 2)],
    ],
    [
      'staves that must differ now get their own',
      [
        attributes(
          'divisions 1',
          '<staves>2</staves>',
          'clef G2 1',
          'clef F4 2',
          'transpose -1 -2',
        ) +
          note('C4', 4) +
          backup(4) +
          note('C3', 4, '<staff>2</staff>'),
      ],
      {to: notationById('clarinet.a')},
      [
        attributes(
          'divisions 1',
          '<staves>2</staves>',
          'clef G2 1',
          'clef F4 2',
          '<transpose number="1"><diatonic>-2</diatonic><chromatic>-3</chromatic></transpose>',
          '<transpose number="2"><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose>',
        ) +
          note('C4', 4) +
          backup(4) +
          note('C3', 4, '<staff>2</staff>'),
      ],
    ],
    [
      'what is for the part that is to be made goes when it is made',
      [
        attributes(
          'divisions 1',
          'fifths 0',
          '<for-part><part-transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></part-transpose></for-part>',
        ) + four,
      ],
      CLARINET,
      [attributes('divisions 1', 'fifths 2', 'transpose -1 -2') + four],
    ],
  ] satisfies readonly (readonly [string, readonly string[], PartJob, readonly string[]])[])(
    '%s',
    (_, before, job, after) => {
      expect(heads(before, job)).toBe(shown(...after))
    },
  )

  it('take the shape of the file', () => {
    const measure = `
      <attributes>
        <divisions>1</divisions>
        <key>
          <fifths>0</fifths>
        </key>
      </attributes>
      ${four}`
    expect(heads([measure], CLARINET)).toBe(`
      <attributes>
        <divisions>1</divisions>
        <key>
          <fifths>2</fifths>
        </key>
        <transpose>
          <diatonic>-1</diatonic>
          <chromatic>-2</chromatic>
        </transpose>
      </attributes>
      ....`)
  })

  it('say nothing twice that is said', () => {
    const same = [
      attributes('divisions 1', 'fifths 2', 'clef G2', 'transpose -1 -2') + four,
      attributes('fifths 2', 'clef G2', 'transpose -1 -2') + four,
    ]
    expect(heads(same, CLARINET)).toBe(shown(...same))
  })
})
