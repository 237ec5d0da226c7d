import type {PairProof} from '../proof/compare.ts'
import type {Change} from '../sheet/change.ts'
import type {Digest} from '../sheet/digest.ts'
import type {DrawnSystem} from '../sheet/systems.ts'
import {counted, escapeHtml, hashOf} from './html.ts'
import {drawSheetRange} from './sheet-range.ts'
import {SHEET_SCRIPT} from './sheet-script.ts'
import {KINDS, SHEET_STYLE} from './sheet-style.ts'
import {glanceRows} from './summary.ts'

/** Measures that are in the page at once when it opens; later systems are kept as text until they come near. */
const DRAWN = 200

/** A proof sheet up to its music. */
export async function openPage(digest: Digest, proof: PairProof | undefined): Promise<string> {
  const policy = `default-src 'none'; style-src ${await hashOf(SHEET_STYLE)}; script-src ${await hashOf(SHEET_SCRIPT)}`
  const {before, after, changes, numbers} = digest
  const title = digest.title || 'A score without a title'
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="color-scheme" content="light dark">
<title>${escapeHtml(`${title}: ${after.name || after.id}`)}</title>
<style>${SHEET_STYLE}</style>
</head>
<body>
<div class="page">
<a class="skip" href="#music">To the music</a>
<header>
<h1>${escapeHtml(title)}</h1>
<p class="lead">${escapeHtml(before.name || before.id)}, written again as ${escapeHtml(after.name || after.id)}. <span class="quiet">${counted(numbers.length, 'measure')}, ${counted(changes.length, 'change')}.</span></p>
</header>
<section class="glance" aria-label="At a glance">
<div>${glanceTable(digest)}${verdict(proof)}</div>
<div class="range"><h2>Range of the ${escapeHtml(after.instrument?.labels.en.name.toLowerCase() ?? 'part')}</h2>${drawSheetRange(digest)}</div>
</section>
<div class="columns">
${aside(changes)}<main id="music" tabindex="-1">
<h2>Before and after</h2>
<div class="systems">
`
}

/** One system of the page. */
export function sectionOf(system: DrawnSystem): string {
  const {first, last, from, drawings, glyphs, anchors, notices} = system
  const label = first === last ? `Measure ${first}` : `Measures ${first} to ${last}`
  const shapes =
    glyphs.length > 0
      ? `<svg class="glyphs" aria-hidden="true"><defs>${glyphs.join('')}</defs></svg>\n`
      : ''
  const music = drawings.join('\n')
  const waits = from >= DRAWN
  const said = notices.map((each) => `<p class="notice">${escapeHtml(each)}</p>`).join('')
  return `${shapes}<section class="system" data-m="${anchors.join(' ')}" aria-label="${escapeHtml(label)}">${
    waits ? `<script type="text/plain">${music}</script>` : music
  }${said}</section>
`
}

/** What follows the music. */
export function closePage(): string {
  return `</div>
</main>
</div>
<footer><p class="howto">Point at a note, or reach it with the Tab key and walk by the arrow keys, to read what it sounds; up and down lead to its counterpart.</p><p>Both parts were engraved from the files as they are; rests of many measures are written out.</p></footer>
</div>
<div class="tip" aria-hidden="true" hidden></div>
<script>${SHEET_SCRIPT}</script>
</body>
</html>
`
}

function glanceTable(digest: Digest): string {
  const rows = glanceRows(digest).map(
    ({what, before, after}) =>
      `<tr><th scope="row">${what}</th><td>${escapeHtml(before)}</td><td>${escapeHtml(after)}</td></tr>`,
  )
  return `<table><thead><tr><td></td><th scope="col">Before</th><th scope="col">After</th></tr></thead><tbody>${rows.join('')}</tbody></table>`
}

function verdict(proof: PairProof | undefined): string {
  if (!proof) return ''
  const {notes, equal, intended, different, respelled, constantInterval} = proof
  const kind = different > 0 ? 'different' : intended > 0 ? 'intended' : 'equal'
  const words = {
    equal: 'They sound the same',
    intended: 'They sound the same, except where the report says otherwise',
    different: proof.otherPiece ? 'This is other music' : 'They do not sound the same',
  }[kind]
  const counts = [
    `${counted(notes.before, 'note')} before, ${notes.after} after`,
    `${equal} sound the same`,
    ...(intended > 0 ? [`${intended} otherwise as reported`] : []),
    ...(respelled > 0 ? [`${respelled} spelled otherwise`] : []),
    ...(different > 0 ? [`${different} otherwise without being reported`] : []),
    ...(constantInterval ? [`the whole part is off by ${constantInterval.name}`] : []),
  ]
  return `<p class="verdict ${kind}">${words}</p><p class="quiet">${escapeHtml(counts.join('; '))}.</p>`
}

function aside(changes: readonly Change[]): string {
  const kinds = KINDS.flatMap((kind) => {
    const count = changes.filter((change) => change.kind === kind).length
    return count === 0
      ? []
      : [
          `<label class="k-${kind}"><input type="checkbox" id="f-${kind}" checked autocomplete="off"> ${kind} <span class="quiet">${count}</span></label>`,
        ]
  })
  const items = changes.map(
    ({kind, measure, number, until, what, reason}, index) =>
      `<li class="k-${kind}" id="c${index}"><a href="#m${measure}">${until === undefined ? 'Measure' : 'Measures'} ${escapeHtml(number || String(measure + 1))}${until === undefined ? '' : ` to ${escapeHtml(until)}`}</a> <span class="kind">${kind}</span><br>${escapeHtml(withSigns(what))}${reason ? `<span class="why">${escapeHtml(withSigns(reason))}</span>` : ''}</li>`,
  )
  const filters =
    kinds.length > 1
      ? `<fieldset><legend>Show</legend><div class="kinds">${kinds.join('')}</div></fieldset>`
      : ''
  return `<aside class="aside" aria-labelledby="changes"><h2 id="changes">Changes</h2>${filters}${
    changes.length === 0 ? '<p>None.</p>' : `<ol class="changes">${items.join('\n')}</ol>`
  }</aside>
`
}

/** Pitches in sentences as people print them: `Bb1` as `B♭1`. */
function withSigns(text: string): string {
  return text.replaceAll(
    /\b([A-G])(b{1,2}|#{1,2})(?=-?\d)/g,
    (_, step: string, signs: string) =>
      step + (signs.startsWith('b') ? '♭' : '♯').repeat(signs.length),
  )
}
