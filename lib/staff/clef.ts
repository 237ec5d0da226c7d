import {naturalAt, stepsAbove} from '../pitch/pitch.ts'
import type {Pitch} from '../pitch/pitch.ts'

export type ClefSign = 'G' | 'F' | 'C' | 'percussion' | 'TAB' | 'jianpu' | 'none'

/**
 * A clef. `line` counts from the bottom, 1 to 5. `octaveChange` is the small 8 (±1) or 15 (±2) on the
 * sign: it moves the staff, never the pitch.
 */
export interface Clef {
  readonly sign: ClefSign
  readonly line: number
  readonly octaveChange: number
}

export const TREBLE: Clef = {sign: 'G', line: 2, octaveChange: 0}
export const BASS: Clef = {sign: 'F', line: 4, octaveChange: 0}
export const ALTO: Clef = {sign: 'C', line: 3, octaveChange: 0}
export const TENOR: Clef = {sign: 'C', line: 4, octaveChange: 0}

/** Steps above C0 of the note on the line that the sign names: G4, F3, C4. */
const REFERENCE: Readonly<Record<'G' | 'F' | 'C', number>> = {G: 32, F: 24, C: 28}
const USUAL_LINE: Readonly<Record<ClefSign, number>> = {
  G: 2,
  F: 4,
  C: 3,
  percussion: 3,
  TAB: 5,
  jianpu: 3,
  none: 2,
}

/** The line on which a sign stands when none is given (MusicXML 4.0, element `line`). */
export function usualLine(sign: ClefSign): number {
  return USUAL_LINE[sign]
}

export function sameClef(a: Clef, b: Clef): boolean {
  return a.sign === b.sign && a.line === b.line && a.octaveChange === b.octaveChange
}

/** Whether the clef gives its lines pitches: not so for percussion, tablature, numbers and none. */
export function isPitched(clef: Clef): boolean {
  return clef.sign === 'G' || clef.sign === 'F' || clef.sign === 'C'
}

/** Steps above C0 of the bottom line. A clef without pitch counts as treble, as MusicXML 4.0 says of `display-step`. */
export function bottomLine(clef: Clef): number {
  const {sign, line, octaveChange} = clef
  if (sign === 'G' || sign === 'F' || sign === 'C')
    return REFERENCE[sign] - 2 * (line - 1) + 7 * octaveChange
  return REFERENCE.G - 2
}

/** Staff position of a pitch: steps above the bottom line, which is 0; the top line is 8. */
export function staffPosition(pitch: Pick<Pitch, 'step' | 'octave'>, clef: Clef): number {
  return stepsAbove(pitch) - bottomLine(clef)
}

/** The unaltered pitch at a staff position. */
export function pitchAt(position: number, clef: Clef): Pitch {
  return naturalAt(position + bottomLine(clef))
}

/** The ledger lines a note needs, counted from a five-line staff. */
export function ledgerLines(position: number): number {
  if (position > 9) return Math.floor((position - 8) / 2)
  if (position < -1) return Math.floor((0 - position) / 2)
  return 0
}

/** Reads `G2`, `F4`, `C3`, `G2(-1)`, `F4(+1)`, `percussion`. Undefined when the text is no clef. */
export function parseClef(text: string): Clef | undefined {
  const match = /^(G|F|C|percussion|TAB|jianpu|none)([1-6])?(?:\(([+-]?\d)\))?$/.exec(text.trim())
  if (!match) return undefined
  const sign = match[1] as ClefSign
  return {
    sign,
    line: match[2] === undefined ? USUAL_LINE[sign] : Number(match[2]),
    octaveChange: Number(match[3] ?? 0),
  }
}

/** `G2`, `F4(+1)`; just the sign for clefs without pitch. */
export function formatClef(clef: Clef): string {
  if (!isPitched(clef)) return clef.sign
  const change = clef.octaveChange
  return `${clef.sign}${clef.line}${change === 0 ? '' : `(${change > 0 ? '+' : ''}${change})`}`
}

const NAMES: Readonly<Record<string, string>> = {
  G2: 'treble clef',
  G1: 'French violin clef',
  F4: 'bass clef',
  F3: 'baritone clef',
  F5: 'subbass clef',
  C1: 'soprano clef',
  C2: 'mezzo-soprano clef',
  C3: 'alto clef',
  C4: 'tenor clef',
  C5: 'baritone C clef',
  percussion: 'percussion clef',
  TAB: 'tablature',
}

/** In words: `bass clef`, `treble clef an octave lower`. */
export function describeClef(clef: Clef): string {
  const plain = formatClef({...clef, octaveChange: 0})
  const name = NAMES[plain] ?? `${plain} clef`
  if (clef.octaveChange === 0 || !isPitched(clef)) return name
  const size =
    Math.abs(clef.octaveChange) === 1 ? 'an octave' : `${Math.abs(clef.octaveChange)} octaves`
  return `${name} ${size} ${clef.octaveChange < 0 ? 'lower' : 'higher'}`
}
