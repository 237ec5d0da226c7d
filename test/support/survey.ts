import type {Interval} from '../../lib/index.ts'
import {openScore, readFacts} from '../../lib/score.ts'
import {surveyScore} from '../../lib/survey/survey.ts'
import type {Surveyed} from '../../lib/survey/survey.ts'
import {sourceOf} from './bytes.ts'

/** The survey of a score in XML, with the beliefs it was made of. */
export async function surveyXml(xml: string): Promise<Surveyed> {
  const bytes = new TextEncoder().encode(xml.replace(/encoding=["'][^"']*["']/, 'encoding="UTF-8"'))
  const score = await openScore(sourceOf(bytes))
  const ids = score.header.parts.map(({id}) => id)
  const facts = await readFacts(score, new Map(ids.map((id) => [id, undefined])), () => {})
  return surveyScore(
    score.header,
    ids.flatMap((id) => facts.get(id) ?? []),
  )
}

/** The score without a word about transposition. */
export function withoutTranspositions(xml: string): string {
  return xml.replaceAll(/<transpose\b[^>]*>[\s\S]*?<\/transpose>/g, '')
}

/** The score with the transposition of one part moved by an interval; octaves stand folded into the numbers. */
export function withMovedTransposition(xml: string, part: string, by: Interval): string {
  const start = xml.indexOf(`<part id="${part}"`)
  const end = xml.indexOf('</part>', start)
  const body = xml
    .slice(start, end)
    .replaceAll(/<transpose\b[^>]*>[\s\S]*?<\/transpose>/g, (text) => {
      const number = (name: string): number =>
        Number(new RegExp(`<${name}>\\s*(-?\\d+)`).exec(text)?.[1] ?? 0)
      const octaves = number('octave-change')
      const diatonic = number('diatonic') + 7 * octaves + by.diatonic
      const chromatic = number('chromatic') + 12 * octaves + by.chromatic
      return `<transpose><diatonic>${diatonic}</diatonic><chromatic>${chromatic}</chromatic></transpose>`
    })
  return xml.slice(0, start) + body + xml.slice(end)
}
