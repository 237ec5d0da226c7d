/**
 * How parts are written: for one clef, what is added to a note read literally in the plain clef to get the sound.
 * `mark`: the clef is often printed with that octave sign, and a file may then carry the octave in the clef INSTEAD.
 * Confidence high: a document read for this survey states it, or it is universal; medium: partly derived; low: from
 * memory, never to be applied silently.
 */
export const rowTable = `
id|group|instruments|clef|mark|interval|keySignature|confidence|examples|context|source|remark
piccolo.modern|modern|piccolo|G2|8va|+P8|yes|high|C4>C5 G4>G5 C5>C6|modern default of instruments.csv|MELC;LARUE;OLIB;GEHR
piccolo-d-flat.modern|modern|piccolo-d-flat|G2||+m9|yes|high|C4>Db5 G4>Ab5 C5>Db6|modern default of instruments.csv|HEBM;APRL;OLIB
piccolo-e-flat.modern|modern|piccolo-e-flat|G2||+m10|yes|medium|C4>Eb5 G4>Bb5 C5>Eb6|modern default of instruments.csv|MEM; name trap HEBM
flute.modern|modern|flute|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
flute-e-flat.modern|modern|flute-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|modern default of instruments.csv|KOE (exists: flûtes tierces in E flat or F)
flute-d-flat.modern|modern|flute-d-flat|G2||+m2|yes|medium|C4>Db4 G4>Ab4 C5>Db5|modern default of instruments.csv|MEM
alto-flute.modern|modern|alto-flute|G2||-P4|yes|high|C4>G3 G4>D4 C5>G4|modern default of instruments.csv|WP;POET;OLIB;MW-WW
bass-flute.modern|modern|bass-flute|G2|8vb|-P8|yes|high|C4>C3 G4>G3 C5>C4|modern default of instruments.csv|MW-WW (compass an octave below the flute)
contrabass-flute.modern|modern|contrabass-flute|G2|15mb|-P15|yes|medium|C4>C2 G4>G2 C5>C3|modern default of instruments.csv|MEM
fife-b-flat.modern|modern|fife-b-flat|G2||+m7|varies|medium|C4>Bb4 G4>F5 C5>Bb5|modern default of instruments.csv|MEM
garklein-recorder.modern|modern|garklein-recorder|G2|15ma|+P15|yes|high|C4>C6 G4>G6 C5>C7|modern default of instruments.csv|WP;SRP (non-transposing)
sopranino-recorder.modern|modern|sopranino-recorder|G2|8va|+P8|yes|high|C4>C5 G4>G5 C5>C6|modern default of instruments.csv|ARS;WP;SRP (non-transposing)
descant-recorder.modern|modern|descant-recorder|G2|8va|+P8|yes|high|C4>C5 G4>G5 C5>C6|modern default of instruments.csv|ARS;WP;SRP (non-transposing)
treble-recorder.modern|modern|treble-recorder|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|ARS;WP;SRP (non-transposing)
tenor-recorder.modern|modern|tenor-recorder|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|ARS;WP;SRP (non-transposing)
bass-recorder.modern|modern|bass-recorder|F4|8va|+P8|yes|high|C2>C3 C3>C4 G3>G4|modern default of instruments.csv|ARS;WP;SRP (non-transposing)
great-bass-recorder.modern|modern|great-bass-recorder|F4|8va|+P8|yes|high|C2>C3 C3>C4 G3>G4|modern default of instruments.csv|ARS;WP;SRP (non-transposing)
contrabass-recorder.modern|modern|contrabass-recorder|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|ARS;WP;SRP (non-transposing)
oboe.modern|modern|oboe|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
oboe-e-flat.modern|modern|oboe-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|modern default of instruments.csv|CODM;KOE
oboe-d-amore.modern|modern|oboe-d-amore|G2||-m3|yes|high|C4>A3 G4>E4 C5>A4|modern default of instruments.csv|POET;CODM;OLIB
english-horn.modern|modern|english-horn|G2||-P5|yes|high|C4>F3 G4>C4 C5>F4|modern default of instruments.csv|WP;OLIB
oboe-da-caccia.modern|modern|oboe-da-caccia|C3||P1|yes|high|C3>C3 C4>C4 G4>G4|modern default of instruments.csv|VIE (Bach: alto clef at pitch)
bass-oboe.modern|modern|bass-oboe|G2|8vb|-P8|yes|high|C4>C3 G4>G3 C5>C4|modern default of instruments.csv|BND
heckelphone.modern|modern|heckelphone|G2|8vb|-P8|yes|high|C4>C3 G4>G3 C5>C4|modern default of instruments.csv|BND;OLIB
bassoon.modern|modern|bassoon|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|CP
contrabassoon.modern|modern|contrabassoon|F4|8vb|-P8|yes|high|C2>C1 C3>C2 G3>G2|modern default of instruments.csv|CODM;JOHN
tenoroon.modern|modern|tenoroon|F4||+P5|varies|high|C3>G3 G3>D4 C4>G4|modern default of instruments.csv|BERL djvu 141 (basson quinte: a fifth above the written note)
dulcian.modern|modern|dulcian|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|CP
clarinet-a-flat.modern|modern|clarinet-a-flat|G2||+m6|yes|medium|C4>Ab4 G4>Eb5 C5>Ab5|modern default of instruments.csv|KOE p.123, MWEB (instrument attested in bands); interval follows from the key name
clarinet-g-high.modern|modern|clarinet-g-high|G2||+P5|yes|high|C4>G4 G4>D5 C5>G5|modern default of instruments.csv|musiker-board table (G: fifth higher)
clarinet-f-high.modern|modern|clarinet-f-high|G2||+P4|yes|high|C4>F4 G4>C5 C5>F5|modern default of instruments.csv|GRV1 vol.1 djvu 374 (table: C melody written in G)
clarinet-e-flat.modern|modern|clarinet-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|modern default of instruments.csv|teoria;POET;GRV1 vol.1 djvu 374
clarinet-d.modern|modern|clarinet-d|G2||+M2|yes|high|C4>D4 G4>A4 C5>D5|modern default of instruments.csv|POET;musiker-board;OLIB
clarinet-c.modern|modern|clarinet-c|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|POET
clarinet-b-flat.modern|modern|clarinet-b-flat|G2||-M2|yes|high|C4>Bb3 G4>F4 C5>Bb4|modern default of instruments.csv|teoria;GRV1;OLIB
clarinet-a.modern|modern|clarinet-a|G2||-m3|yes|high|C4>A3 G4>E4 C5>A4|modern default of instruments.csv|teoria;GRV1;OLIB
basset-clarinet-a.modern|modern|basset-clarinet-a|G2||-m3|yes|medium|C4>A3 G4>E4 C5>A4|modern default of instruments.csv|MEM
clarinette-d-amour-g.modern|modern|clarinette-d-amour-g|G2||-P4|yes|high|C4>G3 G4>D4 C5>G4|modern default of instruments.csv|musiker-board (low G: fourth lower)
basset-horn.modern|modern|basset-horn|G2||-P5|yes|high|C4>F3 G4>C4 C5>F4|modern default of instruments.csv|GRV1;HAY;OLIB
alto-clarinet-e-flat.modern|modern|alto-clarinet-e-flat|G2||-M6|yes|high|C4>Eb3 G4>Bb3 C5>Eb4|modern default of instruments.csv|LARUE;CODM
alto-clarinet-f.modern|modern|alto-clarinet-f|G2||-P5|yes|high|C4>F3 G4>C4 C5>F4|modern default of instruments.csv|CODM
bass-clarinet-b-flat.modern|modern|bass-clarinet-b-flat|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|modern default of instruments.csv|teoria;ALD;OLIB
bass-clarinet-a.modern|modern|bass-clarinet-a|G2||-m10|yes|high|C4>A2 G4>E3 C5>A3|modern default of instruments.csv|POET;EB11
bass-clarinet-c.modern|modern|bass-clarinet-c|G2|8vb|-P8|yes|high|C4>C3 G4>G3 C5>C4|modern default of instruments.csv|EB11
contra-alto-clarinet-e-flat.modern|modern|contra-alto-clarinet-e-flat|G2||-M13|yes|high|C4>Eb2 G4>Bb2 C5>Eb3|modern default of instruments.csv|HAY
contrabass-clarinet-b-flat.modern|modern|contrabass-clarinet-b-flat|G2||-M16|yes|high|C4>Bb1 G4>F2 C5>Bb2|modern default of instruments.csv|WP
tarogato.modern|modern|tarogato|G2||-M2|yes|medium|C4>Bb3 G4>F4 C5>Bb4|modern default of instruments.csv|MEM
sopranino-saxophone-e-flat.modern|modern|sopranino-saxophone-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|modern default of instruments.csv|MINF and WP (family written alike in treble clef); interval from the key name
soprano-saxophone-b-flat.modern|modern|soprano-saxophone-b-flat|G2||-M2|yes|high|C4>Bb3 G4>F4 C5>Bb4|modern default of instruments.csv|teoria;MINF;LARUE
soprano-saxophone-c.modern|modern|soprano-saxophone-c|G2||P1|yes|medium|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|WPSX (C/F orchestral series); interval from the key name
mezzo-soprano-saxophone-f.modern|modern|mezzo-soprano-saxophone-f|G2||-P5|yes|high|C4>F3 G4>C4 C5>F4|modern default of instruments.csv|WPMS (a tone above the E flat alto, so a fifth below the written note)
alto-saxophone-e-flat.modern|modern|alto-saxophone-e-flat|G2||-M6|yes|high|C4>Eb3 G4>Bb3 C5>Eb4|modern default of instruments.csv|teoria;MINF;LARUE
c-melody-saxophone.modern|modern|c-melody-saxophone|G2|8vb|-P8|yes|medium|C4>C3 G4>G3 C5>C4|modern default of instruments.csv|MINF (a tenor in C); interval from the key name
tenor-saxophone-b-flat.modern|modern|tenor-saxophone-b-flat|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|modern default of instruments.csv|teoria;WP;MINF;LARUE
baritone-saxophone-e-flat.modern|modern|baritone-saxophone-e-flat|G2||-M13|yes|high|C4>Eb2 G4>Bb2 C5>Eb3|modern default of instruments.csv|teoria;MINF;LARUE
bass-saxophone-b-flat.modern|modern|bass-saxophone-b-flat|G2||-M16|yes|high|C4>Bb1 G4>F2 C5>Bb2|modern default of instruments.csv|WP;WPBS;MINF
contrabass-saxophone-e-flat.modern|modern|contrabass-saxophone-e-flat|G2||-M20|yes|high|C4>Eb1 G4>Bb1 C5>Eb2|modern default of instruments.csv|WPBS (a fifth below the bass saxophone)
sarrusophone-sopranino-e-flat.modern|modern|sarrusophone-sopranino-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|modern default of instruments.csv|WP
sarrusophone-soprano-b-flat.modern|modern|sarrusophone-soprano-b-flat|G2||-M2|yes|high|C4>Bb3 G4>F4 C5>Bb4|modern default of instruments.csv|WP
sarrusophone-alto-e-flat.modern|modern|sarrusophone-alto-e-flat|G2||-M6|yes|high|C4>Eb3 G4>Bb3 C5>Eb4|modern default of instruments.csv|WP
sarrusophone-tenor-b-flat.modern|modern|sarrusophone-tenor-b-flat|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|modern default of instruments.csv|WP
sarrusophone-baritone-e-flat.modern|modern|sarrusophone-baritone-e-flat|G2||-M13|yes|high|C4>Eb2 G4>Bb2 C5>Eb3|modern default of instruments.csv|WP
sarrusophone-bass-b-flat.modern|modern|sarrusophone-bass-b-flat|G2||-M16|yes|high|C4>Bb1 G4>F2 C5>Bb2|modern default of instruments.csv|WP
sarrusophone-contrabass-e-flat.modern|modern|sarrusophone-contrabass-e-flat|G2||-M20|yes|high|C4>Eb1 G4>Bb1 C5>Eb2|modern default of instruments.csv|WP
sarrusophone-contrabass-b-flat.modern|modern|sarrusophone-contrabass-b-flat|G2||-M23|yes|high|C4>Bb0 G4>F1 C5>Bb1|modern default of instruments.csv|WP
sarrusophone-contrabass-c.modern|modern|sarrusophone-contrabass-c|F4|8vb|-P8|yes|high|C2>C1 C3>C2 G3>G2|modern default of instruments.csv|WP
horn-f.modern|modern|horn-f|G2||-P5|rare|high|C4>F3 G4>C4 C5>F4|modern default of instruments.csv|teoria
horn-e-flat.modern|modern|horn-e-flat|G2||-M6|varies|high|C4>Eb3 G4>Bb3 C5>Eb4|modern default of instruments.csv|RGS;MELC
natural-horn.modern|modern|natural-horn|G2||-P5|no|high|C4>F3 G4>C4 C5>F4|modern default of instruments.csv|POET;HMT
trompe-de-chasse.modern|modern|trompe-de-chasse|G2||-m7|no|high|C4>D3 G4>A3 C5>D4|modern default of instruments.csv|JACQ (built in D, written in C); LIMB (tube of 4.545 m gives D)
wagner-tuba-tenor-b-flat.modern|modern|wagner-tuba-tenor-b-flat|G2||-M2|rare|high|C4>Bb3 G4>F4 C5>Bb4|modern default of instruments.csv|FACT;WTUB (Rheingold: tenors in B flat)
wagner-tuba-bass-f.modern|modern|wagner-tuba-bass-f|F4||-P5|rare|high|C2>F1 C3>F2 G3>C3|modern default of instruments.csv|FACT;WTUB (Rheingold: basses in F)
mellophone-f.modern|modern|mellophone-f|G2||-P5|yes|high|C4>F3 G4>C4 C5>F4|modern default of instruments.csv|BND
mellophone-e-flat.modern|modern|mellophone-e-flat|G2||-M6|yes|high|C4>Eb3 G4>Bb3 C5>Eb4|modern default of instruments.csv|BND
posthorn.modern|modern|posthorn|G2||-m3|no|medium|C4>A3 G4>E4 C5>A4|modern default of instruments.csv|MEM
trumpet-b-flat.modern|modern|trumpet-b-flat|G2||-M2|varies|high|C4>Bb3 G4>F4 C5>Bb4|modern default of instruments.csv|teoria
trumpet-c.modern|modern|trumpet-c|G2||P1|rare|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|VIE
trumpet-a.modern|modern|trumpet-a|G2||-m3|rare|high|C4>A3 G4>E4 C5>A4|modern default of instruments.csv|VIE
trumpet-d.modern|modern|trumpet-d|G2||+M2|rare|high|C4>D4 G4>A4 C5>D5|modern default of instruments.csv|VIE
trumpet-e-flat.modern|modern|trumpet-e-flat|G2||+m3|rare|high|C4>Eb4 G4>Bb4 C5>Eb5|modern default of instruments.csv|VIE
trumpet-f.modern|modern|trumpet-f|G2||+P4|rare|high|C4>F4 G4>C5 C5>F5|modern default of instruments.csv|VIE;JMU
natural-trumpet.modern|modern|natural-trumpet|G2||+M2|no|high|C4>D4 G4>A4 C5>D5|modern default of instruments.csv|VIE
piccolo-trumpet-b-flat.modern|modern|piccolo-trumpet-b-flat|G2||+m7|rare|high|C4>Bb4 G4>F5 C5>Bb5|modern default of instruments.csv|VIE;WPBR
piccolo-trumpet-a.modern|modern|piccolo-trumpet-a|G2||+M6|rare|high|C4>A4 G4>E5 C5>A5|modern default of instruments.csv|WPBR (written C = A4);NYB
bass-trumpet-b-flat.modern|modern|bass-trumpet-b-flat|G2||-M9|rare|high|C4>Bb2 G4>F3 C5>Bb3|modern default of instruments.csv|BND (an octave below the B flat trumpet); WPBR
bass-trumpet-c.modern|modern|bass-trumpet-c|G2|8vb|-P8|rare|high|C4>C3 G4>G3 C5>C4|modern default of instruments.csv|POET (as horn);BND (an octave below the C trumpet)
bass-trumpet-e-flat.modern|modern|bass-trumpet-e-flat|G2||-M6|rare|high|C4>Eb3 G4>Bb3 C5>Eb4|modern default of instruments.csv|POET (as horn);BND (written F sounds A flat)
alto-trumpet-f.modern|modern|alto-trumpet-f|G2||-P5|rare|high|C4>F3 G4>C4 C5>F4|modern default of instruments.csv|BND (alto trumpet in E flat or F, a sixth or fifth below the C trumpet)
cavalry-trumpet-e-flat.modern|modern|cavalry-trumpet-e-flat|G2||-M6|no|medium|C4>Eb3 G4>Bb3 C5>Eb4|modern default of instruments.csv|MEM
bugle-b-flat.modern|modern|bugle-b-flat|G2||-M2|no|medium|C4>Bb3 G4>F4 C5>Bb4|modern default of instruments.csv|MEM
keyed-bugle-b-flat.modern|modern|keyed-bugle-b-flat|G2||-M2|varies|medium|C4>Bb3 G4>F4 C5>Bb4|modern default of instruments.csv|MEM
soprano-cornet-e-flat.modern|modern|soprano-cornet-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|modern default of instruments.csv|JAY;WPBR
cornet-b-flat.modern|modern|cornet-b-flat|G2||-M2|yes|high|C4>Bb3 G4>F4 C5>Bb4|modern default of instruments.csv|EB11 (French and German practice);JAY;WPBR
cornet-a.modern|modern|cornet-a|G2||-m3|yes|high|C4>A3 G4>E4 C5>A4|modern default of instruments.csv|SCHW;JOHN
cornet-c.modern|modern|cornet-c|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CYC
cornetto.modern|modern|cornetto|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
tenor-cornett.modern|modern|tenor-cornett|C3||P1|yes|high|C3>C3 C4>C4 G4>G4|modern default of instruments.csv|CP
petit-bugle-e-flat.modern|modern|petit-bugle-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|modern default of instruments.csv|NETI;WP;BREN
flugelhorn-b-flat.modern|modern|flugelhorn-b-flat|G2||-M2|yes|high|C4>Bb3 G4>F4 C5>Bb4|modern default of instruments.csv|NETI;BREN (a fourth below the petit bugle);WPBR
alto-horn-e-flat.modern|modern|alto-horn-e-flat|G2||-M6|yes|high|C4>Eb3 G4>Bb3 C5>Eb4|modern default of instruments.csv|NETI;WP;BREN;GRV2T;WPTH
alto-horn-f.modern|modern|alto-horn-f|G2||-P5|yes|high|C4>F3 G4>C4 C5>F4|modern default of instruments.csv|NETI
tenorhorn-b-flat.modern|modern|tenorhorn-b-flat|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|modern default of instruments.csv|NETI;HARL;GRV2B;OBW
baritone-horn.modern|modern|baritone-horn|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|modern default of instruments.csv|NETI;DWER;GRV2B
saxhorn-baritone-b-flat.modern|modern|saxhorn-baritone-b-flat|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|modern default of instruments.csv|NETI;WP;BREN;GRV2B
euphonium.modern|modern|euphonium|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|DWER
bariton-german.modern|modern|bariton-german|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|HARL;KNAP;MVP;OBW
saxhorn-bass-b-flat.modern|modern|saxhorn-bass-b-flat|F4||-M2|yes|high|C2>Bb1 C3>Bb2 G3>F3|modern default of instruments.csv|TUBE;SJ;EB11B;BREN
french-tuba-c.modern|modern|french-tuba-c|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|MPO;DINH
saxhorn-contrabass-e-flat.modern|modern|saxhorn-contrabass-e-flat|F4||-M6|yes|high|C2>Eb1 C3>Eb2 G3>Bb2|modern default of instruments.csv|TUBE;EB11B;BREN (a fifth below the B flat bass)
saxhorn-contrabass-b-flat.modern|modern|saxhorn-contrabass-b-flat|F4||-M9|yes|high|C2>Bb0 C3>Bb1 G3>F2|modern default of instruments.csv|TUBE;EB11B;BREN
tuba.modern|modern|tuba|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|MSE7332;STU
bass-tuba-f.modern|modern|bass-tuba-f|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|EB11B (bombardons written as sounded except in France and Belgium)
bass-tuba-e-flat.modern|modern|bass-tuba-e-flat|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|EB11B (bombardons written as sounded except in France and Belgium)
contrabass-tuba-c.modern|modern|contrabass-tuba-c|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|EB11B (bombardons written as sounded except in France and Belgium)
contrabass-tuba-b-flat.modern|modern|contrabass-tuba-b-flat|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|EB11B (bombardons written as sounded except in France and Belgium)
e-flat-bass.modern|modern|e-flat-bass|G2||-M13|yes|high|C4>Eb2 G4>Bb2 C5>Eb3|modern default of instruments.csv|JAY;SJ
b-flat-bass.modern|modern|b-flat-bass|G2||-M16|yes|high|C4>Bb1 G4>F2 C5>Bb2|modern default of instruments.csv|JAY;SJ
sousaphone.modern|modern|sousaphone|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|BARL (helicon-shaped bass tuba in B flat, E flat or F); EB11B (bombardons written as sounded except in France and Belgium)
helicon.modern|modern|helicon|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|EB11B (bombardons written as sounded except in France and Belgium); EB11B: helicon = circular bombardon
bombardon.modern|modern|bombardon|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|EB11B (bombardons written as sounded except in France and Belgium)
ophicleide-c.modern|modern|ophicleide-c|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|BERL p.235;LAV (real sounds, bass clef)
ophicleide-b-flat.modern|modern|ophicleide-b-flat|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|BERL p.235 and LITT (made in C and B flat)
quinticlave-e-flat.modern|modern|quinticlave-e-flat|G2||-M6|yes|medium|C4>Eb3 G4>Bb3 C5>Eb4|modern default of instruments.csv|BREN and LITT (alto in E flat); interval from the key name
serpent.modern|modern|serpent|F4||P1|yes|medium|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|MEM
bass-horn.modern|modern|bass-horn|F4||P1|yes|medium|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|MEM
cimbasso.modern|modern|cimbasso|F4||P1|yes|medium|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|MHOW (grouped with the trombones: concert pitch)
alto-trombone.modern|modern|alto-trombone|C3||P1|yes|high|C3>C3 C4>C4 G4>G4|modern default of instruments.csv|BERL p.110
trombone-tenor.modern|modern|trombone-tenor|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|BERL p.110;MHOW
bass-trombone.modern|modern|bass-trombone|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|MHOW;JAY
bass-trombone-g.modern|modern|bass-trombone-g|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|JAY
contrabass-trombone.modern|modern|contrabass-trombone|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|MHOW (trombones: concert pitch)
valve-trombone-b-flat.modern|modern|valve-trombone-b-flat|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|BERL p.110 (trombones are written at pitch whatever the tube); MHOW
valve-bass-trombone-f.modern|modern|valve-bass-trombone-f|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|BERL p.110 (trombones are written at pitch whatever the tube); MHOW
valve-bass-trombone-e-flat.modern|modern|valve-bass-trombone-e-flat|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|BERL p.110 (trombones are written at pitch whatever the tube); MHOW
sackbut-tenor.modern|modern|sackbut-tenor|C4||P1|yes|high|C3>C3 C4>C4 F4>F4|modern default of instruments.csv|CP
violin.modern|modern|violin|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
viola.modern|modern|viola|C3||P1|yes|high|C3>C3 C4>C4 G4>G4|modern default of instruments.csv|CP
cello.modern|modern|cello|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|CP
double-bass.modern|modern|double-bass|F4|8vb|-P8|yes|high|C2>C1 C3>C2 G3>G2|modern default of instruments.csv|MELC;LARUE;GEHR;STQ
viola-d-amore.modern|modern|viola-d-amore|C3||P1|yes|high|C3>C3 C4>C4 G4>G4|modern default of instruments.csv|WP
viola-da-gamba.modern|modern|viola-da-gamba|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|CP
harp.modern|modern|harp|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
guitar.modern|modern|guitar|G2|8vb|-P8|yes|high|C4>C3 G4>G3 C5>C4|modern default of instruments.csv|STU
bass-guitar.modern|modern|bass-guitar|F4|8vb|-P8|yes|high|C2>C1 C3>C2 G3>G2|modern default of instruments.csv|CP
mandolin.modern|modern|mandolin|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
octave-mandola.modern|modern|octave-mandola|G2|8vb|-P8|yes|medium|C4>C3 G4>G3 C5>C4|modern default of instruments.csv|MEM
tenor-mandola.modern|modern|tenor-mandola|C3||P1|yes|medium|C3>C3 C4>C4 G4>G4|modern default of instruments.csv|MEM
lute.modern|modern|lute|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
piano.modern|modern|piano|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
celesta.modern|modern|celesta|G2|8va|+P8|yes|high|C4>C5 G4>G5 C5>C6|modern default of instruments.csv|STU;HANS;AOC
keyed-glockenspiel.modern|modern|keyed-glockenspiel|G2|8va|+P8|yes|high|C4>C5 G4>G5 C5>C6|modern default of instruments.csv|BERL p.279
harpsichord.modern|modern|harpsichord|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
organ.modern|modern|organ|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
harmonium.modern|modern|harmonium|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
accordion.modern|modern|accordion|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
timpani.modern|modern|timpani|F4||P1|rare|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|VIE
glockenspiel.modern|modern|glockenspiel|G2|15ma|+P15|yes|high|C4>C6 G4>G6 C5>C7|modern default of instruments.csv|STU;HANS
xylophone.modern|modern|xylophone|G2|8va|+P8|yes|high|C4>C5 G4>G5 C5>C6|modern default of instruments.csv|STU;HANS;AOC
marimba.modern|modern|marimba|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|STU;WPMA
vibraphone.modern|modern|vibraphone|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|STU;AOC
tubular-bells.modern|modern|tubular-bells|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
crotales.modern|modern|crotales|G2|15ma|+P15|yes|high|C4>C6 G4>G6 C5>C7|modern default of instruments.csv|CP
bell-lyre.modern|modern|bell-lyre|G2|15ma|+P15|yes|high|C4>C6 G4>G6 C5>C7|modern default of instruments.csv|CP
cimbalom.modern|modern|cimbalom|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
soprano-voice.modern|modern|soprano-voice|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
mezzo-soprano-voice.modern|modern|mezzo-soprano-voice|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
alto-voice.modern|modern|alto-voice|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|modern default of instruments.csv|CP
tenor-voice.modern|modern|tenor-voice|G2|8vb|-P8|yes|high|C4>C3 G4>G3 C5>C4|modern default of instruments.csv|FMD
baritone-voice.modern|modern|baritone-voice|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|CP
bass-voice.modern|modern|bass-voice|F4||P1|yes|high|C2>C2 C3>C3 G3>G3|modern default of instruments.csv|CP
horn.crook-c-alto|horn|natural-horn|G2||P1|no|medium|C4>C4 G4>G4 C5>C5 E5>E5|C alto: rare, Baroque; must be marked alto|RGS
horn.crook-c-alto.bass-new|horn|natural-horn|F4||P1|no|medium|C3>C3 G3>G3 C4>C4|C alto, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS
horn.crook-c-alto.bass-old|horn|natural-horn|F4||+P8|no|medium|C2>C3 G2>G3 C3>C4|C alto, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS
horn.crook-b-natural-alto|horn|natural-horn|G2||-m2|no|low|C4>B3 G4>F#4 C5>B4 E5>D#5|B natural alto: very rare|MEM
horn.crook-b-natural-alto.bass-new|horn|natural-horn|F4||-m2|no|low|C3>B2 G3>F#3 C4>B3|B natural alto, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;MEM
horn.crook-b-natural-alto.bass-old|horn|natural-horn|F4||+M7|no|low|C2>B2 G2>F#3 C3>B3|B natural alto, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;MEM
horn.crook-b-flat-alto|horn|natural-horn|G2||-M2|no|high|C4>Bb3 G4>F4 C5>Bb4 E5>D5|B flat alto: Haydn, Mozart, Weber; also bands|RGS;BRYAN;POET
horn.crook-b-flat-alto.bass-new|horn|natural-horn|F4||-M2|no|high|C3>Bb2 G3>F3 C4>Bb3|B flat alto, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS;BRYAN;POET
horn.crook-b-flat-alto.bass-old|horn|natural-horn|F4||+m7|no|high|C2>Bb2 G2>F3 C3>Bb3|B flat alto, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS;BRYAN;POET
horn.crook-a|horn|natural-horn|G2||-m3|no|high|C4>A3 G4>E4 C5>A4 E5>C#5|A (alto): common|RGS;HMT
horn.crook-a.bass-new|horn|natural-horn|F4||-m3|no|high|C3>A2 G3>E3 C4>A3|A (alto), new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS;HMT
horn.crook-a.bass-old|horn|natural-horn|F4||+M6|no|high|C2>A2 G2>E3 C3>A3|A (alto), old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS;HMT
horn.crook-a-flat|horn|natural-horn|G2||-M3|no|high|C4>Ab3 G4>Eb4 C5>Ab4 E5>C5|A flat (alto): uncommon|RGS
horn.crook-a-flat.bass-new|horn|natural-horn|F4||-M3|no|high|C3>Ab2 G3>Eb3 C4>Ab3|A flat (alto), new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS
horn.crook-a-flat.bass-old|horn|natural-horn|F4||+m6|no|high|C2>Ab2 G2>Eb3 C3>Ab3|A flat (alto), old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS
horn.crook-g|horn|natural-horn|G2||-P4|no|high|C4>G3 G4>D4 C5>G4 E5>B4|G: common|RGS
horn.crook-g.bass-new|horn|natural-horn|F4||-P4|no|high|C3>G2 G3>D3 C4>G3|G, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS
horn.crook-g.bass-old|horn|natural-horn|F4||+P5|no|high|C2>G2 G2>D3 C3>G3|G, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS
horn.crook-g-flat|horn|natural-horn|G2||-A4|no|medium|C4>Gb3 G4>Db4 C5>Gb4 E5>Bb4|G flat: rare|MEM (derived)
horn.crook-g-flat.bass-new|horn|natural-horn|F4||-A4|no|medium|C3>Gb2 G3>Db3 C4>Gb3|G flat, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;MEM (derived)
horn.crook-g-flat.bass-old|horn|natural-horn|F4||+d5|no|medium|C2>Gb2 G2>Db3 C3>Gb3|G flat, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;MEM (derived)
horn.crook-f-sharp|horn|natural-horn|G2||-d5|no|high|C4>F#3 G4>C#4 C5>F#4 E5>A#4|F sharp: rare (Haydn 45 in Fis)|RGS
horn.crook-f-sharp.bass-new|horn|natural-horn|F4||-d5|no|high|C3>F#2 G3>C#3 C4>F#3|F sharp, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS
horn.crook-f-sharp.bass-old|horn|natural-horn|F4||+A4|no|high|C2>F#2 G2>C#3 C3>F#3|F sharp, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS
horn.crook-f|horn|natural-horn horn-f|G2||-P5|no|high|C4>F3 G4>C4 C5>F4 E5>A4|F: common; the later standard|RGS;teoria
horn.crook-f.bass-new|horn|natural-horn horn-f|F4||-P5|no|high|C3>F2 G3>C3 C4>F3|F, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS;teoria
horn.crook-f.bass-old|horn|natural-horn horn-f|F4||+P4|no|high|C2>F2 G2>C3 C3>F3|F, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS;teoria
horn.crook-e|horn|natural-horn|G2||-m6|no|high|C4>E3 G4>B3 C5>E4 E5>G#4|E: very common|RGS
horn.crook-e.bass-new|horn|natural-horn|F4||-m6|no|high|C3>E2 G3>B2 C4>E3|E, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS
horn.crook-e.bass-old|horn|natural-horn|F4||+M3|no|high|C2>E2 G2>B2 C3>E3|E, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS
horn.crook-e-flat|horn|natural-horn horn-e-flat|G2||-M6|no|high|C4>Eb3 G4>Bb3 C5>Eb4 E5>G4|E flat: very common; band standard to mid 20th c.|RGS;MELC
horn.crook-e-flat.bass-new|horn|natural-horn horn-e-flat|F4||-M6|no|high|C3>Eb2 G3>Bb2 C4>Eb3|E flat, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS;MELC
horn.crook-e-flat.bass-old|horn|natural-horn horn-e-flat|F4||+m3|no|high|C2>Eb2 G2>Bb2 C3>Eb3|E flat, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS;MELC
horn.crook-d|horn|natural-horn|G2||-m7|no|high|C4>D3 G4>A3 C5>D4 E5>F#4|D: very common|RGS
horn.crook-d.bass-new|horn|natural-horn|F4||-m7|no|high|C3>D2 G3>A2 C4>D3|D, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS
horn.crook-d.bass-old|horn|natural-horn|F4||+M2|no|high|C2>D2 G2>A2 C3>D3|D, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS
horn.crook-d-flat|horn|natural-horn|G2||-M7|no|high|C4>Db3 G4>Ab3 C5>Db4 E5>F4|D flat: rare|RGS
horn.crook-d-flat.bass-new|horn|natural-horn|F4||-M7|no|high|C3>Db2 G3>Ab2 C4>Db3|D flat, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS
horn.crook-d-flat.bass-old|horn|natural-horn|F4||+m2|no|high|C2>Db2 G2>Ab2 C3>Db3|D flat, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS
horn.crook-c|horn|natural-horn|G2||-P8|no|high|C4>C3 G4>G3 C5>C4 E5>E4|C (basso): common|RGS;MELC
horn.crook-c.bass-new|horn|natural-horn|F4||-P8|no|high|C3>C2 G3>G2 C4>C3|C (basso), new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS;MELC
horn.crook-c.bass-old|horn|natural-horn|F4||P1|no|high|C2>C2 G2>G2 C3>C3|C (basso), old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS;MELC
horn.crook-b-natural-basso|horn|natural-horn|G2||-m9|no|high|C4>B2 G4>F#3 C5>B3 E5>D#4|B natural basso (German H): Brahms and others|RGS
horn.crook-b-natural-basso.bass-new|horn|natural-horn|F4||-m9|no|high|C3>B1 G3>F#2 C4>B2|B natural basso (German H), new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS
horn.crook-b-natural-basso.bass-old|horn|natural-horn|F4||-m2|no|high|C2>B1 G2>F#2 C3>B2|B natural basso (German H), old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS
horn.crook-b-flat-basso|horn|natural-horn|G2||-M9|no|high|C4>Bb2 G4>F3 C5>Bb3 E5>D4|B flat basso: common; default reading of an unqualified "in B flat" according to RGS|RGS;BRYAN
horn.crook-b-flat-basso.bass-new|horn|natural-horn|F4||-M9|no|high|C3>Bb1 G3>F2 C4>Bb2|B flat basso, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS;BRYAN
horn.crook-b-flat-basso.bass-old|horn|natural-horn|F4||-M2|no|high|C2>Bb1 G2>F2 C3>Bb2|B flat basso, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS;BRYAN
horn.crook-a-basso|horn|natural-horn|G2||-m10|no|high|C4>A2 G4>E3 C5>A3 E5>C#4|A basso: Verdi and Italian opera|RGS
horn.crook-a-basso.bass-new|horn|natural-horn|F4||-m10|no|high|C3>A1 G3>E2 C4>A2|A basso, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS
horn.crook-a-basso.bass-old|horn|natural-horn|F4||-m3|no|high|C2>A1 G2>E2 C3>A2|A basso, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS
horn.crook-a-flat-basso|horn|natural-horn|G2||-M10|no|high|C4>Ab2 G4>Eb3 C5>Ab3 E5>C4|A flat basso: Verdi and Italian opera|RGS
horn.crook-a-flat-basso.bass-new|horn|natural-horn|F4||-M10|no|high|C3>Ab1 G3>Eb2 C4>Ab2|A flat basso, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;RGS
horn.crook-a-flat-basso.bass-old|horn|natural-horn|F4||-M3|no|high|C2>Ab1 G2>Eb2 C3>Ab2|A flat basso, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;RGS
horn.crook-g-basso|horn|natural-horn|G2||-P11|no|low|C4>G2 G4>D3 C5>G3 E5>B3|G basso: very rare|MEM
horn.crook-g-basso.bass-new|horn|natural-horn|F4||-P11|no|low|C3>G1 G3>D2 C4>G2|G basso, new-notation bass clef (20th c.): same interval as treble clef|HMT;DOR;MEM
horn.crook-g-basso.bass-old|horn|natural-horn|F4||-P4|no|low|C2>G1 G2>D2 C3>G2|G basso, old-notation bass clef (c.1750 - c.1950): bass-clef notes stand an octave too low|HMT;DOR;BYRD;MEM
trumpet.crook-g-high|trumpet|natural-trumpet|G2||+P5|no|medium|C4>G4 G4>D5 C5>G5 E5>B5|G (high): rare; small G trumpets, some modern|BND and VIE (G trumpets sound above the written note); interval from the key name
trumpet.crook-f|trumpet|natural-trumpet trumpet-f|G2||+P4|no|high|C4>F4 G4>C5 C5>F5 E5>A5|F: 19th c. standard long trumpet|JMU;VIE
trumpet.crook-f.bass-old|trumpet|natural-trumpet trumpet-f|F4||+P11|no|medium|C3>F4 G3>C5 C4>F5|F: low note in bass clef, an octave too low (Classical)|HMT 2009 (says trumpets share the habit);JMU;VIE
trumpet.crook-e|trumpet|natural-trumpet|G2||+M3|no|high|C4>E4 G4>B4 C5>E5 E5>G#5|E: common|VIE
trumpet.crook-e.bass-old|trumpet|natural-trumpet|F4||+M10|no|medium|C3>E4 G3>B4 C4>E5|E: low note in bass clef, an octave too low (Classical)|HMT 2009 (says trumpets share the habit);VIE
trumpet.crook-e-flat|trumpet|natural-trumpet trumpet-e-flat|G2||+m3|no|high|C4>Eb4 G4>Bb4 C5>Eb5 E5>G5|E flat: common|VIE
trumpet.crook-e-flat.bass-old|trumpet|natural-trumpet trumpet-e-flat|F4||+m10|no|medium|C3>Eb4 G3>Bb4 C4>Eb5|E flat: low note in bass clef, an octave too low (Classical)|HMT 2009 (says trumpets share the habit);VIE
trumpet.crook-d|trumpet|natural-trumpet trumpet-d|G2||+M2|no|high|C4>D4 G4>A4 C5>D5 E5>F#5|D: commonest Baroque/Classical|VIE
trumpet.crook-d.bass-old|trumpet|natural-trumpet trumpet-d|F4||+M9|no|medium|C3>D4 G3>A4 C4>D5|D: low note in bass clef, an octave too low (Classical)|HMT 2009 (says trumpets share the habit);VIE
trumpet.crook-d-flat|trumpet|natural-trumpet|G2||+m2|no|medium|C4>Db4 G4>Ab4 C5>Db5 E5>F5|D flat: rare|MEM
trumpet.crook-d-flat.bass-old|trumpet|natural-trumpet|F4||+m9|no|medium|C3>Db4 G3>Ab4 C4>Db5|D flat: low note in bass clef, an octave too low (Classical)|HMT 2009 (says trumpets share the habit);MEM
trumpet.crook-c|trumpet|natural-trumpet trumpet-c|G2||P1|no|high|C4>C4 G4>G4 C5>C5 E5>E5|C: common|VIE
trumpet.crook-c.bass-old|trumpet|natural-trumpet trumpet-c|F4||+P8|no|medium|C3>C4 G3>G4 C4>C5|C: low note in bass clef, an octave too low (Classical)|HMT 2009 (says trumpets share the habit);VIE
trumpet.crook-b-natural|trumpet|natural-trumpet|G2||-m2|no|medium|C4>B3 G4>F#4 C5>B4 E5>D#5|B natural (H): rare, Brahms, Wagner|MEM
trumpet.crook-b-natural.bass-old|trumpet|natural-trumpet|F4||+M7|no|medium|C3>B3 G3>F#4 C4>B4|B natural (H): low note in bass clef, an octave too low (Classical)|HMT 2009 (says trumpets share the habit);MEM
trumpet.crook-b-flat|trumpet|natural-trumpet trumpet-b-flat|G2||-M2|no|high|C4>Bb3 G4>F4 C5>Bb4 E5>D5|B flat: common|VIE;POET
trumpet.crook-b-flat.bass-old|trumpet|natural-trumpet trumpet-b-flat|F4||+m7|no|medium|C3>Bb3 G3>F4 C4>Bb4|B flat: low note in bass clef, an octave too low (Classical)|HMT 2009 (says trumpets share the habit);VIE;POET
trumpet.crook-a|trumpet|natural-trumpet trumpet-a|G2||-m3|no|high|C4>A3 G4>E4 C5>A4 E5>C#5|A: 19th c. (Wagner, Dvořák, Franck)|VIE
trumpet.crook-a.bass-old|trumpet|natural-trumpet trumpet-a|F4||+M6|no|medium|C3>A3 G3>E4 C4>A4|A: low note in bass clef, an octave too low (Classical)|HMT 2009 (says trumpets share the habit);VIE
trumpet.crook-a-flat|trumpet|natural-trumpet|G2||-M3|no|medium|C4>Ab3 G4>Eb4 C5>Ab4 E5>C5|A flat: rare, Italian and French opera|MEM
trumpet.crook-a-flat.bass-old|trumpet|natural-trumpet|F4||+m6|no|medium|C3>Ab3 G3>Eb4 C4>Ab4|A flat: low note in bass clef, an octave too low (Classical)|HMT 2009 (says trumpets share the habit);MEM
trumpet.crook-g-low|trumpet|natural-trumpet|G2||-P4|no|low|C4>G3 G4>D4 C5>G4 E5>B4|G (low): rare: lowest crook of the F trumpet|MEM
bass-trumpet.e-flat|trumpet|bass-trumpet-e-flat|G2||-M6|no|high|C4>Eb3 G4>Bb3 C5>Eb4|Wagner Ring; Stravinsky Rite|POET (reads as horn);BND
bass-trumpet.d|trumpet|bass-trumpet-c|G2||-m7|no|medium|C4>D3 G4>A3 C5>D4|Wagner Ring|POET
bass-trumpet.c|trumpet|bass-trumpet-c|G2||-P8|no|high|C4>C3 G4>G3 C5>C4|Wagner Ring; later normal|POET;BND
bass-trumpet.b-flat|trumpet|bass-trumpet-b-flat|G2||-M9|no|high|C4>Bb2 G4>F3 C5>Bb3|Strauss, bands, Janáček|POET;BND
cornet.crook-c|cornet|cornet-c|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|C crook or shank|SCHW (crook list); POET (reads as horn)
cornet.crook-b-natural|cornet|cornet-b-flat|G2||-m2|yes|medium|C4>B3 G4>F#4 C5>B4|B natural crook or shank|SCHW (crook list); POET (reads as horn)
cornet.crook-b-flat|cornet|cornet-b-flat|G2||-M2|yes|high|C4>Bb3 G4>F4 C5>Bb4|B flat crook or shank|SCHW (crook list); POET (reads as horn)
cornet.crook-a|cornet|cornet-a|G2||-m3|yes|high|C4>A3 G4>E4 C5>A4|A crook or shank|SCHW (crook list); POET (reads as horn)
cornet.crook-a-flat|cornet|cornet-b-flat|G2||-M3|yes|high|C4>Ab3 G4>Eb4 C5>Ab4|A flat crook or shank|SCHW (crook list); POET (reads as horn)
cornet.crook-g|cornet|cornet-b-flat|G2||-P4|yes|high|C4>G3 G4>D4 C5>G4|G crook or shank|SCHW (crook list); POET (reads as horn)
cornet.crook-f-sharp|cornet|cornet-b-flat|G2||-d5|yes|medium|C4>F#3 G4>C#4 C5>F#4|F sharp crook or shank|SCHW (crook list); POET (reads as horn)
cornet.crook-f|cornet|cornet-b-flat|G2||-P5|yes|high|C4>F3 G4>C4 C5>F4|F crook or shank|SCHW (crook list); POET (reads as horn)
cornet.crook-e|cornet|cornet-b-flat|G2||-m6|yes|medium|C4>E3 G4>B3 C5>E4|E crook or shank|SCHW (crook list); POET (reads as horn)
cornet.crook-e-flat|cornet|cornet-b-flat|G2||-M6|yes|medium|C4>Eb3 G4>Bb3 C5>Eb4|E flat (low) crook or shank|SCHW (crook list); POET (reads as horn)
cornet.crook-d|cornet|cornet-b-flat|G2||-m7|yes|medium|C4>D3 G4>A3 C5>D4|D crook or shank|SCHW (crook list); POET (reads as horn)
cornet.crook-d-flat|cornet|cornet-b-flat|G2||-M7|yes|medium|C4>Db3 G4>Ab3 C5>Db4|D flat crook or shank|SCHW (crook list); POET (reads as horn)
cornet.e-flat-soprano|cornet|soprano-cornet-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|soprano cornet, bands|JAY
cornet.english-at-pitch|cornet|cornet-b-flat|G2||P1|yes|low|C4>C4 G4>G4 C5>C5|claimed by EB11 for England c.1910: music written as sounded|EB11
clarinet.a-flat|clarinet|clarinet-a-flat|G2||+m6|yes|medium|C4>Ab4 G4>Eb5 C5>Ab5|Italian/Austrian/Spanish bands|KOE p.123 and MWEB (instrument attested); interval from the key name
clarinet.g-high|clarinet|clarinet-g-high|G2||+P5|yes|high|C4>G4 G4>D5 C5>G5|Vienna|MUSB
clarinet.f-high|clarinet|clarinet-f-high|G2||+P4|yes|high|C4>F4 G4>C5 C5>F5|early bands|GRV1 vol.1 djvu 374
clarinet.e-flat|clarinet|clarinet-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|all|teoria;POET
clarinet.d|clarinet|clarinet-d|G2||+M2|yes|high|C4>D4 G4>A4 C5>D5|Liszt, Wagner, Strauss|POET;MUSB
clarinet.c|clarinet|clarinet-c|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|Classical, Smetana, Mahler, Strauss|POET
clarinet.b-natural|clarinet|clarinet-b-flat|G2||-m2|yes|low|C4>B3 G4>F#4 C5>B4|18th c. Italy/Mozart Idomeneo, Così; rare|MEM
clarinet.b-flat|clarinet|clarinet-b-flat|G2||-M2|yes|high|E3>D3 C4>Bb3 G4>F4 D5>C5|all|teoria;GRV1
clarinet.a|clarinet|clarinet-a|G2||-m3|yes|high|E3>C#3 C4>A3 F4>D4 G4>E4|all orchestral|teoria;GRV1
clarinet.g-low|clarinet|clarinette-d-amour-g|G2||-P4|yes|medium|C4>G3 G4>D4 C5>G4|clarinette d'amour; Turkish/Greek clarinet|MUSB
clarinet.b-flat.tenor-clef-reading|clarinet|clarinet-b-flat|C4||+P8|yes|high|C4>C5 G3>G4 E4>E5|19th c. Italy (Cavallini, Canongia): B flat clarinet written in tenor clef, letter names as they sound, an octave too low; the player supplies the two flats|GRV1 vol.1 djvu 374|earlier version had P1 and called it a mere reading trick (MEM)
basset-horn.treble|clarinet|basset-horn|G2||-P5|yes|high|C3>F2 C4>F3 G4>C4|all|GRV1;HAY;POET
basset-horn.bass-old|clarinet|basset-horn|F4||+P4|yes|high|C3>F3 F3>Bb3 G3>C4|Mozart and other older works: low notes in bass clef, octave too low|WPDE
basset-horn.bass-new|clarinet|basset-horn|F4||-P5|yes|low|C4>F3 F3>Bb2 G3>C3|some 20th c. parts|MEM
bass-clarinet.french|clarinet|bass-clarinet-b-flat|G2||-M9|yes|high|E3>D2 C4>Bb2 G4>F3 C5>Bb3|French system; all bands|ALD;teoria;JOHN
bass-clarinet.german-bass|clarinet|bass-clarinet-b-flat|F4||-M2|yes|high|C3>Bb2 G3>F3 C4>Bb3|German system, Wagner and followers; also Stravinsky Rite|ALD;MSE86545
bass-clarinet.german-treble|clarinet|bass-clarinet-b-flat|G2||-M2|yes|high|C4>Bb3 G4>F4 C5>Bb4|German system when it goes high|ALD;MSE86545
bass-clarinet.russian-bass|clarinet|bass-clarinet-b-flat|F4||-M2|yes|high|C3>Bb2 G3>F3 C4>Bb3|Russian (mixed) system|ALD;MSE86545
bass-clarinet.russian-treble|clarinet|bass-clarinet-b-flat|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|Russian (mixed) system when it goes high|ALD;MSE86545
bass-clarinet.italian-bass|clarinet|bass-clarinet-b-flat|F4||-M9|yes|medium|C4>Bb2 G4>F3 C5>Bb3|Italian system: bass clef yet a ninth|ALD;MSE86545
bass-clarinet.tenor-clef|clarinet|bass-clarinet-b-flat|C4||-M2|yes|medium|C4>Bb3 G3>F3 D4>C4|19th c. (GRV1, EB11 say tenor clef occurs; interval inferred as German)|GRV1;EB11|GRV1 vol.1 djvu 162: tenor clef preferred because it assimilates the part to the bassoon, hence sounding octave
bass-clarinet-a.french|clarinet|bass-clarinet-a|G2||-m10|yes|high|C4>A2 G4>E3 C5>A3|treble clef in A|POET;EB11
bass-clarinet-a.german-bass|clarinet|bass-clarinet-a|F4||-m3|yes|high|C3>A2 G3>E3 C4>A3|bass clef in A (Wagner)|POET
bass-clarinet-a.german-treble|clarinet|bass-clarinet-a|G2||-m3|yes|medium|C4>A3 G4>E4 C5>A4|German, high passages|POET
bass-clarinet-c.treble|clarinet|bass-clarinet-c|G2||-P8|yes|medium|C4>C3 G4>G3 C5>C4|bass clarinet in C|EB11
bass-clarinet-c.bass|clarinet|bass-clarinet-c|F4||P1|yes|low|C3>C3 G3>G3 C4>C4|at pitch in bass clef|MEM
bass-clarinet.british-band-bass|clarinet|bass-clarinet-b-flat|F4||-M2|yes|medium|C3>Bb2 G3>F3 C4>Bb3|older British military sets print bass clarinet in bass clef, sometimes on the bassoon sheet|HEBM (clef); interval MEM
alto-clarinet.e-flat|clarinet|alto-clarinet-e-flat|G2||-M6|yes|high|C4>Eb3 G4>Bb3 C5>Eb4|bands|LARUE;CODM
alto-clarinet.f|clarinet|alto-clarinet-f|G2||-P5|yes|medium|C4>F3 G4>C4 C5>F4|19th c.|CODM
contra-alto.e-flat.treble|clarinet|contra-alto-clarinet-e-flat|G2||-M13|yes|high|C3>Eb1 C4>Eb2 G4>Bb2|bands|HAY
contra-alto.e-flat.bass|clarinet|contra-alto-clarinet-e-flat|F4||-M6|yes|low|C3>Eb2 G3>Bb2 C4>Eb3|bass-clef variant on the German model|MEM
contrabass-clarinet.b-flat.treble|clarinet|contrabass-clarinet-b-flat|G2||-M16|yes|high|C3>Bb0 C4>Bb1 G4>F2 F6>Eb4|bands; modern French-system|WP
contrabass-clarinet.b-flat.treble-m9|clarinet|contrabass-clarinet-b-flat|G2||-M9|yes|low|C4>Bb2 G4>F3 C5>Bb3|written like a bass clarinet "8va bassa" read; some early 20th c. scores|MEM
contrabass-clarinet.b-flat.bass-m9|clarinet|contrabass-clarinet-b-flat|F4||-M9|yes|medium|C3>Bb1 G3>F2 C4>Bb2|d'Indy, Fervaal: bass clef, a ninth lower (German habit)|BND (contrabass clarinet)
contrabass-clarinet.b-flat.bass-m2|clarinet|contrabass-clarinet-b-flat|F4||-M2|yes|low|C2>Bb1 G2>F2 C3>Bb2|bass clef, real octave|MEM
saxhorn.petit-bugle-e-flat|band-brass|petit-bugle-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|FR/BE/IT|NETI;WP
saxhorn.contralto-b-flat|band-brass|flugelhorn-b-flat|G2||-M2|yes|high|C4>Bb3 G4>F4 C5>Bb4|everywhere|NETI;WP
saxhorn.alto-e-flat|band-brass|alto-horn-e-flat|G2||-M6|yes|high|C4>Eb3 G4>Bb3 C5>Eb4|everywhere|NETI;WP
saxhorn.alto-f|band-brass|alto-horn-f|G2||-P5|yes|high|C4>F3 G4>C4 C5>F4|orchestral pitch set, DE/AT|NETI
saxhorn.baritone-b-flat.treble|band-brass|saxhorn-baritone-b-flat baritone-horn|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|everywhere|NETI;WP9
saxhorn.baritone-b-flat.bass|band-brass|saxhorn-baritone-b-flat|F4||-M2|yes|medium|C3>Bb2 G3>F3 C4>Bb3|FR/BE older sets|TUBE
saxhorn.bass-b-flat.bass|band-brass|saxhorn-bass-b-flat euphonium|F4||-M2|yes|high|C3>Bb2 F3>Eb3 Bb3>Ab3 D4>C4|FR, BE, parts of NL: "basse si b", "1re basse", "tuba si b" in clé de fa|TUBE;CP; EB11B (transposition usual in France and Belgium)
saxhorn.bass-b-flat.treble|band-brass|saxhorn-bass-b-flat euphonium|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|FR, BE, NL "Bes G-sleutel"|NETI;DWER;WP9
saxhorn.bass-c.bass|band-brass|saxhorn-bass-b-flat euphonium french-tuba-c|F4||P1|yes|high|C3>C3 F3>F3 Bb3>Bb3|"basse en ut", "tuba ut" and international B.C. part|MPO;DWER
saxhorn.contrabass-e-flat.bass|band-brass|saxhorn-contrabass-e-flat|F4||-M6|yes|high|C3>Eb2 G3>Bb2 C4>Eb3|FR, BE: "contrebasse mi b" clé de fa|TUBE (practice); interval derived: open 2nd harmonic E flat 2 = written C3; EB11B (transposition usual in France and Belgium)
saxhorn.contrabass-e-flat.treble|band-brass|saxhorn-contrabass-e-flat|G2||-M13|yes|high|C4>Eb2 G4>Bb2 C5>Eb3|"contrebasse mi b" clé de sol|SJ;FRU
saxhorn.contrabass-f.bass|band-brass|bass-tuba-f|F4||-P5|yes|medium|C3>F2 G3>C3 C4>F3|transposed bass clef in F (Finnish brass septet sets)|TUBE (Finland)
saxhorn.contrabass-b-flat.bass|band-brass|saxhorn-contrabass-b-flat|F4||-M9|yes|high|C3>Bb1 G3>F2 C4>Bb2 F3>Eb2|FR, BE: "contrebasse si b" clé de fa|CP;TUBE; EB11B (transposition usual in France and Belgium)
saxhorn.contrabass-b-flat.treble|band-brass|saxhorn-contrabass-b-flat|G2||-M16|yes|high|C4>Bb1 G4>F2 C5>Bb2|"contrebasse si b" clé de sol|SJ;FRU
saxhorn.contrabass-b-flat.bass-real-octave|band-brass|saxhorn-contrabass-b-flat|F4||-M2|yes|low|C2>Bb1 F2>Eb2 C3>Bb2|variant: contrabass reads the B flat bass part and plays it in its own octave or doubles at pitch|MEM
brassband.soprano-cornet|band-brass|soprano-cornet-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|British brass band|JAY;SCHB
brassband.cornet|band-brass|cornet-b-flat|G2||-M2|yes|high|C4>Bb3 G4>F4 C5>Bb4|British brass band|JAY
brassband.flugel|band-brass|flugelhorn-b-flat|G2||-M2|yes|high|C4>Bb3 G4>F4 C5>Bb4|British brass band|JAY
brassband.tenor-horn|band-brass|alto-horn-e-flat|G2||-M6|yes|high|C4>Eb3 G4>Bb3 C5>Eb4|British brass band|JAY;GRV2T;WPTH
brassband.baritone|band-brass|baritone-horn|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|British brass band|JAY;WP9;GRV2B
brassband.euphonium|band-brass|euphonium|G2||-M9|yes|high|C4>Bb2 C5>Bb3 G4>F3|British brass band; T.C. parts in concert band sets|JAY;DWER;WP9
brassband.tenor-trombone|band-brass|trombone-tenor|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|British brass band|JAY;WP9
brassband.tenor-trombone.tenor-clef|band-brass|trombone-tenor|C4||P1|yes|high|C4>C4 G3>G3 F4>F4|older British brass band sets: tenor clef at pitch|JAY;WPBB
brassband.bass-trombone|band-brass|bass-trombone bass-trombone-g|F4||P1|yes|high|C3>C3 G2>G2 F3>F3|British brass band: the only concert-pitch, bass-clef part|JAY;SCHB
brassband.e-flat-bass|band-brass|e-flat-bass|G2||-M13|yes|high|C4>Eb2 G4>Bb2 C5>Eb3|British brass band|SJ;JAY
brassband.b-flat-bass|band-brass|b-flat-bass|G2||-M16|yes|high|C4>Bb1 G4>F2 C5>Bb2|British brass band|SJ;JAY
fanfare.trombone-b-flat.treble|band-brass|trombone-tenor|G2||-M9|yes|medium|C4>Bb2 G4>F3 C5>Bb3|NL/BE/CH fanfare and harmonie "trombone Bes G-sleutel"|CP
fanfare.trombone-b-flat.bass|band-brass|trombone-tenor|F4||-M2|yes|low|C3>Bb2 F3>Eb3 Bb3>Ab3|BE/FR older: trombone si b clé de fa|MEM
fanfare.trombone-c.bass|band-brass|trombone-tenor|F4||P1|yes|high|C3>C3 F3>F3 Bb3>Bb3|trombone en ut clé de fa|CP
german.tenorhorn|band-brass|tenorhorn-b-flat|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|DE/AT/CZ|HARL;KNAP;MVP;OBW
german.bariton.bass|band-brass|bariton-german euphonium|F4||P1|yes|high|C3>C3 F3>F3 Bb3>Bb3|DE/AT/CZ Bariton in C|HARL;KNAP;MVP;OBW
german.bariton.treble|band-brass|bariton-german|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|DE/AT Bariton in B, common alternative|HARL
german.bass|band-brass|bass-tuba-f bass-tuba-e-flat contrabass-tuba-b-flat|F4||P1|yes|high|C2>C2 F2>F2 Bb2>Bb2|DE/AT/CZ Bass (Tuba) at pitch|KMOS;CP
russian.alto|band-brass|alto-horn-e-flat|G2||-M6|yes|medium|C4>Eb3 G4>Bb3 C5>Eb4|RU military band: альт|MEM
russian.tenor|band-brass|tenorhorn-b-flat|G2||-M9|yes|medium|C4>Bb2 G4>F3 C5>Bb3|RU: тенор|MEM
russian.baritone.treble|band-brass|baritone-horn|G2||-M9|yes|medium|C4>Bb2 G4>F3 C5>Bb3|RU: баритон (T.C.)|MEM
russian.baritone.bass|band-brass|euphonium|F4||P1|yes|low|C3>C3 F3>F3 G3>G3|RU: баритон (B.C.)|MEM
russian.bass|band-brass|bass-tuba-e-flat contrabass-tuba-b-flat|F4||P1|yes|medium|C2>C2 F2>F2 C3>C3|RU: бас I/II at pitch|MEM
italian.sopranino|band-brass|petit-bugle-e-flat|G2||+m3|yes|high|C4>Eb4 G4>Bb4 C5>Eb5|IT flicorno sopranino|NETI;VENZ
italian.contralto|band-brass|alto-horn-e-flat|G2||-M6|yes|high|C4>Eb3 G4>Bb3 C5>Eb4|IT flicorno contralto, genis|NETI;BARL
italian.tenore|band-brass|tenorhorn-b-flat|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|IT flicorno tenore|NETI
italian.basso.bass-transposed|band-brass|saxhorn-bass-b-flat|F4||-M2|yes|high|C3>Bb2 G3>F3 C4>Bb3|IT flicorno basso/baritono/bombardino in older sets|ITWPE and AMI (bass clef, a major second lower)
italian.basso.treble|band-brass|saxhorn-bass-b-flat|G2||-M9|yes|high|C4>Bb2 G4>F3 C5>Bb3|IT eufonio in chiave di violino|ITWPE, AMI and BOFF (treble clef, a major ninth lower)
italian.basso.bass-concert|band-brass|euphonium|F4||P1|yes|high|C3>C3 G3>G3 C4>C4|IT modern eufonio|ITWPE, AMI and BOFF (bass clef, real sounds)
spanish.bombardino.concert|band-brass|euphonium|F4||P1|yes|high|C3>C3 F3>F3 G3>G3|ES bombardino, real-pitch reading|DTUB
spanish.bombardino.transposed-bass|band-brass|euphonium|F4||-M2|yes|medium|C3>Bb2 G3>F3 C4>Bb3|ES bombardino read as transposing, bass clef|DTUB
spanish.fliscorno|band-brass|flugelhorn-b-flat|G2||-M2|yes|high|C4>Bb3 G4>F4 C5>Bb4|ES|CP
us.baritone-tc|band-brass|euphonium baritone-horn|G2||-M9|yes|high|C4>Bb2 C5>Bb3 G4>F3|US "Baritone T.C."|DWER
us.baritone-bc|band-brass|euphonium baritone-horn|F4||P1|yes|high|Bb2>Bb2 C3>C3 F3>F3|US "Baritone B.C."|DWER
mellophone.f|band-brass|mellophone-f|G2||-P5|yes|high|C4>F3 G4>C4 C5>F4|US|BND
mellophone.e-flat|band-brass|mellophone-e-flat|G2||-M6|yes|high|C4>Eb3 G4>Bb3 C5>Eb4|US older|BND
wagner-tuba.tenor.b-flat.m2|wagner-tuba|wagner-tuba-tenor-b-flat|G2||-M2|no|medium|C4>Bb3 G4>F4 C5>Bb4|system 1: Rheingold; Bruckner 7 (ERIC prints it as B flat alto)|FACT;ERIC
wagner-tuba.tenor.b-flat.m2.bass|wagner-tuba|wagner-tuba-tenor-b-flat|F4||-M2|no|low|C3>Bb2 G3>F3 C4>Bb3|system 1, bass clef|MEM
wagner-tuba.bass.f.p5|wagner-tuba|wagner-tuba-bass-f|F4||-P5|no|medium|C3>F2 G3>C3 C4>F3|system 1: Rheingold, Bruckner 7|FACT;ERIC
wagner-tuba.bass.f.p5.treble|wagner-tuba|wagner-tuba-bass-f|G2||-P5|no|medium|C4>F3 G4>C4 C5>F4|system 1 treble|FACT
wagner-tuba.tenor.e-flat.m6|wagner-tuba|wagner-tuba-tenor-b-flat|G2||-M6|no|medium|C4>Eb3 G4>Bb3 C5>Eb4|system 2: Walküre, Siegfried, Götterdämmerung: tenors written in E flat|WTUB and ERIC (E flat); interval from the key name
wagner-tuba.bass.b-flat-basso.m9|wagner-tuba|wagner-tuba-bass-f|G2||-M9|no|medium|C4>Bb2 G4>F3 C5>Bb3|system 2: basses written in B flat basso|ERIC (B flat basso) and WTUB (B flat); interval from the key name
wagner-tuba.tenor.b-flat-basso.m9|wagner-tuba|wagner-tuba-tenor-b-flat|G2||-M9|no|medium|C4>Bb2 G4>F3 C5>Bb3|system 3: Strauss Alpensinfonie (ERIC: B flat basso); Götterdämmerung prologue and Bruckner 8-9 from memory|ERIC;MEM
wagner-tuba.bass.f-basso.p12|wagner-tuba|wagner-tuba-bass-f|G2||-P12|no|medium|C4>F2 G4>C3 C5>F3|system 3: Strauss (ERIC: F basso)|ERIC;MEM
wagner-tuba.concert|wagner-tuba|wagner-tuba-tenor-b-flat wagner-tuba-bass-f|F4||P1|no|low|C3>C3 G3>G3 C4>C4|20th c. concert-pitch scores|MEM
wagner-tuba.all-in-f|wagner-tuba|wagner-tuba-tenor-b-flat wagner-tuba-bass-f|G2||-P5|no|high|C4>F3 G4>C4 C5>F4|modern re-notated parts for horn players, all in F|ERIC (transposed parts in F)
tuba.concert|tuba|tuba bass-tuba-f bass-tuba-e-flat contrabass-tuba-c contrabass-tuba-b-flat sousaphone helicon bombardon|F4||P1|yes|high|F1>F1 C2>C2 Bb2>Bb2|orchestra and US/UK concert band|MSE7332;DINH;LARUE;EB11B
tuba.e-flat.treble|tuba|bass-tuba-e-flat|G2||-M13|yes|high|C4>Eb2 G4>Bb2 C#5>E3|E flat T.C. parts in band sets|SJ;MSE7332
tuba.e-flat.bass|tuba|bass-tuba-e-flat bombardon|F4||-M6|yes|medium|C3>Eb2 G3>Bb2 C4>Eb3|"Es BC", "mi b clé de fa"|TUBE; EB11B (transposition usual in France and Belgium)
tuba.b-flat.treble|tuba|contrabass-tuba-b-flat|G2||-M16|yes|high|C4>Bb1 G4>F2 C5>Bb2|BBb T.C. parts|SJ
tuba.b-flat.bass|tuba|contrabass-tuba-b-flat|F4||-M9|yes|high|C3>Bb1 G3>F2 C4>Bb2|"Bes BC", "si b clé de fa"|TUBE;CP; EB11B (transposition usual in France and Belgium)
ophicleide.c|tuba|ophicleide-c|F4||P1|yes|high|C2>C2 G2>G2 C3>C3|orchestral|BERL;LAV (real sounds, bass clef)
ophicleide.b-flat.transposed|tuba|ophicleide-b-flat|F4||-M2|yes|medium|C3>Bb2 G3>F3 C4>Bb3|FR bands; part written a tone above sound|BERL and LITT (sizes); interval MEM
ophicleide.alto-e-flat|tuba|quinticlave-e-flat|G2||-M6|yes|medium|C4>Eb3 G4>Bb3 C5>Eb4|FR bands|BREN and LITT (alto in E flat); interval from the key name
ophicleide.alto-f|tuba|quinticlave-e-flat|G2||-P5|yes|low|C4>F3 G4>C4 C5>F4|FR bands, F size|MEM
serpent.concert|tuba|serpent|F4||P1|yes|medium|C2>C2 G2>G2 C3>C3|most sources|CP
serpent.b-flat|tuba|serpent|F4||-M2|yes|low|C3>Bb2 G3>F3 C4>Bb3|French serpent regarded as in B flat, written a tone above|MEM
cello.bass-clef|strings|cello|F4||P1|yes|high|C3>C3 G3>G3 C4>C4|all|CP
cello.tenor|strings|cello|C4||P1|yes|high|C4>C4 G4>G4 A4>A4|all|CP
cello.treble-true|strings|cello|G2||P1|yes|high|A4>A4 C5>C5 E5>E5|20th c.; after tenor clef|DAISY
cello.treble-false|strings|cello|G2|8vb|-P8|yes|high|C5>C4 G5>G4 E6>E5|18th-early 20th c. (Beethoven, Schumann, Dvořák, Bruckner)|DAISY;LEON;HMEM
double-bass.orchestral|strings|double-bass|F4|8vb|-P8|yes|high|E2>E1 A2>A1 D3>D2 G3>G2|all|MELC;LARUE
double-bass.tenor|strings|double-bass|C4||-P8|yes|high|C4>C3 G4>G3 G3>G2|solo|CP
double-bass.treble|strings|double-bass|G2||-P8|yes|high|C5>C4 G5>G4 C4>C3|solo|CP
double-bass.at-pitch|strings|double-bass|F4||P1|yes|low|E1>E1 A1>A1 G2>G2|some 20th c. concert scores; harmonics at pitch|MEM
double-bass.solo-tuning|strings|double-bass|F4||-m7|yes|high|E2>F#1 A2>B1 D3>E2|solo tuning a tone high: part written as orchestral fingering|STQ (Dragonetti concerto: solo part in G, orchestra in A); octave as usual|net minor seventh: a tone up, an octave down
viola-d-amore.sounding|strings|viola-d-amore|C3||P1|yes|medium|D4>D4 A4>A4 C4>C4|19th-20th c.|VDAW
viola-d-amore.bass-octave|strings|viola-d-amore|F4||+P8|yes|medium|D3>D4 A2>A3 C3>C4|scordatura sources: low strings in bass clef sound an octave higher|VDAW
contrabassoon.octave|double-reeds|contrabassoon|F4|8vb|-P8|yes|high|Bb1>Bb0 C2>C1 A4>A3|normal|CODM;JOHN;LARUE
contrabassoon.at-pitch|double-reeds|contrabassoon|F4||P1|yes|medium|C1>C1 G1>G1 C2>C2|Wagner and Debussy sometimes; some late 20th c.|CODM
english-horn.treble-fifth|double-reeds|english-horn|G2||-P5|yes|high|B3>E3 C4>F3 G4>C4|c.1840-|WP;VIE
english-horn.italian-bass|double-reeds|english-horn|F4||+P8|yes|high|C3>C4 G3>G4 C4>C5|Italy late 18th - mid 19th c. (Rossini, William Tell)|VIE;KARD
english-horn.french-mezzo|double-reeds|english-horn|C2||P1|yes|high|C4>C4 G4>G4 A4>A4|France c.1820-1840: mezzo-soprano clef at pitch|VIE
english-horn.alto-clef|double-reeds|english-horn oboe-da-caccia|C3||P1|yes|high|C4>C4 G4>G4 E4>E4|Bach (oboe da caccia), alto clef at pitch|VIE
english-horn.concert-treble|double-reeds|english-horn|G2||P1|yes|medium|C4>C4 G4>G4 C5>C5|some modern C scores (Henze)|VIE
oboe-d-amore.treble|double-reeds|oboe-d-amore|G2||-m3|yes|high|C4>A3 G4>E4 C5>A4|modern parts|POET
oboe-d-amore.at-pitch|double-reeds|oboe-d-amore|G2||P1|yes|low|C4>C4 G4>G4 C5>C5|Bach sources often at pitch|MEM
bass-oboe.octave|double-reeds|bass-oboe|G2|8vb|-P8|yes|high|C4>C3 G4>G3 C5>C4|Holst and modern|BND
bass-oboe.at-pitch|double-reeds|bass-oboe|F4||P1|yes|high|C3>C3 G3>G3 C4>C4|Delius, Dance Rhapsody 1: sounding pitch, treble and bass clefs|BND
bass-oboe.at-pitch-treble|double-reeds|bass-oboe|G2||P1|yes|high|C4>C4 G4>G4 C5>C5|Delius, as above|BND
heckelphone.octave|double-reeds|heckelphone|G2|8vb|-P8|yes|medium|C4>C3 G4>G3 C5>C4|Strauss|BND;MEM
heckelphone.bass|double-reeds|heckelphone|F4||P1|yes|low|C3>C3 G3>G3 C4>C4|bass-clef parts at pitch|MEM
tenoroon.f|double-reeds|tenoroon|F4||+P4|varies|low|C3>F3 G3>C4 C4>F4|quart size: fingered as bassoon, a fourth higher; Berlioz documents only the fifth|IAML (quart size listed); interval MEM
oboe-e-flat.treble|double-reeds|oboe-e-flat|G2||+m3|yes|medium|C4>Eb4 G4>Bb4 C5>Eb5|band|CODM;KOE
piccolo.c|flutes|piccolo|G2|8va|+P8|yes|high|D4>D5 G4>G5 C5>C6|all|MELC;LARUE;CPX
piccolo.d-flat|flutes|piccolo-d-flat|G2||+m9|yes|high|C4>Db5 G4>Ab5 C5>Db6 A4>Bb5|bands to c.1960|APRL;HEBM
piccolo.e-flat-true|flutes|piccolo-e-flat|G2||+m10|yes|low|C4>Eb5 G4>Bb5 C5>Eb6|rare true E flat|MEM
piccolo.british-e-flat-label|flutes|piccolo-d-flat|G2||+m9|yes|medium|C4>Db5 G4>Ab5 C5>Db6|old British sets labelled "E flat piccolo" (D flat in today's naming)|HEBM
flute.british-f-label|flutes|flute-e-flat|G2||+m3|yes|medium|C4>Eb4 G4>Bb4 C5>Eb5|old British sets labelled "F flute" (E flat in today's naming)|HEBM
flute.tierce|flutes|flute-e-flat|G2||+m3|yes|medium|C4>Eb4 G4>Bb4 C5>Eb5|FR flûte tierce|KOE
flute.d-flat|flutes|flute-d-flat|G2||+m2|yes|medium|C4>Db4 G4>Ab4 C5>Db5|bands|MEM
alto-flute.g|flutes|alto-flute|G2||-P4|yes|high|C4>G3 G4>D4 C5>G4|all|POET;teoria
alto-flute.f|flutes|alto-flute|G2||-P5|yes|low|C4>F3 G4>C4 C5>F4|early alto flute in F (Glazunov/Rimsky era)|MEM
bass-flute.c|flutes|bass-flute|G2|8vb|-P8|yes|high|C4>C3 G4>G3 C5>C4|modern|CP
recorder.garklein|flutes|garklein-recorder|G2|15ma|+P15|yes|high|C4>C6 G4>G6 C5>C7|modern|WPREC
recorder.sopranino|flutes|sopranino-recorder|G2|8va|+P8|yes|high|F4>F5 C5>C6 C4>C5|modern|ARS;WPREC
recorder.soprano|flutes|descant-recorder|G2|8va|+P8|yes|high|C4>C5 G4>G5 C5>C6|modern|ARS;WPREC
recorder.alto|flutes|treble-recorder|G2||P1|yes|high|F4>F4 C5>C5 C4>C4|modern and Baroque|ARS
recorder.alto-up|flutes|treble-recorder|G2||+P8|yes|medium|C4>C5 G3>G4 G4>G5|"alto up": older editions write alto an octave low|ARS
recorder.alto-french-violin|flutes|treble-recorder|G1||P1|yes|medium|G4>G4 D5>D5 C5>C5|French violin clef, Baroque|MEM
recorder.tenor|flutes|tenor-recorder|G2||P1|yes|high|C4>C4 G4>G4 C5>C5||ARS
recorder.bass|flutes|bass-recorder|F4|8va|+P8|yes|high|F2>F3 C3>C4 G3>G4||ARS;WPREC
recorder.bass-treble|flutes|bass-recorder|G2||-P8|yes|medium|F4>F3 C5>C4 C4>C3|fingering-compatible treble notation|WPREC
recorder.great-bass|flutes|great-bass-recorder|F4|8va|+P8|yes|high|C2>C3 G2>G3 C3>C4||ARS;WPREC
recorder.contrabass|flutes|contrabass-recorder|F4||P1|yes|high|F2>F2 C3>C3 G3>G3||ARS;WPREC
sax.soprano-c|sax-sarrus|soprano-saxophone-c|G2||P1|yes|medium|C4>C4 G4>G4 C5>C5||WPSX (orchestral series in C and F)
sax.alto-f|sax-sarrus|mezzo-soprano-saxophone-f|G2||-P5|yes|medium|C4>F3 G4>C4 C5>F4|Strauss Domestica, orchestral set|WPMS (Domestica uses the size in F); interval from the key name
sax.baritone-f|sax-sarrus|baritone-saxophone-e-flat|G2||-P12|yes|medium|C4>F2 G4>C3 C5>F3|Strauss Domestica|WPMS (F baritones attested as prototypes); interval from the key name and the family rule
sax.bass-c|sax-sarrus|bass-saxophone-b-flat|G2||-P15|yes|medium|C4>C2 G4>G2 C5>C3|Strauss Domestica, early Sax|WPBS (C size in Sax's patent, for orchestras); interval from the key name and the family rule
sax.bass.modern|sax-sarrus|bass-saxophone-b-flat|G2||-M16|yes|high|Bb3>Ab1 C4>Bb1 F6>Eb4||WP
sax.baritone.bass-transposed|sax-sarrus|baritone-saxophone-e-flat|F4||-M6|yes|low|C3>Eb2 G3>Bb2 C4>Eb3|IT/FR/DE band sets c.1870-1930: E flat in bass clef|MEM
sax.bass.bass-transposed|sax-sarrus|bass-saxophone-b-flat|F4||-M9|yes|low|C3>Bb1 G3>F2 C4>Bb2|IT/US older band sets: B flat in bass clef|MEM
sax.bass-concert|sax-sarrus|bass-saxophone-b-flat|F4||P1|yes|low|C2>C2 G2>G2 C3>C3|concert bass-clef bass sax cues (tuba part used)|MEM
sarrusophone.contrabass-c|sax-sarrus|sarrusophone-contrabass-c|F4|8vb|-P8|yes|high|Bb1>Bb0 C3>C2 G4>G3|French orchestral scores|WP
sarrusophone.contrabass-e-flat|sax-sarrus|sarrusophone-contrabass-e-flat|G2||-M20|yes|high|Bb3>Db1 C4>Eb1 G6>Bb3|FR/US bands|WP
sarrusophone.contrabass-e-flat.m13|sax-sarrus|sarrusophone-contrabass-e-flat|G2||-M13|yes|low|C4>Eb2 G4>Bb2 C5>Eb3|variant: written an octave lower than the family system|MEM
sarrusophone.contrabass-e-flat.bass|sax-sarrus|sarrusophone-contrabass-e-flat|F4||-M13|yes|low|C3>Eb1 G3>Bb1 C4>Eb2|bass-clef variant; M6 also met|MEM
sarrusophone.contrabass-b-flat|sax-sarrus|sarrusophone-contrabass-b-flat|G2||-M23|yes|high|Bb3>Ab0 C4>Bb0 G4>F1||WP
trombone.alto-clef|trombone|alto-trombone trombone-tenor|C3||P1|yes|high|C4>C4 G4>G4 Bb3>Bb3|to c.1900, Russia to mid 20th c.|HEND
trombone.tenor-clef|trombone|trombone-tenor|C4||P1|yes|high|C4>C4 F4>F4 Bb3>Bb3|orchestral|HEND
trombone.bass-clef|trombone|trombone-tenor bass-trombone valve-trombone-b-flat valve-bass-trombone-f valve-bass-trombone-e-flat bass-trombone-g contrabass-trombone|F4||P1|yes|high|C3>C3 F3>F3 Bb2>Bb2|all|BERL p.110;CP
trombone.valve.treble-b-flat|trombone|valve-trombone-b-flat|G2||-M9|yes|medium|C4>Bb2 G4>F3 C5>Bb3|IT/BE/CZ bands treble clef|MEM
trombone.contrabass-octave|trombone|contrabass-trombone|F4||-P8|yes|low|C3>C2 G3>G2 C4>C3|rare: written an octave high|MEM
glockenspiel.two-octaves|percussion-misc|glockenspiel bell-lyre|G2|15ma|+P15|yes|high|G3>G5 C4>C6 G4>G6|modern|STU
glockenspiel.octave|percussion-misc|glockenspiel|G2||+P8|yes|medium|G4>G5 C5>C6 C4>C5|older and some French scores|MEM
keyed-glockenspiel.octave|percussion-misc|keyed-glockenspiel|G2||+P8|yes|high|D4>D5 D5>D6 D6>D7|Mozart part as played in Paris with steel bars|BERL p.279
celesta.octave|percussion-misc|celesta|G2|8va|+P8|yes|high|C4>C5 G4>G5 C5>C6|all|STU;CPX
celesta.at-pitch|percussion-misc|celesta|G2||P1|yes|low|C5>C5 G5>G5 C4>C4|exceptional (some C scores)|MEM
xylophone.octave|percussion-misc|xylophone|G2|8va|+P8|yes|high|F4>F5 C5>C6 C4>C5|modern|STU
xylophone.at-pitch|percussion-misc|xylophone|G2||P1|yes|low|C5>C5 G5>G5 C4>C4|19th c. and some 20th c. scores|MEM
crotales.two-octaves|percussion-misc|crotales|G2||+P15|yes|medium|C4>C6 G4>G6 C5>C7|all|CP
timpani.concert|percussion-misc|timpani|F4||P1|no|high|F2>F2 C3>C3 F3>F3|since Beethoven; all modern|VIE
timpani.d-a|percussion-misc|timpani|F4||+M2|no|high|C3>D3 G2>A2 G3>A3|transposing: written C3/G2, "in D, A"|VIE
timpani.e-flat-b-flat|percussion-misc|timpani|F4||+m3|no|high|C3>Eb3 G2>Bb2 G3>Bb3|"in Es, B"|VIE rule
timpani.b-flat-f|percussion-misc|timpani|F4||-M2|no|high|C3>Bb2 G2>F2 G3>F3|"in B, F"|VIE
timpani.c-g|percussion-misc|timpani|F4||P1|no|high|C3>C3 G2>G2 G3>G3|"in C, G"|VIE
timpani.e-b|percussion-misc|timpani|F4||+M3|no|medium|C3>E3 G2>B2 G3>B3|"in E, H"|VIE rule
timpani.f-c|percussion-misc|timpani|F4||+P4|no|medium|C3>F3 G2>C3 G3>C4|"in F, C" with F3 as the high drum (tonic high)|VIE rule
timpani.a-e|percussion-misc|timpani|F4||-m3|no|low|C3>A2 G2>E2 G3>E3|"in A, E": A2 and E2; E2 is below the usual low drum, so suspect the inverted pair|derived
guitar.treble-octave|percussion-misc|guitar|G2|8vb|-P8|yes|high|E3>E2 A3>A2 E4>E3|all|CPX;STU
bass-guitar.octave|percussion-misc|bass-guitar|F4|8vb|-P8|yes|high|E2>E1 A2>A1 C3>C2|all|CP
mandola.octave|percussion-misc|octave-mandola|G2|8vb|-P8|yes|medium|G3>G2 D4>D3 C4>C3|DE/IT mandolin orchestra|MEM
mandola.tenor-alto-clef|percussion-misc|tenor-mandola|C3||P1|yes|medium|C3>C3 G3>G3 C4>C4|UK/US universal notation|MEM
mandola.tenor-transposed|percussion-misc|tenor-mandola|G2||-P5|yes|low|G3>C3 D4>G3 C4>F3|tenor mandola fingered as mandolin (treble, sounding a fifth lower)|MEM
tenor-voice.octave|percussion-misc|tenor-voice|G2|8vb|-P8|yes|high|C4>C3 G4>G3 A4>A3|since 19th c., with or without 8|FMD
tenor-voice.tenor-clef|percussion-misc|tenor-voice|C4||P1|yes|high|C3>C3 G3>G3 C4>C4|to c.1900|FMD;CP
tenor-voice.bass-clef|percussion-misc|tenor-voice|F4||P1|yes|high|C4>C4 E4>E4 C3>C3|closed score hymnals|CP
`
