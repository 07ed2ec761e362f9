import type { FaultCode } from './codes.ts'
import { Failure } from './failure.ts'
import type { Fault } from './fault.ts'

/** Why a question has no answer: what a Failure says, as a plain record that a thread or a worker hands over. */
export interface Unanswered {
  readonly fault: { readonly code: FaultCode; readonly message: string; readonly where: string }
}

/** What the work answers, or the Failure it threw as a record. Throws only defects. */
export function answered<Answer>(work: () => Answer): Answer | Unanswered {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof Failure)) throw error
    return unanswered(error)
  }
}

/** A Failure as a record. */
export function unanswered({ code, message, where }: Failure): Unanswered {
  return { fault: { code, message, where } }
}

/** A failure of one part among others, as a fault of the whole. */
export function errorFault({ code, message, where }: Unanswered['fault']): Fault {
  return { severity: 'error', code, message, place: where, advice: '' }
}
