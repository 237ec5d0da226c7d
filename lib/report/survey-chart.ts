import type {KeyRegion} from '../survey/concert-keys.ts'
import type {PitchRange} from '../survey/profile.ts'
import type {PartSurvey, Survey} from '../survey/survey.ts'

/** Units of the drawing: its width, and the height of a part's row. */
const WIDTH = 620
const ROW = 26
const PAD = 10

/** The key numbers that a page's charts run from and to: whole octaves around all that is played. */
export interface Axis {
  readonly low: number
  readonly high: number
}

export function axisOf(survey: Survey): Axis {
  const ranges = survey.parts.flatMap(({sounding, registers}) =>
    sounding ? [sounding, ...registers] : [],
  )
  if (ranges.length === 0) return {low: 36, high: 84}
  const low = Math.min(...ranges.map(({lowMidi}) => lowMidi))
  const high = Math.max(...ranges.map(({highMidi}) => highMidi))
  return {low: 12 * Math.floor(low / 12), high: 12 * Math.ceil((high + 1) / 12)}
}

/** The octaves, named by their C; middle C is C4. */
export function drawAxis(axis: Axis): string {
  const labels = octaves(axis).map(
    (midi) => `<text x="${at(axis, midi)}" y="12" text-anchor="middle">C${midi / 12 - 1}</text>`,
  )
  return `<svg viewBox="0 0 ${WIDTH} 16" aria-hidden="true">${labels.join('')}</svg>`
}

/** A part's row: what its instrument can play, what it usually plays, what the part has, and how much of it. */
export function drawRange(part: PartSurvey, axis: Axis, label: string): string {
  const {sounding, tessitura, density, registers} = part
  const grid = octaves(axis).map((midi) => {
    const x = at(axis, midi)
    return `<line class="grid" x1="${x}" y1="0" x2="${x}" y2="${ROW}"/>`
  })
  const tutti = registers.find(({tier}) => tier === 'tutti')
  const pro = registers.find(({tier}) => tier === 'pro')
  const shapes = [
    ...grid,
    ...(tutti ? [box(axis, tutti, 'tutti', 3, ROW - 6)] : []),
    ...(pro ? [box(axis, pro, 'pro', 3.5, ROW - 7)] : []),
    ...(sounding ? drawDensity(axis, sounding, density, pro) : []),
    ...(tessitura ? [drawBracket(axis, tessitura)] : []),
  ]
  return `<svg viewBox="0 0 ${WIDTH} ${ROW}" role="img" aria-label="${label}">${shapes.join('')}</svg>`
}

/** The keys at concert pitch along the measures of the score. */
export function drawKeys(keys: readonly KeyRegion[], measures: number, label: string): string {
  const scale = (WIDTH * 1.6) / Math.max(1, measures)
  const width = WIDTH * 1.6
  const boxes = keys.map(({index, measure, fifths}, position) => {
    const x = index * scale
    const end = (keys[position + 1]?.index ?? measures) * scale
    const text = `${signsOf(fifths)}`
    const wide = end - x > 34
    return `<g><title>${text}, from measure ${measure}</title><rect class="key" x="${x.toFixed(1)}" y="0" width="${(end - x).toFixed(1)}" height="30" fill-opacity="${(0.2 + 0.06 * Math.abs(fifths)).toFixed(2)}"/>${
      wide ? `<text class="key-text" x="${(x + 7).toFixed(1)}" y="19">${text}</text>` : ''
    }${wide || position === 0 ? `<text x="${(x + 2).toFixed(1)}" y="44">${measure}</text>` : ''}</g>`
  })
  return `<svg viewBox="0 0 ${width} 48" role="img" aria-label="${label}">${boxes.join('')}</svg>`
}

/** `3 ♭`, `2 ♯`, `♮` for none. */
export function signsOf(fifths: number): string {
  if (fifths === 0) return '♮'
  return `${Math.abs(fifths)} ${fifths < 0 ? '♭' : '♯'}`
}

/** Little drawings for the legend, in the order in which they are explained. */
export const LEGEND: readonly (readonly [drawing: string, words: string])[] = [
  ['<rect class="pro" x="1" y="2" width="38" height="10"/>', 'all that the instrument can play'],
  ['<rect class="tutti" x="1" y="2" width="38" height="10"/>', 'what it plays every day'],
  [
    '<rect class="played" x="4" y="2" width="8" height="10" fill-opacity=".3"/><rect class="played" x="12" y="2" width="8" height="10"/><rect class="played" x="20" y="2" width="8" height="10" fill-opacity=".6"/>',
    'played: the stronger, the longer',
  ],
  ['<rect class="beyond" x="10" y="2" width="12" height="10"/>', 'played beyond what it can play'],
  ['<path class="mostly" d="M4 9v3h30v-3"/>', 'four fifths of the time'],
]

function drawDensity(
  axis: Axis,
  sounding: PitchRange,
  density: readonly number[],
  pro: PitchRange | undefined,
): readonly string[] {
  const most = Math.max(...density)
  return density.flatMap((quarters, step) => {
    if (quarters === 0) return []
    const midi = sounding.lowMidi + step
    const beyond = pro && (midi < pro.lowMidi || midi > pro.highMidi)
    const x = at(axis, midi - 0.5)
    const width = at(axis, midi + 0.5) - x
    // By the root, so that what is rare can still be seen.
    const opacity = Math.max(0.14, Math.sqrt(quarters / most)).toFixed(2)
    return [
      `<rect class="${beyond ? 'beyond' : 'played'}" x="${x.toFixed(1)}" y="6" width="${width.toFixed(1)}" height="${ROW - 12}" fill-opacity="${beyond ? 1 : opacity}"/>`,
    ]
  })
}

function drawBracket(axis: Axis, {lowMidi, highMidi}: PitchRange): string {
  const left = at(axis, lowMidi - 0.5)
  const right = at(axis, highMidi + 0.5)
  return `<path class="mostly" d="M${left} ${ROW - 5}v4H${right}v-4"/>`
}

function box(axis: Axis, range: PitchRange, name: string, y: number, height: number): string {
  const x = at(axis, range.lowMidi - 0.5)
  const width = at(axis, range.highMidi + 0.5) - x
  return `<rect class="${name}" x="${x.toFixed(1)}" y="${y}" width="${width.toFixed(1)}" height="${height}"/>`
}

function at({low, high}: Axis, midi: number): number {
  const place = PAD + ((midi - low) / (high - low)) * (WIDTH - 2 * PAD)
  return Math.round(10 * Math.max(1, Math.min(WIDTH - 1, place))) / 10
}

function octaves({low, high}: Axis): readonly number[] {
  return Array.from({length: (high - low) / 12 + 1}, (_, octave) => low + 12 * octave)
}
