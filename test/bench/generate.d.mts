export interface ScoreOptions {
  readonly bytes: number
  readonly form?: 'partwise' | 'timewise'
  readonly measures?: 'long' | 'short'
  readonly parts?: number
  readonly seed?: number
}
export function generateScore(options: ScoreOptions): Iterable<string>
export function writeScore(path: string, options: ScoreOptions): void
export function packScore(bytes: Uint8Array): Uint8Array
