/** The command was called wrongly: one sentence, exit code 2. */
export interface UsageError extends Error {
  readonly isUsage: true
}

export function usageError(message: string): UsageError {
  return Object.assign(new Error(message), {isUsage: true as const})
}

export function isUsageError(error: unknown): error is UsageError {
  return error instanceof Error && 'isUsage' in error
}
