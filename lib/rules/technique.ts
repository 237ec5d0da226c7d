import type {Report} from '../diagnostic.ts'
import {playerOf} from '../instruments/player.ts'
import {techniques as table} from '../instruments/technique.ts'
import {placeOf} from '../musicxml/measure.ts'
import type {Measure, Note} from '../musicxml/measure.ts'
import type {PartPlan} from '../plan/plan.ts'
import type {Element} from '../xml/element.ts'
import {child, childrenNamed, textOf} from '../xml/element.ts'
import type {Edit} from '../xml/edit.ts'
import type {Rule} from './rule.ts'
import {removeMusic, sectionOf} from './rule.ts'
import {follows, told} from './technique-direction.ts'

/** What else a harmonic's note may be: not sounding, so that its mark has to stay. */
const NOT_SOUNDING = ['base-pitch', 'touching-pitch'] as const
const DIAMONDS = new Set(['diamond', 'harmonic', 'open-diamond'])

/**
 * Marks on notes that the target's player cannot follow (renotation-rules, section 8): left out or kept by the table of
 * techniques and told; bow marks are told once with their number. On staves that are left alone, tablature above all,
 * they are the notation itself and stay.
 */
export const technique: Rule = {
  name: 'technique',
  owns: ['notations', 'technical', 'notehead', 'staff-tuning', 'capo'],
  *rewrite(measure, plan, report) {
    if (!plan.techniques) return
    for (const note of measure.notes) yield* editNote(measure, plan, note, report)
    for (const {element} of measure.attributes) {
      for (const details of childrenNamed(element, 'staff-details'))
        yield* editTuning(measure, plan, details, report)
    }
  },
  rewriteHeader(_header, plan, report) {
    tellCounts(plan, report)
    return []
  },
}

function* editNote(measure: Measure, plan: PartPlan, note: Note, report: Report): Iterable<Edit> {
  const all = childrenNamed(note.element, 'notations')
  const holders = all.flatMap((notations) => childrenNamed(notations, 'technical'))
  if (holders.length === 0) return
  const untouched = sectionOf(plan, measure, note)?.untouched ?? false
  for (const notations of all) {
    const technicals = childrenNamed(notations, 'technical')
    const gone = technicals.map((each) =>
      each.children.filter((mark) => changeMark(measure, plan, note, mark, untouched, report)),
    )
    const emptied = technicals.filter(
      ({children}, index) => children.length > 0 && children.length === gone[index]?.length,
    )
    if (emptied.length > 0 && emptied.length === notations.children.length) {
      yield removeMusic(measure.text, notations)
    } else {
      for (const [index, each] of technicals.entries()) {
        if (emptied.includes(each)) yield removeMusic(measure.text, each)
        else for (const mark of gone[index] ?? []) yield removeMusic(measure.text, mark)
      }
    }
    const notehead = child(note.element, 'notehead')
    const harmonic = gone.flat().some(({name}) => name === 'harmonic')
    if (harmonic && notehead && DIAMONDS.has(textOf(measure.text, notehead)))
      yield removeMusic(measure.text, notehead)
  }
}

/** Whether a mark goes; told either way, unless it is counted. */
function changeMark(
  measure: Measure,
  plan: PartPlan,
  note: Note,
  mark: Element,
  untouched: boolean,
  report: Report,
): boolean {
  const known = table.get(mark.name)
  const answer = known ? follows(mark.name, plan) : 'yes'
  if (!known || answer === 'yes') return false
  const from = sayMark(measure, mark)
  const place = placeOf(measure, mark)
  const stays =
    plan.techniques?.policy === 'keep' ||
    answer === 'unknown' ||
    untouched ||
    known.otherwise === 'keep'
  if (known.otherwise === 'sound' && !stays) return changeHarmonic(measure, note, mark, report)
  if (!known.counted) report({...told(known, stays ? 'kept' : 'removed', from), at: place})
  return !stays
}

/**
 * A harmonic that is notated where it sounds loses its mark. One that is notated where the string is touched or stopped has
 * another pitch than it sounds, which only a player can tell: it stays.
 */
function changeHarmonic(measure: Measure, note: Note, mark: Element, report: Report): boolean {
  const notehead = child(note.element, 'notehead')
  const diamond = notehead !== undefined && DIAMONDS.has(textOf(measure.text, notehead))
  const sounding = child(mark, 'sounding-pitch') !== undefined
  const unsure =
    NOT_SOUNDING.some((name) => child(mark, name)) ||
    (!sounding && (diamond || child(mark, 'artificial') !== undefined))
  report({
    code: unsure ? 'technique/harmonic' : 'technique/removed',
    severity: 'warning',
    message: unsure
      ? 'the harmonic is notated where the string is touched or stopped: what it sounds has to be written instead'
      : 'the mark of the harmonic is left out; the note stands where it sounds, and should be soft',
    at: placeOf(measure, mark),
    actual: 'harmonic',
  })
  return !unsure
}

function* editTuning(
  measure: Measure,
  plan: PartPlan,
  details: Element,
  report: Report,
): Iterable<Edit> {
  let first = true
  for (const each of details.children) {
    const known = table.get(each.name)
    const answer = known && follows(each.name, plan)
    if (!known || answer === 'yes') continue
    const tablature = measure.attributes.some(({changes}) =>
      changes.some(({change}) => change.clef?.sign === 'TAB'),
    )
    const stays = plan.techniques?.policy === 'keep' || answer === 'unknown' || tablature
    if (first)
      report({...told(known, stays ? 'kept' : 'removed', each.name), at: placeOf(measure, each)})
    first = false
    if (!stays) yield removeMusic(measure.text, each)
  }
}

/** Marks that come in hundreds are told once, and so are chords, which a wind player cannot play. */
function tellCounts(plan: PartPlan, report: Report): void {
  const {techniques, identity} = plan
  if (!techniques || !identity?.instrument) return
  const at = {part: plan.part}
  let bows = 0
  for (const [name, count] of techniques.counts) {
    const known = table.get(name)
    if (!known?.counted || follows(name, plan) === 'yes') continue
    if (known.otherwise === 'remove') bows += count
    else {
      report({
        code: 'technique/kept',
        severity: 'warning',
        message: `${count} × ${name} ${count === 1 ? 'is' : 'are'} kept${known.remark ? `: ${known.remark}` : ''}`,
        at,
      })
    }
  }
  if (bows > 0) {
    const kept = techniques.policy === 'keep'
    report({
      code: 'technique/bowing',
      severity: 'info',
      message: `${bows} bow ${bows === 1 ? 'mark is' : 'marks are'} ${kept ? 'kept' : 'left out'}`,
      at,
    })
  }
  const player = playerOf(identity.instrument)
  const chords = techniques.counts.get('chord') ?? 0
  if (chords > 0 && (player === 'woodwind' || player === 'brass' || player === 'voices')) {
    report({
      code: 'technique/chords',
      severity: 'warning',
      message: `${chords} ${chords === 1 ? 'note stands' : 'notes stand'} in chords: they need further players, or have to go`,
      at,
    })
  }
}

function sayMark(measure: Measure, mark: Element): string {
  const said = mark.children.length === 0 ? textOf(measure.text, mark) : ''
  return said === '' ? mark.name : `${mark.name} ${said}`
}
