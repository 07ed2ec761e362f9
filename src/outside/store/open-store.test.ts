import { execFile } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import Database from 'libsql'
import { afterAll, beforeEach, describe, expect, it } from 'vitest'
import { storeSuite } from '../../../test/suites/store-suite.ts'
import { openStore } from './open-store.ts'

const root = mkdtempSync(join(tmpdir(), 'marram-store-'))
afterAll(() => rmSync(root, { recursive: true, force: true }))

let count = 0
/** A path in a folder that does not exist yet. */
function freshPath(): string {
  count += 1
  return join(root, `case-${count}`, 'store.db')
}

storeSuite('a store in a SQLite file', () => openStore(freshPath()))

describe('openStore', () => {
  let path: string
  beforeEach(() => {
    path = freshPath()
    mkdirSync(join(path, '..'))
  })

  it('finds everything again after closing', async () => {
    const first = await openStore(path)
    await first.courses.put('links', 'Links', '{"a":1}')
    await first.courses.put('links', 'Links', '{"a":2}')
    await first.close()
    await first.close()
    const second = await openStore(path)
    expect(await second.courses.get('links')).toMatchObject({ revision: 2, document: '{"a":2}' })
    await second.close()
  })

  it('brings a store of before there were rounds, notes and cards up to date, with all it held', async () => {
    const first = await openStore(path)
    await first.courses.put('links', 'Links', '{"a":1}')
    await first.close()
    const connection = new Database(path)
    connection.exec(
      `drop table rounds; drop table notes; drop table cards; delete from marram_migration where name > '0001-documents'`,
    )
    connection.close()
    const store = await openStore(path)
    expect(await store.rounds.put('may', 'May', '{}')).toBe(1)
    expect(await store.notes.put('practice', 'Notes', '{}')).toBe(1)
    expect(await store.cards.put('card-may', 'A card', '{}')).toBe(1)
    expect(await store.courses.get('links')).toMatchObject({ document: '{"a":1}' })
    await store.close()
  })

  it('shows the change of one program to another that has it open', async () => {
    const one = await openStore(path)
    const other = await openStore(path)
    await one.days.put('may', 'May', '1')
    expect(await other.days.put('may', 'May', '2')).toBe(2)
    expect(await one.days.get('may')).toMatchObject({ document: '2' })
    await one.close()
    await other.close()
  })

  it('writes ahead, synchronises fully and wipes what is removed', async () => {
    const store = await openStore(path)
    await store.players.put('anna', 'Anna Pupilsdottir', '{"name":"Anna Pupilsdottir"}')
    await store.players.remove('anna')
    const files = [path, `${path}-wal`].map((file) => readFileSync(file, 'latin1')).join('')
    expect(files).not.toContain('Pupilsdottir')
    await store.close()
    expect(readFileSync(path, 'latin1')).not.toContain('Pupilsdottir')
    expect(statSync(`${path}-wal`, { throwIfNoEntry: false })?.size ?? 0).toBe(0)
    const connection = new Database(path)
    expect(connection.pragma('journal_mode')).toEqual([{ journal_mode: 'wal' }])
    expect(connection.pragma('integrity_check')).toEqual([{ integrity_check: 'ok' }])
    connection.close()
  })

  it('refuses a file that is no database and leaves it as it was', async () => {
    const text = 'date,club,lie\n'.repeat(500)
    writeFileSync(path, text)
    await expect(openStore(path)).rejects.toMatchObject({ code: 'MAR-STORE-001', where: path })
    expect(readFileSync(path, 'utf8')).toBe(text)
  })

  it('refuses a store whose end was cut off and leaves it as it was', async () => {
    const store = await openStore(path)
    for (let index = 0; index < 50; index += 1)
      await store.courses.put(`c${index}`, 'C', JSON.stringify('x'.repeat(5000)))
    await store.close()
    truncateSync(path, Math.floor(statSync(path).size / 8192) * 4096)
    const before = readFileSync(path)
    await expect(openStore(path)).rejects.toMatchObject({ code: 'MAR-STORE-001' })
    expect(readFileSync(path).equals(before)).toBe(true)
  })

  it('refuses a store with a damaged page in the middle', async () => {
    const store = await openStore(path)
    for (let index = 0; index < 50; index += 1)
      await store.courses.put(`c${index}`, 'C', `"${'x'.repeat(1000)}"`)
    await store.close()
    const bytes = readFileSync(path)
    // The tables' own pages come after the description of the tables: spoil everything from there on.
    bytes.fill(0xa5, 4096 * 3)
    writeFileSync(path, bytes)
    await expect(openStore(path)).rejects.toMatchObject({ code: 'MAR-STORE-001' })
    expect(readFileSync(path).equals(bytes)).toBe(true)
  })

  it('refuses to start empty when only the log of last changes is left', async () => {
    writeFileSync(`${path}-wal`, 'frames')
    await expect(openStore(path)).rejects.toMatchObject({ code: 'MAR-STORE-001' })
    expect(readFileSync(`${path}-wal`, 'utf8')).toBe('frames')
  })

  it('refuses a store written by a newer Marram', async () => {
    const store = await openStore(path)
    await store.courses.put('links', 'Links', '{}')
    await store.close()
    const connection = new Database(path)
    connection.exec("insert into marram_migration values ('9999-tomorrow', '2030-01-01T00:00:00Z')")
    connection.close()
    const before = readFileSync(path)
    await expect(openStore(path)).rejects.toMatchObject({ code: 'MAR-STORE-003' })
    expect(readFileSync(path).equals(before)).toBe(true)
  })

  it('refuses a database of something else', async () => {
    const connection = new Database(path)
    connection.exec('create table accounts (id integer)')
    connection.close()
    const before = readFileSync(path)
    await expect(openStore(path)).rejects.toMatchObject({ code: 'MAR-STORE-005' })
    expect(readFileSync(path).equals(before)).toBe(true)
  })

  it('refuses tables of our names that no step of ours made', async () => {
    const connection = new Database(path)
    connection.exec('create table courses (title text)')
    connection.close()
    await expect(openStore(path)).rejects.toMatchObject({ code: 'MAR-STORE-005' })
  })

  it('refuses a place where no file can be made', async () => {
    writeFileSync(path, '')
    await expect(openStore(join(path, 'deeper', 'store.db'))).rejects.toMatchObject({ code: 'MAR-STORE-002' })
    mkdirSync(`${path}.folder`)
    await expect(openStore(`${path}.folder`)).rejects.toMatchObject({ code: 'MAR-STORE-002' })
  })

  it('says so when another program writes too long, and keeps what comes after', async () => {
    const store = await openStore(path)
    const other = new Database(path)
    other.exec('begin immediate')
    other.exec("insert into days values ('june', 'June', 1, '{}', '2026-06-01T00:00:00Z')")
    await expect(store.days.put('may', 'May', '{}')).rejects.toMatchObject({ code: 'MAR-STORE-006' })
    other.exec('commit')
    expect(await store.days.put('may', 'May', '{}')).toBe(1)
    // What was acknowledged is seen from outside at once, and the other program is not locked out.
    expect(other.prepare('select id from days order by id').all()).toEqual([{ id: 'june' }, { id: 'may' }])
    other.exec("delete from days where id = 'june'")
    other.close()
    await store.close()
  })

  it('lets several programs open a new store at the same moment', async () => {
    const script = join(root, 'open.mts')
    const room = new URL('.', import.meta.url).href
    writeFileSync(
      script,
      `import { openStore } from ${JSON.stringify(`${room}open-store.ts`)}
       const store = await openStore(${JSON.stringify(path)})
       for (let index = 0; index < 20; index += 1) await store.courses.put('links', 'Links', '{}')
       await store.close()`,
    )
    const programs = Array.from({ length: 3 }, () =>
      promisify(execFile)(process.execPath, ['--import', 'tsx', script]),
    )
    await Promise.all(programs)
    const store = await openStore(path)
    expect(await store.courses.get('links')).toMatchObject({ revision: 60 })
    await store.close()
  })
})
