import {formatPartName} from '../instruments/part-name.ts'
import type {Instrument, Language} from '../instruments/instrument.ts'

/** How a part says for whom it stands in (renotation-rules N4; `covering` is our choice among the English ones). */
const STANDS_IN: Readonly<Record<Language, string>> = {
  en: 'covering',
  fr: 'à défaut de',
  de: 'Ersatz für',
  it: 'in mancanza di',
  es: 'en ausencia de',
  nl: 'ter vervanging van',
}

/** `Tuba, covering Contrabass saxhorn in B flat`; in French `Tuba, à défaut de Saxhorn contrebasse si bémol`. */
export function coverLabel(
  cover: Instrument,
  missing: Instrument,
  language: Language = 'en',
): string {
  const [name, other] = [cover, missing].map((each) => formatPartName(each, language).name)
  return `${name}, ${STANDS_IN[language]} ${other}`
}

/** renotation-rules N4, the column "play if"; `%` is the name of the absent instrument. */
const PLAY_IF: Readonly<Record<Language, string>> = {
  en: 'play if no %',
  fr: 'jouer s’il n’y a pas de %',
  de: 'spielen, wenn % fehlt',
  it: 'se manca %',
  es: 'si no hay %',
  nl: 'spelen als er geen % is',
}

/** What stands over a cross-cue: `play if no Bn.` (renotation-rules Q9). */
export function playIfAbsent(name: string, language: Language): string {
  return PLAY_IF[language].replace('%', () => name)
}
