/**
 * The name to print, its plural and its abbreviation, a line for each instrument and language, each with the
 * sources that print it. `(head)` after a source: only the family noun is attested, we added size or key.
 * MEM: from memory.
 */
export const labelTable = `
id|language|name|plural|abbreviation|nameSource|pluralSource|abbreviationSource
piccolo|en|piccolo|piccolos|Picc.|IAML+NIHON|HUNS|BLAKE
piccolo|fr|petite flûte|petites flûtes|Pte Fl.|IAML+KOE|HUNS|MEM
piccolo|de|kleine Flöte (Pikkolo)|kleine Flöten|kl. Fl. (Picc.)|MIMO+IAML+NIHON|HUNS|CKNA
piccolo|it|ottavino|ottavini|Ott.|IAML+NIHON|HUNS|COLZ
piccolo|es|flautín|flautines|Fltn.|MIMO+IAML|HUNS|MEM
piccolo|nl|piccolo|piccolo’s|Picc.|MIMO|HUNS|MEM
piccolo-d-flat|en|piccolo in D flat|piccolos in D flat|Picc. Db|IAML|HUNS|BLAKE
piccolo-d-flat|fr|petite flûte en ré bémol|petites flûtes en ré bémol|Pte Fl. réb|IAML|HUNS|MEM
piccolo-d-flat|de|kleine Flöte (Pikkolo) in Des|kleine Flöten in Des|kl. Fl. (Picc.) Des|MIMO+IAML|HUNS|CKNA
piccolo-d-flat|it|ottavino in re bemolle|ottavini in re bemolle|Ott. reb|IAML|HUNS|COLZ
piccolo-d-flat|es|flautín en re bemol|flautines en re bemol|Fltn. reb|MIMO+IAML|HUNS|MEM
piccolo-d-flat|nl|piccolo in des|piccolo’s in des|Picc. des|MIMO|HUNS|MEM
piccolo-e-flat|en|piccolo in E flat|piccolos in E flat|Picc. Eb|IAML|HUNS|BLAKE
piccolo-e-flat|fr|petite flûte en mi bémol|petites flûtes en mi bémol|Pte Fl. mib|IAML|HUNS|MEM
piccolo-e-flat|de|kleine Flöte (Pikkolo) in Es|kleine Flöten in Es|kl. Fl. (Picc.) Es|MIMO+IAML|HUNS|CKNA
piccolo-e-flat|it|ottavino in mi bemolle|ottavini in mi bemolle|Ott. mib|IAML|HUNS|COLZ
piccolo-e-flat|es|flautín en mi bemol|flautines en mi bemol|Fltn. mib|MIMO+IAML|HUNS|MEM
piccolo-e-flat|nl|piccolo in es|piccolo’s in es|Picc. es|MIMO|HUNS|MEM
flute|en|flute|flutes|Fl.|MIMO+IAML|MIMO+HUNS|BLAKE+WISE
flute|fr|flûte|flûtes|Fl.|MIMO+IAML+JOHN|MIMO+HUNS|MEM
flute|de|Flöte|Flöten|Fl.|MIMO+IAML+JOHN+MW-WW|MIMO+HUNS|CKNA
flute|it|flauto|flauti|Fl.|MIMO+IAML+JOHN+MW-WW|MIMO+HUNS|COLZ
flute|es|flauta|flautas|Fl.|MIMO+IAML+MW-WW|MIMO+HUNS|MEM
flute|nl|fluit|fluiten|Fl.|MIMO|MIMO+HUNS|MEM
flute-e-flat|en|flute in E flat|flutes in E flat|Fl. Eb|MIMO(head)|HUNS|BLAKE+WISE
flute-e-flat|fr|flûte en mi bémol|flûtes en mi bémol|Fl. mib|MIMO(head)|HUNS|MEM
flute-e-flat|de|Flöte in Es|Flöten in Es|Fl. Es|MIMO(head)|HUNS|CKNA
flute-e-flat|it|flauto in mi bemolle|flauti in mi bemolle|Fl. mib|MIMO(head)|HUNS|COLZ
flute-e-flat|es|flauta en mi bemol|flautas en mi bemol|Fl. mib|MIMO(head)|HUNS|MEM
flute-e-flat|nl|fluit in es|fluiten in es|Fl. es|MIMO(head)|HUNS|MEM
flute-d-flat|en|flute in D flat|flutes in D flat|Fl. Db|MIMO(head)|HUNS|BLAKE+WISE
flute-d-flat|fr|flûte en ré bémol|flûtes en ré bémol|Fl. réb|MIMO(head)|HUNS|MEM
flute-d-flat|de|Flöte in Des|Flöten in Des|Fl. Des|MIMO(head)|HUNS|CKNA
flute-d-flat|it|flauto in re bemolle|flauti in re bemolle|Fl. reb|MIMO(head)|HUNS|COLZ
flute-d-flat|es|flauta en re bemol|flautas en re bemol|Fl. reb|MIMO(head)|HUNS|MEM
flute-d-flat|nl|fluit in des|fluiten in des|Fl. des|MIMO(head)|HUNS|MEM
alto-flute|en|alto flute|alto flutes|A. Fl.|MIMO|HUNS|BLAKE+WISE
alto-flute|fr|flûte alto (flûte basse en sol)|flûtes altos|Fl. alto|MW-WW|HUNS|MEM
alto-flute|de|Altflöte|Altflöten|Altfl.|MIMO+MW-WW|HUNS|MEM
alto-flute|it|flauto contralto|flauti contralti|Fl. c.alto|MEM|HUNS|MEM
alto-flute|es|flauta alto|flautas altos|Fl. alto|MEM|HUNS|MEM
alto-flute|nl|altfluit|altfluiten|Altfl.|MIMO|HUNS|MEM
bass-flute|en|bass flute|bass flutes|B. Fl.|MIMO+IAML|HUNS|BLAKE
bass-flute|fr|flûte basse|flûtes basses|Fl. b.|IAML|HUNS|MEM
bass-flute|de|Bassflöte|Bassflöten|Bfl.|MIMO|HUNS|MEM
bass-flute|it|flauto basso|flauti bassi|Fl. b.|IAML|HUNS|MEM
bass-flute|es|flauta baja|flautas bajas|Fl. b.|MIMO|HUNS|MEM
bass-flute|nl|basfluit|basfluiten|Basfl.|MIMO|HUNS|MEM
contrabass-flute|en|contrabass flute|contrabass flutes|Cb. Fl.|MIMO(head)|HUNS|MEM
contrabass-flute|fr|flûte contrebasse|flûtes contrebasses|Fl. cb.|MIMO(head)|HUNS|MEM
contrabass-flute|de|Kontrabassflöte|Kontrabassflöten|Kbfl.|MIMO(head)|MEM|MEM
contrabass-flute|it|flauto contrabbasso|flauti contrabbassi|Fl. cb.|MIMO(head)|HUNS|MEM
contrabass-flute|es|flauta contrabajo|flautas contrabajo|Fl. cb.|MIMO(head)|HUNS|MEM
contrabass-flute|nl|contrabasfluit|contrabasfluiten|Cbfl.|MIMO(head)|MEM|MEM
fife-b-flat|en|fife|fifes|Fife|MIMO+IAML|HUNS|MEM
fife-b-flat|fr|fifre|fifres|Fif.|MIMO+IAML|HUNS|MEM
fife-b-flat|de|Querpfeife|Querpfeifen|Pf.|MIMO+IAML|MEM|MEM
fife-b-flat|it|piffero|pifferi|Piff.|IAML|HUNS|MEM
fife-b-flat|es|pífano|pífanos|Píf.|IAML|MEM|MEM
fife-b-flat|nl|pijper (fluit)|pijpers|Pijp.|MEM|HUNS|MEM
garklein-recorder|en|garklein recorder|garklein recorders|Rec.|MIMO(head)|MEM|MEM
garklein-recorder|fr|flûte à bec garklein|flûtes à bec garklein|Fl. bec|MIMO(head)|MEM|MEM
garklein-recorder|de|Garkleinblockflöte|Garkleinblockflöten|Blfl.|MIMO(head)|MEM|MEM
garklein-recorder|it|flauto dolce garklein|flauti dolci garklein|Fl. d.|MIMO(head)|MEM|MEM
garklein-recorder|es|flauta dulce garklein|flautas dulces garklein|Fl. d.|IAML(head)|MEM|MEM
garklein-recorder|nl|garkleinblokfluit|garkleinblokfluiten|Blfl.|MIMO(head)|MEM|MEM
sopranino-recorder|en|sopranino recorder|sopranino recorders|Rec.|MIMO|HUNS|MEM
sopranino-recorder|fr|flûte à bec sopranino|flûtes à bec sopranino|Fl. bec|MIMO|MEM|MEM
sopranino-recorder|de|Sopraninoblockflöte|Sopraninoblockflöten|Blfl.|MIMO|MEM|MEM
sopranino-recorder|it|flauto dolce sopranino|flauti dolci sopranino|Fl. d.|MIMO|MEM|MEM
sopranino-recorder|es|flauta dulce sopranino|flautas dulces sopranino|Fl. d.|IAML(head)|MEM|MEM
sopranino-recorder|nl|sopraninoblokfluit|sopraninoblokfluiten|Blfl.|MIMO|MEM|MEM
descant-recorder|en|descant (soprano) recorder|descant (soprano) recorders|Rec.|MIMO|HUNS|MEM
descant-recorder|fr|flûte à bec soprano|flûtes à bec soprano|Fl. bec|MIMO|HUNS|MEM
descant-recorder|de|Sopranblockflöte|Sopranblockflöten|Blfl.|MIMO|MEM|MEM
descant-recorder|it|flauto dolce soprano|flauti dolci soprano|Fl. d.|MIMO|HUNS|MEM
descant-recorder|es|flauta dulce soprano|flautas dulces soprano|Fl. d.|MIMO|HUNS|MEM
descant-recorder|nl|sopraanblokfluit|sopraanblokfluiten|Blfl.|MIMO|MEM|MEM
treble-recorder|en|treble (alto) recorder|treble (alto) recorders|Rec.|MIMO|HUNS|MEM
treble-recorder|fr|flûte à bec alto|flûtes à bec alto|Fl. bec|MIMO|HUNS|MEM
treble-recorder|de|Altblockflöte|Altblockflöten|Blfl.|MIMO|HUNS|MEM
treble-recorder|it|flauto dolce contralto|flauti dolci contralto|Fl. d.|MIMO|HUNS|MEM
treble-recorder|es|flauta dulce contralto|flautas dulces contralto|Fl. d.|MIMO|HUNS|MEM
treble-recorder|nl|altblokfluit|altblokfluiten|Blfl.|MIMO|MEM|MEM
tenor-recorder|en|tenor recorder|tenor recorders|Rec.|MIMO|HUNS|MEM
tenor-recorder|fr|flûte à bec ténor|flûtes à bec ténor|Fl. bec|MIMO|HUNS|MEM
tenor-recorder|de|Tenorblockflöte|Tenorblockflöten|Blfl.|MIMO|MEM|MEM
tenor-recorder|it|flauto dolce tenore|flauti dolci tenore|Fl. d.|MIMO|HUNS|MEM
tenor-recorder|es|flauta dulce tenor|flautas dulces tenor|Fl. d.|IAML(head)|HUNS|MEM
tenor-recorder|nl|tenorblokfluit|tenorblokfluiten|Blfl.|MIMO|MEM|MEM
bass-recorder|en|bass recorder|bass recorders|Rec.|MIMO|HUNS|MEM
bass-recorder|fr|flûte à bec basse|flûtes à bec basse|Fl. bec|MIMO|HUNS|MEM
bass-recorder|de|Bassblockflöte|Bassblockflöten|Blfl.|MIMO|HUNS|MEM
bass-recorder|it|flauto dolce basso|flauti dolci basso|Fl. d.|MIMO|HUNS|MEM
bass-recorder|es|flauta dulce bajo|flautas dulces bajo|Fl. d.|IAML(head)|HUNS|MEM
bass-recorder|nl|basblokfluit|basblokfluiten|Blfl.|MIMO|MEM|MEM
great-bass-recorder|en|great bass recorder|great bass recorders|Rec.|MIMO|HUNS|MEM
great-bass-recorder|fr|flûte à bec grande basse|flûtes à bec grande basse|Fl. bec|MIMO(head)|HUNS|MEM
great-bass-recorder|de|Großbassblockflöte|Großbassblockflöten|Blfl.|MIMO|HUNS|MEM
great-bass-recorder|it|flauto dolce gran basso|flauti dolci gran basso|Fl. d.|MIMO(head)|HUNS|MEM
great-bass-recorder|es|flauta dulce gran bajo|flautas dulces gran bajo|Fl. d.|IAML(head)|HUNS|MEM
great-bass-recorder|nl|grootbasblokfluit|grootbasblokfluiten|Blfl.|MIMO(head)|MEM|MEM
contrabass-recorder|en|contrabass recorder|contrabass recorders|Rec.|MIMO(head)|HUNS|MEM
contrabass-recorder|fr|flûte à bec contrebasse|flûtes à bec contrebasse|Fl. bec|MIMO(head)|HUNS|MEM
contrabass-recorder|de|Subbassblockflöte|Subbassblockflöten|Blfl.|MIMO(head)|HUNS|MEM
contrabass-recorder|it|flauto dolce contrabbasso|flauti dolci contrabbasso|Fl. d.|MIMO(head)|HUNS|MEM
contrabass-recorder|es|flauta dulce contrabajo|flautas dulces contrabajo|Fl. d.|IAML(head)|HUNS|MEM
contrabass-recorder|nl|subbasblokfluit|subbasblokfluiten|Blfl.|MIMO(head)|MEM|MEM
oboe|en|oboe|oboes|Ob.|MIMO+IAML|MIMO+HUNS|BLAKE+WISE
oboe|fr|hautbois|hautbois|Htb.|MIMO+IAML|MIMO+HUNS|MEM
oboe|de|Oboe|Oboen|Ob.|MIMO+IAML|MIMO+HUNS|CKNA
oboe|it|oboe|oboi|Ob.|MIMO+IAML|MIMO+HUNS|COLZ
oboe|es|oboe|oboes|Ob.|MIMO+IAML|MIMO+HUNS|MEM
oboe|nl|hobo|hobo’s|Hob.|MIMO|MIMO+HUNS|MEM
oboe-e-flat|en|oboe in E flat|oboes in E flat|Ob. Eb|MIMO+IAML|MIMO+HUNS|BLAKE+WISE
oboe-e-flat|fr|hautbois en mi bémol|hautbois en mi bémol|Htb. mib|MIMO+IAML+KOE|MIMO+HUNS|MEM
oboe-e-flat|de|Oboe in Es|Oboen in Es|Ob. Es|MIMO+IAML|MIMO+HUNS|CKNA
oboe-e-flat|it|oboe in mi bemolle|oboi in mi bemolle|Ob. mib|MIMO+IAML|MIMO+HUNS|COLZ
oboe-e-flat|es|oboe en mi bemol|oboes en mi bemol|Ob. mib|MIMO+IAML|MIMO+HUNS|MEM
oboe-e-flat|nl|hobo in es|hobo’s in es|Hob. es|MIMO|MIMO+HUNS|MEM
oboe-d-amore|en|oboe d’amore|oboes d’amore|Ob. d’am.|MIMO+IAML|MEM|MEM
oboe-d-amore|fr|hautbois d’amour|hautbois d’amour|Htb. d’am.|MIMO+IAML+KOE|HUNS|MEM
oboe-d-amore|de|Oboe d’amore|Oboen d’amore|Ob. d’am.|MIMO+IAML|MEM|MEM
oboe-d-amore|it|oboe d’amore|oboi d’amore|Ob. d’am.|MIMO+IAML|HUNS|MEM
oboe-d-amore|es|oboe de amor|oboes de amor|Ob. d’am.|MIMO+IAML|HUNS|MEM
oboe-d-amore|nl|oboe d’amore|oboe’s d’amore|Ob. d’am.|MIMO|MEM|MEM
english-horn|en|English horn|English horns|E. Hn. (C. A.)|MIMO+IAML|HUNS|BLAKE+WISE
english-horn|fr|cor anglais|cors anglais|C. A.|MIMO+IAML+KOE|HUNS|MEM
english-horn|de|Englischhorn|Englischhörner|E. H.|MIMO+IAML|HUNS|MEM
english-horn|it|corno inglese|corni inglesi|C. ingl.|MIMO+IAML|HUNS|MEM
english-horn|es|corno inglés|cornos ingleses|C. ing.|IAML+RALV|HUNS|MEM
english-horn|nl|althobo|althobo’s|Althob.|MEM|HUNS|MEM
oboe-da-caccia|en|oboe da caccia|oboes da caccia|Ob. da c.|MIMO+IAML|MEM|MEM
oboe-da-caccia|fr|hautbois de chasse (taille)|hautbois de chasse|Htb. de ch.|MIMO+IAML|HUNS|MEM
oboe-da-caccia|de|Oboe da caccia|Oboen da caccia|Ob. da c.|MIMO|MEM|MEM
oboe-da-caccia|it|oboe da caccia|oboi da caccia|Ob. da c.|MIMO+IAML|HUNS|MEM
oboe-da-caccia|es|oboe da caccia|oboes da caccia|Ob. da c.|MEM|MEM|MEM
oboe-da-caccia|nl|oboe da caccia|oboe’s da caccia|Ob. da c.|MIMO|MEM|MEM
bass-oboe|en|bass oboe|bass oboes|B. Ob.|MIMO|HUNS|BLAKE
bass-oboe|fr|hautbois baryton|hautbois barytons|Htb. bar.|KOE|HUNS|MEM
bass-oboe|de|Bassoboe (Baritonoboe)|Bassoboen|Bob.|MIMO|HUNS|MEM
bass-oboe|it|oboe basso (baritono)|oboi bassi|Ob. b.|MIMO|HUNS|MEM
bass-oboe|es|oboe bajo|oboes bajos|Ob. b.|MIMO|HUNS|MEM
bass-oboe|nl|bashobo|bashobo’s|Bashob.|MIMO|MEM|MEM
heckelphone|en|heckelphone|heckelphones|Heck.|MIMO+IAML|HUNS|WISE
heckelphone|fr|heckelphone|heckelphones|Heck.|MIMO+IAML|MEM|MEM
heckelphone|de|Heckelphon|Heckelphone|Hph.|MIMO+IAML|MEM|MEM
heckelphone|it|heckelphon|heckelphon|Heck.|MIMO+IAML|MEM|MEM
heckelphone|es|heckelfón|heckelfones|Heck.|IAML|MEM|MEM
heckelphone|nl|heckelfoon|heckelfoons|Heck.|MEM|MEM|MEM
bassoon|en|bassoon|bassoons|Bn.|MIMO+IAML|MIMO+HUNS|WISE
bassoon|fr|basson|bassons|Bon.|MIMO+IAML|MIMO+HUNS|MEM
bassoon|de|Fagott|Fagotte|Fg.|MIMO+IAML|MIMO|CKNA
bassoon|it|fagotto|fagotti|Fg.|MIMO+IAML|MIMO+HUNS|COLZ
bassoon|es|fagot|fagotes|Fg.|MIMO+IAML|MIMO|MEM
bassoon|nl|fagot|fagotten|Fg.|MIMO|HUNS|MEM
contrabassoon|en|contrabassoon|contrabassoons|Cbn. (D. Bn.)|IAML|HUNS|WISE
contrabassoon|fr|contrebasson|contrebassons|C. Bon.|MIMO+IAML|HUNS|MEM
contrabassoon|de|Kontrafagott|Kontrafagotte|Kfg.|MIMO+IAML|MEM|MEM
contrabassoon|it|controfagotto|controfagotti|Cfg.|MIMO+IAML|HUNS|MEM
contrabassoon|es|contrafagot|contrafagotes|Cfg.|MIMO+IAML|MEM|MEM
contrabassoon|nl|contrafagot|contrafagotten|Cfg.|MIMO|HUNS|MEM
tenoroon|en|tenoroon|tenoroons|Ten.|MIMO+IAML|MEM|MEM
tenoroon|fr|basson quinte|bassons quintes|Bon. 5te|IAML|HUNS|MEM
tenoroon|de|Tenorfagott (Quintfagott)|Tenorfagotte|Tfg.|IAML|MEM|MEM
tenoroon|it|fagottino|fagottini|Fgno.|IAML|MEM|MEM
tenoroon|es|fagot tenor|fagotes tenores|Fg. ten.|MEM|MEM|MEM
tenoroon|nl|tenorfagot|tenorfagotten|Tfg.|MEM|HUNS|MEM
dulcian|en|dulcian (curtal)|dulcians|Dul.|MIMO+IAML|MEM|MEM
dulcian|fr|basson de la Renaissance (fagot)|bassons de la Renaissance|Fag.|MEM|HUNS|MEM
dulcian|de|Dulzian|Dulziane|Dulz.|MIMO+IAML|MEM|MEM
dulcian|it|dulciana|dulciane|Dulc.|MIMO+IAML|MEM|MEM
dulcian|es|bajón|bajones|Bajón|IAML|HUNS|MEM
dulcian|nl|dulciaan|dulcianen|Dulc.|MIMO|MEM|MEM
clarinet-a-flat|en|small clarinet in A flat|small clarinets in A flat|Cl. Ab|MIMO(head)|HUNS|WISE
clarinet-a-flat|fr|petite clarinette en la bémol|petites clarinettes en la bémol|Pte Cl. lab|KOE|HUNS|MEM
clarinet-a-flat|de|kleine Klarinette in As|kleine Klarinetten in As|kl. Klar. As|MIMO(head)|HUNS|MEM
clarinet-a-flat|it|clarinetto piccolo in la bemolle|clarinetti piccoli in la bemolle|Cl. picc. lab|MIMO(head)|HUNS|MEM
clarinet-a-flat|es|requinto en la bemol|requintos en la bemol|Req. lab|MEM|MEM|MEM
clarinet-a-flat|nl|kleine klarinet in as|kleine klarinetten in as|kl. Klar. as|MIMO(head)|HUNS|MEM
clarinet-g-high|en|small clarinet in G|small clarinets in G|Cl. G|MIMO(head)|HUNS|WISE
clarinet-g-high|fr|petite clarinette en sol|petites clarinettes en sol|Pte Cl. sol|MIMO(head)|HUNS|MEM
clarinet-g-high|de|kleine Klarinette in G|kleine Klarinetten in G|kl. Klar. G|MIMO(head)|HUNS|MEM
clarinet-g-high|it|clarinetto piccolo in sol|clarinetti piccoli in sol|Cl. picc. sol|MIMO(head)|HUNS|MEM
clarinet-g-high|es|requinto en sol|requintos en sol|Req. sol|MEM|MEM|MEM
clarinet-g-high|nl|kleine klarinet in g|kleine klarinetten in g|kl. Klar. g|MIMO(head)|HUNS|MEM
clarinet-f-high|en|small clarinet in F|small clarinets in F|Cl. F|MIMO(head)|HUNS|WISE
clarinet-f-high|fr|petite clarinette en fa|petites clarinettes en fa|Pte Cl. fa|MIMO(head)|HUNS|MEM
clarinet-f-high|de|kleine Klarinette in F|kleine Klarinetten in F|kl. Klar. F|MIMO(head)|HUNS|MEM
clarinet-f-high|it|clarinetto piccolo in fa|clarinetti piccoli in fa|Cl. picc. fa|MIMO(head)|HUNS|MEM
clarinet-f-high|es|requinto en fa|requintos en fa|Req. fa|MEM|MEM|MEM
clarinet-f-high|nl|kleine klarinet in f|kleine klarinetten in f|kl. Klar. f|MIMO(head)|HUNS|MEM
clarinet-e-flat|en|small clarinet in E flat|small clarinets in E flat|Cl. Eb|MIMO(head)|HUNS|WISE
clarinet-e-flat|fr|petite clarinette en mi bémol|petites clarinettes en mi bémol|Pte Cl. mib|KOE|HUNS|MEM
clarinet-e-flat|de|kleine Klarinette in Es|kleine Klarinetten in Es|kl. Klar. Es|MIMO(head)|HUNS|MEM
clarinet-e-flat|it|clarinetto piccolo in mi bemolle|clarinetti piccoli in mi bemolle|Cl. picc. mib|MIMO(head)|HUNS|MEM
clarinet-e-flat|es|requinto en mi bemol|requintos en mi bemol|Req. mib|MEM|MEM|MEM
clarinet-e-flat|nl|kleine klarinet in es|kleine klarinetten in es|kl. Klar. es|MIMO(head)|HUNS|MEM
clarinet-d|en|small clarinet in D|small clarinets in D|Cl. D|MIMO(head)|HUNS|WISE
clarinet-d|fr|petite clarinette en ré|petites clarinettes en ré|Pte Cl. ré|MIMO(head)|HUNS|MEM
clarinet-d|de|kleine Klarinette in D|kleine Klarinetten in D|kl. Klar. D|MIMO(head)|HUNS|MEM
clarinet-d|it|clarinetto piccolo in re|clarinetti piccoli in re|Cl. picc. re|MIMO(head)|HUNS|MEM
clarinet-d|es|requinto en re|requintos en re|Req. re|MEM|MEM|MEM
clarinet-d|nl|kleine klarinet in d|kleine klarinetten in d|kl. Klar. d|MIMO(head)|HUNS|MEM
clarinet-c|en|clarinet in C|clarinets in C|Cl. C|MIMO+IAML|MIMO+HUNS|WISE
clarinet-c|fr|clarinette en ut|clarinettes en ut|Cl. ut|MIMO+IAML|MIMO+HUNS|MEM
clarinet-c|de|Klarinette in C|Klarinetten in C|Klar. C|MIMO+IAML|MIMO+HUNS|MEM
clarinet-c|it|clarinetto in do|clarinetti in do|Cl. do|MIMO+IAML|MIMO+HUNS|COLZ
clarinet-c|es|clarinete en do|clarinetes en do|Cl. do|MIMO+IAML|MIMO+HUNS|MEM
clarinet-c|nl|klarinet in c|klarinetten in c|Klar. c|MIMO|MIMO+HUNS|MEM
clarinet-b-flat|en|clarinet in B flat|clarinets in B flat|Cl. Bb|MIMO+IAML|MIMO+HUNS|WISE
clarinet-b-flat|fr|clarinette en si bémol|clarinettes en si bémol|Cl. sib|MIMO+IAML+EB11+GRV1|MIMO+HUNS|MEM
clarinet-b-flat|de|Klarinette in B|Klarinetten in B|Klar. B|MIMO+IAML+EB11+GRV1|MIMO+HUNS|MEM
clarinet-b-flat|it|clarinetto in si bemolle|clarinetti in si bemolle|Cl. sib|MIMO+IAML+EB11+GRV1|MIMO+HUNS|COLZ
clarinet-b-flat|es|clarinete en si bemol|clarinetes en si bemol|Cl. sib|MIMO+IAML+RALV|MIMO+HUNS|MEM
clarinet-b-flat|nl|klarinet in bes|klarinetten in bes|Klar. bes|MIMO|MIMO+HUNS|MEM
clarinet-a|en|clarinet in A|clarinets in A|Cl. A|MIMO+IAML|MIMO+HUNS|WISE
clarinet-a|fr|clarinette en la|clarinettes en la|Cl. la|MIMO+IAML|MIMO+HUNS|MEM
clarinet-a|de|Klarinette in A|Klarinetten in A|Klar. A|MIMO+IAML|MIMO+HUNS|MEM
clarinet-a|it|clarinetto in la|clarinetti in la|Cl. la|MIMO+IAML|MIMO+HUNS|COLZ
clarinet-a|es|clarinete en la|clarinetes en la|Cl. la|MIMO+IAML+RALV|MIMO+HUNS|MEM
clarinet-a|nl|klarinet in a|klarinetten in a|Klar. a|MIMO|MIMO+HUNS|MEM
basset-clarinet-a|en|basset clarinet in A|basset clarinets in A|Bst. Cl. A|MIMO|HUNS|MEM
basset-clarinet-a|fr|clarinette de basset en la|clarinettes de basset en la|Cl. b. la|MIMO|HUNS|MEM
basset-clarinet-a|de|Bassettklarinette in A|Bassettklarinetten in A|Bkl. A|MIMO|MEM|MEM
basset-clarinet-a|it|clarinetto di bassetto in la|clarinetti di bassetto in la|Cl. b. la|MIMO|HUNS|MEM
basset-clarinet-a|es|clarinete di bassetto en la|clarinetes di bassetto en la|Cl. b. la|MIMO(head)|MEM|MEM
basset-clarinet-a|nl|bassetklarinet in a|bassetklarinetten in a|Bkl. a|MIMO|MEM|MEM
clarinette-d-amour-g|en|clarinette d’amour|clarinettes d’amour|Cl. d’am.|MIMO|MEM|MEM
clarinette-d-amour-g|fr|clarinette d’amour|clarinettes d’amour|Cl. d’am.|MIMO|HUNS|MEM
clarinette-d-amour-g|de|Liebesklarinette|Liebesklarinetten|Lkl.|MIMO|HUNS|MEM
clarinette-d-amour-g|it|clarinetto d’amore|clarinetti d’amore|Cl. d’am.|MIMO|HUNS|MEM
clarinette-d-amour-g|es|clarinete de amor|clarinetes de amor|Cl. d’am.|MIMO|HUNS|MEM
clarinette-d-amour-g|nl|klarinet d’amour|klarinetten d’amour|Kl. d’am.|MEM|MEM|MEM
basset-horn|en|basset horn|basset horns|Bst. Hn.|MIMO+IAML|HUNS|MEM
basset-horn|fr|cor de basset|cors de basset|C. de b.|MIMO+IAML|HUNS|MEM
basset-horn|de|Bassetthorn|Bassetthörner|Bsth.|MIMO+IAML|MEM|MEM
basset-horn|it|corno di bassetto|corni di bassetto|C. di b.|MIMO+IAML|HUNS|MEM
basset-horn|es|corno di bassetto|cornos di bassetto|C. di b.|MIMO+IAML|MEM|MEM
basset-horn|nl|bassethoorn|bassethoorns|Bsth.|MIMO|HUNS|MEM
alto-clarinet-e-flat|en|alto clarinet in E flat|alto clarinets in E flat|A. Cl. Eb|MIMO|HUNS|MEM
alto-clarinet-e-flat|fr|clarinette alto en mi bémol|clarinettes altos en mi bémol|Cl. alto mib|MIMO+KOE|HUNS|MEM
alto-clarinet-e-flat|de|Altklarinette in Es|Altklarinetten in Es|Altkl. Es|MIMO|HUNS|MEM
alto-clarinet-e-flat|it|clarinetto contralto in mi bemolle|clarinetti contralti in mi bemolle|Cl. c.alto mib|MIMO|HUNS|MEM
alto-clarinet-e-flat|es|clarinete alto en mi bemol|clarinetes altos en mi bemol|Cl. alto mib|MEM|HUNS|MEM
alto-clarinet-e-flat|nl|altklarinet in es|altklarinetten in es|Altkl. es|MIMO|MEM|MEM
alto-clarinet-f|en|alto clarinet in F|alto clarinets in F|A. Cl. F|MIMO|HUNS|MEM
alto-clarinet-f|fr|clarinette alto en fa|clarinettes altos en fa|Cl. alto fa|MIMO|HUNS|MEM
alto-clarinet-f|de|Altklarinette in F|Altklarinetten in F|Altkl. F|MIMO|HUNS|MEM
alto-clarinet-f|it|clarinetto contralto in fa|clarinetti contralti in fa|Cl. c.alto fa|MIMO|HUNS|MEM
alto-clarinet-f|es|clarinete alto en fa|clarinetes altos en fa|Cl. alto fa|MEM|HUNS|MEM
alto-clarinet-f|nl|altklarinet in f|altklarinetten in f|Altkl. f|MIMO|MEM|MEM
bass-clarinet-b-flat|en|bass clarinet in B flat|bass clarinets in B flat|B. Cl. Bb|MIMO+IAML|HUNS|BLAKE+WISE
bass-clarinet-b-flat|fr|clarinette basse en si bémol|clarinettes basses en si bémol|Cl. b. sib|MIMO+IAML|HUNS|MEM
bass-clarinet-b-flat|de|Bassklarinette in B|Bassklarinetten in B|Bkl. B|MIMO|HUNS|MEM
bass-clarinet-b-flat|it|clarinetto basso (clarone) in si bemolle|clarinetti bassi in si bemolle|Cl. b. sib|MIMO+IAML|HUNS|COLZ
bass-clarinet-b-flat|es|clarinete bajo en si bemol|clarinetes bajos en si bemol|Cl. b. sib|MIMO+RALV|HUNS|MEM
bass-clarinet-b-flat|nl|basklarinet in bes|basklarinetten in bes|Bkl. bes|MIMO|HUNS|MEM
bass-clarinet-a|en|bass clarinet in A|bass clarinets in A|B. Cl. A|MIMO+IAML|HUNS|BLAKE+WISE
bass-clarinet-a|fr|clarinette basse en la|clarinettes basses en la|Cl. b. la|MIMO+IAML|HUNS|MEM
bass-clarinet-a|de|Bassklarinette in A|Bassklarinetten in A|Bkl. A|MIMO|HUNS|MEM
bass-clarinet-a|it|clarinetto basso (clarone) in la|clarinetti bassi in la|Cl. b. la|MIMO+IAML|HUNS|COLZ
bass-clarinet-a|es|clarinete bajo en la|clarinetes bajos en la|Cl. b. la|MIMO|HUNS|MEM
bass-clarinet-a|nl|basklarinet in a|basklarinetten in a|Bkl. a|MIMO|HUNS|MEM
bass-clarinet-c|en|bass clarinet in C|bass clarinets in C|B. Cl. C|MIMO+IAML|HUNS|BLAKE+WISE
bass-clarinet-c|fr|clarinette basse en ut|clarinettes basses en ut|Cl. b. ut|MIMO+IAML|HUNS|MEM
bass-clarinet-c|de|Bassklarinette in C|Bassklarinetten in C|Bkl. C|MIMO|HUNS|MEM
bass-clarinet-c|it|clarinetto basso (clarone) in do|clarinetti bassi in do|Cl. b. do|MIMO+IAML|HUNS|COLZ
bass-clarinet-c|es|clarinete bajo en do|clarinetes bajos en do|Cl. b. do|MIMO|HUNS|MEM
bass-clarinet-c|nl|basklarinet in c|basklarinetten in c|Bkl. c|MIMO|HUNS|MEM
contra-alto-clarinet-e-flat|en|contra-alto clarinet in E flat|contra-alto clarinets in E flat|Ca. Cl. Eb|MIMO(head)|HUNS|MEM
contra-alto-clarinet-e-flat|fr|clarinette contralto en mi bémol|clarinettes contraltos en mi bémol|Cl. ca. mib|KOE|HUNS|MEM
contra-alto-clarinet-e-flat|de|Kontraaltklarinette in Es|Kontraaltklarinetten in Es|Kakl. Es|MIMO(head)|MEM|MEM
contra-alto-clarinet-e-flat|it|clarinetto contrabbasso in mi bemolle|clarinetti contrabbassi in mi bemolle|Cl. cb. mib|MIMO(head)|HUNS|MEM
contra-alto-clarinet-e-flat|es|clarinete contralto en mi bemol|clarinetes contraltos en mi bemol|Cl. ca. mib|MIMO(head)|HUNS|MEM
contra-alto-clarinet-e-flat|nl|contra-altklarinet in es|contra-altklarinetten in es|Cakl. es|MIMO(head)|MEM|MEM
contrabass-clarinet-b-flat|en|contrabass clarinet in B flat|contrabass clarinets in B flat|Cb. Cl. Bb|MIMO|HUNS|BLAKE
contrabass-clarinet-b-flat|fr|clarinette contrebasse en si bémol|clarinettes contrebasses en si bémol|Cl. cb. sib|MIMO+KOE|HUNS|MEM
contrabass-clarinet-b-flat|de|Kontrabassklarinette in B|Kontrabassklarinetten in B|Kbkl. B|MIMO|MEM|MEM
contrabass-clarinet-b-flat|it|clarinetto contrabbasso in si bemolle|clarinetti contrabbassi in si bemolle|Cl. cb. sib|MIMO|HUNS|MEM
contrabass-clarinet-b-flat|es|clarinete contrabajo en si bemol|clarinetes contrabajos en si bemol|Cl. cb. sib|MIMO|HUNS|MEM
contrabass-clarinet-b-flat|nl|contrabasklarinet in bes|contrabasklarinetten in bes|Cbkl. bes|MIMO|MEM|MEM
tarogato|en|tárogató|tárogatós|Tár.|MEM|MEM|MEM
tarogato|fr|tárogató|tárogatós|Tár.|MEM|MEM|MEM
tarogato|de|Tarogato|Tarogatos|Tar.|MEM|MEM|MEM
tarogato|it|tarogato|tarogati|Tar.|MIMO|MEM|MEM
tarogato|es|tarogato|tarogatos|Tar.|MIMO|MEM|MEM
tarogato|nl|tarogato|tarogato’s|Tar.|MIMO|MEM|MEM
sopranino-saxophone-e-flat|en|sopranino saxophone in E flat|sopranino saxophones in E flat|Sno. Sax. Eb|MIMO(head)|HUNS|MEM
sopranino-saxophone-e-flat|fr|saxophone sopranino en mi bémol|saxophones sopranino en mi bémol|Sax. sno. mib|MIMO(head)|MEM|MEM
sopranino-saxophone-e-flat|de|Sopraninosaxophon in Es|Sopraninosaxophone in Es|Sopraninosax. Es|IAML(head)|MEM|MEM
sopranino-saxophone-e-flat|it|sassofono sopranino in mi bemolle|sassofoni sopranino in mi bemolle|Sax. sno. mib|MIMO(head)|MEM|MEM
sopranino-saxophone-e-flat|es|saxofón sopranino en mi bemol|saxofones sopranino en mi bemol|Sax. sno. mib|MIMO(head)|MEM|MEM
sopranino-saxophone-e-flat|nl|sopraninosaxofoon in es|sopraninosaxofoons in es|sopraninosax. es|MIMO(head)|MEM|MEM
soprano-saxophone-b-flat|en|soprano saxophone in B flat|soprano saxophones in B flat|S. Sax. Bb|MIMO|HUNS|BLAKE
soprano-saxophone-b-flat|fr|saxophone soprano en si bémol|saxophones soprano en si bémol|Sax. sop. sib|MIMO|HUNS|MEM
soprano-saxophone-b-flat|de|Sopransaxophon in B|Sopransaxophone in B|Sopransax. B|MIMO|MEM|MEM
soprano-saxophone-b-flat|it|sassofono soprano in si bemolle|sassofoni soprano in si bemolle|Sax. sop. sib|MIMO|HUNS|MEM
soprano-saxophone-b-flat|es|saxofón soprano en si bemol|saxofones soprano en si bemol|Sax. sop. sib|MIMO+RALV|HUNS|MEM
soprano-saxophone-b-flat|nl|sopraansaxofoon in bes|sopraansaxofoons in bes|sopraansax. bes|MIMO+ZEEL|HUNS|MEM
soprano-saxophone-c|en|soprano saxophone in C|soprano saxophones in C|S. Sax. C|MIMO|HUNS|BLAKE
soprano-saxophone-c|fr|saxophone soprano en ut|saxophones soprano en ut|Sax. sop. ut|MIMO|HUNS|MEM
soprano-saxophone-c|de|Sopransaxophon in C|Sopransaxophone in C|Sopransax. C|MIMO|MEM|MEM
soprano-saxophone-c|it|sassofono soprano in do|sassofoni soprano in do|Sax. sop. do|MIMO|HUNS|MEM
soprano-saxophone-c|es|saxofón soprano en do|saxofones soprano en do|Sax. sop. do|MIMO|HUNS|MEM
soprano-saxophone-c|nl|sopraansaxofoon in c|sopraansaxofoons in c|sopraansax. c|MIMO|HUNS|MEM
mezzo-soprano-saxophone-f|en|mezzo-soprano saxophone in F|mezzo-soprano saxophones in F|Mez. Sax. F|MIMO(head)|HUNS|MEM
mezzo-soprano-saxophone-f|fr|saxophone mezzo-soprano en fa|saxophones mezzo-soprano en fa|Sax. mez. fa|MIMO(head)|HUNS|MEM
mezzo-soprano-saxophone-f|de|Mezzosopransaxophon in F|Mezzosopransaxophone in F|Mezzosopransax. F|IAML(head)|MEM|MEM
mezzo-soprano-saxophone-f|it|sassofono mezzosoprano in fa|sassofoni mezzosoprano in fa|Sax. mez. fa|MIMO(head)|HUNS|MEM
mezzo-soprano-saxophone-f|es|saxofón mezzosoprano en fa|saxofones mezzosoprano en fa|Sax. mez. fa|MIMO(head)|MEM|MEM
mezzo-soprano-saxophone-f|nl|mezzosopraansaxofoon in f|mezzosopraansaxofoons in f|mezzosopraansax. f|MIMO(head)|MEM|MEM
alto-saxophone-e-flat|en|alto saxophone in E flat|alto saxophones in E flat|A. Sax. Eb|MIMO|HUNS|BLAKE
alto-saxophone-e-flat|fr|saxophone alto en mi bémol|saxophones alto en mi bémol|Sax. alto mib|MIMO|HUNS|MEM
alto-saxophone-e-flat|de|Altsaxophon in Es|Altsaxophone in Es|Altsax. Es|MIMO|HUNS|MEM
alto-saxophone-e-flat|it|sassofono contralto in mi bemolle|sassofoni contralto in mi bemolle|Sax. c.alto mib|MIMO|HUNS|MEM
alto-saxophone-e-flat|es|saxofón alto en mi bemol|saxofones alto en mi bemol|Sax. alto mib|RALV|HUNS|MEM
alto-saxophone-e-flat|nl|altsaxofoon in es|altsaxofoons in es|altsax. es|MIMO+ZEEL|HUNS|MEM
c-melody-saxophone|en|C-melody (tenor in C) saxophone|C-melody saxophones|C Mel.|MIMO(head)|HUNS|MEM
c-melody-saxophone|fr|saxophone ténor en ut|saxophones ténors en ut|Sax. t. ut|MIMO(head)|HUNS|MEM
c-melody-saxophone|de|C-Melody-Saxophon|C-Melody-Saxophone|C-Sax.|IAML(head)|MEM|MEM
c-melody-saxophone|it|sassofono tenore in do|sassofoni tenori in do|Sax. t. do|MIMO(head)|HUNS|MEM
c-melody-saxophone|es|saxofón en do|saxofones en do|Sax. do|MIMO(head)|HUNS|MEM
c-melody-saxophone|nl|C-melodiesaxofoon|C-melodiesaxofoons|C-sax.|MIMO(head)|HUNS|MEM
tenor-saxophone-b-flat|en|tenor saxophone in B flat|tenor saxophones in B flat|T. Sax. Bb|MIMO|HUNS|BLAKE
tenor-saxophone-b-flat|fr|saxophone ténor en si bémol|saxophones ténor en si bémol|Sax. tén. sib|MIMO|HUNS|MEM
tenor-saxophone-b-flat|de|Tenorsaxophon in B|Tenorsaxophone in B|Tenorsax. B|MIMO|MEM|MEM
tenor-saxophone-b-flat|it|sassofono tenore in si bemolle|sassofoni tenore in si bemolle|Sax. ten. sib|MIMO|HUNS|MEM
tenor-saxophone-b-flat|es|saxofón tenor en si bemol|saxofones tenor en si bemol|Sax. ten. sib|MIMO|HUNS|MEM
tenor-saxophone-b-flat|nl|tenorsaxofoon in bes|tenorsaxofoons in bes|tenorsax. bes|MIMO+ZEEL|HUNS|MEM
baritone-saxophone-e-flat|en|baritone saxophone in E flat|baritone saxophones in E flat|Bar. Sax. Eb|MIMO|HUNS|MEM
baritone-saxophone-e-flat|fr|saxophone baryton en mi bémol|saxophones baryton en mi bémol|Sax. bar. mib|MIMO|HUNS|MEM
baritone-saxophone-e-flat|de|Baritonsaxophon in Es|Baritonsaxophone in Es|Baritonsax. Es|MIMO|MEM|MEM
baritone-saxophone-e-flat|it|sassofono baritono in mi bemolle|sassofoni baritono in mi bemolle|Sax. bar. mib|MIMO|HUNS|MEM
baritone-saxophone-e-flat|es|saxofón barítono en mi bemol|saxofones barítono en mi bemol|Sax. bar. mib|MIMO|HUNS|MEM
baritone-saxophone-e-flat|nl|baritonsaxofoon in es|baritonsaxofoons in es|baritonsax. es|MIMO+ZEEL|HUNS|MEM
bass-saxophone-b-flat|en|bass saxophone in B flat|bass saxophones in B flat|B. Sax. Bb|MIMO|HUNS|MEM
bass-saxophone-b-flat|fr|saxophone basse en si bémol|saxophones basse en si bémol|Sax. b. sib|MIMO|HUNS|MEM
bass-saxophone-b-flat|de|Basssaxophon in B|Basssaxophone in B|Basssax. B|MIMO|HUNS|MEM
bass-saxophone-b-flat|it|sassofono basso in si bemolle|sassofoni basso in si bemolle|Sax. b. sib|MIMO|HUNS|MEM
bass-saxophone-b-flat|es|saxofón bajo en si bemol|saxofones bajo en si bemol|Sax. b. sib|MIMO|HUNS|MEM
bass-saxophone-b-flat|nl|bassaxofoon in bes|bassaxofoons in bes|bassax. bes|MIMO+ZEEL|MEM|MEM
contrabass-saxophone-e-flat|en|contrabass saxophone in E flat|contrabass saxophones in E flat|Cb. Sax. Eb|MIMO(head)|HUNS|MEM
contrabass-saxophone-e-flat|fr|saxophone contrebasse en mi bémol|saxophones contrebasse en mi bémol|Sax. cb. mib|MIMO(head)|HUNS|MEM
contrabass-saxophone-e-flat|de|Kontrabasssaxophon in Es|Kontrabasssaxophone in Es|Kontrabasssax. Es|IAML(head)|MEM|MEM
contrabass-saxophone-e-flat|it|sassofono contrabbasso in mi bemolle|sassofoni contrabbasso in mi bemolle|Sax. cb. mib|MIMO(head)|HUNS|MEM
contrabass-saxophone-e-flat|es|saxofón contrabajo en mi bemol|saxofones contrabajo en mi bemol|Sax. cb. mib|MIMO(head)|HUNS|MEM
contrabass-saxophone-e-flat|nl|contrabassaxofoon in es|contrabassaxofoons in es|contrabassax. es|MIMO(head)|MEM|MEM
sarrusophone-sopranino-e-flat|en|sopranino sarrusophone in E flat|sopranino sarrusophones in E flat|Sno. Sarr. Eb|MIMO(head)|HUNS|MEM
sarrusophone-sopranino-e-flat|fr|sarrusophone sopranino en mi bémol|sarrusophones sopranino en mi bémol|Sarr. sno. mib|MIMO(head)|MEM|MEM
sarrusophone-sopranino-e-flat|de|Sopraninosarrusophon in Es|Sopraninosarrusophone in Es|Sopraninosarr. Es|MIMO(head)|MEM|MEM
sarrusophone-sopranino-e-flat|it|sarrusofono sopranino in mi bemolle|sarrusofoni sopranino in mi bemolle|Sarr. sno. mib|MIMO(head)|MEM|MEM
sarrusophone-sopranino-e-flat|es|sarrusófono sopranino en mi bemol|sarrusófonos sopranino en mi bemol|Sarr. sno. mib|MIMO(head)|MEM|MEM
sarrusophone-sopranino-e-flat|nl|sopraninosarrusofoon in es|sopraninosarrusofoons in es|sopraninosarr. es|MIMO(head)|MEM|MEM
sarrusophone-soprano-b-flat|en|soprano sarrusophone in B flat|soprano sarrusophones in B flat|S. Sarr. Bb|MIMO(head)|HUNS|MEM
sarrusophone-soprano-b-flat|fr|sarrusophone soprano en si bémol|sarrusophones soprano en si bémol|Sarr. sop. sib|MIMO(head)|MEM|MEM
sarrusophone-soprano-b-flat|de|Sopransarrusophon in B|Sopransarrusophone in B|Sopransarr. B|MIMO(head)|MEM|MEM
sarrusophone-soprano-b-flat|it|sarrusofono soprano in si bemolle|sarrusofoni soprano in si bemolle|Sarr. sop. sib|MIMO(head)|MEM|MEM
sarrusophone-soprano-b-flat|es|sarrusófono soprano en si bemol|sarrusófonos soprano en si bemol|Sarr. sop. sib|MIMO(head)|MEM|MEM
sarrusophone-soprano-b-flat|nl|sopraansarrusofoon in bes|sopraansarrusofoons in bes|sopraansarr. bes|MIMO(head)|MEM|MEM
sarrusophone-alto-e-flat|en|alto sarrusophone in E flat|alto sarrusophones in E flat|A. Sarr. Eb|MIMO(head)|HUNS|MEM
sarrusophone-alto-e-flat|fr|sarrusophone alto en mi bémol|sarrusophones alto en mi bémol|Sarr. alto mib|KOE|MEM|MEM
sarrusophone-alto-e-flat|de|Altsarrusophon in Es|Altsarrusophone in Es|Altsarr. Es|MIMO(head)|MEM|MEM
sarrusophone-alto-e-flat|it|sarrusofono contralto in mi bemolle|sarrusofoni contralto in mi bemolle|Sarr. c.alto mib|MIMO(head)|MEM|MEM
sarrusophone-alto-e-flat|es|sarrusófono alto en mi bemol|sarrusófonos alto en mi bemol|Sarr. alto mib|MIMO(head)|MEM|MEM
sarrusophone-alto-e-flat|nl|altsarrusofoon in es|altsarrusofoons in es|altsarr. es|MIMO(head)|MEM|MEM
sarrusophone-tenor-b-flat|en|tenor sarrusophone in B flat|tenor sarrusophones in B flat|T. Sarr. Bb|MIMO(head)|HUNS|MEM
sarrusophone-tenor-b-flat|fr|sarrusophone ténor en si bémol|sarrusophones ténor en si bémol|Sarr. tén. sib|KOE|MEM|MEM
sarrusophone-tenor-b-flat|de|Tenorsarrusophon in B|Tenorsarrusophone in B|Tenorsarr. B|MIMO(head)|MEM|MEM
sarrusophone-tenor-b-flat|it|sarrusofono tenore in si bemolle|sarrusofoni tenore in si bemolle|Sarr. ten. sib|MIMO(head)|MEM|MEM
sarrusophone-tenor-b-flat|es|sarrusófono tenor en si bemol|sarrusófonos tenor en si bemol|Sarr. ten. sib|MIMO(head)|MEM|MEM
sarrusophone-tenor-b-flat|nl|tenorsarrusofoon in bes|tenorsarrusofoons in bes|tenorsarr. bes|MIMO(head)|MEM|MEM
sarrusophone-baritone-e-flat|en|baritone sarrusophone in E flat|baritone sarrusophones in E flat|Bar. Sarr. Eb|MIMO(head)|HUNS|MEM
sarrusophone-baritone-e-flat|fr|sarrusophone baryton en mi bémol|sarrusophones baryton en mi bémol|Sarr. bar. mib|KOE|MEM|MEM
sarrusophone-baritone-e-flat|de|Baritonsarrusophon in Es|Baritonsarrusophone in Es|Baritonsarr. Es|MIMO(head)|MEM|MEM
sarrusophone-baritone-e-flat|it|sarrusofono baritono in mi bemolle|sarrusofoni baritono in mi bemolle|Sarr. bar. mib|MIMO(head)|MEM|MEM
sarrusophone-baritone-e-flat|es|sarrusófono barítono en mi bemol|sarrusófonos barítono en mi bemol|Sarr. bar. mib|MIMO(head)|MEM|MEM
sarrusophone-baritone-e-flat|nl|baritonsarrusofoon in es|baritonsarrusofoons in es|baritonsarr. es|MIMO(head)|MEM|MEM
sarrusophone-bass-b-flat|en|bass sarrusophone in B flat|bass sarrusophones in B flat|B. Sarr. Bb|MIMO(head)|HUNS|MEM
sarrusophone-bass-b-flat|fr|sarrusophone basse en si bémol|sarrusophones basse en si bémol|Sarr. b. sib|KOE|MEM|MEM
sarrusophone-bass-b-flat|de|Basssarrusophon in B|Basssarrusophone in B|Basssarr. B|MIMO(head)|MEM|MEM
sarrusophone-bass-b-flat|it|sarrusofono basso in si bemolle|sarrusofoni basso in si bemolle|Sarr. b. sib|MIMO(head)|MEM|MEM
sarrusophone-bass-b-flat|es|sarrusófono bajo en si bemol|sarrusófonos bajo en si bemol|Sarr. b. sib|MIMO(head)|MEM|MEM
sarrusophone-bass-b-flat|nl|bassarrusofoon in bes|bassarrusofoons in bes|bassarr. bes|MIMO(head)|MEM|MEM
sarrusophone-contrabass-e-flat|en|contrabass sarrusophone in E flat|contrabass sarrusophones in E flat|Cb. Sarr. Eb|MIMO(head)|HUNS|MEM
sarrusophone-contrabass-e-flat|fr|sarrusophone contrebasse en mi bémol|sarrusophones contrebasse en mi bémol|Sarr. cb. mib|KOE|MEM|MEM
sarrusophone-contrabass-e-flat|de|Kontrabasssarrusophon in Es|Kontrabasssarrusophone in Es|Kontrabasssarr. Es|MIMO(head)|MEM|MEM
sarrusophone-contrabass-e-flat|it|sarrusofono contrabbasso in mi bemolle|sarrusofoni contrabbasso in mi bemolle|Sarr. cb. mib|MIMO(head)|MEM|MEM
sarrusophone-contrabass-e-flat|es|sarrusófono contrabajo en mi bemol|sarrusófonos contrabajo en mi bemol|Sarr. cb. mib|MIMO(head)|MEM|MEM
sarrusophone-contrabass-e-flat|nl|contrabassarrusofoon in es|contrabassarrusofoons in es|contrabassarr. es|MIMO(head)|MEM|MEM
sarrusophone-contrabass-b-flat|en|contrabass sarrusophone in B flat|contrabass sarrusophones in B flat|Cb. Sarr. Bb|MIMO(head)|HUNS|MEM
sarrusophone-contrabass-b-flat|fr|sarrusophone contrebasse en si bémol|sarrusophones contrebasse en si bémol|Sarr. cb. sib|MIMO(head)|MEM|MEM
sarrusophone-contrabass-b-flat|de|Kontrabasssarrusophon in B|Kontrabasssarrusophone in B|Kontrabasssarr. B|MIMO(head)|MEM|MEM
sarrusophone-contrabass-b-flat|it|sarrusofono contrabbasso in si bemolle|sarrusofoni contrabbasso in si bemolle|Sarr. cb. sib|MIMO(head)|MEM|MEM
sarrusophone-contrabass-b-flat|es|sarrusófono contrabajo en si bemol|sarrusófonos contrabajo en si bemol|Sarr. cb. sib|MIMO(head)|MEM|MEM
sarrusophone-contrabass-b-flat|nl|contrabassarrusofoon in bes|contrabassarrusofoons in bes|contrabassarr. bes|MIMO(head)|MEM|MEM
sarrusophone-contrabass-c|en|contrabass sarrusophone in C|contrabass sarrusophones in C|Cb. Sarr. C|MIMO(head)|HUNS|MEM
sarrusophone-contrabass-c|fr|sarrusophone contrebasse en ut|sarrusophones contrebasse en ut|Sarr. cb. ut|MIMO(head)|MEM|MEM
sarrusophone-contrabass-c|de|Kontrabasssarrusophon in C|Kontrabasssarrusophone in C|Kontrabasssarr. C|MIMO(head)|MEM|MEM
sarrusophone-contrabass-c|it|sarrusofono contrabbasso in do|sarrusofoni contrabbasso in do|Sarr. cb. do|MIMO(head)|MEM|MEM
sarrusophone-contrabass-c|es|sarrusófono contrabajo en do|sarrusófonos contrabajo en do|Sarr. cb. do|MIMO(head)|MEM|MEM
sarrusophone-contrabass-c|nl|contrabassarrusofoon in c|contrabassarrusofoons in c|contrabassarr. c|MIMO(head)|MEM|MEM
horn-f|en|horn|horns|Hn.|MIMO+IAML|MIMO+HUNS|BLAKE+WISE
horn-f|fr|cor|cors|Cor|MIMO+IAML|MIMO+HUNS|GDRM
horn-f|de|Horn|Hörner|Hr.|MIMO+IAML|MIMO+HUNS|MEM
horn-f|it|corno|corni|Cor.|MIMO+IAML|MIMO+HUNS|MEM
horn-f|es|trompa|trompas|Tpa.|MIMO+IAML+MW-WW|MIMO+HUNS|MEM
horn-f|nl|hoorn|hoorns|Hrn.|MIMO|MIMO+HUNS|MEM
horn-e-flat|en|horn in E flat|horns in E flat|Hn. Eb|MIMO+IAML|MIMO+HUNS|BLAKE+WISE
horn-e-flat|fr|cor en mi bémol|cors en mi bémol|Cor mib|MIMO+IAML|MIMO+HUNS|GDRM
horn-e-flat|de|Horn in Es|Hörner in Es|Hr. Es|MIMO+IAML|MIMO+HUNS|MEM
horn-e-flat|it|corno in mi bemolle|corni in mi bemolle|Cor. mib|MIMO+IAML|MIMO+HUNS|MEM
horn-e-flat|es|trompa en mi bemol|trompas en mi bemol|Tpa. mib|MIMO+IAML|MIMO+HUNS|MEM
horn-e-flat|nl|hoorn in es|hoorns in es|Hrn. es|MIMO|MIMO+HUNS|MEM
natural-horn|en|natural horn|natural horns|Nat. Hn.|MIMO|HUNS|MEM
natural-horn|fr|cor naturel (cor d’harmonie)|cors naturels|Cor|MIMO|HUNS|MEM
natural-horn|de|Naturhorn (Waldhorn)|Naturhörner|Hr.|MIMO|HUNS|MEM
natural-horn|it|corno naturale|corni naturali|Cor.|MIMO|HUNS|MEM
natural-horn|es|trompa natural|trompas naturales|Tpa.|MIMO|HUNS|MEM
natural-horn|nl|natuurhoorn|natuurhoorns|Hrn.|MEM|HUNS|MEM
trompe-de-chasse|en|hunting horn|hunting horns|Trompe|MIMO+IAML|MIMO+HUNS|MEM
trompe-de-chasse|fr|trompe de chasse|trompes de chasse|Tr. ch.|MIMO+IAML|MIMO+HUNS|MEM
trompe-de-chasse|de|Parforcehorn|Parforcehörner|Pfh.|MEM|MEM|MEM
trompe-de-chasse|it|corno da caccia|corni da caccia|C. da c.|MIMO+IAML|MIMO+HUNS|MEM
trompe-de-chasse|es|trompa de caza|trompas de caza|Tpa. c.|MIMO+IAML|MIMO+HUNS|MEM
trompe-de-chasse|nl|jachthoorn|jachthoorns|Jhrn.|MIMO|MIMO+HUNS|MEM
wagner-tuba-tenor-b-flat|en|tenor Wagner tuba in B flat|tenor Wagner tubas in B flat|T. Tuba (W.) Bb|MIMO(head)|HUNS|MEM
wagner-tuba-tenor-b-flat|fr|tuba wagnérien ténor en si bémol|tubas wagnériens ténors en si bémol|T. W. t. sib|MEM|HUNS|MEM
wagner-tuba-tenor-b-flat|de|Tenortuba (Wagnertuba) in B|Tenortuben in B|T.-Tb. B|MIMO(head)|MEM|MEM
wagner-tuba-tenor-b-flat|it|tuba tenore (Wagner) in si bemolle|tube tenori in si bemolle|T. W. t. sib|MEM|HUNS|MEM
wagner-tuba-tenor-b-flat|es|tuba wagneriana tenor en si bemol|tubas wagnerianas tenores en si bemol|T. W. t. sib|IAML(head)|HUNS|MEM
wagner-tuba-tenor-b-flat|nl|Wagnertuba tenor in bes|Wagnertuba’s tenor in bes|Wt. t. bes|MIMO(head)|MEM|MEM
wagner-tuba-bass-f|en|bass Wagner tuba in F|bass Wagner tubas in F|B. Tuba (W.) F|MIMO(head)|HUNS|MEM
wagner-tuba-bass-f|fr|tuba wagnérien basse en fa|tubas wagnériens basses en fa|B. W. t. fa|MEM|HUNS|MEM
wagner-tuba-bass-f|de|Basstuba (Wagnertuba) in F|Basstuben in F|B.-Tb. F|MIMO(head)|HUNS|MEM
wagner-tuba-bass-f|it|tuba bassa (Wagner) in fa|tube basse in fa|B. W. t. fa|MEM|HUNS|MEM
wagner-tuba-bass-f|es|tuba wagneriana baja en fa|tubas wagnerianas bajas en fa|B. W. t. fa|IAML(head)|HUNS|MEM
wagner-tuba-bass-f|nl|Wagnertuba bas in f|Wagnertuba’s bas in f|Wt. b. f|MIMO(head)|MEM|MEM
mellophone-f|en|mellophone in F|mellophones in F|Mello. F|MIMO|HUNS|MEM
mellophone-f|fr|mellophone en fa|mellophones en fa|Mell. fa|MIMO|MEM|MEM
mellophone-f|de|Mellophon in F|Mellophone in F|Mell. F|MEM|MEM|MEM
mellophone-f|it|mellofono in fa|mellofoni in fa|Mell. fa|MEM|MEM|MEM
mellophone-f|es|melófono en fa|melófonos en fa|Mel. fa|MIMO|MEM|MEM
mellophone-f|nl|mellofoon in f|mellofoons in f|Mell. f|MIMO|MEM|MEM
mellophone-e-flat|en|mellophone in E flat|mellophones in E flat|Mello. Eb|MIMO|HUNS|MEM
mellophone-e-flat|fr|mellophone en mi bémol|mellophones en mi bémol|Mell. mib|MIMO|MEM|MEM
mellophone-e-flat|de|Mellophon in Es|Mellophone in Es|Mell. Es|MEM|MEM|MEM
mellophone-e-flat|it|mellofono in mi bemolle|mellofoni in mi bemolle|Mell. mib|MEM|MEM|MEM
mellophone-e-flat|es|melófono en mi bemol|melófonos en mi bemol|Mel. mib|MIMO|MEM|MEM
mellophone-e-flat|nl|mellofoon in es|mellofoons in es|Mell. es|MIMO|MEM|MEM
posthorn|en|posthorn|posthorns|Posth.|MEM|MEM|MEM
posthorn|fr|cornet de poste|cornets de poste|C. poste|IAML|HUNS|MEM
posthorn|de|Posthorn|Posthörner|Posth.|MIMO+IAML|HUNS|MEM
posthorn|it|cornetta da postiglione|cornette da postiglione|C. post.|IAML|HUNS|MEM
posthorn|es|corneta de posta|cornetas de posta|C. posta|MIMO+IAML|HUNS|MEM
posthorn|nl|posthoorn|posthoorns|Posth.|MIMO|HUNS|MEM
trumpet-b-flat|en|trumpet in B flat|trumpets in B flat|Tpt. Bb|MIMO+IAML|MIMO+HUNS|BLAKE+WISE
trumpet-b-flat|fr|trompette en si bémol|trompettes en si bémol|Tromp. sib|MIMO+IAML|MIMO+HUNS|MEM
trumpet-b-flat|de|Trompete in B|Trompeten in B|Trp. B|MIMO+IAML|MIMO+HUNS|CKNA
trumpet-b-flat|it|tromba in si bemolle|trombe in si bemolle|Tr. (Tbe.) sib|MIMO+IAML|MIMO+HUNS|COLZ
trumpet-b-flat|es|trompeta en si bemol|trompetas en si bemol|Tpta. sib|MIMO+IAML|MIMO+HUNS|MEM
trumpet-b-flat|nl|trompet in bes|trompetten in bes|Trp. bes|MIMO|MIMO+HUNS|MEM
trumpet-c|en|trumpet in C|trumpets in C|Tpt. C|MIMO+IAML|MIMO+HUNS|BLAKE+WISE
trumpet-c|fr|trompette en ut|trompettes en ut|Tromp. ut|MIMO+IAML|MIMO+HUNS|MEM
trumpet-c|de|Trompete in C|Trompeten in C|Trp. C|MIMO+IAML|MIMO+HUNS|CKNA
trumpet-c|it|tromba in do|trombe in do|Tr. (Tbe.) do|MIMO+IAML|MIMO+HUNS|COLZ
trumpet-c|es|trompeta en do|trompetas en do|Tpta. do|MIMO+IAML|MIMO+HUNS|MEM
trumpet-c|nl|trompet in c|trompetten in c|Trp. c|MIMO|MIMO+HUNS|MEM
trumpet-a|en|trumpet in A|trumpets in A|Tpt. A|MIMO+IAML|MIMO+HUNS|BLAKE+WISE
trumpet-a|fr|trompette en la|trompettes en la|Tromp. la|MIMO+IAML|MIMO+HUNS|MEM
trumpet-a|de|Trompete in A|Trompeten in A|Trp. A|MIMO+IAML|MIMO+HUNS|CKNA
trumpet-a|it|tromba in la|trombe in la|Tr. (Tbe.) la|MIMO+IAML|MIMO+HUNS|COLZ
trumpet-a|es|trompeta en la|trompetas en la|Tpta. la|MIMO+IAML|MIMO+HUNS|MEM
trumpet-a|nl|trompet in a|trompetten in a|Trp. a|MIMO|MIMO+HUNS|MEM
trumpet-d|en|trumpet in D|trumpets in D|Tpt. D|MIMO+IAML|MIMO+HUNS|BLAKE+WISE
trumpet-d|fr|trompette en ré|trompettes en ré|Tromp. ré|MIMO+IAML|MIMO+HUNS|MEM
trumpet-d|de|Trompete in D|Trompeten in D|Trp. D|MIMO+IAML|MIMO+HUNS|CKNA
trumpet-d|it|tromba in re|trombe in re|Tr. (Tbe.) re|MIMO+IAML|MIMO+HUNS|COLZ
trumpet-d|es|trompeta en re|trompetas en re|Tpta. re|MIMO+IAML|MIMO+HUNS|MEM
trumpet-d|nl|trompet in d|trompetten in d|Trp. d|MIMO|MIMO+HUNS|MEM
trumpet-e-flat|en|trumpet in E flat|trumpets in E flat|Tpt. Eb|MIMO+IAML|MIMO+HUNS|BLAKE+WISE
trumpet-e-flat|fr|trompette en mi bémol|trompettes en mi bémol|Tromp. mib|MIMO+IAML|MIMO+HUNS|MEM
trumpet-e-flat|de|Trompete in Es|Trompeten in Es|Trp. Es|MIMO+IAML|MIMO+HUNS|CKNA
trumpet-e-flat|it|tromba in mi bemolle|trombe in mi bemolle|Tr. (Tbe.) mib|MIMO+IAML|MIMO+HUNS|COLZ
trumpet-e-flat|es|trompeta en mi bemol|trompetas en mi bemol|Tpta. mib|MIMO+IAML|MIMO+HUNS|MEM
trumpet-e-flat|nl|trompet in es|trompetten in es|Trp. es|MIMO|MIMO+HUNS|MEM
trumpet-f|en|trumpet in F|trumpets in F|Tpt. F|MIMO+IAML|MIMO+HUNS|BLAKE+WISE
trumpet-f|fr|trompette en fa|trompettes en fa|Tromp. fa|MIMO+IAML|MIMO+HUNS|MEM
trumpet-f|de|Trompete in F|Trompeten in F|Trp. F|MIMO+IAML|MIMO+HUNS|CKNA
trumpet-f|it|tromba in fa|trombe in fa|Tr. (Tbe.) fa|MIMO+IAML|MIMO+HUNS|COLZ
trumpet-f|es|trompeta en fa|trompetas en fa|Tpta. fa|MIMO+IAML|MIMO+HUNS|MEM
trumpet-f|nl|trompet in f|trompetten in f|Trp. f|MIMO|MIMO+HUNS|MEM
natural-trumpet|en|natural trumpet|natural trumpets|Nat. Tpt.|MIMO|HUNS|MEM
natural-trumpet|fr|trompette naturelle|trompettes naturelles|Tromp.|MIMO|HUNS|MEM
natural-trumpet|de|Naturtrompete (Clarino)|Naturtrompeten|Trp.|MIMO|HUNS|MEM
natural-trumpet|it|tromba naturale (clarino)|trombe naturali|Tr.|MIMO|HUNS|MEM
natural-trumpet|es|trompeta natural (clarín)|trompetas naturales|Tpta.|MIMO|HUNS|MEM
natural-trumpet|nl|natuurtrompet|natuurtrompetten|Trp.|MIMO|HUNS|MEM
piccolo-trumpet-b-flat|en|piccolo trumpet in B flat|piccolo trumpets in B flat|Picc. Tpt. Bb|MIMO(head)|HUNS|MEM
piccolo-trumpet-b-flat|fr|petite trompette en si bémol|petites trompettes en si bémol|Pte Tromp. sib|MIMO(head)|HUNS|MEM
piccolo-trumpet-b-flat|de|Piccolotrompete in B|Piccolotrompeten in B|Picc.-Trp. B|MIMO(head)|MEM|MEM
piccolo-trumpet-b-flat|it|trombino (tromba piccola) in si bemolle|trombini in si bemolle|Tr. picc. sib|MIMO(head)|HUNS|MEM
piccolo-trumpet-b-flat|es|trompeta piccolo en si bemol|trompetas piccolo en si bemol|Tpta. picc. sib|MIMO(head)|MEM|MEM
piccolo-trumpet-b-flat|nl|piccolotrompet in bes|piccolotrompetten in bes|Picc. Trp. bes|MIMO(head)|MEM|MEM
piccolo-trumpet-a|en|piccolo trumpet in A|piccolo trumpets in A|Picc. Tpt. A|MIMO(head)|HUNS|MEM
piccolo-trumpet-a|fr|petite trompette en la|petites trompettes en la|Pte Tromp. la|MIMO(head)|HUNS|MEM
piccolo-trumpet-a|de|Piccolotrompete in A|Piccolotrompeten in A|Picc.-Trp. A|MIMO(head)|MEM|MEM
piccolo-trumpet-a|it|trombino in la|trombini in la|Tr. picc. la|MEM|HUNS|MEM
piccolo-trumpet-a|es|trompeta piccolo en la|trompetas piccolo en la|Tpta. picc. la|MIMO(head)|MEM|MEM
piccolo-trumpet-a|nl|piccolotrompet in a|piccolotrompetten in a|Picc. Trp. a|MIMO(head)|MEM|MEM
bass-trumpet-b-flat|en|bass trumpet in B flat|bass trumpets in B flat|B. Tpt. Bb|MIMO|HUNS|MEM
bass-trumpet-b-flat|fr|trompette basse en si bémol|trompettes basses en si bémol|Tromp. b. sib|MIMO+KOE|HUNS|MEM
bass-trumpet-b-flat|de|Basstrompete in B|Basstrompeten in B|B.-Trp. B|MIMO|HUNS|MEM
bass-trumpet-b-flat|it|tromba bassa in si bemolle|trombe basse in si bemolle|Tr. b. sib|MIMO|HUNS|MEM
bass-trumpet-b-flat|es|trompeta baja en si bemol|trompetas bajas en si bemol|Tpta. b. sib|MIMO|HUNS|MEM
bass-trumpet-b-flat|nl|bastrompet in bes|bastrompetten in bes|Bastrp. bes|MIMO|MEM|MEM
bass-trumpet-c|en|bass trumpet in C|bass trumpets in C|B. Tpt. C|MIMO|HUNS|MEM
bass-trumpet-c|fr|trompette basse en ut|trompettes basses en ut|Tromp. b. ut|MIMO|HUNS|MEM
bass-trumpet-c|de|Basstrompete in C|Basstrompeten in C|B.-Trp. C|MIMO|HUNS|MEM
bass-trumpet-c|it|tromba bassa in do|trombe basse in do|Tr. b. do|MIMO|HUNS|MEM
bass-trumpet-c|es|trompeta baja en do|trompetas bajas en do|Tpta. b. do|MIMO|HUNS|MEM
bass-trumpet-c|nl|bastrompet in c|bastrompetten in c|Bastrp. c|MIMO|MEM|MEM
bass-trumpet-e-flat|en|bass trumpet in E flat|bass trumpets in E flat|B. Tpt. Eb|MIMO|HUNS|MEM
bass-trumpet-e-flat|fr|trompette basse en mi bémol|trompettes basses en mi bémol|Tromp. b. mib|MIMO|HUNS|MEM
bass-trumpet-e-flat|de|Basstrompete in Es|Basstrompeten in Es|B.-Trp. Es|MIMO|HUNS|MEM
bass-trumpet-e-flat|it|tromba bassa in mi bemolle|trombe basse in mi bemolle|Tr. b. mib|MIMO|HUNS|MEM
bass-trumpet-e-flat|es|trompeta baja en mi bemol|trompetas bajas en mi bemol|Tpta. b. mib|MIMO|HUNS|MEM
bass-trumpet-e-flat|nl|bastrompet in es|bastrompetten in es|Bastrp. es|MIMO|MEM|MEM
alto-trumpet-f|en|alto trumpet in F|alto trumpets in F|A. Tpt. F|MIMO(head)|HUNS|MEM
alto-trumpet-f|fr|trompette alto en fa|trompettes altos en fa|Tromp. alto fa|MIMO(head)|HUNS|MEM
alto-trumpet-f|de|Alttrompete in F|Alttrompeten in F|Alt-Trp. F|MIMO(head)|HUNS|MEM
alto-trumpet-f|it|tromba contralta in fa|trombe contralte in fa|Tr. c.alta fa|MIMO(head)|MEM|MEM
alto-trumpet-f|es|trompeta alto en fa|trompetas altos en fa|Tpta. alto fa|MIMO(head)|HUNS|MEM
alto-trumpet-f|nl|alttrompet in f|alttrompetten in f|Alttrp. f|MIMO(head)|MEM|MEM
cavalry-trumpet-e-flat|en|cavalry trumpet in E flat|cavalry trumpets in E flat|Cav. Tpt. Eb|MIMO(head)|HUNS|MEM
cavalry-trumpet-e-flat|fr|trompette de cavalerie en mi bémol|trompettes de cavalerie en mi bémol|Tromp. cav. mib|MIMO(head)|HUNS|MEM
cavalry-trumpet-e-flat|de|Kavallerietrompete (Signaltrompete) in Es|Kavallerietrompeten in Es|Kav.-Trp. Es|MIMO(head)|HUNS|MEM
cavalry-trumpet-e-flat|it|tromba da cavalleria in mi bemolle|trombe da cavalleria in mi bemolle|Tr. cav. mib|MIMO(head)|HUNS|MEM
cavalry-trumpet-e-flat|es|trompeta de caballería en mi bemol|trompetas de caballería en mi bemol|Tpta. cab. mib|MIMO(head)|HUNS|MEM
cavalry-trumpet-e-flat|nl|cavalerietrompet in es|cavalerietrompetten in es|Cav. Trp. es|MIMO(head)|HUNS|MEM
bugle-b-flat|en|bugle|bugles|Bgl.|MIMO+IAML|MIMO+HUNS|MEM
bugle-b-flat|fr|clairon|clairons|Clairon|MIMO+IAML|MIMO+HUNS|MEM
bugle-b-flat|de|Signalhorn|Signalhörner|Sigh.|IAML|HUNS|MEM
bugle-b-flat|it|tromba da segnale|trombe da segnale|Tr. segn.|MEM|HUNS|MEM
bugle-b-flat|es|corneta de órdenes|cornetas de órdenes|Corn.|MEM|HUNS|MEM
bugle-b-flat|nl|klaroen|klaroenen|Klar.|MIMO|HUNS|MEM
keyed-bugle-b-flat|en|keyed bugle|keyed bugles|K. Bgl.|MIMO+IAML|HUNS|MEM
keyed-bugle-b-flat|fr|bugle à clefs|bugles à clefs|Bug. clefs|IAML|HUNS|MEM
keyed-bugle-b-flat|de|Klappenflügelhorn|Klappenflügelhörner|Klflgh.|IAML|HUNS|MEM
keyed-bugle-b-flat|it|bugle a chiavi|bugles a chiavi|Bug. ch.|MEM|MEM|MEM
keyed-bugle-b-flat|es|bugle de llaves|bugles de llaves|Bug. ll.|IAML|HUNS|MEM
keyed-bugle-b-flat|nl|kleppenbugel|kleppenbugels|Klbgl.|MIMO|MEM|MEM
soprano-cornet-e-flat|en|soprano cornet in E flat|soprano cornets in E flat|Sop. Cnt. Eb|MIMO(head)|HUNS|MEM
soprano-cornet-e-flat|fr|petit cornet en mi bémol|petits cornets en mi bémol|Pt C. à p. mib|KOE|HUNS|MEM
soprano-cornet-e-flat|de|Piccolokornett in Es|Piccolokornette in Es|Picc.-Korn. Es|MIMO(head)|MEM|MEM
soprano-cornet-e-flat|it|cornettino in mi bemolle|cornettini in mi bemolle|Cttno. mib|MEM|MEM|MEM
soprano-cornet-e-flat|es|cornetín soprano en mi bemol|cornetines sopranos en mi bemol|Cntín. mib|MIMO(head)|HUNS|MEM
soprano-cornet-e-flat|nl|escornet in es|escornetten in es|Esc. es|MIMO(head)|MEM|MEM
cornet-b-flat|en|cornet in B flat|cornets in B flat|Cnt. Bb|MIMO+IAML|MIMO+HUNS|WISE
cornet-b-flat|fr|cornet à pistons en si bémol|cornets à pistons en si bémol|C. à p. sib|MIMO+IAML|MIMO+HUNS|GDRM
cornet-b-flat|de|Kornett in B|Kornette in B|Korn. B|MIMO+IAML|MIMO|MEM
cornet-b-flat|it|cornetta in si bemolle|cornette in si bemolle|Ctta. sib|MIMO+IAML|MIMO+HUNS|MEM
cornet-b-flat|es|cornetín en si bemol|cornetines en si bemol|Cntín. sib|MIMO+IAML|MIMO+HUNS|MEM
cornet-b-flat|nl|cornet in bes|cornetten in bes|Cnt. bes|MIMO|MIMO|MEM
cornet-a|en|cornet in A|cornets in A|Cnt. A|MIMO+IAML|MIMO+HUNS|WISE
cornet-a|fr|cornet à pistons en la|cornets à pistons en la|C. à p. la|MIMO+IAML|MIMO+HUNS|GDRM
cornet-a|de|Kornett in A|Kornette in A|Korn. A|MIMO+IAML|MIMO|MEM
cornet-a|it|cornetta in la|cornette in la|Ctta. la|MIMO+IAML|MIMO+HUNS|MEM
cornet-a|es|cornetín en la|cornetines en la|Cntín. la|MIMO+IAML|MIMO+HUNS|MEM
cornet-a|nl|cornet in a|cornetten in a|Cnt. a|MIMO|MIMO|MEM
cornet-c|en|cornet in C|cornets in C|Cnt. C|MIMO+IAML|MIMO+HUNS|WISE
cornet-c|fr|cornet à pistons en ut|cornets à pistons en ut|C. à p. ut|MIMO+IAML|MIMO+HUNS|GDRM
cornet-c|de|Kornett in C|Kornette in C|Korn. C|MIMO+IAML|MIMO|MEM
cornet-c|it|cornetta in do|cornette in do|Ctta. do|MIMO+IAML|MIMO+HUNS|MEM
cornet-c|es|cornetín en do|cornetines en do|Cntín. do|MIMO+IAML|MIMO+HUNS|MEM
cornet-c|nl|cornet in c|cornetten in c|Cnt. c|MIMO|MIMO|MEM
cornetto|en|cornett|cornetts|Ctt.|MIMO+IAML|MIMO+HUNS|MEM
cornetto|fr|cornet à bouquin|cornets à bouquin|C. à b.|MIMO+IAML|MIMO+HUNS|MEM
cornetto|de|Zink|Zinken|Zk.|MIMO+IAML|MIMO+HUNS|MEM
cornetto|it|cornetto|cornetti|Ctto.|MIMO+IAML|MIMO+HUNS|MEM
cornetto|es|corneta renacentista|cornetas|Corn.|IAML|MIMO+HUNS|MEM
cornetto|nl|zink|zinken|Zk.|MIMO|MIMO+HUNS|MEM
tenor-cornett|en|tenor cornett (lysard)|tenor cornetts|T. Ctt.|MIMO|HUNS|MEM
tenor-cornett|fr|cornet ténor|cornets ténors|C. tén.|MEM|HUNS|MEM
tenor-cornett|de|Tenorzink|Tenorzinken|Tzk.|MIMO|MEM|MEM
tenor-cornett|it|cornetto tenore|cornetti tenori|Ctto. ten.|MIMO|HUNS|MEM
tenor-cornett|es|corneta tenor|cornetas tenores|Corn. ten.|MIMO|HUNS|MEM
tenor-cornett|nl|tenorzink|tenorzinken|Tzk.|MIMO|MEM|MEM
petit-bugle-e-flat|en|E flat soprano saxhorn|E flat soprano saxhorns|Sop. Sxh.|MIMO(head)|HUNS|MEM
petit-bugle-e-flat|fr|petit bugle|petits bugles|Pt Bug.|MIMO+IAML+WID-I+KOE|HUNS|MEM
petit-bugle-e-flat|de|Piccolo-Flügelhorn|Piccolo-Flügelhörner|Picc.-Flgh.|MEM|MEM|MEM
petit-bugle-e-flat|it|flicorno sopranino|flicorni sopranini|Flic. sopr.no|IAML+VENZ|MEM|MEM
petit-bugle-e-flat|es|fliscorno soprano (requinto)|fliscornos sopranos|Flis.|MEM|MEM|MEM
petit-bugle-e-flat|nl|kleine bugel (piston)|kleine bugels|kl. Bgl.|MEM|HUNS|MEM
flugelhorn-b-flat|en|flugelhorn in B flat|flugelhorns in B flat|Flug. Bb|MIMO+IAML|MIMO+HUNS|MEM
flugelhorn-b-flat|fr|bugle en si bémol|bugles en si bémol|Bug. sib|MIMO+IAML+WID-I+KOE|MIMO+HUNS|MEM
flugelhorn-b-flat|de|Flügelhorn in B|Flügelhörner in B|Flgh. B|MIMO+IAML|MIMO+HUNS|MEM
flugelhorn-b-flat|it|flicorno soprano in si bemolle|flicorni soprani in si bemolle|Flic. sop. sib|MIMO+IAML+VENZ|HUNS|MEM
flugelhorn-b-flat|es|fliscorno en si bemol|fliscornos en si bemol|Flis. sib|MEM|MEM|MEM
flugelhorn-b-flat|nl|bugel in bes|bugels in bes|Bgl. bes|MIMO+ZEEL|MIMO+HUNS|MEM
alto-horn-e-flat|en|tenor horn (alto horn) in E flat|tenor horns in E flat|T. Hn. Eb|MIMO+IAML+GRV2B+GRV2T+WPTH|HUNS|MEM
alto-horn-e-flat|fr|saxhorn alto en mi bémol|saxhorns altos en mi bémol|Alto mib|MIMO+IAML+GRV2T+WPTH|HUNS|MEM
alto-horn-e-flat|de|Althorn in Es|Althörner in Es|Alth. Es|MIMO+IAML+GRV2T+WPTH|HUNS|MEM
alto-horn-e-flat|it|flicorno contralto (genis) in mi bemolle|flicorni contralti in mi bemolle|Flic. c.alto mib|MIMO+IAML+GRV2T+WPTH+VENZ+BARL|HUNS|MEM
alto-horn-e-flat|es|saxhorn alto (onoven) en mi bemol|saxhornos altos en mi bemol|Onov. mib|MEM|MEM|MEM
alto-horn-e-flat|nl|althoorn in es|althoorns in es|Alth. es|MIMO+WPTH+ZEEL|HUNS|MEM
alto-horn-f|en|alto horn in F|alto horns in F|A. Hn. F|MIMO|HUNS|MEM
alto-horn-f|fr|saxhorn alto en fa|saxhorns altos en fa|Alto fa|MIMO+IAML|HUNS|MEM
alto-horn-f|de|Althorn in F|Althörner in F|Alth. F|MIMO+IAML|HUNS|MEM
alto-horn-f|it|flicorno contralto in fa|flicorni contralti in fa|Flic. c.alto fa|IAML|HUNS|MEM
alto-horn-f|es|saxhorn alto en fa|saxhornos altos en fa|Sxh. a. fa|MEM|MEM|MEM
alto-horn-f|nl|althoorn in f|althoorns in f|Alth. f|MIMO|HUNS|MEM
tenorhorn-b-flat|en|German tenor horn in B flat|German tenor horns in B flat|Tenorh. Bb|MEM|HUNS|MEM
tenorhorn-b-flat|fr|bugle ténor en si bémol|bugles ténors en si bémol|Bug. t. sib|IAML|HUNS|MEM
tenorhorn-b-flat|de|Tenorhorn (Bassflügelhorn) in B|Tenorhörner in B|Th. B|MIMO+IAML+GRV2B+ITWPT+HARL|MEM|MEM
tenorhorn-b-flat|it|flicorno tenore in si bemolle|flicorni tenori in si bemolle|Flic. ten. sib|MIMO+IAML+GRV2B+ITWPT+VENZ|HUNS|MEM
tenorhorn-b-flat|es|fliscorno tenor en si bemol|fliscornos tenores en si bemol|Flis. t. sib|MEM|MEM|MEM
tenorhorn-b-flat|nl|tenorhoorn in bes|tenorhoorns in bes|Th. bes|ZEEL|HUNS|MEM
baritone-horn|en|baritone|baritones|Bar.|IAML+GRV2B|HUNS|MEM
baritone-horn|fr|baryton|barytons|Bar.|IAML|HUNS|MEM
baritone-horn|de|Baritonhorn|Baritonhörner|Bar.|MEM|MEM|MEM
baritone-horn|it|flicorno tenore|flicorni tenori|Flic. ten.|IAML+GRV2B|HUNS|MEM
baritone-horn|es|barítono|barítonos|Bar.|MEM|HUNS|MEM
baritone-horn|nl|bariton|baritons|Bar.|ZEEL|HUNS|MEM
saxhorn-baritone-b-flat|en|B flat baritone saxhorn|B flat baritone saxhorns|Bar. Sxh.|MIMO|HUNS|MEM
saxhorn-baritone-b-flat|fr|saxhorn baryton|saxhorns barytons|Bar.|MIMO+IAML|HUNS|MEM
saxhorn-baritone-b-flat|de|Tenorhorn|Tenorhörner|Th.|MEM|MEM|MEM
saxhorn-baritone-b-flat|it|flicorno tenore|flicorni tenori|Flic. ten.|MEM|HUNS|MEM
saxhorn-baritone-b-flat|es|saxhorn barítono|saxhornos barítonos|Sxh. bar.|MIMO|MEM|MEM
saxhorn-baritone-b-flat|nl|bariton|baritons|Bar.|MEM|HUNS|MEM
euphonium|en|euphonium|euphoniums|Euph.|MIMO+IAML|HUNS|BLAKE+WISE
euphonium|fr|euphonium (basse si bémol)|euphoniums|Euph.|MIMO+IAML|MEM|MEM
euphonium|de|Euphonium|Euphonien|Euph.|MIMO+IAML|MEM|MEM
euphonium|it|eufonio (bombardino)|eufoni|Euf.|MIMO+IAML+GRV2B+BOFF+AMI|HUNS|MEM
euphonium|es|bombardino|bombardinos|Bomb.|MIMO+IAML|HUNS|MEM
euphonium|nl|eufonium|eufoniums|Euf.|ZEEL|MEM|MEM
bariton-german|en|German baritone|German baritones|Bar.|MEM|HUNS|MEM
bariton-german|fr|baryton allemand|barytons allemands|Bar. all.|MEM|HUNS|MEM
bariton-german|de|Bariton|Baritone|Bar.|MIMO+IAML+GRV2B+HARL|HUNS|MEM
bariton-german|it|flicorno baritono|flicorni baritoni|Flic. bar.|MIMO+IAML|HUNS|MEM
bariton-german|es|barítono|barítonos|Bar.|MEM|HUNS|MEM
bariton-german|nl|bariton|baritons|Bar.|MEM|HUNS|MEM
saxhorn-bass-b-flat|en|B flat bass saxhorn|B flat bass saxhorns|B. Sxh.|MIMO|HUNS|MEM
saxhorn-bass-b-flat|fr|saxhorn basse (basse, tuba si bémol)|saxhorns basses|Basse|MIMO+GRV2B+BREN|HUNS|MEM
saxhorn-bass-b-flat|de|Kaiserbariton|Kaiserbaritone|Kbar.|MEM|HUNS|MEM
saxhorn-bass-b-flat|it|flicorno basso|flicorni bassi|Flic. b.|VENZ|HUNS|MEM
saxhorn-bass-b-flat|es|saxhorn bajo (bombardino)|saxhornos bajos|Bomb.|MIMO|MEM|MEM
saxhorn-bass-b-flat|nl|bas-saxhoorn (euphonium)|bas-saxhoorns|Bas|MIMO(head)|HUNS|MEM
french-tuba-c|en|French C tuba|French C tubas|Tuba (Fr.)|MEM|HUNS|MEM
french-tuba-c|fr|tuba en ut à six pistons (saxhorn basse en ut)|tubas en ut|Tuba|MEM|MIMO+HUNS|MEM
french-tuba-c|de|französische C-Tuba|französische C-Tuben|Tb.|MEM|HUNS|MEM
french-tuba-c|it|tuba francese in do|tube francesi|Tuba|MEM|HUNS|MEM
french-tuba-c|es|tuba francesa|tubas francesas|Tuba|MEM|HUNS|MEM
french-tuba-c|nl|Franse tuba|Franse tuba’s|Tuba|MEM|HUNS|MEM
saxhorn-contrabass-e-flat|en|E flat contrabass saxhorn|E flat contrabass saxhorns|Eb Cb. Sxh.|MIMO|HUNS|MEM
saxhorn-contrabass-e-flat|fr|contrebasse en mi bémol (bombardon)|contrebasses|C. B. mib|BREN|HUNS|MEM
saxhorn-contrabass-e-flat|de|Es-Bass|Es-Bässe|Es-B.|MEM|HUNS|MEM
saxhorn-contrabass-e-flat|it|flicorno basso grave|flicorni bassi gravi|Flic. b. gr.|GRV2B+VENZ|HUNS|MEM
saxhorn-contrabass-e-flat|es|contrabajo en mi bemol|contrabajos|Cb. mib|MEM|HUNS|MEM
saxhorn-contrabass-e-flat|nl|esbas|esbassen|Esb.|MEM|MEM|MEM
saxhorn-contrabass-b-flat|en|B flat contrabass saxhorn|B flat contrabass saxhorns|BBb Sxh.|MIMO|HUNS|MEM
saxhorn-contrabass-b-flat|fr|contrebasse en si bémol|contrebasses en si bémol|C. B. sib|MEM|HUNS|MEM
saxhorn-contrabass-b-flat|de|B-Bass (Kontrabass)|B-Bässe|B-B.|MEM|HUNS|MEM
saxhorn-contrabass-b-flat|it|flicorno contrabbasso|flicorni contrabbassi|Flic. cb.|VENZ|HUNS|MEM
saxhorn-contrabass-b-flat|es|contrabajo en si bemol|contrabajos|Cb. sib|MEM|HUNS|MEM
saxhorn-contrabass-b-flat|nl|besbas|besbassen|Besb.|MEM|MEM|MEM
tuba|en|tuba|tubas|Tba.|MIMO+IAML|MIMO+HUNS|WISE
tuba|fr|tuba|tubas|Tuba|MIMO+IAML|MIMO+HUNS|MEM
tuba|de|Tuba|Tuben|Tb.|MIMO+IAML|MIMO+HUNS|CKNA
tuba|it|tuba|tube|Tuba|MIMO+IAML|MIMO+HUNS|MEM
tuba|es|tuba|tubas|Tuba|MIMO+IAML|MIMO+HUNS|MEM
tuba|nl|tuba|tuba’s|Tuba|MIMO|MIMO+HUNS|MEM
bass-tuba-f|en|bass tuba|bass tubas|B. Tba.|MIMO+IAML|HUNS|MEM
bass-tuba-f|fr|tuba basse|tubas basses|Tuba b.|MIMO|HUNS|MEM
bass-tuba-f|de|Basstuba|Basstuben|B.-Tb.|MIMO+IAML|HUNS|MEM
bass-tuba-f|it|tuba bassa|tube basse|Tuba b.|MIMO(head)|HUNS|MEM
bass-tuba-f|es|tuba baja|tubas bajas|Tuba b.|MIMO|HUNS|MEM
bass-tuba-f|nl|bastuba|bastuba’s|Bastuba|MIMO|HUNS|MEM
bass-tuba-e-flat|en|E flat tuba|E flat tubas|Eb Tba.|MIMO(head)|HUNS|MEM
bass-tuba-e-flat|fr|tuba en mi bémol|tubas en mi bémol|Tuba mib|MIMO(head)|HUNS|MEM
bass-tuba-e-flat|de|Es-Tuba|Es-Tuben|Es-Tb.|MIMO(head)|HUNS|MEM
bass-tuba-e-flat|it|tuba in mi bemolle|tube in mi bemolle|Tuba mib|MIMO(head)|HUNS|MEM
bass-tuba-e-flat|es|tuba en mi bemol|tubas en mi bemol|Tuba mib|MIMO(head)|HUNS|MEM
bass-tuba-e-flat|nl|es-tuba|es-tuba’s|Es-tuba|MIMO(head)|HUNS|MEM
contrabass-tuba-c|en|contrabass tuba|contrabass tubas|Cb. Tba.|MIMO+IAML|HUNS|MEM
contrabass-tuba-c|fr|tuba contrebasse|tubas contrebasses|Tuba cb.|MIMO|HUNS|MEM
contrabass-tuba-c|de|Kontrabasstuba|Kontrabasstuben|Kb.-Tb.|MIMO|MEM|MEM
contrabass-tuba-c|it|tuba contrabbassa|tube contrabbasse|Tuba cb.|MIMO(head)|MEM|MEM
contrabass-tuba-c|es|tuba contrabajo|tubas contrabajo|Tuba cb.|MIMO(head)|HUNS|MEM
contrabass-tuba-c|nl|contrabastuba|contrabastuba’s|Cb.-tuba|MIMO|MEM|MEM
contrabass-tuba-b-flat|en|B flat contrabass tuba|B flat contrabass tubas|BBb Tba.|MIMO+IAML|HUNS|MEM
contrabass-tuba-b-flat|fr|contrebasse si bémol (tuba)|contrebasses|C. B. sib|MIMO(head)|HUNS|MEM
contrabass-tuba-b-flat|de|B-Tuba (Kontrabass)|B-Tuben|B-Tb.|MIMO(head)|HUNS|MEM
contrabass-tuba-b-flat|it|tuba in si bemolle (contrabbassa)|tube in si bemolle|Tuba sib|MIMO(head)|HUNS|MEM
contrabass-tuba-b-flat|es|tuba en si bemol|tubas en si bemol|Tuba sib|MIMO(head)|HUNS|MEM
contrabass-tuba-b-flat|nl|bes-tuba|bes-tuba’s|Bes-tuba|MIMO(head)|HUNS|MEM
e-flat-bass|en|E flat bass|E flat basses|Eb Bass|MEM|HUNS|MEM
e-flat-bass|fr|basse mi bémol (brass band)|basses mi bémol|B. mib|MEM|HUNS|MEM
e-flat-bass|de|Es-Bass|Es-Bässe|Es-B.|MEM|HUNS|MEM
e-flat-bass|it|basso in mi bemolle|bassi in mi bemolle|B. mib|MEM|HUNS|MEM
e-flat-bass|es|bajo en mi bemol|bajos en mi bemol|B. mib|MEM|HUNS|MEM
e-flat-bass|nl|esbas|esbassen|Esb.|MEM|MEM|MEM
b-flat-bass|en|B flat bass|B flat basses|Bb Bass|MEM|HUNS|MEM
b-flat-bass|fr|basse si bémol grave (brass band)|basses si bémol|B. sib|MEM|HUNS|MEM
b-flat-bass|de|B-Bass|B-Bässe|B-B.|MEM|HUNS|MEM
b-flat-bass|it|basso in si bemolle|bassi in si bemolle|B. sib|MEM|HUNS|MEM
b-flat-bass|es|bajo en si bemol|bajos en si bemol|B. sib|MEM|HUNS|MEM
b-flat-bass|nl|besbas|besbassen|Besb.|MEM|MEM|MEM
sousaphone|en|sousaphone|sousaphones|Sousa.|MIMO|HUNS|MEM
sousaphone|fr|soubassophone|soubassophones|Soub.|MEM|MEM|MEM
sousaphone|de|Sousaphon|Sousaphone|Sous.|MIMO|MEM|MEM
sousaphone|it|sousafono|sousafoni|Sous.|BARL|MEM|MEM
sousaphone|es|sousáfono|sousáfonos|Sous.|MIMO|MEM|MEM
sousaphone|nl|sousafoon|sousafoons|Sous.|MIMO|HUNS|MEM
helicon|en|helicon|helicons|Hel.|MIMO|HUNS|MEM
helicon|fr|hélicon|hélicons|Hél.|MEM|HUNS|MEM
helicon|de|Helikon|Helikone|Hel.|MIMO|MEM|MEM
helicon|it|elicone|eliconi|Elic.|MEM|MEM|MEM
helicon|es|helicón|helicones|Hel.|MIMO|HUNS|MEM
helicon|nl|helicon|helicons|Hel.|MIMO|HUNS|MEM
bombardon|en|bombardon|bombardons|Bombdn.|MIMO+IAML+GRV2B|HUNS|MEM
bombardon|fr|bombardon|bombardons|Bomb.|MIMO+GRV2B|HUNS|MEM
bombardon|de|Bombardon|Bombardone|Bbd.|MIMO+IAML+GRV2B|MEM|MEM
bombardon|it|bombardone|bombardoni|Bomb.|MIMO+IAML+GRV2B|HUNS|MEM
bombardon|es|bombardón|bombardones|Bomb.|MIMO+IAML+GRV2B|MEM|MEM
bombardon|nl|bombardon|bombardons|Bomb.|MIMO|HUNS|MEM
ophicleide-c|en|ophicleide in C|ophicleides in C|Oph. C|MIMO+IAML|MIMO+HUNS|MEM
ophicleide-c|fr|ophicléide en ut|ophicléides en ut|Oph. ut|MIMO+BREN|MIMO+HUNS|MEM
ophicleide-c|de|Ophikleide in C|Ophikleiden in C|Oph. C|MIMO+IAML|MIMO|MEM
ophicleide-c|it|oficleide in do|oficleidi in do|Ofl. do|MIMO+IAML|MIMO+HUNS|MEM
ophicleide-c|es|figle en do|figles en do|Figle do|IAML|HUNS|MEM
ophicleide-c|nl|ophicleïde in c|ophicleïdes in c|Oph. c|MIMO+ZEEL|MIMO|MEM
ophicleide-b-flat|en|ophicleide in B flat|ophicleides in B flat|Oph. Bb|MIMO+IAML|MIMO+HUNS|MEM
ophicleide-b-flat|fr|ophicléide en si bémol|ophicléides en si bémol|Oph. sib|MIMO|MIMO+HUNS|MEM
ophicleide-b-flat|de|Ophikleide in B|Ophikleiden in B|Oph. B|MIMO+IAML|MIMO|MEM
ophicleide-b-flat|it|oficleide in si bemolle|oficleidi in si bemolle|Ofl. sib|MIMO+IAML|MIMO+HUNS|MEM
ophicleide-b-flat|es|figle en si bemol|figles en si bemol|Figle sib|IAML|HUNS|MEM
ophicleide-b-flat|nl|ophicleïde in bes|ophicleïdes in bes|Oph. bes|MIMO|MIMO|MEM
quinticlave-e-flat|en|alto ophicleide (quinticlave)|alto ophicleides|A. Oph.|MIMO|HUNS|MEM
quinticlave-e-flat|fr|ophicléide alto (quinticlave)|ophicléides altos|Oph. alto|MIMO+BREN|HUNS|MEM
quinticlave-e-flat|de|Alt-Ophikleide|Alt-Ophikleiden|A.-Oph.|MEM|MEM|MEM
quinticlave-e-flat|it|oficleide alto|oficleidi alti|Ofl. a.|MEM|HUNS|MEM
quinticlave-e-flat|es|figle alto|figles altos|Figle a.|MEM|HUNS|MEM
quinticlave-e-flat|nl|alt-ophicleïde|alt-ophicleïdes|Alt-oph.|MEM|MEM|MEM
serpent|en|serpent|serpents|Serp.|MIMO+IAML|HUNS|MEM
serpent|fr|serpent|serpents|Serp.|MIMO+IAML|HUNS|MEM
serpent|de|Serpent|Serpente|Serp.|MIMO+IAML|MEM|MEM
serpent|it|serpentone|serpentoni|Serp.|MIMO+IAML|HUNS|MEM
serpent|es|serpentón|serpentones|Serp.|MIMO+IAML|MEM|MEM
serpent|nl|serpent|serpenten|Serp.|MIMO+ZEEL|HUNS|MEM
bass-horn|en|English bass horn|English bass horns|B. Hn. (Eng.)|MEM|HUNS|MEM
bass-horn|fr|basse-cor (basson russe)|basses-cors|B. cor|MEM|HUNS|MEM
bass-horn|de|englisches Basshorn|englische Basshörner|Bh.|MEM|HUNS|MEM
bass-horn|it|corno basso inglese|corni bassi inglesi|C. b. ingl.|MIMO|HUNS|MEM
bass-horn|es|basson ruso|bassones rusos|B. ruso|MEM|MEM|MEM
bass-horn|nl|Engelse bashoorn|Engelse bashoorns|Bashrn.|MEM|HUNS|MEM
cimbasso|en|cimbasso|cimbassos|Cimb.|MIMO|MEM|MEM
cimbasso|fr|cimbasso|cimbassos|Cimb.|MIMO|MEM|MEM
cimbasso|de|Cimbasso|Cimbassi|Cimb.|MIMO|MEM|MEM
cimbasso|it|cimbasso|cimbassi|Cimb.|MIMO+IAML|MEM|MEM
cimbasso|es|cimbasso|cimbassos|Cimb.|MEM|MEM|MEM
cimbasso|nl|cimbasso|cimbasso’s|Cimb.|MIMO|MEM|MEM
alto-trombone|en|alto trombone|alto trombones|A. Tbn.|MIMO|HUNS|MEM
alto-trombone|fr|trombone alto|trombones alto|Tbn. a.|MIMO|HUNS|MEM
alto-trombone|de|Altposaune|Altposaunen|A.-pos.|MIMO|HUNS|MEM
alto-trombone|it|trombone contralto|tromboni contralto|Tbn. c.|MIMO|HUNS|MEM
alto-trombone|es|trombón alto|trombones alto|Tbn. a.|MEM|HUNS|MEM
alto-trombone|nl|alttrombone|alttrombones|A.-tbn.|MIMO|MEM|MEM
trombone-tenor|en|tenor trombone|tenor trombones|T. Tbn.|MIMO|HUNS|MEM
trombone-tenor|fr|trombone ténor|trombones ténor|Tbn. t.|MIMO|HUNS|MEM
trombone-tenor|de|Tenorposaune|Tenorposaunen|T.-pos.|MIMO|MEM|MEM
trombone-tenor|it|trombone tenore|tromboni tenore|Tbn. t.|MIMO|HUNS|MEM
trombone-tenor|es|trombón tenor|trombones tenor|Tbn. t.|MIMO|HUNS|MEM
trombone-tenor|nl|tenortrombone|tenortrombones|T.-tbn.|MIMO|HUNS|MEM
bass-trombone|en|bass trombone|bass trombones|B. Tbn.|MIMO+IAML|HUNS|MEM
bass-trombone|fr|trombone basse|trombones basse|Tbn. b.|MIMO|HUNS|MEM
bass-trombone|de|Bassposaune|Bassposaunen|B.-pos.|MIMO|HUNS|MEM
bass-trombone|it|trombone basso|tromboni basso|Tbn. b.|MIMO|HUNS|MEM
bass-trombone|es|trombón bajo|trombones bajo|Tbn. b.|MIMO|HUNS|MEM
bass-trombone|nl|bastrombone|bastrombones|B.-tbn.|MIMO|HUNS|MEM
bass-trombone-g|en|G bass trombone|G bass trombones|G. Tbn.|MIMO(head)|HUNS|MEM
bass-trombone-g|fr|trombone basse en sol|trombones basse en sol|Tbn. b.|MIMO(head)|HUNS|MEM
bass-trombone-g|de|G-Bassposaune|G-Bassposaunen|G.-pos.|MIMO(head)|HUNS|MEM
bass-trombone-g|it|trombone basso in sol|tromboni basso in sol|Tbn. b.|MIMO(head)|HUNS|MEM
bass-trombone-g|es|trombón bajo en sol|trombones bajo en sol|Tbn. b.|MIMO(head)|HUNS|MEM
bass-trombone-g|nl|G-bastrombone|G-bastrombones|G.-tbn.|MIMO(head)|HUNS|MEM
contrabass-trombone|en|contrabass trombone|contrabass trombones|C. Tbn.|MIMO+IAML|HUNS|MEM
contrabass-trombone|fr|trombone contrebasse|trombones contrebasse|Tbn. c.|MIMO|HUNS|MEM
contrabass-trombone|de|Kontrabassposaune|Kontrabassposaunen|K.-pos.|MIMO|MEM|MEM
contrabass-trombone|it|trombone contrabbasso|tromboni contrabbasso|Tbn. c.|MIMO|HUNS|MEM
contrabass-trombone|es|trombón contrabajo|trombones contrabajo|Tbn. c.|MEM|HUNS|MEM
contrabass-trombone|nl|contrabastrombone|contrabastrombones|C.-tbn.|MIMO|MEM|MEM
valve-trombone-b-flat|en|valve trombone|valve trombones|V. Tbn.|MIMO|HUNS|MEM
valve-trombone-b-flat|fr|trombone à pistons|trombones à pistons|Tbn. pist.|MIMO|HUNS|MEM
valve-trombone-b-flat|de|Ventilposaune|Ventilposaunen|V.-Pos.|MIMO|HUNS|MEM
valve-trombone-b-flat|it|trombone a pistoni (a cilindri)|tromboni a pistoni|Tbn. pist.|MEM|HUNS|MEM
valve-trombone-b-flat|es|trombón de pistones|trombones de pistones|Tbn. pist.|MIMO|HUNS|MEM
valve-trombone-b-flat|nl|ventieltrombone|ventieltrombones|V.tbn.|MIMO|HUNS|MEM
valve-bass-trombone-f|en|F valve bass trombone|F valve bass trombones|V. B. Tbn.|MIMO(head)|HUNS|MEM
valve-bass-trombone-f|fr|trombone basse à pistons en fa|trombones basses à pistons|Tbn. b. pist.|MIMO(head)|HUNS|MEM
valve-bass-trombone-f|de|F-Ventilbassposaune|F-Ventilbassposaunen|V.-Bpos.|MIMO(head)|HUNS|MEM
valve-bass-trombone-f|it|trombone basso a pistoni in fa|tromboni bassi a pistoni|Tbn. b.|MIMO(head)|HUNS|MEM
valve-bass-trombone-f|es|trombón bajo de pistones en fa|trombones bajos|Tbn. b.|MIMO(head)|HUNS|MEM
valve-bass-trombone-f|nl|F-ventielbastrombone|F-ventielbastrombones|V.b.tbn.|MIMO(head)|HUNS|MEM
valve-bass-trombone-e-flat|en|E flat valve bass trombone|E flat valve bass trombones|V. B. Tbn.|MIMO(head)|HUNS|MEM
valve-bass-trombone-e-flat|fr|trombone basse à pistons en mi bémol|trombones basses à pistons|Tbn. b. pist.|MIMO(head)|HUNS|MEM
valve-bass-trombone-e-flat|de|Es-Ventilbassposaune|Es-Ventilbassposaunen|V.-Bpos.|MIMO(head)|HUNS|MEM
valve-bass-trombone-e-flat|it|trombone basso a pistoni in mi bemolle|tromboni bassi a pistoni|Tbn. b.|MIMO(head)|HUNS|MEM
valve-bass-trombone-e-flat|es|trombón bajo en mi bemol|trombones bajos|Tbn. b.|MIMO(head)|HUNS|MEM
valve-bass-trombone-e-flat|nl|Es-ventielbastrombone|Es-ventielbastrombones|V.b.tbn.|MIMO(head)|HUNS|MEM
sackbut-tenor|en|tenor sackbut|tenor sackbuts|Sack.|MEM|HUNS|MEM
sackbut-tenor|fr|saqueboute ténor|saqueboutes ténors|Saq.|MIMO(head)|MEM|MEM
sackbut-tenor|de|Tenorposaune (hist.)|Tenorposaunen|T.-Pos.|MIMO(head)|MEM|MEM
sackbut-tenor|it|trombone rinascimentale tenore|tromboni rinascimentali|Tbn.|MEM|HUNS|MEM
sackbut-tenor|es|sacabuche tenor|sacabuches tenores|Sac.|MIMO(head)|HUNS|MEM
sackbut-tenor|nl|sackbut (tenor)|sackbuts|Sack.|MEM|MEM|MEM
violin|en|violin|violins|Vln.|MIMO+IAML|MIMO+HUNS|MEM
violin|fr|violon|violons|Von.|MIMO+IAML|MIMO+HUNS|MEM
violin|de|Violine|Violinen|Vl.|MIMO+IAML|MIMO+HUNS|CKNA
violin|it|violino|violini|Vl.|MIMO+IAML|MIMO+HUNS|MEM
violin|es|violín|violines|Vln.|MIMO+IAML|MIMO+HUNS|MEM
violin|nl|viool|violen|Vl.|MIMO|MIMO+HUNS|MEM
viola|en|viola|violas|Vla.|MIMO+IAML|MIMO+HUNS|MEM
viola|fr|alto|altos|Alto|MIMO+IAML|MIMO+HUNS|MEM
viola|de|Bratsche (Viola)|Bratschen|Br.|MIMO+IAML|MIMO+HUNS|MEM
viola|it|viola|viole|Vle.|MIMO+IAML|MIMO+HUNS|MEM
viola|es|viola|violas|Vla.|MIMO+IAML|MIMO+HUNS|MEM
viola|nl|altviool|altviolen|Alt.|MIMO|MIMO+HUNS|MEM
cello|en|cello|cellos|Vc.|IAML|HUNS|WISE
cello|fr|violoncelle|violoncelles|Vlle.|MIMO+IAML|HUNS|MEM
cello|de|Violoncello|Violoncelli|Vc.|MIMO|HUNS|CKNA
cello|it|violoncello|violoncelli|Vc.|MIMO+IAML|HUNS|MEM
cello|es|violonchelo|violonchelos|Vc.|MIMO+IAML|HUNS|MEM
cello|nl|cello|celli|Vc.|MIMO|MEM|MEM
double-bass|en|double bass|double basses|D. B.|MIMO+IAML|HUNS|WISE
double-bass|fr|contrebasse|contrebasses|Cb.|MIMO+IAML|HUNS|GDRM
double-bass|de|Kontrabass|Kontrabässe|Kb.|MIMO+IAML|HUNS|CKNA
double-bass|it|contrabbasso|contrabbassi|Cb.|MIMO+IAML|HUNS|MEM
double-bass|es|contrabajo|contrabajos|Cb.|MIMO+IAML|HUNS|MEM
double-bass|nl|contrabas|contrabassen|Cb.|MIMO|HUNS|MEM
viola-d-amore|en|viola d’amore|violas d’amore|Vla. d’am.|MIMO|MEM|MEM
viola-d-amore|fr|viole d’amour|violes d’amour|V. d’am.|MIMO|HUNS|MEM
viola-d-amore|de|Viola d’amore|Violen d’amore|Va. d’am.|MIMO|MEM|MEM
viola-d-amore|it|viola d’amore|viole d’amore|V. d’am.|MIMO|HUNS|MEM
viola-d-amore|es|viola de amor|violas de amor|V. d’am.|MIMO|HUNS|MEM
viola-d-amore|nl|viola d’amore|viola’s d’amore|V. d’am.|MIMO|MEM|MEM
viola-da-gamba|en|bass viol|bass viols|Vdg.|MEM|HUNS|MEM
viola-da-gamba|fr|basse de viole|basses de viole|B. de v.|MIMO|HUNS|MEM
viola-da-gamba|de|Viola da gamba|Gamben|Gb.|MIMO+IAML|MEM|MEM
viola-da-gamba|it|viola da gamba|viole da gamba|V. da g.|MIMO+IAML|HUNS|MEM
viola-da-gamba|es|viola da gamba|violas da gamba|V. da g.|MIMO|HUNS|MEM
viola-da-gamba|nl|viola da gamba|viola da gamba’s|V. da g.|MIMO|HUNS|MEM
harp|en|harp|harps|Hp.|MIMO+IAML|MIMO+HUNS|WISE
harp|fr|harpe|harpes|Hpe.|MIMO+IAML|MIMO+HUNS|MEM
harp|de|Harfe|Harfen|Hfe.|MIMO+IAML|MIMO+HUNS|MEM
harp|it|arpa|arpe|Arpa|MIMO+IAML|MIMO+HUNS|MEM
harp|es|arpa|arpas|Arpa|MIMO+IAML|MIMO+HUNS|MEM
harp|nl|harp|harpen|Hrp.|MIMO|MIMO+HUNS|MEM
guitar|en|guitar|guitars|Gtr.|MIMO+IAML|MIMO+HUNS|WISE
guitar|fr|guitare|guitares|Guit.|MIMO+IAML|MIMO+HUNS|MEM
guitar|de|Gitarre|Gitarren|Git.|MIMO+IAML|MIMO+HUNS|MEM
guitar|it|chitarra|chitarre|Chit.|MIMO+IAML|MIMO+HUNS|MEM
guitar|es|guitarra|guitarras|Guit.|MIMO+IAML|MIMO+HUNS|MEM
guitar|nl|gitaar|gitaren|Git.|MIMO|MIMO+HUNS|MEM
bass-guitar|en|bass guitar|bass guitars|B. Gtr.|MIMO|HUNS|WISE
bass-guitar|fr|guitare basse|guitares basses|Basse|MIMO|HUNS|MEM
bass-guitar|de|Bassgitarre|Bassgitarren|E-Bass|MIMO|HUNS|MEM
bass-guitar|it|basso elettrico|bassi elettrici|B. el.|MIMO+IAML|HUNS|MEM
bass-guitar|es|bajo eléctrico|bajos eléctricos|B. el.|MIMO|HUNS|MEM
bass-guitar|nl|basgitaar|basgitaren|Basg.|MIMO|HUNS|MEM
mandolin|en|mandolin|mandolins|Mand.|MIMO+IAML|MIMO+HUNS|MEM
mandolin|fr|mandoline|mandolines|Mand.|MIMO+IAML|MIMO+HUNS|MEM
mandolin|de|Mandoline|Mandolinen|Mand.|MIMO|MIMO+HUNS|MEM
mandolin|it|mandolino|mandolini|Mand.|MIMO+IAML|MIMO+HUNS|MEM
mandolin|es|mandolina|mandolinas|Mand.|MIMO+IAML|MIMO+HUNS|MEM
mandolin|nl|mandoline|mandolines|Mand.|MIMO|MIMO+HUNS|MEM
octave-mandola|en|octave mandola|octave mandolas|Mdla.|MEM|HUNS|MEM
octave-mandola|fr|mandole (octave)|mandoles|Mdle|MIMO(head)|MEM|MEM
octave-mandola|de|Mandola (Oktav)|Mandolen|Mdla.|MIMO(head)|MEM|MEM
octave-mandola|it|mandola (in sol)|mandole|Mdla.|MIMO(head)|HUNS|MEM
octave-mandola|es|mandola|mandolas|Mdla.|MIMO(head)|MEM|MEM
octave-mandola|nl|mandola|mandola’s|Mdla.|MEM|MEM|MEM
tenor-mandola|en|tenor mandola|tenor mandolas|T. Mdla.|MEM|HUNS|MEM
tenor-mandola|fr|mandole ténor|mandoles ténors|Mdle t.|MIMO(head)|MEM|MEM
tenor-mandola|de|Tenormandola|Tenormandolen|T.-Mdla.|MIMO(head)|MEM|MEM
tenor-mandola|it|mandola tenore (in do)|mandole tenori|Mdla. t.|MIMO(head)|HUNS|MEM
tenor-mandola|es|mandola tenor|mandolas tenores|Mdla. t.|MIMO(head)|MEM|MEM
tenor-mandola|nl|tenormandola|tenormandola’s|T.mdla.|MEM|MEM|MEM
lute|en|lute|lutes|Lute|MIMO+IAML|MIMO+HUNS|MEM
lute|fr|luth|luths|Luth|MIMO+IAML|MIMO+HUNS|MEM
lute|de|Laute|Lauten|Lt.|MIMO+IAML|MIMO+HUNS|MEM
lute|it|liuto|liuti|Liuto|MIMO+IAML|MIMO+HUNS|MEM
lute|es|laúd|laúdes|Laúd|MIMO+IAML|MIMO+HUNS|MEM
lute|nl|luit|luiten|Luit|MIMO+IAML|MIMO+HUNS|MEM
piano|en|piano|pianos|Pno.|IAML|HUNS|MEM
piano|fr|piano|pianos|Pno.|MIMO+IAML|MIMO+HUNS|MEM
piano|de|Klavier|Klaviere|Klav.|IAML|MIMO+HUNS|CKNA
piano|it|pianoforte|pianoforti|Pf.|MIMO+IAML|MIMO+HUNS|MEM
piano|es|piano|pianos|Pno.|IAML|MIMO+HUNS|MEM
piano|nl|piano|piano’s|Pno.|MEM|HUNS|MEM
celesta|en|celesta|celestas|Cel.|MIMO+IAML|HUNS|WISE
celesta|fr|célesta|célestas|Cél.|IAML|HUNS|GDRM
celesta|de|Celesta|Celesten|Cel.|MIMO+IAML|MEM|MEM
celesta|it|celesta|celeste|Cel.|MIMO+IAML|HUNS|MEM
celesta|es|celesta|celestas|Cel.|MIMO+IAML|MEM|MEM
celesta|nl|celesta|celesta’s|Cel.|MIMO|HUNS|MEM
keyed-glockenspiel|en|keyboard glockenspiel|keyboard glockenspiels|K. Glsp.|MIMO|HUNS|MEM
keyed-glockenspiel|fr|jeu de timbres (à clavier)|jeux de timbres|J. de t.|MEM|HUNS|MEM
keyed-glockenspiel|de|Klaviaturglockenspiel|Klaviaturglockenspiele|Kl.-Glsp.|MIMO|MEM|MEM
keyed-glockenspiel|it|campanelli a tastiera|campanelli a tastiera|Camp. tast.|MEM|HUNS|MEM
keyed-glockenspiel|es|juego de timbres de teclado|juegos de timbres|J. t.|MEM|HUNS|MEM
keyed-glockenspiel|nl|klaviatuurklokkenspel|klaviatuurklokkenspellen|Klav. kl.|MEM|MEM|MEM
harpsichord|en|harpsichord|harpsichords|Hpschd.|MIMO+IAML|MIMO+HUNS|MEM
harpsichord|fr|clavecin|clavecins|Clav.|MIMO+IAML|MIMO+HUNS|GDRM
harpsichord|de|Cembalo|Cembali|Cemb.|MIMO+IAML|MIMO+HUNS|MEM
harpsichord|it|clavicembalo|clavicembali|Cemb.|MIMO+IAML|HUNS|MEM
harpsichord|es|clave|claves|Clave|IAML|HUNS|MEM
harpsichord|nl|klavecimbel|klavecimbels|Klav.|MIMO|MIMO+HUNS|MEM
organ|en|organ|organs|Org.|MIMO+IAML|MIMO+HUNS|WISE
organ|fr|orgue|orgues|Orgue|MIMO+IAML|MIMO+HUNS|MEM
organ|de|Orgel|Orgeln|Org.|MIMO+IAML|MIMO+HUNS|CKNA
organ|it|organo|organi|Org.|MIMO+IAML|MIMO+HUNS|MEM
organ|es|órgano|órganos|Órg.|MIMO+IAML|MIMO+HUNS|MEM
organ|nl|orgel|orgels|Org.|MIMO|MIMO+HUNS|MEM
harmonium|en|harmonium|harmoniums|Harm.|MIMO+IAML|HUNS|MEM
harmonium|fr|harmonium|harmoniums|Harm.|MIMO+IAML|HUNS|MEM
harmonium|de|Harmonium|Harmonien|Harm.|MIMO+IAML|HUNS|MEM
harmonium|it|armonium|armonium|Arm.|MEM|HUNS|MEM
harmonium|es|armonio|armonios|Arm.|MIMO+IAML|HUNS|MEM
harmonium|nl|harmonium|harmoniums|Harm.|MIMO|HUNS|MEM
accordion|en|accordion|accordions|Acc.|MIMO+IAML|MIMO+HUNS|MEM
accordion|fr|accordéon|accordéons|Acc.|MIMO+IAML|MIMO+HUNS|GDRM
accordion|de|Akkordeon|Akkordeons|Akk.|MIMO+IAML|MIMO+HUNS|CKNA
accordion|it|fisarmonica|fisarmoniche|Fis.|MIMO+IAML|MIMO+HUNS|MEM
accordion|es|acordeón|acordeones|Ac.|MIMO+IAML|MIMO+HUNS|MEM
accordion|nl|accordeon|accordeons|Acc.|MIMO|MIMO+HUNS|MEM
timpani|en|timpani|timpani|Timp.|IAML|HUNS|BLAKE+WISE
timpani|fr|timbales|timbales|Timb.|MIMO+IAML+NIHON|MIMO+HUNS|MEM
timpani|de|Pauken|Pauken|Pk.|IAML+NIHON|HUNS|CKNA
timpani|it|timpani|timpani|Timp.|IAML+NIHON|HUNS|MEM
timpani|es|timbales|timbales|Timb.|MEM|HUNS|MEM
timpani|nl|pauken|pauken|Pk.|MEM|HUNS|MEM
glockenspiel|en|glockenspiel|glockenspiels|Glsp.|MIMO+IAML|HUNS|BLAKE
glockenspiel|fr|jeu de timbres|jeux de timbres|J. de t.|HANS|HUNS|MEM
glockenspiel|de|Glockenspiel|Glockenspiele|Glsp.|MIMO+IAML+HANS|HUNS|MEM
glockenspiel|it|campanelli|campanelli|Camp.|HANS+NIHON|HUNS|MEM
glockenspiel|es|lira (campanelli)|liras|Lira|MEM|HUNS|MEM
glockenspiel|nl|klokkenspel|klokkenspellen|Klsp.|MEM|HUNS|MEM
xylophone|en|xylophone|xylophones|Xyl.|MIMO+IAML|MIMO+HUNS|WISE
xylophone|fr|xylophone|xylophones|Xyl.|MIMO+IAML|MIMO+HUNS|MEM
xylophone|de|Xylophon|Xylophone|Xyl.|MIMO+IAML+HANS|MIMO+HUNS|CKNA
xylophone|it|xilofono|xilofoni|Xil.|MIMO+IAML+NIHON|MIMO+HUNS|MEM
xylophone|es|xilófono|xilófonos|Xil.|MIMO+IAML|MIMO+HUNS|MEM
xylophone|nl|xylofoon|xylofoons|Xyl.|MIMO|HUNS|MEM
marimba|en|marimba|marimbas|Mar.|MIMO+IAML|HUNS|MEM
marimba|fr|marimba|marimbas|Mar.|MIMO+IAML|HUNS|MEM
marimba|de|Marimba|Marimbas|Mar.|MIMO+IAML|MEM|MEM
marimba|it|marimba|marimbe|Mar.|MIMO+IAML|HUNS|MEM
marimba|es|marimba|marimbas|Mar.|MIMO+IAML|HUNS|MEM
marimba|nl|marimba|marimba’s|Mar.|MIMO|HUNS|MEM
vibraphone|en|vibraphone|vibraphones|Vib.|MIMO+IAML|HUNS|WISE
vibraphone|fr|vibraphone|vibraphones|Vib.|MIMO+IAML|HUNS|MEM
vibraphone|de|Vibraphon|Vibraphone|Vib.|MIMO+IAML|MEM|CKNA
vibraphone|it|vibrafono|vibrafoni|Vib.|MIMO+IAML|HUNS|MEM
vibraphone|es|vibráfono|vibráfonos|Vib.|MIMO+IAML|MEM|MEM
vibraphone|nl|vibrafoon|vibrafoons|Vib.|MIMO|HUNS|MEM
tubular-bells|en|tubular bells|tubular bells|T. B.|MEM|HUNS|MEM
tubular-bells|fr|cloches tubulaires|cloches tubulaires|Cl.|MEM|HUNS|MEM
tubular-bells|de|Röhrenglocken|Röhrenglocken|Glk.|HANS|HUNS|MEM
tubular-bells|it|campane tubolari|campane tubolari|Camp.|MEM|HUNS|MEM
tubular-bells|es|campanas tubulares|campanas tubulares|Camp.|MEM|HUNS|MEM
tubular-bells|nl|buisklokken|buisklokken|Bkl.|MEM|HUNS|MEM
crotales|en|crotales (antique cymbals)|crotales|Crot.|MIMO+IAML|MEM|BLAKE
crotales|fr|crotales (cymbales antiques)|crotales|Crot.|MIMO+IAML|HUNS|GDRM
crotales|de|Zimbeln|Zimbeln|Zimb.|IAML|HUNS|MEM
crotales|it|crotali|crotali|Crot.|IAML|HUNS|MEM
crotales|es|crótalos|crótalos|Crót.|MIMO+IAML|HUNS|MEM
crotales|nl|crotales|crotales|Crot.|MIMO|MEM|MEM
bell-lyre|en|bell lyre|bell lyres|B. Lyre|MEM|HUNS|MEM
bell-lyre|fr|lyre (glockenspiel de marche)|lyres|Lyre|MEM|HUNS|MEM
bell-lyre|de|Lyra|Lyren|Lyra|MEM|MEM|MEM
bell-lyre|it|lira|lire|Lira|MEM|HUNS|MEM
bell-lyre|es|lira|liras|Lira|MEM|HUNS|MEM
bell-lyre|nl|lyra|lyra’s|Lyra|MEM|MEM|MEM
cimbalom|en|cimbalom|cimbaloms|Cimb.|MIMO|HUNS|MEM
cimbalom|fr|cymbalum|cymbalums|Cymb.|MIMO|HUNS|MEM
cimbalom|de|Zymbal|Zymbale|Zymb.|MEM|MEM|MEM
cimbalom|it|cimbalom|cimbalom|Cimb.|MIMO|MEM|MEM
cimbalom|es|cimbalón|cimbalones|Cimb.|MEM|MEM|MEM
cimbalom|nl|cimbalom|cimbaloms|Cimb.|MIMO|MEM|MEM
snare-drum|en|snare drum|snare drums|S. D.|NIHON|HUNS|BLAKE
snare-drum|fr|caisse claire|caisses claires|C. cl.|MIMO+NIHON|HUNS|MEM
snare-drum|de|kleine Trommel|kleine Trommeln|kl. Tr.|MIMO+NIHON|HUNS|MEM
snare-drum|it|tamburo (cassa chiara)|tamburi|Tamb.|MEM|HUNS|MEM
snare-drum|es|caja|cajas|Caja|MEM|HUNS|MEM
snare-drum|nl|kleine trom|kleine trommen|kl. Tr.|MIMO|HUNS|MEM
tenor-drum|en|tenor drum|tenor drums|T. D.|MIMO|HUNS|BLAKE
tenor-drum|fr|caisse roulante|caisses roulantes|C. r.|MIMO|HUNS|MEM
tenor-drum|de|Rührtrommel (Wirbeltrommel)|Rührtrommeln|Rtr.|MEM|MEM|MEM
tenor-drum|it|cassa rullante|casse rullanti|C. rull.|MEM|HUNS|MEM
tenor-drum|es|redoblante|redoblantes|Redob.|MEM|HUNS|MEM
tenor-drum|nl|roertrom|roertrommen|Rtr.|MEM|MEM|MEM
bass-drum|en|bass drum|bass drums|B. D.|MIMO+IAML|HUNS|BLAKE
bass-drum|fr|grosse caisse|grosses caisses|G. C.|MIMO+IAML+NIHON|HUNS|MEM
bass-drum|de|große Trommel|große Trommeln|gr. Tr.|NIHON|HUNS|MEM
bass-drum|it|gran cassa|gran casse|G. C.|IAML+NIHON|HUNS|MEM
bass-drum|es|bombo|bombos|Bombo|IAML|HUNS|MEM
bass-drum|nl|grote trom|grote trommen|gr. Tr.|MIMO|HUNS|MEM
cymbals|en|cymbals|cymbals|Cym.|MIMO+IAML|HUNS|BLAKE+WISE
cymbals|fr|cymbales|cymbales|Cymb.|MIMO+IAML+NIHON|HUNS|MEM
cymbals|de|Becken|Becken|Beck.|MIMO+IAML+NIHON|HUNS|MEM
cymbals|it|piatti|piatti|Piat.|MIMO+IAML+NIHON|HUNS|MEM
cymbals|es|platillos|platillos|Plat.|IAML|HUNS|MEM
cymbals|nl|bekkens|bekkens|Bek.|MEM|HUNS|MEM
triangle|en|triangle|triangles|Tri.|MIMO+IAML|HUNS|BLAKE
triangle|fr|triangle|triangles|Trg.|MIMO+IAML|HUNS|MEM
triangle|de|Triangel|Triangel|Trgl.|MIMO+IAML+NIHON|MEM|MEM
triangle|it|triangolo|triangoli|Trg.|MIMO+IAML+NIHON|HUNS|MEM
triangle|es|triángulo|triángulos|Triáng.|MIMO+IAML|HUNS|MEM
triangle|nl|triangel|triangels|Trgl.|MIMO|HUNS|MEM
tam-tam|en|tam-tam|tam-tams|T.-t.|MEM|MEM|MEM
tam-tam|fr|tam-tam|tam-tams|T.-t.|MEM|MEM|MEM
tam-tam|de|Tamtam|Tamtams|Tt.|MIMO|HUNS|MEM
tam-tam|it|tam-tam|tam-tam|T.-t.|MEM|HUNS|MEM
tam-tam|es|tam-tam|tam-tams|T.-t.|MIMO|MEM|MEM
tam-tam|nl|tamtam|tamtams|Tt.|MIMO|HUNS|MEM
tambourine|en|tambourine|tambourines|Tamb.|MIMO+IAML+NIHON|HUNS|BLAKE+WISE
tambourine|fr|tambour de basque|tambours de basque|T. de b.|IAML+NIHON|HUNS|MEM
tambourine|de|Schellentrommel (Tamburin)|Schellentrommeln|Tamb.|MIMO+IAML+NIHON|MEM|MEM
tambourine|it|tamburo basco (tamburello)|tamburelli|T. basco|MIMO+IAML|HUNS|MEM
tambourine|es|pandereta|panderetas|Pand.|MIMO+IAML|HUNS|MEM
tambourine|nl|tamboerijn|tamboerijnen|Tamb.|MIMO|HUNS|MEM
castanets|en|castanets|castanets|Cast.|MIMO+IAML|HUNS|BLAKE
castanets|fr|castagnettes|castagnettes|Cast.|MIMO+IAML+NIHON|HUNS|GDRM
castanets|de|Kastagnetten|Kastagnetten|Kast.|MIMO+IAML+NIHON|HUNS|CKNA
castanets|it|nacchere (castagnette)|nacchere|Nacch.|MIMO+IAML+NIHON|HUNS|MEM
castanets|es|castañuelas|castañuelas|Cast.|MIMO+IAML|HUNS|MEM
castanets|nl|castagnetten|castagnetten|Cast.|MIMO|HUNS|MEM
soprano-voice|en|soprano|sopranos|S.|IAML|HUNS|WISE
soprano-voice|fr|soprano|sopranos|S.|IAML|HUNS|MEM
soprano-voice|de|Sopran|Soprane|S.|IAML|HUNS|MEM
soprano-voice|it|soprano|soprani|S.|IAML|HUNS|MEM
soprano-voice|es|soprano|sopranos|S.|IAML|HUNS|MEM
soprano-voice|nl|sopraan|sopranen|S.|MEM|HUNS|MEM
mezzo-soprano-voice|en|mezzo-soprano|mezzo-sopranos|Mz.|IAML|HUNS|MEM
mezzo-soprano-voice|fr|mezzo-soprano|mezzo-sopranos|Mz.|MEM|HUNS|MEM
mezzo-soprano-voice|de|Mezzosopran|Mezzosoprane|Mz.|MEM|MEM|MEM
mezzo-soprano-voice|it|mezzosoprano|mezzosoprani|Mz.|IAML|HUNS|MEM
mezzo-soprano-voice|es|mezzosoprano|mezzosopranos|Mz.|IAML|MEM|MEM
mezzo-soprano-voice|nl|mezzosopraan|mezzosopranen|Mz.|MEM|HUNS|MEM
alto-voice|en|alto|altos|A.|IAML|HUNS|WISE
alto-voice|fr|alto (contralto)|altos|A.|IAML|HUNS|GDRM
alto-voice|de|Alt|Alte|A.|IAML|HUNS|MEM
alto-voice|it|contralto|contralti|C.|IAML|HUNS|MEM
alto-voice|es|contralto|contraltos|C.|IAML|HUNS|MEM
alto-voice|nl|alt|alten|A.|MEM|HUNS|MEM
tenor-voice|en|tenor|tenors|T.|IAML|HUNS|WISE
tenor-voice|fr|ténor|ténors|T.|IAML|HUNS|MEM
tenor-voice|de|Tenor|Tenöre|T.|MEM|HUNS|MEM
tenor-voice|it|tenore|tenori|T.|IAML|HUNS|MEM
tenor-voice|es|tenor|tenores|T.|IAML|HUNS|MEM
tenor-voice|nl|tenor|tenoren|T.|MEM|HUNS|MEM
baritone-voice|en|baritone|baritones|Bar.|IAML|HUNS|WISE
baritone-voice|fr|baryton|barytons|Bar.|IAML|HUNS|GDRM
baritone-voice|de|Bariton|Baritone|Bar.|IAML|HUNS|MEM
baritone-voice|it|baritono|baritoni|Bar.|IAML|HUNS|MEM
baritone-voice|es|barítono|barítonos|Bar.|IAML|HUNS|MEM
baritone-voice|nl|bariton|baritons|Bar.|MEM|HUNS|MEM
bass-voice|en|bass|basses|B.|IAML|HUNS|WISE
bass-voice|fr|basse|basses|B.|IAML|HUNS|GDRM
bass-voice|de|Bass|Bässe|B.|IAML|HUNS|MEM
bass-voice|it|basso|bassi|B.|IAML|HUNS|MEM
bass-voice|es|bajo|bajos|B.|IAML|HUNS|MEM
bass-voice|nl|bas|bassen|B.|MEM|HUNS|MEM
`
