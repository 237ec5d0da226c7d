import fc from 'fast-check'

/**
 * Small scores for property tests: partwise or timewise, one or two parts, with everything that bends a pitch in a
 * reader's eye: transpositions, keys and clefs that change at any place on any staff, voices, chords, grace notes, ties,
 * accidentals of all kinds, microtones; printed in the ways that files are printed.
 */
export const anyScore: fc.Arbitrary<string> = fc
  .record({
    parts: fc.array(anyPart(), {minLength: 1, maxLength: 2}),
    measures: fc.integer({min: 1, max: 3}),
    timewise: fc.boolean(),
    layout: anyLayout(),
  })
  .map(({parts, measures, timewise, layout}) => printScore(parts, measures, timewise, layout))

/** The ids of the parts of such a score. */
export function partIds(score: string): string[] {
  return [...score.matchAll(/<score-part\s+id=["']([^"']*)["']/g)].map(([, id = '']) => id)
}

const SIXTEENTHS = 16
const TYPES = {1: '16th', 2: 'eighth', 4: 'quarter', 8: 'half'} as const
type Length = keyof typeof TYPES

/** An element: a name, attributes as they are written, and its content. */
type Node = readonly [name: string, attributes: string, content: readonly Node[] | string]

interface Pitch {
  readonly step: string
  readonly alter: number
  readonly octave: number
}

interface Event {
  readonly length: Length
  /** None for a rest; more than one is a chord. */
  readonly pitches: readonly Pitch[]
  readonly grace: Pitch | undefined
  readonly tied: boolean
  readonly sign: 'none' | 'plain' | 'cautionary' | 'parentheses'
  readonly stem: 'none' | 'up' | 'down'
  readonly restPlace: boolean
  readonly height: boolean
  readonly change: Change | undefined
  /** The change stands between the grace note and its note. */
  readonly late: boolean
}

interface Change {
  readonly divisions: number | undefined
  readonly key: Node | undefined
  readonly clef: Node | undefined
  readonly transpose: Node | undefined
  readonly numbered: boolean
}

interface Part {
  readonly staves: number
  readonly voices: number
  readonly first: Change
  readonly events: readonly Event[]
}

interface Layout {
  readonly lineEnd: string
  readonly indent: string
  readonly quote: string
  readonly noise: readonly string[]
  readonly selfClosed: string
}

function node(
  name: string,
  content: readonly (Node | undefined)[] | string | number,
  attributes = '',
): Node {
  return [
    name,
    attributes,
    Array.isArray(content) ? content.filter((each) => each !== undefined) : String(content),
  ]
}

function anyPitch(): fc.Arbitrary<Pitch> {
  return fc.record({
    step: fc.constantFrom(...'CDEFGAB'),
    alter: fc.oneof(
      {weight: 9, arbitrary: fc.constantFrom(0, 0, 0, 1, -1)},
      {weight: 1, arbitrary: fc.constantFrom(2, -2, 0.5, -0.5, 1.5, 0.25)},
    ),
    octave: fc.integer({min: 2, max: 5}),
  })
}

function anyEvent(): fc.Arbitrary<Event> {
  return fc.record({
    length: fc.constantFrom<Length>(1, 2, 4, 4, 8),
    pitches: fc.oneof(
      {weight: 6, arbitrary: fc.array(anyPitch(), {minLength: 1, maxLength: 1})},
      {weight: 1, arbitrary: fc.array(anyPitch(), {minLength: 2, maxLength: 3})},
      {weight: 1, arbitrary: fc.constant([])},
    ),
    grace: fc.option(anyPitch(), {freq: 8, nil: undefined}),
    tied: fc.boolean(),
    sign: fc.constantFrom('none', 'none', 'plain', 'plain', 'cautionary', 'parentheses'),
    stem: fc.constantFrom('none', 'up', 'down'),
    restPlace: fc.boolean(),
    height: fc.boolean(),
    change: fc.option(anyChange(), {freq: 6, nil: undefined}),
    late: fc.boolean(),
  })
}

function anyChange(): fc.Arbitrary<Change> {
  return fc.record({
    divisions: fc.option(fc.constantFrom(1, 4, 12, 480), {freq: 3, nil: undefined}),
    key: fc.option(anyKey(), {freq: 2, nil: undefined}),
    clef: fc.option(anyClef(), {freq: 2, nil: undefined}),
    transpose: fc.option(anyTransposition(), {freq: 2, nil: undefined}),
    numbered: fc.boolean(),
  })
}

function anyKey(): fc.Arbitrary<Node> {
  const traditional = fc
    .tuple(fc.integer({min: -7, max: 7}), fc.constantFrom(undefined, 'major', 'minor'))
    .map(([fifths, mode]) =>
      node('key', [node('fifths', fifths), mode ? node('mode', mode) : undefined]),
    )
  const signs = fc.subarray([...'CDEFGAB'], {minLength: 1, maxLength: 3}).map((steps) =>
    node(
      'key',
      steps.flatMap((step, index) => [
        node('key-step', step),
        node('key-alter', index % 2 ? -1 : 1),
      ]),
    ),
  )
  return fc.oneof({weight: 9, arbitrary: traditional}, {weight: 1, arbitrary: signs})
}

function anyClef(): fc.Arbitrary<Node> {
  return fc
    .constantFrom(['G', 2, 0], ['G', 2, 0], ['F', 4, 0], ['C', 3, 0], ['C', 4, 0], ['G', 2, -1])
    .map(([sign = 'G', line = 2, octaves = 0]) =>
      node('clef', [
        node('sign', sign),
        node('line', line),
        octaves === 0 ? undefined : node('clef-octave-change', octaves),
      ]),
    )
}

function anyTransposition(): fc.Arbitrary<Node> {
  return fc
    .constantFrom(
      [0, 0, 0],
      [-1, -2, 0],
      [-1, -2, -1],
      [-2, -3, 0],
      [2, 3, 0],
      [-4, -7, 0],
      [3, 5, 0],
      [-5, -9, 0],
      [0, 0, -1],
      [0, 0, 1],
      [-8, -14, 0],
      [-1, -1, 0],
      [0, -1, 0],
    )
    .map(([diatonic = 0, chromatic = 0, octaves = 0]) =>
      node('transpose', [
        node('diatonic', diatonic),
        node('chromatic', chromatic),
        octaves === 0 ? undefined : node('octave-change', octaves),
      ]),
    )
}

function anyPart(): fc.Arbitrary<Part> {
  return fc.record({
    staves: fc.constantFrom(1, 1, 1, 2),
    voices: fc.constantFrom(1, 1, 2),
    first: fc.record({
      divisions: fc.constantFrom(1, 4, 12, 480),
      key: fc.option(anyKey(), {freq: 5, nil: undefined}),
      clef: fc.option(anyClef(), {freq: 5, nil: undefined}),
      transpose: fc.option(anyTransposition(), {freq: 3, nil: undefined}),
      numbered: fc.boolean(),
    }),
    events: fc.array(anyEvent(), {minLength: 4, maxLength: 24}),
  })
}

function anyLayout(): fc.Arbitrary<Layout> {
  return fc.record({
    lineEnd: fc.constantFrom('\n', '\n', '\r\n', ''),
    indent: fc.constantFrom('  ', '\t', ''),
    quote: fc.constantFrom('"', "'"),
    noise: fc.array(
      fc.constantFrom('<!-- a <b> & --> ', '<?mark here="1"?>', '<!----><!-- </note> -->'),
      {maxLength: 2},
    ),
    selfClosed: fc.constantFrom('/>', ' />', 'long'),
  })
}

/** Prints the events of a part one after the other, as often as needed, into the voices of its measures. */
function createMeasures(part: Part, count: number): Node[] {
  let at = 0
  let divisions = part.first.divisions ?? 1
  let tied: readonly Pitch[] = []
  const next = (): Event => part.events[at++ % part.events.length] as Event
  const ticks = (length: number): string => String((length * divisions) / 4)

  function attributes(change: Change, staff: number, first: boolean): Node[] {
    if (change.divisions !== undefined) divisions = change.divisions
    const number = change.numbered && part.staves > 1 ? `number="${staff}"` : ''
    const clefNumber = part.staves > 1 ? `number="${staff}"` : ''
    const withNumber = (each: Node | undefined, value: string): Node | undefined =>
      each && [each[0], value, each[2]]
    const children = [
      change.divisions === undefined ? undefined : node('divisions', change.divisions),
      withNumber(change.key, number),
      first ? node('time', [node('beats', 4), node('beat-type', 4)]) : undefined,
      first && part.staves > 1 ? node('staves', part.staves) : undefined,
      withNumber(change.clef, clefNumber),
      withNumber(change.transpose, number),
    ].filter((each) => each !== undefined)
    return children.length > 0 ? [node('attributes', children)] : []
  }

  function notes(event: Event, length: number, voice: string, staff: number): Node[] {
    const pitches = tied.length > 0 && event.pitches.length > 0 ? tied : distinct(event.pitches)
    const stop = pitches === tied && tied.length > 0
    const start = event.tied && pitches.length > 0
    tied = start ? pitches : []
    const tail = (pitch: Pitch | undefined, grace: boolean): (Node | undefined)[] => {
      const sign = pitch && event.sign !== 'none' ? signOf(pitch.alter) : undefined
      const mark = event.sign === 'plain' ? '' : `${event.sign}="yes"`
      return [
        node('voice', voice),
        node('type', grace ? 'eighth' : TYPES[length as Length]),
        sign === undefined ? undefined : node('accidental', sign, mark),
        pitch && event.stem !== 'none' ? node('stem', event.stem) : undefined,
        part.staves > 1 ? node('staff', staff) : undefined,
        pitch && !grace && (start || stop)
          ? node('notations', [
              stop ? node('tied', '', 'type="stop"') : undefined,
              start ? node('tied', '', 'type="start"') : undefined,
            ])
          : undefined,
      ]
    }
    const height = event.height ? 'default-x="10" default-y="-25"' : ''
    const grace = event.grace
      ? [
          node(
            'note',
            [node('grace', ''), pitchNode(event.grace), ...tail(event.grace, true)],
            height,
          ),
        ]
      : []
    if (pitches.length === 0) {
      const place = event.restPlace ? [node('display-step', 'A'), node('display-octave', 4)] : ''
      return [
        ...grace,
        node('note', [
          node('rest', place),
          node('duration', ticks(length)),
          ...tail(undefined, false),
        ]),
      ]
    }
    const sounding = pitches.map((pitch, index) =>
      node(
        'note',
        [
          index > 0 ? node('chord', '') : undefined,
          pitchNode(pitch),
          node('duration', ticks(length)),
          stop ? node('tie', '', 'type="stop"') : undefined,
          start ? node('tie', '', 'type="start"') : undefined,
          ...tail(pitch, false),
        ],
        height,
      ),
    )
    return [...grace, ...sounding]
  }

  return Array.from({length: count}, (_, index) => {
    const content: Node[] = []
    const lines = Array.from({length: part.staves * part.voices}, (__, line) => line)
    if (index === 0) content.push(...attributes(part.first, 1, true))
    for (const line of lines) {
      const staff = Math.floor(line / part.voices) + 1
      if (line > 0) content.push(node('backup', [node('duration', ticks(SIXTEENTHS))]))
      for (let left = SIXTEENTHS; left > 0;) {
        const event = next()
        const length = fitting(event.length, left)
        const change = event.change ? attributes(event.change, staff, false) : []
        const [first, ...others] = notes(event, length, String(line + 1), staff)
        // A grace note before the first sign of the part would be read in nothing at all; and whether a change in one voice
        // governs a grace note at its onset in another nobody says.
        const late =
          event.late && event.grace !== undefined && left < SIXTEENTHS && lines.length === 1
        content.push(...(late ? [] : change), ...(first ? [first] : []))
        content.push(...(late ? change : []), ...others)
        left -= length
      }
      tied = []
    }
    return node('measure', content, `number="${index + 1}"`)
  })
}

function fitting(length: Length, left: number): Length {
  return length <= left ? length : left >= 4 ? 4 : left >= 2 ? 2 : 1
}

/** No two notes of a chord on one line: nobody can tell their accidentals apart. */
function distinct(pitches: readonly Pitch[]): readonly Pitch[] {
  return pitches.filter(
    (pitch, index) =>
      pitches.findIndex(({step, octave}) => step === pitch.step && octave === pitch.octave) ===
      index,
  )
}

function pitchNode({step, alter, octave}: Pitch): Node {
  return node('pitch', [
    node('step', step),
    alter === 0 ? undefined : node('alter', alter),
    node('octave', octave),
  ])
}

function signOf(alter: number): string | undefined {
  return {
    '-2': 'flat-flat',
    '-1': 'flat',
    '-0.5': 'quarter-flat',
    '0': 'natural',
    '0.5': 'quarter-sharp',
    '1': 'sharp',
    '1.5': 'three-quarters-sharp',
    '2': 'double-sharp',
  }[String(alter)]
}

function printScore(
  parts: readonly Part[],
  count: number,
  timewise: boolean,
  layout: Layout,
): string {
  const ids = parts.map((_, index) => `P${index + 1}`)
  const list = node(
    'part-list',
    ids.map((id) => node('score-part', [node('part-name', `Part &amp; ${id}`)], `id="${id}"`)),
  )
  const music = parts.map((part) => createMeasures(part, count))
  const content = timewise
    ? Array.from({length: count}, (_, index) =>
        node(
          'measure',
          ids.map((id, part) => node('part', music[part]?.[index]?.[2] ?? [], `id="${id}"`)),
          `number="${index + 1}"`,
        ),
      )
    : ids.map((id, part) => node('part', music[part] ?? [], `id="${id}"`))
  const name = timewise ? 'score-timewise' : 'score-partwise'
  const {lineEnd} = layout
  const body = printNode(node(name, [list, ...content], 'version="4.0"'), lineEnd, layout)
  return `<?xml version="1.0" encoding="UTF-8"?>${lineEnd}${body}${lineEnd}`
}

function printNode([name, attributes, content]: Node, margin: string, layout: Layout): string {
  const tag = attributes === '' ? name : `${name} ${attributes.replaceAll('"', layout.quote)}`
  if (content.length === 0)
    return layout.selfClosed === 'long' ? `<${tag}></${name}>` : `<${tag}${layout.selfClosed}`
  if (typeof content === 'string') return `<${tag}>${content}</${name}>`
  const inner = margin === '' ? '' : margin + layout.indent
  const noise = ['measure', 'note', 'attributes', 'part'].includes(name) ? layout.noise : []
  const printed = content.map(
    (each, index) => (noise[index % 7] ?? '') + inner + printNode(each, inner, layout),
  )
  return `<${tag}>${printed.join('')}${margin}</${name}>`
}
