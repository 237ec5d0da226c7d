/** Key numbers struck together, from low to high. */
export type Chord = readonly number[]

/** The chords of each track of a standard MIDI file, in order of time; empty tracks are left out. */
export function readMidi(bytes: Uint8Array): readonly (readonly Chord[])[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const tracks = []
  let at = 8 + view.getUint32(4)
  while (at < bytes.length) {
    const end = at + 8 + view.getUint32(at + 4)
    const chords = readTrack(bytes, at + 8, end)
    if (chords.length > 0) tracks.push(chords)
    at = end
  }
  return tracks
}

function readTrack(bytes: Uint8Array, start: number, end: number): readonly Chord[] {
  const chords = new Map<number, number[]>()
  let at = start
  let time = 0
  let status = 0
  const byte = () => bytes[at++] ?? 0
  const variable = () => {
    let value = 0
    for (;;) {
      const next = byte()
      value = value * 128 + (next & 0x7f)
      if (next < 0x80) return value
    }
  }
  while (at < end) {
    time += variable()
    if ((bytes[at] ?? 0) >= 0x80) status = byte()
    if (status >= 0xf0) {
      if (status === 0xff) at++
      const length = variable()
      at += length
    } else {
      const first = byte()
      const second = status >> 4 === 0xc || status >> 4 === 0xd ? 0 : byte()
      if (status >> 4 === 9 && second > 0) chords.set(time, [...(chords.get(time) ?? []), first])
    }
  }
  return [...chords].toSorted(([a], [b]) => a - b).map(([, keys]) => keys.toSorted((a, b) => a - b))
}
