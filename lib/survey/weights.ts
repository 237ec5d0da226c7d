/**
 * How much each kind of evidence counts, in natural logarithms of odds. They were set by hand, from what the sources say
 * about how often files, labels and signatures lie, and from part of a corpus of real scores; what they come to on the
 * scores held back is in test/survey/corpus.test.ts.
 */
export const WEIGHTS = {
  /** A documented notation that is not the modern one of its instrument, by how well it is documented. */
  other: {high: -1, medium: -2, low: -3.5},
  /** The part stands at concert pitch although its instrument transposes: a score in C. */
  concert: -2.5,
  /** A transposing notation that is not documented for one of the line's clefs. */
  foreignClef: -2,
  /** The part is for another instrument than any that its name may mean. */
  elsewhere: -1.5,
  /** The notation of the instrument, an octave away. */
  displaced: -6.5,
  /** A transposition that no notation of the instrument knows, but the file declares. */
  unknown: -5,
  /** Any usual transposition although the name says otherwise: labels do misstate their key. */
  against: -8,
  /** A usual transposition where there is no name. */
  nameless: -3,
  /** One of about ten usual crooks where the name has no key. */
  keyless: -2.3,
  /** A crook that is usually called alto or basso, where the name does not say so. */
  rareOctave: -1.5,
  /** The key in the name is not that of the notation. */
  otherKey: -6,
  /** The name says alto or basso and the notation is the other. */
  otherOctave: -3,
  /** The file declares another transposition. */
  undeclared: -5,
  /** The file declares it an octave away: the octave is what files lose most often, or count twice. */
  octave: -3.5,
  /** The file declares nothing, and the part would transpose: none is a statement too, but many files forget. */
  silent: -1,
  /** The same in a file that says of itself that it stands at concert pitch. */
  concertScore: -5,
  /** As declared but for the bass clef, in which the old notation cannot be declared (MusicXML has one interval a staff). */
  oldBass: -1.5,
  /** A signature that contradicts the others' key; one that is missing where such parts print one, or rarely do. */
  key: {wrong: -5, missing: -4, rarely: -0.7},
  /** Nats a note of consonance counts, and the number of notes at which more say only half as much more. */
  harmony: {scale: 0.6, half: 30},
  /** A line that doubles another all the time, with all partners together no more than `most`. */
  doubling: {scale: 4, most: 8, octave: 0.5},
  /** A note outside the range of its instrument, each semitone, at most so much together. */
  range: {semitone: -2.5, most: -9},
  /** The distance of a line's middle from the middle of its instrument's usual range, in halves of that range, squared. */
  register: -1.2,
  /** A semitone of leap at a change of clef, and changes after which more say only half as much more. */
  leap: {semitone: -0.25, half: 4},
  /** A contrabass line that sounds above another bass. */
  role: -3,
  /** What desks that share an instrument say for each other: so much of their own evidence, each at most so much. */
  desk: {share: 0.5, most: -6},
} as const
