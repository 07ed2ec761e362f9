import { describe, expect, it } from 'vitest'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { mixedUnits } from './mixed-units.ts'

const CLUBS: readonly (readonly [name: string, metres: number])[] = [
  ['driver', 200],
  ['5-hybrid', 155],
  ['7-iron', 130],
  ['pitching-wedge', 100],
]

/** Ten days of eight shots a club; a mishit in six, and every day a little longer or shorter than the last. */
function season(seed: number, carrySdShare: number, factorOn: (day: number) => number): ShotRecord[] {
  const random = seededGenerator(seed)
  return Array.from({ length: 10 }, (_, day) => {
    const today = factorOn(day) * (1 + 0.02 * normalQuantile(random()))
    return CLUBS.flatMap(([club, metres]) =>
      Array.from({ length: 8 }, () => ({
        date: `2026-06-${String(day + 1).padStart(2, '0')}`,
        club,
        lie: null,
        carryMetres:
          metres * today * (random() < 1 / 6 ? 0.6 : 1) * (1 + carrySdShare * normalQuantile(random())),
        totalMetres: null,
        offlineMetres: null,
        strike: null,
      })),
    )
  }).flat()
}

const withoutDates = (shots: readonly ShotRecord[]): ShotRecord[] =>
  shots.map((shot) => ({ ...shot, date: null }))

describe('mixedUnits', () => {
  it('finds the days on which yards were read as metres, among mishits and good days', () => {
    const days = ['2026-06-01', '2026-06-02', '2026-06-03']
    let found = 0
    for (let seed = 1; seed <= 50; seed += 1) {
      const [mixed] = mixedUnits(season(seed, 0.07, (day) => (day < 3 ? 1 / 0.9144 : 1)))
      if (mixed?.kind !== 'days' || mixed.days.join() !== days.join()) continue
      found += 1
      expect(mixed.factor).toBeGreaterThan(1.06)
      expect(mixed.factor).toBeLessThan(1.13)
    }
    // Where days differ by more than usual, yards are not told from a good day: by simulation one season in three.
    expect(found).toBeGreaterThanOrEqual(28)
  })

  it('finds a change of unit in the middle of a season of a few shots a day, and doubts none without it', () => {
    let [found, doubted] = [0, 0]
    for (let seed = 1; seed <= 50; seed += 1) {
      // Four shots a day, one with each club: each day of the season above becomes eight days.
      const spread = (shots: readonly ShotRecord[]): ShotRecord[] =>
        shots.map((shot, at) => ({
          ...shot,
          date: new Date(Date.UTC(2026, 4, 1 + 8 * Math.floor(at / 32) + (at % 8)))
            .toISOString()
            .slice(0, 10),
        }))
      const [mixed] = mixedUnits(spread(season(seed, 0.07, (day) => (day < 4 ? 1 / 0.9144 : 1))))
      found += mixed?.kind === 'days' && mixed.days.length > 20 ? 1 : 0
      doubted += mixedUnits(spread(season(seed, 0.07, () => 1))).length
    }
    expect(found).toBeGreaterThanOrEqual(25)
    expect(doubted).toBeLessThanOrEqual(1)
  })

  it('finds two heaps of a steady club without dates', () => {
    const shots = withoutDates(season(1, 0.015, (day) => (day % 2 === 0 ? 0.9144 : 1))).filter(
      ({ carryMetres }, index) => index % 3 > 0 && (carryMetres ?? 0) > 85,
    )
    const clubs = mixedUnits(shots).map((mixed) => (mixed.kind === 'club' ? mixed.club : mixed.kind))
    expect(clubs.length).toBeGreaterThan(0)
  })

  it('hardly ever doubts a season in one unit', () => {
    let doubted = 0
    for (let seed = 1; seed <= 200; seed += 1) {
      const shots = season(seed, 0.07, () => 1)
      doubted += mixedUnits(shots).length > 0 ? 1 : 0
      doubted += mixedUnits(withoutDates(shots)).length > 0 ? 1 : 0
    }
    expect(doubted).toBeLessThanOrEqual(4)
  })

  it('says nothing of a few shots', () => {
    expect(mixedUnits([])).toEqual([])
    expect(mixedUnits(season(1, 0.07, () => 1).slice(0, 5))).toEqual([])
  })
})
