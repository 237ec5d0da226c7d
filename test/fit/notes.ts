import {clockOf} from '../../lib/fit/clock.ts'
import {lineOf} from '../../lib/fit/line.ts'
import type {Line} from '../../lib/fit/line.ts'
import {parsePitch} from '../../lib/pitch/pitch.ts'
import {openScore, readFacts} from '../../lib/renotate.ts'
import type {PartFacts} from '../../lib/survey/facts.ts'
import {sourceOf} from '../support/bytes.ts'

/**
 * A part as text: `Eb2` a quarter, `Eb2:3/2` longer, `r:2` a rest, `C2+E2` a chord; `(` and `)` after a note begin and end
 * a slur, `_` ties it to the next and `~` to the one before, `[` and `]` begin and end a beam, `'` is a breath mark, `|` a barline, `||` a double
 * bar, `t90` a tempo. Everything sounds as written.
 */
export function partXml(id: string, text: string): string {
  const measures = text.split(/(?<!\|)\|(?!\|)/).map((content, index, all) => {
    const double = content.includes('||')
    return {content: content.replaceAll('||', ' '), double, last: index === all.length - 1}
  })
  const xml = measures.map(({content, double}, index) => {
    const notes = content.trim().split(/\s+/).filter(Boolean).map(noteXml).join('')
    const bar = double
      ? '<barline location="right"><bar-style>light-light</bar-style></barline>'
      : ''
    return `<measure number="${index + 1}">${index === 0 ? ATTRIBUTES : ''}${notes}${bar}</measure>`
  })
  return `<part id="${id}">${xml.join('')}</part>`
}

/** A score of parts, `P1` first. */
export function scoreXml(parts: readonly string[], names: readonly string[] = []): string {
  const list = parts
    .map(
      (_, index) =>
        `<score-part id="P${index + 1}"><part-name>${names[index] ?? ''}</part-name></score-part>`,
    )
    .join('')
  const music = parts.map((text, index) => partXml(`P${index + 1}`, text)).join('')
  return `<score-partwise version="4.0"><part-list>${list}</part-list>${music}</score-partwise>`
}

export async function factsFrom(parts: readonly string[]): Promise<ReadonlyMap<string, PartFacts>> {
  const score = await openScore(sourceOf(new TextEncoder().encode(scoreXml(parts))))
  return readFacts(score, new Map(parts.map((_, index) => [`P${index + 1}`, undefined])), () => {})
}

export async function linesFrom(...parts: readonly string[]): Promise<Line[]> {
  const facts = await factsFrom(parts)
  const clock = clockOf(facts.values())
  return [...facts.values()].map((each) => lineOf(each, clock))
}

const DIVISIONS = 12
const ATTRIBUTES = `<attributes><divisions>${DIVISIONS}</divisions><clef><sign>F</sign><line>4</line></clef></attributes>`

function noteXml(token: string): string {
  if (/^t\d+$/.test(token)) return `<sound tempo="${token.slice(1)}"/>`
  const [, top = '1', bottom = '1'] = /:(\d+)(?:\/(\d+))?/.exec(token) ?? []
  const duration = `<duration>${(DIVISIONS * Number(top)) / Number(bottom)}</duration>`
  if (token.startsWith('r')) return `<note><rest/>${duration}</note>`
  return token
    .split('+')
    .map((member, index) => {
      const [, name = '', marks = ''] = /^([A-G][#b]*\d)(?::[\d/]+)?(.*)$/.exec(member) ?? []
      const pitch = parsePitch(name)
      if (!pitch) throw new Error(`no pitch: ${member}`)
      return [
        `<note>${index > 0 ? '<chord/>' : ''}<pitch><step>${pitch.step}</step>`,
        `${pitch.alter ? `<alter>${pitch.alter}</alter>` : ''}<octave>${pitch.octave}</octave></pitch>`,
        duration,
        marks.includes('~') ? '<tie type="stop"/>' : '',
        marks.includes('_') ? '<tie type="start"/>' : '',
        marks.includes('[') ? '<beam number="1">begin</beam>' : '',
        marks.includes(']') ? '<beam number="1">end</beam>' : '',
        notationsXml(marks),
        '</note>',
      ].join('')
    })
    .join('')
}

function notationsXml(marks: string): string {
  const found = [
    marks.includes('(') ? '<slur type="start"/>' : '',
    marks.includes(')') ? '<slur type="stop"/>' : '',
    marks.includes("'") ? '<articulations><breath-mark/></articulations>' : '',
  ].join('')
  return found && `<notations>${found}</notations>`
}
