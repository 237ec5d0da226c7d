import {expect, it} from 'vitest'
import {openScore, prove, rewrite, soundingNotes} from '../../lib/index.ts'
import type {Change, JoinRequest, SoundingNote} from '../../lib/index.ts'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import type {PartJob} from '../../lib/plan/job.ts'
import {readFacts} from '../../lib/renotate.ts'
import {isPitched} from '../../lib/staff/clef.ts'
import {collect, randomFrom, sourceOf} from '../support/bytes.ts'
import {corpusScores, describeCorpus, readCorpusXml} from '../support/corpus.ts'
import {demoScore} from '../support/fixtures.ts'
import {validateScore} from '../support/validate.ts'

/** Two parts of every score; else one, for a proof that reads whole scores takes long. */
const ALL = process.env.RENOTATE_ALL_PARTS !== undefined

interface Joined {
  readonly bytes: Uint8Array
  readonly changes: readonly Change[]
}

async function join(
  score: Uint8Array,
  part: string,
  job: PartJob,
  request: JoinRequest,
): Promise<Joined> {
  const changes: Change[] = []
  const opened = await openScore(sourceOf(score))
  const joins = new Map([[part, request]])
  const parts = new Map([[part, job]])
  const content = rewrite(
    opened,
    {parts, others: 'drop', joins},
    () => {},
    (each) => changes.push(each),
  )
  return {bytes: await collect(content), changes}
}

/** The parts with notes on staves that have pitches, in an order that is always the same. */
async function partsOf(score: Uint8Array, seed: string): Promise<readonly string[]> {
  const opened = await openScore(sourceOf(score))
  const ids = opened.header.parts.map(({id}) => id)
  const facts = await readFacts(opened, new Map(ids.map((id) => [id, undefined])), () => {})
  const random = randomFrom(seed.length * 7919 + (seed.codePointAt(0) ?? 0))
  const hasPitches = (id: string): boolean => {
    const {notes, states = []} = facts.get(id) ?? {}
    return (notes?.count ?? 0) > 0 && states.every(({state}) => isPitched(state.clef))
  }
  return ids.filter(hasPitches).toSorted(() => random() - 0.5)
}

async function notesOf(score: Uint8Array, part: string): Promise<SoundingNote[]> {
  const notes: SoundingNote[] = []
  for await (const note of soundingNotes(sourceOf(score), {part})) notes.push(note)
  return notes
}

/** Every cue sounds what some other part sounds there, in one octave or another. */
async function checkCues(score: Uint8Array, joined: Uint8Array, part: string): Promise<number> {
  const sounding = new Set<string>()
  const own = new Set<string>()
  for await (const note of soundingNotes(sourceOf(score))) {
    const key = `${note.measure}/${note.onset}/${(note.midi + 240) % 12}/${note.duration}`
    if (note.part === part && note.cue) own.add(key)
    else if (note.part !== part) sounding.add(key)
  }
  const cues = (await notesOf(joined, part)).filter(({cue}) => cue)
  const strange = cues.filter(({measure, onset, midi, duration}) => {
    const key = `${measure}/${onset}/${(midi + 240) % 12}/${duration}`
    return !sounding.has(key) && !own.has(key)
  })
  expect(strange).toEqual([])
  return cues.length
}

/** How many scores took in something, and how many cues: a law that nothing is subject to says nothing. */
const seen = {scores: 0, cues: 0, covers: 0}

async function checkScore(score: Uint8Array, name: string): Promise<void> {
  const parts = await partsOf(score, name)
  if (parts.length < 2) return
  seen.scores++
  const valid = validateScore(score).length === 0
  const jobs: readonly (readonly [string, PartJob])[] = [
    ['as it is', {}],
    ['for alto saxophone', {for: instrumentById('alto-saxophone-e-flat')}],
  ]
  for (const part of parts.slice(0, ALL ? 2 : 1)) {
    for (const [what, job] of jobs) {
      const where = `${name} ${part} with cues, ${what}`
      const cued = await join(score, part, job, {cues: {rest: 3}})
      if (valid) expect(validateScore(cued.bytes), where).toEqual([])
      const proof = await prove(sourceOf(score), sourceOf(cued.bytes), {
        pairs: [[part, part]],
        intended: cued.changes,
      })
      expect(proof.pairs[0]?.differences.slice(0, 2), where).toEqual([])
      expect(proof.verdict, where).not.toBe('different')
      seen.cues += await checkCues(score, cued.bytes, part)
    }
    const voice = parts.find((each) => each !== part)
    const bassoon = instrumentById('bassoon')
    if (voice === undefined || !bassoon) continue
    for (const when of ['always', 'absent'] as const) {
      const where = `${name} ${voice} in ${part}, ${when}`
      const cover = {part: voice, instrument: bassoon, tier: 'tutti', when} as const
      seen.covers++
      const woven = await join(score, part, {for: bassoon}, {cover, cues: {rest: 6}})
      if (valid) expect(validateScore(woven.bytes), where).toEqual([])
      const proof = await prove(sourceOf(score), sourceOf(woven.bytes), {
        pairs: [
          [part, part],
          [voice, part],
        ],
        intended: woven.changes,
      })
      for (const pair of proof.pairs) expect(pair.differences.slice(0, 2), where).toEqual([])
      expect(proof.verdict, where).not.toBe('different')
    }
  }
}

it('the demonstration score takes cues and covers, valid and proven', {timeout: 60_000}, () =>
  checkScore(demoScore(), 'demo'),
)

describeCorpus('parts of real scores that take in music of others', () => {
  for (const file of corpusScores()) {
    if (!file.wellFormed) continue
    it(`${file.name} stays valid and is proven`, {timeout: 180_000}, () =>
      checkScore(readCorpusXml(file), file.name),
    )
  }

  it('are many', () => {
    expect(seen.scores).toBeGreaterThan(40)
    expect(seen.cues).toBeGreaterThan(250)
    expect(seen.covers).toBeGreaterThan(75)
  })
})
