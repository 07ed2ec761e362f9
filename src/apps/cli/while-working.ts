import type { Machine } from './machine.ts'

/**
 * Runs work of more than a second that is one piece, so that no bar can show its share: a person who watches standard
 * error reads what goes on until it is done. Returns what the work returns.
 */
export function whileWorking<Result>(
  what: string,
  isQuiet: boolean,
  machine: Pick<Machine, 'err' | 'isWatched'>,
  work: () => Result,
): Result {
  if (!machine.isWatched || isQuiet) return work()
  machine.err(`${what} …`)
  try {
    return work()
  } finally {
    machine.err(CLEAR_LINE)
  }
}

/** Back to the start of the line, which is then emptied (ECMA-48: EL). */
const CLEAR_LINE = `\r${String.fromCharCode(27)}[K`
