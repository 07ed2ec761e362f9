import { realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { Failure } from '#faults/failure.ts'

/** Throws MAR-FILE-006 when there is no folder for the file: said before long work and not after it. */
export function requireFolder(path: string): void {
  if (statSync(dirname(path), { throwIfNoEntry: false })?.isDirectory() === true) return
  throw new Failure('MAR-FILE-006', 'The file cannot be written: there is no such folder.', path)
}

/**
 * Writes a whole file or nothing: the text goes to a neighbour first, which then takes the name, so an
 * interrupted run leaves the old file. A link keeps pointing where it does, and a device or pipe is written to, not
 * replaced. Throws MAR-FILE-006.
 */
export function writeText(path: string, text: string): void {
  writeBytes(path, text)
}

/** The same for bytes. Throws MAR-FILE-006. */
export function writeBytes(path: string, content: string | Uint8Array): void {
  let neighbour: string | null = null
  try {
    const there = statSync(path, { throwIfNoEntry: false })
    if (there !== undefined && !there.isFile() && !there.isDirectory()) {
      writeFileSync(path, content)
      return
    }
    const target = there === undefined ? path : realpathSync(path)
    neighbour = `${target}.${process.pid}.part`
    writeFileSync(neighbour, content)
    renameSync(neighbour, target)
  } catch (error) {
    if (neighbour !== null) rmSync(neighbour, { force: true })
    const reason = error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason'
    throw new Failure('MAR-FILE-006', `The file cannot be written (${reason}).`, path)
  }
}
