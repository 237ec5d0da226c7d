import fc from 'fast-check'
import {scoreOf} from './parts.ts'

/**
 * Two parts of the same length with all that makes it hard to put the music of one into the other: long rests (some
 * of them one multiple rest), tuplets, chords, grace notes, several voices and staves, slurs and hairpins that lead on,
 * ties over barlines, changes of clef, key and transposition on the way, pickups, repeats, other divisions in each.
 */
export function anyPair(): fc.Arbitrary<string> {
  return fc
    .record({
      times: fc.array(fc.constantFrom('4/4', '3/4', '6/8'), {minLength: 1, maxLength: 2}),
      pickup: fc.boolean(),
      host: anyPart(),
      guest: anyPart(),
      count: fc.integer({min: 3, max: 6}),
    })
    .map(({times, pickup, host, guest, count}) => {
      const frame = {times, pickup, count}
      return scoreOf({'P1 Horn in F/Hn.': print(host, frame), 'P2 Flute/Fl.': print(guest, frame)})
    })
}

/** In twelfths of a quarter. */
const LENGTHS = [3, 6, 6, 12, 12, 18, 24, 36, 48] as const
const TYPES = new Map([
  [3, '<type>16th</type>'],
  [6, '<type>eighth</type>'],
  [12, '<type>quarter</type>'],
  [18, '<type>quarter</type><dot/>'],
  [24, '<type>half</type>'],
  [36, '<type>half</type><dot/>'],
  [48, '<type>whole</type>'],
])

interface Part {
  readonly divisions: number
  readonly transpose: string
  readonly staves: number
  /** Whether notes name their voice. */
  readonly named: boolean
  /** Measures in turn: silent, or with so many voices. */
  readonly shapes: readonly ('rest' | 'multiple' | 'one' | 'two' | 'empty')[]
  readonly tokens: readonly Token[]
  readonly extras: readonly (string | undefined)[]
}

interface Token {
  readonly length: number
  readonly kind: 'note' | 'note' | 'rest' | 'chord' | 'triplet' | 'forward'
  readonly steps: string
  readonly octave: number
  readonly alter: number
  readonly grace: boolean
  readonly slur: 'start' | 'stop' | undefined
  readonly tied: boolean
  readonly stem: string
  /** Not printed, or a cue in the source already. */
  readonly shown: 'yes' | 'no' | 'cue'
}

interface Frame {
  readonly times: readonly string[]
  readonly pickup: boolean
  readonly count: number
}

function anyPart(): fc.Arbitrary<Part> {
  const token = fc.record({
    length: fc.constantFrom(...LENGTHS),
    kind: fc.constantFrom('note', 'note', 'note', 'rest', 'rest', 'chord', 'triplet', 'forward'),
    steps: fc.constantFrom('CE', 'DF', 'EG', 'FA', 'GB', 'AC', 'BD'),
    octave: fc.integer({min: 3, max: 5}),
    alter: fc.constantFrom(0, 0, 0, 1, -1),
    grace: fc.integer({min: 0, max: 7}).map((each) => each === 0),
    slur: fc.constantFrom(undefined, undefined, 'start', 'stop'),
    tied: fc.integer({min: 0, max: 4}).map((each) => each === 0),
    stem: fc.constantFrom('', '<stem>up</stem>', '<stem>none</stem>'),
    shown: fc.constantFrom('yes', 'yes', 'yes', 'yes', 'yes', 'no', 'cue'),
  }) as fc.Arbitrary<Token>
  return fc.record({
    divisions: fc.constantFrom(12, 24, 12, 480),
    transpose: fc.constantFrom('', '', '-1 -2', '-4 -7', '-5 -9', '0 -12'),
    staves: fc.constantFrom(1, 1, 1, 2),
    named: fc.constantFrom(true, true, true, false),
    shapes: fc.array(
      fc.constantFrom('rest', 'rest', 'multiple', 'one', 'one', 'one', 'two', 'empty'),
      {
        minLength: 2,
        maxLength: 6,
      },
    ),
    tokens: fc.array(token, {minLength: 3, maxLength: 12}),
    extras: fc.array(fc.constantFrom(undefined, undefined, ...EXTRAS), {
      minLength: 1,
      maxLength: 5,
    }),
  })
}

const direction = (inside: string): string =>
  `<direction><direction-type>${inside}</direction-type></direction>`
const EXTRAS = [
  direction('<wedge type="crescendo"/>'),
  direction('<wedge type="stop"/>'),
  direction('<dynamics><ff/></dynamics>'),
  direction('<words>solo</words>'),
  '<direction><direction-type><dynamics><p/></dynamics></direction-type><offset>3</offset></direction>',
  '<direction><direction-type><words>Allegro</words></direction-type><sound tempo="120"/></direction>',
  '<attributes><clef><sign>F</sign><line>4</line></clef></attributes>',
  '<attributes><clef><sign>C</sign><line>4</line></clef></attributes>',
  '<attributes><key><fifths>-6</fifths></key></attributes>',
  '<attributes><key><fifths>6</fifths></key></attributes>',
  '<attributes><transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose></attributes>',
  direction('<octave-shift type="down" size="8"/>'),
  direction('<octave-shift type="stop" size="8"/>'),
  '<barline location="left"><repeat direction="forward"/></barline>',
  '<harmony><root><root-step>C</root-step></root><kind>major</kind></harmony>',
]

function print(part: Part, {times, pickup, count}: Frame): string[] {
  let turn = 0
  let extra = 0
  let tied: string | undefined
  /** Ties so far, and those that lead to a note. */
  let ties = 0
  const kept = new Set<number>()
  const scale = part.divisions / 12
  const next = (): Token => part.tokens[turn++ % part.tokens.length] as Token
  const staffOf = (voice: number): string =>
    part.staves > 1 ? `<staff>${Math.min(voice, part.staves)}</staff>` : ''

  const lasting = (units: number): string => `<duration>${units * scale}</duration>`

  function event(token: Token, length: number, voice: number): string {
    const said = (type: string, rest: string): string =>
      `${part.named ? `<voice>${voice}</voice>` : ''}${type}${rest}${staffOf(voice)}`
    const pitch = (step = 'C', octave = token.octave): string =>
      `<pitch><step>${step}</step>${token.alter ? `<alter>${token.alter}</alter>` : ''}<octave>${octave}</octave></pitch>`
    const type = TYPES.get(length) ?? ''
    const [low, high] = token.steps
    if (token.kind === 'rest') {
      tied = undefined
      return `<note><rest/>${lasting(length)}${said(type, '')}</note>`
    }
    if (token.kind === 'forward') {
      tied = undefined
      return `<forward>${lasting(length)}<voice>${voice}</voice>${staffOf(voice)}</forward>`
    }
    if (token.kind === 'triplet' && length === 12) {
      const modified =
        '<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>'
      tied = undefined
      return [low, undefined, high]
        .map(
          (step) =>
            `<note>${step ? pitch(step) : '<rest/>'}${lasting(4)}${said('<type>eighth</type>', modified)}</note>`,
        )
        .join('')
    }
    const stop = tied !== undefined
    const isCue = token.shown === 'cue' && !stop && !(token.tied && voice === 1)
    // Where nothing is played: of two notes alike, one of them a cue, nobody can tell which is gone.
    const own = tied ?? pitch(low, isCue ? 7 : token.octave)
    if (stop) kept.add(ties)
    const start = token.tied && voice === 1
    tied = start ? own : undefined
    if (start) ties++
    const tie = `${stop ? '<tie type="stop"/>' : ''}${start ? `<tie type="start" id="${ties}"/>` : ''}`
    const notations = [
      stop ? '<tied type="stop"/>' : '',
      start ? `<tied type="start" id="${ties}"/>` : '',
      token.slur ? `<slur type="${token.slur}"/>` : '',
    ].join('')
    const shown = notations && `<notations>${notations}</notations>`
    const grace =
      token.grace && !stop
        ? `<note><grace/>${pitch(high)}${said('<type>eighth</type>', '')}</note>`
        : ''
    const chord =
      token.kind === 'chord'
        ? `<note><chord/>${pitch(high, token.octave + 1)}${lasting(length)}${said(type, token.stem)}</note>`
        : ''
    const hidden = token.shown === 'no' ? ' print-object="no"' : ''
    const cue = isCue ? '<cue/>' : ''
    return `${grace}<note${hidden}>${cue}${own}${lasting(length)}${tie}${said(type, token.stem)}${shown}</note>${chord}`
  }

  function voiceOf(length: number, voice: number): string {
    const held = tied
    if (voice > 1) tied = undefined
    let content = ''
    for (let left = length; left > 0;) {
      const token = next()
      const taken = LENGTHS.findLast((each) => each <= Math.min(left, token.length)) ?? left
      if (left < length) content += part.extras[extra++ % part.extras.length] ?? ''
      content += event(token, taken, voice)
      left -= taken
    }
    if (voice > 1) tied = held
    return content
  }

  const measures = Array.from({length: count}, (_, index) => {
    const time = times[Math.floor((index * times.length) / count)] ?? '4/4'
    const changed = index === 0 || time !== times[Math.floor(((index - 1) * times.length) / count)]
    const full = {'4/4': 48, '3/4': 36, '6/8': 36}[time] ?? 48
    const length = index === 0 && pickup ? 12 : full
    const [beats, type] = time.split('/')
    const [diatonic, chromatic] = part.transpose.split(' ')
    const shape = part.shapes[index % part.shapes.length]
    const attributes = [
      index === 0 ? `<divisions>${part.divisions}</divisions>` : '',
      index === 0 ? '<key><fifths>0</fifths></key>' : '',
      changed ? `<time><beats>${beats}</beats><beat-type>${type}</beat-type></time>` : '',
      index === 0 && part.staves > 1 ? `<staves>${part.staves}</staves>` : '',
      index === 0 ? '<clef number="1"><sign>G</sign><line>2</line></clef>' : '',
      index === 0 && part.transpose
        ? `<transpose><diatonic>${diatonic}</diatonic><chromatic>${chromatic}</chromatic></transpose>`
        : '',
      shape === 'multiple' ? '<measure-style><multiple-rest>2</multiple-rest></measure-style>' : '',
    ].join('')
    const head = attributes && `<attributes>${attributes}</attributes>`
    if (shape === 'empty') {
      tied = undefined
      return head || `<measure number="${index + 1}"/>`
    }
    if (shape === 'rest' || shape === 'multiple') {
      tied = undefined
      return `${head}<note><rest measure="yes"/><duration>${length * scale}</duration><voice>1</voice>${staffOf(1)}</note>`
    }
    const first = voiceOf(length, 1)
    if (shape === 'one' && part.staves === 1) return head + first
    return `${head}${first}<backup><duration>${length * scale}</duration></backup>${voiceOf(length, 2)}`
  })
  return measures.map((each) =>
    each.replaceAll(/<(tied?) type="start" id="(\d+)"\/>/g, (_, name: string, id: string) =>
      kept.has(Number(id)) ? `<${name} type="start"/>` : '',
    ),
  )
}
