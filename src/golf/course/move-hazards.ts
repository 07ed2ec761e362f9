import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { fromBox, type HazardBox, hazardBox, inBox } from './hazard-box.ts'
import type { Hole } from './hole.ts'

/**
 * How far the sides of a hazard are moved from where they were surveyed, metres: `near` and `far` onwards along the
 * hole, `left` and `right` to the right. All sides of a pair alike = the whole hazard.
 */
export type HazardMove = Pick<HazardBox, 'near' | 'far' | 'left' | 'right'>

/** A hazard where it was surveyed. */
export const NOT_MOVED: HazardMove = { near: 0, far: 0, left: 0, right: 0 }

/** Sides that are moved towards each other stay so far apart, or as they were surveyed where that is less; metres. */
const LEAST_METRES = 2

/** The hole with some of its hazards moved or stretched, by the ids of their areas; all else stays where it is. */
export function moveHazards(hole: Hole, moves: Readonly<Record<string, HazardMove>>): Hole {
  const areas = hole.areas.map((area) => {
    const move = moves[area.id]
    return move === undefined ? area : { ...area, polygon: movePolygon(area.polygon, hole.line, move) }
  })
  return { ...hole, areas }
}

/** The box about a hazard with its sides moved. */
export function moveBox(box: HazardBox, move: HazardMove): HazardBox {
  const [near, far] = apart([box.near, box.far], [move.near, move.far])
  const [left, right] = apart([box.left, box.right], [move.left, move.right])
  return { ...box, near, far, left, right }
}

function movePolygon(polygon: Polygon, line: readonly Point[], move: HazardMove): Polygon {
  const box = hazardBox(polygon, line)
  const moved = moveBox(box, move)
  const across = onto([box.left, box.right], [moved.left, moved.right])
  const along = onto([box.near, box.far], [moved.near, moved.far])
  return polygon.map((ring) =>
    ring.map((point) => {
      const [right, on] = inBox(box, point)
      return fromBox(box, [across(right), along(on)])
    }),
  )
}

/** Two sides moved, kept from meeting. */
function apart([low, high]: Point, [moveLow, moveHigh]: Point): Point {
  const least = Math.min(LEAST_METRES, high - low)
  const [newLow, newHigh] = [low + moveLow, high + moveHigh]
  if (newHigh - newLow >= least) return [newLow, newHigh]
  const middle = (newLow + newHigh) / 2
  return [middle - least / 2, middle + least / 2]
}

/** Takes one stretch of a line onto another, in proportion. */
function onto([low, high]: Point, [newLow, newHigh]: Point): (at: number) => number {
  const share = high > low ? (newHigh - newLow) / (high - low) : 1
  return (at) => newLow + (at - low) * share
}
