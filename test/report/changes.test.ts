import {expect, it} from 'vitest'
import {formatReport, parseReport} from '../../lib/report/changes.ts'

const change = {
  kind: 'moved',
  part: 'P9',
  from: {measure: 4, onset: '0/4'},
  to: {measure: 7, onset: '7/2'},
  semitones: 12,
  reason: 'measures 5 to 8 sound an octave higher',
} as const

it('comes back as it was written', () => {
  const diagnostics = [
    {code: 'key/choice', severity: 'info', message: 'two keys sound alike', at: {measure: '5'}},
    {
      code: 'fold/phrase',
      severity: 'warning',
      message: 'moved',
      at: {},
      actual: 'C',
      expected: 'D',
    },
  ] as const
  const text = formatReport({tool: '1', pairs: [['P9', 'P9']], changes: [change], diagnostics})
  expect(text.endsWith('}\n')).toBe(true)
  expect(parseReport(text)).toEqual({pairs: [['P9', 'P9']], changes: [change], diagnostics})
})

it('keeps what it does not know for later versions to use', () => {
  const text = JSON.stringify({
    format: 'renotate-report',
    version: 1,
    changes: [{...change, from: {...change.from, number: '5'}, mood: 'bright'}],
    weather: 'fine',
  })
  expect(parseReport(text)).toEqual({pairs: [], changes: [change], diagnostics: []})
})

const whole = {format: 'renotate-report', version: 1, changes: [change]}

it.each([
  ['{', 'it is no JSON'],
  ['[]', '"format" is not "renotate-report"'],
  [{...whole, version: 2}, 'its version is 2, not 1'],
  [{...whole, changes: {}}, '"changes" is not a list'],
  [{...whole, pairs: [['P1']]}, 'pairs[0] is no pair of part ids'],
  [
    {...whole, changes: [{...change, kind: 'lost'}]},
    'changes[0].kind is none of moved, dropped, silenced, added, cues',
  ],
  [
    {...whole, changes: [change, {...change, semitones: '12'}]},
    'changes[1].semitones is no number',
  ],
  [{...whole, changes: [{...change, from: {onset: '0'}}]}, 'changes[0].from.measure is neither'],
  [
    {...whole, changes: [{...change, to: {measure: 1, onset: '1/0'}}]},
    'changes[0].to.onset is no fraction',
  ],
  [{...whole, diagnostics: {}}, '"diagnostics" is not a list'],
  [{...whole, diagnostics: [{code: 'key'}]}, 'diagnostics[0] has no code or no message'],
])('%j is refused', (report, message) => {
  const text = typeof report === 'string' ? report : JSON.stringify(report)
  expect(() => parseReport(text)).toThrow(message)
  expect(() => parseReport(text)).toThrow('report/malformed')
})
