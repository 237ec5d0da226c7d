/** Ledger lines above and below the staff of the usual clef that a reader takes before another clef reads better. */
export interface LedgerLines {
  readonly above: number
  readonly below: number
}

/** Three on either side, where nothing else is known. */
const USUAL: LedgerLines = {above: 3, below: 3}

/**
 * Readers who change clefs, from the table of renotation-rules C2: bassoon to about G4, tenor trombone to about G4, cello to about
 * E4, viola to about C5, horn down to about written G3, French C tuba two lines up (common practice; the tuba after
 * MPO, see `sourcesIn`).
 */
const READERS: Readonly<Record<string, LedgerLines>> = {
  bassoon: {above: 3, below: 3},
  'trombone-tenor': {above: 3, below: 3},
  cello: {above: 2, below: 3},
  viola: {above: 2, below: 3},
  'horn-f': {above: 4, below: 2},
  'double-bass': {above: 3, below: 3},
  'french-tuba-c': {above: 2, below: 4},
}

/** What an instrument's players accept, by the instrument's id. */
export function ledgerLinesOf(instrument: string | undefined): LedgerLines {
  return (instrument === undefined ? undefined : READERS[instrument]) ?? USUAL
}
