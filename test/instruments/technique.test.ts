import {expect, it} from 'vitest'
import {instrumentById} from '../../lib/instruments/instrument.ts'
import type {Family} from '../../lib/instruments/instrument.ts'
import {
  canFollow,
  familyOfTechniques,
  instrumentChangeReader,
  techniqueReader,
} from '../../lib/instruments/technique.ts'

const read = techniqueReader()
const readChange = instrumentChangeReader()

it.each([
  ['pizz.', 'pizzicato:pizz.'],
  ['Pizz', 'pizzicato:Pizz'],
  ['sempre pizzicato e dim.', 'pizzicato:pizzicato'],
  ['arco, cresc.', 'arco:arco'],
  ['avec l’archet', 'arco:avec l’archet'],
  ['gestrichen', 'arco:gestrichen'],
  ['mit Dämpfer', 'con-sordino:mit Dämpfer'],
  ['avec sourdine', 'con-sordino:avec sourdine'],
  ['con sordina', 'con-sordino:con sordina'],
  ['met demper', 'con-sordino:met demper'],
  ['with mute', 'con-sordino:with mute'],
  ['senza sord.', 'senza-sordino:senza sord.'],
  ['ôtez les sourdines', 'senza-sordino:ôtez les sourdines'],
  ['Dämpfer ab', 'senza-sordino:Dämpfer ab'],
  ['am Steg', 'sul-ponticello:am Steg'],
  ['sur la touche', 'sul-tasto:sur la touche'],
  ['col legno battuto', 'col-legno:col legno battuto'],
  ['sul G', 'string-choice:sul G'],
  ['auf der G-Saite', 'string-choice:auf der G-Saite'],
  ['4ª corda', 'string-choice:4ª corda'],
  ['sur la 4e corde', 'string-choice:sur la 4e corde'],
  ['div. a 2', 'divisi:div.'],
  ['geteilt', 'divisi:geteilt'],
  ['à l’unisson', 'unison:à l’unisson'],
  ['bouché', 'stopped-horn:bouché'],
  ['gestopft', 'stopped-horn:gestopft'],
  ['cuivré', 'cuivre:cuivré'],
  ['Flatterzunge', 'flutter-tongue:Flatterzunge'],
  ['con ped.', 'pedalling:con ped.'],
  ['près de la table', 'near-the-soundboard:près de la table'],
  ['unis. arco', 'unison:unis. arco:arco'],
  // Only when nothing else is said.
  ['open', 'open-horn:open'],
  ['open repeat', ''],
  // Parts of other words.
  ['Marcato', ''],
  ['arcotto', ''],
  ['dolce', ''],
])('“%s” says %j', (text, expected) => {
  const found = read(text).map(({id, start, end}) => `${id}:${text.slice(start, end)}`)
  expect(found.join(' ')).toBe(expected)
})

it.each([
  ['in F', ['f']],
  ['in Es', ['eb']],
  ['muta in Es', ['eb']],
  ['en si bémol', ['bb']],
  ['in B', ['bb', 'b']],
  ['[in F]', ['f']],
  ['muta in ottavino', []],
  ['nimmt kl. Fl.', []],
  ['prenez la petite flûte', []],
  ['to Picc.', []],
])('“%s” speaks of another instrument or its key %j', (text, keys) => {
  expect(readChange(text)).toEqual({keys})
})

it.each(['in tempo', 'a tempo', 'in 2', 'to Coda', 'take time', 'to the end', 'dolce', 'in'])(
  '“%s” does not',
  (text) => expect(readChange(text)).toBeUndefined(),
)

it.each([
  ['up-bow', 'viola', undefined, 'yes'],
  ['up-bow', 'harp', undefined, 'no'],
  ['harp-pedals', 'harp', undefined, 'yes'],
  ['harp-pedals', 'guitar', undefined, 'no'],
  ['con-sordino', 'trumpet-b-flat', 'strings', 'yes'],
  ['con-sordino', 'flute', 'strings', 'no'],
  ['stopped-horn', 'trumpet-b-flat', 'horns', 'no'],
  ['glissando', 'trombone-tenor', 'strings', 'yes'],
  ['glissando', 'oboe', 'strings', 'no'],
  ['fingering', 'viola', 'strings', 'yes'],
  ['fingering', 'flute', 'strings', 'no'],
  ['fingering', 'flute', undefined, 'unknown'],
  ['staccato', 'flute', undefined, 'yes'],
] as const)('%s for %s, written for %s: %s', (id, name, source, answer) => {
  const instrument = instrumentById(name)
  expect(instrument).toBeDefined()
  if (instrument) expect(canFollow(id, instrument, source as Family | undefined)).toBe(answer)
})

it.each([
  [['pizzicato', 'divisi'], 'strings'],
  [['pedal'], undefined],
  [['soft-pedal'], 'keyboards'],
  [['pizzicato', 'una-corda'], undefined],
  [[], undefined],
])('%j come from %s', (ids, family) => {
  expect(familyOfTechniques(ids)).toBe(family)
})
