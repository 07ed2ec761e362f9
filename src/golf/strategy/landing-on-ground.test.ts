import { beforeAll, describe, expect, it } from 'vitest'
import { greenSurface } from '#golf/course/green-surface.ts'
import type { Hole } from '#golf/course/hole.ts'
import { area, box, disc, inventedHole, mirrored } from './invented-hole.fixture.ts'
import { AT_REST, IN_RED, outcomeKind, outcomePlace } from './outcome.ts'
import { groundOf, type Places, placeAt, placesOf } from './places.ts'
import { restAt } from './rest-table.ts'
import { type RestTables, restTables } from './rest-tables.ts'

const LENGTH = 200
const hole: Hole = inventedHole(LENGTH, [
  area('fairway', box(-15.3, 15.3, 40.3, LENGTH)),
  area('bunker', box(-15.3, 15.3, 120.3, 126.3)),
  area('penalty-red', box(-15.3, 15.3, 150.3, 156.3)),
  area('fringe', disc([0, LENGTH], 14.2)),
])
const places = placesOf(hole)
const tables = (
  percent: number,
  towardDegrees = 180,
  rough: 'short' | 'normal' | 'long' = 'normal',
): RestTables =>
  restTables(
    places,
    greenSurface({ pin: hole.pin, greenFallPercent: percent, greenFallTowardDegrees: towardDegrees }),
    rough,
  )
const level = (metres: number): { falling: number; level: number; rising: number } => ({
  falling: metres,
  level: metres,
  rising: metres,
})

/** Way from the landing to where the ball rests, metres along a heading of 0. */
function runOf(rest: RestTables, x: number, y: number, onFairway: number, onGreen = level(0)): number {
  const landing = placeAt(places, x, y)
  const index = places.greenIndex[landing] as number
  const outcome =
    index < 0
      ? restAt(places, rest.tablesFor(onFairway)(0), landing)
      : restAt(places, rest.greenTablesFor(onGreen)(0), index)
  return (places.y[outcomePlace(places, outcome)] as number) - (places.y[landing] as number)
}

describe('where a ball comes to rest by the ground it lands on', () => {
  it('runs by the green where it lands on it and by the fairway where it lands short', () => {
    const rest = tables(0)
    // The same shot: 6 m on the fairway, half a metre back on the green.
    expect(runOf(rest, 0, LENGTH - 4, 6, level(-0.5))).toBeLessThanOrEqual(0)
    expect(runOf(rest, 0, LENGTH - 30, 6, level(-0.5))).toBeCloseTo(6, 0)
    // Landing short it runs on over the fringe on to the green, slower there.
    const short = runOf(rest, 0, LENGTH - 16, 9, level(-0.5))
    expect(short).toBeGreaterThan(5)
    expect(short).toBeLessThan(9)
  })

  it('comes back towards the player, over the fringe too', () => {
    expect(runOf(tables(0), 0, LENGTH + 3, 2, level(-5))).toBeCloseTo(-5, 0)
    const over = runOf(tables(0), 0, LENGTH - 10, 2, level(-5))
    expect(over).toBeLessThan(-2)
    expect(over).toBeGreaterThan(-7)
  })

  it('runs by the slope where it lands, along its way', () => {
    const runs = { falling: 6, level: 3, rising: 1 }
    const at = (percent: number, toward: number): number =>
      runOf(tables(percent, toward), 0, LENGTH - 8, 5, runs)
    // A green that falls away from the player is a downslope to the ball.
    expect(at(4, 0)).toBeCloseTo(6, 0)
    expect(at(4, 180)).toBeCloseTo(1, 0)
    expect(at(4, 90)).toBeCloseTo(3, 0)
    expect(at(2, 0)).toBeGreaterThan(at(0, 0))
    expect(at(2, 180)).toBeLessThan(at(0, 0))
  })

  it('runs further on to a green that falls away than on to one that rises, when it lands short', () => {
    const onTo = (toward: number): number => runOf(tables(4, toward), 0, LENGTH - 16, 10)
    expect(onTo(0)).toBeGreaterThan(onTo(180))
  })

  it('stops at sand, is caught by water and slows in rough, the more the longer it is', () => {
    const rest = tables(0)
    const landing = placeAt(places, 0, 108)
    const inSand = restAt(places, rest.tablesFor(30)(0), landing)
    expect([outcomeKind(places, inSand), groundOf(places, outcomePlace(places, inSand))]).toEqual([
      AT_REST,
      'bunker',
    ])
    const inWater = restAt(places, rest.tablesFor(30)(0), placeAt(places, 0, 138))
    expect(outcomeKind(places, inWater)).toBe(IN_RED)
    const rough = (['short', 'normal', 'long'] as const).map((length) =>
      runOf(tables(0, 0, length), 40, 60, 24),
    )
    expect(runOf(rest, 0, 60, 24)).toBeCloseTo(24, 0)
    expect(rough[0]).toBeGreaterThan(rough[1] as number)
    expect(rough[1]).toBeGreaterThan(rough[2] as number)
    expect(rough[2]).toBeGreaterThan(0)
  })

  describe('mirrored', () => {
    let other: Places
    beforeAll(() => {
      other = placesOf(mirrored(sloped))
    })
    const sloped: Hole = { ...hole, greenFallPercent: 3, greenFallTowardDegrees: 130 }

    it('has the mirrored rests, on the green and off it', () => {
      const runs = { falling: 7, level: 3, rising: -1 }
      const ours = restTables(places, greenSurface(sloped))
      const theirs = restTables(other, greenSurface(mirrored(sloped)))
      const rest = (rests: RestTables, of: Places, landing: number, heading: number): [number, number] => {
        const index = of.greenIndex[landing] as number
        const outcome =
          index < 0
            ? restAt(of, rests.tablesFor(9)(heading), landing)
            : restAt(of, rests.greenTablesFor(runs)(heading), index)
        return [of.x[outcomePlace(of, outcome)] as number, of.y[outcomePlace(of, outcome)] as number]
      }
      for (const place of places.greenPlaces)
        for (const heading of [-0.8, 0.3, 2.1]) {
          // A coarse cell under the fine ones is never landed in.
          if (placeAt(places, places.x[place] as number, places.y[place] as number) !== place) continue
          const there = placeAt(other, -(places.x[place] as number), places.y[place] as number)
          const [x, y] = rest(ours, places, place, heading)
          const [mirrorX, mirrorY] = rest(theirs, other, there, -heading)
          expect(mirrorX + x).toBeCloseTo(0, 9)
          expect(mirrorY).toBeCloseTo(y, 9)
        }
    })
  })
})
