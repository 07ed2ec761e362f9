import type { ReliefRow } from '#golf/strategy/relief.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'

/** The option whose spot lies nearest to a place and within reach of it, metres, and from where a stroke can be planned. */
export function nearestSpot(options: readonly ReliefRow[], at: Point, reach: number): ReliefRow | null {
  const away = ({ spot }: ReliefRow): number => distance([spot.x_m, spot.y_m], at)
  return options
    .filter((row) => row.spot.lie !== null && away(row) <= reach)
    .reduce<ReliefRow | null>((near, row) => (near === null || away(row) < away(near) ? row : near), null)
}
