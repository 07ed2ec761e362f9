import type { Course } from '#golf/course/course.ts'
import { moveGreenHeights } from '#golf/course/green-heights.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { servingTees } from '#golf/course/serving-tees.ts'
import { planarFrame } from '#numbers/geometry/frame.ts'
import type { Polygon } from '#numbers/geometry/point.ts'
import { degreesToRadians, wholeTurn } from '#numbers/units/units.ts'

/**
 * The only hole of a typed course in the plane of its table, not turned to its markers and pin: there the rows are
 * measured, and a chart of it lies still while tees and green are typed. `null` when the course has no hole.
 */
export function holeAsSurveyed(course: Course): Hole | null {
  const [surveyed] = course.holes
  const start = surveyed?.line[0]
  if (surveyed === undefined || start === undefined) return null
  const hole = holeFromCourse(course, surveyed.ref)
  const origin = servingTees(course, surveyed)[0]?.position ?? start
  const { fromFrame } = planarFrame(origin, degreesToRadians(hole.bearingDegrees))
  const moved = (polygon: Polygon): Polygon => polygon.map((ring) => ring.map(fromFrame))
  return {
    ...hole,
    line: hole.line.map(fromFrame),
    pin: fromFrame(hole.pin),
    bearingDegrees: 0,
    green: hole.green && moved(hole.green),
    greenFallTowardDegrees: wholeTurn(hole.greenFallTowardDegrees + hole.bearingDegrees),
    greenHeights: hole.greenHeights && moveGreenHeights(hole.greenHeights, fromFrame),
    areas: hole.areas.map((area) => ({ ...area, polygon: moved(area.polygon) })),
  }
}
