import { describe, expect, it } from 'vitest'
import { CALM_DAY, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import { keptGround } from './kept-ground.ts'

describe('keptGround', () => {
  it('lays a hole out once while it is asked for the same, and anew when hole or cells differ', () => {
    const groundOf = keptGround()
    const first = groundOf(inventedHole(120), 12)
    expect(groundOf(inventedHole(120), 12)).toBe(first)
    expect(groundOf(inventedHole(120), 16)).not.toBe(first)
    const other = groundOf(inventedHole(130), 16)
    expect(other.hole.lengthMetres).toBe(130)
    expect(groundOf(inventedHole(120), 12)).not.toBe(first)
  })

  it('lays a hole out anew when its tables have grown too large', () => {
    const groundOf = keptGround(20_000)
    const ground = groundOf(inventedHole(120), 12)
    expect(ground.tableBytes()).toBe(0)
    ground.restFor('normal').tablesFor(10)(0)
    const one = ground.tableBytes()
    // Half a word a place, and two bits.
    expect(one / ground.places.count).toBeCloseTo(2.25, 1)
    expect(groundOf(inventedHole(120), 12)).toBe(ground)
    for (let metres = 11; ground.tableBytes() <= 20_000; metres++)
      ground.restFor('normal').tablesFor(metres)(0)
    const anew = groundOf(inventedHole(120), 12)
    expect(anew).not.toBe(ground)
    expect(anew.tableBytes()).toBe(0)
  })

  it('keeps flights while air, rise and player stay, whatever lies on the ground, and no more than a few', () => {
    const groundOf = keptGround()
    const hole = inventedHole(120)
    const player = inventedPlayer([{ name: '9-iron', carry_m: 105 }])
    const flown = groundOf(hole, 12).flightsFor(player, CALM_DAY)
    const moved = groundOf({ ...hole, areas: hole.areas.slice(1) }, 12)
    expect(moved.flightsFor(player, CALM_DAY)).toBe(flown)
    const windy = { ...CALM_DAY, wind: { ...CALM_DAY.wind, speedMetresPerSecond: 5 } }
    expect(moved.flightsFor(player, windy)).not.toBe(flown)
    expect(moved.flightsFor({ ...player, name: 'another' }, CALM_DAY)).not.toBe(flown)
    expect(groundOf({ ...hole, pin: [3, 118] }, 12).flightsFor(player, CALM_DAY)).not.toBe(flown)
    expect(moved.flightsFor(player, CALM_DAY)).not.toBe(flown)
  })
})
