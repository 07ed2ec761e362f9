import { describe, expect, it } from 'vitest'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { repeatedShots } from './repeated-shots.ts'

/** Shots of a 7-iron in whole yards, as a range writes them: they look alike by chance again and again. */
function session(count: number, seed: number, date: string | null = null): ShotRecord[] {
  const random = seededGenerator(seed)
  const normal = (): number => normalQuantile(random())
  return Array.from({ length: count }, () => ({
    date,
    club: '7-iron',
    lie: null,
    carryMetres: Math.round(150 + 7 * normal()) * 0.9144,
    totalMetres: null,
    offlineMetres: Math.round(8 * normal()) * 0.9144,
    strike: null,
  }))
}

const none = (shots: readonly ShotRecord[]): string[] => shots.map(() => '')
const copies = (shots: readonly ShotRecord[]): readonly number[] => repeatedShots(shots, none(shots))

describe('repeatedShots', () => {
  it('keeps shots that only look alike, with or without the side, of one session and of many', () => {
    for (let seed = 1; seed <= 100; seed += 1) {
      const shots = session(400, seed)
      const looks = new Set(shots.map(({ carryMetres, offlineMetres }) => `${carryMetres} ${offlineMetres}`))
      expect(looks.size).toBeLessThan(350)
      expect(copies(shots), `seed ${seed}`).toEqual([])
      const blind = shots.map((shot) => ({ ...shot, offlineMetres: null }))
      expect(copies(blind), `seed ${seed}, without the side`).toEqual([])
      const sorted = [...blind].sort((a, b) => (a.carryMetres ?? 0) - (b.carryMetres ?? 0))
      expect(copies(sorted), `seed ${seed}, sorted`).toEqual([])
    }
  })

  it('finds a batch that was pasted again, wherever it stands, and a third time', () => {
    const [first, second, third] = [session(60, 1), session(60, 2), session(60, 3)]
    const batch = first.slice(10, 30)
    const shots = [...first, ...second, ...batch, ...third, ...batch]
    const expected = [...batch.keys()].flatMap((place) => [120 + place, 200 + place])
    expect(copies(shots)).toEqual(expected.sort((a, b) => a - b))
  })

  it('finds a table that holds every shot twice, in any order', () => {
    const shots = session(60, 4)
    const twice = shots.flatMap((shot) => [shot, shot])
    expect(copies(twice)).toHaveLength(60)
    const looks = (list: readonly ShotRecord[]): string[] => list.map((shot) => JSON.stringify(shot)).sort()
    expect(looks(twice.filter((_, place) => !copies(twice).includes(place)))).toEqual(looks(shots))
  })

  it('finds the days that two tables share, joined and sorted', () => {
    const [first, second, third] = ['2026-05-01', '2026-05-02', '2026-05-03'].map((day, index) =>
      session(40, 10 + index, day),
    )
    const sorted = [...(first ?? []), ...(second ?? []).flatMap((shot) => [shot, shot]), ...(third ?? [])]
    const found = copies(sorted)
    expect(found).toHaveLength(40)
    for (const place of found) expect(sorted[place]?.date).toBe('2026-05-02')
  })

  it('takes a row with its time of day for a copy of the same row, and not of another', () => {
    const [shot] = session(1, 5)
    const shots = Array(4).fill(shot) as ShotRecord[]
    expect(repeatedShots(shots, ['14:01 7i', '14:02 7i', '14:01 7i', ''])).toEqual([2])
  })
})
