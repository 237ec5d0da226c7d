import type {Report} from '../diagnostic.ts'
import {usualSteps} from '../pitch/interval.ts'
import type {Key} from '../pitch/key.ts'
import {isStep} from '../pitch/pitch.ts'
import type {Pitch, Step} from '../pitch/pitch.ts'
import type {Clef, ClefSign} from '../staff/clef.ts'
import {usualLine} from '../staff/clef.ts'
import {child, childNumber, childText, descendant, numberOf, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'
import type {ForPart, Transposition} from '../staff/state.ts'

/** What a reader tells when an element is not as the standard wants it; whoever reads knows the place. */
export type Complain = (
  code: Parameters<Report>[0]['code'],
  message: string,
  actual?: string,
) => void

const CLEF_SIGNS: readonly string[] = ['G', 'F', 'C', 'percussion', 'TAB', 'jianpu', 'none']

/** No part has more staves: a number beyond is a slip, and no reason to make room for so many. */
const MOST_STAVES = 64

/** Whether a number can be that of a staff, which count from 1. */
export function isStaff(number: number): boolean {
  return Number.isInteger(number) && number >= 1 && number <= MOST_STAVES
}

/** Reads `pitch`: undefined when step or octave is missing or no pitch can be made of them. */
export function readPitch(text: string, element: Element): Pitch | undefined {
  return readSpelling(text, element, 'step', 'alter', 'octave')
}

/** Reads three children as a pitch: `display-step` and `display-octave`, `tuning-step` …, under their own names. */
export function readSpelling(
  text: string,
  element: Element,
  stepName: string,
  alterName: string,
  octaveName: string,
): Pitch | undefined {
  let step: Step | undefined
  let alter = 0
  let octave: number | undefined
  for (const each of element.children) {
    if (each.name === stepName) {
      const letter = textOf(text, each)
      if (isStep(letter)) step = letter
    } else if (each.name === alterName) alter = numberOf(text, each) ?? 0
    else if (each.name === octaveName) {
      const value = numberOf(text, each)
      if (Number.isInteger(value)) octave = value
    }
  }
  return step === undefined || octave === undefined ? undefined : {step, alter, octave}
}

/** Reads `clef` (and `part-clef`): an absent line is the usual one of the sign. Undefined when there is no sign we know. */
export function readClef(text: string, element: Element): Clef | undefined {
  const sign = childText(text, element, 'sign')
  if (sign === undefined || !CLEF_SIGNS.includes(sign)) return undefined
  return {
    sign: sign as ClefSign,
    line: childNumber(text, element, 'line') ?? usualLine(sign as ClefSign),
    octaveChange: childNumber(text, element, 'clef-octave-change') ?? 0,
  }
}

/** Reads `key` in both forms. Undefined when it says nothing. */
export function readKey(text: string, element: Element): Key | undefined {
  const fifths = childNumber(text, element, 'fifths')
  if (fifths !== undefined) return {fifths}
  const alters: {step: Step; alter: number; octave?: number}[] = []
  for (const each of element.children) {
    if (each.name === 'key-step') {
      const step = textOf(text, each)
      if (isStep(step)) alters.push({step, alter: 0})
    } else if (each.name === 'key-alter') {
      const last = alters.at(-1)
      if (last) last.alter = Number(textOf(text, each)) || 0
    } else if (each.name === 'key-octave') {
      const sign = alters[Number(each.attributes.find(({name}) => name === 'number')?.raw ?? 0) - 1]
      if (sign) sign.octave = Number(textOf(text, each))
    }
  }
  return alters.length > 0 || child(element, 'key-octave') ? {alters} : undefined
}

/**
 * Reads `transpose` (and `part-transpose`), octaves added in. The octave may stand in `octave-change` or be folded
 * into `chromatic`; both at once is a contradiction, told and read literally (MusicXML 4.0 adds them). A missing
 * `diatonic` is inferred.
 */
export function readTransposition(
  text: string,
  element: Element,
  complain: Complain,
): Transposition {
  const chromatic = childNumber(text, element, 'chromatic')
  const octaves = childNumber(text, element, 'octave-change') ?? 0
  const written = childNumber(text, element, 'diatonic')
  if (chromatic === undefined) {
    complain(
      'transposition/no-chromatic',
      'the transposition says no number of semitones and is read as none',
    )
  }
  const semitones = chromatic ?? 0
  const steps = written ?? usualSteps(semitones)
  if (written === undefined && semitones % 12 !== 0) {
    complain(
      'transposition/diatonic-inferred',
      `the transposition says ${semitones} semitones but no steps; ${steps} steps are taken`,
    )
  }
  if (Math.abs(semitones) >= 12) {
    if (octaves !== 0) {
      complain(
        'transposition/octave-twice',
        `the transposition has an octave in its ${semitones} semitones and an octave change of ${octaves} as well; both are counted`,
      )
    } else {
      complain(
        'transposition/octave-folded',
        `the octave of the transposition is folded into its ${semitones} semitones`,
      )
    }
  }
  const double = child(element, 'double')
  return {
    interval: {
      diatonic: foldSteps(steps, semitones, written !== undefined) + 7 * octaves,
      chromatic: semitones + 12 * octaves,
    },
    ...(double && {
      double: double.attributes.some(({name, raw}) => name === 'above' && raw === 'yes')
        ? 'above'
        : 'below',
    }),
  }
}

/** Reads `for-part` of a concert score. */
export function readForPart(text: string, element: Element, complain: Complain): ForPart {
  const clef = child(element, 'part-clef')
  const transposition = descendant(element, 'part-transpose')
  const read = clef && readClef(text, clef)
  return {
    ...(read && {clef: read}),
    transposition: transposition
      ? readTransposition(text, transposition, complain)
      : {interval: {diatonic: 0, chromatic: 0}},
  }
}

/** Some files fold the octave into `chromatic` alone (0 steps, 12 semitones): the steps then take it too. */
function foldSteps(steps: number, semitones: number, declared: boolean): number {
  if (!declared || Math.abs(semitones) < 12) return steps
  const octaves = Math.trunc(semitones / 12)
  const rest = usualSteps(semitones - 12 * octaves)
  return Math.abs(steps - rest) <= 1 ? steps + 7 * octaves : steps
}
