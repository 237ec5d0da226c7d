import {counted, escapeHtml} from './html.ts'
import type {Digest} from '../sheet/digest.ts'

const WIDTH = 560
const BARS = 74
const TIER = 15

const TIERS = {pro: 'all it can play', tutti: 'every day', student: 'a student'}

/** The instrument's range as bands, and above them how often the part sounds each key; dashed where it did before. */
export function drawSheetRange({before, after}: Digest): string {
  const bands = after.reach.map(({tier, lowMidi, highMidi}) => ({
    words: TIERS[tier],
    low: lowMidi,
    high: highMidi,
  }))
  const keys = [...before.density.keys(), ...after.density.keys()]
  if (keys.length === 0) return '<p>The part has no pitches.</p>'
  const all = [...keys, ...bands.flatMap(({low, high}) => [low, high])]
  const low = 12 * Math.floor(Math.min(...all) / 12)
  const high = 12 * Math.ceil((Math.max(...all) + 1) / 12)
  const step = (WIDTH - 20) / (high - low)
  const x = (key: number): number => round(10 + (key - low) * step)
  const most = Math.max(...before.density.values(), ...after.density.values())
  const tall = (notes: number): number => round(3 + (BARS - 3) * Math.sqrt(notes / most))
  const [widest] = bands
  const bars = [...after.density].map(([key, notes]) => {
    const beyond = widest && (key < widest.low || key > widest.high) ? 'beyond' : 'bar'
    return `<rect class="${beyond}" x="${x(key - 0.4)}" y="${BARS - tall(notes)}" width="${round(step * 0.8)}" height="${tall(notes)}"/>`
  })
  const former = [...before.density]
    .filter(([key, notes]) => after.density.get(key) !== notes)
    .map(
      ([key, notes]) =>
        `<rect class="was" x="${x(key - 0.4)}" y="${BARS - tall(notes)}" width="${round(step * 0.8)}" height="${tall(notes)}"/>`,
    )
  const tiers = bands.map(({words, low: from, high: to}, index) => {
    const y = BARS + 5 + index * (TIER + 3)
    return `<rect class="tier" x="${x(from - 0.5)}" y="${y}" width="${round((to - from + 1) * step)}" height="${TIER}" rx="2"/><text x="${x((from + to) / 2)}" y="${y + 11.5}" text-anchor="middle">${words}</text>`
  })
  const bottom = BARS + 5 + bands.length * (TIER + 3)
  const octaves = Array.from({length: (high - low) / 12 + 1}, (_, index) => low + 12 * index)
  const grid = octaves.map(
    (key) =>
      `<line class="grid" x1="${x(key)}" x2="${x(key)}" y1="0" y2="${bottom}"/><text x="${x(key)}" y="${bottom + 13}" text-anchor="middle">C${key / 12 - 1}</text>`,
  )
  return `<svg viewBox="0 0 ${WIDTH} ${bottom + 18}" role="img" aria-label="${escapeHtml(rangeWords({before, after}, widest))}">${grid.join('')}${tiers.join('')}${bars.join('')}${former.join('')}</svg>`
}

function rangeWords(
  {after}: Pick<Digest, 'before' | 'after'>,
  widest: {readonly low: number; readonly high: number} | undefined,
): string {
  const name = after.instrument?.labels.en.name ?? 'the instrument'
  if (!widest) return `How often the part sounds each key; the range of ${name} is not known`
  const outside = [...after.density]
    .filter(([key]) => key < widest.low || key > widest.high)
    .reduce((sum, [, notes]) => sum + notes, 0)
  return `How often the part sounds each key, above the range of the ${name}; ${outside === 0 ? 'all notes lie in it' : `${counted(outside, 'note')} beyond it`}`
}

function round(number: number): number {
  return Math.round(10 * number) / 10
}
