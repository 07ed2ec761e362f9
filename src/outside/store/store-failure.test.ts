import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import { storeFailure } from './store-failure.ts'

/** An error as the database driver throws it. */
function databaseError(code: string): Error {
  return Object.assign(new Error('as the database says it'), { code })
}

describe('storeFailure', () => {
  it.each([
    ['SQLITE_CORRUPT', 'MAR-STORE-001'],
    ['SQLITE_CORRUPT_INDEX', 'MAR-STORE-001'],
    ['SQLITE_NOTADB', 'MAR-STORE-001'],
    ['SQLITE_READONLY_DIRECTORY', 'MAR-STORE-002'],
    ['SQLITE_CANTOPEN', 'MAR-STORE-002'],
    ['SQLITE_BUSY_SNAPSHOT', 'MAR-STORE-006'],
    ['SQLITE_FULL', 'MAR-STORE-007'],
    ['SQLITE_IOERR_FSYNC', 'MAR-STORE-007'],
  ])('says what %s means', (code, expected) => {
    const failure = storeFailure(databaseError(code), '/somewhere/store.db')
    expect(failure).toBeInstanceOf(Failure)
    expect(failure).toMatchObject({ code: expected, where: '/somewhere/store.db' })
    expect((failure as Failure).message).not.toContain('SQLITE')
  })

  it('leaves alone what is no failure of the database', () => {
    const others = [
      new TypeError('a defect'),
      new Failure('MAR-STORE-004', 'Too late.'),
      databaseError('SQLITE_CONSTRAINT_PRIMARYKEY'),
      'a word',
    ]
    for (const other of others) expect(storeFailure(other, 'x')).toBe(other)
  })
})
