/** Where courses, players, days, plans, rounds, notes and what cards were made by are kept. A change is on disk when its promise is fulfilled. */
export interface Store {
  readonly courses: Shelf
  readonly players: Shelf
  readonly days: Shelf
  readonly plans: Shelf
  readonly rounds: Shelf
  readonly notes: Shelf
  readonly cards: Shelf
  /** Lets go of the files; nothing of the store may be used afterwards. Closing twice is harmless. */
  close(): Promise<void>
}

/** The documents of one kind, each under its id. */
export interface Shelf {
  /** Every document without its text, sorted by name, then id. */
  list(): Promise<StoredEntry[]>
  /** The document, or `null` when there is none under this id. */
  get(id: string): Promise<StoredDocument | null>
  /**
   * Keeps a document (JSON text) and returns its new revision: 1 for a new one, else one more than before.
   * With `expectedRevision` it does so only if the revision kept now is that one (0 = there is none yet), else it
   * throws Failure MAR-STORE-004 and changes nothing.
   */
  put(id: string, name: string, document: string, condition?: RevisionCondition): Promise<number>
  /** Removes the document for good and says whether there was one. Throws Failure MAR-STORE-004 as {@link put} does. */
  remove(id: string, condition?: RevisionCondition): Promise<boolean>
}

/** Refuses a change that was prepared against another revision than the one kept now. */
export interface RevisionCondition {
  readonly expectedRevision?: number
}

/** A kept document without its text. */
export interface StoredEntry {
  readonly id: string
  readonly name: string
  /** Counts the changes of this id, from 1. */
  readonly revision: number
  /** Time of the last change, ISO 8601, UTC. */
  readonly savedAt: string
}

/** A kept document. */
interface StoredDocument extends StoredEntry {
  /** JSON text, letter for letter as it was put. */
  readonly document: string
}
