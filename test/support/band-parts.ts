import type {Language} from '../../lib/index.ts'

/** What a part of a band does most of the time. */
export type Role = 'tune' | 'counter' | 'middle' | 'bass'

/** A part that bands of a country had: its label, the notation that its players read, and what it does. */
export interface BandPart {
  readonly label: string
  /** Id of the instrument, for its range. */
  readonly instrument: string
  /** Id of a notation of the catalogue, with the clef that is written: the reading of that clef holds. */
  readonly notation: string
  readonly clef: string
  readonly role: Role
  /** Without a key signature, as for horns and trumpets with crooks. */
  readonly open?: boolean
}

/** Label, instrument, notation, clef, role; `open` at the end. */
const rows: Readonly<Record<'fr' | 'de' | 'en' | 'it', string>> = {
  fr: `
Petite flûte en ré♭|piccolo-d-flat|piccolo-d-flat.modern|G2|tune
Grande flûte|flute|flute.modern|G2|tune
Hautbois|oboe|oboe.modern|G2|tune
Petite clarinette en mi♭|clarinet-e-flat|clarinet-e-flat.modern|G2|tune
1re Clarinette si♭|clarinet-b-flat|clarinet-b-flat.modern|G2|tune
2e Clarinette si♭|clarinet-b-flat|clarinet-b-flat.modern|G2|middle
Saxophone alto mi♭|alto-saxophone-e-flat|alto-saxophone-e-flat.modern|G2|middle
Saxophone ténor si♭|tenor-saxophone-b-flat|tenor-saxophone-b-flat.modern|G2|counter
Saxophone baryton mi♭|baritone-saxophone-e-flat|baritone-saxophone-e-flat.modern|G2|bass
Basson|bassoon|bassoon.modern|F4|bass
Cornet à pistons en si♭|cornet-b-flat|cornet-b-flat.modern|G2|tune
Trompettes en mi♭|trumpet-e-flat|trumpet-e-flat.modern|G2|middle|open
Cors en mi♭|horn-e-flat|horn-e-flat.modern|G2|middle|open
Cors en fa|horn-f|horn-f.modern|G2|middle|open
1er Bugle si♭|flugelhorn-b-flat|flugelhorn-b-flat.modern|G2|tune
Altos mi♭|alto-horn-e-flat|alto-horn-e-flat.modern|G2|middle
Baryton si♭ (clé de sol)|saxhorn-baritone-b-flat|saxhorn-baritone-b-flat.modern|G2|counter
Baryton en si♭ (clé de fa)|saxhorn-baritone-b-flat|saxhorn.baritone-b-flat.bass|F4|counter
Trombones|trombone-tenor|trombone-tenor.modern|F4|middle
Basse si♭ (clé de fa)|saxhorn-bass-b-flat|saxhorn-bass-b-flat.modern|F4|counter
Contrebasse mi♭ (clé de fa)|saxhorn-contrabass-e-flat|saxhorn-contrabass-e-flat.modern|F4|bass
Contrebasse si♭ (clé de fa)|saxhorn-contrabass-b-flat|saxhorn-contrabass-b-flat.modern|F4|bass
Sarrusophone contrebasse mi♭|sarrusophone-contrabass-e-flat|sarrusophone-contrabass-e-flat.modern|G2|bass`,
  de: `
Kleine Flöte in Des|piccolo-d-flat|piccolo-d-flat.modern|G2|tune
Flöte|flute|flute.modern|G2|tune
Oboe|oboe|oboe.modern|G2|tune
Klarinette in Es|clarinet-e-flat|clarinet-e-flat.modern|G2|tune
1. Klarinette in B|clarinet-b-flat|clarinet-b-flat.modern|G2|tune
2. Klarinette in B|clarinet-b-flat|clarinet-b-flat.modern|G2|middle
Fagott|bassoon|bassoon.modern|F4|bass
Flügelhorn in B|flugelhorn-b-flat|flugelhorn-b-flat.modern|G2|tune
1. Trompete in B|trumpet-b-flat|trumpet-b-flat.modern|G2|tune
Trompete in Es|trumpet-e-flat|trumpet-e-flat.modern|G2|middle|open
Trompete in F|trumpet-f|trumpet-f.modern|G2|middle|open
Horn in F|horn-f|horn-f.modern|G2|middle|open
Horn in Es|horn-e-flat|horn-e-flat.modern|G2|middle|open
Althorn in Es|alto-horn-e-flat|alto-horn-e-flat.modern|G2|middle
Tenorhorn in B|tenorhorn-b-flat|tenorhorn-b-flat.modern|G2|counter
Bariton in C|bariton-german|bariton-german.modern|F4|counter
Bariton in B|bariton-german|german.bariton.treble|G2|counter
Posaune|trombone-tenor|trombone-tenor.modern|F4|middle
1. Bass in F|bass-tuba-f|bass-tuba-f.modern|F4|bass
2. Bass in B|contrabass-tuba-b-flat|contrabass-tuba-b-flat.modern|F4|bass`,
  en: `
D flat Piccolo|piccolo-d-flat|piccolo-d-flat.modern|G2|tune
Flute|flute|flute.modern|G2|tune
Oboe|oboe|oboe.modern|G2|tune
E flat Clarinet|clarinet-e-flat|clarinet-e-flat.modern|G2|tune
Solo B flat Clarinet|clarinet-b-flat|clarinet-b-flat.modern|G2|tune
2nd B flat Clarinet|clarinet-b-flat|clarinet-b-flat.modern|G2|middle
Alto Saxophone|alto-saxophone-e-flat|alto-saxophone-e-flat.modern|G2|middle
Tenor Saxophone|tenor-saxophone-b-flat|tenor-saxophone-b-flat.modern|G2|counter
Bassoon|bassoon|bassoon.modern|F4|bass
1st Cornet in B flat|cornet-b-flat|cornet-b-flat.modern|G2|tune
Soprano Cornet in E flat|soprano-cornet-e-flat|soprano-cornet-e-flat.modern|G2|tune
Flugel Horn|flugelhorn-b-flat|flugelhorn-b-flat.modern|G2|tune
1st Horn in F|horn-f|horn-f.modern|G2|middle|open
1st Tenor Horn in E flat|alto-horn-e-flat|alto-horn-e-flat.modern|G2|middle
1st Baritone|baritone-horn|baritone-horn.modern|G2|counter
Euphonium|euphonium|euphonium.modern|F4|counter
Euphonium T.C.|euphonium|brassband.euphonium|G2|counter
1st Trombone|trombone-tenor|trombone-tenor.modern|F4|middle
E flat Bass|e-flat-bass|e-flat-bass.modern|G2|bass
B flat Bass|b-flat-bass|b-flat-bass.modern|G2|bass
Tuba|tuba|tuba.modern|F4|bass`,
  it: `
Ottavino in re♭|piccolo-d-flat|piccolo-d-flat.modern|G2|tune
Flauto|flute|flute.modern|G2|tune
Oboe|oboe|oboe.modern|G2|tune
Clarinetto piccolo in mi♭|clarinet-e-flat|clarinet-e-flat.modern|G2|tune
Clarinetto 1° in si♭|clarinet-b-flat|clarinet-b-flat.modern|G2|tune
Clarinetti 2i in si♭|clarinet-b-flat|clarinet-b-flat.modern|G2|middle
Saxofono contralto|alto-saxophone-e-flat|alto-saxophone-e-flat.modern|G2|middle
Saxofono baritono|baritone-saxophone-e-flat|baritone-saxophone-e-flat.modern|G2|bass
Fagotto|bassoon|bassoon.modern|F4|bass
Cornetta in si♭|cornet-b-flat|cornet-b-flat.modern|G2|tune
Tromba in mi♭|trumpet-e-flat|trumpet-e-flat.modern|G2|middle|open
Corni in fa|horn-f|horn-f.modern|G2|middle|open
Corni in mi♭|horn-e-flat|horn-e-flat.modern|G2|middle|open
Flicorno soprano in si♭|flugelhorn-b-flat|flugelhorn-b-flat.modern|G2|tune
Flicorno contralto in mi♭|alto-horn-e-flat|alto-horn-e-flat.modern|G2|middle
Flicorno tenore in si♭|tenorhorn-b-flat|tenorhorn-b-flat.modern|G2|counter
Flicorno basso in si♭|saxhorn-bass-b-flat|saxhorn-bass-b-flat.modern|F4|counter
Tromboni|trombone-tenor|trombone-tenor.modern|F4|middle
Flicorno basso grave in mi♭|saxhorn-contrabass-e-flat|saxhorn-contrabass-e-flat.modern|F4|bass
Flicorno contrabbasso in si♭|saxhorn-contrabass-b-flat|saxhorn-contrabass-b-flat.modern|F4|bass`,
}

/** The languages that bands can be had in. */
export const BAND_LANGUAGES = ['fr', 'de', 'en', 'it'] as const satisfies readonly Language[]
export type BandLanguage = (typeof BAND_LANGUAGES)[number]

/** The parts of a country's bands, in the order of their scores. */
export function bandParts(language: BandLanguage): readonly BandPart[] {
  return rows[language]
    .trim()
    .split('\n')
    .map((row) => {
      const [label = '', instrument = '', notation = '', clef = '', role = '', open] =
        row.split('|')
      return {label, instrument, notation, clef, role: role as Role, ...(open && {open: true})}
    })
}
