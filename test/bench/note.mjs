// One note, and what hangs on it.
import {element} from './xml.mjs'

export const steps = 'CDEFGAB'
const sharps = 'FCGDAEB'
const types = new Map([
  [1, ['16th', 0]],
  [2, ['eighth', 0]],
  [3, ['eighth', 1]],
  [4, ['quarter', 0]],
  [8, ['half', 0]],
  [12, ['half', 1]],
  [16, ['whole', 0]],
])
const articulations = ['staccato', 'accent', 'tenuto']
const syllables = ['La', 'mu', 'si', 'que', 'für', 'al', 'le', '“oh!”', 'fête &amp; bal']

/** A note at a staff position, and whether a slur goes on after it. */
export function noteElement(voice, event, position, head) {
  const {part, random, staff, fifths, sounded} = voice
  const {at, duration, isRest} = event
  const [type, dots] = types.get(duration)
  const step = steps[position % 7]
  const octave = Math.floor(position / 7)
  const inKey = alterInKey(step, fifths)
  const isChromatic = !isRest && random() < 0.08
  const alter = isChromatic ? (inKey === 0 ? (random() < 0.5 ? 1 : -1) : 0) : inKey
  const isPitched = !isRest && !part.has('drums')
  const isMarked = isPitched && (sounded.get(position) ?? inKey) !== alter
  if (isPitched) sounded.set(position, alter)
  const isFirstHead = head === 0 && !isRest
  const slur = !isFirstHead ? undefined : slurOf(voice, event)
  const note = element(
    'note',
    isRest
      ? {}
      : {
          'default-x': (14 + at * 11.3).toFixed(2),
          'default-y': (5 * (position - 34)).toFixed(2),
        },
    head === 0 ? undefined : element('chord'),
    isRest ? element('rest') : sound(part, step, alter, octave),
    element('duration', {}, duration),
    part.has('drums') && !isRest ? element('instrument', {id: `${part.id}-I1`}) : undefined,
    element('voice', {}, staff === 2 ? 5 : 1),
    element('type', {}, type),
    dots === 0 ? undefined : element('dot'),
    isMarked
      ? element('accidental', {}, {'-1': 'flat', 0: 'natural', 1: 'sharp'}[alter])
      : undefined,
    isRest || duration === 16
      ? undefined
      : element('stem', {'default-y': (position % 9) - 55 + '.50'}, position > 34 ? 'down' : 'up'),
    part.has('grand') ? element('staff', {}, staff) : undefined,
    ...(isFirstHead ? beams(event) : []),
    isFirstHead ? notations(random, slur) : undefined,
    ...(isFirstHead && part.has('lyrics') ? lyrics(random) : []),
  )
  const slurred = slur === undefined ? voice.slurred : slur === 'start'
  return {note, slurred}
}

function sound(part, step, alter, octave) {
  if (part.has('drums')) {
    const display = [element('display-step', {}, step), element('display-octave', {}, octave)]
    return element('unpitched', {}, ...display)
  }
  const changed = alter === 0 ? undefined : element('alter', {}, alter)
  return element('pitch', {}, element('step', {}, step), changed, element('octave', {}, octave))
}

function slurOf({random, slurred}, {isLast}) {
  if (slurred) return isLast || random() < 0.3 ? 'stop' : undefined
  return !isLast && random() < 0.12 ? 'start' : undefined
}

function notations(random, slur) {
  const isArticulated = random() < 0.2
  if (slur === undefined && !isArticulated) return undefined
  const curve = {'default-x': '5.50', 'default-y': '12.00', 'bezier-x': '14.20', 'bezier-y': '8.80'}
  const sign = element(pick(random, articulations), {placement: 'above', 'default-y': '10.00'})
  return element(
    'notations',
    {},
    slur === undefined ? undefined : element('slur', {type: slur, number: 1, ...curve}),
    isArticulated ? element('articulations', {}, sign) : undefined,
  )
}

/** Notes of a beat share a beam; sixteenths side by side share a second. A rest that is a whole beat has none. */
function* beams({rhythm, n, at, duration, isRest}) {
  if (isRest || duration >= 4) return
  const isInBeat = (k, start) => k >= 0 && k < rhythm.length && start >> 2 === at >> 2
  const before = isInBeat(n - 1, at - rhythm[n - 1]) ? rhythm[n - 1] : undefined
  const after = isInBeat(n + 1, at + duration) ? rhythm[n + 1] : undefined
  yield element('beam', {number: 1}, beamWord(before !== undefined, after !== undefined))
  if (duration > 1) return
  if (before === 1 || after === 1) {
    yield element('beam', {number: 2}, beamWord(before === 1, after === 1))
  } else yield element('beam', {number: 2}, 'backward hook')
}

function beamWord(isAfter, isBefore) {
  return isAfter ? (isBefore ? 'continue' : 'end') : 'begin'
}

function* lyrics(random) {
  for (const verse of [1, 2]) {
    yield element(
      'lyric',
      {number: verse, 'default-y': `-${60 + 20 * verse}.00`},
      element('syllabic', {}, 'single'),
      element('text', {}, pick(random, syllables)),
    )
  }
}

/** What a key signature does to a step, in semitones. */
export function alterInKey(step, fifths) {
  const place = sharps.indexOf(step)
  if (fifths > 0) return place < fifths ? 1 : 0
  return 6 - place < -fifths ? -1 : 0
}

/** One of a list. */
export function pick(random, list) {
  return list[Math.floor(random() * list.length)]
}
