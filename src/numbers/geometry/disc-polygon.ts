import type { Point, Polygon } from './point.ts'

/** How far a polygon of {@link discWithin} or {@link discAround} may lie off the true circle, metres. Our assumption: far under anything measured on a course. */
const LARGEST_GAP_METRES = 0.001

/** A disc as a regular polygon with its corners on the circle: no point of it is further from the centre than `radius`, metres. */
export function discWithin(centre: Point, radius: number): Polygon {
  return regular(centre, radius, cornersFor(radius))
}

/** A disc as a regular polygon with its sides on the circle: it leaves out no point of the disc. */
export function discAround(centre: Point, radius: number): Polygon {
  const corners = cornersFor(radius)
  return regular(centre, radius / Math.cos(Math.PI / corners), corners)
}

/** Multiples of four, so that a mirrored disc has mirrored corners. */
function cornersFor(radius: number): number {
  const quarter = Math.PI / 4 / Math.sqrt((2 * LARGEST_GAP_METRES) / Math.max(radius, LARGEST_GAP_METRES))
  return 4 * Math.max(8, Math.ceil(quarter))
}

function regular([x, y]: Point, radius: number, corners: number): Polygon {
  return [
    Array.from({ length: corners }, (_, corner): Point => {
      const angle = (2 * Math.PI * (corner + 0.5)) / corners
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)]
    }),
  ]
}
