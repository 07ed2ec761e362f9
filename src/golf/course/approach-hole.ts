import type { Point } from '#numbers/geometry/point.ts'
import { radiansToDegrees, wholeTurn } from '#numbers/units/units.ts'
import { moveGreenHeights, moveHeightGrid } from './green-heights.ts'
import { greenApproach } from './greens/green-approach.ts'
import type { Hole } from './hole.ts'

/**
 * The same hole turned about its markers so that its last leg, from the last bend through the middle of the green, runs
 * along the y axis: how a player sees the green. Lengths stay, and so does a hole that is straight or has no green.
 */
export function approachHole(hole: Hole): Hole {
  const approach = hole.green && greenApproach(hole.green, hole.line.at(-2) ?? [0, 0])
  if (!approach || approach.headingRadians === 0) return hole
  const { headingRadians } = approach
  const [sin, cos] = [Math.sin(headingRadians), Math.cos(headingRadians)]
  const move = ([x, y]: Point): Point => [x * cos - y * sin, x * sin + y * cos]
  const degrees = radiansToDegrees(headingRadians)
  return {
    ...hole,
    line: hole.line.map(move),
    bearingDegrees: wholeTurn(hole.bearingDegrees + degrees),
    pin: move(hole.pin),
    green: hole.green.map((ring) => ring.map(move)),
    greenFallTowardDegrees: wholeTurn(hole.greenFallTowardDegrees - degrees),
    greenHeights: hole.greenHeights && moveGreenHeights(hole.greenHeights, move),
    areas: hole.areas.map((area) => ({
      ...area,
      polygon: area.polygon.map((ring) => ring.map(move)),
      heightGrid: area.heightGrid && moveHeightGrid(area.heightGrid, move),
    })),
    trees: hole.trees.map((tree) => ({ ...tree, position: move(tree.position) })),
  }
}
