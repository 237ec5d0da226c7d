import {describe, expect, it} from 'vitest'
import {writeCoverPart} from '../../lib/index.ts'
import type {CoverRequest} from '../../lib/index.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {collect, sourceOf} from '../support/bytes.ts'
import {cuesOf, joined, music, notesOf, rests, scoreOf, start, wordsOf} from './parts.ts'
import type {Joined} from './parts.ts'

const TUNE = [music('C3 D3 E3 F3'), music('G3:2 E3:2')]
const BASS = [music('G3 A3 B3 C4'), music('D4:2 B3:2')]
const low = start({clef: 'F4'})

function coverOf(when: CoverRequest['when']): CoverRequest {
  const instrument = instrumentById('bassoon')
  if (!instrument) throw new Error('no bassoon')
  return {part: 'P2', instrument, tier: 'tutti', when}
}

/** A bassoon that takes in the music of a tuba; a horn may double one of them. */
async function woven(
  own: readonly string[],
  missing: readonly string[],
  {when = 'always' as const, other}: {when?: CoverRequest['when']; other?: readonly string[]} = {},
): Promise<Joined> {
  const source = scoreOf({
    'P1 Bassoon (bass clef)/Bn.': [low + own[0], ...own.slice(1)],
    'P2 Tuba/Tba.': [low + missing[0], ...missing.slice(1)],
    ...(other && {'P3 Horn/Hn.': [low + other[0], ...other.slice(1)]}),
  })
  return joined(source, {cover: coverOf(when)})
}

const stemmed = (measures: readonly string[]): string[] =>
  measures.map((each) => each.replaceAll('</type>', '</type><stem>up</stem>'))

const pitchesOf = (measure: string | undefined): string =>
  notesOf(measure)
    .map(({pitch}) => pitch)
    .join(' ')

describe('a voice that the player plays where they rest', () => {
  it('stands in place of the rests, full size, in their voice', async () => {
    const {measures, codes} = await woven([...TUNE, ...rests(2)], [...rests(2), ...BASS])
    expect(pitchesOf(measures[2])).toBe('G3 A3 B3 C4')
    expect(pitchesOf(measures[3])).toBe('D4 B3')
    for (const measure of measures.slice(2))
      expect(measure).not.toMatch(/<cue\/>|size="cue"|<backup>/)
    expect(codes).toEqual(['weave/played'])
  })

  it('is named in a frame, first in full, then short, and so is the way back', async () => {
    const {measures} = await woven(
      [...TUNE, ...rests(2), ...TUNE, ...rests(2)],
      [...rests(2), ...BASS, ...rests(2), ...BASS],
    )
    expect(measures.map((each) => wordsOf(each).join())).toEqual(
      // The name of the part without what it says of its clef.
      ['', '', 'Tuba', '', 'Bassoon', '', 'Tba.', ''],
    )
    expect(measures.join('').match(/<words enclosure="rectangle">/g)).toHaveLength(3)
  })

  it('leaves rests where it rests itself, as the meter groups them', async () => {
    const {measures} = await woven([TUNE[0] ?? '', ...rests(1)], [...rests(1), music('r B3 C4:2')])
    expect(pitchesOf(measures[1])).toBe('rest B3 C4')
    const late = await woven([TUNE[0] ?? '', music('r:4')], [...rests(1), music('r:2 B3 C4')])
    const [rest] = notesOf(late.measures[1])
    expect(rest?.xml).toContain('<type>half</type>')
  })

  it('fills what is left of a measure in which the player has played', async () => {
    const own = music('C3 D3 r:2')
    const missing = music('r:2 G3 A3')
    const {measures} = await woven([own], [missing])
    expect(pitchesOf(measures[0])).toBe('C3 D3 G3 A3')
    expect(measures[0]).not.toContain('<backup>')
  })

  it('stands beside them where they do not fit: something happens while a note sounds', async () => {
    const clef = '<attributes><clef><sign>C</sign><line>4</line></clef></attributes>'
    const {measures} = await woven(
      [TUNE[0] ?? '', music('r:2') + clef + music('r:2'), TUNE[0] ?? ''],
      [...rests(1), music('G3 A3:2 B3'), ...rests(1)],
    )
    expect(measures[1]).toContain(clef)
    expect(measures[1]).toContain('<backup><duration>8</duration></backup>')
    expect(pitchesOf(measures[1])).toBe('rest rest G3 A3 B3')
    expect(notesOf(measures[1]).at(-1)?.xml).toContain('<voice>2</voice>')
  })

  it('brings chords, grace notes and tuplets', async () => {
    const grace =
      '<note><grace/><pitch><step>A</step><octave>3</octave></pitch><type>eighth</type></note>'
    const chord = music('E4:2').replace('<note>', '<note><chord/>')
    const triplet = ['G3', 'A3', 'B3']
      .map((pitch) =>
        music(pitch, 6).replace(
          /<duration>6<\/duration><type>quarter<\/type>/,
          '<duration>2</duration><type>eighth</type><time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>',
        ),
      )
      .join('')
    const source = scoreOf({
      'P1 Bassoon/Bn.': [low + (TUNE[0] ?? ''), ...rests(1), TUNE[0] ?? ''],
      'P2 Tuba/Tba.': [
        start({clef: 'F4', divisions: 6}) + music('r:4', 6),
        grace +
          music('B3:2', 6) +
          chord.replace('<duration>4', '<duration>12') +
          triplet +
          music('r', 6),
        music('r:4', 6),
      ],
    })
    const {measures} = await joined(source, {cover: coverOf('always')})
    expect(pitchesOf(measures[1])).toBe('A3 B3 E4 G3 A3 B3 rest')
    expect(measures[1]).toContain('<divisions>6</divisions>')
    expect(measures[2]).toContain('<divisions>2</divisions>')
  })
})

const triplet = (pitches: string): string =>
  pitches
    .split(' ')
    .map((pitch) =>
      music(pitch, 6).replace(
        /<duration>6<\/duration><type>quarter<\/type>/,
        '<duration>2</duration><type>eighth</type><time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>',
      ),
    )
    .join('')
const six = (words: string): string => music(words, 6)

describe('a voice in triplets', () => {
  it('is parted where it is, whatever thirds add up to', async () => {
    // Five thirds and more after a first measure: sums that no binary fraction holds.
    const first = start({clef: 'F4', divisions: 6})
    const source = scoreOf({
      'P1 Bassoon/Bn.': [first + six('C3 D3 r:2'), six('C3 r:3'), six('C3 D3 r:2')],
      'P2 Tuba/Tba.': [
        first + six('r:2') + triplet('G3 A3 B3') + triplet('G3 r G3'),
        triplet('r A3 r') + triplet('B3 r C4') + triplet('r B3 A3') + six('G3'),
        six('r:2') + triplet('G3 A3 B3') + six('r'),
      ],
    })
    const {measures} = await joined(source, {cover: coverOf('always')})
    const all = measures.flatMap((each) => notesOf(each)).filter(({pitch}) => pitch !== 'rest')
    // Every note once: those of the bassoon, those of the tuba.
    expect(all).toHaveLength(5 + 5 + 6 + 3)
  })
})

describe('music that falls together', () => {
  it('of the player is printed as cues where others have it too', async () => {
    const {measures, codes, changes} = await woven(TUNE, BASS, {other: TUNE})
    for (const [index, pitches] of [
      [0, 'C3 D3 E3 F3'],
      [1, 'G3 E3'],
    ] as const) {
      expect(
        cuesOf(measures[index])
          .map(({pitch}) => pitch)
          .join(' '),
      ).toBe(pitches)
    }
    expect(pitchesOf(measures[0])).toBe('C3 D3 E3 F3 G3 A3 B3 C4')
    expect(codes).toContain('weave/silenced')
    expect(changes.map(({kind, part}) => `${kind} ${part}`).toSorted()).toEqual([
      'added P1',
      'cues P2',
      'silenced P1',
    ])
  })

  it('has no rests that count; the voice shows its own', async () => {
    const own = [TUNE[0] ?? '', TUNE[0] ?? '']
    const missing = [BASS[0] ?? '', music('r:3 B3')]
    const {measures} = await woven(own, missing, {other: own})
    const notes = notesOf(measures[1])
    const played = notes.filter(({xml}) => !xml.includes('<cue/>'))
    expect(played.map(({pitch}) => pitch).join(' ')).toBe('rest rest B3')
    expect(played.map(({xml}) => /<type[^>]*>(\w+)/.exec(xml)?.[1]).join(' ')).toBe(
      'half quarter quarter',
    )
    expect(measures[1]).not.toContain('<forward>')
    expect(notesOf(measures[0]).filter(({pitch}) => pitch === 'rest')).toEqual([])
  })

  it('of the voice is, where nobody else has what the player has', async () => {
    const {measures, codes, changes} = await woven(TUNE, BASS)
    expect(
      cuesOf(measures[0])
        .map(({pitch}) => pitch)
        .join(' '),
    ).toBe('G3 A3 B3 C4')
    expect(codes).toEqual(['weave/kept'])
    expect(changes.map(({kind, part}) => `${kind} ${part}`).toSorted()).toEqual([
      'added P2',
      'cues P1',
      'silenced P2',
    ])
  })

  it('has stems that go apart', async () => {
    const {measures} = await woven(stemmed(TUNE), stemmed(BASS))
    for (const {xml} of notesOf(measures[0]))
      expect(xml).toContain(xml.includes('<cue/>') ? '<stem>up</stem>' : '<stem>down</stem>')
  })
})

// renotation-rules Q9: no rests are added, the words say when it is played, the notes are small.
describe('a cross-cue', () => {
  it('is small, in place of the rests, and says when it is played', async () => {
    const {measures} = await woven([...TUNE, ...rests(2)], [...rests(2), ...BASS], {when: 'absent'})
    expect(pitchesOf(measures[2])).toBe('G3 A3 B3 C4')
    expect(measures[2]).toContain('<type size="cue">quarter</type>')
    expect(measures[2]).not.toMatch(/<cue\/>|<rest/)
    expect(measures.flatMap((each) => wordsOf(each))).toEqual(['play if no Tba.'])
  })

  it('leaves own music alone, whoever plays it too', async () => {
    const {measures} = await woven(TUNE, BASS, {when: 'absent', other: TUNE})
    expect(measures.map(pitchesOf)).toEqual(['C3 D3 E3 F3', 'G3 E3'])
    expect(measures.join('')).not.toMatch(/cue/)
  })

  it.each([
    ['en', 'play if no Tba.'],
    ['fr', 'jouer s’il n’y a pas de Tba.'],
    ['de', 'spielen, wenn Tba. fehlt'],
    ['it', 'se manca Tba.'],
    ['es', 'si no hay Tba.'],
    ['nl', 'spelen als er geen Tba. is'],
  ] as const)('says so in %s (renotation-rules N4)', async (language, words) => {
    const source = scoreOf({
      'P1 Bassoon': [low + (TUNE[0] ?? ''), ...rests(2)],
      'P2 Tuba/Tba.': [low + rests(1)[0], ...BASS],
    })
    const {text} = await joined(source, {cover: coverOf('absent')}, {language})
    expect(wordsOf(text)).toEqual([words])
  })
})

const small = (words: string): string => music(words).replaceAll('<note>', '<note><cue/>')

describe('cues that the source has', () => {
  it('may be the first of a chord', async () => {
    const chord = small('G3') + music('B3').replace('<note>', '<note><chord/>')
    const {measures} = await woven(
      [TUNE[0] ?? '', ...rests(1)],
      [...rests(1), chord + music('C4:2 D4')],
    )
    expect(pitchesOf(measures[1])).toBe('B3 C4 D4')
    expect(measures[1]).not.toContain('<chord/>')
  })

  it('stay in the part, and go with the voice that it takes in', async () => {
    const own = [...TUNE, small('C4 D4 E4 F4'), ...rests(2)]
    const missing = [small('A2 B2 C3 D3'), ...rests(2), ...BASS]
    const {measures, proof} = await woven(own, missing)
    expect(measures.map(pitchesOf)).toEqual([
      'C3 D3 E3 F3',
      'G3 E3',
      'C4 D4 E4 F4',
      'G3 A3 B3 C4',
      'D4 B3',
    ])
    expect(proof.verdict).toBe('intended')
  })
})

describe('what cannot be woven', () => {
  it('is music without pitch', async () => {
    const drums = start().replace(/<clef>.*<\/clef>/, '<clef><sign>percussion</sign></clef>')
    const source = scoreOf({
      'P1 Bassoon': [low + (TUNE[0] ?? '')],
      'P2 Drums': [drums + rests(1)[0]],
    })
    await expect(joined(source, {cover: coverOf('always')})).rejects.toMatchObject({
      diagnostic: {code: 'join/no-pitches'},
    })
  })

  it('is a cover by somebody without a part', async () => {
    const source = sourceOf(
      new TextEncoder().encode(
        scoreOf({'P1 Flute': [start() + music('C5:4')], 'P2 Tuba': [low + music('C2:4')]}),
      ),
    )
    const roster = 'players:\n  - name: Nora Feltwell\n    instrument: bassoon\n'
    await expect(
      collect(writeCoverPart(source, {part: 'P2', roster, woven: true})),
    ).rejects.toMatchObject({diagnostic: {code: 'cover/no-own-part'}})
  })
})
