/**
 * The one table of codes for expected failures: what each means and what to do. `docs/errors.md` is kept
 * equal to it by a test. A code is never reused for another meaning.
 */
export const FAULT_CODES = {
  'MAR-USAGE-001': 'A command was called with words it does not know or without one it needs.',
  'MAR-USAGE-002': 'The value of an option cannot be read, or it does not go with another option.',
  'MAR-USAGE-003': 'This version of Marram cannot do this yet.',
  'MAR-FILE-001': 'The file does not exist.',
  'MAR-FILE-002': 'The file cannot be read: permission denied, or it is a folder.',
  'MAR-FILE-003': 'The file is empty.',
  'MAR-FILE-004': 'The file is larger than Marram reads at once.',
  'MAR-FILE-005': 'The file is not text: it holds bytes that no text file holds.',
  'MAR-FILE-006': 'The output file cannot be written.',
  'MAR-FILE-007': 'The kind of file was not recognised.',

  'MAR-STORE-001': 'The file of the store is damaged, or not a store at all.',
  'MAR-STORE-002': 'The file or folder of the store cannot be opened for writing.',
  'MAR-STORE-003': 'The store was written by a newer Marram.',
  'MAR-STORE-004': 'The document was changed in the meantime, so the change was not kept.',
  'MAR-STORE-005': 'The database holds something else than a Marram store.',
  'MAR-STORE-006': 'Another program holds the store.',
  'MAR-STORE-007': 'The disk is full or failing, so the change was not kept.',

  'MAR-SERVER-001': 'There is nothing at this address.',
  'MAR-SERVER-002': 'The request names a host that is not this machine.',
  'MAR-SERVER-003': 'The request comes from a page of another site.',
  'MAR-SERVER-004': 'The body of the request is not declared as JSON.',
  'MAR-SERVER-005': 'The body of the request is larger than the server takes.',
  'MAR-SERVER-006': 'The body of the request is not JSON text in UTF-8.',
  'MAR-SERVER-007': 'The id is not made of small letters, digits and single hyphens.',
  'MAR-SERVER-008': 'There is no document with this id.',
  'MAR-SERVER-009': 'The course has faults of severity error, so it was not kept.',
  'MAR-SERVER-010': 'Neither the port asked for nor any of the next ones is free.',
  'MAR-SERVER-011': 'The server cannot listen at this address.',
  'MAR-SERVER-012': 'The server itself failed; the request was not carried out.',
  'MAR-SERVER-013': 'The revision in the request is not one that the server gave out.',
  'MAR-SERVER-014': 'This address does not take this method.',
  'MAR-SERVER-015': 'The document is not a plan.',
  'MAR-SERVER-016': 'The pages of the hole desk are not there: they were not built.',

  'MAR-COURSE-001': 'The course has no hole with this ref.',
  'MAR-COURSE-002': 'The hole is not played from a tee with this name.',
  'MAR-COURSE-003': 'The hole has no par.',
  'MAR-COURSE-004': 'The hole line is not a line: it has fewer than two points, or all in one place.',
  'MAR-COURSE-005': 'The pin does not lie on the green of the hole.',
  'MAR-COURSE-006': 'The pin was placed by the edges of the green, but the survey has no green for the hole.',
} as const

/** A code of the table above. */
export type FaultCode = keyof typeof FAULT_CODES
