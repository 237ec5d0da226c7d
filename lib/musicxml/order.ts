/**
 * The order in which the MusicXML 4.0 schema wants the children of the elements that we add children to
 * (W3C, musicxml.xsd: complex types note, attributes, pitch, transpose, key, clef, score-part …).
 */
export const ORDER = {
  note: 'grace cue chord pitch unpitched rest duration tie instrument footnote level voice type dot accidental time-modification stem notehead notehead-text staff beam notations lyric play listen'.split(
    ' ',
  ),
  attributes:
    'footnote level divisions key time staves part-symbol instruments clef staff-details transpose for-part directive measure-style'.split(
      ' ',
    ),
  pitch: ['step', 'alter', 'octave'],
  rest: ['display-step', 'display-octave'],
  key: ['cancel', 'fifths', 'mode', 'key-step', 'key-alter', 'key-accidental', 'key-octave'],
  clef: ['sign', 'line', 'clef-octave-change'],
  transpose: ['diatonic', 'chromatic', 'octave-change', 'double'],
  root: ['root-step', 'root-alter'],
  bass: ['bass-separator', 'bass-step', 'bass-alter'],
  'score-part':
    'identification part-link part-name part-name-display part-abbreviation part-abbreviation-display group score-instrument player midi-device midi-instrument'.split(
      ' ',
    ),
  'score-instrument':
    'instrument-name instrument-abbreviation instrument-sound solo ensemble virtual-instrument'.split(
      ' ',
    ),
  'midi-instrument':
    'midi-channel midi-name midi-bank midi-program midi-unpitched volume pan elevation'.split(' '),
  defaults:
    'scaling concert-score page-layout system-layout staff-layout appearance music-font word-font lyric-font lyric-language'.split(
      ' ',
    ),
  'score-partwise':
    'work movement-number movement-title identification defaults credit part-list part'.split(' '),
  'score-timewise':
    'work movement-number movement-title identification defaults credit part-list measure'.split(
      ' ',
    ),
} as const satisfies Readonly<Record<string, readonly string[]>>
