import { describe, expect, it } from 'vitest'
import { readShotTables } from './shot-table.ts'

// Sixty kinds of damage, each on a row between two good ones: no good row is lost, and each damaged row is a shot with
// what could be saved, or is named with its line and a reason.

const HEADER = 'date,club,lie,carry_m,total_m,offline_m,planned,strike'
const good = (index: number): string =>
  `2026-05-02,7-iron,fairway,${100 + index}.${index % 10},,${(index % 9) - 4},,good`

/** Rows that are no shot, by the code that they must have. */
const LOST: readonly (readonly [row: string, code: string])[] = [
  ['2026-05-02,,fairway,120,,1,,good', 'MAR-SHOTS-006'],
  ['2026-05-02,chipper,fairway,120,,1,,good', 'MAR-SHOTS-006'],
  ['2026-05-02,7,fairway,120,,1,,good', 'MAR-SHOTS-006'],
  ['2026-05-02,11-iron,fairway,120,,1,,good', 'MAR-SHOTS-006'],
  ['2026-05-02,🏌️,fairway,120,,1,,good', 'MAR-SHOTS-006'],
  ['120,7-iron', 'MAR-SHOTS-009'],
  ['2026-05-02,7-iron,fairway,,,1,,good', 'MAR-SHOTS-009'],
  ['2026-05-02,7-iron,fairway,-,n/a,1,,good', 'MAR-SHOTS-009'],
  ['2026-05-02,7-iron,fairway,???,,1,,good', 'MAR-SHOTS-009'],
  ['2026-05-02,7-iron', 'MAR-SHOTS-009'],
  ['7-iron', 'MAR-SHOTS-006'],
  ['2026-05-02,7-iron,fairway,far,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,12O,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,120..5,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,1.2e2,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,1 20,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,120-125,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,~120,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,120 furlongs,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,120 L,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,120°,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,Infinity,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,#REF!,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,=A1*2,,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,120,long,1,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,120,,sideways,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,120,,L 5 R,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,120,,-5 L,,good', 'MAR-SHOTS-007'],
  ['2026-05-02,7-iron,fairway,-120,,1,,good', 'MAR-SHOTS-008'],
  ['2026-05-02,7-iron,fairway,−120,,1,,good', 'MAR-SHOTS-008'],
  ['2026-05-02,7-iron,fairway,600,,1,,good', 'MAR-SHOTS-008'],
  ['2026-05-02,7-iron,fairway,1205,,1,,good', 'MAR-SHOTS-008'],
  ['2026-05-02,7-iron,fairway,,900,1,,good', 'MAR-SHOTS-008'],
  ['2026-05-02,7-iron,fairway,120,60,1,,good', 'MAR-SHOTS-008'],
  ['2026-05-02,7-iron,fairway,1,234,1,,good', 'MAR-SHOTS-008'],
  ['2026-05-02,7-iron,fairway,120,,1000,,good', 'MAR-SHOTS-008'],
  ['2026-05-02,7-iron,fairway,120,,85°,,good', 'MAR-SHOTS-008'],
  ['2026-05-02,7-iron,fairway,120,,75°,,good', 'MAR-SHOTS-008'],
  ['2026-05-02,7-iron,fairway,0,,0,,good', 'MAR-SHOTS-008'],
  ['2026-05-02,7-iron,fairway,120,5,125,,1,,good', 'MAR-SHOTS-010'],
  ['2026-05-02,7-iron,"fairway,120,,1,,good', 'MAR-SHOTS-010'],
  ['"2026-05-02,7-iron,fairway,120,,1,,good', 'MAR-SHOTS-010'],
  ['2026-05-02,7-iron,"fair"way,120,,1,,good', 'MAR-SHOTS-010'],
  ['2026-05-02,7-iron,fairway,120,,1,,good,,,,again', 'MAR-SHOTS-010'],
  ['2026-05-02,putter,green,,6,0,,good', 'MAR-SHOTS-012'],
  ['2026-05-02,sand wedge,fairway,40,,1,half,good', 'MAR-SHOTS-012'],
  ['Average,,,118,,2,,', 'MAR-SHOTS-012'],
  ['2026-05-02;7-iron;fairway;120;;1;;good', 'MAR-SHOTS-006'],
  ['2026-05-02\t7-iron\tfairway\t120', 'MAR-SHOTS-006'],
  [HEADER, 'MAR-SHOTS-006'],
]

/** Rows that are a shot all the same, by the carry that they must have and the code that is told, if any. */
const SAVED: readonly (readonly [row: string, carry: number, code: string | null])[] = [
  ['2026-13-45,7-iron,fairway,120,,1,,good', 120, 'MAR-SHOTS-011'],
  ['yesterday,7-iron,fairway,120,,1,,good', 120, 'MAR-SHOTS-011'],
  ['2026-05-02,7-iron,moon,120,,1,,good', 120, 'MAR-SHOTS-011'],
  ['2026-05-02,7-iron,fairway,120,,1,,so-so', 120, 'MAR-SHOTS-011'],
  ['2026-05-02,7-iron,fairway,120 yd,,1,,good', 109.728, 'MAR-SHOTS-015'],
  ['2026-05-02,7-iron,fairway,120,,3 deg,,good', 120, 'MAR-SHOTS-015'],
  ['2026-05-02,7-iron,fairway,"120,5",,1,,good', 120.5, null],
  ['  2026-05-02 , 7 IRON ,Fairway, 120\u00a0m ,, R 1 ,,GOOD  ', 120, null],
  ['"2026-05-02","7-iron","fairway","120",,"1",,"good"', 120, null],
  ['2026-05-02,7-iron,fairway,120,,1', 120, null],
  ['2026-05-02,7-iron,fairway,120,,1,,good,,', 120, null],
  ['2026-05-02,7-iron,fairway,+120.0,,−1,,good', 120, null],
  ['2026-05-02,7-iron,fairway,120,,1,"a note over\ntwo lines",good', 120, null],
]

describe('a table with sixty kinds of damage', () => {
  it('counts them', () => expect(LOST.length + SAVED.length).toBeGreaterThanOrEqual(60))

  it('loses no good row, and names each damaged one by its line', () => {
    const lines = [HEADER, good(0)]
    const lineOf: number[] = []
    for (const [index, [row]] of [...LOST, ...SAVED].entries()) {
      lineOf.push(lines.join('\n').split('\n').length + 1)
      lines.push(row, good(index + 1))
    }
    const reading = readShotTables([{ text: lines.join('\n'), name: 'season.csv' }], null)
    expect(reading.rows).toBe(2 * (LOST.length + SAVED.length) + 1)
    expect(reading.shots).toHaveLength(2 * SAVED.length + LOST.length + 1)
    for (const [index, [row, code]] of LOST.entries()) {
      const place = `season.csv, line ${lineOf[index]}`
      const faults = reading.faults.filter((fault) => fault.place === place)
      expect(
        faults.map((fault) => fault.code),
        row,
      ).toEqual([code])
      expect(faults[0]?.severity, row).toBe(code === 'MAR-SHOTS-012' ? 'note' : 'error')
      expect(faults[0]?.message).toMatch(/^The row was (?:not read|set aside): .{6,}\.$/)
    }
    expect(reading.faults.filter(({ severity }) => severity === 'error')).toHaveLength(reading.unread)
    expect(reading.rows).toBe(reading.shots.length + reading.unread + reading.setAside + reading.repeated)
  })

  it.each(SAVED)('keeps %s', (row, carry, code) => {
    const { shots, faults } = readShotTables(
      [{ text: `${HEADER}\n${good(1)}\n${row}\n${good(2)}`, name: 'a' }],
      null,
    )
    expect(shots.map(({ carryMetres }) => carryMetres)).toEqual([101.1, expect.closeTo(carry, 9), 102.2])
    expect(faults.map((fault) => fault.code)).toEqual(code === null ? [] : [code])
  })
})
