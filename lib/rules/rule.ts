import type {Report} from '../diagnostic.ts'
import type {Header} from '../musicxml/header.ts'
import type {Measure, Note} from '../musicxml/measure.ts'
import type {PartPlan, Section} from '../plan/plan.ts'
import {sectionAt} from '../plan/plan.ts'
import type {Edit} from '../xml/edit.ts'

/** One musical concern: it alone may edit the elements it owns. */
export interface Rule {
  /** Also the prefix of every code the rule reports. */
  readonly name: string
  /** MusicXML elements this rule alone may edit, attributes as `note@default-y`. Disjoint over the table; tested. */
  readonly owns: readonly string[]
  /** Yields the edits that make one measure say what the plan has decided. */
  rewrite(measure: Measure, plan: PartPlan, report: Report): Iterable<Edit>
  /** The same for the part's entry in the header, where a rule has business there. */
  rewriteHeader?(header: Header, plan: PartPlan, report: Report): Iterable<Edit>
}

/** The section that a note of a measure falls in. */
export function sectionOf(plan: PartPlan, measure: Measure, note: Note): Section | undefined {
  const at = {measure: measure.index, onset: note.onset / measure.ticks}
  const section = sectionAt(plan, note.staff, at)
  // A grace note before a change at its own onset still belongs to what was before.
  if (note.grace && section && section.measure === at.measure && section.onset === at.onset) {
    const later = measure.attributes.some(
      ({element, onset, run}) =>
        onset === note.onset && run === note.run && element.start > note.element.start,
    )
    if (later) return sectionAt(plan, note.staff, at, {before: true})
  }
  return section
}

/** The sections that begin inside a measure, on any staff, in order of onset. */
export function sectionsIn(plan: PartPlan, measure: Measure): Section[] {
  return plan.staves
    .flatMap((sections) => sections.filter((section) => section.measure === measure.index))
    .toSorted((a, b) => a.onset - b.onset || a.staff - b.staff)
}
