/** The style of a survey's page: one sheet, light and dark, screen and paper. */
export const SURVEY_STYLE = `
:root {
  color-scheme: light dark;
  --paper: light-dark(#fbfaf6, #16181b);
  --ink: light-dark(#1d2126, #e7e5df);
  --quiet: light-dark(#59616a, #a3a9af);
  --line: light-dark(#d5d2c8, #383d43);
  --band: light-dark(#e6ebe4, #273029);
  --reach: light-dark(#8f9a8c, #6f7d70);
  --played: light-dark(#1f5f57, #6fcabb);
  --doubt: light-dark(#9a3412, #f4a36a);
  --note: light-dark(#f3efe3, #212429);
}
* { box-sizing: border-box; }
body {
  margin: 0 auto; padding: 2rem clamp(1rem, 4vw, 3rem) 4rem; max-width: 78rem;
  background: var(--paper); color: var(--ink);
  font: 1rem/1.5 "Source Sans 3", "Noto Sans", system-ui, sans-serif;
}
h1 { font: 600 1.9rem/1.2 "Source Serif 4", Georgia, serif; margin: 0 0 .25rem; text-wrap: balance; }
h2 { font: 600 1.3rem/1.3 "Source Serif 4", Georgia, serif; margin: 2.75rem 0 .75rem; }
h3 { font-size: 1rem; margin: 0; }
p { margin: .4rem 0; max-width: 46rem; }
.quiet { color: var(--quiet); }
.skip { position: absolute; left: -100vw; }
.skip:focus { left: 1rem; top: .5rem; background: var(--paper); padding: .25rem .75rem; }
a { color: inherit; text-underline-offset: .2em; }
:focus-visible { outline: 3px solid var(--played); outline-offset: 2px; }
nav ul { display: flex; flex-wrap: wrap; gap: .25rem 1.25rem; list-style: none; margin: 1rem 0 0; padding: 0; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
caption { text-align: left; color: var(--quiet); padding-bottom: .5rem; }
th, td { text-align: left; vertical-align: top; padding: .4rem .75rem .4rem 0; border-bottom: 1px solid var(--line); }
thead th { font-size: .85em; color: var(--quiet); font-weight: 600; border-bottom-width: 2px; white-space: nowrap; }
tbody th { font-weight: 600; min-width: 9rem; }
.number { text-align: right; }
.tight { white-space: nowrap; }
.roomy { min-width: 11rem; }
.sub { display: block; font-weight: 400; font-size: .85em; color: var(--quiet); }
.flag { color: var(--doubt); font-weight: 700; white-space: nowrap; }
.chart { min-width: 22rem; width: 56%; vertical-align: middle; }
.ranges th, .ranges td { vertical-align: middle; }
svg { display: block; width: 100%; height: auto; }
svg text { fill: var(--quiet); font: 11px "Source Sans 3", "Noto Sans", system-ui, sans-serif; }
.grid { stroke: var(--line); stroke-width: 1; }
.pro { fill: none; stroke: var(--reach); stroke-width: 1; }
.tutti { fill: var(--band); }
.played { fill: var(--played); }
.mostly { stroke: var(--ink); stroke-width: 2; fill: none; }
.beyond { fill: var(--doubt); }
figure { margin: 0; }
.key { fill: var(--reach); stroke: var(--paper); stroke-width: 2; }
.key-text { fill: var(--ink); }
.legend { display: flex; flex-wrap: wrap; gap: .35rem 1.5rem; padding: 0; margin: .25rem 0 1rem; list-style: none; font-size: .9em; }
.legend svg { display: inline-block; width: 2.5rem; height: .9rem; vertical-align: -.1rem; margin-right: .4rem; }
article { background: var(--note); border-left: 4px solid var(--doubt); padding: .9rem 1.2rem 1rem; margin: 0 0 1.1rem; }
article.remark { border-left-color: var(--reach); }
article ul { margin: .35rem 0 .35rem; padding-left: 1.2rem; }
.sides { display: grid; grid-template-columns: repeat(auto-fit, minmax(17rem, 1fr)); gap: 0 2rem; }
.sides h4 { font-size: .85em; margin: .6rem 0 0; color: var(--quiet); }
code { font: .92em ui-monospace, "DejaVu Sans Mono", monospace; }
footer { margin-top: 3rem; font-size: .9rem; color: var(--quiet); }
@media print {
  :root { color-scheme: light; }
  body { max-width: none; padding: 0; font-size: 8.5pt; background: none; }
  .roomy, tbody th { min-width: 0; }
  .chart { min-width: 0; }
  nav, .skip { display: none; }
  .scroll { overflow: visible; }
  tr, article, figure { break-inside: avoid; }
  h2 { break-after: avoid; }
  * { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
}
`
