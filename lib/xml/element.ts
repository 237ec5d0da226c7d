/** An attribute of an element; offsets are of its value, inside the quotes. `raw` is the text as written. */
export interface Attribute {
  readonly name: string
  readonly raw: string
  readonly start: number
  readonly end: number
  /** Where the attribute begins with the white space before it: removing [from, end + 1] removes it whole. */
  readonly from: number
}

/**
 * An element and where it stands in its text. [start, end) is the whole element; [contentStart, contentEnd)
 * what lies between its tags (both equal to `end` when the tag closes itself).
 */
export interface Element {
  readonly name: string
  readonly attributes: readonly Attribute[]
  readonly children: readonly Element[]
  readonly start: number
  readonly end: number
  readonly contentStart: number
  readonly contentEnd: number
}
