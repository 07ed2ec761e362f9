import { readFileSync, statSync } from 'node:fs'
import { Failure } from '#faults/failure.ts'
import { decodeText, tooLarge } from '#outside/formats/decode-text.ts'
import { LARGEST_SOURCE_BYTES } from '#outside/formats/settings.ts'

/** The bytes of a file. Throws MAR-FILE-001 to 004 when it is missing, a folder, forbidden, empty or too large. */
export function readBytes(path: string): Uint8Array {
  try {
    const about = statSync(path)
    if (about.isDirectory()) throw new Failure('MAR-FILE-002', 'This is a folder, not a file.', path)
    if (about.size > LARGEST_SOURCE_BYTES) throw tooLarge(about.size, path)
    const bytes = readFileSync(path)
    // A pipe has no size before it is read.
    if (bytes.length > LARGEST_SOURCE_BYTES) throw tooLarge(bytes.length, path)
    if (bytes.length === 0) throw new Failure('MAR-FILE-003', 'The file is empty.', path)
    return bytes
  } catch (error) {
    throw readFailure(error, path)
  }
}

/** The text of a file. Throws MAR-FILE-005 when it is not text, and what {@link readBytes} throws. */
export function readText(path: string): string {
  return decodeText(readBytes(path), path).text
}

function readFailure(error: unknown, path: string): unknown {
  if (error instanceof Failure) return error
  const reason = error instanceof Error && 'code' in error ? error.code : ''
  if (reason === 'ENOENT' || reason === 'ENOTDIR')
    return new Failure('MAR-FILE-001', 'There is no such file.', path)
  if (reason === 'EACCES' || reason === 'EPERM')
    return new Failure('MAR-FILE-002', 'The file may not be read: permission denied.', path)
  return new Failure('MAR-FILE-002', `The file cannot be read (${String(reason) || 'unknown reason'}).`, path)
}
