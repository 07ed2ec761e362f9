import type { Kysely } from 'kysely'
import { Failure } from '#faults/failure.ts'
import type { RevisionCondition, Shelf, StoredEntry } from './store.ts'
import type { ShelfTable, Tables } from './tables.ts'

/**
 * The shelf kept in one table. Every change is one statement with its condition inside, so that two writers at once
 * cannot both believe they were first, on any database; and it has a transaction of its own, so that a statement
 * that failed half-way is taken back and never holds up the next one.
 */
export function shelfOverTable(database: Kysely<Tables>, table: ShelfTable): Shelf {
  // All tables have the same columns; the builder's types follow one of them.
  const name = table as 'courses'

  async function conflict(database: Kysely<Tables>, id: string, expected: number): Promise<Failure> {
    const now = await database.selectFrom(name).select('revision').where('id', '=', id).executeTakeFirst()
    const kept = now === undefined ? 'there is none now' : `revision ${now.revision} is kept now`
    return new Failure(
      'MAR-STORE-004',
      `The change was prepared for revision ${expected}, but ${kept}. Nothing was changed.`,
      `${table}/${id}`,
    )
  }

  async function insertOnly(database: Kysely<Tables>, row: Row): Promise<number | null> {
    const kept = await database
      .insertInto(name)
      .values({ ...row, revision: 1 })
      .onConflict((on) => on.column('id').doNothing())
      .returning('revision')
      .executeTakeFirst()
    return kept?.revision ?? null
  }

  async function updateOnly(database: Kysely<Tables>, row: Row, expected: number): Promise<number | null> {
    const kept = await database
      .updateTable(name)
      .set({ name: row.name, document: row.document, saved_at: row.saved_at, revision: expected + 1 })
      .where('id', '=', row.id)
      .where('revision', '=', expected)
      .returning('revision')
      .executeTakeFirst()
    return kept?.revision ?? null
  }

  async function insertOrUpdate(database: Kysely<Tables>, row: Row): Promise<number> {
    const kept = await database
      .insertInto(name)
      .values({ ...row, revision: 1 })
      .onConflict((on) =>
        on.column('id').doUpdateSet((change) => ({
          name: row.name,
          document: row.document,
          saved_at: row.saved_at,
          revision: change(`${name}.revision`, '+', 1),
        })),
      )
      .returning('revision')
      .executeTakeFirstOrThrow()
    return kept.revision
  }

  return {
    async list(): Promise<StoredEntry[]> {
      const rows = await database.selectFrom(name).select(['id', 'name', 'revision', 'saved_at']).execute()
      // Sorted here: the order of letters is a setting of the database and differs between kinds.
      return rows
        .map((row) => ({ id: row.id, name: row.name, revision: row.revision, savedAt: row.saved_at }))
        .sort((one, other) => compareText(one.name, other.name) || compareText(one.id, other.id))
    },

    async get(id) {
      const row = await database.selectFrom(name).selectAll().where('id', '=', id).executeTakeFirst()
      if (row === undefined) return null
      return {
        id: row.id,
        name: row.name,
        revision: row.revision,
        savedAt: row.saved_at,
        document: row.document,
      }
    },

    async put(id, title, document, condition: RevisionCondition = {}) {
      const row: Row = { id, name: title, document, saved_at: new Date().toISOString() }
      const expected = condition.expectedRevision
      return database.transaction().execute(async (change) => {
        if (expected === undefined) return insertOrUpdate(change, row)
        const revision =
          expected === 0 ? await insertOnly(change, row) : await updateOnly(change, row, expected)
        if (revision === null) throw await conflict(change, id, expected)
        return revision
      })
    },

    async remove(id, condition: RevisionCondition = {}) {
      const expected = condition.expectedRevision
      return database.transaction().execute(async (change) => {
        let removal = change.deleteFrom(name).where('id', '=', id)
        if (expected !== undefined) removal = removal.where('revision', '=', expected)
        const gone = await removal.returning('id').executeTakeFirst()
        if (gone === undefined && expected !== undefined) throw await conflict(change, id, expected)
        return gone !== undefined
      })
    },
  }
}

/** What a change writes, without the revision. */
interface Row {
  readonly id: string
  readonly name: string
  readonly document: string
  readonly saved_at: string
}

/** By code unit, the same everywhere. */
function compareText(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0
}
