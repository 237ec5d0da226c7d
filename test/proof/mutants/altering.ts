import {
  mutantsOf,
  change,
  onNotes,
  isGrace,
  valueOf,
  swap,
  nextStep,
  everyPartTies,
  newTranspositions,
  partsOf,
  isChord,
  isPlayed,
  isTimed,
} from './mutant.ts'
import type {Mutant, Change, Note, Operator, Scanned} from './mutant.ts'

const ALTERING: readonly Operator[] = [
  ['another step', (score) => onNotes(score, isPlayed, (xml) => swap(xml, 'step', nextStep))],
  ['an octave up', (score) => onNotes(score, isPlayed, (xml) => swap(xml, 'octave', (n) => n + 1))],
  [
    'an octave down',
    (score) => onNotes(score, isPlayed, (xml) => swap(xml, 'octave', (n) => n - 1)),
  ],
  ['a semitone up', (score) => onNotes(score, isPlayed, (xml) => alter(xml, 1))],
  ['a semitone down', (score) => onNotes(score, isPlayed, (xml) => alter(xml, -1))],
  ['a quarter tone up', (score) => onNotes(score, isPlayed, (xml) => alter(xml, 0.5))],
  ['a third of a semitone up', (score) => onNotes(score, isPlayed, (xml) => alter(xml, 0.33))],
  [
    'a longer note',
    (score) => onNotes(score, isTimed, (xml) => swap(xml, 'duration', (n) => n * 2 + 1)),
  ],
  [
    'a shorter note',
    (score) => onNotes(score, isTimed, (xml) => swap(xml, 'duration', (n) => n / 2)),
  ],
  [
    'a rest for a note',
    (score) => onNotes(score, isTimed, (xml) => xml.replace(/<pitch>.*?<\/pitch>/s, '<rest/>')),
  ],
  [
    'a cue for a note',
    (score) => onNotes(score, isTimed, (xml) => xml.replace(/^<note[^>]*>/, '$&<cue/>')),
  ],
  [
    'a grace note dropped',
    (score) =>
      onNotes(
        score,
        (note) => isPlayed(note) && isGrace(note),
        () => '',
      ),
  ],
  ['a note added', (score) => onNotes(score, isTimed, (xml) => xml + added(xml))],
  [
    'a tie broken',
    (score) =>
      tiedPairs(score, true).map(([first]) =>
        change(first, first.xml.replace(/<tie\s+type\s*=\s*(["'])start\1\s*(\/>|><\/tie>)/, '')),
      ),
  ],
  [
    'a tie added',
    (score) =>
      tiedPairs(score, false).map((pair) =>
        pair.flatMap((note, index) =>
          change(
            note,
            note.xml.replace(
              /<\/duration>/,
              `</duration><tie type="${index ? 'stop' : 'start'}"/>`,
            ),
          ),
        ),
      ),
  ],
  ['another transposition', (score) => transpositions(score)],
  [
    'a transposition from nowhere',
    (score) =>
      newTranspositions(
        score,
        '<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose>',
      ),
  ],
  [
    'an octave of transposition from nowhere',
    (score) =>
      newTranspositions(
        score,
        '<transpose><diatonic>0</diatonic><chromatic>0</chromatic><octave-change>-1</octave-change></transpose>',
      ),
  ],
  ['other divisions', (score) => divisions(score)],
  ['a backup too far', (score) => backups(score, 1)],
  ['a backup too short', (score) => backups(score, -1)],
]

/**
 * Every mutant of the score that must sound otherwise, by construction. Cues are left alone: they are silent.
 */
export function alteringMutants(text: string): readonly Mutant[] {
  return mutantsOf(text, ALTERING)
}

/** The names of the kinds of change that alter sound. */
export const ALTERING_KINDS: readonly string[] = ALTERING.map(([kind]) => kind)

function alter(xml: string, by: number): string {
  const value = valueOf(xml, 'alter')
  if (value !== undefined)
    return xml.replace(/<alter>[^<]*</, `<alter>${(Number(value) + by).toFixed(4)}<`)
  return xml.replace(/<\/step>/, `</step><alter>${by}</alter>`)
}

function added(xml: string): string {
  const octave = Number(valueOf(xml, 'octave'))
  const voice = valueOf(xml, 'voice')
  const staff = valueOf(xml, 'staff')
  return `<note><chord/><pitch><step>${valueOf(xml, 'step')}</step><octave>${octave + 2}</octave></pitch><duration>${valueOf(xml, 'duration')}</duration>${
    voice === undefined ? '' : `<voice>${voice}</voice>`
  }${staff === undefined ? '' : `<staff>${staff}</staff>`}</note>`
}

/** Two single notes of one pitch, one right after the other in measures of one voice, that are tied or not. */
function tiedPairs({text, notes}: Scanned, tied: boolean): readonly (readonly [Note, Note])[] {
  // Where a part has no <tie> of its own, its drawn ties count: there a first <tie> would change more than one note.
  if (!tied && text.includes('<tied') && !everyPartTies(text)) return []
  return notes.flatMap((first, index) => {
    const second = notes[index + 1]
    const third = notes[index + 2]
    if (!second || isChord(first) || isChord(second) || (third && isChord(third))) return []
    if (!isTimed(first) || !isTimed(second) || pitchOf(first) !== pitchOf(second)) return []
    if (valueOf(first.xml, 'voice') !== valueOf(second.xml, 'voice')) return []
    const between = text.slice(first.end, second.start)
    if (/<forward|<attributes|<\/part>/.test(between)) return []
    const start = text.lastIndexOf('<measure', first.start)
    if (text.slice(start, text.indexOf('</measure>', second.end)).includes('<backup')) return []
    if (tied && !(tieOf(first, 'start') && tieOf(second, 'stop'))) return []
    if (!tied && [first, second].some(({xml}) => xml.includes('<tie'))) return []
    return [[first, second] as const]
  })
}

function tieOf({xml}: Note, type: string): boolean {
  return new RegExp(`<tie\\s+type\\s*=\\s*["']${type}["']`).test(xml)
}

function pitchOf({xml}: Note): string {
  return ['step', 'alter', 'octave'].map((name) => valueOf(xml, name) ?? '0').join(' ')
}

/** Transpositions that stand before all notes of their part and are its only ones; not in scores at concert pitch. */
function transpositions(score: Scanned): readonly (readonly Change[])[] {
  if (score.text.includes('<concert-score')) return []
  return partsOf(score).flatMap(({start, end}) => {
    const part = score.text.slice(start, end)
    const found = [...part.matchAll(/<chromatic>\s*(-?\d+)\s*<\/chromatic>/g)]
    const [only] = found
    if (!only || found.length > 1 || only.index > part.indexOf('<note')) return []
    if (/<transpose number|<for-part/.test(part)) return []
    return [1, -1, 12, -12].map((by) => [
      {
        start: start + only.index,
        end: start + only.index + only[0].length,
        text: `<chromatic>${Number(only[1]) + by}</chromatic>`,
      },
    ])
  })
}

/** Divisions that the very next note, a played one, is measured by. */
function divisions({text, notes}: Scanned): readonly (readonly Change[])[] {
  return [...text.matchAll(/<divisions>\s*(\d+)\s*<\/divisions>/g)].flatMap((match) => {
    const next = notes.find(({start}) => start > match.index)
    if (!next || !isTimed(next) || text.slice(match.index, next.start).includes('</part>'))
      return []
    if (text.slice(match.index + 1, next.start).includes('<divisions>')) return []
    const end = match.index + match[0].length
    return [2, 3].map((times) => [
      {start: match.index, end, text: `<divisions>${Number(match[1]) * times}</divisions>`},
    ])
  })
}

/**
 * Backups that a played note follows, moved by `by` divisions, where that leads neither before the start of the measure nor
 * past where the backup began. Divisions do not change in the measure.
 */
function backups({text, notes}: Scanned, by: number): readonly (readonly Change[])[] {
  return [...text.matchAll(/<backup>\s*<duration>\s*(\d+)\s*<\/duration>\s*<\/backup>/g)].flatMap(
    (match) => {
      const end = match.index + match[0].length
      const next = notes.find(({start}) => start >= end)
      const now = timeUntil(text.slice(text.lastIndexOf('<measure', match.index), match.index))
      const duration = Number(match[1])
      if (!next || !isPlayed(next) || now === undefined || now < duration) return []
      if (/<\/measure>|<backup|<forward|<attributes/.test(text.slice(end, next.start))) return []
      if (duration + by <= 0 || duration + by > now) return []
      const put = `<backup><duration>${duration + by}</duration></backup>`
      return [[{start: match.index, end, text: put}]]
    },
  )
}

/** Where the time stands at the end of a measure's beginning, in divisions; undefined when that needs a better reader. */
function timeUntil(measure: string): number | undefined {
  let now = 0
  let changes = 0
  for (const [xml] of measure.matchAll(
    /<note[\s>].*?<\/note>|<(backup|forward)>.*?<\/\1>|<divisions>/gs,
  )) {
    if (xml === '<divisions>') changes++
    else if (xml.startsWith('<backup')) now -= Number(valueOf(xml, 'duration'))
    else if (!/<chord\s*\/?>/.test(xml)) now += Number(valueOf(xml, 'duration') ?? 0)
    if (now < 0) return undefined
  }
  return changes < 2 ? now : undefined
}
