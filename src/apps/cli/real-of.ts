import { realpathSync } from 'node:fs'
import { resolve } from 'node:path'

/** Where a file lies once links are followed; one that is not there yet lies where it is said. */
export function realOf(path: string): string {
  try {
    return realpathSync(path)
  } catch {
    return resolve(path)
  }
}
