import type {Report} from '../diagnostic.ts'
import type {Header} from '../musicxml/header.ts'
import type {Measure, Note, Positioned} from '../musicxml/measure.ts'
import type {PartPlan, Position, Section} from '../plan/plan.ts'
import {keepsPitch, sectionAt, writtenPitch} from '../plan/plan.ts'
import {respell} from '../plan/spelling.ts'
import type {Respelling} from '../plan/spelling.ts'
import type {Pitch} from '../pitch/pitch.ts'
import {staffPosition} from '../staff/clef.ts'
import {childNumber} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import {removeElement} from '../xml/edit.ts'
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

/** A note as the target's player reads it. */
export interface Target {
  readonly section: Section
  readonly written: Pitch
  readonly respelled?: Respelling
}

/**
 * What becomes of a pitched note; undefined for rests and unpitched notes. A note tied over an enharmonic turn keeps the
 * spelling of its beginning (renotation-rules E6).
 */
export function targetOf(plan: PartPlan, measure: Measure, note: Note): Target | undefined {
  return isPrepared(plan) ? plan.targets[note.index] : findTarget(plan, measure, note)
}

/**
 * The plan with what it makes of every note of a measure: several rules ask for that. One record for all measures, in
 * which each replaces the one before: to copy a plan takes as long as a rule.
 */
export function targeting(plan: PartPlan): (measure: Measure) => PartPlan & Prepared {
  const prepared: PartPlan & Prepared = {...plan, targets: []}
  return (measure) => {
    prepared.targets = measure.notes.map((note) => findTarget(plan, measure, note))
    return prepared
  }
}

interface Prepared {
  targets: readonly (Target | undefined)[]
}

function isPrepared(plan: PartPlan): plan is PartPlan & Prepared {
  return 'targets' in plan
}

function findTarget(plan: PartPlan, measure: Measure, note: Note): Target | undefined {
  const section = sectionOf(plan, measure, note)
  if (!section || !note.written || !note.sounding) return undefined
  if (section.untouched || keepsPitch(section)) return {section, written: note.written}
  const at = {measure: measure.index, onset: note.onset / measure.ticks}
  const starts = section.measure === at.measure && section.onset === at.onset
  const carries = note.tiedFrom && starts && plan.spelling !== 'exact'
  const speller = carries ? spellerOf(plan, note, section, at) : section
  const written = writtenPitch(speller, note.sounding)
  const respelled = respell(written, speller.key, plan.spelling)
  return {section, written: respelled?.pitch ?? written, ...(respelled && {respelled})}
}

function spellerOf(plan: PartPlan, note: Note, section: Section, at: Position): Section {
  const before = sectionAt(plan, note.staff, at, {before: true})
  const turnedOnly =
    before && before.transposition.interval.chromatic === section.transposition.interval.chromatic
  return turnedOnly ? before : section
}

/**
 * Where a note stands on the staff in the source and in the target, in steps above the bottom line: an octave line
 * displaces it as long as the line stays.
 */
export function positionsOf(
  plan: PartPlan,
  note: Note,
  target: Target,
): {readonly from: number; readonly to: number} {
  const {octaveLine: line, written = target.written} = note
  const drawn = line && !plan.octaveLines.removed.has(line.index) ? line.steps : 0
  return {
    from: staffPosition(written, note.state.clef) + (line?.steps ?? 0),
    to: staffPosition(target.written, target.section.clef) + drawn,
  }
}

/** Removes an element, but not the comments and instructions in it: they are the encoder's, not the music's. */
export function removeMusic(text: string, element: Element): Edit {
  const edit = removeElement(text, element)
  const remarks = remarksIn(text.slice(element.start, element.end))
  return remarks === '' ? edit : {...edit, text: text.slice(edit.start, element.start) + remarks}
}

/** The comments and instructions of a text. */
export function remarksIn(text: string): string {
  return text.match(/<!--[\s\S]*?-->|<\?[\s\S]*?\?>/g)?.join('') ?? ''
}

/** The section that something between the notes falls in, by its own staff. */
export function sectionOfElement(
  measure: Measure,
  plan: PartPlan,
  at: Positioned,
): Section | undefined {
  const staff = childNumber(measure.text, at.element, 'staff') ?? 1
  return sectionAt(plan, staff, {measure: measure.index, onset: at.onset / measure.ticks})
}

/** The sections that begin inside a measure, on any staff, in order of onset. */
export function sectionsIn(plan: PartPlan, measure: Measure): Section[] {
  const found: Section[] = []
  for (const sections of plan.staves)
    for (const section of sections) if (section.measure === measure.index) found.push(section)
  return found.length < 2 ? found : found.toSorted((a, b) => a.onset - b.onset || a.staff - b.staff)
}
