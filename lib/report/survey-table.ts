import type {Doubt} from '../survey/doubts.ts'
import type {PartSurvey, Survey} from '../survey/survey.ts'

/** What a terminal shows of a survey. */
export interface TableOptions {
  /** Characters in a line; between 72 and 140. */
  readonly width?: number | undefined
}

interface Column {
  readonly title: string
  readonly align: 'left' | 'right'
  /** The least width; a column that may grow shares what is left. */
  readonly width: number
  readonly grows?: number
  readonly cell: (part: PartSurvey, index: number) => string
}

/** The survey as lines for a terminal: a row a part, then the doubts with their evidence. */
export function formatSurvey(survey: Survey, options: TableOptions = {}): readonly string[] {
  const width = Math.max(72, Math.min(140, options.width ?? 100))
  const columns = columnsFor(survey, width)
  const header = columns
    .map((column) => pad(column.title, column))
    .join('  ')
    .trimEnd()
  const rows = survey.parts.map((part, index) =>
    columns
      .map((column) => pad(column.cell(part, index), column))
      .join('  ')
      .trimEnd(),
  )
  const doubts = survey.parts.flatMap((part, index) =>
    part.doubts.flatMap((doubt) => ['', ...doubtLines(part, index, doubt, width)]),
  )
  const count = survey.parts.reduce((sum, {doubts: own}) => sum + own.length, 0)
  const verdict = count === 0 ? 'No doubts.' : `${count} ${count === 1 ? 'doubt' : 'doubts'}:`
  return [...headLines(survey, width), '', header, ...rows, '', verdict, ...doubts]
}

function headLines(survey: Survey, width: number): readonly string[] {
  const {title, parts, measures, concertScore, keys} = survey
  const size = `${parts.length} ${parts.length === 1 ? 'part' : 'parts'}, ${measures} ${measures === 1 ? 'measure' : 'measures'}${concertScore ? ', a concert score by its own account' : ''}`
  const plan = keys.map(({measure, fifths}, index) => {
    const signs = signsOf(fifths)
    return index === 0 ? signs : `${signs} from measure ${measure}`
  })
  return [
    ...(title ? wrap(title, width, '') : []),
    size,
    ...(plan.length > 0 ? wrap(`Key at concert pitch: ${plan.join(', ')}`, width, '  ') : []),
  ]
}

function columnsFor(survey: Survey, width: number): readonly Column[] {
  const columns: readonly Column[] = [
    {title: '', align: 'right', width: 2, cell: (_, index) => String(index + 1)},
    {title: '', align: 'left', width: 1, cell: ({doubts}) => markOf(doubts)},
    {title: 'part', align: 'left', width: 10, grows: 26, cell: ({id, name}) => name || id},
    ...(width >= 110
      ? [
          {
            title: 'instrument',
            align: 'left',
            width: 10,
            grows: 24,
            cell: ({instrument}: PartSurvey) => instrument?.id ?? '',
          } as const,
        ]
      : []),
    {title: 'sounds', align: 'left', width: 12, grows: 30, cell: soundsOf},
    {title: 'sure', align: 'right', width: 4, cell: sureOf},
    {title: 'clefs', align: 'left', width: 5, grows: 9, cell: clefsOf},
    {title: 'written', align: 'left', width: 7, grows: 9, cell: ({written}) => rangeText(written)},
    {
      title: 'sounding',
      align: 'left',
      width: 8,
      grows: 9,
      cell: ({sounding}) => rangeText(sounding),
    },
    ...(width >= 96
      ? [
          {
            title: 'mostly',
            align: 'left',
            width: 6,
            grows: 9,
            cell: ({tessitura}: PartSurvey) => rangeText(tessitura),
          } as const,
        ]
      : []),
    {
      title: 'notes',
      align: 'right',
      width: 5,
      cell: ({notes, unpitched}) => String(notes + unpitched),
    },
  ]
  return fit(columns, survey.parts, width)
}

/** Gives the columns that may grow what they need, in their order of width, as far as the line is wide. */
function fit(
  columns: readonly Column[],
  parts: readonly PartSurvey[],
  width: number,
): readonly Column[] {
  const gaps = 2 * (columns.length - 1)
  let left = width - gaps - columns.reduce((sum, column) => sum + column.width, 0)
  const needs = columns.map((column) => {
    const longest = Math.max(
      column.title.length,
      ...parts.map((part, index) => lengthOf(column.cell(part, index))),
    )
    return Math.max(0, Math.min(column.grows ?? 0, longest) - column.width)
  })
  const shares = needs.map(() => 0)
  while (left > 0 && needs.some((need, at) => need > (shares[at] ?? 0))) {
    for (let at = 0; at < shares.length && left > 0; at++) {
      if ((needs[at] ?? 0) <= (shares[at] ?? 0)) continue
      shares[at] = (shares[at] ?? 0) + 1
      left--
    }
  }
  return columns.map((column, at) => ({...column, width: column.width + (shares[at] ?? 0)}))
}

function soundsOf({believed, others, notes, unpitched}: PartSurvey): string {
  if (!believed) return notes + unpitched === 0 ? 'no notes' : 'no pitches'
  const changes = others.length > 0 ? `, and ${others.map(({words}) => words).join(', ')}` : ''
  return `${believed.words}${changes}`
}

function sureOf({believed}: PartSurvey): string {
  // Rounded down: 100 % is said only of what is certain.
  return believed ? `${Math.floor(believed.confidence * 100)}%` : ''
}

function clefsOf({clefs}: PartSurvey): string {
  return [...new Set(clefs.map(({clef}) => (clef === 'percussion' ? 'perc.' : clef)))].join(' ')
}

function rangeText(range: {readonly low: string; readonly high: string} | undefined): string {
  return range ? `${range.low}–${range.high}` : ''
}

/** `?` a musician should look, `i` a remark, nothing where all is well. */
function markOf(doubts: readonly Doubt[]): string {
  if (doubts.some(({severity}) => severity !== 'info')) return '?'
  return doubts.length > 0 ? 'i' : ''
}

function doubtLines(
  part: PartSurvey,
  index: number,
  doubt: Doubt,
  width: number,
): readonly string[] {
  const where = doubt.at.measure === undefined ? '' : `, from measure ${doubt.at.measure}`
  const head = `${index + 1} ${part.name || part.id}${where}: ${doubt.message} [${doubt.code}]`
  const others = doubt.candidates
    .slice(0, 4)
    .map(({words, confidence}) => `${words} ${Math.round(confidence * 100)}%`)
  return [
    ...wrap(head, width, '   '),
    ...doubt.for.flatMap((words) => wrap(`   + ${words}`, width, '     ')),
    ...doubt.against.flatMap((words) => wrap(`   - ${words}`, width, '     ')),
    ...wrap(`   = ${others.join(' · ')}`, width, '     '),
    `   to settle it: ${doubt.settle}`,
  ]
}

function signsOf(fifths: number): string {
  if (fifths === 0) return 'no sharps or flats'
  const count = Math.abs(fifths)
  return `${count} ${fifths < 0 ? 'flat' : 'sharp'}${count === 1 ? '' : 's'}`
}

function pad(text: string, {width, align}: Column): string {
  const letters = [...text]
  const cut = letters.length > width ? `${letters.slice(0, width - 1).join('')}…` : text
  const space = ' '.repeat(Math.max(0, width - lengthOf(cut)))
  return align === 'right' ? space + cut : cut + space
}

function lengthOf(text: string): number {
  return [...text].length
}

function wrap(text: string, width: number, indent: string): readonly string[] {
  const lines: string[] = []
  const start = /^ */.exec(text)?.[0] ?? ''
  let line = start
  for (const word of text.trim().split(' ')) {
    const isFirst = line === start || line === indent
    if (!isFirst && lengthOf(line) + 1 + lengthOf(word) > width) {
      lines.push(line)
      line = indent + word
    } else line += isFirst ? word : ` ${word}`
  }
  return [...lines, line]
}
