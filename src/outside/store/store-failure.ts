import type { FaultCode } from '#faults/codes.ts'
import { Failure } from '#faults/failure.ts'

/** The failure that stands for an error of the database; anything that is not the database's is given back as it came. */
export function storeFailure(error: unknown, file: string): unknown {
  if (!(error instanceof Error) || error instanceof Failure) return error
  const code = (error as { code?: unknown }).code
  if (typeof code !== 'string') return error
  const known = MEANINGS.find(([start]) => code.startsWith(start))
  return known === undefined ? error : new Failure(known[1], known[2], file)
}

/** By the start of SQLite's result code (https://www.sqlite.org/rescode.html); extended codes begin with their plain one. */
const MEANINGS: readonly (readonly [start: string, code: FaultCode, message: string])[] = [
  [
    'SQLITE_NOTADB',
    'MAR-STORE-001',
    'The file is not a Marram store, or it is damaged. Choose another file or put back a copy; nothing was changed.',
  ],
  [
    'SQLITE_CORRUPT',
    'MAR-STORE-001',
    'The store is damaged. Put a copy of an earlier day in its place; nothing was changed.',
  ],
  ['SQLITE_READONLY', 'MAR-STORE-002', 'The store may be read but not written.'],
  ['SQLITE_CANTOPEN', 'MAR-STORE-002', 'The file of the store cannot be opened for writing.'],
  ['SQLITE_PERM', 'MAR-STORE-002', 'The store may not be opened: permission denied.'],
  [
    'SQLITE_BUSY',
    'MAR-STORE-006',
    'Another program is writing to the store and did not finish in time. Try again.',
  ],
  ['SQLITE_LOCKED', 'MAR-STORE-006', 'Another program holds the store. Try again.'],
  ['SQLITE_FULL', 'MAR-STORE-007', 'The disk is full; the change was not kept.'],
  ['SQLITE_IOERR', 'MAR-STORE-007', 'The disk could not be read or written; the change was not kept.'],
]
