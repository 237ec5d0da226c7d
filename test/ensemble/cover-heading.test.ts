import {describe, expect, it} from 'vitest'
import {writeCoverPart} from '../../lib/index.ts'
import type {CoverPartOptions} from '../../lib/index.ts'
import {soundsIn} from '../../lib/ensemble/interval-words.ts'
import {LANGUAGES} from '../../lib/instruments/instrument.ts'
import {parseInterval} from '../../lib/pitch/interval.ts'
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
})
