import {expect, it} from 'vitest'
import {renotated, scoreOf, wholeNote} from '../support/one-part.ts'

const before = `
  <identification><encoding>
    <supports element="print" attribute="new-system" type="yes" value="yes"/>
    <supports element="print" attribute="new-page" type="no"/>
    <supports element="accidental" type="yes"/>
  </encoding></identification>
  <defaults>
    <scaling><millimeters>7</millimeters><tenths>40</tenths></scaling>
    <page-layout><page-height>1500</page-height><page-width>1000</page-width></page-layout>
    <staff-layout><staff-distance>80</staff-distance></staff-layout>
  </defaults>`

const source = scoreOf({
  name: 'Flute',
  before,
  measures: [
    `<print new-page="yes" page-number="3"><staff-layout><staff-distance>65</staff-distance></staff-layout><measure-numbering>system</measure-numbering></print>${wholeNote('A4')}`,
    `<print new-system="yes"/>${wholeNote('A4')}`,
  ],
}).replace('<measure number="2">', '<measure number="2" width="310">')

it('takes the layout of the score out of a part, when asked', async () => {
  const {text, told} = await renotated(source, undefined, {layout: 'drop'})
  expect(text).toBe(
    source
      .replace('new-system" type="yes"', 'new-system" type="no"')
      .replace(/\s*<page-layout>.*<\/page-layout>/, '')
      .replace(/\s*<staff-layout><staff-distance>80.*<\/staff-layout>/, '')
      .replace(/<print new-page.*?<\/staff-layout>/, '<print>')
      .replace('<print new-system="yes"/>', '')
      .replace(' width="310"', ''),
  )
  expect(told).toEqual([])
})

it('keeps it otherwise', async () => {
  const {text} = await renotated(source, undefined, {layout: 'keep'})
  expect(text).toBe(source)
})

it('goes together with a new instrument and a flag for concert pitch', async () => {
  const {text} = await renotated(source, 'oboe', {layout: 'drop'})
  expect(text).toContain('<part-name>Oboe</part-name>')
  expect(text).not.toContain('page-layout')
  const concert = {to: {kind: 'concert', octaves: 'sounding'}, layout: 'drop'} as const
  expect((await renotated(source, undefined, concert)).text).toContain('<concert-score/>')
})
