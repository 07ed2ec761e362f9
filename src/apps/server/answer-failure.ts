import type { Context } from 'hono'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import { Failure } from '#faults/failure.ts'

/**
 * The answer for anything thrown: `{error: {code, message, where}}`. A defect is told to `report` and answered
 * without its text, which is for us and not for whoever asked.
 */
export function answerFailure(error: unknown, context: Context, report: (defect: unknown) => void): Response {
  if (error instanceof Failure) {
    const { code, message } = error
    // Where the store lies on this disk is nobody's business on the other side.
    const where = code.startsWith('MAR-STORE-') && code !== 'MAR-STORE-004' ? '' : error.where
    return context.json({ error: { code, message, where } }, statusOf(code))
  }
  report(error)
  const message = 'Something went wrong inside the server; nothing was changed by this request.'
  return context.json({ error: { code: 'MAR-SERVER-012', message, where: '' } }, 500)
}

function statusOf(code: Failure['code']): ContentfulStatusCode {
  const known = STATUSES[code]
  if (known !== undefined) return known
  if (code.startsWith('MAR-STORE-')) return 503
  // Whatever else is thrown says what is wrong with the document sent.
  return 422
}

/** HTTP status by code (RFC 9110 section 15). */
const STATUSES: Readonly<Partial<Record<Failure['code'], ContentfulStatusCode>>> = {
  'MAR-STORE-004': 409,
  'MAR-STORE-007': 507,
  'MAR-SERVER-001': 404,
  'MAR-SERVER-002': 421,
  'MAR-SERVER-003': 403,
  'MAR-SERVER-004': 415,
  'MAR-SERVER-005': 413,
  'MAR-SERVER-006': 400,
  'MAR-SERVER-007': 400,
  'MAR-SERVER-008': 404,
  'MAR-SERVER-012': 500,
  'MAR-SERVER-013': 400,
  'MAR-SERVER-014': 405,
  'MAR-SERVER-016': 404,
  'MAR-SERVER-017': 502,
}
