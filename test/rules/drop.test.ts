import {describe, expect, it} from 'vitest'
import {formatReport, openScore, parseReport, prove, rewrite} from '../../lib/index.ts'
import type {Change, Diagnostic} from '../../lib/index.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {scoreXml} from '../fit/notes.ts'
import {alteringMutants} from '../proof/mutants/altering.ts'
import {collect, sourceOf} from '../support/bytes.ts'
import {validateScore} from '../support/validate.ts'

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text)

/** One slur over four octaves, more than an alto saxophone has: C2 and G5 stay out of reach wherever the phrase goes. */
const wide = scoreXml(['C2( G2 C3+G2 G3 | C4 G4+C4 C5 G5_ | G5:2~ C4:2) | r:4'])

async function fold(drop: boolean) {
  const changes: Change[] = []
  const told: Diagnostic[] = []
  const job = {for: instrumentById('alto-saxophone-e-flat'), fold: 'tutti', drop} as const
  const out = rewrite(
    await openScore(sourceOf(bytesOf(wide))),
    {parts: new Map([['P1', job]]), others: 'drop'},
    (each) => told.push(each),
    (change) => changes.push(change),
  )
  return {text: new TextDecoder().decode(await collect(out)), changes, told}
}

async function verdict(after: string, changes: readonly Change[]) {
  const report = formatReport({tool: 'test', pairs: [['P1', 'P1']], changes, diagnostics: []})
  const {changes: intended, pairs} = parseReport(report)
  const proof = await prove(sourceOf(bytesOf(wide)), sourceOf(bytesOf(after)), {intended, pairs})
  return proof.verdict
}

const cues = (text: string): string[] => text.match(/<note>(?:<grace\/>)?<cue\/>.*?<\/note>/g) ?? []

describe('notes that no octave saves', () => {
  it('stay unless they are to go', async () => {
    const {text, changes, told} = await fold(false)
    expect(cues(text)).toEqual([])
    expect(changes.every(({kind}) => kind === 'moved')).toBe(true)
    expect(told.map(({code}) => code)).toContain('fold/unplayable')
  })

  it('become cues without ties, over all the notes that they are tied over', async () => {
    const {text, changes, told} = await fold(true)
    const dropped = changes.filter((change) => change.kind === 'dropped')
    expect(dropped.map(({from, midi}) => `${from.number} ${from.onset} ${midi}`)).toEqual([
      '1 0/12 36',
      '2 36/12 79',
    ])
    expect(cues(text)).toHaveLength(3)
    for (const cue of cues(text)) expect(cue).not.toContain('<tie ')
    expect(text).not.toContain('<tie ')
    expect(told.filter(({code}) => code === 'fold/dropped')).toHaveLength(2)
    expect(told.map(({code}) => code)).not.toContain('fold/unplayable')
    expect(validateScore(text)).toEqual([])
  })

  it('are proven to be what was reported, and no other note of their chords', async () => {
    const {text, changes} = await fold(true)
    expect(await verdict(text, changes)).toBe('intended')
    for (const change of changes)
      expect(
        await verdict(
          text,
          changes.filter((each) => each !== change),
        ),
      ).toBe('different')
    const elsewhere = changes.map((each) =>
      each.kind === 'dropped' ? {...each, midi: each.midi + 1} : each,
    )
    expect(await verdict(text, elsewhere)).toBe('different')
    for (const note of text.match(/<note>(?:<chord\/>)?<pitch>.*?<\/note>/g) ?? [])
      expect(
        await verdict(text.replace(note, note.replace('<note>', '<note><cue/>')), changes),
      ).toBe('different')
  })

  it('hide nothing else that changes', async () => {
    const {text, changes} = await fold(true)
    const mutants = alteringMutants(text)
    expect(mutants.length).toBeGreaterThan(30)
    const unseen = []
    for (const mutant of mutants)
      if ((await verdict(mutant.text, changes)) !== 'different') unseen.push(mutant)
    expect(unseen).toEqual([])
  })
})
