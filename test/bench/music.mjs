// The music of one part in one measure: a tune that wanders around the middle of the part's staff.
import {alterInKey, noteElement, pick, steps} from './note.mjs'
import {element, print} from './xml.mjs'

const measureLength = 16 // in divisions of a quarter: 4/4
const keys = [-3, -1, 2, 0] // at concert pitch, 16 measures each

/** The rhythm of one quarter in long measures, and of a whole short one. */
const beats = [[1, 1, 1, 1], [1, 1, 1, 1], [2, 1, 1], [1, 1, 1, 1], [4], [1, 1, 1, 1], [3, 1]]
const bars = [[16], [8, 8], [12, 4], [8, 4, 4], [4, 12], [8, 8]]

const chords = [
  ['major', ''],
  ['minor', 'm'],
  ['dominant', '7'],
  ['half-diminished', 'm7♭5'],
]
const dynamics = ['p', 'mf', 'f', 'ff', 'sfz']
/** The content of a measure as XML, at the depth it has in a score. */
export function measureXml(part, index, {measures, seed, isFirst = false}) {
  const random = generator(seed * 1_000_003 + part.index * 7919 + index * 104_729)
  const scene = {part, index, isLong: measures === 'long', random, fifths: writtenKey(part, index)}
  const nodes = [
    ...layout(scene),
    ...(isFirst ? opening(scene) : keyChange(scene)),
    ...dynamicsAt(scene),
    ...staffMusic(scene, 1),
  ]
  if (part.has('grand')) {
    nodes.push(element('backup', {}, element('duration', {}, measureLength)))
    nodes.push(...staffMusic(scene, 2))
  }
  return nodes.map((node) => print(node, 3)).join('')
}

function writtenKey({transposition: {diatonic, chromatic}}, index) {
  const fifths = keys[Math.floor(index / 16) % keys.length] - (7 * chromatic - 12 * diatonic)
  return fifths > 7 ? fifths - 12 : fifths < -7 ? fifths + 12 : fifths
}

function* layout({index, random}) {
  if (index % 4 !== 0) return
  const distance = element('system-distance', {}, (110 + random() * 50).toFixed(2))
  const newSystem = index === 0 ? undefined : 'yes'
  yield element('print', {'new-system': newSystem}, element('system-layout', {}, distance))
}

function* opening({part, fifths}) {
  const {diatonic, chromatic, octaves} = part.transposition
  const isTransposing = diatonic !== 0 || octaves !== 0
  yield element(
    'attributes',
    {},
    element('divisions', {}, 4),
    keyElement(fifths),
    element('time', {}, element('beats', {}, 4), element('beat-type', {}, 4)),
    part.has('grand') ? element('staves', {}, 2) : undefined,
    clefElement(part.clef, part.has('grand') ? 1 : undefined),
    part.has('grand') ? clefElement('F4', 2) : undefined,
    isTransposing
      ? element(
          'transpose',
          {},
          element('diatonic', {}, diatonic),
          element('chromatic', {}, chromatic),
          octaves === 0 ? undefined : element('octave-change', {}, octaves),
        )
      : undefined,
  )
}

function* keyChange({index, fifths}) {
  if (index % 16 !== 0) return
  yield element('attributes', {}, keyElement(fifths))
  const mark = element('rehearsal', {'default-y': '30.00'}, 'ABCD'[index / 16])
  yield element('direction', {placement: 'above'}, element('direction-type', {}, mark))
}

function* dynamicsAt({random}) {
  if (random() > 0.25) return
  const sign = element('dynamics', {'default-y': '-65.00'}, element(pick(random, dynamics)))
  yield element(
    'direction',
    {placement: 'below'},
    element('direction-type', {}, sign),
    element('sound', {dynamics: (40 + random() * 80).toFixed(2)}),
  )
}

function* staffMusic(scene, staff) {
  const {part, index, random, isLong} = scene
  const rhythm = isLong ? [0, 1, 2, 3].flatMap(() => pick(random, beats)) : pick(random, bars)
  const middle = staff === 2 ? 'D3' : part.middle
  const centre = steps.indexOf(middle[0]) + 7 * Number(middle[1])
  const sounded = new Map() // the accidentals so far, by staff position
  let position = centre + Math.floor(random() * 5) - 2
  let at = 0
  let voice = {...scene, staff, sounded, slurred: false}
  for (const [n, duration] of rhythm.entries()) {
    const isClefDue = part.has('clefs') && index % 4 === 1 && n === Math.floor(rhythm.length / 2)
    if (isClefDue) yield element('attributes', {}, clefElement(otherClef(part, index)))
    if (part.has('harmony') && at % 8 === 0 && staff === 1) yield harmony(scene, position)
    position += Math.floor(random() * 5) - 2
    position = Math.max(centre - 6, Math.min(centre + 6, position))
    const isRest = (duration === 4 || duration === 8) && random() < 0.3
    const heads = !isRest && part.has('chords') ? 1 + Math.floor(random() * 2) : 1
    const event = {at, duration, isRest, isLast: n === rhythm.length - 1, rhythm, n}
    for (let head = 0; head < heads; head++) {
      const {note, slurred} = noteElement(voice, event, position + 2 * head, head)
      voice = {...voice, slurred}
      yield note
    }
    at += duration
  }
}

function harmony({random, fifths}, position) {
  const step = steps[position % 7]
  const alter = alterInKey(step, fifths)
  const [kind, text] = pick(random, chords)
  return element(
    'harmony',
    {'default-y': '32.00'},
    element(
      'root',
      {},
      element('root-step', {}, step),
      alter === 0 ? undefined : element('root-alter', {}, alter),
    ),
    element('kind', {text}, kind),
  )
}

function keyElement(fifths) {
  return element('key', {}, element('fifths', {}, fifths), element('mode', {}, 'major'))
}

function clefElement(clef, number) {
  if (clef === 'percussion') return element('clef', {}, element('sign', {}, 'percussion'))
  return element('clef', {number}, element('sign', {}, clef[0]), element('line', {}, clef[1]))
}

/** The high clef of the part from the middle of its 2nd measure to the middle of its 6th, and so on. */
function otherClef({clef}, index) {
  if (index % 8 === 5) return clef
  return clef === 'F4' ? 'C4' : 'G2'
}

/** A small deterministic generator (mulberry32, in the public domain): numbers from 0 up to 1. */
function generator(seed) {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}
