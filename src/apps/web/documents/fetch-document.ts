import { forgetAnswers } from '../planning/kept-answers.ts'
import {
  copiedDocument,
  copiedList,
  copyDocument,
  copyList,
  dropCopy,
  dropWaiting,
  keepWaiting,
  type WaitingChange,
  waitingChanges,
  waitingFor,
} from './local-shelf.ts'
import {
  type DocumentKind,
  fetchServed,
  isAway,
  type KeptDocument,
  type Listed,
  listServed,
  putServed,
  removeServed,
} from './server-documents.ts'
import { tellWaiting } from './waiting-news.ts'

/**
 * The documents of the desk: the server's while it answers, this browser's copies while it does not, and over both the
 * changes made here that the server does not have yet.
 */

/** What there is of a kind, in the order of its names. Throws a Failure with the server's code. */
export async function listDocuments(kind: DocumentKind): Promise<readonly Listed[]> {
  const listed = await listServed(kind)
    .then(async (served) => {
      const isAnyGone = await copyList(kind, served).catch(withoutShelf)
      if (kind === 'players' && isAnyGone === true) await forgetAnswers()
      return served
    })
    .catch(async (error: unknown) => {
      const copied = isAway(error) ? await copiedList(kind).catch(withoutShelf) : null
      if (!copied) throw error
      return copied
    })
  const waiting = (await waitingChanges().catch(withoutShelf)) ?? []
  const own = waiting.filter((change) => change.kind === kind)
  const others = listed.filter(({ id }) => own.every((change) => change.id !== id))
  return [...others, ...own.map(({ id, name }) => ({ id, name, revision: 0 }))].toSorted((a, b) =>
    a.name.localeCompare(b.name),
  )
}

/** The text of a document. Throws a Failure with the server's code. */
export async function fetchDocument(kind: DocumentKind, id: string): Promise<string> {
  return (await fetchKept(kind, id)).text
}

/** The text of a document with its revision, the own change of it first. Throws a Failure with the server's code. */
export async function fetchKept(kind: DocumentKind, id: string): Promise<KeptDocument> {
  const waiting = await waitingFor(kind, id).catch(withoutShelf)
  if (waiting) return waiting
  const key = `${kind}/${id}`
  const known = underWay.get(key)
  if (known !== undefined) return known
  const fetching = fetchOrCopy(kind, id).finally(() => {
    if (underWay.get(key) === fetching) underWay.delete(key)
  })
  underWay.set(key, fetching)
  return fetching
}

/** What is being fetched: the desk and the copying ask for the same documents, and each comes once. */
const underWay = new Map<string, Promise<KeptDocument>>()

async function fetchOrCopy(kind: DocumentKind, id: string): Promise<KeptDocument> {
  try {
    const served = await fetchServed(kind, id)
    await copyDocument({ kind, id, name: nameIn(served.text, id), ...served }).catch(withoutShelf)
    return served
  } catch (error) {
    const copied = isAway(error) ? await copiedDocument(kind, id).catch(withoutShelf) : null
    if (!copied) throw error
    return copied
  }
}

/**
 * Keeps a document in place of the revision that was fetched; while the server is away it waits here. Throws a Failure
 * with the server's code, `MAR-STORE-004` when another change came first.
 */
export async function keepChanged(
  kind: DocumentKind,
  id: string,
  document: string,
  revision: string,
): Promise<void> {
  const change = { kind, id, name: nameIn(document, id), text: document, revision, refusal: '' }
  underWay.delete(`${kind}/${id}`)
  // What waits already is changed where it waits, and goes on from the revision that it went on from.
  if (await waitingFor(kind, id).catch(withoutShelf)) return wait(change)
  await put(change)
}

/**
 * Keeps a new document under the id, or with the first number after it that makes it free, and returns which; while the
 * server is away it waits here. Throws a Failure with the server's code when it is refused; what is kept is never
 * written over.
 */
export async function keepNewDocument(kind: DocumentKind, id: string, document: string): Promise<string> {
  const taken = new Set((await listDocuments(kind)).map((listed) => listed.id))
  let free = id
  for (let count = 2; taken.has(free); count += 1) free = `${id}-${count}`
  const change = {
    kind,
    id: free,
    name: nameIn(document, free),
    text: document,
    revision: '',
    refusal: '',
  }
  await put(change)
  return free
}

/**
 * Copies every document that is not copied as it is now, so that the desk opens on any of them when the server has stopped;
 * what a person waits for comes first.
 */
export async function copyAll(kind: DocumentKind, listed: readonly Listed[]): Promise<void> {
  await Promise.allSettled(underWay.values())
  for (const { id, revision } of listed) {
    const copied = await copiedDocument(kind, id).catch(withoutShelf)
    if (revision > 0 && copied?.revision !== `"${revision}"`) await fetchKept(kind, id).catch(() => {})
  }
}

/**
 * Takes a document out of the store and out of this browser for good. One that only waits here goes at once; for any other
 * the server must answer. Throws a Failure with the server's code.
 */
export async function removeDocument(kind: DocumentKind, id: string): Promise<void> {
  const waiting = await waitingFor(kind, id).catch(withoutShelf)
  if (waiting?.revision !== '') await removeServed(kind, id)
  await dropWaiting({ kind, id }).catch(withoutShelf)
  await dropCopy(kind, id).catch(withoutShelf)
  if (kind === 'players') await forgetAnswers()
  tellWaiting()
}

/** Puts a change into the store, and its copy here goes with it: what is changed next without the server goes on from it. */
async function put(change: WaitingChange): Promise<void> {
  const { refusal: _, ...document } = change
  const { kind, id, text, revision } = document
  await putServed(kind, id, text, revision).then(
    async (kept) => {
      await copyDocument({ ...document, revision: kept }).catch(withoutShelf)
    },
    (error: unknown) => waitWhileAway(change, error),
  )
}

async function waitWhileAway(change: WaitingChange, error: unknown): Promise<void> {
  if (!isAway(error)) throw error
  // A browser without a shelf cannot wait: then it is as it was before, and nothing is lost but the change is not kept.
  await wait(change).catch(() => Promise.reject(error))
}

async function wait(change: WaitingChange): Promise<void> {
  await keepWaiting(change)
  tellWaiting()
}

/** A browser that keeps nothing, as in a private window, works as long as the server does. */
function withoutShelf(): null {
  return null
}

/** What a document calls itself, for lists. */
function nameIn(text: string, id: string): string {
  try {
    const { name, date, marram } = JSON.parse(text) as Record<string, unknown>
    const course =
      typeof marram === 'object' && marram !== null ? (marram as Record<string, unknown>).name : null
    return [name, course, date].find((each) => typeof each === 'string' && each !== '')?.toString() ?? id
  } catch {
    return id
  }
}
