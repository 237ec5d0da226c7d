import {
  mutantsOf,
  onNotes,
  onText,
  whole,
  valueOf,
  swap,
  nextStep,
  everyPartTies,
  newTranspositions,
  isChord,
  isPlayed,
  isTimed,
} from './mutant.ts'
import type {Mutant, Change, Note, Operator, Scanned} from './mutant.ts'

const SILENT: readonly Operator[] = [
  [
    'a stem turned',
    (score) =>
      onText(score, />(up|down)<\/stem>/g, (_, way) => `>${way === 'up' ? 'down' : 'up'}</stem>`),
  ],
  ['a stem dropped', (score) => onText(score, /<stem[^>]*>[^<]*<\/stem>/g, () => '')],
  ['a beam dropped', (score) => onText(score, /<beam [^>]*>[^<]*<\/beam>/g, () => '')],
  [
    'a printed accidental dropped',
    (score) => onText(score, /<accidental[^>]*>[^<]*<\/accidental>/g, () => ''),
  ],
  ['a type dropped', (score) => onText(score, /<type>[^<]*<\/type>/g, () => '')],
  ['a lyric dropped', (score) => onText(score, /<lyric[\s>].*?<\/lyric>/gs, () => '')],
  ['a direction dropped', (score) => onText(score, /<direction[ >].*?<\/direction>/gs, () => '')],
  ['a place on the page dropped', (score) => onText(score, / default-[xy]="[^"]*"/g, () => '')],
  [
    'white space',
    (score) =>
      onText(score, /<(note|attributes|pitch|step|octave|duration)\b/g, (all) => `\r\n\t ${all}`),
  ],
  [
    'a comment',
    (score) =>
      onText(
        score,
        /<(note|attributes|pitch|step|octave|duration)\b/g,
        (all) => `<!-- <step>A</step> -->${all}`,
      ),
  ],
  [
    'a processing instruction',
    (score) =>
      onText(score, /<(note|attributes|pitch)\b/g, (all) => `<?mark <step>A</step>?>${all}`),
  ],
  [
    'an octave clef',
    (score) =>
      onText(score, /<\/clef>/g, () => '<clef-octave-change>-1</clef-octave-change></clef>').filter(
        () => !score.text.includes('<clef-octave-change'),
      ),
  ],
  [
    'another key',
    (score) =>
      onText(
        score,
        /<fifths>(-?\d+)<\/fifths>/g,
        (_, n) => `<fifths>${Number(n) > 0 ? -3 : 2}</fifths>`,
      ),
  ],
  [
    'another time signature',
    (score) => onText(score, /<beats>[^<]*<\/beats>/g, () => '<beats>7</beats>'),
  ],
  ['other divisions throughout', rescaled],
  ['other voice numbers', (score) => [whole(score, /(<voice>[^<]*)/g, '$17')]],
  [
    'another name',
    (score) =>
      onText(score, /<part-name([^>]*)>[^<]*</g, (_, rest) => `<part-name${rest}>Ophicleide<`),
  ],
  [
    'other part ids',
    (score) =>
      [whole(score, /(<(?:score-)?part\s[^>]*?id=["'])/g, '$1Q')].filter(() =>
        /<part-name[^>]*>[^<]/.test(score.text),
      ),
  ],
  [
    'other steps of transposition',
    (score) =>
      onText(
        score,
        /<diatonic>(-?\d+)<\/diatonic>/g,
        (_, n) => `<diatonic>${Number(n) + 1}</diatonic>`,
      ),
  ],
  [
    'a transposition by nothing',
    (score) =>
      newTranspositions(
        score,
        '<transpose><diatonic>0</diatonic><chromatic>0</chromatic></transpose>',
      ),
  ],
  ['another spelling', (score) => onNotes(score, isPlayed, respell)],
  [
    'there and back in time',
    (score) => onNotes(score, (note) => isTimed(note) && !isChord(note), thereAndBack),
  ],
  [
    'a note cut in tied halves',
    (score) => onNotes(score, (note) => isCuttable(score, note), halves),
  ],
  [
    'a sounding note not printed',
    (score) =>
      onNotes(
        score,
        (note) => isTimed(note) && !/^<note[^>]*print-object/.test(note.xml),
        (xml) => xml.replace(/^<note/, '<note print-object="no"'),
      ),
  ],
]

/** Every mutant that sounds the same, though it looks otherwise. */
export function silentMutants(text: string): readonly Mutant[] {
  return mutantsOf(text, SILENT)
}

/** The names of those that do not. */
export const SILENT_KINDS: readonly string[] = SILENT.map(([kind]) => kind)

function rescaled({text}: Scanned): readonly (readonly Change[])[] {
  const everyPartSays = text
    .split(/<part\s/)
    .slice(1)
    .every((part) => part.includes('<divisions>'))
  if (!everyPartSays) return []
  return [3, 0.5].map((times) => [
    {
      start: 0,
      end: text.length,
      text: text.replace(
        /<(divisions|duration)>\s*([\d.]+)\s*</g,
        (_, name: string, value: string) => `<${name}>${Number(value) * times}<`,
      ),
    },
  ])
}

/** The same key of the piano by the next letter above: C as Dbb, E as Fb, B as Cb an octave higher. */
function respell(xml: string): string {
  const step = valueOf(xml, 'step') ?? ''
  const value = Number(valueOf(xml, 'alter') ?? 0) - (step === 'E' || step === 'B' ? 1 : 2)
  const bare = xml.replace(/<alter>[^<]*<\/alter>/, '')
  const higher = step === 'B' ? swap(bare, 'octave', (octave) => octave + 1) : bare
  return swap(higher, 'step', nextStep).replace('</step>', `</step><alter>${value}</alter>`)
}

function thereAndBack(xml: string): string {
  const time = `<duration>${valueOf(xml, 'duration')}</duration>`
  return `<forward>${time}</forward><backup>${time}</backup>${xml}`
}

/** A single note with no tie and no chord, in a part whose ties are told by `<tie>` or that has none at all. */
function isCuttable({text, notes}: Scanned, note: Note): boolean {
  const next = notes[notes.indexOf(note) + 1]
  return (
    isTimed(note) &&
    !isChord(note) &&
    !(next && isChord(next)) &&
    !note.xml.includes('<tie') &&
    (!text.includes('<tied') || everyPartTies(text))
  )
}

function halves(xml: string): string {
  const half = swap(xml, 'duration', (duration) => duration / 2)
  const tied = (type: string) => half.replace('</duration>', `</duration><tie type="${type}"/>`)
  return tied('start') + tied('stop')
}
