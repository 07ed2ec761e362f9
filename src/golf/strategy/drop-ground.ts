import type { Ground } from '#golf/course/ground.ts'
import { groundReader } from '#golf/course/ground-at.ts'
import { groundRegion } from '#golf/course/ground-pieces.ts'
import type { Hole } from '#golf/course/hole.ts'
import { nearestEdge } from '#numbers/geometry/nearest-edge.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'

/** The surveyed outlines themselves, for drops that a cell of the raster is too coarse for. */
export interface DropGround {
  readonly groundAt: (point: Point) => Ground
  /** The point of the edge of a class of ground that is nearest; `null` where the hole has none of it. */
  readonly edgeOf: (
    ground: Ground,
    point: Point,
  ) => { readonly point: Point; readonly distance: number } | null
}

/** The outlines of a hole; those of a class of ground are cut out when first asked for. */
export function dropGround(hole: Hole): DropGround {
  const regions = new Map<Ground, Polygon[]>()
  const regionOf = (ground: Ground): Polygon[] => {
    const known = regions.get(ground)
    if (known) return known
    const made = groundRegion(hole, ground)
    regions.set(ground, made)
    return made
  }
  return {
    groundAt: groundReader(hole),
    edgeOf: (ground, point) =>
      regionOf(ground)
        .map((polygon) => nearestEdge(polygon, point))
        .reduce<{ readonly point: Point; readonly distance: number } | null>(
          (best, edge) => (best && best.distance <= edge.distance ? best : edge),
          null,
        ),
  }
}
