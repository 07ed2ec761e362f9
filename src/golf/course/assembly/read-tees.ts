import { nearestEdge } from '#numbers/geometry/nearest-edge.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonCentroid, polygonContains } from '#numbers/geometry/polygon.ts'
import type { Tee } from '../course.ts'
import type { SurveyFeature } from '../survey-feature.ts'
import { readNumberTag, readRefs } from './read-values.ts'
import type { Tally } from './tally.ts'

/** The markers of one feature at a place: one for every name in its `tee` tag, or one without a name. */
export function teesAt(feature: SurveyFeature, id: string, position: Point, tally: Tally): Tee[] {
  const names = readRefs(feature.tags.tee)
  const holes = readRefs(feature.tags['marram:hole'] ?? feature.tags.ref)
  const elevationMetres = readNumberTag(feature, 'marram:elevation_m', -500, 9000, tally)
  return (names.length > 0 ? names : ['']).map((name, index) => ({
    id: index === 0 ? id : `${id} ${index + 1}`,
    name,
    holes: holes.length > 0 ? holes : null,
    position,
    elevationMetres,
  }))
}

/**
 * Where markers stand on a teeing ground drawn as an area: on the hole line that starts in it, else in its middle.
 */
export function markersOn(polygon: Polygon, starts: readonly Point[]): Point {
  const start = starts.find((point) => polygonContains(polygon, point))
  if (start) return start
  const centre = polygonCentroid(polygon)
  return polygonContains(polygon, centre) ? centre : nearestEdge(polygon, centre).point
}
