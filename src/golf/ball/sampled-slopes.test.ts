import { expect, it } from 'vitest'
import { sampledSlopes } from './sampled-slopes.ts'
import { type Slopes, simulateRoll } from './simulate-roll.ts'

const BUMPY: Slopes = {
  gradientAt: (x, y) => [0.03 * Math.sin(x / 3) + 0.01, 0.025 * Math.cos(y / 4 + x / 6) - 0.005],
}

it('is exact on a plane and at its nodes, near between them, and the surface itself beyond', () => {
  const plane = sampledSlopes({ gradientAt: () => [0.02, -0.01] }, [3, 100], 10, 0.5)
  expect(plane.gradientAt(4.13, 97.77)[0]).toBeCloseTo(0.02, 12)
  expect(plane.gradientAt(4.13, 97.77)[1]).toBeCloseTo(-0.01, 12)
  const sampled = sampledSlopes(BUMPY, [0, 0], 8, 0.5)
  expect(sampled.gradientAt(1.5, -2)).toEqual(BUMPY.gradientAt(1.5, -2))
  expect(sampled.gradientAt(30, 40)).toEqual(BUMPY.gradientAt(30, 40))
  // Straight pieces of half a metre miss a wave of 2π · 3 m by h²/8 · 0.03/9.
  expect(Math.abs(sampled.gradientAt(1.23, 0.77)[0] - BUMPY.gradientAt(1.23, 0.77)[0])).toBeLessThan(1.1e-4)
})

it('rolls a ball to within a centimetre in 6 m of where the surface itself does', () => {
  const sampled = sampledSlopes(BUMPY, [0, 0], 10, 0.5)
  for (const headingRadians of [0, 1, 2, 3, 4, 5]) {
    const start = { x: 0, y: 0, headingRadians, speed: 2.4 }
    const [one, other] = [simulateRoll(start, BUMPY, 0.55), simulateRoll(start, sampled, 0.55)]
    expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeLessThan(0.01)
  }
})
