import { describe, expect, it } from 'vitest'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import { readShotTables } from '../shot-table.ts'
import { farDates } from './far-dates.ts'

const dated = (dates: readonly (string | null)[]): ShotRecord[] =>
  dates.map((date) => ({
    date,
    club: '7-iron',
    lie: null,
    carryMetres: 120,
    totalMetres: null,
    offlineMetres: null,
    strike: null,
  }))
const SEASON = Array.from({ length: 40 }, (_, day) => `2026-05-${String(1 + (day % 28)).padStart(2, '0')}`)

describe('farDates', () => {
  it('finds a year that was mistyped, ahead or long ago', () => {
    expect(farDates(dated([...SEASON, '2062-05-01']))).toEqual([
      { places: [40], years: expect.closeTo(36, 0), isAfter: true },
    ])
    expect(farDates(dated([...SEASON.slice(0, 6), '2062-05-01']))).toHaveLength(1)
    expect(farDates(dated(['1926-05-01', null, ...SEASON]))).toEqual([
      { places: [0], years: expect.closeTo(100, 0), isAfter: false },
    ])
  })

  it('leaves seasons alone, an old one too, and a player who comes back', () => {
    const old = SEASON.map((date) => date.replace('2026', '2019'))
    expect(farDates(dated([...old.slice(0, 2), ...SEASON]))).toEqual([])
    expect(farDates(dated([...old, ...SEASON.slice(0, 5)]))).toEqual([])
    expect(farDates(dated(['2026-05-01', '2031-05-01']))).toEqual([])
    expect(farDates([])).toEqual([])
  })

  it('keeps such a shot without its date, and says so', () => {
    const rows = [...SEASON.map((date, at) => `${date},7i,${110 + at}`), '2062-05-01,7i,109']
    const { shots, faults } = readShotTables(
      [{ text: ['date,club,carry_m', ...rows].join('\n'), name: 'season.csv' }],
      null,
    )
    expect(shots).toHaveLength(41)
    expect(shots.at(-1)?.date).toBeNull()
    expect(shots[0]?.date).toBe('2026-05-01')
    expect(faults).toEqual([
      expect.objectContaining({ severity: 'warning', code: 'MAR-SHOTS-020', place: 'season.csv, line 42' }),
    ])
    expect(faults[0]?.message).toContain('2062-05-01')
  })
})
