import type { Point } from '#numbers/geometry/point.ts'
import { polylineLength, projectOnPolyline } from '#numbers/geometry/polyline.ts'
import type { Tree } from '../course.ts'
import type { TreeMeasure } from '../hole-measures.ts'
import { TREES_NEAR_LINE_METRES } from '../settings.ts'

/** Single trees near enough to a hole line to be in play, in the order in which they come. */
export function treeMeasures(trees: readonly Tree[], line: readonly Point[]): TreeMeasure[] {
  const length = polylineLength(line)
  return trees
    .flatMap(({ id, position, heightMetres }): TreeMeasure[] => {
      const { along, offset, distance } = projectOnPolyline(line, position)
      const isBeside = along > 0 && along < length
      if (!isBeside || distance > TREES_NEAR_LINE_METRES) return []
      return [{ id, reachMetres: along, offsetMetres: offset, heightMetres }]
    })
    .sort((a, b) => a.reachMetres - b.reachMetres || a.offsetMetres - b.offsetMetres)
}
