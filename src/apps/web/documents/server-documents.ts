import type { FaultCode } from '#faults/codes.ts'
import { Failure } from '#faults/failure.ts'

/** A document of the store by its id. */
export interface Listed {
  readonly id: string
  readonly name: string
  /** Counts the changes of it, from 1. */
  readonly revision: number
}

/** The kinds of document the desk reads. */
export type DocumentKind = 'courses' | 'players' | 'days'

/** A document with the revision that a change of it must name. */
export interface KeptDocument {
  readonly text: string
  readonly revision: string
}

/** What the store holds of a kind. Throws a Failure with the server's code. */
export async function listServed(kind: DocumentKind): Promise<readonly Listed[]> {
  const answer: unknown = await (await ask(`/api/${kind}`)).json()
  const listed = (answer as Record<string, unknown>)[kind]
  return Array.isArray(listed) ? (listed as Listed[]) : []
}

/** The text of a document with its revision. Throws a Failure with the server's code. */
export async function fetchServed(kind: DocumentKind, id: string): Promise<KeptDocument> {
  const response = await ask(`/api/${kind}/${encodeURIComponent(id)}`)
  return { text: await response.text(), revision: response.headers.get('ETag') ?? '' }
}

/**
 * Puts a document in place of the revision that is named, or as a new one when it is empty, and returns the revision it
 * then has. Throws a Failure with the server's code, `MAR-STORE-004` when another change came first.
 */
export async function putServed(
  kind: DocumentKind,
  id: string,
  document: string,
  revision: string,
): Promise<string> {
  const condition = revision === '' ? { 'If-None-Match': '*' } : { 'If-Match': revision }
  const headers = { 'Content-Type': 'application/json', ...condition }
  const response = await ask(`/api/${kind}/${encodeURIComponent(id)}`, {
    method: 'PUT',
    headers,
    body: document,
  })
  return response.headers.get('ETag') ?? ''
}

/** Whether the server was not reached at all: then nothing was refused, and it can be asked again. */
export function isAway(error: unknown): boolean {
  return error instanceof Failure && error.code === 'MAR-WEB-001'
}

async function ask(address: string, request?: RequestInit): Promise<Response> {
  let response: Response
  try {
    response = await fetch(address, request)
  } catch {
    throw new Failure('MAR-WEB-001', 'The server does not answer. Is it still running?', address)
  }
  if (response.ok) return response
  const body = (await response.json().catch(() => null)) as { error?: Partial<Failure> } | null
  const code = body?.error?.code
  if (code !== undefined && isFaultCode(code))
    throw new Failure(code, body?.error?.message ?? 'The server would not.', body?.error?.where ?? address)
  throw new Failure('MAR-WEB-002', `The server answered ${response.status} without saying why.`, address)
}

/** By its form: the page and the server are of one build, and the table of all codes is as long as some screens. */
function isFaultCode(code: string): code is FaultCode {
  return /^MAR-[A-Z]+-\d{3}$/.test(code)
}
