import { intersectPolygons, subtractPolygons } from '#numbers/geometry/combine-polygons.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonArea, polygonContains } from '#numbers/geometry/polygon.ts'
import { projectOnPolyline } from '#numbers/geometry/polyline.ts'
import type { TangentPlane } from '#numbers/geometry/tangent-plane.ts'
import type { Area, HoleLine, Pin, SpotHeight, Tee, Tree } from '../course.ts'
import { isWithin } from '../holes/corridor.ts'
import type { SurveyFeature } from '../survey-feature.ts'
import { positionsOf } from './feature-positions.ts'
import { readAreas } from './read-areas.ts'
import { markersOn, teesAt } from './read-tees.ts'
import { readNumberTag, readRefs } from './read-values.ts'
import { FAR_FROM_PLAY_METRES, NAMED_HOLE_WITHIN_METRES } from './settings.ts'
import type { GroundFeature, SortedFeatures } from './sort-features.ts'
import { placeOf, type Tally } from './tally.ts'

/** Where the features are put. */
export interface Site {
  readonly plane: TangentPlane
  readonly holes: readonly HoleLine[]
  /** Our own course file: nothing in it is too far away or doubted. */
  readonly isTrusted: boolean
  readonly tally: Tally
}

const FAR = `it lies more than ${FAR_FROM_PLAY_METRES} m from every hole`

/** Areas beside the feature they came from. */
export interface PlacedAreas {
  readonly feature: SurveyFeature
  readonly areas: readonly Area[]
}

/** The ground of the course. */
export function placeGround(items: readonly GroundFeature[], site: Site): PlacedAreas[] {
  const placed: PlacedAreas[] = []
  const sand = new Set<Area>()
  for (const { feature, role } of items) {
    const found = readAreas(feature, role, site.plane.toPlane, site.tally)
    if (found.length === 0) continue
    if (!found.some((area) => isInPlay(area, site))) {
      site.tally.ignore(feature, FAR)
      continue
    }
    site.tally.use(feature, role.ground)
    placed.push({ feature, areas: found })
    if (role.isBareSand) for (const area of found) sand.add(area)
    if (role.assumed !== null) noteAssumed(feature, role.assumed, site.tally)
  }
  if (sand.size === 0) return placed
  const all = placed.flatMap(({ areas }) => areas)
  const dried = (area: Area): Area[] => (sand.has(area) ? sandOutOfWater(area, all) : [area])
  return placed.map(({ feature, areas }) => ({ feature, areas: areas.flatMap(dried) }))
}

/** Markers, from points and from teeing grounds that have no point on them; and the teeing grounds as areas. */
export function placeTees(
  features: readonly SurveyFeature[],
  site: Site,
): { tees: Tee[]; grounds: PlacedAreas[] } {
  const tees: Tee[] = []
  const grounds: PlacedAreas[] = []
  for (const feature of features) {
    if (feature.geometry.kind !== 'point' || !isPlacedRight(feature, site)) continue
    tees.push(...teesAt(feature, feature.id, site.plane.toPlane(feature.geometry.position), site.tally))
    site.tally.use(feature, 'tee markers')
  }
  const points = tees.map((tee) => tee.position)
  const starts = site.holes.flatMap((hole) => hole.line.slice(0, 1))
  for (const feature of features) {
    if (feature.geometry.kind === 'point' || !isPlacedRight(feature, site)) continue
    const found = readAreas(feature, { ground: 'tee', lineWidthMetres: null }, site.plane.toPlane, site.tally)
    if (found.length === 0) continue
    grounds.push({ feature, areas: found })
    site.tally.use(feature, 'tee')
    // Written by encodeCourse: the markers of this ground are features of their own.
    if (feature.tags['marram:markers'] === 'apart') continue
    for (const ground of found) {
      if (points.some((point) => polygonContains(ground.polygon, point))) continue
      tees.push(...teesAt(feature, `${ground.id} markers`, markersOn(ground.polygon, starts), site.tally))
    }
  }
  return { tees, grounds }
}

/** Hole locations. */
export function placePins(features: readonly SurveyFeature[], site: Site): Pin[] {
  return features.flatMap((feature): Pin[] => {
    const position = pointOf(feature, 'pin', site)
    if (!position || !isPlacedRight(feature, site)) return []
    const holes = readRefs(feature.tags['marram:hole'] ?? feature.tags.ref)
    site.tally.use(feature, 'pin')
    return [{ id: feature.id, holes: holes.length > 0 ? holes : null, position }]
  })
}

/** Single trees. */
export function placeTrees(features: readonly SurveyFeature[], site: Site): Tree[] {
  return features.flatMap((feature): Tree[] => {
    const position = pointOf(feature, 'tree', site)
    if (!position) return []
    if (!isPointInPlay(position, site)) {
      site.tally.ignore(feature, FAR)
      return []
    }
    site.tally.use(feature, 'tree')
    const number = (key: string, most: number): number | null =>
      readNumberTag(feature, key, 0, most, site.tally)
    const crown = number('diameter_crown', 60)
    return [
      {
        id: feature.id,
        position,
        heightMetres: number('marram:height_m', 150) ?? number('height', 150),
        crownBaseMetres: number('marram:crown_base_m', 150),
        crownRadiusMetres: crown === null ? null : crown / 2,
        densityPerMetre: number('marram:density', 10),
      },
    ]
  })
}

/** Heights at single places. One without a height says nothing, so a person is asked. */
export function placeSpotHeights(features: readonly SurveyFeature[], site: Site): SpotHeight[] {
  return features.flatMap((feature): SpotHeight[] => {
    const position = pointOf(feature, 'spot height', site)
    if (!position) return []
    if (!isPointInPlay(position, site)) {
      site.tally.ignore(feature, FAR)
      return []
    }
    const elevationMetres = readNumberTag(feature, 'marram:elevation_m', -500, 9000, site.tally)
    if (elevationMetres === null) {
      site.tally.ask(feature, 'a spot height has no height')
      site.tally.fault(
        'warning',
        'MAR-IMPORT-032',
        placeOf(feature),
        `${placeOf(feature)} was left out: a spot height has no height.`,
        'Write its height in metres as marram:elevation_m.',
      )
      return []
    }
    site.tally.use(feature, 'spot height')
    return [{ id: feature.id, position, elevationMetres }]
  })
}

/** What is left: boundaries and ranges told the importer something; the doubtful matters only near a hole. */
export function placeTheRest(sorted: SortedFeatures, site: Site): void {
  for (const feature of sorted.boundaries) site.tally.use(feature, 'boundary that names the course')
  for (const feature of sorted.ranges) site.tally.use(feature, 'practice ground on which no line is a hole')
  for (const { feature, reason } of sorted.doubtful) {
    const line = positionsOf(feature).map(site.plane.toPlane)
    if (line.some((point) => isPointInPlay(point, site))) site.tally.ask(feature, reason)
    else site.tally.ignore(feature, FAR)
  }
}

function isInPlay(area: Area, site: Site): boolean {
  if (site.isTrusted || site.holes.length === 0 || area.holes) return true
  return site.holes.some((hole) => isWithin(area.polygon, hole.line, FAR_FROM_PLAY_METRES))
}

function isPointInPlay(point: Point, site: Site): boolean {
  if (site.isTrusted || site.holes.length === 0) return true
  return site.holes.some((hole) => projectOnPolyline(hole.line, point).distance <= FAR_FROM_PLAY_METRES)
}

// A tee or pin that names holes must name one of this course, and stand by it: other courses have the same numbers.
function isPlacedRight(feature: SurveyFeature, site: Site): boolean {
  if (site.isTrusted || site.holes.length === 0) return true
  const points = positionsOf(feature).map(site.plane.toPlane)
  const refs = readRefs(feature.tags['marram:hole'] ?? feature.tags.ref)
  const named = site.holes.filter((hole) => refs.includes(hole.ref))
  const isNear = (hole: HoleLine): boolean =>
    points.some((point) => projectOnPolyline(hole.line, point).distance <= NAMED_HOLE_WITHIN_METRES)
  if (refs.length > 0 && named.length === 0) {
    site.tally.ignore(feature, `its ref ${refs.join(', ')} is no hole of this course`)
  } else if (named.length > 0 && !named.some(isNear)) {
    site.tally.ask(feature, `it names hole ${refs.join(', ')} but lies far from its line`)
  } else if (refs.length === 0 && !points.some((point) => isPointInPlay(point, site))) {
    site.tally.ignore(feature, FAR)
  } else return true
  return false
}

function pointOf(feature: SurveyFeature, what: string, site: Site): Point | null {
  if (feature.geometry.kind === 'point') return site.plane.toPlane(feature.geometry.position)
  site.tally.ask(feature, `a ${what} is a point, but this is drawn as a line or area`)
  site.tally.fault(
    'warning',
    'MAR-IMPORT-014',
    placeOf(feature),
    `${placeOf(feature)} was left out: a ${what} is a point.`,
    'Draw it as a point.',
  )
  return null
}

function noteAssumed(feature: SurveyFeature, assumed: string, tally: Tally): void {
  tally.fault(
    'note',
    'MAR-IMPORT-027',
    placeOf(feature),
    `${placeOf(feature)} is ${assumed}.`,
    'Set golf, marram:penalty or marram:grass on it if the ground is something else.',
  )
}

// Bunkers are painted over water, but the shore of a lake is not: its sand ends at the water.
function sandOutOfWater(sand: Area, areas: readonly Area[]): Area[] {
  const water = areas
    .filter((area) => area.ground === 'penalty-red' || area.ground === 'penalty-yellow')
    .map((area) => area.polygon)
  const covered = intersectPolygons([sand.polygon], water)
  if (!covered.some((polygon) => polygonArea(polygon) > 0)) return [sand]
  const dry = subtractPolygons([sand.polygon], water)
  return dry.map((polygon, part) => ({
    ...sand,
    polygon,
    id: dry.length === 1 ? sand.id : `${sand.id} dry ${part + 1}`,
  }))
}
