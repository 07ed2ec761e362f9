import { Failure } from '#faults/failure.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { polygonCentroid, polygonContains } from '#numbers/geometry/polygon.ts'
import type { Area, Course, HoleLine } from '../course.ts'
import type { DayPin } from '../day.ts'
import { dayPinWords } from '../day-pin-words.ts'
import { type GreenApproach, greenApproach } from '../greens/green-approach.ts'
import { distanceToPolygon } from '../greens/green-of-hole.ts'
import { ahead } from '../measures/ahead.ts'
import { chordsAcross } from '../measures/chords-across.ts'
import { gapFromZero } from '../measures/intervals.ts'
import {
  PACE_METRES,
  PIN_EDGE_TOLERANCE_METRES,
  PIN_MARGIN_DEPTH_SHARE,
  PIN_MARGIN_METRES,
} from '../settings.ts'

/** Where the hole is cut when nobody says: the line's end if it lies on the green (or no green is known), else a surveyed pin on the green, else the middle of the green. Course plane. */
export function middlePin(course: Course, hole: HoleLine, green: Area | null, from: Point): Point {
  const end = hole.line.at(-1) ?? from
  if (!green || polygonContains(green.polygon, end)) return end
  const surveyed = course.pins
    .filter((pin) => (pin.holes ? pin.holes.includes(hole.ref) : true))
    .filter((pin) => polygonContains(green.polygon, pin.position))
    .sort((a, b) => distance(a.position, end) - distance(b.position, end))[0]
  if (surveyed) return surveyed.position
  return greenApproach(green.polygon, from)?.middle ?? polygonCentroid(green.polygon)
}

/** The hole cut 4 yards in from the front or back edge on the line of approach. Throws a Failure without a green. */
export function edgePin(hole: HoleLine, green: Area | null, from: Point, edge: 'front' | 'back'): Point {
  const approach = approachOf(hole, green, from)
  const margin = Math.min(PIN_MARGIN_METRES, PIN_MARGIN_DEPTH_SHARE * approach.depthMetres)
  return edge === 'front'
    ? ahead(approach.front, approach.headingRadians, margin)
    : ahead(approach.back, approach.headingRadians, -margin)
}

/**
 * A hole location of a pin sheet: paces on from the front edge along the line of approach, then paces in from the
 * left or right edge of the green at that depth, or half way between them. Throws a Failure when that place is not on the green.
 */
export function pacedPin(hole: HoleLine, green: Area | null, from: Point, paces: DayPin): Point {
  const approach = approachOf(hole, green, from)
  const depth = ahead(approach.front, approach.headingRadians, paces.yPaces * PACE_METRES)
  const chord = chordsAcross(green?.polygon ?? [], depth, approach.headingRadians).sort(
    (a, b) => gapFromZero(a) - gapFromZero(b),
  )[0]
  const across = paces.from === 'middle' ? 0 : paces.xPaces * PACE_METRES
  if (!chord || across > chord[1] - chord[0])
    throw new Failure(
      'MAR-COURSE-005',
      `The pin of hole ${hole.ref}, ${dayPinWords(paces)}, is not on its green, which is ${Math.round(approach.depthMetres / PACE_METRES)} paces deep${chord ? ` and ${Math.round((chord[1] - chord[0]) / PACE_METRES)} wide there` : ''}.`,
      `pins.${hole.ref}`,
    )
  const right = {
    left: chord[0] + across,
    middle: (chord[0] + chord[1]) / 2,
    right: chord[1] - across,
  }[paces.from]
  return ahead(depth, approach.headingRadians + Math.PI / 2, right)
}

/** Throws a Failure when a typed pin lies off the green; without a green every place is taken. */
export function requireOnGreen(hole: HoleLine, green: Area | null, pin: Point): void {
  const away = green ? distanceToPolygon(green.polygon, pin) : 0
  if (away > PIN_EDGE_TOLERANCE_METRES)
    throw new Failure(
      'MAR-COURSE-005',
      `The pin lies ${Math.round(away)} m outside the green of hole ${hole.ref}.`,
      `hole ${hole.ref}`,
    )
}

function approachOf(hole: HoleLine, green: Area | null, from: Point): GreenApproach {
  const approach = green && greenApproach(green.polygon, from)
  if (approach) return approach
  throw new Failure(
    'MAR-COURSE-006',
    `The survey has no green for hole ${hole.ref}, so front, back and paces mean nothing there.`,
    `hole ${hole.ref}`,
  )
}
