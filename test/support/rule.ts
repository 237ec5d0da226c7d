import {instrumentById} from '../../lib/instruments/instrument.ts'
import {planPart} from '../../lib/plan/decide.ts'
import type {PartJob} from '../../lib/plan/job.ts'
import {rules} from '../../lib/rules/index.ts'
import {applyEdits} from '../../lib/xml/edit.ts'
import {factsAbout, readPart} from './part.ts'

/** A job for an instrument by its id. */
export function forInstrument(id: string, rest: PartJob = {}): PartJob {
  const instrument = instrumentById(id)
  if (!instrument) throw new Error(`no ${id}`)
  return {for: instrument, ...rest}
}

/** What one rule alone makes of the contents of a part's measures, and what it tells. */
export function ruled(
  name: string,
  contents: readonly string[],
  job: PartJob,
): {readonly measures: readonly string[]; readonly told: readonly string[]} {
  const rule = rules.find((each) => each.name === name)
  if (!rule) throw new Error(`no rule ${name}`)
  const told: string[] = []
  const plan = planPart(factsAbout(contents), job, {}, () => {})
  const measures = readPart(contents).map((measure) => {
    const edits = [...rule.rewrite(measure, plan, ({code}) => told.push(code))]
    return applyEdits(measure.text, edits).replaceAll(/^<measure[^>]*>|<\/measure>$/g, '')
  })
  return {measures, told}
}
