import { describe, expect, it } from 'vitest'
import { groundAt } from '#golf/course/ground-at.ts'
import { area, box, inventedHole } from '#golf/strategy/invented-hole.fixture.ts'
import { distance } from '#numbers/geometry/point.ts'
import { letterPlace } from './letter-place.ts'

const hole = inventedHole(300, [
  area('fairway', box(-15, 15, 40, 285)),
  area('heavy', box(30, 60, 100, 250)),
  area('penalty-red', box(-60, -30, 100, 200)),
  area('bunker', box(14, 22, 280, 292)),
])

describe('a letter of the log with what was left', () => {
  it.each([
    ['f', 120, 'fairway'],
    ['r', 120, 'rough'],
    ['h', 120, 'heavy'],
    ['b', 22, 'bunker'],
    ['g', 6, 'green'],
  ] as const)('puts %s-%i on the circle, on its ground', (letter, left, ground) => {
    const { point, lie, isSurveyed, leftMetres } = letterPlace(hole, letter, left, [0, 0])
    expect({ isSurveyed, leftMetres, lie }).toEqual({ isSurveyed: true, leftMetres: left, lie: ground })
    expect(distance(point, hole.pin)).toBeCloseTo(left, 9)
    expect(groundAt(hole, point)).toBe(ground)
  })

  it('takes the place nearest the line of play', () => {
    expect(letterPlace(hole, 'f', 120, [0, 0]).point[0]).toBeCloseTo(0, 6)
    // From the right of the fairway the line to the pin runs right of the hole line.
    expect(letterPlace(hole, 'f', 60, [14, 100]).point[0]).toBeCloseTo((14 * 60) / Math.hypot(14, 200), 0)
    // The first heavy grass right of the fairway.
    expect(letterPlace(hole, 'h', 120, [0, 0]).point[0]).toBeLessThan(31.1)
  })

  it('drops beside the penalty area, on ground that is played from', () => {
    const { point, lie } = letterPlace(hole, 'p', 150, [0, 0])
    expect(point[0]).toBeGreaterThan(-30)
    expect(point[0]).toBeLessThan(-19)
    expect(lie).toBe('rough')
  })

  it('takes the nearest distance at which there is such ground, and says so', () => {
    const { leftMetres, isSurveyed } = letterPlace(hole, 'b', 12, [0, 0])
    expect(isSurveyed).toBe(true)
    expect(leftMetres).toBeGreaterThan(14)
    expect(leftMetres).toBeLessThan(18)
  })

  it('stays on the line where the survey has no such ground at all', () => {
    const { point, lie, isSurveyed } = letterPlace(hole, 'x', 120, [0, 0])
    expect({ lie, isSurveyed }).toEqual({ lie: 'trees', isSurveyed: false })
    expect(point[0]).toBeCloseTo(0, 6)
    expect(point[1]).toBeCloseTo(180, 6)
  })
})
