import { FAULT_CODES, type FaultCode } from '#faults/codes.ts'
import { Failure } from '#faults/failure.ts'

/** A document of the store by its id. */
export interface Listed {
  readonly id: string
  readonly name: string
}

/** The kinds of document the desk reads. */
export type DocumentKind = 'courses' | 'players' | 'days'

/** What the store holds of a kind, in the order of its names. Throws a Failure with the server's code. */
export async function listDocuments(kind: DocumentKind): Promise<readonly Listed[]> {
  const answer: unknown = await (await ask(`/api/${kind}`)).json()
  const listed = (answer as Record<string, unknown>)[kind]
  if (!Array.isArray(listed)) return []
  return (listed as Listed[]).toSorted((a, b) => a.name.localeCompare(b.name))
}

/** The text of a document. Throws a Failure with the server's code. */
export async function fetchDocument(kind: DocumentKind, id: string): Promise<string> {
  return (await fetchKept(kind, id)).text
}

/** A document with the revision that a change of it must name. */
export interface KeptDocument {
  readonly text: string
  readonly revision: string
}

/** The text of a document with its revision. Throws a Failure with the server's code. */
export async function fetchKept(kind: DocumentKind, id: string): Promise<KeptDocument> {
  const response = await ask(`/api/${kind}/${encodeURIComponent(id)}`)
  return { text: await response.text(), revision: response.headers.get('ETag') ?? '' }
}

/** Keeps a document in place of the revision that was fetched. Throws a Failure with the server's code, `MAR-STORE-004` when another change came first. */
export async function keepChanged(
  kind: DocumentKind,
  id: string,
  document: string,
  revision: string,
): Promise<void> {
  const headers = { 'Content-Type': 'application/json', 'If-Match': revision }
  await ask(`/api/${kind}/${encodeURIComponent(id)}`, { method: 'PUT', headers, body: document })
}

/**
 * Keeps a new document under the id, or with the first number after it that makes it free, and returns which. Throws a
 * Failure with the server's code when it is refused; what is kept is never written over.
 */
export async function keepNewDocument(kind: DocumentKind, id: string, document: string): Promise<string> {
  const taken = new Set((await listDocuments(kind)).map((listed) => listed.id))
  let free = id
  for (let count = 2; taken.has(free); count += 1) free = `${id}-${count}`
  const headers = { 'Content-Type': 'application/json', 'If-None-Match': '*' }
  await ask(`/api/${kind}/${free}`, { method: 'PUT', headers, body: document })
  return free
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
    throw new Failure(code, body?.error?.message ?? FAULT_CODES[code], body?.error?.where ?? address)
  throw new Failure('MAR-WEB-002', `The server answered ${response.status} without saying why.`, address)
}

function isFaultCode(code: string): code is FaultCode {
  return code in FAULT_CODES
}
