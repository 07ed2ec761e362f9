import { describe, expect, it } from 'vitest'
import { greenSlowing } from '#golf/ball/green-slowing.ts'
import { simulateRoll } from '#golf/ball/simulate-roll.ts'
import { groundCode } from '#golf/course/ground.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { groundNumbers } from './short-game-grounds.ts'
import { shortRoll } from './short-roll.ts'
import { GREEN, type ShortScene } from './short-scene.ts'

/** A plane green of this slope everywhere, or with another ground beyond a line. */
function scene(rise: readonly [number, number], more: Partial<ShortScene> = {}): ShortScene {
  return {
    pin: [0, 10],
    here: 2.5,
    codeAt: () => GREEN,
    gradientAt: () => rise,
    puttShares: () => [0, 0],
    ...groundNumbers({ greenSpeedFeet: 10, firmness: 1 }),
    endCost: () => ({ kept: 2, back: 0 }),
    ...more,
  }
}

describe('shortRoll', () => {
  it('ends where the finer roll on one green ends, and is holed with it', () => {
    const uniform = seededGenerator(8)
    let holed = 0
    for (let trial = 0; trial < 300; trial++) {
      const rise: [number, number] = [0.06 * (uniform() - 0.5), 0.06 * (uniform() - 0.5)]
      const headingRadians = 0.12 * (uniform() - 0.5)
      const speed = 1 + 3.5 * uniform()
      const coarse = shortRoll(scene(rise), 0, 0, headingRadians, speed)
      const slopes = { gradientAt: () => rise }
      const fine = simulateRoll({ x: 0, y: 0, headingRadians, speed }, slopes, greenSlowing(10), [0, 10])
      // At the hole's very edge a hair decides.
      const isOnEdge = fine.isHoled !== coarse.isHoled
      holed += Number(isOnEdge)
      if (!isOnEdge) expect(Math.hypot(coarse.x - fine.x, coarse.y - fine.y)).toBeLessThan(0.05)
    }
    expect(holed).toBeLessThan(5)
  })

  it('is slowed more by longer grass, and stopped by water', () => {
    const ends = (['green', 'fringe', 'fairway', 'first-cut', 'rough', 'heavy', 'bunker'] as const).map(
      (ground) => shortRoll(scene([0, 0], { codeAt: () => groundCode(ground) }), 0, 0, 0, 2, false).y,
    )
    expect(ends).toEqual([...ends].sort((a, b) => b - a))
    const wet = scene([0, 0], { codeAt: (_, y) => (y > 3 ? groundCode('penalty-red') : GREEN) })
    expect(shortRoll(wet, 0, 0, 0, 4)).toMatchObject({ end: 1, isHoled: false })
  })

  it('leaves the green of a slope too steep to stop on, and stops in the grass below', () => {
    const steep = scene([0, 0.12], { codeAt: (_, y) => (y < -2 ? groundCode('rough') : GREEN) })
    const { y, code } = shortRoll(steep, 0, 0, 0, 1)
    expect(code).toBe(groundCode('rough'))
    expect(y).toBeGreaterThan(-6)
  })
})
