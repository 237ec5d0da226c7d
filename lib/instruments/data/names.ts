/**
 * Every form that a source prints, for recognising names and not for printing them. `variant`: a form that
 * labels.ts does not use.
 */
export const nameTable = `
id|language|form|kind|source
piccolo|en|piccolo|name|IAML
piccolo|en|piccolo|name|NIHON
piccolo|en|Piccolo flute|variant|MIMO
piccolo|en|Picc.|abbreviation|BLAKE
piccolo|fr|petite flûte|name|IAML
piccolo|fr|petite flûte|name|KOE
piccolo|fr|Flûte piccolo|variant|MIMO
piccolo|fr|piccolo|variant|IAML
piccolo|de|Pikkolo|name|MIMO
piccolo|de|kleine Flöte|name|IAML
piccolo|de|kleine Flöte|name|NIHON
piccolo|de|Pikkoloflöte|variant|MIMO
piccolo|de|Pikkoloquerflöte|variant|MIMO
piccolo|de|Oktavflöte|variant|IAML
piccolo|de|Pickelflöte|variant|IAML
piccolo|de|Pikkoloflöte|variant|IAML
piccolo|de|kl. Fl. (Picc.)|abbreviation|CKNA
piccolo|it|ottavino|name|IAML
piccolo|it|ottavino|name|NIHON
piccolo|it|Flauto ottavino|variant|MIMO
piccolo|it|flauto piccolo|variant|IAML
piccolo|it|Ott.|abbreviation|COLZ
piccolo|es|Flautín|name|MIMO
piccolo|es|flautín|name|IAML
piccolo|nl|Piccolo|name|MIMO
piccolo-d-flat|en|piccolo|name|IAML
piccolo-d-flat|en|Piccolo flute|variant|MIMO
piccolo-d-flat|en|Picc. Db|abbreviation|BLAKE
piccolo-d-flat|fr|petite flûte|name|IAML
piccolo-d-flat|fr|Flûte piccolo|variant|MIMO
piccolo-d-flat|fr|piccolo|variant|IAML
piccolo-d-flat|de|Pikkolo|name|MIMO
piccolo-d-flat|de|kleine Flöte|name|IAML
piccolo-d-flat|de|Pikkoloflöte|variant|MIMO
piccolo-d-flat|de|Pikkoloquerflöte|variant|MIMO
piccolo-d-flat|de|Oktavflöte|variant|IAML
piccolo-d-flat|de|Pickelflöte|variant|IAML
piccolo-d-flat|de|Pikkoloflöte|variant|IAML
piccolo-d-flat|de|kl. Fl. (Picc.) Des|abbreviation|CKNA
piccolo-d-flat|it|ottavino|name|IAML
piccolo-d-flat|it|Flauto ottavino|variant|MIMO
piccolo-d-flat|it|flauto piccolo|variant|IAML
piccolo-d-flat|it|Ott. reb|abbreviation|COLZ
piccolo-d-flat|es|Flautín|name|MIMO
piccolo-d-flat|es|flautín|name|IAML
piccolo-d-flat|nl|Piccolo|name|MIMO
piccolo-e-flat|en|piccolo|name|IAML
piccolo-e-flat|en|Piccolo flute|variant|MIMO
piccolo-e-flat|en|Picc. Eb|abbreviation|BLAKE
piccolo-e-flat|fr|petite flûte|name|IAML
piccolo-e-flat|fr|Flûte piccolo|variant|MIMO
piccolo-e-flat|fr|piccolo|variant|IAML
piccolo-e-flat|de|Pikkolo|name|MIMO
piccolo-e-flat|de|kleine Flöte|name|IAML
piccolo-e-flat|de|Pikkoloflöte|variant|MIMO
piccolo-e-flat|de|Pikkoloquerflöte|variant|MIMO
piccolo-e-flat|de|Oktavflöte|variant|IAML
piccolo-e-flat|de|Pickelflöte|variant|IAML
piccolo-e-flat|de|Pikkoloflöte|variant|IAML
piccolo-e-flat|de|kl. Fl. (Picc.) Es|abbreviation|CKNA
piccolo-e-flat|it|ottavino|name|IAML
piccolo-e-flat|it|Flauto ottavino|variant|MIMO
piccolo-e-flat|it|flauto piccolo|variant|IAML
piccolo-e-flat|it|Ott. mib|abbreviation|COLZ
piccolo-e-flat|es|Flautín|name|MIMO
piccolo-e-flat|es|flautín|name|IAML
piccolo-e-flat|nl|Piccolo|name|MIMO
flute|en|Flute|name|MIMO
flute|en|flute|name|IAML
flute|en|Transverse flute|variant|MIMO
flute|en|concert flute|variant|IAML
flute|en|cros flute|variant|IAML
flute|en|german flute|variant|IAML
flute|en|transverse flute|variant|IAML
flute|en|traverse flute|variant|IAML
flute|en|flutes|plural|MIMO
flute|en|Fl.|abbreviation|BLAKE
flute|en|Fl.|abbreviation|WISE
flute|fr|Flûte|name|MIMO
flute|fr|flûte|name|IAML
flute|fr|flûte|name|JOHN
flute|fr|Flûte traversière|variant|MIMO
flute|fr|flûte allemande|variant|IAML
flute|fr|flûte d'allemagne|variant|IAML
flute|fr|flûte traversière|variant|IAML
flute|fr|traversière|variant|IAML
flute|fr|flûtes|plural|MIMO
flute|de|Flöte|name|MIMO
flute|de|Flöte|name|IAML
flute|de|Flöte|name|JOHN
flute|de|Flöte|name|MW-WW
flute|de|Querflöte|variant|MIMO
flute|de|Querflöte|variant|IAML
flute|de|Schweitzerpfeife|variant|IAML
flute|de|Schweizerpfeife|variant|IAML
flute|de|Traversflöte|variant|IAML
flute|de|Zwerchpfeiff|variant|IAML
flute|de|grosse Flöte|variant|IAML
flute|de|Flöten|plural|MIMO
flute|de|Fl.|abbreviation|CKNA
flute|it|Flauto|name|MIMO
flute|it|flauto|name|IAML
flute|it|flauto|name|JOHN
flute|it|flauto|name|MW-WW
flute|it|Flauto traverso|variant|MIMO
flute|it|flauto alemano|variant|IAML
flute|it|flauto traverso|variant|IAML
flute|it|fluta|variant|IAML
flute|it|flutta|variant|IAML
flute|it|traversa|variant|IAML
flute|it|traversiere|variant|IAML
flute|it|traversiero|variant|IAML
flute|it|traverso|variant|IAML
flute|it|flauti|plural|MIMO
flute|it|Fl.|abbreviation|COLZ
flute|es|Flauta|name|MIMO
flute|es|flauta|name|IAML
flute|es|flauta|name|MW-WW
flute|es|Flauta travesera|variant|MIMO
flute|es|flauta transversal|variant|IAML
flute|es|flauta traversa|variant|IAML
flute|es|flauta travesera|variant|IAML
flute|es|flautas|plural|MIMO
flute|nl|Fluit|name|MIMO
flute|nl|Dwarsfluit|variant|MIMO
flute|nl|fluiten|plural|MIMO
flute-e-flat|en|Third flute|variant|MIMO
flute-e-flat|en|Fl. Eb|abbreviation|BLAKE
flute-e-flat|en|Fl. Eb|abbreviation|WISE
flute-e-flat|fr|Flûte traversière tierce|variant|MIMO
flute-e-flat|fr|flûte tierce|variant|KOE
flute-e-flat|de|Terzflöte|variant|MIMO
flute-e-flat|de|Fl. Es|abbreviation|CKNA
flute-e-flat|it|Flauto terzino|variant|MIMO
flute-e-flat|it|Fl. mib|abbreviation|COLZ
flute-e-flat|es|Flauta tercerola|variant|MIMO
flute-e-flat|nl|Tertsfluit|variant|MIMO
flute-d-flat|en|Fl. Db|abbreviation|BLAKE
flute-d-flat|en|Fl. Db|abbreviation|WISE
flute-d-flat|de|Fl. Des|abbreviation|CKNA
flute-d-flat|it|Fl. reb|abbreviation|COLZ
alto-flute|en|Alto flute|name|MIMO
alto-flute|en|A. Fl.|abbreviation|BLAKE
alto-flute|en|A. Fl.|abbreviation|WISE
alto-flute|fr|flûte alto|name|MW-WW
alto-flute|fr|Flûte traversière alto|variant|MIMO
alto-flute|fr|Flûte traversière ténor|variant|MIMO
alto-flute|de|Altflöte|name|MIMO
alto-flute|de|Altflöte|name|MW-WW
alto-flute|it|Flauto traverso contralto|variant|MIMO
alto-flute|it|flautone|variant|MW-WW
alto-flute|es|Flauta contralto|variant|MIMO
alto-flute|es|flauta baja|variant|MW-WW
alto-flute|nl|Altfluit|name|MIMO
bass-flute|en|Bass flute|name|MIMO
bass-flute|en|bass flute|name|IAML
bass-flute|en|albisiphon|variant|IAML
bass-flute|en|B. Fl.|abbreviation|BLAKE
bass-flute|fr|flûte basse|name|IAML
bass-flute|fr|Flûte traversière basse|variant|MIMO
bass-flute|de|Bassflöte|name|MIMO
bass-flute|de|Bassquerflöte|variant|MIMO
bass-flute|de|Baßquerflöte|variant|MIMO
bass-flute|de|Baßflöte|variant|MIMO
bass-flute|it|flauto basso|name|IAML
bass-flute|it|Flauto traverso basso|variant|MIMO
bass-flute|it|albisifono|variant|IAML
bass-flute|it|flauto albisi|variant|IAML
bass-flute|it|flauto basso in do|variant|IAML
bass-flute|it|flautone|variant|IAML
bass-flute|es|Flauta baja|name|MIMO
bass-flute|nl|Basfluit|name|MIMO
fife-b-flat|en|Fife|name|MIMO
fife-b-flat|en|fife|name|IAML
fife-b-flat|fr|Fifre|name|MIMO
fife-b-flat|fr|fifre|name|IAML
fife-b-flat|de|Querpfeife|name|MIMO
fife-b-flat|de|Querpfeife|name|IAML
fife-b-flat|de|Feldpfeife|variant|IAML
fife-b-flat|it|piffero|name|IAML
fife-b-flat|it|Fiffaro|variant|MIMO
fife-b-flat|it|fiffaro|variant|IAML
fife-b-flat|it|pifano|variant|IAML
fife-b-flat|it|piffaro|variant|IAML
fife-b-flat|es|pífano|name|IAML
fife-b-flat|es|Fifre|variant|MIMO
fife-b-flat|nl|Fijfer|variant|MIMO
sopranino-recorder|en|Sopranino recorder|name|MIMO
sopranino-recorder|fr|Flûte à bec sopranino|name|MIMO
sopranino-recorder|de|Sopraninoblockflöte|name|MIMO
sopranino-recorder|it|Flauto dolce sopranino|name|MIMO
sopranino-recorder|es|Flauta de pico sopranino|variant|MIMO
sopranino-recorder|nl|Sopraninoblokfluit|name|MIMO
descant-recorder|en|Descant recorder|name|MIMO
descant-recorder|fr|Flûte à bec soprano|name|MIMO
descant-recorder|de|Sopranblockflöte|name|MIMO
descant-recorder|de|Diskantflöte|variant|MIMO
descant-recorder|de|Diskantblockflöte|variant|MIMO
descant-recorder|it|Flauto dolce soprano|name|MIMO
descant-recorder|es|Flauta dulce soprano|name|MIMO
descant-recorder|es|Flauta de pico soprano|variant|MIMO
descant-recorder|nl|Sopraanblokfluit|name|MIMO
treble-recorder|en|Treble recorder|name|MIMO
treble-recorder|en|Alto recorder|variant|MIMO
treble-recorder|fr|Flûte à bec alto|name|MIMO
treble-recorder|de|Altblockflöte|name|MIMO
treble-recorder|it|Flauto dolce contralto|name|MIMO
treble-recorder|es|Flauta dulce contralto|name|MIMO
treble-recorder|es|Flauta de pico soprano|variant|MIMO
treble-recorder|es|Flauta de pico contralto|variant|MIMO
treble-recorder|nl|Altblokfluit|name|MIMO
tenor-recorder|en|Tenor recorder|name|MIMO
tenor-recorder|fr|Flûte à bec ténor|name|MIMO
tenor-recorder|de|Tenorblockflöte|name|MIMO
tenor-recorder|de|Tenorflöte|variant|MIMO
tenor-recorder|it|Flauto dolce tenore|name|MIMO
tenor-recorder|es|Flauta de pico tenor|variant|MIMO
tenor-recorder|nl|Tenorblokfluit|name|MIMO
bass-recorder|en|Bass recorder|name|MIMO
bass-recorder|fr|Flûte à bec basse|name|MIMO
bass-recorder|de|Bassblockflöte|name|MIMO
bass-recorder|de|Baßflöte|variant|MIMO
bass-recorder|de|Bassflöte|variant|MIMO
bass-recorder|de|Baßblockflöte|variant|MIMO
bass-recorder|it|Flauto dolce basso|name|MIMO
bass-recorder|es|Flauta de pico baja|variant|MIMO
bass-recorder|es|Flauta dulce baja|variant|MIMO
bass-recorder|nl|Basblokfluit|name|MIMO
great-bass-recorder|en|Great bass recorder|name|MIMO
great-bass-recorder|fr|Flûte à bec contrebasse|variant|MIMO
great-bass-recorder|de|Großbassblockflöte|name|MIMO
great-bass-recorder|de|Großbaßblockflöte|variant|MIMO
great-bass-recorder|de|Großbaßflöte|variant|MIMO
great-bass-recorder|de|Großbassflöte|variant|MIMO
great-bass-recorder|it|Flauto dolce contrabbasso|variant|MIMO
great-bass-recorder|es|Flauta de pico baja|variant|MIMO
great-bass-recorder|nl|Contrabasblokfluit|variant|MIMO
oboe|en|Oboe|name|MIMO
oboe|en|oboe|name|IAML
oboe|en|french hautboy|variant|IAML
oboe|en|hautboy|variant|IAML
oboe|en|hoboe|variant|IAML
oboe|en|oboes|plural|MIMO
oboe|en|Ob.|abbreviation|BLAKE
oboe|en|Ob.|abbreviation|WISE
oboe|fr|Hautbois|name|MIMO
oboe|fr|hautbois|name|IAML
oboe|fr|haut-bois|variant|IAML
oboe|fr|hautbois|plural|MIMO
oboe|de|Oboe|name|MIMO
oboe|de|Oboe|name|IAML
oboe|de|Hautboy|variant|IAML
oboe|de|Hoboe|variant|IAML
oboe|de|Hoboy|variant|IAML
oboe|de|Oboen|plural|MIMO
oboe|de|Ob.|abbreviation|CKNA
oboe|it|Oboe|name|MIMO
oboe|it|oboe|name|IAML
oboe|it|oboi|plural|MIMO
oboe|it|Ob.|abbreviation|COLZ
oboe|es|Oboe|name|MIMO
oboe|es|oboe|name|IAML
oboe|es|oboes|plural|MIMO
oboe|nl|Hobo|name|MIMO
oboe|nl|hobo’s|plural|MIMO
oboe-e-flat|en|Oboe|name|MIMO
oboe-e-flat|en|oboe|name|IAML
oboe-e-flat|en|french hautboy|variant|IAML
oboe-e-flat|en|hautboy|variant|IAML
oboe-e-flat|en|hoboe|variant|IAML
oboe-e-flat|en|oboes|plural|MIMO
oboe-e-flat|en|Ob. Eb|abbreviation|BLAKE
oboe-e-flat|en|Ob. Eb|abbreviation|WISE
oboe-e-flat|fr|Hautbois|name|MIMO
oboe-e-flat|fr|hautbois|name|IAML
oboe-e-flat|fr|hautbois|name|KOE
oboe-e-flat|fr|haut-bois|variant|IAML
oboe-e-flat|fr|hautbois|plural|MIMO
oboe-e-flat|de|Oboe|name|MIMO
oboe-e-flat|de|Oboe|name|IAML
oboe-e-flat|de|Hautboy|variant|IAML
oboe-e-flat|de|Hoboe|variant|IAML
oboe-e-flat|de|Hoboy|variant|IAML
oboe-e-flat|de|Oboen|plural|MIMO
oboe-e-flat|de|Ob. Es|abbreviation|CKNA
oboe-e-flat|it|Oboe|name|MIMO
oboe-e-flat|it|oboe|name|IAML
oboe-e-flat|it|oboi|plural|MIMO
oboe-e-flat|it|Ob. mib|abbreviation|COLZ
oboe-e-flat|es|Oboe|name|MIMO
oboe-e-flat|es|oboe|name|IAML
oboe-e-flat|es|oboes|plural|MIMO
oboe-e-flat|nl|Hobo|name|MIMO
oboe-e-flat|nl|hobo’s|plural|MIMO
oboe-d-amore|en|Oboe d'amore|name|MIMO
oboe-d-amore|en|oboe d'amore|name|IAML
oboe-d-amore|fr|Hautbois d'amour|name|MIMO
oboe-d-amore|fr|hautbois d'amour|name|IAML
oboe-d-amore|fr|hautbois d’amour|name|KOE
oboe-d-amore|de|Oboe d'amore|name|MIMO
oboe-d-amore|de|Oboe d’amore|name|IAML
oboe-d-amore|de|Liebesoboe|variant|MIMO
oboe-d-amore|de|liebesoboe|variant|IAML
oboe-d-amore|it|Oboe d'amore|name|MIMO
oboe-d-amore|it|oboe d'amore|name|IAML
oboe-d-amore|es|Oboe de amor|name|MIMO
oboe-d-amore|es|oboe de amor|name|IAML
oboe-d-amore|es|oboe d'amore|variant|IAML
oboe-d-amore|nl|Oboe d'amore|name|MIMO
english-horn|en|English horn|name|MIMO
english-horn|en|english horn|name|IAML
english-horn|en|Cor anglais|variant|MIMO
english-horn|en|E. Hn. (C. A.)|abbreviation|BLAKE
english-horn|en|E. Hn. (C. A.)|abbreviation|WISE
english-horn|fr|Cor anglais|name|MIMO
english-horn|fr|cor anglais|name|IAML
english-horn|fr|cor anglais|name|KOE
english-horn|fr|taille de hautbois d'amour|variant|IAML
english-horn|de|Englischhorn|name|MIMO
english-horn|de|Englischhorn|name|IAML
english-horn|de|Englisches Horn|variant|MIMO
english-horn|de|englisches Horn|variant|IAML
english-horn|it|Corno inglese|name|MIMO
english-horn|it|corno inglese|name|IAML
english-horn|es|corno inglés|name|IAML
english-horn|es|corno inglés|name|RALV
english-horn|es|Cuerno inglés|variant|MIMO
english-horn|nl|Engelse hoorn|variant|MIMO
oboe-da-caccia|en|Oboe da caccia|name|MIMO
oboe-da-caccia|en|oboe da caccia|name|IAML
oboe-da-caccia|fr|Hautbois de chasse|name|MIMO
oboe-da-caccia|fr|hautbois de chasse|name|IAML
oboe-da-caccia|de|Oboe da caccia|name|MIMO
oboe-da-caccia|de|Jagdoboe|variant|MIMO
oboe-da-caccia|de|jagd-hautboy|variant|IAML
oboe-da-caccia|de|jagdoboe|variant|IAML
oboe-da-caccia|de|2ald hautbois|variant|IAML
oboe-da-caccia|it|Oboe da caccia|name|MIMO
oboe-da-caccia|it|oboe da caccia|name|IAML
oboe-da-caccia|es|Oboe de caza|variant|MIMO
oboe-da-caccia|es|oboe de caza|variant|IAML
oboe-da-caccia|nl|Oboe da caccia|name|MIMO
bass-oboe|en|Bass oboe|name|MIMO
bass-oboe|en|B. Ob.|abbreviation|BLAKE
bass-oboe|fr|hautbois baryton|name|KOE
bass-oboe|fr|Hautbois basse|variant|MIMO
bass-oboe|de|Bassoboe|name|MIMO
bass-oboe|de|Baßoboe|variant|MIMO
bass-oboe|it|Oboe basso|name|MIMO
bass-oboe|es|Oboe bajo|name|MIMO
bass-oboe|nl|Bashobo|name|MIMO
heckelphone|en|Heckelphone|name|MIMO
heckelphone|en|heckelphone|name|IAML
heckelphone|en|Heck.|abbreviation|WISE
heckelphone|fr|Heckelphone|name|MIMO
heckelphone|fr|heckelphone|name|IAML
heckelphone|de|Heckelphon|name|MIMO
heckelphone|de|heckelphon|name|IAML
heckelphone|it|Heckelphon|name|MIMO
heckelphone|it|heckelphon|name|IAML
heckelphone|it|heckelfono|variant|IAML
heckelphone|es|heckelfón|name|IAML
heckelphone|es|Heckelphone|variant|MIMO
heckelphone|nl|Heckelphone|variant|MIMO
bassoon|en|Bassoon|name|MIMO
bassoon|en|bassoon|name|IAML
bassoon|en|bassoons|plural|MIMO
bassoon|en|Bn.|abbreviation|WISE
bassoon|fr|Basson|name|MIMO
bassoon|fr|basson|name|IAML
bassoon|fr|fagot|variant|IAML
bassoon|fr|bassons|plural|MIMO
bassoon|de|Fagott|name|MIMO
bassoon|de|Fagott|name|IAML
bassoon|de|Choristfagott|variant|IAML
bassoon|de|Fagotte|plural|MIMO
bassoon|de|Fg.|abbreviation|CKNA
bassoon|it|Fagotto|name|MIMO
bassoon|it|fagotto|name|IAML
bassoon|it|bassono|variant|IAML
bassoon|it|fagotti|plural|MIMO
bassoon|it|Fg.|abbreviation|COLZ
bassoon|es|Fagot|name|MIMO
bassoon|es|fagot|name|IAML
bassoon|es|bajon|variant|IAML
bassoon|es|fagotes|plural|MIMO
bassoon|nl|Fagot|name|MIMO
contrabassoon|en|contrabassoon|name|IAML
contrabassoon|en|Double bassoon|variant|MIMO
contrabassoon|en|double bassoon|variant|IAML
contrabassoon|en|contraforte|variant|IAML
contrabassoon|en|double bassoon|variant|NIHON
contrabassoon|en|Cbn. (D. Bn.)|abbreviation|WISE
contrabassoon|fr|Contrebasson|name|MIMO
contrabassoon|fr|contrebasson|name|IAML
contrabassoon|de|Kontrafagott|name|MIMO
contrabassoon|de|Kontrafagott|name|IAML
contrabassoon|de|Contrabassophon|variant|IAML
contrabassoon|de|Klaviaturkontrafagott|variant|IAML
contrabassoon|de|Kontraforte|variant|IAML
contrabassoon|it|Controfagotto|name|MIMO
contrabassoon|it|controfagotto|name|IAML
contrabassoon|it|bassono grosso|variant|IAML
contrabassoon|it|contraforte|variant|IAML
contrabassoon|it|fagottone|variant|IAML
contrabassoon|it|contrafagotto|variant|NIHON
contrabassoon|es|Contrafagot|name|MIMO
contrabassoon|es|contrafagot|name|IAML
contrabassoon|es|contrabajon|variant|IAML
contrabassoon|es|contrafagote|variant|IAML
contrabassoon|nl|Contrafagot|name|MIMO
tenoroon|en|Tenoroon|name|MIMO
tenoroon|en|tenoroon|name|IAML
tenoroon|fr|basson quinte|name|IAML
tenoroon|fr|Fagottino|variant|MIMO
tenoroon|de|Quintfagott|name|IAML
tenoroon|de|Tenorfagott|name|IAML
tenoroon|de|Tenoroon|variant|MIMO
tenoroon|it|fagottino|name|IAML
tenoroon|it|Tenoroon|variant|MIMO
tenoroon|it|caledonica|variant|IAML
tenoroon|it|fagotti-octavo|variant|IAML
tenoroon|it|fagotti-quarto|variant|IAML
tenoroon|es|Bajón tenor|variant|MIMO
tenoroon|nl|Tenoroon|variant|MIMO
dulcian|en|Dulcian|name|MIMO
dulcian|en|Curtal|name|MIMO
dulcian|en|dulcian|name|IAML
dulcian|en|curtal|name|IAML
dulcian|en|curtoll|variant|IAML
dulcian|en|curtaile|variant|IAML
dulcian|en|double courtaile|variant|IAML
dulcian|en|kortholt|variant|IAML
dulcian|fr|Dulcian|variant|MIMO
dulcian|fr|dolçaine|variant|IAML
dulcian|de|Dulzian|name|MIMO
dulcian|de|Dulzian|name|IAML
dulcian|de|Corthol|variant|IAML
dulcian|de|Curthol|variant|IAML
dulcian|de|Dolzian|variant|IAML
dulcian|de|Kortholt|variant|IAML
dulcian|it|Dulciana|name|MIMO
dulcian|it|dulciana|name|IAML
dulcian|it|dolciana|variant|IAML
dulcian|it|dolcesuono|variant|IAML
dulcian|it|dolciano|variant|IAML
dulcian|it|dolzana|variant|IAML
dulcian|it|dolzone|variant|IAML
dulcian|es|bajón|name|IAML
dulcian|es|Dulzaina|variant|MIMO
dulcian|es|dulción|variant|IAML
dulcian|nl|Dulciaan|name|MIMO
clarinet-a-flat|en|piccolo clarinet|variant|IAML
clarinet-a-flat|en|Cl. Ab|abbreviation|WISE
clarinet-a-flat|fr|petite clarinette|name|KOE
clarinet-a-flat|fr|clarinetto piccolo|variant|IAML
clarinet-a-flat|it|clarinette piccolo|variant|IAML
clarinet-g-high|en|piccolo clarinet|variant|IAML
clarinet-g-high|en|Cl. G|abbreviation|WISE
clarinet-g-high|fr|clarinetto piccolo|variant|IAML
clarinet-g-high|it|clarinette piccolo|variant|IAML
clarinet-f-high|en|piccolo clarinet|variant|IAML
clarinet-f-high|en|Cl. F|abbreviation|WISE
clarinet-f-high|fr|clarinetto piccolo|variant|IAML
clarinet-f-high|it|clarinette piccolo|variant|IAML
clarinet-e-flat|en|piccolo clarinet|variant|IAML
clarinet-e-flat|en|Cl. Eb|abbreviation|WISE
clarinet-e-flat|fr|petite clarinette|name|KOE
clarinet-e-flat|fr|clarinetto piccolo|variant|IAML
clarinet-e-flat|it|clarinette piccolo|variant|IAML
clarinet-e-flat|es|clarinete en mi bemol|variant|RALV
clarinet-d|en|piccolo clarinet|variant|IAML
clarinet-d|en|Cl. D|abbreviation|WISE
clarinet-d|fr|clarinetto piccolo|variant|IAML
clarinet-d|it|clarinette piccolo|variant|IAML
clarinet-c|en|Clarinet|name|MIMO
clarinet-c|en|clarinet|name|IAML
clarinet-c|en|clarinets|plural|MIMO
clarinet-c|en|Cl. C|abbreviation|WISE
clarinet-c|fr|Clarinette|name|MIMO
clarinet-c|fr|clarinette|name|IAML
clarinet-c|fr|clarinettes|plural|MIMO
clarinet-c|de|Klarinette|name|MIMO
clarinet-c|de|Klarinette|name|IAML
clarinet-c|de|Klarinetten|plural|MIMO
clarinet-c|it|Clarinetto|name|MIMO
clarinet-c|it|clarinetto|name|IAML
clarinet-c|it|clarinetti|plural|MIMO
clarinet-c|it|Cl. do|abbreviation|COLZ
clarinet-c|es|Clarinete|name|MIMO
clarinet-c|es|clarinete|name|IAML
clarinet-c|es|clarinetes|plural|MIMO
clarinet-c|nl|Klarinet|name|MIMO
clarinet-c|nl|klarinetten|plural|MIMO
clarinet-b-flat|en|Clarinet|name|MIMO
clarinet-b-flat|en|clarinet|name|IAML
clarinet-b-flat|en|clarinets|plural|MIMO
clarinet-b-flat|en|Cl. Bb|abbreviation|WISE
clarinet-b-flat|fr|Clarinette|name|MIMO
clarinet-b-flat|fr|clarinette|name|IAML
clarinet-b-flat|fr|clarinette|name|EB11
clarinet-b-flat|fr|clarinette|name|GRV1
clarinet-b-flat|fr|clarinettes|plural|MIMO
clarinet-b-flat|de|Klarinette|name|MIMO
clarinet-b-flat|de|Klarinette|name|IAML
clarinet-b-flat|de|Klarinette|name|EB11
clarinet-b-flat|de|Klarinette|name|GRV1
clarinet-b-flat|de|Klarinetten|plural|MIMO
clarinet-b-flat|it|Clarinetto|name|MIMO
clarinet-b-flat|it|clarinetto|name|IAML
clarinet-b-flat|it|clarinetto|name|EB11
clarinet-b-flat|it|clarinetto|name|GRV1
clarinet-b-flat|it|clarinetti|plural|MIMO
clarinet-b-flat|it|Cl. sib|abbreviation|COLZ
clarinet-b-flat|es|Clarinete|name|MIMO
clarinet-b-flat|es|clarinete|name|IAML
clarinet-b-flat|es|clarinete|name|RALV
clarinet-b-flat|es|clarinetes|plural|MIMO
clarinet-b-flat|nl|Klarinet|name|MIMO
clarinet-b-flat|nl|klarinetten|plural|MIMO
clarinet-a|en|Clarinet|name|MIMO
clarinet-a|en|clarinet|name|IAML
clarinet-a|en|clarinets|plural|MIMO
clarinet-a|en|Cl. A|abbreviation|WISE
clarinet-a|fr|Clarinette|name|MIMO
clarinet-a|fr|clarinette|name|IAML
clarinet-a|fr|clarinettes|plural|MIMO
clarinet-a|de|Klarinette|name|MIMO
clarinet-a|de|Klarinette|name|IAML
clarinet-a|de|Klarinetten|plural|MIMO
clarinet-a|it|Clarinetto|name|MIMO
clarinet-a|it|clarinetto|name|IAML
clarinet-a|it|clarinetti|plural|MIMO
clarinet-a|it|Cl. la|abbreviation|COLZ
clarinet-a|es|Clarinete|name|MIMO
clarinet-a|es|clarinete|name|IAML
clarinet-a|es|clarinete|name|RALV
clarinet-a|es|clarinetes|plural|MIMO
clarinet-a|nl|Klarinet|name|MIMO
clarinet-a|nl|klarinetten|plural|MIMO
basset-clarinet-a|en|Basset clarinet|name|MIMO
basset-clarinet-a|fr|Clarinette de basset|name|MIMO
basset-clarinet-a|de|Bassettklarinette|name|MIMO
basset-clarinet-a|it|Clarinetto di bassetto|name|MIMO
basset-clarinet-a|nl|Bassetklarinet|name|MIMO
clarinette-d-amour-g|en|Clarinette d'amour|name|MIMO
clarinette-d-amour-g|fr|Clarinette d'amour|name|MIMO
clarinette-d-amour-g|de|Liebesklarinette|name|MIMO
clarinette-d-amour-g|it|Clarinetto d'amore|name|MIMO
clarinette-d-amour-g|es|Clarinete de amor|name|MIMO
clarinette-d-amour-g|nl|Clarinette d'amour|variant|MIMO
basset-horn|en|Basset horn|name|MIMO
basset-horn|en|basset-horn|name|IAML
basset-horn|fr|Cor de basset|name|MIMO
basset-horn|fr|cor de basset|name|IAML
basset-horn|de|Bassetthorn|name|MIMO
basset-horn|de|bassetthorn|name|IAML
basset-horn|it|Corno di bassetto|name|MIMO
basset-horn|it|corno di bassetto|name|IAML
basset-horn|es|Corno di bassetto|name|MIMO
basset-horn|es|corno di bassetto|name|IAML
basset-horn|es|clarinete tenor|variant|IAML
basset-horn|es|cuerno de bajete|variant|IAML
basset-horn|nl|Bassethoorn|name|MIMO
alto-clarinet-e-flat|en|Alto clarinet|name|MIMO
alto-clarinet-e-flat|fr|Clarinette alto|name|MIMO
alto-clarinet-e-flat|fr|clarinette alto|name|KOE
alto-clarinet-e-flat|de|Altklarinette|name|MIMO
alto-clarinet-e-flat|it|Clarinetto contralto|name|MIMO
alto-clarinet-e-flat|es|Clarinete contralto|variant|MIMO
alto-clarinet-e-flat|nl|Altklarinet|name|MIMO
alto-clarinet-f|en|Alto clarinet|name|MIMO
alto-clarinet-f|fr|Clarinette alto|name|MIMO
alto-clarinet-f|de|Altklarinette|name|MIMO
alto-clarinet-f|it|Clarinetto contralto|name|MIMO
alto-clarinet-f|es|Clarinete contralto|variant|MIMO
alto-clarinet-f|nl|Altklarinet|name|MIMO
bass-clarinet-b-flat|en|Bass clarinet|name|MIMO
bass-clarinet-b-flat|en|bass clarinet|name|IAML
bass-clarinet-b-flat|en|B. Cl. Bb|abbreviation|BLAKE
bass-clarinet-b-flat|en|B. Cl. Bb|abbreviation|WISE
bass-clarinet-b-flat|fr|Clarinette basse|name|MIMO
bass-clarinet-b-flat|fr|clarinette basse|name|IAML
bass-clarinet-b-flat|de|Bassklarinette|name|MIMO
bass-clarinet-b-flat|de|Baßklarinette|variant|MIMO
bass-clarinet-b-flat|it|Clarinetto basso|name|MIMO
bass-clarinet-b-flat|it|clarinetto basso|name|IAML
bass-clarinet-b-flat|it|Cl. b. sib|abbreviation|COLZ
bass-clarinet-b-flat|es|Clarinete bajo|name|MIMO
bass-clarinet-b-flat|es|clarinete bajo|name|RALV
bass-clarinet-b-flat|nl|Basklarinet|name|MIMO
bass-clarinet-a|en|Bass clarinet|name|MIMO
bass-clarinet-a|en|bass clarinet|name|IAML
bass-clarinet-a|en|B. Cl. A|abbreviation|BLAKE
bass-clarinet-a|en|B. Cl. A|abbreviation|WISE
bass-clarinet-a|fr|Clarinette basse|name|MIMO
bass-clarinet-a|fr|clarinette basse|name|IAML
bass-clarinet-a|de|Bassklarinette|name|MIMO
bass-clarinet-a|de|Baßklarinette|variant|MIMO
bass-clarinet-a|it|Clarinetto basso|name|MIMO
bass-clarinet-a|it|clarinetto basso|name|IAML
bass-clarinet-a|it|Cl. b. la|abbreviation|COLZ
bass-clarinet-a|es|Clarinete bajo|name|MIMO
bass-clarinet-a|nl|Basklarinet|name|MIMO
bass-clarinet-c|en|Bass clarinet|name|MIMO
bass-clarinet-c|en|bass clarinet|name|IAML
bass-clarinet-c|en|B. Cl. C|abbreviation|BLAKE
bass-clarinet-c|en|B. Cl. C|abbreviation|WISE
bass-clarinet-c|fr|Clarinette basse|name|MIMO
bass-clarinet-c|fr|clarinette basse|name|IAML
bass-clarinet-c|de|Bassklarinette|name|MIMO
bass-clarinet-c|de|Baßklarinette|variant|MIMO
bass-clarinet-c|it|Clarinetto basso|name|MIMO
bass-clarinet-c|it|clarinetto basso|name|IAML
bass-clarinet-c|it|Cl. b. do|abbreviation|COLZ
bass-clarinet-c|es|Clarinete bajo|name|MIMO
bass-clarinet-c|nl|Basklarinet|name|MIMO
contra-alto-clarinet-e-flat|fr|clarinette contralto|name|KOE
contrabass-clarinet-b-flat|en|Contrabass clarinet|name|MIMO
contrabass-clarinet-b-flat|en|Cb. Cl. Bb|abbreviation|BLAKE
contrabass-clarinet-b-flat|fr|Clarinette contrebasse|name|MIMO
contrabass-clarinet-b-flat|fr|clarinette contrebasse|name|KOE
contrabass-clarinet-b-flat|de|Kontrabassklarinette|name|MIMO
contrabass-clarinet-b-flat|de|Kontrabaßklarinette|variant|MIMO
contrabass-clarinet-b-flat|it|Clarinetto contrabbasso|name|MIMO
contrabass-clarinet-b-flat|es|Clarinete contrabajo|name|MIMO
contrabass-clarinet-b-flat|nl|Contrabasklarinet|name|MIMO
tarogato|en|Tarogato|variant|MIMO
tarogato|fr|Tarogato|variant|MIMO
tarogato|de|Tárogató|variant|MIMO
tarogato|it|Tarogato|name|MIMO
tarogato|es|Tarogato|name|MIMO
tarogato|nl|Tarogato|name|MIMO
soprano-saxophone-b-flat|en|Soprano saxophone|name|MIMO
soprano-saxophone-b-flat|en|S. Sax. Bb|abbreviation|BLAKE
soprano-saxophone-b-flat|fr|Saxophone soprano|name|MIMO
soprano-saxophone-b-flat|de|Sopransaxophon|name|MIMO
soprano-saxophone-b-flat|de|Sopransaxofon|variant|MIMO
soprano-saxophone-b-flat|it|Sassofono soprano|name|MIMO
soprano-saxophone-b-flat|es|Saxofón soprano|name|MIMO
soprano-saxophone-b-flat|es|saxofón soprano|name|RALV
soprano-saxophone-b-flat|nl|Sopraansaxofoon|name|MIMO
soprano-saxophone-b-flat|nl|sopraansaxofoon|name|ZEEL
soprano-saxophone-c|en|Soprano saxophone|name|MIMO
soprano-saxophone-c|en|S. Sax. C|abbreviation|BLAKE
soprano-saxophone-c|fr|Saxophone soprano|name|MIMO
soprano-saxophone-c|de|Sopransaxophon|name|MIMO
soprano-saxophone-c|de|Sopransaxofon|variant|MIMO
soprano-saxophone-c|it|Sassofono soprano|name|MIMO
soprano-saxophone-c|es|Saxofón soprano|name|MIMO
soprano-saxophone-c|nl|Sopraansaxofoon|name|MIMO
alto-saxophone-e-flat|en|Alto saxophone|name|MIMO
alto-saxophone-e-flat|en|A. Sax. Eb|abbreviation|BLAKE
alto-saxophone-e-flat|fr|Saxophone alto|name|MIMO
alto-saxophone-e-flat|de|Altsaxophon|name|MIMO
alto-saxophone-e-flat|de|Altsaxofon|variant|MIMO
alto-saxophone-e-flat|it|Sassofono contralto|name|MIMO
alto-saxophone-e-flat|it|sassofono|variant|JOHN
alto-saxophone-e-flat|es|saxofón alto|name|RALV
alto-saxophone-e-flat|es|Saxofón contralto|variant|MIMO
alto-saxophone-e-flat|nl|Altsaxofoon|name|MIMO
alto-saxophone-e-flat|nl|altsaxofoon|name|ZEEL
tenor-saxophone-b-flat|en|Tenor saxophone|name|MIMO
tenor-saxophone-b-flat|en|T. Sax. Bb|abbreviation|BLAKE
tenor-saxophone-b-flat|fr|Saxophone ténor|name|MIMO
tenor-saxophone-b-flat|de|Tenorsaxophon|name|MIMO
tenor-saxophone-b-flat|de|Tenorsaxofon|variant|MIMO
tenor-saxophone-b-flat|it|Sassofono tenore|name|MIMO
tenor-saxophone-b-flat|es|Saxofón tenor|name|MIMO
tenor-saxophone-b-flat|nl|Tenorsaxofoon|name|MIMO
tenor-saxophone-b-flat|nl|tenorsaxofoon|name|ZEEL
baritone-saxophone-e-flat|en|Baritone saxophone|name|MIMO
baritone-saxophone-e-flat|fr|Saxophone baryton|name|MIMO
baritone-saxophone-e-flat|de|Baritonsaxophon|name|MIMO
baritone-saxophone-e-flat|de|Baritonsaxofon|variant|MIMO
baritone-saxophone-e-flat|de|Barytonsaxophon|variant|MIMO
baritone-saxophone-e-flat|it|Sassofono baritono|name|MIMO
baritone-saxophone-e-flat|es|Saxofón barítono|name|MIMO
baritone-saxophone-e-flat|nl|Baritonsaxofoon|name|MIMO
baritone-saxophone-e-flat|nl|baritonsaxofoon|name|ZEEL
bass-saxophone-b-flat|en|Bass saxophone|name|MIMO
bass-saxophone-b-flat|fr|Saxophone basse|name|MIMO
bass-saxophone-b-flat|de|Basssaxophon|name|MIMO
bass-saxophone-b-flat|de|Baßsaxophon|variant|MIMO
bass-saxophone-b-flat|it|Sassofono basso|name|MIMO
bass-saxophone-b-flat|es|Saxofón bajo|name|MIMO
bass-saxophone-b-flat|nl|Bassaxofoon|name|MIMO
bass-saxophone-b-flat|nl|bassaxofoon|name|ZEEL
sarrusophone-alto-e-flat|fr|sarrusophone alto|name|KOE
sarrusophone-tenor-b-flat|fr|sarrusophone ténor|name|KOE
sarrusophone-baritone-e-flat|fr|sarrusophone baryton|name|KOE
sarrusophone-bass-b-flat|fr|sarrusophone basse|name|KOE
sarrusophone-contrabass-e-flat|fr|sarrusophone contrebasse|name|KOE
horn-f|en|Horn|name|MIMO
horn-f|en|horn|name|IAML
horn-f|en|ballad horn|variant|IAML
horn-f|en|chromatic horn|variant|IAML
horn-f|en|french horn|variant|IAML
horn-f|en|horns|plural|MIMO
horn-f|en|Hn.|abbreviation|BLAKE
horn-f|en|Hn.|abbreviation|WISE
horn-f|fr|Cor|name|MIMO
horn-f|fr|cor|name|IAML
horn-f|fr|cor d'harmonie|variant|IAML
horn-f|fr|cor naturel|variant|IAML
horn-f|fr|cor simple|variant|IAML
horn-f|fr|cor à piston|variant|IAML
horn-f|fr|trompe|variant|IAML
horn-f|fr|cors|plural|MIMO
horn-f|fr|Cor|abbreviation|GDRM
horn-f|de|Horn|name|MIMO
horn-f|de|Horn|name|IAML
horn-f|de|Waldhorn|variant|MIMO
horn-f|de|Heerhorn|variant|IAML
horn-f|de|Herhorn|variant|IAML
horn-f|de|Inventionshorn|variant|IAML
horn-f|de|Jäger Trommet|variant|IAML
horn-f|de|Konzerthorn|variant|IAML
horn-f|de|Oktavhorn|variant|IAML
horn-f|de|Primhorn|variant|IAML
horn-f|de|Ventilhorn|variant|IAML
horn-f|de|Wic-Horn|variant|IAML
horn-f|de|Hörner|plural|MIMO
horn-f|it|Corno|name|MIMO
horn-f|it|corno|name|IAML
horn-f|it|corno a macchina|variant|IAML
horn-f|it|corno da tirarsi|variant|IAML
horn-f|it|corno francese|variant|IAML
horn-f|it|corno naturale|variant|IAML
horn-f|it|corni|plural|MIMO
horn-f|es|Trompa|name|MIMO
horn-f|es|trompa|name|IAML
horn-f|es|trompa|name|MW-WW
horn-f|es|corno francés|variant|IAML
horn-f|es|trompas|plural|MIMO
horn-f|nl|Hoorn|name|MIMO
horn-f|nl|hoorns|plural|MIMO
horn-e-flat|en|Horn|name|MIMO
horn-e-flat|en|horn|name|IAML
horn-e-flat|en|ballad horn|variant|IAML
horn-e-flat|en|chromatic horn|variant|IAML
horn-e-flat|en|french horn|variant|IAML
horn-e-flat|en|horns|plural|MIMO
horn-e-flat|en|Hn. Eb|abbreviation|BLAKE
horn-e-flat|en|Hn. Eb|abbreviation|WISE
horn-e-flat|fr|Cor|name|MIMO
horn-e-flat|fr|cor|name|IAML
horn-e-flat|fr|cor d'harmonie|variant|IAML
horn-e-flat|fr|cor naturel|variant|IAML
horn-e-flat|fr|cor simple|variant|IAML
horn-e-flat|fr|cor à piston|variant|IAML
horn-e-flat|fr|trompe|variant|IAML
horn-e-flat|fr|cors|plural|MIMO
horn-e-flat|fr|Cor mib|abbreviation|GDRM
horn-e-flat|de|Horn|name|MIMO
horn-e-flat|de|Horn|name|IAML
horn-e-flat|de|Waldhorn|variant|MIMO
horn-e-flat|de|Heerhorn|variant|IAML
horn-e-flat|de|Herhorn|variant|IAML
horn-e-flat|de|Inventionshorn|variant|IAML
horn-e-flat|de|Jäger Trommet|variant|IAML
horn-e-flat|de|Konzerthorn|variant|IAML
horn-e-flat|de|Oktavhorn|variant|IAML
horn-e-flat|de|Primhorn|variant|IAML
horn-e-flat|de|Ventilhorn|variant|IAML
horn-e-flat|de|Wic-Horn|variant|IAML
horn-e-flat|de|Hörner|plural|MIMO
horn-e-flat|it|Corno|name|MIMO
horn-e-flat|it|corno|name|IAML
horn-e-flat|it|corno a macchina|variant|IAML
horn-e-flat|it|corno da tirarsi|variant|IAML
horn-e-flat|it|corno francese|variant|IAML
horn-e-flat|it|corno naturale|variant|IAML
horn-e-flat|it|corni|plural|MIMO
horn-e-flat|es|Trompa|name|MIMO
horn-e-flat|es|trompa|name|IAML
horn-e-flat|es|corno francés|variant|IAML
horn-e-flat|es|trompas|plural|MIMO
horn-e-flat|nl|Hoorn|name|MIMO
horn-e-flat|nl|hoorns|plural|MIMO
natural-horn|en|Natural horn|name|MIMO
natural-horn|fr|Cor naturel|name|MIMO
natural-horn|de|Naturhorn|name|MIMO
natural-horn|it|Corno naturale|name|MIMO
natural-horn|es|Trompa natural|name|MIMO
natural-horn|nl|Naturhorn|variant|MIMO
trompe-de-chasse|en|Hunting horn|name|MIMO
trompe-de-chasse|en|hunting horn|name|IAML
trompe-de-chasse|en|hunting horns|plural|MIMO
trompe-de-chasse|fr|Trompe de chasse|name|MIMO
trompe-de-chasse|fr|trompe de chasse|name|IAML
trompe-de-chasse|fr|Cor de chasse|variant|MIMO
trompe-de-chasse|fr|Corne de chasse|variant|MIMO
trompe-de-chasse|fr|cor de chasse|variant|IAML
trompe-de-chasse|fr|huchet|variant|IAML
trompe-de-chasse|fr|trompes de chasse|plural|MIMO
trompe-de-chasse|de|Jagdhorn|variant|MIMO
trompe-de-chasse|de|Jagdhorn|variant|IAML
trompe-de-chasse|de|Hiefhorn|variant|IAML
trompe-de-chasse|de|Hifthorn|variant|IAML
trompe-de-chasse|de|Jägerhorn|variant|IAML
trompe-de-chasse|de|Waldhorn|variant|IAML
trompe-de-chasse|it|Corno da caccia|name|MIMO
trompe-de-chasse|it|corno da caccia|name|IAML
trompe-de-chasse|it|tromba da caccia|variant|IAML
trompe-de-chasse|it|corni da caccia|plural|MIMO
trompe-de-chasse|es|Trompa de caza|name|MIMO
trompe-de-chasse|es|trompa de caza|name|IAML
trompe-de-chasse|es|corneta de monte|variant|IAML
trompe-de-chasse|es|cuerno de caza|variant|IAML
trompe-de-chasse|es|trompas de caza|plural|MIMO
trompe-de-chasse|nl|Jachthoorn|name|MIMO
trompe-de-chasse|nl|jachthoorns|plural|MIMO
mellophone-f|en|Mellophone|name|MIMO
mellophone-f|fr|Mellophone|name|MIMO
mellophone-f|fr|Cor alto|variant|MIMO
mellophone-f|de|Mellophone|variant|MIMO
mellophone-f|it|Mellophone|variant|MIMO
mellophone-f|es|Melófono|name|MIMO
mellophone-f|nl|Mellofoon|name|MIMO
mellophone-e-flat|en|Mellophone|name|MIMO
mellophone-e-flat|fr|Mellophone|name|MIMO
mellophone-e-flat|fr|Cor alto|variant|MIMO
mellophone-e-flat|de|Mellophone|variant|MIMO
mellophone-e-flat|it|Mellophone|variant|MIMO
mellophone-e-flat|es|Melófono|name|MIMO
mellophone-e-flat|nl|Mellofoon|name|MIMO
posthorn|en|Post horn|variant|MIMO
posthorn|en|post horn|variant|IAML
posthorn|en|clarion|variant|IAML
posthorn|fr|cornet de poste|name|IAML
posthorn|fr|Cor de poste|variant|MIMO
posthorn|fr|cornet de postillon|variant|IAML
posthorn|de|Posthorn|name|MIMO
posthorn|de|Posthorn|name|IAML
posthorn|it|cornetta da postiglione|name|IAML
posthorn|it|Corno da posta|variant|MIMO
posthorn|it|corno di posta|variant|IAML
posthorn|es|Corneta de posta|name|MIMO
posthorn|es|corneta de posta|name|IAML
posthorn|es|corneta de postillón|variant|IAML
posthorn|es|trompa de posta|variant|IAML
posthorn|es|trompa de postillón|variant|IAML
posthorn|nl|Posthoorn|name|MIMO
trumpet-b-flat|en|Trumpet|name|MIMO
trumpet-b-flat|en|trumpet|name|IAML
trumpet-b-flat|en|chromatic trumpet|variant|IAML
trumpet-b-flat|en|echo trumpet|variant|IAML
trumpet-b-flat|en|valved trumpet|variant|IAML
trumpet-b-flat|en|trumpets|plural|MIMO
trumpet-b-flat|en|Tpt. Bb|abbreviation|BLAKE
trumpet-b-flat|en|Tpt. Bb|abbreviation|WISE
trumpet-b-flat|fr|Trompette|name|MIMO
trumpet-b-flat|fr|trompette|name|IAML
trumpet-b-flat|fr|trompettes|plural|MIMO
trumpet-b-flat|de|Trompete|name|MIMO
trumpet-b-flat|de|Trompete|name|IAML
trumpet-b-flat|de|Clarino|variant|IAML
trumpet-b-flat|de|Inventionstrompete|variant|IAML
trumpet-b-flat|de|Stopftrompete|variant|IAML
trumpet-b-flat|de|Trompeten|plural|MIMO
trumpet-b-flat|de|Trp. B|abbreviation|CKNA
trumpet-b-flat|it|Tromba|name|MIMO
trumpet-b-flat|it|tromba|name|IAML
trumpet-b-flat|it|tromba a coulisse|variant|IAML
trumpet-b-flat|it|tromba da tirare|variant|IAML
trumpet-b-flat|it|tromba dell'aida|variant|IAML
trumpet-b-flat|it|tromba diritta|variant|IAML
trumpet-b-flat|it|trombe|plural|MIMO
trumpet-b-flat|it|Tr. (Tbe.) sib|abbreviation|COLZ
trumpet-b-flat|es|Trompeta|name|MIMO
trumpet-b-flat|es|trompeta|name|IAML
trumpet-b-flat|es|trombeta|variant|IAML
trumpet-b-flat|es|trompetas|plural|MIMO
trumpet-b-flat|nl|Trompet|name|MIMO
trumpet-b-flat|nl|trompetten|plural|MIMO
trumpet-c|en|Trumpet|name|MIMO
trumpet-c|en|trumpet|name|IAML
trumpet-c|en|chromatic trumpet|variant|IAML
trumpet-c|en|echo trumpet|variant|IAML
trumpet-c|en|valved trumpet|variant|IAML
trumpet-c|en|trumpets|plural|MIMO
trumpet-c|en|Tpt. C|abbreviation|BLAKE
trumpet-c|en|Tpt. C|abbreviation|WISE
trumpet-c|fr|Trompette|name|MIMO
trumpet-c|fr|trompette|name|IAML
trumpet-c|fr|trompettes|plural|MIMO
trumpet-c|de|Trompete|name|MIMO
trumpet-c|de|Trompete|name|IAML
trumpet-c|de|Clarino|variant|IAML
trumpet-c|de|Inventionstrompete|variant|IAML
trumpet-c|de|Stopftrompete|variant|IAML
trumpet-c|de|Trompeten|plural|MIMO
trumpet-c|de|Trp. C|abbreviation|CKNA
trumpet-c|it|Tromba|name|MIMO
trumpet-c|it|tromba|name|IAML
trumpet-c|it|tromba a coulisse|variant|IAML
trumpet-c|it|tromba da tirare|variant|IAML
trumpet-c|it|tromba dell'aida|variant|IAML
trumpet-c|it|tromba diritta|variant|IAML
trumpet-c|it|trombe|plural|MIMO
trumpet-c|it|Tr. (Tbe.) do|abbreviation|COLZ
trumpet-c|es|Trompeta|name|MIMO
trumpet-c|es|trompeta|name|IAML
trumpet-c|es|trombeta|variant|IAML
trumpet-c|es|trompetas|plural|MIMO
trumpet-c|nl|Trompet|name|MIMO
trumpet-c|nl|trompetten|plural|MIMO
trumpet-a|en|Trumpet|name|MIMO
trumpet-a|en|trumpet|name|IAML
trumpet-a|en|chromatic trumpet|variant|IAML
trumpet-a|en|echo trumpet|variant|IAML
trumpet-a|en|valved trumpet|variant|IAML
trumpet-a|en|trumpets|plural|MIMO
trumpet-a|en|Tpt. A|abbreviation|BLAKE
trumpet-a|en|Tpt. A|abbreviation|WISE
trumpet-a|fr|Trompette|name|MIMO
trumpet-a|fr|trompette|name|IAML
trumpet-a|fr|trompettes|plural|MIMO
trumpet-a|de|Trompete|name|MIMO
trumpet-a|de|Trompete|name|IAML
trumpet-a|de|Clarino|variant|IAML
trumpet-a|de|Inventionstrompete|variant|IAML
trumpet-a|de|Stopftrompete|variant|IAML
trumpet-a|de|Trompeten|plural|MIMO
trumpet-a|de|Trp. A|abbreviation|CKNA
trumpet-a|it|Tromba|name|MIMO
trumpet-a|it|tromba|name|IAML
trumpet-a|it|tromba a coulisse|variant|IAML
trumpet-a|it|tromba da tirare|variant|IAML
trumpet-a|it|tromba dell'aida|variant|IAML
trumpet-a|it|tromba diritta|variant|IAML
trumpet-a|it|trombe|plural|MIMO
trumpet-a|it|Tr. (Tbe.) la|abbreviation|COLZ
trumpet-a|es|Trompeta|name|MIMO
trumpet-a|es|trompeta|name|IAML
trumpet-a|es|trombeta|variant|IAML
trumpet-a|es|trompetas|plural|MIMO
trumpet-a|nl|Trompet|name|MIMO
trumpet-a|nl|trompetten|plural|MIMO
trumpet-d|en|Trumpet|name|MIMO
trumpet-d|en|trumpet|name|IAML
trumpet-d|en|chromatic trumpet|variant|IAML
trumpet-d|en|echo trumpet|variant|IAML
trumpet-d|en|valved trumpet|variant|IAML
trumpet-d|en|trumpets|plural|MIMO
trumpet-d|en|Tpt. D|abbreviation|BLAKE
trumpet-d|en|Tpt. D|abbreviation|WISE
trumpet-d|fr|Trompette|name|MIMO
trumpet-d|fr|trompette|name|IAML
trumpet-d|fr|trompettes|plural|MIMO
trumpet-d|de|Trompete|name|MIMO
trumpet-d|de|Trompete|name|IAML
trumpet-d|de|Clarino|variant|IAML
trumpet-d|de|Inventionstrompete|variant|IAML
trumpet-d|de|Stopftrompete|variant|IAML
trumpet-d|de|Trompeten|plural|MIMO
trumpet-d|de|Trp. D|abbreviation|CKNA
trumpet-d|it|Tromba|name|MIMO
trumpet-d|it|tromba|name|IAML
trumpet-d|it|tromba a coulisse|variant|IAML
trumpet-d|it|tromba da tirare|variant|IAML
trumpet-d|it|tromba dell'aida|variant|IAML
trumpet-d|it|tromba diritta|variant|IAML
trumpet-d|it|trombe|plural|MIMO
trumpet-d|it|Tr. (Tbe.) re|abbreviation|COLZ
trumpet-d|es|Trompeta|name|MIMO
trumpet-d|es|trompeta|name|IAML
trumpet-d|es|trombeta|variant|IAML
trumpet-d|es|trompetas|plural|MIMO
trumpet-d|nl|Trompet|name|MIMO
trumpet-d|nl|trompetten|plural|MIMO
trumpet-e-flat|en|Trumpet|name|MIMO
trumpet-e-flat|en|trumpet|name|IAML
trumpet-e-flat|en|chromatic trumpet|variant|IAML
trumpet-e-flat|en|echo trumpet|variant|IAML
trumpet-e-flat|en|valved trumpet|variant|IAML
trumpet-e-flat|en|trumpets|plural|MIMO
trumpet-e-flat|en|Tpt. Eb|abbreviation|BLAKE
trumpet-e-flat|en|Tpt. Eb|abbreviation|WISE
trumpet-e-flat|fr|Trompette|name|MIMO
trumpet-e-flat|fr|trompette|name|IAML
trumpet-e-flat|fr|trompettes|plural|MIMO
trumpet-e-flat|de|Trompete|name|MIMO
trumpet-e-flat|de|Trompete|name|IAML
trumpet-e-flat|de|Clarino|variant|IAML
trumpet-e-flat|de|Inventionstrompete|variant|IAML
trumpet-e-flat|de|Stopftrompete|variant|IAML
trumpet-e-flat|de|Trompeten|plural|MIMO
trumpet-e-flat|de|Trp. Es|abbreviation|CKNA
trumpet-e-flat|it|Tromba|name|MIMO
trumpet-e-flat|it|tromba|name|IAML
trumpet-e-flat|it|tromba a coulisse|variant|IAML
trumpet-e-flat|it|tromba da tirare|variant|IAML
trumpet-e-flat|it|tromba dell'aida|variant|IAML
trumpet-e-flat|it|tromba diritta|variant|IAML
trumpet-e-flat|it|trombe|plural|MIMO
trumpet-e-flat|it|Tr. (Tbe.) mib|abbreviation|COLZ
trumpet-e-flat|es|Trompeta|name|MIMO
trumpet-e-flat|es|trompeta|name|IAML
trumpet-e-flat|es|trombeta|variant|IAML
trumpet-e-flat|es|trompetas|plural|MIMO
trumpet-e-flat|nl|Trompet|name|MIMO
trumpet-e-flat|nl|trompetten|plural|MIMO
trumpet-f|en|Trumpet|name|MIMO
trumpet-f|en|trumpet|name|IAML
trumpet-f|en|chromatic trumpet|variant|IAML
trumpet-f|en|echo trumpet|variant|IAML
trumpet-f|en|valved trumpet|variant|IAML
trumpet-f|en|trumpets|plural|MIMO
trumpet-f|en|Tpt. F|abbreviation|BLAKE
trumpet-f|en|Tpt. F|abbreviation|WISE
trumpet-f|fr|Trompette|name|MIMO
trumpet-f|fr|trompette|name|IAML
trumpet-f|fr|trompettes|plural|MIMO
trumpet-f|de|Trompete|name|MIMO
trumpet-f|de|Trompete|name|IAML
trumpet-f|de|Clarino|variant|IAML
trumpet-f|de|Inventionstrompete|variant|IAML
trumpet-f|de|Stopftrompete|variant|IAML
trumpet-f|de|Trompeten|plural|MIMO
trumpet-f|de|Trp. F|abbreviation|CKNA
trumpet-f|it|Tromba|name|MIMO
trumpet-f|it|tromba|name|IAML
trumpet-f|it|tromba a coulisse|variant|IAML
trumpet-f|it|tromba da tirare|variant|IAML
trumpet-f|it|tromba dell'aida|variant|IAML
trumpet-f|it|tromba diritta|variant|IAML
trumpet-f|it|trombe|plural|MIMO
trumpet-f|it|Tr. (Tbe.) fa|abbreviation|COLZ
trumpet-f|es|Trompeta|name|MIMO
trumpet-f|es|trompeta|name|IAML
trumpet-f|es|trombeta|variant|IAML
trumpet-f|es|trompetas|plural|MIMO
trumpet-f|nl|Trompet|name|MIMO
trumpet-f|nl|trompetten|plural|MIMO
natural-trumpet|en|Natural trumpet|name|MIMO
natural-trumpet|fr|Trompette naturelle|name|MIMO
natural-trumpet|de|Naturtrompete|name|MIMO
natural-trumpet|de|Langtrompete|variant|MIMO
natural-trumpet|it|Tromba naturale|name|MIMO
natural-trumpet|es|Trompeta natural|name|MIMO
natural-trumpet|nl|Natuurtrompet|name|MIMO
bass-trumpet-b-flat|en|Bass trumpet|name|MIMO
bass-trumpet-b-flat|fr|Trompette basse|name|MIMO
bass-trumpet-b-flat|fr|trompette basse|name|KOE
bass-trumpet-b-flat|de|Basstrompete|name|MIMO
bass-trumpet-b-flat|de|Baßtrompete|variant|MIMO
bass-trumpet-b-flat|it|Tromba bassa|name|MIMO
bass-trumpet-b-flat|es|Trompeta baja|name|MIMO
bass-trumpet-b-flat|nl|Bastrompet|name|MIMO
bass-trumpet-c|en|Bass trumpet|name|MIMO
bass-trumpet-c|fr|Trompette basse|name|MIMO
bass-trumpet-c|de|Basstrompete|name|MIMO
bass-trumpet-c|de|Baßtrompete|variant|MIMO
bass-trumpet-c|it|Tromba bassa|name|MIMO
bass-trumpet-c|es|Trompeta baja|name|MIMO
bass-trumpet-c|nl|Bastrompet|name|MIMO
bass-trumpet-e-flat|en|Bass trumpet|name|MIMO
bass-trumpet-e-flat|fr|Trompette basse|name|MIMO
bass-trumpet-e-flat|de|Basstrompete|name|MIMO
bass-trumpet-e-flat|de|Baßtrompete|variant|MIMO
bass-trumpet-e-flat|it|Tromba bassa|name|MIMO
bass-trumpet-e-flat|es|Trompeta baja|name|MIMO
bass-trumpet-e-flat|nl|Bastrompet|name|MIMO
bugle-b-flat|en|Bugle|name|MIMO
bugle-b-flat|en|bugle|name|IAML
bugle-b-flat|en|bugle horn|variant|IAML
bugle-b-flat|en|bugles|plural|MIMO
bugle-b-flat|fr|Clairon|name|MIMO
bugle-b-flat|fr|clairon|name|IAML
bugle-b-flat|fr|bugle baryton|variant|IAML
bugle-b-flat|fr|bugleret|variant|IAML
bugle-b-flat|fr|cor bugleret|variant|IAML
bugle-b-flat|fr|cor buglèr|variant|IAML
bugle-b-flat|fr|clairons|plural|MIMO
bugle-b-flat|de|Signalhorn|name|IAML
bugle-b-flat|de|Bügelhorn|variant|MIMO
bugle-b-flat|de|Infanteriehorn|variant|IAML
bugle-b-flat|de|Kavalleriehorn|variant|IAML
bugle-b-flat|it|Corno segnale|variant|MIMO
bugle-b-flat|it|corno segnale|variant|IAML
bugle-b-flat|es|Clarín|variant|MIMO
bugle-b-flat|es|corneta natural|variant|IAML
bugle-b-flat|es|clarín de banda de guerra|variant|IAML
bugle-b-flat|es|corneta de banda de guerra|variant|IAML
bugle-b-flat|nl|Klaroen|name|MIMO
keyed-bugle-b-flat|en|Keyed bugle|name|MIMO
keyed-bugle-b-flat|en|keyed bugle|name|IAML
keyed-bugle-b-flat|en|kent bugle|variant|IAML
keyed-bugle-b-flat|en|key bugle|variant|IAML
keyed-bugle-b-flat|en|royal kent bugle|variant|IAML
keyed-bugle-b-flat|fr|bugle à clefs|name|IAML
keyed-bugle-b-flat|fr|Cor à clefs|variant|MIMO
keyed-bugle-b-flat|fr|cor à clefs|variant|IAML
keyed-bugle-b-flat|fr|taille d'amour|variant|IAML
keyed-bugle-b-flat|fr|trompette à clefs|variant|IAML
keyed-bugle-b-flat|de|Klappenflügelhorn|name|IAML
keyed-bugle-b-flat|de|Klappenhorn|variant|MIMO
keyed-bugle-b-flat|de|Klappenhorn|variant|IAML
keyed-bugle-b-flat|de|Amorschall|variant|IAML
keyed-bugle-b-flat|de|Kenthorn|variant|IAML
keyed-bugle-b-flat|de|Kleppenbugel|variant|IAML
keyed-bugle-b-flat|it|Corno a chiavi|variant|MIMO
keyed-bugle-b-flat|it|cornetta a chiavi|variant|IAML
keyed-bugle-b-flat|it|corno a chiavi|variant|IAML
keyed-bugle-b-flat|es|bugle de llaves|name|IAML
keyed-bugle-b-flat|es|Clarín de llaves|variant|MIMO
keyed-bugle-b-flat|es|Flügelhorn cromático|variant|IAML
keyed-bugle-b-flat|nl|Kleppenbugel|name|MIMO
soprano-cornet-e-flat|fr|petit cornet|name|KOE
cornet-b-flat|en|Cornet|name|MIMO
cornet-b-flat|en|cornet|name|IAML
cornet-b-flat|en|echo cornet|variant|IAML
cornet-b-flat|en|cornets|plural|MIMO
cornet-b-flat|en|Cnt. Bb|abbreviation|WISE
cornet-b-flat|fr|Cornet à pistons|name|MIMO
cornet-b-flat|fr|cornet à pistons|name|IAML
cornet-b-flat|fr|piston|variant|IAML
cornet-b-flat|fr|cornet|variant|KOE
cornet-b-flat|fr|cornets à pistons|plural|MIMO
cornet-b-flat|fr|C. à p. sib|abbreviation|GDRM
cornet-b-flat|de|Kornett|name|MIMO
cornet-b-flat|de|Kornett|name|IAML
cornet-b-flat|de|Ventilkornett|variant|IAML
cornet-b-flat|de|Kornette|plural|MIMO
cornet-b-flat|it|Cornetta|name|MIMO
cornet-b-flat|it|cornetta|name|IAML
cornet-b-flat|it|cornetta a pistoni|variant|IAML
cornet-b-flat|it|cornetto|variant|IAML
cornet-b-flat|it|cornette|plural|MIMO
cornet-b-flat|es|Cornetín|name|MIMO
cornet-b-flat|es|cornetín|name|IAML
cornet-b-flat|es|corneta|variant|IAML
cornet-b-flat|es|corneta de pistones|variant|IAML
cornet-b-flat|es|cornetines|plural|MIMO
cornet-b-flat|nl|Cornet|name|MIMO
cornet-b-flat|nl|cornetten|plural|MIMO
cornet-a|en|Cornet|name|MIMO
cornet-a|en|cornet|name|IAML
cornet-a|en|echo cornet|variant|IAML
cornet-a|en|cornets|plural|MIMO
cornet-a|en|Cnt. A|abbreviation|WISE
cornet-a|fr|Cornet à pistons|name|MIMO
cornet-a|fr|cornet à pistons|name|IAML
cornet-a|fr|piston|variant|IAML
cornet-a|fr|cornets à pistons|plural|MIMO
cornet-a|fr|C. à p. la|abbreviation|GDRM
cornet-a|de|Kornett|name|MIMO
cornet-a|de|Kornett|name|IAML
cornet-a|de|Ventilkornett|variant|IAML
cornet-a|de|Kornette|plural|MIMO
cornet-a|it|Cornetta|name|MIMO
cornet-a|it|cornetta|name|IAML
cornet-a|it|cornetta a pistoni|variant|IAML
cornet-a|it|cornetto|variant|IAML
cornet-a|it|cornette|plural|MIMO
cornet-a|es|Cornetín|name|MIMO
cornet-a|es|cornetín|name|IAML
cornet-a|es|corneta|variant|IAML
cornet-a|es|corneta de pistones|variant|IAML
cornet-a|es|cornetines|plural|MIMO
cornet-a|nl|Cornet|name|MIMO
cornet-a|nl|cornetten|plural|MIMO
cornet-c|en|Cornet|name|MIMO
cornet-c|en|cornet|name|IAML
cornet-c|en|echo cornet|variant|IAML
cornet-c|en|cornets|plural|MIMO
cornet-c|en|Cnt. C|abbreviation|WISE
cornet-c|fr|Cornet à pistons|name|MIMO
cornet-c|fr|cornet à pistons|name|IAML
cornet-c|fr|piston|variant|IAML
cornet-c|fr|cornets à pistons|plural|MIMO
cornet-c|fr|C. à p. ut|abbreviation|GDRM
cornet-c|de|Kornett|name|MIMO
cornet-c|de|Kornett|name|IAML
cornet-c|de|Ventilkornett|variant|IAML
cornet-c|de|Kornette|plural|MIMO
cornet-c|it|Cornetta|name|MIMO
cornet-c|it|cornetta|name|IAML
cornet-c|it|cornetta a pistoni|variant|IAML
cornet-c|it|cornetto|variant|IAML
cornet-c|it|cornette|plural|MIMO
cornet-c|es|Cornetín|name|MIMO
cornet-c|es|cornetín|name|IAML
cornet-c|es|corneta|variant|IAML
cornet-c|es|corneta de pistones|variant|IAML
cornet-c|es|cornetines|plural|MIMO
cornet-c|nl|Cornet|name|MIMO
cornet-c|nl|cornetten|plural|MIMO
cornetto|en|Cornett|name|MIMO
cornetto|en|cornett|name|IAML
cornetto|en|cornetts|plural|MIMO
cornetto|fr|Cornet à bouquin|name|MIMO
cornetto|fr|cornet à bouquin|name|IAML
cornetto|fr|cornaboux|variant|IAML
cornetto|fr|cornets à bouquin|plural|MIMO
cornetto|de|Zink|name|MIMO
cornetto|de|Zink|name|IAML
cornetto|de|Krummer Zink|variant|MIMO
cornetto|de|Zinken|plural|MIMO
cornetto|it|Cornetto|name|MIMO
cornetto|it|cornetto|name|IAML
cornetto|it|cornettino|variant|IAML
cornetto|it|cornetto muto|variant|IAML
cornetto|it|cornetti|plural|MIMO
cornetto|es|corneta renacentista|name|IAML
cornetto|es|Corneta|variant|MIMO
cornetto|es|cornetto|variant|IAML
cornetto|es|corneta|variant|IAML
cornetto|es|corneta curva|variant|IAML
cornetto|es|corneta negra|variant|IAML
cornetto|es|cornetas|plural|MIMO
cornetto|nl|Zink|name|MIMO
cornetto|nl|zinken|plural|MIMO
tenor-cornett|en|Tenor cornett|name|MIMO
tenor-cornett|fr|Cornet à bouquin ténor|variant|MIMO
tenor-cornett|de|Tenorzink|name|MIMO
tenor-cornett|it|Cornetto tenore|name|MIMO
tenor-cornett|es|Corneta tenor|name|MIMO
tenor-cornett|nl|Tenorzink|name|MIMO
petit-bugle-e-flat|en|Soprano flugelhorn|variant|MIMO
petit-bugle-e-flat|en|Sopranino saxhorn|variant|MIMO
petit-bugle-e-flat|en|cornett piccolo|variant|IAML
petit-bugle-e-flat|fr|Petit bugle|name|MIMO
petit-bugle-e-flat|fr|petit bugle|name|IAML
petit-bugle-e-flat|fr|petit bugle|name|WID-I
petit-bugle-e-flat|fr|petit bugle|name|KOE
petit-bugle-e-flat|fr|Saxhorn sopranino|variant|MIMO
petit-bugle-e-flat|fr|bugle soprano en Mib|variant|IAML
petit-bugle-e-flat|fr|saxhorn sopranino|variant|IAML
petit-bugle-e-flat|fr|petit saxhorn|variant|BREN
petit-bugle-e-flat|de|Sopranflügelhorn|variant|MIMO
petit-bugle-e-flat|de|Sopraninosaxhorn|variant|MIMO
petit-bugle-e-flat|it|flicorno sopranino|name|IAML
petit-bugle-e-flat|it|flicorno sopranino|name|VENZ
petit-bugle-e-flat|it|Flicorno sopranino / piccolo|variant|MIMO
petit-bugle-e-flat|it|Saxhorn sopranino|variant|MIMO
petit-bugle-e-flat|it|cornettino in Mib|variant|IAML
petit-bugle-e-flat|it|flicornino|variant|IAML
petit-bugle-e-flat|it|piston|variant|IAML
petit-bugle-e-flat|it|pistoncino|variant|IAML
petit-bugle-e-flat|it|pistonino|variant|IAML
petit-bugle-e-flat|it|flicornino|variant|VENZ
petit-bugle-e-flat|es|Fiscorno soprano|variant|MIMO
petit-bugle-e-flat|es|Saxhorn sopranino|variant|MIMO
petit-bugle-e-flat|nl|Sopraanbugels|variant|MIMO
petit-bugle-e-flat|nl|Sopraninosaxhoorn|variant|MIMO
flugelhorn-b-flat|en|Flugelhorn|name|MIMO
flugelhorn-b-flat|en|flugelhorn|name|IAML
flugelhorn-b-flat|en|Soprano bugle|variant|MIMO
flugelhorn-b-flat|en|sopran cornett|variant|IAML
flugelhorn-b-flat|en|flugelhorns|plural|MIMO
flugelhorn-b-flat|fr|Bugle|name|MIMO
flugelhorn-b-flat|fr|bugle|name|IAML
flugelhorn-b-flat|fr|bugle|name|WID-I
flugelhorn-b-flat|fr|bugle|name|KOE
flugelhorn-b-flat|fr|Clairon soprano|variant|MIMO
flugelhorn-b-flat|fr|saxhorn soprano|variant|IAML
flugelhorn-b-flat|fr|bugles|plural|MIMO
flugelhorn-b-flat|de|Flügelhorn|name|MIMO
flugelhorn-b-flat|de|flügelhorn|name|IAML
flugelhorn-b-flat|de|flugelhorn|variant|IAML
flugelhorn-b-flat|de|Flügelhörner|plural|MIMO
flugelhorn-b-flat|it|Flicorno soprano|name|MIMO
flugelhorn-b-flat|it|flicorno soprano|name|IAML
flugelhorn-b-flat|it|flicorno soprano|name|VENZ
flugelhorn-b-flat|it|flicorno|variant|IAML
flugelhorn-b-flat|es|Fiscorno|variant|MIMO
flugelhorn-b-flat|nl|Bugel|name|MIMO
flugelhorn-b-flat|nl|bugel|name|ZEEL
flugelhorn-b-flat|nl|Sopraanbugel|variant|MIMO
flugelhorn-b-flat|nl|bugels|plural|MIMO
alto-horn-e-flat|en|Alto horn|name|MIMO
alto-horn-e-flat|en|tenor horn|name|IAML
alto-horn-e-flat|en|tenor horn|name|GRV2B
alto-horn-e-flat|en|tenor horn|name|GRV2T
alto-horn-e-flat|en|alto horn|name|WPTH
alto-horn-e-flat|en|tenor horn|name|WPTH
alto-horn-e-flat|en|Althorn|variant|MIMO
alto-horn-e-flat|en|Alto saxhorn|variant|MIMO
alto-horn-e-flat|en|Alto bugle|variant|MIMO
alto-horn-e-flat|fr|Saxhorn alto|name|MIMO
alto-horn-e-flat|fr|saxhorn alto|name|IAML
alto-horn-e-flat|fr|saxhorn alto|name|GRV2T
alto-horn-e-flat|fr|saxhorn alto|name|WPTH
alto-horn-e-flat|fr|Althorn|variant|MIMO
alto-horn-e-flat|fr|Alto horn|variant|MIMO
alto-horn-e-flat|fr|Clairon alto|variant|MIMO
alto-horn-e-flat|fr|bugle alto|variant|GRV2T
alto-horn-e-flat|fr|alto|variant|WID-I
alto-horn-e-flat|de|Althorn|name|MIMO
alto-horn-e-flat|de|althorn|name|IAML
alto-horn-e-flat|de|Althorn|name|GRV2T
alto-horn-e-flat|de|Althorn|name|WPTH
alto-horn-e-flat|de|Altsaxhorn|variant|MIMO
alto-horn-e-flat|de|Alt-Saxhorn|variant|MIMO
alto-horn-e-flat|it|Flicorno contralto|name|MIMO
alto-horn-e-flat|it|flicorno contralto|name|IAML
alto-horn-e-flat|it|genis|name|GRV2T
alto-horn-e-flat|it|genis|name|WPTH
alto-horn-e-flat|it|flicorno contralto|name|VENZ
alto-horn-e-flat|it|genis|name|BARL
alto-horn-e-flat|it|Althorn|variant|MIMO
alto-horn-e-flat|it|Alto horn|variant|MIMO
alto-horn-e-flat|it|Saxhorn alto|variant|MIMO
alto-horn-e-flat|es|Althorn|variant|MIMO
alto-horn-e-flat|es|Alto horn|variant|MIMO
alto-horn-e-flat|es|Saxhorn contralto|variant|MIMO
alto-horn-e-flat|es|Bugle contralto|variant|MIMO
alto-horn-e-flat|nl|Althoorn|name|MIMO
alto-horn-e-flat|nl|althoorn|name|WPTH
alto-horn-e-flat|nl|althoorn|name|ZEEL
alto-horn-e-flat|nl|Altsaxhoorn|variant|MIMO
alto-horn-e-flat|nl|Altbugel|variant|MIMO
alto-horn-f|en|Alto horn|name|MIMO
alto-horn-f|en|Althorn|variant|MIMO
alto-horn-f|en|Alto saxhorn|variant|MIMO
alto-horn-f|en|tenor horn|variant|IAML
alto-horn-f|fr|Saxhorn alto|name|MIMO
alto-horn-f|fr|saxhorn alto|name|IAML
alto-horn-f|fr|Althorn|variant|MIMO
alto-horn-f|fr|Alto horn|variant|MIMO
alto-horn-f|de|Althorn|name|MIMO
alto-horn-f|de|althorn|name|IAML
alto-horn-f|de|Altsaxhorn|variant|MIMO
alto-horn-f|de|Alt-Saxhorn|variant|MIMO
alto-horn-f|it|flicorno contralto|name|IAML
alto-horn-f|it|Althorn|variant|MIMO
alto-horn-f|it|Alto horn|variant|MIMO
alto-horn-f|it|Saxhorn alto|variant|MIMO
alto-horn-f|es|Althorn|variant|MIMO
alto-horn-f|es|Alto horn|variant|MIMO
alto-horn-f|es|Saxhorn contralto|variant|MIMO
alto-horn-f|nl|Althoorn|name|MIMO
alto-horn-f|nl|Altsaxhoorn|variant|MIMO
tenorhorn-b-flat|en|Tenor bugle|variant|MIMO
tenorhorn-b-flat|en|Bb baritone|variant|IAML
tenorhorn-b-flat|en|baritone|variant|IAML
tenorhorn-b-flat|fr|bugle ténor|name|IAML
tenorhorn-b-flat|fr|Clairon ténor|variant|MIMO
tenorhorn-b-flat|fr|saxhorn ténor|variant|IAML
tenorhorn-b-flat|fr|baryton|variant|IAML
tenorhorn-b-flat|fr|clavicor|variant|IAML
tenorhorn-b-flat|de|Tenorhorn|name|MIMO
tenorhorn-b-flat|de|Tenorhorn|name|IAML
tenorhorn-b-flat|de|Tenorhorn|name|GRV2B
tenorhorn-b-flat|de|Tenorhorn|name|ITWPT
tenorhorn-b-flat|de|Tenorhorn|name|HARL
tenorhorn-b-flat|it|Flicorno tenore|name|MIMO
tenorhorn-b-flat|it|flicorno tenore|name|IAML
tenorhorn-b-flat|it|flicorno tenore|name|GRV2B
tenorhorn-b-flat|it|flicorno tenore|name|ITWPT
tenorhorn-b-flat|it|flicorno tenore|name|VENZ
tenorhorn-b-flat|it|clavicorno|variant|IAML
tenorhorn-b-flat|it|emboliclave|variant|IAML
tenorhorn-b-flat|it|tuba tenore|variant|IAML
tenorhorn-b-flat|es|Bugle tenor|variant|MIMO
tenorhorn-b-flat|nl|tenorhoorn|name|ZEEL
tenorhorn-b-flat|nl|Tenorbugel|variant|MIMO
baritone-horn|en|baritone|name|IAML
baritone-horn|en|baritone|name|GRV2B
baritone-horn|en|Baritone saxhorn|variant|MIMO
baritone-horn|en|Baritone bugle|variant|MIMO
baritone-horn|en|Bb baritone|variant|IAML
baritone-horn|fr|baryton|name|IAML
baritone-horn|fr|Saxhorn baryton|variant|MIMO
baritone-horn|fr|Clairon baryton|variant|MIMO
baritone-horn|fr|saxhorn baryton|variant|IAML
baritone-horn|fr|saxtromba baryton|variant|IAML
baritone-horn|fr|saxhorn ténor|variant|IAML
baritone-horn|fr|bugle ténor|variant|IAML
baritone-horn|fr|clavicor|variant|IAML
baritone-horn|de|Baritonsaxhorn|variant|MIMO
baritone-horn|de|Barytonsaxhorn|variant|MIMO
baritone-horn|de|Bariton|variant|MIMO
baritone-horn|de|bariton|variant|IAML
baritone-horn|de|Tenorhorn|variant|IAML
baritone-horn|de|Tenorhorn|variant|GRV2B
baritone-horn|it|flicorno tenore|name|IAML
baritone-horn|it|flicorno tenore|name|GRV2B
baritone-horn|it|Saxhorn baritono|variant|MIMO
baritone-horn|it|Flicorno baritono|variant|MIMO
baritone-horn|it|bombardino|variant|IAML
baritone-horn|it|flicorno baritono|variant|IAML
baritone-horn|it|clavicorno|variant|IAML
baritone-horn|it|emboliclave|variant|IAML
baritone-horn|it|tuba tenore|variant|IAML
baritone-horn|it|flicorno baritono|variant|ITWPT
baritone-horn|it|flicorno baritono|variant|VENZ
baritone-horn|it|flicorno baritono|variant|BOFF
baritone-horn|es|Saxhorn barítono|variant|MIMO
baritone-horn|es|Bugle barítono|variant|MIMO
baritone-horn|nl|bariton|name|ZEEL
baritone-horn|nl|Baritonsaxhoorn|variant|MIMO
baritone-horn|nl|Baritonbugel|variant|MIMO
saxhorn-baritone-b-flat|en|Baritone saxhorn|name|MIMO
saxhorn-baritone-b-flat|fr|Saxhorn baryton|name|MIMO
saxhorn-baritone-b-flat|fr|saxhorn baryton|name|IAML
saxhorn-baritone-b-flat|fr|saxtromba baryton|variant|IAML
saxhorn-baritone-b-flat|fr|baryton|variant|GRV2B
saxhorn-baritone-b-flat|fr|baryton|variant|BREN
saxhorn-baritone-b-flat|fr|baryton|variant|WID-I
saxhorn-baritone-b-flat|de|Baritonsaxhorn|variant|MIMO
saxhorn-baritone-b-flat|de|Barytonsaxhorn|variant|MIMO
saxhorn-baritone-b-flat|de|bariton|variant|IAML
saxhorn-baritone-b-flat|it|Saxhorn baritono|variant|MIMO
saxhorn-baritone-b-flat|it|bombardino|variant|IAML
saxhorn-baritone-b-flat|it|flicorno baritono|variant|IAML
saxhorn-baritone-b-flat|it|flicorno baritono|variant|VENZ
saxhorn-baritone-b-flat|es|Saxhorn barítono|name|MIMO
saxhorn-baritone-b-flat|nl|Baritonsaxhoorn|variant|MIMO
euphonium|en|Euphonium|name|MIMO
euphonium|en|euphonium|name|IAML
euphonium|en|baroxyton|variant|IAML
euphonium|en|barytonhorn|variant|IAML
euphonium|en|euphonion|variant|IAML
euphonium|en|helicon|variant|IAML
euphonium|en|tenor tuba|variant|IAML
euphonium|en|Euph.|abbreviation|BLAKE
euphonium|en|Euph.|abbreviation|WISE
euphonium|fr|Euphonium|name|MIMO
euphonium|fr|euphonium|name|IAML
euphonium|fr|baritone|variant|IAML
euphonium|fr|baryton en sib|variant|IAML
euphonium|fr|basse en sib|variant|IAML
euphonium|fr|basse impériale|variant|IAML
euphonium|fr|basse à pistons|variant|IAML
euphonium|de|Euphonium|name|MIMO
euphonium|de|Euphonium|name|IAML
euphonium|de|Baryton|variant|IAML
euphonium|de|Baryton-Tuba|variant|IAML
euphonium|de|Bassflügelhorn|variant|IAML
euphonium|de|Euphonikon|variant|IAML
euphonium|de|Hellhorn|variant|IAML
euphonium|de|Kaiserbaryton|variant|IAML
euphonium|de|Kaiserbass|variant|IAML
euphonium|de|Phonikon|variant|IAML
euphonium|de|Tenorbass|variant|IAML
euphonium|de|Tenorbasshorn|variant|IAML
euphonium|it|Eufonio|name|MIMO
euphonium|it|eufonio|name|IAML
euphonium|it|bombardino|name|GRV2B
euphonium|it|bombardino|name|BOFF
euphonium|it|eufonio|name|BOFF
euphonium|it|eufonio|name|AMI
euphonium|it|bombardino|name|AMI
euphonium|it|bombarda a quattro pistoni|variant|IAML
euphonium|it|elicon|variant|IAML
euphonium|it|flicorno basso|variant|IAML
euphonium|it|tuba in Sib|variant|IAML
euphonium|es|Bombardino|name|MIMO
euphonium|es|bombardino|name|IAML
euphonium|es|barítono|variant|IAML
euphonium|es|eufonio|variant|IAML
euphonium|nl|eufonium|name|ZEEL
euphonium|nl|Euphonium|variant|MIMO
bariton-german|en|Baritone bugle|variant|MIMO
bariton-german|fr|Clairon baryton|variant|MIMO
bariton-german|fr|saxhorn baryton|variant|IAML
bariton-german|fr|saxtromba baryton|variant|IAML
bariton-german|de|Bariton|name|MIMO
bariton-german|de|bariton|name|IAML
bariton-german|de|Bariton|name|GRV2B
bariton-german|de|Bariton|name|HARL
bariton-german|it|Flicorno baritono|name|MIMO
bariton-german|it|flicorno baritono|name|IAML
bariton-german|it|bombardino|variant|IAML
bariton-german|es|Bugle barítono|variant|MIMO
bariton-german|nl|Baritonbugel|variant|MIMO
saxhorn-bass-b-flat|en|Bass saxhorn|name|MIMO
saxhorn-bass-b-flat|fr|Saxhorn basse|name|MIMO
saxhorn-bass-b-flat|fr|basse|name|GRV2B
saxhorn-bass-b-flat|fr|saxhorn basse|name|BREN
saxhorn-bass-b-flat|fr|tuba|variant|BREN
saxhorn-bass-b-flat|fr|tuba|variant|WID-I
saxhorn-bass-b-flat|de|Basssaxhorn|variant|MIMO
saxhorn-bass-b-flat|de|Baßsaxhorn|variant|MIMO
saxhorn-bass-b-flat|it|flicorno basso|name|VENZ
saxhorn-bass-b-flat|it|Saxhorn basso|variant|MIMO
saxhorn-bass-b-flat|es|Saxhorn bajo|name|MIMO
saxhorn-bass-b-flat|nl|Bassaxhoorn|variant|MIMO
french-tuba-c|en|Tuba|variant|MIMO
french-tuba-c|en|tuba|variant|IAML
french-tuba-c|fr|Tuba|variant|MIMO
french-tuba-c|fr|tuba|variant|IAML
french-tuba-c|fr|tubas|plural|MIMO
french-tuba-c|de|Tuba|variant|MIMO
french-tuba-c|de|Tuba|variant|IAML
french-tuba-c|it|Tuba|variant|MIMO
french-tuba-c|it|tuba|variant|IAML
french-tuba-c|es|Tuba|variant|MIMO
french-tuba-c|es|tuba|variant|IAML
french-tuba-c|nl|Tuba|variant|MIMO
saxhorn-contrabass-e-flat|en|Contrabass saxhorn|name|MIMO
saxhorn-contrabass-e-flat|fr|bombardon|name|BREN
saxhorn-contrabass-e-flat|fr|Saxhorn contrebasse|variant|MIMO
saxhorn-contrabass-e-flat|de|Kontrabasssaxhorn|variant|MIMO
saxhorn-contrabass-e-flat|de|Kontrabaßsaxhorn|variant|MIMO
saxhorn-contrabass-e-flat|it|flicorno basso-grave|name|GRV2B
saxhorn-contrabass-e-flat|it|flicorno basso-grave|name|VENZ
saxhorn-contrabass-e-flat|it|Saxhorn contrabbasso|variant|MIMO
saxhorn-contrabass-e-flat|es|Saxhorn contrabajo|variant|MIMO
saxhorn-contrabass-e-flat|nl|Contrabassaxhoorn|variant|MIMO
saxhorn-contrabass-b-flat|en|Contrabass saxhorn|name|MIMO
saxhorn-contrabass-b-flat|fr|Saxhorn contrebasse|variant|MIMO
saxhorn-contrabass-b-flat|fr|tuba contrebasse|variant|BREN
saxhorn-contrabass-b-flat|fr|bombardon|variant|WID-I
saxhorn-contrabass-b-flat|de|Kontrabasssaxhorn|variant|MIMO
saxhorn-contrabass-b-flat|de|Kontrabaßsaxhorn|variant|MIMO
saxhorn-contrabass-b-flat|it|flicorno contrabbasso|name|VENZ
saxhorn-contrabass-b-flat|it|Saxhorn contrabbasso|variant|MIMO
saxhorn-contrabass-b-flat|es|Saxhorn contrabajo|variant|MIMO
saxhorn-contrabass-b-flat|nl|Contrabassaxhoorn|variant|MIMO
tuba|en|Tuba|name|MIMO
tuba|en|tuba|name|IAML
tuba|en|tubas|plural|MIMO
tuba|en|Tba.|abbreviation|WISE
tuba|fr|Tuba|name|MIMO
tuba|fr|tuba|name|IAML
tuba|fr|tubas|plural|MIMO
tuba|de|Tuba|name|MIMO
tuba|de|Tuba|name|IAML
tuba|de|Tuben|plural|MIMO
tuba|de|Tb.|abbreviation|CKNA
tuba|it|Tuba|name|MIMO
tuba|it|tuba|name|IAML
tuba|it|tube|plural|MIMO
tuba|es|Tuba|name|MIMO
tuba|es|tuba|name|IAML
tuba|es|tubas|plural|MIMO
tuba|nl|Tuba|name|MIMO
tuba|nl|tuba’s|plural|MIMO
bass-tuba-f|en|Bass tuba|name|MIMO
bass-tuba-f|en|bass tuba|name|IAML
bass-tuba-f|en|tuba|variant|IAML
bass-tuba-f|fr|Tuba basse|name|MIMO
bass-tuba-f|de|Basstuba|name|MIMO
bass-tuba-f|de|basstuba|name|IAML
bass-tuba-f|it|Bassotuba|variant|MIMO
bass-tuba-f|it|basso tuba|variant|IAML
bass-tuba-f|it|tuba in sib|variant|IAML
bass-tuba-f|es|Tuba baja|name|MIMO
bass-tuba-f|nl|Bastuba|name|MIMO
contrabass-tuba-c|en|Contrabass tuba|name|MIMO
contrabass-tuba-c|en|contrabass tuba|name|IAML
contrabass-tuba-c|en|BBb bass|variant|IAML
contrabass-tuba-c|fr|Tuba contrebasse|name|MIMO
contrabass-tuba-c|fr|soubassophone|variant|IAML
contrabass-tuba-c|de|Kontrabasstuba|name|MIMO
contrabass-tuba-c|de|Kontrabßtuba|variant|MIMO
contrabass-tuba-c|it|Tuba contrabbasso|variant|MIMO
contrabass-tuba-c|es|Tuba contrabaja|variant|MIMO
contrabass-tuba-c|nl|Contrabastuba|name|MIMO
contrabass-tuba-b-flat|en|Contrabass tuba|name|MIMO
contrabass-tuba-b-flat|en|contrabass tuba|name|IAML
contrabass-tuba-b-flat|en|BBb bass|variant|IAML
contrabass-tuba-b-flat|fr|Tuba contrebasse|variant|MIMO
contrabass-tuba-b-flat|fr|soubassophone|variant|IAML
contrabass-tuba-b-flat|de|Kontrabasstuba|variant|MIMO
contrabass-tuba-b-flat|de|Kontrabßtuba|variant|MIMO
contrabass-tuba-b-flat|it|Tuba contrabbasso|variant|MIMO
contrabass-tuba-b-flat|es|Tuba contrabaja|variant|MIMO
contrabass-tuba-b-flat|nl|Contrabastuba|variant|MIMO
sousaphone|en|Sousaphone|name|MIMO
sousaphone|fr|Sousaphone|variant|MIMO
sousaphone|de|Sousaphon|name|MIMO
sousaphone|it|sousafono|name|BARL
sousaphone|it|Sousaphone|variant|MIMO
sousaphone|es|Sousáfono|name|MIMO
sousaphone|nl|Sousafoon|name|MIMO
helicon|en|Helicon|name|MIMO
helicon|fr|Helicon|variant|MIMO
helicon|de|Helikon|name|MIMO
helicon|it|Helicon|variant|MIMO
helicon|it|helicon|variant|BARL
helicon|es|Helicón|name|MIMO
helicon|nl|Helicon|name|MIMO
bombardon|en|Bombardon|name|MIMO
bombardon|en|bombardon|name|IAML
bombardon|en|bombardon|name|GRV2B
bombardon|fr|Bombardon|name|MIMO
bombardon|fr|bombardon|name|GRV2B
bombardon|fr|bombardone|variant|IAML
bombardon|fr|basse impériale|variant|IAML
bombardon|fr|saxhorn basse|variant|IAML
bombardon|de|Bombardon|name|MIMO
bombardon|de|bombardon|name|IAML
bombardon|de|Bombardon|name|GRV2B
bombardon|de|basstromba|variant|IAML
bombardon|de|kaiserbass|variant|IAML
bombardon|it|Bombardone|name|MIMO
bombardon|it|bombardone|name|IAML
bombardon|it|bombardone|name|GRV2B
bombardon|it|basso in fa|variant|IAML
bombardon|it|basso in mib|variant|IAML
bombardon|it|flicorno basso-grave|variant|IAML
bombardon|it|helicon contrabbasso|variant|IAML
bombardon|it|sousaphone basso|variant|IAML
bombardon|es|Bombardón|name|MIMO
bombardon|es|bombardón|name|IAML
bombardon|es|bombardón|name|GRV2B
bombardon|nl|Bombardon|name|MIMO
ophicleide-c|en|Ophicleide|name|MIMO
ophicleide-c|en|ophicleide|name|IAML
ophicleide-c|en|omniton|variant|IAML
ophicleide-c|en|ophicleides|plural|MIMO
ophicleide-c|fr|Ophicléide|name|MIMO
ophicleide-c|fr|ophicléide|name|BREN
ophicleide-c|fr|ophicleïde|variant|IAML
ophicleide-c|fr|basse d'harmonie|variant|IAML
ophicleide-c|fr|basse à clefs|variant|IAML
ophicleide-c|fr|contrebasse d'harmonie|variant|IAML
ophicleide-c|fr|serpentcleide|variant|IAML
ophicleide-c|fr|tuba-dupré|variant|IAML
ophicleide-c|fr|ophicléides|plural|MIMO
ophicleide-c|de|Ophikleide|name|MIMO
ophicleide-c|de|Ophikleide|name|IAML
ophicleide-c|de|Harmoniekontrabass|variant|IAML
ophicleide-c|de|Ophikleiden|plural|MIMO
ophicleide-c|it|Oficleide|name|MIMO
ophicleide-c|it|oficleide|name|IAML
ophicleide-c|it|basso d'armonia|variant|IAML
ophicleide-c|it|ofleide|variant|IAML
ophicleide-c|it|oficleidi|plural|MIMO
ophicleide-c|es|figle|name|IAML
ophicleide-c|es|Oficleide|variant|MIMO
ophicleide-c|es|oficleido|variant|IAML
ophicleide-c|nl|Ophicleïde|name|MIMO
ophicleide-c|nl|ophicleïde|name|ZEEL
ophicleide-c|nl|ophicleïdes|plural|MIMO
ophicleide-b-flat|en|Ophicleide|name|MIMO
ophicleide-b-flat|en|ophicleide|name|IAML
ophicleide-b-flat|en|omniton|variant|IAML
ophicleide-b-flat|en|ophicleides|plural|MIMO
ophicleide-b-flat|fr|Ophicléide|name|MIMO
ophicleide-b-flat|fr|ophicleïde|variant|IAML
ophicleide-b-flat|fr|basse d'harmonie|variant|IAML
ophicleide-b-flat|fr|basse à clefs|variant|IAML
ophicleide-b-flat|fr|contrebasse d'harmonie|variant|IAML
ophicleide-b-flat|fr|serpentcleide|variant|IAML
ophicleide-b-flat|fr|tuba-dupré|variant|IAML
ophicleide-b-flat|fr|ophicléides|plural|MIMO
ophicleide-b-flat|de|Ophikleide|name|MIMO
ophicleide-b-flat|de|Ophikleide|name|IAML
ophicleide-b-flat|de|Harmoniekontrabass|variant|IAML
ophicleide-b-flat|de|Ophikleiden|plural|MIMO
ophicleide-b-flat|it|Oficleide|name|MIMO
ophicleide-b-flat|it|oficleide|name|IAML
ophicleide-b-flat|it|basso d'armonia|variant|IAML
ophicleide-b-flat|it|ofleide|variant|IAML
ophicleide-b-flat|it|oficleidi|plural|MIMO
ophicleide-b-flat|es|figle|name|IAML
ophicleide-b-flat|es|Oficleide|variant|MIMO
ophicleide-b-flat|es|oficleido|variant|IAML
ophicleide-b-flat|nl|Ophicleïde|name|MIMO
ophicleide-b-flat|nl|ophicleïdes|plural|MIMO
quinticlave-e-flat|en|Alto ophicleide|name|MIMO
quinticlave-e-flat|fr|Ophicléide alto|name|MIMO
quinticlave-e-flat|fr|ophicléide alto|name|BREN
quinticlave-e-flat|de|Altophikleide|variant|MIMO
quinticlave-e-flat|it|Oficleide contralto|variant|MIMO
quinticlave-e-flat|es|Oficleide contralto|variant|MIMO
quinticlave-e-flat|nl|Altoficlëide|variant|MIMO
serpent|en|Serpent|name|MIMO
serpent|en|serpent|name|IAML
serpent|en|bass-horn|variant|IAML
serpent|en|chromatic bass-horn|variant|IAML
serpent|en|english bass-horn|variant|IAML
serpent|en|ophibaterion|variant|IAML
serpent|en|ophimonocleide|variant|IAML
serpent|en|russian bassoon|variant|IAML
serpent|en|serpent-bassoon|variant|IAML
serpent|fr|Serpent|name|MIMO
serpent|fr|serpent|name|IAML
serpent|fr|basse-cor|variant|IAML
serpent|fr|basse-trompette|variant|IAML
serpent|fr|basson russe|variant|IAML
serpent|fr|basson serpent|variant|IAML
serpent|fr|serpent d'église|variant|IAML
serpent|fr|serpent droit|variant|IAML
serpent|fr|serpent militaire|variant|IAML
serpent|fr|serpenton|variant|IAML
serpent|de|Serpent|name|MIMO
serpent|de|Serpent|name|IAML
serpent|de|Basseuphonium|variant|IAML
serpent|de|Basshorn|variant|IAML
serpent|de|Ophibariton|variant|IAML
serpent|de|Schlangenhorn|variant|IAML
serpent|de|bass-Euphonium|variant|IAML
serpent|de|chromatisches Basshorn|variant|IAML
serpent|de|russisches Basshorn|variant|IAML
serpent|de|russisches Fagott|variant|IAML
serpent|it|Serpentone|name|MIMO
serpent|it|serpentone|name|IAML
serpent|it|corno basso|variant|IAML
serpent|it|corno di basso|variant|IAML
serpent|it|fagotto russo|variant|IAML
serpent|it|fagotto serpente|variant|IAML
serpent|it|ofibaritono|variant|IAML
serpent|it|serpan|variant|IAML
serpent|it|serpente|variant|IAML
serpent|es|Serpentón|name|MIMO
serpent|es|serpentón|name|IAML
serpent|nl|Serpent|name|MIMO
serpent|nl|serpent|name|ZEEL
bass-horn|en|Bass horn|variant|MIMO
bass-horn|fr|Cor grave|variant|MIMO
bass-horn|de|Basshorn|variant|MIMO
bass-horn|de|Baßhorn|variant|MIMO
bass-horn|it|Corno basso inglese|name|MIMO
bass-horn|es|Bass horn|variant|MIMO
bass-horn|nl|Bashoorn|variant|MIMO
cimbasso|en|Cimbasso|name|MIMO
cimbasso|fr|Cimbasso|name|MIMO
cimbasso|de|Cimbasso|name|MIMO
cimbasso|de|Bassposaune|variant|IAML
cimbasso|it|Cimbasso|name|MIMO
cimbasso|it|cimbasso|name|IAML
cimbasso|it|trombone Verdi|variant|IAML
cimbasso|es|Bajón ruso|variant|MIMO
cimbasso|nl|Cimbasso|name|MIMO
alto-trombone|en|Alto trombone|name|MIMO
alto-trombone|fr|Trombone alto|name|MIMO
alto-trombone|de|Altposaune|name|MIMO
alto-trombone|it|Trombone contralto|name|MIMO
alto-trombone|es|Trombón contralto|variant|MIMO
alto-trombone|nl|Alttrombone|name|MIMO
trombone-tenor|en|Tenor trombone|name|MIMO
trombone-tenor|fr|Trombone ténor|name|MIMO
trombone-tenor|de|Tenorposaune|name|MIMO
trombone-tenor|it|Trombone tenore|name|MIMO
trombone-tenor|es|Trombón tenor|name|MIMO
trombone-tenor|nl|Tenortrombone|name|MIMO
bass-trombone|en|Bass trombone|name|MIMO
bass-trombone|en|bass trombone|name|IAML
bass-trombone|fr|Trombone basse|name|MIMO
bass-trombone|de|Bassposaune|name|MIMO
bass-trombone|de|Baßposaune|variant|MIMO
bass-trombone|de|quartposaune|variant|IAML
bass-trombone|de|quintposaune|variant|IAML
bass-trombone|it|Trombone basso|name|MIMO
bass-trombone|es|Trombón bajo|name|MIMO
bass-trombone|nl|Bastrombone|name|MIMO
contrabass-trombone|en|Contrabass trombone|name|MIMO
contrabass-trombone|en|contrabass trombone|name|IAML
contrabass-trombone|fr|Trombone contrebasse|name|MIMO
contrabass-trombone|de|Kontrabassposaune|name|MIMO
contrabass-trombone|de|Kontrabaßposaune|variant|MIMO
contrabass-trombone|de|doppelposaune|variant|IAML
contrabass-trombone|de|oktavposaune|variant|IAML
contrabass-trombone|it|Trombone contrabbasso|name|MIMO
contrabass-trombone|es|Trombón bajo|variant|MIMO
contrabass-trombone|nl|Contrabastrombone|name|MIMO
valve-trombone-b-flat|en|Valve trombone|name|MIMO
valve-trombone-b-flat|fr|Trombone à pistons|name|MIMO
valve-trombone-b-flat|de|Ventilposaune|name|MIMO
valve-trombone-b-flat|it|Trombone a macchina|variant|MIMO
valve-trombone-b-flat|es|Trombón de pistones|name|MIMO
valve-trombone-b-flat|nl|Ventieltrombone|name|MIMO
violin|en|Violin|name|MIMO
violin|en|violin|name|IAML
violin|en|violins|plural|MIMO
violin|fr|Violon|name|MIMO
violin|fr|violon|name|IAML
violin|fr|dessus de violon|variant|IAML
violin|fr|violons|plural|MIMO
violin|de|Violine|name|MIMO
violin|de|Violine|name|IAML
violin|de|Geige|variant|MIMO
violin|de|Geige|variant|IAML
violin|de|Violinen|plural|MIMO
violin|de|Vl.|abbreviation|CKNA
violin|it|Violino|name|MIMO
violin|it|violino|name|IAML
violin|it|soprano di viola da braccio|variant|IAML
violin|it|violini|plural|MIMO
violin|es|Violín|name|MIMO
violin|es|violín|name|IAML
violin|es|violines|plural|MIMO
violin|nl|Viool|name|MIMO
violin|nl|violen|plural|MIMO
viola|en|Viola|name|MIMO
viola|en|viola|name|IAML
viola|en|tenor|variant|IAML
viola|en|tenor viola|variant|IAML
viola|en|tenor violin|variant|IAML
viola|en|violet|variant|IAML
viola|en|violas|plural|MIMO
viola|fr|Alto|name|MIMO
viola|fr|alto|name|IAML
viola|fr|haute-contre de violon|variant|IAML
viola|fr|quinte de violon|variant|IAML
viola|fr|taille de violon|variant|IAML
viola|fr|altos|plural|MIMO
viola|de|Bratsche|name|MIMO
viola|de|Bratsche|name|IAML
viola|de|Tenorgeige|variant|IAML
viola|de|Viole|variant|IAML
viola|de|Bratschen|plural|MIMO
viola|it|Viola|name|MIMO
viola|it|viola|name|IAML
viola|it|alto viola|variant|IAML
viola|it|altopiano|variant|IAML
viola|it|viola da brazzo|variant|IAML
viola|it|violetta|variant|IAML
viola|it|viole|plural|MIMO
viola|es|Viola|name|MIMO
viola|es|viola|name|IAML
viola|es|violas|plural|MIMO
viola|nl|Altviool|name|MIMO
viola|nl|altviolen|plural|MIMO
cello|en|cello|name|IAML
cello|en|Violoncello|variant|MIMO
cello|en|bass violin|variant|IAML
cello|en|Vc.|abbreviation|WISE
cello|fr|Violoncelle|name|MIMO
cello|fr|violoncelle|name|IAML
cello|fr|bas viol de braccio|variant|IAML
cello|fr|bas de violon|variant|IAML
cello|fr|basse de violon|variant|IAML
cello|de|Violoncello|name|MIMO
cello|de|Cello|variant|MIMO
cello|de|Violoncell|variant|IAML
cello|de|bass-Geige|variant|IAML
cello|de|Vc.|abbreviation|CKNA
cello|it|Violoncello|name|MIMO
cello|it|violoncello|name|IAML
cello|it|violoncino|variant|IAML
cello|es|Violonchelo|name|MIMO
cello|es|violonchelo|name|IAML
cello|es|chelo|variant|IAML
cello|es|violoncel|variant|IAML
cello|es|violoncelo|variant|IAML
cello|nl|Cello|name|MIMO
double-bass|en|Double bass|name|MIMO
double-bass|en|double bass|name|IAML
double-bass|en|string bass|variant|IAML
double-bass|en|D. B.|abbreviation|WISE
double-bass|fr|Contrebasse|name|MIMO
double-bass|fr|contrebasse|name|IAML
double-bass|fr|basse des italiens|variant|IAML
double-bass|fr|basse-contre|variant|IAML
double-bass|fr|contraviolon|variant|IAML
double-bass|fr|Cb.|abbreviation|GDRM
double-bass|de|Kontrabass|name|MIMO
double-bass|de|Kontrabass|name|IAML
double-bass|de|Kontrabaß|variant|MIMO
double-bass|de|Contrabass|variant|IAML
double-bass|de|Kb.|abbreviation|CKNA
double-bass|it|Contrabbasso|name|MIMO
double-bass|it|contrabbasso|name|IAML
double-bass|es|Contrabajo|name|MIMO
double-bass|es|contrabajo|name|IAML
double-bass|nl|Contrabas|name|MIMO
viola-d-amore|en|Viola d'amore|name|MIMO
viola-d-amore|fr|Viole d'amour|name|MIMO
viola-d-amore|de|Viola d'amore|name|MIMO
viola-d-amore|it|Viola d'amore|name|MIMO
viola-d-amore|es|Viola de amor|name|MIMO
viola-d-amore|nl|Viola d'amore|name|MIMO
viola-da-gamba|en|Viola da gamba|variant|MIMO
viola-da-gamba|en|viol|variant|IAML
viola-da-gamba|en|division viol|variant|IAML
viola-da-gamba|en|gamba|variant|IAML
viola-da-gamba|en|lyra viol|variant|IAML
viola-da-gamba|fr|Basse de viole|name|MIMO
viola-da-gamba|fr|viole de gambe|variant|IAML
viola-da-gamba|de|Viola da gamba|name|MIMO
viola-da-gamba|de|Viola Da Gamba|name|IAML
viola-da-gamba|de|Gambe|variant|MIMO
viola-da-gamba|de|Gambe|variant|IAML
viola-da-gamba|de|Kniegeige|variant|IAML
viola-da-gamba|de|Schoßgeige|variant|IAML
viola-da-gamba|it|Viola da gamba|name|MIMO
viola-da-gamba|it|viola da gamba|name|IAML
viola-da-gamba|it|lyra bastarda|variant|IAML
viola-da-gamba|it|viola bastarda|variant|IAML
viola-da-gamba|es|Viola da gamba|name|MIMO
viola-da-gamba|es|Viola de arco baja|variant|MIMO
viola-da-gamba|es|viola de gamba|variant|IAML
viola-da-gamba|es|lira viola|variant|IAML
viola-da-gamba|nl|Viola da gamba|name|MIMO
harp|en|Harp|name|MIMO
harp|en|harp|name|IAML
harp|en|harps|plural|MIMO
harp|en|Hp.|abbreviation|WISE
harp|fr|Harpe|name|MIMO
harp|fr|harpe|name|IAML
harp|fr|harpes|plural|MIMO
harp|de|Harfe|name|MIMO
harp|de|Harfe|name|IAML
harp|de|Harfen|plural|MIMO
harp|it|Arpa|name|MIMO
harp|it|arpa|name|IAML
harp|it|arpa a nottolini|variant|IAML
harp|it|arpa a uncini|variant|IAML
harp|it|arpa cromatica|variant|IAML
harp|it|arpa doppia|variant|IAML
harp|it|lira barberina|variant|IAML
harp|it|lyra barberina|variant|IAML
harp|it|arpe|plural|MIMO
harp|es|Arpa|name|MIMO
harp|es|arpa|name|IAML
harp|es|arpas|plural|MIMO
harp|nl|Harp|name|MIMO
harp|nl|harpen|plural|MIMO
guitar|en|Guitar|name|MIMO
guitar|en|guitar|name|IAML
guitar|en|gittern|variant|IAML
guitar|en|guitars|plural|MIMO
guitar|en|Gtr.|abbreviation|WISE
guitar|fr|Guitare|name|MIMO
guitar|fr|guitare|name|IAML
guitar|fr|guitare capucine|variant|IAML
guitar|fr|guitare en bateau|variant|IAML
guitar|fr|guitarre|variant|IAML
guitar|fr|guitares|plural|MIMO
guitar|de|Gitarre|name|MIMO
guitar|de|Gitarre|name|IAML
guitar|de|Akkordgitarre|variant|IAML
guitar|de|Guittern|variant|IAML
guitar|de|Klange|variant|IAML
guitar|de|Terzguitarre|variant|IAML
guitar|de|Gitarren|plural|MIMO
guitar|it|Chitarra|name|MIMO
guitar|it|chitarra|name|IAML
guitar|it|bordelletto|variant|IAML
guitar|it|chitarra battente|variant|IAML
guitar|it|chitarra francese|variant|IAML
guitar|it|chitarra spagnola|variant|IAML
guitar|it|chitarriglia|variant|IAML
guitar|it|chitarrino|variant|IAML
guitar|it|chitarre|plural|MIMO
guitar|es|Guitarra|name|MIMO
guitar|es|guitarra|name|IAML
guitar|es|charango|variant|IAML
guitar|es|guitarrico|variant|IAML
guitar|es|guitarrillo|variant|IAML
guitar|es|guitarro|variant|IAML
guitar|es|guitarras|plural|MIMO
guitar|nl|Gitaar|name|MIMO
guitar|nl|gitaren|plural|MIMO
bass-guitar|en|Bass guitar|name|MIMO
bass-guitar|en|Electric bass guitar|variant|MIMO
bass-guitar|en|electric bass guitar|variant|IAML
bass-guitar|en|B. Gtr.|abbreviation|WISE
bass-guitar|fr|Guitare basse|name|MIMO
bass-guitar|fr|Basse électrique|variant|MIMO
bass-guitar|fr|gitare électrique basse|variant|IAML
bass-guitar|de|Bassgitarre|name|MIMO
bass-guitar|de|Baßgitarre|variant|MIMO
bass-guitar|de|Baßguitarre|variant|MIMO
bass-guitar|de|Elektrische Bassgitarre|variant|MIMO
bass-guitar|de|Elektrobass|variant|MIMO
bass-guitar|de|Elektrobaß|variant|MIMO
bass-guitar|de|Elektrische Baßgitarre|variant|MIMO
bass-guitar|it|Basso elettrico|name|MIMO
bass-guitar|it|basso elettrico|name|IAML
bass-guitar|it|Chitarra basso|variant|MIMO
bass-guitar|es|Bajo eléctrico|name|MIMO
bass-guitar|es|Guitarra baja|variant|MIMO
bass-guitar|nl|Basgitaar|name|MIMO
bass-guitar|nl|Elektrische basgitaar|variant|MIMO
mandolin|en|Mandolin|name|MIMO
mandolin|en|mandolin|name|IAML
mandolin|en|mandolins|plural|MIMO
mandolin|fr|Mandoline|name|MIMO
mandolin|fr|mandoline|name|IAML
mandolin|fr|mandolines|plural|MIMO
mandolin|de|Mandoline|name|MIMO
mandolin|de|Mandolinen|plural|MIMO
mandolin|it|Mandolino|name|MIMO
mandolin|it|mandolino|name|IAML
mandolin|it|liuto romano|variant|IAML
mandolin|it|mandolini|plural|MIMO
mandolin|es|Mandolina|name|MIMO
mandolin|es|mandolina|name|IAML
mandolin|es|bandolín|variant|IAML
mandolin|es|banjolín|variant|IAML
mandolin|es|mandolinas|plural|MIMO
mandolin|nl|Mandoline|name|MIMO
mandolin|nl|mandolines|plural|MIMO
lute|en|Lute|name|MIMO
lute|en|lute|name|IAML
lute|en|lutes|plural|MIMO
lute|fr|Luth|name|MIMO
lute|fr|luth|name|IAML
lute|fr|luths|plural|MIMO
lute|de|Laute|name|MIMO
lute|de|Laute|name|IAML
lute|de|Lauten|plural|MIMO
lute|it|Liuto|name|MIMO
lute|it|liuto|name|IAML
lute|it|lauto|variant|IAML
lute|it|leuto|variant|IAML
lute|it|liuti|plural|MIMO
lute|es|Laúd|name|MIMO
lute|es|laúd|name|IAML
lute|es|laúdes|plural|MIMO
lute|nl|Luit|name|MIMO
lute|nl|luit|name|IAML
lute|nl|luiten|plural|MIMO
piano|en|piano|name|IAML
piano|en|Pianoforte|variant|MIMO
piano|en|aliquot piano|variant|IAML
piano|en|apolliricon|variant|IAML
piano|en|apollonion|variant|IAML
piano|en|apollonium|variant|IAML
piano|en|cabinet piano|variant|IAML
piano|en|cottage piano|variant|IAML
piano|en|piano cottage|variant|IAML
piano|en|piano-console|variant|IAML
piano|en|square piano|variant|IAML
piano|en|upright pianoforte|variant|IAML
piano|fr|Piano|name|MIMO
piano|fr|piano|name|IAML
piano|fr|luthéal|variant|IAML
piano|fr|piano cycloide|variant|IAML
piano|fr|piano droit|variant|IAML
piano|fr|piano elliptique|variant|IAML
piano|fr|piano-luthéal|variant|IAML
piano|fr|pianos|plural|MIMO
piano|de|Klavier|name|IAML
piano|de|Hammerklavier|variant|MIMO
piano|de|Ditanaklasis|variant|IAML
piano|de|Lyraflügel|variant|IAML
piano|de|Klaviere|plural|MIMO
piano|de|Klav.|abbreviation|CKNA
piano|it|Pianoforte|name|MIMO
piano|it|pianoforte|name|IAML
piano|it|pianino|variant|IAML
piano|it|piano|variant|IAML
piano|it|piano-forte|variant|IAML
piano|it|piano-giraffa|variant|IAML
piano|it|pianoforte piramidale|variant|IAML
piano|it|pianoforti|plural|MIMO
piano|es|piano|name|IAML
piano|es|Pianoforte|variant|MIMO
piano|es|pianos|plural|MIMO
piano|nl|Pianoforte|variant|MIMO
celesta|en|Celesta|name|MIMO
celesta|en|celesta|name|IAML
celesta|en|celeste|variant|IAML
celesta|en|Cel.|abbreviation|WISE
celesta|fr|célesta|name|IAML
celesta|fr|Celesta|variant|MIMO
celesta|fr|adiaphone|variant|IAML
celesta|fr|céleste|variant|IAML
celesta|fr|celesta|variant|HANS
celesta|fr|Cél.|abbreviation|GDRM
celesta|de|Celesta|name|MIMO
celesta|de|Celesta|name|IAML
celesta|it|Celesta|name|MIMO
celesta|it|celesta|name|IAML
celesta|it|clavi-lame|variant|IAML
celesta|es|Celesta|name|MIMO
celesta|es|celesta|name|IAML
celesta|nl|Celesta|name|MIMO
keyed-glockenspiel|en|Keyboard glockenspiel|name|MIMO
keyed-glockenspiel|en|glockenspiel|variant|IAML
keyed-glockenspiel|fr|Glockenspiel à clavier|variant|MIMO
keyed-glockenspiel|fr|glockenspiel|variant|IAML
keyed-glockenspiel|de|Klaviaturglockenspiel|name|MIMO
keyed-glockenspiel|de|Glockenspiel|variant|IAML
keyed-glockenspiel|it|Glockenspiel a tastiera|variant|MIMO
keyed-glockenspiel|it|glockenspiel|variant|IAML
keyed-glockenspiel|es|Carillón de teclado|variant|MIMO
keyed-glockenspiel|es|glockenspiel|variant|IAML
keyed-glockenspiel|nl|Klavierklokkenspel|variant|MIMO
harpsichord|en|Harpsichord|name|MIMO
harpsichord|en|harpsichord|name|IAML
harpsichord|en|cembalo|variant|IAML
harpsichord|en|harpsichords|plural|MIMO
harpsichord|fr|Clavecin|name|MIMO
harpsichord|fr|clavecin|name|IAML
harpsichord|fr|clavecin brisé|variant|IAML
harpsichord|fr|clavessin|variant|IAML
harpsichord|fr|clavecins|plural|MIMO
harpsichord|fr|Clav.|abbreviation|GDRM
harpsichord|de|Cembalo|name|MIMO
harpsichord|de|Cembalo|name|IAML
harpsichord|de|Clavicimbal|variant|IAML
harpsichord|de|Flügel|variant|IAML
harpsichord|de|Kielflügel|variant|IAML
harpsichord|de|Klavier|variant|IAML
harpsichord|de|Klavizymbel|variant|IAML
harpsichord|de|Cembali|plural|MIMO
harpsichord|it|Clavicembalo|name|MIMO
harpsichord|it|clavicembalo|name|IAML
harpsichord|it|cembalo|variant|IAML
harpsichord|it|cembalo a penna|variant|IAML
harpsichord|it|cimbalo|variant|IAML
harpsichord|it|gravicembalo|variant|IAML
harpsichord|es|clave|name|IAML
harpsichord|es|Clavicémbalo|variant|MIMO
harpsichord|es|clavecín|variant|IAML
harpsichord|es|clavicémbalo|variant|IAML
harpsichord|es|clavicímbalo|variant|IAML
harpsichord|es|cémbalo|variant|IAML
harpsichord|es|gravicémbalo|variant|IAML
harpsichord|nl|Klavecimbel|name|MIMO
harpsichord|nl|klavecimbels|plural|MIMO
organ|en|Organ|name|MIMO
organ|en|organ|name|IAML
organ|en|positive|variant|IAML
organ|en|organs|plural|MIMO
organ|en|Org.|abbreviation|WISE
organ|fr|Orgue|name|MIMO
organ|fr|orgue|name|IAML
organ|fr|orgue positif|variant|IAML
organ|fr|orgues|variant|IAML
organ|fr|orgues|plural|MIMO
organ|de|Orgel|name|MIMO
organ|de|orgel|name|IAML
organ|de|Orgeln|plural|MIMO
organ|de|Org.|abbreviation|CKNA
organ|it|Organo|name|MIMO
organ|it|organo|name|IAML
organ|it|ninfale|variant|IAML
organ|it|organetto|variant|IAML
organ|it|organino|variant|IAML
organ|it|portativo|variant|IAML
organ|it|positivo|variant|IAML
organ|it|organi|plural|MIMO
organ|es|Órgano|name|MIMO
organ|es|órgano|name|IAML
organ|es|órganos|plural|MIMO
organ|nl|Orgel|name|MIMO
organ|nl|orgels|plural|MIMO
harmonium|en|Harmonium|name|MIMO
harmonium|en|harmonium|name|IAML
harmonium|en|aeoline|variant|IAML
harmonium|en|aeolodion|variant|IAML
harmonium|en|american organ|variant|IAML
harmonium|en|cabinet organ|variant|IAML
harmonium|en|eoline|variant|IAML
harmonium|en|lap organ|variant|IAML
harmonium|en|melodeon|variant|IAML
harmonium|en|melophone|variant|IAML
harmonium|en|orchestrion|variant|IAML
harmonium|en|organophone|variant|IAML
harmonium|en|reed organ|variant|IAML
harmonium|fr|Harmonium|name|MIMO
harmonium|fr|harmonium|name|IAML
harmonium|fr|harmonicorde|variant|IAML
harmonium|fr|orgue américain|variant|IAML
harmonium|fr|orgue expressif|variant|IAML
harmonium|fr|piano-chanteur|variant|IAML
harmonium|fr|poïkilorgue|variant|IAML
harmonium|fr|séraphine|variant|IAML
harmonium|de|Harmonium|name|MIMO
harmonium|de|Harmonium|name|IAML
harmonium|de|Aeolsklavier|variant|IAML
harmonium|de|Aerophon|variant|IAML
harmonium|de|Akkordeon|variant|IAML
harmonium|de|Organo-Violine|variant|IAML
harmonium|de|Physharmonika|variant|IAML
harmonium|de|amerikanisches Organ|variant|IAML
harmonium|de|Äolsklavier|variant|IAML
harmonium|it|Harmonium|variant|MIMO
harmonium|it|harmonium|variant|IAML
harmonium|it|armonio|variant|IAML
harmonium|it|harmonio|variant|IAML
harmonium|it|melofono|variant|IAML
harmonium|es|Armonio|name|MIMO
harmonium|es|armonio|name|IAML
harmonium|es|armonium|variant|IAML
harmonium|es|harmonio|variant|IAML
harmonium|es|harmonium|variant|IAML
harmonium|nl|Harmonium|name|MIMO
accordion|en|Accordion|name|MIMO
accordion|en|accordion|name|IAML
accordion|en|accordions|plural|MIMO
accordion|fr|Accordéon|name|MIMO
accordion|fr|accordéon|name|IAML
accordion|fr|harmonieflûte|variant|IAML
accordion|fr|accordéons|plural|MIMO
accordion|fr|Acc.|abbreviation|GDRM
accordion|de|Akkordeon|name|MIMO
accordion|de|Akkordeon|name|IAML
accordion|de|Handharmonika|variant|IAML
accordion|de|Klavier-Harmonika|variant|IAML
accordion|de|Konzertina|variant|IAML
accordion|de|Physharmonika|variant|IAML
accordion|de|Ziehharmonika|variant|IAML
accordion|de|Akkordeons|plural|MIMO
accordion|de|Akk.|abbreviation|CKNA
accordion|it|Fisarmonica|name|MIMO
accordion|it|fisarmonica|name|IAML
accordion|it|accordio|variant|IAML
accordion|it|armonica a manticino|variant|IAML
accordion|it|concertina|variant|IAML
accordion|it|fisa|variant|IAML
accordion|it|organetto|variant|IAML
accordion|it|fisarmoniche|plural|MIMO
accordion|es|Acordeón|name|MIMO
accordion|es|acordeón|name|IAML
accordion|es|acordeones|plural|MIMO
accordion|nl|Accordeon|name|MIMO
accordion|nl|accordeons|plural|MIMO
timpani|en|timpani|name|IAML
timpani|en|Kettledrum|variant|MIMO
timpani|en|Kettledrums|variant|MIMO
timpani|en|kettledrum|variant|IAML
timpani|en|Timp.|abbreviation|BLAKE
timpani|en|Timp.|abbreviation|WISE
timpani|fr|Timbales|name|MIMO
timpani|fr|timbales|name|IAML
timpani|fr|timbales|name|NIHON
timpani|fr|Timbale|variant|MIMO
timpani|fr|Tambour sur cuvette|variant|MIMO
timpani|fr|nacaires|variant|IAML
timpani|fr|timbale|variant|IAML
timpani|fr|timbale chromatique|variant|IAML
timpani|fr|timbale-trompette|variant|IAML
timpani|fr|trompette-timbale|variant|IAML
timpani|fr|timbales|plural|MIMO
timpani|de|Pauken|name|IAML
timpani|de|Pauken|name|NIHON
timpani|de|Pauke|variant|MIMO
timpani|de|Kesseltrommeln|variant|MIMO
timpani|de|Heerpauken|variant|IAML
timpani|de|Pk.|abbreviation|CKNA
timpani|it|timpani|name|IAML
timpani|it|timpani|name|NIHON
timpani|it|Timpano|variant|MIMO
timpani|it|Tamburi a caldaia|variant|MIMO
timpani|it|timballi|variant|IAML
timpani|it|timpano|variant|IAML
timpani|it|timpano a pedale|variant|IAML
timpani|it|timpano cromatico|variant|IAML
timpani|es|Tímpano|variant|MIMO
timpani|es|Tímpanos|variant|MIMO
timpani|es|timbal|variant|IAML
timpani|es|atabal|variant|IAML
timpani|nl|Keteltrom|variant|MIMO
timpani|nl|Keteltrommen|variant|MIMO
glockenspiel|en|Glockenspiel|name|MIMO
glockenspiel|en|glockenspiel|name|IAML
glockenspiel|en|Glsp.|abbreviation|BLAKE
glockenspiel|fr|jeu de timbres|name|HANS
glockenspiel|fr|Glockenspiel|variant|MIMO
glockenspiel|fr|glockenspiel|variant|IAML
glockenspiel|fr|carillon|variant|HANS
glockenspiel|de|Glockenspiel|name|MIMO
glockenspiel|de|Glockenspiel|name|IAML
glockenspiel|de|Glockenspiel|name|HANS
glockenspiel|it|campanelli|name|HANS
glockenspiel|it|campanelli|name|NIHON
glockenspiel|it|Glockenspiel|variant|MIMO
glockenspiel|it|glockenspiel|variant|IAML
glockenspiel|es|Carillón|variant|MIMO
glockenspiel|es|glockenspiel|variant|IAML
glockenspiel|nl|Glockenspiel|variant|MIMO
xylophone|en|Xylophone|name|MIMO
xylophone|en|xylophone|name|IAML
xylophone|en|tryphon|variant|IAML
xylophone|en|straw fiddle|variant|IAML
xylophone|en|xylophones|plural|MIMO
xylophone|en|Xyl.|abbreviation|WISE
xylophone|fr|Xylophone|name|MIMO
xylophone|fr|xylophone|name|IAML
xylophone|fr|balafon|variant|IAML
xylophone|fr|claquebois|variant|IAML
xylophone|fr|eschelletes|variant|IAML
xylophone|fr|orgue de bois|variant|IAML
xylophone|fr|patouilles|variant|IAML
xylophone|fr|régale de bois|variant|IAML
xylophone|fr|échelette|variant|IAML
xylophone|fr|xylophones|plural|MIMO
xylophone|de|Xylophon|name|MIMO
xylophone|de|Xylophon|name|IAML
xylophone|de|Xylophon|name|HANS
xylophone|de|gigelyra|variant|IAML
xylophone|de|Holzharmonika|variant|IAML
xylophone|de|Holzspiel|variant|IAML
xylophone|de|Hülze Glechter|variant|IAML
xylophone|de|Strohfiedel|variant|IAML
xylophone|de|Tastenxylophon|variant|IAML
xylophone|de|Xylofon|variant|IAML
xylophone|de|Xyloharmonika|variant|IAML
xylophone|de|hölzernes Gelächter|variant|IAML
xylophone|de|Xylophone|plural|MIMO
xylophone|de|Xyl.|abbreviation|CKNA
xylophone|it|Xilofono|name|MIMO
xylophone|it|xilofono|name|IAML
xylophone|it|xilofono|name|NIHON
xylophone|it|armonica di legno|variant|IAML
xylophone|it|armonica di paglia|variant|IAML
xylophone|it|arpilegno|variant|IAML
xylophone|it|instrumento di legno|variant|IAML
xylophone|it|legnofono|variant|IAML
xylophone|it|silofono|variant|IAML
xylophone|it|sistro d'apulia|variant|IAML
xylophone|it|sticcato|variant|IAML
xylophone|it|timpano musicale|variant|IAML
xylophone|it|silofono|variant|HANS
xylophone|it|xilofoni|plural|MIMO
xylophone|es|Xilófono|name|MIMO
xylophone|es|xilófono|name|IAML
xylophone|es|xilófonos|plural|MIMO
xylophone|nl|Xylofoon|name|MIMO
marimba|en|Marimba|name|MIMO
marimba|en|marimba|name|IAML
marimba|en|Marimba(lamellaphone)|variant|MIMO
marimba|en|Marimba (xylophone)|variant|MIMO
marimba|fr|Marimba|name|MIMO
marimba|fr|marimba|name|IAML
marimba|fr|Marimba (lamellaphone)|variant|MIMO
marimba|fr|Marimba (xylophone)|variant|MIMO
marimba|fr|marimbaphone|variant|IAML
marimba|de|Marimba|name|MIMO
marimba|de|Marimba|name|IAML
marimba|de|Marimba (lamellophone)|variant|MIMO
marimba|de|Marimba (Xylophone)|variant|MIMO
marimba|de|Marimbaphon|variant|IAML
marimba|it|Marimba|name|MIMO
marimba|it|marimba|name|IAML
marimba|it|Marimba (lamellofono)|variant|MIMO
marimba|it|Marimba (xilofono)|variant|MIMO
marimba|es|Marimba|name|MIMO
marimba|es|marimba|name|IAML
marimba|nl|Marimba|name|MIMO
marimba|nl|Marimba (lamellafoon)|variant|MIMO
marimba|nl|Marimba (xylofoon)|variant|MIMO
vibraphone|en|Vibraphone|name|MIMO
vibraphone|en|vibraphone|name|IAML
vibraphone|en|steel marimba|variant|IAML
vibraphone|en|vibes|variant|IAML
vibraphone|en|vibraharp|variant|IAML
vibraphone|en|Vib.|abbreviation|WISE
vibraphone|fr|Vibraphone|name|MIMO
vibraphone|fr|vibraphone|name|IAML
vibraphone|de|Vibraphon|name|MIMO
vibraphone|de|Vibraphon|name|IAML
vibraphone|de|Vib.|abbreviation|CKNA
vibraphone|it|Vibrafono|name|MIMO
vibraphone|it|vibrafono|name|IAML
vibraphone|es|Vibráfono|name|MIMO
vibraphone|es|vibráfono|name|IAML
vibraphone|nl|Vibrafoon|name|MIMO
tubular-bells|en|Tubular bell|variant|MIMO
tubular-bells|en|tubular chimes|variant|NIHON
tubular-bells|fr|Cloche tubulaire|variant|MIMO
tubular-bells|de|Röhrenglocken|name|HANS
tubular-bells|de|Röhrenglocke|variant|MIMO
tubular-bells|it|Campana tubolare|variant|MIMO
tubular-bells|it|campane|variant|HANS
tubular-bells|es|Campana tubular|variant|MIMO
tubular-bells|nl|Buisklok|variant|MIMO
crotales|en|Crotales|name|MIMO
crotales|en|crotales|name|IAML
crotales|en|antique cymbals|name|IAML
crotales|en|Crot.|abbreviation|BLAKE
crotales|fr|Crotales|name|MIMO
crotales|fr|crotales|name|IAML
crotales|fr|cymbales antiques|name|IAML
crotales|fr|Crotale|variant|MIMO
crotales|fr|Crot.|abbreviation|GDRM
crotales|de|Zimbeln|name|IAML
crotales|de|Crotales|variant|MIMO
crotales|de|Zimbelspiel|variant|IAML
crotales|de|antike Zimbeln|variant|IAML
crotales|de|antikes Becken|variant|IAML
crotales|it|crotali|name|IAML
crotales|it|Crotales|variant|MIMO
crotales|it|cimbali antichi|variant|IAML
crotales|it|crotali antichi|variant|IAML
crotales|it|gioco di crotali|variant|IAML
crotales|it|kleine tanz-becken|variant|IAML
crotales|es|Crótalos|name|MIMO
crotales|es|crótalos|name|IAML
crotales|nl|Crotales|name|MIMO
bell-lyre|en|Lyra glockenspiel|variant|MIMO
bell-lyre|fr|Lyra glockenspiel|variant|MIMO
bell-lyre|de|Glockenspiel-Lyra|variant|MIMO
bell-lyre|it|Lyra glockenspiel|variant|MIMO
bell-lyre|es|Lira-metalófono|variant|MIMO
bell-lyre|nl|Lyra glockenspiel|variant|MIMO
cimbalom|en|Cimbalom|name|MIMO
cimbalom|fr|Cymbalum|name|MIMO
cimbalom|de|Cimbalom|variant|MIMO
cimbalom|it|Cimbalom|name|MIMO
cimbalom|es|Cimbalom|variant|MIMO
cimbalom|nl|Cimbalom|name|MIMO
snare-drum|en|snare drum|name|NIHON
snare-drum|en|Side drum|variant|MIMO
snare-drum|en|S. D.|abbreviation|BLAKE
snare-drum|fr|Caisse claire|name|MIMO
snare-drum|fr|caisse claire|name|NIHON
snare-drum|de|kleine Trommel|name|MIMO
snare-drum|de|kleine Trommel|name|NIHON
snare-drum|it|Tamburo piccolo / Cassa chiara|variant|MIMO
snare-drum|it|tamburo piccolo|variant|NIHON
snare-drum|es|Tambor vertical|variant|MIMO
snare-drum|nl|Kleine trom|name|MIMO
tenor-drum|en|Tenor drum|name|MIMO
tenor-drum|en|T. D.|abbreviation|BLAKE
tenor-drum|fr|Caisse roulante|name|MIMO
tenor-drum|de|Tenortrommel|variant|MIMO
tenor-drum|it|Tamburo tenore / Cassa rullante|variant|MIMO
tenor-drum|es|Tambor tenor|variant|MIMO
tenor-drum|nl|Tenordrum|variant|MIMO
bass-drum|en|Bass drum|name|MIMO
bass-drum|en|bass drum|name|IAML
bass-drum|en|big drum|variant|IAML
bass-drum|en|gong bass drum|variant|IAML
bass-drum|en|gong drum|variant|IAML
bass-drum|en|turkish drum|variant|IAML
bass-drum|en|B. D.|abbreviation|BLAKE
bass-drum|fr|Grosse caisse|name|MIMO
bass-drum|fr|grosse caisse|name|IAML
bass-drum|fr|grosse caisse|name|NIHON
bass-drum|fr|grand tambour|variant|IAML
bass-drum|fr|tonnant|variant|IAML
bass-drum|de|große Trommel|name|NIHON
bass-drum|de|Basstrommel|variant|MIMO
bass-drum|de|mammoth|variant|IAML
bass-drum|de|einfellige grosse Trommel|variant|IAML
bass-drum|de|grosse Trommel|variant|IAML
bass-drum|it|gran cassa|name|IAML
bass-drum|it|gran cassa|name|NIHON
bass-drum|it|Grancassa|variant|MIMO
bass-drum|it|grancassa|variant|IAML
bass-drum|it|cassa|variant|IAML
bass-drum|it|cassa grande|variant|IAML
bass-drum|it|catuba|variant|IAML
bass-drum|it|gran tamburo|variant|IAML
bass-drum|it|grancassa gong|variant|IAML
bass-drum|it|rollo|variant|IAML
bass-drum|it|tamburo grande|variant|IAML
bass-drum|it|tamburo turco|variant|IAML
bass-drum|es|bombo|name|IAML
bass-drum|es|Tambor bajo|variant|MIMO
bass-drum|es|tambor grande|variant|IAML
bass-drum|nl|Grote trom|name|MIMO
cymbals|en|Cymbals|name|MIMO
cymbals|en|cymbals|name|IAML
cymbals|en|cymbal|variant|IAML
cymbals|en|clashed cymbals|variant|IAML
cymbals|en|cymbals - pair|variant|IAML
cymbals|en|cymbals clashed|variant|IAML
cymbals|en|hand cymbals|variant|IAML
cymbals|en|two cymbals|variant|IAML
cymbals|en|Cym.|abbreviation|BLAKE
cymbals|en|Cym.|abbreviation|WISE
cymbals|fr|Cymbales|name|MIMO
cymbals|fr|cymbales|name|IAML
cymbals|fr|cymbales|name|NIHON
cymbals|fr|cymbale|variant|IAML
cymbals|fr|cymbales coquées|variant|IAML
cymbals|fr|cymbales frappées|variant|IAML
cymbals|fr|cymbales à main|variant|IAML
cymbals|de|Becken|name|MIMO
cymbals|de|Becken|name|IAML
cymbals|de|Becken|name|NIHON
cymbals|de|Becken Teller|variant|IAML
cymbals|de|Beckenpaar|variant|IAML
cymbals|de|Hand Becken|variant|IAML
cymbals|de|Schellbecken|variant|IAML
cymbals|de|Tellern|variant|IAML
cymbals|de|Tschinellen|variant|IAML
cymbals|de|gewöhnlich Becken|variant|IAML
cymbals|de|zwei Becken gestossen|variant|IAML
cymbals|it|Piatti|name|MIMO
cymbals|it|piatti|name|IAML
cymbals|it|piatti|name|NIHON
cymbals|it|Cimbali|variant|MIMO
cymbals|it|cimbali|variant|IAML
cymbals|it|cinelli|variant|IAML
cymbals|it|coppia di piatti|variant|IAML
cymbals|it|piatti a due|variant|IAML
cymbals|it|piatti a mano|variant|IAML
cymbals|it|piatti in coppia|variant|IAML
cymbals|it|piatti volanti|variant|IAML
cymbals|es|platillos|name|IAML
cymbals|es|Címbalos|variant|MIMO
cymbals|es|cimbales|variant|IAML
cymbals|es|címbalos|variant|IAML
cymbals|es|platos|variant|IAML
cymbals|nl|Cimbalen|variant|MIMO
triangle|en|Triangle|name|MIMO
triangle|en|triangle|name|IAML
triangle|en|Tri.|abbreviation|BLAKE
triangle|fr|Triangle|name|MIMO
triangle|fr|triangle|name|IAML
triangle|de|Triangel|name|MIMO
triangle|de|Triangel|name|IAML
triangle|de|Triangel|name|NIHON
triangle|de|Stegeryff|variant|IAML
triangle|it|Triangolo|name|MIMO
triangle|it|triangolo|name|IAML
triangle|it|triangolo|name|NIHON
triangle|it|acciarino|variant|IAML
triangle|it|staffa|variant|IAML
triangle|it|staffetto|variant|IAML
triangle|it|triangulo|variant|IAML
triangle|es|Triángulo|name|MIMO
triangle|es|triángulo|name|IAML
triangle|nl|Triangel|name|MIMO
tam-tam|en|Tamtam|variant|MIMO
tam-tam|fr|Tambour sur fût|variant|MIMO
tam-tam|fr|Tamtam|variant|MIMO
tam-tam|de|Tamtam|name|MIMO
tam-tam|it|Tamtam|variant|MIMO
tam-tam|es|Tam-tam|name|MIMO
tam-tam|es|Tamtam|variant|MIMO
tam-tam|nl|Tamtam|name|MIMO
tambourine|en|Tambourine|name|MIMO
tambourine|en|tambourine|name|IAML
tambourine|en|tambourine|name|NIHON
tambourine|en|basque drum|variant|IAML
tambourine|en|Tamb.|abbreviation|BLAKE
tambourine|en|Tamb.|abbreviation|WISE
tambourine|fr|tambour de basque|name|IAML
tambourine|fr|tambour de basque|name|NIHON
tambourine|fr|Tambourin|variant|MIMO
tambourine|fr|doira|variant|IAML
tambourine|fr|bedon de biscaye|variant|IAML
tambourine|fr|piano-basque|variant|IAML
tambourine|fr|timbrel|variant|IAML
tambourine|de|Tamburin|name|MIMO
tambourine|de|Schellentrommel|name|IAML
tambourine|de|Tamburin|name|IAML
tambourine|de|Tamburin|name|NIHON
tambourine|de|Rahmentrommen|variant|IAML
tambourine|it|Tamburello|name|MIMO
tambourine|it|tamburello|name|IAML
tambourine|it|tamburo basco|name|IAML
tambourine|it|tamburello basco|variant|IAML
tambourine|it|tamburello senza pelle|variant|IAML
tambourine|it|tambouro basco|variant|NIHON
tambourine|es|Pandereta|name|MIMO
tambourine|es|pandereta|name|IAML
tambourine|es|pandeiro|variant|IAML
tambourine|es|pandero|variant|IAML
tambourine|es|penderete|variant|IAML
tambourine|nl|Tamboerijn|name|MIMO
castanets|en|Castanets|name|MIMO
castanets|en|castanets|name|IAML
castanets|en|Cast.|abbreviation|BLAKE
castanets|fr|Castagnettes|name|MIMO
castanets|fr|castagnettes|name|IAML
castanets|fr|castagnettes|name|NIHON
castanets|fr|cliquettes|variant|IAML
castanets|fr|Cast.|abbreviation|GDRM
castanets|de|Kastagnetten|name|MIMO
castanets|de|Kastagnetten|name|IAML
castanets|de|Kastagnetten|name|NIHON
castanets|de|Clappern|variant|IAML
castanets|de|Kast.|abbreviation|CKNA
castanets|it|Castagnette|name|MIMO
castanets|it|castagnette|name|IAML
castanets|it|nacchere|name|IAML
castanets|it|castagnette|name|NIHON
castanets|it|castagnetti|variant|IAML
castanets|it|castagnole|variant|IAML
castanets|es|Castañuelas|name|MIMO
castanets|es|castañuelas|name|IAML
castanets|es|castañetas|variant|IAML
castanets|es|palillos|variant|IAML
castanets|nl|Castagnetten|name|MIMO
soprano-voice|en|soprano|name|IAML
soprano-voice|en|descant|variant|IAML
soprano-voice|en|treble|variant|IAML
soprano-voice|en|S.|abbreviation|WISE
soprano-voice|fr|soprano|name|IAML
soprano-voice|fr|dessus|variant|IAML
soprano-voice|de|Sopran|name|IAML
soprano-voice|de|Diskant|variant|IAML
soprano-voice|it|soprano|name|IAML
soprano-voice|it|discanto|variant|IAML
soprano-voice|es|soprano|name|IAML
soprano-voice|es|tiple|variant|IAML
mezzo-soprano-voice|en|mezzo-soprano|name|IAML
mezzo-soprano-voice|en|mezzo|variant|IAML
mezzo-soprano-voice|fr|bas-dessus|variant|IAML
mezzo-soprano-voice|it|mezzosoprano|name|IAML
mezzo-soprano-voice|es|mezzosoprano|name|IAML
alto-voice|en|alto|name|IAML
alto-voice|en|A.|abbreviation|WISE
alto-voice|fr|contralto|name|IAML
alto-voice|fr|A.|abbreviation|GDRM
alto-voice|de|Alt|name|IAML
alto-voice|it|contralto|name|IAML
alto-voice|es|contralto|name|IAML
alto-voice|es|alto|variant|IAML
tenor-voice|en|tenor|name|IAML
tenor-voice|en|T.|abbreviation|WISE
tenor-voice|fr|ténor|name|IAML
tenor-voice|fr|taille (voix)|variant|IAML
tenor-voice|fr|ténorino|variant|IAML
tenor-voice|it|tenore|name|IAML
tenor-voice|es|tenor|name|IAML
baritone-voice|en|baritone|name|IAML
baritone-voice|en|Bar.|abbreviation|WISE
baritone-voice|fr|baryton|name|IAML
baritone-voice|fr|baryton Martin|variant|IAML
baritone-voice|fr|baryton Verdi|variant|IAML
baritone-voice|fr|Bar.|abbreviation|GDRM
baritone-voice|de|Bariton|name|IAML
baritone-voice|it|baritono|name|IAML
baritone-voice|es|barítono|name|IAML
bass-voice|en|bass|name|IAML
bass-voice|en|B.|abbreviation|WISE
bass-voice|fr|basse|name|IAML
bass-voice|fr|bas|variant|IAML
bass-voice|fr|B.|abbreviation|GDRM
bass-voice|de|Bass|name|IAML
bass-voice|de|Baß|variant|IAML
bass-voice|it|basso|name|IAML
bass-voice|es|bajo|name|IAML
`
