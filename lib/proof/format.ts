import type {PairProof, PartName, Proof} from './compare.ts'
import {formatDifference} from './difference.ts'
import type {Difference} from './difference.ts'
import {parseFraction} from './fraction.ts'
import {astrayWords, counted} from './words.ts'

/** So many notes in a row that are off by the same interval are told in one line. */
const RUN = 4

/**
 * A proof in a musician's words, a line each: every pair of parts, its first `limit` differences (default 20), the parts
 * left over, and the verdict last. Notes in a row that are off by one interval share a line.
 */
export function formatProof(proof: Proof, {limit = 20}: {readonly limit?: number} = {}): string[] {
  const lines = proof.pairs.flatMap((pair) => formatPair(pair, limit))
  const {before} = proof.unpaired
  // AFTER is often one part of a score: that the others are not there is one fact, not twenty.
  if (before.length > 2)
    lines.push(
      `${counted(before.length, 'other part')} of BEFORE: nothing in AFTER belongs to them`,
    )
  else for (const part of before) lines.push(`${formatPart(part)}: nothing in AFTER belongs to it`)
  for (const part of proof.unpaired.after)
    lines.push(`${formatPart(part)}: nothing in BEFORE belongs to it`)
  return [...lines, formatVerdict(proof)]
}

function formatVerdict({verdict, pairs}: Proof): string {
  if (pairs.length === 0 && verdict === 'different') return 'The scores have no part in common'
  if (pairs.length > 0 && pairs.every(({otherPiece}) => otherPiece)) return 'This is another piece'
  return {
    equal: 'They sound the same',
    intended: 'They sound the same, except where the report says otherwise',
    different: 'They do not sound the same',
  }[verdict]
}

function formatPair(pair: PairProof, limit: number): string[] {
  const name =
    pair.before.id === pair.after.id && pair.before.name === pair.after.name
      ? formatPart(pair.before)
      : `${formatPart(pair.before)} as ${formatPart(pair.after)}`
  if (pair.otherPiece) return [`${name}: this is other music (${formatCounts(pair)})`]
  const entries = gather(pair.differences)
  const shown = entries.slice(0, limit)
  const told = shown.reduce((total, {count}) => total + count, 0)
  const all = pair.differences.length === 0 ? 0 : pair.different
  const rest = pair.constantInterval ? entries.length - shown.length : all - told
  return [
    `${name}: ${formatCounts(pair)}`,
    ...pair.intendedBy
      .filter(({notes}) => notes > 0)
      .map(({reason, notes}) => `  as reported: ${reason} (${counted(notes, 'note')})`),
    ...shown.map(({text}) => `  ${text}`),
    ...(rest > 0 ? [`  … and ${counted(rest, 'more difference')}`] : []),
  ]
}

function formatCounts({notes, measures, equal, intended, respelled, different}: PairProof): string {
  const all = notes.before === notes.after && equal === notes.before
  const words = [
    counted(notes.before, 'note'),
    all ? 'all sound the same' : `${equal} sound the same`,
    ...(intended > 0 ? [`${intended} differ as reported`] : []),
    ...(different > 0 ? [counted(different, 'difference')] : []),
    ...(respelled > 0 ? [`${respelled} spelled otherwise`] : []),
    ...(measures.before === measures.after
      ? []
      : [`${measures.before} measures have become ${measures.after}`]),
  ]
  return words.join(', ')
}

function formatPart({id, name}: PartName): string {
  return name === '' ? `part ${id}` : `${name} (${id})`
}

/** One line a difference, or a line for a whole run of notes that are off by the same interval. */
function gather(differences: readonly Difference[]) {
  const entries: {count: number; text: string}[] = []
  for (let start = 0; start < differences.length;) {
    const first = differences[start]
    if (!first) break
    let end = start + 1
    while (first.kind === 'pitch' && differences[end]?.semitones === first.semitones) end++
    const run = differences.slice(start, end)
    if (run.length >= RUN) entries.push({count: run.length, text: formatRun(first, run)})
    else entries.push(...run.map((one) => ({count: 1, text: formatDifference(one)})))
    start = end
  }
  return entries
}

function formatRun(first: Difference, run: readonly Difference[]): string {
  const last = run.at(-1) ?? first
  const where =
    first.measureIndex === last.measureIndex
      ? `measure ${first.measure}`
      : `measures ${first.measure} to ${last.measure}`
  const semitones = parseFraction(first.semitones ?? '')
  return `${where}: ${run.length} notes sound ${semitones ? astrayWords(semitones) : 'elsewhere'}`
}
