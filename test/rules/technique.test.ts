import {expect, it} from 'vitest'
import type {PartJob} from '../../lib/plan/job.ts'
import {direction, renotated, wholeNote, words} from '../support/one-part.ts'

/** A measure of a violin part that goes to an instrument, and what is left between the notes. */
async function measureFor(
  instrument: string,
  measure: string,
  job: Partial<PartJob> = {},
  name = 'Violin',
): Promise<{left: string; told: readonly string[]}> {
  const {text, told} = await renotated({name, measures: [measure]}, instrument, job)
  const content = /<measure number="1">(.*)<\/measure>/s.exec(text)?.[1] ?? ''
  return {
    left: content
      .replaceAll(/<attributes>.*?<\/attributes>/gs, '')
      .replaceAll(/<\/?direction(-type)?>/g, '')
      .replaceAll(/<pitch>.*?<\/type>/gs, ''),
    told: told.filter((each) => each.startsWith('technique/')),
  }
}

const NOTE = '<note></note>'

it.each([
  // renotation-rules, section 8, row by row: what stood, for whom, what is left, what is told.
  [words('pizz.'), 'flute', '<words>stacc.</words>', ['technique/translated pizz. -> stacc.']],
  [words('arco'), 'flute', '', ['technique/removed arco']],
  [words('con sord.'), 'flute', '', ['technique/removed con sord.']],
  [words('con sord.'), 'trumpet-b-flat', '<words>con sord.</words>', []],
  [words('sul pont.'), 'oboe', '', ['technique/removed sul pont.']],
  [words('col legno'), 'oboe', '', ['technique/removed col legno']],
  [words('sul G'), 'oboe', '', ['technique/removed sul G']],
  [words('unis.'), 'oboe', '<words>a 2</words>', ['technique/translated unis. -> a 2']],
  [words('div.'), 'oboe', '<words>div.</words>', ['technique/kept div.']],
  [words('Ped.'), 'oboe', '', ['technique/removed Ped.']],
  [words('bouché'), 'oboe', '', ['technique/removed bouché']],
  [words('près de la table'), 'oboe', '', ['technique/removed près de la table']],
  // Whoever can follow them keeps them.
  [words('pizz.'), 'viola', '<words>pizz.</words>', []],
  [words('flautando'), 'flute', '<words>flautando</words>', []],
  // Words among others: only the technique goes.
  [
    words('arco, cresc.'),
    'flute',
    '<words>cresc.</words>',
    ['technique/translated arco, cresc. -> cresc.'],
  ],
  [
    words('sempre pizz.'),
    'flute',
    '<words>sempre stacc.</words>',
    ['technique/translated sempre pizz. -> sempre stacc.'],
  ],
  [words('mf', 'arco'), 'flute', '<words>mf</words>', ['technique/removed arco']],
  [words('Marcato'), 'flute', '<words>Marcato</words>', []],
  // Directions.
  [
    direction('<pedal type="start" line="yes"/>') + direction('<pedal type="stop" line="yes"/>'),
    'flute',
    '',
    ['technique/removed pedal start'],
  ],
  [direction('<pedal type="start" line="yes"/>'), 'piano', '<pedal type="start" line="yes"/>', []],
  [direction('<damp/>'), 'flute', '', ['technique/removed damp']],
  [direction('<string-mute type="on"/>'), 'flute', '', ['technique/removed string-mute on']],
  [
    direction('<string-mute type="on"/>'),
    'horn-f',
    '<words>con sord.</words>',
    ['technique/translated string-mute on -> con sord.'],
  ],
  [direction('<string-mute type="off"/>'), 'viola', '<string-mute type="off"/>', []],
  [
    direction(
      '<harp-pedals><pedal-tuning><pedal-step>D</pedal-step><pedal-alter>0</pedal-alter></pedal-tuning></harp-pedals>',
    ),
    'flute',
    '',
    ['technique/removed harp-pedals'],
  ],
  [
    direction(
      '<scordatura><accord string="1"><tuning-step>A</tuning-step><tuning-octave>3</tuning-octave></accord></scordatura>',
    ),
    'flute',
    '',
    ['technique/removed scordatura'],
  ],
  [
    direction('<accordion-registration><accordion-high/></accordion-registration>'),
    'flute',
    '',
    ['technique/removed accordion-registration'],
  ],
  // Playback goes with the mark, tempo does not.
  [
    direction('<words>pizz.</words>', '<sound pizzicato="yes"/>'),
    'flute',
    '<words>stacc.</words>',
    ['technique/translated pizz. -> stacc.'],
  ],
  [
    direction('<words>arco</words>', '<sound pizzicato="no" tempo="90"/>'),
    'flute',
    '<sound tempo="90"/>',
    ['technique/removed arco'],
  ],
  ['<sound damper-pedal="yes"/>', 'flute', '', ['technique/removed']],
])('%s for %s', async (content, instrument, expected, told) => {
  const out = await measureFor(instrument, content + wholeNote('A4'))
  expect(out.left).toBe(expected + NOTE)
  expect(out.told).toEqual(told)
})

it.each([
  ['<fingering>2</fingering>', 'flute', '', ['technique/removed fingering 2']],
  ['<fingering>2</fingering>', 'viola', '<fingering>2</fingering>', []],
  ['<up-bow/>', 'flute', '', ['technique/bowing']],
  ['<up-bow/>', 'viola', '<up-bow/>', []],
  [
    '<snap-pizzicato/><string>4</string>',
    'flute',
    '',
    ['technique/removed snap-pizzicato', 'technique/removed string 4'],
  ],
  [
    '<open-string/><double-tongue/>',
    'flute',
    '<double-tongue/>',
    ['technique/removed open-string'],
  ],
  ['<heel/>', 'flute', '', ['technique/removed heel']],
  ['<other-technical>x</other-technical>', 'flute', '<other-technical>x</other-technical>', []],
  [
    '<arrow><arrow-direction>up</arrow-direction></arrow>',
    'flute',
    '<arrow><arrow-direction>up</arrow-direction></arrow>',
    [],
  ],
])('technical %s for %s', async (marks, instrument, left, told) => {
  const note = wholeNote('A4', `<notations><technical>${marks}</technical></notations>`)
  const out = await measureFor(instrument, note)
  const holder = left === '' ? '' : `<notations><technical>${left}</technical></notations>`
  expect(out.left).toBe(`<note>${holder}</note>`)
  expect(out.told.toSorted()).toEqual(told.toSorted())
})

it('removes only the technical part of the notations', async () => {
  const note = wholeNote(
    'A4',
    '<notations><technical><up-bow/></technical><articulations><accent/></articulations></notations>',
  )
  const {left} = await measureFor('flute', note)
  expect(left).toBe('<note><notations><articulations><accent/></articulations></notations></note>')
})

it.each([
  ['<harmonic><natural/></harmonic>', '', 'technique/removed harmonic', true],
  [
    '<harmonic><artificial/><sounding-pitch/></harmonic>',
    'diamond',
    'technique/removed harmonic',
    true,
  ],
  // The pitch is that of the finger: only a player knows what sounds.
  ['<harmonic><natural/></harmonic>', 'diamond', 'technique/harmonic harmonic', false],
  [
    '<harmonic><artificial/><touching-pitch/></harmonic>',
    'diamond',
    'technique/harmonic harmonic',
    false,
  ],
  ['<harmonic><artificial/><base-pitch/></harmonic>', '', 'technique/harmonic harmonic', false],
])('%s with head “%s”', async (mark, head, told, gone) => {
  const notehead = head === '' ? '' : `<notehead>${head}</notehead>`
  const inside = `${notehead}<notations><technical>${mark}</technical></notations>`
  const out = await measureFor('flute', wholeNote('E6', inside))
  expect(out.told).toEqual([told])
  expect(out.left).toBe(gone ? '<note></note>' : `<note>${inside}</note>`)
})

it('cancels the staccato of a pizzicato where the bow comes back, and only there', async () => {
  const {text} = await renotated(
    {
      measures: [
        words('arco') + wholeNote('A4'),
        words('pizz.') + wholeNote('A4'),
        words('arco') + wholeNote('A4'),
        words('arco') + wholeNote('A4'),
      ],
    },
    'flute',
  )
  expect([...text.matchAll(/<words>(.*?)<\/words>/g)].map(([, each]) => each)).toEqual([
    'stacc.',
    'non stacc.',
  ])
})

it.each([
  ['Horn in Es', 'horn-f', 'in Es', '[in Es]'],
  ['Horn in Es', 'horn-f', 'muta in D', '[muta in D]'],
  ['Horn in Es', 'horn-f', 'in F', 'in F'],
  ['Flöte', 'oboe', 'muta in ottavino', '[muta in ottavino]'],
  ['Flöte', 'oboe', 'nimmt kl. Fl.', '[nimmt kl. Fl.]'],
  ['Flöte', 'oboe', '[in D]', '[in D]'],
])('%s for %s: “%s” becomes “%s”', async (name, instrument, said, left) => {
  const out = await measureFor(instrument, words(said) + wholeNote('A4'), {}, name)
  expect(out.left).toBe(`<words>${left}</words>${NOTE}`)
  const expected =
    said === 'in F' ? [] : [`technique/untrue ${said}${left === said ? '' : ` -> ${left}`}`]
  expect(out.told).toEqual(expected)
})

it('keeps everything and tells it, when asked', async () => {
  const measure =
    words('pizz.') +
    words('muta in D') +
    wholeNote('A4', '<notations><technical><up-bow/><string>4</string></technical></notations>')
  const out = await measureFor('flute', measure, {techniques: 'keep'})
  expect(out.left).toContain('<words>pizz.</words><words>muta in D</words>')
  expect(out.left).toContain('<technical><up-bow/><string>4</string></technical>')
  expect(out.told.toSorted()).toEqual([
    'technique/bowing',
    'technique/kept pizz.',
    'technique/kept string 4',
    'technique/untrue muta in D',
  ])
})

it('touches nothing when no instrument is named', async () => {
  const measure = words('pizz.') + wholeNote('A4')
  const source = {measures: [measure]}
  const {text, told} = await renotated(source, undefined, {
    to: {kind: 'concert', octaves: 'sounding'},
  })
  expect(text).toContain('<words>pizz.</words>')
  expect(told).toEqual([])
})

it('keeps fingerings, with a remark, where nobody knows whom they were for', async () => {
  const note = wholeNote(
    'A4',
    '<notations><technical><fingering>2</fingering></technical></notations>',
  )
  const out = await measureFor('flute', note, {}, 'Xyz')
  expect(out.left).toContain('<fingering>2</fingering>')
  expect(out.told).toEqual(['technique/kept fingering 2'])
})

it('tells the strings from their marks when the name is silent', async () => {
  const note = wholeNote(
    'A4',
    '<notations><technical><down-bow/><fingering>2</fingering></technical></notations>',
  )
  const out = await measureFor('flute', note, {}, 'Xyz')
  expect(out.left).toBe(NOTE)
})

it('removes tunings and capos, but not from tablature', async () => {
  const tuning =
    '<staff-tuning line="1"><tuning-step>E</tuning-step><tuning-octave>2</tuning-octave></staff-tuning>'
  const details = (clef: string): string =>
    `<clef>${clef}</clef><staff-details>${tuning}<capo>2</capo></staff-details>`
  const strings = {name: 'Guitar', measures: [wholeNote('A4')]}
  const plain = await renotated(
    {...strings, attributes: details('<sign>G</sign><line>2</line>')},
    'flute',
  )
  expect(plain.text).toContain('<staff-details></staff-details>')
  const tab = await renotated(
    {...strings, attributes: details('<sign>TAB</sign><line>5</line>')},
    'flute',
  )
  expect(tab.text).toContain(`<staff-details>${tuning}<capo>2</capo></staff-details>`)
  expect(tab.told.filter((each) => each.startsWith('technique'))).toEqual([
    'technique/kept staff-tuning',
  ])
})

it('tells chords, slides and tremolos once, with their number', async () => {
  const chord = wholeNote('E4').replace('<note>', '<note><chord/>')
  const slide = wholeNote('A4', '<notations><glissando type="start"/></notations>')
  const {all} = await renotated({measures: [wholeNote('C4') + chord, slide]}, 'flute')
  expect(all.filter(({code}) => code.startsWith('technique')).map(({message}) => message)).toEqual([
    '1 × glissando is kept: not every slide can be played',
    '1 note stands in chords: they need further players, or have to go',
  ])
})

it('keeps the comments in what goes', async () => {
  const note = wholeNote(
    'A4',
    '<notations><!-- x --><technical><up-bow/><!-- y --></technical></notations>',
  )
  const {text} = await renotated(
    {measures: [direction('<!-- z --><damp/>', '<sound tempo="60"/>') + note]},
    'flute',
  )
  expect(text).toContain('<!-- z --><sound tempo="60"/>')
  expect(text).toContain('<!-- x --><!-- y --></note>')
})
