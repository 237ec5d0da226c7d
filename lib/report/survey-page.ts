import type {Doubt} from '../survey/doubts.ts'
import type {PartSurvey, Survey} from '../survey/survey.ts'
import {axisOf, drawAxis, drawKeys, drawRange, LEGEND, signsOf} from './survey-chart.ts'
import {SURVEY_STYLE} from './survey-style.ts'

/**
 * The survey as one page of HTML that needs nothing else: who plays in score order, the keys at concert pitch, the range
 * and register of every part, and the doubts with their evidence. It has no script, and may load nothing.
 */
export function formatSurveyPage(survey: Survey): string {
  const title = survey.title || 'A score without a title'
  const doubts = survey.parts.reduce((sum, part) => sum + part.doubts.length, 0)
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="color-scheme" content="light dark">
<title>Survey: ${escape(title)}</title>
<style>${SURVEY_STYLE}</style>
</head>
<body>
<a class="skip" href="#instruments">To the instruments</a>
<header>
<h1>${escape(title)}</h1>
<p class="quiet">${headline(survey, doubts)}</p>
<nav aria-label="Sections"><ul>
<li><a href="#instruments">Instruments</a></li>${survey.keys.length > 0 ? '\n<li><a href="#keys">Keys</a></li>' : ''}
<li><a href="#ranges">Ranges</a></li>
<li><a href="#doubts">Doubts</a></li>
</ul></nav>
</header>
<main>
${instrumentSection(survey)}
${keySection(survey)}${rangeSection(survey)}
${doubtSection(survey, doubts)}
</main>
<footer><p>“Sure” is how often such a belief is right, by the evidence in the score. Nothing in the score was changed.</p></footer>
</body>
</html>
`
}

function headline({parts, measures, concertScore}: Survey, doubts: number): string {
  const concert = concertScore ? ', a concert score by its own account' : ''
  const told = doubts === 0 ? 'no doubts' : `<a href="#doubts">${count(doubts, 'doubt')}</a>`
  return `${count(parts.length, 'part')}, ${count(measures, 'measure')}${concert}; ${told}`
}

function instrumentSection({parts}: Survey): string {
  const rows = parts.map((part, index) => {
    const {name, id, believed, notes, unpitched} = part
    return `<tr><td class="number">${index + 1}</td><th scope="row">${escape(name || id)}${sub(playersOf(part))}</th>
<td>${escape(part.instrument?.name ?? 'unknown')}${sub(otherInstruments(part))}</td>
<td class="roomy">${soundsOf(part)}${flagOf(part, index)}</td>
<td class="number tight">${believed ? `${Math.floor(believed.confidence * 100)} %` : ''}</td>
<td>${escape(unique(part.clefs.map(({clef}) => clef)))}</td>
<td class="tight">${escape(keysOf(part))}</td>
<td class="tight">${rangeOf(part.written)}</td><td class="tight">${rangeOf(part.sounding)}</td>
<td class="number">${notes + unpitched}</td></tr>`
  })
  return `<section aria-labelledby="instruments">
<h2 id="instruments">Instruments</h2>
<div class="scroll" role="region" aria-label="Instruments, a table" tabindex="0"><table>
<caption>In the order of the score. What a part sounds is added to what is written.</caption>
<thead><tr><th scope="col" class="number">No.</th><th scope="col">Part</th><th scope="col">Instrument</th><th scope="col">Sounds</th><th scope="col" class="number">Sure</th><th scope="col">Clefs</th><th scope="col">Keys</th><th scope="col">Written</th><th scope="col">Sounding</th><th scope="col" class="number">Notes</th></tr></thead>
<tbody>
${rows.join('\n')}
</tbody>
</table></div>
</section>`
}

function keySection({keys, measures}: Survey): string {
  if (keys.length === 0) return ''
  const words = keys
    .map(({measure, fifths}) => `${signsInWords(fifths)} from measure ${escape(measure)}`)
    .join(', ')
  return `<section aria-labelledby="keys">
<h2 id="keys">Keys at concert pitch</h2>
<figure>${drawKeys(keys, measures, `Keys at concert pitch: ${words}`)}
<figcaption class="quiet">What the signatures of most parts say when each is moved to where it sounds; measure numbers below.</figcaption></figure>
</section>
`
}

function rangeSection(survey: Survey): string {
  const axis = axisOf(survey)
  const rows = survey.parts.flatMap((part) => {
    if (!part.sounding) return []
    const label = escape(`${part.name || part.id}: ${rangeWords(part)}`)
    return [
      `<tr><th scope="row">${escape(part.name || part.id)}</th><td class="chart">${drawRange(part, axis, label)}</td><td>${escape(rangeWords(part))}</td></tr>`,
    ]
  })
  const legend = LEGEND.map(
    ([drawing, words]) =>
      `<li><svg viewBox="0 0 40 14" aria-hidden="true">${drawing}</svg>${words}</li>`,
  )
  return `<section aria-labelledby="ranges">
<h2 id="ranges">Ranges and registers</h2>
<ul class="legend">${legend.join('')}</ul>
<div class="scroll" role="region" aria-label="Ranges, a table" tabindex="0"><table class="ranges">
<caption>As it sounds; middle C is C4.</caption>
<thead><tr><th scope="col">Part</th><th scope="col" class="chart">Range${drawAxis(axis)}</th><th scope="col">In words</th></tr></thead>
<tbody>
${rows.join('\n')}
</tbody>
</table></div>
</section>`
}

function doubtSection({parts}: Survey, doubts: number): string {
  const articles = parts.flatMap((part, index) =>
    part.doubts.map((doubt, at) => doubtArticle(part, index, doubt, at)),
  )
  const none =
    '<p>None: what the file declares is what the names, the keys, the ranges and the other parts say.</p>'
  return `<section aria-labelledby="doubts">
<h2 id="doubts">Doubts</h2>
${doubts === 0 ? none : articles.join('\n')}
</section>`
}

function doubtArticle(part: PartSurvey, index: number, doubt: Doubt, at: number): string {
  const where = doubt.at.measure === undefined ? '' : `, from measure ${escape(doubt.at.measure)}`
  const kind = doubt.severity === 'info' ? ' class="remark"' : ''
  const candidates = doubt.candidates.map(
    ({words, notation, confidence}) =>
      `<li>${escape(words)}, ${Math.round(confidence * 100)} % <span class="quiet">(${escape(notation)})</span></li>`,
  )
  return `<article${kind} id="${anchor(index, at)}" aria-labelledby="${anchor(index, at)}-title">
<h3 id="${anchor(index, at)}-title">${index + 1} ${escape(part.name || part.id)}${where}</h3>
<p>${capital(escape(doubt.message))}. <code>${escape(doubt.code)}</code></p>
<div class="sides">${side('For it', doubt.for)}${side('Against it', doubt.against)}
<div><h4>It may be</h4><ul>${candidates.join('')}</ul></div></div>
<p>To settle it so: <code>${escape(doubt.settle)}</code></p>
</article>`
}

function side(title: string, reasons: readonly string[]): string {
  if (reasons.length === 0) return ''
  return `<div><h4>${title}</h4><ul>${reasons.map((words) => `<li>${escape(words)}</li>`).join('')}</ul></div>`
}

function flagOf({doubts}: PartSurvey, index: number): string {
  return doubts
    .map((doubt, at) => {
      const words = doubt.severity === 'info' ? 'remark' : 'doubt'
      return ` <a class="flag" href="#${anchor(index, at)}">${words}</a>`
    })
    .join('')
}

function anchor(index: number, at: number): string {
  return `doubt-${index + 1}-${at + 1}`
}

function soundsOf({believed, others, notes, unpitched}: PartSurvey): string {
  if (!believed) return notes + unpitched === 0 ? 'no notes' : 'no pitches'
  return escape([believed, ...others].map(({words}) => words).join('; elsewhere '))
}

function playersOf(part: PartSurvey): string {
  const {players, desks, optional, doubles, alternatives, changes} = part
  return [
    ...(players === undefined ? [] : [count(players, 'player')]),
    ...(desks && desks.length > 1 ? [`no. ${desks.join(', ')}`] : []),
    ...(optional ? ['may be left out'] : []),
    ...(doubles ? [`also ${doubles.join(', ')}`] : []),
    ...(alternatives ? [`or ${alternatives.join(', ')}`] : []),
    ...changes.slice(0, 3).map(({words, measure}) => `${words}, measure ${measure}`),
  ].join('; ')
}

function otherInstruments({instrument}: PartSurvey): string {
  const others =
    instrument?.candidates.slice(1, 4).filter(({confidence}) => confidence >= 0.05) ?? []
  return others.length === 0
    ? ''
    : `or ${others.map(({name, confidence}) => `${name} ${Math.round(confidence * 100)} %`).join(', ')}`
}

function keysOf({keys}: PartSurvey): string {
  return unique(
    keys.map(({fifths}) =>
      fifths === undefined ? 'own signs' : fifths === 0 ? 'none' : signsOf(fifths),
    ),
  )
}

function rangeOf(range: {readonly low: string; readonly high: string} | undefined): string {
  return range ? `${signed(range.low)}–${signed(range.high)}` : ''
}

/** The range, the middle, and what lies outside everyday use. */
function rangeWords({sounding, tessitura, registers}: PartSurvey): string {
  const usual = registers.find(({tier}) => tier === 'tutti')
  const outside = usual ? Math.round((1 - usual.share) * 100) : 0
  return [
    rangeOf(sounding),
    ...(tessitura ? [`mostly ${rangeOf(tessitura)}`] : []),
    ...(outside > 0 ? [`${outside} % beyond everyday use`] : []),
  ].join(', ')
}

/** `Eb6` as people print it. */
function signed(pitch: string): string {
  return pitch.replace(
    /^([A-G])(b+|#+)/,
    (_, step: string, signs: string) =>
      step + (signs.startsWith('b') ? '♭' : '♯').repeat(signs.length),
  )
}

function signsInWords(fifths: number): string {
  if (fifths === 0) return 'no sharps or flats'
  return count(Math.abs(fifths), fifths < 0 ? 'flat' : 'sharp')
}

function unique(list: readonly string[]): string {
  return [...new Set(list)].join(', ')
}

function sub(text: string): string {
  return text === '' ? '' : `<span class="sub">${escape(text)}</span>`
}

function count(number: number, what: string): string {
  return `${number} ${what}${number === 1 ? '' : 's'}`
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

function escape(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}
