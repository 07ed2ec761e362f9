import type { Point } from '#numbers/geometry/point.ts'
import type { Spot } from './shot-words.ts'

/** The line on which a shot is asked to finish, in the frame of its hole. */
export interface AskedLine {
  /** Where the ball lies. */
  readonly from: Point
  /** Degrees clockwise from the y axis. */
  readonly heading: number
}

/** Where a spot of a line lies in the frame of the hole. */
export function placeOf({ along, right }: Spot, { from, heading }: AskedLine): Point {
  const [sin, cos] = sinAndCos(heading)
  return [from[0] + along * sin + right * cos, from[1] + along * cos - right * sin]
}

/** How far along and beside a line a place of the hole lies. */
export function spotOf(place: Point, { from, heading }: AskedLine): Spot {
  const [sin, cos] = sinAndCos(heading)
  const [x, y] = [place[0] - from[0], place[1] - from[1]]
  return { along: x * sin + y * cos, right: x * cos - y * sin }
}

/** A turn of degrees made so much wider that the line passes so many metres further to the right at a length; kept to the front of the player. */
export function turned(heading: number, metres: number, atMetres: number): number {
  const offset = Math.sin((heading * Math.PI) / 180) + metres / Math.max(1, atMetres)
  return (Math.asin(Math.max(-MOST_SINE, Math.min(MOST_SINE, offset))) * 180) / Math.PI
}

/** Nobody asks for a line further to the side than 60 degrees. */
const MOST_SINE = Math.sin(Math.PI / 3)

function sinAndCos(heading: number): readonly [sin: number, cos: number] {
  const radians = (heading * Math.PI) / 180
  return [Math.sin(radians), Math.cos(radians)]
}
