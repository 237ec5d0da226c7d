const NAMES = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B'] as const

/** A key of the keyboard by its usual name: 58 is `Bb3`. For limits of ranges, which nobody spells. */
export function keyName(key: number): string {
  const whole = Math.round(key)
  return `${NAMES[((whole % 12) + 12) % 12] ?? 'C'}${Math.floor(whole / 12) - 1}`
}
