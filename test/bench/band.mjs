// The band that the generated scores are for: who plays, how each part is written and what it shows.
// [name, abbreviation, clef, transposition, middle of the staff's music, traits]

const by = (diatonic, chromatic, octaves = 0) => ({diatonic, chromatic, octaves})
const nothing = by(0, 0)

const rows = [
  ['Piccolo', 'Picc.', 'G2', by(0, 0, 1), 'B4', []],
  ['Flute', 'Fl.', 'G2', nothing, 'D5', []],
  ['Oboe', 'Ob.', 'G2', nothing, 'B4', []],
  ['E♭ Clarinet', 'E♭ Cl.', 'G2', by(2, 3), 'B4', []],
  ['B♭ Clarinet 1', 'Cl. 1', 'G2', by(-1, -2), 'D5', ['chords']],
  ['B♭ Clarinet 2', 'Cl. 2', 'G2', by(-1, -2), 'A4', []],
  ['Bass Clarinet', 'B. Cl.', 'G2', by(-1, -2, -1), 'G4', []],
  ['Bassoon', 'Bn.', 'F4', nothing, 'E3', ['clefs']],
  ['Alto Saxophone', 'A. Sax.', 'G2', by(-5, -9), 'B4', []],
  ['Tenor Saxophone', 'T. Sax.', 'G2', by(-1, -2, -1), 'B4', ['harmony']],
  ['Baritone Saxophone', 'B. Sax.', 'G2', by(-5, -9, -1), 'B4', []],
  ['Cornet', 'Crt.', 'G2', by(-1, -2), 'B4', ['harmony']],
  ['B♭ Trumpet', 'Tpt.', 'G2', by(-1, -2), 'B4', []],
  ['Horn 1 in F', 'Hn. 1', 'G2', by(-4, -7), 'B4', []],
  ['Horn 2 in F', 'Hn. 2', 'G2', by(-4, -7), 'F4', []],
  ['Trombone', 'Tbn.', 'F4', nothing, 'C3', ['clefs']],
  ['Euphonium', 'Euph.', 'F4', nothing, 'D3', []],
  ['Baritone', 'Bar.', 'G2', by(-1, -2, -1), 'G4', []],
  ['Tuba', 'Tba.', 'F4', nothing, 'A2', []],
  ['Voice', 'V.', 'G2', nothing, 'A4', ['lyrics', 'harmony']],
  ['Piano', 'Pno.', 'G2', nothing, 'C5', ['grand', 'chords']],
  ['Viola', 'Va.', 'C3', nothing, 'C4', ['clefs']],
  ['Double Bass', 'Db.', 'F4', by(0, 0, -1), 'C3', []],
  ['Drum Set', 'Dr.', 'percussion', nothing, 'B4', ['drums']],
]

/** The first `count` parts of the band; more desks of the same when it is larger than that. */
export function band(count) {
  return Array.from({length: count}, (_, index) => {
    const [name, abbreviation, clef, transposition, middle, traits] = rows[index % rows.length]
    const desk = Math.floor(index / rows.length)
    return {
      id: `P${index + 1}`,
      index,
      name: desk === 0 ? name : `${name}, desk ${desk + 1}`,
      abbreviation,
      clef,
      transposition,
      middle,
      has: (trait) => traits.includes(trait),
    }
  })
}
