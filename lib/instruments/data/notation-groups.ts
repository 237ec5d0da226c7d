/**
 * Rows of notation-rows.ts that make one notation, because a single part changes between their clefs. The first row
 * is the opening clef. Rows that stay alone are those whose part is printed in one clef from beginning to end: of
 * a saxhorn part there is a treble-clef print and a bass-clef print, and a player has the one or the other.
 */
export const groupTable = `
id|name|rows
horn.crook-c-alto.old|horn in C alto, old notation: bass clef an octave above the treble reading|horn.crook-c-alto horn.crook-c-alto.bass-old
horn.crook-c-alto.new|horn in C alto, new notation: the same interval in both clefs|horn.crook-c-alto horn.crook-c-alto.bass-new
horn.crook-b-natural-alto.old|horn in B natural alto, old notation: bass clef an octave above the treble reading|horn.crook-b-natural-alto horn.crook-b-natural-alto.bass-old
horn.crook-b-natural-alto.new|horn in B natural alto, new notation: the same interval in both clefs|horn.crook-b-natural-alto horn.crook-b-natural-alto.bass-new
horn.crook-b-flat-alto.old|horn in B flat alto, old notation: bass clef an octave above the treble reading|horn.crook-b-flat-alto horn.crook-b-flat-alto.bass-old
horn.crook-b-flat-alto.new|horn in B flat alto, new notation: the same interval in both clefs|horn.crook-b-flat-alto horn.crook-b-flat-alto.bass-new
horn.crook-a.old|horn in A, old notation: bass clef an octave above the treble reading|horn.crook-a horn.crook-a.bass-old
horn.crook-a.new|horn in A, new notation: the same interval in both clefs|horn.crook-a horn.crook-a.bass-new
horn.crook-a-flat.old|horn in A flat, old notation: bass clef an octave above the treble reading|horn.crook-a-flat horn.crook-a-flat.bass-old
horn.crook-a-flat.new|horn in A flat, new notation: the same interval in both clefs|horn.crook-a-flat horn.crook-a-flat.bass-new
horn.crook-g.old|horn in G, old notation: bass clef an octave above the treble reading|horn.crook-g horn.crook-g.bass-old
horn.crook-g.new|horn in G, new notation: the same interval in both clefs|horn.crook-g horn.crook-g.bass-new
horn.crook-g-flat.old|horn in G flat, old notation: bass clef an octave above the treble reading|horn.crook-g-flat horn.crook-g-flat.bass-old
horn.crook-g-flat.new|horn in G flat, new notation: the same interval in both clefs|horn.crook-g-flat horn.crook-g-flat.bass-new
horn.crook-f-sharp.old|horn in F sharp, old notation: bass clef an octave above the treble reading|horn.crook-f-sharp horn.crook-f-sharp.bass-old
horn.crook-f-sharp.new|horn in F sharp, new notation: the same interval in both clefs|horn.crook-f-sharp horn.crook-f-sharp.bass-new
horn.crook-f.old|horn in F, old notation: bass clef an octave above the treble reading|horn.crook-f horn.crook-f.bass-old
horn.crook-f.new|horn in F, new notation: the same interval in both clefs|horn.crook-f horn.crook-f.bass-new
horn.crook-e.old|horn in E, old notation: bass clef an octave above the treble reading|horn.crook-e horn.crook-e.bass-old
horn.crook-e.new|horn in E, new notation: the same interval in both clefs|horn.crook-e horn.crook-e.bass-new
horn.crook-e-flat.old|horn in E flat, old notation: bass clef an octave above the treble reading|horn.crook-e-flat horn.crook-e-flat.bass-old
horn.crook-e-flat.new|horn in E flat, new notation: the same interval in both clefs|horn.crook-e-flat horn.crook-e-flat.bass-new
horn.crook-d.old|horn in D, old notation: bass clef an octave above the treble reading|horn.crook-d horn.crook-d.bass-old
horn.crook-d.new|horn in D, new notation: the same interval in both clefs|horn.crook-d horn.crook-d.bass-new
horn.crook-d-flat.old|horn in D flat, old notation: bass clef an octave above the treble reading|horn.crook-d-flat horn.crook-d-flat.bass-old
horn.crook-d-flat.new|horn in D flat, new notation: the same interval in both clefs|horn.crook-d-flat horn.crook-d-flat.bass-new
horn.crook-c.old|horn in C, old notation: bass clef an octave above the treble reading|horn.crook-c horn.crook-c.bass-old
horn.crook-c.new|horn in C, new notation: the same interval in both clefs|horn.crook-c horn.crook-c.bass-new
horn.crook-b-natural-basso.old|horn in B natural basso, old notation: bass clef an octave above the treble reading|horn.crook-b-natural-basso horn.crook-b-natural-basso.bass-old
horn.crook-b-natural-basso.new|horn in B natural basso, new notation: the same interval in both clefs|horn.crook-b-natural-basso horn.crook-b-natural-basso.bass-new
horn.crook-b-flat-basso.old|horn in B flat basso, old notation: bass clef an octave above the treble reading|horn.crook-b-flat-basso horn.crook-b-flat-basso.bass-old
horn.crook-b-flat-basso.new|horn in B flat basso, new notation: the same interval in both clefs|horn.crook-b-flat-basso horn.crook-b-flat-basso.bass-new
horn.crook-a-basso.old|horn in A basso, old notation: bass clef an octave above the treble reading|horn.crook-a-basso horn.crook-a-basso.bass-old
horn.crook-a-basso.new|horn in A basso, new notation: the same interval in both clefs|horn.crook-a-basso horn.crook-a-basso.bass-new
horn.crook-a-flat-basso.old|horn in A flat basso, old notation: bass clef an octave above the treble reading|horn.crook-a-flat-basso horn.crook-a-flat-basso.bass-old
horn.crook-a-flat-basso.new|horn in A flat basso, new notation: the same interval in both clefs|horn.crook-a-flat-basso horn.crook-a-flat-basso.bass-new
horn.crook-g-basso.old|horn in G basso, old notation: bass clef an octave above the treble reading|horn.crook-g-basso horn.crook-g-basso.bass-old
horn.crook-g-basso.new|horn in G basso, new notation: the same interval in both clefs|horn.crook-g-basso horn.crook-g-basso.bass-new
trumpet.crook-f.old|trumpet in F, old notation: bass clef an octave above the treble reading|trumpet.crook-f trumpet.crook-f.bass-old
trumpet.crook-e.old|trumpet in E, old notation: bass clef an octave above the treble reading|trumpet.crook-e trumpet.crook-e.bass-old
trumpet.crook-e-flat.old|trumpet in E flat, old notation: bass clef an octave above the treble reading|trumpet.crook-e-flat trumpet.crook-e-flat.bass-old
trumpet.crook-d.old|trumpet in D, old notation: bass clef an octave above the treble reading|trumpet.crook-d trumpet.crook-d.bass-old
trumpet.crook-d-flat.old|trumpet in D flat, old notation: bass clef an octave above the treble reading|trumpet.crook-d-flat trumpet.crook-d-flat.bass-old
trumpet.crook-c.old|trumpet in C, old notation: bass clef an octave above the treble reading|trumpet.crook-c trumpet.crook-c.bass-old
trumpet.crook-b-natural.old|trumpet in B natural, old notation: bass clef an octave above the treble reading|trumpet.crook-b-natural trumpet.crook-b-natural.bass-old
trumpet.crook-b-flat.old|trumpet in B flat, old notation: bass clef an octave above the treble reading|trumpet.crook-b-flat trumpet.crook-b-flat.bass-old
trumpet.crook-a.old|trumpet in A, old notation: bass clef an octave above the treble reading|trumpet.crook-a trumpet.crook-a.bass-old
trumpet.crook-a-flat.old|trumpet in A flat, old notation: bass clef an octave above the treble reading|trumpet.crook-a-flat trumpet.crook-a-flat.bass-old
basset-horn.old|basset horn, old notation: bass clef a fourth higher, treble clef a fifth lower|basset-horn.treble basset-horn.bass-old
basset-horn.new|basset horn, new notation: a fifth lower in both clefs|basset-horn.treble basset-horn.bass-new
bass-clarinet.german|bass clarinet in B flat, German system: a major second lower in both clefs|bass-clarinet.german-bass bass-clarinet.german-treble
bass-clarinet.russian|bass clarinet in B flat, Russian (mixed) system: bass clef a major second, treble clef a major ninth lower|bass-clarinet.russian-bass bass-clarinet.russian-treble
bass-clarinet-a.german|bass clarinet in A, German system: a minor third lower in both clefs|bass-clarinet-a.german-bass bass-clarinet-a.german-treble
wagner-tuba.system-1.tenor|tenor Wagner tuba, system 1: in B flat, a major second lower in both clefs|wagner-tuba.tenor.b-flat.m2 wagner-tuba.tenor.b-flat.m2.bass
wagner-tuba.system-1.bass|bass Wagner tuba, system 1: in F, a fifth lower in both clefs|wagner-tuba.bass.f.p5 wagner-tuba.bass.f.p5.treble
cello.true|cello, every clef at pitch|cello.bass-clef cello.tenor cello.treble-true
cello.false-treble|cello, false treble: treble clef an octave lower, bass and tenor clef at pitch|cello.bass-clef cello.tenor cello.treble-false
double-bass.octave|double bass, an octave lower in every clef|double-bass.orchestral double-bass.tenor double-bass.treble
bass-oboe.sounding|bass oboe at sounding pitch in treble and bass clef|bass-oboe.at-pitch-treble bass-oboe.at-pitch
trombone.concert|trombones at pitch in bass, tenor and alto clef|trombone.bass-clef trombone.tenor-clef trombone.alto-clef
tenor-voice.any-clef|tenor voice: treble clef an octave lower, tenor and bass clef at pitch|tenor-voice.octave tenor-voice.tenor-clef tenor-voice.bass-clef
`

/**
 * Clefs that a modern notation has besides those of its instrument's line: rows that its players read in the same
 * part today. A row may differ in its interval: a tenor in bass clef sings at pitch.
 */
export const moreClefsTable = `
id|rows
horn-f.modern|horn.crook-f.bass-new
double-bass.modern|double-bass.tenor double-bass.treble
tenor-voice.modern|tenor-voice.tenor-clef tenor-voice.bass-clef
`
