import { renameSync, rmSync, writeFileSync } from 'node:fs'
import { Failure } from '#faults/failure.ts'

/**
 * Writes a whole file or nothing: the text goes to a neighbour first, which then takes the name, so an
 * interrupted run leaves the old file. Throws MAR-FILE-006.
 */
export function writeText(path: string, text: string): void {
  const neighbour = `${path}.${process.pid}.part`
  try {
    writeFileSync(neighbour, text)
    renameSync(neighbour, path)
  } catch (error) {
    rmSync(neighbour, { force: true })
    const reason = error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason'
    throw new Failure('MAR-FILE-006', `The file cannot be written (${reason}).`, path)
  }
}
