/**
 * Words that mean several instruments, by country, company and age; a line for each meaning. `words` are concepts of
 * the word table, sorted. `key`: the line holds for a label with this key only, `any`: with whatever key, `none`: without
 * one; empty: whether or not a key is named, as the instrument's own key allows. `weight` compares the lines of the
 * same words. `contexts` multiply it when the score has such parts. After the trade's remarks on traps of names and
 * common practice.
 */
export const meaningTable = `
words|key|id|languages|weight|contexts|reason
alto||viola|fr it|5|strings*9 band*0.05 voices*0.3|alto is French for the viola
alto||alto-horn-e-flat|fr en|4|strings*0.05 band*9 brass*9|in bands alto is short for the alto saxhorn
alto||alto-voice|en fr it es nl de|4|voices*30 clef*0.1 strings*0.3 band*0.02|alto is a voice
alto||alto-saxophone-e-flat|en|0.8|saxophones*3 strings*0.2|alto is short for the alto saxophone
alto|F|alto-horn-f|fr|4||an alto in F is a saxhorn
alto|Eb|alto-horn-e-flat|fr en|9||an alto in E flat is a saxhorn
baritone||baritone-voice|en fr de it es nl|3|voices*30 clef*0.1 band*0.02 brass*0.02|baritone is a voice
baritone||baritone-horn|en nl|3|band*4 brass*6 voices*0.1|the British baritone
baritone||euphonium|en es|2|band*3 brass*0.5 voices*0.1|American bands and Spanish ones call the euphonium baritone
baritone||saxhorn-baritone-b-flat|fr|5|band*5 brass*3 voices*0.05|in French bands baryton is the saxhorn
baritone||bariton-german|de|4|band*5 brass*5 voices*0.1|the German Bariton
baritone||tenorhorn-b-flat|fr|0.3|band*3|some catalogues shift the names of saxhorns by a size
baritone||baritone-saxophone-e-flat|en|0.5|saxophones*3|baritone is short for the baritone saxophone
baritone|Eb|baritone-saxophone-e-flat|en fr de it es nl|3||a baritone in E flat is a saxophone
baritone|Bb|saxhorn-baritone-b-flat|fr|9||a baryton in B flat is the saxhorn
baritone|Bb|baritone-horn|en nl|6||a baritone in B flat is the brass instrument
baritone|Bb|euphonium|fr en it es|2||baryton en si bemol is also said of the euphonium
baritone|C|euphonium|en fr|4||a baritone in C reads the bass clef at pitch
baritone|C|bariton-german|de|4||the German Bariton reads the bass clef at pitch
bass||bass-voice|en fr de it es nl|3|voices*30 clef*0.1 band*0.05 brass*0.02 strings*0.5|bass is a voice
bass||double-bass|en de it nl es|2.5|strings*5 brass*0.05 voices*0.3|bass is short for the double bass
bass||bass-guitar|en|0.8|strings*0.1|bass is short for the bass guitar
bass||tuba|en de it|0.8|band*6 brass*2 strings*0.2|brass bass
bass||saxhorn-bass-b-flat|fr|4|band*8 strings*0.1 voices*0.05|in French bands basse is the bass saxhorn
bass||euphonium|fr|0.8|band*3 voices*0.05|French basse is played on the euphonium
bass||cello|it fr|0.6|strings*2|the basses of a continuo
bass|Eb|e-flat-bass|en fr|5|brass*3|the E flat bass reads the treble clef in brass bands
bass|Eb|bass-tuba-e-flat|de nl en|3|brass*0.3|a bass in E flat at pitch
bass|Eb|saxhorn-contrabass-e-flat|fr|3|brass*0.5|French basses in E flat are contrabass saxhorns
bass|Bb|b-flat-bass|en|5|brass*3|the B flat bass reads the treble clef in brass bands
bass|Bb|saxhorn-bass-b-flat|fr|6||in French bands basse is the bass saxhorn
bass|Bb|contrabass-tuba-b-flat|de nl it en|3|brass*0.3|a bass in B flat at pitch
bass|Bb|euphonium|fr|1||basse en si bemol is also said of the euphonium
bass|F|bass-tuba-f|de it en nl fr es|5||a brass bass in F
bass|C|french-tuba-c|fr|4||the French bass in C reads at pitch
bass|C|contrabass-tuba-c|en de it|3||a brass bass in C
contrabass||double-bass|en fr de it es nl|6|strings*9 band*0.6|the contrabass of the strings
contrabass||saxhorn-contrabass-b-flat|fr es it|1.5|strings*0.02 band*8 brass*8|in French bands contrebasse is the saxhorn
contrabass||saxhorn-contrabass-e-flat|fr|0.7|strings*0.02 band*8 brass*8|in French bands contrebasse is the saxhorn
contrabass||contrabass-tuba-b-flat|fr de nl|0.4|strings*0.1 band*4|some bands call the tuba contrabass
contrabass|Bb|saxhorn-contrabass-b-flat|fr es it|9||a contrabass in B flat is brass: the saxhorn
contrabass|Bb|contrabass-tuba-b-flat|fr de nl es it en|2||a contrabass in B flat is brass: the tuba
contrabass|Eb|saxhorn-contrabass-e-flat|fr es it|9||a contrabass in E flat is brass: the saxhorn
contrabass|Eb|bass-tuba-e-flat|de nl en fr|2||a contrabass in E flat is brass: the tuba
horn tenor||alto-horn-e-flat|en|6|brass*3|the British tenor horn is the alto of the saxhorns
horn tenor||tenorhorn-b-flat|de nl|7||the German Tenorhorn is a baritone
horn tenor|Bb|tenorhorn-b-flat|de nl en|9||a tenor horn in B flat is a baritone
horn tenor|Eb|alto-horn-e-flat|en de nl|9||a tenor horn in E flat is the alto of the saxhorns
bugle||flugelhorn-b-flat|fr nl|8|band*2|French bugle is the flugelhorn
bugle||bugle-b-flat|en|5|band*0.7|English bugle is the signal instrument
bugle|Bb|flugelhorn-b-flat|fr nl|8||French bugle is the flugelhorn
bugle|Bb|bugle-b-flat|en|5||English bugle is the signal instrument
bugle|Eb|petit-bugle-e-flat|fr nl en|5||a bugle in E flat is the small flugelhorn
bugle small||petit-bugle-e-flat|fr nl|9||the small flugelhorn
flugelhorn soprano||flugelhorn-b-flat|it fr|7||the Italian flicorno soprano
flugelhorn soprano||petit-bugle-e-flat|en de es|5||the soprano flugelhorn in E flat
flugelhorn bass||euphonium|it|5||the Italian flicorno basso
flugelhorn bass||saxhorn-bass-b-flat|it|2||the Italian flicorno basso is also the bass saxhorn
flugelhorn bass||tenorhorn-b-flat|de|4||Bassflügelhorn is an Austrian tenor horn
flugelhorn tenor||tenorhorn-b-flat|it es|6||the Italian flicorno tenore
flugelhorn tenor||baritone-horn|it|3||the Italian flicorno tenore is a baritone
flugelhorn baritone||baritone-horn|it|5||the Italian flicorno baritono
flugelhorn baritone||saxhorn-baritone-b-flat|it|2||the Italian flicorno baritono is a saxhorn
flugelhorn baritone||euphonium|it|1.5||the Italian flicorno baritono may be the euphonium
contrabass flugelhorn||saxhorn-contrabass-b-flat|it|8||the Italian flicorno contrabbasso
tuba||tuba|en it es nl de|6||the tuba at pitch
tuba||french-tuba-c|fr|4|strings*3|the French orchestra's tuba is a small one in C
tuba||saxhorn-bass-b-flat|fr|1.5|band*4|French tuba is also the bass saxhorn
tuba||bass-tuba-f|de it|1.2|strings*1.5|the German orchestra's tuba
tuba||contrabass-tuba-b-flat|de|0.8|band*2|the German band's tuba
tuba|Bb|contrabass-tuba-b-flat|en de it es nl|6||a tuba in B flat
tuba|Bb|saxhorn-bass-b-flat|fr|6||French tuba in B flat is the bass saxhorn
tuba|Bb|euphonium|it|2||tuba in B flat is also said of the euphonium
tuba|Bb|b-flat-bass|en|1|brass*9|the B flat bass of the brass band
tuba|Eb|bass-tuba-e-flat|en de it es nl fr|6|brass*0.4|a tuba in E flat
tuba|Eb|e-flat-bass|en|1.5|brass*9|the E flat bass of the brass band
tuba|Eb|saxhorn-contrabass-e-flat|fr|2||French tuba in E flat is the contrabass saxhorn
tuba|F|bass-tuba-f|en de it es nl fr|8||a tuba in F
tuba|C|contrabass-tuba-c|en de|5||a tuba in C
tuba|C|french-tuba-c|fr|6||the French tuba in C
tuba|C|tuba|en it es nl|3||a tuba at pitch
bass tuba||bass-tuba-f|en de it es nl fr|4||the bass tuba in F
bass tuba||bass-tuba-e-flat|en fr|2|band*3|the bass tuba in E flat
bass tuba||tuba|en|1.5||the tuba at pitch
contrabass tuba||contrabass-tuba-b-flat|en de it es nl|4||the contrabass tuba in B flat
contrabass tuba||contrabass-tuba-c|en de|3||the contrabass tuba in C
contrabass tuba||saxhorn-contrabass-b-flat|fr|3|band*3|French tuba contrebasse is also the saxhorn
tenor tuba||euphonium|en it|4|wagner*0.1|orchestral tenor tubas are played on the euphonium
tenor tuba||wagner-tuba-tenor-b-flat|de en|3||the tenor of the Wagner tubas
bombardon||bombardon|en de it es nl|4||the bombardon
bombardon||saxhorn-contrabass-b-flat|fr|3|band*2|French bombardon is the contrabass saxhorn
bombardon||saxhorn-contrabass-e-flat|fr|3|band*2|French bombardon is the contrabass saxhorn
bombardon||bass-tuba-f|de|2||German bombardon is the bass tuba
bombardon|F|bass-tuba-f|de it en fr|6||a bombardon in F
euphonium||euphonium|en fr de it es nl|9||the euphonium
euphonium||saxhorn-bass-b-flat|fr|0.6||French euphonium parts are read by the bass saxhorn
contrabass saxhorn||saxhorn-contrabass-b-flat|fr en de it es nl|3||the contrabass saxhorn in B flat
contrabass saxhorn||saxhorn-contrabass-e-flat|fr en de it es nl|2||the contrabass saxhorn in E flat
bass saxhorn||saxhorn-bass-b-flat|fr en de it es nl|9||the bass saxhorn
bass saxhorn|Eb|saxhorn-contrabass-e-flat|fr en de it es nl|6||a bass saxhorn in E flat is the contrabass
baritone saxhorn||saxhorn-baritone-b-flat|fr en de it es nl|9||the baritone saxhorn
saxhorn tenor||saxhorn-baritone-b-flat|fr|5||French saxhorn ténor is a baritone
saxhorn tenor||alto-horn-e-flat|en|5||British tenor saxhorn is the alto
alto saxhorn||alto-horn-e-flat|fr en de it es nl|9||the alto saxhorn
saxhorn soprano||flugelhorn-b-flat|fr en|7||the soprano saxhorn is the flugelhorn
saxhorn soprano|Eb|petit-bugle-e-flat|fr en|9||a soprano saxhorn in E flat is the small flugelhorn
bass horn||bass-horn|en de nl|5||the upright serpent
bass horn||serpent|it de|3||Italian corno basso is a serpent
bass horn||horn-f|it|2|strings*2|corno basso may be the low horn of a pair
bass horn|any|horn-f|it|5||with a crook corno basso is the low horn of a pair
alto horn||alto-horn-e-flat|en de fr it es nl|8||the alto horn in E flat
alto horn||alto-horn-f|en de|1||the alto horn in F
alto horn||mellophone-f|fr|3||French cor alto is the mellophone
alto horn||horn-f|it fr|2|strings*2|the high horn of a pair
horn||horn-f|en fr de it es nl|7||without a key most horn parts are in F
horn||natural-horn|en fr de it es nl|1.5|strings*1.5 band*0.3|older parts name the crook in the music
horn||horn-e-flat|en fr it|0.7|band*4 brass*4|older bands had horns in E flat
horn|F|horn-f|en fr de it es nl|8||the horn in F
horn|F|natural-horn|en fr de it es nl|1.2||the F crook
horn|Eb|horn-e-flat|en fr de it es nl|5|strings*0.6 band*2|bands had horns in E flat
horn|Eb|natural-horn|en fr de it es nl|3|strings*2 band*0.4|the E flat crook
horn|Eb|horn-f|en fr de it es nl|0.6||a horn in F reads the crook
horn|any|natural-horn|en fr de it es nl|6||a key of crooks
horn|any|horn-f|en fr de it es nl|3||a valve horn reads the crook
trumpet||trumpet-b-flat|en fr de it es nl|6|band*2|without a key most trumpet parts are in B flat
trumpet||trumpet-c|fr en it|2|strings*2|orchestral trumpets read in C
trumpet||natural-trumpet|it de en|1|strings*1.5 band*0.2|older parts name the crook in the music
trumpet||trumpet-f|de en|0.4|strings*1.5|the long valve trumpet in F
trumpet|Bb|trumpet-b-flat|en fr de it es nl|8||the trumpet in B flat
trumpet|Bb|natural-trumpet|de it en fr|0.7||the B flat crook
trumpet|C|trumpet-c|en fr de it es nl|6||the trumpet in C
trumpet|C|natural-trumpet|de it en fr|1.6||the C crook
trumpet|A|trumpet-a|en fr de it es nl|5||the trumpet in A
trumpet|A|natural-trumpet|de it en fr|1||the A crook
trumpet|D|trumpet-d|en fr de it es nl|3||the small trumpet in D
trumpet|D|natural-trumpet|de it en fr es nl|4||the natural trumpet in D
trumpet|Eb|trumpet-e-flat|en fr de it es nl|4|band*2|the trumpet in E flat
trumpet|Eb|natural-trumpet|de it en fr es nl|2.5|band*0.5|the E flat crook
trumpet|Eb|cavalry-trumpet-e-flat|fr de|0.5||the cavalry trumpet
trumpet|F|trumpet-f|en fr de it es nl|4||the long valve trumpet in F
trumpet|F|natural-trumpet|de it en fr es nl|2.5||the F crook
trumpet|F|alto-trumpet-f|en|0.4||the Russian alto trumpet
trumpet|any|natural-trumpet|en fr de it es nl|6||a key of crooks
trumpet|any|trumpet-c|en fr de it es nl|1.5||a valve trumpet reads the crook
trumpet|any|trumpet-b-flat|en fr de it es nl|1.5||a valve trumpet reads the crook
cornet||cornet-b-flat|en fr de it es nl|7||without a key most cornet parts are in B flat
cornet||cornet-a|en fr|0.8|strings*2|orchestral cornets in A
cornet||cornet-c|fr en|0.4||the cornet in C
cornet|Eb|soprano-cornet-e-flat|en fr de it es nl|7||the soprano cornet
cornet|Bb|cornet-b-flat|en fr de it es nl|9||the cornet in B flat
cornet|A|cornet-a|en fr de it es nl|9||the cornet in A
cornet|C|cornet-c|en fr de it es nl|9||the cornet in C
cornet|any|cornet-b-flat|en fr de it es nl|5||the cornet with a crook
cornet|any|cornet-a|en fr de it es nl|1||the cornet with a crook
cornet soprano||soprano-cornet-e-flat|en fr de it es nl|9||the soprano cornet
cornet small||soprano-cornet-e-flat|fr de it es nl|9||the soprano cornet
clarinet||clarinet-b-flat|en fr de it es nl|8|band*3|without a key most clarinet parts are in B flat
clarinet||clarinet-a|en fr de it es nl|1|strings*1.3 band*0.1|orchestral clarinets in A
clarinet||clarinet-c|en fr de it es nl|0.8|band*0.5|older clarinets in C
clarinet|Bb|clarinet-b-flat|en fr de it es nl|9||the clarinet in B flat
clarinet|A|clarinet-a|en fr de it es nl|9||the clarinet in A
clarinet|C|clarinet-c|en fr de it es nl|9||the clarinet in C
clarinet|D|clarinet-d|en fr de it es nl|9||the small clarinet in D
clarinet|Eb|clarinet-e-flat|en fr de it es nl|9||the small clarinet in E flat
clarinet|Eb|alto-clarinet-e-flat|en|0.2||the alto clarinet in E flat
clarinet|Ab|clarinet-a-flat|en fr de it es nl|9||the small clarinet in A flat
clarinet|F|clarinet-f-high|de en fr it|3||the small clarinet in F
clarinet|F|basset-horn|en de it|1||a low clarinet in F
clarinet|F|alto-clarinet-f|en fr de|2||the alto clarinet in F
clarinet|G|clarinet-g-high|de|3||the small clarinet in G
clarinet|G|clarinette-d-amour-g|fr en|1||the low clarinet in G
clarinet small||clarinet-e-flat|en fr de it es nl|8||the small clarinet, in E flat unless said
clarinet small||clarinet-d|en de fr|0.7|strings*1.5|the small clarinet in D
clarinet small||clarinet-a-flat|it de fr|0.3|band*2|the small clarinet in A flat
clarinet piccolo||clarinet-e-flat|en fr de it es nl|8||the small clarinet, in E flat unless said
clarinet piccolo||clarinet-a-flat|it|0.6|band*2|the small clarinet in A flat
requinto||clarinet-e-flat|es|8||the Spanish band's small clarinet
alto clarinet||alto-clarinet-e-flat|en fr de it es nl|8||the alto clarinet in E flat
alto clarinet||alto-clarinet-f|de en|0.8||the alto clarinet in F
bass clarinet||bass-clarinet-b-flat|en fr de it es nl|9||the bass clarinet in B flat
bass clarinet||bass-clarinet-a|en fr de it es nl|0.5||the bass clarinet in A
bass clarinet|A|bass-clarinet-a|en fr de it es nl|9||the bass clarinet in A
contrabass clarinet||contrabass-clarinet-b-flat|en fr de it es nl|8||the contrabass clarinet
clarinet contralto||contra-alto-clarinet-e-flat|en fr|5||the contra-alto clarinet, an octave below the alto
clarinet contralto||alto-clarinet-e-flat|it es|6||Italian and Spanish contralto is the alto clarinet
piccolo||piccolo|en fr de it es nl|9||the piccolo in C
piccolo||piccolo-d-flat|en|0.5|band*4|older bands had piccolos in D flat
piccolo|Db|piccolo-d-flat|en fr de it es nl|9||the piccolo in D flat
piccolo|Eb|piccolo-e-flat|en fr de it es nl|4||a piccolo in E flat as it says
piccolo|Eb|piccolo-d-flat|en|3.5||British parts say E flat of the piccolo that sounds in D flat
piccolo|Eb|clarinet-e-flat|it|4||Italian piccolo in E flat is the small clarinet
flute small||piccolo|en fr de it es nl|9||the small flute is the piccolo
flute small||piccolo-d-flat|fr en|0.5|band*4|older bands had piccolos in D flat
flute small|Db|piccolo-d-flat|en fr de it es nl|9||the piccolo in D flat
flute small|Eb|piccolo-e-flat|fr de en|4||a small flute in E flat as it says
flute small|Eb|piccolo-d-flat|fr en|2||small flutes are named by their lowest note: E flat for D flat
flute small|Eb|flute-e-flat|fr|1||the third flute
flute||flute|en fr de it es nl|9||the flute
flute|G|alto-flute|en fr de it es nl|9||a flute in G is the alto flute
flute|Db|flute-d-flat|en fr de it es nl|6||the band flute in D flat
flute|Db|piccolo-d-flat|en|1||flutes in D flat are mostly piccolos
flute|Eb|flute-e-flat|en fr de it es nl|9||the third flute in E flat
bass flute||bass-flute|en fr de it es nl|6||the bass flute in C
bass flute||alto-flute|en es|1||older British scores call the alto flute bass flute
bass flute|G|alto-flute|en fr de it es nl|9||a bass flute in G is the alto flute of today
bass flute|F|alto-flute|en|5||a bass flute in F is a kind of alto flute
bass flute|C|bass-flute|en fr de it es nl|9||the bass flute in C
tenor||tenor-voice|en fr de it es nl|8|voices*20 clef*0.1 band*0.1|tenor is a voice
tenor||tenor-saxophone-b-flat|en|1|saxophones*6|tenor is short for the tenor saxophone
tenor||viola|en|0.3|strings*1.5|tenor is an old English name of the viola
tenor||trombone-tenor|en|0.3|brass*3|tenor is short for the tenor trombone
tenor||tenorhorn-b-flat|de|0.5|band*4|tenor is short for the Tenorhorn
tenor|Bb|tenor-saxophone-b-flat|en fr|4|saxophones*2|a tenor in B flat is a saxophone
tenor|Bb|tenorhorn-b-flat|de en|3|brass*3|a tenor in B flat is a brass instrument
tenor|Eb|alto-horn-e-flat|en|6||a tenor in E flat is the British tenor horn
soprano||soprano-voice|en fr de it es nl|9|voices*20 clef*0.1 band*0.2 brass*0.02|soprano is a voice
soprano||soprano-saxophone-b-flat|en|1|saxophones*6|soprano is short for the soprano saxophone
soprano||soprano-cornet-e-flat|en|0.3|brass*60|the brass band's soprano is the E flat cornet
soprano|Eb|soprano-cornet-e-flat|en|9||a soprano in E flat is the cornet
soprano|Bb|soprano-saxophone-b-flat|en fr|6||a soprano in B flat is a saxophone
contralto||alto-voice|en it fr es|9|voices*10 clef*0.1 band*0.1|contralto is a voice
contralto||alto-horn-e-flat|it|0.5|band*10|the Italian flicorno contralto
saxophone soprano||soprano-saxophone-b-flat|en fr de it es nl|9||the soprano saxophone
saxophone soprano||soprano-saxophone-c|en|0.3||the soprano saxophone in C
saxophone|Eb|alto-saxophone-e-flat|en fr de it es nl|6||the alto is the usual saxophone in E flat
saxophone|Eb|baritone-saxophone-e-flat|en fr de it es nl|2||the baritone is also in E flat
saxophone|Bb|tenor-saxophone-b-flat|en fr de it es nl|6||the tenor is the usual saxophone in B flat
saxophone|Bb|soprano-saxophone-b-flat|en fr de it es nl|2||the soprano is also in B flat
saxophone|C|c-melody-saxophone|en fr de it es nl|6||the tenor in C
sarrusophone|Eb|sarrusophone-contrabass-e-flat|fr en|4||the contrabass is the usual sarrusophone
sarrusophone|C|sarrusophone-contrabass-c|fr en|8||the orchestra's contrabass in C
contrabass sarrusophone||sarrusophone-contrabass-e-flat|fr en de it es nl|4|band*2|the band's contrabass is in E flat
contrabass sarrusophone||sarrusophone-contrabass-c|fr en|3|strings*4|the orchestra's contrabass is in C
contrabass sarrusophone||sarrusophone-contrabass-b-flat|fr|0.6||the contrabass in B flat
trombone||trombone-tenor|en fr de it es nl|9||without a size the tenor trombone
trombone||bass-trombone|en fr de it es nl|0.8||the lowest of a set is often the bass trombone
trombone||alto-trombone|de it fr|0.5|strings*1.5|the highest of an old set is often the alto
trombone|G|bass-trombone-g|en|9||the British bass trombone
trombone valve||valve-trombone-b-flat|en fr de it es nl|9||the valve trombone
bass trombone||bass-trombone|en fr de it es nl|9||the bass trombone
bass trombone|G|bass-trombone-g|en|9||the British bass trombone in G
bass trombone|F|valve-bass-trombone-f|it de|1.5||the valve bass trombone in F
bass trombone|F|bass-trombone|de en|4||the German bass trombone in F
piccolo trumpet||piccolo-trumpet-b-flat|en fr de it es nl|5||the piccolo trumpet in B flat
piccolo trumpet||piccolo-trumpet-a|en fr de it es nl|3||the same instrument with its A pipe
small trumpet||piccolo-trumpet-b-flat|fr de|3||the piccolo trumpet
small trumpet||trumpet-d|fr de|2||the small trumpet in D
bass trumpet||bass-trumpet-b-flat|en fr de it es nl|4||the bass trumpet in B flat
bass trumpet||bass-trumpet-c|en fr de it es nl|2||the bass trumpet in C
bass trumpet||bass-trumpet-e-flat|en fr de it es nl|2||the bass trumpet in E flat
mellophone||mellophone-f|en fr de it es nl|5||the mellophone in F
mellophone||mellophone-e-flat|en fr de it es nl|2||older mellophones in E flat
ophicleide||ophicleide-c|en fr de it es nl|6||the bass ophicleide in C
ophicleide||ophicleide-b-flat|en fr de it es nl|2||the bass ophicleide in B flat
ophicleide|Bb|ophicleide-b-flat|en fr de it es nl|8||the bass ophicleide in B flat
alto ophicleide||quinticlave-e-flat|en fr de it es nl|8||the alto ophicleide is the quinticlave
oboe||oboe|en fr de it es nl|9||the oboe
oboe|Eb|oboe-e-flat|en fr de it es nl|9||the small oboe in E flat
cornet cornet||cornet-b-flat|fr|9||the cornet à pistons
cornet valve||cornet-b-flat|fr it es|8||the cornet à pistons
cornet valve||cornet-a|fr it|1|strings*2|the cornet à pistons in A
cornet valve|Bb|cornet-b-flat|fr it es|9||the cornet à pistons
cornet valve|A|cornet-a|fr it es|9||the cornet à pistons in A
cornet valve|C|cornet-c|fr it es|9||the cornet à pistons in C
horn valve||horn-f|fr it de|5||the valve horn
horn valve|Eb|horn-e-flat|fr it de|6||the valve horn in E flat
horn valve|F|horn-f|fr it de|9||the valve horn in F
horn valve|any|horn-f|fr it de|6||the valve horn with a crook
trumpet valve||trumpet-f|fr de|3|strings*2|the old valve trumpet was in F
trumpet valve||trumpet-e-flat|fr de|2|band*2|the old valve trumpet of bands was in E flat
bassoon||bassoon|en fr de it es nl|9||the bassoon
violin||violin|en fr de it es nl|9||the violin
viola||viola|en fr de it es nl|9||the viola
cello||cello|en fr de it es nl|9||the cello
flute recorder||treble-recorder|en fr de|3||the recorder
ottavino||piccolo|it es|9||the piccolo in C
ottavino||piccolo-d-flat|it|0.5|band*3|older bands had piccolos in D flat
flute piccolo||piccolo|en fr de it es nl|9||the piccolo in C
flute octave||piccolo|en fr de it es nl|9||the piccolo in C
flute ottavino||piccolo|it|9||the piccolo in C
clarone||bass-clarinet-b-flat|it|9||the bass clarinet
trompe||trompe-de-chasse|fr|6||the hunting horn
flugelhorn||flugelhorn-b-flat|en de it es nl|9||the flugelhorn
flugelhorn||piano|de|1|strings*2 band*0.05|German Flügel is a grand piano
glockenspiel||glockenspiel|en fr de it es nl|9||the glockenspiel
glockenspiel||keyed-glockenspiel|de fr en|0.7|strings*1.5|older orchestral parts ask for one with keys
helicon||helicon|en fr de it es nl|8||the helicon
akkordeon||accordion|de|8||the accordion
soubassophone||sousaphone|fr|8||the sousaphone
fagott russisch||serpent|de|5||the upright serpent
bass english horn||bass-horn|en it de nl|8||the English bass horn
natural horn||natural-horn|en fr de it es nl|8||the natural horn
natural horn||horn-f|en fr de it es nl|1||the natural horn's part on a valve horn
bajon||dulcian|es|8||the Spanish curtal
cornetto||cornetto|it|5|band*0.1|the old cornett
cornetto||cornet-b-flat|it|3|band*6|Italian bands call the cornet so
gamba viola||viola-da-gamba|en fr de it es nl|8||the viola da gamba
bass viol||viola-da-gamba|en|6||the bass viol
bec contrabass flute||contrabass-recorder|fr|8||the contrabass recorder
`
