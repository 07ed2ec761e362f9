import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonBounds, polygonContains } from '#numbers/geometry/polygon.ts'

/** Places inside a piece of ground, on a square grid with so many metres between them. */
export function placesInside(polygon: Polygon, stepMetres: number): Point[] {
  const { minX, minY, maxX, maxY } = polygonBounds(polygon)
  const places: Point[] = []
  for (let y = minY + stepMetres / 2; y < maxY; y += stepMetres)
    for (let x = minX + stepMetres / 2; x < maxX; x += stepMetres)
      if (polygonContains(polygon, [x, y])) places.push([x, y])
  return places
}
