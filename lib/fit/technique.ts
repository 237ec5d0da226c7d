import type {Family, Instrument} from '../instruments/instrument.ts'
import type {Line} from './line.ts'

const STRINGS: readonly Family[] = ['strings', 'plucked']
const KEYS: readonly Family[] = ['keyboards', 'percussion']

/** What only strings do: element names of MusicXML 4.0. */
const STRING_MARKS = [
  'string',
  'fret',
  'up-bow',
  'down-bow',
  'snap-pizzicato',
  'open-string',
  'harmonic',
  'staff-tuning',
  'capo',
] as const

/** What a line asks for that the instrument does not have, as clauses (renotation-rules section 8). */
export function lacksOf(line: Line, instrument: Instrument): string[] {
  const {family} = instrument
  const {elements, words} = line.facts
  const count = (...names: readonly string[]): number =>
    names.reduce((sum, name) => sum + (elements.get(name) ?? 0), 0)
  const lacks: string[] = []
  const tell = (number: number, one: string, many: string): void => {
    if (number > 0) lacks.push(`${number} ${number === 1 ? one : many}`)
  }
  const isString = STRINGS.includes(family)
  const playsChords = isString || KEYS.includes(family)
  if (!playsChords) {
    const chords = line.attacks.filter(({tones}) => tones.filter(({grace}) => !grace).length > 1)
    tell(
      chords.length,
      'chord, of which one player takes one note',
      'chords, of which one player takes one note each',
    )
  }
  if (!isString) {
    const said = words.filter(({text}) =>
      /\b(pizz|arco|col legno|sul (pont|tasto))/i.test(text),
    ).length
    tell(count(...STRING_MARKS) + said, 'mark for strings', 'marks for strings')
  }
  if (!isString && family !== 'trombones')
    tell(count('glissando', 'slide'), 'glissando', 'glissandi')
  if (!playsChords) tell(count('tremolo'), 'tremolo', 'tremolos')
  if (!KEYS.includes(family)) tell(count('pedal'), 'pedal mark', 'pedal marks')
  return lacks
}
