import type { Ground } from '#golf/course/ground.ts'
import { groundPieces } from '#golf/course/ground-pieces.ts'
import type { Hole } from '#golf/course/hole.ts'
import { unitePolygons } from '#numbers/geometry/combine-polygons.ts'
import type { Polygon } from '#numbers/geometry/point.ts'

/**
 * Where the Rules say a ball lies (Rules of Golf 2023, Rule 2.2), and beyond the boundary. The teeing area counts only
 * before the first stroke and for playing again from it, so a tee elsewhere is the general area.
 */
export type AreaOfCourse = 'general' | 'bunker' | 'penalty-area' | 'green' | 'out'

/** The area of the course that a class of ground belongs to. */
export function areaOfCourse(ground: Ground): AreaOfCourse {
  switch (ground) {
    case 'out':
    case 'bunker':
    case 'green':
      return ground
    case 'penalty-red':
    case 'penalty-yellow':
      return 'penalty-area'
    default:
      return 'general'
  }
}

/** What a shape of the hole frame has of some areas of the course. */
export function partIn(hole: Hole, shape: readonly Polygon[], wanted: readonly AreaOfCourse[]): Polygon[] {
  return unitePolygons(
    groundPieces(hole, shape)
      .filter(({ ground }) => wanted.includes(areaOfCourse(ground)))
      .flatMap(({ polygons }) => polygons),
  )
}
