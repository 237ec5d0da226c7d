/**
 * Labels as scores print them, and how a musician reads them: the likeliest instrument, then key, octave of the
 * crook, desks, number of players (`x4`), rank, clef, `opt`, and others (`or`, `and`, `for`, `doubles`). `?` before the
 * instrument: the label alone does not tell, so nothing may be surer than 0.9. From the catalogue's names,
 * MOLA's abbreviations and the trade's list of labels (part names and cover labels); the rest is common practice.
 */
export const labelTable = `
Flute | flute
Flutes 1 & 2 | flute 1,2
Piccolo | piccolo
Piccolo in D flat | piccolo-d-flat Db
D♭ Piccolo | piccolo-d-flat Db
Eb Piccolo | ?piccolo-e-flat Eb
Alto Flute | alto-flute
Flute in G | alto-flute G
Bass Flute | ?bass-flute
Bass Flute in G | alto-flute G
1st Oboe | oboe 1
Oboes 1.2. | oboe 1,2
English Horn | english-horn
E. Hn. | english-horn
Cor anglais | english-horn
Bassoon 2 | bassoon 2
Bsn. 1 & 2 | bassoon 1,2
Contrabassoon | contrabassoon
Double Bassoon | contrabassoon
Eb Clarinet | clarinet-e-flat Eb
E-flat Clarinet | clarinet-e-flat Eb
1st B♭ Clarinet | clarinet-b-flat Bb 1
Clarinet in Bb 1 | clarinet-b-flat Bb 1
A Clarinet 2 | clarinet-a A 2
Clarinets in A | clarinet-a A
Solo Clarinet in B flat | clarinet-b-flat Bb solo
Alto Clarinet | alto-clarinet-e-flat
Bass Clarinet in B♭ | bass-clarinet-b-flat Bb
B. Cl. | bass-clarinet-b-flat
Contrabass Clarinet | contrabass-clarinet-b-flat
Contra-alto Clarinet in Eb | contra-alto-clarinet-e-flat Eb
Basset Horn in F | basset-horn F
Alto Saxophone 1 | alto-saxophone-e-flat 1
Eb Alto Saxophone | alto-saxophone-e-flat Eb
Tenor Sax | tenor-saxophone-b-flat
Bari Sax | baritone-saxophone-e-flat
Soprano Saxophone in B♭ | soprano-saxophone-b-flat Bb
1st Horn in F | horn-f F 1
F Horn 3 | horn-f F 3
Horns 1-4 | horn-f 1,2,3,4
Horn in E♭ | ?horn-e-flat Eb
D Horn 2 | ?natural-horn D 2
Horn in Bb basso | ?natural-horn Bb basso
Bb (alto) Horn 1 | ?natural-horn Bb alto 1
Horns in C basso | ?natural-horn C basso
Trumpet in B♭ | trumpet-b-flat Bb
Bb Tpt. | trumpet-b-flat Bb
C Trumpet 1 | trumpet-c C 1
Trumpets 1, 2 and 3 | ?trumpet-b-flat 1,2,3
Piccolo Trumpet in A | piccolo-trumpet-a A
1st Cornet in B flat | cornet-b-flat Bb 1
Solo Cornet | ?cornet-b-flat solo
Repiano Cornet | ?cornet-b-flat ripieno
Soprano Cornet | soprano-cornet-e-flat
Flugelhorn | flugelhorn-b-flat
1st Tenor Horn in E flat | alto-horn-e-flat Eb 1
Tenor Horn | ?alto-horn-e-flat
Euphonium (T.C.) | euphonium G2
Euphonium B.C. | euphonium F4
1st Trombone | ?trombone-tenor 1
Trombones 1 & 2 | ?trombone-tenor 1,2
Alto Trombone | alto-trombone
Bass Trombone | bass-trombone
T Trb 1 | trombone-tenor 1
Eb Bass | ?bass-tuba-e-flat Eb
BBb Bass | ?b-flat-bass Bb
Tuba | ?tuba
String Bass | double-bass
Double Bass | double-bass
Violin I | violin 1
Vln. II | violin 2
2nd Violins | violin 2
Violas | viola
Violoncello 3 | cello 3
Vc. | cello
Cello & Bass | cello and double-bass
Timpani | timpani
Snare Drum | snare-drum
S. D. | snare-drum
Bass Drum and Cymbals | bass-drum and cymbals
Crash Cymbals | cymbals
Glockenspiel | glockenspiel
Oboe 3 / English Horn | oboe 3 or english-horn
Flute 3 doubling Piccolo | flute 3 doubles piccolo
Flute (Piccolo) | flute doubles piccolo
Contrabassoon (optional) | contrabassoon opt
Harp ad lib. | harp opt
Bassoon or Bass Clarinet | bassoon or bass-clarinet-b-flat
Bass Clarinet in place of Bassoon | bass-clarinet-b-flat for bassoon
Alto Saxophone (in the absence of Horn) | alto-saxophone-e-flat for horn-f
Tenor Saxophone (play if no Bn.) | tenor-saxophone-b-flat for bassoon
piccolotrumpet1 | ?piccolo-trumpet-b-flat 1
Petite flûte | piccolo
Petite flûte en ré♭ | piccolo-d-flat Db
Pte Fl. réb | piccolo-d-flat Db
1re Flûte | flute 1
1res Flûtes | flute 1
Flûtes 1 et 2 | flute 1,2
Grande flûte | flute
Flûte en sol | alto-flute G
2 Flûtes | flute x2
Deux hautbois | oboe x2
Hautbois I | oboe 1
Htb. 1.2 | oboe 1,2
Cor anglais (ou hautbois) | english-horn or oboe
Basson 1 | bassoon 1
1er et 2e bassons | bassoon 1,2
Bons | bassoon
Contrebasson ad lib. | contrabassoon opt
Petite clarinette en mi♭ | clarinet-e-flat Eb
Pte Cl. mi♭ | clarinet-e-flat Eb
Clarinettes en si♭ | clarinet-b-flat Bb
1res Clarinettes si♭ | clarinet-b-flat Bb 1
2mes Clarinettes en Si bémol | clarinet-b-flat Bb 2
Clarinette solo si b | clarinet-b-flat Bb solo
Clarinette en ut | clarinet-c C
Clarinette en la | clarinet-a A
Clarinette basse | bass-clarinet-b-flat
Clar. basse si♭ | bass-clarinet-b-flat Bb
Saxophone soprano si♭ | soprano-saxophone-b-flat Bb
Saxophones altos mi♭ | alto-saxophone-e-flat Eb
Sax. ténor si♭ | tenor-saxophone-b-flat Bb
Saxophone baryton en mi bémol | baritone-saxophone-e-flat Eb
Saxophone basse | bass-saxophone-b-flat
Sarrusophone contrebasse en ut | sarrusophone-contrabass-c C
Sarrusophone contrebasse mi♭ | sarrusophone-contrabass-e-flat Eb
Sarrusophone baryton mi♭ | sarrusophone-baritone-e-flat Eb
Sarrusophone ténor | sarrusophone-tenor-b-flat
Sarr. basse si♭ | sarrusophone-bass-b-flat Bb
Cors en fa | horn-f F
1er Cor en Mi♭ | ?horn-e-flat Eb 1
Cors en ré | ?natural-horn D
Cors en si♭ grave | ?natural-horn Bb basso
Cors en ut | ?natural-horn C
Cor à pistons en mi♭ | horn-e-flat Eb
Trompette en ut | trumpet-c C
Trompettes I-II en si♭ | trumpet-b-flat Bb 1,2
Trompettes à pistons en fa | trumpet-f F
Cornet à pistons en si♭ | cornet-b-flat Bb
1er Cornet à pistons en La | cornet-a A 1
Pistons si♭ | cornet-b-flat Bb
Petit bugle mi♭ | petit-bugle-e-flat Eb
Bugles 1-2 | ?flugelhorn-b-flat 1,2
Bugle solo si♭ | ?flugelhorn-b-flat Bb solo
Alto | ?alto-voice
Altos mi♭ 1-3 | alto-horn-e-flat Eb 1,2,3
Saxhorn alto en mi♭ | alto-horn-e-flat Eb
Barytons si♭ | ?saxhorn-baritone-b-flat Bb
Baryton en si♭ (clé de fa) | ?saxhorn-baritone-b-flat Bb F4
Baryton clé de sol | ?saxhorn-baritone-b-flat G2
Saxhorn baryton | saxhorn-baritone-b-flat
Saxhorn basse si♭ | saxhorn-bass-b-flat Bb
Basses si♭ (clé de fa) | ?saxhorn-bass-b-flat Bb F4
Basse si b, clé de sol | ?saxhorn-bass-b-flat Bb G2
Contrebasse mi♭ | ?saxhorn-contrabass-e-flat Eb
Contrebasse si♭ (clé de fa) | ?saxhorn-contrabass-b-flat Bb F4
Saxhorn contrebasse si♭ | saxhorn-contrabass-b-flat Bb
Contrebasse à cordes | double-bass
Tuba en ut | ?french-tuba-c C
Ophicléide | ?ophicleide-c
1er Trombone | ?trombone-tenor 1
Trombones 1-2-3 | ?trombone-tenor 1,2,3
Trombone basse | bass-trombone
Cor de chasse | trompe-de-chasse
Violons I | violin 1
1ers Violons | violin 1
Violoncelles | cello
Vlles et C. B. | cello and double-bass
Timbales en ut, sol | timpani C,G
Caisse claire | snare-drum
Grosse caisse et cymbales | bass-drum and cymbals
Tambour de basque | tambourine
3e flûte (prend la petite flûte) | flute 3 doubles piccolo
Basson (à défaut : sarrusophone baryton) | bassoon or sarrusophone-baritone-e-flat
Basson ou saxophone baryton (ad lib.) | bassoon opt or baritone-saxophone-e-flat
Saxophone alto (à défaut de cor) | alto-saxophone-e-flat for horn-f
Hautbois facultatif | oboe opt
kleine Flöte | piccolo
Kl. Fl. | piccolo
1. Flöte | flute 1
2 Flöten | flute x2
2. Flöte | flute 2
Flöte I/II | flute 1,2
Gr. Fl. 1.2 | flute 1,2
zwei Oboen | oboe x2
Oboe I, II | oboe 1,2
Englischhorn (cor anglais) | english-horn
Fagott 1 | bassoon 1
1. u. 2. Fagott | bassoon 1,2
Fg. | bassoon
Kontrafagott | contrabassoon
Kfg. | contrabassoon
Klarinette in B | clarinet-b-flat Bb
1. Klarinette in B | clarinet-b-flat Bb 1
2 Klarinetten in A | clarinet-a A x2
Klar. 1 in Es | clarinet-e-flat Eb 1
Es-Klarinette | clarinet-e-flat Eb
kl. Klar. Es | clarinet-e-flat Eb
Klarinetten in B und A | ?clarinet-b-flat Bb,A
Bassklarinette in B | bass-clarinet-b-flat Bb
Baßklarinette | bass-clarinet-b-flat
Bassetthorn | basset-horn
Altsaxophon in Es | alto-saxophone-e-flat Eb
Tenorsax. | tenor-saxophone-b-flat
Horn in F | horn-f F
4 Hörner in F | horn-f F x4
1. und 2. Horn in Es | ?horn-e-flat Eb 1,2
Hr. in tief B | ?natural-horn Bb basso
Hörner in hoch B | ?natural-horn Bb alto
Horn in H | ?natural-horn B
Hörner zu 2 | ?horn-f x2
Waldhorn in D | ?natural-horn D
Trompete in B | trumpet-b-flat Bb
3 Trompeten in C | trumpet-c C x3
B-Trompete | trumpet-b-flat Bb
Basstrompete in Es | bass-trumpet-e-flat Eb
Kornett in B | cornet-b-flat Bb
Flügelhorn 1 | flugelhorn-b-flat 1
Flügelhörner in B | flugelhorn-b-flat Bb
Althorn in Es | alto-horn-e-flat Eb
Tenorhorn | ?tenorhorn-b-flat
1. Tenorhorn in B | tenorhorn-b-flat Bb 1
Bariton | ?baritone-voice
Bariton im Bassschlüssel | ?bariton-german F4
Tenorhorn (Violinschlüssel) | ?tenorhorn-b-flat G2
3 Posaunen | ?trombone-tenor x3
Altposaune | alto-trombone
Tenorposaune 2 | trombone-tenor 2
Bassposaune | bass-trombone
Tenortuben in B | ?wagner-tuba-tenor-b-flat Bb
F-Tuba | bass-tuba-f F
B-Tuba | ?contrabass-tuba-b-flat Bb
Es-Bass | ?bass-tuba-e-flat Eb
Basstuba | ?bass-tuba-f
Pauken | timpani
Pauken in C, G | timpani C,G
Kleine Trommel | snare-drum
Gr. Trommel u. Becken | bass-drum and cymbals
Schlagzeug | ?snare-drum
1. Violine | violin 1
erste Geige | violin 1
Violinen II | violin 2
Bratschen | viola
Br. | viola
Kontrabass | ?double-bass
Flöten (2. auch kleine Flöte) | flute doubles 2:piccolo
3. Flöte (auch Piccolo) | flute 3 doubles piccolo
Kontrafagott (nicht obligat) | contrabassoon opt
Fagott oder Bassklarinette | bassoon or bass-clarinet-b-flat
Posaune statt Fagott | ?trombone-tenor for bassoon
Ottavino | piccolo
Flauto I | flute 1
2 Flauti | flute x2
Flauto III muta in Ottavino | flute 3 doubles piccolo
Flauto contralto | alto-flute
Oboi | oboe
Oboe d’amore 1 | oboe-d-amore 1
Corno inglese | english-horn
Fagotti I e II | bassoon 1,2
Controfagotto | contrabassoon
Clarinetto piccolo in Mi♭ | clarinet-e-flat Eb
Clarinetto 1º in Si♭ | clarinet-b-flat Bb 1
Clarinetti in Si bemolle | clarinet-b-flat Bb
due clarinetti in la | clarinet-a A x2
Clarinetto in Do | clarinet-c C
Clarone | bass-clarinet-b-flat
Clarinetto basso Sib | bass-clarinet-b-flat Bb
Corno di bassetto | basset-horn
Sassofono contralto in Mi♭ | alto-saxophone-e-flat Eb
Corno I in Fa | horn-f F 1
I. II. Corno in Mi♭ | ?horn-e-flat Eb 1,2
Corni in Si♭ basso | ?natural-horn Bb basso
Corno in Do alto | ?natural-horn C alto
Corni in Re | ?natural-horn D
Tromba in Si♭ | trumpet-b-flat Bb
2 Trombe in Do | trumpet-c C x2
Tbe. in Re | ?natural-trumpet D
Cornetta in Sib | cornet-b-flat Bb
Flicorno soprano Sib | flugelhorn-b-flat Bb
Flicorno sopranino Mib | petit-bugle-e-flat Eb
Flicorno contralto Mib | alto-horn-e-flat Eb
Genis Mib | alto-horn-e-flat Eb
Flicorno tenore | ?tenorhorn-b-flat
Flicorno basso | ?euphonium
3 Tromboni | ?trombone-tenor x3
Trombone basso | bass-trombone
Cimbasso | cimbasso
Timpani in Do-Sol | timpani C,G
Gran cassa e piatti | bass-drum and cymbals
Violino primo | violin 1
Violini II | violin 2
Viole | viola
Violoncelli e Contrabassi | cello and double-bass
Viola d’amore | viola-d-amore
Oboe facoltativo | oboe opt
Fagotto in mancanza di Controfagotto | bassoon for contrabassoon
Flautín | piccolo
Flauta 1ª | flute 1
primera flauta | flute 1
2 Oboes | oboe x2
Corno inglés | english-horn
Fagot 2º | bassoon 2
Requinto Mib | clarinet-e-flat Eb
Clarinete principal | ?clarinet-b-flat
Clarinete 2º en Si♭ | clarinet-b-flat Bb 2
Clarinetes 1º y 2º | ?clarinet-b-flat 1,2
Clarinete bajo | bass-clarinet-b-flat
Saxofón alto Mi♭ | alto-saxophone-e-flat Eb
Saxofón tenor | tenor-saxophone-b-flat
Saxo barítono | baritone-saxophone-e-flat
Trompa 1ª en Fa | horn-f F 1
Trompas en Mi♭ | ?horn-e-flat Eb
Trompeta en do | trumpet-c C
Fliscorno 1º | flugelhorn-b-flat 1
Fliscornos en si bemol | flugelhorn-b-flat Bb
Bombardino | euphonium
Bombardino (clave de fa) | euphonium F4
Trombón 3º | ?trombone-tenor 3
Trombón bajo | bass-trombone
Caja y bombo | snare-drum and bass-drum
Platillos | cymbals
Timbales | timpani
Violines I | violin 1
Violonchelos | cello
Contrabajo | ?double-bass
Oboe (opcional) | oboe opt
Fagot o saxofón barítono | bassoon or baritone-saxophone-e-flat
Clarinete bajo a falta de fagot | bass-clarinet-b-flat for bassoon
Piccolo in des | piccolo-d-flat Db
1e fluit | flute 1
Fluiten 1-2 | flute 1,2
Hobo 1 | oboe 1
Althobo | english-horn
1e klarinet in bes | clarinet-b-flat Bb 1
Klarinetten in bes | clarinet-b-flat Bb
Esklarinet | clarinet-e-flat Eb
Basklarinet | bass-clarinet-b-flat
Fagotten | bassoon
Altsaxofoon 2 | alto-saxophone-e-flat 2
Tenorsaxofoon | tenor-saxophone-b-flat
Hoorn in f | horn-f F
Hoorns 1 en 2 in es | ?horn-e-flat Eb 1,2
Trompet in bes | trumpet-b-flat Bb
Bugel 1 | ?flugelhorn-b-flat 1
Kleine bugel | petit-bugle-e-flat
Althoorn in es | alto-horn-e-flat Eb
Tenortrombone | trombone-tenor
Bastrombone | bass-trombone
Bas in es | ?bass-tuba-e-flat Eb
Kleine trom | snare-drum
Grote trom en bekkens | bass-drum and cymbals
Pauken | timpani
Altviool | viola
Contrabas | ?double-bass
Fagot of basklarinet | bassoon or bass-clarinet-b-flat
Hobo (facultatief) | oboe opt
`
