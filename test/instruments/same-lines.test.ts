import {describe, expect, it} from 'vitest'
import {notationById} from '../../lib/instruments/notation.ts'
import {notationsOnSameLines} from '../../lib/instruments/same-lines.ts'

function sameLines(id: string, words: string): string[] {
  const reading = notationById(id)?.readings[0]
  if (!reading) throw new Error(id)
  return notationsOnSameLines(reading, words).map(
    ({notation, fifths}) => `${notation.id} ${fifths}`,
  )
}

describe('notations on the same lines', () => {
  // Common practice among players: concert bass clef read as E flat treble clef, three sharps more (or flats fewer).
  it('reads a bassoon part as one for E flat baritone saxophone', () => {
    expect(sameLines('bassoon.modern', 'baritone saxophone E flat')).toContain(
      'baritone-saxophone-e-flat.modern 3',
    )
  })

  // Common practice: tenor clef at pitch has the notes of B flat treble clef a ninth lower, two sharps more.
  it('reads a trombone part in tenor clef as one in B flat treble clef', () => {
    expect(sameLines('trombone.tenor-clef', 'brassband.tenor-trombone')).toContain(
      'brassband.tenor-trombone 2',
    )
  })

  it('offers nothing where no clef puts the notes on the same lines', () => {
    expect(sameLines('flute.modern', 'horn-f.modern')).toEqual([])
  })
})
