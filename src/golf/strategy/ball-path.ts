import type { Point } from '#numbers/geometry/point.ts'

/** A stroke's way over the ground: carry along a start line that bends, then run. */
export interface BallFlight {
  readonly from: Point
  /** Straight from the ball to the landing: radians clockwise from the y axis, and metres. */
  readonly heading: number
  readonly carryMetres: number
  /** Sideways curve as a share of the carry, negative = to the left: a player's `curveShare`. */
  readonly curveShare: number
  readonly runMetres: number
}

/** Straight pieces that stand for a bent flight: the largest gap to the true bend is 1/800 of the curve. Our assumption. */
const PIECES = 20

/**
 * The ball's path over the ground, from the stroke to where it stops. The ball leaves by atan(curve share) to one side
 * of its landing, comes in by as much from the other, and runs on that way; between them its path is a parabola.
 */
export function ballPath({ from, heading, carryMetres, curveShare, runMetres }: BallFlight): Point[] {
  const sin = Math.sin(heading)
  const cos = Math.cos(heading)
  const path = Array.from({ length: PIECES + 1 }, (_, piece): Point => {
    const share = piece / PIECES
    const along = share * carryMetres
    // Leaves with the slope −curve share and comes in with +curve share.
    const aside = -curveShare * carryMetres * share * (1 - share)
    return [from[0] + along * sin + aside * cos, from[1] + along * cos - aside * sin]
  })
  const landing = path.at(-1) ?? from
  const running = heading + Math.atan(curveShare)
  if (runMetres > 0)
    path.push([landing[0] + runMetres * Math.sin(running), landing[1] + runMetres * Math.cos(running)])
  return path
}
