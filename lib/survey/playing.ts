import {mutaReader} from '../instruments/label-muta.ts'
import type {LabelOptions} from '../instruments/label.ts'
import type {PartFacts} from './facts.ts'

/** A way of playing that the words of a part ask for, where it is first asked for. */
export interface Technique {
  /** `pizzicato`, `mute`, `divisi` … */
  readonly technique: string
  /** As printed. */
  readonly words: string
  /** The number of its measure as printed. */
  readonly measure: string
}

/** A change of instrument or crook in the course of a part. */
export interface Change {
  readonly words: string
  readonly measure: string
  /** Id of the instrument that is taken up. */
  readonly instrument?: string
  /** The key of the crook, as in `Bb`; what drums are tuned to. */
  readonly key?: string
}

/** What the words of a part tell its players. */
export interface Playing {
  readonly techniques: readonly Technique[]
  readonly changes: readonly Change[]
}

/** A bare name may be that of a cue: below this confidence it is not taken for a change. */
const CHANGES = 0.5

/** Reads what words tell the players; scores without any words cost nothing. */
export function playingReader(options: LabelOptions): (facts: PartFacts) => Playing {
  let reader: ReturnType<typeof mutaReader> | undefined
  return (facts) => {
    const techniques: Technique[] = []
    const changes: Change[] = []
    for (const {text: words, measure} of facts.words) {
      reader ??= mutaReader(options)
      const place = {words, measure: facts.numbers[measure] ?? String(measure + 1)}
      const told = reader(words)
      if (told?.kind === 'technique') {
        for (const technique of told.techniques) {
          const isKnown = techniques.some((known) => known.technique === technique)
          if (!isKnown) techniques.push({technique, ...place})
        }
      } else if (told?.kind === 'instrument-change' && told.confidence >= CHANGES) {
        const [instrument] = told.to.instruments
        const {key} = told.to
        changes.push({...place, ...(instrument && {instrument: instrument.id}), ...(key && {key})})
      } else if (told?.kind === 'crook' && told.confidence >= CHANGES) {
        changes.push({...place, key: told.key})
      }
    }
    return {techniques, changes}
  }
}
