import { describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import { convolve } from '#numbers/statistics/convolve.ts'
import { holeScores } from './hole-scores.ts'
import { area, box, CALM_DAY, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import { chancesOfLaterHoles } from './later-holes.ts'

const COARSE = { cellMetres: 12, quadrature: { good: 24, mishit: 8 } }
const player = inventedPlayer(
  [
    { name: '3-wood', carry_m: 190, total_m: 204 },
    { name: '7-iron', carry_m: 124, total_m: 131 },
    { name: 'pitching-wedge', carry_m: 92, total_m: 95 },
  ],
  12,
)

/** A hole that is reached over a pond, or in two strokes short of it. */
function overPond(lengthMetres: number): Hole {
  return inventedHole(lengthMetres, [
    area('fairway', box(-16, 16, 60, lengthMetres - 14)),
    area('penalty-yellow', box(-60, 60, lengthMetres - 66, lengthMetres - 36)),
  ])
}

/** Chance of at most `m` strokes, by `m` up to `most`. */
function atMost(scores: readonly number[], most: number): number[] {
  let sum = 0
  return Array.from({ length: most + 1 }, (_, strokes) => {
    sum += scores[strokes] ?? 0
    return sum
  })
}

describe('chancesOfLaterHoles', () => {
  it('is sure of a hole that is not there', () => {
    expect(chancesOfLaterHoles([], player, CALM_DAY, 5)).toEqual([1])
  })

  it('adds up to what a plan for the fewest strokes does, and to more where a stroke can be chosen for the target', () => {
    const holes = [overPond(222), overPond(230)]
    const most = 12
    const chances = chancesOfLaterHoles(holes, player, CALM_DAY, most, COARSE)
    const fewest = atMost(convolve(holes.map((hole) => holeScores(hole, player, CALM_DAY, COARSE))), most)
    expect(chances).toHaveLength(most + 1)
    let gain = 0
    for (const [left, chance] of chances.entries()) {
      expect(chance).toBeGreaterThanOrEqual((fewest[left] as number) - 2e-3)
      expect(chance).toBeLessThanOrEqual(1 + 1e-9)
      expect(chance).toBeGreaterThanOrEqual((chances[left - 1] ?? 0) - 1e-9)
      gain = Math.max(gain, chance - (fewest[left] as number))
    }
    // A full shot and the hole-out are two strokes, so two holes are never three.
    expect(chances[3]).toBe(0)
    expect(gain).toBeGreaterThan(0.01)
  })

  it('is the convolution itself where there is nothing to choose', () => {
    const one = inventedPlayer([{ name: '9-iron', carry_m: 112, total_m: 116 }], 12)
    // One club that just reaches a green in the open: its line is the only choice, and hardly one.
    const hole = inventedHole(118, [area('fairway', box(-30, 30, -20, 106))])
    const most = 10
    const chances = chancesOfLaterHoles([hole, hole], one, CALM_DAY, most, COARSE)
    const scores = holeScores(hole, one, CALM_DAY, COARSE)
    for (const [left, chance] of atMost(convolve([scores, scores]), most).entries())
      expect(Math.abs((chances[left] as number) - chance)).toBeLessThan(0.003)
  })
})
