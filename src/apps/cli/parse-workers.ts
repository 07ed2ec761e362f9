import { availableParallelism } from 'node:os'
import { parseCount } from './parse-values.ts'
import { MOST_WORKERS } from './settings.ts'

/** Threads to work in: as many as cores unless given, 0 = none. Throws MAR-USAGE-002. */
export function parseWorkers(text: string | undefined): number {
  return text === undefined ? availableParallelism() : parseCount(text, '--workers', 0, MOST_WORKERS)
}
