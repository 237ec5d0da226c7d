/**
 * The sources behind every other table. Status tells how each was consulted: read (excerpts, pages), second hand,
 * from memory.
 */
export const sourceTable = `
code|status|text
MEM|memory|From memory of the compiler; no document consulted. Verify before relying on it
CP|common practice|Common practice with no single source
MXL4|read|W3C Music Notation Community Group, MusicXML 4.0 (2021): schema musicxml.xsd (transpose, part-transpose, concert-score, for-part, double, clef-octave-change, octave-shift) and sounds.xml
GM1|memory|General MIDI Level 1 sound set (program numbers 1-128)
BERL|read (pages)|H. Berlioz, Grand traité d'instrumentation et d'orchestration modernes (1844/55), French Wikisource transcription, scan (djvu) numbers, not printed pages: 105, 110, 141 (basson quinte, contrebasson), 142, 146, 155 (clarinets), 188-189, 205-206, 223, 235, 279; and Le chef d'orchestre, 2nd ed., djvu p.44
GRV1|read (articles)|A Dictionary of Music and Musicians, ed. G. Grove, 1st ed. (1879-89), English Wikisource: Basset-Horn; Bass Clarinet (vol. 1, scan 162); Clarinet (vol. 1, scans 373-374, with the transposition table and the Italian tenor clef); Horn; Notation (vol. 2 p.478)
GRV2|read (opening)|The New Grove, article "Transposing instruments" (copy at monkhaus.com), opening section
EB11|read (excerpts)|Encyclopaedia Britannica, 11th ed. (1910-11): Bass Clarinet (vol. 3), Cornet (vol. 7), by K. Schlesinger
CODM|read (articles)|M. Kennedy (ed.), Concise Oxford Dictionary of Music, via encyclopedia.com: saxhorn; transposing instruments; double bassoon; basset horn
JOHN|read (pages)|A. E. Johnstone, Instruments of the Modern Symphony Orchestra (New York: Carl Fischer, 1917), English Wikisource: Bass clarinet, Double bassoon, Cornet
KOE|read (pages)|Ch. Koechlin, Les instruments à vent (Paris: PUF, 1948), ch. IV, pp.108-124 (French Wikisource; "p.121-124" in our files = scan numbers)
WID-I|read (pages)|Ch.-M. Widor, Initiation musicale (French Wikisource djvu 35, 36, 39, 41)
WID-T|read (preface)|Ch.-M. Widor, The Technique of the Modern Orchestra, tr. E. Suddard (London: J. Williams, 1906), preface
SDOPE|read|Straight Dope message board, Trombone parts in treble clef
MPO|read (page)|Méthode pratique d'orchestration symphonique, ch. "Ophicléide et Sax-Tuba" (French Wikisource)
HEND|read (pages)|W. J. Henderson, The Orchestra and Orchestral Music (1899), online text, sections 17 and 19
CYC|read|American Cyclopaedia (1873-76), "Cornet-à-pistons"
RIMS|read (opening of table pages)|N. Rimsky-Korsakov, Principles of Orchestration (1913; Engl. 1922), Project Gutenberg 33900, ch. I B and Table B
FORS|second hand|C. Forsyth, Orchestration (London 1914), as quoted by Wikipedia "Saxhorn" and by the essay "Wagner's Bass Trumpet" (harlotscurse)
WP|read (articles via mirrors)|Wikipedia (English): Saxhorn, Sarrusophone, Contrabass sarrusophone, Bass saxophone, Contrabass clarinet, Wagner tuba, Cor anglais, Keyboard glockenspiel, Cue note; (Italian) Flicorno sopranino
WPBR|read|Wikipedia text "Brass instrument pitch": table of 2nd-harmonic pitches; three-valve brass formally written F#3 to E6
NYB|read|newyorkbrass.com, Brass basics: trumpet written F#3 upward, standard repertoire to C6
WP9|read|Wikipedia, "Major ninth"
WPBB|read|Wikipedia, "Brass band (British style)", instrumentation
WPDE|read|German Wikipedia, "Bassetthorn"
WPREC|read|Wikipedia, "Recorder", section on notation
NETI|read|Saxhorn comparison table (Netipedia copy of an early Wikipedia text): key, transposition and names in FR, UK, US, DE, IT
FRU|read|French Wikipedia user draft on saxotrombas, transposition table
VIE|read (pages)|Vienna orchestral-instrument encyclopaedia (online): Trumpet in C - Notation; Timpani - Notation; English horn - Notation; Glockenspiel - Playing techniques
ALD|read|J. Alder, A Guide to Understanding Bass Clarinet Clef Notation (2020; also in Hudson/Zare/Alder, Space Bass, 2022, app. C)
MSE86545|read|Music StackExchange question 86545 (bass clarinet notation)
MSE7332|read|Music StackExchange question 7332 (tuba at concert pitch)
MSE118271|read|Music StackExchange question 118271 (tenor clef)
HAY|read|R. E. Haynes, instrument pages: contralto clarinet in E flat; basset horn in F
MUSB|read|musiker-board.de thread 727903, table of clarinet transpositions
HMT|read|Horn Matters (J. Ericson, B. Hembd): Transposition Tricks: Old vs. New Notation (2008); French Horn Transposition Chart (2008); Why do we have Old Notation Bass Clef? (2009); Fundamentals 18A (2025)
HMEM|read|hornlist mailing-list post on bass clef (also mentions cello treble clef an octave high)
DOR|read|C. Dorman, article on old and new notation (colindorman.com)
RGS|read|R. G. Smith, horn transposition chart (rgsmithmusic.com)
BRYAN|read (opening)|P. R. Bryan, Mozart's Use of Horns in B flat and the Question of Alto-Basso (Historic Brass Society Journal)
MELC|read (chapter opening)|R. A. Melcher, W. F. Warch, Music for Score Reading, ch. 2
JMU|read|James Madison University Brass Pedagogy site: Literature examples (2016); transposition
LARUE|read|Georgetown College conducting hand-out 6, Transpositions (list)
KMOS|read|Kreismusikschule Osnabrück: Tenorhorn, Bariton und Tuba
POET|read|Table of transposing instruments (geocities.ws/poeticcomposer); excerpt seen ends in the horn/trumpet rows
teoria|read|J. Rodríguez Alvira, Transposing instruments (teoria.com)
STU|read|Study list "Instrument Appendix" (studystack 697185): written ranges and transpositions
CPX|read|Transposing instruments hand-out (scribd 274451783)
BYRD|read (opening)|D. Byrd, Written vs. Sounding Pitch (Indiana University, 2004, rev. 2009)
BND|read (pages)|B. Newton, Bandestration: sarrusophone bibliography; saxhorns; bass oboe; heckelphone; alto horn; mellophone; tubas; contrabass clarinet (2014); saxophone sections (2014); C and B flat, sopranino, piccolo, alto and bass trumpets (2015)
ERIC|read (contents pages)|J. Q. Ericson, Playing the Wagner Tuba (Horn Notes Edition, 2007)
FACT|read|fact-index.com, "Wagner tuba"
SCHW|read|R. I. Schwartz, The Cornet Compendium (2000-01), ch. 1 part 4
JAY|read|Jayess Newbiggin Brass Band, notes on notation
SCHB|read|schoolbrass.com, The Brass Band
SJ|read|C. Schmidt-Jones, Transposing Instruments (Connexions/OpenStax)
TUBE|read|TubeNet/chisham forum threads: July 2001 (Flemish-French transposed bass clef) and 2011 thread 47461 (Belgium, France, Finland)
HEBM|read (opening)|Heritage Encyclopedia of Band Music, Using Foreign Band Music with American Bands
HARL|read|Musikschule Harlekin, Landshut: Tenorhorn/Bariton
KNAP|read|Knappenmusik: Tenorhorn - Bariton
MVP|read|mv-p.de, Unsere Instrumente, part 6
VENZ|read|Banda di Venzone: Il flicorno
BARL|read|Corpo Musicale S. Cecilia Barlassina: Flicorno
DTUB|read|davidtuba.com: Las dos formas de tocar un bombardino
HARR|read (abstract)|T. Harrison, Le "tuba" est-il un instrument transpositeur? (CNSM Paris, 2016/17)
DWER|read|D. Werden, Is Euphonium a B-Flat or C Instrument?; Key of the Euphonium
DINH|read|D. Dinh, Brass transposition
ARS|read|J. Chaudoir, Which Octave Should I Play? (American Recorder Society newsletter, Sept. 2018)
DAISY|read|Daisyfield, About false treble clef
LEON|read|Y. Leonovich, Cello's Six Clefs
VDAW|read|Wikipedia "Viola d'amore" (scordatura notation); quallpublications.co.uk/scordatura; violadamore.com
KARD|read|RHGMR correspondence, Aug 2002, on bass-clef cor anglais parts (Wiley/Kardamis)
FMD|read|Free Music Dictionary, Octave clef
APRL|read|aprlmusic.com, Tonalities and transposing instruments
COND|read|conductit.eu, Using Transpositions
WIEL|read|W. Wieland, Scoring for Student Ensembles (notes after A. Blatter, Instrumentation and Orchestration, 2nd ed. 1997)
NEMP|read|Northeastern Music Publications, grading chart
MOLA|read (openings)|MOLA (Major Orchestra Librarians' Association), Guidelines for Music Preparation; Yale School of Music copy
GOULD|second hand / memory|E. Gould, Behind Bars (Faber, 2011), p.571 as quoted in a notat.io discussion of cue practice; all other statements from memory
UEHOUSE|second hand|Universal Edition, Boosey and Schirmer house-style remarks on cues as summarised at notat.io
GL|read (excerpts)|T. Gerou, L. Lusk, Essential Dictionary of Music Notation (Alfred, 1996): slurs; p.119 cue notes (via Wikipedia)
MCG|second hand|M. McGrain, Music Notation (1990), p.183, via Wikipedia "Cue note"
HANS|read|Hansen Media, orchestration course: Conventions of Notation; Transcription
LMT|read|LearnMusicTheory.net, section 1.10 Summary of notation guidelines
LAKE|read (opening)|Lake State Publications, Traditional music notation
M4V|read|music4vip glossary, printing style and notation norms
CBF|read|CelloFun, Cello reading problems: pitch
MIMO|read (data file)|Musical Instrument Museums Online thesaurus of instrument keywords (MIMO consortium; SKOS file keywords_skos.rdf in the public repository philharmoniedeparis/mimo): preferred and alternative labels in en, fr, de, it, es, nl and others; plural headings of the classes
IAML|read (data file)|IAML medium-of-performance codes (UNIMARC), multilingual labels, file mop-iaml.ttl in the public repository DOREMUS-ANR/knowledge-base (CC BY 4.0); no Dutch
HUNS|read (dictionary)|Free spelling dictionaries (hunspell en_GB, fr_FR, de_DE, it_IT, es_ES, nl_NL): every word of the plural form is accepted. Proves the word form, not the sense; German and Dutch accept regular compounds
GEHR|read|K. W. Gehrkens, Music Notation and Terminology (1914), Project Gutenberg no. 19499, appendix B "Musical Instruments" (practical orchestral or band ranges; c' = middle C) and the voice entries of the terms list
OLIB|read (opening)|orchestralibrary.com, Ranges of Orchestral Instruments (after Del Mar, Read, Kennan, Lang): flute to bass clarinet rows visible; the instrument names of some rows are images, identified by their transposition
GRV2B|read|The New Grove, articles "Baritone (ii)" (Baines/Herbert) and "Bombardon" (copies at monkhaus.com)
GRV2T|read|The New Grove, article "Tenor horn" (Baines/Herbert; copy at monkhaus.com)
EB11B|read|Encyclopaedia Britannica, 11th ed., vol. 4, "Bombardon" (K. Schlesinger; Wikisource opening and jrank.org passage on notation)
BREN|read (entries)|M. Brenet, Dictionnaire pratique et historique de la musique (1926), French Wikisource: Ophicléide; Saxhorn (scan 407)
LAV|read (passage)|A. Lavignac, La musique et les musiciens, ch. II, Ophicléide (metronimo.com)
LITT|read (entry)|É. Littré, Dictionnaire de la langue française, "ophicléide" (edicu.com)
LAR|read (opening)|Larousse, Dictionnaire de la musique, "ophicléide"
JACQ|second hand|A. Jacquot, Dictionnaire des instruments de musique (1886), "Sarrusophone" and "Trompe de chasse", quoted at medecine-des-arts.com with Rougnon 1935 and Escudier 1872
MW-WW|read (opening)|music-world.org, Woodwinds: flute family, names in fr, de, it, es, ranges
MW-BR|read (opening)|music-world.org, Brass winds: horn
MINF|read|musicalinstruments-info blog, Saxophone (2021): compass written B flat 3 - F6, extensions by size
FIVE|read (opening)|fiveable.me study guide, Instrumental ranges and transposing instruments (string ranges only used)
WPBS|read|Wikipedia, "Bass saxophone" (three mirrors; range given in staff notation)
WPSX|read (opening)|Wikipedia, "Saxophone" (mirror worldheritage.org): the B flat/E flat and C/F series
WPMS|read|German Wikipedia, "Mezzosopransaxophon" (two translated mirrors)
WPAC|read|Wikipedia, "Alto clarinet" (reworded mirror themedipia.com)
WPSE|read (opening)|Wikipedia, "Serpent (instrument)" (mirrors)
WPTH|read (opening)|Wikipedia, "Tenor horn" (mirror piglix.com): names in six languages, written range transposed a major sixth
WPFR|read (opening)|French Wikipedia, "Basson" (mirror franco.wiki): compass
ITWP|read|Italian Wikipedia, "Flicorno sopranino" (mirror)
ITWPT|read (opening)|Italian Wikipedia, "Flicorno tenore" (mirror)
NETCA|read|Netipedia copy of Wikipedia, "Contra-alto clarinet"
MWEB|read|Merriam-Webster (Britannica Concise), "clarinet"
WTUB|read (passage)|wagner-tuba.com, Die Geschichte der Wagnertuba: keys written in Rheingold and Walküre
OBW|read|Zentralmusikschule Oberwart, Tenorhorn/Bariton/Eufonium
ZEEL|read (page)|Kroniek (Zeeland periodical), 1992, p.119: Dutch names of the saxhorn and saxophone families
NIHON|read (table)|nihongakufu.com, table of instrument names in en, it, fr, de
BLAKE|read|howardblake.com, list of abbreviations used in a composer's catalogue
WISE|read|musicsalesclassical.com, Instruments: abbreviations of a publisher's catalogue
CKNA|read|code-knacker.de, Orchesteraufstellung und Kurzschrift: German abbreviations
GDRM|read (to "Crotales")|M.-A. Roberge, Guide des difficultés de rédaction en musique (Université Laval): French abbreviations only
COLZ|read (opening)|Cosimo Colazzo, catalogue legend: Italian abbreviations
SRP|read|Society of Recorder Players (srp.org.uk), Recorder family: lowest note of every size, non-transposing
WPRS|read|Wikipedia, "Soprano recorder" (mirror): C5-D7
PROC|read (opening)|professionalcomposers.com, recorder types and ranges
WPMA|read|Wikipedia, "Marimba", section on range (mirror liquisearch.com)
AOC|read (excerpts)|Arranging and Orchestration Concepts, pp.108-109 (issuhub.com): celesta, vibraphone, xylophone, marimba
STQ|read|stringtechnique.com, Music Notation for the Double Bass
MEXP|read (opening)|musicalexpert.org, What is the range of a trombone?
ITWPE|read (passage)|Italian Wikipedia, "Eufonio" (version comparisons): the three ways of writing the part
AMI|read|Accademia musicale isolana, Eufonio
BOFF|read (opening)|Corpo Musicale Boffalorese, Eufonio
RALV|read (opening)|J. Rodríguez Alvira, Lectura y escritura musical para instrumentos transpositores: Spanish names
MHOW|read (opening)|musicalhow.com, Types of trombones: non-transposing, concert pitch, cimbasso included
LIMB|read|trompes-limbourg.be, L'instrument
PETIT|read|williampetit.com, on the trompe makers Chrétien: harmonics 2 to 16
`
