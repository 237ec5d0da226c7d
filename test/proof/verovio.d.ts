/** What the tests use of the engraver, which ships no types. */
declare module 'verovio/wasm' {
  export default function createVerovioModule(): Promise<object>
}

declare module 'verovio/esm' {
  export class VerovioToolkit {
    constructor(module: object)
    loadData(data: string): boolean
    /** A MIDI file in base 64. */
    renderToMIDI(): string
  }
}
