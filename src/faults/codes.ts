/**
 * The one table of codes for expected failures: what each means and what to do. `docs/errors.md` is kept
 * equal to it by a test. A code is never reused for another meaning.
 */
export const FAULT_CODES = {
  'MAR-USAGE-001': 'A command was called with words it does not know or without one it needs.',
  'MAR-FILE-001': 'The file does not exist.',
  'MAR-FILE-002': 'The file cannot be read: permission denied, or it is a folder.',
  'MAR-FILE-003': 'The file is empty.',
  'MAR-FILE-004': 'The file is larger than Marram reads at once.',
  'MAR-FILE-005': 'The file is not text: it holds bytes that no text file holds.',
  'MAR-FILE-006': 'The output file cannot be written.',
  'MAR-FILE-007': 'The kind of file was not recognised.',
} as const

/** A code of the table above. */
export type FaultCode = keyof typeof FAULT_CODES
