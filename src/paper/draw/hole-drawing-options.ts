import type { HoleMeasures } from '#golf/course/hole-measures.ts'
import type { Relief } from '#golf/strategy/relief.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import type { Field } from './contour-lines.ts'
import type { Pattern } from './pattern.ts'

/** What is drawn on a hole besides its ground; every mark is left out when its field is absent. */
export interface HoleDrawingOptions {
  /** Size of the sheet, units; absent = that of the settings. */
  readonly width?: number
  readonly height?: number
  /** Units of the scale and the figures; absent = yards. */
  readonly units?: 'yards' | 'metres'
  readonly courseName?: string
  /** False leaves out the title block, for a small screen that says it elsewhere. */
  readonly hasTitle?: boolean
  /** The player whose marks these are; named in the description. */
  readonly playerName?: string
  /** One club's finishes. */
  readonly pattern?: Pattern
  readonly aim?: AimMark
  readonly arcs?: readonly CarryArc[]
  /** Two places whose distance is written between them, hole frame. */
  readonly measured?: readonly [Point, Point]
  /** Hazards that are taken to lie elsewhere than they were surveyed. */
  readonly moved?: readonly MovedGround[]
  /** What the Rules give a ball, and the pin that it is measured from. */
  readonly relief?: { readonly of: Relief; readonly pin: Point }
  /** The day's wind, `label` as the reader likes it (`5 m/s`); absent = no wind shown. */
  readonly wind?: WindMark
  /** Reach and carry written beside the hazards. */
  readonly measures?: HoleMeasures
  /** Expected strokes from each place of the hole frame. */
  readonly values?: Field
  /** Shown under the frame wherever the map is shown. */
  readonly credit?: string
}

/** Where the player aims: the pattern's centre line, and where the ball starts when it curves. */
export interface AimMark {
  /** Where the ball lies, hole frame. */
  readonly from: Point
  /** Direction of the pattern's centre, degrees clockwise from the y axis. */
  readonly headingDegrees: number
  /** The club's stock total, metres. */
  readonly atMetres: number
  /** Where the ball starts; drawn only when it differs. */
  readonly startDegrees?: number
}

/** An arc at a club's stock carry. */
export interface CarryArc {
  readonly club: string
  readonly carryMetres: number
}

/** Wind over the hole: true bearing it comes from. */
export interface WindMark {
  readonly speedMetresPerSecond: number
  readonly fromDegrees: number
  readonly label: string
}

/** A hazard where it was surveyed and where it is taken to lie, hole frame. */
export interface MovedGround {
  readonly surveyed: Polygon
  readonly now: Polygon
}
