import {describe, expect, it} from 'vitest'
import {openScore, rewrite} from '../lib/index.ts'
import {instrumentById} from '../lib/instruments/instrument.ts'
import {notationById} from '../lib/instruments/notation.ts'
import type {PartJob} from '../lib/plan/job.ts'
import {collect, sourceOf} from './support/bytes.ts'

/**
 * Every element of MusicXML 4.0 that carries pitch, and what becomes of it: a concert part in C major, treble clef, for alto
 * saxophone in E flat (written a major sixth higher, three sharps), unless the row says otherwise.
 */
interface Row {
  readonly element: string
  readonly before: string
  readonly after: readonly (string | RegExp)[]
  readonly never?: readonly string[]
  readonly attributes?: string
  readonly job?: PartJob
}

const SAXOPHONE: PartJob = {for: instrumentById('alto-saxophone-e-flat')}
const BASSOON: PartJob = {for: instrumentById('bassoon')}
const ATTRIBUTES =
  '<divisions>1</divisions><key><fifths>0</fifths></key><clef><sign>G</sign><line>2</line></clef>'
const C4 = '<pitch><step>C</step><octave>4</octave></pitch>'

function note(inside: string, rest = ''): string {
  return `<note>${inside}<duration>4</duration><voice>1</voice><type>whole</type>${rest}</note>`
}

const rows: readonly Row[] = [
  {
    element: 'pitch',
    before: note('<pitch><step>E</step><alter>-1</alter><octave>4</octave></pitch>'),
    after: ['<pitch><step>C</step><octave>5</octave></pitch>'],
  },
  {
    element: 'pitch/alter, fractional',
    before: note('<pitch><step>C</step><alter>0.5</alter><octave>4</octave></pitch>'),
    after: ['<step>A</step><alter>0.5</alter><octave>4</octave>'],
  },
  {
    element: 'accidental',
    before: note(
      '<pitch><step>B</step><alter>-1</alter><octave>4</octave></pitch>',
      '<accidental>flat</accidental>',
    ),
    after: ['<step>G</step><octave>5</octave>', '<accidental>natural</accidental>'],
  },
  {
    element: 'accidental, parenthesised',
    before: note(C4, '<accidental parentheses="yes">natural</accidental>'),
    after: ['<accidental parentheses="yes">natural</accidental>'],
  },
  {
    element: 'key/fifths, mode',
    attributes:
      '<divisions>1</divisions><key><fifths>-1</fifths><mode>minor</mode></key><clef><sign>G</sign><line>2</line></clef>',
    before: note(C4),
    after: ['<key><fifths>2</fifths><mode>minor</mode></key>'],
  },
  {
    element: 'key/cancel',
    before: `${note(C4)}<attributes><key><cancel>0</cancel><fifths>-2</fifths></key></attributes>`,
    after: ['<key><cancel>3</cancel><fifths>1</fifths></key>'],
  },
  {
    element: 'key/key-step, key-alter, key-accidental, key-octave',
    attributes:
      '<divisions>1</divisions><key><key-step>F</key-step><key-alter>1</key-alter><key-accidental>sharp</key-accidental><key-step>B</key-step><key-alter>-1</key-alter><key-octave number="1">5</key-octave></key><clef><sign>G</sign><line>2</line></clef>',
    before: note(C4),
    after: [
      '<key-step>D</key-step><key-alter>1</key-alter><key-accidental>sharp</key-accidental><key-step>G</key-step><key-alter>0</key-alter><key-octave number="1">6</key-octave>',
    ],
  },
  {
    element: 'clef',
    job: BASSOON,
    before: note('<pitch><step>C</step><octave>3</octave></pitch>'),
    after: ['<clef><sign>F</sign><line>4</line></clef>', '<step>C</step><octave>3</octave>'],
  },
  {
    element: 'clef/clef-octave-change',
    attributes:
      '<divisions>1</divisions><clef><sign>G</sign><line>2</line><clef-octave-change>-1</clef-octave-change></clef>',
    before: note('<pitch><step>C</step><octave>3</octave></pitch>'),
    after: ['<clef><sign>G</sign><line>2</line></clef>', '<step>A</step><octave>3</octave>'],
  },
  {
    element: 'clef, additional',
    before: `<attributes><clef additional="yes"><sign>C</sign><line>1</line></clef></attributes>${note(C4)}`,
    after: ['<clef additional="yes"><sign>C</sign><line>1</line></clef>'],
  },
  {
    element: 'transpose',
    before: note(C4),
    after: ['<transpose><diatonic>-5</diatonic><chromatic>-9</chromatic></transpose>'],
  },
  {
    element: 'transpose/double',
    attributes: `${ATTRIBUTES}<transpose><diatonic>0</diatonic><chromatic>0</chromatic><octave-change>-1</octave-change><double/></transpose>`,
    before: note(C4),
    after: [
      '<transpose><diatonic>-5</diatonic><chromatic>-9</chromatic><double/></transpose>',
      '<step>A</step><octave>3</octave>',
    ],
  },
  {
    element: 'for-part',
    attributes: `${ATTRIBUTES}<for-part><part-clef><sign>G</sign><line>2</line></part-clef><part-transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></part-transpose></for-part>`,
    before: note(C4),
    after: ['<step>A</step>'],
    never: ['for-part', 'part-clef', 'part-transpose'],
  },
  {
    element: 'rest/display-step, display-octave',
    job: BASSOON,
    before: `${note('<rest><display-step>B</display-step><display-octave>4</display-octave></rest>')}<backup><duration>4</duration></backup>${note('<pitch><step>C</step><octave>3</octave></pitch>')}`,
    after: ['<display-step>D</display-step><display-octave>3</display-octave>'],
  },
  {
    element: 'unpitched/display-step, display-octave',
    before: note(
      '<unpitched><display-step>E</display-step><display-octave>4</display-octave></unpitched>',
    ),
    after: [
      '<unpitched><display-step>E</display-step><display-octave>4</display-octave></unpitched>',
    ],
  },
  {
    element: 'stem',
    before: note(C4, '<stem default-y="10">up</stem>').replace(
      'C</step><octave>4',
      'E</step><octave>4',
    ),
    after: ['<step>C</step><alter>1</alter><octave>5</octave>', '<stem>down</stem>'],
  },
  {
    element: 'octave-shift',
    before: `<direction><direction-type><octave-shift type="down" size="8" number="1"/></direction-type></direction>${note('<pitch><step>C</step><octave>6</octave></pitch>')}<direction><direction-type><octave-shift type="stop" size="8" number="1"/></direction-type></direction>`,
    after: ['<step>A</step><octave>6</octave>'],
    never: ['octave-shift'],
  },
  {
    element: 'harmony/root, bass, kind, degree',
    before: `<harmony><root><root-step>B</root-step><root-alter>-1</root-alter></root><kind text="maj7">major-seventh</kind><bass><bass-step>D</bass-step></bass><degree><degree-value>9</degree-value><degree-alter>1</degree-alter><degree-type>add</degree-type></degree></harmony>${note(C4)}`,
    after: [
      '<root><root-step>G</root-step></root><kind text="maj7">major-seventh</kind><bass><bass-step>B</bass-step></bass><degree><degree-value>9</degree-value><degree-alter>1</degree-alter>',
    ],
  },
  {
    element: 'harmony/numeral/numeral-key',
    before: `<harmony><numeral><numeral-root>5</numeral-root><numeral-key><numeral-fifths>0</numeral-fifths><numeral-mode>major</numeral-mode></numeral-key></numeral><kind>dominant</kind></harmony>${note(C4)}`,
    after: ['<numeral-root>5</numeral-root>', '<numeral-fifths>3</numeral-fifths>'],
  },
  {
    element: 'harmony/function',
    before: `<harmony><function>V</function><kind>major</kind></harmony>${note(C4)}`,
    after: ['<function>V</function>'],
  },
  {
    element: 'harmony/frame',
    before: `<harmony><root><root-step>C</root-step></root><kind>major</kind><frame><frame-strings>6</frame-strings><frame-frets>5</frame-frets><frame-note><string>5</string><fret>3</fret></frame-note></frame></harmony>${note(C4)}`,
    after: ['<root-step>A</root-step>'],
    never: ['<frame>'],
  },
  {
    element: 'figured-bass/prefix',
    before: `<figured-bass><figure><prefix>sharp</prefix><figure-number>6</figure-number></figure></figured-bass>${note('<pitch><step>E</step><octave>4</octave></pitch>')}`,
    // The sixth above E is C sharp; a sixth above that is A sharp: the sign stays sharp.
    after: ['<prefix>sharp</prefix><figure-number>6</figure-number>'],
  },
  {
    element: 'figured-bass/prefix, alone',
    before: `<figured-bass><figure><prefix>flat</prefix></figure></figured-bass>${note('<pitch><step>G</step><octave>4</octave></pitch>')}`,
    // The third above G is B flat; in the part it is G natural.
    after: ['<prefix>natural</prefix>'],
  },
  {
    element: 'ornaments/accidental-mark',
    before: note(
      '<pitch><step>A</step><octave>4</octave></pitch>',
      '<notations><ornaments><trill-mark/><accidental-mark>flat</accidental-mark></ornaments></notations>',
    ),
    // A trilled with B flat is F sharp trilled with G natural.
    after: ['<accidental-mark>natural</accidental-mark>'],
  },
  {
    element: 'notations/accidental-mark',
    before: note(
      '<pitch><step>F</step><octave>4</octave></pitch>',
      '<notations><accidental-mark>sharp</accidental-mark></notations>',
    ),
    after: ['<step>D</step>', '<accidental-mark>sharp</accidental-mark>'],
  },
  {
    element: 'grace, chord, cue',
    before: `<note><grace/>${C4}<voice>1</voice></note>${note(C4)}<note><chord/><pitch><step>E</step><octave>4</octave></pitch><duration>4</duration></note><note><cue/>${C4}<duration>4</duration></note>`,
    after: [
      '<grace/><pitch><step>A</step>',
      '<chord/><pitch><step>C</step><alter>1</alter><octave>5</octave></pitch>',
      '<cue/><pitch><step>A</step>',
    ],
  },
  {
    element: 'tie across an enharmonic turn',
    job: {for: instrumentById('clarinet-a')},
    attributes:
      '<divisions>1</divisions><key><fifths>3</fifths></key><clef><sign>G</sign><line>2</line></clef>',
    before: `${note('<pitch><step>G</step><alter>1</alter><octave>4</octave></pitch>', '').replace('<voice>', '<tie type="start"/><voice>')}<attributes><key><fifths>-4</fifths></key></attributes>${note('<pitch><step>G</step><alter>1</alter><octave>4</octave></pitch>').replace('<voice>', '<tie type="stop"/><voice>')}`,
    after: [/(<step>B<\/step><octave>4<\/octave>[\s\S]*){2}/],
  },
  {
    element: 'harp-pedals',
    before: `<direction><direction-type><harp-pedals><pedal-tuning><pedal-step>D</pedal-step><pedal-alter>0</pedal-alter></pedal-tuning></harp-pedals></direction-type></direction>${note(C4)}`,
    after: ['<step>A</step>'],
    never: ['harp-pedals'],
  },
  {
    element: 'note@default-y',
    before: note(C4).replace('<note>', '<note default-x="12" default-y="-50">'),
    after: ['<note default-x="12">'],
  },
  {
    element: 'slur@default-y, bezier-y, placement',
    before: note(
      '<pitch><step>E</step><octave>4</octave></pitch>',
      '<stem>up</stem><notations><slur type="start" placement="below" default-x="3" default-y="-20" bezier-y="-9"/></notations>',
    ),
    after: ['<slur type="start" default-x="3"/>'],
  },
  {
    element: 'percussion clef',
    attributes: '<divisions>1</divisions><clef><sign>percussion</sign></clef>',
    before: note(C4),
    after: ['<clef><sign>percussion</sign></clef>', C4],
    never: ['<transpose>'],
  },
  {
    element: 'notation of the source',
    job: {from: notationById('horn.crook-f.old'), for: instrumentById('horn-f')},
    attributes:
      '<divisions>1</divisions><clef><sign>F</sign><line>4</line></clef><transpose><diatonic>-4</diatonic><chromatic>-7</chromatic></transpose>',
    before: note('<pitch><step>C</step><octave>3</octave></pitch>'),
    // Old notation: C in bass clef sounds F3, which a horn in F reads as middle C.
    after: ['<sign>G</sign>', '<step>C</step><octave>4</octave>'],
  },
]

async function rewritten({before, attributes = ATTRIBUTES, job = SAXOPHONE}: Row): Promise<string> {
  const text = `<score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Music</part-name></score-part></part-list><part id="P1"><measure number="1"><attributes>${attributes}</attributes>${before}</measure></part></score-partwise>`
  const score = await openScore(sourceOf(new TextEncoder().encode(text)))
  const out = await collect(
    rewrite(score, {parts: new Map([['P1', job]]), others: 'keep'}, () => {}),
  )
  return new TextDecoder().decode(out)
}

describe('every element that carries pitch', () => {
  it.each(rows.map((row) => [row.element, row] as const))('%s', async (_, row) => {
    const text = await rewritten(row)
    for (const wanted of row.after) {
      if (typeof wanted === 'string') expect(text).toContain(wanted)
      else expect(text).toMatch(wanted)
    }
    for (const unwanted of row.never ?? []) expect(text).not.toContain(unwanted)
  })
})
