import type {Identity} from './plan.ts'
import type {PartJob} from './job.ts'

/** What the part is called afterwards; undefined when it keeps its names. The number of a desk (`Clarinet 2`) stays. */
export function identityOf(partName: string, job: PartJob): Identity | undefined {
  const {for: instrument, name} = job
  if (!instrument) return name === undefined ? undefined : {name, abbreviation: name}
  const label = instrument.labels.en
  const desk = /(?:^|\s)(\d{1,2}|[IVX]{1,4})\.?$/.exec(partName)?.[1]
  const numbered = (text: string): string => (desk === undefined ? text : `${text} ${desk}`)
  return {
    name: name ?? numbered(capitalised(label.name)),
    abbreviation: numbered(capitalised(label.abbreviation)),
    instrument,
  }
}

function capitalised(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1)
}
