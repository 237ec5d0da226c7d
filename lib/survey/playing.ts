import {instrumentChangeReader, techniqueReader} from '../instruments/technique.ts'
import type {PartFacts} from './facts.ts'

/** Something that the words of a part ask for. */
export interface Marked {
  /** The technique's id, or `change` for a change of instrument or crook. */
  readonly kind: string
  /** As printed. */
  readonly words: string
  /** The number of its measure as printed. */
  readonly measure: string
}

/** Reads the ways of playing that words ask for, each where it first does, and every change of instrument or crook. */
export function playingReader(): (facts: PartFacts) => readonly Marked[] {
  const readTechniques = techniqueReader()
  const readChange = instrumentChangeReader()
  return (facts) => {
    const found: Marked[] = []
    for (const {text, measure} of facts.words) {
      const place = {words: text, measure: facts.numbers[measure] ?? String(measure + 1)}
      if (readChange(text)) found.push({kind: 'change', ...place})
      for (const {id} of readTechniques(text))
        if (!found.some(({kind}) => kind === id)) found.push({kind: id, ...place})
    }
    return found
  }
}
