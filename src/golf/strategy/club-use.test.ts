import { describe, expect, it } from 'vitest'
import { mirrorPlayer } from '#golf/player/mirror-player.ts'
import type { Player } from '#golf/player/player.ts'
import { type ClubUse, clubUse } from './club-use.ts'
import { CALM_DAY, inventedPlayer, mirrored } from './invented-hole.fixture.ts'
import { planHole } from './plan-hole.ts'
import { smallHole } from './small-hole.fixture.ts'

const hole = smallHole(215, 24)
const CLUBS = [
  { name: '5-iron', carry_m: 150, total_m: 158 },
  { name: '8-iron', carry_m: 118, total_m: 124 },
  { name: '9-iron', carry_m: 105, total_m: 110 },
  { name: 'sand-wedge', carry_m: 61, total_m: 62 },
] as const
const player = inventedPlayer([...CLUBS])

function use(one: Player): ReadonlyMap<string, ClubUse> {
  return new Map(clubUse({ hole, player: one, day: CALM_DAY }).clubs.map((row) => [row.club, row]))
}

function strokes(one: Player): number {
  return planHole({ courseName: '', hole, player: one, day: CALM_DAY, isQuick: true }).value.strokes
}

describe('what the clubs of a bag are for', () => {
  const rows = use(player)

  it('counts the strokes of the full game, the tee shot among them', () => {
    const all = [...rows.values()]
    const sum = all.reduce((total, row) => total + row.strokes, 0)
    // A hole of 215 m for a longest club of 158 m: a full stroke or more, and no more than a score of some five leaves.
    expect(sum).toBeGreaterThan(1)
    expect(sum).toBeLessThan(4)
    expect(all.reduce((total, row) => total + row.tee, 0)).toBeGreaterThanOrEqual(1)
    for (const row of all) {
      expect(row.near).toBeGreaterThanOrEqual(row.strokes - 1e-9)
      expect(row.strokes).toBeGreaterThanOrEqual(row.tee)
    }
  })

  it('is the same for the mirrored hole and player, though an edge runs through the middles of cells', () => {
    // The boundaries of this hole lie 24 m off the line, where columns of 8 m have their middles.
    const there = clubUse({ hole: mirrored(hole), player: mirrorPlayer(player), day: CALM_DAY })
    for (const { club, ...counts } of there.clubs) {
      const here = rows.get(club)
      expect(counts.strokes, club).toBeCloseTo(here?.strokes ?? Number.NaN, 9)
      expect(counts.near, club).toBeCloseTo(here?.near ?? Number.NaN, 9)
      expect(counts.tee, club).toBeCloseTo(here?.tee ?? Number.NaN, 9)
    }
  })

  it('bounds what the hole costs without a club, as planned anew without it', () => {
    // Reason: the plan that plays the next best club instead is one of the plans of the smaller bag (performance
    // difference: Kakade & Langford, ICML 2002, lemma 6.1), so the best of that bag costs no more.
    const whole = strokes(player)
    for (const { club, worth } of [...rows.values()].slice(0, 2)) {
      const rest = { ...player, clubs: player.clubs.filter(({ name }) => name !== club) }
      const more = strokes(rest) - whole
      expect(more, club).toBeGreaterThan(-0.005)
      expect(more, club).toBeLessThan(worth + 0.02)
    }
  })

  it('finds no use for a second club of the same carry and a wider spread', () => {
    const [, eight] = CLUBS
    const twice = inventedPlayer([
      ...CLUBS,
      { ...eight, name: '7-wood', direction_sd_deg: 12, carry_sd_share: 0.15, mishit_share: 0.5 },
    ])
    const wood = use(twice).get('7-wood')
    expect(wood?.strokes).toBe(0)
    expect(wood?.worth).toBe(0)
  })
})
