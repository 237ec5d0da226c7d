import type {PairProof} from '../proof/compare.ts'
import type {Digest, SideDigest} from '../sheet/digest.ts'
import {counted} from './html.ts'

/** A fact about a part, before and after. */
export interface GlanceRow {
  readonly what: string
  readonly before: string
  readonly after: string
}

/** A part before and after at a glance, row by row, in a musician's words. */
export function glanceRows({before, after}: Digest): readonly GlanceRow[] {
  const row = (what: string, words: (side: SideDigest) => string): GlanceRow => ({
    what,
    before: words(before),
    after: words(after),
  })
  return [
    row('Part', ({name, id}) => name || id),
    row('Sounds', ({sounds}) => sounds.map((words) => words.replace(/^sounds /, '')).join('; ')),
    row('Clef', ({clefs}) => clefs.join(', ')),
    row('Key', ({keys}) => keys.join(', then ')),
    row('Written', ({written}) => rangeWords(written)),
    row('Sounding', ({sounding}) => rangeWords(sounding)),
    row('Notes', ({notes}) => String(notes)),
  ]
}

/**
 * What became of a part, in a few lines: from, to, key, clef, range, octave moves, doubts, proof. `hint` stands where no
 * proof was made.
 */
export function formatSummary(
  digest: Digest,
  {proof, hint}: {readonly proof?: PairProof | undefined; readonly hint: string},
): string[] {
  const {before, after, changes} = digest
  const facts = [
    ['from', sideWords(before)],
    ['to', sideWords(after)],
    ['key', arrow(before.keys.join(', then '), after.keys.join(', then '))],
    ['clef', arrow(clefWords(before), clefWords(after))],
    ['range', `${rangesWords(after)}${beyond(after)}`],
    [
      'octaves',
      say(
        changes.filter(({kind}) => kind === 'octave').map(({reason, what}) => reason ?? what),
        'none moved',
      ),
    ],
    [
      'doubts',
      say(
        changes.filter(({kind}) => kind === 'doubt').map(({what}) => what),
        'none told; renotate survey weighs what the file declares',
      ),
    ],
    ['proof', proof ? proofWords(proof) : hint],
  ] as const
  return facts.map(([name, words]) => `${name.padEnd(8)}${words}`)
}

function sideWords({name, id, sounds}: SideDigest): string {
  return [name || id, sounds.join('; ') || 'without pitches'].join(', ')
}

function clefWords({clefs}: SideDigest): string {
  return clefs.join(', ') || 'none with pitches'
}

function say(list: readonly string[], none: string): string {
  const all = [...new Set(list)]
  if (all.length === 0) return none
  const rest = all.length > 2 ? `, and ${all.length - 2} more` : ''
  return all.slice(0, 2).join('; ') + rest
}

function proofWords({different, intended, notes}: PairProof): string {
  if (different > 0)
    return `${counted(different, 'note')} of ${notes.before} ${different === 1 ? 'sounds' : 'sound'} otherwise: see renotate prove`
  return intended > 0
    ? `they sound the same, except ${counted(intended, 'note')} that differ as reported`
    : `they sound the same, all ${counted(notes.before, 'note')}`
}

function arrow(was: string, is: string): string {
  return was === is ? `${is}, as before` : `${was} → ${is}`
}

function beyond({reach, density}: SideDigest): string {
  const [range] = reach
  if (!range) return ''
  const outside = [...density].filter(([key]) => key < range.lowMidi || key > range.highMidi)
  const notes = outside.reduce((sum, [, each]) => sum + each, 0)
  return notes === 0 ? ', all within reach' : `, ${counted(notes, 'note')} out of reach`
}

function rangesWords({written, sounding}: SideDigest): string {
  const [was, is] = [rangeWords(written), rangeWords(sounding)]
  return was === is ? is : `${was} written, ${is} sounding`
}

function rangeWords(range: SideDigest['written']): string {
  return range ? `${range.low}–${range.high}` : 'no pitches'
}
