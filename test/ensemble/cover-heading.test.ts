import {describe, expect, it} from 'vitest'
import {writeCoverPart} from '../../lib/index.ts'
import type {Change, CoverPartOptions, Language} from '../../lib/index.ts'
import {coverHeading} from '../../lib/ensemble/cover-heading.ts'
import {soundsIn} from '../../lib/ensemble/interval-words.ts'
import {LANGUAGES, instrumentById} from '../../lib/instruments/instrument.ts'
import {UNISON, parseInterval} from '../../lib/pitch/interval.ts'
import type {Interval} from '../../lib/pitch/interval.ts'
import type {PartPlan, Section} from '../../lib/plan/plan.ts'
import {FIRST_STATE} from '../../lib/staff/state.ts'
import {collect} from '../support/bytes.ts'
import {demoScore} from '../support/fixtures.ts'
import {validateScore} from '../support/validate.ts'

async function headingOf(score: string, options: CoverPartOptions): Promise<string[]> {
  const utf8 = new TextEncoder().encode(score)
  const source = async function* () {
    yield utf8
  }
  const text = new TextDecoder().decode(await collect(writeCoverPart(source, options)))
  expect(validateScore(text)).toEqual([])
  return text.match(/<credit-words[^>]*font-size="8"[^>]*>([^<]*)</g) ?? []
}

const demo = new TextDecoder().decode(demoScore())

// ../shared/trade/renotation-rules.md N5 (proposed there): who covers whom, the source, key and "sounds", octaves moved.
describe('the heading of a cover part', () => {
  it('says for what it stands, from where, what it sounds and what was moved', async () => {
    const [heading = ''] = await headingOf(demo, {part: 'P9', place: 26})
    expect(heading.slice(heading.indexOf('>') + 1, -1).split('\n')).toEqual([
      'À défaut de Contrebasse en si bémol\u00a0: Saxhorn baryton (Contrebasse si♭ (clé de fa))',
      'Source\u00a0: Les Passeurs du Vernoul, Pas redoublé, Contrebasse si♭ (clé de fa), Harmonie municipale de Valmontel, an invented band',
      '1 ♭, 2 ♭; sonne une neuvième majeure plus bas',
      'mesures 1–24 8va plus haut',
    ])
  })

  it('says so when nothing was moved, in the language of the players', async () => {
    const roster = 'language: de\nplayers:\n  - name: Otto Quendel\n    instrument: tuba\n'
    const [heading = ''] = await headingOf(demo, {part: 'P9', roster})
    expect(heading).toContain('Ersatz für ')
    expect(heading).toContain('3 ♭, 4 ♭; klingt wie notiert\nkeine Oktave versetzt')
  })

  it('stands at the margin of the page, or at its foot where something stands there', async () => {
    const layout =
      '<page-layout><page-height>1500</page-height><page-width>1000</page-width><page-margins type="both"><left-margin>70</left-margin><right-margin>70</right-margin><top-margin>80</top-margin><bottom-margin>90</bottom-margin></page-margins></page-layout>'
    const scaling = '<scaling><millimeters>7</millimeters><tenths>40</tenths></scaling>'
    const paged = demo.replace(/<credit page="1">/, `<defaults>${scaling}${layout}</defaults>$&`)
    expect(paged).not.toBe(demo)
    const [free = ''] = await headingOf(paged, {part: 'P9'})
    expect(free).toContain('default-x="70" default-y="1420"')
    expect(free).toContain('valign="top"')
    const taken = paged.replace('<credit-words>Anselme', '<credit-words justify="left">Anselme')
    const [foot = ''] = await headingOf(taken, {part: 'P9'})
    expect(foot).toContain('default-y="90"')
    expect(foot).toContain('valign="bottom"')
  })
})

// Names of intervals: common practice, from memory; the same as in grammars of music in each language.
describe('what a part sounds, in words', () => {
  it.each([
    ['P1', 'sounds as written', 'klingt wie notiert'],
    ['-M2', 'sounds a major second lower', 'klingt eine große Sekunde tiefer'],
    ['-M9', 'sounds a major ninth lower', 'klingt eine große None tiefer'],
    ['-P8', 'sounds an octave lower', 'klingt eine Oktave tiefer'],
    ['m3', 'sounds a minor third higher', 'klingt eine kleine Terz höher'],
    ['P15', 'sounds two octaves higher', 'klingt zwei Oktaven höher'],
    ['-P5', 'sounds a perfect fifth lower', 'klingt eine reine Quinte tiefer'],
    ['A4', 'sounds an augmented fourth higher', 'klingt eine übermäßige Quarte höher'],
    ['-d2', 'sounds a diminished second lower', 'klingt eine verminderte Sekunde tiefer'],
    ['-A1', 'sounds an augmented unison lower', 'klingt eine übermäßige Prime tiefer'],
    [
      '-M16',
      'sounds two octaves and a major second lower',
      'klingt zwei Oktaven und eine große Sekunde tiefer',
    ],
  ])('%s', (formula, en, de) => {
    const interval = parseInterval(formula)
    if (!interval) throw new Error(formula)
    expect(soundsIn(interval, 'en')).toBe(en)
    expect(soundsIn(interval, 'de')).toBe(de)
    for (const language of LANGUAGES) expect(soundsIn(interval, language)).not.toMatch(/[%#*]/)
  })

  it.each([
    ['fr', 'sonne une neuvième majeure plus bas', 'une quinte juste', 'une octave plus haut'],
    ['it', 'suona una nona maggiore sotto', 'una quinta giusta', 'un’ottava sopra'],
    ['es', 'suena una novena mayor más grave', 'una quinta justa', 'una octava más agudo'],
    ['nl', 'klinkt een grote none lager', 'een reine kwint', 'een octaaf hoger'],
  ] as const)('in the words of %s', (language, ninth, fifth, octave) => {
    expect(soundsIn({diatonic: -8, chromatic: -14}, language)).toBe(ninth)
    expect(soundsIn({diatonic: -4, chromatic: -7}, language)).toContain(fifth)
    expect(soundsIn({diatonic: 7, chromatic: 12}, language)).toContain(octave)
  })

  it('as a formula where no name is known', () => {
    expect(soundsIn({diatonic: 3, chromatic: 7}, 'en')).toBe('sounds +AA4 higher')
  })
})

const spot = (measure: number) => ({measure: measure - 1, number: String(measure), onset: '0'})

const section = (fifths: number | undefined, interval: Interval, untouched = false): Section => ({
  measure: 0,
  onset: 0,
  staff: 1,
  source: FIRST_STATE,
  clef: FIRST_STATE.clef,
  ...(fifths !== undefined && {key: {fifths}}),
  transposition: {interval},
  untouched,
})

const moved = (from: number, to: number, semitones: number): Change => ({
  kind: 'moved',
  part: 'P1',
  from: spot(from),
  to: spot(to),
  semitones,
  reason: '',
})

describe('the lines of a heading', () => {
  const [cover, missing] = ['tuba', 'bassoon'].map((id) => instrumentById(id))
  const SECOND = {diatonic: -1, chromatic: -2}
  const lines = (
    language: Language,
    sections: readonly Section[],
    changes: readonly Change[] = [],
    original = 'Fagotto I',
  ): string[] => {
    if (!cover || !missing) throw new Error('no such instruments')
    const plan = {staves: [sections]} as unknown as PartPlan
    return coverHeading({cover, missing, original, title: 'Marcia', plan, changes, language})
  }

  // ../shared/trade/renotation-rules.md N4, the column "in place of", and N5.
  it.each([
    ['en', 'Bassoon cover: Tuba (Fagotto I)', 'Source: Marcia, Fagotto I'],
    ['fr', 'À défaut de Basson\u00a0: Tuba (Fagotto I)', 'Source\u00a0: Marcia, Fagotto I'],
    ['de', 'Ersatz für Fagott: Tuba (Fagotto I)', 'Quelle: Marcia, Fagotto I'],
    ['it', 'In sostituzione di Fagotto: Tuba (Fagotto I)', 'Fonte: Marcia, Fagotto I'],
    ['es', 'En sustitución de Fagot: Tuba (Fagotto I)', 'Fuente: Marcia, Fagotto I'],
    ['nl', 'Ter vervanging van Fagot: Tuba (Fagotto I)', 'Bron: Marcia, Fagotto I'],
  ] as const)('say who covers whom, and from where, in %s', (language, first, second) => {
    const [one, two, three = '', four = ''] = lines(language, [section(0, UNISON)])
    expect([one, two]).toEqual([first, second])
    for (const line of [three, four]) expect(line).not.toMatch(/undefined|%|^;/)
  })

  it('have no empty brackets where the part had no name', () => {
    expect(lines('en', [section(0, UNISON)], [], '').slice(0, 2)).toEqual([
      'Bassoon cover: Tuba',
      'Source: Marcia',
    ])
  })

  it('name every key and every transposition once', () => {
    const sections = [section(2, SECOND), section(-1, SECOND), section(2, UNISON)]
    expect(lines('en', sections)[2]).toBe(
      '2 ♯, 1 ♭; sounds a major second lower; sounds as written',
    )
    expect(lines('en', [section(undefined, UNISON)])[2]).toBe(
      'no sharps or flats; sounds as written',
    )
    expect(lines('en', [section(3, SECOND, true), section(1, UNISON)])[2]).toBe(
      '1 ♯; sounds as written',
    )
  })

  it('leave off where there are too many of them', () => {
    const sections = [1, 2, 3, 4, 5].map((fifths) => section(fifths, UNISON))
    expect(lines('en', sections)[2]).toBe('1 ♯, 2 ♯, 3 ♯, 4 ♯ …; sounds as written')
    const changes = [1, 3, 5, 7, 9].map((measure) => moved(measure, measure + 1, 12))
    expect(lines('en', [section(0, UNISON)], changes)[3]).toBe(
      'measures 1–2 8va higher; measures 3–4 8va higher; measures 5–6 8va higher; measures 7–8 8va higher …',
    )
    expect(lines('en', [section(0, UNISON)], changes.slice(1))[3]).not.toContain('…')
  })

  it('name the octaves that were moved, and no other change', () => {
    const changes: Change[] = [
      moved(4, 4, -12),
      moved(8, 9, 24),
      {kind: 'silenced', part: 'P1', from: spot(1), to: spot(2), reason: ''},
    ]
    expect(lines('de', [section(0, UNISON)], changes)[3]).toBe(
      'Takt 4 8va tiefer; Takte 8–9 2×8va höher',
    )
    expect(lines('nl', [section(0, UNISON)], changes.slice(2))[3]).toBe('geen octaven verplaatst')
  })

  it('stand in the file with their markup escaped', async () => {
    const odd = demo.replace(/<work-title>[^<]*/, '<work-title>Hay &amp; Straw &lt;2&gt;')
    expect(odd).not.toBe(demo)
    const [heading = ''] = await headingOf(odd, {part: 'P9'})
    expect(heading).toContain('Hay &amp; Straw &lt;2')
  })
})
