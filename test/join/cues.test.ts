import {describe, expect, it} from 'vitest'
import {LANGUAGES} from '../../lib/index.ts'
import type {PartOptions} from '../../lib/index.ts'
import {
  cuePitches,
  cued,
  cuesOf,
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
  it('before the entry after eight measures of rest, never in it (renotation-rules Q1, Q6)', async () => {
    const {measures, codes} = await cued(piece())
    expect(cuePitches(at(measures, 7))).toBe('G4 A4 B4 C5')
    expect(cuePitches(at(measures, 8))).toBe('D5 B4 G4')
    expect(measures.filter((each) => each.includes('<cue/>'))).toHaveLength(2)
    expect(cuesOf(at(measures, 9))).toEqual([])
    expect(codes).toEqual(['cues/added'])
  })

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

  it('nowhere where nobody plays, and that is told', async () => {
    const source = scoreOf({
      'P1 Viola': [...rests(8, start()), music('C4:4')],
      'P2 Flute': [...rests(8, start()), HELD],
    })
    const {codes, told} = await cued(source)
    expect(codes).toEqual(['cues/none'])
    expect(told[0]?.message).toContain('measure 9')
  })

  it('not where the part has one already', async () => {
    const source = scoreOf({
      'P1 Viola': [
        ...rests(7, start()),
        music('G4:4{<cue/>|}')
          .replace('<note><pitch>', '<note><cue/><pitch>')
          .replace('<cue/><type>', '<type>'),
        music('C4:4'),
      ],
      'P2 Flute': [...rests(6, start()), ...TUNE, HELD],
    })
    const {codes, text} = await cued(source)
    expect(codes).toEqual([])
    expect(text.split('<cue/>')).toHaveLength(2)
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

  it('singers only when nobody else plays (renotation-rules Q7)', async () => {
    const {measures} = await cued(three('Soprano/S.', 'Oboe/Ob.'))
    expect(wordsOf(at(measures, 7))).toEqual(['Ob.'])
    const alone = await cued(piece({}, {}, TUNE, ['Viola', 'Soprano/S.']))
    expect(wordsOf(at(alone.measures, 7))).toEqual(['S.'])
  })

  it('refuses an unknown one', async () => {
    await expect(cued(piece(), {cues: {from: ['Tuba']}})).rejects.toMatchObject({
      diagnostic: {code: 'part/unknown'},
    })
  })
})

describe('what a cue looks like', () => {
  it('is small, silent and full beside the rest that stays (renotation-rules Q2, Q3; MusicXML 4.0, cue, type)', async () => {
    const {measures} = await cued(piece())
    for (const {xml} of cuesOf(at(measures, 7))) {
      expect(xml).toMatch(/^<note><cue\/><pitch>/)
      expect(xml).toContain('<type size="cue">quarter</type>')
      expect(xml).not.toContain('<voice>1</voice>')
    }
    const rest = notesOf(at(measures, 7)).find(({pitch}) => pitch === 'rest')
    expect(rest?.xml).toMatch(/<rest measure="yes"/)
    expect(rest?.xml).not.toContain('size=')
  })

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
    const tie = (type: string): string => `<notations><tied type="${type}"/></notations>`
    const on = `{<tie type="start"/>|${tie('start')}}`
    const both = `{<tie type="stop"/><tie type="start"/>|${tie('stop').replace('</notations>', '')}<tied type="start"/></notations>}`
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

  it.each([
    ['en', '8va lower'],
    ['fr', '8va plus bas'],
    ['de', '8va tiefer'],
    ['it', '8va sotto'],
    ['es', '8va más grave'],
    ['nl', '8va lager'],
  ] as const)('and in the language of the part: %s', async (language, words) => {
    const tune = [music('G4 A4 B4 C5'), music('D5:2 B4 G4')]
    const {measures} = await cued(piece({clef: 'F4'}, {}, tune), {language})
    expect(wordsOf(at(measures, 7))).toEqual([`Fl. (${words})`])
    expect(LANGUAGES).toContain(language)
  })

  it('in sharps by who reads six of them, whoever plays six flats (renotation-rules K4)', async () => {
    const flats = [music('Gb4 Ab4 Bb4 Cb5'), music('Db5:2 Bb4 Gb4')]
    const {measures} = await cued(piece({fifths: 6}, {fifths: -6}, flats))
    expect(cuePitches(at(measures, 7))).toBe('F#4 G#4 A#4 B4')
    expect(cuePitches(at(measures, 8))).toBe('C#5 A#4 F#4')
  })

  it('with accidentals that the music needs, none removed', async () => {
    const sign = '<accidental>sharp</accidental>'
    const tune = [music(`F4{${sign}} G4 F4{${sign}} A4`), music('G4:2 B4 G4')]
    // The reader plays F natural in G major after the cue's measure has had its own signature.
    const source = piece(
      {fifths: 1},
      {fifths: 0},
      tune.map((each) => each.replaceAll('<step>F</step>', '<step>F</step><alter>1</alter>')),
    )
    const {measures} = await cued(source)
    const cues = cuesOf(at(measures, 7))
    expect(cues.map(({pitch}) => pitch)).toEqual(['F#4', 'G4', 'F#4', 'A4'])
  })
})

describe('a measure with two voices', () => {
  it('gets an accidental that is needed because of the other voice', async () => {
    const sharp = '<accidental>sharp</accidental>'
    // Both parts print what they need alone: the cue F sharp on the first beat asks for a natural in the reader's own F later.
    const source = scoreOf({
      'P1 Viola': [...rests(7, start()), music('r:2 r:2'), music('C4:4')],
      'P2 Flute/Fl.': [
        ...rests(6, start()),
        music('G4 A4 B4 C5'),
        music(`F#4{${sharp}} G4:2 F#4{}`),
        HELD,
      ],
    })
    const {measures} = await cued(source)
    expect(cuePitches(at(measures, 8))).toBe('F#4 G4 F#4')
    expect(cuesOf(at(measures, 8))[0]?.xml).toContain(sharp)
    expect(at(measures, 8).match(/<accidental>/g)).toHaveLength(1)
  })
})
