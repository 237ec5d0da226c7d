import {describe, expect, it} from 'vitest'
import type {PartOptions} from '../../lib/index.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'
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
  wordsOf,
} from './parts.ts'

/** A tune of two measures that is easy to follow, and what its player has before and after it. */
const TUNE = [music('G4 A4 B4 C5'), music('D5:2 B4 G4')]
const HELD = music('C5:4')

/** Eight measures of rest of a first part, then an entry; a second part plays a tune before it. */
function piece(
  host: Parameters<typeof start>[0] = {},
  guest: Parameters<typeof start>[0] = {},
  tune: readonly string[] = TUNE,
  names: readonly [string, string] = ['Viola/Vla.', 'Flute/Fl.'],
): string {
  return scoreOf({
    [`P1 ${names[0]}`]: [...rests(8, start(host)), music('C4:4')],
    [`P2 ${names[1]}`]: [...rests(6, start(guest)), ...tune, HELD],
  })
}

/** The contents of a measure, by its number. */
const at = (measures: readonly string[], number: number): string => measures[number - 1] ?? ''

describe('where a cue stands', () => {
  it('not after seven, unless it is asked for', async () => {
    const source = scoreOf({
      'P1 Viola': [...rests(7, start()), music('C4:4')],
      'P2 Flute': [...rests(5, start()), ...TUNE, HELD],
    })
    expect((await cued(source)).codes).toEqual([])
    expect((await cued(source, {cues: {rest: 7}})).codes).toEqual(['cues/added'])
  })

  it.each([
    [
      'tempo',
      '<direction><direction-type><words>Lento</words></direction-type><sound tempo="60"/></direction>',
      'r:4',
    ],
    [
      'metre',
      '<attributes><time><beats>2</beats><beat-type>4</beat-type></time></attributes>',
      'r:2',
    ],
  ])(
    'after half of it where the %s changes on the way (renotation-rules Q1)',
    async (_, sign, rest) => {
      const length = rest === 'r:2' ? '2' : '4'
      const tune = length === '2' ? ['G4 A4', 'B4 C5'] : ['G4 A4 B4 C5', 'D5:2 B4 G4']
      const source = (changed: string, count: number): string =>
        scoreOf({
          'P1 Viola': [
            start() + REST,
            changed + music(rest),
            ...Array.from({length: count - 2}, () => music(rest)),
            music(`C4:${length}`),
          ],
          'P2 Flute': [
            start() + REST,
            changed + music(rest),
            ...Array.from({length: count - 4}, () => music(rest)),
            ...tune.map((each) => music(each)),
            music(`C5:${length}`),
          ],
        })
      expect((await cued(source(sign, 4))).codes).toEqual(['cues/added'])
      if (rest === 'r:4') expect((await cued(source('', 4))).codes).toEqual([])
    },
  )

  it('takes empty measures for no change of metre', async () => {
    const source = scoreOf({
      'P1 Viola': [start() + REST, '', '', '', REST, music('C4:4')],
      'P2 Flute': [...rests(3, start()), ...TUNE, HELD],
    })
    expect((await cued(source)).codes).toEqual([])
  })

  it('as long as is asked, if the music allows', async () => {
    const tune = ['C5 D5 E5 F5', 'G5 F5 E5 D5', 'C5 E5 D5 F5', 'E5:2 D5:2'].map((each) =>
      music(each),
    )
    const source = scoreOf({
      'P1 Viola': [...rests(8, start()), music('C4:4')],
      'P2 Flute': [start() + HELD, HELD, HELD, HELD, ...tune, HELD],
    })
    for (const length of [1, 2, 3, 4]) {
      const {measures} = await cued(source, {cues: {length}})
      expect(measures.filter((each) => each.includes('<cue/>'))).toHaveLength(length)
    }
  })

  it.each([0, -1, 2.5])('refuses %d measures', async (rest) => {
    await expect(cued(piece(), {cues: {rest}})).rejects.toMatchObject({
      diagnostic: {code: 'cues/value'},
    })
    await expect(cued(piece(), {cues: {length: rest}})).rejects.toMatchObject({
      diagnostic: {code: 'cues/value'},
    })
  })
})

describe('whom a cue is taken from', () => {
  const other = [music('E4 F4 G4 A4'), music('B4:2 G4 E4')]
  const three = (first: string, second: string): string =>
    scoreOf({
      'P1 Viola': [...rests(8, start()), music('C4:4')],
      [`P2 ${first}`]: [...rests(6, start()), ...TUNE, HELD],
      [`P3 ${second}`]: [...rests(6, start()), ...other, HELD],
    })

  it('a neighbour before others (renotation-rules Q8)', async () => {
    const {measures} = await cued(three('Flute/Fl.', 'Oboe/Ob.'))
    expect(wordsOf(at(measures, 7))).toEqual(['Fl.'])
  })

  it('those who are named', async () => {
    const {measures} = await cued(three('Flute/Fl.', 'Oboe/Ob.'), {cues: {from: ['Oboe']}})
    expect(wordsOf(at(measures, 7))).toEqual(['Ob.'])
    expect(cuePitches(at(measures, 7))).toBe('E4 F4 G4 A4')
  })

  it('refuses an unknown one', async () => {
    await expect(cued(piece(), {cues: {from: ['Tuba']}})).rejects.toMatchObject({
      diagnostic: {code: 'part/unknown'},
    })
  })
})

describe('what a cue looks like', () => {
  it('is named once, by the abbreviation of its part (renotation-rules Q3)', async () => {
    const {text} = await cued(piece())
    expect(wordsOf(text)).toEqual(['Fl.'])
    const unabbreviated = await cued(piece({}, {}, TUNE, ['Viola', 'Flute']))
    expect(wordsOf(unabbreviated.text)).toEqual(['Flute'])
    const escaped = await cued(piece({}, {}, TUNE, ['Viola', 'Flute/Fl. &amp; Picc.']))
    expect(wordsOf(escaped.text)).toEqual(['Fl. &amp; Picc.'])
  })

  it.each(
    [
      ['G4 A4 G4 A4', 'G4 A4:2 G4', 'up', 'C4'],
      ['D4{<stem>up</stem>} E4 D4 E4', 'D4 E4:2 D4', 'down', 'F5'],
      ['D5{<stem>down</stem>} C5 D5 C5', 'D5 C5:2 D5', 'up', 'C4'],
    ].slice(1),
  )(
    'has its stems one way, away from the rest (renotation-rules Q4): %s',
    async (one, two, stem) => {
      const tune = [one, two].map((each) =>
        music(each).replaceAll(/(<\/type>)(?!<stem)/g, '$1<stem>up</stem>'),
      )
      const {measures} = await cued(piece({}, {}, tune))
      const cues = [...cuesOf(at(measures, 7)), ...cuesOf(at(measures, 8))]
      expect(cues.map(({xml}) => /<stem>(\w+)/.exec(xml)?.[1])).toEqual(cues.map(() => stem))
      const {xml = ''} = notesOf(at(measures, 7)).find(({pitch}) => pitch === 'rest') ?? {}
      const [, step = '', octave = ''] =
        /<display-step>(.)<\/display-step><display-octave>(.)/.exec(xml) ?? []
      const steps = 'CDEFGAB'.indexOf(step) + 7 * Number(octave)
      const cue = /<step>(.)<\/step><octave>(.)/.exec(cues[0]?.xml ?? '')
      const height = 'CDEFGAB'.indexOf(cue?.[1] ?? '') + 7 * Number(cue?.[2])
      expect(Math.sign(steps - height)).toBe(stem === 'up' ? -1 : 1)
    },
  )

  it('keeps slurs, articulations and loudness, not what belongs to player, page and file (renotation-rules Q8)', async () => {
    const note = music('G4').replace('<note>', '<note default-x="12" id="n1">')
    const marked = note
      .replace('</note>', '')
      .concat(
        '<notations><slur type="start" number="1" default-y="3"/><articulations><staccato/></articulations><technical><fingering>2</fingering></technical></notations><lyric><text>la</text></lyric></note>',
      )
    const loud =
      '<direction placement="below"><direction-type><dynamics default-y="-70"><p/></dynamics></direction-type><staff>1</staff></direction>'
    const tune = [
      loud + marked + music('A4{<notations><slur type="stop" number="1"/></notations>} B4 C5'),
      music('D5:2 B4 G4'),
    ]
    const {measures} = await cued(piece({}, {}, tune))
    const content = at(measures, 7)
    expect(content).toContain('<dynamics><p/></dynamics>')
    expect(content).toContain('<articulations><staccato/></articulations>')
    expect(content.match(/<slur /g)).toHaveLength(2)
    expect(content).not.toMatch(/lyric|fingering|default-|id="/)
  })

  it('has no instrument of its own player', async () => {
    const source = piece()
      .replace(
        '<part-abbreviation>Fl.</part-abbreviation>',
        '<part-abbreviation>Fl.</part-abbreviation><score-instrument id="P2-I1"><instrument-name>Flute</instrument-name></score-instrument>',
      )
      .replaceAll(/<duration>2<\/duration>/g, '<duration>2</duration><instrument id="P2-I1"/>')
    const {text} = await cued(source)
    expect(source).toContain('<instrument id')
    expect(text).not.toContain('<instrument id')
    expect(text).toContain('<cue/>')
  })

  it('closes what would lead out of it: slurs, ties, hairpins', async () => {
    const wedge =
      '<direction><direction-type><wedge type="crescendo"/></direction-type></direction>'
    const tied = '{<tie type="start"/>|<notations><tied type="start"/></notations>}'
    const tune = [
      `${music('G4 A4{<notations><slur type="start"/></notations>} B4 C5')}`,
      wedge + music(`D5:2 B4 C5${tied}`),
    ]
    const source = scoreOf({
      'P1 Viola': [...rests(8, start()), music('C4:4')],
      'P2 Flute/Fl.': [
        ...rests(6, start()),
        ...tune,
        music(
          'C5:4{<tie type="stop"/>|<notations><tied type="stop"/><slur type="stop"/></notations>}',
        ) + wedge.replace('crescendo', 'stop'),
      ],
    })
    const {measures} = await cued(source)
    const shown = at(measures, 7) + at(measures, 8)
    expect(shown.match(/<slur /g)).toHaveLength(2)
    expect(shown).toContain('<slur number="1" type="stop"/>')
    expect(shown.match(/<wedge /g)).toHaveLength(2)
    expect(shown).not.toMatch(/<tied?\b/)
  })

  it('leaves out what leads into it from before', async () => {
    const on = '{<tie type="start"/>|<notations><tied type="start"/></notations>}'
    const both =
      '{<tie type="stop"/><tie type="start"/>|<notations><tied type="stop"/><tied type="start"/></notations>}'
    const tune = [music(`G4${both} A4 B4 C5${on}`), music(`C5${both} D5 B4 G4`)]
    const source = (first: string): string =>
      scoreOf({
        'P1 Viola': [...rests(8, start()), music('C4:4')],
        'P2 Flute/Fl.': [
          first + music(`G4:4${on}`),
          ...Array.from({length: 5}, () => music(`G4:4${both}`)),
          ...tune,
          HELD,
        ],
      })
    const {measures} = await cued(source(start()))
    expect(cuePitches(at(measures, 6))).toBe('')
    expect(cuePitches(at(measures, 7))).toBe('G4 A4 B4 C5')
    const [first, , , last] = cuesOf(at(measures, 7))
    expect(first?.xml).not.toContain('type="stop"')
    expect(last?.xml).toContain('<tied type="start"/>')
  })

  it('and slurs that do', async () => {
    const source = scoreOf({
      'P1 Viola': [...rests(8, start()), music('C4:4')],
      'P2 Flute/Fl.': [
        ...Array.from({length: 5}, (_, index) => (index === 0 ? start() : '') + HELD),
        music('G4:4{<notations><slur type="start"/></notations>}'),
        music('G4 A4{<notations><slur type="stop"/></notations>} B4 C5'),
        music('D5:2 B4 G4'),
        HELD,
      ],
    })
    const {measures} = await cued(source)
    expect(cuePitches(at(measures, 6))).toBe('')
    expect(cuePitches(at(measures, 7))).toBe('G4 A4 B4 C5')
    expect(at(measures, 7)).not.toMatch(/<slur|<notations/)
  })
})

describe('how a cue is read', () => {
  const clarinet: Partial<PartOptions> = {for: 'clarinet-b-flat'}

  it('in the key and clef of its reader (renotation-rules Q5)', async () => {
    // Horn in F: written G4 sounds C4; a clarinet in B flat writes D4 for it.
    const source = piece(
      {},
      {transpose: '-4 -7', fifths: 1},
      [music('G4 A4 B4 C5'), music('D5:2 B4 G4')],
      ['Viola', 'Horn in F/Hn.'],
    )
    const {measures} = await cued(source, clarinet)
    expect(cuePitches(at(measures, 7))).toBe('D4 E4 F#4 G4')
    expect(at(measures, 1)).toContain('<fifths>2</fifths>')
    // In the bass clef of a bassoon: as it sounds.
    const bass = await cued(source, {for: 'bassoon'})
    expect(cuePitches(at(bass.measures, 7))).toBe('C4 D4 E4 F4')
    expect(at(bass.measures, 1)).toContain('<sign>F</sign>')
  })

  it('in his octave, which the label says (renotation-rules Q5)', async () => {
    const high = [music('G5 A5 B5 C6'), music('D6:2 B5 G5')]
    const {measures} = await cued(piece({clef: 'F4'}, {}, high))
    expect(wordsOf(at(measures, 7))).toEqual(['Fl. (15ma lower)'])
    expect(cuePitches(at(measures, 7))).toBe('G3 A3 B3 C4')
    const low = [music('G2 A2 B2 C3'), music('D3:2 B2 G2')]
    const raised = await cued(piece({}, {clef: 'F4'}, low))
    expect(wordsOf(at(raised.measures, 7))[0]).toMatch(/^Fl\. \((8va|15ma) higher\)$/)
  })
})

describe('a measure with music of two parts', () => {
  // MusicXML 4.0, accidental: what is printed; renotation-rules section 3: one staff, one reader.
  it('gets the accidentals that it needs because of the other music, and loses none', async () => {
    const bassoon = instrumentById('bassoon')
    if (!bassoon) throw new Error('no bassoon')
    const sharp = '{<accidental>sharp</accidental>}'
    const source = scoreOf({
      'P1 Bassoon': [start({clef: 'F4'}) + music(`C3 D3 F3 G#3${sharp}`)],
      'P2 Tuba': [start({clef: 'F4'}) + music(`F#3${sharp} A3 B3 D4`)],
    })
    const {measures} = await joined(source, {
      cover: {part: 'P2', instrument: bassoon, tier: 'tutti', when: 'always'},
    })
    const signs = notesOf(measures[0]).map(({pitch, xml}) => {
      const [, sign = ''] = /<accidental>(.*?)</.exec(xml) ?? []
      return `${xml.includes('<cue/>') ? 'cue ' : ''}${pitch} ${sign}`.trim()
    })
    expect(signs).toEqual([
      'C3',
      'D3',
      // The cue has an F sharp on the first beat.
      'F3 natural',
      'G#3 sharp',
      'cue F#3 sharp',
      'cue A3',
      'cue B3',
      'cue D4',
    ])
  })
})
