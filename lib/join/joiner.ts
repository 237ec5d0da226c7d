import type {Report} from '../diagnostic.ts'
import {firstContext} from '../musicxml/context.ts'
import {advance, placeOf, readMeasure} from '../musicxml/measure.ts'
import type {Measure, MeasureText} from '../musicxml/measure.ts'
import {applyEdits} from '../xml/edit.ts'
import {stateDivisions, statesDivisions} from './divisions.ts'
import {divisionsAtStart} from './items.ts'
import type {PassageState, Piece} from './items.ts'
import {joinMeasure} from './measure.ts'
import {createRestBreaker} from './multiple-rest.ts'
import {spanIn} from './passage.ts'
import type {Mark, Passage} from './passage.ts'

/** The music of other parts that goes into one. */
export interface Joint {
  readonly passages: readonly Passage[]
  readonly marks: readonly Mark[]
  /** Whether the part prints accidentals at all. */
  readonly printsAccidentals: boolean
}

/** A measure of a guest (by the part's id) as the host's player reads it. Asked for in the order of the measures. */
export type GuestMeasures = (guest: string, measure: number) => Promise<Measure | undefined>

/** Joins the measures of one part, in their order. */
export interface Joiner {
  /** The text of a measure with what belongs into it. */
  join(source: MeasureText): Promise<string>
}

/**
 * Puts music of other parts into a part, measure by measure; measures that get none stay byte for byte. Reports
 * `join/divisions` where a measure cannot take notes in.
 */
export function createJoiner(
  part: string,
  {passages, marks, printsAccidentals}: Joint,
  guests: GuestMeasures,
  report: Report,
): Joiner {
  const states = new Map<Passage, PassageState>(
    passages.map((passage) => [
      passage,
      {slurs: new Set<string>(), wedges: new Set<string>(), labelled: false},
    ]),
  )
  const isTouched = (measure: number): boolean =>
    passages.some((passage) => spanIn(passage, measure) !== undefined)
  const breaker = createRestBreaker(isTouched)
  let context = firstContext(part)
  let stated = context.divisions

  async function piecesIn(index: number): Promise<Piece[]> {
    const pieces: Piece[] = []
    for (const passage of passages) {
      const span = spanIn(passage, index)
      const state = states.get(passage)
      const guest = span && (await guests(passage.guest, index))
      if (guest && state) pieces.push({passage, guest, state, ...span})
    }
    return pieces
  }

  /** Divisions go back to what the host has where nothing is joined any more. */
  function restored(measure: Measure): string {
    const own = divisionsAtStart(measure)
    const differs = !statesDivisions(measure) && stated !== own
    stated = advance(measure.context, measure).divisions
    return differs ? applyEdits(measure.text, [stateDivisions(measure, own)]) : measure.text
  }

  return {
    async join(source) {
      const first = readMeasure(source, context)
      const text = breaker.edit(first)
      const measure = text === source.text ? first : readMeasure({...source, text}, context)
      context = advance(context, measure)
      const pieces = await piecesIn(measure.index)
      const own = marks.filter((mark) => mark.measure === measure.index)
      if (pieces.length === 0 && own.length === 0) return restored(measure)
      const joined = joinMeasure(measure, pieces, {stated, marks: own, printsAccidentals})
      if (!joined) {
        report({
          code: 'join/divisions',
          severity: 'warning',
          message:
            'the measure changes its divisions on the way: no other music can be put into it',
          at: placeOf(measure),
        })
        return restored(measure)
      }
      stated = joined.divisions
      return joined.text
    },
  }
}
