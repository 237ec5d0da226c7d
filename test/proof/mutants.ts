/** A changed score, and the kind of change that was made. */
export interface Mutant {
  readonly kind: string
  readonly text: string
}

/** A change at one place: [start, end) of the text becomes `text`. */
interface Change {
  readonly start: number
  readonly end: number
  readonly text: string
}

interface Note {
  readonly start: number
  readonly end: number
  readonly xml: string
  readonly part: number
  /** True when the element before it, passing over nothing that moves time, is a note. */
  readonly follows: boolean
}

type Operator = readonly [kind: string, places: (score: Scanned) => readonly (readonly Change[])[]]

/** A score cut by regular expressions: independent of any reader of ours. */
interface Scanned {
  readonly text: string
  readonly notes: readonly Note[]
}

/**
 * Every mutant of the score that must sound otherwise, by construction. Cues are left alone: they are silent.
 */
export function alteringMutants(text: string): readonly Mutant[] {
  return mutantsOf(text, ALTERING)
}

/** Every mutant that sounds the same, though it looks otherwise. */
export function silentMutants(text: string): readonly Mutant[] {
  return mutantsOf(text, SILENT)
}

/** `count` of the mutants, the same for the same seed, evenly over the kinds. */
export function choose(mutants: readonly Mutant[], count: number, seed: number): readonly Mutant[] {
  let state = seed >>> 0 || 1
  const random = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
  const kinds = new Map<string, Mutant[]>()
  for (const mutant of mutants) kinds.set(mutant.kind, [...(kinds.get(mutant.kind) ?? []), mutant])
  const chosen: Mutant[] = []
  while (chosen.length < count && kinds.size > 0) {
    for (const [kind, left] of kinds) {
      const [one] = left.splice(Math.floor(random() * left.length), 1)
      if (one && chosen.length < count) chosen.push(one)
      if (left.length === 0) kinds.delete(kind)
    }
  }
  return chosen
}

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
  ['a backup too far', (score) => backups(score, (n) => n * 2)],
  ['a backup too short', (score) => backups(score, (n) => n / 2)],
]

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
  ['a lyric dropped', (score) => onText(score, /<lyric[^>]*>.*?<\/lyric>/gs, () => '')],
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
    (score) => onNotes(score, isTimed, (xml) => xml.replace(/^<note/, '<note print-object="no"')),
  ],
]

function mutantsOf(text: string, operators: readonly Operator[]): readonly Mutant[] {
  const score = scan(text)
  return operators.flatMap(([kind, places]) =>
    places(score).flatMap((changes) => {
      const mutant = applied(text, changes)
      return mutant === text ? [] : [{kind, text: mutant}]
    }),
  )
}

function scan(text: string): Scanned {
  const notes: Note[] = []
  let part = 0
  let follows = false
  for (const match of text.matchAll(
    /<note[\s>].*?<\/note>|<part\s|<(measure|backup|forward|attributes)\b/gs,
  )) {
    const [xml] = match
    if (xml.startsWith('<part')) part++
    if (xml.startsWith('<note'))
      notes.push({start: match.index, end: match.index + xml.length, xml, part, follows})
    follows = xml.startsWith('<note')
  }
  return {text, notes}
}

function applied(text: string, changes: readonly Change[]): string {
  return changes
    .toSorted((a, b) => b.start - a.start)
    .reduce(
      (result, {start, end, text: put}) => result.slice(0, start) + put + result.slice(end),
      text,
    )
}

function change({start, end}: Note, text: string): readonly Change[] {
  return [{start, end, text}]
}

function onNotes(score: Scanned, fits: (note: Note) => boolean, edit: (xml: string) => string) {
  return score.notes.filter(fits).map((note) => change(note, edit(note.xml)))
}

function onText(score: Scanned, pattern: RegExp, edit: (...groups: string[]) => string) {
  return [...score.text.matchAll(pattern)].map((match) => [
    {start: match.index, end: match.index + match[0].length, text: edit(...match)},
  ])
}

function whole({text}: Scanned, pattern: RegExp, put: string): readonly Change[] {
  return [{start: 0, end: text.length, text: text.replace(pattern, put)}]
}

const isGrace = ({xml}: Note) => /<grace[\s/>]/.test(xml)
const isChord = ({xml}: Note) => /<chord\s*\/?>/.test(xml)
const isPlayed = ({xml}: Note) => xml.includes('<pitch>') && !/<cue[\s/>]/.test(xml)
const isTimed = (note: Note) =>
  isPlayed(note) && !isGrace(note) && Number(valueOf(note.xml, 'duration')) > 0

function valueOf(xml: string, name: string): string | undefined {
  return new RegExp(`<${name}>\\s*([^<]*?)\\s*</${name}>`).exec(xml)?.[1]
}

function swap(xml: string, name: 'step', edit: (value: string) => string): string
function swap(xml: string, name: 'octave' | 'duration', edit: (value: number) => number): string
function swap(xml: string, name: string, edit: (value: never) => string | number): string {
  const value = valueOf(xml, name)
  const given = (name === 'step' ? value : Number(value)) as never
  return xml.replace(new RegExp(`<${name}>[^<]*<`), `<${name}>${edit(given)}<`)
}

/** C becomes D and so on, the sign and the octave stay: another pitch in every case, B to C being eleven semitones down. */
function nextStep(step: string): string {
  return 'CDEFGABC'['CDEFGAB'.indexOf(step) + 1] ?? 'C'
}

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

/** Two single notes of one pitch, one right after the other in the only voice of a measure, that are tied or not. */
function tiedPairs({text, notes}: Scanned, tied: boolean): readonly (readonly [Note, Note])[] {
  return notes.flatMap((first, index) => {
    const second = notes[index + 1]
    if (!second?.follows || [first, second, notes[index + 2]].some((note) => note && isChord(note)))
      return []
    if (!isTimed(first) || !isTimed(second) || pitchOf(first) !== pitchOf(second)) return []
    if (valueOf(first.xml, 'voice') !== valueOf(second.xml, 'voice')) return []
    const start = text.lastIndexOf('<measure', first.start)
    if (text.slice(start, text.indexOf('</measure>', start)).includes('<backup')) return []
    // Where a part has no <tie> of its own, its drawn ties count: there a first <tie> would change more than one note.
    if (!tied && [first, second].some(({xml}) => xml.includes('<tie'))) return []
    if (!tied && text.includes('<tied') && !everyPartTies(text)) return []
    if (tied && !(tieOf(first, 'start') && tieOf(second, 'stop'))) return []
    return [[first, second] as const]
  })
}

function tieOf({xml}: Note, type: string): boolean {
  return new RegExp(`<tie\\s+type\\s*=\\s*["']${type}["']`).test(xml)
}

function everyPartTies(text: string): boolean {
  return text
    .split(/<part\s/)
    .slice(1)
    .every((part) => /<tie\s/.test(part))
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

function newTranspositions(score: Scanned, element: string): readonly (readonly Change[])[] {
  if (score.text.includes('<concert-score')) return []
  return partsOf(score).flatMap(({start, end}) => {
    const part = score.text.slice(start, end)
    const at = part.indexOf('</attributes>')
    if (part.includes('<transpose') || at < 0 || at > part.indexOf('<note')) return []
    return [[{start: start + at, end: start + at, text: element}]]
  })
}

/** The parts with a played note. */
function partsOf({
  text,
  notes,
}: Scanned): readonly {readonly start: number; readonly end: number}[] {
  return [...text.matchAll(/<part\s.*?<\/part>/gs)]
    .map((match) => ({start: match.index, end: match.index + match[0].length}))
    .filter(({start, end}) =>
      notes.some((note) => isTimed(note) && note.start > start && note.end < end),
    )
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

/** Backups that a played note follows. */
function backups({text, notes}: Scanned, edit: (duration: number) => number) {
  return [...text.matchAll(/<backup>\s*<duration>\s*(\d+)\s*<\/duration>\s*<\/backup>/g)].flatMap(
    (match) => {
      const end = match.index + match[0].length
      const next = notes.find(({start}) => start > end)
      const duration = Number(match[1])
      if (
        !next ||
        !isPlayed(next) ||
        duration === 0 ||
        text.slice(end, next.start).includes('</measure>')
      )
        return []
      return [
        [
          {
            start: match.index,
            end,
            text: `<backup><duration>${edit(duration)}</duration></backup>`,
          },
        ],
      ]
    },
  )
}

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
