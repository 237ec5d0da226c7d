/**
 * How keys are said: the word, the key that it names alone, and the languages that say so. `H` is the German and
 * Dutch B natural, `Bes` the Dutch B flat. Bare letters are not here: in German `B` is B flat, elsewhere it may be either.
 */
export const keyWordTable = `
word|key|languages
ut|C|fr
do|C|it es fr
re|D|fr it es
mi|E|fr it es
fa|F|fr it es
sol|G|fr it es
la|A|fr it es
si|B|fr it es
h|B|de nl
bes|Bb|nl
es|Eb|de nl
as|Ab|de nl
des|Db|de nl
ges|Gb|de nl
ces|Cb|de nl
fis|F#|de nl
cis|C#|de nl
gis|G#|de nl
dis|D#|de nl
ais|A#|de nl
`

/** The words and signs that raise or lower a key, after it. `b` also stands as a letter: `si b`. */
export const keySignTable = `
word|sign|languages
♭|b|
b|b|
flat|b|en
bemol|b|fr es
bem|b|fr
bemolle|b|it
mol|b|nl
♯|#|
#|#|
sharp|#|en
diese|#|fr
diesis|#|it
sostenido|#|es
kruis|#|nl
♮|n|
natural|n|en
nat|n|en
naturel|n|fr
naturale|n|it
becarre|n|fr
bequadro|n|it
`

/** Which octave of a crook is meant: `hoch B`, `Si♭ basso`. */
export const keyOctaveTable = `
octave|words
alto|alto alta hoch hohe hoher hohes aigu aigue acuto agudo high hoog
basso|basso bassa tief tiefe tiefer tiefes grave bas bajo low laag
`
