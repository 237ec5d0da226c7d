import {describe, expect, test} from 'vitest'
import {prove} from '../../lib/proof/compare.ts'
import type {Proof, ProveOptions} from '../../lib/proof/compare.ts'
import {formatDifference} from '../../lib/proof/difference.ts'
import {attributes, backup, clef, note, part, score, sourceOf, transpose} from './score.ts'

function compare(before: string, after: string, options?: ProveOptions): Promise<Proof> {
  return prove(sourceOf(before), sourceOf(after), options)
}

async function told(before: string, after: string, options?: ProveOptions): Promise<string[]> {
  const {pairs} = await compare(before, after, options)
  return pairs.flatMap(({differences}) => differences.map(formatDifference))
}

const time = (beats: number, type: number) =>
  `<time><beats>${beats}</beats><beat-type>${type}</beat-type></time>`
const quarters = (...names: readonly string[]) => names.map((name) => note(name, 2)).join('')
const start = attributes(`<divisions>2</divisions>${time(4, 4)}`)
/** A tune of our own, long enough for a whole part to be judged by. */
const tune = [
  start + quarters('G4', 'A4', 'B4', 'G4'),
  quarters('D5', 'B4', 'C5', 'A4'),
  quarters('B4', 'G4', 'E4', 'F#4'),
  quarters('G4', 'D4', 'E4', 'C4'),
  quarters('D4', 'F#4', 'G4', 'r'),
]
/** The tune as a player in B flat reads it. */
const tuneInBFlat = [
  attributes(transpose(-1, -2)) + start + quarters('A4', 'B4', 'C#5', 'A4'),
  quarters('E5', 'C#5', 'D5', 'B4'),
  quarters('C#5', 'A4', 'F#4', 'G#4'),
  quarters('A4', 'E4', 'F#4', 'D4'),
  quarters('E4', 'G#4', 'A4', 'r'),
]

const tiedOver = (first: 'start' | undefined, second: 'stop' | undefined) =>
  part(start + note('B4', 4, first && {tie: first}), note('B4', 2, second && {tie: second}))
const wrongAfter = (before: string) =>
  told(part(before + quarters('C4', 'C4')), part(before + quarters('C4', 'D4')))
const upAnOctave = (measures: readonly string[], from: number, to: number) =>
  measures.map((measure, index) =>
    index < from || index > to
      ? measure
      : measure.replace(/<octave>(\d)/g, (_, octave) => `<octave>${Number(octave) + 1}`),
  )
const fold = {
  kind: 'moved',
  part: 'P1',
  from: {measure: 1},
  to: {measure: '3'},
  semitones: 12,
  reason: 'an octave up',
} as const
const foldWithin = (from: string, to: string) => [
  {...fold, from: {measure: 0, onset: from}, to: {measure: 0, onset: to}},
]
const anywhere = (kind: 'dropped' | 'added' | 'cues') => ({intended: [{kind, reason: kind}]})
const reading = (_: string, inForce: {sign: string} | undefined) =>
  inForce?.sign === 'F' ? {diatonic: 3, chromatic: 5} : undefined
const reported = (intended: ProveOptions['intended']) =>
  compare(part(...tune), part(...tune), {...(intended && {intended})})
const ids = (proof: Proof) => proof.pairs.map(({before, after}) => `${before.id}-${after.id}`)

describe('what sounds the same', () => {
  test.each([
    ['the same file', part(...tune), part(...tune)],
    ['a part for another player', part(...tune), part(...tuneInBFlat)],
    [
      'divisions of another fineness',
      part(start + note('C4', 2)),
      part(attributes('<divisions>6</divisions>') + note('C4', 6)),
    ],
    [
      'other voices, other staves, another order of notes',
      part(note('C4', 2) + note('E4', 2, {chord: true}) + backup(2) + note('G3', 1, {voice: 2})),
      part(note('G3', 1, {staff: 2}) + backup(1) + note('E4', 2) + note('C4', 2, {chord: true})),
    ],
    [
      'a held note cut into tied ones',
      part(start + note('C4', 8, {tie: 'start'}), note('C4', 4, {tie: 'stop'})),
      part(
        start + note('C4', 5, {tie: 'start'}) + note('C4', 3, {tie: 'both'}),
        note('C4', 4, {tie: 'stop'}),
      ),
    ],
    [
      'a tie over another spelling',
      part(note('C#4', 2, {tie: 'start'}) + note('C#4', 2, {tie: 'stop'})),
      part(note('C#4', 2, {tie: 'start'}) + note('Db4', 2, {tie: 'stop'})),
    ],
    [
      'a tie that is only drawn',
      part(note('C4', 2, {tie: 'start'}) + note('C4', 2, {tie: 'stop'})),
      part(note('C4', 2, {tied: 'start'}) + note('C4', 2, {tied: 'stop'})),
    ],
    ['an unpitched note', part(note('x', 2)), part(note('x', 2))],
  ])('%s', async (_, before, after) => {
    expect(await told(before, after)).toEqual([])
    expect(await compare(before, after)).toMatchObject({verdict: 'equal', pairs: [{different: 0}]})
  })

  test('spelling is counted and is no difference', async () => {
    const {verdict, pairs} = await compare(part(quarters('C#4', 'D4')), part(quarters('Db4', 'D4')))
    expect(verdict).toBe('equal')
    expect(pairs[0]).toMatchObject({notes: {before: 2, after: 2}, equal: 2, respelled: 1})
  })

  test('tied notes count once', async () => {
    const text = part(
      note('C4', 2, {tie: 'start'}) + note('C4', 2, {tie: 'both'}),
      note('C4', 2, {tie: 'stop'}),
    )
    expect((await compare(text, text)).pairs[0]).toMatchObject({notes: {before: 1}, equal: 1})
  })
})

describe('what does not, in a musician’s words', () => {
  const bar = (content: string) => part(start + quarters('E4', 'F4') + content)
  test.each([
    ['an octave', 'Bb2', 'Bb3', 'Bb3 sounds instead of Bb2 (an octave high)'],
    ['a semitone', 'Bb2', 'B2', 'B2 sounds instead of Bb2 (a semitone high)'],
    ['a ninth', 'C4', 'Bb2', 'Bb2 sounds instead of C4 (a major ninth low)'],
    ['a quarter tone', 'C4', 'C(+0.5)4', 'C(+0.5)4 sounds instead of C4 (a quarter tone high)'],
    [
      'a third of a semitone',
      'C(+0.33)4',
      'C4',
      'C4 sounds instead of C(+0.33)4 (0.33 semitones low)',
    ],
    [
      'two octaves and more',
      'C4',
      'D6',
      'D6 sounds instead of C4 (two octaves and a whole tone high)',
    ],
  ])('%s', async (_, before, after, words) => {
    expect(await told(bar(note(before, 2)), bar(note(after, 2)))).toEqual([
      `measure 1, beat 3: ${words}`,
    ])
  })

  test.each([
    ['missing', quarters('B4', 'C5'), quarters('B4', 'r'), ['beat 4: C5 is missing']],
    ['extra', quarters('B4', 'r'), quarters('B4', 'C5'), ['beat 4: C5 is one note too many']],
    [
      'extra in a chord',
      note('B4', 2),
      note('B4', 2) + note('D5', 2, {chord: true}),
      ['beat 3: D5 is one note too many'],
    ],
    ['longer', note('B4', 2), note('B4', 4), ['beat 3: B4 is a quarter longer']],
    ['shorter', note('B4', 2), note('B4', 1), ['beat 3: B4 is an eighth shorter']],
    ['late', note('B4', 2), note('r', 1) + note('B4', 2), ['beat 3: B4 comes an eighth late']],
    ['early', note('r', 1) + note('B4', 2), note('B4', 2), ['beat 3½: B4 comes an eighth early']],
    [
      'a cue',
      note('B4', 2),
      note('B4', 2, {cue: true}),
      ['beat 3: B4 has become a cue and is not played'],
    ],
    [
      'no cue',
      note('B4', 2, {cue: true}),
      note('B4', 2),
      ['beat 3: B4 was a cue and is now played'],
    ],
    [
      'a grace note',
      note('A4', 0, {grace: true}) + note('B4', 2),
      note('B4', 2),
      ['beat 3: A4 is missing'],
    ],
    [
      'the order of grace notes',
      note('A4', 0, {grace: true}) + note('C5', 0, {grace: true}) + note('B4', 2),
      note('C5', 0, {grace: true}) + note('A4', 0, {grace: true}) + note('B4', 2),
      [
        'beat 3: the grace note A4 comes in another place of its group',
        'beat 3: the grace note C5 comes in another place of its group',
      ],
    ],
    [
      'an unpitched note',
      note('x', 2),
      note('r', 2),
      ['beat 3: the unpitched note at E4 is missing'],
    ],
    [
      'a pitch for a noise',
      note('x', 2),
      note('E4', 2),
      ['beat 3: the unpitched note at E4 is missing', 'beat 3: E4 is one note too many'],
    ],
  ])('%s', async (_, before, after, lines) => {
    expect(await told(bar(before), bar(after))).toEqual(lines.map((line) => `measure 1, ${line}`))
  })

  test('a tie that is broken or added', async () => {
    const held = tiedOver('start', 'stop')
    for (const struck of [
      tiedOver(undefined, undefined),
      tiedOver('start', undefined),
      tiedOver(undefined, 'stop'),
    ]) {
      expect(await told(held, struck)).toEqual([
        'measure 2, beat 1: B4 is struck again instead of held by a tie',
      ])
      expect(await told(struck, held)).toEqual([
        'measure 2, beat 1: B4 is held by a tie instead of struck again',
      ])
    }
  })

  test('a note held over the bar is told where it begins', async () => {
    const before = part(start + note('B4', 8, {tie: 'start'}), note('B4', 4, {tie: 'stop'}))
    const after = part(start + note('B4', 8, {tie: 'start'}), note('B4', 1, {tie: 'stop'}))
    expect(await told(before, after)).toEqual(['measure 1, beat 1: B4 is a dotted quarter shorter'])
  })

  test('beats are those of the time signature', async () => {
    const six = attributes(`<divisions>2</divisions>${time(6, 8)}`)
    const cut = attributes(`<divisions>2</divisions>${time(2, 2)}`)
    expect(await wrongAfter(six)).toEqual([
      'measure 1, beat 3: D4 sounds instead of C4 (a whole tone high)',
    ])
    expect(await wrongAfter(cut)).toEqual([
      'measure 1, beat 1½: D4 sounds instead of C4 (a whole tone high)',
    ])
  })

  test('differences come in the order of the score, with the lines of both files', async () => {
    const before = part(
      start + note('C4', 8, {tie: 'start'}),
      note('C4', 2, {tie: 'stop'}) + note('D4', 2),
    )
    const after = part(
      start + note('C4', 8, {tie: 'start'}),
      note('C4', 1, {tie: 'stop'}) + note('r', 1) + note('E4', 2),
    )
    const {pairs} = await compare(before, after)
    expect(pairs[0]?.differences.map(({kind, lines}) => [kind, lines])).toEqual([
      ['duration', {before: 5, after: 5}],
      ['pitch', {before: 6, after: 6}],
    ])
  })

  test('all differences are counted, the first kept', async () => {
    const after = part(...tune.map((measure) => measure.replaceAll('<octave>4', '<octave>3')))
    const {pairs} = await compare(part(...tune), after, {keep: 3})
    expect(pairs[0]?.differences).toHaveLength(3)
    expect(pairs[0]?.different).toBe(17)
  })
})

describe('a whole part astray', () => {
  test('is told once, with what else is wrong', async () => {
    const after = tuneInBFlat.with(
      0,
      (tuneInBFlat[0] ?? '').replace(transpose(-1, -2), transpose(-8, -14)),
    )
    const {verdict, pairs} = await compare(part(...tune), part(...after))
    expect(verdict).toBe('different')
    expect(pairs[0]).toMatchObject({
      constantInterval: {semitones: '-12', name: 'an octave'},
      equal: 0,
      different: 19,
      otherPiece: false,
    })
    expect(pairs[0]?.differences.map(formatDifference)).toEqual(['everything sounds an octave low'])
    const also = after.with(3, after[3]?.replace('D</step>', 'E</step>') ?? '')
    expect(await told(part(...tune), part(...also))).toEqual([
      'everything sounds an octave low',
      'measure 4, beat 4: D3 sounds instead of C4 an octave lower (a whole tone high)',
    ])
  })

  test('another piece is recognised', async () => {
    const other = ['C4', 'F4', 'Bb3', 'Eb5', 'Ab5'].map(
      (name) => start + quarters(name, 'r', 'Db3', name),
    )
    const {verdict, pairs} = await compare(part(...tune), part(...other))
    expect(verdict).toBe('different')
    expect(pairs[0]?.otherPiece).toBe(true)
  })

  test('measures one side lacks are told', async () => {
    const {pairs} = await compare(part(...tune), part(...tune.slice(0, -1)))
    expect(pairs[0]?.measures).toEqual({before: 5, after: 4})
    expect(pairs[0]?.differences.map(formatDifference)).toEqual([
      'measure 5, beat 1: D4 is missing',
      'measure 5, beat 2: F#4 is missing',
      'measure 5, beat 3: G4 is missing',
    ])
  })
})

describe('what was reported', () => {
  test('a fold is intended, note for note', async () => {
    const proof = await compare(part(...tune), part(...upAnOctave(tune, 1, 2)), {intended: [fold]})
    expect(proof).toMatchObject({
      verdict: 'intended',
      pairs: [
        {
          equal: 11,
          intended: 8,
          respelled: 0,
          different: 0,
          intendedBy: [{reason: 'an octave up', notes: 8}],
        },
      ],
    })
  })

  test('what goes further than the report is a difference, and so is what it promised in vain', async () => {
    expect(
      await told(part(...tune), part(...upAnOctave(tune, 1, 3)), {intended: [fold]}),
    ).toContain('measure 4, beat 1: G5 sounds instead of G4 (an octave high)')
    expect(
      await told(part(...tune), part(...upAnOctave(tune, 2, 2)), {intended: [fold]}),
    ).toContain('measure 2, beat 1: D5 stays where it was, though it was to move an octave up')
    const other = await told(
      part(...tune),
      part(...upAnOctave(tune, 1, 2)).replace('F</step>', 'G</step>'),
      {
        intended: [fold],
      },
    )
    expect(other).toEqual([
      'measure 3, beat 4: G#5 sounds instead of F#4 an octave higher (a whole tone high)',
    ])
  })

  test('passages may begin and end in mid-measure', async () => {
    const before = part(start + quarters('C4', 'D4', 'E4', 'F4'))
    const after = part(start + quarters('C4', 'D5', 'E5', 'F4'))
    expect(await told(before, after, {intended: foldWithin('1', '2')})).toEqual([])
    expect(await told(before, after, {intended: foldWithin('3/2', '2')})).toEqual([
      'measure 1, beat 2: D5 sounds instead of D4 (an octave high)',
    ])
  })

  test('dropped and added notes, and cues', async () => {
    const chord = note('C4', 2) + note('E4', 2, {chord: true})
    const single = note('C4', 2)
    const cued = note('C4', 2) + note('G5', 2, {cue: true})
    expect(await told(part(chord), part(single))).toEqual(['measure 1, beat 1: E4 is missing'])
    expect(await told(part(chord), part(single), anywhere('dropped'))).toEqual([])
    expect(await told(part(single), part(chord), anywhere('added'))).toEqual([])
    expect(await told(part(single), part(chord), anywhere('cues'))).toEqual([
      'measure 1, beat 1: E4 is one note too many',
    ])
    expect(await told(part(single), part(cued), anywhere('cues'))).toEqual([])
    expect(await compare(part(single), part(cued), anywhere('cues'))).toMatchObject({
      verdict: 'intended',
    })
  })

  test('the report of another part says nothing here', async () => {
    const after = part(...upAnOctave(tune, 1, 2))
    const proof = await compare(part(...tune), after, {intended: [{...fold, part: 'P2'}]})
    expect(proof.verdict).toBe('different')
  })

  test('a reading of BEFORE is what AFTER is held to', async () => {
    const horn = attributes(transpose(-4, -7) + clef('F', 4)) + quarters('C3', 'G2')
    const modern = attributes(transpose(-4, -7) + clef('F', 4)) + quarters('C4', 'G3')
    expect((await compare(part(horn), part(modern))).verdict).toBe('different')
    expect((await compare(part(horn), part(modern), {reading})).verdict).toBe('equal')
  })

  test('nonsense in the report is the caller’s mistake', async () => {
    await expect(reported([{kind: 'moved', reason: ''}])).rejects.toThrow(RangeError)
    await expect(
      reported([{kind: 'added', reason: '', from: {measure: 0, onset: 'x'}}]),
    ).rejects.toThrow(RangeError)
  })
})

describe('scores of several parts', () => {
  const low = tune.map((measure) => measure.replaceAll('<octave>4', '<octave>3'))
  const drum = tune.map(() => start + note('x', 2) + note('r', 6))
  const whole = score({'P1 Flute': tune, 'P2 Bassoon': low, 'P3 Drum': drum})

  test('parts in another order', async () => {
    const proof = await compare(
      whole,
      score({'P3 Drum': drum, 'P2 Bassoon': low, 'P1 Flute': tuneInBFlat}),
    )
    expect(proof.verdict).toBe('equal')
    expect(ids(proof)).toEqual(['P1-P1', 'P2-P2', 'P3-P3'])
  })

  test('one part in its own file, renamed and renumbered', async () => {
    const proof = await compare(whole, score({'P1 Euphonium': low}))
    expect(proof.verdict).toBe('equal')
    expect(ids(proof)).toEqual(['P2-P1'])
    expect(proof.unpaired.before.map(({id}) => id)).toEqual(['P1', 'P3'])
  })

  test('a part that is lost from a score, or comes from nowhere', async () => {
    const fewer = score({'P1 Flute': tune, 'P2 Bassoon': low})
    expect((await compare(whole, fewer)).verdict).toBe('different')
    expect((await compare(whole, fewer, {partial: true})).verdict).toBe('equal')
    expect((await compare(fewer, whole)).verdict).toBe('different')
    expect((await compare(fewer, whole)).unpaired.after).toEqual([{id: 'P3', name: 'Drum'}])
  })

  test('the caller may know better', async () => {
    const proof = await compare(whole, score({'P1 Flute': tune}), {pairs: [['P2', 'P1']]})
    expect(ids(proof)).toEqual(['P2-P1'])
    expect(proof.verdict).toBe('different')
  })

  test('partwise against timewise', async () => {
    const measures = tune.map(
      (_, index) =>
        `<measure number="${index + 1}"><part id="P1">${tune[index]}</part><part id="P2">${low[index]}</part></measure>`,
    )
    const timewise = `<score-timewise><part-list><score-part id="P1"/><score-part id="P2"/></part-list>${measures.join('')}</score-timewise>`
    const partwise = score({P1: tune, P2: low})
    for (const [before, after] of [
      [partwise, timewise],
      [timewise, partwise],
      [timewise, timewise],
    ] as const)
      expect(await compare(before, after)).toMatchObject({
        verdict: 'equal',
        pairs: [{equal: 19}, {equal: 19}],
      })
  })
})
