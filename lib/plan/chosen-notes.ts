/** Some of the pitched notes of a part: their places in it from 0, and the place of each measure's first. */
export interface ChosenNotes {
  readonly firstNote: readonly number[]
  readonly notes: ReadonlySet<number>
}
