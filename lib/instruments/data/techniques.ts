/**
 * Marks and words that only some players can follow (renotation-rules, section 8). `players`: who can: players,
 * families, `@` one instrument, `!` all but that one, `same` whoever is of the family that the part was written for.
 * `otherwise`: `remove`, `write` the word given, or `keep` with the remark. An id is a MusicXML element or stands in
 * `techniqueWordTable`. `count`: told once with its number instead of place by place.
 */
export const techniqueTable = `
id|players|otherwise|write|remark
up-bow|strings|remove count||
down-bow|strings|remove count||
harmonic|strings plucked|sound||
open-string|strings plucked|remove||
thumb-position|strings|remove||
fingering|same|remove||
pluck|plucked|remove||
double-tongue|woodwind brass|remove||
triple-tongue|woodwind brass|remove||
stopped|same|remove||the stopped sound is lost
open|same|remove||
half-muted|brass|remove||the muted sound is lost
harmon-mute|brass|remove||the muted sound is lost
snap-pizzicato|strings plucked|remove||short and with an accent comes nearest
fret|same !harp|remove||
string|same !harp|remove||
hammer-on|plucked !harp|remove||
pull-off|plucked !harp|remove||
tap|plucked !harp|remove||
fingernails|plucked|remove||
golpe|plucked !harp|remove||
bend|plucked !harp|keep||the pitch bends, which the player may not be able to do
heel|keyboards|remove||
toe|keyboards|remove||
hole|same|remove||
handbell|percussion|remove||
brass-bend|brass saxophones|remove||
flip|brass saxophones|remove||
smear|brass saxophones|remove||
pedal|keyboards percussion|remove||notes that the pedal held may want longer durations
soft-pedal|keyboards|remove||
harp-pedals|@harp|remove||
damp|plucked percussion keyboards|remove||
damp-all|plucked percussion keyboards|remove||
string-mute|strings|mute||
scordatura|same|remove||the source may notate fingered pitches instead of sounding ones
staff-tuning|same|remove||
capo|plucked !harp|remove||
accordion-registration|@accordion|remove||doublings by the register are lost
percussion|percussion|keep||the picture names an instrument that the player does not play
arpeggiate|strings plucked keyboards percussion|keep count||one player cannot roll a chord: grace notes, or several players
non-arpeggiate|strings plucked keyboards percussion|keep count||one player cannot play a chord
glissando|strings plucked keyboards percussion voices trombones|keep count||not every slide can be played
slide|strings plucked keyboards percussion voices trombones|keep count||not every slide can be played
tremolo|strings plucked keyboards percussion|keep count||tongued repetitions, a held note or flutter-tongue
pizzicato|strings|write|stacc.|
arco|strings|remove|non stacc.|
con-sordino|strings brass|remove||the muted sound is lost: a softer dynamic comes nearest
senza-sordino|strings brass|remove||
sul-ponticello|strings|remove||the colour is lost
sul-tasto|strings|remove||the colour is lost
col-legno|strings|remove||the colour is lost
bow-place|strings|remove||
bow-stroke|strings|keep||light and short comes nearest
string-choice|strings plucked|remove||
una-corda|keyboards|remove||
tre-corde|keyboards|remove||
pedalling|keyboards percussion|remove||notes that the pedal held may want longer durations
registration|keyboards|keep||octaves doubled by the stops have to be decided
near-the-soundboard|plucked|remove||the colour is lost
bisbigliando|plucked woodwind|remove||a tremolo comes nearest
let-ring|plucked percussion keyboards|remove||
stopped-horn|horns|remove||the stopped sound is lost
open-horn|brass|remove||
cuivre|brass|remove||the brassy sound is lost
bells-up|woodwind brass|remove||
mute-kind|brass|remove||the muted sound is lost
flutter-tongue|woodwind brass|remove||a tremolo comes nearest
reed-effect|woodwind|remove||the effect is lost
divisi|strings voices|keep||as many players are needed as there are lines
unison|strings voices|write|a 2|
`

/**
 * How techniques are worded in scores in six languages, folded: lower case, without accents. A final point may be left out.
 * `{string}`, `{nth}` and `{feet}` stand for a string's name, its number and the length of an organ pipe; `=` before
 * a form: only when the direction says nothing else. Common practice of printed scores.
 */
export const techniqueWordTable = `
id|forms
pizzicato|pizz. alla bartok; pizz.; pizzicato; pizzicati; gezupft; gezupf.; pince; pincez; punteado; plucked; getokkeld
arco|arco; coll'arco; col arco; con l'arco; con arco; con el arco; mit bogen; mit dem bogen; gestrichen; gestr.; avec l'archet; avec archet; archet; bowed; with bow; with the bow; met strijkstok; met de strijkstok; gestreken
con-sordino|con sord.; con sordino; con sordini; con sordina; con sordinas; c. sord.; mit dampfer; mit dampfern; gedampft; avec sourdine; avec sourdines; avec la sourdine; avec les sourdines; av. sourd.; mettez la sourdine; mettez les sourdines; with mute; with mutes; mute on; mutes on; muted; met demper; met dempers; gedempt; =sord.; =sourdine; =sourdines; =sordini; =sordino
senza-sordino|senza sord.; senza sordino; senza sordini; senza sordina; s. sord.; via sord.; via sordino; via sordini; ohne dampfer; dampfer ab; dampfer weg; sans sourdine; sans sourdines; otez la sourdine; otez les sourdines; enlevez les sourdines; without mute; without mutes; mute off; mutes off; unmuted; sin sordina; sin sordinas; sin sord.; zonder demper; zonder dempers; demper af
sul-ponticello|sul pont.; sul ponticello; s. pont.; am steg; auf dem steg; sur le chevalet; au chevalet; pres du chevalet; at the bridge; near the bridge; on the bridge; sobre el puente; junto al puente; aan de kam; bij de kam; op de kam; =ponticello
sul-tasto|sul tasto; sulla tastiera; sul tast.; am griffbrett; auf dem griffbrett; sur la touche; on the fingerboard; over the fingerboard; sobre el diapason; sobre el mastil; op de toets; boven de toets
col-legno|col legno battuto; col legno tratto; col legno; c. legno; mit holz; mit dem holz; mit dem holze; avec le bois; with the wood; with the wood of the bow; con la madera; con la vara; met het hout
bow-place|au talon; du talon; am frosch; al tallone; al talone; at the frog; at the heel; con el talon; aan de slof; a la pointe; de la pointe; an der spitze; alla punta; a punta d'arco; punta d'arco; at the point; at the tip; con la punta; aan de punt
bow-stroke|spicc.; spiccato; saltando; saltato; sautille; jete; ricochet; martele; springbogen; geworfen
string-choice|sul {string} corda; sulla {string} corda; sul {string}; sulla {nth} corda; {nth} corda; auf der {string}-saite; auf der {string} saite; {string}-saite; sur la {nth} corde; sur la corde de {string}; {nth} corde; on the {string} string; on the {string}-string; {string} string; {nth} string; en la {nth} cuerda; {nth} cuerda; op de {string}-snaar; {string}-snaar
una-corda|una corda; u. c.; una cuerda; mit verschiebung; soft pedal; met linkerpedaal
tre-corde|tre corde; t. c.; tutte le corde; ohne verschiebung; tres cuerdas; zonder linkerpedaal
pedalling|con ped.; con pedale; col ped.; col pedale; senza ped.; senza pedale; ped. simile; mit pedal; ohne pedal; avec pedale; sans pedale; with pedal; without pedal; con pedal; sin pedal; met pedaal; zonder pedaal; =ped.; =pedal
registration|{feet}
near-the-soundboard|pres de la table; p. d. l. t.; sulla tavola; am resonanzboden; near the soundboard; near the sounding board; cerca de la tabla; bij de klankkast
bisbigliando|bisbigl.; bisbigliando
let-ring|etouffez; etouffe; etouffer; abdampfen; laissez vibrer; l. v.; lasciar vibrare; lascia vibrare; klingen lassen; let ring; let vibrate; dejar vibrar; laten klinken; =damp
stopped-horn|sons bouches; bouche; bouches; bouchez; gestopft; =gest.; chiuso; chiusi; stopped; tapado; tapados; gestopt
open-horn|=ouvert; =ouverts; =sons ouverts; =offen; =aperto; =aperti; =open; =abierto; =abiertos
cuivre|cuivre; cuivrez; cuivres; schmetternd; geschmettert; brassy; blechern; metallico; metalico
bells-up|pavillon en l'air; pavillons en l'air; pav. en l'air; schalltrichter auf; schalltrichter hoch; schalltrichter in die hohe; sturze hoch; campana in aria; campane in aria; campana in alto; padiglione in aria; padiglioni in aria; bells up; bell up; bells in the air; pabellon al aire; pabellones al aire; bekers omhoog; beker omhoog
mute-kind|straight mute; st. mute; cup mute; harmon mute; harmon; bucket mute; plunger; wah-wah; wa-wa; in stand; in the stand; hand in bell; in hat
flutter-tongue|flz.; flt.; fltz.; flatterzunge; mit flatterzunge; flatterz.; flutter-tongue; flutter tongue; flutter-tongued; fluttertongue; flutter; frull.; frullato; frullando; tremolo dental; coup de langue roule; fladdertong
reed-effect|multiphonic; multiphonics; mehrklang; mehrklange; multiphonique; multiphoniques; multifonico; multifonicos; multifonici; key clicks; klappengerausch; klappengerausche; bruit de cles; bruits de cles; slap tongue; slap; subtone
divisi|div.; divisi; divise; divises; divisees; geteilt; getheilt; divided; dividido; divididos; divididas; verdeeld
unison|unis.; unisono; unisoni; unisson; a l'unisson; al unisono; in unison; eenstemmig
`

/** Words that tell a player to take another instrument or crook, folded as above, before the instrument or the key. */
export const changeWordTable = `
language|forms
it|muta; mutano; mutare; muta subito; cambia; prende
fr|changez; changent; prenez; prendre; prend; prennent; mettez
de|nimmt; nehmen; wechselt; wechseln; stimmt um; umstimmen; muta
en|to; take; takes; change; changes; change to; switch to
es|cambia; cambian; cambiar; toma; toman; muda
nl|neemt; nemen; wisselt; wisselen
`
