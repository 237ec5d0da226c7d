import {describe, expect, it} from 'vitest'
import {mutaReader, readMuta} from '../../lib/instruments/label-muta.ts'
import type {Muta} from '../../lib/instruments/label-muta.ts'

const read = mutaReader()

/** Common practice of printed parts; techniques after the trade's rules for translating them. */
const table = `
muta in Es | crook Eb
muta in Mi♭ | crook Eb
muta in H | crook B
mutano in Re | crook D
Corni mutano in Re | crook D
in F | crook F
in E | crook E
in Es | crook Eb
en ré | crook D
changez en ré | crook D
changez en Mi bémol | crook Eb
ton de ré | crook D
en Si♭ grave | crook Bb basso
in hoch B | crook Bb alto
wechseln in D | crook D
muda en sol | crook G
wisselen naar d | crook D
change to E flat | crook Eb
2. muta in C | crook C 2
muta Sol in La | crook A from G
muta Do in Re | crook D from C
G nach A | crook A from G
C to D | crook D from C
Sol in La♭ | crook Ab from G
take piccolo | change piccolo
to Picc. | change piccolo
To Alto Sax | change alto-saxophone-e-flat
to A clarinet | change clarinet-a
change to Eb Clarinet | change clarinet-e-flat
prendre la petite flûte | change piccolo
prenez la petite Flûte | change piccolo
3e prend le cor anglais | change english-horn 3
changez en clarinette en la | change clarinet-a
nimmt kl. Fl. | change piccolo
2. nimmt Piccolo | change piccolo 2
nimmt A-Klarinette | change clarinet-a
wechselt zu Englischhorn | change english-horn
muta in Flauto piccolo | change piccolo
muta in Clarinetto in La | change clarinet-a
muta in Corno inglese | change english-horn
toma el flautín | change piccolo
cambia a flauta | change flute
neemt piccolo | change piccolo
neemt althobo | change english-horn
Piccolo | maybe piccolo
Flute | maybe flute
à 2 | players x2
a2 | players x2
a 2. | players x2
a 3 | players x3
zu 2 | players x2
1. | players 1
I. II. | players 1,2
1. Solo | solo 1
I. Solo | solo 1
2do solo | solo 2
solo | solo
Soli | soli
tutti | tutti
div. | divisi
divisi | divisi
divisés | divisi
geteilt | divisi
unis. | unison
uniti | unison
zusammen | unison
pizz. | pizzicato
sempre pizz. | pizzicato
pizz. div. | pizzicato,divisi
arco | arco
gestrichen | arco
con sord. | mute
con sordini | mute
avec sourdine | mute
mit Dämpfer | mute
con sordina | mute
met demper | mute
senza sord. | mute-off
ôtez les sourdines | mute-off
ohne Dämpfer | mute-off
a 2 con sord. | mute x2
bouché | stopped
gestopft | stopped
stopped | stopped
chiuso | stopped
+ | stopped
ouvert | open
offen | open
cuivré | brassy
Schalltrichter auf | bells-up
sul pont. | sul-ponticello
am Steg | sul-ponticello
col legno | col-legno
flz. | flutter-tongue
ord. | ordinary
ad lib. | optional
à défaut | optional
nicht obligat | optional
facultatief | optional
`

const rows = table
  .trim()
  .split('\n')
  .map((line) => line.split(' | ') as [string, string])

describe('words in the course of a part', () => {
  it.each(rows)('%s: %s', (words, expected) => expect(describeMuta(read(words))).toBe(expected))

  it.each([
    'Allegro',
    'Andante con moto',
    'dolce',
    'in tempo',
    'in 4',
    'en dehors',
    'in modo di marcia',
    'a tempo',
    'a',
    'A',
    'B',
    '3',
    'To Coda',
    'Fine',
    'Trio',
    'Menuetto D.C.',
    'Ziemlich schnell',
    'en animant',
    'in gehender Bewegung',
    'la mélodie bien marquée',
    'poco a poco',
    'L R L',
    '',
    '♩ = 72',
  ])('"%s" says none of these', (words) => expect(read(words)).toBeUndefined())

  it('is less sure of a bare name, which may belong to a cue', () => {
    expect(readMuta('Oboe')).toMatchObject({kind: 'instrument-change', confidence: 0.35})
  })
})

function describeMuta(muta: Muta | undefined): string {
  if (!muta) return 'nothing'
  const numbers = muta.numbers.length > 0 ? ` ${muta.numbers.join()}` : ''
  switch (muta.kind) {
    case 'crook': {
      const from = muta.from === undefined ? '' : ` from ${muta.from}`
      return `crook ${muta.key}${muta.keyOctave ? ` ${muta.keyOctave}` : ''}${from}${numbers}`
    }
    case 'instrument-change': {
      const kind = muta.confidence > 0.5 ? 'change' : 'maybe'
      return `${kind} ${muta.to.instruments[0]?.id}${numbers}`
    }
    case 'technique':
      return `${muta.techniques.join()}${numbers}${muta.players === undefined ? '' : ` x${muta.players}`}`
    case 'players':
      return `players${numbers}${muta.players === undefined ? '' : ` x${muta.players}`}`
  }
}
