import type { Fault } from '#faults/fault.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import type { Course } from '../course.ts'
import type { Ground } from '../ground.ts'
import { isWithin } from '../holes/corridor.ts'
import { CORRIDOR_HALF_WIDTH_METRES, FAR_FROM_HOLES_METRES } from '../settings.ts'

const HAZARDS: ReadonlySet<Ground> = new Set([
  'bunker',
  'penalty-red',
  'penalty-yellow',
  'trees',
  'scrub',
  'heavy',
])

/** Hazards in no hole's corridor, and anything far from every hole. */
export function checkPlaces(course: Course): Fault[] {
  const lines = course.holes.map((hole) => hole.line).filter((line) => line.length > 1)
  if (lines.length === 0) return []
  const isNear = (polygon: Polygon, metres: number): boolean =>
    lines.some((line) => isWithin(polygon, line, metres))
  return [
    ...course.areas.flatMap((area): Fault[] => {
      if (!isNear(area.polygon, FAR_FROM_HOLES_METRES)) return [far(area.id, area.ground)]
      const isOwned = area.holes !== null || isNear(area.polygon, CORRIDOR_HALF_WIDTH_METRES)
      return HAZARDS.has(area.ground) && !isOwned ? [unowned(area.id, area.ground)] : []
    }),
    ...course.tees
      .filter((tee) => !isNear(spot(tee.position), FAR_FROM_HOLES_METRES))
      .map((tee) => far(tee.id, 'tee')),
    ...course.pins
      .filter((pin) => !isNear(spot(pin.position), FAR_FROM_HOLES_METRES))
      .map((pin) => far(pin.id, 'pin')),
  ]
}

function spot(point: Point): Polygon {
  return [[point]]
}

function far(id: string, what: string): Fault {
  return {
    severity: 'warning',
    code: 'MAR-COURSE-026',
    message: `${id} (${what}) lies more than ${FAR_FROM_HOLES_METRES} m from every hole line.`,
    place: id,
    advice: 'Check its position; take it out if it belongs to no hole.',
  }
}

function unowned(id: string, ground: Ground): Fault {
  return {
    severity: 'note',
    code: 'MAR-COURSE-025',
    message: `${id} (${ground}) lies more than ${CORRIDOR_HALF_WIDTH_METRES} m from every hole line and belongs to none.`,
    place: id,
    advice: 'Nothing to do, unless it is in play: then name its hole in marram:hole.',
  }
}
