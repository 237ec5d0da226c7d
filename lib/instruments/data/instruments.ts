/**
 * What an instrument is and plays, one a line. `transposition` is added to written to get sounding; ranges are
 * sounding, from low to high: `pro` the professional extreme, `tutti` comfortable in a section, `student` the second
 * or third year. `cover` are those who usually take the part, best first; `midi` counts from 1.
 */
export const instrumentTable = `
id|builtIn|family|transposition|clefs|pro|tutti|student|keySignature|sound|midi|modern|cover
piccolo|C|flutes|+P8|G2|D5 C8|D5 A7|G5 D7|yes|wind.flutes.flute.piccolo|73|piccolo.modern|flute clarinet-e-flat soprano-saxophone-b-flat
piccolo-d-flat|Db|flutes|+m9|G2|Eb5 Bb7|Eb5 Ab7||yes|wind.flutes.flute.piccolo|73|piccolo-d-flat.modern|piccolo flute
piccolo-e-flat|Eb|flutes|+m10|G2|F5 C8|F5 A7||yes|wind.flutes.flute.piccolo|73|piccolo-e-flat.modern|piccolo clarinet-e-flat
flute|C|flutes|P1|G2|B3 F7|C4 C7|C4 D6|yes|wind.flutes.flute|74|flute.modern|oboe clarinet-b-flat violin
flute-e-flat|Eb|flutes|+m3|G2|Eb4 Bb6|Eb4 G6||yes|wind.flutes.flute|74|flute-e-flat.modern|flute clarinet-e-flat
flute-d-flat|Db|flutes|+m2|G2|Db4 Bb6|Db4 G6||yes|wind.flutes.flute|74|flute-d-flat.modern|flute
alto-flute|G|flutes|-P4|G2|G3 G6|G3 D6||yes|wind.flutes.flute.alto|74|alto-flute.modern|flute clarinet-a english-horn
bass-flute|C|flutes|-P8|G2|C3 C6|C3 G5||yes|wind.flutes.flute.bass|74|bass-flute.modern|alto-flute bass-clarinet-b-flat clarinet-a
contrabass-flute|C|flutes|-P15|G2|C2 C5|C2 G4||yes|wind.flutes.flute.contrabass|74|contrabass-flute.modern|bass-flute contrabass-clarinet-b-flat
fife-b-flat|Bb|flutes|+m7|G2|C5 Ab7|F5 F7||varies|wind.flutes.fife|73|fife-b-flat.modern|piccolo
garklein-recorder|C|recorders|+P15|G2|C6 A7|C6 E7||yes|wind.flutes.recorder.garklein|75|garklein-recorder.modern|sopranino-recorder
sopranino-recorder|F|recorders|+P8|G2|F5 G7|F5 D7|F5 D7|yes|wind.flutes.recorder.sopranino|75|sopranino-recorder.modern|piccolo descant-recorder
descant-recorder|C|recorders|+P8|G2|C5 D7|C5 A6|C5 E6|yes|wind.flutes.recorder.descant|75|descant-recorder.modern|piccolo flute
treble-recorder|F|recorders|P1|G2|F4 G6|F4 D6|F4 D6|yes|wind.flutes.recorder.alto|75|treble-recorder.modern|flute
tenor-recorder|C|recorders|P1|G2|C4 D6|C4 A5||yes|wind.flutes.recorder.tenor|75|tenor-recorder.modern|flute alto-flute
bass-recorder|F|recorders|+P8|F4|F3 G5|F3 D5||yes|wind.flutes.recorder.bass|75|bass-recorder.modern|alto-flute bassoon
great-bass-recorder|C|recorders|+P8|F4|C3 D5|C3 A4||yes|wind.flutes.recorder.great-bass|75|great-bass-recorder.modern|bassoon bass-flute
contrabass-recorder|F|recorders|P1|F4|F2 G4|F2 D4||yes|wind.flutes.recorder.contrabass|75|contrabass-recorder.modern|bassoon
oboe|C|oboes|P1|G2|Bb3 A6|C4 E6|D4 A5|yes|wind.reed.oboe|69|oboe.modern|flute clarinet-e-flat soprano-saxophone-b-flat trumpet-b-flat
oboe-e-flat|Eb|oboes|+m3|G2|D4 Ab6|Eb4 E6||yes|wind.reed.oboe.piccolo|69|oboe-e-flat.modern|oboe clarinet-e-flat
oboe-d-amore|A|oboes|-m3|G2|G3 C#6|A3 B5||yes|wind.reed.oboe-damore|69|oboe-d-amore.modern|oboe english-horn clarinet-a
english-horn|F|oboes|-P5|G2|E3 C6|F3 A5||yes|wind.reed.english-horn|70|english-horn.modern|alto-saxophone-e-flat clarinet-a oboe bassoon
oboe-da-caccia|F|oboes|P1|C3|F3 Bb5|F3 G5||yes|wind.reed.oboe-da-caccia|70|oboe-da-caccia.modern|english-horn
bass-oboe|C|oboes|-P8|G2|B2 F5|C3 D5||yes|wind.reed.oboe.bass|69|bass-oboe.modern|heckelphone english-horn bassoon
heckelphone|C|oboes|-P8|G2|A2 G5|B2 E5||yes|wind.reed.heckelphone|69|heckelphone.modern|bass-oboe english-horn bassoon
bassoon|C|bassoons|P1|F4 C4|Bb1 F5|Bb1 A4|F2 D4|yes|wind.reed.bassoon|71|bassoon.modern|bass-clarinet-b-flat baritone-saxophone-e-flat tenor-saxophone-b-flat euphonium cello
contrabassoon|C|bassoons|-P8|F4|Bb0 C4|C1 G3||yes|wind.reed.contrabassoon|71|contrabassoon.modern|sarrusophone-contrabass-e-flat contrabass-clarinet-b-flat contra-alto-clarinet-e-flat tuba double-bass
tenoroon|G|bassoons|+P5|F4|F2 F5|G2 G4||varies|wind.reed.bassoon|71|tenoroon.modern|bassoon english-horn
dulcian|C|bassoons|P1|F4|C2 G4|C2 D4||yes|wind.reed.dulcian|71|dulcian.modern|bassoon
clarinet-a-flat|Ab|clarinets|+m6|G2|C4 Eb7|Eb4 C7||yes|wind.reed.clarinet.piccolo.aflat|72|clarinet-a-flat.modern|clarinet-e-flat piccolo
clarinet-g-high|G|clarinets|+P5|G2|B3 D7|D4 A6||yes|wind.reed.clarinet.g|72|clarinet-g-high.modern|clarinet-e-flat
clarinet-f-high|F|clarinets|+P4|G2|A3 C7|C4 A6||yes|wind.reed.clarinet.eflat|72|clarinet-f-high.modern|clarinet-e-flat
clarinet-e-flat|Eb|clarinets|+m3|G2|G3 C7|G3 G6|Bb3 Eb6|yes|wind.reed.clarinet.eflat|72|clarinet-e-flat.modern|clarinet-b-flat flute oboe
clarinet-d|D|clarinets|+M2|G2|F#3 D7|F#3 F#6||yes|wind.reed.clarinet.d|72|clarinet-d.modern|clarinet-e-flat clarinet-c
clarinet-c|C|clarinets|P1|G2|E3 A6|E3 E6||yes|wind.reed.clarinet|72|clarinet-c.modern|clarinet-b-flat clarinet-e-flat
clarinet-b-flat|Bb|clarinets|-M2|G2|D3 Bb6|D3 D6|D3 Bb5|yes|wind.reed.clarinet.bflat|72|clarinet-b-flat.modern|clarinet-a soprano-saxophone-b-flat flugelhorn-b-flat
clarinet-a|A|clarinets|-m3|G2|C#3 A6|C#3 C#6||yes|wind.reed.clarinet.a|72|clarinet-a.modern|clarinet-b-flat
basset-clarinet-a|A|clarinets|-m3|G2|A2 A6|A2 C#6||yes|wind.reed.clarinet.basset|72|basset-clarinet-a.modern|clarinet-a basset-horn
clarinette-d-amour-g|G|clarinets|-P4|G2|B2 D6|B2 G5||yes|wind.reed.clarinette-damour|72|clarinette-d-amour-g.modern|clarinet-a basset-horn
basset-horn|F|clarinets|-P5|G2|F2 C6|F2 F5||yes|wind.reed.basset-horn|72|basset-horn.modern|alto-clarinet-e-flat bass-clarinet-b-flat clarinet-a
alto-clarinet-e-flat|Eb|clarinets|-M6|G2|Gb2 Eb6|G2 Eb5|Bb2 C5|yes|wind.reed.clarinet.alto|72|alto-clarinet-e-flat.modern|basset-horn bass-clarinet-b-flat alto-saxophone-e-flat
alto-clarinet-f|F|clarinets|-P5|G2|A2 Bb5|A2 F5||yes|wind.reed.clarinet.alto|72|alto-clarinet-f.modern|alto-clarinet-e-flat basset-horn
bass-clarinet-b-flat|Bb|clarinets|-M9|G2|Bb1 F5|Db2 Bb4|D2 F4|yes|wind.reed.clarinet.bass|72|bass-clarinet-b-flat.modern|bassoon baritone-saxophone-e-flat tenor-saxophone-b-flat contra-alto-clarinet-e-flat
bass-clarinet-a|A|clarinets|-m10|G2|C#2 D5|C#2 A4||yes|wind.reed.clarinet.bass|72|bass-clarinet-a.modern|bass-clarinet-b-flat
bass-clarinet-c|C|clarinets|-P8|G2|E2 F5|E2 C5||yes|wind.reed.clarinet.bass|72|bass-clarinet-c.modern|bass-clarinet-b-flat bassoon
contra-alto-clarinet-e-flat|Eb|clarinets|-M13|G2|Eb1 G4|Gb1 Bb3||yes|wind.reed.clarinet.contra-alto|72|contra-alto-clarinet-e-flat.modern|bass-clarinet-b-flat baritone-saxophone-e-flat contrabass-clarinet-b-flat contrabassoon
contrabass-clarinet-b-flat|Bb|clarinets|-M16|G2|Bb0 Eb4|Db1 F3||yes|wind.reed.clarinet.contrabass|72|contrabass-clarinet-b-flat.modern|contra-alto-clarinet-e-flat contrabassoon tuba double-bass
tarogato|Bb|clarinets|-M2|G2|Ab3 C6|C4 G5||yes|wind.reed.tarogato|72|tarogato.modern|soprano-saxophone-b-flat clarinet-b-flat english-horn
sopranino-saxophone-e-flat|Eb|saxophones|+m3|G2|Db4 Ab6|F4 F6||yes|wind.reed.saxophone.sopranino|65|sopranino-saxophone-e-flat.modern|soprano-saxophone-b-flat clarinet-e-flat oboe
soprano-saxophone-b-flat|Bb|saxophones|-M2|G2|Ab3 F6|C4 C6|C4 G5|yes|wind.reed.saxophone.soprano|65|soprano-saxophone-b-flat.modern|oboe clarinet-b-flat trumpet-b-flat
soprano-saxophone-c|C|saxophones|P1|G2|Bb3 F6|D4 D6||yes|wind.reed.saxophone.soprano|65|soprano-saxophone-c.modern|soprano-saxophone-b-flat oboe
mezzo-soprano-saxophone-f|F|saxophones|-P5|G2|Eb3 Bb5|G3 G5||yes|wind.reed.saxophone.mezzo-soprano|66|mezzo-soprano-saxophone-f.modern|alto-saxophone-e-flat
alto-saxophone-e-flat|Eb|saxophones|-M6|G2|Db3 C6|F3 F5|F3 Eb5|yes|wind.reed.saxophone.alto|66|alto-saxophone-e-flat.modern|clarinet-b-flat english-horn horn-f alto-horn-e-flat
c-melody-saxophone|C|saxophones|-P8|G2|Bb2 F5|D3 D5||yes|wind.reed.saxophone.melody|67|c-melody-saxophone.modern|tenor-saxophone-b-flat
tenor-saxophone-b-flat|Bb|saxophones|-M9|G2|Ab2 F5|C3 C5|C3 Bb4|yes|wind.reed.saxophone.tenor|67|tenor-saxophone-b-flat.modern|baritone-saxophone-e-flat euphonium bassoon trombone-tenor
baritone-saxophone-e-flat|Eb|saxophones|-M13|G2|C2 Bb4|F2 Eb4|F2 C4|yes|wind.reed.saxophone.baritone|68|baritone-saxophone-e-flat.modern|bass-clarinet-b-flat bassoon euphonium tuba
bass-saxophone-b-flat|Bb|saxophones|-M16|G2|Ab1 Eb4|C2 Bb3||yes|wind.reed.saxophone.bass|68|bass-saxophone-b-flat.modern|contra-alto-clarinet-e-flat baritone-saxophone-e-flat tuba contrabassoon
contrabass-saxophone-e-flat|Eb|saxophones|-M20|G2|Db1 Ab3|F1 C3||yes|wind.reed.saxophone.contrabass|68|contrabass-saxophone-e-flat.modern|contrabass-clarinet-b-flat tuba sarrusophone-contrabass-e-flat
sarrusophone-sopranino-e-flat|Eb|sarrusophones|+m3|G2|Db4 Bb6|F4 F6||yes|wind.reed.sarrusaphone|69|sarrusophone-sopranino-e-flat.modern|clarinet-e-flat oboe
sarrusophone-soprano-b-flat|Bb|sarrusophones|-M2|G2|Ab3 F6|C4 C6||yes|wind.reed.sarrusaphone|69|sarrusophone-soprano-b-flat.modern|oboe soprano-saxophone-b-flat
sarrusophone-alto-e-flat|Eb|sarrusophones|-M6|G2|Db3 Bb5|F3 F5||yes|wind.reed.sarrusaphone|70|sarrusophone-alto-e-flat.modern|english-horn alto-saxophone-e-flat
sarrusophone-tenor-b-flat|Bb|sarrusophones|-M9|G2|Ab2 F5|C3 C5||yes|wind.reed.sarrusaphone|71|sarrusophone-tenor-b-flat.modern|tenor-saxophone-b-flat bassoon
sarrusophone-baritone-e-flat|Eb|sarrusophones|-M13|G2|C2 Bb4|F2 F4||yes|wind.reed.sarrusaphone|71|sarrusophone-baritone-e-flat.modern|baritone-saxophone-e-flat bassoon
sarrusophone-bass-b-flat|Bb|sarrusophones|-M16|G2|Ab1 F4|C2 C4||yes|wind.reed.sarrusaphone|71|sarrusophone-bass-b-flat.modern|bass-saxophone-b-flat bassoon contra-alto-clarinet-e-flat
sarrusophone-contrabass-e-flat|Eb|sarrusophones|-M20|G2|Db1 Bb3|F1 F3||yes|wind.reed.sarrusaphone|71|sarrusophone-contrabass-e-flat.modern|contrabassoon contrabass-clarinet-b-flat contra-alto-clarinet-e-flat tuba
sarrusophone-contrabass-b-flat|Bb|sarrusophones|-M23|G2|Ab0 F3|C1 C3||yes|wind.reed.sarrusaphone|71|sarrusophone-contrabass-b-flat.modern|contrabassoon contrabass-clarinet-b-flat tuba
sarrusophone-contrabass-c|C|sarrusophones|-P8|F4|Bb0 G3|C1 D3||yes|wind.reed.sarrusaphone|71|sarrusophone-contrabass-c.modern|contrabassoon contrabass-clarinet-b-flat tuba double-bass
horn-f|F|horns|-P5|G2|B1 F5|F2 C5|A2 D4|rare|brass.french-horn|61|horn-f.modern|alto-horn-e-flat alto-saxophone-e-flat euphonium bassoon
horn-e-flat|Eb|horns|-M6|G2|B1 Eb5|Eb2 Bb4||varies|brass.french-horn|61|horn-e-flat.modern|horn-f alto-horn-e-flat
natural-horn|F|horns|-P5|G2||||no|brass.natural-horn|61|natural-horn.modern|horn-f
trompe-de-chasse|D|horns|-m7|G2|D2 D5|A2 D5||no|brass.natural-horn|61|trompe-de-chasse.modern|horn-f
wagner-tuba-tenor-b-flat|Bb|horns|-M2|G2 F4|Bb2 F5|Bb2 Bb4||rare|brass.wagner-tuba|61|wagner-tuba-tenor-b-flat.modern|euphonium horn-f baritone-horn
wagner-tuba-bass-f|F|horns|-P5|F4 G2|Bb1 G4|F2 C4||rare|brass.wagner-tuba|61|wagner-tuba-bass-f.modern|euphonium horn-f bass-tuba-f
mellophone-f|F|horns|-P5|G2|B2 F5|D3 C5|D3 A4|yes|brass.mellophone|61|mellophone-f.modern|horn-f alto-horn-e-flat
mellophone-e-flat|Eb|horns|-M6|G2|A2 Eb5|C3 Bb4||yes|brass.mellophone|61|mellophone-e-flat.modern|alto-horn-e-flat horn-f
posthorn|A|horns|-m3|G2|A3 A5|E4 E5||no|brass.posthorn|57|posthorn.modern|cornet-b-flat flugelhorn-b-flat trumpet-b-flat
trumpet-b-flat|Bb|trumpets|-M2|G2|E3 D6|F3 A5|Bb3 D5|varies|brass.trumpet.bflat|57|trumpet-b-flat.modern|cornet-b-flat flugelhorn-b-flat soprano-saxophone-b-flat
trumpet-c|C|trumpets|P1|G2|F#3 D6|G3 A5||rare|brass.trumpet.c|57|trumpet-c.modern|trumpet-b-flat
trumpet-a|A|trumpets|-m3|G2|D#3 B5|E3 G#5||rare|brass.trumpet|57|trumpet-a.modern|trumpet-b-flat trumpet-c
trumpet-d|D|trumpets|+M2|G2|G#3 E6|D4 C#6||rare|brass.trumpet.d|57|trumpet-d.modern|piccolo-trumpet-b-flat trumpet-c
trumpet-e-flat|Eb|trumpets|+m3|G2|A3 F6|Eb4 D6||rare|brass.trumpet|57|trumpet-e-flat.modern|trumpet-c soprano-cornet-e-flat
trumpet-f|F|trumpets|+P4|G2|F3 E6|C4 C6||rare|brass.trumpet|57|trumpet-f.modern|trumpet-b-flat trumpet-c
natural-trumpet|D|trumpets|+M2|G2||||no|brass.trumpet.baroque|57|natural-trumpet.modern|trumpet-c trumpet-d piccolo-trumpet-a
piccolo-trumpet-b-flat|Bb|trumpets|+m7|G2|E4 F6|Bb4 D6||rare|brass.trumpet.piccolo|57|piccolo-trumpet-b-flat.modern|trumpet-d soprano-cornet-e-flat trumpet-c
piccolo-trumpet-a|A|trumpets|+M6|G2|D#4 E6|A4 C#6||rare|brass.trumpet.piccolo|57|piccolo-trumpet-a.modern|piccolo-trumpet-b-flat trumpet-d
bass-trumpet-b-flat|Bb|trumpets|-M9|G2|E2 Bb4|Bb2 F4||rare|brass.trumpet.bass|57|bass-trumpet-b-flat.modern|trombone-tenor valve-trombone-b-flat euphonium
bass-trumpet-c|C|trumpets|-P8|G2|F#2 C5|C3 G4||rare|brass.trumpet.bass|57|bass-trumpet-c.modern|trombone-tenor
bass-trumpet-e-flat|Eb|trumpets|-M6|G2|G2 Gb5|Bb2 Eb5||rare|brass.trumpet.bass|57|bass-trumpet-e-flat.modern|trombone-tenor alto-trombone
alto-trumpet-f|F|trumpets|-P5|G2|B2 F5|F3 C5||rare|brass.trumpet.tenor|57|alto-trumpet-f.modern|flugelhorn-b-flat horn-f trumpet-b-flat
cavalry-trumpet-e-flat|Eb|trumpets|-M6|G2|Eb3 Eb5|Eb3 Bb4||no|brass.trumpet|57|cavalry-trumpet-e-flat.modern|alto-horn-e-flat trumpet-b-flat
bugle-b-flat|Bb|trumpets|-M2|G2|Bb3 Bb5|Bb3 F5||no|brass.bugle|57|bugle-b-flat.modern|flugelhorn-b-flat cornet-b-flat
keyed-bugle-b-flat|Bb|trumpets|-M2|G2|A3 Bb5|C4 G5||varies|brass.bugle|57|keyed-bugle-b-flat.modern|flugelhorn-b-flat cornet-b-flat
soprano-cornet-e-flat|Eb|cornets|+m3|G2|A3 F6|Eb4 C6||yes|brass.cornet.soprano|57|soprano-cornet-e-flat.modern|petit-bugle-e-flat trumpet-e-flat clarinet-e-flat cornet-b-flat
cornet-b-flat|Bb|cornets|-M2|G2|E3 C6|G3 G5|Bb3 D5|yes|brass.cornet|57|cornet-b-flat.modern|trumpet-b-flat flugelhorn-b-flat
cornet-a|A|cornets|-m3|G2|D#3 A5|F#3 F#5||yes|brass.cornet|57|cornet-a.modern|cornet-b-flat trumpet-b-flat
cornet-c|C|cornets|P1|G2|F#3 C6|A3 A5||yes|brass.cornet|57|cornet-c.modern|cornet-b-flat trumpet-c
cornetto|C|cornets|P1|G2|G3 D6|A3 A5||yes|brass.cornett|57|cornetto.modern|trumpet-c oboe soprano-saxophone-b-flat
tenor-cornett|C|cornets|P1|C3|C3 D5|D3 A4||yes|brass.cornett.tenor|61|tenor-cornett.modern|alto-trombone english-horn
petit-bugle-e-flat|Eb|bugle-horns|+m3|G2|A3 Eb6|Eb4 C6||yes|brass.saxhorn|57|petit-bugle-e-flat.modern|soprano-cornet-e-flat trumpet-e-flat clarinet-e-flat
flugelhorn-b-flat|Bb|bugle-horns|-M2|G2|E3 Bb5|G3 F5|Bb3 D5|yes|brass.flugelhorn|57|flugelhorn-b-flat.modern|cornet-b-flat trumpet-b-flat clarinet-b-flat
alto-horn-e-flat|Eb|bugle-horns|-M6|G2|A2 Eb5|C3 C5|Eb3 G4|yes|brass.alto-horn|61|alto-horn-e-flat.modern|horn-f alto-saxophone-e-flat flugelhorn-b-flat
alto-horn-f|F|bugle-horns|-P5|G2|B2 E5|D3 C5||yes|brass.alto-horn|61|alto-horn-f.modern|horn-f alto-horn-e-flat
tenorhorn-b-flat|Bb|bugle-horns|-M9|G2|E2 Bb4|G2 G4|Bb2 D4|yes|brass.baritone-horn|58|tenorhorn-b-flat.modern|baritone-horn euphonium tenor-saxophone-b-flat
baritone-horn|Bb|bugle-horns|-M9|G2|E2 Bb4|G2 G4|Bb2 D4|yes|brass.baritone-horn|58|baritone-horn.modern|euphonium trombone-tenor tenor-saxophone-b-flat
saxhorn-baritone-b-flat|Bb|bugle-horns|-M9|G2|E2 Bb4|G2 F4||yes|brass.saxhorn|58|saxhorn-baritone-b-flat.modern|baritone-horn tenorhorn-b-flat trombone-tenor
euphonium|Bb|bugle-horns|P1|F4|B1 F5|E2 Bb4|Bb2 D4|yes|brass.euphonium|58|euphonium.modern|baritone-horn saxhorn-bass-b-flat trombone-tenor tenor-saxophone-b-flat cello
bariton-german|C|bugle-horns|P1|F4|E2 C5|Bb2 G4||yes|brass.baritone-horn|58|bariton-german.modern|euphonium tenorhorn-b-flat trombone-tenor
saxhorn-bass-b-flat|Bb|bugle-horns|-M2|F4|E1 F5|E2 Bb4||yes|brass.saxhorn|58|saxhorn-bass-b-flat.modern|euphonium baritone-horn trombone-tenor
french-tuba-c|C|bugle-horns|P1|F4 C4|D1 Bb4|E2 F4||yes|brass.tuba|59|french-tuba-c.modern|euphonium bass-tuba-f tuba
saxhorn-contrabass-e-flat|Eb|bugle-horns|-M6|F4|A0 Eb4|Eb1 Bb2||yes|brass.saxhorn|59|saxhorn-contrabass-e-flat.modern|bass-tuba-e-flat e-flat-bass tuba bass-saxophone-b-flat
saxhorn-contrabass-b-flat|Bb|bugle-horns|-M9|F4|E0 Bb3|Bb0 F2||yes|brass.saxhorn|59|saxhorn-contrabass-b-flat.modern|contrabass-tuba-b-flat b-flat-bass bass-tuba-e-flat contrabassoon double-bass
tuba|C|tubas|P1|F4|D1 F4|E1 Bb3|G1 Bb2|yes|brass.tuba|59|tuba.modern|bass-tuba-e-flat contrabass-tuba-b-flat double-bass contrabass-clarinet-b-flat contrabassoon bass-saxophone-b-flat
bass-tuba-f|F|tubas|P1|F4|C1 A4|F1 D4||yes|brass.tuba.bass|59|bass-tuba-f.modern|bass-tuba-e-flat tuba euphonium
bass-tuba-e-flat|Eb|tubas|P1|F4|Bb0 Bb4|Eb1 C4|Bb1 Bb2|yes|brass.tuba.bass|59|bass-tuba-e-flat.modern|bass-tuba-f tuba e-flat-bass
contrabass-tuba-c|C|tubas|P1|F4|C1 G4|E1 C4||yes|brass.tuba|59|contrabass-tuba-c.modern|contrabass-tuba-b-flat tuba contrabass-trombone
contrabass-tuba-b-flat|Bb|tubas|P1|F4|Bb0 F4|E1 Bb3|Bb1 Bb2|yes|brass.tuba|59|contrabass-tuba-b-flat.modern|contrabass-tuba-c tuba bass-tuba-e-flat
e-flat-bass|Eb|tubas|-M13|G2|Bb0 Eb4|Eb1 G3|Bb1 Bb2|yes|brass.tuba.bass|59|e-flat-bass.modern|bass-tuba-e-flat b-flat-bass tuba
b-flat-bass|Bb|tubas|-M16|G2|E0 Bb3|Bb0 D3|F1 F2|yes|brass.tuba|59|b-flat-bass.modern|contrabass-tuba-b-flat e-flat-bass tuba
sousaphone|Bb|tubas|P1|F4|Bb0 Bb3|E1 F3||yes|brass.sousaphone|59|sousaphone.modern|contrabass-tuba-b-flat tuba helicon
helicon|Bb|tubas|P1|F4|E1 Bb3|Bb1 F3||yes|brass.helicon|59|helicon.modern|sousaphone tuba
bombardon|Eb|tubas|P1|F4|Bb0 Bb3|Eb1 F3||yes|brass.tuba.bass|59|bombardon.modern|bass-tuba-e-flat bass-tuba-f tuba
ophicleide-c|C|tubas|P1|F4|B1 C5|D2 G4||yes|brass.ophicleide|59|ophicleide-c.modern|euphonium french-tuba-c bass-tuba-f bassoon
ophicleide-b-flat|Bb|tubas|P1|F4|A1 Bb4|C2 F4||yes|brass.ophicleide|59|ophicleide-b-flat.modern|euphonium bass-tuba-f
quinticlave-e-flat|Eb|tubas|-M6|G2|D3 Eb5|F3 Bb4||yes|brass.ophicleide|61|quinticlave-e-flat.modern|alto-horn-e-flat horn-f alto-saxophone-e-flat
serpent|C|tubas|P1|F4|C2 Bb4|D2 F4||yes|brass.serpent|59|serpent.modern|bassoon euphonium bass-tuba-f
bass-horn|C|tubas|P1|F4|C2 G4|D2 D4||yes|brass.serpent|59|bass-horn.modern|euphonium bassoon bass-tuba-f
cimbasso|C|tubas|P1|F4|C1 F4|E1 Bb3||yes|brass.cimbasso|59|cimbasso.modern|contrabass-trombone bass-trombone tuba
alto-trombone|Eb|trombones|P1|C3|A2 Eb5|Eb3 Bb4||yes|brass.trombone.alto|58|alto-trombone.modern|trombone-tenor alto-horn-e-flat horn-f
trombone-tenor|Bb|trombones|P1|F4 C4|E1 F5|E2 Bb4|F2 D4|yes|brass.trombone.tenor|58|trombone-tenor.modern|euphonium baritone-horn tenor-saxophone-b-flat bassoon
bass-trombone|Bb|trombones|P1|F4|Bb0 Bb4|Bb1 F4||yes|brass.trombone.bass|58|bass-trombone.modern|trombone-tenor euphonium tuba
bass-trombone-g|G|trombones|P1|F4|C#2 F4|C#2 D4||yes|brass.trombone.bass|58|bass-trombone-g.modern|bass-trombone trombone-tenor
contrabass-trombone|Bb|trombones|P1|F4|E0 F4|Bb0 Bb3||yes|brass.trombone.contrabass|58|contrabass-trombone.modern|bass-trombone cimbasso tuba
valve-trombone-b-flat|Bb|trombones|P1|F4|E2 Bb4|E2 F4||yes|brass.trombone.tenor|58|valve-trombone-b-flat.modern|trombone-tenor euphonium
valve-bass-trombone-f|F|trombones|P1|F4|B1 F4|F2 C4||yes|brass.trombone.bass|58|valve-bass-trombone-f.modern|bass-trombone trombone-tenor
valve-bass-trombone-e-flat|Eb|trombones|P1|F4|A1 Eb4|Eb2 Bb3||yes|brass.trombone.bass|58|valve-bass-trombone-e-flat.modern|bass-trombone trombone-tenor
sackbut-tenor|Bb|trombones|P1|C4|E2 A4|A2 E4||yes|brass.sackbutt.tenor|58|sackbut-tenor.modern|trombone-tenor bassoon
violin|C|strings|P1|G2|G3 A7|G3 E6|G3 B5|yes|strings.violin|41|violin.modern|clarinet-b-flat flute oboe
viola|C|strings|P1|C3 G2|C3 E6|C3 E5|C3 E5|yes|strings.viola|42|viola.modern|clarinet-b-flat alto-clarinet-e-flat horn-f alto-saxophone-e-flat
cello|C|strings|P1|F4 C4 G2|C2 C6|C2 A4|C2 D4|yes|strings.cello|43|cello.modern|euphonium bassoon tenor-saxophone-b-flat bass-clarinet-b-flat baritone-saxophone-e-flat
double-bass|C|strings|-P8|F4|C1 G4|E1 G3|E1 D3|yes|strings.contrabass|44|double-bass.modern|tuba contrabass-clarinet-b-flat contrabassoon bass-saxophone-b-flat b-flat-bass
viola-d-amore|C|strings|P1|C3 G2|A2 D6|D3 A5||yes|strings.viola-damore|42|viola-d-amore.modern|viola clarinet-a
viola-da-gamba|C|strings|P1|F4 C3|D2 D5|D2 A4||yes|strings.viol.bass|43|viola-da-gamba.modern|cello bassoon
harp|C|strings|P1|G2 F4|Cb1 G#7|C2 E6||yes|pluck.harp|47|harp.modern|piano vibraphone clarinet-b-flat
guitar|C|plucked|-P8|G2|E2 B5|E2 E5||yes|pluck.guitar.nylon-string|25|guitar.modern|harp piano vibraphone
bass-guitar|C|plucked|-P8|F4|E1 G4|E1 D3||yes|pluck.bass.electric|34|bass-guitar.modern|double-bass tuba
mandolin|C|plucked|P1|G2|G3 A6|G3 E6||yes|pluck.mandolin|26|mandolin.modern|violin marimba xylophone
octave-mandola|C|plucked|-P8|G2|G2 A5|G2 E5||yes|pluck.mandola|26|octave-mandola.modern|guitar viola
tenor-mandola|C|plucked|P1|C3|C3 E6|C3 A5||yes|pluck.mandola|26|tenor-mandola.modern|viola guitar
lute|C|plucked|P1|G2 F4|G2 F5|G2 D5||yes|pluck.lute|25|lute.modern|guitar harp
piano|C|keyboards|P1|G2 F4|A0 C8|A0 C8||yes|keyboard.piano|1|piano.modern
celesta|C|keyboards|+P8|G2 F4|C4 C8|C4 C8||yes|keyboard.celesta|9|celesta.modern|glockenspiel vibraphone piano
keyed-glockenspiel|C|keyboards|+P8|G2 F4|C5 E8|C5 C8||yes|pitched-percussion.glockenspiel|10|keyed-glockenspiel.modern|celesta glockenspiel
harpsichord|C|keyboards|P1|G2 F4|F1 F6|F1 F6||yes|keyboard.harpsichord|7|harpsichord.modern|piano
organ|C|keyboards|P1|G2 F4|C2 C7|C2 C7||yes|keyboard.organ.pipe|20|organ.modern|piano
harmonium|C|keyboards|P1|G2 F4|F1 C7|F1 C7||yes|keyboard.harmonium|21|harmonium.modern|accordion organ clarinet-b-flat
accordion|C|keyboards|P1|G2 F4|E1 C#8|F3 A6||yes|keyboard.accordion|22|accordion.modern|harmonium
timpani|C|percussion|P1|F4|D2 C4|F2 F3||rare|drum.timpani|48|timpani.modern|bass-drum tuba
glockenspiel|C|percussion|+P15|G2|F5 C8|G5 C8||yes|pitched-percussion.glockenspiel|10|glockenspiel.modern|celesta vibraphone piccolo
xylophone|C|percussion|+P8|G2|F4 C8|C5 C8||yes|pitched-percussion.xylophone|14|xylophone.modern|marimba piccolo clarinet-e-flat
marimba|C|percussion|P1|G2 F4|C2 C7|A2 C7||yes|pitched-percussion.marimba|13|marimba.modern|xylophone vibraphone
vibraphone|C|percussion|P1|G2|F3 F6|F3 F6||yes|pitched-percussion.vibraphone|12|vibraphone.modern|celesta marimba
tubular-bells|C|percussion|P1|G2|C4 G5|C4 F5||yes|pitched-percussion.tubular-bells|15|tubular-bells.modern|vibraphone piano glockenspiel
crotales|C|percussion|+P15|G2|C6 C8|C6 C8||yes|metal.crotales|10|crotales.modern|glockenspiel celesta
bell-lyre|C|percussion|+P15|G2|G5 A7|G5 A7||yes|pitched-percussion.bell-lyre|10|bell-lyre.modern|glockenspiel
cimbalom|C|percussion|P1|G2 F4|C2 A6|D2 E6||yes|pitched-percussion.cimbalom|16|cimbalom.modern|piano harpsichord
snare-drum||unpitched|P1|percussion||||no|drum.snare-drum
tenor-drum||unpitched|P1|percussion||||no|drum.tenor-drum
bass-drum||unpitched|P1|percussion||||no|drum.bass-drum
cymbals||unpitched|P1|percussion||||no|metal.cymbal.crash
triangle||unpitched|P1|percussion||||no|metal.triangle
tam-tam||unpitched|P1|percussion||||no|metal.tamtam
tambourine||unpitched|P1|percussion||||no|drum.tambourine
castanets||unpitched|P1|percussion||||no|wood.castanets
soprano-voice|C|voices|P1|G2|Bb3 C6|C4 A5||yes|voice.soprano|54|soprano-voice.modern|flugelhorn-b-flat petit-bugle-e-flat
mezzo-soprano-voice|C|voices|P1|G2|A3 A5|B3 F5||yes|voice.mezzo-soprano|54|mezzo-soprano-voice.modern|flugelhorn-b-flat
alto-voice|C|voices|P1|G2|F3 F5|G3 D5||yes|voice.alto|54|alto-voice.modern|alto-horn-e-flat
tenor-voice|C|voices|-P8|G2|C3 C5|C3 A4||yes|voice.tenor|54|tenor-voice.modern|baritone-horn euphonium
baritone-voice|C|voices|P1|F4|A2 G4|A2 E4||yes|voice.baritone|54|baritone-voice.modern|euphonium trombone-tenor
bass-voice|C|voices|P1|F4|E2 E4|F2 D4||yes|voice.bass|54|bass-voice.modern|euphonium saxhorn-bass-b-flat
`
