import {describe, expect, it} from 'vitest'
import {readHeader, unwantedEntries} from '../../lib/musicxml/header.ts'
import {attributeValue} from '../../lib/xml/element.ts'

const score = (content: string, root = 'score-partwise version="4.0"'): string =>
  `<?xml version="1.0"?>\n<${root}>${content}`
const part = (id: string, content = `<part-name>${id}</part-name>`): string =>
  `<score-part id="${id}">${content}</score-part>`
const start = (number: string): string => `<part-group type="start" number="${number}"/>`
const stop = (number: string): string => `<part-group type="stop" number="${number}"/>`

describe('a header', () => {
  it('tells form, version and concert pitch', () => {
    expect(readHeader(score('<part-list/>'))).toMatchObject({
      form: 'partwise',
      version: '4.0',
      concertScore: false,
      parts: [],
    })
    const timewise = score('<defaults><concert-score/></defaults><part-list/>', 'score-timewise')
    expect(readHeader(timewise)).toMatchObject({
      form: 'timewise',
      version: '1.0',
      concertScore: true,
    })
  })

  it.each([
    ['<work><work-title>Suite</work-title></work>', 'Suite'],
    ['<movement-title>Gigue &amp; Air</movement-title>', 'Gigue & Air'],
    [
      '<work><work-title>Suite</work-title></work><movement-title>Air</movement-title>',
      'Suite, Air',
    ],
    ['<credit><credit-words>In\n  the Hall</credit-words></credit>', 'In the Hall'],
    ['<work><work-title/></work>', ''],
    ['', ''],
  ])('with %s is called %s', (content, expected) => {
    expect(readHeader(score(`${content}<part-list/>`)).title).toBe(expected)
  })

  it.each([
    ['', ''],
    ['<part-name>Clarinet in B♭</part-name>', 'Clarinet in B♭'],
    ['<part-name> Horn\n 1 </part-name>', 'Horn 1'],
    [
      '<part-name>MusicXML Part</part-name><part-name-display><display-text>Clarinet in B</display-text><accidental-text>flat</accidental-text><display-text> 1</display-text></part-name-display>',
      'Clarinet in B♭ 1',
    ],
    ['<part-name>Oboe</part-name><part-name-display print-object="no"/>', 'Oboe'],
  ])('with the part %s calls it %s', (content, expected) => {
    const [own] = readHeader(score(`<part-list>${part('P1', content)}</part-list>`)).parts
    expect(own?.name).toBe(expected)
  })

  it('lists abbreviations and instruments', () => {
    const content =
      '<part-name>Flutes</part-name><part-abbreviation>Fl.</part-abbreviation><score-instrument id="I1"><instrument-name>Flute</instrument-name><instrument-sound>wind.flutes.flute</instrument-sound></score-instrument><score-instrument id="I2"><instrument-name>Piccolo</instrument-name></score-instrument>'
    const [own] = readHeader(score(`<part-list>${part('P1', content)}</part-list>`)).parts
    expect(own).toMatchObject({
      id: 'P1',
      abbreviation: 'Fl.',
      instruments: [
        {id: 'I1', name: 'Flute', sound: 'wind.flutes.flute'},
        {id: 'I2', name: 'Piccolo'},
      ],
    })
  })

  it.each(['<opus/>', '<html/>', '', '<score-part'])('is not %s', (text) => {
    expect(() => readHeader(text)).toThrow(SyntaxError)
  })
})

const p = (number: number): string => part(`P${number}`)

describe('what goes when parts go', () => {
  it.each([
    ['the others', p(1) + p(2), ['P1'], 'P2'],
    ['nothing when all stay', start('1') + p(1) + p(2) + stop('1'), ['P1', 'P2'], ''],
    ['a bracket around one', start('1') + p(1) + p(2) + stop('1'), ['P1'], '+1 P2 -1'],
    ['not a bracket around two', start('1') + p(1) + p(2) + p(3) + stop('1'), ['P1', 'P3'], 'P2'],
    [
      'the outer bracket, not the inner',
      start('1') + p(1) + start('2') + p(2) + p(3) + stop('2') + stop('1'),
      ['P2', 'P3'],
      'P1',
    ],
    ['an empty bracket', start('1') + p(1) + stop('1') + p(2), ['P2'], '+1 P1 -1'],
    [
      'brackets that cross',
      start('1') + p(1) + start('2') + p(2) + stop('1') + p(3) + stop('2'),
      ['P2', 'P3'],
      '+1 P1 -1',
    ],
    [
      'a number used again',
      start('1') + p(1) + p(2) + stop('1') + start('1') + p(3) + p(4) + stop('1'),
      ['P3', 'P4'],
      '+1 P1 P2 -1',
    ],
    ['a bracket that never ends', start('1') + p(1) + p(2), ['P1'], '+1 P2'],
    ['an end without a beginning', p(1) + stop('1') + p(2), ['P1', 'P2'], '-1'],
  ])('%s', (_, list, wanted, expected) => {
    const header = readHeader(score(`<part-list>${list}</part-list>`))
    const gone = unwantedEntries(header, (id) => wanted.includes(id))
    const shown = gone
      .toSorted((a, b) => a.start - b.start)
      .map((entry) =>
        entry.name === 'score-part'
          ? attributeValue(entry, 'id')
          : `${attributeValue(entry, 'type') === 'start' ? '+' : '-'}${attributeValue(entry, 'number')}`,
      )
    expect(shown.join(' ')).toBe(expected)
  })
})
