import { type Kysely, sql } from 'kysely'
import { Migrator } from 'kysely/migration'
import { Failure } from '#faults/failure.ts'
import { MIGRATIONS } from './migrations.ts'
import { shelfOverTable } from './shelf-over-table.ts'
import type { Store } from './store.ts'
import { SHELF_TABLES, type Tables } from './tables.ts'

/** The store in any database that has passed {@link checkTables} and {@link migrateTables}. */
export function storeOverDatabase(database: Kysely<Tables>): Store {
  return {
    courses: shelfOverTable(database, 'courses'),
    players: shelfOverTable(database, 'players'),
    days: shelfOverTable(database, 'days'),
    plans: shelfOverTable(database, 'plans'),
    rounds: shelfOverTable(database, 'rounds'),
    notes: shelfOverTable(database, 'notes'),
    cards: shelfOverTable(database, 'cards'),
    close: () => database.destroy(),
  }
}

/**
 * Refuses a database that is not ours to change, before anything is written to it: Failure MAR-STORE-003 when a
 * newer Marram wrote it, MAR-STORE-005 when it holds tables of something else. An empty one passes.
 */
export async function checkTables(database: Kysely<Tables>, where: string): Promise<void> {
  const tables = await database.introspection.getTables({ withInternalKyselyTables: true })
  const names = tables.map((table) => table.name)
  const isTracked = names.includes(MIGRATION_TABLE)
  if (isTracked) {
    const { rows } = await sql<{ name: string }>`select name from ${sql.table(MIGRATION_TABLE)}`.execute(
      database,
    )
    const unknown = rows.map((row) => row.name).filter((name) => !Object.hasOwn(MIGRATIONS, name))
    if (unknown.length > 0)
      throw new Failure(
        'MAR-STORE-003',
        `The store was written by a newer Marram (it holds "${unknown.join('", "')}"). Use that version; nothing was changed.`,
        where,
      )
  }
  const ours: readonly string[] = [...SHELF_TABLES, MIGRATION_TABLE, MIGRATION_LOCK_TABLE]
  const foreign = names.filter((name) => !ours.includes(name))
  if (foreign.length > 0 || (!isTracked && names.length > 0))
    throw new Failure(
      'MAR-STORE-005',
      `This database holds something else than a Marram store (table "${foreign[0] ?? names[0]}"). Choose another file; nothing was changed.`,
      where,
    )
}

/** Brings the tables up to today's form. Called inside a transaction, so that all steps are done or none. */
export async function migrateTables(database: Kysely<Tables>): Promise<void> {
  const migrator = new Migrator({
    db: database,
    provider: { getMigrations: async () => ({ ...MIGRATIONS }) },
    migrationTableName: MIGRATION_TABLE,
    migrationLockTableName: MIGRATION_LOCK_TABLE,
    disableTransactions: true,
  })
  const { error } = await migrator.migrateToLatest()
  if (error !== undefined) throw error
}

const MIGRATION_TABLE = 'marram_migration'
const MIGRATION_LOCK_TABLE = 'marram_migration_lock'
