import type { SqliteDatabase, SqliteStatement } from 'kysely'
import type Database from 'libsql'

/**
 * The connection as the query builder sees it, with every transaction taking the write lock at its start.
 *
 * This is needed for keeping promises, not for speed: a prepared statement that meets another program's lock stays
 * unfinished in this driver, and until it is garbage-collected SQLite reports later changes as done without
 * committing them. `exec` finishes its statements, so waiting for the lock happens there and nowhere else.
 */
export function immediateTransactions(connection: Database.Database): SqliteDatabase {
  return {
    prepare(sql) {
      const boundary = BOUNDARIES[sql]
      if (boundary !== undefined) return executed(connection, boundary)
      return connection.prepare(sql) as unknown as SqliteStatement
    },
    close() {
      connection.close()
    },
  }
}

/** What the query builder says at the ends of a transaction, and what SQLite is told. */
const BOUNDARIES: Readonly<Record<string, string>> = {
  begin: 'begin immediate',
  commit: 'commit',
  rollback: 'rollback',
}

function executed(connection: Database.Database, sql: string): SqliteStatement {
  return {
    reader: false,
    all: () => [],
    run() {
      connection.exec(sql)
      return { changes: 0, lastInsertRowid: 0 }
    },
    iterate: () => [].values(),
  }
}
