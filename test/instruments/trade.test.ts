import {existsSync, readFileSync} from 'node:fs'
import {describe, expect, test} from 'vitest'
import {instruments, LANGUAGES} from '../../lib/instruments/instrument.ts'
import {attestedNames} from '../../lib/instruments/attested.ts'
import {notationRows} from '../../lib/instruments/notation-row.ts'
import {listSources} from '../../lib/instruments/source.ts'
import {formatInterval} from '../../lib/pitch/interval.ts'
import {formatPitch} from '../../lib/pitch/pitch.ts'
import {formatClef} from '../../lib/staff/clef.ts'
import type {Range} from '../../lib/staff/range.ts'
import {readCsv} from './csv.ts'

const shared = new URL('../../../shared/', import.meta.url)
const hasTables = existsSync(new URL('trade/', shared))
const hasSounds = existsSync(new URL('musicxml-4.0/sounds.xml', shared))

function read(path: string): string {
  return readFileSync(new URL(path, shared), 'utf8')
}

function ends(range: Range | undefined): readonly string[] {
  return range ? [formatPitch(range.low), formatPitch(range.high)] : ['', '']
}

const orSkipped = (has: boolean, path: string) => (has ? '' : ` (SKIPPED: no ${path})`)

describe.skipIf(!hasTables)(
  `the tables of the trade${orSkipped(hasTables, '../shared/trade')}`,
  () => {
    test('the catalogue says of each instrument what the table says', () => {
      const rows = readCsv(read('trade/instruments.csv'))
      expect(rows).toHaveLength(179)
      expect(
        instruments.map((instrument) => [
          instrument.id,
          instrument.family,
          instrument.builtIn ?? '',
          formatInterval(instrument.transposition),
          formatClef(instrument.clef),
          instrument.clefs.map(formatClef).join('+'),
          ...ends(instrument.ranges.pro),
          ...ends(instrument.ranges.tutti),
          ...ends(instrument.ranges.student),
          instrument.keySignature,
          instrument.sound,
          String(instrument.midiProgram ?? ''),
          instrument.modernNotation ?? '',
          instrument.cover.join('>'),
          instrument.remarks.clefChanges ?? '',
          instrument.remarks.weakRegisters ?? '',
          instrument.remarks.era ?? '',
          instrument.remarks.cover ?? '',
          instrument.remarks.general ?? '',
          instrument.sources.transposition ?? '',
          instrument.sources.range ?? '',
          instrument.sources.student ?? '',
          instrument.sources.cover ?? '',
        ]),
      ).toEqual(
        rows.map((row) =>
          (
            'id family built_in interval clef clefs range_pro_low range_pro_high range_tutti_low range_tutti_high ' +
            'range_student_low range_student_high key_signature musicxml_sound gm_program modern_convention cover ' +
            'clef_changes weak_registers era_region cover_note remark source_transposition source_range ' +
            'source_student source_cover'
          )
            .split(' ')
            .map((column) => row[column]),
        ),
      )
    })

    test('the names are those of the table, in six languages, with their sources', () => {
      const rows = readCsv(read('trade/instruments.csv'))
      for (const [index, row] of rows.entries()) {
        for (const language of LANGUAGES) {
          const label = instruments[index]?.labels[language]
          const {name, plural, abbreviation} = label?.sources ?? {}
          expect(
            [
              label?.name,
              label?.plural,
              label?.abbreviation,
              `name=${name} plural=${plural} abbr=${abbreviation}`,
            ],
            `${row.id} ${language}`,
          ).toEqual([
            row[`name_${language}`],
            row[`plural_${language}`],
            row[`abbr_${language}`],
            row[`source_names_${language}`],
          ])
        }
      }
    })

    test('the attested names are those of the table, and the variants are among them', () => {
      const rows = readCsv(read('trade/names.csv')).map(({id, lang, form, kind, source}) =>
        [id, lang, form, kind === 'abbr' ? 'abbreviation' : kind, source].join(' · '),
      )
      const own = instruments.flatMap(({id}) =>
        attestedNames(id).map(({language, form, kind, source}) =>
          [id, language, form, kind, source].join(' · '),
        ),
      )
      expect(own.toSorted()).toEqual(rows.toSorted())
      for (const row of readCsv(read('trade/instruments.csv'))) {
        const names = attestedNames(row.id ?? '')
        for (const language of LANGUAGES) {
          const forms = names.filter((name) => name.language === language).map(({form}) => form)
          const variants = (row[`variants_${language}`] ?? '').split('|').filter(Boolean)
          expect(forms, `${row.id} ${language}`).toEqual(expect.arrayContaining(variants))
        }
      }
    })

    test('the rows of notation are those of the table', () => {
      const rows = readCsv(read('trade/conventions.csv'))
      expect(rows).toHaveLength(465)
      expect(
        notationRows().map((row) => [
          row.id,
          row.group,
          row.instruments.join(';'),
          formatClef(row.clef),
          row.octaveMark ?? '',
          String(row.interval.diatonic),
          String(row.interval.chromatic),
          formatInterval(row.interval),
          row.keySignature,
          row.confidence,
          row.examples.join(' '),
          row.context ?? '',
          row.source,
          row.remark ?? '',
        ]),
      ).toEqual(
        rows.map((row) =>
          (
            'id group instruments clef octave_mark total_steps total_semitones interval key_signature confidence ' +
            'examples context source remark'
          )
            .split(' ')
            .map((column) => row[column]),
        ),
      )
    })

    test('the sources are those of the table', () => {
      const lines = read('trade/sources.md')
        .split('\n')
        .filter((line) => line.startsWith('| ') && !line.startsWith('| code'))
      expect(
        listSources().map(({code, status, text}) => `| ${code} | ${status} | ${text} |`),
      ).toEqual(lines)
    })

    test('the worked examples are those of the table', () => {
      expect(readFileSync(new URL('worked-examples.csv', import.meta.url), 'utf8')).toBe(
        read('trade/worked-examples.csv'),
      )
    })
  },
)

describe.skipIf(!hasSounds)(
  `MusicXML 4.0, sounds.xml${orSkipped(hasSounds, '../shared/musicxml-4.0')}`,
  () => {
    test('has the sound of every instrument', () => {
      const standard = [...read('musicxml-4.0/sounds.xml').matchAll(/<sound id="([^"]+)"/g)].map(
        ([, id]) => id,
      )
      expect(standard.length).toBeGreaterThan(500)
      const unknown = instruments.filter(({sound}) => !standard.includes(sound))
      expect(unknown.map(({id, sound}) => `${id}: ${sound}`)).toEqual([])
    })
  },
)
