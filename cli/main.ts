import {Command, InvalidArgumentError, Option} from 'commander'
import {toolVersion} from '../lib/version.ts'
import {isUsageError} from './usage.ts'

const program = new Command('renotate')
  .description(
    'Re-notates MusicXML parts for the players at hand, and proves that they sound the same',
  )
  .version(toolVersion)
  .showHelpAfterError('(renotate --help lists the commands)')
  .exitOverride()
  .configureHelp({showGlobalOptions: false})
  .addHelpText(
    'after',
    `
SCORE is a MusicXML file, plain or .mxl; - is standard input.
Exit code: 0 done · 1 the answer is no · 2 bad usage or bad input, nothing written.`,
  )

const output = (): Option =>
  new Option('-o, --output <file>', 'where to write; - is standard output').makeOptionMandatory()
const force = (): Option => new Option('--force', 'overwrite an existing file')
const quiet = (): Option => new Option('--quiet', 'say nothing about decisions and doubts')

program
  .command('survey')
  .description('tell who each part is for, what it really sounds, and what is doubtful')
  .argument('<score>')
  .option('--json', 'as JSON')
  .option('--html <file>', 'write a page with ranges, keys and doubts; - is standard output')
  .option('--names <file>', 'names of your own: a JSON object, {"Gr. Schl.": "bass-drum"}')
  .option('--strict', 'exit with 1 when there are doubts')
  .addOption(force())
  .addOption(quiet())
  .action(async (score, options) =>
    exit(await (await import('./survey.ts')).runSurvey(score, options)),
  )

program
  .command('part')
  .description('write one part as its own file, re-notated as asked')
  .argument('<score>')
  .requiredOption('-p, --part <part>', 'the part: id, name, or number in the score')
  .option(
    '-f, --for <instrument>',
    'the instrument whose player gets it: id, or name in six languages',
  )
  .option('-t, --to <notation>', 'the notation wanted: id, or words of its name')
  .option(
    '--from <notation>',
    'what the part is written in, where the file is not to be believed; believed: what survey finds',
  )
  .option('--name <name>', 'what the part is called, instead of the name of the instrument')
  .option('--key-limit <signs>', 'most sharps or flats in a signature', toSigns)
  .addOption(
    new Option('--prefer <signs>', 'which of two enharmonic keys to take').choices([
      'fewest',
      'sharps',
      'flats',
    ]),
  )
  .addOption(
    new Option(
      '--signature <how>',
      'key signatures: as the instrument has them, or always, or never',
    ).choices(['custom', 'print', 'omit']),
  )
  .addOption(
    new Option(
      '--spelling <policy>',
      'notes outside their function: kept, plain, or plain as in school',
    ).choices(['keep', 'plain', 'school']),
  )
  .addOption(
    new Option(
      '--courtesy <policy>',
      'courtesy accidentals: as in the source, also by rule, or none',
    ).choices(['keep', 'add', 'none']),
  )
  .option('--explain', 'show every choice of a key signature beside its alternative')
  .option(
    '--ledger-lines <count>',
    'ledger lines the reader accepts before the clef changes',
    toCount,
  )
  .addOption(
    new Option('--fold [tier]', 'move phrases by octaves where they lie badly for a player')
      .choices(['pro', 'tutti', 'student'])
      .preset('tutti'),
  )
  .option('--drop', 'with --fold: notes that no octave saves become cues, not played')
  .addOption(
    new Option(
      '--techniques <how>',
      'marks that mean nothing to the instrument: translated, left out or kept by table, or all kept',
    ).choices(['translate', 'keep']),
  )
  .addOption(
    new Option(
      '--octave-lines <how>',
      'lines such as 8va: as the players read them, or all kept, or none',
    ).choices(['custom', 'keep', 'remove']),
  )
  .addOption(
    new Option('--layout <how>', 'line and page breaks, widths and distances of the score').choices(
      ['keep', 'drop'],
    ),
  )
  .addOption(
    new Option(
      '--language <code>',
      'of the name of the part, instead of that of its old name',
    ).choices(['en', 'fr', 'de', 'it', 'es', 'nl']),
  )
  .option('--cues [measures]', 'small silent cues before entries after so much rest; 8 unless said')
  .option('--cue-length <measures>', 'how long a cue should be; 2 unless said, 4 at most')
  .option('--cues-from <part...>', 'only from these parts; otherwise from whoever is best heard')
  .option(
    '--cross-cues <part>',
    'add the music of this part small to the rests, to be played where its player is missing',
  )
  .option('--report <file>', 'write what sounds otherwise, for prove --intended')
  .option('--prove', 'prove that the part written sounds the same; 1 if it does not')
  .addOption(output())
  .addOption(force())
  .addOption(quiet())
  .action(async (score, options) => exit(await (await import('./part.ts')).runPart(score, options)))

program
  .command('concert')
  .description('write the whole score at concert pitch')
  .argument('<score>')
  .addOption(
    new Option('--octaves <how>', 'instruments that sound whole octaves away stay so, or not')
      .choices(['customary', 'sounding'])
      .default('customary'),
  )
  .addOption(output())
  .addOption(force())
  .addOption(quiet())
  .action(async (score, options) =>
    exit(await (await import('./concert.ts')).runConcert(score, options)),
  )

program
  .command('sounding')
  .description('print every note as it sounds, a JSON object a line')
  .argument('<score>')
  .option('-p, --part <part>', 'only this part: id, name, or number in the score')
  .option('--from <notation>', 'what it is written in, where the file is not to be believed')
  .addOption(quiet())
  .action(async (score, options) =>
    exit(await (await import('./sounding.ts')).runSounding(score, options)),
  )

program
  .command('cover')
  .description('tell who could cover a part, best first, or write the part for one of them')
  .argument('<score>')
  .requiredOption('-p, --part <part>', 'the part to cover: id, name, or number in the score')
  .option('--as <instrument>', 'what the part was written for, where its name does not tell')
  .option(
    '--from <notation>',
    'what it is written in, where the file is not to be believed; believed: what survey finds',
  )
  .option('-r, --roster <file>', 'the players at hand (YAML); otherwise the whole catalogue')
  .addOption(
    new Option('--tier <tier>', 'how far players of the catalogue go')
      .choices(['pro', 'tutti', 'student'])
      .default('tutti'),
  )
  .option('--count <number>', 'how many to print; 10 unless said')
  .option('--json', 'all of them, as JSON')
  .option('--html <file>', 'write a page with ranges drawn; - is standard output')
  .option('--write <number>', 'write the part for this one of them, with -o')
  .option('--drop', 'with --write: notes that no octave saves become cues, not played')
  .option('--woven', "with --write: into the player's own part, where it has rests or is doubled")
  .option('-o, --output <file>', 'where to write the part; - is standard output')
  .option('--report <file>', 'with --write: what sounds otherwise, for prove --intended')
  .addOption(force())
  .addOption(quiet())
  .action(async (score, options) =>
    exit(await (await import('./cover.ts')).runCover(score, options)),
  )

program
  .command('prove')
  .description('tell whether two scores sound the same, and where they do not')
  .argument('<before>')
  .argument('<after>')
  .option(
    '--from <notation>',
    'what BEFORE is written in, where the file is not to be believed; believed: what survey finds',
  )
  .option('--intended <report...>', 'reports that say what is meant to sound otherwise')
  .option('--json', 'every difference, as JSON')
  .option('--certificate <file>', 'write a record of what was compared')
  .addOption(force())
  .action(async (before, after, options) =>
    exit(await (await import('./prove.ts')).runProve(before, after, options)),
  )

program
  .command('sheet')
  .description('write a page that shows a part before and after, with every change and the proof')
  .argument('<before>')
  .argument('<after>')
  .option('-p, --part <part>', 'the part of BEFORE: id, name, or number in the score')
  .option(
    '--from <notation>',
    'what BEFORE is written in, where the file is not to be believed; believed: what survey finds',
  )
  .option('--report <file...>', 'reports of `part` that say what was changed, and why')
  .requiredOption('--html <file>', 'where to write; - is standard output')
  .addOption(force())
  .addOption(quiet())
  .action(async (before, after, options) =>
    exit(await (await import('./sheet.ts')).runSheet(before, after, options)),
  )

program
  .command('list')
  .description('show the catalogue, with its sources')
  .argument('<kind>', 'instruments or notations')
  .argument('[words...]', 'only what these words may mean')
  .option('--json', 'as JSON')
  .option(
    '--same-lines <notation>',
    'notations: those that keep its notes on their lines, under another clef',
  )
  .action(async (kind, words, options) => {
    if (kind !== 'instruments' && kind !== 'notations')
      fail(`there is a list of instruments and one of notations, none of ${kind}`)
    else exit(await (await import('./list.ts')).runList(kind, words, options))
  })

function toSigns(text: string): number {
  const signs = Number(text)
  if (![5, 6, 7].includes(signs)) throw new InvalidArgumentError('5, 6 or 7.')
  return signs
}

function toCount(text: string): number {
  const count = Number(text)
  if (!Number.isInteger(count) || count < 0 || count > 9) throw new InvalidArgumentError('0 to 9.')
  return count
}

/** Ends as soon as all is printed, without waiting for what V8 still compiles in the background. */
function exit(code: number): void {
  isUnderway = false
  process.exitCode = code
  // What could not be printed comes as an event of the stream, which has the last word.
  process.stdout.write('', (error) => {
    if (!error) process.stderr.write('', () => process.exit())
  })
}

/** By name: to load the library before a command needs it would make every start slower. */
function isScoreError(error: unknown): error is Error {
  return error instanceof Error && error.name === 'ScoreError'
}

function fail(message: string): void {
  isUnderway = false
  process.stderr.write(`error: ${message}\n`)
  process.exitCode = 2
}

// Node ends without a word when nothing is left to wait for, though somebody waits: that must not pass for success.
let isUnderway = false
program.hook('preAction', () => {
  isUnderway = true
})
process.once('exit', () => {
  if (isUnderway) fail('the work stopped half way; this is a fault of renotate')
})

// A reader that has seen enough (`| head`) closes the pipe: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit()
  fail(error.message)
  process.exit()
})

program.parseAsync().catch((error: unknown) => {
  if (isScoreError(error) || isUsageError(error)) fail(error.message)
  else if (error instanceof Error && 'exitCode' in error)
    process.exitCode = error.exitCode === 0 ? 0 : 2
  else if (error instanceof Error && 'syscall' in error) fail(error.message)
  else throw error
})
