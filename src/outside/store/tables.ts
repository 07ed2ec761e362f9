/** One table a kind of document, all of the same shape. */
export const SHELF_TABLES = ['courses', 'players', 'days', 'plans', 'rounds', 'notes', 'cards'] as const

/** The name of one of the tables. */
export type ShelfTable = (typeof SHELF_TABLES)[number]

/** A row of each of the tables, in SQL that SQLite and PostgreSQL read alike. */
interface DocumentRow {
  id: string
  name: string
  revision: number
  /** JSON as text: a document comes back letter for letter, which a parsed column type does not promise. */
  document: string
  /** ISO 8601, UTC. */
  saved_at: string
}

/** The tables of the store. */
export type Tables = Record<ShelfTable, DocumentRow>
