import {beforeAll, describe, expect, it} from 'vitest'
import {prove, writeCoverPart} from '../../lib/index.ts'
import type {Change} from '../../lib/index.ts'
import {collect, sourceOf} from '../support/bytes.ts'
import {demoScore} from '../support/fixtures.ts'

const utf8 = new TextEncoder()
const PAIRS = [
  ['P8', 'P8'],
  ['P9', 'P8'],
] as const

let woven = ''
const changes: Change[] = []

beforeAll(async () => {
  const options = {
    part: 'P9',
    place: 26,
    woven: true,
    changed: (each: Change) => changes.push(each),
  }
  woven = new TextDecoder().decode(await collect(writeCoverPart(sourceOf(demoScore()), options)))
})

async function verdictOf(text: string, intended: readonly Change[] = changes): Promise<string> {
  const after = sourceOf(utf8.encode(text))
  return (await prove(sourceOf(demoScore()), after, {pairs: PAIRS, intended})).verdict
}

/** Notes with a pitch, and where they stand. */
function notesIn(text: string): readonly {readonly start: number; readonly note: string}[] {
  return [...text.matchAll(/<note\b(?:(?!<\/note>)[\s\S])*<pitch>[\s\S]*?<\/note>/g)].map(
    ({index, 0: note}) => ({start: index, note}),
  )
}

function replaced({start, note}: {start: number; note: string}, by: string): string {
  return woven.slice(0, start) + by + woven.slice(start + note.length)
}

describe('a part that holds the music of two', {timeout: 120_000}, () => {
  it('is proven against both', async () => {
    expect(await verdictOf(woven)).toBe('intended')
  })

  it('is different where any played note is', async () => {
    const notes = notesIn(woven)
    const played = notes.filter(({note}) => !note.includes('<cue/>'))
    expect(played.length).toBeGreaterThan(50)
    for (const each of played) {
      const octave = /<octave>(\d)<\/octave>/.exec(each.note)?.[1] ?? ''
      const higher = each.note.replace(/<octave>\d/, `<octave>${Number(octave) + 1}`)
      expect(await verdictOf(replaced(each, higher)), each.note).toBe('different')
    }
  })

  it('is different where a note is played that should be read, or read that should be played', async () => {
    const notes = notesIn(woven)
    const cues = notes.filter(({note}) => note.includes('<cue/>'))
    expect(cues.length).toBeGreaterThan(30)
    for (const each of cues.filter((_, index) => index % 3 === 0)) {
      const loud = each.note.replace(/\s*<cue\/>/, '')
      expect(await verdictOf(replaced(each, loud)), each.note).toBe('different')
    }
    const played = notes.filter(({note}) => !/<cue\/>|<tie /.test(note))
    for (const each of played.filter((_, index) => index % 5 === 0)) {
      const silent = each.note.replace(/(\s*)<pitch>/, '$1<cue/>$1<pitch>')
      expect(await verdictOf(replaced(each, silent)), each.note).toBe('different')
    }
  })

  it('is different where a cue stands beside what is played, and no report tells of it', async () => {
    const told = changes.filter(({kind, part}) => kind === 'cues' && part === 'P8')
    const isTold = (start: number): boolean => {
      const measure = woven.slice(0, start).split('<measure ').length - 2
      return told.some(({from, to}) => from.measure <= measure && measure <= to.measure)
    }
    const played = notesIn(woven).filter(({start, note}) => !/<cue\/>/.test(note) && !isTold(start))
    expect(played.length).toBeGreaterThan(30)
    for (const each of played.filter((_, index) => index % 4 === 0)) {
      const cue = each.note
        .replace(/(\s*)<pitch>/, '$1<cue/>$1<chord/>$1<pitch>')
        .replace(/<octave>\d/, '<octave>7')
        .replaceAll(/<tie [^>]*>|<notations>[\s\S]*<\/notations>/g, '')
      expect(await verdictOf(replaced(each, each.note + cue)), each.note).toBe('different')
    }
  })

  it('is different where a played note is longer, or gone', async () => {
    const played = notesIn(woven).filter(({note}) => !/<cue\/>|<tie /.test(note))
    for (const each of played.filter((_, index) => index % 4 === 0)) {
      const [, duration = ''] = /<duration>(\d+)/.exec(each.note) ?? []
      const longer = each.note.replace(/<duration>\d+/, `<duration>${Number(duration) + 1}`)
      expect(await verdictOf(replaced(each, longer)), each.note).toBe('different')
      const rest = each.note.replace(/<pitch>[\s\S]*<\/pitch>/, '<rest/>')
      expect(await verdictOf(replaced(each, rest)), each.note).toBe('different')
    }
  })

  it('needs every change that was reported', async () => {
    expect(changes.length).toBeGreaterThan(4)
    for (const change of changes)
      expect(
        await verdictOf(
          woven,
          changes.filter((each) => each !== change),
        ),
        JSON.stringify(change),
      ).toBe('different')
  })
})
