import { describe, expect, it } from 'vitest'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import { encodeShots } from './encode-shots.ts'
import { readShotTables } from './shot-table.ts'

const SHOTS: readonly ShotRecord[] = [
  {
    date: '2026-05-02',
    club: '7-iron',
    lie: 'fairway',
    carryMetres: 118.4 * 0.9144,
    totalMetres: null,
    offlineMetres: -6.1 * 0.9144,
    strike: null,
  },
  {
    date: null,
    club: '52-wedge',
    lie: null,
    carryMetres: 80.3 * 0.9144,
    totalMetres: 84 * 0.9144,
    offlineMetres: null,
    strike: 'mishit',
  },
  {
    date: '2026-05-03',
    club: 'pitching-wedge',
    lie: 'rough',
    carryMetres: null,
    totalMetres: 90 * 0.9144,
    offlineMetres: 0,
    strike: 'good',
  },
]

describe('encodeShots', () => {
  it('writes the columns of the shots file, a thousandth at the finest, what is unknown empty', () => {
    expect(encodeShots(SHOTS.slice(0, 2), 'yards')).toBe(
      'date,club,lie,carry_yd,total_yd,offline_yd,planned,strike\n' +
        '2026-05-02,7-iron,fairway,118.4,,-6.1,,\n' +
        ',52-wedge,,80.3,84,,,mishit\n',
    )
  })

  it('is read back as the same shots, to the last bit in the unit they were written in', () => {
    const read = readShotTables([{ text: encodeShots(SHOTS, 'yards'), name: 'a.csv' }], null)
    expect(read.faults).toEqual([])
    expect(read.shots).toEqual(SHOTS)
  })

  it('keeps a millimetre in the other unit, and never writes a minus before nothing', () => {
    const text = encodeShots([...SHOTS, { ...SHOTS[0]!, offlineMetres: -0.0001 }], 'metres')
    expect(text.split('\n').at(-2)).toMatch(/,0,,$/)
    const read = readShotTables([{ text, name: 'a.csv' }], null)
    for (const [index, shot] of SHOTS.entries())
      for (const length of ['carryMetres', 'totalMetres', 'offlineMetres'] as const)
        expect(Math.abs((read.shots[index]![length] ?? 0) - (shot[length] ?? 0))).toBeLessThanOrEqual(0.00051)
  })
})
