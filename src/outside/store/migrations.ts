import type { Kysely } from 'kysely'
import type { Migration } from 'kysely/migration'

/**
 * Every step from an empty database to the tables of today, in order of their names. A step that was released is
 * never edited: a change is a new step. SQL only as SQLite and PostgreSQL both read it.
 */
export const MIGRATIONS: Readonly<Record<string, Migration>> = {
  '0001-documents': {
    async up(database: Kysely<unknown>): Promise<void> {
      for (const table of ['courses', 'players', 'days', 'plans']) await createShelf(database, table)
    },
  },
  '0002-rounds': {
    up: (database: Kysely<unknown>) => createShelf(database, 'rounds'),
  },
  '0003-notes': {
    up: (database: Kysely<unknown>) => createShelf(database, 'notes'),
  },
  '0004-cards': {
    up: (database: Kysely<unknown>) => createShelf(database, 'cards'),
  },
}

async function createShelf(database: Kysely<unknown>, table: string): Promise<void> {
  await database.schema
    .createTable(table)
    .addColumn('id', 'text', (column) => column.primaryKey().notNull())
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('revision', 'integer', (column) => column.notNull())
    .addColumn('document', 'text', (column) => column.notNull())
    .addColumn('saved_at', 'text', (column) => column.notNull())
    .execute()
}
