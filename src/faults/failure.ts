import type { FaultCode } from './codes.ts'

/**
 * An expected failure: the work cannot go on and the person is told why. Anything else thrown is a defect.
 * Thrown by the functions whose docstring says so; the edge (command line, server) turns it into
 * `{code, message, where}`.
 */
export class Failure extends Error {
  readonly code: FaultCode
  /** Where in the source: a file, a line, an element, a field. Empty when it concerns the whole. */
  readonly where: string

  constructor(code: FaultCode, message: string, where = '') {
    super(message)
    this.name = 'Failure'
    this.code = code
    this.where = where
  }
}
