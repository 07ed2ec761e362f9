import { describe, expect, it } from 'vitest'
import { radiansToDegrees } from '#numbers/units/units.ts'
import { stanceEffect } from './stance.ts'

const ABOVE = { uphillDegrees: 0, aboveDegrees: 5 }

describe('stanceEffect', () => {
  // Derived geometry of a still face, reference section 6: turn = atan(tan loft \u00b7 sin slope), rounded to 0.1\u00b0.
  it.each([
    [20, 1.8],
    [33, 3.2],
    [46, 5.2],
    [56, 7.4],
  ])(
    'turns a club of %i\u00b0 by %d\u00b0 to the left with the ball 5\u00b0 above a right-hander\u2019s feet',
    (loft, turn) => {
      expect(Math.abs(-radiansToDegrees(stanceEffect(ABOVE, loft, 'right').turn) - turn)).toBeLessThan(0.05)
    },
  )

  it('is the mirror image for a left-hander, and below the feet the other way', () => {
    for (const loft of [12, 34, 58])
      for (const stance of [
        ABOVE,
        { uphillDegrees: -6, aboveDegrees: 2 },
        { uphillDegrees: 4, aboveDegrees: -7 },
      ]) {
        const right = stanceEffect(stance, loft, 'right')
        const left = stanceEffect(stance, loft, 'left')
        expect(left).toEqual({ ...right, turn: -right.turn })
      }
    const below = stanceEffect({ uphillDegrees: 0, aboveDegrees: -5 }, 46, 'right')
    expect(below.turn).toBeCloseTo(-stanceEffect(ABOVE, 46, 'right').turn, 12)
  })

  // Hiley et al. 2019: uphill shots tend left, downhill right (right-hander).
  it('adds the slope uphill to the launch and takes it off downhill, and tends to the published side', () => {
    const up = stanceEffect({ uphillDegrees: 5, aboveDegrees: 0 }, 30, 'right')
    const down = stanceEffect({ uphillDegrees: -5, aboveDegrees: 0 }, 30, 'right')
    expect(radiansToDegrees(up.launch)).toBeCloseTo(5, 12)
    expect(down.launch).toBeCloseTo(-up.launch, 12)
    expect(up.turn).toBeLessThan(0)
    expect(down.turn).toBeGreaterThan(0)
  })

  it('widens every spread with the slope, changes nothing on the level, and leaves long clubs out when it is steep', () => {
    const at = (degrees: number): ReturnType<typeof stanceEffect> =>
      stanceEffect({ uphillDegrees: degrees, aboveDegrees: degrees }, 20, 'right')
    for (const spread of ['direction', 'distance', 'mishit'] as const) {
      expect(at(0)[spread]).toBe(1)
      expect(at(4)[spread]).toBeGreaterThan(at(2)[spread])
    }
    expect(Math.abs(at(0).turn) + Math.abs(at(0).launch)).toBe(0)
    expect([at(3).allowed, at(10).allowed]).toEqual([true, false])
    expect(stanceEffect({ uphillDegrees: 12, aboveDegrees: 0 }, 46, 'right').allowed).toBe(true)
  })
})
