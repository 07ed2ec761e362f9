import type { Point } from '#numbers/geometry/point.ts'
import type { Spot } from './shot-words.ts'

/** Degrees clockwise from the y axis of a hole's frame in which a shot from the markers is asked to finish. */
export type Heading = number

/** Where a spot of a line lies in the frame of the hole. */
export function placeOf({ along, right }: Spot, heading: Heading): Point {
  const [sin, cos] = sinAndCos(heading)
  return [along * sin + right * cos, along * cos - right * sin]
}

/** How far along and beside a line a place of the hole lies. */
export function spotOf([x, y]: Point, heading: Heading): Spot {
  const [sin, cos] = sinAndCos(heading)
  return { along: x * sin + y * cos, right: x * cos - y * sin }
}

/** The line turned so that it passes so many metres further to the right at a length; kept to the front of the player. */
export function turned(heading: Heading, metres: number, atMetres: number): Heading {
  const offset = Math.sin((heading * Math.PI) / 180) + metres / Math.max(1, atMetres)
  return (Math.asin(Math.max(-MOST_SINE, Math.min(MOST_SINE, offset))) * 180) / Math.PI
}

/** Nobody asks for a line further to the side than 60 degrees. */
const MOST_SINE = Math.sin(Math.PI / 3)

function sinAndCos(heading: Heading): readonly [sin: number, cos: number] {
  const radians = (heading * Math.PI) / 180
  return [Math.sin(radians), Math.cos(radians)]
}
