import type { Point, Polygon } from '#numbers/geometry/point.ts'
import type { Area, Course, HoleLine, Tee } from './course.ts'
import { moveHeightGrid } from './green-heights.ts'
import type { Ground } from './ground.ts'

/** Builders for tests: courses made of rectangles, so that every expected number can be worked out by hand. */

/** The rectangle between two corners; x right, y up. */
export function rectangle(x0: number, y0: number, x1: number, y1: number): Polygon {
  return [
    [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ],
  ]
}

/** A piece of ground with nothing known but its class and outline. */
export function area(id: string, ground: Ground, polygon: Polygon, more: Partial<Area> = {}): Area {
  return {
    id,
    ground,
    polygon,
    holes: null,
    name: null,
    unplayableShare: null,
    lostShare: null,
    heightMetres: null,
    crownBaseMetres: null,
    densityPerMetre: null,
    fallPercent: null,
    fallTowardDegrees: null,
    heightGrid: null,
    gridCellMetres: null,
    elevationMetres: null,
    ...more,
  }
}

/** A hole line with a par of 4 and nothing else on its card. */
export function holeLine(ref: string, line: readonly Point[], more: Partial<HoleLine> = {}): HoleLine {
  const plain = { par: 4, strokeIndex: null, name: null, isBearingInvented: false, cardLengths: {} }
  return { id: `line/${ref}`, ref, line, ...plain, ...more }
}

/** A tee that names no hole unless told so. */
export function tee(id: string, name: string, position: Point, more: Partial<Tee> = {}): Tee {
  return { id, name, holes: null, position, elevationMetres: null, ...more }
}

/** A course at 0° N 0° E with no areas unless given. */
export function course(more: Partial<Course> = {}): Course {
  return {
    name: 'Invented links',
    origin: [0, 0],
    holes: [],
    areas: [],
    tees: [],
    pins: [],
    trees: [],
    spotHeights: [],
    teeSets: [],
    localRules: [],
    source: null,
    credit: null,
    ...more,
  }
}

/** The course turned clockwise about its origin and moved on its plane: every measure of it must stay the same. */
export function carryCourse(from: Course, turnRadians: number, east: number, north: number): Course {
  const sin = Math.sin(turnRadians)
  const cos = Math.cos(turnRadians)
  return mapCourse(from, ([x, y]) => [x * cos + y * sin + east, y * cos - x * sin + north])
}

/** The course with every position replaced. */
export function mapCourse(from: Course, move: (point: Point) => Point): Course {
  return {
    ...from,
    holes: from.holes.map((hole) => ({ ...hole, line: hole.line.map(move) })),
    areas: from.areas.map((piece) => ({
      ...piece,
      polygon: piece.polygon.map((ring) => ring.map(move)),
      heightGrid: piece.heightGrid && moveHeightGrid(piece.heightGrid, move),
    })),
    tees: from.tees.map((markers) => ({ ...markers, position: move(markers.position) })),
    pins: from.pins.map((pin) => ({ ...pin, position: move(pin.position) })),
    trees: from.trees.map((tree) => ({ ...tree, position: move(tree.position) })),
    spotHeights: from.spotHeights.map((spot) => ({ ...spot, position: move(spot.position) })),
  }
}
