import { combinedAreas } from './clipping/clipped-areas.ts'
import type { Polygon } from './point.ts'

/*
 * Boolean operations on areas. Each argument is a set whose members may overlap; each polygon is read by the
 * even-odd rule; corners are rounded to a micrometre. Results do not overlap, their outlines turn anticlockwise
 * and holes clockwise, and they stand in no particular order; nothing left is an empty list.
 */

/** What lies in any of `polygons`. */
export function unitePolygons(polygons: readonly Polygon[]): Polygon[] {
  return combinedAreas('either', polygons, [])
}

/** What lies both in one of `first` and in one of `second`. */
export function intersectPolygons(first: readonly Polygon[], second: readonly Polygon[]): Polygon[] {
  return combinedAreas('both', first, second)
}

/** What lies in one of `first` and in none of `second`. */
export function subtractPolygons(first: readonly Polygon[], second: readonly Polygon[]): Polygon[] {
  return combinedAreas('first-only', first, second)
}
