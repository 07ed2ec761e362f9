import { groundReader } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { ReliefOption } from '#golf/rules/relief-options.ts'
import { intersectPolygons, subtractPolygons } from '#numbers/geometry/combine-polygons.ts'
import { distance, type Point, type Polygon } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { areaOfCourse, partIn } from './areas-of-the-course.ts'
import { discNotNearer } from './not-nearer.ts'
import type { EmptyChoice, ReliefChoice } from './relief-choice.ts'
import { INSIDE_EDGE_METRES } from './spots-in-area.ts'
import { isInSurvey } from './survey-window.ts'

/** Spots on the line stand so far apart, metres: near the reference point, and from the third on. Our assumption: values change by under 0.01 of a stroke over the step. */
const NEAR_STEP_METRES = 0.25
const FAR_STEP_METRES = 1
const FAR_METRES = 10

/**
 * Back-on-the-line relief (Rules of Golf 2023, 17.1d(2), 19.2b, 19.3): on the line from the hole through the reference
 * point, any distance back, as far as the survey goes. Where the ball is dropped on the line makes its relief area of
 * so many metres around, not nearer the hole than the reference point and in the same area of the course.
 */
export function lineChoice(
  hole: Hole,
  option: ReliefOption,
  reference: Point,
  limits: {
    readonly metres: number
    readonly except: readonly Polygon[]
    readonly within: readonly Polygon[] | null
  },
): ReliefChoice | EmptyChoice {
  const { except, within } = limits
  const groundOf = groundReader(hole)
  const isAllowed = (point: Point): boolean => {
    const area = areaOfCourse(groundOf(point))
    if (area === 'out' || area === 'penalty-area') return false
    return !isIn(except, point) && (within === null || isIn(within, point))
  }
  const spots = pointsBack(hole, reference)
    .filter(({ spot, behind }) => isAllowed(spot) && isAllowed(behind))
    .map(({ spot }) => spot)
  if (spots.length === 0)
    return {
      option,
      reason:
        within === null
          ? 'the line runs back over nothing but water and ground out of bounds, as far as the survey goes'
          : 'the line leaves the bunker at once',
    }
  return {
    option,
    reference,
    spots,
    isValued: true,
    areaAt: (spot) => {
      const disc = subtractPolygons(discNotNearer(hole, spot, limits.metres, reference), except)
      const kept = within === null ? disc : intersectPolygons(disc, within)
      return partIn(hole, kept, [areaOfCourse(groundOf(spot))])
    },
  }
}

function* stepsBack(): Generator<number> {
  for (let back = 0; back < FAR_METRES; back += NEAR_STEP_METRES) yield back
  for (let back = FAR_METRES; ; back += FAR_STEP_METRES) yield back
}

/** Spots on the line with a point just behind each: on the very edge of water there is no room for a ball. */
function pointsBack(hole: Hole, [x, y]: Point): { readonly spot: Point; readonly behind: Point }[] {
  const away = distance(hole.pin, [x, y])
  if (away === 0) return []
  const at = (back: number): Point => [
    x + ((x - hole.pin[0]) / away) * back,
    y + ((y - hole.pin[1]) / away) * back,
  ]
  const points: { readonly spot: Point; readonly behind: Point }[] = []
  for (const back of stepsBack()) {
    const point = { spot: at(back), behind: at(back + INSIDE_EDGE_METRES) }
    if (!isInSurvey(hole, point.behind)) break
    points.push(point)
  }
  return points
}

function isIn(polygons: readonly Polygon[], point: Point): boolean {
  return polygons.some((polygon) => polygonContains(polygon, point))
}
