import type {ChangeKind} from '../sheet/change.ts'

/** The colour of each kind of change, light and dark; the marks differ by word and place too. */
const COLOURS: Readonly<Record<ChangeKind, readonly [light: string, dark: string]>> = {
  difference: ['#b3261e', '#ff9a8f'],
  octave: ['#7a4b00', '#f0b95b'],
  dropped: ['#7d3c12', '#f3b08a'],
  added: ['#3f6212', '#b5d67a'],
  clef: ['#1b5e8c', '#86c5f4'],
  key: ['#1f6a4d', '#7ed3ae'],
  transposition: ['#5b4a99', '#bfb0ff'],
  spelling: ['#8a3b76', '#f0a3dc'],
  accidental: ['#7b5a00', '#dfc26a'],
  technique: ['#87402a', '#f2ab8f'],
  name: ['#4b5a66', '#b3c1cc'],
  doubt: ['#9a3412', '#f4a36a'],
  other: ['#4b5a66', '#b3c1cc'],
}

/** The kinds of change in the order in which filters show them. */
export const KINDS = Object.keys(COLOURS) as readonly ChangeKind[]

/** The style of a proof sheet: music on the left, what changed beside it; light, dark and paper. */
export const SHEET_STYLE = `
:root {
  color-scheme: light dark;
  --paper: light-dark(#fbfaf6, #15171a); --ink: light-dark(#1d2126, #e9e7e1); --quiet: light-dark(#59616a, #a3a9af);
  --line: light-dark(#d8d5cb, #363b41); --staff: light-dark(#8b8f92, #7b8187); --card: light-dark(#f3f0e6, #1e2125);
  --accent: light-dark(#1f5f57, #6fcabb); --band: light-dark(#dfe7df, #2a342d); --reach: light-dark(#8f9a8c, #6f7d70);
${KINDS.map((kind) => `  --${kind}: light-dark(${COLOURS[kind].join(', ')});`).join('\n')}
}
* { box-sizing: border-box; }
html { scroll-padding-top: 1rem; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.5 "Source Sans 3", "Noto Sans", system-ui, sans-serif; }
.page { max-width: 100rem; margin: 0 auto; padding: 2rem clamp(1rem, 3vw, 2.5rem) 5rem; }
h1 { font: 600 1.9rem/1.2 "Source Serif 4", Georgia, serif; margin: 0; text-wrap: balance; }
h2 { font: 600 1.15rem/1.3 "Source Serif 4", Georgia, serif; margin: 0 0 .6rem; }
p { margin: .3rem 0; }
a { color: inherit; text-underline-offset: .2em; }
:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; border-radius: 2px; }
.quiet { color: var(--quiet); }
.skip { position: absolute; left: -100vw; }
.skip:focus { left: 1rem; top: .5rem; background: var(--paper); padding: .25rem .75rem; z-index: 3; }
.lead { font-size: 1.1rem; margin: .35rem 0 0; }
.glance { display: grid; grid-template-columns: minmax(0, 3fr) minmax(0, 2fr); gap: 1.5rem 2.5rem; margin: 1.5rem 0 2rem; padding: 1.25rem 0; border-block: 1px solid var(--line); }
.glance table { border-collapse: collapse; width: 100%; }
.glance th, .glance td { text-align: left; vertical-align: top; padding: .18rem 1rem .18rem 0; font-weight: 400; }
.glance tbody th { color: var(--quiet); white-space: nowrap; width: 1%; }
.glance thead th { font-weight: 600; }
.verdict { display: flex; gap: .6rem; align-items: baseline; font-size: 1.1rem; font-weight: 600; margin: 1rem 0 .2rem; }
.verdict::before { content: "="; flex: none; width: 1.5rem; height: 1.5rem; line-height: 1.45rem; border-radius: 50%; text-align: center; color: var(--paper); background: var(--accent); }
.verdict.intended::before { content: "≈"; }
.verdict.different::before { content: "≠"; background: var(--difference); }
.range svg { display: block; width: 100%; height: auto; }
.range text { fill: var(--quiet); font: 11px "Source Sans 3", "Noto Sans", system-ui, sans-serif; }
.range .grid { stroke: var(--line); }
.range .tier { fill: var(--band); stroke: var(--reach); stroke-width: .75; }
.range .bar { fill: var(--accent); }
.range .beyond { fill: var(--difference); }
.range .was { fill: none; stroke: var(--quiet); stroke-dasharray: 2 1.5; }
.columns { display: grid; grid-template: "music changes" / minmax(0, 1fr) 21rem; gap: 2.5rem; align-items: start; }
main { grid-area: music; }
.aside { grid-area: changes; position: sticky; top: 0; max-height: 100vh; overflow: auto; padding: 0 .25rem 1rem; scrollbar-gutter: stable; }
fieldset { border: 0; padding: 0; margin: 0 0 .9rem; }
legend { padding: 0; color: var(--quiet); font-size: .9rem; margin-bottom: .35rem; }
.kinds { display: flex; flex-wrap: wrap; gap: .35rem; }
.kinds label { display: inline-flex; gap: .35rem; align-items: center; border: 1px solid var(--line); border-radius: 1rem; padding: .05rem .65rem .05rem .45rem; font-size: .9rem; cursor: pointer; }
.kinds label:has(:focus-visible) { outline: 3px solid var(--accent); outline-offset: 1px; }
.kinds input { accent-color: var(--kind); margin: 0; }
.kinds :focus-visible { outline: none; }
.changes { list-style: none; margin: 0; padding: 0; }
.changes li { border-left: 3px solid var(--kind); padding: .1rem 0 .1rem .75rem; margin: 0 0 .65rem; content-visibility: auto; contain-intrinsic-size: auto 3rem; }
.changes li:target { background: var(--card); }
.changes .kind { color: var(--kind); font-weight: 600; }
.changes .why { display: block; font-size: .9rem; color: var(--quiet); }
.system { margin: 0 0 1.6rem; content-visibility: auto; contain-intrinsic-size: auto 17rem; }
.notice { font-size: .9rem; color: var(--quiet); border-left: 3px solid var(--doubt); padding-left: .75rem; }
.glyphs { position: absolute; width: 0; height: 0; }
.music { display: block; width: 100%; height: auto; overflow: visible; fill: currentColor; color: var(--ink); font-family: "Source Serif 4", Georgia, "Times New Roman", serif; }
.music path, .music rect, .music ellipse, .music polygon, .music polyline { stroke: currentColor; }
.music .lines { stroke: var(--staff); stroke-width: 13; }
.music .tempo, .music .reh, .music .ending, .music .fing { font-weight: 700; }
.music .dir, .music .dynam, .music .mNum { font-style: italic; }
.music .mNum { fill: var(--quiet); }
.music .label, .music .labelAbbr { fill: var(--quiet); font-family: "Source Sans 3", "Noto Sans", system-ui, sans-serif; }
.music .hit { fill: transparent; stroke: none; }
.music .m:target > .hit { fill: var(--band); }
.music .n { outline: none; cursor: default; }
.music .spot { fill: transparent; }
.music .n[class*="k-"] > .spot { fill: color-mix(in srgb, var(--kind) 16%, transparent); stroke: var(--kind); stroke-width: 18; }
.music .n:focus-visible, .music .n.here, .music .n:hover { color: var(--accent); fill: var(--accent); }
.music .n:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
.flag rect { fill: var(--paper); stroke: var(--kind); stroke-width: 22; }
.flag text { fill: var(--kind); font-family: "Source Sans 3", "Noto Sans", system-ui, sans-serif; }
.flag:hover rect, .flag:focus-visible rect { stroke-width: 50; }
.tip { position: fixed; z-index: 2; pointer-events: none; background: var(--ink); color: var(--paper); border-radius: .3rem; padding: .2rem .6rem; font-size: .95rem; max-width: min(24rem, 90vw); }
.tip[hidden] { display: none; }
${KINDS.map((kind) => `.k-${kind} { --kind: var(--${kind}); }`).join('\n')}
${KINDS.map(
  (kind) =>
    `body:has(#f-${kind}:not(:checked)) :is(li, .flag).k-${kind} { display: none; }
body:has(#f-${kind}:not(:checked)) .music .k-${kind} > .spot { fill: transparent; stroke: none; }`,
).join('\n')}
footer { margin-top: 2.5rem; font-size: .9rem; color: var(--quiet); max-width: 46rem; }
@media (max-width: 62rem) {
  .columns { grid-template: "changes" "music" / minmax(0, 1fr); }
  .aside { position: static; max-height: 40vh; border-bottom: 1px solid var(--line); }
  .glance { grid-template-columns: minmax(0, 1fr); }
}
@page { margin: 14mm 13mm 16mm; @bottom-right { content: counter(page) " / " counter(pages); font: 9pt "Source Sans 3", "Noto Sans", sans-serif; } }
@media print {
  :root { color-scheme: light; }
  html, body { background: none; }
  html { font-size: 9pt; }
  .page { max-width: none; padding: 0; }
  .skip, .tip, .howto, fieldset { display: none; }
  .glance { grid-template-columns: minmax(0, 3fr) minmax(0, 2fr); margin: 5mm 0; padding: 3mm 0; }
  .columns { display: block; }
  .aside { position: static; max-height: none; overflow: visible; padding: 0 0 2mm; margin-bottom: 6mm; border: 0; }
  .changes { columns: 2; column-gap: 8mm; }
  .changes li, .system { content-visibility: visible; break-inside: avoid; }
  .system { margin-bottom: 4mm; }
  h2 { break-after: avoid; }
  a { text-decoration: none; }
  * { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
}
`
