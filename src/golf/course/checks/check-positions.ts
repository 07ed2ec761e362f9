import type { Fault } from '#faults/fault.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { Course } from '../course.ts'

/** What of a course can be measured, and a fault for all that cannot because a position is no pair of numbers. */
export function checkPositions(course: Course): { readonly sound: Course; readonly faults: Fault[] } {
  const faults: Fault[] = []
  const isSound = (place: string, points: readonly Point[]): boolean => {
    if (points.every((point) => Number.isFinite(point[0]) && Number.isFinite(point[1]))) return true
    faults.push({
      severity: 'error',
      code: 'MAR-COURSE-010',
      message: `${place} has a position that is not a pair of numbers.`,
      place,
      advice: 'Draw it again, or take it out.',
    })
    return false
  }
  const sound = {
    ...course,
    holes: course.holes.filter((hole) => isSound(`hole ${hole.ref}`, hole.line)),
    areas: course.areas.filter((area) => isSound(area.id, area.polygon.flat())),
    tees: course.tees.filter((tee) => isSound(tee.id, [tee.position])),
    spotHeights: course.spotHeights.filter((spot) => isSound(spot.id, [spot.position])),
    pins: course.pins.filter((pin) => isSound(pin.id, [pin.position])),
  }
  return { sound, faults }
}
