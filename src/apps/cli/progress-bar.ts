import { SingleBar } from 'cli-progress'
import type { Machine } from './machine.ts'

/** A bar on standard error, only where a person watches: `plan 3 of 18`. */
export function progressBar(what: string, machine: Machine, isQuiet: boolean): SingleBar | null {
  if (!machine.isWatched || isQuiet) return null
  return new SingleBar({
    format: `${what} {value} of {total} {bar}`,
    stream: process.stderr,
    clearOnComplete: true,
  })
}
