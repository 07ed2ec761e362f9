import type { Fault } from '#faults/fault.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { Course, HoleLine } from '../course.ts'
import { distanceToPolygon, greenOfHole } from '../greens/green-of-hole.ts'
import { GREEN_ASTRAY_METRES, GREEN_NEAR_METRES } from '../settings.ts'
import { isBackwards } from './is-backwards.ts'

/** Holes without a green, and greens away from where the line ends. */
export function checkGreens(course: Course): Fault[] {
  return course.holes.flatMap((hole) => {
    const end = hole.line.at(-1)
    if (!end || isBackwards(course, hole)) return []
    const green = greenOfHole(course, hole)
    const away = green ? distanceToPolygon(green.polygon, end) : nearestGreen(course, end)
    if (green && away <= GREEN_NEAR_METRES) return []
    return green || away <= GREEN_ASTRAY_METRES ? [farGreen(hole, away)] : [noGreen(hole)]
  })
}

function nearestGreen(course: Course, end: Point): number {
  return course.areas
    .filter((area) => area.ground === 'green' && area.holes === null)
    .reduce((least, area) => Math.min(least, distanceToPolygon(area.polygon, end)), Number.POSITIVE_INFINITY)
}

function farGreen(hole: HoleLine, away: number): Fault {
  return {
    severity: 'warning',
    code: 'MAR-COURSE-018',
    message: `The green of hole ${hole.ref} lies ${Math.round(away)} m from where its line ends.`,
    place: `hole ${hole.ref}`,
    advice: 'Draw the line on to the middle of the green, or move the green.',
  }
}

function noGreen(hole: HoleLine): Fault {
  return {
    severity: 'warning',
    code: 'MAR-COURSE-019',
    message: `The survey has no green for hole ${hole.ref}; only its pin is known.`,
    place: `hole ${hole.ref}`,
    advice: 'Draw the outline of the green.',
  }
}
