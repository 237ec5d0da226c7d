/**
 * The words of which score labels are made: one concept a line, and how it is said and abbreviated in each language,
 * folded (lower case, no accents). A form may stand in several lines: `kl` is small and is a clarinet. Names that the
 * catalogue attests in full need no line here; these make their parts, plurals and abbreviations understood in
 * any combination. Common practice of printed scores; abbreviations after MOLA's and the catalogue's lists.
 */
export const wordTable = `
concept|en|fr|de|it|es|nl
flute|flute flutes fl flt|flute flutes fl flt|flote floten floete floeten fl querflote querfloten|flauto flauti fl|flauta flautas fl|fluit fluiten fl dwarsfluit dwarsfluiten
piccolo|piccolo piccolos picc pic|piccolo piccolos picc|pikkolo piccolo piccolos picc|piccolo piccoli piccola piccole picc|piccolo piccolos picc|piccolo piccolos picc
ottavino||||ottavino ottavini ott|flautin flautines fltn|
octave|octave|octave octaves|oktav||octava|octaaf
small|small|petit petite petits petites pte pt ptes pts|kleine kleines kleiner kl klein|||kleine kl
large|grand great large|grand grande grands grandes gr gde gd|gross grosse grosser gr|gran grande grandi gr|gran grande grandes|grote groot gr
recorder|recorder recorders rec||blockflote blockfloten blfl block|||blokfluit blokfluiten blfl
bec||bec|||pico|
dolce||||dolce dolci|dulce dulces|
oboe|oboe oboes ob hautboy hautboys hautbois|hautbois htb htbs htbois hb hautb|oboe oboen ob hoboe hoboen|oboe oboi ob|oboe oboes ob|hobo hobos hob
english|english eng e|anglais angl|englisch englisches engl|inglese inglesi ingl|ingles inglesa ingleses ing|engelse engels
amore|damore damour dam amore|damour dam amour|damore liebes dam|damore dam da|amor damore|damore
caccia|caccia||caccia|caccia||caccia
chasse||chasse|jagd|||
bassoon|bassoon bassoons bn bns bsn bsns bssn|basson bassons bon bons|fagott fagotte fag fg fgt|fagotto fagotti fag fg fgt|fagot fagotes fag fg|fagot fagotten fag fg
contrabassoon|contrabassoon contrabassoons cbn cbsn cbns|contrebasson contrebassons cbon cbn|kontrafagott kontrafagotte kfg kfag cfg contrafagott|controfagotto controfagotti contrafagotto cfg cfag|contrafagot contrafagotes cfg|contrafagot contrafagotten cfg
double|double d|double|doppel||doble|dubbel
clarinet|clarinet clarinets clarionet clarionets cl clar clt clart clarts cls|clarinette clarinettes cl clar clte cltes clttes clars cls|klarinette klarinetten clarinette clarinetten klar kl clar cl|clarinetto clarinetti cl clar|clarinete clarinetes cl clar|klarinet klarinetten clarinet klar kl
requinto|||||requinto requintos req|
clarone||||clarone claroni||
basset|basset bst|basset|bassett|bassetto||basset
saxophone|saxophone saxophones sax saxes saxs|saxophone saxophones sax saxo saxos saxs|saxophon saxophone saxofon sax|sassofono sassofoni saxofono sax|saxofon saxofones saxo saxos sax|saxofoon saxofoons sax
sarrusophone|sarrusophone sarrusophones sarr|sarrusophone sarrusophones sarrus sarr|sarrusophon sarrusophone sarr|sarrusofono sarrusofoni sarr|sarrusofono sarrusofonos sarr|sarrusofoon sarrusofoons sarr
saxhorn|saxhorn saxhorns sxh|saxhorn saxhorns sxh saxh|saxhorn saxhorner|saxhorn|saxhorn saxhornos saxhorns|saxhoorn saxhoorns
sopranino|sopranino sno|sopranino sno|sopranino|sopranino sopranini|sopranino|sopranino
soprano|soprano sop sopr s sopranos descant|soprano sop s|sopran s sopr soprane|soprano soprani sop s|soprano sop s sopranos|sopraan sopr s sopranen
mezzo|mezzo mez mz|mezzo|mezzo|mezzo|mezzo|mezzo
alto|alto altos a alt|alto altos a|alt a alto|alto alti a|alto altos a|alt a
contralto|contralto contraltos|contralto|kontraalt|contralto contralti calto|contralto contraltos|contralt
contra|contra ca c|contre c|kontra contra k|contro contra c|contra|contra
tenor|tenor tenors t ten|tenor tenors t ten|tenor t ten tenore|tenore tenori t ten|tenor tenores t ten|tenor t ten tenoren
baritone|baritone baritones bar bari barit|baryton barytons bar baryt|bariton baryton bar|baritono baritoni bar|baritono baritonos bar|bariton baritons bar
bass|bass basses b bs|basse basses b|bass basse bas b|basso bassi bassa basse b|bajo baja bajos bajas b|bas bassen b
contrabass|contrabass contrabasses contrebass cb cbs|contrebasse contrebasses cb ctb cbasse cbasses|kontrabass kontrabasse kontrabasses contrabass kb kbass cb sub subbass|contrabbasso contrabbassi contrabasso contrabassi contrabbassa cb|contrabajo contrabajos contrabaja cb|contrabas contrabassen cb sub subbas
horn|horn horns hn hns hrn hrns hr|cor cors|horn horner hoerner hr hn hrn waldhorn waldhorner|corno corni cor cr crn cn|trompa trompas tpa corno cornos|hoorn hoorns hrn hr
natural|natural nat|naturel naturelle naturels|natur|naturale naturali|natural|natuur
hunting|hunting||jagd parforce||caza|jacht
trumpet|trumpet trumpets tpt tpts trpt trp tr tp trpts|trompette trompettes tromp tp tpt tpte tptte trp tr trptte trp|trompete trompeten trp tr tromp trpt tpt|tromba trombe tr trbe tbe tpt|trompeta trompetas tpta tpt tr trp|trompet trompetten trp tr trpt
clarino||||clarino clarini clno cln||
cornet|cornet cornets cnt cnts crt|cornet cornets cnet cnets pist piston pistons ct cts ctn|kornett kornette korn cornet cornette|cornetta cornette ctta cornet|cornetin cornetines cntin corneta cornetas|cornet cornetten cnt piston pistons
flugelhorn|flugelhorn flugelhorns flugel flug flgh flghn flhn fluegelhorn||flugelhorn flugelhorner fluegelhorn fluegelhoerner flgh flg flh flhr flghn|flicorno flicorni flic|fiscorno fliscorno fiscornos fliscornos flis|
bugle|bugle bugles bgl|bugle bugles bug|bugel|||bugel bugels bgl
trombone|trombone trombones tbn tbns trb trbs trbn trom tb tbne|trombone trombones trb tbn tb tromb trbn tne tnes|posaune posaunen pos ps pos. trombone|trombone tromboni trb tbn trbn trne trbni trni tromb tne|trombon trombones tbn trb tromb|trombone trombones tbn trb bazuin
valve|valve v|pistons piston|ventil|pistoni cilindri|pistones|ventiel
tuba|tuba tubas tba tbas tb|tuba tubas tb|tuba tuben tb tba|tuba tube tb|tuba tubas tb|tuba tubas tb
euphonium|euphonium euphoniums euph eup euphon|euphonium euphoniums euph|euphonium euphonien euph|eufonio eufoni euf|eufonio eufonios euf bombardino bombardinos bomb|euphonium euphoniums eufonium euph
bombardon|bombardon bombardons|bombardon bombardons bomb bombard|bombardon bombarde bomb|bombardone bombardoni bomb|bombardon bombardones|bombardon bombardons
sousaphone|sousaphone sousaphones sousa|soubassophone sousaphone soubassophones|sousaphon sousaphone|sousafono|sousafon sousafono|sousafoon
ophicleide|ophicleide ophicleides oph|ophicleide ophicleides oph|ophikleide ophikleiden oph|oficleide oficleidi ofl|figle figles|ophicleide
wagner|wagner wag w|wagner wagnerien wagneriens|wagner|wagner|wagneriana|wagner
violin|violin violins vln vlns vn vl vns|violon violons vln von vons vl|violine violinen geige geigen vl vln v|violino violini vl vln vno viol v|violin violines vln vl vn|viool violen vl
viola|viola violas vla vlas va vas||viola violen bratsche bratschen br brat va vla|viola viole vla va vle|viola violas vla va|altviool altviolen vla
cello|cello cellos vc vcl violoncello violoncellos vlc celli vcs|violoncelle violoncelles vlle vlles vcelle vc vcl vllc|violoncello violoncelli cello celli vc vcl vlc violoncell|violoncello violoncelli vc vcl vlc vcello|violonchelo violonchelos violoncelo chelo chelos vc vcl|cello celli vc vcl
gamba|gamba gambas viol viols|gambe viole|gambe gamben||gamba|gamba
guitar|guitar guitars gtr gtrs gt|guitare guitares guit|gitarre gitarren git|chitarra chitarre chit|guitarra guitarras guit|gitaar gitaren git
harp|harp harps hp hrp|harpe harpes hpe|harfe harfen hfe hrf|arpa arpe ar|arpa arpas|harp harpen
piano|piano pianos pno pf pfte pianoforte|piano pianos pno|klavier klaviere klav kl pianoforte|pianoforte piano pf pfte|piano pno|piano klavier
organ|organ org|orgue orgues|orgel org|organo organi org|organo org|orgel
harpsichord|harpsichord hpschd hpsd hch cembalo|clavecin clav|cembalo cemb|cembalo clavicembalo cemb clavicembali|clave clavecin|klavecimbel klav
timpani|timpani timps timp kettledrums kettledrum tymps tymp|timbales timbale timb timp|pauken pauke pk pkn pauker|timpani timpano timp|timbales timpanos timpano timb timp|pauken pauk pk
drum|drum drums dr|tambour tambours tamb caisse|trommel trommeln tr tromm|tamburo tamburi tamb cassa casse|tambor tambores caja|trom trommen trommel tr
snare|snare sn side sd|claire||||
cymbals|cymbals cymbal cym cymb|cymbales cymbale cymb|becken beck bck|piatti piat ptti piatto|platos platillos plat|bekkens bek
triangle|triangle tri trgl|triangle trg trgl|triangel trgl|triangolo trg trgl|triangulo triang|triangel trgl
voice|voice voices vo vocal vocals singer|voix chant|singstimme singstimmen gesang stimme|voce voci|voz voces|zangstem stem
`

/** Words that stand in labels and name no instrument. */
export const noiseWords =
  'the of in en a and et und e y le la les de du des del della di da der die das dem den von van het een el los las ' +
  'player players section part parts partie parti parte stimme stimmen partij unspecified concert acoustic ' +
  'pupitre pult pulte desk desks leggio stand orchestra principal concertante obbligato obligato ' +
  'section sic not basic standard modern gewohnlich chromatique chromatisch alle all tous tutti electric pour fur for per ou or oder oppure bzw con avec mit with div divisi unis u o'

/** Names that scores print and the catalogue's sources do not: folded form, id, languages. */
export const moreNamesTable = `
form|ids|languages
viol|violin viola-da-gamba|de fr en
ct|alto-voice|en
contra bassoon|contrabassoon|en
double bassoon|contrabassoon|en
cb bassoon|contrabassoon|en
d bsn|contrabassoon|en
contrebasse a cordes|double-bass|fr
contrebasses a cordes|double-bass|fr
contrabbasso ad arco|double-bass|it
contrabajo de cuerda|double-bass|es
streichbass|double-bass|de
traverso|flute|it fr de
traversi|flute|it
traversflote|flute|de
flute traversiere|flute|fr
fl trav|flute|fr de
trv|flute|de
concert flute|flute|en
flute tierce|flute-e-flat|fr
terzflote|flute-e-flat|de
piccolo flute|piccolo|en
oktavflote|piccolo|de
cor anglais|english-horn|en fr
altoboe|english-horn|de
bass posaune|bass-trombone|de
tenor posaune|trombone-tenor|de
cor dharmonie|natural-horn horn-f|fr
ventilhorn|horn-f|de
cor a pistons|horn-f horn-e-flat|fr
cors a pistons|horn-f horn-e-flat|fr
cor chromatique|horn-f horn-e-flat|fr
clarini|natural-trumpet|it
clarin|natural-trumpet bugle-b-flat|es
trompette a pistons|trumpet-f trumpet-e-flat|fr
trompettes a pistons|trumpet-f trumpet-e-flat|fr
trompette de cavalerie|cavalry-trumpet-e-flat|fr
repiano cornet|cornet-b-flat|en
genis|alto-horn-e-flat|it
onoven|alto-horn-e-flat|es
tenor saxhorn|alto-horn-e-flat|en
tuba tenore|euphonium|it
tenortuba|euphonium wagner-tuba-tenor-b-flat|de
tenor tuba|euphonium wagner-tuba-tenor-b-flat|en
wagner tuba|wagner-tuba-tenor-b-flat wagner-tuba-bass-f|en de
wagnertuba|wagner-tuba-tenor-b-flat wagner-tuba-bass-f|de
bass tuba|bass-tuba-f bass-tuba-e-flat|en
imperial bass|contrabass-tuba-b-flat|de
kaiserbass|contrabass-tuba-b-flat|de
brass bass|tuba|en
violone|double-bass|it de en
continuo|cello harpsichord organ|it en
basso continuo|cello harpsichord organ|it en de fr
basse continue|cello harpsichord organ|fr
generalbass|cello harpsichord organ|de
bc|cello harpsichord organ|it en de
cantus|soprano-voice|en it
canto|soprano-voice|it
discantus|soprano-voice|de it
dessus|soprano-voice violin|fr
haute contre|alto-voice tenor-voice|fr
taille|tenor-voice viola|fr
treble|soprano-voice|en
trebles|soprano-voice|en
altus|alto-voice|de it
tenore|tenor-voice|it
bassus|bass-voice|de it
contratenor|alto-voice tenor-voice|en fr
countertenor|alto-voice|en
quintus|tenor-voice|en
quinto|tenor-voice|it
voice|soprano-voice mezzo-soprano-voice alto-voice tenor-voice baritone-voice bass-voice|en
chant|soprano-voice mezzo-soprano-voice alto-voice tenor-voice baritone-voice bass-voice|fr
gesang|soprano-voice mezzo-soprano-voice alto-voice tenor-voice baritone-voice bass-voice|de
singstimme|soprano-voice mezzo-soprano-voice alto-voice tenor-voice baritone-voice bass-voice|de
choir|soprano-voice alto-voice tenor-voice bass-voice|en
chorus|soprano-voice alto-voice tenor-voice bass-voice|en
chor|soprano-voice alto-voice tenor-voice bass-voice|de
choeur|soprano-voice alto-voice tenor-voice bass-voice|fr
coro|soprano-voice alto-voice tenor-voice bass-voice|it es
choir aahs|soprano-voice alto-voice tenor-voice bass-voice|en
sopran|soprano-voice|de
drums|snare-drum bass-drum cymbals|en
drumset|snare-drum bass-drum cymbals|en
drum set|snare-drum bass-drum cymbals|en
drum kit|snare-drum bass-drum cymbals|en
kit|snare-drum bass-drum cymbals|en
percussion|snare-drum bass-drum cymbals triangle tambourine|en fr
perc|snare-drum bass-drum cymbals triangle tambourine|en fr it es
batterie|snare-drum bass-drum cymbals|fr
batt|snare-drum bass-drum cymbals|fr it
batteria|snare-drum bass-drum cymbals|it
bateria|snare-drum bass-drum cymbals|es
schlagzeug|snare-drum bass-drum cymbals triangle tambourine|de
schlgz|snare-drum bass-drum cymbals triangle tambourine|de
schlagwerk|snare-drum bass-drum cymbals triangle tambourine|de nl
slagwerk|snare-drum bass-drum cymbals triangle tambourine|nl
percussione|snare-drum bass-drum cymbals triangle|it
percusion|snare-drum bass-drum cymbals triangle|es
tambour|snare-drum tenor-drum|fr
tambours|snare-drum tenor-drum|fr
tambour militaire|snare-drum|fr
tamburo|snare-drum|it
tamburo militare|snare-drum|it
tambor|snare-drum|es
kleine trommel|snare-drum|de
militartrommel|snare-drum|de
ruhrtrommel|tenor-drum|de
wirbeltrommel|tenor-drum|de
kick drum|bass-drum|en
acoustic snare|snare-drum|en
snare|snare-drum|en
side stick|snare-drum|en
caisse|snare-drum|fr
gr c|bass-drum|fr
gr tr|bass-drum|de
grc|bass-drum|fr
g c|bass-drum|fr it
gc|bass-drum|fr it
cassa|bass-drum|it
crash cymbal|cymbals|en
hi hat|cymbals|en
hihat|cymbals|en
cinelli|cymbals|it
tchinellen|cymbals|de
tambour de basque|tambourine|fr
tambourin|tambourine|fr
hand drum|tambourine|en
gong|tam-tam|en fr de
bells|tubular-bells glockenspiel|en
chimes|tubular-bells|en
cloches|tubular-bells|fr
glocken|tubular-bells|de
campane|tubular-bells|it
campanas|tubular-bells|es
glock|glockenspiel|en
orchestra bells|glockenspiel|en
carillon|glockenspiel|fr
campanelli|glockenspiel|it
lyra|bell-lyre|de
grand piano|piano|en
acoustic grand piano|piano|en
keyboard|piano|en
klavier|piano|de
flugel|piano|de
hammerklavier|piano|de
acoustic guitar steel|guitar|en
acoustic guitar|guitar|en
electric guitar|guitar|en
electric bass|bass-guitar|en
bass guitar|bass-guitar|en
e bass|bass-guitar|de
string bass|double-bass|en
upright bass|double-bass|en
bassgeige|double-bass|de
bombardino|euphonium|es it
sax horn|alto-horn-e-flat saxhorn-baritone-b-flat saxhorn-bass-b-flat|fr
saxhorn|alto-horn-e-flat saxhorn-baritone-b-flat saxhorn-bass-b-flat saxhorn-contrabass-e-flat|fr
saxotromba|alto-horn-e-flat saxhorn-baritone-b-flat|fr
sarrusophone|sarrusophone-contrabass-e-flat sarrusophone-contrabass-c sarrusophone-bass-b-flat|fr
sax|alto-saxophone-e-flat tenor-saxophone-b-flat baritone-saxophone-e-flat soprano-saxophone-b-flat|en fr de it es nl
saxophone|alto-saxophone-e-flat tenor-saxophone-b-flat baritone-saxophone-e-flat soprano-saxophone-b-flat|en fr de it es nl
recorder|descant-recorder treble-recorder tenor-recorder bass-recorder|en
flute a bec|treble-recorder descant-recorder tenor-recorder bass-recorder|fr
flauto dolce|treble-recorder descant-recorder tenor-recorder bass-recorder|it
blockflote|descant-recorder treble-recorder tenor-recorder bass-recorder|de
trombone|trombone-tenor bass-trombone alto-trombone|en fr it
posaune|trombone-tenor bass-trombone alto-trombone|de
flicorno|flugelhorn-b-flat|it
subcontrabass tuba|contrabass-tuba-b-flat|en
contrebassine|double-bass|fr
barytonhorn|baritone-horn|de
`
