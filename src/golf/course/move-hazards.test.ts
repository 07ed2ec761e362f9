import { describe, expect, it } from 'vitest'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonArea } from '#numbers/geometry/polygon.ts'
import type { Hole } from './hole.ts'
import { holeFromCourse } from './hole-from-course.ts'
import { area, course, holeLine, rectangle } from './invented-course.fixture.ts'
import { measureHole } from './measure-hole.ts'
import { moveHazards, NOT_MOVED } from './move-hazards.ts'

const STRAIGHT: readonly Point[] = [
  [0, 0],
  [0, 350],
]
/** Turns square to the right after 220 m. */
const DOGLEG: readonly Point[] = [
  [0, 0],
  [0, 220],
  [150, 220],
]

function holeWith(line: readonly Point[], water: Polygon): Hole {
  const areas = [
    area('water', 'penalty-red', water),
    area('sand', 'bunker', rectangle(-30, 150, -20, 160)),
    area('green', 'green', rectangle(-8, 342, 8, 358)),
  ]
  return holeFromCourse(course({ holes: [holeLine('1', line)], areas }), '1')
}

function water(hole: Hole) {
  return measureHole(hole).hazards.find(({ id }) => id === 'water')!
}

describe('moveHazards', () => {
  const hole = holeWith(STRAIGHT, rectangle(-60, 180, 60, 200))

  it('moves a whole hazard on: reach and carry grow by as much, and nothing else moves', () => {
    const moved = moveHazards(hole, { water: { ...NOT_MOVED, near: 18, far: 18 } })
    expect(water(moved).reachMetres).toBeCloseTo(water(hole).reachMetres + 18, 9)
    expect(water(moved).carryMetres).toBeCloseTo(218, 9)
    expect(moved.areas.filter(({ id }) => id !== 'water')).toEqual(
      hole.areas.filter(({ id }) => id !== 'water'),
    )
  })

  it('moves one edge: the far side costs carry, the near one stays', () => {
    const moved = moveHazards(hole, { water: { ...NOT_MOVED, far: 12 } })
    expect(water(moved).reachMetres).toBeCloseTo(180, 9)
    expect(water(moved).carryMetres).toBeCloseTo(212, 9)
    const before = hole.areas.find(({ id }) => id === 'water')!.polygon
    const after = moved.areas.find(({ id }) => id === 'water')!.polygon
    expect(polygonArea(after)).toBeCloseTo((polygonArea(before) * 32) / 20, 6)
  })

  it('counts along the leg beside the hazard: on the second leg of a dogleg on is to the right of the tee', () => {
    const bent = holeWith(DOGLEG, rectangle(60, 200, 80, 240))
    const moved = moveHazards(bent, { water: { ...NOT_MOVED, near: 10, far: 10, left: 4, right: 4 } })
    const ring = moved.areas.find(({ id }) => id === 'water')!.polygon[0]!
    const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)]
    expect([Math.min(...xs), Math.max(...xs)].map((x) => Math.round(x * 1e6) / 1e6)).toEqual([70, 90])
    expect([Math.min(...ys), Math.max(...ys)].map((y) => Math.round(y * 1e6) / 1e6)).toEqual([196, 236])
  })

  it('never turns a hazard inside out: sides that would meet stay two metres apart', () => {
    const moved = moveHazards(hole, { water: { ...NOT_MOVED, near: 60, far: -60 } })
    expect(water(moved).carryMetres! - water(moved).reachMetres).toBeCloseTo(2, 9)
    expect(water(moved).reachMetres).toBeCloseTo(189, 9)
  })

  it('leaves a hole alone that has no such hazard', () => {
    expect(moveHazards(hole, { elsewhere: { ...NOT_MOVED, near: 5 } })).toEqual(hole)
  })
})
