import { Failure } from '#faults/failure.ts'

/** What went wrong, with its code where it has one. */
export function wordsOf(error: unknown): string {
  if (error instanceof Failure) return `${error.message} (${error.code})`
  return error instanceof Error ? error.message : String(error)
}
