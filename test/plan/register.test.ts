import {expect, it} from 'vitest'
import type {Diagnostic, Change} from '../../lib/index.ts'
import {formatReport, openScore, parseReport, prove, rewrite} from '../../lib/index.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {octavesAt} from '../../lib/plan/register.ts'
import {clockOf} from '../../lib/fit/clock.ts'
import {foldLine} from '../../lib/fit/fold.ts'
import {lineOf} from '../../lib/fit/line.ts'
import {reachOf} from '../../lib/fit/reach.ts'
import {readFacts} from '../../lib/renotate.ts'
import {isPitched} from '../../lib/staff/clef.ts'
import {NOTE, measureOf} from '../../lib/survey/facts.ts'
import {scoreXml} from '../fit/notes.ts'
import {collect, sourceOf} from '../support/bytes.ts'
import {corpusScores, describeCorpus, readCorpusXml} from '../support/corpus.ts'
import {validateScore} from '../support/validate.ts'

const silent = (): void => {}

async function foldInto(bytes: Uint8Array, part: string, target: string) {
  const score = await openScore(sourceOf(bytes))
  const changes: Change[] = []
  const told: Diagnostic[] = []
  const job = {for: instrumentById(target), fold: 'tutti'} as const
  const out = await collect(
    rewrite(
      score,
      {parts: new Map([[part, job]]), others: 'drop'},
      (each) => told.push(each),
      (change) => changes.push(change),
    ),
  )
  return {out, changes, told}
}

/** The proof, by way of the file that the command line writes. */
async function verdict(before: Uint8Array, after: Uint8Array, changes: readonly Change[]) {
  const report = parseReport(formatReport({tool: 'test', pairs: [], changes, diagnostics: []}))
  const {part} = changes[0] ?? {}
  return prove(sourceOf(before), sourceOf(after), {
    intended: report.changes,
    ...(part !== undefined && {pairs: [[part, part]] as const}),
  })
}

const text = (xml: string): Uint8Array => new TextEncoder().encode(xml)

it('says which octaves hold where', () => {
  const registers = [
    {measure: 2, onset: 1, octaves: 1},
    {measure: 4, onset: 0, octaves: 0},
  ]
  const at = (measure: number, onset: number) => octavesAt(registers, {measure, onset})
  expect([at(0, 0), at(2, 0.5), at(2, 1), at(3, 9), at(4, 0)]).toEqual([0, 0, 1, 1, 0])
  expect(octavesAt(undefined, {measure: 1, onset: 0})).toBe(0)
})

it('moves the written notes by octaves and leaves the declared transposition', async () => {
  const before = text(
    scoreXml(['C3 D3 E3 F3 | r:4 | E2 D2 C2 C#2 | C2 D2 E2 C2_ | C2:4~ | r:4 | C3 D3 E3 F3']),
  )
  const {out, changes} = await foldInto(before, 'P1', 'tenor-saxophone-b-flat')
  expect(
    changes.map((change) => ({
      from: change.from,
      to: change.to,
      ...('semitones' in change && {semitones: change.semitones}),
    })),
  ).toEqual([
    {
      from: {measure: 2, number: '3', onset: '0/12'},
      to: {measure: 3, number: '4', onset: '36/12'},
      semitones: 12,
    },
  ])
  const xml = new TextDecoder().decode(out)
  expect(xml.match(/<transpose>/g)).toHaveLength(1)
  expect(await verdict(before, out, changes)).toMatchObject({verdict: 'intended'})
  // What was not reported is not forgiven.
  expect(await verdict(before, out, [])).toMatchObject({verdict: 'different'})
  const [change] = changes
  if (change?.kind !== 'moved') return
  const narrower = {...change, to: {...change.to, onset: '24/12'}}
  expect(await verdict(before, out, [narrower])).toMatchObject({verdict: 'different'})
  expect(await verdict(before, out, [{...change, semitones: 24}])).toMatchObject({
    verdict: 'different',
  })
})

it('reports every fold and every note that no octave saves', async () => {
  const before = text(scoreXml(['C2( G2 C3 G3 | C4 G4 C5 G5)', 'C4 G4 C4 G4 | C4 E4 E4 E4']))
  const {told} = await foldInto(before, 'P1', 'alto-saxophone-e-flat')
  expect(told.map(({code, at, message}) => `${at?.measure} ${code}: ${message}`)).toEqual([
    '1 fold/phrase: measures 1 to 2 sound an octave higher: 3 of its 8 notes lie below Db3, the lowest that can be played',
    '1 fold/unplayable: C2 is out of reach whatever the octave of its phrase; leave it out: P2 sounds it too',
    '2 fold/unplayable: G5 is out of reach whatever the octave of its phrase; play it alone at pitch, as G5',
  ])
})

/** One that goes no lower than Db3, one that goes no higher than E3: between them every part has to fold somewhere. */
const TARGETS = ['alto-saxophone-e-flat', 'contrabass-clarinet-b-flat']

describeCorpus('folded parts of real scores', () => {
  for (const file of corpusScores()) {
    if (!file.wellFormed) continue
    it(
      `${file.name}: no slur or tie is split, and the proof accepts just the folds`,
      {timeout: 120_000},
      async () => {
        const bytes = readCorpusXml(file)
        const valid = validateScore(bytes).length === 0
        const score = await openScore(sourceOf(bytes))
        const facts = await readFacts(
          score,
          new Map(score.header.parts.map(({id}) => [id, undefined])),
          silent,
        )
        const clock = clockOf(facts.values())
        for (const own of facts.values()) {
          for (const target of TARGETS) {
            const reach = reachOf(instrumentById(target)!, 'tutti')
            if (reach) checkInvariants(lineOf(own, clock), foldLine(lineOf(own, clock), reach))
          }
        }
        const ids = [...facts].filter(([, {notes}]) => notes.count > 0).map(([id]) => id)
        for (const id of [ids.at(ids.length % 3 ? 0 : -1)]) {
          const target = TARGETS[ids.length % 2] ?? ''
          if (id === undefined) continue
          const {out, changes} = await foldInto(bytes, id, target)
          const proof = await verdict(bytes, out, changes)
          const where = `${id} for ${target}: ${JSON.stringify(proof.pairs[0]?.differences.slice(0, 2))}`
          expect(proof.verdict, where).toBe(changes.length > 0 ? 'intended' : 'equal')
          if (valid) expect(validateScore(out), where).toEqual([])
        }
      },
    )
  }
})

function checkInvariants(line: ReturnType<typeof lineOf>, plan: ReturnType<typeof foldLine>): void {
  const {notes} = line.facts
  const {facts} = line
  const last = new Map<string, {readonly octaves: number; readonly flags: number}>()
  for (let note = 0; note < notes.count; note++) {
    const flags = notes.flags[note] ?? 0
    const clef = facts.states[notes.state[note] ?? 0]
    if (flags & (NOTE.cue | NOTE.chord) || (clef && !isPitched(clef.state.clef))) continue
    const measure = measureOf(facts, note)
    const onset = (notes.onset[note] ?? 0) / (facts.ticks[measure] ?? 1)
    const octaves = octavesAt(plan.registers, {measure, onset})
    const voice = `${clef?.staff}/${notes.voice[note]}`
    const before = last.get(voice)
    if (before && before.octaves !== octaves) {
      const where = `${facts.part}, measure ${facts.numbers[measure]}`
      expect(before.flags & (NOTE.slurred | NOTE.beamed), where).toBe(0)
      expect((before.flags & NOTE.tiedTo) !== 0 && (flags & NOTE.tiedFrom) !== 0, where).toBe(false)
    }
    last.set(voice, {octaves, flags})
  }
  // Inside a phrase the contour is that of the source: all of it moves by one interval.
  for (const phrase of plan.phrases) {
    const attacks = line.attacks.slice(phrase.from, phrase.to + 1)
    const own = new Set(attacks.map((attack) => octavesAt(plan.registers, attack)))
    expect(own.size).toBe(1)
  }
}
