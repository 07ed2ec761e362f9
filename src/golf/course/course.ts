import type { Point, Polygon } from '#numbers/geometry/point.ts'
import type { Ground } from './ground.ts'

/** A course as surveyed: every position in metres on the course plane (x east, y north of {@link Course.origin}). */
export interface Course {
  readonly name: string
  /** `[longitude, latitude]` in degrees, WGS 84: where the course plane touches the ellipsoid. */
  readonly origin: readonly [longitude: number, latitude: number]
  readonly holes: readonly HoleLine[]
  readonly areas: readonly Area[]
  readonly tees: readonly Tee[]
  readonly pins: readonly Pin[]
  readonly trees: readonly Tree[]
  readonly spotHeights: readonly SpotHeight[]
  readonly teeSets: readonly TeeSet[]
  /** Local Rules in force, by their model code, such as `E-5`. */
  readonly localRules: readonly string[]
  readonly source: string | null
  /** Shown wherever the map is shown. */
  readonly credit: string | null
}

/** One hole: its line from tee to pin and what its card says. */
export interface HoleLine {
  readonly id: string
  /** The hole's number or name on the card, unique in the course: `7`. */
  readonly ref: string
  readonly par: number | null
  /** Place in the order of difficulty, 1 to 18 (`handicap` in the course file). */
  readonly strokeIndex: number | null
  readonly name: string | null
  /** Course plane, tee first, pin last; at least two points. */
  readonly line: readonly Point[]
  /** True when nobody has said which way it lies on the earth: its bearing means nothing. */
  readonly isBearingInvented: boolean
  /** Length on the card in metres: `''` for the hole's own `dist`, else by tee name. */
  readonly cardLengths: Readonly<Record<string, number>>
}

/** A piece of ground. */
export interface Area {
  readonly id: string
  readonly ground: Ground
  readonly polygon: Polygon
  /** Refs of the holes it belongs to, or `null` when its place decides. */
  readonly holes: readonly string[] | null
  readonly name: string | null
  /** Share 0–1 of balls here that cannot be played; `null` = the default of its ground. */
  readonly unplayableShare: number | null
  /** Share 0–1 of balls here that are not found; `null` = the default of its ground. */
  readonly lostShare: number | null
  /** Height of its trees or scrub, and of the lowest branches; `null` = the default of its ground. */
  readonly heightMetres: number | null
  readonly crownBaseMetres: number | null
  /** Chance per metre of flight through the crowns of being caught. */
  readonly densityPerMetre: number | null
  /** Mean fall of a green in per cent, and the true bearing of downhill in degrees. */
  readonly fallPercent: number | null
  readonly fallTowardDegrees: number | null
  /** Heights over a green in a fine square grid. */
  readonly heightGrid: HeightGrid | null
  /** Side of the cells of the grid from which a green has its height and perhaps its fall, metres; `null` when they are from no grid. */
  readonly gridCellMetres: number | null
  readonly elevationMetres: number | null
}

/** A set of tee markers. */
export interface Tee {
  readonly id: string
  /** The name of the set, such as `white`; empty when the source has none. */
  readonly name: string
  /** Refs of the holes it serves, or `null` when its place decides. */
  readonly holes: readonly string[] | null
  readonly position: Point
  readonly elevationMetres: number | null
}

/** A hole location. */
export interface Pin {
  readonly id: string
  readonly holes: readonly string[] | null
  readonly position: Point
}

/** A single tree. */
export interface Tree {
  readonly id: string
  readonly position: Point
  /** What is `null` is taken from the defaults in `crown.ts`. */
  readonly heightMetres: number | null
  readonly crownBaseMetres: number | null
  readonly crownRadiusMetres: number | null
  /** Chance per metre of flight through the crown of being caught. */
  readonly densityPerMetre: number | null
}

/** A height measured at one place, metres: on a green or its apron it tells the green's shape. */
export interface SpotHeight {
  readonly id: string
  readonly position: Point
  readonly elevationMetres: number
}

/** Heights at the nodes of a square grid, metres: node (column, row) lies at origin + column · stepX + row · stepY. */
export interface HeightGrid {
  readonly origin: Point
  /** From one column to the next and from one row to the next: of one length, square to each other. */
  readonly stepX: Point
  readonly stepY: Point
  readonly columns: number
  readonly rows: number
  /** Row after row. */
  readonly heights: readonly number[]
}

/** What the card says of a set of tees. */
export interface TeeSet {
  readonly name: string
  readonly par: number | null
  readonly courseRating: number | null
  readonly slopeRating: number | null
}
