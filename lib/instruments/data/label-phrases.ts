/**
 * Phrases of score labels that name no instrument, folded, and what they say. `clef`: sign and line · `optional` ·
 * `or`: another instrument instead · `and`: another on the same staff · `doubling`: the same player also plays ·
 * `instead`: this part stands in for another · `solo`, `ripieno`: the rank of the desk · `cover`: a part for somebody
 * else · `nothing`. After the trade's list of labels for optional and cover parts, and common practice.
 */
export const phraseTable = `
phrase|role|meaning|languages
treble clef|clef|G2|en
violin clef|clef|G2|en
bass clef|clef|F4|en
tenor clef|clef|C4|en
alto clef|clef|C3|en
soprano clef|clef|C1|en
t c|clef|G2|en
tc|clef|G2|en
b c|clef|F4|en
bc|clef|F4|en
cle de sol|clef|G2|fr
clef de sol|clef|G2|fr
cle sol|clef|G2|fr
cle de fa|clef|F4|fr
clef de fa|clef|F4|fr
cle fa|clef|F4|fr
cle dut 3e ligne|clef|C3|fr
cle dut 3e|clef|C3|fr
cle dut 3|clef|C3|fr
cle dut troisieme ligne|clef|C3|fr
cle dut 4e ligne|clef|C4|fr
cle dut 4e|clef|C4|fr
cle dut 4|clef|C4|fr
cle dut quatrieme ligne|clef|C4|fr
cle dut 1e ligne|clef|C1|fr
cle dut|clef|C3|fr
clef dut|clef|C3|fr
violinschlussel|clef|G2|de
violinschl|clef|G2|de
violin schlussel|clef|G2|de
g schlussel|clef|G2|de
bassschlussel|clef|F4|de
bassschl|clef|F4|de
bass schlussel|clef|F4|de
f schlussel|clef|F4|de
tenorschlussel|clef|C4|de
altschlussel|clef|C3|de
bratschenschlussel|clef|C3|de
chiave di violino|clef|G2|it
chiave di sol|clef|G2|it
chiave di basso|clef|F4|it
chiave di fa|clef|F4|it
chiave di tenore|clef|C4|it
chiave di contralto|clef|C3|it
chiave di do|clef|C3|it
clave de sol|clef|G2|es
clave de fa|clef|F4|es
clave de do en 3|clef|C3|es
clave de do en 4|clef|C4|es
clave de do|clef|C3|es
vioolsleutel|clef|G2|nl
solsleutel|clef|G2|nl
g sleutel|clef|G2|nl
bassleutel|clef|F4|nl
fasleutel|clef|F4|nl
f sleutel|clef|F4|nl
tenorsleutel|clef|C4|nl
altsleutel|clef|C3|nl
ad lib|optional||en fr de it es nl
ad libitum|optional||en fr de it es nl
opt|optional||en
optional|optional||en
if available|optional||en
if possible|optional||en
facultatif|optional||fr
facultative|optional||fr
facultatifs|optional||fr
facult|optional||fr
si possible|optional||fr
sil y en a|optional||fr
a defaut|optional|or|fr
nicht obligat|optional||de
nicht obligatorisch|optional||de
wenn vorhanden|optional||de
nach belieben|optional||de
a piacere|optional||it
facoltativo|optional||it
facoltativa|optional||it
facoltativi|optional||it
se possibile|optional||it
opcional|optional||es
opcionales|optional||es
si hay|optional||es
facultativo|optional||es
facultatief|optional||nl
niet verplicht|optional||nl
indien aanwezig|optional||nl
in the absence of|instead||en
in absence of|instead||en
in place of|instead||en
instead of|instead||en
replaces|instead||en
replacing|instead||en
play if no|instead||en
substitute for|instead||en
sub for|instead||en
cover for|instead||en
a defaut de|instead||fr
a defaut du|instead||fr
a defaut des|instead||fr
a defaut dun|instead||fr
en labsence de|instead||fr
en labsence du|instead||fr
remplacant le|instead||fr
remplacant la|instead||fr
remplacant les|instead||fr
en remplacement de|instead||fr
au lieu de|instead||fr
sil ny a pas de|instead||fr
in ermangelung von|instead||de
in ermangelung der|instead||de
statt|instead||de
anstatt|instead||de
anstelle von|instead||de
anstelle der|instead||de
an stelle von|instead||de
ersatz fur|instead||de
in mancanza di|instead||it
in mancanza del|instead||it
in mancanza della|instead||it
in sostituzione di|instead||it
in luogo di|instead||it
invece di|instead||it
se manca|instead||it
en ausencia de|instead||es
a falta de|instead||es
en sustitucion de|instead||es
en lugar de|instead||es
si no hay|instead||es
bij afwezigheid van|instead||nl
ter vervanging van|instead||nl
in plaats van|instead||nl
bij gebrek aan|instead||nl
alt part|cover||en
cover|cover||en
cover part|cover||en
substitute|cover||en
sub part|cover||en
replique|cover||fr
remplacant|cover||fr
ersatz|cover||de
sostituzione|cover||it
sostituto|cover||it
sustituto|cover||es
vervangpartij|cover||nl
ou a defaut|or||fr
a defaut le|or||fr
ou bien|or||fr
ou|or||fr
or|or||en
oder|or||de
bzw|or||de
beziehungsweise|or||de
oppure|or||it
ovvero|or||it
o|or||it es
od|or||it
of|or||nl
and|and||en
et|and||fr
und|and||de
u|and||de
e|and||it
ed|and||it
y|and||es
en|and||nl
with|and||en
avec|and||fr
mit|and||de
con|and||it es
met|and||nl
also|doubling||en
doubling|doubling||en
doubles|doubling||en
dbl|doubling||en
alternating with|doubling||en
changing to|doubling||en
to|doubling||en
prend|doubling||fr
prenant|doubling||fr
prend aussi|doubling||fr
prendra|doubling||fr
jouant aussi|doubling||fr
aussi|doubling||fr
change en|doubling||fr
auch|doubling||de
abwechselnd mit|doubling||de
wechselnd mit|doubling||de
nimmt|doubling||de
nimmt auch|doubling||de
spater|doubling||de
anche|doubling||it
poi|doubling||it
muta in|doubling||it
mutano in|doubling||it
prende|doubling||it
tambien|doubling||es
cambia a|doubling||es
y tambien|doubling||es
ook|doubling||nl
tevens|doubling||nl
neemt|doubling||nl
solo|solo||en fr de it es nl
soli|solo||en fr de it es nl
soliste|solo||fr
solist|solo||de nl
solista|solo||it es
principale|solo||it
ripieno|ripieno||it en
repiano|ripieno||en
rip|ripieno||en
tutti|ripieno||it en de
in the score|nothing||en
`
