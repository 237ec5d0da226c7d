/**
 * What there is to say about each instrument, and where each group of facts comes from (codes: sources.ts).
 */
export const remarkTable = `
id|clefChanges|weakRegisters|era|coverNote|remark|transpositionSource|rangeSource|studentSource|coverSource
piccolo||D5-G5 faint; above A7 shrill, needs f|19th c.- ; orchestra, band|flute an octave lower loses the top edge; E flat clarinet keeps the octave but is reedier||MELC;LARUE;OLIB;GEHR|OLIB (pro: written D4-C7); tutti MEM|MEM; NEMP|CP
piccolo-d-flat||as C piccolo|19th - mid-20th c. bands (US, UK, FR, BE)|rewrite a semitone higher for C piccolo; no colour loss||HEBM;APRL;OLIB|OLIB (written D4-C7: low limit; its top would sound Db8); top MEM||CP
piccolo-e-flat||as C piccolo|19th c. bands; NAME TRAP: British and French "E flat piccolo" often means the D flat size|check actual size before converting (see conventions, piccolo)||MEM; name trap HEBM|MEM||CP
flute||C4-G4 soft, easily covered|all|oboe cannot play softly low; clarinet rounder||CP|OLIB (pro low B3 with long foot, written to D7); GEHR (tutti C4-C7); pro high MEM|MEM; NEMP|CP
flute-e-flat||lowest fifth|19th - early 20th c. bands (flûte tierce)|flute brighter high||KOE (exists: flûtes tierces in E flat or F)|MEM||CP
flute-d-flat||lowest fifth|19th - early 20th c. US/UK bands|no loss||MEM|MEM||CP
alto-flute||top fifth thin; quiet everywhere|late 19th c.-|flute lacks G3-B3; clarinet chalumeau nearest weight||WP;POET;OLIB;MW-WW|OLIB (pro: written C4-C7); MW-WW (G3-D6 = tutti)||CP
bass-flute||very quiet; top fifth poor|20th c.-|bass clarinet far more present||MW-WW (compass an octave below the flute)|MW-WW (C3-G5 = tutti); WP prints C3-F#6; pro high MEM||CP
contrabass-flute||almost inaudible in ensemble|20th c.-|different weight||MEM|MEM||CP
fife-b-flat||low octave unreliable|military corps 18th c.-|piccolo cleaner||MEM|MEM||CP
garklein-recorder||few notes above|early/modern revival|||WP;SRP (non-transposing)|SRP (lowest note, pro and tutti); rest MEM||CP
sopranino-recorder||shrill|Baroque; revival||in F but NOT transposed to F|ARS;WP;SRP (non-transposing)|SRP (lowest note, pro and tutti); rest MEM|MEM; NEMP|CP
descant-recorder||lowest 3 notes weak|Baroque; schools|||ARS;WP;SRP (non-transposing)|SRP (lowest note); WPRS (C5-D7 = pro); PROC (two octaves are safe); rest MEM|MEM; NEMP|CP
treble-recorder||lowest 3 notes weak|Baroque; revival|Bach/Telemann parts usually go to flute||ARS;WP;SRP (non-transposing)|SRP (lowest note, pro and tutti); rest MEM|MEM; NEMP|CP
tenor-recorder||soft|Renaissance; revival|||ARS;WP;SRP (non-transposing)|SRP (lowest note, pro and tutti); rest MEM||CP
bass-recorder|G2 in some editions (reads an octave above sound)|soft|Renaissance; revival|||ARS;WP;SRP (non-transposing)|SRP (lowest note, pro and tutti); rest MEM||CP
great-bass-recorder|G2 occasionally|soft|revival|||ARS;WP;SRP (non-transposing)|SRP (lowest note, pro and tutti); rest MEM||CP
contrabass-recorder||soft|revival|||ARS;WP;SRP (non-transposing)|SRP (lowest note, pro and tutti); rest MEM||CP
oboe||Bb3-D4 loud and thick; above D6 thin|all|high oboe: flute, E flat clarinet or soprano sax; low oboe: straight-muted trumpet (WIEL after Blatter)|Gehrkens prints B3-E6 as the practical compass|CP|GEHR (B3-E6 practical = tutti top); STU (low B flat); pro high MEM|MEM; NEMP|CP
oboe-e-flat||lowest third coarse|19th c. French bands|||CODM;KOE|MEM||CP
oboe-d-amore||top fourth thin|Baroque; revived late 19th c.|oboe brighter|pro top lowered from D6 to C#6 to match OLIB|POET;CODM;OLIB|OLIB (pro: written Bb3-E6, minor third lower)||CP
english-horn||above F5 thin; lowest notes strong|18th c.-|alto sax nearest in band; oboe lacks low fifth|Gehrkens: practical compass E3-A5; table keeps tutti from F3|WP;OLIB|OLIB (pro: written B3-G6); GEHR (E3-A5 = practical)||CP
oboe-da-caccia|||Baroque (Bach), alto clef at pitch|||VIE (Bach: alto clef at pitch)|MEM||CP
bass-oboe||top fifth weak|1889-; England early 20th c.|heckelphone louder; E. horn lacks low fourth||BND|BND (B-B flat span in Delius)||CP
heckelphone||lowest semitones missing on early instruments|1904-; Germany|bass oboe thinner low||BND;OLIB|OLIB (pro: written A3-G6); BND (B flat 2 or even B2 on early instruments)||CP
bassoon|C4 above about G4, G2 exceptional|Bb1-D2 loud; F#3-G3 region dull|all|low bassoon: bass clarinet or muted horn (WIEL); tenor range: tenor sax|pro top raised from E5 to F5 (WPFR); Gehrkens and Widor stop at Bb4|CP|GEHR and WID-I djvu 35 (Bb1 up to Bb4/B4 practical); WPFR (extreme Bb1-F5); STU; tutti high MEM|MEM; NEMP|WIEL; rest CP
contrabassoon||top octave weak; lowest notes slow to speak|18th c.-|French orchestras used contrabass sarrusophone (BND bibliography); tuba must play softly|Widor stops at sounding Eb3, Johnstone at A3|CODM;JOHN|JOHN (written B flat 1 - A4); WID-I djvu 35 (sounding C1-Eb3)||CP
tenoroon|||18th-19th c. (E flat size also: Koechlin lists basson en mi bémol)||default changed from +P4 (MEM) to the fifth documented by Berlioz; a quart size (+P4) existed too (IAML lists it)|BERL djvu 141 (basson quinte: a fifth above the written note)|BERL djvu 141 (written Bb1-Bb4, sounding F2-F5); tutti MEM||BERL djvu 141 (English horn covers its two upper octaves)
dulcian|||16th-17th c.|||CP|MEM||CP
clarinet-a-flat||throat notes; shrill top|19th c. Italian, Austrian, Spanish bands|E flat clarinet a fourth lower in size: top notes harder||KOE p.123, MWEB (instrument attested in bands); interval follows from the key name|GRV1 vol.1 djvu 373 (written low E for the family = pro low); rest MEM||CP
clarinet-g-high|||Viennese Schrammel (picksüßes Hölzl)|||musiker-board table (G: fifth higher)|GRV1 vol.1 djvu 373 (written low E for the family = pro low); rest MEM||CP
clarinet-f-high|||early 19th c. bands|||GRV1 vol.1 djvu 374 (table: C melody written in G)|GRV1 vol.1 djvu 373 (written low E for the family = pro low); rest MEM||CP
clarinet-e-flat||throat A-B flat; above written D6 piercing|bands, orchestra|flute keeps height, loses bite|OLIB allows written C7 (sounding Eb7); table keeps C7 as the safer top|teoria;POET;GRV1 vol.1 djvu 374|OLIB and GRV1 vol.1 (written E3 = G3); top MEM|MEM; NEMP|CP
clarinet-d||as E flat|18th c.; Liszt, Wagner, Strauss|customarily played on E flat clarinet|pro top raised from B6 to D7 (OLIB, written C7)|POET;musiker-board;OLIB|OLIB (pro: written E3-C7); tutti MEM||CP
clarinet-c||throat notes; hard tone|18th-19th c.|customarily read on B flat (up a tone)|pro top: Gehrkens G6, OLIB C7; table keeps A6 between them|POET|GEHR (E3-G6); OLIB (written E3-C7); tutti MEM||CP
clarinet-b-flat||throat G4-B flat 4 (written); break at A4/B4|all|clarinets carry the string lines in band transcriptions (KOE p.121)||teoria;GRV1;OLIB|OLIB (pro: written E3-C7); BERL, GRV1 vol.1 (low E sounds D3); NEMP school grades; tutti high MEM|MEM; NEMP|CP
clarinet-a||as B flat|orchestra|only the lowest sounding C sharp is lost (BERL)||teoria;GRV1;OLIB|OLIB (pro: written E3-C7); BERL, GRV1 vol.1 (low E sounds C#3); tutti high MEM||CP
basset-clarinet-a|||Stadler/Mozart; revival|notes below written E go up an octave||MEM|MEM||CP
clarinette-d-amour-g|||late 18th c. (also A flat, F)|||musiker-board (low G: fourth lower)|GRV1 vol.1 djvu 373 (written low E for the family = pro low); rest MEM||CP
basset-horn|F4 in old parts, see conventions|throat notes; low fourth soft|c.1765-1850; Strauss|alto clarinet lacks the lowest notes and is thicker||GRV1;HAY;OLIB|OLIB (pro: written C3-G6); GRV1 (written C = F2)||CP
alto-clarinet-e-flat||throat notes; above written C6|bands 19th c.-|alto sax reads the same transposition but dominates|pro top raised from Bb5 to Eb6 (WPAC)|LARUE;CODM|WPAC (Gb2 or G2 up to Eb6); tutti MEM|MEM; NEMP|CP
alto-clarinet-f|||early 19th c. Germany, Britain|||CODM|GRV1 vol.1 djvu 373 (written low E for the family = pro low); rest MEM||CP
bass-clarinet-b-flat|F4 in German/Russian/Italian parts|throat notes; above written C6 thin|1830s-|bassoon drier; sax much louder|Gehrkens: practical compass D2-Bb4|teoria;ALD;OLIB|OLIB (pro: written Eb3 or C3 to G6); JOHN (written E3-G6); GEHR (practical D2-Bb4 = tutti top)|MEM; NEMP|CP
bass-clarinet-a|F4 usual in German scores||Wagner, Liszt, Verdi, Mahler, Ravel|needs low E flat key for lowest note||POET;EB11|GRV1 vol.1 djvu 373 and JOHN (written low E = pro low); rest MEM||CP
bass-clarinet-c|||19th c. (Liszt, Meyerbeer era), rare|||EB11|GRV1 vol.1 djvu 373 and JOHN (written low E = pro low); rest MEM||CP
contra-alto-clarinet-e-flat||top octave weak|bands 20th c.||NETCA describes instruments to written low E (G1)|HAY|HAY (low E flat or low C); NETCA (lowest piano G to a little above middle C)||CP
contrabass-clarinet-b-flat||slow attack; top octave weak|1889- (pedal clarinet)|||WP|WP (written C3-F6)||CP
tarogato|||Hungary, Romania|Tristan shepherd pipe often on E. horn||MEM|MEM||CP
sopranino-saxophone-e-flat||top fourth insecure|rare; fanfare bands|||MINF and WP (family written alike in treble clef); interval from the key name|WP and MINF (written Bb3-F6 for every size); tutti MEM||CP
soprano-saxophone-b-flat||low B-B flat (written) hard to play softly; intonation high|bands||keyed top sounds Eb6; higher notes are altissimo|teoria;MINF;LARUE|WP and MINF (written Bb3-F6 for every size): low and keyed top; above that MEM|MEM; NEMP|CP
soprano-saxophone-c||low B-B flat (written) hard to play softly;|early 20th c.|||WPSX (C/F orchestral series); interval from the key name|WP and MINF (written Bb3-F6 for every size); tutti MEM||CP
mezzo-soprano-saxophone-f||low B-B flat (written) hard to play softly;|Strauss (as alto in F), 1920s|||WPMS (a tone above the E flat alto, so a fifth below the written note)|WP and MINF (written Bb3-F6 for every size); tutti MEM||CP
alto-saxophone-e-flat||low B-B flat (written) hard to play softly;|all bands|E flat alto horn reads the same transposition|keyed top sounds Ab5 (A5 with the F# key); higher notes are altissimo|teoria;MINF;LARUE|WP and MINF (written Bb3-F6 for every size), alto also F#6; above that MEM; NEMP|MEM; NEMP|CP
c-melody-saxophone||low B-B flat (written) hard to play softly;|1914-1930|||MINF (a tenor in C); interval from the key name|WP and MINF (written Bb3-F6 for every size); tutti MEM||CP
tenor-saxophone-b-flat||low B-B flat (written) hard to play softly;|all bands|euphonium T.C. reads the same part|keyed top sounds Eb5 (E5 with the F# key); higher notes are altissimo|teoria;WP;MINF;LARUE|WP and MINF (written Bb3-F6 for every size), tenor also F#6; above that MEM|MEM; NEMP|CP
baritone-saxophone-e-flat|F4 in historic Italian/French/German band parts|low B-B flat (written) hard to play softly;|all bands||keyed top sounds Ab4; low A key gives C2|teoria;MINF;LARUE|WP and MINF (written A3-F6); above that MEM|MEM; NEMP|CP
bass-saxophone-b-flat|F4 historic|low B-B flat (written) hard to play softly; slow speech|bands to c.1930|in bands usually given to tuba (jazzofilo/older WP text)||WP;WPBS;MINF|WP (written B flat 3 - F6); WPBS (sounding Ab1-Eb4; low A key on some, G1)||WP (tuba usually takes the band part); rest CP
contrabass-saxophone-e-flat|||rare|||WPBS (a fifth below the bass saxophone)|WP and MINF (written Bb3-F6 for every size); tutti MEM||CP
sarrusophone-sopranino-e-flat||reedy, uneven; extremes rough|1856-c.1930, FR/IT/ES/US bands|sax is rounder; double reed of same pitch closest||WP|WP (table of sizes)||CP
sarrusophone-soprano-b-flat||reedy, uneven; extremes rough|1856-c.1930, FR/IT/ES/US bands|sax is rounder; double reed of same pitch closest||WP|WP (table of sizes)||CP
sarrusophone-alto-e-flat||reedy, uneven; extremes rough|1856-c.1930, FR/IT/ES/US bands|sax is rounder; double reed of same pitch closest||WP|WP (table of sizes)||CP
sarrusophone-tenor-b-flat||reedy, uneven; extremes rough|1856-c.1930, FR/IT/ES/US bands|sax is rounder; double reed of same pitch closest||WP|WP (table of sizes)||CP
sarrusophone-baritone-e-flat||reedy, uneven; extremes rough|1856-c.1930, FR/IT/ES/US bands|sax is rounder; double reed of same pitch closest||WP|WP (table of sizes)||CP
sarrusophone-bass-b-flat||reedy, uneven; extremes rough|1856-c.1930, FR/IT/ES/US bands|sax is rounder; double reed of same pitch closest||WP|WP (table of sizes)||CP
sarrusophone-contrabass-e-flat||reedy, uneven; extremes rough|1856-c.1930, FR/IT/ES/US bands|sax is rounder; double reed of same pitch closest|Jacquot 1886 gives three octaves from low Db; WP to Bb3|WP|WP (table of sizes); JACQ (three octaves from Db1)||GEHR (used in place of the double bassoon, same compass); BND; rest CP
sarrusophone-contrabass-b-flat||reedy, uneven; extremes rough|1856-c.1930, FR/IT/ES/US bands|sax is rounder; double reed of same pitch closest||WP|WP (table of sizes)||CP
sarrusophone-contrabass-c||as contrabassoon|French orchestras c.1870-1930|contrabassoon reads the part unaltered||WP|WP||GEHR (used in place of the double bassoon, same compass); BND; rest CP
horn-f|F4 below about written G3 (new or old bass clef!)|below E3 loses focus; above C5 tiring|1830s-|alto horn is the usual band stop-gap but not the same colour (BND)|Widor: imprudent below D2; music-world: most characteristic written F3-F5|teoria|GEHR (B1-F5 = pro); WID-I prints D2-C5; MW-BR (most used: sounding Bb2-Bb4); NEMP for school|MEM; NEMP|WPTH (tenor horn sometimes replaces the horn in concert bands); BND; KOE p.122 (in bands the saxhorns take over the horns); rest CP
horn-e-flat||as F horn|bands to c.1950|F player reads down a tone (RGS)||RGS;MELC|MEM||CP
natural-horn|F4 for 2nd harmonic (old notation)|only harmonics open; crook decides pitch|to c.1860|crook table in conventions; default row here = F crook||POET;HMT|MEM||CP
trompe-de-chasse||harmonics only|FR hunting, trompes in D||pro top lowered from E5 to D5, the 16th harmonic (PETIT)|JACQ (built in D, written in C); LIMB (tube of 4.545 m gives D)|PETIT (harmonics 2 to 16 of the D fundamental: D2-D5); tutti MEM||CP
wagner-tuba-tenor-b-flat||top narrow|1875-|euphonium the usual stand-in (WP)||FACT;WTUB (Rheingold: tenors in B flat)|FACT (written C3-G5, M2 reading); lower notes possible MEM||WP (euphonium substitutes)
wagner-tuba-bass-f|||1875-|||FACT;WTUB (Rheingold: basses in F)|FACT (written F2-D5)||CP
mellophone-f|||marching bands|horn rounder||BND|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM|MEM; NEMP|CP
mellophone-e-flat|||c.1880-1950|||BND|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
posthorn||harmonics only; many keys|18th-19th c.|||MEM|MEM||CP
trumpet-b-flat||below written C4 weak; above A5 tiring|late 19th c.-|cornet reads the same part, softer|Gehrkens prints G3-B5 as practical; tutti top kept at A5|teoria|WPBR; NYB; GEHR (G3-B5 practical); NEMP for school limits|MEM; NEMP|GEHR (cornet often replaces the trumpet); rest CP
trumpet-c||as B flat|FR, US, AT orchestras|||VIE|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
trumpet-a|||late 19th-early 20th c. orchestra|||VIE|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
trumpet-d|||Baroque revival|||VIE|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
trumpet-e-flat|||19th c. bands; modern small trumpet|old long E flat trumpets sound the same interval||VIE|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
trumpet-f||lowest harmonics dull|19th c. long valve trumpet|shorter tube: lighter sound (VIE)||VIE;JMU|MEM||CP
natural-trumpet|F4 for 2nd harmonic (old notation)|harmonics 3-16 (to 20 in clarino writing); 7, 11, 13, 14 out of tune|to c.1850|default row here = D crook||VIE|MEM||CP
piccolo-trumpet-b-flat|||20th c.|||VIE;WPBR|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
piccolo-trumpet-a|||20th c.|||WPBR (written C = A4);NYB|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
bass-trumpet-b-flat|||1870s- (Strauss, AT bands)|trombonist usually plays it||BND (an octave below the B flat trumpet); WPBR|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
bass-trumpet-c|||Wagner, Stravinsky|||POET (as horn);BND (an octave below the C trumpet)|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
bass-trumpet-e-flat|||Wagner Ring, Stravinsky Rite|||POET (as horn);BND (written F sounds A flat)|FORS as quoted by harlotscurse (G2-G flat 5)||CP
alto-trumpet-f|||Rimsky-Korsakov and Russian school|||BND (alto trumpet in E flat or F, a sixth or fifth below the C trumpet)|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
cavalry-trumpet-e-flat||harmonics only|FR, BE, DE cavalry|||MEM|MEM||CP
bugle-b-flat||harmonics 2-8 only|military|||MEM|MEM||CP
keyed-bugle-b-flat||uneven|1810-1860 (also in C, E flat)|||MEM|MEM||CP
soprano-cornet-e-flat||top from written A5 risky|brass band; 19th c. bands|||JAY;WPBR|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
cornet-b-flat||below C4 weak|1830s-|trumpet brighter|Gehrkens: practical compass of the B flat cornet E3-Bb5|EB11 (French and German practice);JAY;WPBR|WPBR (pro low = written F#3, the formal limit of three valves); GEHR (E3-Bb5 practical); pro high MEM|MEM; NEMP|CP
cornet-a|||orchestra to c.1920|||SCHW;JOHN|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
cornet-c|||19th-early 20th c.|||CYC|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
cornetto|C1 in sources||16th-17th c.|||CP|MEM||CP
tenor-cornett|||16th-17th c.|||CP|MEM||CP
petit-bugle-e-flat||top risky|FR, BE, IT bands|cornet easier in tune, more trumpet-like (it. WP, Flicorno sopranino)||NETI;WP;BREN|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||ITWP (soprano cornet replaces it); VENZ (carries the soprano voice); rest CP
flugelhorn-b-flat||top thin|bands|BE/FR/NL: leading melodic voice of fanfare||NETI;BREN (a fourth below the petit bugle);WPBR|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM|MEM; NEMP|CP
alto-horn-e-flat||below written A3 dull|brass band, fanfare, 19th c. bands|F horn must re-read a tone lower; sax reads as is|tutti top raised from Bb4 to C5 (GRV2T)|NETI;WP;BREN;GRV2T;WPTH|WPBR (pro low = written F#3, the formal limit of three valves); GRV2T (written F#3-C6 full, A3-A5 used in bands, sounding C3-C5); top MEM|MEM; NEMP|CP
alto-horn-f|||DE, AT, orchestra-pitched saxhorns|||NETI|WPBR (pro low = written F#3, the formal limit of three valves); rest MEM||CP
tenorhorn-b-flat|||DE, AT, CZ, RU bands|tenor sax reads the same part||NETI;HARL;GRV2B;OBW|WPBR (pro low = written F#3, the formal limit of three valves); GRV2B (same pitch and compass as the baritone: E2-Bb4); KNAP (flugelhorn compass an octave lower)|MEM; NEMP|MVP and KNAP (Tenorhorn and Bariton practically the same tube); rest CP
baritone-horn||below written B3 weak on 3 valves|brass band (T.C. default)|euphonium broader|US band part B.C. at pitch: see conventions|NETI;DWER;GRV2B|WPBR (pro low = written F#3, the formal limit of three valves); GRV2B (usual compass sounds E2-Bb4); tutti MEM|MEM; NEMP|GRV2B (no consistent US distinction from the euphonium); rest CP
saxhorn-baritone-b-flat|F4 transposing (M2) in some sets||FR, BE|||NETI;WP;BREN;GRV2B|WPBR (pro low = written F#3, the formal limit of three valves); GRV2B (final form of the saxhorn baryton: E2-Bb4); tutti MEM||CP
euphonium|C4 in solos; G2 when T.C.|E flat 2-B1 only with 4th valve/compensation|bands (B.C. default)|||DWER|BND (compensating / non-compensating); MEM|MEM; NEMP|CP
bariton-german|||DE, AT, CZ bands||B flat T.C. parts also common (HARL)|HARL;KNAP;MVP;OBW|MEM||MVP and KNAP (practically the same tube); rest CP
saxhorn-bass-b-flat|G2 transposing (M9)|below E2 needs 4th valve|FR, BE; also in C|||TUBE;SJ;EB11B;BREN|MEM||CP
french-tuba-c|C4 for high notes (MPO)|above F4 not to be attacked (MPO)|FR orchestras to c.1970|high solos (Bydlo) go to euphonium||MPO;DINH|MPO (E2-F4 normal, small notes to C2 and B flat 4); below C2 MEM||CP
saxhorn-contrabass-e-flat|G2 transposing (M13)||FR, BE, NL, IT bands|||TUBE;EB11B;BREN (a fifth below the B flat bass)|MEM||CP
saxhorn-contrabass-b-flat|G2 transposing (M16)|speech slow low|FR, BE, NL, IT bands|E flat tuba must take lowest fourth up an octave||TUBE;EB11B;BREN|MEM||CP
tuba||pedals below F1 depend on instrument; above B flat 3 soloistic|1835-; parts at pitch whatever the tube||Gehrkens prints G1-G4 for the orchestral bass tuba, F4 is the table top|MSE7332;STU|GEHR (G1-G4 practical); BND; MEM; NEMP|MEM; NEMP|CP
bass-tuba-f|||DE, AT, IT|||EB11B (bombardons written as sounded except in France and Belgium)|MEM||CP
bass-tuba-e-flat|||UK, bands (B.C. concert)|||EB11B (bombardons written as sounded except in France and Belgium)|MEM|MEM; NEMP|CP
contrabass-tuba-c|||orchestra (US, RU)|||EB11B (bombardons written as sounded except in France and Belgium)|MEM||CP
contrabass-tuba-b-flat|||bands, orchestra DE/RU (B.C. concert)|||EB11B (bombardons written as sounded except in France and Belgium)|MEM|MEM; NEMP|CP
e-flat-bass||lowest fourth slow|British brass band|||JAY;SJ|MEM|MEM; NEMP|CP
b-flat-bass||slow, tiring|British brass band|||JAY;SJ|MEM|MEM; NEMP|CP
sousaphone|||marching bands|||BARL (helicon-shaped bass tuba in B flat, E flat or F); EB11B (bombardons written as sounded except in France and Belgium)|MEM||CP
helicon|||military bands; E flat, F, B flat sizes|||EB11B (bombardons written as sounded except in France and Belgium); EB11B: helicon = circular bombardon|MEM||CP
bombardon|||19th c. bands, F or E flat|||EB11B (bombardons written as sounded except in France and Belgium)|MEM||CP
ophicleide-c||low F sharp (written) poor without extra key (BERL p.235); fast low passages bad|1817-c.1880|euphonium closest in compass|Brenet: three octaves from C2|BERL p.235;LAV (real sounds, bass clef)|BREN (C2 to C5, staff example C2-A4); BERL djvu 235 (notes below C2 poor); B1 MEM||LAV and BREN (tuba replaced it); LAR (sarrusophone, double bassoon, baritone saxophone, contrabass saxhorn superseded it); rest CP
ophicleide-b-flat||as C ophicleide|bands 1820-1870||may be written a tone high: see conventions|BERL p.235 and LITT (made in C and B flat)|MEM||CP
quinticlave-e-flat||uneven|FR bands 1820-1850 (also F)|||BREN and LITT (alto in E flat); interval from the key name|MEM||CP
serpent||very uneven; pitch unstable|c.1600-1850||may be written a tone high|MEM|WPSE (notes below C2 only with the lips); top MEM||CP
bass-horn||uneven|1790s-1840 (Mendelssohn)|||MEM|MEM||CP
cimbasso|||IT opera (serpent/ophicleide type, later valve contrabass trombone)|trombone colour, not tuba||MHOW (grouped with the trombones: concert pitch)|MEM||CP
alto-trombone|C4, F4|thin low|18th-19th c.; revival|BERL p.110: read at pitch although tube is E flat||BERL p.110|MEM||CP
trombone-tenor|C4 above about F4; C3 in older scores; G2 transposing in brass band|B1-E flat 2 gap without F attachment|all|||BERL p.110;MHOW|GEHR and MEXP (E2-Bb4 = tutti; F5 for experienced players = pro high); pedals MEM; NEMP|MEM; NEMP|CP
bass-trombone||below E1 pedals|19th c.-||MEXP gives F1 as the low limit with two triggers; table counts pedals|MHOW;JAY|MEXP (to F1 with two triggers; pedals lower); rest MEM||CP
bass-trombone-g||long slide positions slow|British bands/orchestras to c.1955|||JAY|MEM||CP
contrabass-trombone||slow, tiring|Wagner, Strauss, Italian (valved)|||MHOW (trombones: concert pitch)|MEM||CP
valve-trombone-b-flat||intonation|IT, BE, CZ, military bands|||BERL p.110 (trombones are written at pitch whatever the tube); MHOW|MEM||CP
valve-bass-trombone-f|||IT, DE, BE bands 19th c.|||BERL p.110 (trombones are written at pitch whatever the tube); MHOW|MEM||CP
valve-bass-trombone-e-flat|||BE, NL, DE bands|||BERL p.110 (trombones are written at pitch whatever the tube); MHOW|MEM||CP
sackbut-tenor|F4, C3|soft|15th-17th c.|||CP|MEM||CP
violin|8va above E7||all|in band transcriptions E flat + 1st clarinets = 1st violins, 2nd clarinets + alto saxes = 2nd violins (KOE p.121)||CP|GEHR (G3-C7 practical); FIVE (G3-A7 = pro); tutti and school MEM|MEM; NEMP|KOE p.121-122; MEM
viola|G2 above about E5||all|band: alto clarinets, 3rd clarinets, tenor saxes (KOE p.122)||CP|FIVE (C3-E6 = pro); GEHR (tuned from C3); tutti MEM|MEM; NEMP|KOE p.121-122; MEM
cello|C4 above about F4, G2 above about C5; old false treble||all|band: low saxes, bass clarinets, baritone/bass sarrusophones (KOE p.122); FR dance orchestra: tuba (MPO)|Gehrkens: about three and a half octaves, C2-E5/F5|CP|GEHR (C2 to E5/F5 practical); pro and tutti high MEM|MEM; NEMP|KOE p.121-122; MEM
double-bass|C4, G2 in solos|C1-E flat 1 need extension or 5th string|all|tuba for sustained, contrabass clarinet for soft; keep a string bass if present (KOE p.124)|Gehrkens: E1-A3|MELC;LARUE;GEHR;STQ|GEHR (E1-A3 practical); C1 and pro high MEM|MEM; NEMP|KOE p.121-122; MEM
viola-d-amore|||Baroque; Meyerbeer, Puccini, Hindemith|scordatura notation: see conventions||WP|MEM||KOE p.121-122; MEM
viola-da-gamba|||16th-18th c.|||CP|MEM||KOE p.121-122; MEM
harp|||all|arpeggios split over clarinets; piano nearest||CP|STU (C flat - g sharp 4); GEHR (from Cb1, upper limit misprinted)||KOE p.121-122; MEM
guitar|||all|||STU|MEM||CP
bass-guitar|||1950s-|||CP|MEM||CP
mandolin|||all|||CP|MEM||CP
octave-mandola|||plucked orchestras|||MEM|MEM||CP
tenor-mandola|||UK/US plucked orchestras|||MEM|MEM||CP
lute||tablature sources|Renaissance, Baroque|||CP|MEM||CP
piano|||all|||CP|CP
celesta||soft|1886-|glockenspiel harder and an octave trap||STU;HANS;AOC|STU (written c-c3)||CP
keyed-glockenspiel|||Handel 1739, Mozart 1791, FR c.1900|||BERL p.279|WP (historic C5-E8)||CP
harpsichord|||to c.1800; revival|||CP|MEM||CP
organ||registration changes octave|all|||CP|MEM||CP
harmonium|||1840s-; salon orchestra|salon sets cue missing winds in harmonium||CP|MEM||CP
accordion|||all|||CP|MEM||CP
timpani||extremes of each drum|all|||VIE|GEHR (pair: F2-F3 = tutti); WID-I (three drums F2-F3); pro MEM||CP
glockenspiel|||all|piccolo plus cymbal dome (WIEL after Blatter)||STU;HANS|HANS (written G3 up two octaves and a fourth = tutti); STU (written g-c3)||CP
xylophone|||all|high clarinets or cup-muted trumpets plus wood block (WIEL)||STU;HANS;AOC|HANS (written C4 up three octaves = tutti, F3 on larger ones = pro low); STU (written f-c4)||CP
marimba|||20th c.-|||STU;WPMA|WPMA (C2-C7 five-octave, A2-C7 commonest = tutti); STU||CP
vibraphone|||1920s-|||STU;AOC|AOC (F3-F6); STU (f-f3)||CP
tubular-bells||perceived octave ambiguous|late 19th c.-|||CP|MEM||CP
crotales|||Berlioz-|||CP|MEM||CP
bell-lyre|||marching bands|||CP|MEM||CP
cimbalom|||Hungary|||CP|MEM||CP
snare-drum|||all|not transposed; channel 10 in GM||CP|MEM
tenor-drum|||all|not transposed; channel 10 in GM||CP|MEM
bass-drum|||all|not transposed; channel 10 in GM||CP|MEM
cymbals|||all|not transposed; channel 10 in GM||CP|MEM
triangle|||all|not transposed; channel 10 in GM||CP|MEM
tam-tam|||all|not transposed; channel 10 in GM||CP|MEM
tambourine|||all|not transposed; channel 10 in GM||CP|MEM
castanets|||all|not transposed; channel 10 in GM||CP|MEM
soprano-voice|C1/C3/C4 in old sources||all|Italian band practice gives soprano arias to flicorno sopranino, tenor/baritone to flicorni (BARL, VENZ)|Gehrkens: about B3-C6|CP|GEHR (B3-C6); tutti MEM||CP
mezzo-soprano-voice|C1/C3/C4 in old sources||all|Italian band practice gives soprano arias to flicorno sopranino, tenor/baritone to flicorni (BARL, VENZ)|Gehrkens: about B3-G5; pro extreme kept wider|CP|GEHR (B3-G5); MEM||CP
alto-voice|C1/C3/C4 in old sources||all|Italian band practice gives soprano arias to flicorno sopranino, tenor/baritone to flicorni (BARL, VENZ)|Gehrkens: about G3-E5; pro extreme kept wider|CP|GEHR (G3-E5); MEM||CP
tenor-voice|C1/C3/C4 in old sources||all|Italian band practice gives soprano arias to flicorno sopranino, tenor/baritone to flicorni (BARL, VENZ)|Gehrkens: about D3-C5|FMD|GEHR (D3-C5); MEM||CP
baritone-voice|C1/C3/C4 in old sources||all|Italian band practice gives soprano arias to flicorno sopranino, tenor/baritone to flicorni (BARL, VENZ)||CP|MEM||CP
bass-voice|C1/C3/C4 in old sources||all|Italian band practice gives soprano arias to flicorno sopranino, tenor/baritone to flicorni (BARL, VENZ)||CP|GEHR (E2-E4 = pro); tutti MEM||CP
`
