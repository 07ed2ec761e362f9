import type { Fault } from '#faults/fault.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonArea } from '#numbers/geometry/polygon.ts'
import { selfCrossing } from '#numbers/geometry/self-crossing.ts'
import { type TangentPlane, tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import type { Area, Course } from '../course.ts'
import { LEAST_AREA_SQUARE_METRES } from '../settings.ts'

/** Outlines that cross themselves, with the place, and pieces of ground without area. */
export function checkOutlines(course: Course): Fault[] {
  const plane = tangentPlane(course.origin)
  return course.areas.flatMap((area) => {
    const crossing = firstCrossing(area)
    if (crossing) return [crossed(area, crossing, plane)]
    return polygonArea(area.polygon) < LEAST_AREA_SQUARE_METRES ? [empty(area)] : []
  })
}

function firstCrossing(area: Area): Point | null {
  for (const ring of area.polygon) {
    const crossing = ring.length > 3 ? selfCrossing(ring) : null
    if (crossing) return crossing
  }
  return null
}

function crossed(area: Area, at: Point, plane: TangentPlane): Fault {
  const [longitude, latitude] = plane.toLonLat(at)
  return {
    severity: 'error',
    code: 'MAR-COURSE-011',
    message: `The outline of ${area.id} (${area.ground}) crosses itself at longitude ${longitude.toFixed(6)}, latitude ${latitude.toFixed(6)}.`,
    place: area.id,
    advice: 'Move or take out the corners there, so that the outline goes round once.',
  }
}

function empty(area: Area): Fault {
  return {
    severity: 'warning',
    code: 'MAR-COURSE-012',
    message: `${area.id} (${area.ground}) has no area.`,
    place: area.id,
    advice: 'Draw its outline with at least three corners, or take it out.',
  }
}
