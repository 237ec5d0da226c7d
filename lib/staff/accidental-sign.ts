/**
 * The accidental that shows an alteration (MusicXML 4.0, accidental-value; quarter tones in the Stein-Zimmermann
 * signs as the standard names them).
 */
const SIGNS: readonly (readonly [alter: number, sign: string])[] = [
  [-3, 'triple-flat'],
  [-2, 'flat-flat'],
  [-1.5, 'three-quarters-flat'],
  [-1, 'flat'],
  [-0.5, 'quarter-flat'],
  [0, 'natural'],
  [0.5, 'quarter-sharp'],
  [1, 'sharp'],
  [1.5, 'three-quarters-sharp'],
  [2, 'double-sharp'],
  [3, 'triple-sharp'],
]

/** Families of signs other than the plain ones, each by the alteration its members show. */
const FAMILIES: readonly (readonly (readonly [alter: number, sign: string])[])[] = [
  [
    [-1.5, 'flat-down'],
    [-1, 'flat'],
    [-0.5, 'natural-down'],
    [0, 'natural'],
    [0.5, 'natural-up'],
    [1, 'sharp'],
    [1.5, 'sharp-up'],
  ],
  [
    [-0.5, 'flat-up'],
    [0.5, 'sharp-down'],
    [-1, 'flat'],
    [0, 'natural'],
    [1, 'sharp'],
    [-1.5, 'double-flat-up'],
    [1.5, 'double-sharp-down'],
  ],
  [
    [-1.5, 'double-slash-flat'],
    [-0.5, 'slash-flat'],
    [0.5, 'slash-quarter-sharp'],
    [1.5, 'slash-sharp'],
    [-1, 'flat'],
    [0, 'natural'],
    [1, 'sharp'],
  ],
  [
    [2, 'sharp-sharp'],
    [1, 'sharp'],
    [0, 'natural'],
    [-1, 'flat'],
    [-2, 'flat-flat'],
  ],
  [
    [1, 'natural-sharp'],
    [-1, 'natural-flat'],
    [0, 'natural'],
    [2, 'double-sharp'],
    [-2, 'flat-flat'],
  ],
]

/**
 * The sign for an alteration, of the family of the sign that stood there before. Undefined where the standard has no
 * sign for it.
 */
export function accidentalFor(alter: number, before?: string): string | undefined {
  const family =
    before === undefined || isPlain(before)
      ? undefined
      : FAMILIES.find((signs) => signs.some(([, sign]) => sign === before))
  const find = (signs: readonly (readonly [number, string])[]) =>
    signs.find(([value]) => value === alter)?.[1]
  return (family && find(family)) ?? find(SIGNS)
}

function isPlain(sign: string): boolean {
  return SIGNS.some(([, own]) => own === sign)
}

/** The alteration that a sign shows; undefined for signs without a fixed one. */
export function alterOf(sign: string): number | undefined {
  return [...SIGNS, ...FAMILIES.flat()].find(([, own]) => own === sign)?.[0]
}
