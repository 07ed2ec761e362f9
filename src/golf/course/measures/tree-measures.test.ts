import { describe, expect, it } from 'vitest'
import type { Point } from '#numbers/geometry/point.ts'
import type { Tree } from '../course.ts'
import { holeFromCourse } from '../hole-from-course.ts'
import { area, course, holeLine, rectangle } from '../invented-course.fixture.ts'
import { measureHole } from '../measure-hole.ts'

const DOGLEG: Point[] = [
  [0, 0],
  [0, 200],
  [150, 200],
]

describe('treeMeasures', () => {
  it('gives where single trees stand, and the height of a wood; what is far off the line it leaves out', () => {
    const tree = (id: string, x: number, y: number, heightMetres: number | null): Tree => ({
      id,
      position: [x, y],
      heightMetres,
      crownBaseMetres: null,
      crownRadiusMetres: null,
      densityPerMetre: null,
    })
    const survey = {
      ...course({
        holes: [holeLine('1', DOGLEG)],
        areas: [area('w', 'trees', rectangle(-40, 100, -20, 150), { heightMetres: 17 })],
      }),
      // 60 m on and 12 m left of the second leg; 8 m right of the first; 55 m off; behind the markers.
      trees: [
        tree('late', 60, 212, 9),
        tree('soon', 8, 120, null),
        tree('far', -55, 50, 20),
        tree('behind', 3, -20, 20),
      ],
    }
    const { trees, hazards } = measureHole(holeFromCourse(survey, '1'))
    expect(trees.map(({ id, heightMetres }) => [id, heightMetres])).toEqual([
      ['soon', null],
      ['late', 9],
    ])
    expect(trees[0]?.reachMetres).toBeCloseTo(120, 9)
    expect(trees[0]?.offsetMetres).toBeCloseTo(8, 9)
    expect(trees[1]?.reachMetres).toBeCloseTo(260, 9)
    expect(trees[1]?.offsetMetres).toBeCloseTo(-12, 9)
    expect(hazards[0]?.heightMetres).toBe(17)
  })
})
