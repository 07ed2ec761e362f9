import { existsSync, mkdirSync, statSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import { Kysely, SqliteDialect } from 'kysely'
import Database from 'libsql'
import { Failure } from '#faults/failure.ts'
import { immediateTransactions } from './immediate-transactions.ts'
import { BUSY_TIMEOUT_MILLISECONDS } from './settings.ts'
import type { Shelf, Store } from './store.ts'
import { storeFailure } from './store-failure.ts'
import { checkTables, migrateTables, storeOverDatabase } from './store-over-database.ts'
import type { Tables } from './tables.ts'

/**
 * Opens the store in one SQLite file, makes it (and its folder) if there is none, and brings its tables up to date.
 * A change is acknowledged only after the disk has it (write-ahead log, full synchronisation); what is removed is
 * also wiped from the file. Throws Failure MAR-STORE-001 (damaged), -002 (cannot be written), -003 (written by a
 * newer Marram), -005 (a database of something else), -006 (held by another program), -007 (disk full or failing);
 * a file that was there is then left as it was.
 */
export async function openStore(path: string): Promise<Store> {
  const file = resolve(path)
  prepareFolder(file)
  refuseLostFile(file)
  const connection = connect(file)
  const database = new Kysely<Tables>({
    dialect: new SqliteDialect({ database: immediateTransactions(connection) }),
  })
  try {
    checkPages(connection, file)
    await checkTables(database, file)
    connection.exec('pragma journal_mode = WAL; pragma synchronous = FULL')
    // A pupil's page that was removed must not stay readable in the free pages of the file.
    connection.exec('pragma secure_delete = ON')
    // One transaction around all steps: of two programs that open a new store at once, the second waits.
    connection.exec('begin immediate')
    await migrateTables(database)
    connection.exec('commit')
  } catch (error) {
    connection.close()
    throw storeFailure(error, file)
  }
  const store = storeOverDatabase(database)
  const emptyLog = (): void => emptyLogOf(connection)
  let isOpen = true
  return {
    courses: guardedShelf(store.courses, file, emptyLog),
    players: guardedShelf(store.players, file, emptyLog),
    days: guardedShelf(store.days, file, emptyLog),
    plans: guardedShelf(store.plans, file, emptyLog),
    rounds: guardedShelf(store.rounds, file, emptyLog),
    notes: guardedShelf(store.notes, file, emptyLog),
    cards: guardedShelf(store.cards, file, emptyLog),
    async close() {
      if (!isOpen) return
      isOpen = false
      // So that the file alone is the whole store, fit to be copied: closing by itself leaves the log beside it.
      emptyLog()
      await store.close()
    },
  }
}

function prepareFolder(file: string): void {
  try {
    // Players' pages are nobody else's business: a folder of our making is the owner's alone.
    mkdirSync(dirname(file), { recursive: true, mode: 0o700 })
  } catch {
    throw new Failure('MAR-STORE-002', 'The folder of the store cannot be made.', dirname(file))
  }
  if (existsSync(file) && !statSync(file).isFile())
    throw new Failure('MAR-STORE-002', 'The store is to be a file, but a folder has this name.', file)
}

/** SQLite throws away the log of a file that is gone or empty, and with it the last changes: refuse before it can. */
function refuseLostFile(file: string): void {
  const isEmpty = !existsSync(file) || statSync(file).size === 0
  const log = `${file}-wal`
  if (isEmpty && existsSync(log) && statSync(log).size > 0)
    throw new Failure(
      'MAR-STORE-001',
      'The store is gone or empty, but its log of last changes is still there. Put the file back beside its log; nothing was changed.',
      file,
    )
}

function connect(file: string): Database.Database {
  try {
    return new Database(file, { timeout: BUSY_TIMEOUT_MILLISECONDS })
  } catch {
    throw new Failure('MAR-STORE-002', 'The file of the store cannot be opened for writing.', file)
  }
}

function checkPages(connection: Database.Database, file: string): void {
  const [row] = connection.pragma('quick_check(1)') as { quick_check: string }[]
  if (row?.quick_check !== 'ok')
    throw new Failure(
      'MAR-STORE-001',
      `The store is damaged (${row?.quick_check ?? 'no answer'}). Put a copy of an earlier day in its place; nothing was changed.`,
      file,
    )
}

/** Moves the log into the file. While another program reads or writes it may not be possible; a later call does it. */
function emptyLogOf(connection: Database.Database): void {
  try {
    connection.exec('pragma wal_checkpoint(TRUNCATE)')
  } catch (error) {
    if (storeFailure(error, '') === error) throw error
  }
}

/** Turns what the database throws into failures with a code, and leaves nothing removed in the log. */
function guardedShelf(shelf: Shelf, file: string, emptyLog: () => void): Shelf {
  async function guarded<Answer>(work: () => Promise<Answer>): Promise<Answer> {
    try {
      return await work()
    } catch (error) {
      throw storeFailure(error, file)
    }
  }
  return {
    list: () => guarded(() => shelf.list()),
    get: (id) => guarded(() => shelf.get(id)),
    put: (id, name, document, condition) => guarded(() => shelf.put(id, name, document, condition)),
    remove: (id, condition) =>
      guarded(async () => {
        const wasThere = await shelf.remove(id, condition)
        if (wasThere) emptyLog()
        return wasThere
      }),
  }
}
