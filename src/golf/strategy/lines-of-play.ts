import type { Hole } from '#golf/course/hole.ts'
import { polylineLength, projectOnPolyline } from '#numbers/geometry/polyline.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import {
  LINE_STEP_DEGREES,
  LINES_ABOUT_BEND_DEGREES,
  LINES_ABOUT_PIN_DEGREES,
  SIDEWAYS_DEGREES,
  SIDEWAYS_STEP_DEGREES,
} from './settings.ts'

/** Headings are whole multiples of the line step, so that far states share their shot tables. */
export const HEADINGS: number = 360 / LINE_STEP_DEGREES

/** Heading of a heading's number, radians clockwise from the y axis, in (−π, π]. */
export function headingOf(index: number): number {
  const signed = index > HEADINGS / 2 ? index - HEADINGS : index
  return degreesToRadians(signed * LINE_STEP_DEGREES)
}

/** Directions from a point to the pin and to the next bend of the hole line, radians; the bend is NaN on the last leg. */
export function directionsOn(
  hole: Hole,
  x: number,
  y: number,
): { readonly pin: number; readonly bend: number } {
  const pin = Math.atan2(hole.pin[0] - x, hole.pin[1] - y)
  const { along } = projectOnPolyline(hole.line, [x, y])
  for (let vertex = 1; vertex < hole.line.length - 1; vertex++) {
    if (polylineLength(hole.line.slice(0, vertex + 1)) <= along + NEAR_BEND_METRES) continue
    const [bendX, bendY] = hole.line[vertex] as readonly [number, number]
    return { pin, bend: Math.atan2(bendX - x, bendY - y) }
  }
  return { pin, bend: Number.NaN }
}

/** A bend this close ahead no longer gives a line to play. */
const NEAR_BEND_METRES = 30

/** Numbers of the headings that are tried from a point; `bend` is NaN where there is none ahead. */
export function linesOfPlay(
  pin: number,
  bend: number,
  isSideways: boolean,
  aboutPinDegrees: number = LINES_ABOUT_PIN_DEGREES,
): number[] {
  const found = new Set<number>()
  addAround(found, pin, aboutPinDegrees, LINE_STEP_DEGREES)
  if (!Number.isNaN(bend)) addAround(found, bend, LINES_ABOUT_BEND_DEGREES, LINE_STEP_DEGREES)
  if (isSideways) addAround(found, pin, SIDEWAYS_DEGREES, SIDEWAYS_STEP_DEGREES)
  return [...found]
}

/** Every multiple of `step` degrees within `reach` degrees of a direction: as many to the left as to the right of its mirror. */
function addAround(found: Set<number>, direction: number, reach: number, step: number): void {
  const centre = (direction * 180) / Math.PI
  const first = Math.ceil((centre - reach) / step)
  const last = Math.floor((centre + reach) / step)
  for (let multiple = first; multiple <= last; multiple++) {
    const index = (multiple * step) / LINE_STEP_DEGREES
    found.add(((index % HEADINGS) + HEADINGS) % HEADINGS)
  }
}
