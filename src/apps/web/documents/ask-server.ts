import type { FaultCode } from '#faults/codes.ts'
import { Failure } from '#faults/failure.ts'
import { tellServer } from './server-news.ts'

/** What the server answered. */
export interface Answer {
  readonly text: string
  /** The revision of the document; empty where there is none. */
  readonly revision: string
}

/** Nothing has moved for so long: then the server is away, ms. Our choice: a lesson waits no longer. */
const PATIENCE_MILLISECONDS = 8000
/** The same once it was away, so that a desk without its network opens on its copies without a pause for each. */
const SHORT_PATIENCE_MILLISECONDS = 1500
/** The slowest sending that is waited for, bytes a millisecond: sending shows no progress of its own. */
const SLOWEST_SENDING = 20

let patience = PATIENCE_MILLISECONDS

/**
 * Asks the server. A slow answer is waited for as long as it moves; one that stands still is given up, as is a server
 * that is not there: then it throws `MAR-WEB-001`, and a Failure with the server's own code when it refuses.
 */
export async function askServer(address: string, request: RequestInit = {}): Promise<Answer> {
  const { response, text } = await reach(address, request)
  if (response.ok) return { text, revision: response.headers.get('ETag') ?? '' }
  const body = errorIn(text)
  if (body?.code !== undefined && isFaultCode(body.code))
    throw new Failure(body.code, body.message ?? 'The server would not.', body.where ?? address)
  throw new Failure('MAR-WEB-002', `The server answered ${response.status} without saying why.`, address)
}

async function reach(
  address: string,
  request: RequestInit,
): Promise<{ readonly response: Response; readonly text: string }> {
  const stalled = new AbortController()
  const sent = typeof request.body === 'string' ? request.body.length : 0
  let late = setTimeout(() => stalled.abort(), patience + sent / SLOWEST_SENDING)
  const moved = (): void => {
    clearTimeout(late)
    late = setTimeout(() => stalled.abort(), PATIENCE_MILLISECONDS)
  }
  try {
    const response = await fetch(address, { ...request, signal: stalled.signal })
    const text = await readText(response, moved)
    patience = PATIENCE_MILLISECONDS
    tellServer('here')
    return { response, text }
  } catch {
    patience = SHORT_PATIENCE_MILLISECONDS
    tellServer('away')
    throw new Failure('MAR-WEB-001', 'The server does not answer. Is it still running?', address)
  } finally {
    clearTimeout(late)
  }
}

/** The text of an answer; `moved` is called with every piece of it. */
async function readText(response: Response, moved: () => void): Promise<string> {
  const pieces = response.body?.pipeThrough(new TextDecoderStream()).getReader()
  let text = ''
  for (let piece = await pieces?.read(); piece?.value !== undefined; piece = await pieces?.read()) {
    moved()
    text += piece.value
  }
  return text
}

function errorIn(text: string): Partial<Failure> | null {
  try {
    return (JSON.parse(text) as { error?: Partial<Failure> }).error ?? null
  } catch {
    return null
  }
}

/** By its form: the page and the server are of one build, and the table of all codes is as long as some screens. */
function isFaultCode(code: string): code is FaultCode {
  return /^MAR-[A-Z]+-\d{3}$/.test(code)
}
