import type { FaultCode } from '#faults/codes.ts'

/** What is wrong with an answer and what to do about it, before it is known which field it stands in. */
export interface AnswerFault {
  readonly code: FaultCode
  readonly message: string
  readonly advice: string
}

export function answerFault(code: FaultCode, message: string, advice: string): AnswerFault {
  return { code, message, advice }
}
