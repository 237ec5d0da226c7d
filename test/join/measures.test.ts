import {describe, expect, it} from 'vitest'
import {
  cuePitches,
  cued,
  cuesOf,
  joined,
  music,
  notesOf,
  REST,
  rests,
  scoreOf,
  start,
} from './parts.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'

const TUNE = [music('G4 A4 B4 C5'), music('D5:2 B4 G4')]
const HELD = music('C5:4')
const ENTRY = music('C4:4')
const multiple = (count: number): string =>
  `<attributes><measure-style><multiple-rest>${count}</multiple-rest></measure-style></attributes>`

/** The rests over several measures that a part has: where each begins, from 1, and how long it is. */
function multiples(measures: readonly string[]): string[] {
  return measures.flatMap((each, index) =>
    [...each.matchAll(/<multiple-rest[^>]*>(\d+)/g)].map(([, count]) => `${index + 1}+${count}`),
  )
}

const fluteFrom = (from: number, count: number): string[] => [
  ...rests(from - 1, start()),
  ...TUNE,
  HELD,
  ...Array.from({length: count - from - 2}, () => HELD),
]

describe('a rest over several measures breaks around a cue (renotation-rules Q10, M1)', () => {
  it.each([
    ['before it', 9, [[1, 8]], '1+6'],
    ['to one measure before it, which is none', 9, [[6, 3]], ''],
    [
      'and leaves others alone',
      12,
      [
        [1, 4],
        [5, 7],
      ],
      '1+4 5+5',
    ],
    ['wherever it begins', 9, [[2, 7]], '2+5'],
    ['entirely', 9, [[7, 2]], ''],
  ] as const)('%s', async (_, entry, written, left) => {
    const host = Array.from({length: entry - 1}, () => REST)
    for (const [from, count] of written) host[from - 1] = multiple(count) + REST
    host[0] = start() + host[0]
    const source = scoreOf({
      'P1 Viola': [...host, ENTRY],
      'P2 Flute': fluteFrom(entry - 2, entry),
    })
    const {measures, text} = await cued(source)
    expect(measures).toHaveLength(entry)
    expect(text.match(/<measure number="\d+"/g)).toEqual(
      Array.from({length: entry}, (__, index) => `<measure number="${index + 1}"`),
    )
    expect(multiples(measures).join(' ')).toBe(left)
    // No measure with music in it is counted as one of rest.
    for (const each of multiples(measures)) {
      const [from = 0, count = 0] = each.split('+').map(Number)
      for (const measure of measures.slice(from - 1, from - 1 + count))
        expect(notesOf(measure).filter(({pitch}) => pitch !== 'rest')).toEqual([])
    }
  })

  it('and goes on after music in the middle of it', async () => {
    const bassoon = instrumentById('bassoon')
    if (!bassoon) throw new Error('no bassoon')
    const source = scoreOf({
      'P1 Viola': [start() + multiple(10) + REST, ...Array.from({length: 9}, () => REST), ENTRY],
      'P2 Flute': [...rests(4, start()), ...TUNE, ...rests(5)],
    })
    const {measures} = await joined(source, {
      cover: {part: 'P2', instrument: bassoon, tier: 'tutti', when: 'always'},
    })
    expect(multiples(measures)).toEqual(['1+4', '7+4'])
  })

  it('also where the measures within it have no content', async () => {
    const bassoon = instrumentById('bassoon')
    if (!bassoon) throw new Error('no bassoon')
    const empty = Array.from({length: 9}, (_, index) => `<measure number="${index + 2}"/>`)
    const source = scoreOf({
      'P1 Viola': [start() + multiple(10) + REST, ...empty, ENTRY],
      'P2 Flute': [...rests(4, start()), ...TUNE, ...rests(5)],
    })
    const {text} = await joined(source, {
      cover: {part: 'P2', instrument: bassoon, tier: 'tutti', when: 'always'},
    })
    expect(text).toContain(
      '<measure number="7"><attributes><measure-style><multiple-rest>4</multiple-rest></measure-style></attributes></measure>',
    )
    expect(text).toContain('<measure number="8"/>')
  })
})

const divisionsOf = (measures: readonly string[]): string[] =>
  measures.flatMap((each, index) =>
    [...each.matchAll(/<divisions>(\d+)/g)].map(([, count]) => `${index + 1}:${count}`),
  )

describe('divisions (MusicXML 4.0, divisions)', () => {
  const triplets = ['G4', 'A4', 'B4', 'C5', 'B4', 'A4']
    .map((pitch) =>
      music(pitch, 1).replace(
        /<duration>1<\/duration><type>quarter<\/type>/,
        '<duration>2</duration><type>eighth</type><time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>',
      ),
    )
    .join('')
  const flute = [
    ...rests(6, start({divisions: 6})).map((each) => each.replace('<duration>8', '<duration>24')),
    triplets + music('G4:2', 6),
    music('D5:2 B4 G4', 6),
    music('C5:4', 6),
  ]

  it('change for the cue and are put back after it', async () => {
    const source = scoreOf({'P1 Viola': [...rests(8, start()), ENTRY], 'P2 Flute': flute})
    const {measures} = await cued(source)
    expect(divisionsOf(measures)).toEqual(['1:2', '7:6', '9:2'])
    expect(cuePitches(measures[6])).toBe('G4 A4 B4 C5 B4 A4 G4')
    expect(notesOf(measures[6])[0]?.xml).toContain('<duration>24</duration>')
    expect(measures[8]).toContain('<duration>8</duration>')
  })

  it('are put back in a measure without content', async () => {
    const source = scoreOf({
      'P1 Viola': [...rests(8, start()), ENTRY, '<measure number="10"/>', ENTRY],
      'P2 Flute': [...flute, ...rests(2)],
    })
    const {text} = await cued(source, {cues: {rest: 8}})
    expect(text).toContain('<measure number="10"/>')
  })

  it('do not change where the part states its own afterwards', async () => {
    const four = '<attributes><divisions>4</divisions></attributes>'
    const source = scoreOf({
      'P1 Viola': [...rests(8, start()), four + music('C4:4', 4), music('D4:4', 4)],
      'P2 Flute': [...flute, REST],
    })
    const {measures} = await cued(source)
    expect(divisionsOf(measures)).toEqual(['1:2', '7:6', '9:4'])
  })

  it('do not change where the part has fine ones', async () => {
    const source = scoreOf({
      'P1 Viola': [
        ...rests(8, start({divisions: 12})).map((each) =>
          each.replace('<duration>8', '<duration>48'),
        ),
        music('C4:4', 12),
      ],
      'P2 Flute': flute,
    })
    expect(divisionsOf((await cued(source)).measures)).toEqual(['1:12'])
  })

  it('that change on the way leave the measure as it is, which is told', async () => {
    const half = '<note><rest/><duration>4</duration><type>half</type></note>'
    const torn = `${half}<attributes><divisions>4</divisions></attributes>${half.replace('4', '8')}`
    const source = scoreOf({
      'P1 Viola': [...rests(7, start()), torn, music('C4:4', 4)],
      'P2 Flute': [...rests(6, start()), ...TUNE, HELD],
    })
    const {measures, told} = await cued(source)
    expect(cuePitches(measures[6])).toBe('G4 A4 B4 C5')
    expect(measures[7]).toBe(torn)
    expect(told.map(({code}) => code)).toContain('join/divisions')
    expect(told.find(({code}) => code === 'join/divisions')?.at).toMatchObject({
      part: 'P1',
      measure: '8',
    })
  })
})

const staffRest = (staff: number): string =>
  `<note><rest measure="yes"/><duration>8</duration><voice>${staff}</voice><staff>${staff}</staff></note>`

describe('parts that are written in other ways', () => {
  it('measures without content', async () => {
    const empty = Array.from({length: 7}, (_, index) => `<measure number="${index + 2}"/>`)
    const source = scoreOf({
      'P1 Viola': [start() + REST, ...empty, ENTRY],
      'P2 Flute': [...rests(6, start()), ...TUNE, HELD],
    })
    const {text} = await cued(source)
    expect(text).toContain('<measure number="6"/>')
    expect(text).toMatch(/<measure number="7"><direction.*<cue\/>.*<\/measure>/)
    expect(cuesOf(text)).toHaveLength(7)
  })

  it('several staves: the cue stands on the upper one, in a free voice', async () => {
    const two = start()
      .replace('<clef>', '<staves>2</staves><clef number="1">')
      .replace('</clef>', '</clef><clef number="2"><sign>F</sign><line>4</line></clef>')
    const silent = `${staffRest(1)}<backup><duration>8</duration></backup>${staffRest(2)}`
    const source = scoreOf({
      'P1 Harp': [
        ...Array.from({length: 8}, (_, index) => (index === 0 ? two : '') + silent),
        `${music('C4:4{<staff>1</staff>}')}<backup><duration>8</duration></backup>${staffRest(2)}`,
      ],
      'P2 Flute': [...rests(6, start()), ...TUNE, HELD],
    })
    const {measures} = await cued(source)
    for (const {xml} of cuesOf(measures[6])) {
      expect(xml).toContain('<staff>1</staff>')
      expect(xml).toContain('<voice>3</voice>')
    }
    expect(measures[6]).toMatch(/<direction.*<voice>3<\/voice><staff>1<\/staff><\/direction>/)
  })

  it('a timewise score', async () => {
    const host = [...rests(8, start()), ENTRY]
    const guest = [...rests(6, start()), ...TUNE, HELD]
    const measures = host.map(
      (each, index) =>
        `<measure number="${index + 1}"><part id="P1">${each}</part><part id="P2">${guest[index]}</part></measure>`,
    )
    const source = `<score-timewise version="4.0"><part-list><score-part id="P1"><part-name>Viola</part-name></score-part><score-part id="P2"><part-name>Flute</part-name></score-part></part-list>${measures.join('\n')}</score-timewise>`
    const {text} = await cued(source)
    const shown = text.split('<measure ').map((each) => cuePitches(each))
    expect(shown[7]).toBe('G4 A4 B4 C5')
    expect(shown[8]).toBe('D5 B4 G4')
    expect(shown[9]).toBe('')
  })

  it('a score in UTF-16', async () => {
    const source = scoreOf({
      'P1 Viola': [...rests(8, start()), ENTRY],
      'P2 Flöte/Fl♮.': [...rests(6, start()), ...TUNE, HELD],
    })
    const text = `<?xml version="1.0" encoding="UTF-16"?>\n${source}`
    const bytes = Uint8Array.from([0xff, 0xfe, ...Buffer.from(text, 'utf16le')])
    const {measures, text: out} = await cued(bytes)
    expect(cuePitches(measures[6])).toBe('G4 A4 B4 C5')
    expect(out).toContain('<words>Fl♮.</words>')
  })

  it('a barline at the end stays behind the music', async () => {
    const double = '<barline location="right"><bar-style>light-light</bar-style></barline>'
    const source = scoreOf({
      'P1 Viola': [...rests(7, start()), REST + double, ENTRY],
      'P2 Flute': [...rests(6, start()), ...TUNE, HELD],
    })
    const {measures} = await cued(source)
    expect(measures[7]?.endsWith(double)).toBe(true)
  })

  it('keeps every measure that has no cue byte for byte', async () => {
    const source = scoreOf({
      'P1 Viola': [...rests(8, start()), ENTRY],
      'P2 Flute': [...rests(6, start()), ...TUNE, HELD],
    })
    const {text} = await cued(source)
    for (const number of [1, 2, 6, 9]) {
      const [measure = ''] = new RegExp(`<measure number="${number}">.*`).exec(source) ?? []
      expect(text).toContain(measure)
    }
  })
})
