import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { DocumentKind, Listed } from './server-documents.ts'

/** A document as it was last seen in the store, or as it was changed here. */
export interface ShelvedDocument {
  readonly kind: DocumentKind
  readonly id: string
  readonly name: string
  readonly text: string
  /** The revision of the store that it is, or that was changed; empty for a new one. */
  readonly revision: string
}

/** A change that waits for the server. */
export interface WaitingChange extends ShelvedDocument {
  /** Why the server would not have it; empty while it has not been asked. */
  readonly refusal: string
}

interface Shelves extends DBSchema {
  copies: { key: string; value: ShelvedDocument }
  waiting: { key: string; value: WaitingChange }
  lists: { key: DocumentKind; value: readonly Listed[] }
}

const SHELVES = ['copies', 'waiting', 'lists'] as const

let opened: Promise<IDBPDatabase<Shelves>> | null = null

/** The browser's own shelf of this machine: copies of what the store holds, and changes that wait for it. */
function shelves(): Promise<IDBPDatabase<Shelves>> {
  opened ??= openShelves()
  return opened
}

/** Opens the shelves whatever their version; those that are missing, because the database was damaged or an older page made it, are built beside the others. */
async function openShelves(): Promise<IDBPDatabase<Shelves>> {
  const upgrade = (database: IDBPDatabase<Shelves>): void => {
    for (const shelf of SHELVES)
      if (!database.objectStoreNames.contains(shelf)) database.createObjectStore(shelf)
  }
  const found = await openDB<Shelves>('marram', undefined, { upgrade })
  if (SHELVES.every((shelf) => found.objectStoreNames.contains(shelf))) return found
  found.close()
  return openDB<Shelves>('marram', found.version + 1, { upgrade })
}

/** Whether this browser has a shelf at all; one that has none needs its server. */
export async function hasShelf(): Promise<boolean> {
  return shelves().then(
    () => true,
    () => false,
  )
}

const keyOf = ({ kind, id }: Pick<ShelvedDocument, 'kind' | 'id'>): string => `${kind}/${id}`

/** Copies a document to have it when the server is away. */
export async function copyDocument(document: ShelvedDocument): Promise<void> {
  await (await shelves()).put('copies', document, keyOf(document))
}

/** The copy of a document; `null` when there is none. */
export async function copiedDocument(kind: DocumentKind, id: string): Promise<ShelvedDocument | null> {
  return (await (await shelves()).get('copies', keyOf({ kind, id }))) ?? null
}

/** Lets go of the copy of a document. */
export async function dropCopy(kind: DocumentKind, id: string): Promise<void> {
  await (await shelves()).delete('copies', keyOf({ kind, id }))
}

/**
 * Notes what the store lists of a kind, and lets go of copies of what it no longer has: what is deleted there is gone here.
 * Resolves to whether any was.
 */
export async function copyList(kind: DocumentKind, listed: readonly Listed[]): Promise<boolean> {
  const database = await shelves()
  await database.put('lists', listed, kind)
  const kept = new Set(listed.map(({ id }) => keyOf({ kind, id })))
  const gone = (await database.getAllKeys('copies')).filter(
    (key) => key.startsWith(`${kind}/`) && !kept.has(key),
  )
  for (const key of gone) await database.delete('copies', key)
  return gone.length > 0
}

/** The list as it was last seen; `null` when it never was. */
export async function copiedList(kind: DocumentKind): Promise<readonly Listed[] | null> {
  return (await (await shelves()).get('lists', kind)) ?? null
}

/** Keeps a change until the server has it; a later change of the same document takes the place of an earlier one. */
export async function keepWaiting(change: WaitingChange): Promise<void> {
  await (await shelves()).put('waiting', change, keyOf(change))
}

/** The change of one document that waits; `null` when there is none. */
export async function waitingFor(kind: DocumentKind, id: string): Promise<WaitingChange | null> {
  return (await (await shelves()).get('waiting', keyOf({ kind, id }))) ?? null
}

/** Every change that waits. */
export async function waitingChanges(): Promise<readonly WaitingChange[]> {
  return (await shelves()).getAll('waiting')
}

/** Lets go of a change: the server has it, or a person does not want it. */
export async function dropWaiting(change: Pick<ShelvedDocument, 'kind' | 'id'>): Promise<void> {
  await (await shelves()).delete('waiting', keyOf(change))
}
