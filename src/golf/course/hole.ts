import type { Point, Polygon } from '#numbers/geometry/point.ts'
import type { Area, Tree } from './course.ts'
import type { GreenHeights } from './green-heights.ts'

/**
 * One hole seen from one set of tee markers, in its hole frame: metres, origin at the markers,
 * y along the first leg of the hole line, x to the right.
 */
export interface Hole {
  readonly ref: string
  readonly name: string | null
  readonly par: number
  /** True when the survey has no par and it was taken from the length; a plan does not depend on it. */
  readonly isParGuess: boolean
  readonly strokeIndex: number | null
  readonly teeName: string
  /** From the markers `[0, 0]` through the bends to the pin. */
  readonly line: readonly Point[]
  /** Along the line, metres. */
  readonly lengthMetres: number
  /** True bearing of the y axis, degrees clockwise from north. */
  readonly bearingDegrees: number
  /** True when nobody has said how the hole lies on the earth: its bearing means nothing. */
  readonly isBearingInvented: boolean
  readonly pin: Point
  /** Outline of the green played to, in the hole frame; `null` when the survey lacks it. */
  readonly green: Polygon | null
  /** Mean fall: of the heights on the green where there are any, else as surveyed, 0 when unknown. */
  readonly greenFallPercent: number
  /** Direction of downhill in the hole frame, degrees clockwise from the y axis. */
  readonly greenFallTowardDegrees: number
  /** Heights measured on the green, in the hole frame; `null` when at most its mean fall is known. */
  readonly greenHeights: GreenHeights | null
  /** Side of the cells of the grid that gave the green its height and mean fall, metres; `null` when none did. */
  readonly greenGridCellMetres: number | null
  /** Height of the green above the markers, metres; 0 when unknown. */
  readonly riseMetres: number
  /** Every area that touches the hole's corridor, in the hole frame, in painting order. */
  readonly areas: readonly Area[]
  readonly trees: readonly Tree[]
  readonly localRules: readonly string[]
}
