import { realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { Failure } from '#faults/failure.ts'

/**
 * Writes a whole file or nothing: the text goes to a neighbour first, which then takes the name, so an
 * interrupted run leaves the old file. A link keeps pointing where it does, and a device or pipe is written to, not
 * replaced. Throws MAR-FILE-006.
 */
export function writeText(path: string, text: string): void {
  let neighbour: string | null = null
  try {
    const there = statSync(path, { throwIfNoEntry: false })
    if (there !== undefined && !there.isFile() && !there.isDirectory()) {
      writeFileSync(path, text)
      return
    }
    const target = there === undefined ? path : realpathSync(path)
    neighbour = `${target}.${process.pid}.part`
    writeFileSync(neighbour, text)
    renameSync(neighbour, target)
  } catch (error) {
    if (neighbour !== null) rmSync(neighbour, { force: true })
    const reason = error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason'
    throw new Failure('MAR-FILE-006', `The file cannot be written (${reason}).`, path)
  }
}
