import { describe, expect, it } from 'vitest'
import { openShots } from './open-shots.ts'

const file = (text: string) => new File([text], 'range.csv')
const TABLE = 'club,carry_m,offline_m\n7i,120,3\n7i,121,-2\nputter,3,0\n7i,far,0\n'

describe('a table of shots from the disk', () => {
  it('gives its good rows and says what became of the others', async () => {
    const { found, words, faults } = await openShots(file(TABLE), '', [])
    expect(found.map(({ carryMetres }) => carryMetres)).toEqual([120, 121])
    expect(words).toBe('range.csv: 2 of 4 rows put down, 1 not read, 1 set aside as no full shots.')
    expect(faults.map(({ place }) => place)).toContain('range.csv, line 5')
  })

  it('adds nothing when all its shots stand on the sheet already, and all when only some do', async () => {
    const { found } = await openShots(file(TABLE), '', [])
    expect(await openShots(file(TABLE), '', found)).toMatchObject({
      found: [],
      words: 'All 2 shots of range.csv stand on the sheet already; none was added.',
    })
    expect((await openShots(file(TABLE), '', found.slice(0, 1))).found).toHaveLength(2)
  })

  it('asks what the columns are, and reads them as told', async () => {
    const other = file('Stick,Flight\n7i,120\n')
    await expect(openShots(other, '', [])).rejects.toMatchObject({ code: 'MAR-SHOTS-001' })
    expect((await openShots(other, 'Stick=club,Flight=carry_m', [])).found).toHaveLength(1)
  })
})
