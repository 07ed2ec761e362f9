import type { Point } from './point.ts'

/** The plane nearest to heights over places, metres. */
export interface PlaneFit {
  /** Mean of the places, and the height of the plane there, which is the mean of the heights. */
  readonly centre: Point
  readonly height: number
  /** Rise per metre towards +x and towards +y. */
  readonly gradient: Point
  /** Root mean square distance of the places from the straight line nearest to them: how firmly they hold the plane. */
  readonly spreadMetres: number
}

/**
 * The plane with the least sum of squared differences in height; `null` for fewer than three places or places on one
 * straight line, through which no plane is fixed.
 */
export function fitPlane(places: readonly Point[], heights: readonly number[]): PlaneFit | null {
  const count = places.length
  if (count < 3) return null
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / count
  const centre: Point = [mean(places.map(([x]) => x)), mean(places.map(([, y]) => y))]
  const height = mean(heights)
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0]
  for (const [index, [x, y]] of places.entries()) {
    const [dx, dy, dz] = [x - centre[0], y - centre[1], (heights[index] ?? height) - height]
    xx += dx * dx
    xy += dx * dy
    yy += dy * dy
    xz += dx * dz
    yz += dy * dz
  }
  const determinant = xx * yy - xy * xy
  const widest = (xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy)
  if (!(determinant > SAME_LINE * widest * widest)) return null
  return {
    centre,
    height,
    gradient: [(xz * yy - yz * xy) / determinant, (yz * xx - xz * xy) / determinant],
    spreadMetres: Math.sqrt(determinant / widest / count),
  }
}

/** Places whose spread across is so small a share of their spread along, squared, lie on one line: far under any survey's accuracy, far over rounding. */
const SAME_LINE = 1e-9
