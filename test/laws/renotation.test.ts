import {expect, it} from 'vitest'
import type {Diagnostic} from '../../lib/index.ts'
import {openScore, prove, rewrite} from '../../lib/index.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import {soundingNotes} from '../../lib/musicxml/sounding.ts'
import type {PartJob} from '../../lib/plan/job.ts'
import {readFacts, readMeasures} from '../../lib/renotate.ts'
import {collect, randomFrom, sourceOf} from '../support/bytes.ts'
import {corpusScores, describeCorpus, readCorpusXml} from '../support/corpus.ts'
import type {CorpusFile} from '../support/corpus.ts'
import {validateScore} from '../support/validate.ts'

/** Three readers as unlike each other as can be: treble a sixth away, bass at pitch, treble two octaves and more away. */
const TARGETS = ['alto-saxophone-e-flat', 'bassoon', 'contrabass-clarinet-b-flat']

const silent = (): void => {}

async function writtenNotes(bytes: Uint8Array, part: string): Promise<string[]> {
  const score = await openScore(sourceOf(bytes))
  const notes: string[] = []
  for await (const measure of readMeasures(score, (id) => id === part, undefined, silent)) {
    for (const note of soundingNotes(measure))
      notes.push(`${measure.index} ${note.onset} ${note.voice} ${note.written}`)
  }
  return notes
}

async function runPart(
  bytes: Uint8Array,
  part: string,
  job: PartJob,
): Promise<{bytes: Uint8Array; told: Diagnostic[]}> {
  const told: Diagnostic[] = []
  const score = await openScore(sourceOf(bytes))
  const out = rewrite(score, {parts: new Map([[part, job]]), others: 'drop'}, (each) =>
    told.push(each),
  )
  return {bytes: await collect(out), told}
}

/** Every part of every score: each is taken out first, for a proof that reads the whole score takes long. */
const ALL = process.env.RENOTATE_ALL_PARTS !== undefined

async function checkFile(file: CorpusFile): Promise<void> {
  const whole = readCorpusXml(file)
  const valid = validateScore(whole).length === 0
  const score = await openScore(sourceOf(whole))
  const ids = score.header.parts.map(({id}) => id)
  const facts = await readFacts(score, new Map(ids.map((id) => [id, undefined])), silent)
  const chosen = new Set(ALL ? ids : sample(ids, file.name))
  for (const [id, own] of facts) {
    if (own.notes.count === 0 || !chosen.has(id)) continue
    const bytes = ALL ? (await runPart(whole, id, {})).bytes : whole
    const original = await writtenNotes(bytes, id)
    for (const target of TARGETS) {
      const where = `${file.name} ${id} for ${target}`
      const there = await runPart(bytes, id, {for: instrumentById(target)})
      const proof = await prove(sourceOf(bytes), sourceOf(there.bytes), {pairs: [[id, id]]})
      expect(
        proof.verdict,
        `${where}: ${JSON.stringify(proof.pairs[0]?.differences.slice(0, 2))}`,
      ).toBe('equal')
      expect(proof.pairs[0]?.respelled, where).toBe(0)
      if (valid) expect(validateScore(there.bytes), where).toEqual([])
      const back = await runPart(there.bytes, id, {to: {kind: 'declared', states: own.states}})
      expect(await writtenNotes(back.bytes, id), where).toEqual(original)
    }
  }
}

/** A few parts of a large score, always the same ones. */
function sample(ids: readonly string[], seed: string): readonly string[] {
  if (ids.length <= 4) return ids
  const random = randomFrom(seed.length * 7919 + (seed.codePointAt(0) ?? 0))
  return ids.toSorted(() => random() - 0.5).slice(0, 3)
}

describeCorpus('parts of real scores, for three other instruments', () => {
  for (const file of corpusScores()) {
    if (!file.wellFormed) continue
    it(`${file.name} sounds the same, stays valid and comes back`, {timeout: 120_000}, () =>
      checkFile(file),
    )
  }
})
