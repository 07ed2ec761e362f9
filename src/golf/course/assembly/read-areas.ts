import type { Point, Polygon, Ring } from '#numbers/geometry/point.ts'
import { signedRingArea } from '#numbers/geometry/polygon.ts'
import type { Area } from '../course.ts'
import type { Ground } from '../ground.ts'
import type { LonLat, SurveyFeature } from '../survey-feature.ts'
import { lineStrip } from './line-strip.ts'
import { readHeightGrid } from './read-height-grid.ts'
import { readLengthMetres, readNumberTag, readRefs } from './read-values.ts'
import { placeOf, type Tally } from './tally.ts'

/** What a feature becomes on the ground. */
export interface GroundChoice {
  readonly ground: Ground
  /** Width of the strip if the feature is a line; `null` = only an outline will do. */
  readonly lineWidthMetres: number | null
}

/**
 * The areas of one feature on the course plane: several for a multipolygon, one strip for a stream or path drawn as
 * a line. Empty, with the feature in the tally, when it has no outline to take.
 */
export function readAreas(
  feature: SurveyFeature,
  choice: GroundChoice,
  toPlane: (position: LonLat) => Point,
  tally: Tally,
): Area[] {
  const polygons = polygonsOf(feature, choice, toPlane, tally)
  if (polygons.length === 0) return []
  const number = (key: string, least: number, most: number): number | null =>
    readNumberTag(feature, key, least, most, tally)
  const holes = readRefs(feature.tags['marram:hole'] ?? (choice.ground === 'green' ? feature.tags.ref : ''))
  const area = {
    ground: choice.ground,
    holes: holes.length > 0 ? holes : null,
    name: feature.tags.name ?? null,
    unplayableShare: number('marram:unplayable', 0, 1),
    lostShare: number('marram:lost', 0, 1),
    heightMetres: number('marram:height_m', 0, 150),
    crownBaseMetres: number('marram:crown_base_m', 0, 150),
    densityPerMetre: number('marram:density', 0, 10),
    fallPercent: number('marram:fall_percent', 0, 30),
    fallTowardDegrees: number('marram:fall_toward_deg', -360, 360),
    heightGrid: choice.ground === 'green' ? readHeightGrid(feature, toPlane, tally) : null,
    gridCellMetres: number('marram:height_cell_m', 0, 1000),
    elevationMetres: number('marram:elevation_m', -500, 9000),
  }
  return polygons.map((polygon, part) => ({
    id: polygons.length === 1 ? feature.id : `${feature.id} part ${part + 1}`,
    polygon,
    ...area,
  }))
}

function polygonsOf(
  feature: SurveyFeature,
  choice: GroundChoice,
  toPlane: (position: LonLat) => Point,
  tally: Tally,
): Polygon[] {
  const { geometry } = feature
  const refuse = (reason: string): Polygon[] => {
    tally.ask(feature, reason)
    const advice = 'Draw its outline as a closed line or an area.'
    tally.fault(
      'warning',
      'MAR-IMPORT-014',
      placeOf(feature),
      `${placeOf(feature)} was left out: ${reason}.`,
      advice,
    )
    return []
  }
  switch (geometry.kind) {
    case 'area':
      return usable([geometry.rings.map((ring) => openRing(ring, toPlane))])
    case 'areas':
      return usable(geometry.polygons.map((rings) => rings.map((ring) => openRing(ring, toPlane))))
    case 'line': {
      const first = geometry.positions[0]
      const last = geometry.positions.at(-1)
      const isClosed = first && last && first[0] === last[0] && first[1] === last[1]
      if (choice.lineWidthMetres === null) {
        if (!isClosed) return refuse(`${choice.ground} is drawn as an open line`)
        return usable([[openRing(geometry.positions, toPlane)]])
      }
      const written = readLengthMetres(feature.tags.width ?? '')
      const width = written !== null && written > 0 ? written : choice.lineWidthMetres
      const strip = lineStrip(geometry.positions.map(toPlane), width)
      return strip ? [[strip]] : refuse('its line has no length')
    }
    case 'point':
      return refuse(`${choice.ground} is drawn as a point`)
    case 'none':
      return refuse(geometry.reason)
  }

  function usable(polygons: Polygon[]): Polygon[] {
    const kept = polygons.filter((polygon) => polygon.every((ring) => ring.length >= 3)).map(orient)
    return kept.length === polygons.length ? kept : refuse('a ring of it has fewer than three corners')
  }
}

// The last position repeats the first; repeated corners in a row say nothing and would make edges without direction.
function openRing(positions: readonly LonLat[], toPlane: (position: LonLat) => Point): Ring {
  const points = positions
    .filter((p, i) => i === 0 || p[0] !== positions[i - 1]?.[0] || p[1] !== positions[i - 1]?.[1])
    .map(toPlane)
  const first = points[0]
  const last = points.at(-1)
  return points.length > 1 && first && last && first[0] === last[0] && first[1] === last[1]
    ? points.slice(0, -1)
    : points
}

/** A polygon with its outline anticlockwise and the holes in it clockwise, as RFC 7946 writes them. */
export function orient(polygon: Polygon): Polygon {
  return polygon.map((ring, index) =>
    signedRingArea(ring) >= 0 === (index === 0) ? ring : [...ring].reverse(),
  )
}
