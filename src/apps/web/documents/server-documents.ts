import { Failure } from '#faults/failure.ts'
import { askServer } from './ask-server.ts'

/** A document of the store by its id. */
export interface Listed {
  readonly id: string
  readonly name: string
  /** Counts the changes of it, from 1. */
  readonly revision: number
}

/** The kinds of document the desk reads. */
export type DocumentKind = 'courses' | 'players' | 'days' | 'plans' | 'rounds' | 'notes' | 'cards'

/** A document with the revision that a change of it must name. */
export interface KeptDocument {
  readonly text: string
  readonly revision: string
}

/** What the store holds of a kind. Throws a Failure with the server's code. */
export async function listServed(kind: DocumentKind): Promise<readonly Listed[]> {
  const answer = JSON.parse((await askServer(`/api/${kind}`)).text) as Record<string, unknown>
  const listed = answer[kind]
  return Array.isArray(listed) ? (listed as Listed[]) : []
}

/** The text of a document with its revision. Throws a Failure with the server's code. */
export async function fetchServed(kind: DocumentKind, id: string): Promise<KeptDocument> {
  return askServer(`/api/${kind}/${encodeURIComponent(id)}`)
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
  const address = `/api/${kind}/${encodeURIComponent(id)}`
  return (await askServer(address, { method: 'PUT', headers, body: document })).revision
}

/** Takes a document out of the store for good. Throws a Failure with the server's code. */
export async function removeServed(kind: DocumentKind, id: string): Promise<void> {
  await askServer(`/api/${kind}/${encodeURIComponent(id)}`, { method: 'DELETE' })
}

/** Whether the server was not reached, or stood still: then nothing was refused, and it can be asked again. */
export function isAway(error: unknown): boolean {
  return error instanceof Failure && error.code === 'MAR-WEB-001'
}
