import type {CoverEntry, CoverList, PlainRange} from '../ensemble/cover-list.ts'

const STEPS: Readonly<Record<string, number>> = {C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11}
/** Pixels a semitone, and the height of a row. */
const KEY = 9
const ROW = 14
const SHOWN = 20

/**
 * A page on who could cover a part: the register of the missing voice drawn over each cover's range, with the reasons
 * beside it. Stands alone: no scripts, no pictures from elsewhere.
 */
export function formatCoverPage(list: CoverList, count = SHOWN): string {
  const covers = list.covers.slice(0, count)
  const scale = scaleOf(list, covers)
  const rows = covers.map((cover, index) => row(list, cover, index + 1, scale)).join('\n')
  const title = `Covers for ${list.name || list.part}`
  const doubled = list.doubledBy.map(
    ({name, words: said}) => `<li>${escape(name)} ${escape(said)}</li>`,
  )
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escape(title)}</title>
<style>
body { font: 16px/1.45 system-ui, sans-serif; margin: 2rem auto; max-width: 60rem; padding: 0 1rem; color: #1a1a1a; background: #fff; }
h1 { font-size: 1.4rem; }
ol { list-style: none; padding: 0; }
li.cover { border-top: 1px solid #767676; padding: 0.75rem 0; }
h2 { font-size: 1rem; margin: 0 0 0.25rem; }
h2 .score { font-weight: normal; }
p { margin: 0.25rem 0; }
svg { display: block; max-width: 100%; height: auto; }
.range { fill: #d9d9d9; } .easy { fill: #8fb8de; } .voice { fill: #7a2e00; }
.octave { stroke: #767676; stroke-width: 1; } svg text { font: 10px system-ui, sans-serif; fill: #1a1a1a; }
</style>
</head>
<body>
<main>
<h1>${escape(title)}</h1>
<p>${escape(list.instrument.name)}, ${list.notes} notes${list.ambitus ? `, sounding ${list.ambitus.low} to ${list.ambitus.high}` : ''}.
Grey is what can be played, blue what is comfortable, brown what the part asks for once folded.</p>
${doubled.length > 0 ? `<ul>\n${doubled.join('\n')}\n</ul>` : ''}
<ol>
${rows}
</ol>
</main>
</body>
</html>
`
}

interface Scale {
  readonly low: number
  readonly high: number
}

function row(list: CoverList, cover: CoverEntry, place: number, scale: Scale): string {
  const {title, part, score, reasons} = cover
  const plays = part === undefined ? '' : ` (plays ${escape(part)})`
  return `<li class="cover">
<h2>${place}. ${escape(title)}${plays} <span class="score">${Math.round(score)}</span></h2>
${picture(list, cover, scale)}
<p>${escape(reasons.join('; '))}</p>
</li>`
}

function picture({ambitus}: CoverList, cover: CoverEntry, scale: Scale): string {
  const width = (scale.high - scale.low + 1) * KEY
  const voice = cover.ambitus ?? ambitus
  const said = [
    cover.range && `range ${words(cover.range)}`,
    cover.comfortable && `comfortable ${words(cover.comfortable)}`,
    voice && `the part ${words(voice)}`,
  ]
  return `<svg viewBox="0 0 ${width} ${ROW + 14}" width="${width}" role="img" aria-label="${escape(said.filter(Boolean).join(', '))}">
${octaveLines(scale)}${bar('range', cover.range, scale, 0, ROW)}${bar('easy', cover.comfortable, scale, 2, ROW - 4)}${bar('voice', voice, scale, 5, ROW - 10)}
</svg>`
}

function bar(
  kind: string,
  range: PlainRange | undefined,
  {low}: Scale,
  y: number,
  height: number,
): string {
  if (!range) return ''
  const from = keyOf(range.low)
  const to = keyOf(range.high)
  return `<rect class="${kind}" x="${(from - low) * KEY}" y="${y}" width="${(to - from + 1) * KEY}" height="${height}"/>`
}

function octaveLines({low, high}: Scale): string {
  let lines = ''
  for (let key = Math.ceil(low / 12) * 12; key <= high; key += 12) {
    const x = (key - low) * KEY
    lines += `<line class="octave" x1="${x}" y1="0" x2="${x}" y2="${ROW + 4}"/><text x="${x + 2}" y="${ROW + 12}">C${key / 12 - 1}</text>`
  }
  return lines
}

function scaleOf({ambitus}: CoverList, covers: readonly CoverEntry[]): Scale {
  const keys = [ambitus, ...covers.flatMap((cover) => [cover.range, cover.ambitus])].flatMap(
    (range) => (range ? [keyOf(range.low), keyOf(range.high)] : []),
  )
  return {low: Math.min(...keys, 60) - 1, high: Math.max(...keys, 60) + 1}
}

/** The key of a name such as `Bb1`. */
function keyOf(name: string): number {
  const [, step = 'C', sign, octave = '4'] = /^([A-G])([b#])?(-?\d+)$/.exec(name) ?? []
  const alter = sign === 'b' ? -1 : sign === '#' ? 1 : 0
  return (STEPS[step] ?? 0) + alter + 12 * (Number(octave) + 1)
}

function words({low, high}: PlainRange): string {
  return `${low} to ${high}`
}

function escape(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}
