import { describe, expect, it } from 'vitest'
import { offsetPolygon } from '#numbers/geometry/offset-polygon.ts'
import { polygonArea } from '#numbers/geometry/polygon.ts'
import { groundAt, groundReader } from './ground-at.ts'
import { groundPieces, groundRegion } from './ground-pieces.ts'
import { holeFromCourse } from './hole-from-course.ts'
import { area, course, holeLine, rectangle } from './invented-course.fixture.ts'

const hole = holeFromCourse(
  course({
    holes: [
      holeLine('1', [
        [0, 0],
        [0, 300],
      ]),
    ],
    areas: [
      area('sand', 'bunker', rectangle(5, 105, 10, 115)),
      area('fairway', 'fairway', rectangle(-10, 50, 10, 250)),
      area('pond', 'penalty-red', rectangle(0, 100, 20, 120)),
      area('other', 'fairway', rectangle(60, 100, 80, 200)),
    ],
  }),
  '1',
)

describe('groundAt, groundPieces and groundRegion', () => {
  it('keep the order of the course file: water over fairway, sand over water, another hole’s fairway is none', () => {
    expect(groundAt(hole, [-5, 110])).toBe('fairway')
    expect(groundAt(hole, [3, 110])).toBe('penalty-red')
    expect(groundAt(hole, [7, 110])).toBe('bunker')
    expect(groundAt(hole, [15, 110])).toBe('penalty-red')
    expect(groundAt(hole, [70, 150])).toBe('rough')
  })

  it('cut a shape into pieces that fill it and agree with the ground at their points', () => {
    const shape = [rectangle(-20, 90, 30, 130)]
    const pieces = groundPieces(hole, shape)
    const areas = Object.fromEntries(
      pieces.map(({ ground, polygons }) => [
        ground,
        polygons.reduce((sum, polygon) => sum + polygonArea(polygon), 0),
      ]),
    )
    // 50 × 40 in all; fairway 20 × 40 less 10 × 20 of pond; pond 20 × 20 less 5 × 10 of sand.
    expect(areas.bunker).toBeCloseTo(50, 6)
    expect(areas['penalty-red']).toBeCloseTo(350, 6)
    expect(areas.fairway).toBeCloseTo(600, 6)
    expect(areas.rough).toBeCloseTo(1000, 6)
    const read = groundReader(hole)
    for (const { ground, polygons } of pieces)
      for (const inside of polygons.flatMap((polygon) => offsetPolygon(polygon, -0.01)))
        for (const corner of inside.flat()) expect(read(corner)).toBe(ground)
  })

  it('leave nothing of a class that is painted over', () => {
    expect(groundRegion(hole, 'penalty-red')).toHaveLength(1)
    expect(polygonArea(groundRegion(hole, 'penalty-red')[0] ?? [])).toBeCloseTo(350, 6)
    expect(groundRegion(hole, 'penalty-yellow')).toEqual([])
  })
})
