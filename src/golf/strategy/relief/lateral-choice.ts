import type { Hole } from '#golf/course/hole.ts'
import type { ReliefOption } from '#golf/rules/relief-options.ts'
import { intersectPolygons, subtractPolygons } from '#numbers/geometry/combine-polygons.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { type AreaOfCourse, partIn } from './areas-of-the-course.ts'
import { discNotNearer } from './not-nearer.ts'
import type { EmptyChoice, ReliefChoice } from './relief-choice.ts'
import { spotsInArea } from './spots-in-area.ts'

const ON_THE_COURSE: readonly AreaOfCourse[] = ['general', 'bunker', 'penalty-area', 'green']

/**
 * Lateral relief (Rules of Golf 2023, 17.1d(3), 19.2c, 19.3a): within so many metres of the reference point, not nearer
 * the hole, on the course. `except` is the penalty area that the ball must leave; `within` the bunker that it must stay in.
 */
export function lateralChoice(
  hole: Hole,
  option: ReliefOption,
  reference: Point,
  limits: {
    readonly metres: number
    readonly except: readonly Polygon[]
    readonly within: readonly Polygon[] | null
  },
): ReliefChoice | EmptyChoice {
  const round = discNotNearer(hole, reference, limits.metres, reference)
  const kept = limits.within ? intersectPolygons(round, limits.within) : round
  const area = partIn(hole, subtractPolygons(kept, limits.except), ON_THE_COURSE)
  const spots = spotsInArea(hole, area)
  if (spots.length === 0)
    return {
      option,
      reason: 'no ground within the relief area is on the course, outside water and not nearer the hole',
    }
  return { option, reference, spots, areaAt: () => area, isValued: true }
}
