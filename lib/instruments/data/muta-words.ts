/** Words that tell a player to change, before what is changed to; folded. `to`: they may also introduce other things. */
export const changeWordTable = `
phrase|languages
muta in|it en de
muta|it
mutano in|it
mutano|it
cambia in|it
cambiano in|it
cambia|it es
cambia a|es
cambiar a|es
cambian a|es
cambie a|es
muda en|es
mudan en|es
prende|it
prendono|it
prende il|it
toma|es
toman|es
coge|es
change to|en
changes to|en
change into|en
change|en
changing to|en
switch to|en
take|en
takes|en
to|en
changez en|fr
changez|fr
changent en|fr
change en|fr
changer en|fr
mettez|fr
mettez en|fr
prendre|fr
prenez|fr
prennent|fr
prend|fr
reprendre|fr
reprenez|fr
reprend|fr
nimmt|de
nehmen|de
nimm|de
nehmet|de
wechselt zu|de
wechselt nach|de
wechseln zu|de
wechseln nach|de
wechseln in|de
wechsel zu|de
wechselt|de
wechseln|de
stimmt um nach|de
umstimmen in|de
umstimmen nach|de
stimmen um nach|de
um nach|de
mutiert in|de
verandert in|de
verwandelt in|de
setzt um in|de
neemt|nl
nemen|nl
neem|nl
wissel naar|nl
wisselt naar|nl
wisselen naar|nl
verandert in|nl
naar|nl
`

/** Words for how to play or how many, folded, and what they ask for. After the trade's rules for techniques. */
export const techniqueTable = `
phrase|technique
pizz|pizzicato
pizzicato|pizzicato
pince|pizzicato
gezupft|pizzicato
getokkeld|pizzicato
arco|arco
col arco|arco
coll arco|arco
collarco|arco
avec larchet|arco
larchet|arco
archet|arco
con el arco|arco
mit dem bogen|arco
mit bogen|arco
gestrichen|arco
gestreken|arco
bowed|arco
con sord|mute
con sordino|mute
con sordini|mute
con sordina|mute
con sorda|mute
muted|mute
with mute|mute
with mutes|mute
mute on|mute
straight mute|mute
cup mute|mute
harmon mute|mute
avec sourdine|mute
avec sourdines|mute
avec la sourdine|mute
avec sourd|mute
mettez la sourdine|mute
mettez les sourdines|mute
sourdine|mute
sourdines|mute
mit dampfer|mute
mit dampfern|mute
m dpf|mute
gedampft|mute
abgedampft|mute
met demper|mute
met dempers|mute
gedempt|mute
senza sord|mute-off
senza sordino|mute-off
senza sordini|mute-off
via sord|mute-off
via sordino|mute-off
via sordini|mute-off
sin sordina|mute-off
without mute|mute-off
mute off|mute-off
open|open
otez la sourdine|mute-off
otez les sourdines|mute-off
sans sourdine|mute-off
sans sourdines|mute-off
sans sourd|mute-off
ohne dampfer|mute-off
o dpf|mute-off
dampfer weg|mute-off
dampfer ab|mute-off
zonder demper|mute-off
bouche|stopped
bouches|stopped
sons bouches|stopped
gestopft|stopped
gest|stopped
stopped|stopped
hand stopped|stopped
chiuso|stopped
chiusi|stopped
tapado|stopped
tapados|stopped
gestopt|stopped
cuivre|brassy
cuivrez|brassy
cuivres|brassy
schmetternd|brassy
brassy|brassy
ouvert|open
ouverts|open
sons ouverts|open
offen|open
aperto|open
aperti|open
abierto|open
open hoorn|open
bells up|bells-up
pavillons en lair|bells-up
pavillon en lair|bells-up
schalltrichter auf|bells-up
schalltrichter hoch|bells-up
campana in aria|bells-up
div|divisi
divisi|divisi
divises|divisi
divise|divisi
geteilt|divisi
get|divisi
dividido|divisi
divididos|divisi
verdeeld|divisi
unis|unison
unisoni|unison
unisono|unison
uniti|unison
unison|unison
non div|unison
a lunisson|unison
zusammen|unison
alle|tutti
solo|solo
sola|solo
soli|soli
seul|solo
einzeln|solo
allein|solo
one player|solo
un solo|solo
tutti|tutti
tous|tutti
toutes|tutti
all|tutti
todos|tutti
allen|tutti
sul pont|sul-ponticello
sul ponticello|sul-ponticello
au chevalet|sul-ponticello
pres du chevalet|sul-ponticello
am steg|sul-ponticello
sul tasto|sul-tasto
sur la touche|sul-tasto
am griffbrett|sul-tasto
col legno|col-legno
col legno battuto|col-legno
avec le bois|col-legno
mit holz|col-legno
flutter|flutter-tongue
flutter tongue|flutter-tongue
flz|flutter-tongue
flatterzunge|flutter-tongue
frull|flutter-tongue
frullato|flutter-tongue
flatt|flutter-tongue
trem|tremolo
tremolo|tremolo
ord|ordinary
ordinario|ordinary
nat|ordinary
naturale|ordinary
position naturelle|ordinary
modo ord|ordinary
gewohnlich|ordinary
gew|ordinary
ad lib|optional
ad libitum|optional
opt|optional
optional|optional
a defaut|optional
facultatif|optional
nicht obligat|optional
a piacere|optional
facoltativo|optional
opcional|optional
facultatief|optional
cue|cue
stichnoten|cue
replique|cue
`

/** Words that may stand beside techniques without changing what they ask for. */
export const fillerWords =
  'sempre ancora poco piu molto e et und and y en i le la les gli il lo alle'
