import { describe, expect, it } from 'vitest'
import { distance } from '#numbers/geometry/point.ts'
import { ballPath } from './ball-path.ts'

const STRAIGHT = { from: [3, 4], heading: 0.3, carryMetres: 150, curveShare: 0, runMetres: 12 } as const

describe('ballPath', () => {
  it('carries straight to the landing and runs on', () => {
    const path = ballPath(STRAIGHT)
    expect(path[0]).toEqual([3, 4])
    const landing = path.at(-2) ?? [0, 0]
    expect(landing[0]).toBeCloseTo(3 + 150 * Math.sin(0.3), 9)
    expect(landing[1]).toBeCloseTo(4 + 150 * Math.cos(0.3), 9)
    expect(distance(path.at(-1) ?? [0, 0], [3, 4])).toBeCloseTo(162, 9)
  })

  it('bends as the club curves: leaves to one side, comes in from it, and runs on that way', () => {
    const [, first, ...rest] = ballPath({ ...STRAIGHT, from: [0, 0], heading: 0, curveShare: -0.04 })
    // A parabola: halfway it is 0.04 · 150 / 4 = 1.5 m to the right of the straight way, and the run goes left.
    expect(first?.[0]).toBeGreaterThan(0)
    expect(rest[8]?.[0]).toBeCloseTo(1.5, 9)
    expect(rest.at(-2)?.[0]).toBeCloseTo(0, 9)
    expect(rest.at(-1)?.[0]).toBeCloseTo(12 * Math.sin(Math.atan(-0.04)), 9)
  })

  it('is mirrored for the mirrored stroke', () => {
    const right = ballPath({ ...STRAIGHT, from: [3, 4], curveShare: 0.05 })
    const left = ballPath({ ...STRAIGHT, from: [-3, 4], heading: -0.3, curveShare: -0.05 })
    for (const [index, [x, y]] of right.entries()) {
      expect(left[index]?.[0]).toBeCloseTo(-x, 12)
      expect(left[index]?.[1]).toBeCloseTo(y, 12)
    }
  })
})
