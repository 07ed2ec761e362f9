import { describe, expect, it } from 'vitest'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { drawPlayer } from '#golf/player/draw-player.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { holeGround, holeModel } from './hole-model.ts'
import { holeProblem } from './hole-problem.ts'
import { CALM_DAY, inventedHole, inventedPlayer, mirrored } from './invented-hole.fixture.ts'
import { placeAt } from './places.ts'
import { scoreChances } from './score-distribution.ts'

const CELL = 5
const player = inventedPlayer([{ name: '7-iron', carry_m: 130 }])
const at = (greenSpeedFeet: number): Day => ({ ...CALM_DAY, greenSpeedFeet })
/** A hole whose green falls towards the tee, or another way. */
const falling = (greenFallPercent: number, greenFallTowardDegrees = 180): Hole => ({
  ...inventedHole(150),
  greenFallPercent,
  greenFallTowardDegrees,
})
const startOf = (hole: Hole, day: Day): { valueAt: (x: number, y: number) => number } => {
  const model = holeModel(holeGround(hole, CELL), player, day)
  const values = holeProblem(model).startValues()
  return { valueAt: (x, y) => values[placeAt(model.places, x, y)] as number }
}

describe('nearGreenCorrections', () => {
  it('is nothing on a level green: the putting table stands there at any speed', () => {
    const model = holeModel(holeGround(falling(0), CELL), player, at(13))
    expect(model.nearGreen).toBeNull()
    expect(startOf(falling(0), at(13)).valueAt(0, 143)).toBeCloseTo(puttingValues(player).expected(7), 3)
  })

  it('makes a putt from above the hole dearer than from below it, the more the faster the green', () => {
    const slow = startOf(falling(3), at(8))
    const fast = startOf(falling(3), at(12))
    expect(slow.valueAt(0, 157)).toBeGreaterThan(slow.valueAt(0, 143))
    expect(fast.valueAt(0, 157)).toBeGreaterThan(slow.valueAt(0, 157))
    expect(fast.valueAt(7, 150)).toBeGreaterThan(slow.valueAt(7, 150))
  })

  it('mirrors with the green', () => {
    const hole = falling(3, 75)
    const one = startOf(hole, at(11))
    const other = startOf(mirrored(hole), at(11))
    for (const [x, y] of [
      [3, 146],
      [-5, 155],
      [8, 150],
    ] as const)
      expect(other.valueAt(-x, y)).toBeCloseTo(one.valueAt(x, y), 9)
  })

  it('is kept by draws of the player: what the slopes add is that of the player as given', () => {
    const ground = holeGround(falling(3), CELL)
    const model = holeModel(ground, player, at(11))
    const drawn = drawPlayer(player, 3)
    const other = holeModel(ground, drawn, at(11), model.flights, model.nearGreen)
    expect(other.nearGreen).toBe(model.nearGreen)
    const place = placeAt(ground.places, 0, 157)
    const added = model.nearGreen?.strokes[place] ?? 0
    expect(added).not.toBe(0)
    const metres = ground.places.toPin[place] as number
    // Both are straight between distances of the table, which differ by a hair.
    expect(holeProblem(other).startValues()[place]).toBeCloseTo(
      puttingValues(drawn).expected(metres) + added,
      3,
    )
  })

  it('gives scores whose mean is the value, everywhere on the green', () => {
    const model = holeModel(holeGround(falling(4, 100), CELL), player, at(12))
    const problem = holeProblem(model)
    const values = problem.startValues()
    const chances = scoreChances(model, problem, values)
    for (const [x, y] of [
      [0, 150],
      [1, 150],
      [3, 146],
      [-5, 155],
      [8, 150],
      [0, 158],
    ] as const) {
      const place = placeAt(model.places, x, y)
      let [sum, mean] = [0, 0]
      for (const [strokes, row] of chances.entries()) {
        sum += row[place] as number
        mean += strokes * (row[place] as number)
      }
      expect(sum, `${x},${y}`).toBeCloseTo(1, 6)
      expect(mean, `${x},${y}`).toBeCloseTo(values[place] as number, 6)
    }
  })
})
