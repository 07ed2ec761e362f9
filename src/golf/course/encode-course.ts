import type { Point } from '#numbers/geometry/point.ts'
import { type TangentPlane, tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { orient } from './assembly/read-areas.ts'
import type { Area, Course, HeightGrid, HoleLine } from './course.ts'
import type { Ground } from './ground.ts'

type Properties = Record<string, string | number | object>

/**
 * A course as the text of a course file (GeoJSON, schema course/1), one feature a line, positions to 0.1 mm
 * (nine decimals of a degree). Assembling it again gives the same course to that precision, and encoding that gives
 * the same text.
 */
export function encodeCourse(course: Course): string {
  const plane = tangentPlane(course.origin)
  const place = (point: Point): number[] => plane.toLonLat(point).map(round)
  const features = [
    ...course.holes.map((hole) => holeFeature(hole, place)),
    ...course.areas.map((area) => areaFeature(area, plane)),
    ...course.tees.map((tee) =>
      pointFeature(tee.id, place(tee.position), {
        golf: 'tee',
        ...(tee.name === '' ? {} : { tee: tee.name }),
        ...refs(tee.holes),
        ...number('marram:elevation_m', tee.elevationMetres),
      }),
    ),
    ...course.pins.map((pin) =>
      pointFeature(pin.id, place(pin.position), { golf: 'pin', ...refs(pin.holes) }),
    ),
    ...course.spotHeights.map((spot) =>
      pointFeature(spot.id, place(spot.position), {
        'marram:survey': 'spot-height',
        'marram:elevation_m': spot.elevationMetres,
      }),
    ),
    ...course.trees.map((tree) =>
      pointFeature(tree.id, place(tree.position), {
        natural: 'tree',
        ...number('marram:height_m', tree.heightMetres),
        ...number('marram:crown_base_m', tree.crownBaseMetres),
        ...number('diameter_crown', tree.crownRadiusMetres === null ? null : 2 * tree.crownRadiusMetres),
        ...number('marram:density', tree.densityPerMetre),
      }),
    ),
  ]
  const head = {
    type: 'FeatureCollection',
    marram: {
      schema: 'course/1',
      name: course.name,
      origin: course.origin,
      tees: course.teeSets,
      localRules: course.localRules,
    },
    ...(course.source === null ? {} : { 'marram:source': course.source }),
    ...(course.credit === null ? {} : { 'marram:credit': course.credit }),
  }
  const lines = features.map((feature) => JSON.stringify(feature))
  return `${JSON.stringify(head).slice(0, -1)},"features":[\n${lines.join(',\n')}\n]}\n`
}

function holeFeature(hole: HoleLine, place: (point: Point) => number[]): object {
  const properties: Properties = { golf: 'hole', ref: hole.ref }
  if (hole.par !== null) properties.par = hole.par
  if (hole.strokeIndex !== null) properties.handicap = hole.strokeIndex
  if (hole.name !== null) properties.name = hole.name
  if (hole.isBearingInvented) properties['marram:bearing'] = 'invented'
  for (const [tee, metres] of Object.entries(hole.cardLengths)) {
    properties[tee === '' ? 'dist' : `dist:${tee}`] = metres
  }
  const geometry = { type: 'LineString', coordinates: hole.line.map(place) }
  return { type: 'Feature', id: hole.id, properties, geometry }
}

const GROUND_TAGS: Readonly<Record<Ground, Properties>> = {
  out: { golf: 'out_of_bounds' },
  trees: { natural: 'wood' },
  scrub: { natural: 'scrub' },
  rough: { golf: 'rough', 'marram:grass': 'rough' },
  heavy: { golf: 'rough', 'marram:grass': 'heavy' },
  'first-cut': { golf: 'rough', 'marram:grass': 'first-cut' },
  path: { golf: 'cartpath' },
  fairway: { golf: 'fairway' },
  'penalty-red': { golf: 'lateral_water_hazard', 'marram:penalty': 'red' },
  'penalty-yellow': { golf: 'water_hazard', 'marram:penalty': 'yellow' },
  bunker: { golf: 'bunker' },
  fringe: { golf: 'rough', 'marram:grass': 'fringe' },
  green: { golf: 'green' },
  // Its markers are written as points, so none are made of the outline when it is read again.
  tee: { golf: 'tee', 'marram:markers': 'apart' },
}

function areaFeature(area: Area, plane: TangentPlane): object {
  const properties: Properties = {
    ...GROUND_TAGS[area.ground],
    ...(area.name === null ? {} : { name: area.name }),
    ...refs(area.holes),
    ...number('marram:unplayable', area.unplayableShare),
    ...number('marram:lost', area.lostShare),
    ...number('marram:height_m', area.heightMetres),
    ...number('marram:crown_base_m', area.crownBaseMetres),
    ...number('marram:density', area.densityPerMetre),
    ...number('marram:fall_percent', area.fallPercent),
    ...number('marram:fall_toward_deg', area.fallTowardDegrees),
    ...number('marram:elevation_m', area.elevationMetres),
    ...number('marram:height_cell_m', area.gridCellMetres),
    ...(area.heightGrid === null ? {} : { 'marram:height_grid': gridValue(area.heightGrid, plane) }),
  }
  const coordinates = orient(area.polygon).map((ring) => {
    const positions = ring.map((point) => plane.toLonLat(point).map(round))
    return [...positions, positions[0]]
  })
  return { type: 'Feature', id: area.id, properties, geometry: { type: 'Polygon', coordinates } }
}

/** Heights to the millimetre, rows from north to south as on a map. */
function gridValue(grid: HeightGrid, plane: TangentPlane): object {
  const { heights, columns } = grid
  const rows = Array.from({ length: grid.rows }, (_, row) =>
    heights.slice(row * columns, (row + 1) * columns).map((height) => Math.round(height * 1000) / 1000),
  )
  return {
    cell_m: Math.round(Math.hypot(...grid.stepX) * 1000) / 1000,
    north_west: plane.toLonLat(grid.origin).map(round),
    rows_m: rows,
  }
}

function pointFeature(id: string, coordinates: number[], properties: Properties): object {
  return { type: 'Feature', id, properties, geometry: { type: 'Point', coordinates } }
}

function refs(holes: readonly string[] | null): Properties {
  return holes === null ? {} : { 'marram:hole': holes.join(';') }
}

function number(key: string, value: number | null): Properties {
  return value === null ? {} : { [key]: value }
}

// A ring of an area cut by the antimeridian is not split: no course lies there.
function round(degrees: number): number {
  return Math.round(degrees * 1e9) / 1e9
}
